using ConcreteAttach.Materials;
using ConcreteAttach.Quantities;
using UnitsNet;

namespace ConcreteAttach.Fasteners;

/// <summary>A fastener whose end spreads into an undercut of the drilled hole, and bears there like a head.</summary>
public sealed record UndercutFastener : MechanicalFastener
{
    /// <summary>Creates an undercut fastener.</summary>
    /// <param name="diameter">Nominal diameter d_a; greater than 0, finite.</param>
    /// <param name="steel">The steel.</param>
    /// <param name="effectiveEmbedment">Effective embedment h_ef; greater than 0, finite.</param>
    /// <param name="qualification">What tests have shown of the product.</param>
    /// <exception cref="InputException">A parameter is outside its range.</exception>
    public UndercutFastener(Length diameter, AnchorSteel steel, Length effectiveEmbedment, MechanicalQualification qualification)
        : base(diameter, steel, effectiveEmbedment, qualification)
    {
    }

    /// <inheritdoc/>
    public override string Kind => "undercut";
}
