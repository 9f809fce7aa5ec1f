using System.Diagnostics.CodeAnalysis;
using ConcreteAttach.Geometry;
using ConcreteAttach.Quantities;
using UnitsNet;

namespace ConcreteAttach.Materials;

/// <summary>
/// The anchor steels of the product standards. Strength and ductility can depend on the diameter, so a steel is looked up by
/// designation and diameter.
/// </summary>
/// <remarks>
/// Specified minimum values. "Read" means read in a secondary listing of the standard, not in the standard itself; everything
/// else is from memory. Look at the edition that the order names. Strengths of the inch standards are the inch-pound values also for
/// metric diameters; the metric companion prints figures rounded by up to about 1 %. EN 1992-4 takes nominal
/// strengths for the ISO 898-1 classes (5.8: 400/500, 10.9: 900/1000 MPa), which differ from the minimum values here.
/// </remarks>
public static class AnchorSteels
{
    private const string FromMemory = "from memory";

    private const string F1554 =
        "ASTM F1554, tensile properties table: strengths, elongation (2 in.) and reduction of area read in a secondary listing, sizes from memory";

    private const string F1554Thick =
        "ASTM F1554, tensile properties table: strengths and elongation read in a secondary listing; reduction of area over 2 in. "
        + "from memory of older listings (22, 20 and 18 % as the size grows, the least is given; current listings print 30 % for all sizes)";

    private const string A307 =
        "ASTM A307 Grade A, tensile strength from memory; it specifies no yield strength, 36 ksi is common practice, no source; "
        + "counts as ductile by ACI 318-19 chapter 2";

    private const string A36 =
        "ASTM A36, bars, " + FromMemory + "; it prints no reduction of area, taken as ductile by common practice, no source";

    private const string A193 = "ASTM A193/A193M, mechanical requirements table, " + FromMemory;

    private const string A449 = "ASTM A449 Type 1, tensile requirements table, " + FromMemory;

    private const string A354 = "ASTM A354 Grade BD, mechanical requirements table, " + FromMemory;

    private const string F593 =
        "ASTM F593, alloy groups 1 and 2 (304, 316), mechanical requirements table, " + FromMemory
        + "; it prints no reduction of area, so brittle until that is shown by test";

    private const string Aws =
        "AWS D1.1/D1.1M, mechanical property requirements for studs (Table 7.1, Table 9.1 in the 2020 edition), " + FromMemory;

    private const string Iso898 =
        "ISO 898-1, mechanical properties table: strengths read in a secondary listing; elongation, reduction of area and sizes from memory";

    private const string Iso898Class46 =
        Iso898 + "; it prints no reduction of area for this class, taken as ductile by common practice, no source";

    private const string Iso3506 =
        "ISO 3506-1, austenitic steel, mechanical properties table: strengths read in a secondary listing, sizes from memory; "
        + "it prints no reduction of area, so brittle until that is shown by test";

    private const string A615 =
        "ASTM A615/A615M, deformed bars, tensile requirements, " + FromMemory + "; tensile strength of the editions since 2020, older ones print 90 ksi; "
        + "deformed bars of it count as ductile by ACI 318-19 chapter 2, but for earthquake";

    private const string A706 =
        "ASTM A706/A706M, deformed bars, tensile requirements, " + FromMemory + "; deformed bars of it count as ductile by ACI 318-19 chapter 2";

    /// <summary>
    /// Largest diameter of the first size group of ASTM A193: 2-1/2 in. or M64. 64 mm covers both; no standard size lies between them.
    /// </summary>
    private static readonly Length TwoAndAHalfInchesOrM64 = Length.FromMillimeters(64);

    /// <summary>Largest diameter of the third size group of ASTM A193: 7 in. or M180.</summary>
    private static readonly Length SevenInchesOrM180 = Length.FromMillimeters(180);

    private static readonly Grade[] Grades =
    [
        new("ASTM F1554 Grade 36", Inches(0.25), [Ksi(Inches(4), 36, 58, true, 0.23, 0.40, F1554)]),
        new("ASTM F1554 Grade 55", Inches(0.25),
        [
            Ksi(Inches(2), 55, 75, true, 0.21, 0.30, F1554),
            Ksi(Inches(4), 55, 75, false, 0.21, 0.18, F1554Thick),
        ]),
        new("ASTM F1554 Grade 105", Inches(0.25), [Ksi(Inches(3), 105, 125, true, 0.15, 0.45, F1554)]),
        new("ASTM A307", Inches(0.25), [Ksi(Inches(4), 36, 60, true, 0.18, null, A307)]),
        new("ASTM A36", null, [Ksi(null, 36, 58, true, 0.23, null, A36)]),
        new("ASTM A193 B7", null,
        [
            Ksi(TwoAndAHalfInchesOrM64, 105, 125, true, 0.16, 0.50, A193),
            Ksi(Inches(4), 95, 115, true, 0.16, 0.50, A193),
            Ksi(SevenInchesOrM180, 75, 100, true, 0.18, 0.50, A193),
        ]),
        new("ASTM F593 CW1", Inches(0.25), [Ksi(Inches(0.625), 65, 100, false, 0.20, null, F593)]),
        new("ASTM F593 CW2", Inches(0.75), [Ksi(Inches(1.5), 45, 85, false, 0.25, null, F593)]),

        // D1.1 calls Type A general purpose, of any type and size; the range here is that of the stud heads in HeadTable.
        new("AWS D1.1 Type A", Inches(0.25), [Ksi(Inches(1), 49, 61, true, 0.17, 0.50, Aws)]),
        new("AWS D1.1 Type B", Inches(0.375), [Ksi(Inches(1), 51, 65, true, 0.20, 0.50, Aws)]),

        // ISO 898-1 covers M1.6 to M39. 5.8 has no elongation of a machined test piece in that table.
        new("ISO 898-1 4.6", Millimetres(1.6), [Mpa(Millimetres(39), 240, 400, true, 0.22, null, Iso898Class46)]),
        new("ISO 898-1 5.8", Millimetres(1.6), [Mpa(Millimetres(39), 420, 520, false, null, null, Iso898)]),
        new("ISO 898-1 8.8", Millimetres(1.6),
        [
            Mpa(Millimetres(16), 640, 800, false, 0.12, 0.52, Iso898),
            Mpa(Millimetres(39), 660, 830, false, 0.12, 0.52, Iso898),
        ]),
        new("ISO 898-1 10.9", Millimetres(1.6), [Mpa(Millimetres(39), 940, 1040, false, 0.09, 0.48, Iso898)]),
        new("ASTM A449", Inches(0.25),
        [
            Ksi(Inches(1), 92, 120, true, 0.14, 0.35, A449),
            Ksi(Inches(1.5), 81, 105, true, 0.14, 0.35, A449),
            Ksi(Inches(3), 58, 90, true, 0.14, 0.35, A449),
        ]),
        new("ASTM A354 BD", Inches(0.25),
        [
            Ksi(Inches(2.5), 130, 150, true, 0.14, 0.40, A354),
            Ksi(Inches(4), 115, 140, true, 0.14, 0.40, A354),
        ]),
        new("ASTM A193 B8 Class 1", null, [Ksi(null, 30, 75, true, 0.30, 0.50, A193)]),
        new("ASTM A193 B8M Class 1", null, [Ksi(null, 30, 75, true, 0.30, 0.50, A193)]),
        new("ASTM F593 A", Inches(0.25), [Ksi(Inches(1.5), 30, 75, false, 0.30, null, F593)]),

        // ISO 3506-1 states elongation in millimetres of the whole bolt, which is no fraction. Classes 70 and 80 above M24 are by agreement.
        new("ISO 3506-1 A2-50", Millimetres(1.6), [Mpa(Millimetres(39), 210, 500, false, null, null, Iso3506)]),
        new("ISO 3506-1 A2-70", Millimetres(1.6), [Mpa(Millimetres(24), 450, 700, false, null, null, Iso3506)]),
        new("ISO 3506-1 A2-80", Millimetres(1.6), [Mpa(Millimetres(24), 600, 800, false, null, null, Iso3506)]),
        new("ISO 3506-1 A4-50", Millimetres(1.6), [Mpa(Millimetres(39), 210, 500, false, null, null, Iso3506)]),
        new("ISO 3506-1 A4-70", Millimetres(1.6), [Mpa(Millimetres(24), 450, 700, false, null, null, Iso3506)]),
        new("ISO 3506-1 A4-80", Millimetres(1.6), [Mpa(Millimetres(24), 600, 800, false, null, null, Iso3506)]),

        // Reinforcing bars No. 3 to No. 18: elongation falls with the size.
        new("ASTM A615 Grade 60", Inches(0.375),
        [
            Ksi(Inches(0.75), 60, 80, true, 0.09, null, A615),
            Ksi(Inches(1), 60, 80, true, 0.08, null, A615),
            Ksi(Inches(2.257), 60, 80, true, 0.07, null, A615),
        ]),
        new("ASTM A706 Grade 60", Inches(0.375),
        [
            Ksi(Inches(0.75), 60, 80, true, 0.14, null, A706),
            Ksi(Inches(1.41), 60, 80, true, 0.12, null, A706),
            Ksi(Inches(2.257), 60, 80, true, 0.10, null, A706),
        ]),
    ];

    /// <summary>Every designation that <see cref="Find"/> knows, in the order of the table.</summary>
    public static IReadOnlyList<string> Designations { get; } = Array.AsReadOnly(Array.ConvertAll(Grades, grade => grade.Designation));

    /// <summary>The steel of a designation in a diameter.</summary>
    /// <param name="designation">One of <see cref="Designations"/>, letter for letter.</param>
    /// <param name="diameter">Nominal diameter d_a; greater than 0, finite, within the sizes of the standard.</param>
    /// <returns>The steel with the strengths and the ductility that the standard gives to this diameter.</returns>
    /// <exception cref="InputException">The designation is unknown (parameter <c>steel</c>), or the diameter is not one that the
    /// standard covers (parameter <c>diameter</c>). The message lists what is permitted.</exception>
    public static AnchorSteel Find(string designation, Length diameter)
    {
        if (GradeOf(designation) is not { } grade)
        {
            throw new InputException("steel", string.IsNullOrEmpty(designation) ? "an empty text" : designation, string.Join(", ", Designations));
        }

        if (!IsPositive(diameter))
        {
            throw new InputException(nameof(diameter), QuantityText.Format(diameter), "greater than 0");
        }

        return grade.SteelOf(diameter)
            ?? throw new InputException(nameof(diameter), QuantityText.Format(diameter), $"{grade.Sizes} for {grade.Designation}");
    }

    /// <summary>The steel of a designation in a diameter, without an exception where there is none.</summary>
    /// <param name="designation">One of <see cref="Designations"/>, letter for letter.</param>
    /// <param name="diameter">Nominal diameter d_a.</param>
    /// <param name="steel">The steel, or null.</param>
    /// <returns>True where <see cref="Find"/> would return a steel.</returns>
    public static bool TryFind(string? designation, Length diameter, [NotNullWhen(true)] out AnchorSteel? steel)
    {
        steel = IsPositive(diameter) ? GradeOf(designation)?.SteelOf(diameter) : null;
        return steel is not null;
    }

    private static Grade? GradeOf(string? designation) => Array.Find(Grades, grade => grade.Designation == designation);

    private static bool IsPositive(Length diameter) => diameter.Value > 0 && double.IsFinite(diameter.Value);

    private static Length Inches(double value) => Length.FromInches(value);

    private static Length Millimetres(double value) => Length.FromMillimeters(value);

    private static Band Ksi(
        Length? largest, double yield, double ultimate, bool isDuctile, double? elongation, double? reductionOfArea, string source) =>
        new(largest, Pressure.FromKilopoundsForcePerSquareInch(yield), Pressure.FromKilopoundsForcePerSquareInch(ultimate),
            isDuctile, elongation, reductionOfArea, source);

    private static Band Mpa(
        Length? largest, double yield, double ultimate, bool isDuctile, double? elongation, double? reductionOfArea, string source) =>
        new(largest, Pressure.FromMegapascals(yield), Pressure.FromMegapascals(ultimate), isDuctile, elongation, reductionOfArea, source);

    /// <summary>The values of one range of diameters up to and including <paramref name="Largest"/>; null: without limit.</summary>
    private sealed record Band(
        Length? Largest, Pressure Yield, Pressure Ultimate, bool IsDuctile, double? Elongation, double? ReductionOfArea, string Source);

    /// <summary>A designation, its smallest diameter (null: without limit) and its bands in rising order.</summary>
    private sealed class Grade
    {
        private readonly Length? _smallest;
        private readonly Length? _largest;
        private readonly (Length? Largest, AnchorSteel Steel)[] _steels;

        public Grade(string designation, Length? smallest, Band[] bands)
        {
            Designation = designation;
            _smallest = smallest;
            _largest = bands[^1].Largest;
            _steels = Array.ConvertAll(bands, band => (band.Largest, new AnchorSteel(
                designation, band.Yield, band.Ultimate, band.IsDuctile, band.Elongation, band.ReductionOfArea, band.Source)));
        }

        public string Designation { get; }

        /// <summary>The diameters that the standard covers, as text.</summary>
        public string Sizes => (_smallest, _largest) switch
        {
            ({ } smallest, { } largest) => $"{QuantityText.Format(smallest)} to {QuantityText.Format(largest)}",
            (null, { } largest) => $"at most {QuantityText.Format(largest)}",
            ({ } smallest, null) => $"at least {QuantityText.Format(smallest)}",
            _ => "any diameter",
        };

        public AnchorSteel? SteelOf(Length diameter)
        {
            if (_smallest is { } smallest && !IsAtMost(smallest, diameter))
            {
                return null;
            }

            foreach ((Length? largest, AnchorSteel steel) in _steels)
            {
                if (largest is not { } limit || IsAtMost(diameter, limit))
                {
                    return steel;
                }
            }

            return null;
        }

        private static bool IsAtMost(Length value, Length limit) =>
            Tolerance.Below(value.In(MeasurementSystem.PoundInch)) <= limit.In(MeasurementSystem.PoundInch);
    }
}
