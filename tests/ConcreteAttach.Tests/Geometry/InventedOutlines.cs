using ConcreteAttach.Geometry;
using ConcreteAttach.Quantities;
using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Overlay;
using NetTopologySuite.Operation.OverlayNG;
using UnitsNet;
using Shape = NetTopologySuite.Geometries.Geometry;

namespace ConcreteAttach.Tests.Geometry;

/// <summary>An outline with fasteners in it, invented for the tests of the geometry; lengths in mm.</summary>
internal sealed record Surface(string Kind, (double X, double Y)[] Outer, (double X, double Y)[][] Openings, double[] Xs, double[] Ys, double Reach)
{
    public int[] All => [.. Enumerable.Range(0, Xs.Length)];

    public SurfaceOutline Given => Openings.Aggregate(SurfaceOutline.Polygon(Places(Outer)), (outline, opening) => outline.WithOpening(Places(opening)));

    public Outline Outline => Given.In(MeasurementSystem.NewtonMillimetre);

    public FastenersInOutline Fasteners() => new(Outline, Xs, Ys);

    /// <summary>The same with every place moved.</summary>
    public Surface Moved(Func<(double X, double Y), (double X, double Y)> move)
    {
        (double X, double Y)[] moved = [.. Xs.Zip(Ys).Select(move)];
        return this with
        {
            Outer = [.. Outer.Select(move)],
            Openings = [.. Openings.Select(o => o.Select(move).ToArray())],
            Xs = [.. moved.Select(p => p.X)],
            Ys = [.. moved.Select(p => p.Y)],
        };
    }

    public Surface Turned(double angle)
    {
        (double sin, double cos) = Math.SinCos(angle);
        return Moved(p => ((cos * p.X) - (sin * p.Y), (sin * p.X) + (cos * p.Y)));
    }

    public static FastenerPosition[] Places(params IEnumerable<(double X, double Y)> points) =>
        [.. points.Select(p => new FastenerPosition(Length.FromMillimeters(p.X), Length.FromMillimeters(p.Y)))];

    public override string ToString() => FormattableString.Invariant(
        $"{Kind}, reach {Reach:R}, outer {Text(Outer)}, openings {string.Join(" / ", Openings.Select(Text))}, fasteners {Text([.. Xs.Zip(Ys)])}");

    private static string Text((double X, double Y)[] points) =>
        string.Join(' ', points.Select(p => FormattableString.Invariant($"({p.X:R}, {p.Y:R})")));
}

/// <summary>The same geometry by NetTopologySuite, a general library for plane geometry.</summary>
internal static class GeneralGeometry
{
    private static readonly GeometryFactory Factory = new();

    public static Polygon Polygon((double X, double Y)[] outer, params (double X, double Y)[][] openings) =>
        Factory.CreatePolygon(Ring(outer), [.. openings.Select(Ring)]);

    public static Polygon Concrete(Surface surface) => Polygon(surface.Outer, surface.Openings);

    public static Shape Square(double x, double y, double reach) => Factory.ToGeometry(new Envelope(x - reach, x + reach, y - reach, y + reach));

    public static Shape Union(IEnumerable<Shape> shapes) => OverlayNGRobust.Union([.. shapes]);

    public static Shape Cut(Shape a, Shape b) => OverlayNGRobust.Overlay(a, b, SpatialFunction.Intersection);

    public static Shape Without(Shape a, Shape b) => OverlayNGRobust.Overlay(a, b, SpatialFunction.Difference);

    /// <summary>What is seen from a point: the concrete without the shadow of each of its sides.</summary>
    public static Shape Seen(Surface surface, double x, double y)
    {
        var shadows = new List<Shape>();
        foreach ((double X, double Y)[] ring in surface.Openings.Prepend(surface.Outer))
        {
            for (int i = 0; i < ring.Length; i++)
            {
                (double X, double Y) a = ring[i];
                (double X, double Y) b = ring[(i + 1) % ring.Length];
                if (Math.Abs(((a.X - x) * (b.Y - y)) - ((a.Y - y) * (b.X - x))) < 1e-9)
                {
                    continue; // seen edge-on
                }

                (double X, double Y) farA = Far(a);
                (double X, double Y) farB = Far(b);
                (double X, double Y) farMiddle = Far(((Far(a).X + Far(b).X) / 2, (Far(a).Y + Far(b).Y) / 2));
                shadows.Add(Polygon([a, b, farB, farMiddle, farA]));
            }
        }

        return Without(Concrete(surface), Union(shadows));

        (double X, double Y) Far((double X, double Y) p)
        {
            double distance = Math.Sqrt(((p.X - x) * (p.X - x)) + ((p.Y - y) * (p.Y - y)));
            const double far = 1e4;
            return (x + (far * (p.X - x) / distance), y + (far * (p.Y - y) / distance));
        }
    }

    private static LinearRing Ring((double X, double Y)[] points) =>
        Factory.CreateLinearRing([.. points.Append(points[0]).Select(p => new Coordinate(p.X, p.Y))]);
}

internal static class InventedOutlines
{
    private static readonly string[] Kinds = ["convex", "star", "tangle", "steps", "steps on whole numbers", "rectangle"];

    /// <summary>Outlines of every kind, from a size of about 20, most with openings, with up to six fasteners in the concrete.</summary>
    public static IEnumerable<Surface> Random(int randomSeed, int count)
    {
        var random = new Random(randomSeed);
        for (int i = 0; i < count; i++)
        {
            yield return Random(random, Kinds[i % Kinds.Length]);
        }
    }

    private static Surface Random(Random random, string kind)
    {
        (double X, double Y)[] outer = kind switch
        {
            "convex" => Regular(random, 0, 0, 6 + (4 * random.NextDouble()), random.Next(3, 12)),
            "star" => Star(random, random.Next(4, 16)),
            "tangle" => Untangled(random, random.Next(4, 13)),
            "steps" => [.. Steps(random).Select(p => (p.X + (0.3 * p.Y), p.Y - (0.2 * p.X)))],
            "steps on whole numbers" => Steps(random),
            _ => [(-8, -5), (7, -5), (7, 9), (-8, 9)],
        };
        if (random.Next(2) == 0)
        {
            Array.Reverse(outer);
        }

        var surface = new Surface(kind, outer, [], [], [], 1 + (9 * random.NextDouble()));
        bool isWhole = kind is "steps on whole numbers" or "rectangle";
        int wanted = random.Next(3);
        for (int attempt = 0; attempt < 20 && surface.Openings.Length < wanted; attempt++)
        {
            (double x, double y) = Place(random, isWhole);
            (double X, double Y)[] opening = isWhole
                ? [(x, y), (x + 1, y), (x + 1, y + 1), (x, y + 1)]
                : Regular(random, x, y, 0.3 + (1.5 * random.NextDouble()), random.Next(3, 7));
            if (GeneralGeometry.Polygon(outer, [.. surface.Openings, opening]).IsValid
                && IsApart(opening, [outer, .. surface.Openings]))
            {
                surface = surface with { Openings = [.. surface.Openings, opening] };
            }
        }

        var places = new List<(double X, double Y)>();
        Outline outline = surface.Outline;
        int fasteners = random.Next(1, 7);
        for (int attempt = 0; attempt < 1000 && places.Count < fasteners; attempt++)
        {
            (double x, double y) = Place(random, isWhole);
            if (outline.Contains(x, y) && outline.DistanceFrom(x, y) > 0.05)
            {
                places.Add((x, y));
            }
        }

        return places.Count == 0
            ? Random(random, kind)
            : surface with { Xs = [.. places.Select(p => p.X)], Ys = [.. places.Select(p => p.Y)], Reach = isWhole ? Math.Round(surface.Reach) : surface.Reach };
    }

    /// <summary>On whole and half numbers many places lie on the lines through sides, and coordinates repeat.</summary>
    private static (double X, double Y) Place(Random random, bool isWhole) => isWhole
        ? (random.Next(-20, 21) / 2.0, random.Next(-20, 21) / 2.0)
        : (20 * (random.NextDouble() - 0.5), 20 * (random.NextDouble() - 0.5));

    private static bool IsApart((double X, double Y)[] ring, IEnumerable<(double X, double Y)[]> others) =>
        others.All(other => GeneralGeometry.Polygon(ring).ExteriorRing.Distance(GeneralGeometry.Polygon(other).ExteriorRing) > 0.01);

    public static (double X, double Y)[] Regular(Random random, double x, double y, double radius, int count) =>
        [.. InventedLayouts.Circle(count, radius, random.NextDouble()).Select(p => (x + p.X, y + p.Y))];

    private static (double X, double Y)[] Star(Random random, int count) =>
    [
        .. from i in Enumerable.Range(0, count)
           let angle = 2 * Math.PI * (i + (0.8 * random.NextDouble())) / count
           let radius = 3 + (8 * random.NextDouble())
           select (radius * Math.Cos(angle), radius * Math.Sin(angle)),
    ];

    /// <summary>Random points, joined so that no two sides cross: a crossing is taken out by going the other way between its sides.</summary>
    private static (double X, double Y)[] Untangled(Random random, int count)
    {
        while (true)
        {
            (double X, double Y)[] points = [.. InventedLayouts.Scattered(random, count, 0, 0, 10)];
            for (int round = 0; round < 500; round++)
            {
                (int i, int k) = Crossing(points);
                if (i < 0)
                {
                    if (GeneralGeometry.Polygon(points).IsValid && GeneralGeometry.Polygon(points).Area > 40)
                    {
                        return points;
                    }

                    break;
                }

                Array.Reverse(points, i + 1, k - i);
            }
        }
    }

    private static (int First, int Second) Crossing((double X, double Y)[] p)
    {
        for (int i = 0; i < p.Length; i++)
        {
            for (int k = i + 2; k < p.Length; k++)
            {
                (double X, double Y) d = p[(k + 1) % p.Length];
                if ((i > 0 || k < p.Length - 1)
                    && new LineSegment(p[i].X, p[i].Y, p[i + 1].X, p[i + 1].Y)
                        .Intersection(new LineSegment(p[k].X, p[k].Y, d.X, d.Y)) is not null)
                {
                    return (i, k);
                }
            }
        }

        return (-1, -1);
    }

    /// <summary>A building seen from the front: steps up and down over a straight base.</summary>
    private static (double X, double Y)[] Steps(Random random)
    {
        var points = new List<(double X, double Y)> { (-9, -9) };
        int x = -9;
        int columns = random.Next(2, 7);
        int last = -9;
        var tops = new List<(double X, double Y)>();
        for (int i = 0; i < columns; i++)
        {
            int width = random.Next(1, 5);
            int height;
            do
            {
                height = random.Next(-7, 10);
            }
            while (height == last);
            last = height;
            tops.Add((x, height));
            x += width;
            tops.Add((x, height));
        }

        points.Add((x, -9));
        tops.Reverse();
        points.AddRange(tops);
        return [.. points];
    }
}
