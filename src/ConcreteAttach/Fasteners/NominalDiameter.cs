using ConcreteAttach.Quantities;
using UnitsNet;

namespace ConcreteAttach.Fasteners;

/// <summary>How the diameter of a fastener is read against tables that are printed in inches or in millimetres.</summary>
internal static class NominalDiameter
{
    /// <summary>
    /// Relative difference up to which a diameter is a size of a table. It lets 0.4375 in given as 11.1125 mm through, and no
    /// inch size comes nearer than this to a metric one.
    /// </summary>
    private const double SameSize = 1e-6;

    /// <summary>Whether a diameter is the nominal size; both in one unit.</summary>
    public static bool Is(double nominal, double diameter) => Math.Abs(diameter - nominal) <= SameSize * nominal;

    /// <summary>The unit system in which a length was given.</summary>
    public static MeasurementSystem SystemOf(Length length) => PrintedUnits.UnitOf(length.Unit)?.System ?? MeasurementSystem.NewtonMillimetre;

    /// <summary>Area of a circle, π d²/4: the gross section of a shank.</summary>
    public static double CircleArea(double diameter) => Math.PI / 4 * diameter * diameter;

    /// <summary>The full section of a shank, in the unit system in which its diameter was given.</summary>
    public static Area FullSection(Length diameter)
    {
        MeasurementSystem system = SystemOf(diameter);
        return PrintedUnits.Area(CircleArea(diameter.In(system)), system);
    }

    /// <summary>An area that came out of a table or a formula, as text with four figures.</summary>
    public static string Text(Area area)
    {
        MeasurementSystem system = PrintedUnits.UnitOf(area.Unit)?.System ?? MeasurementSystem.NewtonMillimetre;
        return QuantityText.Format(area.In(system), Dimension.Area, system);
    }
}
