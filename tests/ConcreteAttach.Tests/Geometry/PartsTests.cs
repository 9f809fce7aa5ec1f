using ConcreteAttach.Geometry;
using FsCheck;
using FsCheck.Fluent;

namespace ConcreteAttach.Tests.Geometry;

public sealed class PartsTests
{
    [Fact]
    public void Row_falls_apart_at_wide_gaps() =>
        AssertParts([[4, 1], [2], [0, 3]], positions: [40, 5, 20, 45, 0], row: [0, 1, 2, 3, 4], limit: 12);

    [Fact]
    public void Fasteners_of_other_rows_do_not_count() =>
        AssertParts([[0], [2]], positions: [0, 5, 10], row: [0, 2], limit: 9);

    [Theory]
    [InlineData(12, true)]
    [InlineData(12 * (1 - 0.9e-9), true)]
    [InlineData(12 * (1 - 1.1e-9), false)]
    [InlineData(12 * (1 + 1e-10), true)]
    public void At_the_limit_neighbours_are_apart(double gap, bool apart) =>
        AssertParts(apart ? [[0], [1]] : [[0, 1]], positions: [0, gap], row: [0, 1], limit: 12);

    [Fact]
    public void Gaps_are_measured_between_neighbours_and_a_chain_holds() =>
        AssertParts([[0, 1, 2, 3]], positions: [0, 11, 22, 33], row: [3, 1, 2, 0], limit: 12);

    /// <summary>Concrete ends 4 past the first: before its neighbour at 5, not before one at 4.</summary>
    [Theory]
    [InlineData(5, true)]
    [InlineData(4, false)]
    public void Where_concrete_ends_between_them_neighbours_are_apart(double gap, bool apart) =>
        Assert.Equal(apart ? [[0], [1]] : [[0, 1]], Find([0, gap], [0, 1], 12, [4, 100]));

    [Fact]
    public void Empty_row_has_no_part() => AssertParts([], positions: [1, 2], row: [], limit: 1);

    [Fact]
    public void Every_fastener_is_in_one_part_and_gaps_decide() =>
        Prop.ForAll(InventedLayouts.OnQuarters(), layout =>
        {
            int[] row = [.. Enumerable.Range(0, layout.Count).Where(i => i % 3 != 0)];
            int[][] parts = Find(layout.Xs, [.. row], layout.HalfSide);
            bool complete = parts.SelectMany(p => p).Order().SequenceEqual(row);
            bool together = parts.All(part => part.Skip(1).Zip(part, (b, a) => layout.Xs[b] - layout.Xs[a])
                .All(gap => gap >= 0 && gap < layout.HalfSide));
            bool apart = parts.Skip(1).Zip(parts, (b, a) => layout.Xs[b[0]] - layout.Xs[a[^1]])
                .All(gap => gap >= layout.HalfSide);
            return complete && together && apart;
        }).Check(Config.QuickThrowOnFailure.WithMaxTest(300));

    private static void AssertParts(int[][] expected, double[] positions, int[] row, double limit) =>
        Assert.Equal(expected, Find(positions, row, limit));

    private static int[][] Find(double[] positions, int[] row, double limit, double[]? toHigh = null)
    {
        Array.Sort(row, (a, b) => positions[a].CompareTo(positions[b]));
        int[] starts = new int[row.Length + 1];
        int count = Parts.Find(positions, toHigh ?? [.. positions.Select(_ => double.PositiveInfinity)], row, limit, starts);
        return [.. Enumerable.Range(0, count).Select(k => row[starts[k]..starts[k + 1]])];
    }
}
