using ConcreteAttach.Materials;
using ConcreteAttach.Quantities;
using UnitsNet;

namespace ConcreteAttach.Fasteners;

/// <summary>An expansion fastener that is set by a torque: a cone is drawn into a sleeve or into wedges.</summary>
public sealed record TorqueControlledExpansion : MechanicalFastener
{
    /// <summary>Creates a torque-controlled expansion fastener.</summary>
    /// <param name="diameter">Nominal diameter d_a; greater than 0, finite.</param>
    /// <param name="steel">The steel.</param>
    /// <param name="effectiveEmbedment">Effective embedment h_ef; greater than 0, finite.</param>
    /// <param name="qualification">What tests have shown of the product.</param>
    /// <exception cref="InputException">A parameter is outside its range.</exception>
    public TorqueControlledExpansion(Length diameter, AnchorSteel steel, Length effectiveEmbedment, MechanicalQualification qualification)
        : base(diameter, steel, effectiveEmbedment, qualification)
    {
    }

    /// <inheritdoc/>
    public override string Kind => "torque-controlled expansion";

    /// <summary>Whether a distance sleeve is separated from the expansion sleeve: then l_e is 2 d_a in the breakout in shear (ACI 318-19 17.7.2.2.1).</summary>
    public bool HasSeparatedSleeve { get; init; }
}
