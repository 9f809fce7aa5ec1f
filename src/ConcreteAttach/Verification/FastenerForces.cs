using ConcreteAttach.Quantities;
using UnitsNet;

namespace ConcreteAttach.Verification;

/// <summary>The force on one fastener in one load case.</summary>
/// <param name="LoadCase">Name of the load case.</param>
/// <param name="Index">Number of the fastener, from 0.</param>
/// <param name="Tension">Axial force, tension positive, compression negative.</param>
/// <param name="ShearX">Shear along x.</param>
/// <param name="ShearY">Shear along y.</param>
public sealed record FastenerForces(string LoadCase, int Index, Force Tension, Force ShearX, Force ShearY)
{
    /// <summary>Load case, number and forces.</summary>
    public override string ToString() =>
        $"{LoadCase}, fastener {QuantityText.Format(Index)}: tension {QuantityText.Format(Tension)}, shear {QuantityText.Format(ShearX)}, {QuantityText.Format(ShearY)}";
}
