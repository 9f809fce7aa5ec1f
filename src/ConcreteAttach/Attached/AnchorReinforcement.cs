using System.Collections.Immutable;
using ConcreteAttach.Geometry;
using ConcreteAttach.Quantities;
using UnitsNet;

namespace ConcreteAttach.Attached;

/// <summary>Reinforcement that carries the load of the fasteners into the member in place of the concrete's resistance to breakout (ACI 318-19 17.5.2.1).</summary>
public sealed record AnchorReinforcement
{
    /// <summary>For tension; null: none.</summary>
    public TensionReinforcement? Tension { get; init; }

    /// <summary>For shear, at most one for each edge; empty: none.</summary>
    /// <exception cref="InputException">Two for one edge.</exception>
    public ImmutableArray<ShearReinforcement> Shear
    {
        get;
        init
        {
            field = value.IsDefault ? [] : value;
            if (field.GroupBy(bars => bars.Side).FirstOrDefault(same => same.Count() > 1) is { } twice)
            {
                throw new InputException("shear", $"two reinforcements toward edge {twice.Key}", "one for each edge");
            }
        }
    } = [];
}

/// <summary>Bars parallel to the fasteners that carry their tension past the breakout surface.</summary>
public sealed record TensionReinforcement
{
    /// <summary>Describes the bars.</summary>
    /// <param name="bars">Size and steel.</param>
    /// <param name="positions">Where each bar (each leg of a hairpin or tie) stands, in the coordinates of the fasteners; at least one.</param>
    /// <param name="upperEnd">How the bars end above the breakout surface, toward the concrete's surface.</param>
    /// <param name="lowerEnd">How they end below it.</param>
    /// <param name="lowerEndDepth">From the surface of the concrete to the lower end: of a hook its outside, of a head its bearing face; greater than 0.</param>
    /// <exception cref="InputException">No position, or a depth that is not positive.</exception>
    public TensionReinforcement(AnchorBars bars, ImmutableArray<FastenerPosition> positions, BarEnd upperEnd, BarEnd lowerEnd, Length lowerEndDepth)
    {
        Bars = bars ?? throw new ArgumentNullException(nameof(bars));
        Positions = positions.IsDefaultOrEmpty ? throw new InputException(nameof(positions), "no bar", "the place of at least one bar") : positions;
        foreach (FastenerPosition position in positions)
        {
            Require.Finite(nameof(positions), position.X);
            Require.Finite(nameof(positions), position.Y);
        }

        UpperEnd = upperEnd;
        LowerEnd = lowerEnd;
        LowerEndDepth = Require.Positive(nameof(lowerEndDepth), lowerEndDepth);
    }

    /// <summary>Size, steel, and what decides the development length.</summary>
    public AnchorBars Bars { get; }

    /// <summary>Where the bars stand.</summary>
    public ImmutableArray<FastenerPosition> Positions { get; }

    /// <summary>How the bars end above the breakout surface.</summary>
    public BarEnd UpperEnd { get; }

    /// <summary>How the bars end below the breakout surface.</summary>
    public BarEnd LowerEnd { get; }

    /// <summary>From the surface of the concrete to the lower end.</summary>
    public Length LowerEndDepth { get; }

    /// <summary>From the surface of the concrete to the upper end: of a hook its outside, of a head its bearing face; null: the cover of the member.</summary>
    public Length? UpperEndDepth { get; init => field = value is { } depth ? Require.NotNegative("upperEndDepth", depth) : null; }

    /// <summary>Number, size and ends.</summary>
    public override string ToString() =>
        $"{QuantityText.Format(Positions.Length)} bars {Bars}, upper end {UpperEnd.ToString().ToLowerInvariant()}, lower end {LowerEnd.ToString().ToLowerInvariant()} at {QuantityText.Format(LowerEndDepth)}";
}

/// <summary>Bars across the breakout surface that carry shear toward one edge back into the member.</summary>
public sealed record ShearReinforcement
{
    private ShearReinforcement(ConcreteSide side, AnchorBars bars, Length depth, BarEnd innerEnd, Length innerLength)
    {
        Side = side;
        Bars = bars ?? throw new ArgumentNullException(nameof(bars));
        Depth = Require.Positive(nameof(depth), depth);
        InnerEnd = innerEnd;
        InnerLength = Require.Positive(nameof(innerLength), innerLength);
    }

    /// <summary>Hairpins or stirrups that enclose the fasteners and touch them, developed beyond the breakout surface.</summary>
    /// <param name="side">The edge that the shear points to.</param>
    /// <param name="bars">Size and steel.</param>
    /// <param name="legs">Number of legs in all, the same at each fastener; at least 1. A hairpin has two.</param>
    /// <param name="depth">From the surface of the concrete to the axis of the bars, greater than 0.</param>
    /// <param name="innerEnd">How the legs end.</param>
    /// <param name="innerLength">From the axis of the fastener to that end, away from the edge; greater than 0.</param>
    /// <exception cref="InputException">A value outside its range.</exception>
    public static ShearReinforcement Enclosing(ConcreteSide side, AnchorBars bars, int legs, Length depth, BarEnd innerEnd, Length innerLength) =>
        new(side, bars, depth, innerEnd, innerLength)
        {
            Legs = legs >= 1 ? legs : throw new InputException(nameof(legs), QuantityText.Format(legs), "at least 1"),
        };

    /// <summary>Bars beside the fasteners, developed on both sides of the breakout surface. They need reinforcement along the edge, see <see cref="Materials.ConcreteMember.EdgeReinforcement"/>.</summary>
    /// <param name="side">The edge that the shear points to.</param>
    /// <param name="bars">Size and steel.</param>
    /// <param name="places">Where each bar lies along the edge: its y at an edge along y, its x at an edge along x; at a side of an outline along it, counter-clockwise, from the foot of the origin; at least one.</param>
    /// <param name="depth">From the surface of the concrete to the axis of the bars, greater than 0.</param>
    /// <param name="outerEnd">How the bars end toward the edge.</param>
    /// <param name="innerEnd">How they end away from the edge.</param>
    /// <param name="innerLength">From the axis of the fastener farthest from the edge to that end; greater than 0.</param>
    /// <exception cref="InputException">A value outside its range.</exception>
    public static ShearReinforcement Crossing(ConcreteSide side, AnchorBars bars, ImmutableArray<Length> places, Length depth, BarEnd outerEnd, BarEnd innerEnd, Length innerLength)
    {
        if (places.IsDefaultOrEmpty)
        {
            throw new InputException(nameof(places), "no bar", "the place of at least one bar along the edge");
        }

        foreach (Length place in places)
        {
            Require.Finite(nameof(places), place);
        }

        return new(side, bars, depth, innerEnd, innerLength) { Places = places, OuterEnd = outerEnd };
    }

    /// <summary>The edge that the shear points to.</summary>
    public ConcreteSide Side { get; }

    /// <summary>Size, steel, and what decides the development length.</summary>
    public AnchorBars Bars { get; }

    /// <summary>Number of legs that enclose the fasteners; 0 where the bars lie beside them.</summary>
    public int Legs { get; private init; }

    /// <summary>Where the bars lie along the edge; empty where they enclose the fasteners.</summary>
    public ImmutableArray<Length> Places { get; private init; } = [];

    /// <summary>Whether the bars enclose the fasteners and touch them.</summary>
    public bool IsEnclosing => Legs > 0;

    /// <summary>From the surface of the concrete to the axis of the bars.</summary>
    public Length Depth { get; }

    /// <summary>How bars beside the fasteners end toward the edge.</summary>
    public BarEnd OuterEnd { get; private init; }

    /// <summary>How the bars end away from the edge.</summary>
    public BarEnd InnerEnd { get; }

    /// <summary>From the axis of the fastener to the inner end.</summary>
    public Length InnerLength { get; }

    /// <summary>From the edge to the outer end of bars beside the fasteners: of a hook its outside, of a head its bearing face; null: the cover of the member.</summary>
    public Length? OuterCover { get; init => field = value is { } cover ? Require.NotNegative("outerCover", cover) : null; }

    /// <summary>Distance e_s between the line of the shear and the axis of the bars; null: the depth of the bars, with the shear at the surface. 0: the bar force is taken equal to the shear.</summary>
    public Length? Eccentricity { get; init => field = value is { } e ? Require.NotNegative("eccentricity", e) : null; }

    /// <summary>Number, size and arrangement.</summary>
    public override string ToString() => IsEnclosing
        ? $"{QuantityText.Format(Legs)} legs {Bars} that enclose the fasteners, {QuantityText.Format(Depth)} deep, {InnerEnd.ToString().ToLowerInvariant()} end {QuantityText.Format(InnerLength)} behind them"
        : $"{QuantityText.Format(Places.Length)} bars {Bars} beside the fasteners, {QuantityText.Format(Depth)} deep, {OuterEnd.ToString().ToLowerInvariant()} end toward the edge, {InnerEnd.ToString().ToLowerInvariant()} end {QuantityText.Format(InnerLength)} behind them";
}
