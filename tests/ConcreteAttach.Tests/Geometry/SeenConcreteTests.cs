using ConcreteAttach.Geometry;
using Xunit.Abstractions;

namespace ConcreteAttach.Tests.Geometry;

public sealed class SeenConcreteTests(ITestOutputHelper output)
{
    /// <summary>Reference: NetTopologySuite, the concrete without the shadows of its sides. The difference of the two regions is compared, not only their areas.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    public void Agrees_with_the_shadows_of_a_general_geometry_library(int randomSeed)
    {
        double largest = 0;
        int views = 0;
        int partly = 0;
        foreach (Surface surface in InventedOutlines.Random(randomSeed, 600))
        {
            foreach (SeenConcrete seen in surface.Fasteners().Seen)
            {
                NetTopologySuite.Geometries.Geometry expected = GeneralGeometry.Seen(surface, seen.X, seen.Y);
                double difference = Math.Abs(Area(seen) - expected.Area) / expected.Area;
                largest = Math.Max(largest, difference);
                views++;
                partly += expected.Area < 0.999 * surface.Outline.Moments.Area ? 1 : 0;
                Assert.True(difference <= 1e-8, $"{Area(seen):R} is not {expected.Area:R} from ({seen.X:R}, {seen.Y:R}): {surface}");
            }
        }

        output.WriteLine(FormattableString.Invariant($"random seed {randomSeed}: {views} views, {partly} of a part of the concrete, largest difference {largest:E1}"));
        Assert.InRange(partly, views / 5, views - (views / 10)); // both are put to the test
    }

    [Fact]
    public void Whole_rectangle_is_seen_with_its_own_vertices()
    {
        Surface surface = Given([(0, 0), (20, 0), (20, 10), (0, 10)], (3, 7));
        SeenConcrete seen = surface.Fasteners().Seen[0];

        Assert.Equal(4, seen.Xs.Length);
        Assert.Equal(200, Area(seen));
        Assert.Equal([3, 3, 7, 17], seen.Parts.ToArray().Select(p => p.Distance).Order());
        Assert.DoesNotContain(true, seen.IsShadow.ToArray());
    }

    [Fact]
    public void Nothing_is_seen_from_outside_or_from_an_opening()
    {
        Surface surface = Given([(0, 0), (20, 0), (20, 10), (0, 10)], (25, 5), (6, 6), (20, 5)) with { Openings = [[(5, 5), (7, 5), (7, 7), (5, 7)]] };

        Assert.All(surface.Fasteners().Seen.ToArray(), seen => Assert.Equal(0, seen.Xs.Length + seen.Parts.Length));
    }

    /// <summary>
    /// A side on the line through the fastener is seen edge-on: not at all. From (4, 8) along y = 8 the upper side of the arm (8, 8)–(20, 8) is such a side;
    /// one unit lower it is seen.
    /// </summary>
    [Fact]
    public void Side_on_the_line_through_the_fastener_is_not_seen()
    {
        Surface surface = Given([(0, 0), (20, 0), (20, 8), (8, 8), (8, 20), (0, 20)], (4, 8), (4, 7));
        FastenersInOutline fasteners = surface.Fasteners();

        Assert.Equal(double.PositiveInfinity, fasteners.Distance(0, 2));
        Assert.Equal(Math.Sqrt((4 * 4) + 1), fasteners.Distance(1, 2), 1e-12); // to its end (8, 8)
    }

    /// <summary>Turning all by any angle, and a mirror, leave area and distances as they are.</summary>
    [Fact]
    public void View_does_not_depend_on_the_axes()
    {
        var random = new Random(5);
        foreach (Surface surface in InventedOutlines.Random(3, 600))
        {
            FastenersInOutline fasteners = surface.Fasteners();
            FastenersInOutline turned = surface.Turned(7 * random.NextDouble()).Fasteners();
            FastenersInOutline mirrored = surface.Moved(p => (-p.X, p.Y)).Fasteners();
            for (int i = 0; i < surface.Xs.Length; i++)
            {
                double area = Area(fasteners.Seen[i]);
                Assert.Equal(1, Area(turned.Seen[i]) / area, 1e-9);
                Assert.Equal(1, Area(mirrored.Seen[i]) / area, 1e-9);
                double[] distances = DistancesOf(fasteners, i);
                AssertSame(distances, DistancesOf(turned, i), surface);
                AssertSame(distances, DistancesOf(mirrored, i), surface);
            }
        }

        static double[] DistancesOf(FastenersInOutline fasteners, int i) =>
            [.. Enumerable.Range(0, fasteners.Outline.Sides.Length).Select(side => fasteners.Distance(i, side)).Order()];

        static void AssertSame(double[] expected, double[] actual, Surface surface)
        {
            for (int k = 0; k < expected.Length; k++)
            {
                Assert.True(expected[k] == actual[k] || Math.Abs(expected[k] - actual[k]) < 1e-8, $"{expected[k]:R} is not {actual[k]:R}: {surface}");
            }
        }
    }

    [Fact]
    public void Nearest_side_is_seen_at_its_distance()
    {
        foreach (Surface surface in InventedOutlines.Random(4, 600))
        {
            FastenersInOutline fasteners = surface.Fasteners();
            for (int i = 0; i < surface.Xs.Length; i++)
            {
                double expected = GeneralGeometry.Concrete(surface).Boundary.Distance(new NetTopologySuite.Geometries.Point(surface.Xs[i], surface.Ys[i]));
                Assert.Equal(expected, fasteners.SmallestEdge([i]), 1e-9);
                Assert.Equal(expected, surface.Outline.DistanceFrom(surface.Xs[i], surface.Ys[i]), 1e-9);
            }
        }
    }

    internal static Surface Given((double X, double Y)[] outer, params (double X, double Y)[] fasteners) =>
        new("given", outer, [], [.. fasteners.Select(p => p.X)], [.. fasteners.Select(p => p.Y)], 9);

    private static double Area(SeenConcrete seen) => SimplePolygon.SignedArea(seen.Xs, seen.Ys);
}
