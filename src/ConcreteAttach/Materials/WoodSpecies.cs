using ConcreteAttach.Quantities;
using UnitsNet;

namespace ConcreteAttach.Materials;

/// <summary>
/// A species or group of species of wood, as dowel-type connections need it: specific gravity, softwood or hardwood, and compression perpendicular to
/// grain. Groups of the standard are in <see cref="WoodSpeciesTable"/>; the public constructor is for any other.
/// </summary>
public sealed record WoodSpecies
{
    /// <summary>Creates a species from the user's own data.</summary>
    /// <param name="designation">Name as it is to be printed; not empty.</param>
    /// <param name="specificGravity">G on oven-dry weight and volume, a pure number; above 0, at most 1.5.</param>
    /// <param name="isSoftwood">Whether it is a softwood; hardwoods need less end distance (NDS-2018 Table 12.5.1A).</param>
    /// <exception cref="InputException">A parameter is outside its range.</exception>
    public WoodSpecies(string designation, double specificGravity, bool isSoftwood)
        : this(designation, specificGravity, isSoftwood, null, "given by the user")
    {
    }

    internal WoodSpecies(string designation, double specificGravity, bool isSoftwood, Pressure? compressionPerpendicular, string source)
    {
        if (string.IsNullOrWhiteSpace(designation))
        {
            throw new InputException(nameof(designation), "an empty text", "the name of the species or group");
        }

        if (!(specificGravity > 0 && specificGravity <= LargestGravity))
        {
            throw new InputException(nameof(specificGravity), QuantityText.Format(specificGravity), "above 0, at most 1.5");
        }

        Designation = designation;
        SpecificGravity = specificGravity;
        IsSoftwood = isSoftwood;
        CompressionPerpendicular = compressionPerpendicular;
        Source = source;
    }

    /// <summary>The substance of wood itself has a specific gravity of about 1.5 (from memory): no wood is above it.</summary>
    private const double LargestGravity = 1.5;

    /// <summary>Name of the species or group.</summary>
    public string Designation { get; }

    /// <summary>Specific gravity G on oven-dry weight and volume, a pure number.</summary>
    public double SpecificGravity { get; }

    /// <summary>Whether it is a softwood.</summary>
    public bool IsSoftwood { get; }

    /// <summary>Reference design value F_c⊥ of dimension lumber; null where the table of this library has none: give it.</summary>
    /// <exception cref="InputException">Set to a value that is not above 0 and finite.</exception>
    public Pressure? CompressionPerpendicular
    {
        get;
        init => field = value is { } stress ? Require.Positive("compressionPerpendicular", stress) : null;
    }

    /// <summary>Where the values come from, and whether they were read or are from memory.</summary>
    public string Source { get; }

    /// <summary>The designation.</summary>
    public override string ToString() => Designation;
}
