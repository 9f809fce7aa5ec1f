using System.Collections.Immutable;
using ConcreteAttach.Calculation;
using ConcreteAttach.Quantities;
using UnitsNet;

namespace ConcreteAttach.Actions;

/// <summary>A force that a standard asks an attachment to be designed for, with the calculation that it comes from. Immutable.</summary>
/// <param name="Title">What it is, such as <c>Anchorage of a structural wall, ASCE 7-16 12.11.2</c>.</param>
/// <param name="Force">The force, 0 or more, at strength level: a horizontal effect of the earthquake.</param>
/// <param name="Sheet">The calculation, line by line.</param>
/// <param name="Notices">What the reader should know before using it.</param>
public sealed record Demand(string Title, Force Force, CalculationSheet Sheet, ImmutableArray<string> Notices)
{
    /// <summary>The force for the steel elements of the anchorage, fasteners and reinforcement excepted; null where the clause has none of its own.</summary>
    public Force? OfSteelElements { get; init; }

    /// <summary>The vertical force that acts at the same time, up or down; null where the clause has none.</summary>
    public Force? Vertical { get; init; }

    /// <summary>The force with the overstrength factor of the component, for fasteners in concrete and masonry; null where no factor was given.</summary>
    public Force? WithOverstrength { get; init; }

    /// <summary>What it is, and the force.</summary>
    public override string ToString() => $"{Title}: {QuantityText.Format(Force)}";
}
