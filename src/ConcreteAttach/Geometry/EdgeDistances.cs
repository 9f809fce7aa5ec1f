using ConcreteAttach.Quantities;
using UnitsNet;

namespace ConcreteAttach.Geometry;

/// <summary>
/// The distances from the origin to the edges of a rectangular member. Null: no edge within reach in that direction.
/// </summary>
/// <remarks>A distance may be negative as long as all fasteners lie inside: the origin need not.</remarks>
public sealed record EdgeDistances
{
    /// <summary>A member without edges within reach.</summary>
    public static readonly EdgeDistances None = new();

    /// <summary>Distance from the origin to the edge toward +x; null for none.</summary>
    public Length? PlusX { get; init => field = Checked("+x", value); }

    /// <summary>Distance from the origin to the edge toward −x; null for none.</summary>
    public Length? MinusX { get; init => field = Checked("-x", value); }

    /// <summary>Distance from the origin to the edge toward +y; null for none.</summary>
    public Length? PlusY { get; init => field = Checked("+y", value); }

    /// <summary>Distance from the origin to the edge toward −y; null for none.</summary>
    public Length? MinusY { get; init => field = Checked("-y", value); }

    internal Rectangle ToRectangle(MeasurementSystem system) => new(
        -(MinusX?.In(system) ?? double.PositiveInfinity),
        PlusX?.In(system) ?? double.PositiveInfinity,
        -(MinusY?.In(system) ?? double.PositiveInfinity),
        PlusY?.In(system) ?? double.PositiveInfinity);

    private static Length? Checked(string side, Length? value) => value is { } length ? Require.Finite(side, length) : null;

    /// <summary>The distances that are given.</summary>
    public override string ToString() => string.Join(", ", ConcreteSides.All.Select(Text).OfType<string>());

    /// <summary>The distance toward a side; null for none.</summary>
    internal Length? Toward(ConcreteSide side) =>
        side == ConcreteSide.PlusX ? PlusX
        : side == ConcreteSide.MinusX ? MinusX
        : side == ConcreteSide.PlusY ? PlusY : MinusY;

    private string? Text(ConcreteSide side) => Toward(side) is { } distance ? $"{side} {QuantityText.Format(distance)}" : null;
}
