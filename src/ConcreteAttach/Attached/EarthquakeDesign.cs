using ConcreteAttach.Quantities;
using UnitsNet;

namespace ConcreteAttach.Attached;

/// <summary>Seismic design category of the building code.</summary>
public enum SeismicDesignCategory
{
    /// <summary>Category A: ACI 318 17.10 asks for nothing.</summary>
    A,

    /// <summary>Category B: ACI 318 17.10 asks for nothing.</summary>
    B,

    /// <summary>Category C.</summary>
    C,

    /// <summary>Category D.</summary>
    D,

    /// <summary>Category E.</summary>
    E,

    /// <summary>Category F.</summary>
    F,
}

/// <summary>By which option of ACI 318-19 17.10.5.3 an attachment is designed for earthquake tension.</summary>
public enum EarthquakeTensionOption
{
    /// <summary>(a) The steel of the fasteners yields before the concrete fails.</summary>
    DuctileSteel,

    /// <summary>(b) The attached part yields first: the load case carries the largest tension that it can then transmit.</summary>
    YieldingAttachment,

    /// <summary>(c) The load case carries the largest tension that an attached part that does not yield can transmit.</summary>
    NonYieldingAttachment,

    /// <summary>(d) The horizontal earthquake effect counts Ω_0 times.</summary>
    Overstrength,
}

/// <summary>By which option of ACI 318-19 17.10.6.3 an attachment is designed for earthquake shear.</summary>
public enum EarthquakeShearOption
{
    /// <summary>(a) The attached part yields first: the load case carries the largest shear that it can then transmit.</summary>
    YieldingAttachment,

    /// <summary>(b) The load case carries the largest shear that an attached part that does not yield can transmit.</summary>
    NonYieldingAttachment,

    /// <summary>(c) The horizontal earthquake effect counts Ω_0 times.</summary>
    Overstrength,
}

/// <summary>Where a rod that has to stretch is threaded (ACI 318-19 17.10.5.3(a)(iv)).</summary>
public enum RodThreads
{
    /// <summary>Over part of its length: f_uta / f_ya must be at least 1.3.</summary>
    PartOfLength,

    /// <summary>Over its whole length.</summary>
    WholeLength,

    /// <summary>Over upset ends.</summary>
    UpsetEnds,
}

/// <summary>What the design of an attachment for earthquake goes by (ACI 318-19 17.10). It acts on load cases that state their <see cref="Actions.LoadCase.Earthquake"/> part.</summary>
/// <param name="Category">The seismic design category of the structure.</param>
public sealed record EarthquakeDesign(SeismicDesignCategory Category)
{
    /// <summary>Whether the fasteners stand where a plastic hinge of the concrete is to be expected; the chapter does not cover that (17.10.2).</summary>
    public bool IsInPlasticHinge { get; init; }

    /// <summary>Option for tension; null: none was chosen, so that a load case that needs one is not covered.</summary>
    public EarthquakeTensionOption? Tension { get; init; }

    /// <summary>Option for shear; null: none was chosen, so that a load case that needs one is not covered.</summary>
    public EarthquakeShearOption? Shear { get; init; }

    /// <summary>Ω_0 of the seismic-force-resisting system, at least 1; null: not known. No unit.</summary>
    /// <exception cref="InputException">Below 1, or not finite.</exception>
    public double? Overstrength
    {
        get;
        init => field = value is null or (>= 1 and < double.PositiveInfinity) ? value : throw new InputException("overstrength", QuantityText.Format(value.Value), "1 or more");
    }

    /// <summary>Length over which a ductile steel element can stretch, without upset threads (17.10.5.3(a)(ii)); null: not known.</summary>
    /// <exception cref="InputException">Not greater than 0, or not finite.</exception>
    public Length? StretchLength { get; init => field = value is { } length ? Require.Positive("stretchLength", length) : null; }

    /// <summary>Whether the stretch length is kept from buckling, or its load cannot reverse (17.10.5.3(a)(iii)).</summary>
    public bool IsKeptFromBuckling { get; init; }

    /// <summary>Where the rod is threaded; over part of its length by default.</summary>
    public RodThreads Threads { get; init; }

    /// <summary>Whether it can be shown that the concrete stays uncracked under the earthquake (17.10.5.4); else cracked concrete is taken.</summary>
    public bool ConcreteStaysUncracked { get; init; }

    /// <summary>
    /// The wood sill that the fasteners hold, where the building code's alternative for its bolts is to be used; null: it is not. Where all its conditions are met, the shear along the sill need not meet
    /// 17.10.6, and breakout and pryout under it need not be checked.
    /// </summary>
    public WoodSill? WoodSill { get; init; }

    /// <summary>What the design goes by, in words.</summary>
    public override string ToString()
    {
        string tension = Tension switch
        {
            EarthquakeTensionOption.DuctileSteel => "ductile steel",
            EarthquakeTensionOption.YieldingAttachment => "yielding attachment",
            EarthquakeTensionOption.NonYieldingAttachment => "non-yielding attachment",
            EarthquakeTensionOption.Overstrength => "overstrength",
            _ => "no option chosen",
        };
        string shear = Shear switch
        {
            EarthquakeShearOption.YieldingAttachment => "yielding attachment",
            EarthquakeShearOption.NonYieldingAttachment => "non-yielding attachment",
            EarthquakeShearOption.Overstrength => "overstrength",
            _ => "no option chosen",
        };
        string[] parts =
        [
            $"seismic design category {Category}", $"tension: {tension}", $"shear: {shear}",
            .. Overstrength is { } factor ? [$"overstrength factor {QuantityText.Format(factor)}"] : Array.Empty<string>(),
            .. StretchLength is { } stretch ? [$"stretch length {QuantityText.Format(stretch)}"] : Array.Empty<string>(),
            .. IsKeptFromBuckling ? ["kept from buckling"] : Array.Empty<string>(),
            .. Threads switch { RodThreads.WholeLength => ["threaded over the whole length"], RodThreads.UpsetEnds => ["upset ends"], _ => Array.Empty<string>() },
            .. ConcreteStaysUncracked ? ["the concrete is shown to stay uncracked"] : Array.Empty<string>(),
            .. WoodSill is { } sill ? [$"bolts of {sill}"] : Array.Empty<string>(),
            .. IsInPlasticHinge ? ["in the zone of a plastic hinge"] : Array.Empty<string>(),
        ];
        return string.Join("; ", parts);
    }

    /// <summary>Whether 17.10 asks for anything: categories C to F.</summary>
    internal bool Applies => Category >= SeismicDesignCategory.C;
}
