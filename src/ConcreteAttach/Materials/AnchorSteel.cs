using ConcreteAttach.Geometry;
using ConcreteAttach.Quantities;
using UnitsNet;

namespace ConcreteAttach.Materials;

/// <summary>
/// Steel of an anchor: the specified strengths and whether it counts as a ductile steel element. Standard steels are in
/// <see cref="AnchorSteels"/>; the public constructor is for any other.
/// </summary>
/// <remarks>
/// The strengths are the specified minimum values of the product standard. Limits of a design method, such as
/// f_uta ≤ min(1.9 f_ya, 125 000 psi) of ACI 318-19 17.6.1.2, are applied by that method, not here.
/// </remarks>
public sealed record AnchorSteel
{
    /// <summary>Creates a steel from the user's own data.</summary>
    /// <param name="designation">Name of the steel as it is to be printed; not empty.</param>
    /// <param name="yield">Specified yield strength f_ya; greater than 0, finite.</param>
    /// <param name="ultimate">Specified ultimate strength f_uta; finite, at least <paramref name="yield"/>.</param>
    /// <param name="isDuctile">Whether it is a ductile steel element, see <see cref="IsDuctile"/>.</param>
    /// <exception cref="InputException">A parameter is outside its range.</exception>
    public AnchorSteel(string designation, Pressure yield, Pressure ultimate, bool isDuctile)
        : this(designation, yield, ultimate, isDuctile, null, null, "given by the user")
    {
    }

    internal AnchorSteel(
        string designation, Pressure yield, Pressure ultimate, bool isDuctile, double? elongation, double? reductionOfArea, string source)
    {
        if (string.IsNullOrWhiteSpace(designation))
        {
            throw new InputException("designation", "an empty text", "the name of the steel");
        }

        Yield = Require.Positive(nameof(yield), yield);
        Ultimate = Require.Positive(nameof(ultimate), ultimate);
        if (ultimate.In(MeasurementSystem.PoundInch) < Tolerance.Below(yield.In(MeasurementSystem.PoundInch)))
        {
            throw new InputException(
                nameof(ultimate), QuantityText.Format(ultimate), $"at least the yield strength, {QuantityText.Format(yield)}");
        }

        Designation = designation;
        IsDuctile = isDuctile;
        Elongation = elongation;
        ReductionOfArea = reductionOfArea;
        Source = source;
    }

    /// <summary>Name of the steel, such as <c>ASTM F1554 Grade 36</c>.</summary>
    public string Designation { get; }

    /// <summary>Specified yield strength f_ya.</summary>
    public Pressure Yield { get; }

    /// <summary>Specified ultimate (tensile) strength f_uta, the minimum of the standard's range.</summary>
    public Pressure Ultimate { get; }

    /// <summary>
    /// Whether the steel is a ductile steel element: elongation of at least 14 % and reduction of area of at least 30 % in the
    /// tensile test; ASTM A307 counts as ductile (ACI 318-19 chapter 2, from memory).
    /// </summary>
    public bool IsDuctile { get; }

    /// <summary>Specified minimum elongation as a fraction (0.23 is 23 %); null where the source states none.</summary>
    public double? Elongation { get; }

    /// <summary>Specified minimum reduction of area as a fraction; null where the source states none.</summary>
    public double? ReductionOfArea { get; }

    /// <summary>Where the values come from, and whether they were read or are from memory.</summary>
    public string Source { get; }

    /// <summary>The designation.</summary>
    public override string ToString() => Designation;
}
