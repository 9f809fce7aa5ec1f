using ConcreteAttach.Geometry;

namespace ConcreteAttach.Presentation.Drawings;

/// <summary>One side of a ring of the concrete on a plan.</summary>
/// <param name="From">Where it starts.</param>
/// <param name="To">Where it ends.</param>
/// <param name="IsEdge">True for an edge of the concrete; false where the drawing breaks off and the concrete goes on.</param>
internal readonly record struct ShapeSide(SurfacePoint From, SurfacePoint To, bool IsEdge);

/// <summary>The part of the concrete that a plan shows: rings of sides, the outer one first, openings after it.</summary>
internal sealed class ConcreteShape
{
    /// <summary>An edge is shown up to this many times the size of what must be seen beyond it; farther away the drawing breaks off.</summary>
    private const double FarthestEdge = 0.6;

    private ConcreteShape(Rectangle window, List<ShapeSide[]> rings)
    {
        Window = window;
        Rings = rings;
    }

    /// <summary>What the plan shows.</summary>
    public Rectangle Window { get; }

    public IReadOnlyList<ShapeSide[]> Rings { get; }

    /// <summary>A rectangular member about what must be seen.</summary>
    /// <param name="concrete">The concrete.</param>
    /// <param name="seen">What must be seen.</param>
    /// <param name="outline">The outline of the concrete; null: it is that rectangle.</param>
    public static ConcreteShape About(in Rectangle concrete, in Rectangle seen, Outline? outline)
    {
        double size = Math.Max(seen.Width, seen.Height);
        double margin = 0.09 * size;
        bool Shows(double toEdge) => toEdge <= FarthestEdge * size;
        bool left = Shows(seen.Left - concrete.Left), right = Shows(concrete.Right - seen.Right);
        bool bottom = Shows(seen.Bottom - concrete.Bottom), top = Shows(concrete.Top - seen.Top);
        var window = new Rectangle(
            left ? concrete.Left : seen.Left - margin,
            right ? concrete.Right : seen.Right + margin,
            bottom ? concrete.Bottom : seen.Bottom - margin,
            top ? concrete.Top : seen.Top + margin);
        if (outline is not null)
        {
            return new(window, [.. RingsOf(outline).Select(ring => Cut(ring, window)).Where(ring => ring.Length > 0)]);
        }

        SurfacePoint a = new(window.Left, window.Bottom), b = new(window.Right, window.Bottom), c = new(window.Right, window.Top), d = new(window.Left, window.Top);
        return new(window, [[new(a, b, bottom), new(b, c, right), new(c, d, top), new(d, a, left)]]);
    }

    /// <summary>The sides of an outline, ring by ring.</summary>
    private static IEnumerable<ShapeSide[]> RingsOf(Outline outline) => outline.Sides.ToArray()
        .GroupBy(side => side.Ring)
        .Select(ring => Chained([.. ring.Select(side => new ShapeSide(new(side.StartX, side.StartY), new(side.EndX, side.EndY), IsEdge: true))]));

    /// <summary>The sides of a ring in the order in which they follow one another: those of an opening are kept backward.</summary>
    private static ShapeSide[] Chained(ShapeSide[] ring) => ring.Length > 1 && ring[0].To != ring[1].From ? [.. Enumerable.Reverse(ring)] : ring;

    /// <summary>What of a ring lies in the window; where it is cut, the concrete goes on.</summary>
    public static ShapeSide[] Cut(ShapeSide[] ring, in Rectangle window)
    {
        (double left, double right, double bottom, double top) = (window.Left, window.Right, window.Bottom, window.Top);
        ShapeSide[] cut = CutAt(ring, p => p.X - left);
        cut = CutAt(cut, p => right - p.X);
        cut = CutAt(cut, p => p.Y - bottom);
        return CutAt(cut, p => top - p.Y);
    }

    /// <summary>Cuts a ring along a line: what is kept has a distance of 0 or more from it.</summary>
    private static ShapeSide[] CutAt(ShapeSide[] ring, Func<SurfacePoint, double> distance)
    {
        var kept = new List<ShapeSide>(ring.Length + 2);
        SurfacePoint? leftAt = null;
        foreach (ShapeSide side in ring)
        {
            double from = distance(side.From), to = distance(side.To);
            if (from >= 0)
            {
                SurfacePoint end = to >= 0 ? side.To : Between(side, from, to);
                kept.Add(side with { To = end });
                leftAt = to >= 0 ? leftAt : end;
            }
            else if (to >= 0)
            {
                SurfacePoint start = Between(side, from, to);
                if (leftAt is { } last)
                {
                    kept.Add(new(last, start, IsEdge: false));
                    leftAt = null;
                }

                kept.Add(side with { From = start });
            }
        }

        // Left along one of the last sides and entered along one of the first.
        if (leftAt is { } open && kept.Count > 0)
        {
            kept.Add(new(open, kept[0].From, IsEdge: false));
        }

        return [.. kept.Where(side => side.From != side.To)];

        static SurfacePoint Between(ShapeSide side, double from, double to)
        {
            double part = from / (from - to);
            return new(side.From.X + (part * (side.To.X - side.From.X)), side.From.Y + (part * (side.To.Y - side.From.Y)));
        }
    }

    /// <summary>Fills the concrete, and draws its edges heavy and its breaks as thin lines with a kink.</summary>
    public void Draw(Drawing drawing, PlanScale scale)
    {
        foreach (ShapeSide[] ring in Rings)
        {
            drawing.Polyline(Ink.ConcreteFill, scale.At(ring.Select(side => side.From)), isClosed: true);
            foreach (ShapeSide side in ring)
            {
                PagePoint from = scale.At(side.From.X, side.From.Y), to = scale.At(side.To.X, side.To.Y);
                if (side.IsEdge)
                {
                    drawing.Line(Ink.Edge, from.X, from.Y, to.X, to.Y);
                }
                else
                {
                    BreakLine(drawing, from, to);
                }
            }
        }
    }

    /// <summary>A line with a kink in the middle: the drawing breaks off here, the concrete does not.</summary>
    public static void BreakLine(Drawing drawing, PagePoint from, PagePoint to)
    {
        const double Half = 6;
        double dx = to.X - from.X, dy = to.Y - from.Y, length = Math.Sqrt((dx * dx) + (dy * dy));
        if (length < 5 * Half)
        {
            drawing.Line(Ink.Break, from.X, from.Y, to.X, to.Y);
            return;
        }

        double ux = dx / length, uy = dy / length, mx = (from.X + to.X) / 2, my = (from.Y + to.Y) / 2;
        PagePoint Along(double along, double across) => new(mx + (along * ux) - (across * uy), my + (along * uy) + (across * ux));
        drawing.Polyline(Ink.Break, [from, Along(-Half, 0), Along(-Half / 2, -Half), Along(Half / 2, Half), Along(Half, 0), to]);
    }
}
