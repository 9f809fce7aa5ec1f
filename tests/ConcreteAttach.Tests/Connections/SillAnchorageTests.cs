using ConcreteAttach.Aci318;
using ConcreteAttach.Actions;
using ConcreteAttach.Attached;
using ConcreteAttach.Connections;
using ConcreteAttach.Fasteners;
using ConcreteAttach.Geometry;
using ConcreteAttach.Materials;
using ConcreteAttach.Nds;
using ConcreteAttach.Quantities;
using ConcreteAttach.Verification;
using UnitsNet;
using static ConcreteAttach.Tests.Nds.Wood;

namespace ConcreteAttach.Tests.Connections;

/// <summary>The bolts of a wood sill, wood and concrete together, and the building code's alternative for them under earthquake.</summary>
public sealed class SillAnchorageTests
{
    private static readonly Aci318Method Method = new(Aci318Edition.InchPound2019);

    private static readonly SillPlate HemFir = new(WoodSpeciesTable.Find("Hem-Fir"), In(1.5), SillDirection.X)
    {
        IsRoundedAsPrinted = true,
        Washer = WasherBearing.Square(In(3), In(0.6875)),
    };

    private static readonly EarthquakeDesign Design = new(SeismicDesignCategory.D)
    {
        Tension = EarthquakeTensionOption.Overstrength,
        Overstrength = 2.5,
        WoodSill = new(SillDirection.X, In(1.5)),
    };

    /// <summary>Two bolts of 5/8 in. in the middle of a wall 8 in. wide.</summary>
    private static Attachment Bolts(EarthquakeDesign? earthquake = null, double diameter = 0.625, double embedment = 7, double edge = 4, double end = 40) =>
        new(
            new ConcreteMember(Psi(3000), In(18)) { Edges = new() { PlusX = In(end), MinusX = In(end), PlusY = In(edge), MinusY = In(edge) } },
            new HeadedBolt(In(diameter), AnchorSteels.Find("ASTM F1554 Grade 36", In(diameter)), In(embedment)),
            FastenerLayout.Points([new(In(-16), In(0)), new(In(16), In(0))]))
        {
            Earthquake = earthquake,
        };

    private static LoadCase Load(double along, double across = 0, double tension = 0, string name = "load") =>
        new(name) { Vx = Force.FromPoundsForce(along), Vy = Force.FromPoundsForce(across), N = Force.FromPoundsForce(tension) };

    private static LoadCase WithEarthquake(LoadCase load) => load with { Earthquake = new() { N = load.N, Vx = load.Vx, Vy = load.Vy } };

    private static SillLoadCase Wind(LoadCase load) => new(load) { TimeEffect = TimeEffect.WindEarthquakeOrImpact };

    private static AttachmentVerification Verify(Attachment bolts, LoadCase load, SillPlate? sill = null) => new SillAnchorage(Method, bolts, sill ?? HemFir).Verify([Wind(load)]);

    private static FailureMode Mode(VerificationResult result, string id) => result.Modes.Single(m => m.Id == id);

    /// <summary>
    /// Worked by hand. Table 12E, 5/8 in., Hem-Fir, parallel: 860 lbf (remembered), LRFD 3.32 · 0.65 · 1.0 · 860 = 1,855.9 lbf against 1,000 lbf of a bolt. Washer: 405 · 8.6288 · 1.125 · 1.67 · 0.9 = 5,909 lbf
    /// against 500 lbf.
    /// </summary>
    [Fact]
    public void Both_sides_of_a_bolt_along_the_wall()
    {
        AttachmentVerification result = Verify(Bolts(), Load(2000, tension: 1000));

        FailureMode wood = Mode(result, "wood/yield"), washer = Mode(result, "wood/bearing");
        Assert.Equal(1855.88, wood.Design!.Value.PoundsForce, 0.005);
        Assert.Equal(1000 / 1855.88, wood.Utilization!.Value, 1e-6);
        Assert.Equal(5909, washer.Design!.Value.PoundsForce, 0.5);
        Assert.Equal(500, washer.Demand!.Value.PoundsForce, 1e-9);
        Assert.Equal("ACI 318-19 and NDS-2018", result.Method);
        Assert.All(result.Modes, m => Assert.Equal(SafetyFormat.StrengthDesign, m.Format));
        Assert.Contains(result.Modes, m => m.Id.StartsWith("shear/breakout", StringComparison.Ordinal));
    }

    /// <summary>Across the wall: Table 12E has 420 lbf (constructed: 421.9 before rounding) for 5/8 in., Hem-Fir, perpendicular: 3.32 · 0.65 · 420 = 906.4 lbf.</summary>
    [Fact]
    public void Across_the_wall_the_wood_is_weaker()
    {
        Assert.Equal(906.36, Mode(Verify(Bolts(), Load(0, 1000)), "wood/yield").Design!.Value.PoundsForce, 0.005);
        Assert.Equal(906.36, Mode(Verify(Bolts(), Load(0, -1000)), "wood/yield").Design!.Value.PoundsForce, 0.005);
    }

    /// <summary>The concrete's modes are those of ACI 318 alone, to the last bit; what the wood adds can only govern.</summary>
    [Theory]
    [InlineData(500, 0, 0)]
    [InlineData(3000, 0, 2000)]
    [InlineData(200, 900, 100)]
    [InlineData(-3000, 300, -500)]
    public void The_weakest_of_both_sides_governs(double along, double across, double tension)
    {
        LoadCase load = Load(along, across, tension);
        AttachmentVerification both = Verify(Bolts(), load), concrete = Method.Verify(Bolts(), load);

        Assert.Equal(concrete.Modes.Select(m => (m.Id, m.Status, m.Utilization)), both.Modes.Where(m => !m.Id.Contains("wood", StringComparison.Ordinal)).Select(m => (m.Id, m.Status, m.Utilization)));
        Assert.Equal(Math.Max(concrete.Modes.Max(m => m.Utilization ?? 0), both.Modes.Where(m => m.Id.StartsWith("wood", StringComparison.Ordinal)).Max(m => m.Utilization ?? 0)), both.Governing!.Utilization!.Value);
        Assert.Equal(both.Modes.Any(m => m.Utilization > 1), both.Verdict == Verdict.DoesNotHold);
    }

    /// <summary>Scaling the actions by the load factor brings the verification to its limit.</summary>
    [Fact]
    public void The_load_factor_knows_the_wood()
    {
        AttachmentVerification result = Verify(Bolts(edge: 20, end: 100), Load(2000));
        Assert.Equal("wood/yield", result.Governing!.Id);
        double factor = result.LoadFactor!.Value;

        Assert.Equal(1, Verify(Bolts(edge: 20, end: 100), Load(2000 * factor)).Governing!.Utilization!.Value, 1e-9);
    }

    [Fact]
    public void The_bolt_that_uses_most_is_shown()
    {
        // Torsion about the middle adds a force across the wall to each bolt: 32 in. apart, 6,400 lbf-in give ±200 lbf.
        LoadCase load = Load(600, 100) with { Mz = Torque.FromPoundForceInches(6400) };
        FailureMode mode = Mode(Verify(Bolts(), load), "wood/yield");

        Assert.Equal(1, Assert.Single(mode.Group));
        Assert.Equal(Math.Sqrt((300 * 300) + (250.0 * 250)), mode.Demand!.Value.PoundsForce, 1e-6);
        Assert.Equal(Math.Atan2(250, 300) * 180 / Math.PI, mode.Sheet!.Find("theta_s")!.Value, 1e-9);
    }

    [Fact]
    public void Turning_everything_by_a_quarter_changes_nothing()
    {
        Attachment along = Bolts();
        var across = new Attachment(
            new ConcreteMember(Psi(3000), In(18)) { Edges = new() { PlusX = In(4), MinusX = In(4), PlusY = In(40), MinusY = In(40) } }, along.Fastener, FastenerLayout.Points([new(In(0), In(-16)), new(In(0), In(16))]));
        FailureMode x = Mode(Verify(along, Load(500, 300)), "wood/yield");
        FailureMode y = Mode(new SillAnchorage(Method, across, new(HemFir.Species, HemFir.Thickness, SillDirection.Y) { IsRoundedAsPrinted = true }).Verify([Wind(Load(-300, 500))]), "wood/yield");

        Assert.Equal(x.Utilization!.Value, y.Utilization!.Value, 1e-12);
    }

    [Fact]
    public void Allowable_stress_design_has_one_format_on_both_sides()
    {
        LoadCase load = Load(1000) with { Format = SafetyFormat.AllowableStressDesign, WeightedLoadFactor = 1.6 };
        AttachmentVerification result = new SillAnchorage(Method, Bolts(), HemFir).Verify([new(load) { Duration = LoadDuration.TenMinutes }]);

        Assert.All(result.Modes, m => Assert.Equal(SafetyFormat.AllowableStressDesign, m.Format));
        Assert.Equal(860 * 1.6, Mode(result, "wood/yield").Design!.Value.PoundsForce, 1e-6);
    }

    [Theory]
    [InlineData(SheetScope.None)]
    [InlineData(SheetScope.Governing)]
    [InlineData(SheetScope.All)]
    public void Sheets_are_those_asked_for(SheetScope scope)
    {
        AttachmentVerification result = new SillAnchorage(Method, Bolts(edge: 20, end: 100), HemFir).Verify([Wind(Load(1000, name: "a")), Wind(Load(2000, name: "b"))], scope);
        string[] shown = [.. result.Modes.Where(m => m.Sheet is not null && m.LoadCase is not null).Select(m => m.LoadCase!).Distinct()];

        Assert.Equal(scope switch { SheetScope.None => [], SheetScope.Governing => ["b"], _ => (string[])["a", "b"] }, shown);
        Assert.Equal(shown, result.Distribution.Select(d => d.LoadCase));
    }

    [Fact]
    public void Gaps_are_said()
    {
        SillPlate bare = HemFir with { Washer = null };
        Assert.Equal(ModeStatus.NotCovered, Mode(Verify(Bolts(), Load(100, tension: 100), bare), "wood/bearing").Status);
        Assert.Equal(ModeStatus.NotApplicable, Mode(Verify(Bolts(), Load(100, tension: -100), bare), "wood/bearing").Status);
        SillPlate tight = HemFir with { Placement = new(GrainLoad.ParallelTension, true) { EndDistance = In(2) } };
        AttachmentVerification result = Verify(Bolts(), Load(100), tight);
        Assert.Equal(ModeStatus.NotSatisfied, Mode(result, "detailing/wood/placement").Status);
        Assert.Equal(Verdict.DoesNotHold, result.Verdict);
    }

    // The building code's alternative.

    private static readonly string[] Conditions = ["thickness", "diameter", "embedment", "edge", "end", "strength"];

    /// <summary>By hand: c of 4 in. and 24 in. ≥ 15 · 0.625 = 9.375 in.; every condition is met, so that breakout, pryout and 17.10.6 do not apply to shear along the wall; the steel stays.</summary>
    [Fact]
    public void Where_all_conditions_hold_shear_along_the_sill_is_the_woods()
    {
        AttachmentVerification result = Verify(Bolts(Design), WithEarthquake(Load(2000)));

        Assert.All(Conditions, c => Assert.Equal(ModeStatus.Satisfied, Mode(result, $"detailing/earthquake/sill/{c}").Status));
        Assert.All(
            ["shear/breakout/+x", "shear/breakout/-x", "shear/parallel/+y", "shear/parallel/-y", "shear/pryout", "earthquake/shear"],
            id => Assert.Equal((ModeStatus.NotApplicable, true), (Mode(result, id).Status, Mode(result, id).Reason!.Contains("wood sill", StringComparison.Ordinal))));
        Assert.Equal(1000, Mode(result, "shear/steel").Demand!.Value.PoundsForce, 1e-9);
        Assert.Equal("wood/yield", result.Governing!.Id);
        Assert.Equal(Verdict.Holds, result.Verdict);

        // The same wall without the alternative: 17.10.6.3 has no option, and the concrete is checked for all of the shear.
        AttachmentVerification without = Verify(Bolts(Design with { WoodSill = null }), WithEarthquake(Load(2000)));
        Assert.Equal(ModeStatus.NotCovered, Mode(without, "earthquake/shear").Status);
        Assert.NotEqual(Verdict.Holds, without.Verdict);
    }

    [Theory]
    [InlineData("thickness", 1.6, 0.625, 7, 4, 40)]
    [InlineData("thickness", 3.5, 0.625, 7, 4, 40)]
    [InlineData("diameter", 1.5, 0.75, 7, 4, 40)]
    [InlineData("embedment", 1.5, 0.625, 6.99, 4, 40)]
    [InlineData("edge", 1.5, 0.625, 7, 1.74, 40)]
    [InlineData("end", 1.5, 0.625, 7, 4, 25.37)]
    [InlineData(null, 1.5, 0.625, 7, 1.75, 25.375)]
    [InlineData(null, 2.5, 0.5, 7, 4, 40)]
    public void Each_condition_is_a_check_of_its_own(string? broken, double thickness, double diameter, double embedment, double edge, double end)
    {
        EarthquakeDesign design = Design with { WoodSill = new(SillDirection.X, In(thickness)), Shear = EarthquakeShearOption.Overstrength };
        SillPlate sill = new(HemFir.Species, In(thickness), SillDirection.X) { Washer = HemFir.Washer };
        AttachmentVerification result = Verify(Bolts(design, diameter, embedment, edge, end), WithEarthquake(Load(800)), sill);

        Assert.All(Conditions, c => Assert.Equal(c == broken ? ModeStatus.NotSatisfied : ModeStatus.Satisfied, Mode(result, $"detailing/earthquake/sill/{c}").Status));
        Assert.Equal(broken is null ? ModeStatus.NotApplicable : ModeStatus.Satisfied, Mode(result, "earthquake/shear").Status);
        Assert.Equal(broken is null, result.Modes.Any(m => m.Id == "shear/breakout/+x" && m.Status == ModeStatus.NotApplicable));

        // Without the alternative the shear counts Ω_0 times in the steel, with it once.
        Assert.Equal(broken is null ? 400 : 1000, Mode(result, "shear/steel").Demand!.Value.PoundsForce, 1e-9);
        Assert.Equal(400, Mode(result, "wood/yield").Demand!.Value.PoundsForce, 1e-9);
    }

    [Fact]
    public void Embedment_with_the_head_may_be_given()
    {
        EarthquakeDesign design = Design with { WoodSill = Design.WoodSill! with { Embedment = In(7) } };

        Assert.Equal(ModeStatus.Satisfied, Mode(Verify(Bolts(design, embedment: 6.5), WithEarthquake(Load(800))), "detailing/earthquake/sill/embedment").Status);
    }

    [Fact]
    public void Shear_across_the_sill_is_checked_all_the_same()
    {
        AttachmentVerification result = Verify(Bolts(Design), WithEarthquake(Load(2000, 500)));
        Assert.Equal(ModeStatus.NotCovered, Mode(result, "earthquake/shear").Status);

        AttachmentVerification chosen = Verify(Bolts(Design with { Shear = EarthquakeShearOption.Overstrength }), WithEarthquake(Load(2000, 500)));
        Assert.Equal(ModeStatus.Satisfied, Mode(chosen, "earthquake/shear").Status);

        // Ω_0 on the component across alone: 250 · 2.5 toward the edge; the steel 1,000 along and 625 across.
        Assert.Equal(625, chosen.Modes.Where(m => m.Id.StartsWith("shear/breakout/+y", StringComparison.Ordinal)).Max(m => m.Demand!.Value.PoundsForce), 1e-9);
        Assert.Equal(Math.Sqrt((1000.0 * 1000) + (625 * 625)), Mode(chosen, "shear/steel").Demand!.Value.PoundsForce, 1e-9);
        Assert.Equal(625, chosen.Modes.Where(m => m.Id.StartsWith("shear/pryout", StringComparison.Ordinal)).Max(m => m.Demand!.Value.PoundsForce), 1e-9);
        Assert.Equal(ModeStatus.NotApplicable, Mode(chosen, "shear/parallel/+y").Status);
    }

    [Fact]
    public void Without_earthquake_nothing_is_waived()
    {
        AttachmentVerification wind = Verify(Bolts(Design), Load(2000));

        Assert.NotNull(wind.Modes.First(m => m.Id.StartsWith("shear/breakout/+x", StringComparison.Ordinal)).Utilization);
        Assert.Contains(wind.Modes, m => m.Id.StartsWith("shear/pryout", StringComparison.Ordinal) && m.Utilization > 0);
    }

    /// <summary>By ACI 318 alone the strength by the wood standard has to be stated.</summary>
    [Fact]
    public void Without_a_sill_beside_it_the_strength_has_to_be_stated()
    {
        LoadCase load = WithEarthquake(Load(2000));
        Assert.Equal(ModeStatus.NotCovered, Mode(Method.Verify(Bolts(Design), load), "detailing/earthquake/sill/strength").Status);
        AttachmentVerification stated = Method.Verify(Bolts(Design with { WoodSill = Design.WoodSill! with { HasStrengthByNds = true } }), load);
        Assert.Equal(ModeStatus.NotApplicable, Mode(stated, "shear/pryout").Status);
        Assert.Equal(Verdict.Holds, stated.Verdict);
    }

    /// <summary>The fast path knows the alternative as well.</summary>
    [Fact]
    public void Evaluate_gives_the_same()
    {
        EarthquakeDesign design = Design with { WoodSill = Design.WoodSill! with { HasStrengthByNds = true }, Shear = EarthquakeShearOption.Overstrength };
        PreparedAttachment prepared = Method.Prepare(Bolts(design));
        LoadCase load = WithEarthquake(Load(2000, 300, 500));
        var results = new ModeResult[prepared.ModeCapacity];
        int count = prepared.Evaluate(prepared.Prepare(load), results);
        FailureMode[] modes = [.. prepared.Verify(load).Modes.Where(m => m.LoadCase is not null)];

        Assert.Equal(modes.Select(m => (m.Kind, m.Status, m.Utilization ?? -1)), results[..count].Select(r => (r.Kind, r.Status, double.IsNaN(r.Utilization) ? -1 : r.Utilization)));
    }

    [Fact]
    public void Bad_input_is_one_error()
    {
        Refused("thickness", () => new SillPlate(HemFir.Species, In(0), SillDirection.X));
        Refused("direction", () => new SillPlate(HemFir.Species, In(1.5), (SillDirection)5));
        Refused("gap", () => HemFir with { Gap = In(-1) });
        Refused("bendingYieldStrength", () => HemFir with { BendingYieldStrength = Psi(0) });
        Refused("direction", () => new WoodSill((SillDirection)5, In(1.5)));
        Refused("thickness", () => new WoodSill(SillDirection.X, In(-1)));
        Refused("embedment", () => new WoodSill(SillDirection.X, In(1.5)) { Embedment = In(0) });
        Refused("woodSill", () => new SillAnchorage(Method, Bolts(Design with { WoodSill = new(SillDirection.Y, In(1.5)) }), HemFir));
        Refused("woodSill", () => new SillAnchorage(Method, Bolts(Design with { WoodSill = new(SillDirection.X, In(2.5)) }), HemFir));
        var anchorage = new SillAnchorage(Method, Bolts(), HemFir);
        Refused("timeEffect", () => anchorage.Verify([new(Load(1))]));
        Refused("duration", () => anchorage.Verify([new(Load(1)) { TimeEffect = TimeEffect.Dead, Duration = LoadDuration.Permanent }]));
        Refused("loadCases", () => anchorage.Verify([]));

        static void Refused(string parameter, Func<object> act) => Assert.Equal(parameter, Assert.Throws<InputException>(act).Parameter);
    }
}
