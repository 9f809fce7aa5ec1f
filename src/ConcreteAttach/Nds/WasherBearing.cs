using ConcreteAttach.Actions;
using ConcreteAttach.Calculation;
using ConcreteAttach.Materials;
using ConcreteAttach.Quantities;
using UnitsNet;

namespace ConcreteAttach.Nds;

/// <summary>A washer that bears on wood perpendicular to grain (NDS-2018 3.10.2, 3.10.4). Bending of the washer is another check. Immutable.</summary>
public sealed class WasherBearing
{
    private readonly double _netArea;
    private readonly double _length;

    private WasherBearing(Length size, double netArea, bool isAwayFromEnd)
    {
        IsAwayFromEnd = isAwayFromEnd;
        _length = size.In(MeasurementSystem.PoundInch);
        _netArea = netArea;
        Size = size;
    }

    /// <summary>Side of the square, or diameter.</summary>
    public Length Size { get; }

    /// <summary>Area that bears.</summary>
    public Area NetArea => Area.FromSquareInches(_netArea);

    /// <summary>Whether the washer is at least 3 in. from the end of the member, so that C_b applies (3.10.4).</summary>
    public bool IsAwayFromEnd { get; }

    /// <summary>A round washer with a round hole.</summary>
    /// <param name="diameter">Outer diameter; greater than 0.</param>
    /// <param name="hole">Diameter of the hole; greater than 0, less than <paramref name="diameter"/>.</param>
    /// <param name="isAwayFromEnd">Whether the washer is at least 3 in. from the end of the member.</param>
    /// <exception cref="InputException">A parameter is outside its range.</exception>
    public static WasherBearing Round(Length diameter, Length hole, bool isAwayFromEnd = true)
    {
        double d = Require.Positive(nameof(diameter), diameter).In(MeasurementSystem.PoundInch);
        double h = Hole(nameof(hole), hole, diameter);
        return new(diameter, Math.PI / 4 * ((d * d) - (h * h)), isAwayFromEnd);
    }

    /// <summary>A square washer with a round or a slotted hole.</summary>
    /// <param name="side">Side of the square; greater than 0.</param>
    /// <param name="hole">Diameter of the hole, or width of the slot; greater than 0, less than <paramref name="side"/>.</param>
    /// <param name="slotLength">Length of the slot over all, its ends round; at least <paramref name="hole"/>, less than <paramref name="side"/>. Null: round hole.</param>
    /// <param name="isAwayFromEnd">Whether the washer is at least 3 in. from the end of the member.</param>
    /// <exception cref="InputException">A parameter is outside its range.</exception>
    public static WasherBearing Square(Length side, Length hole, Length? slotLength = null, bool isAwayFromEnd = true)
    {
        double a = Require.Positive(nameof(side), side).In(MeasurementSystem.PoundInch);
        double h = Hole(nameof(hole), hole, side);
        double slot = h;
        if (slotLength is { } length)
        {
            slot = Hole(nameof(slotLength), length, side);
            if (Limit.IsBelow(slot, h))
            {
                throw new InputException(nameof(slotLength), QuantityText.Format(length), $"at least the width, {QuantityText.Format(hole)}");
            }
        }

        return new(side, (a * a) - (Math.PI / 4 * h * h) - ((slot - h) * h), isAwayFromEnd);
    }

    /// <summary>Bearing design value of the wood under the washer.</summary>
    /// <param name="species">Wood, with F_c⊥.</param>
    /// <param name="conditions">Under what conditions the connection works. Load duration and time effect do not apply to F_c⊥.</param>
    /// <returns>F_c⊥ A (reference) and F'_c⊥ A (adjusted); not covered where F_c⊥ is not known.</returns>
    public ConnectionStrength Strength(WoodSpecies species, ServiceConditions conditions)
    {
        ArgumentNullException.ThrowIfNull(species);
        ArgumentNullException.ThrowIfNull(conditions);
        var recorder = new SheetRecorder(MeasurementSystem.PoundInch);
        if (species.CompressionPerpendicular is not { } stress)
        {
            const string Reason = "F_c perpendicular of the species is not known: give compressionPerpendicular.";
            recorder.Add(new NoteLine(Reason));
            return new(null, null, [], null, Reason, [], recorder);
        }

        (TracedNumber reference, TracedNumber adjusted) = Bearing(new Sheet<TracedNumber>(recorder), stress.In(MeasurementSystem.PoundInch), conditions);
        return new(Force.FromPoundsForce(reference.Value), Force.FromPoundsForce(adjusted.Value), [], null, null, [], recorder, adjusted);
    }

    private (T Reference, T Adjusted) Bearing<T>(Sheet<T> sheet, double stress, ServiceConditions conditions)
        where T : struct, IFormulaNumber<T>
    {
        T fc = sheet.Given("F_c_perp", stress, Dimension.Stress, "NDS Supplement");
        T area = sheet.Given("A", _netArea, Dimension.Area, "net area of the washer");
        T reference = sheet.Step("R", fc * area, Dimension.Force, "3.10.2");
        T product = reference * AreaFactor(sheet);
        product *= sheet.Factor("C_M", conditions.IsWetInService ? 0.67 : 1, "NDS Supplement Table 4A");
        product *= sheet.Factor("C_t", Adjustment.TemperatureFactor(conditions), "Table 2.3.3");
        if (conditions.Format == SafetyFormat.StrengthDesign)
        {
            product = product * sheet.Factor("K_F", 1.67, "Table N1, F_c perpendicular") * sheet.Factor("phi", 0.90, "Table N2, compression");
        }

        return (reference, sheet.Step("R'", product, Dimension.Force, "Table 4.3.1"));
    }

    /// <summary>C_b (3.10-2): for bearing shorter than 6 in. and at least 3 in. from the end. A round washer counts with its diameter.</summary>
    private T AreaFactor<T>(Sheet<T> sheet)
        where T : struct, IFormulaNumber<T>
    {
        if (!IsAwayFromEnd)
        {
            return sheet.Factor("C_b", 1, "3.10.4, less than 3 in. from the end");
        }

        T lb = sheet.Given("l_b", _length, Dimension.Length);
        return sheet.When(lb < T.Literal(6), "3.10.4") ? sheet.Factor("C_b", (lb + T.Literal(0.375)) / lb, "3.10-2") : sheet.Factor("C_b", 1, "3.10.4");
    }

    private static double Hole(string parameter, Length hole, Length size)
    {
        double h = Require.Positive(parameter, hole).In(MeasurementSystem.PoundInch);
        return Limit.IsBelow(h, size.In(MeasurementSystem.PoundInch))
            ? h
            : throw new InputException(parameter, QuantityText.Format(hole), $"less than the washer, {QuantityText.Format(size)}");
    }
}
