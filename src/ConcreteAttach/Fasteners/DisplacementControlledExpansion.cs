using ConcreteAttach.Materials;
using ConcreteAttach.Quantities;
using UnitsNet;

namespace ConcreteAttach.Fasteners;

/// <summary>An expansion fastener that is set by driving a plug or the sleeve a given way.</summary>
public sealed record DisplacementControlledExpansion : MechanicalFastener
{
    /// <summary>Creates a displacement-controlled expansion fastener.</summary>
    /// <param name="diameter">Nominal diameter d_a; greater than 0, finite.</param>
    /// <param name="steel">The steel.</param>
    /// <param name="effectiveEmbedment">Effective embedment h_ef; greater than 0, finite.</param>
    /// <param name="qualification">What tests have shown of the product.</param>
    /// <exception cref="InputException">A parameter is outside its range.</exception>
    public DisplacementControlledExpansion(Length diameter, AnchorSteel steel, Length effectiveEmbedment, MechanicalQualification qualification)
        : base(diameter, steel, effectiveEmbedment, qualification)
    {
    }

    /// <inheritdoc/>
    public override string Kind => "displacement-controlled expansion";
}
