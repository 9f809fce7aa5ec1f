using ConcreteAttach.Aci318;
using ConcreteAttach.Actions;
using ConcreteAttach.Attached;
using ConcreteAttach.Fasteners;
using ConcreteAttach.Geometry;
using ConcreteAttach.Materials;
using ConcreteAttach.Verification;
using FsCheck;
using FsCheck.Fluent;
using UnitsNet;

namespace ConcreteAttach.Tests.Properties;

/// <summary>What must hold of any post-installed fastener; and, by name, where the standard is not monotone.</summary>
public sealed class PostInstalledProperties
{
    private static readonly Config Thousand = Config.QuickThrowOnFailure.WithMaxTest(1_000).WithReplay(32, 5);

    private static Arbitrary<AttachmentSample> Samples => SymmetryProperties.Samples;

    [Fact]
    public void Bond_does_not_fall_with_the_bond_stress_of_the_state_at_hand() => Check.One(Thousand, Prop.ForAll(Samples, s =>
    {
        // τ_uncr also widens c_Na, so that in uncracked concrete a stronger adhesive has fewer whole squares: cracked only.
        if (s.Attachment is { Concrete.IsCracked: true, Fastener: AdhesiveFastener { Qualification.BondStress: ProductBondStress bond } adhesive })
        {
            var stronger = new ProductBondStress(bond.Cracked * 1.2, bond.Uncracked);
            double[] before = Strengths(s, FailureModeKind.Bond), after = Strengths(With(s, adhesive, stronger), FailureModeKind.Bond);
            Assert.Equal(before.Length, after.Length);
            Assert.All(before.Zip(after), pair => Assert.Equal(1.2 * pair.First, pair.Second, 1e-9 * pair.Second));
        }
    }));

    [Fact]
    public void Bond_grows_with_the_embedment_in_proportion() => Check.One(Thousand, Prop.ForAll(Samples, s =>
    {
        if (s.Attachment is { Concrete.IsCracked: true, Fastener: AdhesiveFastener adhesive })
        {
            double[] before = Strengths(s, FailureModeKind.Bond), after = Strengths(s.WithEmbedment(adhesive.EffectiveEmbedment * 1.1), FailureModeKind.Bond);
            if (before.Length == after.Length)
            {
                Assert.All(before.Zip(after), pair => Assert.Equal(1.1 * pair.First, pair.Second, 1e-9 * pair.Second));
            }
        }
    }));

    [Fact]
    public void Bond_does_not_fall_when_an_edge_moves_away() => Check.One(Thousand, Prop.ForAll(Samples, s =>
    {
        var away = Length.FromMillimeters(17);
        EdgeDistances edges = s.Attachment.Concrete.Edges;
        double[] near = Strengths(s, FailureModeKind.Bond), far = Strengths(s.With(c => c with { Edges = edges with { PlusX = edges.PlusX + away } }), FailureModeKind.Bond);
        Assert.Equal(near.Length, far.Length);
        Assert.All(near.Zip(far), pair => Assert.True(pair.Second >= pair.First * (1 - 1e-9)));
    }));

    [Fact]
    public void Design_strength_in_tension_falls_with_the_category_and_shear_does_not_know_it() => Check.One(Thousand, Prop.ForAll(Samples, s =>
    {
        if (s.Attachment.Fastener is PostInstalledFastener { ProductQualification.Category: not null } fastener)
        {
            List<Outcome>[] byCategory = [.. new[] { 1, 2, 3 }.Select(n => Outcome.Of(s with { Attachment = new(s.Attachment.Concrete, OfCategory(fastener, n), s.Attachment.Layout) }))];
            Assert.All(byCategory[0].Zip(byCategory[1], byCategory[2]), same =>
            {
                Assert.Equal(same.First.Nominal, same.Second.Nominal);
                bool depends = same.First.Kind is FailureModeKind.ConcreteBreakoutTension or FailureModeKind.Pullout or FailureModeKind.Bond or FailureModeKind.BondSustained && same.First.Nominal > 0;
                Assert.Equal(depends, same.First.Factor > same.Second.Factor && same.Second.Factor > same.Third.Factor);
            });
        }
    }));

    [Fact]
    public void Pryout_of_an_adhesive_fastener_is_at_most_that_of_its_breakout() => Check.One(Thousand, Prop.ForAll(Samples, s =>
    {
        if (s.Attachment.Fastener is AdhesiveFastener { Qualification: { } data } adhesive)
        {
            var undercut = new UndercutFastener(adhesive.Diameter, adhesive.Steel, adhesive.EffectiveEmbedment, new MechanicalQualification
            {
                Category = data.Category, BreakoutCoefficient = data.BreakoutCoefficient, CriticalEdgeDistance = data.CriticalEdgeDistance ?? (2 * adhesive.EffectiveEmbedment),
            });
            double[] bonded = Strengths(s, FailureModeKind.Pryout), mechanical = Strengths(s with { Attachment = new(s.Attachment.Concrete, undercut, s.Attachment.Layout) }, FailureModeKind.Pryout);
            Assert.All(bonded.Zip(mechanical), pair => Assert.True(pair.First <= pair.Second * (1 + 1e-9)));
        }
    }));

    /// <summary>Not monotone: near an edge, uncracked concrete can be the weaker assumption (17.6.2.6).</summary>
    [Fact]
    public void Uncracked_concrete_is_the_weaker_assumption_near_an_edge()
    {
        AttachmentVerification uncracked = Expansion(isCracked: false, 4), cracked = Expansion(isCracked: true, 4);
        FailureMode weaker = uncracked.Modes.Single(m => m.Kind == FailureModeKind.ConcreteBreakoutTension), stronger = cracked.Modes.Single(m => m.Kind == FailureModeKind.ConcreteBreakoutTension);

        Assert.True(weaker.Nominal!.Value.PoundsForce < stronger.Nominal!.Value.PoundsForce);
        Assert.Contains(uncracked.Notices, n => n.Contains("weaker assumption", StringComparison.Ordinal));
        string remark = Assert.Single(weaker.Sheet!.Lines.OfType<ConcreteAttach.Calculation.NoteLine>(), n => n.Text.Contains("weaker one", StringComparison.Ordinal)).Text;
        Assert.Contains("4699 lbf", remark, StringComparison.Ordinal); // what the cracked design gives: 4698.5
        Assert.DoesNotContain(cracked.Notices, n => n.Contains("weaker assumption", StringComparison.Ordinal));
        Assert.DoesNotContain(Expansion(isCracked: false, 13).Notices, n => n.Contains("weaker assumption", StringComparison.Ordinal));
    }

    /// <summary>The same of bond: here τ_uncr is 1.3 τ_cr, and ψ_cp,Na takes more than that.</summary>
    [Fact]
    public void Uncracked_concrete_can_be_the_weaker_assumption_for_bond()
    {
        FailureMode cracked = Near(isCracked: true, out _), uncracked = Near(isCracked: false, out AttachmentVerification verification);

        Assert.True(uncracked.Nominal!.Value.PoundsForce < cracked.Nominal!.Value.PoundsForce);
        Assert.Contains(verification.Notices, n => n.Contains("weaker assumption for bond", StringComparison.Ordinal));
        string remark = Assert.Single(uncracked.Sheet!.Lines.OfType<ConcreteAttach.Calculation.NoteLine>(), n => n.Text.Contains("weaker one", StringComparison.Ordinal)).Text;
        Assert.Contains($"{Math.Round(cracked.Nominal.Value.PoundsForce)} lbf", remark, StringComparison.Ordinal);

        static FailureMode Near(bool isCracked, out AttachmentVerification verification)
        {
            var data = new AdhesiveQualification { Category = 1, BondStress = new ProductBondStress(Pressure.FromPoundsForcePerSquareInch(600), Pressure.FromPoundsForcePerSquareInch(780)) };
            var rod = new AdhesiveRod(Length.FromInches(0.5), AnchorSteels.Find("ASTM A193 B7", Length.FromInches(0.5)), Length.FromInches(6), data);
            var concrete = new ConcreteMember(Pressure.FromPoundsForcePerSquareInch(4000), Length.FromInches(12)) { IsCracked = isCracked, Edges = new EdgeDistances { PlusX = Length.FromInches(3) } };
            verification = new Aci318Method(Aci318Edition.InchPound2019).Verify(new(concrete, rod, FastenerLayout.Single()), new LoadCase("case") { N = Force.FromPoundsForce(500) });
            return verification.Modes.Single(m => m.Kind == FailureModeKind.Bond);
        }
    }

    /// <summary>The same fastener described in inches and in millimetres, to the last bits.</summary>
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Units_of_the_input_do_not_matter(bool isCracked)
    {
        AttachmentVerification inches = Bonded(isCracked, v => Length.FromInches(v), v => Force.FromPoundsForce(v), 1, 1);
        AttachmentVerification metric = Bonded(isCracked, v => Length.FromMillimeters(v), v => Force.FromNewtons(v), 25.4, 4.4482216152605);

        Assert.Equal(inches.Modes.Select(m => (m.Id, m.Status)), metric.Modes.Select(m => (m.Id, m.Status)));
        Assert.All(inches.Modes.Zip(metric.Modes).Where(m => m.First.Utilization > 0), pair => Assert.Equal(pair.First.Utilization!.Value, pair.Second.Utilization!.Value, 1e-13 * pair.First.Utilization.Value));
    }

    private static AttachmentVerification Bonded(bool isCracked, Func<double, Length> length, Func<double, Force> force, double perInch, double perPound)
    {
        var data = new AdhesiveQualification
        {
            Category = 1, CriticalEdgeDistance = length(12 * perInch), BondStress = new ProductBondStress(Pressure.FromPoundsForcePerSquareInch(700), Pressure.FromPoundsForcePerSquareInch(1500)),
        };
        var steel = new AnchorSteel("steel of a test", Pressure.FromKilopoundsForcePerSquareInch(60), Pressure.FromKilopoundsForcePerSquareInch(80), true);
        var bar = new AdhesiveBar(length(0.625 * perInch), steel, length(6 * perInch), data);
        var concrete = new ConcreteMember(Pressure.FromPoundsForcePerSquareInch(4000), length(12 * perInch)) { IsCracked = isCracked, Edges = new EdgeDistances { PlusX = length(7 * perInch) } };
        FastenerLayout layout = FastenerLayout.Rectangle(2, length(6 * perInch), 2, length(5 * perInch));
        return new Aci318Method(Aci318Edition.InchPound2019).Verify(
            new(concrete, bar, layout), new LoadCase("case") { N = force(5000 * perPound), SustainedTension = force(2000 * perPound), Vx = force(3000 * perPound), Vy = force(1000 * perPound) });
    }

    private static AttachmentVerification Expansion(bool isCracked, double edge)
    {
        var data = new MechanicalQualification { Category = 1, Pullout = PulloutStrength.NotGoverning };
        var expansion = new TorqueControlledExpansion(Length.FromInches(0.5), AnchorSteels.Find("ASTM A193 B7", Length.FromInches(0.5)), Length.FromInches(3.25), data) { Thread = ScrewThread.UnifiedCoarse };
        var concrete = new ConcreteMember(Pressure.FromPoundsForcePerSquareInch(3000), Length.FromInches(10)) { IsCracked = isCracked, Edges = new EdgeDistances { PlusX = Length.FromInches(edge) } };
        return new Aci318Method(Aci318Edition.InchPound2019).Verify(new(concrete, expansion, FastenerLayout.Single()), new LoadCase("case") { N = Force.FromPoundsForce(1000) });
    }

    private static double[] Strengths(AttachmentSample sample, FailureModeKind kind) =>
        [.. sample.Prepared.Verify([sample.LoadCase], SheetScope.None).Modes.Where(m => m.Kind == kind && m.Nominal is not null).Select(m => m.Nominal!.Value.Newtons)];

    private static AttachmentSample With(AttachmentSample s, AdhesiveFastener fastener, BondStress bond) =>
        s with { Attachment = new(s.Attachment.Concrete, fastener with { Qualification = fastener.Qualification with { BondStress = bond } }, s.Attachment.Layout) };

    private static PostInstalledFastener OfCategory(PostInstalledFastener fastener, int category) => fastener switch
    {
        MechanicalFastener mechanical => mechanical with { Qualification = mechanical.Qualification with { Category = category } },
        AdhesiveFastener adhesive => adhesive with { Qualification = adhesive.Qualification with { Category = category } },
        _ => throw new ArgumentOutOfRangeException(nameof(fastener)),
    };
}
