using ConcreteAttach.Aci318;
using ConcreteAttach.Actions;
using ConcreteAttach.Attached;
using ConcreteAttach.Distribution;
using ConcreteAttach.Fasteners;
using ConcreteAttach.Geometry;
using ConcreteAttach.Materials;
using ConcreteAttach.Tests.Benchmarks;
using ConcreteAttach.Verification;
using UnitsNet;

namespace ConcreteAttach.Tests.Properties;

/// <summary>ACI 318-25: what is known of its changes is used, what is not known is not covered, and nothing is taken from 318-19 in silence.</summary>
public sealed class Edition2025Properties
{
    private static readonly string[] KnownOfCastIn = ["tension/breakout", "tension/pullout", "tension/blowout"];

    [Fact]
    public void What_is_known_differs_from_2019_by_its_factors_alone_and_the_rest_is_not_covered()
    {
        int known = 0, gaps = 0;
        foreach (AttachmentSample sample in AttachmentSamples.Take(600, seed: 2501))
        {
            var method = new Aci318Method(Of2025(sample.Method.Edition), sample.Method.Options);
            AttachmentVerification now = method.Prepare(sample.Attachment).Verify([sample.LoadCase], SheetScope.None);
            AttachmentVerification before = sample.Method.Prepare(sample.Attachment).Verify([sample.LoadCase], SheetScope.None);
            Dictionary<string, FailureMode> then = before.Modes.Where(m => m.LoadCase is not null).ToDictionary(m => m.Id);
            bool isCastIn = sample.Attachment.Fastener is CastInFastener;
            double factor = sample.Attachment.Concrete.HasSupplementaryReinforcementForTension ? 0.65 : 0.65 * 0.95;
            foreach (FailureMode mode in now.Modes.Where(m => m.LoadCase is not null))
            {
                if (mode.Nominal is { } nominal)
                {
                    known++;
                    Assert.True(isCastIn, mode.Id);
                    Assert.Contains(KnownOfCastIn, id => mode.Id.StartsWith(id, StringComparison.Ordinal));
                    Assert.Equal(then[mode.Id].Nominal!.Value, nominal);
                    Assert.Equal(factor, mode.Factor!.Value, 1e-15);
                    Assert.True(mode.Factor < then[mode.Id].Factor, mode.Id);
                }
                else if (mode.Status == ModeStatus.NotCovered)
                {
                    gaps++;
                    Assert.NotNull(mode.Reason);
                }
            }

            bool pulls = now.Forces.Any(f => f.Tension.Newtons > 0);
            if (pulls || now.Forces.Any(f => f.ShearX.Newtons != 0 || f.ShearY.Newtons != 0))
            {
                Assert.NotEqual(Verdict.Holds, now.Verdict);
            }

            Assert.Equal(pulls ? ModeStatus.NotCovered : ModeStatus.NotApplicable, now.Modes.Single(m => m.Id == "tension/steel").Status);
        }

        Assert.True(known > 500 && gaps > 1000, $"{known} known, {gaps} not covered");
    }

    [Fact]
    public void Redundant_fasteners_are_not_covered()
    {
        Attachment given = FourBolts(8, null);
        Attachment redundant = given with { HasRedundantFasteners = true };
        var pull = new LoadCase("pull") { N = Force.FromKilopoundsForce(1) };
        AttachmentVerification verification = new Aci318Method(Aci318Edition.InchPound2025).Verify(redundant, pull);

        Assert.All(verification.Modes.Where(m => m.LoadCase is not null), m => Assert.Null(m.Nominal));
        Assert.Equal(ModeStatus.NotCovered, verification.Modes.First(m => m.Id.StartsWith("tension/breakout", StringComparison.Ordinal)).Status);
        Assert.Contains("The fasteners are redundant (Table 21.2.1).", verification.Assumptions);
        Assert.Equal(
            new Aci318Method(Aci318Edition.InchPound2019).Verify(given, pull).Modes.Select(m => m.Utilization),
            new Aci318Method(Aci318Edition.InchPound2019).Verify(redundant, pull).Modes.Select(m => m.Utilization));
    }

    /// <summary>Worked by hand: four bolts at ±4 in., plate 14 in. square in contact, moment; ψ_cm,N = 2 − z/(1.5 h_ef) from the resultants that the result shows.</summary>
    [Theory]
    [InlineData(6, null, true)] // z about 10 in.: 2 − 10/9 < 1
    [InlineData(12, null, false)] // 1.5 h_ef 18: 2 − 10/18
    [InlineData(12, 17.0, true)] // an edge closer than 1.5 h_ef to the bolts
    [InlineData(12, 23.0, false)]
    public void Compression_under_the_plate_raises_breakout(double embedment, double? edge, bool isOne)
    {
        Attachment attachment = FourBolts(embedment, edge);
        var load = new LoadCase("bend") { My = Torque.FromPoundForceInches(120_000) };
        AttachmentVerification verification = new Aci318Method(Aci318Edition.InchPound2025).Verify(attachment, load);
        FailureMode breakout = verification.Modes.Single(m => m.Id == "tension/breakout");
        FailureMode older = new Aci318Method(Aci318Edition.InchPound2019).Verify(attachment, load).Modes.Single(m => m.Id == "tension/breakout");

        double z = verification.Contacts[0].LeverArm!.Value.Inches;
        double expected = isOne ? 1 : 2 - (z / (1.5 * embedment));
        Assert.InRange(z, 9.5, 11);
        Assert.Equal(expected, breakout.Sheet!.Find("psi_cm_N")!.Value, 1e-9);
        Assert.Equal(expected * older.Nominal!.Value.PoundsForce, breakout.Nominal!.Value.PoundsForce, 1e-6 * breakout.Nominal.Value.PoundsForce);
    }

    [Fact]
    public void Silent_and_recorded_are_equal_to_the_bit_and_allocate_nothing()
    {
        foreach (AttachmentSample sample in AttachmentSamples.Take(200, seed: 2503))
        {
            PreparedAttachment prepared = new Aci318Method(Of2025(sample.Method.Edition), sample.Method.Options).Prepare(sample.Attachment);
            PreparedActions actions = prepared.Prepare(sample.LoadCase);
            var silent = new ModeResult[prepared.ModeCapacity];
            int count = prepared.Evaluate(actions, silent);
            FailureMode[] recorded = [.. prepared.Verify([sample.LoadCase], SheetScope.All).Modes.Where(m => m.LoadCase is not null)];

            Assert.Equal(count, recorded.Length);
            for (int i = 0; i < count; i++)
            {
                Assert.Equal((silent[i].Kind, silent[i].Status), (recorded[i].Result.Kind, recorded[i].Result.Status));
                Assert.Equal(BitConverter.DoubleToInt64Bits(silent[i].Utilization), BitConverter.DoubleToInt64Bits(recorded[i].Result.Utilization));
            }

            Assert.Equal(0, Allocation.Of(() => prepared.Evaluate(actions, silent)));
        }
    }

    private static Aci318Edition Of2025(Aci318Edition edition) => edition.Constants == "SI" ? Aci318Edition.Si2025 : Aci318Edition.InchPound2025;

    private static Attachment FourBolts(double embedment, double? edge)
    {
        Length spot = Length.FromInches(4);
        Length half = Length.FromInches(7);
        return new Attachment(
            new ConcreteMember(Pressure.FromPoundsForcePerSquareInch(4000), Length.FromInches(40)) { Edges = new EdgeDistances { PlusX = edge is { } e ? Length.FromInches(e) : null } },
            new HeadedBolt(Length.FromInches(0.75), AnchorSteels.Find("ASTM F1554 Grade 36", Length.FromInches(0.75)), Length.FromInches(embedment)) { TensileArea = Area.FromSquareInches(0.334), BearingArea = Area.FromSquareInches(0.911) },
            FastenerLayout.Points([new(-spot, -spot), new(spot, -spot), new(spot, spot), new(-spot, spot)]))
        {
            Plate = new BasePlate(
                SurfaceOutline.Polygon(new(-half, -half), new(half, -half), new(half, half), new(-half, half)),
                PlateContact.StrainCompatibility),
        };
    }
}
