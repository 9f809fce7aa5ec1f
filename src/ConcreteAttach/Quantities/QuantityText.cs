using System.Globalization;
using UnitsNet;

namespace ConcreteAttach.Quantities;

/// <summary>A quantity as text: its value as given, and its own unit. Culture never matters.</summary>
internal static class QuantityText
{
    public static string Format(Length value) => Format(value.Value, value.Millimeters, PrintedUnits.UnitOf(value.Unit), Unit.Millimetre);

    public static string Format(Area value) => Format(value.Value, value.SquareMillimeters, PrintedUnits.UnitOf(value.Unit), Unit.SquareMillimetre);

    public static string Format(Force value) => Format(value.Value, value.Newtons, PrintedUnits.UnitOf(value.Unit), Unit.Newton);

    public static string Format(Pressure value) => Format(value.Value, value.Megapascals, PrintedUnits.UnitOf(value.Unit), Unit.Megapascal);

    public static string Format(Torque value) => Format(value.Value, value.NewtonMillimeters, PrintedUnits.UnitOf(value.Unit), Unit.NewtonMillimetre);

    public static string Format(Density value) => Format(value.Value, value.KilogramsPerCubicMeter, PrintedUnits.UnitOf(value.Unit), Unit.KilogramPerCubicMetre);

    /// <summary>A plain number as given: the shortest text that reads back as the same number.</summary>
    public static string Format(double value) => value.ToString("R", CultureInfo.InvariantCulture);

    /// <summary>A number in a printed unit of a system.</summary>
    public static string Format(double value, Dimension dimension, MeasurementSystem system) =>
        Unit.Printed(dimension, system) is { } unit ? $"{NumberText.AsGiven(value)} {unit.Text}" : NumberText.AsGiven(value);

    private static string Format(double own, double metric, Unit? unit, Unit fallback) =>
        unit is null ? $"{Format(metric)} {fallback.Text}" : $"{Format(own)} {unit.Text}";
}
