using ConcreteAttach.Aci318;
using ConcreteAttach.Actions;
using ConcreteAttach.Quantities;
using ConcreteAttach.Verification;

namespace ConcreteAttach.Tests.Properties;

/// <summary>Allowable stress design as practice has it: design strengths divided by the weighted load factor.</summary>
public sealed class AllowableStressProperties
{
    /// <summary>Service loads with α are used as much as the loads times α in strength design, mode by mode, and strengths are divided by α.</summary>
    [Fact]
    public void Is_strength_design_with_loads_times_the_factor()
    {
        int compared = 0;
        foreach (AttachmentSample sample in AttachmentSamples.Take(600, seed: 1801))
        {
            const double Alpha = 1.5;
            LoadCase given = sample.LoadCase;
            LoadCase allowable = given with { Format = SafetyFormat.AllowableStressDesign, WeightedLoadFactor = Alpha };
            PreparedAttachment prepared = sample.Prepared;
            AttachmentVerification strength = prepared.Verify([given], SheetScope.None);
            AttachmentVerification service = prepared.Verify([allowable], SheetScope.None);
            var silent = new ModeResult[prepared.ModeCapacity];
            int count = prepared.Evaluate(prepared.Prepare(allowable), silent);
            Assert.Equal(strength.Modes.Length, service.Modes.Length);
            for (int i = 0; i < strength.Modes.Length; i++)
            {
                (FailureMode one, FailureMode other) = (strength.Modes[i], service.Modes[i]);
                Assert.Equal(one.Id, other.Id);
                Assert.Equal(SafetyFormat.AllowableStressDesign, other.Format);
                if (one.Nominal is { } nominal)
                {
                    compared++;
                    Assert.Equal(nominal.Newtons, other.Nominal!.Value.Newtons);
                    Assert.Equal(one.Factor!.Value / Alpha, other.Factor!.Value, 1e-15);
                    Assert.True(Math.Abs((Alpha * one.Utilization!.Value) - other.Utilization!.Value) <= 1e-12 * other.Utilization.Value, one.Id);
                    Assert.Equal(silent[i].Utilization, other.Utilization.Value);
                }
            }

            Assert.True(count <= service.Modes.Length);
        }

        Assert.InRange(compared, 3000, int.MaxValue);
    }

    [Fact]
    public void Formats_are_never_mixed()
    {
        AttachmentSample sample = AttachmentSamples.Take(1, seed: 1802).Single();
        LoadCase strength = sample.LoadCase;
        LoadCase allowable = (sample.LoadCase with { Format = SafetyFormat.AllowableStressDesign, WeightedLoadFactor = 1.4 }).Named("service");

        Assert.Equal("format", Assert.Throws<InputException>(() => sample.Prepared.Verify(strength, allowable)).Parameter);
        Assert.Equal("weightedLoadFactor", Assert.Throws<InputException>(() => sample.Prepared.Verify(strength with { WeightedLoadFactor = 1.4 })).Parameter);
        Assert.Equal("weightedLoadFactor", Assert.Throws<InputException>(() => sample.Prepared.Verify(allowable with { WeightedLoadFactor = null })).Parameter);
        Assert.Equal("format", Assert.Throws<InputException>(() => sample.Prepared.Verify(strength with { Format = SafetyFormat.PartialFactors })).Parameter);
        Assert.Equal("weightedLoadFactor", Assert.Throws<InputException>(() => new LoadCase("service") { WeightedLoadFactor = 0.99 }).Parameter);
        Assert.Contains("allowable stress design", sample.Prepared.Verify(allowable).Assumptions[0], StringComparison.Ordinal);
    }
}

file static class LoadCases
{
    public static LoadCase Named(this LoadCase l, string name) => new(name)
    {
        N = l.N, Vx = l.Vx, Vy = l.Vy, Mx = l.Mx, My = l.My, Mz = l.Mz, At = l.At, Format = l.Format, WeightedLoadFactor = l.WeightedLoadFactor,
    };
}
