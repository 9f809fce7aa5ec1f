using ConcreteAttach.Materials;
using ConcreteAttach.Quantities;
using UnitsNet;

namespace ConcreteAttach.Fasteners;

/// <summary>A cast-in threaded rod with a nut, or a plate washer and a nut, at the embedded end.</summary>
public sealed record ThreadedRodWithNut : HeadedFastener
{
    /// <summary>Creates a threaded rod with a nut.</summary>
    /// <param name="diameter">Nominal diameter d_a; greater than 0, finite.</param>
    /// <param name="steel">The steel of the rod.</param>
    /// <param name="effectiveEmbedment">Effective embedment h_ef, to the washer where there is one; greater than 0, finite.</param>
    /// <exception cref="InputException">A parameter is outside its range.</exception>
    public ThreadedRodWithNut(Length diameter, AnchorSteel steel, Length effectiveEmbedment)
        : base(diameter, steel, effectiveEmbedment)
    {
    }

    /// <inheritdoc/>
    public override string Kind => "threaded rod with nut";

    /// <summary>
    /// The nut: <see cref="HeadShape.HexNut"/> (default, the smaller) or <see cref="HeadShape.HeavyHexNut"/>. There is no hex nut
    /// above 1-1/2 in. in ASME B18.2.2; name the heavy hex nut there.
    /// </summary>
    /// <exception cref="InputException">Another shape.</exception>
    public HeadShape Nut
    {
        get;
        init => field = HeadTable.RequireOneOf("nut", value, HeadShape.HexNut, HeadShape.HeavyHexNut);
    } = HeadShape.HexNut;

    /// <summary>The plate washer between nut and concrete; null: none.</summary>
    /// <exception cref="InputException">The washer is not wider than the rod.</exception>
    public PlateWasher? Washer
    {
        get;
        init
        {
            // Asking for the area checks that the washer is wider than the rod.
            _ = value?.BearingArea(Diameter);
            field = value;
        }
    }

    /// <summary>
    /// Whether only the part of the washer within its thickness from the nut bears (see <see cref="PlateWasher"/>). Default false: the whole washer.
    /// </summary>
    public bool IsWasherLimitedByThickness { get; init; }

    /// <inheritdoc/>
    private protected override Length? HeadHeightFromTable()
    {
        if (HeadTable.Height(Nut, Diameter) is not { } nut || Washer is not { } washer)
        {
            return HeadTable.Height(Nut, Diameter);
        }

        MeasurementSystem system = NominalDiameter.SystemOf(nut);
        return PrintedUnits.Length(nut.In(system) + washer.Thickness.In(system), system);
    }

    private protected override Area? BearingAreaFromTable(out string? assumption)
    {
        if (Washer is not { } washer)
        {
            return BearingAreaOf(Nut, out assumption);
        }

        Area? area = IsWasherLimitedByThickness ? washer.BearingAreaWithinThickness(Nut, Diameter) : washer.BearingArea(Diameter);
        string part = IsWasherLimitedByThickness ? $" within its thickness from the {HeadTable.NameOf(Nut)}" : "";
        assumption = area is { } found ? $"bearing area of the {washer.Name}{part}, less the gross shank: {NominalDiameter.Text(found)}" : null;
        return area;
    }
}
