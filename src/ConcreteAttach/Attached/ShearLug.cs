using System.Collections.Immutable;
using ConcreteAttach.Calculation;
using ConcreteAttach.Geometry;
using ConcreteAttach.Quantities;
using UnitsNet;

namespace ConcreteAttach.Attached;

/// <summary>The axis along which a shear lug takes shear.</summary>
public enum ShearAxis
{
    /// <summary>Shear along x: the width of the lug lies along y.</summary>
    X,

    /// <summary>Shear along y: the width of the lug lies along x.</summary>
    Y,
}

/// <summary>Plates behind a shear lug, across it and as deep as it, that stiffen it.</summary>
/// <param name="Thickness">Thickness, greater than 0.</param>
/// <param name="Length">Length in the direction of the shear, greater than 0.</param>
/// <param name="Places">Where they stand along the width of the lug, from its middle; at least one, each within the lug.</param>
public sealed record ShearLugStiffeners(Length Thickness, Length Length, ImmutableArray<Length> Places)
{
    /// <summary>Thickness.</summary>
    public Length Thickness { get; } = Require.Positive("thickness", Thickness);

    /// <summary>Length in the direction of the shear.</summary>
    public Length Length { get; } = Require.Positive("length", Length);

    /// <summary>Where they stand along the width of the lug, from its middle.</summary>
    public ImmutableArray<Length> Places { get; } = Places.IsDefaultOrEmpty
        ? throw new InputException("places", "no place", "the place of at least one stiffener, from the middle of the lug")
        : [.. Places.Select(place => Require.Finite("places", place))];

    /// <summary>Number, thickness and length.</summary>
    public override string ToString() =>
        $"{QuantityText.Format(Places.Length)} of {QuantityText.Format(Thickness)} × {QuantityText.Format(Length)} at {string.Join(", ", Places.Select(QuantityText.Format))} from its middle";
}

/// <summary>
/// A plate that is welded upright below a base plate and bears on the concrete (ACI 318-19 17.11). It takes the shear, the anchors take the tension and the couple of both.
/// </summary>
public sealed record ShearLug
{
    /// <summary>Describes a shear lug.</summary>
    /// <param name="takes">The axis along which it takes shear, in both directions.</param>
    /// <param name="thickness">Thickness t_sl, along that axis, greater than 0.</param>
    /// <param name="width">Width, across that axis, greater than 0.</param>
    /// <param name="depth">How far it reaches below the underside of the base plate, greater than 0; what of it lies in grout above the concrete does not count.</param>
    /// <exception cref="InputException">A length that is not positive, or an axis that there is not.</exception>
    public ShearLug(ShearAxis takes, Length thickness, Length width, Length depth)
    {
        Takes = Enum.IsDefined(takes) ? takes : throw new InputException(nameof(takes), QuantityText.Format((int)takes), "x or y");
        Thickness = Require.Positive(nameof(thickness), thickness);
        Width = Require.Positive(nameof(width), width);
        Depth = Require.Positive(nameof(depth), depth);
    }

    /// <summary>The axis along which it takes shear.</summary>
    public ShearAxis Takes { get; }

    /// <summary>t_sl.</summary>
    public Length Thickness { get; }

    /// <summary>Width across the shear.</summary>
    public Length Width { get; }

    /// <summary>How far it reaches below the underside of the base plate.</summary>
    public Length Depth { get; }

    /// <summary>Where its middle stands; the origin by default.</summary>
    public FastenerPosition At { get; init; }

    /// <summary>What stiffens it; null: nothing.</summary>
    /// <exception cref="InputException">A stiffener that reaches beyond the width of the lug.</exception>
    public ShearLugStiffeners? Stiffeners
    {
        get;
        init
        {
            foreach (Length place in value?.Places ?? [])
            {
                double half = Width.In(MeasurementSystem.NewtonMillimetre) / 2;
                if (Limit.IsBelow(half, Math.Abs(place.In(MeasurementSystem.NewtonMillimetre)) + (value!.Thickness.In(MeasurementSystem.NewtonMillimetre) / 2)))
                {
                    throw new InputException("stiffeners", QuantityText.Format(place), $"a place that keeps the stiffener within the width of the lug, {QuantityText.Format(Width)}");
                }
            }

            field = value;
        }
    }

    /// <summary>Axis, size and place.</summary>
    public override string ToString() =>
        $"for shear along {(Takes == ShearAxis.X ? "x" : "y")}, {QuantityText.Format(Thickness)} thick, {QuantityText.Format(Width)} wide, {QuantityText.Format(Depth)} below the plate, middle at {(At == default ? "the origin" : At)}"
        + (Stiffeners is { } stiffeners ? $", stiffeners: {stiffeners}" : "");
}
