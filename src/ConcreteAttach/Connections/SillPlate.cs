using ConcreteAttach.Attached;
using ConcreteAttach.Materials;
using ConcreteAttach.Nds;
using ConcreteAttach.Quantities;
using UnitsNet;

namespace ConcreteAttach.Connections;

/// <summary>A wood sill on concrete, as its bolts bear on it. Immutable.</summary>
public sealed record SillPlate
{
    /// <summary>Describes a sill.</summary>
    /// <param name="species">Species or group of the wood.</param>
    /// <param name="thickness">Actual thickness; greater than 0.</param>
    /// <param name="direction">Along which axis of the surface the sill and its grain run.</param>
    /// <exception cref="InputException">A parameter is outside its range.</exception>
    public SillPlate(WoodSpecies species, Length thickness, SillDirection direction)
    {
        ArgumentNullException.ThrowIfNull(species);
        Species = species;
        Thickness = Require.Positive(nameof(thickness), thickness);
        Direction = Enum.IsDefined(direction) ? direction : throw new InputException(nameof(direction), QuantityText.Format((int)direction), "X or Y");
    }

    /// <summary>Species or group of the wood.</summary>
    public WoodSpecies Species { get; }

    /// <summary>Actual thickness.</summary>
    public Length Thickness { get; }

    /// <summary>Along which axis of the surface the sill and its grain run.</summary>
    public SillDirection Direction { get; }

    /// <summary>Moisture and temperature of the wood. Safety format, duration and time effect are those of the load case.</summary>
    public ServiceConditions Conditions { get; init; } = new();

    /// <summary>Gap between sill and concrete that does not bear: 0 or more. Above 0 the general dowel equations of TR12 count.</summary>
    /// <exception cref="InputException">Below 0, or not finite.</exception>
    public Length Gap { get; init => field = Require.NotNegative("gap", value); }

    /// <summary>F_yb of the bolts; null: that of the standard's table. Greater than 0.</summary>
    /// <exception cref="InputException">Not greater than 0, or not finite.</exception>
    public Pressure? BendingYieldStrength { get; init => field = value is { } stress ? Require.Positive("bendingYieldStrength", stress) : null; }

    /// <summary>Whether F_e and Z are rounded as the printed tables are.</summary>
    public bool IsRoundedAsPrinted { get; init; }

    /// <summary>The washer under each nut, which holds the uplift; null: none is known, and uplift on the wood's side is not covered.</summary>
    public WasherBearing? Washer { get; init; }

    /// <summary>Where the bolts stand in the sill, for C_Δ and the minima of NDS 12.5.1; null: everything at full distances.</summary>
    public FastenerPlacement? Placement { get; init; }

    /// <summary>Wood, thickness, direction and gap, in words.</summary>
    public override string ToString() =>
        $"{Species}, G {QuantityText.Format(Species.SpecificGravity)}, {QuantityText.Format(Thickness)} thick, along {(Direction == SillDirection.X ? "x" : "y")}{(Gap.Value > 0 ? $", gap {QuantityText.Format(Gap)}" : "")}";
}
