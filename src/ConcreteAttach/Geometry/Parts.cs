using ConcreteAttach.Calculation;

namespace ConcreteAttach.Geometry;

/// <summary>Parts of a row: fasteners along a line fall apart where the gap between neighbours reaches a limit, and where concrete ends between them.</summary>
internal static class Parts
{
    /// <summary>
    /// Finds the parts of a row and returns their number. A gap at the limit, within the relative tolerance, parts neighbours.
    /// </summary>
    /// <param name="places">Place along the line of every fastener of the layout, by its number.</param>
    /// <param name="toHigh">How far concrete reaches along the line from every fastener, the way in which places grow.</param>
    /// <param name="row">Numbers of the row's fasteners, in their order along the line.</param>
    /// <param name="limit">The gap at which neighbours are apart.</param>
    /// <param name="starts">
    /// Receives where each part starts in <paramref name="row"/>, and after the last part the number of fasteners of
    /// the row (one longer than <paramref name="row"/>): part k is <c>row[starts[k]..starts[k + 1]]</c>.
    /// </param>
    public static int Find(ReadOnlySpan<double> places, ReadOnlySpan<double> toHigh, ReadOnlySpan<int> row, double limit, Span<int> starts)
    {
        int parts = 0;
        for (int i = 0; i < row.Length; i++)
        {
            if (i == 0 || AreApart(places[row[i]] - places[row[i - 1]], toHigh[row[i - 1]]))
            {
                starts[parts++] = i;
            }
        }

        starts[parts] = row.Length;
        return parts;

        bool AreApart(double gap, double concrete) => !Limit.IsBelow(gap, limit) || Limit.IsBelow(concrete, gap);
    }
}
