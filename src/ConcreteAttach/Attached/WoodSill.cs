using ConcreteAttach.Quantities;
using UnitsNet;

namespace ConcreteAttach.Attached;

/// <summary>Along which axis of the surface a sill runs.</summary>
public enum SillDirection
{
    /// <summary>Along x.</summary>
    X,

    /// <summary>Along y.</summary>
    Y,
}

/// <summary>
/// A wood sill of a light-frame wall whose bolts are to use the building code's alternative to ACI 318 17.10.6 for shear along the sill (IBC 2012 to 2021 1905.1.8, from memory). Each condition is a check of
/// its own in the result. Immutable.
/// </summary>
public sealed record WoodSill
{
    /// <summary>Describes a sill.</summary>
    /// <param name="direction">Along which axis it runs.</param>
    /// <param name="thickness">Actual thickness, 1-1/2 in. of a sill 2 in. nominal; greater than 0.</param>
    /// <exception cref="InputException">A parameter is outside its range.</exception>
    public WoodSill(SillDirection direction, Length thickness)
    {
        Direction = Enum.IsDefined(direction) ? direction : throw new InputException(nameof(direction), QuantityText.Format((int)direction), "X or Y");
        Thickness = Require.Positive(nameof(thickness), thickness);
    }

    /// <summary>Along which axis it runs.</summary>
    public SillDirection Direction { get; }

    /// <summary>Actual thickness.</summary>
    public Length Thickness { get; }

    /// <summary>Length of the bolts in the concrete, heads and hooks with it; null: the effective embedment stands for it.</summary>
    /// <exception cref="InputException">Not greater than 0, or not finite.</exception>
    public Length? Embedment { get; init => field = value is { } length ? Require.Positive("embedment", length) : null; }

    /// <summary>Whether the strength of the bolts along the sill is that of NDS for lateral loads parallel to grain. A sill that is verified together with its concrete has it.</summary>
    public bool HasStrengthByNds { get; init; }

    /// <summary>Direction and thickness, in words.</summary>
    public override string ToString() => $"a wood sill along {(Direction == SillDirection.X ? "x" : "y")}, {QuantityText.Format(Thickness)} thick";
}
