using System.Collections.Immutable;
using ConcreteAttach.Geometry;
using ConcreteAttach.Quantities;
using UnitsNet;

namespace ConcreteAttach.Verification;

/// <summary>How a plate bears on the concrete in one load case, by plane sections.</summary>
/// <param name="LoadCase">Name of the load case.</param>
/// <param name="Compression">Sum of the contact pressure, 0 or more.</param>
/// <param name="CompressionAt">Where it acts; null without contact.</param>
/// <param name="Tension">Sum of the tension on the fasteners without the allowance for prying, 0 or more.</param>
/// <param name="TensionAt">Where it acts; null without tension.</param>
/// <param name="LeverArm">z: distance between the two; null where one of them is missing.</param>
/// <param name="LargestPressure">The largest contact pressure, 0 or more.</param>
/// <param name="LargestPressureAt">The corner where it stands; null without contact.</param>
/// <param name="Area">Area under pressure.</param>
/// <param name="Zone">
/// The part of the plate's outline that presses, as a ring of points; empty without contact. Where the plate reaches over an edge or an opening of the concrete, only the part of it
/// that lies on concrete is under pressure.
/// </param>
/// <param name="PlateBending">
/// Largest elastic bending stress of the plate at the faces of the attached profile; null where thickness or profile are not known. Above the yield strength the plate is not rigid.
/// </param>
public sealed record ContactState(
    string LoadCase,
    Force Compression,
    FastenerPosition? CompressionAt,
    Force Tension,
    FastenerPosition? TensionAt,
    Length? LeverArm,
    Pressure LargestPressure,
    FastenerPosition? LargestPressureAt,
    Area Area,
    ImmutableArray<FastenerPosition> Zone,
    Pressure? PlateBending)
{
    /// <summary>Load case, resultants and the largest pressure.</summary>
    public override string ToString() =>
        $"{LoadCase}: compression {QuantityText.Format(Compression)}, tension {QuantityText.Format(Tension)}, largest pressure {QuantityText.Format(LargestPressure)}";
}
