using ConcreteAttach.Fasteners;
using ConcreteAttach.Quantities;
using UnitsNet;

namespace ConcreteAttach.Tests.Fasteners;

public sealed class PlateWasherTests
{
    private static readonly Length Inch = Length.FromInches(1);

    // ACI 349.2R-07 Example A4 as stated in a verification script that names it (read): square washer 2.25 in. x 3/8 in. on a 1-1/8 in. bolt,
    // A_brg = 2.25² − π/4 · 1.125² = 4.0685 in²; N_pn = 8 A_brg f'c = 130.19 kip with f'c = 4000 psi.
    [Fact]
    public void Published_washer_bears_at_its_full_width()
    {
        double area = PlateWasher.Square(Length.FromInches(2.25), Length.FromInches(0.375)).BearingArea(Length.FromInches(1.125)).SquareInches;

        PrintedValue.Agrees("4.0685", area);
        PrintedValue.Agrees("130.19", 8 * area * 4);
    }

    [Fact]
    public void Round_washer_is_a_ring()
    {
        double area = PlateWasher.Round(Length.FromInches(3), Length.FromInches(0.375)).BearingArea(Inch).SquareInches;

        Assert.Equal(Math.PI / 4 * 8, area, 1e-12);
    }

    [Fact]
    public void Area_is_in_the_units_of_the_washer()
    {
        Area area = PlateWasher.Square(Length.FromMillimeters(60), Length.FromMillimeters(8)).BearingArea(Inch);

        Assert.Equal(3600 - (Math.PI / 4 * 25.4 * 25.4), area.SquareMillimeters, 1e-9);
        Assert.Equal(UnitsNet.Units.AreaUnit.SquareMillimeter, area.Unit);
    }

    // Independent of the closed form: points of a fine grid over the washer that lie no farther than the thickness from the circle in the flats
    // of a heavy hex nut (F = 1-5/8 in. at 1 in.). From the circle inside the washer to the whole washer.
    [Theory]
    [InlineData(3.0, 0.25)]
    [InlineData(3.0, 0.5)]
    [InlineData(3.0, 0.75)]
    [InlineData(3.0, 1.0)]
    [InlineData(3.0, 1.25)]
    [InlineData(3.0, 1.5)]
    [InlineData(2.0, 0.375)]
    public void Limited_square_washer_agrees_with_counted_points(double side, double thickness)
    {
        const int Steps = 2000;
        double reach = (1.625 / 2) + thickness, cell = side / Steps, counted = 0;
        for (int i = 0; i < Steps; i++)
        {
            for (int j = 0; j < Steps; j++)
            {
                double x = ((i + 0.5) * cell) - (side / 2), y = ((j + 0.5) * cell) - (side / 2);
                counted += (x * x) + (y * y) <= reach * reach ? cell * cell : 0;
            }
        }

        double expected = counted - (Math.PI / 4);
        double area = PlateWasher.Square(Length.FromInches(side), Length.FromInches(thickness))
            .BearingAreaWithinThickness(HeadShape.HeavyHexNut, Inch)!.Value.SquareInches;

        Assert.Equal(expected, area, expected * 1e-3);
    }

    [Fact]
    public void Limited_round_washer_ends_at_its_thickness_from_the_flats()
    {
        // Circle of 1.625 + 2 · 0.25 = 2.125 in. on the thin one; the thick one bears whole.
        double thin = PlateWasher.Round(Length.FromInches(3), Length.FromInches(0.25)).BearingAreaWithinThickness(HeadShape.HeavyHexNut, Inch)!.Value.SquareInches;
        double thick = PlateWasher.Round(Length.FromInches(3), Length.FromInches(0.75)).BearingAreaWithinThickness(HeadShape.HeavyHexNut, Inch)!.Value.SquareInches;

        Assert.Equal(Math.PI / 4 * ((2.125 * 2.125) - 1), thin, 1e-12);
        Assert.Equal(Math.PI / 4 * 8, thick, 1e-12);
    }

    [Fact]
    public void Limited_washer_never_bears_less_than_the_nut_alone()
    {
        double foil = PlateWasher.Square(Length.FromInches(3), Length.FromInches(0.001)).BearingAreaWithinThickness(HeadShape.HeavyHexNut, Inch)!.Value.SquareInches;

        Assert.Equal(HeadTable.BearingArea(HeadShape.HeavyHexNut, Inch)!.Value.SquareInches, foil, 1e-12);
    }

    [Fact]
    public void Limited_washer_needs_a_nut_of_the_table() =>
        Assert.Null(PlateWasher.Square(Length.FromInches(5), Length.FromInches(1)).BearingAreaWithinThickness(HeadShape.HexNut, Length.FromInches(2)));

    [Theory]
    [InlineData(0.0, 0.25, "side", "0 in")]
    [InlineData(-2.0, 0.25, "side", "-2 in")]
    [InlineData(2.0, 0.0, "thickness", "0 in")]
    [InlineData(2.0, -0.25, "thickness", "-0.25 in")]
    public void Square_washer_that_cannot_be_gives_one_clear_error(double side, double thickness, string parameter, string found)
    {
        var error = Assert.Throws<InputException>(() => PlateWasher.Square(Length.FromInches(side), Length.FromInches(thickness)));

        Assert.Equal($"{parameter}: found {found}, permitted: greater than 0", error.Message);
    }

    [Theory]
    [InlineData(0.0, 0.25, "diameter", "0 in")]
    [InlineData(2.0, -1.0, "thickness", "-1 in")]
    public void Round_washer_that_cannot_be_gives_one_clear_error(double diameter, double thickness, string parameter, string found)
    {
        var error = Assert.Throws<InputException>(() => PlateWasher.Round(Length.FromInches(diameter), Length.FromInches(thickness)));

        Assert.Equal($"{parameter}: found {found}, permitted: greater than 0", error.Message);
    }

    [Fact]
    public void Washer_must_be_wider_than_the_rod()
    {
        PlateWasher washer = PlateWasher.Square(Inch, Length.FromInches(0.25));

        var error = Assert.Throws<InputException>(() => washer.BearingArea(Inch));

        Assert.Equal("washer: found 1 in, permitted: wider than the rod, 1 in", error.Message);
    }

    [Fact]
    public void Text_names_shape_and_size()
    {
        Assert.Equal("2.25 in square plate washer, 0.375 in thick", PlateWasher.Square(Length.FromInches(2.25), Length.FromInches(0.375)).ToString());
        Assert.Equal("60 mm round plate washer, 8 mm thick", PlateWasher.Round(Length.FromMillimeters(60), Length.FromMillimeters(8)).ToString());
    }
}
