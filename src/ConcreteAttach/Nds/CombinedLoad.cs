using ConcreteAttach.Calculation;
using ConcreteAttach.Quantities;
using UnitsNet;

namespace ConcreteAttach.Nds;

/// <summary>Lateral load and withdrawal together (NDS-2018 12.4). From memory.</summary>
public static class CombinedLoad
{
    /// <summary>Resultant design value of one fastener.</summary>
    /// <param name="kind">Kind of fastener.</param>
    /// <param name="lateral">Z'; greater than 0.</param>
    /// <param name="axial">W' p of a lag screw, wood screw or nail; what the washer and the steel of a bolt hold; greater than 0.</param>
    /// <param name="toSurfaceDegrees">Angle α between load and surface of the wood, 0 (lateral alone) to 90 degrees (axial alone).</param>
    /// <returns>Z'_α, under <see cref="ConnectionStrength.Adjusted"/>.</returns>
    /// <remarks>
    /// Lag and wood screws: squares of cosine and sine (12.4-1). Nails: first powers (12.4-2). Bolts have no interaction in 12.4: each component is held to its own
    /// strength (12.3.10), the axial one by bearing of the washer.
    /// </remarks>
    /// <exception cref="InputException">A parameter is outside its range.</exception>
    public static ConnectionStrength Strength(DowelKind kind, Force lateral, Force axial, double toSurfaceDegrees)
    {
        if (!(toSurfaceDegrees >= 0 && toSurfaceDegrees <= 90))
        {
            throw new InputException(nameof(toSurfaceDegrees), QuantityText.Format(toSurfaceDegrees), "0 to 90");
        }

        var recorder = new SheetRecorder(MeasurementSystem.PoundInch);
        var sheet = new Sheet<TracedNumber>(recorder);
        double z = Require.Positive(nameof(lateral), lateral).In(MeasurementSystem.PoundInch);
        double w = Require.Positive(nameof(axial), axial).In(MeasurementSystem.PoundInch);
        TracedNumber resultant = Resultant(sheet, kind, z, w, toSurfaceDegrees);
        var strength = Force.FromPoundsForce(resultant.Value);
        return new(strength, strength, [], null, null, [], recorder, resultant);
    }

    private static T Resultant<T>(Sheet<T> sheet, DowelKind kind, double lateral, double axial, double angle)
        where T : struct, IFormulaNumber<T>
    {
        T z = sheet.Given("Z'", lateral, Dimension.Force);
        T w = sheet.Given("W'_p", axial, Dimension.Force);
        sheet.Given("alpha", angle, Dimension.None, "angle between load and surface, degrees");
        if (angle is 0 or 90)
        {
            return sheet.Step("Z'_alpha", angle == 0 ? z : w, Dimension.Force, angle == 0 ? "12.4, lateral load alone" : "12.4, axial load alone");
        }

        (double sine, double cosine) = Math.SinCos(angle * Math.PI / 180);
        T sin = sheet.Given("sin_alpha", sine, Dimension.None, "of that angle");
        T cos = sheet.Given("cos_alpha", cosine, Dimension.None, "of that angle");
        return kind switch
        {
            DowelKind.LagScrew or DowelKind.WoodScrew =>
                sheet.Step("Z'_alpha", w * z / ((w * T.Power(cos, 2, 1)) + (z * T.Power(sin, 2, 1))), Dimension.Force, "12.4-1"),
            DowelKind.Bolt => sheet.Step("Z'_alpha", T.Min(z / cos, w / sin), Dimension.Force, "12.3.10, each component to its own strength"),
            _ => sheet.Step("Z'_alpha", w * z / ((w * cos) + (z * sin)), Dimension.Force, "12.4-2"),
        };
    }
}
