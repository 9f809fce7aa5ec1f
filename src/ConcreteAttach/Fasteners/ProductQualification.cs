using ConcreteAttach.Quantities;
using UnitsNet;

namespace ConcreteAttach.Fasteners;

/// <summary>
/// What an evaluation report states of a post-installed product, by tests of ACI 355.2, ACI 355.4 or their like. The library ships no product's data: all of it
/// is the user's. What is null is not known; where the standard has a default it is used and printed among the assumptions, else the mode is not covered.
/// </summary>
public abstract record ProductQualification
{
    private protected ProductQualification()
    {
    }

    /// <summary>The report that the data come from, as it is to be printed; null: not named.</summary>
    public string? Source { get; init; }

    /// <summary>Category 1, 2 or 3: how much installation and service scatter (ACI 318-19 17.5.3). No default.</summary>
    /// <exception cref="InputException">Not 1, 2 or 3.</exception>
    public int? Category
    {
        get;
        init => field = value is null or 1 or 2 or 3 ? value : throw new InputException("category", QuantityText.Format(value.Value), "1, 2 or 3");
    }

    /// <summary>Whether the product is qualified for uncracked concrete alone: then nothing that breaks cracked concrete is covered.</summary>
    public bool IsForUncrackedConcreteOnly { get; init; }

    /// <summary>k_c of the product; null, or null for the state of the concrete: the default of ACI 318-19 17.6.2.2.1.</summary>
    public BreakoutCoefficient? BreakoutCoefficient { get; init; }

    /// <summary>Critical edge distance c_ac; null: the default of ACI 318-19 17.9.5.</summary>
    /// <exception cref="InputException">Not greater than 0, or not finite.</exception>
    public Length? CriticalEdgeDistance { get; init => field = Positive("criticalEdgeDistance", value); }

    /// <summary>V_sa of one fastener by tests, without a grout pad; null: by the formula of ACI 318-19 17.7.1.2.</summary>
    /// <exception cref="InputException">Not greater than 0, or not finite.</exception>
    public Force? SteelShear { get; init => field = value is { } force ? Require.Positive("steelShear", force) : null; }

    /// <summary>Whether the steel element counts as ductile by the report; null: as its steel.</summary>
    public bool? IsDuctile { get; init; }

    /// <summary>Least spacing; null: the default of ACI 318-19 17.9.2.</summary>
    /// <exception cref="InputException">Not greater than 0, or not finite.</exception>
    public Length? MinimumSpacing { get; init => field = Positive("minimumSpacing", value); }

    /// <summary>Least edge distance; null: the default of ACI 318-19 Table 17.9.2(b).</summary>
    /// <exception cref="InputException">Not greater than 0, or not finite.</exception>
    public Length? MinimumEdgeDistance { get; init => field = Positive("minimumEdge", value); }

    /// <summary>Least thickness of the member; null: by ACI 318-19 17.9.4 where it has a rule.</summary>
    /// <exception cref="InputException">Not greater than 0, or not finite.</exception>
    public Length? MinimumThickness { get; init => field = Positive("minimumThickness", value); }

    /// <summary>Nominal embedment h_nom: how deep the fastener reaches; at least the effective embedment.</summary>
    /// <exception cref="InputException">Not greater than 0, or not finite.</exception>
    public Length? NominalEmbedment { get; init => field = Positive("nominalEmbedment", value); }

    /// <summary>Diameter of the hole.</summary>
    /// <exception cref="InputException">Not greater than 0, or not finite.</exception>
    public Length? HoleDiameter { get; init => field = Positive("holeDiameter", value); }

    /// <summary>Depth of the hole; at least the nominal embedment.</summary>
    /// <exception cref="InputException">Not greater than 0, or not finite.</exception>
    public Length? HoleDepth { get; init => field = Positive("holeDepth", value); }

    /// <summary>Values for earthquake; null: not known. Under earthquake they take the place of the others (ACI 318-19 17.10.3).</summary>
    public SeismicQualification? Seismic { get; init; }

    /// <summary>The data that are stated, but for pullout, bond and earthquake.</summary>
    public sealed override string ToString()
    {
        string[] data =
        [
            .. QualificationText.Part("category", Category is { } category ? QuantityText.Format(category) : null),
            .. QualificationText.Part("for uncracked concrete only", IsForUncrackedConcreteOnly ? "" : null),
            .. QualificationText.Part("k_c", BreakoutCoefficient?.ToString()),
            .. QualificationText.Part("c_ac", CriticalEdgeDistance),
            .. QualificationText.Part("V_sa", SteelShear is { } shear ? QuantityText.Format(shear) : null),
            .. QualificationText.Part("steel element", IsDuctile is { } ductile ? ductile ? "ductile" : "brittle" : null),
            .. QualificationText.Part("least spacing", MinimumSpacing),
            .. QualificationText.Part("least edge distance", MinimumEdgeDistance),
            .. QualificationText.Part("least thickness", MinimumThickness),
            .. QualificationText.Part("nominal embedment", NominalEmbedment),
            .. QualificationText.Part("diameter of the hole", HoleDiameter),
            .. QualificationText.Part("depth of the hole", HoleDepth),
        ];
        return data.Length == 0 ? "none" : string.Join(", ", data);
    }

    private static Length? Positive(string parameter, Length? value) => value is { } length ? Require.Positive(parameter, length) : null;
}

/// <summary>k_c of a product, the coefficient of N_b (ACI 318-19 17.6.2.2.2). It has a unit, so it belongs to one set of constants.</summary>
public sealed record BreakoutCoefficient
{
    /// <summary>States the coefficients.</summary>
    /// <param name="cracked">k_c in cracked concrete, greater than 0; null: not stated.</param>
    /// <param name="uncracked">k_c in uncracked concrete, with ψ_c,N = 1, greater than 0; null: not stated.</param>
    /// <param name="system">The units: with lbf, in. and psi, or with N, mm and MPa.</param>
    /// <exception cref="InputException">A coefficient is not greater than 0, or not finite.</exception>
    public BreakoutCoefficient(double? cracked, double? uncracked, MeasurementSystem system)
    {
        Cracked = Positive(nameof(cracked), cracked);
        Uncracked = Positive(nameof(uncracked), uncracked);
        System = system;
    }

    /// <summary>k_c in cracked concrete; null: not stated.</summary>
    public double? Cracked { get; }

    /// <summary>k_c in uncracked concrete, with ψ_c,N = 1; null: not stated.</summary>
    public double? Uncracked { get; }

    /// <summary>The units in which they hold.</summary>
    public MeasurementSystem System { get; }

    /// <summary>The coefficients.</summary>
    public override string ToString() =>
        QualificationText.States(Cracked is { } cracked ? QuantityText.Format(cracked) : null, Uncracked is { } uncracked ? QuantityText.Format(uncracked) : null);

    private static double? Positive(string parameter, double? value) =>
        value is null or (> 0 and < double.PositiveInfinity) ? value : throw new InputException(parameter, QuantityText.Format(value.Value), "greater than 0");
}

/// <summary>What tests under simulated earthquake have shown of a product (ACI 318-19 17.10.3). Stated at all, it says that the product is qualified for earthquake.</summary>
public sealed record SeismicQualification
{
    /// <summary>N_p of one fastener in cracked concrete, at the concrete strength of the other N_p; null: not stated, or not for this kind.</summary>
    /// <exception cref="InputException">Not greater than 0, or not finite.</exception>
    public Force? Pullout { get; init => field = value is { } force ? Require.Positive("pullout", force) : null; }

    /// <summary>V_sa of one fastener; null: not stated.</summary>
    /// <exception cref="InputException">Not greater than 0, or not finite.</exception>
    public Force? SteelShear { get; init => field = value is { } force ? Require.Positive("steelShear", force) : null; }

    /// <summary>Characteristic bond stress in cracked concrete; null: not stated, or not for this kind.</summary>
    /// <exception cref="InputException">Not greater than 0, or not finite.</exception>
    public Pressure? BondStress { get; init => field = value is { } stress ? Require.Positive("bondStress", stress) : null; }

    /// <summary>The values that are stated.</summary>
    public override string ToString()
    {
        string[] data =
        [
            .. QualificationText.Part("N_p", Pullout is { } pullout ? QuantityText.Format(pullout) : null),
            .. QualificationText.Part("V_sa", SteelShear is { } shear ? QuantityText.Format(shear) : null),
            .. QualificationText.Part("bond stress", BondStress is { } stress ? QuantityText.Format(stress) : null),
        ];
        return data.Length == 0 ? "none" : string.Join(", ", data);
    }
}
