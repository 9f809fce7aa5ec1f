using ConcreteAttach.Materials;
using ConcreteAttach.Quantities;
using UnitsNet;

namespace ConcreteAttach.Fasteners;

/// <summary>A threaded rod that is bonded into a drilled hole.</summary>
public sealed record AdhesiveRod : AdhesiveFastener
{
    /// <summary>Creates a bonded threaded rod.</summary>
    /// <param name="diameter">Nominal diameter d_a; greater than 0, finite.</param>
    /// <param name="steel">The steel.</param>
    /// <param name="effectiveEmbedment">Effective embedment h_ef; greater than 0, finite.</param>
    /// <param name="qualification">What tests have shown of the product.</param>
    /// <exception cref="InputException">A parameter is outside its range.</exception>
    public AdhesiveRod(Length diameter, AnchorSteel steel, Length effectiveEmbedment, AdhesiveQualification qualification)
        : base(diameter, steel, effectiveEmbedment, qualification)
    {
    }

    /// <inheritdoc/>
    public override string Kind => "adhesive rod";
}
