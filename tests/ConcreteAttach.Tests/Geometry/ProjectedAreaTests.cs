using ConcreteAttach.Geometry;
using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.OverlayNG;
using Xunit.Abstractions;
using Shape = NetTopologySuite.Geometries.Geometry;

namespace ConcreteAttach.Tests.Geometry;

public sealed class ProjectedAreaTests(ITestOutputHelper output)
{
    private const double Infinite = double.PositiveInfinity;

    /// <summary>
    /// ACI 318-19, commentary figure R17.6.2.1.2 (318-14: R17.4.2.3): two anchors 9 in. apart, edges 4 and 6 in. across
    /// and 5 in. at the end, h_ef' = 4 in.: A_Nc = (6 + 4)(5 + 9 + 1.5 × 4) = 200 in². Figures taken from notes on the
    /// figure.
    /// </summary>
    [Fact]
    public void Commentary_figure_of_a_narrow_member()
    {
        Projection projection = Project([0, 9], [0, 0], 1.5 * 4, new Rectangle(-5, Infinite, -4, 6));

        Assert.Equal(200, projection.Area);
        Assert.Equal(20, projection.Bounds.Width);
        Assert.Equal(10, projection.Bounds.Height);
        Assert.True(projection.IsRectangle);
    }

    [Fact]
    public void Single_square_away_from_edges_is_a_whole_square()
    {
        Projection projection = Project([3], [-2], 9, Rectangle.Unbounded);

        Assert.Equal(new Projection(324, new Rectangle(-6, 12, -11, 7), true), projection);
    }

    [Theory]
    [InlineData(-5, Infinite, -Infinite, Infinite, 14 * 18)]
    [InlineData(-Infinite, 5, -Infinite, Infinite, 14 * 18)]
    [InlineData(-Infinite, Infinite, -5, Infinite, 18 * 14)]
    [InlineData(-Infinite, Infinite, -Infinite, 5, 18 * 14)]
    [InlineData(-1, 2, -3, 4, 3 * 7)]
    [InlineData(-20, 20, -20, 20, 18 * 18)]
    [InlineData(-9, 9, -9, 9, 18 * 18)]
    public void Single_square_is_cut_at_the_edges(double left, double right, double bottom, double top, double area)
    {
        Projection projection = Project([0], [0], 9, new Rectangle(left, right, bottom, top));

        Assert.Equal(area, projection.Area);
        Assert.True(projection.IsRectangle);
    }

    [Fact]
    public void No_square_has_no_area() =>
        Assert.Equal(default, Project([], [], 9, Rectangle.Unbounded));

    [Fact]
    public void Squares_outside_the_concrete_do_not_count()
    {
        var concrete = new Rectangle(-10, 10, -10, 10);

        Assert.Equal(default, Project([12, 0], [0, 12], 2, concrete)); // touch the edge from outside
        Assert.Equal(new Projection(16, new Rectangle(-2, 2, -2, 2), true), Project([0, 15, 0], [0, 0, -15], 2, concrete));
    }

    [Fact]
    public void Squares_at_one_place_count_once()
    {
        double[] xs = [.. Enumerable.Repeat(1.1, 100)];
        double[] ys = [.. Enumerable.Repeat(-2.7, 100)];
        for (int count = 1; count <= xs.Length; count++)
        {
            Assert.Equal(Project([1.1], [-2.7], 3.3, Rectangle.Unbounded), Project(xs[..count], ys[..count], 3.3, Rectangle.Unbounded));
        }
    }

    [Theory]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(9)]
    [InlineData(100)]
    public void Squares_that_touch_are_a_rectangle_to_the_last_bit(int count)
    {
        // 0.1 has no exact double: between the squares open and overlap gaps of one rounding.
        const double halfSide = 0.1;
        double[] xs = [.. Enumerable.Range(0, count).Select(i => i * 0.2)];
        double[] zeros = new double[count];

        Projection row = Project(xs, zeros, halfSide, Rectangle.Unbounded);
        Projection column = Project(zeros, xs, halfSide, Rectangle.Unbounded);

        Assert.True(row.IsRectangle);
        Assert.Equal(row.Bounds.Width * row.Bounds.Height, row.Area);
        Assert.True(column.IsRectangle);
        Assert.Equal(column.Bounds.Width * column.Bounds.Height, column.Area);
    }

    [Fact]
    public void Squares_with_a_gap_are_no_rectangle()
    {
        Projection projection = Project([0, 18.001], [0, 0], 9, Rectangle.Unbounded);

        Assert.False(projection.IsRectangle);
        Assert.Equal(2 * 18 * 18, projection.Area, 1e-9);
    }

    [Fact]
    public void Squares_out_of_line_by_a_rounding_are_a_rectangle()
    {
        Projection projection = Project([0, 9, 18], [0, 1e-14, -1e-14], 9, Rectangle.Unbounded);

        Assert.True(projection.IsRectangle);
        Assert.Equal(36 * 18, projection.Area, 1e-9);
    }

    [Fact]
    public void Frame_without_its_middle_is_a_rectangle_where_the_others_cover_it()
    {
        List<(double X, double Y)> frame = InventedLayouts.Grid(3, 3, 8);
        frame.RemoveAt(4);
        double[] xs = [.. frame.Select(p => p.X)];
        double[] ys = [.. frame.Select(p => p.Y)];

        Assert.Equal(new Projection(32 * 32, new Rectangle(-8, 24, -8, 24), true), Project(xs, ys, 8, Rectangle.Unbounded));
        Projection open = Project(xs, ys, 7, Rectangle.Unbounded);
        Assert.False(open.IsRectangle);
        Assert.Equal((30 * 30) - (2 * 2), open.Area);
    }

    [Fact]
    public void Three_in_a_corner_leave_the_fourth_quarter_open()
    {
        // 36 × 36 less the quarter 18 × 18 that no square reaches.
        Assert.Equal((36 * 36) - (18 * 18), Project([0, 18, 0], [0, 0, 18], 9, Rectangle.Unbounded).Area);
    }

    [Fact]
    public void As_many_fasteners_as_a_grid_are_no_grid_if_one_place_is_taken_twice()
    {
        // Two columns, two rows, four fasteners, and still the corner is open.
        Assert.Equal(3 * 4, Project([0, 2, 0, 0], [0, 0, 2, 2], 1, Rectangle.Unbounded).Area);
    }

    [Fact]
    public void Groups_far_apart_add_up()
    {
        Layout[] layouts = [.. InventedLayouts.Random(randomSeed: 4, 200)];
        foreach (Layout layout in layouts)
        {
            Layout one = layout with { Concrete = Rectangle.Unbounded };
            Layout two = one with { Xs = [.. one.Xs, .. one.Xs.Select(x => x + 1000)], Ys = [.. one.Ys, .. one.Ys.Select(y => y - 50)] };

            Assert.Equal(1, two.Project().Area / (2 * one.Project().Area), 1e-9);
            Assert.False(two.Project().IsRectangle);
        }
    }

    /// <summary>Reference: NetTopologySuite, a general library for plane geometry.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void Agrees_with_a_general_geometry_library(int randomSeed)
    {
        double largest = 0;
        int rectangles = 0;
        int empty = 0;
        const int count = 1000;
        foreach (Layout layout in InventedLayouts.Random(randomSeed, count))
        {
            Projection ours = layout.Project();
            Shape union = Union(layout);
            Envelope bounds = union.EnvelopeInternal;

            if (union.IsEmpty)
            {
                empty++;
                Assert.Equal(default, ours);
                continue;
            }

            double difference = Math.Abs(ours.Area - union.Area) / union.Area;
            largest = Math.Max(largest, difference);
            Assert.True(difference <= 1e-9, $"{ours} is not {union.Area:R}: {layout}");
            Assert.Equal(new Rectangle(bounds.MinX, bounds.MaxX, bounds.MinY, bounds.MaxY), ours.Bounds);

            bool fills = union.Area >= (1 - 1e-9) * bounds.Area;
            Assert.True(fills == ours.IsRectangle, $"{ours} is not {union.AsText()}: {layout}");
            rectangles += fills ? 1 : 0;
            if (fills)
            {
                Assert.Equal(ours.Bounds.Width * ours.Bounds.Height, ours.Area);
            }
        }

        output.WriteLine(FormattableString.Invariant(
            $"random seed {randomSeed}: {count} layouts, {rectangles} rectangles, {empty} empty, largest difference {largest:E1}"));
        Assert.InRange(rectangles, count / 10, count / 2); // both answers are put to the test
        Assert.InRange(empty, 0, count / 20);
    }

    /// <summary>Reference: NetTopologySuite; layouts that need more than one word of ranks and filled buckets.</summary>
    [Theory]
    [InlineData(62)]
    [InlineData(63)]
    [InlineData(64)]
    [InlineData(65)]
    [InlineData(300)]
    [InlineData(1024)]
    [InlineData(4095)]
    public void Agrees_with_a_general_geometry_library_on_many_fasteners(int count)
    {
        var random = new Random(count);
        foreach (double spread in new[] { 3, 0.6 * Math.Sqrt(count), 1.4 * Math.Sqrt(count), 0.3 * count })
        {
            List<(double X, double Y)> points = InventedLayouts.Scattered(random, count, 0, 0, spread);
            double[] xs = [.. points.Select(p => p.X)];
            double[] ys = [.. points.Select(p => p.Y)];
            var layout = new Layout("many", xs, ys, 1, new Rectangle(-0.9 * spread, Infinite, -Infinite, 0.8 * spread));

            Assert.Equal(1, layout.Project().Area / Union(layout).Area, 1e-9);
        }
    }

    [Fact]
    public void Grid_of_many_fasteners_is_a_rectangle()
    {
        foreach (int side in new[] { 8, 9, 32 })
        {
            List<(double X, double Y)> grid = InventedLayouts.Grid(side, side, 2.2);
            double[] xs = [.. grid.Select(p => p.X)];
            double[] ys = [.. grid.Select(p => p.Y)];

            Projection touching = Project(xs, ys, 1.1, Rectangle.Unbounded);
            Assert.True(touching.IsRectangle);
            Assert.Equal(touching.Bounds.Width * touching.Bounds.Height, touching.Area);

            Projection apart = Project(xs, ys, 1, Rectangle.Unbounded);
            Assert.False(apart.IsRectangle);
            Assert.Equal(4 * side * side, apart.Area, 1e-9);
        }
    }

    private static Projection Project(double[] xs, double[] ys, double halfSide, Rectangle concrete)
    {
        Projection projection = new Layout("given", xs, ys, halfSide, concrete).Project();
        double area = ProjectedArea.OfSquares(xs, ys, halfSide, concrete, new double[ProjectedArea.ScratchLength(xs.Length)]);
        Assert.Equal(projection.Area, area);
        return projection;
    }

    private static Shape Union(Layout layout)
    {
        var factory = new GeometryFactory();
        var squares = new List<Shape>();
        for (int i = 0; i < layout.Count; i++)
        {
            double left = Math.Max(layout.Xs[i] - layout.HalfSide, layout.Concrete.Left);
            double right = Math.Min(layout.Xs[i] + layout.HalfSide, layout.Concrete.Right);
            double bottom = Math.Max(layout.Ys[i] - layout.HalfSide, layout.Concrete.Bottom);
            double top = Math.Min(layout.Ys[i] + layout.HalfSide, layout.Concrete.Top);
            if (left < right && bottom < top)
            {
                squares.Add(factory.ToGeometry(new Envelope(left, right, bottom, top)));
            }
        }

        return squares.Count == 0 ? factory.CreatePolygon() : OverlayNGRobust.Union(squares);
    }
}
