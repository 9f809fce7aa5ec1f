using System.Collections.Immutable;
using ConcreteAttach.Fasteners;
using ConcreteAttach.Geometry;
using ConcreteAttach.Materials;

namespace ConcreteAttach.Attached;

/// <summary>What is verified: fasteners of one kind, steel and embedment, their places, and the concrete that holds them.</summary>
/// <param name="Concrete">The member.</param>
/// <param name="Fastener">The fastener.</param>
/// <param name="Layout">Where the fasteners stand.</param>
public sealed record Attachment(ConcreteMember Concrete, Fastener Fastener, FastenerLayout Layout)
{
    /// <summary>The member.</summary>
    public ConcreteMember Concrete { get; } = Concrete ?? throw new ArgumentNullException(nameof(Concrete));

    /// <summary>The fastener.</summary>
    public Fastener Fastener { get; } = Fastener ?? throw new ArgumentNullException(nameof(Fastener));

    /// <summary>Where the fasteners stand.</summary>
    public FastenerLayout Layout { get; } = Layout ?? throw new ArgumentNullException(nameof(Layout));

    /// <summary>The plate that joins the fasteners; null: forces reach them by elastic theory without contact.</summary>
    public BasePlate? Plate { get; init; }

    /// <summary>Shear lugs below the plate; empty: the fasteners take the shear.</summary>
    public ImmutableArray<ShearLug> ShearLugs { get; init => field = value.IsDefault ? [] : value; } = [];

    /// <summary>
    /// Whether other fasteners take the load where one fails, as ACI 318-25 has it (Table 21.2.1); false, the lower factors, by default. Earlier editions do not ask.
    /// </summary>
    public bool HasRedundantFasteners { get; init; }

    /// <summary>Reinforcement that carries the load of the fasteners in place of the concrete's resistance to breakout; null without.</summary>
    public AnchorReinforcement? Reinforcement { get; init; }

    /// <summary>What the design for earthquake goes by; null: no load case has an earthquake part.</summary>
    public EarthquakeDesign? Earthquake { get; init; }
}
