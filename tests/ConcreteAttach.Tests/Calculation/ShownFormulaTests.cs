namespace ConcreteAttach.Tests.Calculation;

/// <summary>The reader that judges the sheets reads formulas as a textbook means them, and refuses what reads two ways.</summary>
public sealed class ShownFormulaTests
{
    [Theory]
    [InlineData("2 + 3 · 4", 14)]
    [InlineData("2 · (3 + 4)", 14)]
    [InlineData("10 − 3 − 2", 5)]
    [InlineData("10 − (3 − 2)", 9)]
    [InlineData("2 · 3 / 4", 1.5)]
    [InlineData("2 · 3 / (4 · 5)", 0.3)]
    [InlineData("2 / 4 − 1", -0.5)]
    [InlineData("22 308 / 2", 11154)]
    [InlineData("1 454 714.5 + 1", 1454715.5)]
    [InlineData("(-3) · (-2)", 6)]
    [InlineData("9 · 8²", 576)]
    [InlineData("-8 + 2", -6)]
    [InlineData("2 · (-8 + 2)", -12)]
    [InlineData("(-8)²", 64)]
    [InlineData("min(-8, 2)", -8)]
    [InlineData("2³", 8)]
    [InlineData("4^1.5", 8)]
    [InlineData("8^(5/3)", 32)]
    [InlineData("1^0.2", 1)]
    [InlineData("√4000 · √(2 + 2)", 126.49110640673517)]
    [InlineData("min(3, max(1, 2) + 4)", 3)]
    [InlineData("max(3, 1.5 · 4)", 6)]
    [InlineData("(√16)²", 16)]
    public void Formulas_of_numbers(string text, double expected)
    {
        Interval value = ShownFormula.Read(text).Evaluate(leaf => Interval.Of(((ShownFormula.Number)leaf).Value));

        Assert.Equal(expected, value.Low, 12);
        Assert.Equal(expected, value.High, 12);
    }

    [Theory]
    [InlineData("0.7 + 0.3 c_a,min / (1.5 h_ef)", "(x + ((x * x) / (x * x)))", "0.7 0.3 c_a,min 1.5 h_ef")]
    [InlineData("k_c λ_a √f'_c h_ef^1.5", "(((x * x) * root(x)) * (x ^ 1.5))", "k_c λ_a f'_c h_ef")]
    [InlineData("(c_−x + s_x + c_+x) (1.5 h_ef)", "(((x + x) + x) * (x * x))", "c_−x s_x c_+x 1.5 h_ef")]
    [InlineData("min(f_u, min(1.9 f_ya, 125 000))", "min(x, min((x * x), x))", "f_u 1.9 f_ya 125 000")]
    [InlineData("N / (φ N_cb)", "(x / x)", "N φ N_cb")]
    public void Formulas_of_symbols(string text, string shape, string leaves)
    {
        ShownFormula formula = ShownFormula.Read(text, "φ N_cb");

        Assert.Equal(shape, formula.Shape());
        Assert.Equal(leaves, string.Join(" ", formula.Leaves().Select(l => l is ShownFormula.Number n ? n.Text : ((ShownFormula.Symbol)l).Name)));
    }

    [Theory]
    [InlineData("a / b c")]
    [InlineData("a / b · c")]
    [InlineData("a / b / c")]
    [InlineData("N / φ N_cb")]
    [InlineData("√φ N_cb")]
    [InlineData("φ N_cb²")]
    [InlineData("√a²")]
    [InlineData("a 2")]
    [InlineData("2 1.5 h_ef")]
    [InlineData("a + -2")]
    [InlineData("a · -2")]
    [InlineData("-2²")]
    [InlineData("-a")]
    [InlineData("a − ")]
    [InlineData("(a + b")]
    [InlineData("a + b)")]
    [InlineData("min(a)")]
    [InlineData("2 · ∞")]
    [InlineData("")]
    public void What_reads_two_ways_or_not_at_all_is_refused(string text) =>
        Assert.Throws<FormatException>(() => ShownFormula.Read(text, "φ N_cb"));

    [Fact]
    public void A_rounded_number_stands_for_half_a_unit_of_its_last_digit()
    {
        Assert.Equal(0.5, new ShownFormula.Number("22 308").HalfUnit);
        Assert.Equal(0.05, new ShownFormula.Number("307.1").HalfUnit);
        Assert.Equal(0.0005, new ShownFormula.Number("2.000").HalfUnit);
    }

    [Fact]
    public void Intervals_hold_every_value()
    {
        var random = new Random(3);
        for (int i = 0; i < 10_000; i++)
        {
            Interval a = Next(), b = Next();
            double x = Inside(a), y = Inside(b);
            Contains(a + b, x + y);
            Contains(a - b, x - y);
            Contains(a * b, x * y);
            Contains(a / b, x / y);
            Contains(Interval.Min(a, b), Math.Min(x, y));
            Contains(Interval.Max(a, b), Math.Max(x, y));
            Contains(a.Raised(2), x * x);
            Contains(a.Raised(3), x * x * x);
            if (x >= 0)
            {
                Contains(a.Raised(1.5), Math.Pow(x, 1.5));
            }
        }

        Interval Next() => Interval.Around((20 * random.NextDouble()) - 10, 3 * random.NextDouble());
        double Inside(Interval i) => i.Low + ((i.High - i.Low) * random.NextDouble());
        static void Contains(Interval interval, double value) => Assert.True(interval.Meets(Interval.Of(value)), $"{interval} {value}");
    }
}
