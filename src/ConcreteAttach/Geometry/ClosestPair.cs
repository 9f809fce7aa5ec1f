namespace ConcreteAttach.Geometry;

/// <summary>The two points of a set that lie closest together.</summary>
/// <param name="Spacing">Distance between them; infinite for fewer than two points.</param>
/// <param name="First">Number of one.</param>
/// <param name="Second">Number of the other.</param>
internal readonly record struct ClosestPair(double Spacing, int First, int Second)
{
    /// <summary>Finds the pair. Sorted along x, so that only neighbours within the best distance so far are compared.</summary>
    public static ClosestPair Of(double[] xs, double[] ys)
    {
        int[] order = [.. Enumerable.Range(0, xs.Length)];
        Array.Sort(order, (a, b) => xs[a].CompareTo(xs[b]));
        var best = new ClosestPair(double.PositiveInfinity, 0, 0);
        for (int i = 0; i < order.Length; i++)
        {
            for (int j = i + 1; j < order.Length && xs[order[j]] - xs[order[i]] < best.Spacing; j++)
            {
                double dx = xs[order[j]] - xs[order[i]];
                double dy = ys[order[j]] - ys[order[i]];
                double spacing = Math.Sqrt((dx * dx) + (dy * dy));
                if (spacing < best.Spacing)
                {
                    best = new(spacing, order[i], order[j]);
                }
            }
        }

        return best;
    }
}
