namespace ConcreteAttach.Aci318;

/// <summary>How the projected area of a tension breakout is read.</summary>
public enum AreaReading
{
    /// <summary>The union of the squares about the fasteners, cut at the edges. For a grid it is the projection of its rows.</summary>
    Union,

    /// <summary>The rectangle about those squares, cut at the edges, at most n A_Nco: for those who read the commentary so.</summary>
    Bounding,
}

/// <summary>Which fasteners decide whether an edge is close (17.6.2.1.2).</summary>
public enum CloseEdgesReading
{
    /// <summary>The fasteners of the breakout group.</summary>
    Group,

    /// <summary>All fasteners of the attachment.</summary>
    AllFasteners,
}

/// <summary>What follows beyond the largest embedment of 17.6.2.2.3 (25 in., 635 mm).</summary>
public enum DeepReading
{
    /// <summary>Back to h_ef^1.5, which drops: the lower strength.</summary>
    Revert,

    /// <summary>h_ef^(5/3) goes on.</summary>
    Extend,
}

/// <summary>Named readings where ACI 318 leaves a choice. The result says which were used.</summary>
public sealed record Aci318Options
{
    /// <summary>The defaults.</summary>
    public static readonly Aci318Options Default = new();

    /// <summary>Projected area of a tension breakout; the union by default.</summary>
    public AreaReading Area { get; init; }

    /// <summary>Close edges; those of the group by default.</summary>
    public CloseEdgesReading CloseEdges { get; init; }

    /// <summary>Embedment beyond 17.6.2.2.3; back to h_ef^1.5 by default.</summary>
    public DeepReading Deep { get; init; }
}
