using ConcreteAttach.Actions;
using ConcreteAttach.Attached;
using ConcreteAttach.Fasteners;
using ConcreteAttach.Geometry;
using ConcreteAttach.Materials;
using ConcreteAttach.Verification;
using static ConcreteAttach.Samples.Shorthand;

namespace ConcreteAttach.Samples;

/// <summary>Worked example: a canopy post on the corner of a pier, uplift, wind shear and torsion. Invented.</summary>
internal static class PierCornerPost
{
    public static AttachmentVerification Verify()
    {
        #region inputs
        var pier = new ConcreteMember(Psi(4000), thickness: In(24))
        {
            Edges = new EdgeDistances
            {
                PlusX = In(9), PlusY = In(9), MinusX = In(27), MinusY = In(27),
            },
            Cover = In(1.5),
        };
        var bolt = new HeadedBolt(In(0.625), Grade36(0.625), effectiveEmbedment: In(8));
        FastenerLayout layout = FastenerLayout.Rectangle(2, In(6), 2, In(6));
        var attachment = new Attachment(pier, bolt, layout);
        #endregion

        #region loads
        LoadCase[] loadCases =
        [
            new("0.9D + 1.0W toward the corner")
            {
                N = Kip(10), Vx = Kip(2.4), Vy = Kip(1.6), Mz = KipIn(18),
            },
            new("0.9D + 1.0W away from it")
            {
                N = Kip(10), Vx = Kip(-2.4), Vy = Kip(-1.6), Mz = KipIn(-18),
            },
            new("1.2D + 1.6S") { N = Kip(-14) },
        ];
        #endregion

        #region verify
        AttachmentVerification verification = Method.Verify(attachment, loadCases);
        #endregion

        return verification;
    }
}
