using ConcreteAttach.Geometry;
using NetTopologySuite.Geometries;
using Xunit.Abstractions;

namespace ConcreteAttach.Tests.Geometry;

/// <summary>Toward which sides a fastener may break out in shear, with c_a1 and c_a2.</summary>
public sealed class FacingSideTests(ITestOutputHelper output)
{
    private static readonly (double X, double Y)[] LShape = [(0, 0), (20, 0), (20, 8), (8, 8), (8, 20), (0, 20)];
    private static readonly (double X, double Y)[] WithSlot = [(0, 0), (9, 0), (9, 6), (11, 6), (11, 0), (20, 0), (20, 10), (0, 10)];

    [Fact]
    public void Rectangle()
    {
        FastenersInOutline fasteners = SeenConcreteTests.Given([(0, 0), (20, 0), (20, 10), (0, 10)], (3, 7)).Fasteners();

        Assert.Equal(new FacingSide(true, 7, 3, 3, 17), fasteners.Facing(0, 0)); // below
        Assert.Equal(new FacingSide(true, 17, 7, 7, 3), fasteners.Facing(0, 1)); // to the right
        Assert.Equal(new FacingSide(true, 3, 17, 17, 3), fasteners.Facing(0, 2)); // above
        Assert.Equal(new FacingSide(true, 3, 3, 3, 7), fasteners.Facing(0, 3)); // to the left
    }

    /// <summary>
    /// From (14, 4) in the right arm of an L: below, to the right and above as in a rectangle, above past the re-entrant corner at 6 on to the outer side at 14. Far to the left the outer
    /// side x = 0 at 14, its foot 16 from its upper end: before that, the upper side of the arm lies beside the way at 4. The inner side x = 8 is not faced: it looks away.
    /// The side y = 20 is not: its foot would lie beyond its end.
    /// </summary>
    [Fact]
    public void Arm_of_an_L()
    {
        FastenersInOutline fasteners = SeenConcreteTests.Given(LShape, (14, 4)).Fasteners();

        Assert.Equal(new FacingSide(true, 4, 14, 14, 6), fasteners.Facing(0, 0));
        Assert.Equal(new FacingSide(true, 6, 4, 4, 4), fasteners.Facing(0, 1));
        Assert.Equal(new FacingSide(true, 4, 6, 6, 14), fasteners.Facing(0, 2));
        Assert.Equal(default, fasteners.Facing(0, 3));
        Assert.Equal(default, fasteners.Facing(0, 4));
        Assert.Equal(new FacingSide(true, 14, 16, 4, 4), fasteners.Facing(0, 5));
    }

    /// <summary>
    /// Behind the re-entrant corner (8, 8) of the L, 2 from the line of each inner side and 2 and 3.1 from the corner: the foot on y = 8 lies 2 past the end of the side, within 1.5 × 2, so that the side is
    /// faced as if it went on to x = 0; the other foot lies 3.1 past, and the side x = 8 is not faced.
    /// </summary>
    [Fact]
    public void Side_is_faced_past_a_re_entrant_corner_where_the_breakout_reaches_back()
    {
        FastenersInOutline near = SeenConcreteTests.Given(LShape, (6, 6)).Fasteners();
        Assert.Equal(new FacingSide(true, 2, 14, 14, 6), near.Facing(0, 2));
        Assert.Equal(new FacingSide(true, 2, -2, 6, 14), near.Facing(0, 3));

        FastenersInOutline farther = SeenConcreteTests.Given(LShape, (6, 4.9)).Fasteners();
        Assert.True(farther.Facing(0, 2).Faces);
        Assert.Equal(default, farther.Facing(0, 3));
    }

    /// <summary>A slot between the foot and the re-entrant corner parts the fastener from the side.</summary>
    [Fact]
    public void Side_past_a_re_entrant_corner_is_not_faced_across_a_slot()
    {
        Surface surface = SeenConcreteTests.Given(LShape, (6, 6)) with { Openings = [[(6.5, 6.5), (7, 6.5), (7, 7.5), (6.5, 7.5)]] };

        Assert.Equal(default, surface.Fasteners().Facing(0, 2));
        Assert.Equal(default, surface.Fasteners().Facing(0, 3));
    }

    /// <summary>
    /// Corner of less than a right angle: toward the side on the x axis from (10, 10) the third side, y = 40 − 4x/3, comes as near as 22.5 − 10 = 12.5 at the level of the fastener, not 20 as at
    /// the end of the side.
    /// </summary>
    [Fact]
    public void Acute_corner_counts_at_the_level_of_the_fastener()
    {
        FacingSide facing = SeenConcreteTests.Given([(0, 0), (30, 0), (0, 40)], (10, 10)).Fasteners().Facing(0, 0);

        Assert.Equal((true, 10, 10, 10), (facing.Faces, facing.Distance, facing.Foot, facing.TowardStart));
        Assert.Equal(12.5, facing.TowardEnd, 1e-12);
    }

    /// <summary>Corner of more than a right angle: the side from (0, 0) ends at (10, 0), and what lies beyond the bend is left out.</summary>
    [Fact]
    public void Obtuse_corner_counts_at_the_end_of_the_side() =>
        Assert.Equal(new FacingSide(true, 4, 8, 8, 2), SeenConcreteTests.Given([(0, 0), (10, 0), (20, 10), (20, 30), (0, 30)], (8, 4)).Fasteners().Facing(0, 0));

    /// <summary>An opening beside the fastener, 3 away at the nearest, is a side edge; behind the level of the fastener it is not.</summary>
    [Fact]
    public void Opening_beside_the_fastener_is_a_side_edge()
    {
        Surface surface = SeenConcreteTests.Given([(0, 0), (40, 0), (40, 20), (0, 20)], (20, 10), (20, 3)) with { Openings = [[(24, 5), (25, 4), (24, 8), (23, 7)]] };
        FastenersInOutline fasteners = surface.Fasteners();

        Assert.Equal(new FacingSide(true, 10, 20, 20, 3), fasteners.Facing(0, 0));
        Assert.Equal(new FacingSide(true, 3, 20, 20, 20), fasteners.Facing(1, 0));
    }

    /// <summary>A slot 6 deep bars the way from (5, 3) to the right side, not that from (5, 8).</summary>
    [Fact]
    public void Slot_bars_the_way()
    {
        FastenersInOutline fasteners = SeenConcreteTests.Given(WithSlot, (5, 3), (5, 8)).Fasteners();

        Assert.False(fasteners.Facing(0, 5).Faces);
        Assert.Equal(new FacingSide(true, 15, 8, 2, 2), fasteners.Facing(1, 5)); // 2 above the slot and 2 below the upper side
    }

    /// <summary>Level with the bottom of the slot the way touches it: still free, but with no concrete on that hand. A mirror changes nothing.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(-1)]
    public void Way_that_touches_is_free(int direction)
    {
        Surface surface = SeenConcreteTests.Given(WithSlot, (5, 6)).Moved(p => (p.X, direction * p.Y));
        FacingSide facing = Facing(surface, 15);

        Assert.Equal((0, 4), (Math.Min(facing.TowardStart, facing.TowardEnd), Math.Max(facing.TowardStart, facing.TowardEnd)));
    }

    /// <summary>A lozenge with two corners on the way: the way passes through it at its vertices. Moved down by 2 it is only touched.</summary>
    [Theory]
    [InlineData(0, false)]
    [InlineData(-2, true)]
    [InlineData(2, true)]
    public void Way_through_vertices_is_barred(double moved, bool isFree)
    {
        Surface surface = SeenConcreteTests.Given([(0, 0), (20, 0), (20, 10), (0, 10)], (5, 5)) with
        {
            Openings = [[(10, 5 + moved), (12, 7 + moved), (14, 5 + moved), (12, 3 + moved)]],
        };

        Assert.Equal(isFree, surface.Fasteners().Facing(0, 1).Faces);
    }

    /// <summary>A foot at the end of a side, within 1e-9 of the outline's size, still lies on it.</summary>
    [Theory]
    [InlineData(10, true)]
    [InlineData(10 + 1e-9, true)]
    [InlineData(10 + 1e-6, false)]
    public void Foot_at_the_end_lies_on_the_side(double x, bool faces)
    {
        FacingSide facing = SeenConcreteTests.Given([(0, 0), (10, 0), (20, 10), (20, 30), (0, 30)], (x, 4)).Fasteners().Facing(0, 0);

        Assert.Equal(faces, facing.Faces);
        Assert.Equal(0, facing.TowardEnd);
    }

    /// <summary>
    /// Reference: NetTopologySuite. The way to the foot lies in the concrete exactly where the side is faced. The strip between the fastener and the side, as wide as c_a2 both ways, is all concrete;
    /// wider by 1 % it is not, except beyond a convex end of the side. Past a re-entrant end a side is faced where the strip back to it is no wider than 1.5 c_a1 and all concrete.
    /// </summary>
    [Fact]
    public void Agrees_with_a_general_geometry_library()
    {
        var factory = new GeometryFactory();
        int faced = 0;
        int barred = 0;
        int limited = 0;
        int past = 0;
        foreach (Surface surface in InventedOutlines.Random(61, 600).Where(s => !s.Kind.StartsWith("steps")))
        {
            FastenersInOutline fasteners = surface.Fasteners();
            var concrete = GeneralGeometry.Concrete(surface);
            for (int i = 0; i < surface.Xs.Length; i++)
            {
                for (int k = 0; k < fasteners.Outline.Sides.Length; k++)
                {
                    OutlineSide side = fasteners.Outline.Sides[k];
                    double distance = side.DistanceFromLine(surface.Xs[i], surface.Ys[i]);
                    double foot = side.FootOf(surface.Xs[i], surface.Ys[i]);
                    if (distance <= 0)
                    {
                        Assert.False(fasteners.Facing(i, k).Faces);
                        continue;
                    }

                    (double X, double Y) At(double along, double ahead) => (
                        surface.Xs[i] + (along * -side.NormalY) + (ahead * side.NormalX), surface.Ys[i] + (along * side.NormalX) + (ahead * side.NormalY));

                    Coordinate Place(double along, double ahead) => new(At(along, ahead).X, At(along, ahead).Y);
                    // A little short of the side: on sides that lie on each other but for a rounding the general library's difference fails.
                    const double shy = 1 - 1e-6;
                    double Missing(double from, double to) => GeneralGeometry.Without(
                        GeneralGeometry.Polygon([At(from, 0), At(to, 0), At(to, shy * distance), At(from, shy * distance)]), concrete).Area;
                    bool GoesOn(double place) => concrete.Contains(new Point(Place(place - foot, 0.9999 * distance).X, Place(place - foot, 0.9999 * distance).Y))
                        && concrete.Contains(new Point(Place(place - foot, distance).X, Place(place - foot, distance).Y));
                    bool startsReentrant = GoesOn(-1e-5);
                    bool endsReentrant = GoesOn(side.Length + 1e-5);
                    bool isFree = concrete.Covers(factory.CreateLineString([Place(0, 0), Place(0, distance * (1 - 1e-9))]));
                    double beyond = Math.Max(-foot, foot - side.Length);
                    bool reachesBack = beyond > 0 && beyond < 1.5 * distance && (foot < 0 ? startsReentrant : endsReentrant)
                        && Missing(Math.Min(0, -Math.Sign(foot) * beyond), Math.Max(0, -Math.Sign(foot) * beyond)) < 1e-8;
                    FacingSide facing = fasteners.Facing(i, k);
                    Assert.True((isFree && (beyond <= 0 || reachesBack)) == facing.Faces, $"side {k}, fastener {i}, free {isFree}, {beyond} beyond, ends {startsReentrant} {endsReentrant}, joined {reachesBack}, {facing}, {side}: {surface}");
                    if (!facing.Faces)
                    {
                        barred += beyond <= 0 ? 1 : 0;
                        continue;
                    }

                    faced++;
                    past += beyond > 0 ? 1 : 0;
                    double missing = facing.TowardStart + facing.TowardEnd == 0 ? 0 : Missing(-shy * facing.TowardStart, shy * facing.TowardEnd);
                    Assert.True(missing < 1e-8, $"side {k}, fastener {i}, missing {missing}, {facing}: {surface}");
                    if (endsReentrant || facing.TowardEnd < side.Length - foot)
                    {
                        limited++;
                        Assert.True(Missing(0, Math.Max(0.01, 1.01 * facing.TowardEnd)) > 1e-12, $"side {k}, fastener {i}: {surface}");
                    }

                    if (startsReentrant || facing.TowardStart < foot)
                    {
                        Assert.True(Missing(-Math.Max(0.01, 1.01 * facing.TowardStart), 0) > 1e-12, $"side {k}, fastener {i}: {surface}");
                    }
                }
            }
        }

        output.WriteLine($"{faced} faced, {past} of them past a re-entrant corner, {barred} barred, {limited} with something before the end of the side");
        Assert.True(faced > 2000 && past > 200 && barred > 500 && limited > 300);
    }

    [Fact]
    public void Turning_changes_nothing()
    {
        var random = new Random(62);
        foreach (Surface surface in InventedOutlines.Random(63, 300).Where(s => !s.Kind.StartsWith("steps")))
        {
            FastenersInOutline fasteners = surface.Fasteners();
            FastenersInOutline turned = surface.Turned(7 * random.NextDouble()).Fasteners();
            for (int i = 0; i < surface.Xs.Length; i++)
            {
                for (int k = 0; k < fasteners.Outline.Sides.Length; k++)
                {
                    FacingSide a = fasteners.Facing(i, k);
                    FacingSide b = turned.Facing(i, k);
                    Assert.True(a.Faces == b.Faces, $"side {k}, fastener {i}, {a}, {b}: {surface}");
                    Assert.Equal(a.Distance, b.Distance, 1e-9);
                    Assert.True(Math.Abs(a.TowardStart - b.TowardStart) + Math.Abs(a.TowardEnd - b.TowardEnd) < 1e-6, $"side {k}, fastener {i}, {a}, {b}: {surface}");
                }
            }
        }
    }

    private static FacingSide Facing(Surface surface, double distance)
    {
        FastenersInOutline fasteners = surface.Fasteners();
        return Assert.Single(
            Enumerable.Range(0, fasteners.Outline.Sides.Length).Select(side => fasteners.Facing(0, side)),
            facing => facing.Faces && Math.Abs(facing.Distance - distance) < 1e-9);
    }
}
