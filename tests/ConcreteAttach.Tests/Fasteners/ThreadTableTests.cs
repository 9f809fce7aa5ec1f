using ConcreteAttach.Fasteners;
using ConcreteAttach.Materials;
using ConcreteAttach.Quantities;
using UnitsNet;
using UnitsNet.Units;

namespace ConcreteAttach.Tests.Fasteners;

public sealed class ThreadTableTests
{
    // Tensile stress area, in²: ASME B1.1 (printed alike in ASTM F1554 and the AISC Manual), from memory. All 24 sizes.
    [Theory]
    [InlineData("1/4", "0.0318")]
    [InlineData("5/16", "0.0524")]
    [InlineData("3/8", "0.0775")]
    [InlineData("7/16", "0.1063")]
    [InlineData("1/2", "0.1419")]
    [InlineData("9/16", "0.182")]
    [InlineData("5/8", "0.226")]
    [InlineData("3/4", "0.334")]
    [InlineData("7/8", "0.462")]
    [InlineData("1", "0.606")]
    [InlineData("1-1/8", "0.763")]
    [InlineData("1-1/4", "0.969")]
    [InlineData("1-3/8", "1.155")]
    [InlineData("1-1/2", "1.405")]
    [InlineData("1-3/4", "1.90")]
    [InlineData("2", "2.50")]
    [InlineData("2-1/4", "3.25")]
    [InlineData("2-1/2", "4.00")]
    [InlineData("2-3/4", "4.93")]
    [InlineData("3", "5.97")]
    [InlineData("3-1/4", "7.10")]
    [InlineData("3-1/2", "8.33")]
    [InlineData("3-3/4", "9.66")]
    [InlineData("4", "11.08")]
    public void Unified_coarse_areas_agree_with_the_printed_table(string size, string printed)
    {
        Area area = ThreadTable.TensileStressArea(ScrewThread.UnifiedCoarse, PrintedValue.Inches(size));

        Assert.Equal(AreaUnit.SquareInch, area.Unit);
        PrintedValue.Agrees(printed, area.Value);
    }

    // Tensile stress area of the 8-thread series, in²: ASME B1.1 as printed in ASTM A354 and A449, from memory.
    // 1-5/8 and 1-7/8 in. are left out: I do not remember their printed values well enough.
    [Theory]
    [InlineData("1-1/8", "0.790")]
    [InlineData("1-1/4", "1.000")]
    [InlineData("1-1/2", "1.492")]
    [InlineData("1-3/4", "2.08")]
    [InlineData("2", "2.77")]
    [InlineData("2-1/4", "3.56")]
    [InlineData("2-1/2", "4.44")]
    [InlineData("2-3/4", "5.43")]
    [InlineData("3", "6.51")]
    public void Eight_thread_areas_agree_with_the_printed_table(string size, string printed) =>
        PrintedValue.Agrees(printed, ThreadTable.TensileStressArea(ScrewThread.Unified8, PrintedValue.Inches(size)).SquareInches);

    // The one size of the 8-thread series that does not agree: 1-3/8 in. is printed as 1.233 in², the formula gives 1.2335005, which rounds
    // to 1.234. Kept visible: it lies 5e-7 in² past half a unit.
    [Fact]
    public void Eight_thread_area_of_1_3_8_is_just_past_the_printed_value() =>
        Assert.Equal(1.2335005, ThreadTable.TensileStressArea(ScrewThread.Unified8, Length.FromInches(1.375)).SquareInches, 5e-8);

    // Nominal stress area, mm²: M6 to M39 read in a secondary listing of ISO 898-1 ("Minimum Ultimate Tensile Loads, metric coarse
    // pitch thread"); M5 and M42 to M64 from memory of general tables, which print three figures there.
    [Theory]
    [InlineData(5, "14.2")]
    [InlineData(6, "20.1")]
    [InlineData(8, "36.6")]
    [InlineData(10, "58.0")]
    [InlineData(12, "84.3")]
    [InlineData(14, "115")]
    [InlineData(16, "157")]
    [InlineData(18, "192")]
    [InlineData(20, "245")]
    [InlineData(22, "303")]
    [InlineData(24, "353")]
    [InlineData(27, "459")]
    [InlineData(30, "561")]
    [InlineData(33, "694")]
    [InlineData(36, "817")]
    [InlineData(39, "976")]
    [InlineData(42, "112E1")]
    [InlineData(45, "131E1")]
    [InlineData(48, "147E1")]
    [InlineData(52, "176E1")]
    [InlineData(56, "203E1")]
    [InlineData(60, "236E1")]
    [InlineData(64, "268E1")]
    public void Iso_coarse_areas_agree_with_the_printed_table(double millimetres, string printed)
    {
        Area area = ThreadTable.TensileStressArea(ScrewThread.IsoCoarse, Length.FromMillimeters(millimetres));

        Assert.Equal(AreaUnit.SquareMillimeter, area.Unit);
        PrintedValue.Agrees(printed, area.Value);
    }

    // ACI 349.2R-07 Example A4 as stated in a verification script that names it (read): 1-1/8 in., A_se = 492.4334 mm².
    [Fact]
    public void Area_of_the_published_deep_bolt() =>
        PrintedValue.Agrees("492.4334", ThreadTable.TensileStressArea(ScrewThread.UnifiedCoarse, Length.FromInches(1.125)).SquareInches * 25.4 * 25.4);

    // Minimum ultimate tensile loads, N, of ISO 898-1, read in a secondary listing. The standard multiplies the area as it prints it, to three
    // figures, by the minimum strength. So this holds the areas and the strengths of four classes at once.
    [Theory]
    [InlineData(10, "232E2", "302E2", "464E2", "603E2")]
    [InlineData(12, "337E2", "438E2", "674E2", "877E2")]
    [InlineData(16, "628E2", "816E2", null, "163E3")]
    [InlineData(20, "980E2", "127E3", "203E3", "255E3")]
    [InlineData(24, "141E3", "184E3", "293E3", "367E3")]
    [InlineData(30, "224E3", "292E3", "466E3", "583E3")]
    [InlineData(36, "327E3", "425E3", "678E3", "850E3")]
    public void Minimum_ultimate_loads_of_the_standard(double millimetres, string class46, string class58, string? class88, string class109)
    {
        PrintedValue.Agrees(class46, Load(millimetres, "ISO 898-1 4.6"));
        PrintedValue.Agrees(class58, Load(millimetres, "ISO 898-1 5.8"));
        PrintedValue.Agrees(class109, Load(millimetres, "ISO 898-1 10.9"));
        if (class88 is not null)
        {
            PrintedValue.Agrees(class88, Load(millimetres, "ISO 898-1 8.8"));
        }
    }

    // The one load of the listing that does not agree: M16 8.8 is printed as 125 000 N, but 157 · 800 = 125 600 N rounds to 126 000.
    // The listing cuts it off. Kept visible: we are 600 N above, where half a unit is 500 N.
    [Fact]
    public void M16_of_class_8_8_lies_600_N_above_the_printed_load() =>
        Assert.Equal(125_000 + 600, Load(16, "ISO 898-1 8.8"), 1e-6);

    // Constructed, no publication: N_sa = A_se f_uta with f_uta ≤ min(1.9 f_ya, 125 ksi), A_se rounded as printed; kip.
    [Theory]
    [InlineData("ASTM F1554 Grade 36", "3/4", "19.37")]
    [InlineData("ASTM F1554 Grade 55", "3/4", "25.05")]
    [InlineData("ASTM F1554 Grade 105", "3/4", "41.75")]
    [InlineData("ASTM A193 B7", "3/4", "41.75")]
    [InlineData("ASTM F593 CW2", "3/4", "28.39")]
    [InlineData("ASTM F593 CW1", "5/8", "22.60")]
    [InlineData("ASTM F593 A", "3/4", "19.04")]
    public void Steel_strength_of_a_rod_in_kip(string designation, string size, string expected)
    {
        Length diameter = PrintedValue.Inches(size);
        AnchorSteel steel = AnchorSteels.Find(designation, diameter);
        double area = Math.Round(ThreadTable.TensileStressArea(ScrewThread.UnifiedCoarse, diameter).SquareInches, 3);
        double ultimate = Math.Min(
            steel.Ultimate.KilopoundsForcePerSquareInch, Math.Min(1.9 * steel.Yield.KilopoundsForcePerSquareInch, 125));

        PrintedValue.Agrees(expected, area * ultimate);
    }

    // Constructed, as above; f_uta ≤ min(1.9 f_ya, 860 MPa); kN.
    [Theory]
    [InlineData("ISO 898-1 5.8", 16, "81.6")]
    [InlineData("ISO 898-1 8.8", 20, "203.4")]
    [InlineData("ISO 898-1 10.9", 20, "210.7")]
    [InlineData("ISO 3506-1 A4-70", 16, "109.9")]
    [InlineData("ISO 3506-1 A4-50", 16, "62.6")]
    public void Steel_strength_of_a_rod_in_kN(string designation, double millimetres, string expected)
    {
        Length diameter = Length.FromMillimeters(millimetres);
        AnchorSteel steel = AnchorSteels.Find(designation, diameter);
        double area = Math.Round(ThreadTable.TensileStressArea(ScrewThread.IsoCoarse, diameter).SquareMillimeters, 0);
        double ultimate = Math.Min(steel.Ultimate.Megapascals, Math.Min(1.9 * steel.Yield.Megapascals, 860));

        PrintedValue.Agrees(expected, area * ultimate / 1000);
    }

    [Theory]
    [InlineData(0.5, ScrewThread.UnifiedCoarse)]
    [InlineData(1.125, ScrewThread.UnifiedCoarse)]
    [InlineData(1.625, null)]
    [InlineData(0.55, null)]
    [InlineData(4.25, null)]
    [InlineData(0.0, null)]
    [InlineData(-0.5, null)]
    public void Thread_is_inferred_from_an_inch_diameter(double inches, ScrewThread? expected) =>
        Assert.Equal(expected, ThreadTable.Infer(Length.FromInches(inches)));

    [Theory]
    [InlineData(16, ScrewThread.IsoCoarse)]
    [InlineData(64, ScrewThread.IsoCoarse)]
    [InlineData(12.7, ScrewThread.UnifiedCoarse)]
    [InlineData(11.1125, ScrewThread.UnifiedCoarse)]
    [InlineData(12.70001, ScrewThread.UnifiedCoarse)]
    [InlineData(12.7001, null)]
    [InlineData(15, null)]
    public void Thread_is_inferred_from_a_metric_diameter(double millimetres, ScrewThread? expected) =>
        Assert.Equal(expected, ThreadTable.Infer(Length.FromMillimeters(millimetres)));

    [Fact]
    public void Unit_of_the_diameter_does_not_matter()
    {
        Area inches = ThreadTable.TensileStressArea(ScrewThread.UnifiedCoarse, Length.FromInches(0.75));

        Assert.Equal(inches.SquareInches, ThreadTable.TensileStressArea(ScrewThread.UnifiedCoarse, Length.FromMillimeters(19.05)).SquareInches);
        Assert.Equal(inches.SquareInches, ThreadTable.TensileStressArea(ScrewThread.UnifiedCoarse, Length.FromCentimeters(1.905)).SquareInches);
        Assert.Equal(inches.SquareInches, ThreadTable.TensileStressArea(ScrewThread.UnifiedCoarse, Length.FromFeet(0.0625)).SquareInches);
    }

    [Fact]
    public void One_inch_has_8_threads_in_both_series() => Assert.Equal(
        ThreadTable.TensileStressArea(ScrewThread.UnifiedCoarse, Length.FromInches(1)).SquareInches,
        ThreadTable.TensileStressArea(ScrewThread.Unified8, Length.FromInches(1)).SquareInches);

    [Fact]
    public void Every_table_rises_with_the_diameter()
    {
        foreach (ScrewThread thread in Enum.GetValues<ScrewThread>())
        {
            double before = 0, areaBefore = 0;
            foreach (Length diameter in ThreadTable.Diameters(thread))
            {
                double area = ThreadTable.TensileStressArea(thread, diameter).SquareMillimeters;
                Assert.True(diameter.Millimeters > before && area > areaBefore, $"{thread} {diameter.Value}");
                Assert.True(area < Math.PI / 4 * diameter.Millimeters * diameter.Millimeters);
                (before, areaBefore) = (diameter.Millimeters, area);
            }
        }

        Assert.Equal(24, ThreadTable.Diameters(ScrewThread.UnifiedCoarse).Count);
        Assert.Equal(23, ThreadTable.Diameters(ScrewThread.IsoCoarse).Count);
    }

    [Fact]
    public void Names_and_threads_map_both_ways()
    {
        Assert.Equal(["8UN", "ISO", "UNC"], ThreadTable.Names.Keys.Order(StringComparer.Ordinal));
        Assert.All(ThreadTable.Names, pair => Assert.Equal(pair.Key, ThreadTable.NameOf(pair.Value)));
        Assert.All(Enum.GetValues<ScrewThread>(), thread => Assert.Contains("from memory", ThreadTable.Source(thread), StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(ScrewThread.UnifiedCoarse, 0.55, "0.55 in", "a size of the UNC thread: 0.25, 0.3125, 0.375,", " in")]
    [InlineData(ScrewThread.Unified8, 0.75, "0.75 in", "a size of the 8UN thread: 1, 1.125, 1.25,", " in")]
    [InlineData(ScrewThread.IsoCoarse, 0.75, "0.75 in", "a size of the ISO thread: 5, 6, 8,", " mm")]
    [InlineData(ScrewThread.UnifiedCoarse, -0.5, "-0.5 in", "a size of the UNC thread", " in")]
    public void Size_that_the_thread_has_not_gives_one_clear_error(ScrewThread thread, double inches, string found, string permitted, string unit)
    {
        var error = Assert.Throws<InputException>(() => ThreadTable.TensileStressArea(thread, Length.FromInches(inches)));

        Assert.Equal("diameter", error.Parameter);
        Assert.Equal(found, error.Found);
        Assert.StartsWith(permitted, error.Permitted, StringComparison.Ordinal);
        Assert.EndsWith(unit, error.Permitted, StringComparison.Ordinal);
    }

    [Fact]
    public void Thread_that_does_not_exist_gives_one_clear_error()
    {
        var error = Assert.Throws<InputException>(() => ThreadTable.TensileStressArea((ScrewThread)7, Length.FromInches(1)));

        Assert.Equal("thread: found 7, permitted: UNC, 8UN, ISO", error.Message);
    }

    private static double Load(double millimetres, string designation)
    {
        Length diameter = Length.FromMillimeters(millimetres);
        double area = ThreadTable.TensileStressArea(ScrewThread.IsoCoarse, diameter).SquareMillimeters;
        return Math.Round(area, area < 100 ? 1 : 0) * AnchorSteels.Find(designation, diameter).Ultimate.Megapascals;
    }
}
