using ConcreteAttach.Calculation;

namespace ConcreteAttach.Geometry;

/// <summary>Rows of fasteners along an edge: a row is the fasteners at one distance from it.</summary>
internal static class Rows
{
    /// <summary>Length of the scratch that <paramref name="count"/> fasteners need.</summary>
    public static int ScratchLength(int count) => count + Ordering.ScratchLength(count);

    /// <summary>
    /// Orders the fasteners by their distance from the edge, nearest first, and returns the number of rows. Distances
    /// that differ from the first of the row by no more than the relative tolerance are one row; within a row the
    /// fasteners stand in the order of their index.
    /// </summary>
    /// <param name="distances">Distance from the edge of each fastener.</param>
    /// <param name="order">Receives the indices of the fasteners (as long as <paramref name="distances"/>).</param>
    /// <param name="starts">
    /// Receives where each row starts in <paramref name="order"/>, and after the last row the number of fasteners (one
    /// longer than <paramref name="distances"/>): row k is <c>order[starts[k]..starts[k + 1]]</c>.
    /// </param>
    /// <param name="scratch">Working memory of <see cref="ScratchLength"/>.</param>
    public static int Find(ReadOnlySpan<double> distances, Span<int> order, Span<int> starts, Span<double> scratch)
    {
        var memory = new Scratch(scratch);
        int count = distances.Length;
        Span<double> sorted = memory.Doubles(count);
        distances.CopyTo(sorted);
        for (int i = 0; i < count; i++)
        {
            order[i] = i;
        }

        Ordering.Ascending(sorted, order[..count], memory.Rest);

        int rows = 0;
        int start = 0;
        while (start < count)
        {
            double first = sorted[start];
            int end = start + 1;
            while (end < count && !Limit.IsBelow(first, sorted[end]))
            {
                end++;
            }

            order[start..end].Sort(); // the distances are equal: by index
            starts[rows++] = start;
            start = end;
        }

        starts[rows] = count;
        return rows;
    }
}
