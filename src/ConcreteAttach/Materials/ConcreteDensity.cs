using ConcreteAttach.Quantities;
using UnitsNet;

namespace ConcreteAttach.Materials;

/// <summary>The class of a concrete by its density; the standards' lightweight factor follows from it.</summary>
public sealed record ConcreteDensity
{
    private ConcreteDensity(string name, Density? value)
    {
        Name = name;
        Value = value;
    }

    /// <summary>Normalweight concrete.</summary>
    public static readonly ConcreteDensity Normalweight = new("normalweight", null);

    /// <summary>Lightweight concrete with sand as fine aggregate.</summary>
    public static readonly ConcreteDensity SandLightweight = new("sand-lightweight", null);

    /// <summary>Concrete with lightweight fine and coarse aggregate.</summary>
    public static readonly ConcreteDensity AllLightweight = new("all-lightweight", null);

    /// <summary><c>normalweight</c>, <c>sand-lightweight</c>, <c>all-lightweight</c>, or the density as text.</summary>
    public string Name { get; }

    /// <summary>The equilibrium density, where the concrete is given by it.</summary>
    public Density? Value { get; }

    /// <summary>Concrete of a known equilibrium density.</summary>
    /// <param name="density">Equilibrium density, greater than 0.</param>
    /// <exception cref="InputException">Not above 0, or not finite.</exception>
    public static ConcreteDensity Of(Density density) =>
        new(QuantityText.Format(Require.Positive("density", density)), density);

    /// <summary>The name.</summary>
    public override string ToString() => Name;
}
