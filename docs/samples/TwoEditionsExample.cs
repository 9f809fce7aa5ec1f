using ConcreteAttach.Aci318;
using ConcreteAttach.Actions;
using ConcreteAttach.Attached;
using ConcreteAttach.Fasteners;
using ConcreteAttach.Geometry;
using ConcreteAttach.Materials;
using ConcreteAttach.Verification;
using static ConcreteAttach.Samples.Shorthand;

namespace ConcreteAttach.Samples;

/// <summary>One attachment by both printed sets of constants. Invented attachments, chosen so that each constant takes part in one of them.</summary>
internal static class TwoEditionsExample
{
    public static (AttachmentVerification InchPound, AttachmentVerification Si) Both(Attachment attachment, LoadCase loadCase)
    {
        #region both
        var asInchPound = new Aci318Method(Aci318Edition.InchPound2019);
        var asSi = new Aci318Method(Aci318Edition.Si2019);
        AttachmentVerification inchPound = asInchPound.Verify(attachment, loadCase);
        AttachmentVerification si = asSi.Verify(attachment, loadCase);
        #endregion

        return (inchPound, si);
    }

    public static LoadCase Load { get; } = new("tension and shear") { N = Kip(2), Vx = Kip(1) };

    public static Attachment SlenderBolts { get; } = new(
        new ConcreteMember(Psi(4000), In(24)) { Edges = new EdgeDistances { PlusX = In(3) } },
        new HeadedBolt(In(0.625), Grade36(0.625), In(8)),
        FastenerLayout.RowAlongY(2, In(6)));

    public static Attachment ThickDeepBolts { get; } = new(
        new ConcreteMember(Psi(4000), In(24)) { Edges = new EdgeDistances { PlusX = In(10) } },
        new HeadedBolt(In(1), AnchorSteels.Find("ASTM F1554 Grade 105", In(1)), In(14)),
        FastenerLayout.RowAlongY(2, In(8)));

    public static Attachment WeldedStuds { get; } = new(
        new ConcreteMember(Psi(4000), In(12)) { Edges = new EdgeDistances { PlusX = In(6) } },
        new HeadedStud(In(0.5), AnchorSteels.Find("AWS D1.1 Type B", In(0.5)), In(4)) { WeldedToPlate = new WeldedPlate(In(0.5), false) },
        FastenerLayout.RowAlongY(2, In(4)));

    /// <summary>An embedment that one set of limits takes as deep enough for k_cp = 2 and the other does not.</summary>
    public static Attachment AtALimit { get; } = new(
        new ConcreteMember(Psi(4000), In(8)),
        new HeadedStud(In(0.5), AnchorSteels.Find("AWS D1.1 Type B", In(0.5)), In(2.5)),
        FastenerLayout.Single());
}
