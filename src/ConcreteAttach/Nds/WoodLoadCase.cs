using ConcreteAttach.Quantities;
using UnitsNet;

namespace ConcreteAttach.Nds;

/// <summary>What a load case puts on a fastening in wood. Immutable.</summary>
public sealed record WoodLoadCase
{
    /// <summary>Describes a load case; an absent force is 0.</summary>
    /// <param name="name">Name, such as <c>D + 0.6W</c>; not empty.</param>
    /// <exception cref="InputException">The name is empty.</exception>
    public WoodLoadCase(string name) =>
        Name = string.IsNullOrWhiteSpace(name) ? throw new InputException(nameof(name), "an empty name", "a name, such as D + 0.6W") : name;

    /// <summary>Name of the load case.</summary>
    public string Name { get; }

    /// <summary>Force across the fasteners, on all of them together: 0 or more. Its direction to the grain is the members'.</summary>
    /// <exception cref="InputException">Below 0, or not finite.</exception>
    public Force Lateral { get; init => field = NotNegative("lateral", value); }

    /// <summary>Pull along the fasteners, on all of them together: 0 or more.</summary>
    /// <exception cref="InputException">Below 0, or not finite.</exception>
    public Force Axial { get; init => field = NotNegative("axial", value); }

    /// <summary>Shortest duration among its loads; counts in allowable stress design.</summary>
    public LoadDuration Duration { get; init; } = LoadDuration.TenYears;

    /// <summary>Time effect of its combination; counts in strength design.</summary>
    public TimeEffect TimeEffect { get; init; } = TimeEffect.OccupancyOrRoof;

    /// <summary>Name and forces, as <c>D + 0.6W: lateral 900 lbf, axial 0 lbf</c>.</summary>
    public override string ToString() => $"{Name}: lateral {QuantityText.Format(Lateral)}, axial {QuantityText.Format(Axial)}";

    private static Force NotNegative(string parameter, Force value) =>
        Require.Finite(parameter, value).Value >= 0 ? value : throw new InputException(parameter, QuantityText.Format(value), "0 or more");
}
