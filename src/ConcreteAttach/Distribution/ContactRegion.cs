namespace ConcreteAttach.Distribution;

/// <summary>The plane u = a + b x + c y: pressure under a rigid plate where it is positive, a gap where it is negative.</summary>
internal readonly record struct PressurePlane(double A, double B, double C)
{
    public double At(double x, double y) => A + (B * x) + (C * y);
}

/// <summary>
/// What the part of a plate under pressure adds up to: area and its moments, and the pressure and its moments.
/// </summary>
internal struct PressureSums
{
    public double Area;
    public double X;
    public double Y;
    public double XX;
    public double XY;
    public double YY;

    /// <summary>∫u: the compressive force.</summary>
    public double U;

    /// <summary>∫ux.</summary>
    public double UX;

    /// <summary>∫uy.</summary>
    public double UY;

    /// <summary>Adds a triangle, exactly: products of linear functions have closed integrals. Its area is counted with its sign.</summary>
    public void Add(double weight, in PressurePoint p, in PressurePoint q, in PressurePoint r)
    {
        double area = weight * 0.5 * (((q.X - p.X) * (r.Y - p.Y)) - ((r.X - p.X) * (q.Y - p.Y)));
        double x = p.X + q.X + r.X;
        double y = p.Y + q.Y + r.Y;
        double u = p.U + q.U + r.U;
        double third = area / 3;
        double twelfth = area / 12;
        Area += area;
        X += third * x;
        Y += third * y;
        U += third * u;
        XX += twelfth * ((x * x) + (p.X * p.X) + (q.X * q.X) + (r.X * r.X));
        XY += twelfth * ((x * y) + (p.X * p.Y) + (q.X * q.Y) + (r.X * r.Y));
        YY += twelfth * ((y * y) + (p.Y * p.Y) + (q.Y * q.Y) + (r.Y * r.Y));
        UX += twelfth * ((u * x) + (p.U * p.X) + (q.U * q.X) + (r.U * r.X));
        UY += twelfth * ((u * y) + (p.U * p.Y) + (q.U * q.Y) + (r.U * r.Y));
    }
}

/// <summary>A point of a plate with the value of the plane there.</summary>
internal readonly record struct PressurePoint(double X, double Y, double U);

/// <summary>
/// Where a plate touches concrete: rings of points, each counted with a weight of +1 or −1. A plate on a large surface is one ring; a plate that reaches over an edge or
/// an opening is the sum of pieces, some of them taken away.
/// </summary>
/// <param name="x">Points along x, ring after ring.</param>
/// <param name="y">Points along y.</param>
/// <param name="ends">Where each ring ends.</param>
/// <param name="weights">+1 or −1 for each ring; the rings themselves run counter-clockwise.</param>
/// <param name="corners">Corners of the region: the largest pressure stands at one of them.</param>
internal sealed class ContactRegion(double[] x, double[] y, int[] ends, double[] weights, (double X, double Y)[] corners)
{
    /// <summary>One ring.</summary>
    public ContactRegion(double[] x, double[] y)
        : this(x, y, [x.Length], [1], [.. x.Zip(y)])
    {
    }

    public ReadOnlySpan<(double X, double Y)> Corners => corners;

    /// <summary>The same region in other coordinates: (x − x0)/size, (y − y0)/size.</summary>
    public ContactRegion Scaled(double x0, double y0, double size) => new(
        [.. x.Select(p => (p - x0) / size)],
        [.. y.Select(p => (p - y0) / size)],
        ends,
        weights,
        [.. corners.Select(p => ((p.X - x0) / size, (p.Y - y0) / size))]);

    /// <summary>The part of the region where a linear function is not negative. Its corners are those of this region.</summary>
    public ContactRegion Beyond(Func<(double X, double Y), double> function)
    {
        var xs = new List<double>();
        var ys = new List<double>();
        int[] newEnds = new int[ends.Length];
        int start = 0;
        for (int ring = 0; ring < ends.Length; ring++)
        {
            List<(double X, double Y)> cut = PlateSupport.Cut([.. x[start..ends[ring]].Zip(y[start..ends[ring]])], function);
            xs.AddRange(cut.Select(p => p.X));
            ys.AddRange(cut.Select(p => p.Y));
            newEnds[ring] = xs.Count;
            start = ends[ring];
        }

        return new([.. xs], [.. ys], newEnds, weights, corners);
    }

    /// <summary>Sums over the part of the region where the plane is positive.</summary>
    /// <remarks>
    /// Each ring is cut at the zero line of the plane as its sides are walked, and fanned out into triangles from the first point that is left. The fan of a ring that
    /// is not convex, or that the cut leaves in several pieces, counts some triangles negatively, and the sum is exact all the same.
    /// </remarks>
    public PressureSums Under(in PressurePlane plane)
    {
        var sums = default(PressureSums);
        int start = 0;
        for (int ring = 0; ring < ends.Length; ring++)
        {
            int end = ends[ring];
            if (end == start)
            {
                continue;
            }

            var fan = new Fan(weights[ring]);
            var from = new PressurePoint(x[end - 1], y[end - 1], plane.At(x[end - 1], y[end - 1]));
            for (int i = start; i < end; i++)
            {
                var to = new PressurePoint(x[i], y[i], plane.At(x[i], y[i]));
                if (from.U > 0 != to.U > 0)
                {
                    double share = from.U / (from.U - to.U);
                    fan.Add(new(from.X + (share * (to.X - from.X)), from.Y + (share * (to.Y - from.Y)), 0), ref sums);
                }

                if (to.U > 0)
                {
                    fan.Add(to, ref sums);
                }

                from = to;
            }

            start = end;
        }

        return sums;
    }

    /// <summary>Joins points to triangles that share the first one.</summary>
    private struct Fan(double weight)
    {
        private PressurePoint _first;
        private PressurePoint _last;
        private int _count;

        public void Add(in PressurePoint point, ref PressureSums sums)
        {
            if (_count >= 2)
            {
                sums.Add(weight, _first, _last, point);
            }
            else if (_count == 0)
            {
                _first = point;
            }

            _last = point;
            _count++;
        }
    }
}
