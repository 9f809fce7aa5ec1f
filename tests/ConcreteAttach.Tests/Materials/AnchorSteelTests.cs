using ConcreteAttach.Materials;
using ConcreteAttach.Quantities;
using UnitsNet;

namespace ConcreteAttach.Tests.Materials;

public sealed class AnchorSteelTests
{
    [Fact]
    public void Own_steel_keeps_what_it_was_given()
    {
        var steel = new AnchorSteel("own rod", Pressure.FromMegapascals(355), Pressure.FromMegapascals(470), isDuctile: true);

        Assert.Equal("own rod", steel.Designation);
        Assert.Equal(355, steel.Yield.Megapascals);
        Assert.Equal(470, steel.Ultimate.Megapascals);
        Assert.True(steel.IsDuctile);
        Assert.Null(steel.Elongation);
        Assert.Null(steel.ReductionOfArea);
        Assert.Equal("given by the user", steel.Source);
        Assert.Equal("own rod", steel.ToString());
    }

    [Theory]
    [InlineData(0.0, 58.0, "yield", "0 ksi", "greater than 0")]
    [InlineData(-36.0, 58.0, "yield", "-36 ksi", "greater than 0")]
    [InlineData(36.0, 0.0, "ultimate", "0 ksi", "greater than 0")]
    [InlineData(36.0, -58.0, "ultimate", "-58 ksi", "greater than 0")]
    [InlineData(58.0, 36.0, "ultimate", "36 ksi", "at least the yield strength, 58 ksi")]
    public void Strength_that_cannot_be_gives_one_clear_error(double yield, double ultimate, string parameter, string found, string permitted)
    {
        var error = Assert.Throws<InputException>(() => new AnchorSteel(
            "own rod", Pressure.FromKilopoundsForcePerSquareInch(yield), Pressure.FromKilopoundsForcePerSquareInch(ultimate), true));

        Assert.Equal(parameter, error.Parameter);
        Assert.Equal(found, error.Found);
        Assert.Equal(permitted, error.Permitted);
    }

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("  ")]
    public void Steel_needs_a_name(string? designation)
    {
        var error = Assert.Throws<InputException>(() => new AnchorSteel(
            designation!, Pressure.FromMegapascals(240), Pressure.FromMegapascals(400), true));

        Assert.Equal("designation", error.Parameter);
    }

    [Fact]
    public void Ultimate_may_equal_yield_also_across_units()
    {
        // 36 ksi is 248.2112625... MPa: the two are one strength, whatever the last bit says.
        var steel = new AnchorSteel("own rod", Pressure.FromKilopoundsForcePerSquareInch(36), Pressure.FromMegapascals(36 * 6.894757293168361), true);

        Assert.Equal(36, steel.Yield.KilopoundsForcePerSquareInch);
    }
}
