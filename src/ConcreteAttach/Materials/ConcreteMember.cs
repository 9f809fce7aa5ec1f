using ConcreteAttach.Geometry;
using ConcreteAttach.Quantities;
using UnitsNet;

namespace ConcreteAttach.Materials;

/// <summary>Reinforcement along an edge that a shear breakout would have to tear out (ACI 318-19 17.7.2.5).</summary>
public enum EdgeReinforcement
{
    /// <summary>None, or less than a No. 4 bar (13 mm).</summary>
    None,

    /// <summary>A No. 4 bar (13 mm) or larger between the fastener and the edge.</summary>
    Bar,

    /// <summary>Such a bar enclosed in stirrups at most 4 in. (100 mm) apart.</summary>
    BarAndStirrups,
}

/// <summary>The concrete that holds the fasteners.</summary>
public sealed record ConcreteMember
{
    /// <summary>Cover that is taken where none is given: 1.5 in.</summary>
    /// <remarks>ACI 318-19 Table 20.5.1.3.1: beams, columns and pedestals not exposed to weather. Concrete cast against earth needs 3 in.: give it.</remarks>
    public static readonly Length DefaultCover = Length.FromInches(1.5);

    /// <summary>Describes a member. It is taken as cracked and without supplementary reinforcement until said otherwise.</summary>
    /// <param name="strength">Specified compressive strength f'c, greater than 0.</param>
    /// <param name="thickness">Thickness h_a of the member along the fastener, greater than 0.</param>
    /// <exception cref="InputException">A value that is not positive or not finite.</exception>
    public ConcreteMember(Pressure strength, Length thickness)
    {
        Strength = Require.Positive(nameof(strength), strength);
        Thickness = Require.Positive(nameof(thickness), thickness);
    }

    /// <summary>Specified compressive strength, f'c.</summary>
    public Pressure Strength { get; }

    /// <summary>Thickness of the member along the fastener, h_a.</summary>
    public Length Thickness { get; }

    /// <summary>Density class; normalweight by default.</summary>
    public ConcreteDensity Density { get; init; } = ConcreteDensity.Normalweight;

    /// <summary>Whether the concrete may crack at service load where the fasteners stand; true by default.</summary>
    public bool IsCracked { get; init; } = true;

    /// <summary>Whether supplementary reinforcement ties a tension breakout to the member (ACI 318-19 2.3 and 17.5.3); false by default.</summary>
    public bool HasSupplementaryReinforcementForTension { get; init; }

    /// <summary>Whether supplementary reinforcement ties a shear breakout to the member; false by default.</summary>
    public bool HasSupplementaryReinforcementForShear { get; init; }

    /// <summary>Reinforcement along the edges; none by default.</summary>
    public EdgeReinforcement EdgeReinforcement { get; init; }

    /// <summary>Whether reinforcement limits splitting cracks (ACI 318-19 17.6.2.6.2); counts for post-installed fasteners; false by default.</summary>
    public bool HasSplittingReinforcement { get; init; }

    /// <summary>Specified concrete cover; null: <see cref="DefaultCover"/>, and the result says so.</summary>
    public Length? Cover { get; init => field = value is { } cover ? Require.NotNegative("cover", cover) : null; }

    /// <summary>Nominal maximum aggregate size, where it is known; counts for post-installed fasteners.</summary>
    public Length? AggregateSize { get; init => field = value is { } size ? Require.Positive("aggregateSize", size) : null; }

    /// <summary>The edges; none by default.</summary>
    public EdgeDistances Edges { get; init; } = EdgeDistances.None;

    /// <summary>
    /// The outline of the surface, any polygon with openings, where edges toward the axes do not describe it; null by default. Give either it or <see cref="Edges"/>: to prepare an
    /// attachment with both is an error.
    /// </summary>
    /// <remarks>An outline that is a rectangle parallel to the axes, without openings, is the same as its four edges.</remarks>
    public SurfaceOutline? Outline { get; init; }

    /// <summary>The surface as a rectangle parallel to the axes, infinite where it has no edge; else the rectangle about it, and the outline.</summary>
    /// <exception cref="InputException">Both edges and an outline.</exception>
    internal Rectangle ToRectangle(MeasurementSystem system, out Outline? outline)
    {
        outline = null;
        if (Outline is null)
        {
            return Edges.ToRectangle(system);
        }

        if (Edges != EdgeDistances.None)
        {
            throw new InputException("outline", $"an outline beside edges ({Edges})", "either edges or an outline");
        }

        Outline surface = Outline.In(system);
        outline = surface.IsRectangle ? null : surface;
        return surface.Bounds;
    }

    /// <summary>Strength, density and thickness.</summary>
    public override string ToString() => $"f'c {QuantityText.Format(Strength)}, {Density}, thickness {QuantityText.Format(Thickness)}";
}
