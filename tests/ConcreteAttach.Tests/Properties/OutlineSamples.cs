using ConcreteAttach.Attached;
using ConcreteAttach.Geometry;
using ConcreteAttach.Quantities;
using UnitsNet;

namespace ConcreteAttach.Tests.Properties;

/// <summary>Random attachments in outlines of every kind: stars, blocks with a corner or a notch taken out, round ones, with openings between and beside the fasteners.</summary>
internal static class OutlineSamples
{
    public static AttachmentSample Next(int seed)
    {
        AttachmentSample sample = new AttachmentSamples(seed).Next();
        var random = new Random(seed);
        SurfaceOutline outline;
        do
        {
            outline = Next(random, sample.Attachment);
        }
        while (!IsAboutAll(outline, sample.Attachment.Layout));

        return sample.In(outline);
    }

    /// <summary>The same attachment in an outline.</summary>
    public static AttachmentSample In(this AttachmentSample s, SurfaceOutline outline) =>
        s.With(c => c with { Edges = EdgeDistances.None, Outline = outline });

    /// <summary>Every place of the attachment, its outline and its loads moved.</summary>
    public static AttachmentSample Moved(this AttachmentSample s, Func<double, double, (double X, double Y)> move, Func<ConcreteAttach.Actions.LoadCase, ConcreteAttach.Actions.LoadCase> actions)
    {
        FastenerPosition Place(FastenerPosition p)
        {
            (double x, double y) = move(p.X.Millimeters, p.Y.Millimeters);
            return new(Length.FromMillimeters(x), Length.FromMillimeters(y));
        }

        SurfaceOutline given = s.Attachment.Concrete.Outline!;
        SurfaceOutline outline = given.Openings.Aggregate(
            SurfaceOutline.Polygon(given.Vertices.Select(Place)), (o, opening) => o.WithOpening(opening.Select(Place)));
        AttachmentSample moved = s.In(outline);
        return moved with
        {
            Attachment = new(moved.Attachment.Concrete, s.Attachment.Fastener, FastenerLayout.Points(s.Attachment.Layout.Positions.Select(Place))),
            LoadCase = actions(s.LoadCase) with { At = Place(s.LoadCase.At) },
        };
    }

    private static bool IsAboutAll(SurfaceOutline outline, FastenerLayout layout)
    {
        Outline concrete = outline.In(MeasurementSystem.NewtonMillimetre);
        return layout.Positions.All(p => concrete.Contains(p.X.Millimeters, p.Y.Millimeters) && concrete.DistanceFrom(p.X.Millimeters, p.Y.Millimeters) > 5);
    }

    private static SurfaceOutline Next(Random random, Attachment attachment)
    {
        double embedment = attachment.Fastener.EffectiveEmbedment.Millimeters;
        double[] xs = [.. attachment.Layout.Positions.Select(p => p.X.Millimeters)];
        double[] ys = [.. attachment.Layout.Positions.Select(p => p.Y.Millimeters)];
        double Margin() => Math.Round(10 + (embedment * (random.Next(2) == 0 ? 0.8 : 3) * random.NextDouble()));
        double left = Math.Floor(xs.Min() - Margin()), right = Math.Ceiling(xs.Max() + Margin()), bottom = Math.Floor(ys.Min() - Margin()), top = Math.Ceiling(ys.Max() + Margin());
        double InsideX() => Math.Round(left + ((right - left) * (0.05 + (0.9 * random.NextDouble()))));
        double InsideY() => Math.Round(bottom + ((top - bottom) * (0.05 + (0.9 * random.NextDouble()))));
        double midX = InsideX(), midY = InsideY(), otherX = InsideX();
        (double X, double Y)[] outer = random.Next(5) switch
        {
            0 => [(left, bottom), (right, bottom), (right, midY), (midX, midY), (midX, top), (left, top)],
            1 => [(left, bottom), (right, bottom), (right, top), (Math.Max(midX, otherX) + 1, top), (midX, midY), (Math.Min(midX, otherX) - 1, top), (left, top)],
            2 => [(left, bottom), ((2 * right) - left, bottom), (left, (2 * top) - bottom)],
            3 => Around(random, left, right, bottom, top, 1.5),
            _ => [(left, bottom), (right, bottom), (right, top), (left, top)],
        };
        SurfaceOutline outline = Create(() => SurfaceOutline.Polygon(Places(outer))) ?? SurfaceOutline.Polygon(Places([(left, bottom), (right, bottom), (right, top), (left, top)]));
        for (int i = random.Next(3); i > 0; i--)
        {
            (double x, double y, double size) = (InsideX(), InsideY(), 5 + (0.5 * embedment * random.NextDouble()));
            SurfaceOutline before = outline;
            outline = Create(() => before.WithOpening(Places(Around(random, x - size, x + size, y - size, y + size, 1)))) ?? outline;
        }

        return outline;
    }

    /// <summary>A star about a rectangle, its radius from one to some times what reaches over the corners.</summary>
    private static (double X, double Y)[] Around(Random random, double left, double right, double bottom, double top, double most)
    {
        int count = random.Next(3, 9);
        double radius = Math.Sqrt(((right - left) * (right - left)) + ((top - bottom) * (top - bottom))) / 2;
        return
        [
            .. from i in Enumerable.Range(0, count)
               let angle = 2 * Math.PI * (i + (0.5 * random.NextDouble())) / count
               let r = radius * (1 + ((most - 1) * random.NextDouble()))
               select (((left + right) / 2) + (r * Math.Cos(angle)), ((bottom + top) / 2) + (r * Math.Sin(angle))),
        ];
    }

    private static IEnumerable<FastenerPosition> Places(IEnumerable<(double X, double Y)> points) =>
        points.Select(p => new FastenerPosition(Length.FromMillimeters(p.X), Length.FromMillimeters(p.Y)));

    private static SurfaceOutline? Create(Func<SurfaceOutline> create)
    {
        try
        {
            return create();
        }
        catch (InputException)
        {
            return null; // crosses itself or the boundary: without it
        }
    }
}
