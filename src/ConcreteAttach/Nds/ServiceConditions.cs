using ConcreteAttach.Actions;
using ConcreteAttach.Quantities;

namespace ConcreteAttach.Nds;

/// <summary>Load duration of allowable stress design (NDS-2018 Table 2.3.2). Impact (2.0) does not apply to connections.</summary>
public enum LoadDuration
{
    /// <summary>Permanent, dead load: 0.9.</summary>
    Permanent,

    /// <summary>Ten years, occupancy live load: 1.0.</summary>
    TenYears,

    /// <summary>Two months, snow load: 1.15.</summary>
    TwoMonths,

    /// <summary>Seven days, construction load: 1.25.</summary>
    SevenDays,

    /// <summary>Ten minutes, wind or earthquake: 1.6.</summary>
    TenMinutes,
}

/// <summary>Time effect of strength design (LRFD) (NDS-2018 Table N3). Above 1.0 (impact) it does not apply to connections.</summary>
public enum TimeEffect
{
    /// <summary>1.4 D: 0.6.</summary>
    Dead,

    /// <summary>1.2 D + 1.6 L with L from storage: 0.7.</summary>
    Storage,

    /// <summary>1.2 D + 1.6 L with L from occupancy, or roof live load, rain or snow as the leading load: 0.8.</summary>
    OccupancyOrRoof,

    /// <summary>Wind, earthquake, or impact: 1.0.</summary>
    WindEarthquakeOrImpact,
}

/// <summary>Sustained exposure to heat (NDS-2018 Table 11.3.4).</summary>
public enum TemperatureRange
{
    /// <summary>At most 100 °F (38 °C).</summary>
    UpTo100F,

    /// <summary>Above 100 °F to 125 °F (52 °C).</summary>
    UpTo125F,

    /// <summary>Above 125 °F to 150 °F (66 °C). The standard covers nothing above.</summary>
    UpTo150F,
}

/// <summary>Under what conditions a connection works. The defaults are those of the reference design values: ASD, ten years, dry, not hot.</summary>
public sealed record ServiceConditions
{
    /// <summary>Safety format: allowable stress design, or strength design (LRFD).</summary>
    /// <exception cref="InputException">Partial factors, which the standard does not have.</exception>
    public SafetyFormat Format
    {
        get;
        init => field = value is SafetyFormat.AllowableStressDesign or SafetyFormat.StrengthDesign
            ? value
            : throw new InputException("format", value.ToString(), $"{SafetyFormat.AllowableStressDesign} or {SafetyFormat.StrengthDesign}");
    } = SafetyFormat.AllowableStressDesign;

    /// <summary>Load duration; counts in allowable stress design.</summary>
    public LoadDuration Duration { get; init; } = LoadDuration.TenYears;

    /// <summary>Time effect; counts in strength design (LRFD).</summary>
    public TimeEffect TimeEffect { get; init; } = TimeEffect.OccupancyOrRoof;

    /// <summary>Whether the wood has more than 19 percent moisture when the connection is made.</summary>
    public bool IsWetAtFabrication { get; init; }

    /// <summary>Whether the wood has more than 19 percent moisture in service.</summary>
    public bool IsWetInService { get; init; }

    /// <summary>
    /// Whether shrinkage of wet wood cannot split it: one fastener, one row parallel to grain, or separate splice plates for each row
    /// (NDS-2018 Table 11.3.3 footnote: C_M is then 1.0 instead of 0.4 for wood that dries).
    /// </summary>
    public bool IsFreeToShrink { get; init; }

    /// <summary>Temperature over a long time.</summary>
    public TemperatureRange Temperature { get; init; }

    /// <summary>Whether the fastener is a nail of a diaphragm (C_di, 11.3.8).</summary>
    public bool IsDiaphragmNail { get; init; }

    /// <summary>Whether the fastener is a toe-nail (C_tn, 11.3.9).</summary>
    public bool IsToeNail { get; init; }
}
