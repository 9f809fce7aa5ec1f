using ConcreteAttach.Actions;
using ConcreteAttach.Nds;
using UnitsNet;
using static ConcreteAttach.Tests.Nds.Wood;

namespace ConcreteAttach.Tests.Nds;

/// <summary>Adjustment factors (NDS-2018 chapter 11, 12.5) against stated and computed numbers.</summary>
public sealed class AdjustmentCases
{
    private static readonly WoodConnection Bolt = Sill(0.625, 0.50, 1.5, 0);

    private static double Adjusted(ServiceConditions conditions) => Pounds(Bolt.Lateral(conditions).Adjusted);

    /// <summary>Tables 2.3.2, N3, 11.3.3 and 11.3.4, from memory.</summary>
    [Fact]
    public void Tables_of_factors()
    {
        Assert.Equal([0.9, 1, 1.15, 1.25, 1.6], Enum.GetValues<LoadDuration>().Select(d => Adjusted(new() { Duration = d }) / 930).Select(f => Math.Round(f, 12)));
        Assert.Equal(
            [0.6, 0.7, 0.8, 1],
            Enum.GetValues<TimeEffect>().Select(t => Bolt.Lateral(new() { Format = SafetyFormat.StrengthDesign, TimeEffect = t }).Step("lambda")));
        Assert.Equal([1, 0.8, 0.7], Enum.GetValues<TemperatureRange>().Select(t => Bolt.Lateral(new() { Temperature = t }).Step("C_t")));
        Assert.Equal([1, 0.7, 0.5], Enum.GetValues<TemperatureRange>().Select(t => Bolt.Lateral(new() { Temperature = t, IsWetInService = true }).Step("C_t")));
    }

    [Theory]
    [InlineData(false, false, false, 0.625, 1)]
    [InlineData(true, false, false, 0.625, 0.4)]
    [InlineData(true, false, true, 0.625, 1)]
    [InlineData(true, false, false, 0.162, 0.7)]
    [InlineData(true, true, true, 0.625, 0.7)]
    [InlineData(false, true, false, 0.162, 0.7)]
    public void Lateral_moisture(bool atFabrication, bool inService, bool isFree, double diameter, double factor)
    {
        var conditions = new ServiceConditions { IsWetAtFabrication = atFabrication, IsWetInService = inService, IsFreeToShrink = isFree };
        Assert.Equal(factor, Sill(diameter, 0.5, 1.5, 0).Lateral(conditions).Step("C_M"));
    }

    /// <summary>Table 11.3.6C, first row, recalled only after computing, so no independent evidence; and a case computed apart.</summary>
    [Fact]
    public void Group_action_computed_apart()
    {
        double[] table = [0.97, 0.89, 0.80, 0.70, 0.62, 0.55, 0.49, 0.44, 0.40, 0.37, 0.34];
        Assert.Equal(table, Enumerable.Range(2, 11).Select(n => Math.Round(GroupAction(n, 1, 4, 1.4e6, 5, 30e6, 5.0 / 12, LoadSlip.WoodToMetal), 2)));
        Assert.Equal(0.95062, GroupAction(5, 0.625, 4, 1.6e6, 8.25, 1.6e6, 8.25, LoadSlip.WoodToWood), 5e-6);
        Assert.Equal(1, GroupAction(5, 0.2, 4, 1.6e6, 8.25, 1.6e6, 8.25, LoadSlip.WoodToWood));
        Assert.Equal(1, GroupAction(1, 0.625, 4, 1.6e6, 8.25, 1.6e6, 8.25, LoadSlip.WoodToWood));
    }

    private static double GroupAction(int n, double d, double s, double em, double am, double es, double @as, LoadSlip slip)
    {
        var row = new FastenerRow(n, In(s), Psi(em), Area.FromSquareInches(am), Psi(es), Area.FromSquareInches(@as), slip);
        return new WoodConnection(new(DowelKind.Bolt, In(d)), Concrete(), new WoodMember(Gravity(0.5), In(1.5), 0)) { Row = row }.Lateral(Plain).Step("C_g");
    }

    /// <summary>Constructed from Table 12.5.1A (from memory): end distances of a 5/8 in. bolt. NaN: not permitted.</summary>
    [Theory]
    [InlineData(GrainLoad.ParallelTension, true, 4.375, 1)]
    [InlineData(GrainLoad.ParallelTension, true, 3.5, 0.8)]
    [InlineData(GrainLoad.ParallelTension, true, 2.1875, 0.5)]
    [InlineData(GrainLoad.ParallelTension, true, 2.0, double.NaN)]
    [InlineData(GrainLoad.ParallelTension, false, 3.125, 1)]
    [InlineData(GrainLoad.ParallelTension, false, 1.5625, 0.5)]
    [InlineData(GrainLoad.ParallelTension, false, 1.5, double.NaN)]
    [InlineData(GrainLoad.ParallelCompression, true, 2.5, 1)]
    [InlineData(GrainLoad.ParallelCompression, true, 1.25, 0.5)]
    [InlineData(GrainLoad.Perpendicular, true, 1.75, 0.7)]
    public void End_distance(GrainLoad load, bool isSoftwood, double distance, double factor) =>
        Geometry(new(load, isSoftwood) { EndDistance = In(distance) }, factor);

    [Theory]
    [InlineData(GrainLoad.ParallelTension, 2.5, 1)]
    [InlineData(GrainLoad.ParallelTension, 2.0, 0.8)]
    [InlineData(GrainLoad.ParallelTension, 1.875, 0.75)]
    [InlineData(GrainLoad.ParallelTension, 1.8, double.NaN)]
    [InlineData(GrainLoad.Perpendicular, 1.875, 1)]
    [InlineData(GrainLoad.Perpendicular, 1.8, double.NaN)]
    public void Spacing(GrainLoad load, double spacing, double factor) => Geometry(new(load, true) { Spacing = In(spacing) }, factor);

    [Fact]
    public void The_least_ratio_counts()
    {
        Geometry(new(GrainLoad.ParallelTension, true) { Spacing = In(2), EndDistance = In(2.1875), ShearAreaRatio = 0.9 }, 0.5);
        Geometry(new(GrainLoad.ParallelTension, true) { ShearAreaRatio = 0.6 }, 0.6);
        Geometry(new(GrainLoad.ParallelTension, true) { ShearAreaRatio = 0.4 }, double.NaN);
        Geometry(new(GrainLoad.Perpendicular, true) { Spacing = In(2), SpacingOfAttachedMembers = In(2.5) }, 0.8);
    }

    /// <summary>Constructed: least spacing between rows under a load across the grain, ℓ of 1.5 in.; and edge distances, which have no reduction.</summary>
    [Theory]
    [InlineData(0.625, 1.719)]
    [InlineData(0.75, 1.875)]
    [InlineData(1, 2.5)]
    [InlineData(0.5, 1.5625)]
    [InlineData(0.25, 1.25)]
    public void Rows_across_the_grain(double diameter, double least)
    {
        Geometry(new(GrainLoad.Perpendicular, true) { RowSpacing = In(least + 0.001) }, 1, diameter);
        Geometry(new(GrainLoad.Perpendicular, true) { RowSpacing = In(least - 0.001) }, double.NaN, diameter);
    }

    [Fact]
    public void Edge_distances()
    {
        Geometry(new(GrainLoad.Perpendicular, true) { EdgeDistance = In(2.5), UnloadedEdgeDistance = In(0.9375) }, 1);
        Geometry(new(GrainLoad.Perpendicular, true) { EdgeDistance = In(2.4) }, double.NaN);
        Geometry(new(GrainLoad.Perpendicular, true) { UnloadedEdgeDistance = In(0.9) }, double.NaN);
        Geometry(new(GrainLoad.ParallelTension, true) { EdgeDistance = In(0.9375), RowSpacing = In(4) }, 1);

        // ℓ/D of 1.5/0.2375 is above 6: half the row spacing then counts as well.
        Geometry(new(GrainLoad.ParallelTension, true) { EdgeDistance = In(0.9375), RowSpacing = In(4) }, double.NaN, 0.25, 1.75);
        Geometry(new(GrainLoad.ParallelTension, true) { OuterRows = In(5) }, 1);
        Geometry(new(GrainLoad.ParallelTension, true) { OuterRows = In(5.1) }, double.NaN);
    }

    private static void Geometry(FastenerPlacement placement, double factor, double diameter = 0.625, double thickness = 1.5)
    {
        var connection = new WoodConnection(new(DowelKind.Bolt, In(diameter)), Concrete(), new WoodMember(Gravity(0.5), In(thickness), 0)) { Placement = placement };
        ConnectionStrength strength = connection.Lateral(Plain);
        Assert.Equal(double.IsNaN(factor), strength.Adjusted is null);
        Assert.Equal(double.IsNaN(factor), strength.NotMet.Length > 0);
        if (!double.IsNaN(factor))
        {
            Assert.Equal(factor, strength.Step("C_Delta"), 1e-9);
            Assert.Equal(factor * Pounds(strength.Reference), Pounds(strength.Adjusted), 1e-6);
        }
    }

    [Fact]
    public void Place_of_the_fastener()
    {
        var nail = new DowelFastener(DowelKind.Nail, In(0.148));
        var side = new WoodMember(Gravity(0.5), In(1.5), 0);
        var connection = new WoodConnection(nail, side, side);
        Assert.Equal(0.83, connection.Lateral(new() { IsToeNail = true }).Step("C_tn"));
        Assert.Equal(1.1, connection.Lateral(new() { IsDiaphragmNail = true }).Step("C_di"));

        // End grain: the strength across the grain, and C_eg.
        var end = new WoodConnection(new(DowelKind.Bolt, In(0.5)), new WoodMember(Gravity(0.5), In(4), 0) { IsEndGrain = true }, side);
        ConnectionStrength strength = end.Lateral(Plain);
        Assert.Equal(6100 * Math.Pow(0.5, 1.45) / Math.Sqrt(0.5), strength.Step("F_em"), 1e-9);
        Assert.Equal(1.25, strength.Step("K_theta"));
        Assert.Equal(0.67 * Pounds(strength.Reference), Pounds(strength.Adjusted), 1e-9);
    }
}
