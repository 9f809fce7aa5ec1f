using ConcreteAttach.Fasteners;
using ConcreteAttach.Materials;
using ConcreteAttach.Quantities;
using UnitsNet;

namespace ConcreteAttach.Tests.Fasteners;

public sealed class CastInFastenerTests
{
    private static readonly Length FiveEighths = Length.FromInches(0.625);
    private static readonly Length EightInches = Length.FromInches(8);
    private static readonly AnchorSteel Grade36 = AnchorSteels.Find("ASTM F1554 Grade 36", FiveEighths);
    private static readonly AnchorSteel Stud = AnchorSteels.Find("AWS D1.1 Type B", Length.FromInches(0.5));

    public static TheoryData<string, CastInFastener> Kinds => new()
    {
        { "headed bolt", new HeadedBolt(FiveEighths, Grade36, EightInches) },
        { "threaded rod with nut", new ThreadedRodWithNut(FiveEighths, Grade36, EightInches) },
        { "hooked bolt", new HookedBolt(FiveEighths, Grade36, EightInches, Length.FromInches(2.5)) },
        { "headed stud", new HeadedStud(FiveEighths, Grade36, EightInches) },
    };

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Kind_is_the_word_of_the_contract(string kind, CastInFastener fastener)
    {
        Assert.Equal(kind, fastener.Kind);
        Assert.False(fastener.IsTorqued);
        Assert.False(fastener.HasGroutPad);
        Assert.Equal($"{kind} 0.625 in, ASTM F1554 Grade 36", fastener.ToString());
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void What_was_given_comes_before_the_tables(string kind, CastInFastener fastener)
    {
        CastInFastener given = fastener with { TensileArea = Area.FromSquareInches(0.2), ShearArea = Area.FromSquareInches(0.3) };

        Assert.Equal(kind, given.Kind);
        Assert.Equal(0.2, given.ResolveTensileArea(out string? tensile)!.Value.SquareInches);
        Assert.Equal(0.3, given.ResolveShearArea(out string? shear)!.Value.SquareInches);
        Assert.Null(tensile);
        Assert.Null(shear);
    }

    // 5/8 in. hex head: the areas 0.226 and 0.454 in² stand in Example 34.1 of the PCA Notes on ACI 318-05, from memory.
    [Fact]
    public void Headed_bolt_takes_its_areas_from_the_tables_and_says_so()
    {
        var bolt = new HeadedBolt(FiveEighths, Grade36, EightInches);

        PrintedValue.Agrees("0.226", bolt.ResolveTensileArea(out string? tensile)!.Value.SquareInches);
        PrintedValue.Agrees("0.226", bolt.ResolveShearArea(out string? shear)!.Value.SquareInches);
        PrintedValue.Agrees("0.454", bolt.ResolveBearingArea(out string? bearing)!.Value.SquareInches);
        Assert.Equal("tensile area of the UNC thread: 0.2260 in2, thread inferred from the diameter 0.625 in", tensile);
        Assert.Equal("shear area as the tensile area: 0.2260 in2", shear);
        Assert.Equal("bearing area of the hex head from ASME B18.2.1: 0.4544 in2", bearing);
        Assert.Equal(27d / 64, bolt.ResolveHeadHeight()!.Value.Inches);
    }

    [Fact]
    public void Head_of_a_bolt_can_be_another()
    {
        var bolt = new HeadedBolt(FiveEighths, Grade36, EightInches) { Head = HeadShape.HeavyHex };

        PrintedValue.Agrees("0.671", bolt.ResolveBearingArea(out string? assumption)!.Value.SquareInches);
        Assert.StartsWith("bearing area of the heavy hex head from ASME B18.2.1", assumption, StringComparison.Ordinal);
        PrintedValue.Agrees("0.572", (bolt with { Head = HeadShape.Square }).ResolveBearingArea(out _)!.Value.SquareInches);
    }

    [Fact]
    public void Bearing_area_that_was_given_is_taken()
    {
        var bolt = new HeadedBolt(FiveEighths, Grade36, EightInches) { BearingArea = Area.FromSquareInches(0.689) };

        Assert.Equal(0.689, bolt.ResolveBearingArea(out string? assumption)!.Value.SquareInches);
        Assert.Null(assumption);
    }

    [Fact]
    public void Thread_that_was_given_is_taken()
    {
        var rod = new ThreadedRodWithNut(Length.FromInches(1.5), Grade36, EightInches) { Thread = ScrewThread.Unified8 };

        PrintedValue.Agrees("1.492", rod.ResolveTensileArea(out string? assumption)!.Value.SquareInches);
        Assert.Equal("tensile area of the 8UN thread: 1.492 in2", assumption);
        PrintedValue.Agrees("1.405", (rod with { Thread = null }).ResolveTensileArea(out _)!.Value.SquareInches);
    }

    [Fact]
    public void Metric_bolt_is_resolved_in_metric_units()
    {
        AnchorSteel steel = AnchorSteels.Find("ISO 898-1 8.8", Length.FromMillimeters(20));
        var bolt = new HeadedBolt(Length.FromMillimeters(20), steel, Length.FromMillimeters(200));

        Assert.Equal("245", bolt.ResolveTensileArea(out string? tensile)!.Value.Value.ToString("F0", System.Globalization.CultureInfo.InvariantCulture));
        Assert.Equal("tensile area of the ISO thread: 244.8 mm2, thread inferred from the diameter 20 mm", tensile);
        _ = bolt.ResolveBearingArea(out string? bearing);
        Assert.Equal("bearing area of the hex head from ISO 4014 / ISO 4017: 465.3 mm2", bearing);
    }

    [Fact]
    public void Diameter_of_no_table_leaves_the_areas_unknown()
    {
        var bolt = new HeadedBolt(Length.FromInches(0.6), Grade36, EightInches);

        Assert.Null(bolt.ResolveTensileArea(out string? tensile));
        Assert.Null(bolt.ResolveShearArea(out string? shear));
        Assert.Null(bolt.ResolveBearingArea(out string? bearing));
        Assert.Null(bolt.ResolveHeadHeight());
        Assert.Null(tensile);
        Assert.Null(shear);
        Assert.Null(bearing);
    }

    [Fact]
    public void Thread_that_has_not_the_diameter_gives_one_clear_error()
    {
        var bolt = new HeadedBolt(Length.FromMillimeters(16), Grade36, EightInches) { Thread = ScrewThread.UnifiedCoarse };

        var error = Assert.Throws<InputException>(() => bolt.ResolveTensileArea(out _));

        Assert.Equal("diameter", error.Parameter);
        Assert.Equal("16 mm", error.Found);
    }

    [Fact]
    public void Rod_bears_on_its_nut()
    {
        var rod = new ThreadedRodWithNut(Length.FromInches(1), Grade36, EightInches);

        PrintedValue.Agrees("1.163", rod.ResolveBearingArea(out string? hex)!.Value.SquareInches);
        Assert.Equal("bearing area of the hex nut from ASME B18.2.2: 1.163 in2", hex);
        Assert.Equal(55d / 64, rod.ResolveHeadHeight()!.Value.Inches);

        ThreadedRodWithNut heavy = rod with { Nut = HeadShape.HeavyHexNut };
        PrintedValue.Agrees("1.501", heavy.ResolveBearingArea(out _)!.Value.SquareInches);
        Assert.Equal(63d / 64, heavy.ResolveHeadHeight()!.Value.Inches);
    }

    // ACI 349.2R-07 Example A4, washer 2.25 in. x 3/8 in., as in PlateWasherTests.
    [Fact]
    public void Rod_bears_on_its_washer()
    {
        var rod = new ThreadedRodWithNut(Length.FromInches(1.125), Grade36, Length.FromInches(17.57))
        {
            Nut = HeadShape.HeavyHexNut, Washer = PlateWasher.Square(Length.FromInches(2.25), Length.FromInches(0.375)),
        };

        PrintedValue.Agrees("4.0685", rod.ResolveBearingArea(out string? whole)!.Value.SquareInches);
        Assert.Equal("bearing area of the 2.25 in square plate washer, less the gross shank: 4.068 in2", whole);
        Assert.Equal(1 + (7d / 64) + 0.375, rod.ResolveHeadHeight()!.Value.Inches, 1e-12);

        double limited = (rod with { IsWasherLimitedByThickness = true }).ResolveBearingArea(out string? part)!.Value.SquareInches;
        Assert.InRange(limited, 1.851, 4.0685);
        Assert.StartsWith("bearing area of the 2.25 in square plate washer within its thickness from the heavy hex nut", part, StringComparison.Ordinal);
    }

    // The full section of a 1/2 in. stud, 0.19635 in²: ACI 349.2R-07 Example A1, N_sa = 65 · 0.19635 = 12.7627 kip (read in a verification script
    // that names the example).
    [Fact]
    public void Stud_has_its_full_section()
    {
        var stud = new HeadedStud(Length.FromInches(0.5), Stud, Length.FromInches(4.69));

        double area = stud.ResolveTensileArea(out string? assumption)!.Value.SquareInches;
        PrintedValue.Agrees("12.7627", area * Stud.Ultimate.KilopoundsForcePerSquareInch);
        Assert.Equal("tensile area of the stud is its full section: 0.1963 in2", assumption);
        Assert.Equal(area, stud.ResolveShearArea(out _)!.Value.SquareInches);
        PrintedValue.Agrees("0.589", stud.ResolveBearingArea(out string? bearing)!.Value.SquareInches);
        Assert.Equal("bearing area of the stud head from AWS D1.1: 0.5890 in2", bearing);
        Assert.Equal(9d / 32, stud.ResolveHeadHeight()!.Value.Inches);
    }

    [Fact]
    public void Threaded_stud_has_the_area_of_its_thread()
    {
        var stud = new HeadedStud(Length.FromInches(0.5), Stud, EightInches) { Thread = ScrewThread.UnifiedCoarse };

        PrintedValue.Agrees("0.1419", stud.ResolveTensileArea(out _)!.Value.SquareInches);
    }

    [Fact]
    public void Hooked_bolt_has_a_hook_and_no_bearing_area()
    {
        var bolt = new HookedBolt(FiveEighths, Grade36, EightInches, Length.FromInches(2.5)) { Hook = HookShape.J };

        Assert.Null(bolt.ResolveBearingArea(out string? assumption));
        Assert.Null(assumption);
        Assert.Equal(2.5, bolt.HookExtension.Inches);
        Assert.Equal(0.625, bolt.ResolveHeadHeight()!.Value.Inches);
        Assert.Equal(HookShape.L, new HookedBolt(FiveEighths, Grade36, EightInches, Length.FromInches(2.5)).Hook);
    }

    public static TheoryData<string, string, Func<double, object>> Positive => new()
    {
        { "diameter", "in", value => new HeadedBolt(Length.FromInches(value), Grade36, EightInches) },
        { "diameter", "in", value => new ThreadedRodWithNut(Length.FromInches(value), Grade36, EightInches) },
        { "diameter", "in", value => new HookedBolt(Length.FromInches(value), Grade36, EightInches, FiveEighths) },
        { "diameter", "in", value => new HeadedStud(Length.FromInches(value), Grade36, EightInches) },
        { "diameter", "in", value => new HeadedBolt(FiveEighths, Grade36, EightInches) with { Diameter = Length.FromInches(value) } },
        { "effectiveEmbedment", "in", value => new HeadedBolt(FiveEighths, Grade36, Length.FromInches(value)) },
        { "tensileArea", "in2", value => new HeadedBolt(FiveEighths, Grade36, EightInches) { TensileArea = Area.FromSquareInches(value) } },
        { "shearArea", "in2", value => new HeadedBolt(FiveEighths, Grade36, EightInches) { ShearArea = Area.FromSquareInches(value) } },
        { "bearingArea", "in2", value => new HeadedBolt(FiveEighths, Grade36, EightInches) { BearingArea = Area.FromSquareInches(value) } },
        { "hookExtension", "in", value => new HookedBolt(FiveEighths, Grade36, EightInches, Length.FromInches(value)) },
        { "thickness", "in", value => new WeldedPlate(Length.FromInches(value), true) },
    };

    // NaN and infinity never come this far: UnitsNet 5.75.1 itself refuses to make such a quantity.
    [Theory]
    [MemberData(nameof(Positive))]
    public void Value_that_cannot_be_gives_one_clear_error(string parameter, string unit, Func<double, object> create)
    {
        foreach (double value in new[] { -0.5, 0 })
        {
            var error = Assert.Throws<InputException>(() => create(value));

            string found = value.ToString("R", System.Globalization.CultureInfo.InvariantCulture);
            Assert.Equal($"{parameter}: found {found} {unit}, permitted: greater than 0", error.Message);
        }

        Assert.NotNull(create(1));
    }

    public static TheoryData<string, Func<object>> Impossible => new()
    {
        { "steel: found nothing, permitted: an anchor steel", () => new HeadedBolt(FiveEighths, null!, EightInches) },
        {
            "head: found stud head, permitted: hex head, heavy hex head, square head",
            () => new HeadedBolt(FiveEighths, Grade36, EightInches) { Head = HeadShape.StudHead }
        },
        {
            "head: found 99, permitted: hex head, heavy hex head, square head",
            () => new HeadedBolt(FiveEighths, Grade36, EightInches) { Head = (HeadShape)99 }
        },
        {
            "nut: found hex head, permitted: hex nut, heavy hex nut",
            () => new ThreadedRodWithNut(FiveEighths, Grade36, EightInches) { Nut = HeadShape.Hex }
        },
        {
            "washer: found 0.5 in, permitted: wider than the rod, 0.625 in",
            () => new ThreadedRodWithNut(FiveEighths, Grade36, EightInches) { Washer = PlateWasher.Square(Length.FromInches(0.5), FiveEighths) }
        },
        {
            "thread: found 9, permitted: UNC, 8UN, ISO",
            () => new HeadedBolt(FiveEighths, Grade36, EightInches) { Thread = (ScrewThread)9 }
        },
        {
            "hook: found 5, permitted: L, J",
            () => new HookedBolt(FiveEighths, Grade36, EightInches, FiveEighths) { Hook = (HookShape)5 }
        },
    };

    [Theory]
    [MemberData(nameof(Impossible))]
    public void What_cannot_be_gives_one_clear_error(string message, Func<object> create) =>
        Assert.Equal(message, Assert.Throws<InputException>(create).Message);

    [Fact]
    public void Welded_plate_keeps_what_it_was_given()
    {
        var stud = new HeadedStud(Length.FromInches(0.5), Stud, EightInches) { WeldedToPlate = new WeldedPlate(Length.FromInches(0.5), true) };

        Assert.Equal(0.5, stud.WeldedToPlate!.Thickness.Inches);
        Assert.True(stud.WeldedToPlate.HasCornerReinforcement);
        Assert.Equal("plate 0.5 in thick, with corner reinforcement", stud.WeldedToPlate.ToString());
    }
}
