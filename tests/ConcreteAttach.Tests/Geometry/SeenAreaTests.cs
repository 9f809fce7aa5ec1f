using ConcreteAttach.Geometry;
using NetTopologySuite.Geometries;
using Xunit.Abstractions;
using Shape = NetTopologySuite.Geometries.Geometry;

namespace ConcreteAttach.Tests.Geometry;

public sealed class SeenAreaTests(ITestOutputHelper output)
{
    /// <summary>Reference: NetTopologySuite: the union of the squares, each cut to the concrete without the shadows of its sides.</summary>
    [Theory]
    [InlineData(11)]
    [InlineData(12)]
    [InlineData(13)]
    public void Agrees_with_a_general_geometry_library(int randomSeed)
    {
        double largest = 0;
        int rectangles = 0;
        const int count = 600;
        foreach (Surface surface in InventedOutlines.Random(randomSeed, count))
        {
            Projection ours = Project(surface);
            Shape union = GeneralGeometry.Union(surface.Xs.Zip(surface.Ys, (x, y) =>
                GeneralGeometry.Cut(GeneralGeometry.Seen(surface, x, y), GeneralGeometry.Square(x, y, surface.Reach))));
            Envelope bounds = union.EnvelopeInternal;

            double difference = Math.Abs(ours.Area - union.Area) / union.Area;
            largest = Math.Max(largest, difference);
            Assert.True(difference <= 1e-8, $"{ours} is not {union.Area:R}: {surface}");
            // On whole numbers, also sheared ones, rays pass exactly between two corners: there the general library keeps slivers of the width of a rounding.
            var own = new Envelope(ours.Bounds.Left, ours.Bounds.Right, ours.Bounds.Bottom, ours.Bounds.Top);
            own.ExpandBy(1e-8);
            Assert.True(own.Contains(bounds) || surface.Kind.StartsWith("steps"), $"{ours} is not {bounds}: {surface}");
            own.ExpandBy(-2e-8);
            Assert.True(bounds.Contains(own), $"{ours} is not {bounds}: {surface}");
            Assert.Equal(ours.Area >= (1 - 1e-9) * ours.Bounds.Area, ours.IsRectangle);
            rectangles += ours.IsRectangle ? 1 : 0;
        }

        output.WriteLine(FormattableString.Invariant($"random seed {randomSeed}: {count} surfaces, {rectangles} rectangles, largest difference {largest:E1}"));
        Assert.InRange(rectangles, count / 50, count / 2);
    }

    /// <summary>A rectangle gives what the way for rectangles gives, for layouts of every kind.</summary>
    [Fact]
    public void Rectangle_gives_the_same_as_the_way_for_rectangles()
    {
        double largest = 0;
        foreach (Layout layout in InventedLayouts.Random(randomSeed: 21, 2000))
        {
            Rectangle extent = Layouts.ExtentOf(layout.Xs, layout.Ys);
            Rectangle concrete = new(
                Math.Max(layout.Concrete.Left, extent.Left - (3 * layout.HalfSide)), Math.Min(layout.Concrete.Right, extent.Right + (3 * layout.HalfSide)),
                Math.Max(layout.Concrete.Bottom, extent.Bottom - (3 * layout.HalfSide)), Math.Min(layout.Concrete.Top, extent.Top + (3 * layout.HalfSide)));
            if (layout.Xs.Any(x => x <= concrete.Left || x >= concrete.Right) || layout.Ys.Any(y => y <= concrete.Bottom || y >= concrete.Top))
            {
                continue;
            }

            Projection expected = (layout with { Concrete = concrete }).Project();
            Projection ours = Project(new(layout.Kind, Corners(concrete), [], layout.Xs, layout.Ys, layout.HalfSide));
            double difference = Math.Abs(ours.Area - expected.Area) / expected.Area;
            largest = Math.Max(largest, difference);
            Assert.True(difference <= 1e-12, $"{ours} is not {expected}: {layout}");
            Assert.Equal(expected.IsRectangle, ours.IsRectangle);
            Assert.Equal(expected.Bounds, ours.Bounds);
        }

        output.WriteLine($"largest difference {largest:E1}");
    }

    /// <summary>
    /// L-shape with arms 8 wide, re-entrant corner at (8, 8); fastener at (2, 14) with a reach of 12. The upper arm, 8 × 12, is seen whole. Below y = 8 the
    /// ray past the corner runs at 45° to (14, 2), where the square ends both ways: (8 + 14)/2 × 6 = 66. Together 162; without the shadow it would be 180.
    /// </summary>
    [Fact]
    public void Behind_a_re_entrant_corner_nothing_counts() =>
        Assert.Equal(96 + 66, Project(SeenConcreteTests.Given([(0, 0), (20, 0), (20, 8), (8, 8), (8, 20), (0, 20)], (2, 14)) with { Reach = 12 }).Area, 1e-12);

    /// <summary>
    /// A slot 2 wide and 6 deep beside the fastener at (5, 3), reach 9. Before the slot 9 × 10 = 90. Past its corner (9, 6) the ray rises 3 in 4 and meets x = 14, where
    /// the square ends, at 9.75: above it 5 × (4 + 0.25)/2 = 10.625.
    /// </summary>
    [Fact]
    public void Behind_a_slot_only_what_is_seen_over_it_counts() =>
        Assert.Equal(90 + 10.625, Project(SeenConcreteTests.Given([(0, 0), (9, 0), (9, 6), (11, 6), (11, 0), (20, 0), (20, 10), (0, 10)], (5, 3))).Area, 1e-12);

    /// <summary>
    /// A wall 4 wide at 30°, fastener on its axis, reach 9. Its faces cut every vertical line of the square at a distance of 4/cos 30°, and reach
    /// 9 tan 30° + 2/cos 30° = 7.5 high, within the square: 18 × 4/cos 30°.
    /// </summary>
    [Fact]
    public void Narrow_wall_at_30_degrees()
    {
        Surface wall = SeenConcreteTests.Given([(-50, -2), (50, -2), (50, 2), (-50, 2)], (0, 0)).Turned(Math.PI / 6);

        Assert.Equal(18 * 4 / Math.Cos(Math.PI / 6), Project(wall).Area, 1e-10);
        Assert.Equal(2, wall.Fasteners().SmallestEdge([0]), 1e-12);
    }

    /// <summary>
    /// Triangle with sides 30 and 40 on the axes, fastener at (10, 10), reach 9: the square from 1 to 19. The third side y = 40 − 4x/3 meets y = 19 at x = 15.75 and x = 19 at
    /// y = 44/3: it cuts off 3.25 × 13/3 / 2 from 18 × 18.
    /// </summary>
    [Fact]
    public void Triangle() =>
        Assert.Equal((18 * 18) - (3.25 * 13 / 6), Project(SeenConcreteTests.Given([(0, 0), (30, 0), (0, 40)], (10, 10))).Area, 1e-12);

    /// <summary>
    /// Slab 40 × 20, opening 4 × 4 in its middle, fasteners 10 from either end, reach 15. The left one sees the square up to x = 25 but for the shadow between
    /// slopes of ±2/8 from x = 18 on: 25 × 20 − (15² − 8²)/4 = 459.75. Behind the opening the right one sees what the left one does not. Above and
    /// below the opening both shadows leave a triangle of 4 × 0.5/2 to neither: 800 − 16 − 2 = 782.
    /// </summary>
    [Fact]
    public void Opening_between_two_fasteners()
    {
        Surface surface = SeenConcreteTests.Given([(0, 0), (40, 0), (40, 20), (0, 20)], (10, 10), (30, 10)) with
        {
            Reach = 15,
            Openings = [[(18, 8), (22, 8), (22, 12), (18, 12)]],
        };

        Assert.Equal(459.75, Project(surface, 0).Area, 1e-11);
        Assert.Equal(459.75, Project(surface, 1).Area, 1e-11);
        Assert.Equal(782, Project(surface).Area, 1e-11);
        Assert.False(Project(surface).IsRectangle);
        Assert.Equal(new Rectangle(0, 40, 0, 20), Project(surface).Bounds);
    }

    [Fact]
    public void No_fastener_reaches_nothing() =>
        Assert.Equal(default, SeenConcreteTests.Given([(0, 0), (30, 0), (0, 40)], (10, 10)).Fasteners().Project([], 9));

    [Fact]
    public void Quarter_turns_mirrors_order_and_orientation_leave_the_area() => Holds(surface =>
    [
        surface.Moved(p => (-p.Y, p.X)),
        surface.Moved(p => (-p.X, -p.Y)),
        surface.Moved(p => (p.X, -p.Y)),
        surface with { Outer = [.. surface.Outer.Reverse()], Openings = [.. surface.Openings.Select(o => o.Reverse().ToArray())] },
        surface with { Outer = [.. surface.Outer[2..], .. surface.Outer[..2]], Openings = [.. surface.Openings.Reverse()] },
        surface with { Xs = [.. surface.Xs.Reverse()], Ys = [.. surface.Ys.Reverse()] },
        surface with { Xs = [.. surface.Xs, surface.Xs[0]], Ys = [.. surface.Ys, surface.Ys[0]] },
    ]);

    /// <summary>A vertex in the middle of a side changes nothing.</summary>
    [Fact]
    public void Vertex_within_a_side_leaves_the_area() => Holds(surface =>
        [surface with { Outer = [surface.Outer[0], ((surface.Outer[0].X + surface.Outer[1].X) / 2, (surface.Outer[0].Y + surface.Outer[1].Y) / 2), .. surface.Outer[1..]] }]);

    [Fact]
    public void Area_grows_with_the_square_of_the_scale()
    {
        foreach (Surface surface in InventedOutlines.Random(31, 300))
        {
            foreach (double scale in new[] { 1e-3, 25.4, 1e4 })
            {
                Surface scaled = surface.Moved(p => (scale * p.X, scale * p.Y)) with { Reach = scale * surface.Reach };
                Assert.Equal(1, Project(scaled).Area / (scale * scale * Project(surface).Area), 1e-9);
            }
        }
    }

    /// <summary>What lies farther than the reach does not count: a slab of 40 × 20 with a spike far to the right.</summary>
    [Fact]
    public void Vertices_beyond_the_reach_change_nothing()
    {
        Surface near = SeenConcreteTests.Given([(0, 0), (40, 0), (40, 20), (0, 20)], (10, 10), (14, 3));
        Surface far = near with { Outer = [(0, 0), (40, 0), (90, 15), (40, 20), (0, 20)] };

        Assert.Equal(Project(near), Project(far));
    }

    [Fact]
    public void Larger_reach_and_another_fastener_never_cover_less_and_no_more_than_the_concrete()
    {
        foreach (Surface surface in InventedOutlines.Random(32, 600))
        {
            double area = Project(surface).Area;
            Assert.True(Project(surface with { Reach = 1.2 * surface.Reach }).Area >= area * (1 - 1e-12), surface.ToString());
            Assert.True(surface.Fasteners().Project(surface.All.AsSpan(1), surface.Reach).Area <= area * (1 + 1e-12), surface.ToString());
            Assert.InRange(area, 0, surface.Outline.Moments.Area * (1 + 1e-9));
        }
    }

    private static void Holds(Func<Surface, Surface[]> variants)
    {
        foreach (Surface surface in InventedOutlines.Random(30, 600))
        {
            double area = Project(surface).Area;
            foreach (Surface variant in variants(surface))
            {
                Assert.True(Math.Abs((Project(variant).Area / area) - 1) < 1e-10, $"{Project(variant).Area:R} is not {area:R}: {surface}");
            }
        }
    }

    private static Projection Project(Surface surface, params int[] group) =>
        surface.Fasteners().Project(group.Length == 0 ? surface.All : group, surface.Reach);

    private static (double X, double Y)[] Corners(Rectangle r) => [(r.Left, r.Bottom), (r.Right, r.Bottom), (r.Right, r.Top), (r.Left, r.Top)];
}
