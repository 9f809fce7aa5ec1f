using ConcreteAttach.Geometry;

namespace ConcreteAttach.Tests.Geometry;

/// <summary>Which edges count as "three or more edges" (ACI 318-19 17.6.2.1.2) in any outline.</summary>
public sealed class CloseSectorsTests
{
    /// <summary>In a rectangle the sectors are its four edges, to the last bit.</summary>
    [Fact]
    public void Rectangle_gives_its_four_edges()
    {
        var random = new Random(51);
        var counts = new int[5];
        for (int i = 0; i < 2000; i++)
        {
            var concrete = new Rectangle(-1 - random.Next(1, 60), 1 + random.Next(1, 60), -1 - random.Next(1, 60), 1 + random.Next(1, 60));
            (double X, double Y)[] places = [.. InventedLayouts.Scattered(random, random.Next(1, 6), 0, 0, 1)];
            Surface surface = SeenConcreteTests.Given(Corners(concrete), places);
            Rectangle extent = Layouts.ExtentOf(surface.Xs, surface.Ys);
            double limit = i % 3 == 0 ? concrete.Right - extent.Right : 60 * random.NextDouble(); // also at the limit itself

            (int Count, double Largest) expected = Layouts.CloseEdges(concrete, extent, limit);
            Assert.Equal(expected, surface.Fasteners().CloseEdges(surface.All, limit));
            Assert.Equal(Layouts.SmallestEdge(concrete, extent), surface.Fasteners().SmallestEdge(surface.All));
            counts[expected.Count]++;
        }

        Assert.All(counts, count => Assert.InRange(count, 20, 2000));
    }

    [Fact]
    public void Count_does_not_depend_on_the_axes_the_mirror_or_the_order()
    {
        var random = new Random(52);
        var counts = new int[5];
        foreach (Surface surface in InventedOutlines.Random(53, 900))
        {
            double limit = 12 * random.NextDouble();
            (int Count, double Largest) expected = surface.Fasteners().CloseEdges(surface.All, limit);
            counts[expected.Count]++;
            foreach (Surface variant in new[]
            {
                surface.Turned(7 * random.NextDouble()),
                surface.Turned(Math.PI / 4),
                surface.Moved(p => (p.Y, p.X)),
                surface with { Outer = [.. surface.Outer[1..], surface.Outer[0]], Openings = [.. surface.Openings.Reverse()] },
                surface with { Xs = [.. surface.Xs.Reverse()], Ys = [.. surface.Ys.Reverse()] },
            })
            {
                (int count, double largest) = variant.Fasteners().CloseEdges(surface.All, limit);
                Assert.True(expected.Count == count && Math.Abs(expected.Largest - largest) < 1e-8, $"({count}, {largest:R}) is not {expected}, limit {limit:R}: {surface}");
            }
        }

        Assert.All(counts[1..], count => Assert.InRange(count, 20, 900));
    }

    /// <summary>
    /// Right triangle 30, 40, 50 with its inscribed circle of radius 10: the fastener in the middle is 10 from all three sides. Their normals are 90°, 126.9° and 143.1° apart: whichever
    /// is taken first, the others lie in sectors of their own.
    /// </summary>
    [Theory]
    [InlineData(15, 3, 10)]
    [InlineData(10, 0, 0)]
    [InlineData(9, 0, 0)]
    public void Triangle_has_three_edges(double limit, int count, double largest)
    {
        (int Count, double Largest) close = SeenConcreteTests.Given([(0, 0), (30, 0), (0, 40)], (10, 10)).Fasteners().CloseEdges([0], limit);

        Assert.Equal(count, close.Count);
        Assert.Equal(largest, close.Largest, 1e-12);
    }

    /// <summary>
    /// A wide slab with one edge at 5, bent outward in three facets of normals −20°, 0° and +20°: three sides are close, one edge is. The largest distance is that of a slanting facet, whose nearest
    /// place is its corner (5, 2): √29.
    /// </summary>
    [Fact]
    public void Facets_of_one_edge_count_once()
    {
        double slope = 10 * Math.Tan(20 * Math.PI / 180);
        Surface surface = SeenConcreteTests.Given([(-90, -90), (5 - slope, -90), (5 - slope, -12), (5, -2), (5, 2), (5 - slope, 12), (5 - slope, 90), (-90, 90)], (0, 0));

        Assert.Equal(3, Enumerable.Range(0, 8).Count(side => surface.Fasteners().Distance(0, side) < 6));
        (int count, double largest) = surface.Fasteners().CloseEdges([0], 9);
        Assert.Equal(1, count);
        Assert.Equal(Math.Sqrt(29), largest, 1e-12);
    }

    /// <summary>
    /// Edges at 6 to the left and 7 above, the corner between them cut at 45°, 7.07 away (the fastener in (0, 0), the cut through (−6, 4) and (−3, 7), on y = x + 10: 10/√2).
    /// The cut goes with one of its neighbours: two edges, not three. The largest distance is still its own.
    /// </summary>
    [Fact]
    public void Corner_cut_at_45_degrees_makes_no_third_edge()
    {
        Surface surface = SeenConcreteTests.Given([(-6, -90), (90, -90), (90, 7), (-3, 7), (-6, 4)], (0, 0));

        (int count, double largest) = surface.Fasteners().CloseEdges([0], 9);
        Assert.Equal(2, count);
        Assert.Equal(10 / Math.Sqrt(2), largest, 1e-12);
    }

    /// <summary>
    /// The same corner cut so that the cut is the nearest, 8/√2 = 5.66 away, and the right edge at 8: without the cut three edges would be close. About the normal of the cut the left and
    /// the upper edge lie at 45° and go with it; the right edge lies at 135°, with the sector opposite. Two edges: the higher strength is not taken.
    /// </summary>
    [Fact]
    public void Nearest_side_at_45_degrees_takes_its_neighbours_along()
    {
        Surface surface = SeenConcreteTests.Given([(-6, -90), (8, -90), (8, 7), (-1, 7), (-6, 2)], (0, 0));

        Assert.Equal((2, 8), surface.Fasteners().CloseEdges([0], 9));
        Assert.Equal(3, SeenConcreteTests.Given([(-6, -90), (8, -90), (8, 7), (-6, 7)], (0, 0)).Fasteners().CloseEdges([0], 9).Count);
    }

    /// <summary>A column with eight sides, fastener on its axis: every sector has an edge.</summary>
    [Fact]
    public void Octagon_has_four_edges()
    {
        Surface surface = new("octagon", InventedOutlines.Regular(new Random(1), 0, 0, 10, 8), [], [0], [0], 9);
        (int count, double largest) = surface.Fasteners().CloseEdges([0], 9.5);

        Assert.Equal(4, count);
        Assert.Equal(10 * Math.Cos(Math.PI / 8), largest, 1e-12); // the inscribed circle
    }

    /// <summary>
    /// Behind a slot at 3 an edge at 5 is hidden: the fastener at (0, 0) sees the slot's face at x = 3 over its whole height, ±20, and past its ends the edge at x = 5 only
    /// at 5 × (1, 20/3) and farther.
    /// </summary>
    [Fact]
    public void Hidden_edge_counts_no_closer_than_where_it_is_seen()
    {
        Surface surface = SeenConcreteTests.Given([(-90, -90), (5, -90), (5, 90), (-90, 90)], (0, 0)) with { Openings = [[(3, -20), (4, -20), (4, 20), (3, 20)]] };
        FastenersInOutline fasteners = surface.Fasteners();

        Assert.Equal((1, 3), fasteners.CloseEdges([0], 9));
        Assert.Equal(5 * Math.Sqrt(1 + (400 / 9.0)), fasteners.Distance(0, 1), 1e-12);
    }

    [Fact]
    public void No_fastener_has_no_edge() =>
        Assert.Equal((0, 0), SeenConcreteTests.Given([(0, 0), (30, 0), (0, 40)], (10, 10)).Fasteners().CloseEdges([], 9));

    private static (double X, double Y)[] Corners(Rectangle r) => [(r.Left, r.Bottom), (r.Right, r.Bottom), (r.Right, r.Top), (r.Left, r.Top)];
}
