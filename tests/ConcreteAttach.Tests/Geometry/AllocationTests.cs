using ConcreteAttach.Geometry;
using ConcreteAttach.Tests.Benchmarks;

namespace ConcreteAttach.Tests.Geometry;

/// <summary>The geometry works in memory of the caller and allocates nothing.</summary>
public sealed class AllocationTests
{
    [Theory]
    [InlineData(1)]
    [InlineData(4)]
    [InlineData(16)]
    [InlineData(64)]
    [InlineData(1024)]
    public void Nothing_is_allocated(int count)
    {
        var random = new Random(count);
        List<(double X, double Y)> points = InventedLayouts.Scattered(random, count, 0, 0, Math.Sqrt(count));
        double[] xs = [.. points.Select(p => p.X)];
        double[] ys = [.. points.Select(p => p.Y)];
        int columns = (int)Math.Sqrt(count);
        double[] gridXs = [.. Enumerable.Range(0, count).Select(i => (double)(i % columns))];
        double[] gridYs = [.. Enumerable.Range(0, count).Select(i => (double)(i / columns))];
        var concrete = new Rectangle(-0.8 * columns, double.PositiveInfinity, -0.9 * columns, 0.7 * columns);

        int[] group = new int[count];
        int[] order = new int[count];
        int[] starts = new int[count + 1];
        double[] scratch = new double[new[]
        {
            ProjectedArea.ScratchLength(count), InfluenceGroups.ScratchLength(count), SpanningTree.ScratchLength(count),
            Rows.ScratchLength(count),
        }.Max()];

        Assert.Equal(0, Allocation.Of(Run));

        void Run()
        {
            for (int i = 0; i < 20; i++)
            {
                ProjectedArea.Project(xs, ys, Layouts.ExtentOf(xs, ys), 1, concrete, scratch);
                ProjectedArea.OfSquares(gridXs, gridYs, 0.5, Rectangle.Unbounded, scratch);
                InfluenceGroups.Find(xs, ys, 1, group, scratch);
                SpanningTree.LongestLink(xs, ys, scratch);
                Rows.Find(gridXs, order, starts, scratch);
                Parts.Find(ys, ys, order, 1, starts);
            }
        }
    }
}
