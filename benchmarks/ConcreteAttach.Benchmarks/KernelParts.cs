using ConcreteAttach.Calculation;
using ConcreteAttach.Geometry;

namespace ConcreteAttach.Benchmarks;

/// <summary>Parts of a row for the kernels, which order the fasteners in each call; the library has them ordered since it prepared the attachment.</summary>
internal static class KernelParts
{
    /// <summary>Length of the scratch that a row of <paramref name="count"/> fasteners needs.</summary>
    public static int ScratchLength(int count) => count + Ordering.ScratchLength(count);

    /// <summary>Orders the fasteners of a row along it, and returns the number of parts: gaps at the limit part them.</summary>
    /// <param name="places">Place along the line of every fastener of the layout.</param>
    /// <param name="row">The row's fasteners; reordered.</param>
    /// <param name="limit">The gap at which neighbours are apart.</param>
    /// <param name="starts">Receives where each part starts, and after the last one the number of fasteners.</param>
    /// <param name="scratch">Working memory of <see cref="ScratchLength"/>.</param>
    public static int Find(ReadOnlySpan<double> places, Span<int> row, double limit, Span<int> starts, Span<double> scratch)
    {
        var memory = new Scratch(scratch);
        Span<double> sorted = memory.Doubles(row.Length);
        for (int i = 0; i < row.Length; i++)
        {
            sorted[i] = places[row[i]];
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
