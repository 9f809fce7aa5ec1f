using ConcreteAttach.Calculation;
using ConcreteAttach.Materials;
using ConcreteAttach.Quantities;
using UnitsNet;

namespace ConcreteAttach.Nds;

/// <summary>The round head of a fastener that is pulled through a side member of wood (NDS-2018 12.2.5). Constants from memory. Immutable.</summary>
public sealed class HeadPullThrough
{
    /// <summary>Creates a head in a side member.</summary>
    /// <param name="species">Wood of the side member.</param>
    /// <param name="headDiameter">D_H; greater than 0.</param>
    /// <param name="thickness">Net thickness t_ns of the side member; greater than 0.</param>
    /// <exception cref="InputException">A parameter is outside its range.</exception>
    public HeadPullThrough(WoodSpecies species, Length headDiameter, Length thickness)
    {
        ArgumentNullException.ThrowIfNull(species);
        Species = species;
        HeadDiameter = Require.Positive(nameof(headDiameter), headDiameter);
        Thickness = Require.Positive(nameof(thickness), thickness);
    }

    /// <summary>Wood of the side member.</summary>
    public WoodSpecies Species { get; }

    /// <summary>Diameter of the head.</summary>
    public Length HeadDiameter { get; }

    /// <summary>Net thickness of the side member.</summary>
    public Length Thickness { get; }

    /// <summary>Pull-through design value of one head.</summary>
    /// <param name="conditions">Under what conditions the connection works.</param>
    public ConnectionStrength Strength(ServiceConditions conditions)
    {
        ArgumentNullException.ThrowIfNull(conditions);
        const MeasurementSystem System = MeasurementSystem.PoundInch;
        var recorder = new SheetRecorder(System);
        var sheet = new Sheet<TracedNumber>(recorder);
        TracedNumber reference = Reference(sheet, Species.SpecificGravity, HeadDiameter.In(System), Thickness.In(System));

        // Table 11.3.3: the row of pull-through, less sure than the others.
        TracedNumber moisture = sheet.Factor("C_M", conditions.IsWetInService ? 0.7 : 1, "Table 11.3.3");
        TracedNumber product = reference * moisture * Adjustment.Temperature(sheet, conditions);
        TracedNumber adjusted = sheet.Step("W'_H", Adjustment.Format(sheet, conditions, product), Dimension.Force, "Table 11.3.1");
        return new(Force.FromPoundsForce(reference.Value), Force.FromPoundsForce(adjusted.Value), [], null, null, [], recorder, adjusted);
    }

    private static T Reference<T>(Sheet<T> sheet, double gravity, double head, double thickness)
        where T : struct, IFormulaNumber<T>
    {
        T g = sheet.Given("G", gravity, Dimension.None, "Table 12.3.3A");
        T dh = sheet.Given("D_H", head, Dimension.Length);
        T t = sheet.Given("t_ns", thickness, Dimension.Length);
        T pi = sheet.Given("pi", Math.PI, Dimension.None);
        return sheet.When(t <= 2.5 * dh, "12.2.5")
            ? sheet.Step("W_H", 690 * pi * dh * T.Power(g, 2, 1) * t, Dimension.Force, "12.2-6a")
            : sheet.Step("W_H", 1_725 * pi * T.Power(dh, 2, 1) * T.Power(g, 2, 1), Dimension.Force, "12.2-6b");
    }
}
