namespace ConcreteAttach.Geometry;

/// <summary>Measures of straight pieces of a boundary.</summary>
internal static class Segments
{
    /// <summary>The cross product a × b: positive where b points to the left of a.</summary>
    public static double Cross(double ax, double ay, double bx, double by) => (ax * by) - (ay * bx);

    /// <summary>Length of (<paramref name="x"/>, <paramref name="y"/>); exact where one of them is 0.</summary>
    public static double Size(double x, double y) => Math.Sqrt((x * x) + (y * y));

    /// <summary>Distance of a point from the segment a–b.</summary>
    public static double Distance(double ax, double ay, double bx, double by, double x, double y)
    {
        double dx = bx - ax;
        double dy = by - ay;
        double squared = (dx * dx) + (dy * dy);
        double along = squared == 0 ? 0 : Math.Clamp((((x - ax) * dx) + ((y - ay) * dy)) / squared, 0, 1);
        return Size(x - (ax + (along * dx)), y - (ay + (along * dy)));
    }

    /// <summary>Distance between the segments a–b and c–d; 0 where they cross.</summary>
    public static double Distance(double ax, double ay, double bx, double by, double cx, double cy, double dx, double dy)
    {
        // On one line the products are noise of either sign: segments apart on a line are told by their extents.
        bool mayMeet = Math.Max(ax, bx) >= Math.Min(cx, dx) && Math.Max(cx, dx) >= Math.Min(ax, bx)
            && Math.Max(ay, by) >= Math.Min(cy, dy) && Math.Max(cy, dy) >= Math.Min(ay, by);
        bool isPartedByOther = (Cross(bx - ax, by - ay, cx - ax, cy - ay) > 0) != (Cross(bx - ax, by - ay, dx - ax, dy - ay) > 0);
        bool partsOther = (Cross(dx - cx, dy - cy, ax - cx, ay - cy) > 0) != (Cross(dx - cx, dy - cy, bx - cx, by - cy) > 0);
        return mayMeet && isPartedByOther && partsOther
            ? 0
            : Math.Min(
                Math.Min(Distance(ax, ay, bx, by, cx, cy), Distance(ax, ay, bx, by, dx, dy)),
                Math.Min(Distance(cx, cy, dx, dy, ax, ay), Distance(cx, cy, dx, dy, bx, by)));
    }
}
