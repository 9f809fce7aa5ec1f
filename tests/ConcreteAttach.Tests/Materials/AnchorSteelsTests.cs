using System.Globalization;
using ConcreteAttach.Materials;
using ConcreteAttach.Quantities;
using ConcreteAttach.Tests.Fasteners;
using UnitsNet;

namespace ConcreteAttach.Tests.Materials;

public sealed class AnchorSteelsTests
{
    /// <summary>Designations that the JSON contract names, and the rest.</summary>
    private static readonly string[] Expected =
    [
        "ASTM F1554 Grade 36", "ASTM F1554 Grade 55", "ASTM F1554 Grade 105", "ASTM A307", "ASTM A36", "ASTM A193 B7", "ASTM F593 CW1", "ASTM F593 CW2",
        "AWS D1.1 Type A", "AWS D1.1 Type B", "ISO 898-1 4.6", "ISO 898-1 5.8", "ISO 898-1 8.8", "ISO 898-1 10.9",
        "ASTM A449", "ASTM A354 BD", "ASTM A193 B8 Class 1", "ASTM A193 B8M Class 1", "ASTM F593 A",
        "ISO 3506-1 A2-50", "ISO 3506-1 A2-70", "ISO 3506-1 A2-80", "ISO 3506-1 A4-50", "ISO 3506-1 A4-70", "ISO 3506-1 A4-80",
        "ASTM A615 Grade 60", "ASTM A706 Grade 60",
    ];

    [Fact]
    public void Designations_are_these() => Assert.Equal(Expected, AnchorSteels.Designations);

    // Specified minimum strengths of the ASTM and AWS standards, ksi, at both ends of each range of diameters.
    // F1554: read in a secondary listing of the standard. All others from memory of the standard's table of mechanical properties.
    // A307 specifies no yield strength: 36 ksi is common practice, no source.
    [Theory]
    [InlineData("ASTM F1554 Grade 36", 0.25, 36, 58, true)]
    [InlineData("ASTM F1554 Grade 36", 4, 36, 58, true)]
    [InlineData("ASTM F1554 Grade 55", 0.25, 55, 75, true)]
    [InlineData("ASTM F1554 Grade 55", 2, 55, 75, true)]
    [InlineData("ASTM F1554 Grade 55", 2.25, 55, 75, false)]
    [InlineData("ASTM F1554 Grade 55", 4, 55, 75, false)]
    [InlineData("ASTM F1554 Grade 105", 0.25, 105, 125, true)]
    [InlineData("ASTM F1554 Grade 105", 3, 105, 125, true)]
    [InlineData("ASTM A307", 0.25, 36, 60, true)]
    [InlineData("ASTM A307", 4, 36, 60, true)]
    [InlineData("ASTM A36", 0.75, 36, 58, true)]
    [InlineData("ASTM A36", 5, 36, 58, true)]
    [InlineData("ASTM A193 B7", 0.5, 105, 125, true)]
    [InlineData("ASTM A193 B7", 2.5, 105, 125, true)]
    [InlineData("ASTM A193 B7", 2.75, 95, 115, true)]
    [InlineData("ASTM A193 B7", 4, 95, 115, true)]
    [InlineData("ASTM A193 B7", 4.25, 75, 100, true)]
    [InlineData("ASTM A193 B7", 7, 75, 100, true)]
    [InlineData("ASTM F593 CW1", 0.25, 65, 100, false)]
    [InlineData("ASTM F593 CW1", 0.625, 65, 100, false)]
    [InlineData("ASTM F593 CW2", 0.75, 45, 85, false)]
    [InlineData("ASTM F593 CW2", 1.5, 45, 85, false)]
    [InlineData("ASTM F593 A", 0.75, 30, 75, false)]
    [InlineData("AWS D1.1 Type A", 0.25, 49, 61, true)]
    [InlineData("AWS D1.1 Type A", 0.5, 49, 61, true)]
    [InlineData("AWS D1.1 Type B", 0.375, 51, 65, true)]
    [InlineData("AWS D1.1 Type B", 1, 51, 65, true)]
    [InlineData("ASTM A449", 0.25, 92, 120, true)]
    [InlineData("ASTM A449", 1, 92, 120, true)]
    [InlineData("ASTM A449", 1.125, 81, 105, true)]
    [InlineData("ASTM A449", 1.5, 81, 105, true)]
    [InlineData("ASTM A449", 1.75, 58, 90, true)]
    [InlineData("ASTM A449", 3, 58, 90, true)]
    [InlineData("ASTM A354 BD", 2.5, 130, 150, true)]
    [InlineData("ASTM A615 Grade 60", 0.375, 60, 80, true)]
    [InlineData("ASTM A615 Grade 60", 2.257, 60, 80, true)]
    [InlineData("ASTM A706 Grade 60", 0.375, 60, 80, true)]
    [InlineData("ASTM A706 Grade 60", 2.257, 60, 80, true)]
    [InlineData("ASTM A354 BD", 2.75, 115, 140, true)]
    [InlineData("ASTM A193 B8 Class 1", 1, 30, 75, true)]
    [InlineData("ASTM A193 B8M Class 1", 1, 30, 75, true)]
    public void Inch_steels_have_the_specified_values(string designation, double diameter, double yield, double ultimate, bool isDuctile)
    {
        AnchorSteel steel = AnchorSteels.Find(designation, Length.FromInches(diameter));

        Assert.Equal(designation, steel.Designation);
        Assert.Equal(yield, steel.Yield.KilopoundsForcePerSquareInch);
        Assert.Equal(ultimate, steel.Ultimate.KilopoundsForcePerSquareInch);
        Assert.Equal(isDuctile, steel.IsDuctile);
    }

    // Minimum strengths, MPa: ISO 898-1 and ISO 3506-1, read in secondary listings of the tables of mechanical properties.
    [Theory]
    [InlineData("ISO 898-1 4.6", 12, 240, 400, true)]
    [InlineData("ISO 898-1 5.8", 12, 420, 520, false)]
    [InlineData("ISO 898-1 8.8", 16, 640, 800, false)]
    [InlineData("ISO 898-1 8.8", 20, 660, 830, false)]
    [InlineData("ISO 898-1 8.8", 39, 660, 830, false)]
    [InlineData("ISO 898-1 10.9", 24, 940, 1040, false)]
    [InlineData("ISO 3506-1 A2-50", 16, 210, 500, false)]
    [InlineData("ISO 3506-1 A2-70", 16, 450, 700, false)]
    [InlineData("ISO 3506-1 A2-80", 16, 600, 800, false)]
    [InlineData("ISO 3506-1 A4-50", 39, 210, 500, false)]
    [InlineData("ISO 3506-1 A4-70", 24, 450, 700, false)]
    [InlineData("ISO 3506-1 A4-80", 24, 600, 800, false)]
    public void Metric_steels_have_the_specified_values(string designation, double diameter, double yield, double ultimate, bool isDuctile)
    {
        AnchorSteel steel = AnchorSteels.Find(designation, Length.FromMillimeters(diameter));

        Assert.Equal(yield, steel.Yield.Megapascals);
        Assert.Equal(ultimate, steel.Ultimate.Megapascals);
        Assert.Equal(isDuctile, steel.IsDuctile);
    }

    // Elongation and reduction of area, %. F1554 read in a secondary listing, all others from memory; -1: the source states none.
    [Theory]
    [InlineData("ASTM F1554 Grade 36", 0.75, 23, 40)]
    [InlineData("ASTM F1554 Grade 55", 0.75, 21, 30)]
    [InlineData("ASTM F1554 Grade 105", 0.75, 15, 45)]
    [InlineData("ASTM A307", 0.75, 18, -1)]
    [InlineData("ASTM A36", 0.75, 23, -1)]
    [InlineData("ASTM A193 B7", 0.75, 16, 50)]
    [InlineData("ASTM A193 B7", 5, 18, 50)]
    [InlineData("ASTM A449", 0.75, 14, 35)]
    [InlineData("ASTM A354 BD", 0.75, 14, 40)]
    [InlineData("ASTM F593 CW2", 0.75, 25, -1)]
    [InlineData("AWS D1.1 Type A", 0.5, 17, 50)]
    [InlineData("AWS D1.1 Type B", 0.75, 20, 50)]
    [InlineData("ASTM A615 Grade 60", 0.625, 9, -1)]
    [InlineData("ASTM A615 Grade 60", 1, 8, -1)]
    [InlineData("ASTM A706 Grade 60", 0.75, 14, -1)]
    [InlineData("ASTM A706 Grade 60", 0.875, 12, -1)]
    [InlineData("ISO 898-1 8.8", 0.75, 12, 52)]
    [InlineData("ISO 898-1 10.9", 0.75, 9, 48)]
    public void Elongation_and_reduction_of_area(string designation, double inches, double elongation, double reduction)
    {
        AnchorSteel steel = AnchorSteels.Find(designation, Length.FromInches(inches));

        Assert.Equal(elongation / 100, steel.Elongation);
        Assert.Equal(reduction < 0 ? null : reduction / 100, steel.ReductionOfArea);
    }

    // ACI 318-19 chapter 2: elongation of at least 14 % and reduction of area of at least 30 %; ASTM A307, and deformed bars of A615 and A706, by name (from memory).
    // Steels whose standard prints no reduction of area count as ductile only where that is common practice.
    [Fact]
    public void Ductility_follows_the_definition()
    {
        string[] ductileWithoutReductionOfArea = ["ASTM A307", "ASTM A36", "ISO 898-1 4.6", "ASTM A615 Grade 60", "ASTM A706 Grade 60"];
        int seen = 0;
        foreach (string designation in AnchorSteels.Designations)
        {
            for (double diameter = 0.25; diameter <= 7; diameter += 0.125)
            {
                if (!AnchorSteels.TryFind(designation, Length.FromInches(diameter), out AnchorSteel? steel))
                {
                    continue;
                }

                seen++;
                bool byTest = steel.Elongation >= 0.14 && steel.ReductionOfArea >= 0.30;
                Assert.Equal(byTest || ductileWithoutReductionOfArea.Contains(designation), steel.IsDuctile);
                Assert.NotEmpty(steel.Source);
            }
        }

        Assert.True(seen > 400, $"only {seen} steels");
    }

    [Fact]
    public void Every_source_says_whether_it_was_read_or_is_from_memory()
    {
        foreach (string designation in AnchorSteels.Designations)
        {
            Length diameter = designation == "ASTM F593 CW1" ? Length.FromInches(0.5) : Length.FromInches(0.75);
            Assert.Matches("read in a secondary listing|from memory", AnchorSteels.Find(designation, diameter).Source);
        }
    }

    [Theory]
    [InlineData("ISO 898-1 8.8", 16.0, 800)]
    [InlineData("ISO 898-1 8.8", 16.0000000001, 800)]
    [InlineData("ISO 898-1 8.8", 16.001, 830)]
    public void Limit_of_a_range_is_met_within_1e9(string designation, double millimetres, double ultimate) =>
        Assert.Equal(ultimate, AnchorSteels.Find(designation, Length.FromMillimeters(millimetres)).Ultimate.Megapascals);

    [Theory]
    [InlineData("ASTM A193 B7", 64, 125)]
    [InlineData("ASTM A193 B7", 72, 115)]
    [InlineData("ASTM A193 B7", 100, 115)]
    [InlineData("ASTM A193 B7", 180, 100)]
    [InlineData("ASTM F1554 Grade 105", 76, 125)]
    public void Metric_diameters_fall_into_the_group_of_their_standard(string designation, double millimetres, double ultimate) =>
        Assert.Equal(ultimate, AnchorSteels.Find(designation, Length.FromMillimeters(millimetres)).Ultimate.KilopoundsForcePerSquareInch);

    [Theory]
    [InlineData("ASTM F1554 Grade 105", 3.25, "3.25 in", "0.25 in to 3 in for ASTM F1554 Grade 105")]
    [InlineData("ASTM F1554 Grade 36", 0.1875, "0.1875 in", "0.25 in to 4 in for ASTM F1554 Grade 36")]
    [InlineData("ASTM F593 CW1", 0.75, "0.75 in", "0.25 in to 0.625 in for ASTM F593 CW1")]
    [InlineData("ASTM F593 CW2", 0.625, "0.625 in", "0.75 in to 1.5 in for ASTM F593 CW2")]
    [InlineData("ASTM A193 B7", 8.0, "8 in", "at most 180 mm for ASTM A193 B7")]
    [InlineData("AWS D1.1 Type B", 1.25, "1.25 in", "0.375 in to 1 in for AWS D1.1 Type B")]
    [InlineData("ISO 898-1 10.9", 1.75, "1.75 in", "1.6 mm to 39 mm for ISO 898-1 10.9")]
    [InlineData("ISO 3506-1 A4-70", 1.0, "1 in", "1.6 mm to 24 mm for ISO 3506-1 A4-70")]
    [InlineData("ASTM A36", 0.0, "0 in", "greater than 0")]
    [InlineData("ASTM A36", -0.5, "-0.5 in", "greater than 0")]
    public void Diameter_outside_the_standard_gives_one_clear_error(string designation, double diameter, string found, string permitted)
    {
        Length length = Length.FromInches(diameter);

        var error = Assert.Throws<InputException>(() => AnchorSteels.Find(designation, length));

        Assert.Equal("diameter", error.Parameter);
        Assert.Equal(found, error.Found);
        Assert.Equal(permitted, error.Permitted);
        Assert.False(AnchorSteels.TryFind(designation, length, out AnchorSteel? none));
        Assert.Null(none);
    }

    [Theory]
    [InlineData("F1554-36", "F1554-36")]
    [InlineData("astm a36", "astm a36")]
    [InlineData("", "an empty text")]
    [InlineData(null, "an empty text")]
    public void Unknown_designation_gives_one_clear_error(string? designation, string found)
    {
        var error = Assert.Throws<InputException>(() => AnchorSteels.Find(designation!, Length.FromInches(0.75)));

        Assert.Equal("steel", error.Parameter);
        Assert.Equal(found, error.Found);
        Assert.All(AnchorSteels.Designations, known => Assert.Contains(known, error.Permitted, StringComparison.Ordinal));
        Assert.False(AnchorSteels.TryFind(designation, Length.FromInches(0.75), out _));
    }

    [Fact]
    public void Errors_do_not_depend_on_the_culture()
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = new CultureInfo("de-DE");
            var error = Assert.Throws<InputException>(() => AnchorSteels.Find("ASTM F593 CW1", Length.FromInches(0.75)));
            Assert.Equal("diameter: found 0.75 in, permitted: 0.25 in to 0.625 in for ASTM F593 CW1", error.Message);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    // Design strength of anchor rods in tension, kip: AISC Design Guide 1, 2nd edition (2006), Table 3.1, from memory.
    // 0.75 · 0.75 F_u · π/4 d² (AISC 360-05 J3.6): the table outside this project that holds the three ultimate strengths at once.
    [Theory]
    [InlineData(0.625, "10.0", "12.9", "21.6")]
    [InlineData(0.75, "14.4", "18.6", "31.1")]
    [InlineData(0.875, "19.6", "25.4", "42.3")]
    [InlineData(1, "25.6", "33.1", "55.2")]
    [InlineData(1.125, "32.4", "41.9", "69.9")]
    [InlineData(1.25, "40.0", "51.8", "86.3")]
    [InlineData(1.5, "57.7", "74.6", "124")]
    [InlineData(1.75, "78.5", "101", "169")]
    [InlineData(2, null, "133", "221")]
    [InlineData(2.5, "160", "207", "345")]
    [InlineData(3, "231", "298", "497")]
    public void Rod_strengths_of_the_design_guide_follow_from_the_ultimate_strengths(double inches, string? grade36, string grade55, string grade105)
    {
        if (grade36 is not null)
        {
            PrintedValue.Agrees(grade36, DesignTension(inches, "ASTM F1554 Grade 36"));
        }

        PrintedValue.Agrees(grade55, DesignTension(inches, "ASTM F1554 Grade 55"));
        PrintedValue.Agrees(grade105, DesignTension(inches, "ASTM F1554 Grade 105"));
    }

    // The one value of that table that does not agree: 2 in., Grade 36, remembered as 103 kip. 0.75 · 0.75 · 58 · π = 102.49 rounds to 102.
    // Either the guide rounded up or memory errs: look at the page. Kept visible.
    [Fact]
    public void Two_inch_rod_of_grade_36_lies_half_a_kip_below_the_remembered_value() =>
        Assert.Equal(102.494, DesignTension(2, "ASTM F1554 Grade 36"), 0.0005);

    private static double DesignTension(double inches, string designation) =>
        0.75 * 0.75 * AnchorSteels.Find(designation, Length.FromInches(inches)).Ultimate.KilopoundsForcePerSquareInch * Math.PI / 4 * inches * inches;
}
