using ConcreteAttach.Geometry;
using ConcreteAttach.Quantities;
using UnitsNet;
using Xunit.Abstractions;

namespace ConcreteAttach.Tests.Geometry;

public sealed class SurfaceOutlineTests(ITestOutputHelper output)
{
    private static readonly (double X, double Y)[] Slab = [(0, 0), (20, 0), (20, 10), (0, 10)];
    private static readonly (double X, double Y)[] Hole = [(4, 4), (6, 4), (6, 6), (4, 6)];

    [Fact]
    public void Vertices_stay_as_given()
    {
        SurfaceOutline outline = Of(Slab).WithOpening(Surface.Places(Hole));

        Assert.Equal(Surface.Places(Slab), outline.Vertices);
        Assert.True(Surface.Places(Hole).AsSpan().SequenceEqual(Assert.Single(outline.Openings).AsSpan()));
        Assert.Equal("4 vertices, 1 opening", outline.ToString());
        Assert.Equal("4 vertices", Of(Slab).ToString());
        Assert.Empty(Of(Slab).Openings);
    }

    [Fact]
    public void Too_few_vertices()
    {
        Rejects("vertices", "no vertex", "at least 3 vertices", () => Of());
        Rejects("vertices", "1 vertex", "at least 3 vertices", () => Of((0, 0)));
        Rejects("vertices", "2 vertices", "at least 3 vertices", () => Of((0, 0), (1, 0)));
        Rejects("openings[0]", "2 vertices", "at least 3 vertices", () => Of(Slab).WithOpening(Surface.Places((4, 4), (5, 4))));
    }

    /// <summary>A length that is not finite cannot be made (UnitsNet refuses it); one so large that nothing can be computed from it can.</summary>
    [Theory]
    [InlineData(1e7)]
    [InlineData(-1e200)]
    [InlineData(1e300)]
    public void Vertices_too_far_away(double metres)
    {
        var far = new FastenerPosition(Length.FromMeters(metres), Length.Zero);
        InputException error = Assert.Throws<InputException>(() => SurfaceOutline.Polygon([.. Surface.Places((0, 0), (0, 5)), far]));

        Assert.Equal("vertices[2].x", error.Parameter);
        Assert.Equal($"{metres.ToString("R", System.Globalization.CultureInfo.InvariantCulture)} m", error.Found);
        Assert.Equal("at most 1000000 m from the origin", error.Permitted);
        Assert.Equal("openings[0][0].y", Assert.Throws<InputException>(
            () => Of(Slab).WithOpening([new(Length.Zero, far.X), .. Surface.Places((0, 0), (0, 5))])).Parameter);
    }

    [Fact]
    public void Outline_too_small_to_compute_with() =>
        Assert.Throws<InputException>(() => Of((0, 0), (1e-200, 0), (0, 1e-200)));

    [Fact]
    public void Neighbours_at_one_place()
    {
        const string permitted = "a place of its own for each vertex";
        Rejects("vertices[2]", "x = 20 mm, y = 0 mm, the same place as vertices[1]", permitted, () => Of((0, 0), (20, 0), (20, 0), (20, 10)));
        Rejects("vertices[0]", "x = 0 mm, y = 0 mm, the same place as vertices[3]", permitted, () => Of((0, 0), (20, 0), (20, 10), (0, 0)));
        Rejects("vertices[2]", "x = 20.00000001 mm, y = 0 mm, the same place as vertices[1]", permitted, () => Of((0, 0), (20, 0), (20.00000001, 0), (20, 10)));
        Of((0, 0), (20, 0), (20.001, 0.001), (20, 10));
    }

    [Fact]
    public void No_area()
    {
        Rejects("vertices", "vertices on one straight line", "vertices that enclose an area", () => Of((0, 0), (20, 10), (10, 5)));
        Rejects("vertices", "vertices on one straight line", "vertices that enclose an area", () => Of((0, 0), (20, 0), (10, 0), (5, 0)));
    }

    [Fact]
    public void Boundary_that_meets_itself()
    {
        const string permitted = "a boundary that neither crosses nor touches itself";
        Rejects( // two sides cross
            "vertices", "the side from (x = 0 mm, y = 0 mm) to (x = 20 mm, y = 10 mm) meets the side from (x = 20 mm, y = 0 mm) to (x = 0 mm, y = 10 mm)", permitted,
            () => Of((0, 0), (20, 10), (20, 0), (0, 10)));
        Assert.Equal(permitted, Assert.Throws<InputException>(() => Of((0, 0), (20, 0), (20, 10), (10, 0), (0, 10))).Permitted); // a vertex on a side
        Assert.Equal(permitted, Assert.Throws<InputException>(() => Of((0, 0), (10, 5), (20, 0), (20, 10), (10, 5), (0, 10))).Permitted); // a place taken twice
        Assert.Equal(permitted, Assert.Throws<InputException>(() => Of((0, 0), (20, 0), (30, 0), (20, 0.0), (20, 10))).Permitted); // back along its own side
        Assert.Equal(permitted, Assert.Throws<InputException>(() => Of((10, 0), (20, 0), (20, 10), (15, 0))).Permitted); // the last back along the first
    }

    [Fact]
    public void Opening_that_is_not_inside()
    {
        const string permitted = "an opening inside of the outline that touches neither it nor another opening";
        Rejects("openings[0]", "x = 30 mm, y = 4 mm, outside of the outline", permitted, () => Of(Slab).WithOpening(Surface.Places((30, 4), (31, 4), (31, 5))));
        Rejects("openings[0]", "x = -5 mm, y = -5 mm, outside of the outline", permitted, () => Of(Slab).WithOpening(Surface.Places((-5, -5), (25, -5), (25, 15), (-5, 15))));
        Rejects(
            "openings[0]", "the side from (x = 4 mm, y = 4 mm) to (x = 10 mm, y = 0 mm) meets the side from (x = 0 mm, y = 0 mm) to (x = 20 mm, y = 0 mm) of vertices", permitted,
            () => Of(Slab).WithOpening(Surface.Places((4, 4), (10, 0), (12, 4)))); // touches
        Assert.Equal(permitted, Assert.Throws<InputException>(() => Of(Slab).WithOpening(Surface.Places((4, 4), (10, -3), (12, 4)))).Permitted); // crosses

        SurfaceOutline withHole = Of(Slab).WithOpening(Surface.Places(Hole));
        Rejects("openings[1]", "an opening within openings[0]", permitted, () => withHole.WithOpening(Surface.Places((4.5, 4.5), (5.5, 4.5), (5, 5))));
        Rejects("openings[1]", "an opening about openings[0]", permitted, () => withHole.WithOpening(Surface.Places((3, 3), (7, 3), (7, 7), (3, 7))));
        Assert.Equal("openings[1]", Assert.Throws<InputException>(() => withHole.WithOpening(Surface.Places((6, 4), (8, 4), (8, 6), (6, 6)))).Parameter); // side along side
        withHole.WithOpening(Surface.Places((6.001, 4), (8, 4), (8, 6), (6.001, 6)));
    }

    /// <summary>
    /// Reference: validity of polygons in NetTopologySuite (simple-feature rules). Those permit a hole to touch the shell at one point and two holes to touch;
    /// here they may not, and random places never touch exactly.
    /// </summary>
    [Fact]
    public void Permits_what_a_general_geometry_library_permits()
    {
        var random = new Random(8);
        int permitted = 0;
        const int count = 4000;
        for (int i = 0; i < count; i++)
        {
            (double X, double Y)[] outer = [.. InventedLayouts.Scattered(random, random.Next(3, 7), 0, 0, 10)];
            (double X, double Y)[][] openings =
                [.. Enumerable.Range(0, random.Next(3)).Select(_ => InventedOutlines.Regular(random, 4 - (8 * random.NextDouble()), 4 - (8 * random.NextDouble()), 1, 4))];
            bool expected = GeneralGeometry.Polygon(outer, openings).IsValid;
            var surface = new Surface("any", outer, openings, [], [], 1);
            Exception? error = Record.Exception(() => surface.Given);

            Assert.True(expected == (error is null), $"{expected}, {error?.Message}: {surface}");
            Assert.True(error is null or InputException);
            permitted += expected ? 1 : 0;
        }

        output.WriteLine($"{permitted} of {count} permitted");
        Assert.InRange(permitted, count / 10, count / 2);
    }

    [Fact]
    public void Vertex_in_the_middle_of_a_straight_side_makes_no_corner()
    {
        Outline outline = Of((10, 0), (20, 0), (20, 10), (0, 10), (0, 5), (0, 0), (5, 0)).In(MeasurementSystem.NewtonMillimetre);

        Assert.Equal(
            [new(20, 0, 20, 10, 0, 2), new(20, 10, 0, 10, 0, 3), new(0, 10, 0, 0, 0, 4), new(0, 0, 20, 0, 0, 6)],
            outline.Sides.ToArray());
    }

    [Fact]
    public void Sides_run_with_the_concrete_to_their_left_and_keep_the_numbers_of_the_ring_as_given()
    {
        Outline outline = Of([.. Slab.Reverse()]).WithOpening(Surface.Places(Hole)).In(MeasurementSystem.NewtonMillimetre);

        // As given: (0, 10) 1 (20, 10) 2 (20, 0) 3 (0, 0) 4, clockwise. The opening: (4, 4) 1 (6, 4) 2 (6, 6) 3 (4, 6) 4, counter-clockwise.
        Assert.Equal(
            new HashSet<OutlineSide>
            {
                new(20, 10, 0, 10, 0, 1), new(20, 0, 20, 10, 0, 2), new(0, 0, 20, 0, 0, 3), new(0, 10, 0, 0, 0, 4),
                new(6, 4, 4, 4, 1, 1), new(6, 6, 6, 4, 1, 2), new(4, 6, 6, 6, 1, 3), new(4, 4, 4, 6, 1, 4),
            },
            [.. outline.Sides]);
        Assert.Equal(1, outline.OpeningCount);
        Assert.Equal(new Rectangle(0, 20, 0, 10), outline.Bounds);
    }

    [Fact]
    public void Normals_point_out_of_the_concrete()
    {
        foreach (Surface surface in InventedOutlines.Random(6, 120))
        {
            Outline outline = surface.Outline;
            foreach (OutlineSide side in outline.Sides)
            {
                double x = (side.StartX + side.EndX) / 2;
                double y = (side.StartY + side.EndY) / 2;
                const double step = 1e-3;
                Assert.Equal(1, Segments.Size(side.NormalX, side.NormalY), 1e-14);
                Assert.True(outline.Contains(x - (step * side.NormalX), y - (step * side.NormalY)), surface.ToString());
                Assert.False(outline.Contains(x + (step * side.NormalX), y + (step * side.NormalY)), surface.ToString());
                Assert.Equal(step, side.DistanceFromLine(x - (step * side.NormalX), y - (step * side.NormalY)), 1e-12);
                Assert.Equal(side.Length / 2, side.FootOf(x - (step * side.NormalX), y - (step * side.NormalY)), 1e-12);
            }
        }
    }

    /// <summary>Reference: NetTopologySuite, points inside and distances.</summary>
    [Fact]
    public void Inside_and_distance_agree_with_a_general_geometry_library()
    {
        var random = new Random(9);
        int inside = 0;
        foreach (Surface surface in InventedOutlines.Random(7, 600))
        {
            Outline outline = surface.Outline;
            var concrete = GeneralGeometry.Concrete(surface);
            for (int i = 0; i < 10; i++)
            {
                // Every second on whole and half numbers: level with vertices, on the lines through sides, on sides.
                double x = i % 2 == 0 ? random.Next(-20, 21) / 2.0 : 20 * (random.NextDouble() - 0.5);
                double y = i % 2 == 0 ? random.Next(-20, 21) / 2.0 : 20 * (random.NextDouble() - 0.5);
                var point = new NetTopologySuite.Geometries.Point(x, y);
                double distance = concrete.Boundary.Distance(point);
                bool expected = concrete.Contains(point) && distance > 1e-6;

                Assert.True(expected == outline.Contains(x, y), $"({x:R}, {y:R}): {surface}");
                Assert.Equal(distance, outline.DistanceFrom(x, y), 1e-9);
                inside += expected ? 1 : 0;
            }
        }

        Assert.InRange(inside, 1000, 5000);
    }

    [Fact]
    public void Units_may_be_mixed()
    {
        Outline outline = SurfaceOutline.Polygon(
            new(Length.Zero, Length.Zero), new(Length.FromInches(10), Length.Zero), new(Length.FromMillimeters(254), Length.FromFeet(1)))
            .In(MeasurementSystem.PoundInch);

        Assert.Equal(60, outline.Moments.Area, 1e-12);
    }

    private static SurfaceOutline Of(params (double X, double Y)[] vertices) => SurfaceOutline.Polygon(Surface.Places(vertices));

    private static void Rejects(string parameter, string found, string permitted, Func<SurfaceOutline> make)
    {
        InputException error = Assert.Throws<InputException>(make);
        Assert.Equal((parameter, found, permitted), (error.Parameter, error.Found, error.Permitted));
    }
}
