using ConcreteAttach.Aci318;
using ConcreteAttach.Calculation;
using ConcreteAttach.Quantities;
using ConcreteAttach.Tests.Properties;
using ConcreteAttach.Verification;

namespace ConcreteAttach.Tests.Calculation;

/// <summary>Formulas as MathML say the same as the plain text, brackets, fractions and powers included.</summary>
public sealed class MathMLTests
{
    [Theory]
    [InlineData("h_ef", "<msub><mi>h</mi><mtext>ef</mtext></msub>")]
    [InlineData("psi_ec_N", "<msub><mi>ψ</mi><mtext>ec,N</mtext></msub>")]
    [InlineData("f'_c", "<msubsup><mi>f</mi><mtext>c</mtext><mo>′</mo></msubsup>")]
    [InlineData("h_ef'", "<msubsup><mi>h</mi><mtext>ef</mtext><mo>′</mo></msubsup>")]
    [InlineData("c_-x", "<msub><mi>c</mi><mtext>−x</mtext></msub>")]
    [InlineData("n", "<mi>n</mi>")]
    public void Symbols(string id, string expected) => Assert.Equal(expected, Notation.MathML.Symbol(id));

    [Fact]
    public void A_power_of_a_sum_and_a_fraction_are_closed()
    {
        TracedNumber a = Given("a", 6), b = Given("b", 3);
        Assert.Equal("<msup><mrow><mo>(</mo><mi>a</mi><mo>+</mo><mi>b</mi><mo>)</mo></mrow><mn>2</mn></msup>", FormulaText.Symbolic(TracedNumber.Power(a + b, 2, 1).Expression, Notation.MathML));
        Assert.Equal("<mfrac><mrow><mi>a</mi><mo>+</mo><mi>b</mi></mrow><mi>b</mi></mfrac>", FormulaText.Symbolic(((a + b) / b).Expression, Notation.MathML));
        Assert.Equal("<mn>6</mn><mo>·</mo><msup><mn>3</mn><mrow><mn>5</mn><mo>/</mo><mn>3</mn></mrow></msup>", FormulaText.Substituted((a * TracedNumber.Power(b, 5, 3)).Expression, Notation.MathML));
        Assert.Equal("<mn>22\u202F308</mn><mspace width=\".25em\"/><mtext>in²</mtext>", Notation.MathML.WithUnit("22 308", "in2"));

        static TracedNumber Given(string id, double value) => TracedNumber.Given(null, id, value, Dimension.None, null);
    }

    /// <summary>
    /// The bracket property: what stands in the MathML, read back by an evaluator that knows elements only, gives the value of the step within the digits that are shown; and formula,
    /// substitution and plain text have one shape.
    /// </summary>
    [Fact]
    public void Every_step_of_random_sheets_can_be_recomputed_from_its_MathML()
    {
        int steps = 0, branches = 0;
        foreach (AttachmentSample sample in AttachmentSamples.Take(400, seed: 71))
        {
            AttachmentVerification verification = sample.Prepared.Verify([sample.LoadCase], SheetScope.All);
            foreach (CalculationSheet sheet in verification.Distribution.Select(d => d.Sheet).Concat(verification.Modes.Select(m => m.Sheet).OfType<CalculationSheet>()))
            {
                var products = new List<string>();
                foreach (StepLine step in sheet.Lines.OfType<StepLine>())
                {
                    string mathML = FormulaText.Substituted(step.Expression, Notation.MathML);
                    ShownFormula shown = ShownFormula.Read(MathFormula.ToPlain(mathML));
                    Interval value = shown.Evaluate(leaf => leaf is ShownFormula.Number n ? Interval.Around(n.Value, n.HalfUnit) : throw new FormatException(step.Id));
                    Assert.True(value.Meets(Interval.Of(step.Value)), $"{step.Id}: {mathML} is {value}, not {step.Value}");

                    Assert.Equal(MathFormula.ToPlain(Notation.MathML.Symbol(step.Id)), step.Symbol);
                    string shape = ShownFormula.Read(step.Formula, products).Shape();
                    Assert.Equal(shape, ShownFormula.Read(MathFormula.ToPlain(FormulaText.Symbolic(step.Expression, Notation.MathML)), products).Shape());
                    Assert.Equal(shape, shown.Shape());
                    steps++;
                    if (step.Symbol.Contains(' ', StringComparison.Ordinal))
                    {
                        products.Add(step.Symbol);
                    }
                }

                foreach (BranchLine branch in sheet.Lines.OfType<BranchLine>())
                {
                    Assert.Equal(Plain(branch.Text), Plain(MathFormula.ToPlain(FormulaText.Comparison(branch, Notation.MathML))));
                    branches++;
                }
            }
        }

        Assert.InRange(steps, 20_000, int.MaxValue);
        Assert.InRange(branches, 2_000, int.MaxValue);

        // Fractions are the one thing that the two write differently: brackets in the text, a bar in MathML.
        static string Plain(string text) => text.Replace("(", "", StringComparison.Ordinal).Replace(")", "", StringComparison.Ordinal).Replace(" ", "", StringComparison.Ordinal);
    }
}
