using ConcreteAttach.Actions;
using ConcreteAttach.Materials;
using ConcreteAttach.Nds;
using ConcreteAttach.Quantities;
using ConcreteAttach.Verification;
using UnitsNet;
using static ConcreteAttach.Tests.Nds.Wood;

namespace ConcreteAttach.Tests.Nds;

/// <summary>Fastenings in wood as a whole: modes, verdict, what governs, and what is not covered.</summary>
public sealed class NdsMethodTests
{
    private static readonly DowelFastener Bolt = new(DowelKind.Bolt, In(0.5));

    private static WoodLoadCase Load(double lateral, double axial = 0, string name = "load") => new(name) { Lateral = Force.FromPoundsForce(lateral), Axial = Force.FromPoundsForce(axial) };

    private static WoodFastening Screw(DowelKind kind, double diameter, double penetration = 3) => new()
    {
        Lateral = new(new(kind, In(diameter)), new WoodMember(Gravity(0.5), In(penetration), 0), new WoodMember(Gravity(0.5), In(0.75), 0)),
        Withdrawal = new(new(kind, In(diameter)), Gravity(0.5), In(penetration)),
    };

    /// <summary>Table 12E: 650 lbf, remembered.</summary>
    [Theory]
    [InlineData(650, Verdict.Holds)]
    [InlineData(651, Verdict.DoesNotHold)]
    public void The_limit_itself_is_met(double load, Verdict verdict)
    {
        WoodVerification result = NdsMethod.Verify(new() { Lateral = Sill(0.5, 0.50, 1.5, 0) }, [Load(load)]);

        Assert.Equal(verdict, result.Verdict);
        Assert.Equal(FailureModeKind.WoodYield, result.Governing!.Kind);
        Assert.Equal(650 / load, result.LoadFactor!.Value, 1e-9);
        Assert.Equal((SafetyFormat.AllowableStressDesign, "NDS-2018", "inch-pound"), (result.Governing.Format, result.Method, result.Constants));
    }

    [Fact]
    public void Duration_is_that_of_the_load_case()
    {
        WoodVerification result = NdsMethod.Verify(
            new() { Lateral = Sill(0.5, 0.50, 1.5, 0) }, [Load(500, name: "L"), Load(900, name: "W") with { Duration = LoadDuration.TenMinutes }], SheetScope.All);

        Assert.Equal([500.0 / 650, 900 / (1.6 * 650)], result.Modes.Select(m => m.Utilization!.Value).Select(u => Math.Round(u, 12)).ToArray(), (a, b) => Math.Abs(a - b) < 1e-9);
        Assert.Equal("W", result.Governing!.LoadCase);
        Assert.All(result.Modes, m => Assert.NotNull(m.Sheet!.Find("utilization")));
    }

    [Theory]
    [InlineData(SheetScope.None, false, false)]
    [InlineData(SheetScope.Governing, false, true)]
    [InlineData(SheetScope.All, true, true)]
    public void Sheets_are_those_asked_for(SheetScope scope, bool first, bool second)
    {
        WoodVerification result = NdsMethod.Verify(new() { Lateral = Sill(0.5, 0.50, 1.5, 0) }, [Load(100, name: "a"), Load(200, name: "b")], scope);

        Assert.Equal([first, second], result.Modes.Select(m => m.Sheet is not null));
    }

    [Fact]
    public void Bolts_have_no_interaction_and_screws_have()
    {
        var bolt = new WoodFastening { Lateral = Sill(0.5, 0.50, 1.5, 0), Washer = WasherBearing.Square(In(3), In(0.5625)), WasherSpecies = WoodSpeciesTable.Find("Hem-Fir") };
        Assert.Equal(ModeStatus.NotApplicable, Combined(bolt, Load(600, 3000)).Status);
        Assert.Equal(Verdict.Holds, NdsMethod.Verify(bolt, [Load(600, 3000)]).Verdict);

        WoodFastening screw = Screw(DowelKind.WoodScrew, 0.19);
        Assert.NotNull(Combined(screw, Load(50, 50)).Utilization);
        Assert.Equal(ModeStatus.NotApplicable, Combined(screw, Load(50)).Status);
        Assert.Equal(ModeStatus.NotApplicable, Combined(screw, Load(0, 50)).Status);

        var pulledThrough = screw with { Withdrawal = null, PullThrough = new(Gravity(0.5), In(0.38), In(0.75)) };
        Assert.Equal(ModeStatus.NotCovered, Combined(pulledThrough, Load(50, 50)).Status);
        Assert.Equal(Verdict.NotCovered, NdsMethod.Verify(pulledThrough, [Load(50, 50)]).Verdict);

        static FailureMode Combined(WoodFastening fastening, WoodLoadCase load) => NdsMethod.Verify(fastening, [load]).Modes.Single(m => m.Kind == FailureModeKind.WoodCombined);
    }

    /// <summary>12.1.4.6, 12.1.5.6, 12.1.6.5 (from memory): 4 D of a lag screw without its tip, 6 D of others. By hand: a lag screw of 3/8 in. has a tip of 7/32 in.; 1.5 + 7/64.</summary>
    [Theory]
    [InlineData(DowelKind.LagScrew, 0.375, 1.609375, true)]
    [InlineData(DowelKind.LagScrew, 0.375, 1.60, false)]
    [InlineData(DowelKind.WoodScrew, 0.19, 1.14, true)]
    [InlineData(DowelKind.WoodScrew, 0.19, 1.13, false)]
    [InlineData(DowelKind.Nail, 0.162, 0.972, true)]
    [InlineData(DowelKind.Nail, 0.162, 0.97, false)]
    public void Least_penetration(DowelKind kind, double diameter, double length, bool isCovered)
    {
        WoodVerification result = NdsMethod.Verify(Screw(kind, diameter, length) with { Withdrawal = null }, [Load(10)]);

        Assert.Equal(isCovered ? ModeStatus.Satisfied : ModeStatus.NotCovered, result.Modes[0].Status);
        Assert.True(isCovered || result.Modes[0].Reason!.Contains("penetration", StringComparison.Ordinal));
    }

    [Fact]
    public void A_penetration_that_is_given_counts()
    {
        WoodConnection shallow = Screw(DowelKind.Nail, 0.162, 0.9).Lateral!;
        Assert.NotNull(shallow.Lateral(Plain).NotCovered);
        Assert.Null(new WoodConnection(shallow.Fastener, shallow.Main, shallow.Side) { Penetration = In(0.98) }.Lateral(Plain).NotCovered);

        // A lag screw outside the table has no known tip; a bolt and a point in concrete have no minimum.
        var lag = new DowelFastener(DowelKind.LagScrew, In(0.4), rootDiameter: In(0.3));
        var unknown = new WoodConnection(lag, new WoodMember(Gravity(0.5), In(4), 0), new WoodMember(Gravity(0.5), In(1.5), 0));
        Assert.Contains("tip", unknown.Lateral(Plain).NotCovered, StringComparison.Ordinal);
        Assert.Null(new WoodConnection(lag, unknown.Main, unknown.Side) { Penetration = In(3.8) }.Lateral(Plain).NotCovered);
        Assert.Null(new WoodConnection(Bolt, new WoodMember(Gravity(0.5), In(0.5), 0), unknown.Side).Lateral(Plain).NotCovered);
    }

    [Fact]
    public void Fasteners_share_the_load_alike()
    {
        var one = new WoodFastening { Lateral = Sill(0.5, 0.50, 1.5, 0) };
        WoodVerification four = NdsMethod.Verify(one with { Count = 4 }, [Load(400)]), single = NdsMethod.Verify(one, [Load(100)]);

        Assert.Equal(single.Governing!.Utilization!.Value, four.Governing!.Utilization!.Value, 1e-12);
        Assert.Equal(100, four.Governing.Demand!.Value.PoundsForce, 1e-9);
    }

    [Fact]
    public void Bad_input_is_one_error()
    {
        WoodFastening sill = new() { Lateral = Sill(0.5, 0.50, 1.5, 0) };
        Refused("fastening", () => NdsMethod.Verify(new(), [Load(1)]));
        Refused("loadCases", () => NdsMethod.Verify(sill, []));
        Refused("name", () => NdsMethod.Verify(sill, [Load(1), Load(2)]));
        Refused("name", () => new WoodLoadCase(" "));
        Refused("axial", () => NdsMethod.Verify(sill, [Load(1, 1)]));
        Refused("lateral", () => NdsMethod.Verify(new() { Withdrawal = new(new(DowelKind.Nail, In(0.162)), Gravity(0.5), In(2)) }, [Load(1)]));
        Refused("lateral", () => Load(-1));
        Refused("axial", () => Load(0, -1));
        Refused("count", () => new WoodFastening { Count = 0 });
        Refused("format", () => new ServiceConditions { Format = SafetyFormat.PartialFactors });
        Refused("washerSpecies", () => NdsMethod.Verify(new() { Washer = WasherBearing.Round(In(2), In(0.5)) }, [Load(0, 1)]));
        Refused("withdrawal", () => NdsMethod.Verify(sill with { Withdrawal = new(new(DowelKind.Nail, In(0.162)), Gravity(0.5), In(2)) }, [Load(1)]));
        Refused("penetration", () => new WoodConnection(Bolt, Concrete(), Concrete()) { Penetration = In(-1) });

        static void Refused(string parameter, Func<object> act) => Assert.Equal(parameter, Assert.Throws<InputException>(act).Parameter);
    }
}
