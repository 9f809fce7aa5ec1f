using ConcreteAttach.Geometry;
using FsCheck;
using FsCheck.Fluent;

namespace ConcreteAttach.Tests.Geometry;

public sealed class InfluenceGroupsTests
{
    [Fact]
    public void Chain_is_one_group_and_groups_are_numbered_by_their_first_fastener()
    {
        Assert.Equal([0, 1, 0, 2, 1, 0], Find([0, 100, 5, 300, 108, 10], [0, 0, 0, 0, 9, 5], 10));
    }

    [Theory]
    [InlineData(18, 0, false)]
    [InlineData(0, 18, false)]
    [InlineData(18 - 1e-9, 0, false)] // within 1e-9 of the limit: at the limit
    [InlineData(18 + 1e-9, 0, false)]
    [InlineData(18 - 1e-7, 0, true)]
    [InlineData(0, 18 - 1e-7, true)]
    [InlineData(17.9, 17.9, true)] // farther than the limit along the diagonal
    [InlineData(17.9, 18, false)]
    [InlineData(0, 0, true)]
    public void At_the_limit_two_fasteners_are_apart(double dx, double dy, bool connected)
    {
        Assert.Equal([0, connected ? 0 : 1], Find([0, dx], [0, dy], 18));
        Assert.Equal([0, connected ? 0 : 1], Find([dx, 0], [0, dy], 18));

        // The same among many, which are found in another way: 50 more pairs, far from each other.
        double[] xs = [.. Enumerable.Range(0, 51).SelectMany(i => new[] { 0, dx })];
        double[] ys = [.. Enumerable.Range(0, 51).SelectMany(i => new[] { 64.0 * i, 64.0 * i + dy })];
        int[] expected = [.. Enumerable.Range(0, 51).SelectMany(i => connected ? new[] { i, i } : [2 * i, 2 * i + 1])];
        Assert.Equal(expected, Find(xs, ys, 18));
    }

    [Fact]
    public void No_fastener_no_group() => Assert.Empty(Find([], [], 1));

    [Fact]
    public void Agrees_with_a_flood_over_all_pairs()
    {
        Prop.ForAll(InventedLayouts.OnQuarters(), layout =>
        {
            double distance = layout.HalfSide / 2;
            return Find(layout.Xs, layout.Ys, distance).SequenceEqual(Flood(layout.Xs, layout.Ys, distance));
        }).Check(Config.QuickThrowOnFailure.WithMaxTest(1000));
    }

    [Theory]
    [InlineData(16)]
    [InlineData(64)]
    [InlineData(65)]
    [InlineData(300)]
    [InlineData(2000)]
    public void Agrees_with_a_flood_over_all_pairs_of_many(int count)
    {
        var random = new Random(count);
        foreach (double spread in new[] { 0.5, 0.5 * Math.Sqrt(count), 0.7 * Math.Sqrt(count), Math.Sqrt(count), count })
        {
            List<(double X, double Y)> points = InventedLayouts.Scattered(random, count, 0, 0, spread);
            double[] xs = [.. points.Select(p => p.X)];
            double[] ys = [.. points.Select(p => p.Y)];

            Assert.Equal(Flood(xs, ys, 1), Find(xs, ys, 1));
        }
    }

    private static int[] Find(double[] xs, double[] ys, double distance)
    {
        int[] group = new int[xs.Length];
        double[] scratch = new double[InfluenceGroups.ScratchLength(xs.Length)];
        Array.Fill(scratch, double.NaN);
        int groups = InfluenceGroups.Find(xs, ys, distance, group, scratch);
        Assert.Equal(group.Distinct().Count(), groups);
        return group;
    }

    private static int[] Flood(double[] xs, double[] ys, double distance)
    {
        int[] group = [.. Enumerable.Repeat(-1, xs.Length)];
        int groups = 0;
        for (int i = 0; i < xs.Length; i++)
        {
            if (group[i] >= 0)
            {
                continue;
            }

            var open = new Queue<int>([i]);
            group[i] = groups;
            while (open.TryDequeue(out int point))
            {
                for (int other = 0; other < xs.Length; other++)
                {
                    if (group[other] < 0 && IsLess(xs[other] - xs[point]) && IsLess(ys[other] - ys[point]))
                    {
                        group[other] = groups;
                        open.Enqueue(other);
                    }
                }
            }

            groups++;
        }

        return group;

        bool IsLess(double difference) => distance - Math.Abs(difference) > 1e-9 * distance;
    }
}
