using ConcreteAttach.Actions;
using ConcreteAttach.Attached;
using ConcreteAttach.Fasteners;
using ConcreteAttach.Geometry;
using ConcreteAttach.Materials;
using ConcreteAttach.Verification;
using static ConcreteAttach.Samples.Shorthand;

namespace ConcreteAttach.Samples;

/// <summary>Worked example: adhesive rods that tie an old sill to its stem wall. Invented, the data of the product too.</summary>
internal static class StemWallRetrofit
{
    public static AttachmentVerification Verify()
    {
        #region concrete
        // 8 in. wide, old: strength from cores. The rods stand in the middle of it.
        var stemWall = new ConcreteMember(Psi(2500), thickness: In(20))
        {
            Edges = new EdgeDistances { PlusY = In(4), MinusY = In(4) },
            Cover = In(1.5),
            AggregateSize = In(1),
        };
        #endregion

        #region fastener
        var product = new AdhesiveQualification
        {
            Source = "invented report",
            Category = 1,
            BondStress = new ProductBondStress(cracked: Psi(650), uncracked: Psi(1200)),
            CriticalEdgeDistance = In(9),
            MinimumSpacing = In(3), MinimumEdgeDistance = In(2.5), MinimumThickness = In(8),
            HoleDiameter = In(0.75), HoleDepth = In(6),
        };
        var rod = new AdhesiveRod(In(0.625), Grade36(0.625), effectiveEmbedment: In(6), product)
        {
            Direction = InstallationDirection.Downward,
        };
        FastenerLayout layout = FastenerLayout.RowAlongX(2, In(10));
        #endregion

        #region loads
        LoadCase[] loadCases =
        [
            new("0.9D + 1.0W, uplift") { N = Kip(3), Vx = Kip(1) },
            new("1.4D, hung shelf") { N = Kip(0.8), SustainedTension = Kip(0.8) },
        ];
        #endregion

        #region verify
        var attachment = new Attachment(stemWall, rod, layout);
        AttachmentVerification verification = Method.Verify(attachment, loadCases);
        #endregion

        return verification;
    }
}
