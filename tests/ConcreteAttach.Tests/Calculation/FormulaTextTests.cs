using ConcreteAttach.Calculation;
using ConcreteAttach.Quantities;

namespace ConcreteAttach.Tests.Calculation;

/// <summary>
/// How formulas are written. The expected texts are written by hand from the rules: brackets only where precedence asks for them and wherever a
/// text could be read in two ways; a dot before a number, a blank before a symbol; negative numbers in brackets after an operator; halves as decimals,
/// thirds as fractions.
/// </summary>
public sealed class FormulaTextTests
{
    private static readonly TracedNumber A = Symbol("a", 6);
    private static readonly TracedNumber B = Symbol("b", 3);
    private static readonly TracedNumber C = Symbol("c", 2);
    private static readonly TracedNumber D = Symbol("d", 4);
    private static readonly TracedNumber Negative = Symbol("m", -8);
    private static readonly TracedNumber Design = Symbol("phi N_cb", 500);

    /// <summary>Name of the case; the formula; in symbols; with numbers; LaTeX in symbols.</summary>
    public static TheoryData<string> Names => [.. Cases.Keys];

    private static readonly Dictionary<string, (TracedNumber Formula, string Symbols, string Numbers, string Latex)> Cases = new()
    {
        ["product"] = (A * B, "a b", "6 · 3", @"a\,b"),
        ["literal first"] = (1.5 * A, "1.5 a", "1.5 · 6", @"1.5\,a"),
        ["dot before a literal"] = (2 * (1.5 * A), "2 · 1.5 a", "2 · 1.5 · 6", @"2 \cdot 1.5\,a"),
        ["symbol before a literal"] = (A * (1.5 * B), "a · 1.5 b", "6 · 1.5 · 3", @"a \cdot 1.5\,b"),
        ["power of a literal"] = (A * TracedNumber.Power(TracedNumber.Literal(2), 3, 1), "a · 2³", "6 · 2³", @"a \cdot 2^{3}"),
        ["sum in a product"] = ((A + B) * C, "(a + b) c", "(6 + 3) · 2", @"\left(a + b\right)\,c"),
        ["product with a sum"] = (A * (B + C), "a (b + c)", "6 · (3 + 2)", @"a\,\left(b + c\right)"),
        ["sum of products"] = ((A * B) + (C * D), "a b + c d", "6 · 3 + 2 · 4", @"a\,b + c\,d"),
        ["sum of sums"] = (A + (B + C), "a + b + c", "6 + 3 + 2", "a + b + c"),
        ["difference of a difference"] = (A - (B - C), "a − (b − c)", "6 − (3 − 2)", null!),
        ["difference of a sum"] = (A - (B + C), "a − (b + c)", "6 − (3 + 2)", null!),
        ["chain of differences"] = (A - B - C, "a − b − c", "6 − 3 − 2", null!),
        ["sum after a difference"] = (A - B + C, "a − b + c", "6 − 3 + 2", null!),
        ["difference in a sum"] = (A + (B - C), "a + b − c", "6 + 3 − 2", null!),
        ["difference of a product"] = (A - (B * C), "a − b c", "6 − 3 · 2", null!),
        ["literal difference"] = (1 - (A / B), "1 − a / b", "1 − 6 / 3", null!),
        ["quotient"] = (A / B, "a / b", "6 / 3", @"\frac{a}{b}"),
        ["product above the line"] = (A * B / C, "a b / c", "6 · 3 / 2", @"\frac{a\,b}{c}"),
        ["product below the line"] = (A / (B * C), "a / (b c)", "6 / (3 · 2)", @"\frac{a}{b\,c}"),
        ["sum above the line"] = ((A + B) / C, "(a + b) / c", "(6 + 3) / 2", @"\frac{a + b}{c}"),
        ["sum below the line"] = (A / (B + C), "a / (b + c)", "6 / (3 + 2)", @"\frac{a}{b + c}"),
        ["quotient above the line"] = (A / B / C, "(a / b) / c", "(6 / 3) / 2", @"\frac{\frac{a}{b}}{c}"),
        ["quotient below the line"] = (A / (B / C), "a / (b / c)", "6 / (3 / 2)", @"\frac{a}{\frac{b}{c}}"),
        ["quotient first in a product"] = (A / B * C, "(a / b) c", "(6 / 3) · 2", @"\frac{a}{b}\,c"),
        ["quotient last in a product"] = (A * (B / C), "a (b / c)", "6 · (3 / 2)", @"a\,\frac{b}{c}"),
        ["quotient that starts with a number"] = (A * (2 / B) * C, "a (2 / b) c", "6 · (2 / 3) · 2", @"a\,\frac{2}{b}\,c"),
        ["product that starts with such a quotient"] = (A * (2 / B * C), "a (2 / b) c", "6 · (2 / 3) · 2", @"a\,\frac{2}{b}\,c"),
        ["sum that starts with a number"] = (A * (1 + B), "a (1 + b)", "6 · (1 + 3)", @"a\,\left(1 + b\right)"),
        ["product of fractions in a sum"] = (0.7 + (0.3 * (A / (1.5 * B))), "0.7 + 0.3 (a / (1.5 b))", "0.7 + 0.3 · (6 / (1.5 · 3))", @"0.7 + 0.3\,\frac{a}{1.5\,b}"),
        ["fraction of a sum of fractions"] = (1 / (1 + (A / (1.5 * B))), "1 / (1 + a / (1.5 b))", "1 / (1 + 6 / (1.5 · 3))", @"\frac{1}{1 + \frac{a}{1.5\,b}}"),
        ["square"] = (TracedNumber.Power(A, 2, 1), "a²", "6²", "a^{2}"),
        ["cube"] = (TracedNumber.Power(A, 3, 1), "a³", "6³", "a^{3}"),
        ["halves"] = (TracedNumber.Power(A, 3, 2), "a^1.5", "6^1.5", "a^{1.5}"),
        ["thirds"] = (TracedNumber.Power(A, 5, 3), "a^(5/3)", "6^(5/3)", "a^{5/3}"),
        ["decimal power"] = (TracedNumber.Power(A / B, 0.2), "(a / b)^0.2", "(6 / 3)^0.2", @"\left(\frac{a}{b}\right)^{0.2}"),
        ["power of a sum"] = (TracedNumber.Power(A + B, 2, 1), "(a + b)²", "(6 + 3)²", @"\left(a + b\right)^{2}"),
        ["power of a product"] = (TracedNumber.Power(1.5 * A, 3, 2), "(1.5 a)^1.5", "(1.5 · 6)^1.5", @"\left(1.5\,a\right)^{1.5}"),
        ["power of a power"] = (TracedNumber.Power(TracedNumber.Power(A, 2, 1), 3, 2), "(a²)^1.5", "(6²)^1.5", @"\left(a^{2}\right)^{1.5}"),
        ["power of a root"] = (TracedNumber.Power(TracedNumber.Sqrt(A), 3, 1), "(√a)³", "(√6)³", @"\left(\sqrt{a}\right)^{3}"),
        ["power in a product"] = (B * TracedNumber.Power(A, 3, 2) * C, "b a^1.5 c", "3 · 6^1.5 · 2", @"b\,a^{1.5}\,c"),
        ["power above the line"] = (TracedNumber.Power(A, 2, 1) / B, "a² / b", "6² / 3", @"\frac{a^{2}}{b}"),
        ["power below the line"] = (A / TracedNumber.Power(B, 2, 1), "a / b²", "6 / 3²", @"\frac{a}{b^{2}}"),
        ["root of a symbol"] = (TracedNumber.Sqrt(A), "√a", "√6", @"\sqrt{a}"),
        ["root of a product"] = (TracedNumber.Sqrt(A * B), "√(a b)", "√(6 · 3)", @"\sqrt{a\,b}"),
        ["root of a power"] = (TracedNumber.Sqrt(TracedNumber.Power(A, 2, 1)), "√(a²)", "√(6²)", @"\sqrt{a^{2}}"),
        ["root in a product"] = (A * TracedNumber.Sqrt(B) * C, "a √b c", "6 · √3 · 2", @"a\,\sqrt{b}\,c"),
        ["root below the line"] = (A / TracedNumber.Sqrt(B), "a / √b", "6 / √3", @"\frac{a}{\sqrt{b}}"),
        ["minimum"] = (TracedNumber.Min(A, 1.5 * B), "min(a, 1.5 b)", "min(6, 1.5 · 3)", @"\min\left(a,\, 1.5\,b\right)"),
        ["maximum of sums in a product"] = (C * TracedNumber.Max(A + B, A - B), "c max(a + b, a − b)", "2 · max(6 + 3, 6 − 3)", null!),
        ["minimum to a power"] = (TracedNumber.Power(TracedNumber.Min(A, B), 2, 1), "(min(a, b))²", "(min(6, 3))²", @"\left(\min\left(a,\, b\right)\right)^{2}"),
        ["negative number after a plus"] = (A + Negative, "a + m", "6 + (-8)", @"a + m"),
        ["negative number after a minus"] = (A - Negative, "a − m", "6 − (-8)", null!),
        ["negative number in a product"] = (A * Negative, "a m", "6 · (-8)", @"a\,m"),
        ["negative number to a power"] = (TracedNumber.Power(Negative, 2, 1), "m²", "(-8)²", "m^{2}"),
        ["negative number below the line"] = (A / Negative, "a / m", "6 / (-8)", @"\frac{a}{m}"),
        ["negative literal"] = (A * TracedNumber.Literal(-2), "a (-2)", "6 · (-2)", @"a\,\left(-2\right)"),
        ["name of a product below the line"] = (A / Design, "a / (φ N_cb)", "6 / 500", @"\frac{a}{\phi\,N_{\mathrm{cb}}}"),
        ["name of a product above the line"] = (Design / A, "φ N_cb / a", "500 / 6", @"\frac{\phi\,N_{\mathrm{cb}}}{a}"),
        ["name of a product in a product"] = (2 * Design, "2 φ N_cb", "2 · 500", @"2\,\phi\,N_{\mathrm{cb}}"),
        ["root of the name of a product"] = (TracedNumber.Sqrt(Design), "√(φ N_cb)", null!, @"\sqrt{\phi\,N_{\mathrm{cb}}}"),
        ["name of a product to a power"] = (TracedNumber.Power(Design, 2, 1), "(φ N_cb)²", null!, @"\left(\phi\,N_{\mathrm{cb}}\right)^{2}"),
        ["literals alone"] = ((1 + TracedNumber.Literal(1)) / 4 * A, "((1 + 1) / 4) a", "((1 + 1) / 4) · 6", @"\frac{1 + 1}{4}\,a"),
        ["literals in a product"] = (TracedNumber.Literal(9) * (0.5 * A), "9 · 0.5 a", "9 · 0.5 · 6", @"9 \cdot 0.5\,a"),
        ["large literal"] = (TracedNumber.Min(A, TracedNumber.Literal(125_000)), "min(a, 125 000)", "min(6, 125 000)", @"\min\left(a,\, 125\,000\right)"),
    };

    [Theory]
    [MemberData(nameof(Names))]
    public void Formula_in_symbols_in_numbers_and_in_latex(string name)
    {
        (TracedNumber formula, string symbols, string numbers, string latex) = Cases[name];

        Assert.Equal(symbols, FormulaText.Symbolic(formula.Expression, Notation.Plain));
        if (numbers is not null)
        {
            Assert.Equal(numbers, FormulaText.Substituted(formula.Expression, Notation.Plain));
        }

        if (latex is not null)
        {
            Assert.Equal(latex, FormulaText.Symbolic(formula.Expression, Notation.Latex));
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void What_is_written_reads_back_as_the_same_value(string name)
    {
        TracedNumber formula = Cases[name].Formula;
        var values = new Dictionary<string, double> { ["a"] = 6, ["b"] = 3, ["c"] = 2, ["d"] = 4, ["m"] = -8, ["φ N_cb"] = 500 };

        Interval symbols = ShownFormula.Read(FormulaText.Symbolic(formula.Expression, Notation.Plain), "φ N_cb")
            .Evaluate(leaf => Interval.Of(leaf is ShownFormula.Number n ? n.Value : values[((ShownFormula.Symbol)leaf).Name]));
        Interval numbers = ShownFormula.Read(FormulaText.Substituted(formula.Expression, Notation.Plain))
            .Evaluate(leaf => Interval.Of(((ShownFormula.Number)leaf).Value));

        Assert.True(symbols.Meets(Interval.Of(formula.Value)), $"{symbols} {formula.Value}");
        Assert.True(numbers.Meets(Interval.Of(formula.Value)), $"{numbers} {formula.Value}");
    }

    // The line that DESIGN promises, with its numbers: 24 · √4000 · 6^1.5 = 22 308 lbf.
    [Fact]
    public void The_basic_breakout_strength_prints_as_a_textbook_prints_it()
    {
        var recorder = new SheetRecorder(MeasurementSystem.PoundInch);
        var sheet = new Sheet<TracedNumber>(recorder);
        TracedNumber kc = sheet.Given("k_c", 24, Dimension.None, "17.6.2.2.1");
        TracedNumber lambda = sheet.Factor("lambda_a", 1, "Table 17.2.4.1");
        TracedNumber fc = sheet.Given("f'_c", 4000, Dimension.Stress);
        TracedNumber hef = sheet.Given("h_ef", 6, Dimension.Length);
        sheet.Step("N_b", kc * lambda * TracedNumber.Sqrt(fc) * TracedNumber.Power(hef, 3, 2), Dimension.Force, "17.6.2.2.1");

        StepLine step = recorder.ToSheet().Lines.OfType<StepLine>().Last();

        Assert.Equal("N_b", step.Symbol);
        Assert.Equal("k_c λ_a √f'_c h_ef^1.5", step.Formula);
        Assert.Equal("24 · 1.0 · √4000 · 6^1.5", step.Substitution);
        Assert.Equal("22 308", step.ShownValue);
        Assert.Equal("lbf", step.Unit);
        Assert.Equal("17.6.2.2.1", step.Clause);
        Assert.Equal(@"k_{\mathrm{c}}\,\lambda_{\mathrm{a}}\,\sqrt{f'_{\mathrm{c}}}\,h_{\mathrm{ef}}^{1.5}", FormulaText.Symbolic(step.Expression, Notation.Latex));
        Assert.Equal(@"24 \cdot 1.0 \cdot \sqrt{4000} \cdot 6^{1.5}", FormulaText.Substituted(step.Expression, Notation.Latex));
    }

    [Theory]
    [InlineData(5, true, "c_a,min = 5 in < 1.5 h_ef = 9 in")]
    [InlineData(9, false, "c_a,min = 9 in ≥ 1.5 h_ef = 9 in")]
    [InlineData(12.5, false, "c_a,min = 12.5 in ≥ 1.5 h_ef = 9 in")]
    public void A_comparison_shows_the_relation_that_is_true(double edge, bool holds, string expected)
    {
        var recorder = new SheetRecorder(MeasurementSystem.PoundInch);
        var sheet = new Sheet<TracedNumber>(recorder);
        TracedNumber ca = sheet.Given("c_a_min", edge, Dimension.Length), hef = sheet.Given("h_ef", 6, Dimension.Length);

        Assert.Equal(holds, sheet.When(ca < 1.5 * hef));
        var branch = Assert.IsType<BranchLine>(recorder.ToSheet().Lines[^1]);
        Assert.Equal(expected, branch.Text);
        Assert.Equal(holds, branch.Holds);
    }

    [Theory]
    [InlineData("at least", 2, "a = 2 in ≥ 2 in")]
    [InlineData("at least", 1, "a = 1 in < 2 in")]
    [InlineData("at most", 2, "a = 2 in ≤ 2 in")]
    [InlineData("at most", 3, "a = 3 in > 2 in")]
    [InlineData("above", 3, "a = 3 in > 2 in")]
    [InlineData("above", 2, "a = 2 in ≤ 2 in")]
    [InlineData("below", 1, "a = 1 in < 2 in")]
    [InlineData("below", 2, "a = 2 in ≥ 2 in")]
    public void Every_relation_and_its_opposite(string relation, double value, string expected)
    {
        var recorder = new SheetRecorder(MeasurementSystem.PoundInch);
        var sheet = new Sheet<TracedNumber>(recorder);
        TracedNumber a = sheet.Given("a", value, Dimension.Length), two = TracedNumber.Literal(2);

        sheet.When(relation switch
        {
            "at least" => a >= two,
            "at most" => a <= two,
            "above" => a > two,
            _ => a < two,
        });

        Assert.Equal(expected, Assert.IsType<BranchLine>(recorder.ToSheet().Lines[^1]).Text);
    }

    [Fact]
    public void A_line_shows_the_unit_of_its_system()
    {
        foreach ((MeasurementSystem system, Dimension dimension, string unit) in new[]
        {
            (MeasurementSystem.PoundInch, Dimension.Length, "in"), (MeasurementSystem.PoundInch, Dimension.Area, "in2"), (MeasurementSystem.PoundInch, Dimension.Force, "lbf"),
            (MeasurementSystem.PoundInch, Dimension.Stress, "psi"), (MeasurementSystem.PoundInch, Dimension.Moment, "lbf-in"), (MeasurementSystem.PoundInch, Dimension.Density, "lb/ft3"),
            (MeasurementSystem.NewtonMillimetre, Dimension.Length, "mm"), (MeasurementSystem.NewtonMillimetre, Dimension.Area, "mm2"), (MeasurementSystem.NewtonMillimetre, Dimension.Force, "N"),
            (MeasurementSystem.NewtonMillimetre, Dimension.Stress, "MPa"), (MeasurementSystem.NewtonMillimetre, Dimension.Moment, "N-mm"), (MeasurementSystem.NewtonMillimetre, Dimension.Density, "kg/m3"),
            (MeasurementSystem.PoundInch, Dimension.None, ""),
        })
        {
            var recorder = new SheetRecorder(system);
            new Sheet<TracedNumber>(recorder).Given("q", 1, dimension);
            Assert.Equal(unit, recorder.ToSheet().Lines.OfType<ValueLine>().Single().Unit);
        }
    }

    [Theory]
    [InlineData("7", "in2", "7 in²", @"7\ \mathrm{in^2}")]
    [InlineData("22 308", "lbf", "22 308 lbf", @"22\,308\ \mathrm{lbf}")]
    [InlineData("110", "lb/ft3", "110 lb/ft³", @"110\ \mathrm{lb/ft^3}")]
    [InlineData("1900", "kg/m3", "1900 kg/m³", @"1900\ \mathrm{kg/m^3}")]
    [InlineData("1", "", "1", "1")]
    public void Units_after_a_number(string number, string unit, string plain, string latex)
    {
        Assert.Equal(plain, Notation.Plain.WithUnit(number, unit));
        Assert.Equal(latex, Notation.Latex.WithUnit(number, unit));
    }

    // In \mathrm a hyphen is set as a minus with blanks about it: lbf − in. A text hyphen is what is meant.
    [Theory]
    [InlineData("lbf-in", @"8\ \mathrm{lbf\text{-}in}")]
    [InlineData("N-mm", @"8\ \mathrm{N\text{-}mm}")]
    public void A_unit_of_two_parts_is_joined_by_a_hyphen_not_by_a_minus(string unit, string latex) =>
        Assert.Equal(latex, Notation.Latex.WithUnit("8", unit));

    private static TracedNumber Symbol(string id, double value) => TracedNumber.Given(null, id, value, Dimension.None, null);
}
