using ConcreteAttach.Calculation;

namespace ConcreteAttach.Geometry;

/// <summary>Measures of a set of fasteners.</summary>
internal static class Layouts
{
    /// <summary>The rectangle about the points.</summary>
    public static Rectangle ExtentOf(ReadOnlySpan<double> xs, ReadOnlySpan<double> ys)
    {
        double left = double.PositiveInfinity, right = double.NegativeInfinity, bottom = double.PositiveInfinity, top = double.NegativeInfinity;
        for (int i = 0; i < xs.Length; i++)
        {
            left = xs[i] < left ? xs[i] : left;
            right = xs[i] > right ? xs[i] : right;
            bottom = ys[i] < bottom ? ys[i] : bottom;
            top = ys[i] > top ? ys[i] : top;
        }

        return new(left, right, bottom, top);
    }

    /// <summary>The smallest of the four edge distances.</summary>
    public static double SmallestEdge(in Rectangle concrete, in Rectangle extent) => Lesser(
        Lesser(concrete.Right - extent.Right, extent.Left - concrete.Left),
        Lesser(concrete.Top - extent.Top, extent.Bottom - concrete.Bottom));

    /// <summary>How many edges are nearer than <paramref name="limit"/>, and the largest edge distance that is not above it; 0 where no edge is nearer.</summary>
    public static (int Count, double Largest) CloseEdges(in Rectangle concrete, in Rectangle extent, double limit)
    {
        if (!Limit.IsBelow(SmallestEdge(concrete, extent), limit))
        {
            return (0, 0);
        }

        double right = concrete.Right - extent.Right;
        double left = extent.Left - concrete.Left;
        double top = concrete.Top - extent.Top;
        double bottom = extent.Bottom - concrete.Bottom;
        int count = Below(right, limit) + Below(left, limit) + Below(top, limit) + Below(bottom, limit);
        double largest = Math.Max(
            Math.Max(UnlessAbove(right, limit), UnlessAbove(left, limit)),
            Math.Max(UnlessAbove(top, limit), UnlessAbove(bottom, limit)));
        return (count, largest);

        static int Below(double distance, double limit) => Limit.IsBelow(distance, limit) ? 1 : 0;
        static double UnlessAbove(double distance, double limit) => Limit.IsBelow(limit, distance) ? 0 : distance;
    }

    /// <summary>The lesser of two numbers. One comparison: unlike Math.Min it need not mind NaN and −0.</summary>
    private static double Lesser(double a, double b) => a < b ? a : b;
}
