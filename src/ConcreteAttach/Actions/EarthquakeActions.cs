using ConcreteAttach.Quantities;
using UnitsNet;

namespace ConcreteAttach.Actions;

/// <summary>
/// The part of the forces of a load case that is the horizontal effect of the strength-level earthquake, E_h: of the same axes and place as the load case, and contained in its
/// components. It decides the 20 percent rule of ACI 318-19 17.10.5 and 17.10.6, and it is what the overstrength factor multiplies.
/// </summary>
public sealed record EarthquakeActions
{
    /// <summary>Part of the axial force, tension positive.</summary>
    /// <exception cref="InputException">Not finite.</exception>
    public Force N { get; init => field = Require.Finite("N", value); }

    /// <summary>Part of the shear force along x.</summary>
    /// <exception cref="InputException">Not finite.</exception>
    public Force Vx { get; init => field = Require.Finite("Vx", value); }

    /// <summary>Part of the shear force along y.</summary>
    /// <exception cref="InputException">Not finite.</exception>
    public Force Vy { get; init => field = Require.Finite("Vy", value); }

    /// <summary>Part of the moment about the x axis.</summary>
    /// <exception cref="InputException">Not finite.</exception>
    public Torque Mx { get; init => field = Require.Finite("Mx", value); }

    /// <summary>Part of the moment about the y axis.</summary>
    /// <exception cref="InputException">Not finite.</exception>
    public Torque My { get; init => field = Require.Finite("My", value); }

    /// <summary>Part of the torsion.</summary>
    /// <exception cref="InputException">Not finite.</exception>
    public Torque Mz { get; init => field = Require.Finite("Mz", value); }

    /// <summary>The components.</summary>
    public override string ToString() =>
        $"N {QuantityText.Format(N)}, V {QuantityText.Format(Vx)}, {QuantityText.Format(Vy)}, M {QuantityText.Format(Mx)}, {QuantityText.Format(My)}, {QuantityText.Format(Mz)}";
}
