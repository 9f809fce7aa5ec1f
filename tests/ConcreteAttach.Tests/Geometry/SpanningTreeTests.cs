using ConcreteAttach.Geometry;
using FsCheck;
using FsCheck.Fluent;

namespace ConcreteAttach.Tests.Geometry;

public sealed class SpanningTreeTests
{
    [Fact]
    public void One_fastener_has_no_link()
    {
        Assert.Equal(0, LongestLink([5], [7]));
        Assert.Equal(0, LongestLink([], []));
        Assert.Equal(0, LongestLink([5, 5, 5], [7, 7, 7]));
    }

    [Fact]
    public void Two_fasteners_have_their_distance() => Assert.Equal(5, LongestLink([1, 4], [1, 5]));

    [Fact]
    public void Grid_has_its_larger_spacing()
    {
        // 3 × 2 at 6 across and 9 along: rows are linked along the short spacing, then to each other.
        Assert.Equal(9, LongestLink([0, 6, 12, 0, 6, 12], [0, 0, 0, 9, 9, 9]));
    }

    [Fact]
    public void Uneven_row_has_its_largest_gap_in_any_order() =>
        Assert.Equal(7, LongestLink([10, 0, 3, 17, 4], [2, 2, 2, 2, 2]), 1e-12);

    [Fact]
    public void Agrees_with_links_taken_shortest_first() =>
        Prop.ForAll(InventedLayouts.OnQuarters(), layout =>
            LongestLink(layout.Xs, layout.Ys) == LongestOfShortestFirst(layout.Xs, layout.Ys))
            .Check(Config.QuickThrowOnFailure.WithMaxTest(300));

    [Theory]
    [InlineData(11)]
    [InlineData(12)]
    public void Agrees_with_links_taken_shortest_first_on_layouts_of_every_kind(int randomSeed)
    {
        foreach (Layout layout in InventedLayouts.Random(randomSeed, 500))
        {
            double expected = LongestOfShortestFirst(layout.Xs, layout.Ys);
            Assert.True(
                Math.Abs(LongestLink(layout.Xs, layout.Ys) - expected) <= 1e-12 * expected,
                $"random seed {randomSeed}, not {expected:R}: {layout}");
        }
    }

    private static double LongestLink(double[] xs, double[] ys)
    {
        double[] scratch = new double[SpanningTree.ScratchLength(xs.Length)];
        Array.Fill(scratch, double.NaN);
        return SpanningTree.LongestLink(xs, ys, scratch);
    }

    /// <summary>Takes all links by length and keeps those that join two trees (the method known as Kruskal's).</summary>
    private static double LongestOfShortestFirst(double[] xs, double[] ys)
    {
        int[] tree = [.. Enumerable.Range(0, xs.Length)];
        double longest = 0;
        var links =
            from i in Enumerable.Range(0, xs.Length)
            from k in Enumerable.Range(0, i)
            let dx = xs[i] - xs[k]
            let dy = ys[i] - ys[k]
            let squared = dx * dx + dy * dy
            orderby squared
            select (i, k, squared);
        foreach ((int i, int k, double squared) in links)
        {
            (int from, int to) = (tree[i], tree[k]);
            if (from != to)
            {
                longest = Math.Sqrt(squared);
                tree = [.. tree.Select(t => t == from ? to : t)];
            }
        }

        return longest;
    }
}
