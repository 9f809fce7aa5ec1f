using ConcreteAttach.Quantities;

namespace ConcreteAttach.Tests.Quantities;

public sealed class NumberTextTests
{
    // Four significant figures, groups of three from five digits on: worked by hand.
    [Theory]
    [InlineData(22307.9, "22 308")]
    [InlineData(307.125, "307.1")]
    [InlineData(0.83333, "0.8333")]
    [InlineData(0.00012345, "0.0001234")]
    [InlineData(9999.9, "10 000")]
    [InlineData(1234567.8, "1 234 568")]
    [InlineData(-22307.9, "-22 308")]
    [InlineData(1234.5, "1234")]
    [InlineData(6, "6.000")]
    [InlineData(0, "0")]
    public void Rounded_shows_four_figures(double value, string text) => Assert.Equal(text, NumberText.Rounded(value));

    [Theory]
    [InlineData(6, "6")]
    [InlineData(4.5, "4.5")]
    [InlineData(2.0003, "2.000")]
    [InlineData(307.125, "307.1")]
    [InlineData(22308, "22 308")]
    [InlineData(-0.5, "-0.5")]
    public void Computed_drops_zeros_only_where_nothing_is_lost(double value, string text) => Assert.Equal(text, NumberText.Computed(value));

    [Theory]
    [InlineData(0.625, "0.625")]
    [InlineData(4000, "4000")]
    [InlineData(125000, "125 000")]
    [InlineData(1.5625, "1.5625")]
    [InlineData(0.1 + 0.2, "0.3000")]
    [InlineData(1e-10, "0.0000000001")]
    public void As_given_keeps_what_a_person_wrote(double value, string text) => Assert.Equal(text, NumberText.AsGiven(value));

    [Theory]
    [InlineData(1, "1.0")]
    [InlineData(2, "2.0")]
    [InlineData(0.85, "0.85")]
    [InlineData(0.8666666, "0.8667")]
    [InlineData(24, "24")]
    public void A_whole_factor_keeps_one_decimal(double value, string text) => Assert.Equal(text, NumberText.Factor(value));

    [Theory]
    [InlineData(0.812, true, "0.81")]
    [InlineData(1, true, "1.00")]
    [InlineData(1.4512, false, "1.45")]
    [InlineData(1.004, false, "1.004")]
    [InlineData(1.0000004, false, "1.0000004")]
    [InlineData(double.PositiveInfinity, false, "∞")]
    public void A_utilization_that_fails_is_never_shown_as_one(double value, bool isSatisfied, string text) =>
        Assert.Equal(text, NumberText.Utilization(value, isSatisfied));
}
