using ConcreteAttach.Geometry;

namespace ConcreteAttach.Distribution;

/// <summary>Where a plate finds concrete under it.</summary>
internal static class PlateSupport
{
    /// <summary>Areas that differ by no more than this share are the same.</summary>
    private const double Same = 1e-12;

    /// <summary>The part of a plate that lies on a rectangular surface, in coordinates from (<paramref name="x0"/>, <paramref name="y0"/>).</summary>
    public static ContactRegion On(in Rectangle concrete, SimplePolygon plate, double x0, double y0)
    {
        var ring = new List<(double X, double Y)>(plate.Count);
        for (int i = 0; i < plate.Count; i++)
        {
            ring.Add((plate.Xs[i], plate.Ys[i]));
        }

        (double left, double right, double bottom, double top) = concrete;
        ring = Cut(ring, p => p.X - left);
        ring = Cut(ring, p => right - p.X);
        ring = Cut(ring, p => p.Y - bottom);
        ring = Cut(ring, p => top - p.Y);
        return new([.. ring.Select(p => p.X - x0)], [.. ring.Select(p => p.Y - y0)]);
    }

    /// <summary>The part of a plate that lies on a surface of any outline, in coordinates from (<paramref name="x0"/>, <paramref name="y0"/>).</summary>
    /// <remarks>
    /// Both are sums of triangles, some of them negative: those of the plate share a vertex of it, those of the concrete a point, each with one of its sides. The common
    /// part is the sum of the common parts of any two triangles, each with the product of their signs.
    /// </remarks>
    public static ContactRegion On(Outline concrete, SimplePolygon plate, double x0, double y0)
    {
        Rectangle extent = Layouts.ExtentOf(plate.Xs, plate.Ys);
        (double X, double Y) hub = ((extent.Left + extent.Right) / 2, (extent.Bottom + extent.Top) / 2);
        var xs = new List<double>();
        var ys = new List<double>();
        var ends = new List<int>();
        var weights = new List<double>();
        double found = 0;
        for (int i = 1; i + 1 < plate.Count; i++)
        {
            var own = new Triangle((plate.Xs[0], plate.Ys[0]), (plate.Xs[i], plate.Ys[i]), (plate.Xs[i + 1], plate.Ys[i + 1]));
            foreach (ref readonly OutlineSide side in concrete.Sides)
            {
                var other = new Triangle(hub, (side.StartX, side.StartY), (side.EndX, side.EndY));
                List<(double X, double Y)> common = own.Common(other);
                if (common.Count < 3)
                {
                    continue;
                }

                xs.AddRange(common.Select(p => p.X - x0));
                ys.AddRange(common.Select(p => p.Y - y0));
                ends.Add(xs.Count);
                weights.Add(own.Sign * other.Sign);
                found += weights[^1] * SimplePolygon.SignedArea([.. common.Select(p => p.X)], [.. common.Select(p => p.Y)]);
            }
        }

        return found >= (1 - Same) * SimplePolygon.SignedArea(plate.Xs, plate.Ys)
            ? new([.. plate.Xs.Select(x => x - x0)], [.. plate.Ys.Select(y => y - y0)])
            : new([.. xs], [.. ys], [.. ends], [.. weights], [.. Corners(concrete, plate).Select(p => (p.X - x0, p.Y - y0))]);
    }

    /// <summary>Corners of the plate on concrete, corners of the concrete under the plate, and where their sides cross.</summary>
    private static List<(double X, double Y)> Corners(Outline concrete, SimplePolygon plate)
    {
        var corners = new List<(double X, double Y)>();
        var own = new Outline(plate);
        for (int i = 0; i < plate.Count; i++)
        {
            if (concrete.Contains(plate.Xs[i], plate.Ys[i]) || concrete.DistanceFrom(plate.Xs[i], plate.Ys[i]) <= concrete.Tolerance)
            {
                corners.Add((plate.Xs[i], plate.Ys[i]));
            }
        }

        foreach (ref readonly OutlineSide side in concrete.Sides)
        {
            if (own.Contains(side.StartX, side.StartY))
            {
                corners.Add((side.StartX, side.StartY));
            }

            foreach (ref readonly OutlineSide edge in own.Sides)
            {
                double from = side.DistanceFromLine(edge.StartX, edge.StartY);
                double to = side.DistanceFromLine(edge.EndX, edge.EndY);
                if (from > 0 != to > 0)
                {
                    double share = from / (from - to);
                    (double X, double Y) crossing = (edge.StartX + (share * (edge.EndX - edge.StartX)), edge.StartY + (share * (edge.EndY - edge.StartY)));
                    double along = side.FootOf(crossing.X, crossing.Y);
                    if (along >= 0 && along <= side.Length)
                    {
                        corners.Add(crossing);
                    }
                }
            }
        }

        return corners;
    }

    /// <summary>What of a ring lies where a linear function is not negative.</summary>
    public static List<(double X, double Y)> Cut(List<(double X, double Y)> ring, Func<(double X, double Y), double> function)
    {
        var kept = new List<(double X, double Y)>(ring.Count + 2);
        for (int i = 0; i < ring.Count; i++)
        {
            (double X, double Y) from = ring[(i + ring.Count - 1) % ring.Count];
            (double X, double Y) to = ring[i];
            double before = function(from);
            double after = function(to);
            if (before >= 0 != after >= 0)
            {
                double share = before / (before - after);
                kept.Add((from.X + (share * (to.X - from.X)), from.Y + (share * (to.Y - from.Y))));
            }

            if (after >= 0)
            {
                kept.Add(to);
            }
        }

        return kept;
    }

    /// <summary>A triangle, turned counter-clockwise; its sign tells whether it was so.</summary>
    private readonly struct Triangle
    {
        private readonly (double X, double Y) _a;
        private readonly (double X, double Y) _b;
        private readonly (double X, double Y) _c;

        public Triangle((double X, double Y) a, (double X, double Y) b, (double X, double Y) c)
        {
            double cross = Segments.Cross(b.X - a.X, b.Y - a.Y, c.X - a.X, c.Y - a.Y);
            Sign = Math.Sign(cross);
            (_a, _b, _c) = cross < 0 ? (a, c, b) : (a, b, c);
        }

        /// <summary>+1 counter-clockwise, −1 clockwise, 0 without area.</summary>
        public int Sign { get; }

        /// <summary>The common part: a convex polygon, empty where there is none.</summary>
        public List<(double X, double Y)> Common(Triangle other)
        {
            if (Sign == 0 || other.Sign == 0)
            {
                return [];
            }

            List<(double X, double Y)> ring = Cut([_a, _b, _c], LeftOf(other._a, other._b));
            ring = Cut(ring, LeftOf(other._b, other._c));
            return Cut(ring, LeftOf(other._c, other._a));
        }

        private static Func<(double X, double Y), double> LeftOf((double X, double Y) from, (double X, double Y) to) =>
            p => Segments.Cross(to.X - from.X, to.Y - from.Y, p.X - from.X, p.Y - from.Y);
    }
}
