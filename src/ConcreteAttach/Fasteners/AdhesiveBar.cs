using ConcreteAttach.Materials;
using ConcreteAttach.Quantities;
using UnitsNet;

namespace ConcreteAttach.Fasteners;

/// <summary>A deformed reinforcing bar that is bonded into a drilled hole.</summary>
public sealed record AdhesiveBar : AdhesiveFastener
{
    /// <summary>Creates a bonded deformed bar.</summary>
    /// <param name="diameter">Nominal diameter d_a of the bar; greater than 0, finite.</param>
    /// <param name="steel">The steel.</param>
    /// <param name="effectiveEmbedment">Effective embedment h_ef; greater than 0, finite.</param>
    /// <param name="qualification">What tests have shown of the product.</param>
    /// <exception cref="InputException">A parameter is outside its range.</exception>
    public AdhesiveBar(Length diameter, AnchorSteel steel, Length effectiveEmbedment, AdhesiveQualification qualification)
        : base(diameter, steel, effectiveEmbedment, qualification)
    {
    }

    /// <inheritdoc/>
    public override string Kind => "adhesive bar";

    /// <summary>
    /// The effective cross section in tension A_se,N: <see cref="Fastener.TensileArea"/> where it is given, else the full section π d_a²/4, or of the thread
    /// where one is given. In the unit system of its source.
    /// </summary>
    /// <param name="assumption">What was taken and from where; null where the area was given.</param>
    /// <exception cref="InputException">The thread that was given has no such diameter.</exception>
    public override Area? ResolveTensileArea(out string? assumption)
    {
        if (TensileArea is not null || Thread is not null)
        {
            return base.ResolveTensileArea(out assumption);
        }

        Area area = NominalDiameter.FullSection(Diameter);
        assumption = $"tensile area of the bar is its full section: {NominalDiameter.Text(area)}";
        return area;
    }
}
