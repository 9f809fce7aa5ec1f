using System.Globalization;
using ConcreteAttach.Quantities;

namespace ConcreteAttach.Tests.Calculation;

/// <summary>How numbers are shown: expected texts by hand.</summary>
public sealed class NumberTextTests
{
    [Theory]
    [InlineData(22307.9, "22 308")]
    [InlineData(307.125, "307.1")]
    [InlineData(0.8333333333333334, "0.8333")]
    [InlineData(0, "0")]
    [InlineData(-0.0, "0")]
    [InlineData(1234.6, "1235")]
    [InlineData(12345.6, "12 346")]
    [InlineData(123456.7, "123 457")]
    [InlineData(1234567.8, "1 234 568")]
    [InlineData(-12345.6, "-12 346")]
    [InlineData(-307.125, "-307.1")]
    [InlineData(0.0123456, "0.01235")]
    [InlineData(0.000123456, "0.0001235")]
    [InlineData(99.994, "99.99")]
    [InlineData(99.996, "100.0")]
    [InlineData(9.9996, "10.00")]
    [InlineData(-9.9996, "-10.00")]
    [InlineData(0.99996, "1.000")]
    [InlineData(0.099996, "0.1000")]
    [InlineData(999.96, "1000")]
    [InlineData(9999.6, "10 000")]
    [InlineData(99999.6, "100 000")]
    [InlineData(999999.6, "1 000 000")]
    public void A_computed_number_shows_four_significant_figures(double value, string expected)
    {
        Assert.Equal(expected, NumberText.Rounded(value));
        Assert.Equal(expected, NumberText.Computed(value));
    }

    [Theory]
    [InlineData(6, "6")]
    [InlineData(-6, "-6")]
    [InlineData(480, "480")]
    [InlineData(1000, "1000")]
    [InlineData(10000, "10 000")]
    [InlineData(1000000, "1 000 000")]
    [InlineData(4.5, "4.5")]
    [InlineData(0.75, "0.75")]
    [InlineData(1.688, "1.688")]
    [InlineData(2.0003, "2.000")]
    [InlineData(1.99996, "2.000")]
    [InlineData(12.0004, "12.00")]
    [InlineData(0.1 + 0.2, "0.3")]
    [InlineData(0.30000001, "0.3000")]
    public void A_computed_number_that_is_short_is_shown_short_and_one_that_is_not_keeps_its_zeros(double value, string expected) =>
        Assert.Equal(expected, NumberText.Computed(value));

    [Theory]
    [InlineData(6, "6")]
    [InlineData(0.421875, "0.421875")]
    [InlineData(4000, "4000")]
    [InlineData(125000, "125 000")]
    [InlineData(152.4, "152.4")]
    [InlineData(-3.25, "-3.25")]
    [InlineData(0.0075, "0.0075")]
    [InlineData(1234567, "1 234 567")]
    [InlineData(12345678, "12 345 678")]
    [InlineData(0.4218751, "0.4219")]
    [InlineData(27.579029172673444, "27.58")]
    [InlineData(1e-7, "0.0000001")]
    [InlineData(0, "0")]
    [InlineData(-0.0, "0")]
    public void An_input_is_shown_as_given_unless_its_digits_come_from_a_conversion(double value, string expected) =>
        Assert.Equal(expected, NumberText.AsGiven(value));

    [Theory]
    [InlineData(1, "1.0")]
    [InlineData(2, "2.0")]
    [InlineData(0.7, "0.70")]
    [InlineData(0.75, "0.75")]
    [InlineData(1.25, "1.25")]
    [InlineData(1.4, "1.40")]
    [InlineData(0.85, "0.85")]
    [InlineData(0.9163, "0.9163")]
    [InlineData(0.8333333333333334, "0.8333")]
    [InlineData(1.0001, "1.000")]
    [InlineData(0.99999, "1.000")]
    [InlineData(0.82, "0.82")]
    [InlineData(16, "16")]
    [InlineData(12.5, "12.50")]
    [InlineData(1.0000000000000002, "1.0")]
    [InlineData(0.9999999999999999, "1.0")]
    [InlineData(2.9999999999999996, "3.0")]
    [InlineData(15.999999999999998, "16")]
    [InlineData(0.7000000000000001, "0.70")]
    [InlineData(1e-13, "0.0")]
    [InlineData(-1e-13, "0.0")]
    [InlineData(660.5714285714286, "660.6")]
    [InlineData(-660.5714285714286, "-660.6")]
    [InlineData(-0.0, "0.0")]
    public void A_factor_is_shown_as_the_standards_print_it(double value, string expected) => Assert.Equal(expected, NumberText.Factor(value));

    [Theory]
    [InlineData(0, true, "0.00")]
    [InlineData(0.8123, true, "0.81")]
    [InlineData(0.995, true, "0.99")]
    [InlineData(0.9951, true, "1.00")]
    [InlineData(1, true, "1.00")]
    [InlineData(1.0000000005, true, "1.00")]
    [InlineData(1.01, false, "1.01")]
    [InlineData(1.004, false, "1.004")]
    [InlineData(1.0004, false, "1.0004")]
    [InlineData(1.0000001, false, "1.0000001")]
    [InlineData(1.00000002, false, "1.00000002")]
    [InlineData(2.34, false, "2.34")]
    [InlineData(123.456, false, "123.46")]
    [InlineData(0.1833674, false, "0.18")]
    [InlineData(1, false, "1.00")]
    [InlineData(double.PositiveInfinity, false, "∞")]
    public void A_utilization_that_fails_is_never_shown_as_one(double value, bool isSatisfied, string expected) =>
        Assert.Equal(expected, NumberText.Utilization(value, isSatisfied));

    [Fact]
    public void No_utilization_above_one_reads_as_one()
    {
        var random = new Random(2);
        for (int i = 0; i < 100_000; i++)
        {
            double value = 1 + (1e-9 * 1.001) + Math.Pow(10, (random.NextDouble() * 9) - 9);
            string text = NumberText.Utilization(value, isSatisfied: false);
            double read = double.Parse(text, CultureInfo.InvariantCulture);
            Assert.True(read > 1 && Math.Abs(read - value) <= 0.00500001, text);
        }
    }

    [Theory]
    [InlineData(2.2319, "2.231")]
    [InlineData(0.99999, "0.9999")]
    [InlineData(9.9999, "9.999")]
    [InlineData(1.2, "1.2")]
    [InlineData(1, "1")]
    [InlineData(12345.9, "12 345")]
    [InlineData(0.00012349, "0.0001234")]
    [InlineData(0, "0")]
    public void A_promise_is_rounded_down(double value, string expected) => Assert.Equal(expected, NumberText.RoundedDown(value));

    [Fact]
    public void A_promise_is_never_rounded_up_and_loses_less_than_a_unit()
    {
        var random = new Random(4);
        for (int i = 0; i < 100_000; i++)
        {
            double value = Math.Pow(10, (random.NextDouble() * 8) - 3);
            var shown = new ShownFormula.Number(NumberText.RoundedDown(value));
            Assert.True(shown.Value <= value, $"{value:R} {shown.Text}");
            Assert.True(value - shown.Value <= Math.Max(1, value) * 1.001e-3 * Math.Max(1, value), $"{value:R} {shown.Text}");
        }
    }

    [Fact]
    public void Every_text_is_within_half_a_unit_of_its_value_and_has_four_figures()
    {
        var random = new Random(1);
        for (int i = 0; i < 200_000; i++)
        {
            double value = (random.Next(2) == 0 ? -1 : 1) * Math.Pow(10, (random.NextDouble() * 12) - 5);
            if (i % 3 == 0)
            {
                // Near a power of ten, where a digit is gained by rounding.
                value = Math.Pow(10, random.Next(-4, 7)) * (1 - (random.NextDouble() * 1e-4));
            }

            var shown = new ShownFormula.Number(NumberText.Rounded(value));
            Assert.True(Math.Abs(shown.Value - value) <= shown.HalfUnit * (1 + 1e-9), $"{value:R} {shown.Text}");
            int figures = shown.Text.Replace(" ", "", StringComparison.Ordinal).Replace(".", "", StringComparison.Ordinal).TrimStart('-', '0').Length;
            Assert.True(figures == 4 || (figures > 4 && !shown.Text.Contains('.', StringComparison.Ordinal)), $"{value:R} {shown.Text}");
        }
    }

    [Fact]
    public void Culture_does_not_matter()
    {
        // A culture of our own, so that the test does not depend on the cultures of the machine.
        var foreign = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        foreign.NumberFormat.NumberDecimalSeparator = ",";
        foreign.NumberFormat.NumberGroupSeparator = ".";
        foreign.NumberFormat.NegativeSign = "~";
        CultureInfo before = CultureInfo.CurrentCulture;
        CultureInfo.CurrentCulture = foreign;
        try
        {
            Assert.Equal("-1,5", (-1.5).ToString(CultureInfo.CurrentCulture).Replace('~', '-'));
            Assert.Equal("-12 345.5", NumberText.AsGiven(-12345.5));
            Assert.Equal("307.1", NumberText.Computed(307.125));
            Assert.Equal("-0.8333", NumberText.Rounded(-0.83333));
            Assert.Equal("0.70", NumberText.Factor(0.7));
            Assert.Equal("1.004", NumberText.Utilization(1.004, false));
            Assert.Equal("2.231", NumberText.RoundedDown(2.2319));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
