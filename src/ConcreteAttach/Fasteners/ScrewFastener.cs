using ConcreteAttach.Materials;
using ConcreteAttach.Quantities;
using UnitsNet;

namespace ConcreteAttach.Fasteners;

/// <summary>A screw that cuts its thread into the concrete of a predrilled hole.</summary>
public sealed record ScrewFastener : MechanicalFastener
{
    /// <summary>Creates a screw.</summary>
    /// <param name="diameter">Nominal diameter d_a; greater than 0, finite.</param>
    /// <param name="steel">The steel.</param>
    /// <param name="effectiveEmbedment">Effective embedment h_ef; greater than 0, finite.</param>
    /// <param name="qualification">What tests have shown of the product.</param>
    /// <exception cref="InputException">A parameter is outside its range.</exception>
    public ScrewFastener(Length diameter, AnchorSteel steel, Length effectiveEmbedment, MechanicalQualification qualification)
        : base(diameter, steel, effectiveEmbedment, qualification)
    {
    }

    /// <inheritdoc/>
    public override string Kind => "screw";
}
