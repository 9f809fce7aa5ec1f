using ConcreteAttach.Actions;
using ConcreteAttach.Materials;
using ConcreteAttach.Nds;
using UnitsNet;
using static ConcreteAttach.Tests.Nds.Wood;

namespace ConcreteAttach.Tests.Nds;

/// <summary>Withdrawal, pull-through, combined load and washers (NDS-2018 12.2, 12.4, 3.10) against stated and computed numbers.</summary>
public sealed class WithdrawalCases
{
    private static WithdrawalConnection Of(DowelKind kind, double diameter, double gravity, double penetration = 1) =>
        new(new(kind, In(diameter)), Gravity(gravity), In(penetration));

    [Fact]
    public void End_grain_holds_lag_screws_only()
    {
        WithdrawalConnection EndGrain(DowelKind kind, double d) => new(new(kind, In(d)), Gravity(0.5), In(2)) { IsEndGrain = true };

        Assert.Equal(0.75, EndGrain(DowelKind.LagScrew, 0.5).Strength(Plain).Step("C_eg"));
        Assert.NotNull(EndGrain(DowelKind.Nail, 0.162).Strength(Plain).NotCovered);
        Assert.Null(EndGrain(DowelKind.WoodScrew, 0.19).Strength(Plain).Reference);
    }

    /// <summary>C_M of withdrawal (Table 11.3.3, from memory); not for toe-nails, which have C_tn of 0.67.</summary>
    [Theory]
    [InlineData(DowelKind.LagScrew, 0.5, true, false, 1)]
    [InlineData(DowelKind.LagScrew, 0.5, false, true, 0.7)]
    [InlineData(DowelKind.WoodScrew, 0.19, true, true, 0.7)]
    [InlineData(DowelKind.Nail, 0.162, true, false, 0.25)]
    [InlineData(DowelKind.Nail, 0.162, false, true, 0.25)]
    [InlineData(DowelKind.Nail, 0.162, true, true, 1)]
    [InlineData(DowelKind.RingShankNail, 0.2, true, false, 1)]
    public void Moisture(DowelKind kind, double diameter, bool atFabrication, bool inService, double factor)
    {
        var conditions = new ServiceConditions { IsWetAtFabrication = atFabrication, IsWetInService = inService };
        Assert.Equal(factor, Of(kind, diameter, 0.5).Strength(conditions).Step("C_M"));
        if (kind == DowelKind.Nail)
        {
            ConnectionStrength toe = Of(kind, diameter, 0.5).Strength(conditions with { IsToeNail = true });
            Assert.Equal((1, 0.67), (toe.Step("C_M"), toe.Step("C_tn")));
        }
    }

    /// <summary>Constructed: W' p of 1,528 lbf, Z' of 800 lbf, lag screw.</summary>
    [Theory]
    [InlineData(0, 800.0)]
    [InlineData(30, 908.2)]
    [InlineData(45, 1050.2)]
    [InlineData(60, 1244.8)]
    [InlineData(90, 1528.0)]
    public void Combined_load(double angle, double strength) => Assert.Equal(strength, Combined(DowelKind.LagScrew, angle), 0.0501);

    /// <summary>By hand, 30°: nails 1528 · 800 / (1528 · 0.8660 + 800 · 0.5) = 709.3; a bolt's components, 800 / 0.8660 = 923.8.</summary>
    [Fact]
    public void Combined_load_of_nails_and_bolts()
    {
        Assert.Equal(709.3, Combined(DowelKind.Nail, 30), 0.0501);
        Assert.Equal(923.8, Combined(DowelKind.Bolt, 30), 0.0501);
        Assert.All(new[] { DowelKind.Nail, DowelKind.Bolt }, kind => Assert.Equal((800, 1528), (Combined(kind, 0), Combined(kind, 90))));
    }

    private static double Combined(DowelKind kind, double angle) => Pounds(CombinedLoad.Strength(kind, Force.FromPoundsForce(800), Force.FromPoundsForce(1528), angle).Adjusted);

    [Fact]
    public void Unknown_bearing_stress_is_not_covered() =>
        Assert.NotNull(WasherBearing.Round(In(2), In(0.5)).Strength(Gravity(0.5), Plain).NotCovered);
}
