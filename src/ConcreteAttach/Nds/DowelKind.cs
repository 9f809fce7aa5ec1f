namespace ConcreteAttach.Nds;

/// <summary>Kinds of dowel-type fasteners (NDS-2018 12.1).</summary>
public enum DowelKind
{
    /// <summary>Bolt, also an anchor bolt through a sill.</summary>
    Bolt,

    /// <summary>Lag screw.</summary>
    LagScrew,

    /// <summary>Wood screw.</summary>
    WoodScrew,

    /// <summary>Plain-shank nail or spike of low- to medium-carbon steel: common, box, sinker.</summary>
    Nail,

    /// <summary>Hardened ring-shank nail of post-frame construction.</summary>
    RingShankNail,
}
