using ConcreteAttach.Quantities;
using UnitsNet;
using MeasurementSystem = ConcreteAttach.Quantities.MeasurementSystem;
using QuantityParser = ConcreteAttach.Quantities.QuantityParser;

namespace ConcreteAttach.Tests.Quantities;

/// <summary>
/// Texts and the numbers they must give, to the last bit. The numbers follow from the definitions of the units (1 ft is 12 in,
/// 1 in is 25.4 mm, 1 kip is 1000 lbf, 1 lbf is 0.45359237 kg times 9.80665 m/s²), not from the library.
/// </summary>
public sealed class QuantityParserTests
{
    /// <summary>Text and inches.</summary>
    public static TheoryData<string, double> Lengths => new()
    {
        { "6 in", 6 },
        { "6in", 6 },
        { "  6  in  ", 6 },
        { "+6 in", 6 },
        { "-3.25 in", -3.25 },
        { "- 3.25 in", -3.25 },
        { "0 in", 0 },
        { "-0 in", 0 },
        { ".5 in", 0.5 },
        { "0.1 in", 0.1 },
        { "5/8 in", 0.625 },
        { "1/3 in", 1d / 3 },
        { "0/4 in", 0 },
        { "-5/8 in", -0.625 },
        { "7 1/2 in", 7.5 },
        { "7-1/2 in", 7.5 },
        { "7- 1/2 in", 7.5 },
        { "-7-1/2 in", -7.5 },
        { "1 ft", 12 },
        { "1/2 ft", 6 },
        { "1 1/2 ft", 18 },
        { "1'", 12 },
        { "1.5'", 18 },
        { "6\"", 6 },
        { "6 1/2\"", 6.5 },
        { "1'-6\"", 18 },
        { "1' 6\"", 18 },
        { "1'6\"", 18 },
        { "1' - 6\"", 18 },
        { "1'-6 1/2\"", 18.5 },
        { "1'-6-1/2\"", 18.5 },
        { "1'-1/2\"", 12.5 },
        { "0'-3/4\"", 0.75 },
        { "-1'-6 1/2\"", -18.5 },
        { "10'-0\"", 120 },
        { "152.4 mm", 6 },
        { "25.4 mm", 1 },
        { "2.54 cm", 1 },
        { "0.3048 m", 12 },
        { "12.7 mm", 0.5 },
    };

    [Theory]
    [MemberData(nameof(Lengths))]
    public void Length_in_inches_to_the_last_bit(string text, double inches)
    {
        double read = QuantityParser.Length("x", text).In(MeasurementSystem.PoundInch);

        Assert.Equal(BitConverter.DoubleToInt64Bits(inches), BitConverter.DoubleToInt64Bits(read));
    }

    [Theory]
    [InlineData("6 in", 152.4)]
    [InlineData("1'", 304.8)]
    [InlineData("5/8 in", 15.875)]
    [InlineData("16 mm", 16)]
    [InlineData("1.6 cm", 16)]
    [InlineData("0.016 m", 16)]
    public void Length_in_millimetres_to_the_last_bit(string text, double millimetres) =>
        Assert.Equal(millimetres, QuantityParser.Length("x", text).In(MeasurementSystem.NewtonMillimetre));

    [Theory]
    [InlineData("0.454 in2", 0.454)]
    [InlineData("1 ft2", 144)]
    [InlineData("645.16 mm2", 1)]
    [InlineData("6.4516 cm2", 1)]
    public void Area_in_square_inches(string text, double squareInches) =>
        Assert.Equal(squareInches, QuantityParser.Area("x", text).In(MeasurementSystem.PoundInch));

    [Theory]
    [InlineData("1500 lbf", 1500)]
    [InlineData("10 kip", 10000)]
    [InlineData("-1/2 kip", -500)]
    [InlineData("4.4482216152605 N", 1)]
    [InlineData("4.4482216152605 kN", 1000)]
    public void Force_in_pounds(string text, double pounds) =>
        Assert.Equal(pounds, QuantityParser.Force("x", text).In(MeasurementSystem.PoundInch));

    [Theory]
    [InlineData("4000 psi", 4000)]
    [InlineData("4 ksi", 4000)]
    [InlineData("36 ksi", 36000)]
    [InlineData("6.894757293168361 MPa", 1000)]
    [InlineData("6.894757293168361 N/mm2", 1000)]
    [InlineData("6894.757293168361 kPa", 1000)]
    public void Stress_in_psi(string text, double psi) =>
        Assert.Equal(psi, QuantityParser.Pressure("x", text).In(MeasurementSystem.PoundInch), psi * 1e-15);

    [Theory]
    [InlineData("25 MPa", 25)]
    [InlineData("25 N/mm2", 25)]
    [InlineData("2500 kPa", 2.5)]
    [InlineData("200 GPa", 200000)]
    public void Stress_in_megapascals(string text, double megapascals) =>
        Assert.Equal(megapascals, QuantityParser.Pressure("x", text).In(MeasurementSystem.NewtonMillimetre));

    [Theory]
    [InlineData("3 kip-ft", 36000)]
    [InlineData("3 kip-in", 3000)]
    [InlineData("3 lbf-ft", 36)]
    [InlineData("-3 lbf-in", -3)]
    public void Moment_in_pound_inches(string text, double poundInches) =>
        Assert.Equal(poundInches, QuantityParser.Moment("x", text).In(MeasurementSystem.PoundInch));

    [Theory]
    [InlineData("2 kN-m", 2e6)]
    [InlineData("2 N-m", 2000)]
    [InlineData("2 N-mm", 2)]
    public void Moment_in_newton_millimetres(string text, double newtonMillimetres) =>
        Assert.Equal(newtonMillimetres, QuantityParser.Moment("x", text).In(MeasurementSystem.NewtonMillimetre));

    [Theory]
    [InlineData("110 lb/ft3", 110)]
    public void Density_in_pounds_per_cubic_foot(string text, double pounds) =>
        Assert.Equal(pounds, QuantityParser.Density("x", text).In(MeasurementSystem.PoundInch));

    [Theory]
    [InlineData("1760 kg/m3", 1760)]
    public void Density_in_kilograms_per_cubic_metre(string text, double kilograms) =>
        Assert.Equal(kilograms, QuantityParser.Density("x", text).In(MeasurementSystem.NewtonMillimetre));

    /// <summary>Text that is no length, and a part of what the error offers.</summary>
    public static TheoryData<string, string> NoLengths => new()
    {
        { "", "decimal" },
        { " ", "decimal" },
        { "in", "decimal" },
        { "6", "with its unit" },
        { "6 lb", "in, ft, mm, cm, m" },
        { "6 IN", "in, ft, mm, cm, m" },
        { "6 in.", "in, ft, mm, cm, m" },
        { "6 inch", "in, ft, mm, cm, m" },
        { "6 in2", "in, ft, mm, cm, m" },
        { "6 psi", "in, ft, mm, cm, m" },
        { "6 µm", "in, ft, mm, cm, m" },
        { "6. in", "decimal" },
        { "6,5 in", "decimal" },
        { "1,000 in", "decimal" },
        { "1 000 in", "decimal" },
        { "1'000 in", "decimal" },
        { "1e3 in", "in, ft, mm, cm, m" },
        { "--6 in", "decimal" },
        { "+-6 in", "decimal" },
        { "−6 in", "decimal" },
        { "6-in", "decimal" },
        { "1/0 in", "decimal" },
        { "1/ 2 in", "decimal" },
        { "1 /2 in", "decimal" },
        { "1/2/3 in", "decimal" },
        { "1/-2 in", "decimal" },
        { "1.5/2 in", "decimal" },
        { "1.5 1/2 in", "decimal" },
        { "7 -1/2 in", "decimal" },
        { "1'-6", "decimal" },
        { "1'-6'", "decimal" },
        { "1'6\"in", "decimal" },
        { "'", "decimal" },
        { "\"", "decimal" },
        { "1'-", "decimal" },
        { "1'--6\"", "decimal" },
        { "1/2'", "decimal" },
        { "NaN in", "decimal" },
        { "∞ in", "decimal" },
        { "٣ in", "decimal" },
        { "6\u00A0in", "in, ft, mm, cm, m" },
        { new string('9', 400) + " in", "decimal" },
    };

    [Theory]
    [MemberData(nameof(NoLengths))]
    public void What_is_no_length_is_refused_with_what_is_permitted(string text, string permitted)
    {
        InputException error = Assert.Throws<InputException>(() => QuantityParser.Length("diameter", text));

        Assert.Equal("diameter", error.Parameter);
        Assert.Equal($"\"{text}\"", error.Found);
        Assert.Contains(permitted, error.Permitted, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("6 lb")]
    [InlineData("6 lbs")]
    public void Plain_pounds_are_no_force_and_the_error_offers_lbf(string text)
    {
        InputException error = Assert.Throws<InputException>(() => QuantityParser.Force("N", text));

        Assert.Contains("lbf", error.Permitted, StringComparison.Ordinal);
        Assert.Contains("mass", error.Permitted, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_kind_of_quantity_refuses_the_units_of_the_others()
    {
        Assert.Throws<InputException>(() => QuantityParser.Area("x", "1 in"));
        Assert.Throws<InputException>(() => QuantityParser.Force("x", "1 psi"));
        Assert.Throws<InputException>(() => QuantityParser.Pressure("x", "1 lbf"));
        Assert.Throws<InputException>(() => QuantityParser.Moment("x", "1 kip"));
        Assert.Throws<InputException>(() => QuantityParser.Density("x", "1 lb"));
    }

    [Fact]
    public void A_quantity_keeps_the_unit_it_was_written_in()
    {
        Assert.Equal(UnitsNet.Units.LengthUnit.Millimeter, QuantityParser.Length("x", "16 mm").Unit);
        Assert.Equal(UnitsNet.Units.ForceUnit.KilopoundForce, QuantityParser.Force("x", "6 kip").Unit);
        Assert.Equal("5.5 kip-ft", QuantityText.Format(QuantityParser.Moment("x", "5 1/2 kip-ft")));
    }
}
