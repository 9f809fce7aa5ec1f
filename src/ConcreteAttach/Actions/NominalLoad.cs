using ConcreteAttach.Quantities;
using UnitsNet;

namespace ConcreteAttach.Actions;

/// <summary>
/// What one kind of load puts on the fasteners before load factors: axes, signs and place as in <see cref="LoadCase"/>. Immutable.
/// </summary>
/// <param name="Kind">What it comes from.</param>
public sealed record NominalLoad(LoadKind Kind)
{
    /// <summary>Tells several winds or earthquakes apart, such as <c>along x</c>; null: none.</summary>
    /// <exception cref="InputException">Empty.</exception>
    public string? Name
    {
        get;
        init => field = value is null || !string.IsNullOrWhiteSpace(value) ? value : throw new InputException("name", "an empty name", "a name, such as along x, or none");
    }

    /// <summary>Axial force, tension positive.</summary>
    /// <exception cref="InputException">Not finite.</exception>
    public Force N { get; init => field = Require.Finite("N", value); }

    /// <summary>Shear force along x.</summary>
    /// <exception cref="InputException">Not finite.</exception>
    public Force Vx { get; init => field = Require.Finite("Vx", value); }

    /// <summary>Shear force along y.</summary>
    /// <exception cref="InputException">Not finite.</exception>
    public Force Vy { get; init => field = Require.Finite("Vy", value); }

    /// <summary>Moment about the x axis.</summary>
    /// <exception cref="InputException">Not finite.</exception>
    public Torque Mx { get; init => field = Require.Finite("Mx", value); }

    /// <summary>Moment about the y axis.</summary>
    /// <exception cref="InputException">Not finite.</exception>
    public Torque My { get; init => field = Require.Finite("My", value); }

    /// <summary>Torsion: moment about the z axis.</summary>
    /// <exception cref="InputException">Not finite.</exception>
    public Torque Mz { get; init => field = Require.Finite("Mz", value); }

    /// <summary>Whether it also acts the other way round: each combination is then formed with both signs. An earthquake does unless said otherwise, other loads do not.</summary>
    public bool Reverses { get; init; } = Kind == LoadKind.Earthquake;

    /// <summary>
    /// Whether the redundancy factor counts on it. An earthquake's effect on the structure takes it; forces on walls out of their plane with their anchorage, and on nonstructural components, do not (ASCE 7 12.3.4.1). True by
    /// default; of no meaning for other kinds.
    /// </summary>
    public bool TakesRedundancy { get; init; } = true;

    /// <summary>Whether its tension stays on the fasteners (adhesive fasteners, ACI 318-19 17.5.2.2). Dead load does unless said otherwise.</summary>
    public bool IsSustained { get; init; } = Kind == LoadKind.Dead;

    /// <summary>Kind, name and components.</summary>
    public override string ToString() =>
        $"{Kind}{(Name is null ? "" : $" ({Name})")}: N {QuantityText.Format(N)}, V {QuantityText.Format(Vx)}, {QuantityText.Format(Vy)}, M {QuantityText.Format(Mx)}, {QuantityText.Format(My)}, {QuantityText.Format(Mz)}";
}
