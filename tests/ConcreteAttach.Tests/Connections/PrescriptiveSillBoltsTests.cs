using ConcreteAttach.Connections;
using ConcreteAttach.Quantities;
using UnitsNet;
using static ConcreteAttach.Tests.Nds.Wood;

namespace ConcreteAttach.Tests.Connections;

/// <summary>
/// Prescriptive bolts of sills, IRC R403.1.6. The numbers of the rule (1/2 in., 7 in., 6 ft, two bolts, 12 in., 7 diameters) were read in a secondary source, an answer of a wood council to a frequent question; the
/// middle third is from memory.
/// </summary>
public sealed class PrescriptiveSillBoltsTests
{
    /// <summary>By hand: 12 in. from each end, and no more than 72 in. between.</summary>
    [Theory]
    [InlineData(240, 72, new double[] { 12, 84, 156, 228 })]
    [InlineData(96, 72, new double[] { 12, 84 })]
    [InlineData(96.5, 72, new double[] { 12, 48.25, 84.5 })]
    [InlineData(120, 48, new double[] { 12, 60, 108 })]
    [InlineData(168, 48, new double[] { 12, 60, 108, 156 })]
    [InlineData(30, 72, new double[] { 7.5, 22.5 })]
    public void Fewest_bolts(double length, double spacing, double[] places) =>
        Assert.Equal(places, PrescriptiveSillBolts.Places(In(length), In(0.5), In(spacing)).Select(p => Math.Round(p.Inches, 9)));

    [Fact]
    public void Places_keep_every_rule_and_one_bolt_fewer_breaks_the_spacing()
    {
        var random = new Random(7);
        for (int i = 0; i < 2_000; i++)
        {
            double length = 24.1 + (600 * random.NextDouble()), d = 0.5 + (0.5 * random.NextDouble());
            Length spacing = random.Next(2) == 0 ? PrescriptiveSillBolts.LargestSpacing : PrescriptiveSillBolts.LargestSpacingAboveTwoStories;
            var places = PrescriptiveSillBolts.Places(In(length), In(d), spacing);

            Assert.All(PrescriptiveSillBolts.Check(In(length), In(5.5), places, In(2.75), In(d), In(7), spacing), rule => Assert.True(rule.IsMet, $"{rule} of {length:R}"));
            Assert.Equal(length, places[0].Inches + places[^1].Inches, 1e-9);
            Assert.True(places.Length == 2 || (places[^1] - places[0]).Inches / (places.Length - 2) > spacing.Inches);
        }
    }

    [Theory]
    [InlineData("Diameter", 0.49, 7, 1.75, new[] { 12.0, 84 })]
    [InlineData("Length in the concrete", 0.5, 6.9, 1.75, new[] { 12.0, 84 })]
    [InlineData("Spacing", 0.5, 7, 1.75, new[] { 11.0, 84 })]
    [InlineData("Bolts in the piece", 0.5, 7, 1.75, new[] { 12.0 })]
    [InlineData("First bolt from its end", 0.5, 7, 1.75, new[] { 3.4, 50, 84 })]
    [InlineData("First bolt from its end", 0.5, 7, 1.75, new[] { 12.1, 84 })]
    [InlineData("Last bolt from its end", 0.5, 7, 1.75, new[] { 12.0, 50, 93 })]
    [InlineData("Middle third of the width", 0.5, 7, 1.1, new[] { 12.0, 84 })]
    [InlineData(null, 0.5, 7, 1.2, new[] { 84.0, 12 })]
    public void Each_rule_can_be_broken(string? broken, double diameter, double embedment, double fromEdge, double[] places)
    {
        var rules = PrescriptiveSillBolts.Check(In(96), In(3.5), places.Select(In), In(fromEdge), In(diameter), In(embedment));

        Assert.Equal(7, rules.Length);
        Assert.Equal(broken is null, rules.All(r => r.IsMet));
        Assert.True(broken is null || !rules.Single(r => r.Name == broken).IsMet);
    }

    [Fact]
    public void Bad_input_is_one_error()
    {
        Refused("pieceLength", () => PrescriptiveSillBolts.Places(In(24), In(0.5)));
        Refused("diameter", () => PrescriptiveSillBolts.Places(In(96), In(0.4)));
        Refused("diameter", () => PrescriptiveSillBolts.Places(In(96), In(1.8)));
        Refused("largestSpacing", () => PrescriptiveSillBolts.Places(In(96), In(0.5), In(0)));
        Refused("places", () => PrescriptiveSillBolts.Check(In(96), In(3.5), [In(96)], In(1.75), In(0.5), In(7)));
        Refused("fromEdge", () => PrescriptiveSillBolts.Check(In(96), In(3.5), [In(12)], In(4), In(0.5), In(7)));

        static void Refused(string parameter, Func<object> act) => Assert.Equal(parameter, Assert.Throws<InputException>(act).Parameter);
    }
}
