using ConcreteAttach.Calculation;

namespace ConcreteAttach.Geometry;

/// <summary>Parts of a row: fasteners along a line fall apart where the gap between neighbours reaches a limit.</summary>
internal static class Parts
{
    /// <summary>Length of the scratch that a row of <paramref name="count"/> fasteners needs.</summary>
    public static int ScratchLength(int count) => count + Ordering.ScratchLength(count);

    /// <summary>
    /// Orders the fasteners of a row by their position along it and returns the number of parts. A gap at the limit,
    /// within the relative tolerance, parts them.
    /// </summary>
    /// <param name="positions">Position along the line of every fastener of the layout, by its index.</param>
    /// <param name="row">Indices of the row's fasteners; reordered by position.</param>
    /// <param name="limit">The gap at which neighbours are apart.</param>
    /// <param name="starts">
    /// Receives where each part starts in <paramref name="row"/>, and after the last part the number of fasteners of
    /// the row (one longer than <paramref name="row"/>): part k is <c>row[starts[k]..starts[k + 1]]</c>.
    /// </param>
    /// <param name="scratch">Working memory of <see cref="ScratchLength"/>.</param>
    public static int Find(
        ReadOnlySpan<double> positions, Span<int> row, double limit, Span<int> starts, Span<double> scratch)
    {
        var memory = new Scratch(scratch);
        Span<double> sorted = memory.Doubles(row.Length);
        for (int i = 0; i < row.Length; i++)
        {
            sorted[i] = positions[row[i]];
        }

        Ordering.Ascending(sorted, row, memory.Rest);

        int parts = 0;
        for (int i = 0; i < row.Length; i++)
        {
            if (i == 0 || !Limit.IsBelow(sorted[i] - sorted[i - 1], limit))
            {
                starts[parts++] = i;
            }
        }

        starts[parts] = row.Length;
        return parts;
    }
}
