using ConcreteAttach.Actions;
using ConcreteAttach.Attached;
using ConcreteAttach.Fasteners;
using ConcreteAttach.Geometry;
using ConcreteAttach.Materials;
using ConcreteAttach.Verification;
using UnitsNet;
using static ConcreteAttach.Samples.Shorthand;

namespace ConcreteAttach.Samples;

/// <summary>Worked example: a ledger on the edge of a slab, held by screws in uncracked concrete. Invented, the data of the product too.</summary>
internal static class LedgerScrews
{
    public static AttachmentVerification Verify() => Verify(isCracked: false);

    public static AttachmentVerification VerifyCracked() => Verify(isCracked: true);

    private static AttachmentVerification Verify(bool isCracked)
    {
        #region concrete
        // The face of a slab edge: 16 in. deep, its top 8 in. above the screws.
        var slabEdge = new ConcreteMember(Psi(3500), thickness: In(10))
        {
            IsCracked = isCracked,
            Edges = new EdgeDistances { PlusY = In(8), MinusY = In(8) },
        };
        #endregion

        #region fastener
        var product = new MechanicalQualification
        {
            Source = "invented report",
            Category = 1,
            BreakoutCoefficient = new(cracked: 17, uncracked: 24, Method.Edition.System),
            CriticalEdgeDistance = In(5),
            Pullout = new PulloutStrength(cracked: null, uncracked: Kip(3.2))
            {
                At = Psi(2500), Exponent = 0.3,
            },
            SteelShear = Kip(3.6),
            NominalEmbedment = In(3.25), HoleDiameter = In(0.375), HoleDepth = In(3.5),
        };
        var steel = new AnchorSteel("invented steel", Psi(100_000), Psi(125_000), isDuctile: false);
        var screw = new ScrewFastener(In(0.375), steel, effectiveEmbedment: In(2.5), product)
        {
            TensileArea = Area.FromSquareInches(0.103),
        };
        FastenerLayout layout = FastenerLayout.RowAlongX(3, In(8));
        #endregion

        #region loads
        LoadCase[] loadCases =
        [
            new("1.2D + 1.6L") { Vy = Kip(-2.4), N = Kip(0.6) },
            new("0.9D + 1.0W") { Vy = Kip(-0.5), N = Kip(2.4) },
        ];
        #endregion

        #region verify
        var attachment = new Attachment(slabEdge, screw, layout);
        AttachmentVerification verification = Method.Verify(attachment, loadCases);
        #endregion

        return verification;
    }
}
