using ConcreteAttach.Calculation;
using ConcreteAttach.Geometry;

namespace ConcreteAttach.Aci318;

/// <summary>
/// All fasteners of an attachment as one group: what does not depend on the load, computed once. Most load cases pull or push all of them, and then the fast path
/// has only their eccentricity to work out. Sheets show every line, so they do not use it.
/// </summary>
internal sealed class WholeGroup
{
    public WholeGroup(AnchorageData data)
    {
        double[] memory = new double[TensionModes.ScratchLength(data.Count)];
        var group = new BreakoutGroup(data, data.All, data.X, data.Y, data.Extent, 0, 0, memory);
        Edges = group.Edges;
        Breakout = ConcreteBreakoutTension.Terms(default(Sheet<PlainNumber>), data, group, memory);
        IsOneInBreakout = IsOne(data, 3 * data.Embedment, data.Influence);
        if (data.Product is { IsAdhesive: true })
        {
            Bond = Aci318.Bond.Terms(default(Sheet<PlainNumber>), data, group, memory);
            IsOneInBond = IsOne(data, 2 * data.BondReach, data.BondInfluence);
        }
    }

    /// <summary>The edges about all fasteners.</summary>
    public GroupEdges Edges { get; }

    /// <summary>Their breakout in tension, the eccentricity apart.</summary>
    public BreakoutTerms<PlainNumber> Breakout { get; }

    /// <summary>Their bond, N_ba and the eccentricity apart.</summary>
    public BondTerms<PlainNumber> Bond { get; }

    /// <summary>Whether all fasteners break out together.</summary>
    public bool IsOneInBreakout { get; }

    /// <summary>Whether the bond of all fasteners fails together.</summary>
    public bool IsOneInBond { get; }

    private static bool IsOne(AnchorageData data, double limit, SeenInfluence? influence)
    {
        int[] groupOf = new int[data.Count];
        return (influence is not null ? influence.Find(data.All, groupOf) : InfluenceGroups.Find(data.X, data.Y, limit, groupOf, new double[InfluenceGroups.ScratchLength(data.Count)])) == 1;
    }
}
