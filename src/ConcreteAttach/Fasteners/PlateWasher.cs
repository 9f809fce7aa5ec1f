using ConcreteAttach.Quantities;
using UnitsNet;

namespace ConcreteAttach.Fasteners;

/// <summary>A square or round plate washer between the nut and the concrete at the embedded end of a rod.</summary>
/// <remarks>
/// <para>
/// Reading taken. ACI 318-19 17.6.2.1.3 (from memory) speaks of breakout only: the projected area may start from the perimeter of the
/// washer, but from no farther out than one washer thickness from the outer edge of the head. For pullout the standard asks for the net
/// bearing area of the head. <see cref="BearingArea"/> therefore gives the whole washer less the gross shank area, as the published case
/// ACI 349.2R-07 Example A4 does (2.25² − π/4 · 1.125² = 4.07 in², read in a verification script that names the example).
/// </para>
/// <para>
/// A thin washer bends and does not bear at its full width. <see cref="BearingAreaWithinThickness"/> carries the limit of 17.6.2.1.3 over
/// to pullout, for those who want the bearing to come from a rigid part only.
/// </para>
/// </remarks>
public sealed record PlateWasher
{
    private PlateWasher(Length? side, Length? diameter, Length thickness)
    {
        Side = side;
        Diameter = diameter;
        Thickness = thickness;
    }

    /// <summary>Side of a square washer; null for a round one.</summary>
    public Length? Side { get; }

    /// <summary>Outer diameter of a round washer; null for a square one.</summary>
    public Length? Diameter { get; }

    /// <summary>Thickness.</summary>
    public Length Thickness { get; }

    private Length Width => Side ?? Diameter!.Value;

    /// <summary>A square plate washer.</summary>
    /// <param name="side">Side; greater than 0, finite.</param>
    /// <param name="thickness">Thickness; greater than 0, finite.</param>
    /// <exception cref="InputException">A length is outside its range.</exception>
    public static PlateWasher Square(Length side, Length thickness) =>
        new(Require.Positive(nameof(side), side), null, Require.Positive(nameof(thickness), thickness));

    /// <summary>A round plate washer.</summary>
    /// <param name="diameter">Outer diameter; greater than 0, finite.</param>
    /// <param name="thickness">Thickness; greater than 0, finite.</param>
    /// <exception cref="InputException">A length is outside its range.</exception>
    public static PlateWasher Round(Length diameter, Length thickness) =>
        new(null, Require.Positive(nameof(diameter), diameter), Require.Positive(nameof(thickness), thickness));

    /// <summary>Net bearing area A_brg: the whole washer less the gross shank area. In the unit system of the washer, not rounded.</summary>
    /// <param name="shankDiameter">Diameter d_a of the rod; greater than 0, less than the width of the washer.</param>
    /// <exception cref="InputException">The washer is not wider than the rod.</exception>
    public Area BearingArea(Length shankDiameter)
    {
        MeasurementSystem system = NominalDiameter.SystemOf(Width);
        return PrintedUnits.Area(WholeArea(system) - Shank(shankDiameter, system), system);
    }

    /// <summary>
    /// Net bearing area A_brg of the part of the washer that is no farther than its thickness from the edge of the nut, less the gross shank
    /// area. The nut counts as the circle in its flats, whichever way it is turned, but never with less than its own area.
    /// Null where <see cref="HeadTable"/> has no such nut.
    /// </summary>
    /// <param name="nut">The nut or head on the washer.</param>
    /// <param name="shankDiameter">Diameter d_a of the rod; greater than 0, less than the width of the washer.</param>
    /// <exception cref="InputException">The washer is not wider than the rod.</exception>
    public Area? BearingAreaWithinThickness(HeadShape nut, Length shankDiameter)
    {
        MeasurementSystem system = NominalDiameter.SystemOf(Width);
        double shank = Shank(shankDiameter, system);
        if (HeadTable.Find(nut, shankDiameter) is not { } size)
        {
            return null;
        }

        double whole = WholeArea(system);
        double nutArea = PrintedUnits.Area(size.Area, size.System).In(system);
        double reach = PrintedUnits.Length(size.Width, size.System).In(system) / 2 + Thickness.In(system);
        return PrintedUnits.Area(Math.Max(Within(reach, system), Math.Min(nutArea, whole)) - shank, system);
    }

    /// <summary>Shape and size.</summary>
    public override string ToString() => $"{Name}, {QuantityText.Format(Thickness)} thick";

    /// <summary>Shape and width, as in a sentence.</summary>
    internal string Name => Side is { } side ? $"{QuantityText.Format(side)} square plate washer" : $"{QuantityText.Format(Width)} round plate washer";

    private double WholeArea(MeasurementSystem system)
    {
        double width = Width.In(system);
        return Side is null ? NominalDiameter.CircleArea(width) : width * width;
    }

    /// <summary>Area of the washer inside the circle of this radius about its centre.</summary>
    private double Within(double radius, MeasurementSystem system)
    {
        double half = Width.In(system) / 2;
        double circle = NominalDiameter.CircleArea(2 * radius);
        if (radius <= half)
        {
            return circle;
        }

        if (Side is null || radius >= half * Math.Sqrt(2))
        {
            return WholeArea(system);
        }

        // The circle reaches over the four sides and not yet into the corners: take the four segments off.
        double segment = (radius * radius * Math.Acos(half / radius)) - (half * Math.Sqrt((radius * radius) - (half * half)));
        return circle - (4 * segment);
    }

    private double Shank(Length diameter, MeasurementSystem system)
    {
        Require.Positive(nameof(diameter), diameter);
        double shank = diameter.In(system);
        return shank < Width.In(system)
            ? NominalDiameter.CircleArea(shank)
            : throw new InputException("washer", QuantityText.Format(Width), $"wider than the rod, {QuantityText.Format(diameter)}");
    }
}
