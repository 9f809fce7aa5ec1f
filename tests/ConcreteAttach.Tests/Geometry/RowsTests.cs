using ConcreteAttach.Geometry;
using FsCheck;
using FsCheck.Fluent;

namespace ConcreteAttach.Tests.Geometry;

public sealed class RowsTests
{
    [Fact]
    public void Rows_are_ordered_from_the_edge_inward()
    {
        AssertRows([[1, 3], [0, 4], [2]], [12, 4, 20, 4, 12]);
    }

    [Fact]
    public void Distances_equal_but_for_rounding_are_one_row_in_the_order_of_the_fasteners()
    {
        AssertRows([[0, 1, 2]], [0.1 + 0.2, 0.3, 0.3 * (1 - 1e-10)]);
        AssertRows([[1], [0]], [0.3 * (1 + 1.1e-9), 0.3]);
        AssertRows([[0, 1]], [0.3 * (1 + 0.9e-9), 0.3]);
    }

    [Fact]
    public void A_row_is_measured_from_its_first_and_does_not_creep()
    {
        AssertRows([[0, 1], [2, 3]], [1, 1 + 0.8e-9, 1 + 1.6e-9, 1 + 2.4e-9]);
    }

    [Fact]
    public void No_fastener_no_row() => AssertRows([], []);

    [Fact]
    public void Agrees_with_grouping_by_distance() =>
        Prop.ForAll(InventedLayouts.OnQuarters(), layout =>
        {
            double[] distances = [.. layout.Xs.Select(x => x + 8)];
            int[][] expected =
            [
                .. from i in Enumerable.Range(0, distances.Length)
                   group i by distances[i] into row
                   orderby row.Key
                   select row.ToArray(),
            ];
            AssertRows(expected, distances);
        }).Check(Config.QuickThrowOnFailure.WithMaxTest(300));

    private static void AssertRows(int[][] expected, double[] distances)
    {
        int[] order = new int[distances.Length];
        int[] starts = new int[distances.Length + 1];
        int count = Rows.Find(distances, order, starts, new double[Rows.ScratchLength(distances.Length)]);
        Assert.Equal(expected, Enumerable.Range(0, count).Select(k => order[starts[k]..starts[k + 1]]));
    }
}
