using ConcreteAttach.Calculation;

namespace ConcreteAttach.Tests.Calculation;

/// <summary>A limit is met within one part in 10^9, in the permitting direction.</summary>
public sealed class ConditionTests
{
    [Theory]
    [InlineData(1, 2, true)]
    [InlineData(2, 1, false)]
    [InlineData(1, 1, false)]
    [InlineData(1 - 1e-8, 1, true)]
    [InlineData(1 - 1e-10, 1, false)]
    [InlineData(1 + 1e-10, 1, false)]
    [InlineData(-2, -1, true)]
    [InlineData(-1, -1 + 1e-10, false)]
    [InlineData(-1, 1, true)]
    [InlineData(0, 1e-300, true)]
    [InlineData(0, 0, false)]
    [InlineData(1e12, 1e12 + 100, false)]
    [InlineData(1e12, 1e12 + 10_000, true)]
    [InlineData(5, double.PositiveInfinity, true)]
    [InlineData(double.PositiveInfinity, 5, false)]
    [InlineData(double.PositiveInfinity, double.PositiveInfinity, false)]
    [InlineData(double.NaN, 1, false)]
    [InlineData(1, double.NaN, false)]
    public void Below_means_below_by_more_than_the_tolerance(double a, double b, bool expected) => Assert.Equal(expected, Limit.IsBelow(a, b));

    [Theory]
    [InlineData(9, 9, true, true, false, false)]
    [InlineData(9 - 1e-9, 9, true, true, false, false)]
    [InlineData(9 + 1e-9, 9, true, true, false, false)]
    [InlineData(8.99, 9, false, true, false, true)]
    [InlineData(9.01, 9, true, false, true, false)]
    public void Each_relation(double left, double right, bool atLeast, bool atMost, bool above, bool below)
    {
        PlainNumber a = new(left), b = new(right);
        Assert.Equal((atLeast, atMost, above, below), ((a >= b).Holds, (a <= b).Holds, (a > b).Holds, (a < b).Holds));

        TracedNumber s = TracedNumber.Literal(left), t = TracedNumber.Literal(right);
        Assert.Equal((atLeast, atMost, above, below), ((s >= t).Holds, (s <= t).Holds, (s > t).Holds, (s < t).Holds));
    }

    [Fact]
    public void A_relation_and_its_opposite_never_agree()
    {
        var random = new Random(5);
        for (int i = 0; i < 100_000; i++)
        {
            double x = random.NextDouble() * Math.Pow(10, random.Next(-6, 9));
            PlainNumber a = new(x), b = new(x * (1 + ((random.NextDouble() - 0.5) * 4e-9)));
            Assert.NotEqual((a >= b).Holds, (a < b).Holds);
            Assert.NotEqual((a <= b).Holds, (a > b).Holds);
            Assert.False((a > b).Holds && (a < b).Holds);
        }
    }
}
