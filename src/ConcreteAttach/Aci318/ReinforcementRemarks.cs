using ConcreteAttach.Attached;
using ConcreteAttach.Materials;

namespace ConcreteAttach.Aci318;

/// <summary>What a result says of reinforcement beside its numbers.</summary>
internal static class ReinforcementRemarks
{
    /// <summary>What supplementary and anchor reinforcement were taken to be.</summary>
    public static IEnumerable<string> Assumptions(ConcreteMember member, AnchorReinforcement? reinforcement)
    {
        if (member.HasSupplementaryReinforcementForTension || member.HasSupplementaryReinforcementForShear)
        {
            yield return "Supplementary reinforcement, as stated: it restrains the body that would break out and is not designed for the load of the fasteners (2.3); it lies as anchor reinforcement would (Fig. R17.5.2.1), "
                + "and need be neither sized nor fully developed (R17.5.3). It counts in φ of breakout, blowout and bond (Table 17.5.3(b)), not of pullout and pryout.";
        }

        if (reinforcement is null)
        {
            yield break;
        }

        yield return "Anchor reinforcement takes the place of breakout in its direction alone (17.5.2.1). Pullout, side-face blowout, bond, splitting, breakout along an edge and pryout (with its concrete breakout strength) are checked as without it.";
        yield return "Each fastener is held by the bars that are nearest to it; bars of one fastener do not help another.";
        yield return "Development lengths of 25.4 are for the full f_y, without the reduction for excess reinforcement (25.4.10.2, R17.5.2.1). Constants and factors of 25.4 are from memory.";
        yield return "How the members beyond the ends of the bars carry the load on (laps, ties, struts), spacing and cover of the bars (25.2, 20.5.1) and ties at hooks (25.4.3.3, 25.4.3.4) are not checked here.";
        if (reinforcement.Shear.Any(bars => bars.Eccentricity is null))
        {
            yield return "The shear acts at the surface of the concrete: the bars below it carry more than the shear (R17.5.2.1).";
        }
    }

    /// <summary>Notices on bars larger than those of the tests.</summary>
    public static IEnumerable<string> Notices(AnchorageData data)
    {
        if (data.Reinforcement is not { } reinforcement)
        {
            yield break;
        }

        if (reinforcement.Tension is { Bar.IsUpToNo5: false })
        {
            yield return "Anchor reinforcement for tension: the tests behind 17.5.2.1 had bars up to No. 5 (R17.5.2.1).";
        }

        if (reinforcement.Shear.Any(bars => bars is { Given.IsEnclosing: true, Bar.IsUpToNo5: false }))
        {
            yield return "Bars that enclose fasteners: the tests behind 17.5.2.1 had bars up to No. 5; larger than No. 6 is not recommended, for the bend no longer touches the fastener well (R17.5.2.1).";
        }

        if (reinforcement.Shear.Any(bars => bars is { Given.IsEnclosing: false, Bar.IsUpToNo6: false }))
        {
            yield return "Bars beside fasteners: the tests behind 17.5.2.1 had bars up to No. 6 (R17.5.2.1).";
        }
    }
}
