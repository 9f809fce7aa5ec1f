using ConcreteAttach.Calculation;

namespace ConcreteAttach.Tests.Calculation;

/// <summary>Powers by products and roots agree with the general power of the runtime.</summary>
public sealed class RationalPowerTests
{
    [Theory]
    [InlineData(1, 1)]
    [InlineData(2, 1)]
    [InlineData(3, 1)]
    [InlineData(4, 1)]
    [InlineData(5, 1)]
    [InlineData(7, 1)]
    [InlineData(1, 2)]
    [InlineData(3, 2)]
    [InlineData(5, 2)]
    [InlineData(1, 3)]
    [InlineData(2, 3)]
    [InlineData(4, 3)]
    [InlineData(5, 3)]
    public void Agrees_with_the_general_power(int numerator, int denominator)
    {
        var random = new Random((10 * numerator) + denominator);
        for (int i = 0; i < 20_000; i++)
        {
            double x = Math.Pow(10, (random.NextDouble() * 12) - 6);
            double expected = Math.Pow(x, (double)numerator / denominator);
            Assert.Equal(1, RationalPower.Of(x, numerator, denominator) / expected, 14);
        }

        Assert.Equal(0, RationalPower.Of(0, numerator, denominator));
        Assert.Equal(1, RationalPower.Of(1, numerator, denominator));
    }

    // Exact by hand.
    [Theory]
    [InlineData(4, 3, 2, 8)]
    [InlineData(6.25, 3, 2, 15.625)]
    [InlineData(8, 5, 3, 32)]
    [InlineData(-3, 2, 1, 9)]
    [InlineData(-3, 3, 1, -27)]
    public void Exact_powers_are_exact(double x, int numerator, int denominator, double expected)
    {
        Assert.Equal(expected, RationalPower.Of(x, numerator, denominator));
        Assert.Equal(expected, PlainNumber.Power(new(x), numerator, denominator).Value);
        Assert.Equal(expected, TracedNumber.Power(TracedNumber.Literal(x), numerator, denominator).Value);
    }
}
