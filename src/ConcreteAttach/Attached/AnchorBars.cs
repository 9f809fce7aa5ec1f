using ConcreteAttach.Materials;
using ConcreteAttach.Quantities;
using UnitsNet;

namespace ConcreteAttach.Attached;

/// <summary>How a bar ends, which decides how it is developed (ACI 318-19 25.4).</summary>
public enum BarEnd
{
    /// <summary>Straight (25.4.2).</summary>
    Straight,

    /// <summary>A standard hook (25.4.3).</summary>
    Hooked,

    /// <summary>A head (25.4.4).</summary>
    Headed,
}

/// <summary>Coating of a bar (ACI 318-19 Table 25.4.2.5, ψ_e).</summary>
public enum BarCoating
{
    /// <summary>None, or zinc.</summary>
    None,

    /// <summary>Epoxy, with clear cover less than 3 d_b or clear spacing less than 6 d_b.</summary>
    Epoxy,

    /// <summary>Epoxy, with clear cover of at least 3 d_b and clear spacing of at least 6 d_b.</summary>
    EpoxyWellCovered,
}

/// <summary>Bars of one size and steel that serve as anchor reinforcement, and what decides their development length. What is not said counts as the unfavourable case.</summary>
/// <param name="Bar">The size.</param>
/// <param name="Steel">The steel; its yield strength is f_y.</param>
public sealed record AnchorBars(DeformedBar Bar, AnchorSteel Steel)
{
    /// <summary>The size.</summary>
    public DeformedBar Bar { get; } = Bar ?? throw new ArgumentNullException(nameof(Bar));

    /// <summary>The steel.</summary>
    public AnchorSteel Steel { get; } = Steel ?? throw new ArgumentNullException(nameof(Steel));

    /// <summary>
    /// c_b of 25.4.2.4: the lesser of the distance from the axis of a bar to the nearest surface of the concrete and half the spacing of the bars being developed, centre to centre.
    /// Where it is given, straight ends go by the formula of 25.4.2.4; else by Table 25.4.2.3.
    /// </summary>
    public Length? CoverToCenter { get; init => field = value is { } cover ? Require.Positive("coverToCenter", cover) : null; }

    /// <summary>K_tr of 25.4.2.4, A_tr · 40 / (s n); 0 by default, which the clause permits.</summary>
    public Length TransverseIndex { get; init => field = Require.NotNegative("transverseIndex", value); }

    /// <summary>Whether the first row of Table 25.4.2.3 holds: clear spacing and cover at least d_b with minimum stirrups or ties, or 2 d_b and d_b without; counts where c_b is not given.</summary>
    public bool IsWellSpaced { get; init; }

    /// <summary>Whether more than 12 in. of fresh concrete lie below horizontal straight bars (ψ_t 1.3).</summary>
    public bool IsTopBar { get; init; }

    /// <summary>The coating.</summary>
    public BarCoating Coating { get; init; }

    /// <summary>Whether hooks or heads are confined or spaced at least 6 d_b (ψ_r of Table 25.4.3.2, ψ_p of Table 25.4.4.3: 1.0; counts up to No. 11).</summary>
    public bool IsConfined { get; init; }

    /// <summary>Whether hooks or heads have the side cover of ψ_o 1.0: at least 6 d_b, or 2-1/2 in. within a column core (Tables 25.4.3.2 and 25.4.4.3; counts up to No. 11).</summary>
    public bool HasSideCover { get; init; }

    /// <summary>Whether heads meet 25.4.4.1 as far as it is not a matter of size and concrete: the bar by 20.2.1.6, A_brg at least 4 A_b, clear cover at least 2 d_b, spacing at least 3 d_b.</summary>
    public bool MeetsHeadConditions { get; init; }

    /// <summary>Whether bars of ASTM A615 Grade 60 or 80 meet what 20.2.2.5 asks of them under earthquake; A706 does by itself.</summary>
    public bool MeetsEarthquakeConditions { get; init; }

    /// <summary>Size and steel.</summary>
    public override string ToString() => $"{Bar}, {Steel}, f_y {QuantityText.Format(Steel.Yield)}";
}
