using System.Collections.Immutable;
using ConcreteAttach.Quantities;
using UnitsNet;

namespace ConcreteAttach.Materials;

/// <summary>Size of a deformed reinforcing bar: nominal diameter d_b and area A_b.</summary>
/// <remarks>
/// The sizes No. 3 to No. 18 are those of ASTM A615/A615M and A706/A706M, nominal dimensions in inches and square inches, from memory of the table of those standards (ACI 318-19 appendix A repeats it).
/// A size with a metric number is the same bar: No. 13 there is No. 4 here.
/// </remarks>
public sealed record DeformedBar
{
    /// <summary>A bar of any size.</summary>
    /// <param name="designation">What it is called; not empty.</param>
    /// <param name="diameter">Nominal diameter d_b, greater than 0.</param>
    /// <param name="area">Nominal area A_b, greater than 0.</param>
    /// <exception cref="InputException">A value outside its range.</exception>
    public DeformedBar(string designation, Length diameter, Area area)
    {
        Designation = string.IsNullOrWhiteSpace(designation) ? throw new InputException(nameof(designation), "an empty text", "the name of the bar") : designation;
        Diameter = Require.Positive(nameof(diameter), diameter);
        Area = Require.Positive(nameof(area), area);
    }

    /// <summary>The bars of the table, in rising order.</summary>
    public static ImmutableArray<DeformedBar> Sizes { get; } =
    [
        Inch("No. 3", 0.375, 0.11),
        Inch("No. 4", 0.500, 0.20),
        Inch("No. 5", 0.625, 0.31),
        Inch("No. 6", 0.750, 0.44),
        Inch("No. 7", 0.875, 0.60),
        Inch("No. 8", 1.000, 0.79),
        Inch("No. 9", 1.128, 1.00),
        Inch("No. 10", 1.270, 1.27),
        Inch("No. 11", 1.410, 1.56),
        Inch("No. 14", 1.693, 2.25),
        Inch("No. 18", 2.257, 4.00),
    ];

    /// <summary>What it is called, such as <c>No. 4</c>.</summary>
    public string Designation { get; }

    /// <summary>Nominal diameter, d_b.</summary>
    public Length Diameter { get; }

    /// <summary>Nominal area, A_b.</summary>
    public Area Area { get; }

    /// <summary>A bar of the table.</summary>
    /// <param name="designation">No. 3 to No. 11, No. 14 or No. 18.</param>
    /// <exception cref="InputException">Another designation.</exception>
    public static DeformedBar Find(string designation) =>
        Sizes.FirstOrDefault(bar => bar.Designation == designation)
        ?? throw new InputException("bar", string.IsNullOrWhiteSpace(designation) ? "an empty text" : designation, string.Join(", ", Sizes.Select(bar => bar.Designation)));

    /// <summary>The designation.</summary>
    public override string ToString() => Designation;

    private static DeformedBar Inch(string designation, double diameter, double area) => new(designation, Length.FromInches(diameter), Area.FromSquareInches(area));
}
