namespace ConcreteAttach.Geometry;

/// <summary>Area, first and second moments of a plane region about the origin.</summary>
/// <param name="Area">∫ dA.</param>
/// <param name="X">∫ x dA.</param>
/// <param name="Y">∫ y dA.</param>
/// <param name="XX">∫ x² dA.</param>
/// <param name="YY">∫ y² dA.</param>
/// <param name="XY">∫ xy dA.</param>
internal readonly record struct AreaMoments(double Area, double X, double Y, double XX, double YY, double XY)
{
    public double CentroidX => X / Area;

    public double CentroidY => Y / Area;

    /// <summary>
    /// The moments of the region to the left of closed rings of sides: a sum over the triangles between a fixed point and each side, which is exact. The
    /// fixed point is the start of the first side: a region far from the origin keeps its digits.
    /// </summary>
    public static AreaMoments Of(ReadOnlySpan<OutlineSide> sides)
    {
        double originX = sides[0].StartX;
        double originY = sides[0].StartY;
        AreaMoments sum = default;
        foreach (ref readonly OutlineSide side in sides)
        {
            double ax = side.StartX - originX;
            double ay = side.StartY - originY;
            double bx = side.EndX - originX;
            double by = side.EndY - originY;
            double twice = Segments.Cross(ax, ay, bx, by);
            sum = new(
                sum.Area + (twice / 2),
                sum.X + (twice * (ax + bx) / 6),
                sum.Y + (twice * (ay + by) / 6),
                sum.XX + (twice * ((ax * ax) + (ax * bx) + (bx * bx)) / 12),
                sum.YY + (twice * ((ay * ay) + (ay * by) + (by * by)) / 12),
                sum.XY + (twice * ((2 * ax * ay) + (ax * by) + (bx * ay) + (2 * bx * by)) / 24));
        }

        return sum.About(-originX, -originY);
    }

    /// <summary>The same region measured from (<paramref name="x"/>, <paramref name="y"/>).</summary>
    public AreaMoments About(double x, double y) => new(
        Area,
        X - (x * Area),
        Y - (y * Area),
        XX - (2 * x * X) + (x * x * Area),
        YY - (2 * y * Y) + (y * y * Area),
        XY - (x * Y) - (y * X) + (x * y * Area));

    /// <summary>The moments about the centroid; its first moments are 0 but for rounding.</summary>
    public AreaMoments AboutCentroid() => About(CentroidX, CentroidY);
}
