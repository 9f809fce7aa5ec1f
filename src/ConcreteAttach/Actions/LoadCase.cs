using ConcreteAttach.Quantities;
using ConcreteAttach.Geometry;
using UnitsNet;

namespace ConcreteAttach.Actions;

/// <summary>The rule by which a standard keeps strength above demand. Values of two formats never meet in one check.</summary>
public enum SafetyFormat
{
    /// <summary>Factored loads against design strengths φR_n (strength design, LRFD).</summary>
    StrengthDesign,

    /// <summary>Service loads against allowable strengths (allowable stress design, ASD).</summary>
    AllowableStressDesign,

    /// <summary>Design actions against resistances with partial factors (Eurocodes).</summary>
    PartialFactors,
}

/// <summary>
/// The forces and moments that the attached part puts on the fasteners in one load combination.
/// </summary>
/// <remarks>
/// x and y lie in the concrete surface, z points out of it; a positive <see cref="N"/> is tension. Moments are right-hand, about the axes through
/// <see cref="At"/>, in the plane of the surface: the lever arm of a force above the surface is the caller's.
/// </remarks>
public sealed record LoadCase
{
    /// <summary>Describes a load case; an absent component is 0.</summary>
    /// <param name="name">Name, such as <c>1.2D + 1.0W</c>; not empty.</param>
    /// <exception cref="InputException">The name is empty.</exception>
    public LoadCase(string name)
    {
        if (string.IsNullOrWhiteSpace(name))
        {
            throw new InputException(nameof(name), "an empty name", "a name, such as 1.2D + 1.0W");
        }

        Name = name;
    }

    /// <summary>Name of the load case.</summary>
    public string Name { get; }

    /// <summary>Axial force, tension positive.</summary>
    public Force N { get; init => field = Require.Finite("N", value); }

    /// <summary>Shear force along x.</summary>
    public Force Vx { get; init => field = Require.Finite("Vx", value); }

    /// <summary>Shear force along y.</summary>
    public Force Vy { get; init => field = Require.Finite("Vy", value); }

    /// <summary>Moment about the x axis.</summary>
    public Torque Mx { get; init => field = Require.Finite("Mx", value); }

    /// <summary>Moment about the y axis.</summary>
    public Torque My { get; init => field = Require.Finite("My", value); }

    /// <summary>Torsion: moment about the z axis.</summary>
    public Torque Mz { get; init => field = Require.Finite("Mz", value); }

    /// <summary>The point of the surface at which the forces act; the origin by default.</summary>
    public FastenerPosition At
    {
        get;
        init => field = new(Require.Finite("at", value.X), Require.Finite("at", value.Y));
    }

    /// <summary>The part of <see cref="N"/> that stays on the attachment; null for none. Counts for adhesive fasteners.</summary>
    public Force? SustainedTension { get; init => field = value is { } force ? Require.Finite("sustainedTension", force) : null; }

    /// <summary>The part of the forces that is the horizontal effect of the earthquake; null for none. Asks for an <see cref="Attached.Attachment.Earthquake"/>.</summary>
    public EarthquakeActions? Earthquake { get; init; }

    /// <summary>The safety format of these forces; strength design (factored) by default.</summary>
    public SafetyFormat Format { get; init; }

    /// <summary>
    /// The weighted load factor α of a load case in allowable stress design: strength-level over allowable-stress-level load, weighted by the kinds of load in it. ACI 318 has strength design
    /// alone; practice divides its design strengths by α. Required by that format, and by no other. No unit, at least 1.
    /// </summary>
    /// <exception cref="InputException">Below 1, or not finite.</exception>
    public double? WeightedLoadFactor
    {
        get;
        init => field = value is null or (>= 1 and < double.PositiveInfinity) ? value : throw new InputException("weightedLoadFactor", QuantityText.Format(value.Value), "1 or more");
    }

    /// <summary>Name and components.</summary>
    public override string ToString() =>
        $"{Name}: N {QuantityText.Format(N)}, V {QuantityText.Format(Vx)}, {QuantityText.Format(Vy)}, M {QuantityText.Format(Mx)}, {QuantityText.Format(My)}, {QuantityText.Format(Mz)}, at {At}";
}
