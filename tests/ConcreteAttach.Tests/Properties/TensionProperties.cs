using ConcreteAttach.Aci318;
using ConcreteAttach.Actions;
using ConcreteAttach.Attached;
using ConcreteAttach.Fasteners;
using ConcreteAttach.Geometry;
using ConcreteAttach.Materials;
using ConcreteAttach.Verification;
using FsCheck;
using FsCheck.Fluent;
using UnitsNet;
using UnitsNet.Units;

namespace ConcreteAttach.Tests.Properties;

/// <summary>What must hold of any attachment in tension; and, by name, the places where the standard itself is not monotone.</summary>
public sealed class TensionProperties
{
    private static readonly Config Thousand = Config.QuickThrowOnFailure.WithMaxTest(1_000).WithReplay(32, 5);

    private static Arbitrary<AttachmentSample> Samples => SymmetryProperties.Samples;

    [Fact]
    public void Strength_does_not_fall_with_the_strength_of_the_concrete() => Check.One(Thousand, Prop.ForAll(Samples, s =>
    {
        double psi = s.Attachment.Concrete.Strength.PoundsForcePerSquareInch;
        List<Outcome> lower = Tension(s), higher = Tension(s.WithStrength(Pressure.FromPoundsForcePerSquareInch(psi * 1.07)));
        Assert.Equal(lower.Select(o => (o.Kind, o.Side)), higher.Select(o => (o.Kind, o.Side)));
        Assert.All(lower.Zip(higher), pair => NotLess(pair.First.Nominal, pair.Second.Nominal));

        // Concrete governs in three of the four modes of cast-in fasteners: below the cap of 17.3.1 they do grow, steel does not.
        if (s.Attachment.Fastener is CastInFastener && psi * 1.07 < (s.Method.Edition.System == ConcreteAttach.Quantities.MeasurementSystem.PoundInch ? 10_000 : 10_150))
        {
            Assert.All(lower.Zip(higher).Where(p => p.First.Nominal > 0), pair => Assert.Equal(pair.First.Kind != FailureModeKind.SteelTension, pair.Second.Nominal > pair.First.Nominal * 1.01));
        }
    }));

    [Fact]
    public void Breakout_does_not_fall_with_embedment_away_from_edges() => Check.One(Thousand, Prop.ForAll(Samples, s =>
    {
        AttachmentSample noEdges = s.With(c => c with { Edges = EdgeDistances.None });
        Length before = s.Attachment.Fastener.EffectiveEmbedment, after = before * 1.05;
        if (IsAcrossDeepLimit(before, after))
        {
            return;
        }

        FailureMode[] shallow = Breakouts(noEdges), deep = Breakouts(noEdges.WithEmbedment(after));
        if (shallow.Length == deep.Length)
        {
            Assert.All(shallow.Zip(deep), pair => NotLess(pair.First.Nominal!.Value.Newtons, pair.Second.Nominal!.Value.Newtons));
        }
    }));

    [Fact]
    public void Breakout_of_one_fastener_does_not_fall_with_embedment_beside_up_to_two_edges() => Check.One(Thousand, Prop.ForAll(Samples, s =>
    {
        AttachmentSample single = Alone(s);
        Length before = s.Attachment.Fastener.EffectiveEmbedment, after = before * 1.05;
        if (!IsAcrossDeepLimit(before, after) && CloseEdges(single, after) < 3)
        {
            // None where a product lacks its category, or a screw leaves the limits of its embedment.
            if (Breakouts(single) is [var shallow] && Breakouts(single.WithEmbedment(after)) is [var deep])
            {
                NotLess(shallow.Nominal!.Value.Newtons, deep.Nominal!.Value.Newtons);
            }
        }
    }));

    [Fact]
    public void Breakout_does_not_fall_when_an_edge_moves_away_unless_three_are_close() => Check.One(Thousand, Prop.ForAll(Samples, s =>
    {
        EdgeDistances edges = s.Attachment.Concrete.Edges;
        var away = Length.FromMillimeters(17);
        foreach (EdgeDistances moved in new[]
        {
            edges with { PlusX = edges.PlusX + away }, edges with { MinusX = edges.MinusX + away }, edges with { PlusY = edges.PlusY + away }, edges with { MinusY = edges.MinusY + away }, EdgeDistances.None,
        })
        {
            if (CloseEdges(s, s.Attachment.Fastener.EffectiveEmbedment) < 3)
            {
                FailureMode[] near = Breakouts(s), far = Breakouts(s.With(c => c with { Edges = moved }));
                Assert.Equal(near.Length, far.Length);
                Assert.All(near.Zip(far), pair => NotLess(pair.First.Nominal!.Value.Newtons, pair.Second.Nominal!.Value.Newtons));
            }
        }
    }));

    [Fact]
    public void Blowout_does_not_fall_when_its_edge_moves_away_as_long_as_it_applies() => Check.One(Thousand, Prop.ForAll(Samples, s =>
    {
        EdgeDistances edges = s.Attachment.Concrete.Edges;
        AttachmentSample moved = s.With(c => c with { Edges = edges with { PlusX = edges.PlusX + Length.FromMillimeters(1) } });
        FailureMode[] near = Blowouts(s, ConcreteSide.PlusX), far = Blowouts(moved, ConcreteSide.PlusX);
        if (near.Length == far.Length)
        {
            Assert.All(near.Zip(far).Where(p => p.First.Group.SequenceEqual(p.Second.Group)), pair => NotLess(pair.First.Nominal!.Value.Newtons, pair.Second.Nominal!.Value.Newtons));
        }
    }));

    // ---- Where the standard is not monotone ----

    // 17.6.2.2.3: from 11 in. on, 16 h_ef^(5/3) replaces 24 h_ef^1.5; at 11 in. it is the smaller one: 870.5 against 875.6.
    [Fact]
    public void Basic_strength_steps_down_at_11_inches()
    {
        double below = SingleBreakout(10.999), at = SingleBreakout(11);

        Assert.Equal(24 * Math.Sqrt(4000) * Math.Pow(10.999, 1.5), below, 6);
        Assert.Equal(16 * Math.Sqrt(4000) * Math.Pow(11, 5.0 / 3), at, 6);
        Assert.InRange(at / below, 0.994, 0.995);
    }

    // Beyond 25 in. the standard has no h_ef^(5/3): back to h_ef^1.5, 3000 against 3420. The option extends instead.
    [Fact]
    public void Basic_strength_steps_down_beyond_25_inches_unless_it_is_extended()
    {
        double at = SingleBreakout(25), beyond = SingleBreakout(25.001), extended = SingleBreakout(25.001, new Aci318Options { Deep = DeepReading.Extend });

        Assert.Equal(16 * Math.Sqrt(4000) * Math.Pow(25, 5.0 / 3), at, 6);
        Assert.Equal(24 * Math.Sqrt(4000) * Math.Pow(25.001, 1.5), beyond, 6);
        Assert.InRange(beyond / at, 0.877, 0.878);
        Assert.True(extended > at);
    }

    // 17.6.4.1: from h_ef > 2.5 c_a1 on, side-face blowout is a mode of its own, and it may be the weakest at once.
    [Fact]
    public void Blowout_switches_on_with_depth()
    {
        AttachmentSample s = Single(7.5, EdgeDistances.None with { PlusX = Length.FromInches(3) });

        Assert.Equal(ModeStatus.NotApplicable, Tension(s).Single(o => o.Side == ConcreteSide.PlusX).Status);
        Outcome deeper = Tension(s.WithEmbedment(Length.FromInches(7.51))).Single(o => o.Side == ConcreteSide.PlusX);
        Assert.Equal(ModeStatus.Satisfied, deeper.Status);

        // 160 c_a1 √A_brg √f'c with A_brg = 0.5 in²: 21 466 lbf, whatever the depth.
        Assert.Equal(160 * 3 * Math.Sqrt(0.5) * Math.Sqrt(4000), Force.FromNewtons(deeper.Nominal).PoundsForce, 6);
    }

    // 17.6.2.1.2: c_a,max is the largest distance that is not above 1.5 h_ef. An edge that moves beyond 1.5 h_ef no longer counts, and the strength
    // falls with it. By hand, one fastener, h_ef = 12, edges at 4, 4, 4 and c: for c = 18, h'_ef = 12; for c = 18.1, h'_ef = 4/1.5.
    [Fact]
    public void The_largest_close_edge_that_moves_out_of_reach_costs_strength()
    {
        EdgeDistances edges = new() { PlusX = Length.FromInches(4), MinusX = Length.FromInches(4), PlusY = Length.FromInches(4), MinusY = Length.FromInches(17.99) };
        double within = Assert.Single(Breakouts(Single(12, edges))).Nominal!.Value.PoundsForce;
        double beyond = Assert.Single(Breakouts(Single(12, edges with { MinusY = Length.FromInches(18.01) }))).Nominal!.Value.PoundsForce;

        Assert.Equal(ByHand(17.99 / 1.5, 17.99), within, 6);
        Assert.Equal(ByHand(4 / 1.5, 4), beyond, 6);
        Assert.True(beyond < within);

        // (c_-x + c_+x)(c_+y + 1.5 h'), ψ_ed = 0.7 + 0.3 · 4/(1.5 h'), N_b by depth.
        static double ByHand(double h, double fourth) =>
            8 * (4 + fourth) / (9 * h * h) * (0.7 + (0.3 * 4 / (1.5 * h))) * Math.Sqrt(4000) * (h >= 11 ? 16 * Math.Pow(h, 5.0 / 3) : 24 * Math.Pow(h, 1.5));
    }

    // A fastener in tension by a trace joins A_Nc and the centroid. By hand: four at (±3, ±3), h_ef = 6, tensions 2 : 1 : 1 : 0. Without the fourth,
    // A_Nc = 24² − 6² = 540 and e' = 0.5 on both axes; with it, A_Nc = 576 and e' = 1.5: 484.7 against 423.2, down by an eighth.
    [Fact]
    public void A_barely_tensioned_fastener_joins_the_projected_area()
    {
        double without = BreakoutOfSquare(-1e-6), with = BreakoutOfSquare(1e-6);

        double nb = 24 * Math.Sqrt(4000) * Math.Pow(6, 1.5);
        Assert.Equal(540.0 / 324 / Math.Pow(1 + (0.5 / 9), 2) * nb, without, nb * 1e-5);
        Assert.Equal(576.0 / 324 / Math.Pow(1 + (1.5 / 9), 2) * nb, with, nb * 1e-5);

        static double BreakoutOfSquare(double fourth)
        {
            // T = N/4 + M_x y/36 − M_y x/36 with N = 4 + δ, M_x = −6 + 3 δ/... : the moments that give 2 : 1 : 1 : δ.
            double n = 4 + fourth, m = 3 * (2 - fourth);
            AttachmentSample s = Sample(6, FastenerLayout.Rectangle(2, Length.FromInches(6), 2, Length.FromInches(6)), EdgeDistances.None) with
            {
                LoadCase = new LoadCase("case") { N = Force.FromPoundsForce(1000 * n), Mx = Torque.FromPoundForceInches(-1000 * m), My = Torque.FromPoundForceInches(1000 * m) },
            };
            return Assert.Single(Breakouts(s)).Nominal!.Value.PoundsForce;
        }
    }

    // 17.6.2.4: ψ_ed,N reaches 1 at 1.5 h_ef without a step. By hand for one fastener, h_ef = 6: c = 8.7 gives A_Nc = 17.7 · 18 and ψ_ed,N = 0.99.
    [Fact]
    public void The_edge_factor_ends_without_a_step()
    {
        double nb = 24 * Math.Sqrt(4000) * Math.Pow(6, 1.5);
        double Strength(double edge) => Assert.Single(Breakouts(Single(6, EdgeDistances.None with { PlusY = Length.FromInches(edge) }))).Nominal!.Value.PoundsForce;

        Assert.Equal(17.7 * 18 / 324 * 0.99 * nb, Strength(8.7), 6);
        Assert.Equal(nb, Strength(9), 6);
        Assert.Equal(nb, Strength(9 - 1e-7), nb * 1e-7);
        Assert.Equal(nb, Strength(20), 6);
    }

    // In a narrow member depth brings no area across it, and ψ_ed falls: by hand, two fasteners 17 in. apart along a strip 8 in. wide,
    // A_Nc = 8 (17 + 3 h); h_ef 6: 8 · 35/324 · (0.7 + 0.3 · 4/9) · 6^1.5 = 10.58; h_ef 7: 8 · 38/441 · (0.7 + 0.3 · 4/10.5) · 7^1.5 = 10.40.
    [Fact]
    public void A_group_in_a_narrow_member_loses_strength_with_depth()
    {
        EdgeDistances strip = new() { PlusX = Length.FromInches(4), MinusX = Length.FromInches(4) };
        double Strength(double depth) => Assert.Single(Breakouts(Sample(depth, FastenerLayout.RowAlongY(2, Length.FromInches(17)), strip))).Nominal!.Value.PoundsForce / (24 * Math.Sqrt(4000));

        Assert.Equal(10.58, Strength(6), 0.005);
        Assert.Equal(10.40, Strength(7), 0.005);
    }

    // ---- Same attachment, other words ----

    [Fact]
    public void Feet_ksi_and_kip_give_the_same_answer_as_inches_psi_and_pounds() => Check.One(Thousand, Prop.ForAll(Plain, p =>
        Identical(p.Build(LengthUnit.Inch, x => (double)x, PressureUnit.PoundForcePerSquareInch, f => (double)f, ForceUnit.PoundForce, n => (double)n),
            p.Build(LengthUnit.Foot, x => (double)x / 12, PressureUnit.KilopoundForcePerSquareInch, f => (double)f / 1000, ForceUnit.KilopoundForce, n => (double)n / 1000), exact: false)));

    [Fact]
    public void Inches_and_exact_millimetres_give_the_same_bits() => Check.One(Thousand, Prop.ForAll(Plain, p =>
        Identical(p.Build(LengthUnit.Inch, x => (double)x, PressureUnit.PoundForcePerSquareInch, f => (double)f, ForceUnit.PoundForce, n => (double)n),
            p.Build(LengthUnit.Millimeter, x => (double)(x * 25.4m), PressureUnit.PoundForcePerSquareInch, f => (double)f, ForceUnit.PoundForce, n => (double)n), exact: true)));

    [Fact]
    public void Metric_strengths_and_forces_give_the_same_answer_within_rounding() => Check.One(Thousand, Prop.ForAll(Plain, p =>
        Identical(p.Build(LengthUnit.Inch, x => (double)x, PressureUnit.PoundForcePerSquareInch, f => (double)f, ForceUnit.PoundForce, n => (double)n),
            p.Build(LengthUnit.Centimeter, x => (double)(x * 2.54m), PressureUnit.Megapascal, f => (double)f * 0.006894757293168361, ForceUnit.Kilonewton, n => (double)n * 0.0044482216152605), exact: false)));

    [Fact]
    public void Two_groups_far_apart_are_each_as_strong_as_alone() => Check.One(Thousand, Prop.ForAll(Samples, s =>
    {
        AttachmentSample noEdges = s.With(c => c with { Edges = EdgeDistances.None }) with { LoadCase = new LoadCase("case") };
        FailureMode[] alone = Breakouts(noEdges);
        var away = Length.FromMillimeters((4 * s.Attachment.Fastener.EffectiveEmbedment.Millimeters)
            + s.Attachment.Layout.Positions.Max(p => p.X.Millimeters) - s.Attachment.Layout.Positions.Min(p => p.X.Millimeters));
        FastenerLayout both = FastenerLayout.Points([.. s.Attachment.Layout.Positions, .. s.Attachment.Layout.Positions.Select(p => new FastenerPosition(p.X + away, p.Y))]);
        FailureMode[] together = Breakouts(noEdges with { Attachment = new(noEdges.Attachment.Concrete, s.Attachment.Fastener, both) });

        Assert.Equal(2 * alone.Length, together.Length);
        double sum = 2 * alone.Sum(m => m.Nominal!.Value.Newtons);
        Assert.Equal(sum, together.Sum(m => m.Nominal!.Value.Newtons), 1e-9 * sum);
    }));

    [Fact]
    public void No_action_gives_no_utilization_and_the_strength_of_a_concentric_load() => Check.One(Thousand, Prop.ForAll(Samples, s =>
    {
        AttachmentSample idle = s with { LoadCase = new LoadCase("idle") };
        AttachmentVerification verification = idle.Prepared.Verify([idle.LoadCase], SheetScope.None);
        Assert.All(verification.Modes.Where(m => m.Utilization is not null), m => Assert.Equal(0, m.Utilization));
        Assert.Null(verification.LoadFactor);

        // Equal tension on all: the same strengths.
        var centroid = new FastenerPosition(
            Length.FromMillimeters(s.Attachment.Layout.Positions.Average(p => p.X.Millimeters)), Length.FromMillimeters(s.Attachment.Layout.Positions.Average(p => p.Y.Millimeters)));
        List<Outcome> concentric = Tension(s with { LoadCase = new LoadCase("concentric") { N = Force.FromKilonewtons(1), At = centroid } });
        List<Outcome> none = Tension(idle);
        Assert.Equal(concentric.Count(o => o.Nominal > 0), none.Count(o => o.Nominal > 0));
        Assert.All(none.Where(o => o.Nominal > 0).Zip(concentric.Where(o => o.Nominal > 0)), pair =>
        {
            Assert.Equal((pair.Second.Kind, pair.Second.Side), (pair.First.Kind, pair.First.Side));
            Assert.Equal(pair.Second.Nominal, pair.First.Nominal, 1e-9 * pair.Second.Nominal);
        });
    }));

    [Fact]
    public void Actions_times_a_factor_give_utilizations_times_that_factor() => Check.One(Thousand, Prop.ForAll(Samples, s =>
    {
        const double factor = 0.37;
        List<Outcome> full = Outcome.Of(s, k => k != FailureModeKind.Interaction), part = Outcome.Of(s with { LoadCase = s.LoadCase.Times(factor) }, k => k != FailureModeKind.Interaction);
        Assert.Equal(full.Select(o => (o.Kind, o.Side)), part.Select(o => (o.Kind, o.Side)));
        Assert.All(full.Zip(part), pair =>
        {
            Assert.Equal(pair.First.Nominal, pair.Second.Nominal, 1e-9 * pair.First.Nominal);
            Assert.Equal(factor * pair.First.Utilization, pair.Second.Utilization, 1e-9 * Math.Max(1, pair.First.Utilization));
        });

        double before = Interaction(s), after = Interaction(s with { LoadCase = s.LoadCase.Times(factor) });
        Assert.True(after <= before);

        static double Interaction(AttachmentSample sample) => Outcome.Of(sample, k => k == FailureModeKind.Interaction).Max(o => o.Utilization);
    }));

    [Fact]
    public void The_load_factor_is_where_the_verdict_changes() => Check.One(Thousand, Prop.ForAll(Samples, s =>
    {
        AttachmentVerification verification = s.Prepared.Verify([s.LoadCase], SheetScope.None);
        if (verification.LoadFactor is { } factor)
        {
            Assert.Equal(Verdict.Holds, s.Prepared.Verify([s.LoadCase.Times(factor * 0.999999)], SheetScope.None).Verdict);
            Assert.Equal(Verdict.DoesNotHold, s.Prepared.Verify([s.LoadCase.Times(factor * 1.000001)], SheetScope.None).Verdict);
        }
    }));

    [Fact]
    public void An_edge_far_away_changes_nothing_in_tension() => Check.One(Thousand, Prop.ForAll(Samples, s =>
    {
        EdgeDistances edges = s.Attachment.Concrete.Edges;
        var far = Length.FromMeters(50);
        AttachmentSample more = s.With(c => c with
        {
            Edges = new EdgeDistances { PlusX = edges.PlusX ?? far, MinusX = edges.MinusX ?? far, PlusY = edges.PlusY ?? far, MinusY = edges.MinusY ?? far },
        });

        Outcome.AssertSame([.. Tension(s).Where(o => o.Nominal > 0)], [.. Tension(more).Where(o => o.Nominal > 0)]);
    }));

    /// <summary>An attachment in numbers that a person writes: eighths of an inch, hundreds of psi and of pounds.</summary>
    public sealed record PlainSample(int Seed)
    {
        internal AttachmentSample Build(
            LengthUnit lengthUnit, Func<decimal, double> length, PressureUnit pressureUnit, Func<decimal, double> pressure, ForceUnit forceUnit, Func<decimal, double> force)
        {
            var random = new Random(Seed);
            Length Eighths(int from, int to) => new(length(random.Next(from, to + 1) / 8m), lengthUnit);
            Length depth = Eighths(16, 160);
            var positions = new List<FastenerPosition>();
            int columns = random.Next(1, 4), rows = random.Next(1, 4);
            int stepX = random.Next(8, 80), stepY = random.Next(8, 80);
            for (int i = 0; i < columns * rows; i++)
            {
                positions.Add(new(new Length(length(i % columns * stepX / 8m), lengthUnit), new Length(length(i / columns * stepY / 8m), lengthUnit)));
            }

            var concrete = new ConcreteMember(new Pressure(pressure(100 * random.Next(25, 100)), pressureUnit), Eighths(100, 300))
            {
                Edges = new EdgeDistances
                {
                    PlusX = new Length(length(((columns - 1) * stepX / 8m) + (random.Next(16, 160) / 8m)), lengthUnit),
                    MinusY = Eighths(16, 160),
                },
                Cover = new Length(length(1.5m), lengthUnit),
            };
            var steel = new AnchorSteel("invented steel", new Pressure(pressure(36_000), pressureUnit), new Pressure(pressure(58_000), pressureUnit), true);
            var bolt = new HeadedBolt(new Length(length(0.75m), lengthUnit), steel, depth) { TensileArea = Area.FromSquareInches(0.334), BearingArea = Area.FromSquareInches(0.654) };
            var at = new FastenerPosition(new Length(length((columns - 1) * stepX / 16m), lengthUnit), new Length(length((rows - 1) * stepY / 16m), lengthUnit));
            var loadCase = new LoadCase("case") { N = new Force(force(100 * random.Next(1, 300)), forceUnit), Vx = new Force(force(100 * random.Next(-99, 99)), forceUnit), At = at };
            Aci318Edition edition = AttachmentSamples.Editions[random.Next(AttachmentSamples.Editions.Count)];
            return new(new Aci318Method(edition), new Attachment(concrete, bolt, FastenerLayout.Points(positions)), loadCase);
        }
    }

    private static Arbitrary<PlainSample> Plain { get; } = Arb.From(Gen.Choose(0, int.MaxValue - 1).Select(seed => new PlainSample(seed)));

    private static void Identical(AttachmentSample first, AttachmentSample second, bool exact)
    {
        FailureMode[] a = [.. first.Prepared.Verify([first.LoadCase], SheetScope.None).Modes], b = [.. second.Prepared.Verify([second.LoadCase], SheetScope.None).Modes];
        Assert.Equal(a.Select(m => (m.Id, m.Status)), b.Select(m => (m.Id, m.Status)));
        Assert.All(a.Zip(b), pair =>
        {
            double tolerance = exact ? 0 : 1e-12;
            Assert.True(Math.Abs((pair.First.Result.NominalValue - pair.Second.Result.NominalValue) / pair.First.Result.NominalValue) is var d && (double.IsNaN(d) || d <= tolerance), $"{pair.First.Id}: {d}");
            Assert.Equal(pair.First.Utilization ?? 0, pair.Second.Utilization ?? 0, tolerance * 10);
        });
    }

    private static List<Outcome> Tension(AttachmentSample sample) => Outcome.Of(sample, Outcome.IsTension);

    private static FailureMode[] Breakouts(AttachmentSample sample) =>
        [.. sample.Prepared.Verify([sample.LoadCase], SheetScope.None).Modes.Where(m => m.Kind == FailureModeKind.ConcreteBreakoutTension && m.Nominal is not null)];

    private static FailureMode[] Blowouts(AttachmentSample sample, ConcreteSide side) =>
        [.. sample.Prepared.Verify([sample.LoadCase], SheetScope.None).Modes.Where(m => m.Kind == FailureModeKind.SideFaceBlowout && m.Side == side && m.Nominal is not null)];

    /// <summary>The first fastener of a sample alone, in the same concrete.</summary>
    private static AttachmentSample Alone(AttachmentSample s)
    {
        FastenerPosition place = s.Attachment.Layout.Positions[0];
        return s with { Attachment = new(s.Attachment.Concrete, s.Attachment.Fastener, FastenerLayout.Points(place)), LoadCase = new LoadCase("alone") { N = Force.FromKilonewtons(1), At = place } };
    }

    /// <summary>How many edges are closer than 1.5 h_ef to any fastener.</summary>
    private static int CloseEdges(AttachmentSample s, Length embedment)
    {
        EdgeDistances edges = s.Attachment.Concrete.Edges;
        FastenerPosition[] places = [.. s.Attachment.Layout.Positions];
        double limit = 1.5 * embedment.Millimeters;
        double?[] distances =
        [
            edges.PlusX?.Millimeters - places.Max(p => p.X.Millimeters), edges.MinusX?.Millimeters + places.Min(p => p.X.Millimeters),
            edges.PlusY?.Millimeters - places.Max(p => p.Y.Millimeters), edges.MinusY?.Millimeters + places.Min(p => p.Y.Millimeters),
        ];
        return distances.Count(d => d < limit);
    }

    private static bool IsAcrossDeepLimit(Length before, Length after)
    {
        // 11 and 25 in., in the SI edition 280 and 635 mm.
        return Crosses(279, 281) || Crosses(634, 636);
        bool Crosses(double from, double to) => before.Millimeters < to && after.Millimeters > from;
    }

    private static void NotLess(double before, double after) => Assert.True(after >= before * (1 - 1e-12), $"{before:R} to {after:R}");

    /// <summary>A 3/4 in. headed bolt in 4000 psi; A_brg 0.5 in².</summary>
    private static AttachmentSample Sample(double depth, FastenerLayout layout, EdgeDistances edges, Aci318Options? options = null)
    {
        var concrete = new ConcreteMember(Pressure.FromPoundsForcePerSquareInch(4000), Length.FromInches(60)) { Edges = edges };
        var bolt = new HeadedBolt(Length.FromInches(0.75), AnchorSteels.Find("ASTM F1554 Grade 36", Length.FromInches(0.75)), Length.FromInches(depth)) { BearingArea = Area.FromSquareInches(0.5) };
        return new(new Aci318Method(Aci318Edition.InchPound2019, options), new Attachment(concrete, bolt, layout), new LoadCase("case") { N = Force.FromPoundsForce(100) });
    }

    private static AttachmentSample Single(double depth, EdgeDistances edges) => Sample(depth, FastenerLayout.Single(), edges);

    private static double SingleBreakout(double depth, Aci318Options? options = null) =>
        Assert.Single(Breakouts(Sample(depth, FastenerLayout.Single(), EdgeDistances.None, options))).Nominal!.Value.PoundsForce;
}
