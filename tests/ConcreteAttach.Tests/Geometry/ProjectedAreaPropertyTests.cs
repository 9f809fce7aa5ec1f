using ConcreteAttach.Geometry;
using FsCheck;
using FsCheck.Fluent;

namespace ConcreteAttach.Tests.Geometry;

/// <summary>
/// What holds for every layout. The lengths are multiples of 1/4, of which doubles carry the areas without rounding:
/// every comparison is to the last bit. A failure prints the random seed that repeats it.
/// </summary>
public sealed class ProjectedAreaPropertyTests
{
    [Fact]
    public void Area_is_the_number_of_covered_cells() =>
        Holds(layout => layout.Project().Area == CountCells(layout) / 16.0);

    [Fact]
    public void Mirrored_layout_has_the_same_area() => Holds(layout =>
    {
        Rectangle concrete = layout.Concrete;
        Layout mirrored = layout with
        {
            Xs = [.. layout.Xs.Select(x => -x)],
            Concrete = concrete with { Left = -concrete.Right, Right = -concrete.Left },
        };
        return SameArea(layout, mirrored);
    });

    [Fact]
    public void Layout_turned_by_a_quarter_has_the_same_area() => Holds(layout =>
    {
        Rectangle concrete = layout.Concrete;
        Layout turned = layout with
        {
            Xs = [.. layout.Ys.Select(y => -y)],
            Ys = layout.Xs,
            Concrete = new Rectangle(-concrete.Top, -concrete.Bottom, concrete.Left, concrete.Right),
        };
        return SameArea(layout, turned);
    });

    [Fact]
    public void Order_of_the_fasteners_does_not_matter() => Holds(layout =>
    {
        Layout permuted = layout with { Xs = [.. layout.Xs], Ys = [.. layout.Ys] };
        InventedLayouts.Permute(new Random(layout.Count), permuted.Xs, permuted.Ys);
        return layout.Project() == permuted.Project();
    });

    [Fact]
    public void Larger_squares_never_cover_less() => Holds(layout =>
        layout.Project().Area <= (layout with { HalfSide = layout.HalfSide + 0.25 }).Project().Area);

    [Fact]
    public void Another_fastener_never_covers_less() => Holds(layout =>
        (layout with { Xs = layout.Xs[1..], Ys = layout.Ys[1..] }).Project().Area <= layout.Project().Area);

    [Fact]
    public void Area_is_at_most_that_of_the_bounds_and_of_the_separate_squares() => Holds(layout =>
    {
        Projection projection = layout.Project();
        return projection.Area <= projection.Bounds.Area
            && projection.IsRectangle == (projection.Area == projection.Bounds.Area && projection.Area > 0)
            && projection.Area <= layout.Count * 4 * layout.HalfSide * layout.HalfSide;
    });

    private static void Holds(Func<Layout, bool> property) =>
        Prop.ForAll(InventedLayouts.OnQuarters(), property).Check(Config.QuickThrowOnFailure.WithMaxTest(400));

    private static bool SameArea(Layout a, Layout b) =>
        a.Project().Area == b.Project().Area && a.Project().IsRectangle == b.Project().IsRectangle;

    /// <summary>How many cells of a quarter by a quarter the squares cover within the concrete.</summary>
    private static int CountCells(Layout layout)
    {
        const int reach = 4 * 10; // centres reach to 7, half sides to 3
        var covered = new bool[2 * reach, 2 * reach];
        for (int i = 0; i < layout.Count; i++)
        {
            for (int column = Cell(layout.Xs[i] - layout.HalfSide); column < Cell(layout.Xs[i] + layout.HalfSide); column++)
            {
                for (int row = Cell(layout.Ys[i] - layout.HalfSide); row < Cell(layout.Ys[i] + layout.HalfSide); row++)
                {
                    covered[column + reach, row + reach] |=
                        column >= 4 * layout.Concrete.Left && column < 4 * layout.Concrete.Right
                        && row >= 4 * layout.Concrete.Bottom && row < 4 * layout.Concrete.Top;
                }
            }
        }

        return covered.Cast<bool>().Count(c => c);

        static int Cell(double coordinate) => (int)(4 * coordinate);
    }
}
