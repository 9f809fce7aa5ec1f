using ConcreteAttach.Quantities;
using UnitsNet;

namespace ConcreteAttach.Fasteners;

/// <summary>What tests by ACI 355.4 or their like have shown of an adhesive fastener.</summary>
public sealed record AdhesiveQualification : ProductQualification
{
    /// <summary>
    /// Characteristic bond stress: <see cref="ProductBondStress"/> of the product, or <see cref="MinimumBondStress"/> of ACI 318-19 Table 17.6.5.2.5. Null: not
    /// known, and bond is not covered.
    /// </summary>
    public BondStress? BondStress { get; init; }
}

/// <summary>Where the characteristic bond stress τ of an adhesive fastener comes from (ACI 318-19 17.6.5.2).</summary>
public abstract record BondStress
{
    private protected BondStress()
    {
    }

    /// <summary>The bond stresses, or the table that they are taken from.</summary>
    public abstract override string ToString();
}

/// <summary>Characteristic bond stress of a product for its use at hand: temperature, moisture, drilling and inspection are those of the report.</summary>
public sealed record ProductBondStress : BondStress
{
    /// <summary>States the bond stresses.</summary>
    /// <param name="cracked">τ_cr in cracked concrete, greater than 0; null: not stated.</param>
    /// <param name="uncracked">τ_uncr in uncracked concrete, greater than 0; null: not stated. Every calculation needs it for c_Na.</param>
    /// <exception cref="InputException">A stress is not greater than 0, or not finite.</exception>
    public ProductBondStress(Pressure? cracked, Pressure? uncracked)
    {
        Cracked = cracked is { } c ? Require.Positive(nameof(cracked), c) : null;
        Uncracked = uncracked is { } u ? Require.Positive(nameof(uncracked), u) : null;
    }

    /// <summary>τ_cr; null: not stated.</summary>
    public Pressure? Cracked { get; }

    /// <summary>τ_uncr; null: not stated.</summary>
    public Pressure? Uncracked { get; }

    /// <summary>The bond stresses.</summary>
    public override string ToString() =>
        QualificationText.States(Cracked is { } cracked ? QuantityText.Format(cracked) : null, Uncracked is { } uncracked ? QuantityText.Format(uncracked) : null);
}

/// <summary>The rows of ACI 318-19 Table 17.6.5.2.5.</summary>
public enum BondEnvironment
{
    /// <summary>Outdoor: concrete dry to saturated at installation, in service at most 175 °F (79 °C).</summary>
    Outdoor,

    /// <summary>Indoor: concrete dry at installation, in service at most 110 °F (43 °C).</summary>
    Indoor,
}

/// <summary>Moisture of the concrete when an adhesive fastener is installed.</summary>
public enum ConcreteMoisture
{
    /// <summary>Dry.</summary>
    Dry,

    /// <summary>Saturated, without standing water in the hole.</summary>
    Saturated,

    /// <summary>Standing water in the hole, or under water.</summary>
    WaterFilled,
}

/// <summary>How the hole of an adhesive fastener is drilled.</summary>
public enum DrillingMethod
{
    /// <summary>With a rotary impact drill or a rock drill.</summary>
    RotaryImpact,

    /// <summary>With a core drill.</summary>
    Core,

    /// <summary>In another way.</summary>
    Other,
}

/// <summary>
/// The minimum characteristic bond stresses of ACI 318-19 Table 17.6.5.2.5, for an adhesive that meets ACI 355.4 whose own values are not known, with the
/// conditions under which the table holds. Each condition is a mode of the verification.
/// </summary>
public sealed record MinimumBondStress : BondStress
{
    /// <summary>The row of the table.</summary>
    /// <exception cref="InputException">No such row.</exception>
    public required BondEnvironment Environment
    {
        get;
        init => field = value is BondEnvironment.Outdoor or BondEnvironment.Indoor ? value : throw new InputException("environment", QuantityText.Format((int)value), "outdoor, indoor");
    }

    /// <summary>Age of the concrete at installation; 0 or more, finite.</summary>
    /// <exception cref="InputException">Less than 0, or not finite.</exception>
    public required Duration ConcreteAge
    {
        get;
        init => field = value.Value >= 0 && double.IsFinite(value.Value) ? value : throw new InputException("concreteAge", $"{QuantityText.Format(value.Days)} d", "0 or more days");
    }

    /// <summary>Temperature of the concrete at installation.</summary>
    /// <exception cref="InputException">Not finite.</exception>
    public required Temperature InstallationTemperature { get; init => field = Finite("installationTemperature", value); }

    /// <summary>Highest temperature of the concrete in service.</summary>
    /// <exception cref="InputException">Not finite.</exception>
    public required Temperature PeakTemperature { get; init => field = Finite("peakTemperature", value); }

    /// <summary>Moisture of the concrete at installation.</summary>
    /// <exception cref="InputException">No such state.</exception>
    public required ConcreteMoisture Moisture
    {
        get;
        init => field = value is ConcreteMoisture.Dry or ConcreteMoisture.Saturated or ConcreteMoisture.WaterFilled
            ? value
            : throw new InputException("moisture", QuantityText.Format((int)value), "dry, saturated, water-filled");
    }

    /// <summary>How the hole is drilled.</summary>
    /// <exception cref="InputException">No such way.</exception>
    public required DrillingMethod Drilling
    {
        get;
        init => field = value is DrillingMethod.RotaryImpact or DrillingMethod.Core or DrillingMethod.Other
            ? value
            : throw new InputException("drilling", QuantityText.Format((int)value), "rotary impact, core, other");
    }

    /// <summary>The row of the table.</summary>
    public override string ToString() => Environment == BondEnvironment.Indoor ? "minimum of ACI 318-19 Table 17.6.5.2.5, indoor" : "minimum of ACI 318-19 Table 17.6.5.2.5, outdoor";

    private static Temperature Finite(string parameter, Temperature value) =>
        double.IsFinite(value.Value) ? value : throw new InputException(parameter, QuantityText.Format(value.Value), "a finite temperature");
}
