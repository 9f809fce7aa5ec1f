using ConcreteAttach.Geometry;

namespace ConcreteAttach.Tests.Geometry;

/// <summary>Asking fasteners in an outline for a group allocates nothing once the shared pool holds the memory.</summary>
public sealed class OutlineAllocationTests
{
    [Theory]
    [InlineData(1)]
    [InlineData(16)]
    [InlineData(64)]
    public void Nothing_is_allocated(int count)
    {
        var random = new Random(count);
        (double X, double Y)[] places = [.. InventedLayouts.Scattered(random, count, 0, 0, 9).Where(p => Math.Max(Math.Abs(p.X), Math.Abs(p.Y)) > 2).DefaultIfEmpty((5, 5))];
        Surface surface = SeenConcreteTests.Given([(-10, -10), (10, -10), (10, 10), (-10, 10)], places) with
        {
            Openings = [InventedOutlines.Regular(random, 0, 0, 1.5, 16)],
        };
        FastenersInOutline fasteners = surface.Fasteners();
        int[] group = surface.All;

        Run(); // the pool fills
        long before = GC.GetAllocatedBytesForCurrentThread();
        Run();
        long after = GC.GetAllocatedBytesForCurrentThread();

        Assert.Equal(0, after - before);

        void Run()
        {
            for (int i = 0; i < 10; i++)
            {
                fasteners.Project(group, 6);
                fasteners.CloseEdges(group, 6);
                fasteners.SmallestEdge(group);
            }
        }
    }
}
