using ConcreteAttach.Actions;
using ConcreteAttach.Attached;
using ConcreteAttach.Fasteners;
using ConcreteAttach.Geometry;
using ConcreteAttach.Materials;
using ConcreteAttach.Verification;
using static ConcreteAttach.Samples.Shorthand;

namespace ConcreteAttach.Samples;

/// <summary>Worked example: a column of a market-hall canopy, four rods near two edges, uplift and moment. Invented.</summary>
internal static class MarketHallCanopy
{
    public static AttachmentVerification Verify()
    {
        #region concrete
        var plinth = new ConcreteMember(Psi(4000), thickness: In(30))
        {
            Edges = new EdgeDistances { PlusX = In(8.5), PlusY = In(8.5) },
            Cover = In(2),
        };
        #endregion

        #region fastener
        AnchorSteel steel = AnchorSteels.Find("ASTM F1554 Grade 55", In(0.75));
        var rod = new ThreadedRodWithNut(In(0.75), steel, effectiveEmbedment: In(12))
        {
            Nut = HeadShape.HeavyHexNut,
        };
        FastenerLayout layout = FastenerLayout.Rectangle(2, In(8), 2, In(8));
        #endregion

        #region loads
        LoadCase[] loadCases =
        [
            new("0.9D + 1.0W, even uplift") { N = Kip(20) },
            new("0.9D + 1.0W, gust under the eave") { N = Kip(12), My = KipIn(-84) },
        ];
        #endregion

        #region verify
        var attachment = new Attachment(plinth, rod, layout);
        AttachmentVerification verification = Method.Verify(attachment, loadCases);
        #endregion

        return verification;
    }

    /// <summary>The same column with hairpins that tie the breakout to the plinth.</summary>
    public static AttachmentVerification VerifyWithSupplementaryReinforcement()
    {
        AttachmentVerification verification = Verify();
        Attachment attachment = verification.Attachment;
        LoadCase[] loadCases = [.. verification.LoadCases];

        #region reinforced
        ConcreteMember tied = attachment.Concrete with
        {
            HasSupplementaryReinforcementForTension = true,
        };
        var reinforced = new Attachment(tied, attachment.Fastener, attachment.Layout);
        AttachmentVerification second = Method.Verify(reinforced, loadCases);
        #endregion

        return second;
    }
}
