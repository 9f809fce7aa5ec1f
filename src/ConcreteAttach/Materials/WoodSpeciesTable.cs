using ConcreteAttach.Quantities;
using UnitsNet;

namespace ConcreteAttach.Materials;

/// <summary>Specific gravities of species groups, NDS-2018 Table 12.3.3A, with F_c⊥ of common groups.</summary>
/// <remarks>
/// From memory throughout. The ten gravities 0.35 to 0.67 that head the columns of NDS-2018 Table 12E, and F_c⊥ of the four commonest groups, stand in
/// the project's reference sheet as well, also from memory. Look at the standard before a design rests on a group.
/// </remarks>
public static class WoodSpeciesTable
{
    private const string Source = "NDS-2018 Table 12.3.3A, from memory";

    private const string SourceWithBearing = Source + "; F_c perpendicular of dimension lumber, NDS Supplement Tables 4A and 4B, from memory";

    private static readonly WoodSpecies[] Groups =
    [
        Group("Aspen", 0.39, hardwood: true),
        Group("Balsam Fir", 0.36),
        Group("Beech-Birch-Hickory", 0.71, 715, hardwood: true),
        Group("Coast Sitka Spruce", 0.39),
        Group("Cottonwood", 0.41, hardwood: true),
        Group("Douglas Fir-Larch", 0.50, 625),
        Group("Douglas Fir-Larch (North)", 0.49, 625),
        Group("Douglas Fir-South", 0.46, 520),
        Group("Eastern Hemlock", 0.41),
        Group("Eastern Hemlock-Balsam Fir", 0.36, 335),
        Group("Eastern Hemlock-Tamarack", 0.41, 555),
        Group("Eastern Hemlock-Tamarack (North)", 0.47),
        Group("Eastern Softwoods", 0.36, 335),
        Group("Eastern Spruce", 0.41),
        Group("Eastern White Pine", 0.36, 350),
        Group("Engelmann Spruce-Lodgepole Pine", 0.38),
        Group("Hem-Fir", 0.43, 405),
        Group("Hem-Fir (North)", 0.46, 405),
        Group("Mixed Maple", 0.55, 620, hardwood: true),
        Group("Mixed Oak", 0.68, 800, hardwood: true),
        Group("Mixed Southern Pine", 0.51, 565),
        Group("Mountain Hemlock", 0.47),
        Group("Northern Pine", 0.42),
        Group("Northern Red Oak", 0.68, 885, hardwood: true),
        Group("Northern Species", 0.35, 350),
        Group("Northern White Cedar", 0.31, 370),
        Group("Ponderosa Pine", 0.43),
        Group("Red Maple", 0.58, 615, hardwood: true),
        Group("Red Oak", 0.67, 820, hardwood: true),
        Group("Red Pine", 0.44),
        Group("Redwood, close grain", 0.44, 650),
        Group("Redwood, open grain", 0.37, 425),
        Group("Sitka Spruce", 0.43),
        Group("Southern Pine", 0.55, 565),
        Group("Spruce-Pine-Fir", 0.42, 425),
        Group("Spruce-Pine-Fir (South)", 0.36, 335),
        Group("Western Cedars", 0.36, 425),
        Group("Western Cedars (North)", 0.35, 425),
        Group("Western Hemlock", 0.47),
        Group("Western Hemlock (North)", 0.46),
        Group("Western White Pine", 0.40),
        Group("Western Woods", 0.36, 335),
        Group("White Oak", 0.73, 800, hardwood: true),
        Group("Yellow Poplar", 0.43, 420, hardwood: true),
    ];

    /// <summary>Every group that <see cref="Find"/> knows, in the order of the table.</summary>
    public static IReadOnlyList<string> Designations { get; } = Array.AsReadOnly(Array.ConvertAll(Groups, group => group.Designation));

    /// <summary>The species group of a designation.</summary>
    /// <param name="designation">One of <see cref="Designations"/>, letter for letter.</param>
    /// <returns>The group with its values and their source.</returns>
    /// <exception cref="InputException">The designation is unknown; the message lists what is permitted.</exception>
    public static WoodSpecies Find(string designation) =>
        Array.Find(Groups, group => group.Designation == designation)
            ?? throw new InputException("species", string.IsNullOrEmpty(designation) ? "an empty text" : designation, string.Join(", ", Designations));

    private static WoodSpecies Group(string designation, double gravity, double? bearing = null, bool hardwood = false) =>
        new(designation, gravity, !hardwood, bearing is { } psi ? Pressure.FromPoundsForcePerSquareInch(psi) : null, bearing is null ? Source : SourceWithBearing);
}
