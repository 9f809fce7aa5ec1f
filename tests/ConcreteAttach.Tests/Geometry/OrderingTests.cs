using ConcreteAttach.Geometry;

namespace ConcreteAttach.Tests.Geometry;

public sealed class OrderingTests
{
    private static readonly Dictionary<string, Func<Random, double>> Kinds = new()
    {
        ["even"] = random => 100 * random.NextDouble() - 50,
        ["few values"] = random => random.Next(4),
        ["one value"] = _ => 7.5,
        ["one value but for rounding"] = random => 1 + random.Next(3) * 2.3e-16,
        ["crowded at zero"] = random => Math.Pow(random.NextDouble(), 40),
        ["most in one bucket"] = random => random.Next(20) == 0 ? 1e6 : random.NextDouble(),
        ["every size"] = random => BitConverter.Int64BitsToDouble(random.NextInt64()),
        ["smallest"] = random => double.Epsilon * random.Next(10),
        ["with infinities"] = random => random.Next(5) switch
        {
            0 => double.PositiveInfinity,
            1 => double.NegativeInfinity,
            2 => -0.0,
            _ => random.NextDouble(),
        },
    };

    public static TheoryData<string> KindNames => [.. Kinds.Keys];

    [Theory]
    [MemberData(nameof(KindNames))]
    public void Sorts_and_moves_items_along(string kind)
    {
        var random = new Random(5);
        foreach (int count in new[] { 0, 1, 2, 3, 16, 31, 32, 33, 34, 64, 100, 333, 1024, 5000 })
        {
            for (int repeat = 0; repeat < 5; repeat++)
            {
                double[] keys = [.. Enumerable.Range(0, count).Select(_ => NotNaN(random, Kinds[kind]))];
                double[] sorted = [.. keys];
                int[] items = [.. Enumerable.Range(0, count)];
                double[] scratch = new double[Ordering.ScratchLength(count)];
                Array.Fill(scratch, double.NaN);

                Ordering.Ascending<int>(sorted, items, scratch);

                Assert.Equal(keys.Order(), sorted);
                Assert.Equal(sorted, items.Select(i => keys[i]));
                Assert.Equal(Enumerable.Range(0, count), items.Order());

                double[] again = [.. keys];
                double[] numbers = [.. keys.Select(k => -k)];
                Ordering.Ascending<double>(again, numbers, scratch);
                Assert.Equal(sorted, again);
                Assert.Equal(sorted.Select(k => -k), numbers);
            }
        }
    }

    private static double NotNaN(Random random, Func<Random, double> next)
    {
        while (true)
        {
            double number = next(random);
            if (!double.IsNaN(number))
            {
                return number;
            }
        }
    }
}
