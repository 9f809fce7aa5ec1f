using ConcreteAttach.Aci318;
using ConcreteAttach.Actions;
using ConcreteAttach.Attached;
using ConcreteAttach.Calculation;
using ConcreteAttach.Distribution;
using ConcreteAttach.Fasteners;
using ConcreteAttach.Geometry;
using ConcreteAttach.Materials;
using ConcreteAttach.Tests.Benchmarks;
using ConcreteAttach.Verification;
using UnitsNet;

namespace ConcreteAttach.Tests.Properties;

/// <summary>What holds of every attachment with shear lugs, over random ones: one lug or two, crossed or not, with grout and stiffeners, in tension and compression, rods and welded studs.</summary>
public sealed class ShearLugProperties
{
    private const int Count = 1_000;

    [Fact]
    public void A_mirrored_attachment_has_the_same_answer() => Each(s =>
        Outcome.AssertSame(Outcome.Of(s.Verify().Modes, Variants.Mirrored), Outcome.Of(s.Mirrored().Verify().Modes, side => side)));

    [Fact]
    public void A_quarter_turn_has_the_same_answer() => Each(s =>
        Outcome.AssertSame(Outcome.Of(s.Verify().Modes, Variants.Turned), Outcome.Of(s.Turned().Verify().Modes, side => side)));

    [Fact]
    public void Evaluate_and_the_recorded_verification_agree_to_the_bit()
    {
        int strengths = 0;
        Each(s =>
        {
            PreparedAttachment prepared = s.Prepared;
            var results = new ModeResult[prepared.ModeCapacity];
            int count = prepared.Evaluate(prepared.Prepare(s.LoadCase), results);
            FailureMode[] modes = [.. prepared.Verify([s.LoadCase], SheetScope.All).Modes.Where(m => m.LoadCase is not null)];
            Assert.Equal(count, modes.Length);
            for (int i = 0; i < count; i++)
            {
                Assert.Equal((results[i].Kind, results[i].Side, results[i].Status), (modes[i].Kind, modes[i].Side, modes[i].Status));
                Assert.Equal((results[i].NominalValue, results[i].DemandValue, results[i].Utilization), (modes[i].Result.NominalValue, modes[i].Result.DemandValue, modes[i].Result.Utilization));
                if (results[i].Kind is FailureModeKind.ShearLugBearing or FailureModeKind.ShearLugBreakout or FailureModeKind.ShearLugParallel && results[i].NominalValue > 0)
                {
                    // The last line of the sheet is the number that was returned.
                    Assert.Equal(results[i].NominalValue, modes[i].Sheet!.Find(results[i].Kind == FailureModeKind.ShearLugBearing ? "V_brg_sl" : "V_cb_sl"));
                    strengths++;
                }
            }
        });
        Assert.True(strengths > 2 * Count, $"{strengths} strengths");
    }

    [Fact]
    public void Evaluate_allocates_nothing()
    {
        foreach (LugSample sample in LugSample.Take(20, seed: 1105))
        {
            PreparedAttachment prepared = sample.Prepared;
            PreparedActions actions = prepared.Prepare(sample.LoadCase);
            var results = new ModeResult[prepared.ModeCapacity];
            Assert.Equal(0, Allocation.Of(() =>
            {
                for (int i = 0; i < 100; i++)
                {
                    prepared.Evaluate(actions, results);
                }
            }));
        }
    }

    [Fact]
    public void More_compression_never_lowers_bearing() => Each(s =>
    {
        double before = 0;
        foreach (double kips in new double[] { 300, 60, 10, 0, -10, -60, -300, -3000 })
        {
            double now = (s with { LoadCase = s.LoadCase with { N = Force.FromKilopoundsForce(kips) } }).Verify().Modes.Where(m => m.Kind == FailureModeKind.ShearLugBearing)
                .Select(m => m.Nominal?.Newtons ?? 0).DefaultIfEmpty(0).Max();
            Assert.True(now >= before, $"{s}: {kips} kip gives {now}, {before} with less compression");
            before = now;
        }
    });

    [Fact]
    public void Thicker_concrete_never_weakens_a_lug() => Each(s =>
    {
        ConcreteMember c = s.Attachment.Concrete;
        var thicker = new ConcreteMember(c.Strength, c.Thickness * 1.3) { Edges = c.Edges, IsCracked = c.IsCracked };
        Dictionary<string, FailureMode> after = s.With(thicker).Verify().Modes.ToDictionary(m => m.Id);
        foreach (FailureMode mode in s.Verify().Modes.Where(m => m is { Kind: FailureModeKind.ShearLugBreakout or FailureModeKind.ShearLugParallel, Nominal: not null }))
        {
            // Where the narrow and thin member has c_a1', 17.7.2.1.2 itself does not grow with the thickness alone.
            if (s.Sheet(mode.Id).Find("c_a1'") is null)
            {
                Assert.True(after[mode.Id].Nominal!.Value.Newtons >= mode.Nominal!.Value.Newtons * (1 - 1e-12), $"{s}, {mode.Id}");
            }
        }
    });

    [Fact]
    public void An_edge_that_is_farther_never_weakens_breakout_toward_it() => Each(s =>
    {
        EdgeDistances edges = s.Attachment.Concrete.Edges;
        if (edges.PlusX is not { } near)
        {
            return;
        }

        AttachmentVerification farther = s.With(s.Attachment.Concrete with { Edges = edges with { PlusX = near * 1.2 } }).Verify();
        foreach (FailureMode mode in s.Verify().Modes.Where(m => m.Kind == FailureModeKind.ShearLugBreakout && m.Side == ConcreteSide.PlusX && m.Nominal is not null))
        {
            bool isNarrow = IsNarrow(s, mode);
            FailureMode? after = farther.Modes.FirstOrDefault(m => m.Id == mode.Id);
            if (!isNarrow && after?.Nominal is { } strength)
            {
                Assert.True(strength.Newtons >= mode.Nominal!.Value.Newtons * (1 - 1e-12), $"{s}, {mode.Id}: {mode.Nominal.Value.Newtons} then {strength.Newtons}");
            }
        }

        // In a narrow member the area stops growing with c_a1 while A_Vco goes on: V_cb falls as c_a1^-0.5 until 17.7.2.1.2 stops it. That is the printed formula.
        static bool IsNarrow(LugSample sample, FailureMode mode)
        {
            CalculationSheet sheet = sample.Sheet(mode.Id);
            double reach = 1.8 * 1.5 * sheet.Find("c_a1")!.Value;
            double? low = sheet.Find("c_-y"), high = sheet.Find("c_+y");
            double thickness = sheet.Find("h_a")!.Value;
            return low < reach || high < reach || sheet.Find("c_a2") < reach || thickness < reach + 20;
        }
    });

    [Fact]
    public void At_its_load_factor_the_attachment_just_holds()
    {
        int searched = 0;
        Each(s =>
        {
            AttachmentVerification verification = s.Verify();
            if (verification.LoadFactor is not { } factor)
            {
                return;
            }

            searched++;
            AttachmentVerification below = (s with { LoadCase = s.LoadCase.Times(factor * (1 - 1e-9)) }).Verify();
            Assert.True(below.Verdict != Verdict.DoesNotHold, $"{s}: {factor}, {below.Governing?.Id} {below.Governing?.Utilization}, before {verification.Governing?.Id} {verification.Governing?.Utilization}");
            AttachmentVerification above = (s with { LoadCase = s.LoadCase.Times(factor * (1 + 1e-6)) }).Verify();

            // The gate of 17.8.2 does not decide the load factor: where the interaction governs it, its sum is at the limit.
            Assert.True(above.Verdict == Verdict.DoesNotHold || above.Modes.Any(m => m.Kind == FailureModeKind.Interaction && m.Status == ModeStatus.NotApplicable), $"{s}: {factor}");
        });
        Assert.True(searched > Count / 10, $"{searched} load factors");
    }

    [Fact]
    public void Rods_take_no_shear_and_studs_their_share() => Each(s =>
    {
        AttachmentVerification verification = s.Verify();
        bool isStud = s.Attachment.Fastener is HeadedStud;
        Assert.Equal(!isStud, verification.Forces.All(f => f.ShearX.Value == 0 && f.ShearY.Value == 0));
        Assert.Equal(!isStud, verification.Modes.Any(m => m.Id == "shear/steel" && m.Status == ModeStatus.NotApplicable));

        // The couple changes who pulls, never the sum.
        if (s.LoadCase.N.Value > 0 && verification.Contacts.All(c => c.Compression.Value == 0))
        {
            Assert.Equal(s.LoadCase.N.Newtons, verification.Forces.Sum(f => f.Tension.Newtons), 1e-9 * s.LoadCase.N.Newtons);
        }
    });

    private static void Each(Action<LugSample> check)
    {
        foreach (LugSample sample in LugSample.Take(Count, seed: 1104))
        {
            check(sample);
        }
    }
}

/// <summary>A random attachment with shear lugs, and a load case that the lugs are for.</summary>
internal sealed record LugSample(Attachment Attachment, LoadCase LoadCase)
{
    public PreparedAttachment Prepared => new Aci318Method(Aci318Edition.InchPound2019).Prepare(Attachment);

    public AttachmentVerification Verify() => Prepared.Verify([LoadCase], SheetScope.None);

    public CalculationSheet Sheet(string id) => Prepared.Verify([LoadCase], SheetScope.All).Modes.Single(m => m.Id == id).Sheet!;

    public LugSample With(ConcreteMember concrete) =>
        this with { Attachment = new Attachment(concrete, Attachment.Fastener, Attachment.Layout) { Plate = Attachment.Plate, ShearLugs = Attachment.ShearLugs } };

    public LugSample Mirrored() => With(p => new(-p.X, p.Y), e => e with { PlusX = e.MinusX, MinusX = e.PlusX }, l => l with { Vx = -l.Vx, My = -l.My }, axis => axis, isMirrored: true);

    public LugSample Turned() => With(
        p => new(-p.Y, p.X), e => new EdgeDistances { PlusY = e.PlusX, MinusX = e.PlusY, MinusY = e.MinusX, PlusX = e.MinusY }, l => l with { Vx = -l.Vy, Vy = l.Vx, Mx = -l.My, My = l.Mx },
        axis => axis == ShearAxis.X ? ShearAxis.Y : ShearAxis.X, isMirrored: false);

    public static IEnumerable<LugSample> Take(int count, int seed)
    {
        var random = new Random(seed);
        for (int i = 0; i < count; i++)
        {
            yield return Next(random);
        }
    }

    private static LugSample Next(Random random)
    {
        double half = Between(5, 9), place = half - 2;
        double grout = Chance(0.4) ? Between(0.5, 2) : 0;
        Fastener fastener = Chance(0.25)
            ? new HeadedStud(In(0.75), AnchorSteels.Find("AWS D1.1 Type B", In(0.75)), In(Between(8, 20))) { BearingArea = Area.FromSquareInches(0.785), WeldedToPlate = new(In(0.75), hasCornerReinforcement: true) }
            : new HeadedBolt(In(0.75), AnchorSteels.Find("ASTM F1554 Grade 36", In(0.75)), In(Between(8, 20))) { TensileArea = Area.FromSquareInches(0.334) };
        EdgeDistances edges = new() { PlusX = Edge(), MinusX = Edge(), PlusY = Edge(), MinusY = Edge() };
        bool isAlongX = Chance(0.7);
        int behind = Chance(0.4) ? 2 : 1;
        double gap = Between(3, 6);
        var lugs = new List<ShearLug>();
        for (int i = 0; i < behind; i++)
        {
            lugs.Add(Lug(isAlongX ? ShearAxis.X : ShearAxis.Y, behind == 1 ? 0 : (i - 0.5) * gap));
        }

        bool isCrossed = behind == 1 && Chance(0.3);
        if (isCrossed)
        {
            lugs.Add(Lug(isAlongX ? ShearAxis.Y : ShearAxis.X, 0));
        }

        double shear = Between(-30, 30), across = isCrossed ? Between(-10, 10) : 0;
        var plate = new BasePlate(SurfaceOutline.Polygon(At(-half, -half), At(half, -half), At(half, half), At(-half, half)), PlateContact.StrainCompatibility) { GroutThickness = In(grout) };
        var attachment = new Attachment(
            new ConcreteMember(Pressure.FromPoundsForcePerSquareInch(Between(2500, 8000)), In(Between(22, 40))) { Edges = edges, IsCracked = Chance(0.7) },
            fastener, FastenerLayout.Points([At(-place, -place), At(place, -place), At(place, place), At(-place, place)]))
        {
            Plate = plate,
            ShearLugs = [.. lugs],
        };
        return new(attachment, new("random")
        {
            N = Kips(Chance(0.15) ? 0 : Between(-60, 30)), Vx = Kips(isAlongX ? shear : across), Vy = Kips(isAlongX ? across : shear),
            Mx = Chance(0.3) ? Torque.FromKilopoundForceInches(Between(-100, 100)) : Torque.Zero, My = Chance(0.3) ? Torque.FromKilopoundForceInches(Between(-100, 100)) : Torque.Zero,
        });

        double Between(double low, double high) => low + ((high - low) * random.NextDouble());
        bool Chance(double share) => random.NextDouble() < share;
        Length? Edge() => Chance(0.4) ? null : In(half + Between(1, 30));
        ShearLug Lug(ShearAxis axis, double along) => new(axis, In(Between(0.75, 2)), In(Between(3, 1.2 * place)), In(grout + Between(1, 4)))
        {
            At = axis == ShearAxis.X ? At(along, 0) : At(0, along),
            Stiffeners = Chance(0.3) ? new(In(0.5), In(Between(1, 3)), [In(Between(-1, 1))]) : null,
        };
    }

    private LugSample With(Func<FastenerPosition, FastenerPosition> place, Func<EdgeDistances, EdgeDistances> edges, Func<LoadCase, LoadCase> actions, Func<ShearAxis, ShearAxis> axis, bool isMirrored)
    {
        IEnumerable<FastenerPosition> corners = Attachment.Plate!.Outline.Vertices.Select(place);
        return new(
            new Attachment(Attachment.Concrete with { Edges = edges(Attachment.Concrete.Edges) }, Attachment.Fastener, FastenerLayout.Points(Attachment.Layout.Positions.Select(place)))
            {
                Plate = new BasePlate(SurfaceOutline.Polygon([.. corners]), Attachment.Plate.Contact) { GroutThickness = Attachment.Plate.GroutThickness },

                // Stiffeners are told by their place along the width: along x for a lug that takes y. A mirror turns those about, and so does a quarter turn that brings y to -x.
                ShearLugs = [.. Attachment.ShearLugs.Select(lug => new ShearLug(axis(lug.Takes), lug.Thickness, lug.Width, lug.Depth) { At = place(lug.At), Stiffeners = TurnedAbout(lug) })],
            },
            actions(LoadCase));

        ShearLugStiffeners? TurnedAbout(ShearLug lug) => lug.Stiffeners is { } s && (isMirrored ? lug.Takes == ShearAxis.Y : lug.Takes == ShearAxis.X)
            ? new(s.Thickness, s.Length, [.. s.Places.Select(p => -p)])
            : lug.Stiffeners;
    }

    private static FastenerPosition At(double x, double y) => new(In(x), In(y));

    private static Length In(double value) => Length.FromInches(value);

    private static Force Kips(double value) => Force.FromKilopoundsForce(value);
}
