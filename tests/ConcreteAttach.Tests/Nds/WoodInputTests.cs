using ConcreteAttach.Materials;
using ConcreteAttach.Nds;
using ConcreteAttach.Quantities;
using UnitsNet;
using static ConcreteAttach.Tests.Nds.Wood;

namespace ConcreteAttach.Tests.Nds;

/// <summary>Bad input is one error that names the parameter, what was found and what is permitted.</summary>
public sealed class WoodInputTests
{
    public static TheoryData<string, Action> Bad => new()
    {
        { "specificGravity", () => Gravity(0) },
        { "specificGravity", () => Gravity(double.NaN) },
        { "designation", () => _ = new WoodSpecies(" ", 0.5, true) },
        { "species", () => WoodSpeciesTable.Find("Iron Pine") },
        { "compressionPerpendicular", () => _ = new WoodSpecies("x", 0.5, true) { CompressionPerpendicular = Psi(0) } },
        { "diameter", () => _ = new DowelFastener(DowelKind.Bolt, In(-1)) },
        { "kind", () => _ = new DowelFastener((DowelKind)9, In(0.5)) },
        { "bendingYieldStrength", () => _ = new DowelFastener(DowelKind.Nail, In(0.09)) },
        { "bendingYieldStrength", () => _ = new DowelFastener(DowelKind.Bolt, In(0.5), Psi(0)) },
        { "rootDiameter", () => _ = new DowelFastener(DowelKind.LagScrew, In(0.3)) },
        { "rootDiameter", () => _ = new DowelFastener(DowelKind.LagScrew, In(0.5), rootDiameter: In(0.6)) },
        { "momentAtOffset", () => DowelFastener.BendingYieldByTest(Torque.FromPoundForceInches(0), In(0.5)) },
        { "bearingLength", () => _ = new WoodMember(Gravity(0.5), In(0), 0) },
        { "loadToGrainDegrees", () => _ = new WoodMember(Gravity(0.5), In(1.5), 91) },
        { "loadToGrainDegrees", () => _ = new TestedMember(Psi(5000), In(1.5), double.NaN) },
        { "dowelBearingStrength", () => _ = new TestedMember(Psi(-1), In(1.5)) },
        { "compressiveStrength", () => _ = new ConcreteBearingMember(Psi(0), In(6)) },
        { "thickness", () => _ = new SteelBearingMember(Psi(58_000), In(-0.25), false) },
        { "gap", () => Sill(0.5, 0.5, 1.5, 0, gap: -0.1) },
        { "isToeNail", () => Sill(0.5, 0.5, 1.5, 0).Lateral(new() { IsToeNail = true }) },
        { "isDiaphragmNail", () => Sill(0.5, 0.5, 1.5, 0).Lateral(new() { IsDiaphragmNail = true }) },
        { "endDistance", () => _ = new FastenerPlacement(GrainLoad.Perpendicular, true) { EndDistance = In(0) } },
        { "shearAreaRatio", () => _ = new FastenerPlacement(GrainLoad.Perpendicular, true) { ShearAreaRatio = double.NaN } },
        { "load", () => _ = new FastenerPlacement((GrainLoad)7, true) },
        { "count", () => _ = new FastenerRow(0, In(4), Psi(1e6), Area.FromSquareInches(5), Psi(1e6), Area.FromSquareInches(5), LoadSlip.WoodToWood) },
        { "sideArea", () => _ = new FastenerRow(2, In(4), Psi(1e6), Area.FromSquareInches(5), Psi(1e6), Area.FromSquareInches(0), LoadSlip.WoodToWood) },
        { "fastener", () => _ = new WithdrawalConnection(new(DowelKind.Bolt, In(0.5)), Gravity(0.5), In(2)) },
        { "penetration", () => _ = new WithdrawalConnection(new(DowelKind.Nail, In(0.162)), Gravity(0.5), In(0)) },
        { "headDiameter", () => _ = new HeadPullThrough(Gravity(0.5), In(0), In(1)) },
        { "toSurfaceDegrees", () => CombinedLoad.Strength(DowelKind.Nail, Force.FromPoundsForce(1), Force.FromPoundsForce(1), -1) },
        { "lateral", () => CombinedLoad.Strength(DowelKind.Nail, Force.FromPoundsForce(0), Force.FromPoundsForce(1), 10) },
        { "hole", () => WasherBearing.Round(In(1), In(1)) },
        { "slotLength", () => WasherBearing.Square(In(3), In(0.8), In(0.7)) },
    };

    [Theory]
    [MemberData(nameof(Bad))]
    public void One_error_that_names_the_parameter(string parameter, Action act) => Assert.Equal(parameter, Assert.Throws<InputException>(act).Parameter);

    [Fact]
    public void Every_species_is_found_and_says_that_it_is_remembered()
    {
        Assert.All(WoodSpeciesTable.Designations, name =>
        {
            WoodSpecies species = WoodSpeciesTable.Find(name);
            Assert.InRange(species.SpecificGravity, 0.3, 0.75);
            Assert.Contains("from memory", species.Source, StringComparison.Ordinal);
        });
        Assert.Equal(WoodSpeciesTable.Designations.Count, WoodSpeciesTable.Designations.Distinct().Count());
    }

    /// <summary>The gravities that head Table 12E, from the reference sheet (from memory as well).</summary>
    [Theory]
    [InlineData("Red Oak", 0.67)]
    [InlineData("Mixed Maple", 0.55)]
    [InlineData("Southern Pine", 0.55)]
    [InlineData("Douglas Fir-Larch", 0.50)]
    [InlineData("Douglas Fir-Larch (North)", 0.49)]
    [InlineData("Douglas Fir-South", 0.46)]
    [InlineData("Hem-Fir (North)", 0.46)]
    [InlineData("Hem-Fir", 0.43)]
    [InlineData("Spruce-Pine-Fir", 0.42)]
    [InlineData("Redwood, open grain", 0.37)]
    [InlineData("Eastern Softwoods", 0.36)]
    [InlineData("Northern Species", 0.35)]
    public void Gravities(string species, double gravity) => Assert.Equal(gravity, WoodSpeciesTable.Find(species).SpecificGravity);

    /// <summary>Units of the input do not matter.</summary>
    [Fact]
    public void Millimetres_and_megapascals_give_the_same()
    {
        var metric = new WoodConnection(
            new(DowelKind.Bolt, Length.FromMillimeters(12.7)), new ConcreteBearingMember(Pressure.FromMegapascals(20), Length.FromMillimeters(152.4)),
            new WoodMember(Gravity(0.5), Length.FromMillimeters(38.1), 90)) { IsRoundedAsPrinted = true };
        Assert.Equal(380, metric.Reference());
    }
}
