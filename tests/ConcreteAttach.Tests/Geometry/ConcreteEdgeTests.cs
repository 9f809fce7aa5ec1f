using ConcreteAttach.Geometry;
using FsCheck;
using FsCheck.Fluent;

namespace ConcreteAttach.Tests.Geometry;

public sealed class ConcreteEdgeTests
{
    private static readonly Rectangle Slab = new(-20, 30, -40, 50);

    [Fact]
    public void Only_sides_with_an_edge_are_edges_in_the_order_of_the_sides()
    {
        Assert.Empty(ConcreteEdge.Of(Rectangle.Unbounded, [0], [0]));
        Assert.Equal([ConcreteSide.MinusX, ConcreteSide.PlusY], Sides(new(-20, double.PositiveInfinity, double.NegativeInfinity, 50)));
        Assert.Equal(ConcreteSides.All, Sides(Slab));

        static ConcreteSide[] Sides(Rectangle concrete) => [.. ConcreteEdge.Of(concrete, [0], [0]).Select(e => e.Side)];
    }

    [Theory]
    [InlineData("+x", 29, 2, -40, 50, 7, 5)]
    [InlineData("-x", 21, 2, -40, 50, -7, 5)]
    [InlineData("+y", 48, 1, -20, 30, 5, 7)]
    [InlineData("-y", 42, 1, -20, 30, -5, 7)]
    public void Distance_place_and_directions(string side, double distance, double place, double low, double high, double outward, double along)
    {
        ConcreteEdge edge = At(ConcreteSides.All.Single(s => s.ToString() == side), [1], [2]);

        Assert.Equal([distance], edge.Distances);
        Assert.Equal([place], edge.Places);
        Assert.Equal([place - low], edge.ToLow);
        Assert.Equal([high - place], edge.ToHigh);
        Assert.Equal((outward, along), (edge.Outward(7, 5), edge.Along(7, 5)));
        Assert.Equal(Math.Min(high - place, place - low), edge.ToNearestSide(0));
    }

    [Fact]
    public void Order_is_by_rows_from_the_edge_and_along_it_in_a_row()
    {
        ConcreteEdge edge = At(ConcreteSide.MinusY, [9, 3, 0, 3, -9], [1, 1, 0, 2, 1]);

        Assert.Equal([2, 4, 1, 0, 3], edge.Order);
        AssertRows([[2], [4, 1, 0], [3]], edge, edge.Order);
        AssertRows([[4, 0], [3]], edge, [4, 0, 3]);
        AssertRows([], edge, []);
    }

    [Fact]
    public void Fasteners_of_a_row_have_the_distance_of_its_first()
    {
        double near = 30 - (10 * (1 + 0.9e-9));
        ConcreteEdge edge = At(ConcreteSide.PlusX, [20, near, 30 - (10 * (1 + 1.1e-9))], [0, -1, -2]);

        Assert.Equal(10, edge.Distances[0]);
        Assert.Equal(10, edge.Distances[1]);
        Assert.NotEqual(10, edge.Distances[2]);
        AssertRows([[1, 0], [2]], edge, edge.Order);
    }

    /// <summary>The rows of those that count are the rows that they would make alone.</summary>
    [Fact]
    public void Rows_of_some_are_the_rows_found_among_them() =>
        Prop.ForAll(InventedLayouts.OnQuarters(), layout =>
        {
            foreach (ConcreteEdge edge in ConcreteEdge.Of(new(-100, 100, -100, 100), layout.Xs, layout.Ys))
            {
                int[] some = [.. edge.Order.Where(i => i % 3 != 0)];
                int[][] expected =
                [
                    .. from i in some
                       group i by 100 - edge.Outward(layout.Xs[i], layout.Ys[i]) into row
                       orderby row.Key
                       select row.ToArray(),
                ];
                AssertRows(expected, edge, some);
                Assert.All(expected, row => Assert.Equal(row.Select(i => edge.Places[i]).Order(), row.Select(i => edge.Places[i])));
            }
        }).Check(Config.QuickThrowOnFailure.WithMaxTest(200));

    private static ConcreteEdge At(ConcreteSide side, double[] xs, double[] ys) => ConcreteEdge.Of(Slab, xs, ys).Single(e => e.Side == side);

    private static void AssertRows(int[][] expected, ConcreteEdge edge, int[] fasteners)
    {
        int[] starts = new int[fasteners.Length + 1];
        int rows = edge.FindRows(fasteners, starts);
        Assert.Equal(expected, Enumerable.Range(0, rows).Select(k => fasteners[starts[k]..starts[k + 1]]));
    }
}
