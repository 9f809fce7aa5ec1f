using ConcreteAttach.Materials;
using ConcreteAttach.Quantities;

namespace ConcreteAttach.Tests.Materials;

public sealed class DeformedBarTests
{
    /// <summary>The standard rounds areas to 0.01 in2; each is that of a circle of the nominal diameter within it.</summary>
    [Fact]
    public void Areas_are_those_of_the_nominal_diameters()
    {
        Assert.Equal(11, DeformedBar.Sizes.Length);
        Assert.All(DeformedBar.Sizes, bar => Assert.Equal(Math.PI / 4 * bar.Diameter.Inches * bar.Diameter.Inches, bar.Area.SquareInches, 0.0055));
    }

    /// <summary>Up to No. 8 the number is the eighths of an inch; from No. 9 on the bars have the areas of squares of 1, 1-1/8, 1-1/4, 1-1/2 and 2 in. (history of the sizes, from memory).</summary>
    [Theory]
    [InlineData("No. 9", 1)]
    [InlineData("No. 10", 1.125)]
    [InlineData("No. 11", 1.25)]
    [InlineData("No. 14", 1.5)]
    [InlineData("No. 18", 2)]
    public void Large_bars_have_the_areas_of_squares(string designation, double side) =>
        Assert.Equal(side * side, DeformedBar.Find(designation).Area.SquareInches, 0.0055);

    [Theory]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(5)]
    [InlineData(6)]
    [InlineData(7)]
    [InlineData(8)]
    public void Small_bars_are_so_many_eighths(int number) =>
        Assert.Equal(number / 8.0, DeformedBar.Find(FormattableString.Invariant($"No. {number}")).Diameter.Inches);

    [Theory]
    [InlineData("No. 12")]
    [InlineData("4")]
    [InlineData("")]
    public void Another_size_is_refused_with_the_list(string designation)
    {
        InputException error = Assert.Throws<InputException>(() => DeformedBar.Find(designation));
        Assert.Equal("bar", error.Parameter);
        Assert.Contains("No. 18", error.Permitted, StringComparison.Ordinal);
    }
}
