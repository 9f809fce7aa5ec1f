namespace ConcreteAttach.Geometry;

/// <summary>
/// The shortest tree of straight links that joins a set of points. Its longest link is the largest spacing between
/// adjacent fasteners of a group.
/// </summary>
internal static class SpanningTree
{
    /// <summary>Length of the scratch that <paramref name="count"/> points need.</summary>
    public static int ScratchLength(int count) => 3 * count;

    /// <summary>Length of the longest link of the tree; 0 for one point or none.</summary>
    /// <remarks>
    /// Grows the tree by its nearest point, one at a time. Time grows with the square of the number of points, which
    /// for groups of fasteners (a few hundred at most) is less than any cleverer structure costs to build.
    /// </remarks>
    public static double LongestLink(ReadOnlySpan<double> xs, ReadOnlySpan<double> ys, Span<double> scratch)
    {
        int outside = xs.Length - 1; // the last point is the first of the tree
        if (outside < 1)
        {
            return 0;
        }

        var memory = new Scratch(scratch);
        Span<double> outsideXs = memory.Doubles(outside);
        Span<double> outsideYs = memory.Doubles(outside);
        Span<double> nearest = memory.Doubles(outside); // squared distance to the tree
        xs[..outside].CopyTo(outsideXs);
        ys[..outside].CopyTo(outsideYs);
        nearest.Fill(double.PositiveInfinity);

        double x = xs[outside];
        double y = ys[outside];
        double longest = 0;
        while (true)
        {
            int next = 0;
            double shortest = double.PositiveInfinity;
            for (int i = 0; i < nearest.Length; i++)
            {
                double dx = outsideXs[i] - x;
                double dy = outsideYs[i] - y;
                double squared = Math.Min(nearest[i], dx * dx + dy * dy);
                nearest[i] = squared;
                if (squared < shortest)
                {
                    shortest = squared;
                    next = i;
                }
            }

            longest = Math.Max(longest, shortest);
            x = outsideXs[next];
            y = outsideYs[next];

            // The last point outside takes the place of the one that joins.
            outside--;
            if (outside == 0)
            {
                return Math.Sqrt(longest);
            }

            outsideXs[next] = outsideXs[outside];
            outsideYs[next] = outsideYs[outside];
            nearest[next] = nearest[outside];
            outsideXs = outsideXs[..outside];
            outsideYs = outsideYs[..outside];
            nearest = nearest[..outside];
        }
    }
}
