using System.Collections.Immutable;
using ConcreteAttach.Aci318;
using ConcreteAttach.Attached;
using ConcreteAttach.Distribution;
using ConcreteAttach.Geometry;
using ConcreteAttach.Materials;
using ConcreteAttach.Quantities;
using ConcreteAttach.Tests.Benchmarks;
using ConcreteAttach.Verification;
using UnitsNet;

namespace ConcreteAttach.Tests.Properties;

/// <summary>17.5.2.1 over random attachments with random bars, some of which meet the clause.</summary>
public sealed class ReinforcementProperties
{
    private const int Count = 2000;

    private static readonly FailureModeKind[] Own =
        [FailureModeKind.ReinforcementTension, FailureModeKind.ReinforcementShear, FailureModeKind.ReinforcementTensionDetailing, FailureModeKind.ReinforcementShearDetailing];

    [Fact]
    public void Fast_results_and_sheets_are_equal_to_the_bit()
    {
        int effective = 0;
        foreach (AttachmentSample sample in Reinforced(seed: 5201))
        {
            PreparedAttachment prepared = sample.Prepared;
            var results = new ModeResult[prepared.ModeCapacity];
            int count = prepared.Evaluate(prepared.Prepare(sample.LoadCase), results);
            FailureMode[] recorded = [.. prepared.Verify([sample.LoadCase], SheetScope.All).Modes.Where(m => m.LoadCase is not null)];
            Assert.Equal(count, recorded.Length);
            for (int i = 0; i < count; i++)
            {
                Assert.Equal((results[i].Kind, results[i].Side, results[i].Status), (recorded[i].Kind, recorded[i].Side, recorded[i].Status));
                Assert.Equal(BitConverter.DoubleToInt64Bits(results[i].NominalValue), BitConverter.DoubleToInt64Bits(recorded[i].Result.NominalValue));
                Assert.Equal(BitConverter.DoubleToInt64Bits(results[i].DemandValue), BitConverter.DoubleToInt64Bits(recorded[i].Result.DemandValue));
                Assert.Equal(BitConverter.DoubleToInt64Bits(results[i].Utilization), BitConverter.DoubleToInt64Bits(recorded[i].Result.Utilization));
                effective += results[i].Kind is FailureModeKind.ReinforcementTension or FailureModeKind.ReinforcementShear && results[i].Status != ModeStatus.NotApplicable ? 1 : 0;
            }
        }

        Assert.InRange(effective, 150, int.MaxValue);
    }

    /// <summary>Bars that meet the clause take breakout of their direction out and change no other strength; bars that do not change nothing.</summary>
    [Fact]
    public void Bars_replace_breakout_of_their_direction_and_nothing_else()
    {
        foreach (AttachmentSample sample in Reinforced(seed: 5202))
        {
            FailureMode[] with = [.. Modes(sample)];
            FailureMode[] without = [.. Modes(sample with { Attachment = sample.Attachment with { Reinforcement = null } })];
            bool tension = IsEffective(with, FailureModeKind.ReinforcementTension, ConcreteSide.None);
            foreach (IGrouping<(FailureModeKind Kind, ConcreteSide Side), FailureMode> same in without.GroupBy(m => (m.Kind, m.Side)))
            {
                FailureMode[] now = [.. with.Where(m => (m.Kind, m.Side) == same.Key)];
                bool isReplaced = (same.Key.Kind == FailureModeKind.ConcreteBreakoutTension && tension)
                    || (same.Key.Kind == FailureModeKind.ConcreteBreakoutShear && IsEffective(with, FailureModeKind.ReinforcementShear, same.Key.Side));
                if (isReplaced)
                {
                    FailureMode one = Assert.Single(now);
                    Assert.Equal(ModeStatus.NotApplicable, one.Status);
                    Assert.Contains("17.5.2.1", one.Reason, StringComparison.Ordinal);
                }
                else if (same.Key.Kind != FailureModeKind.Interaction)
                {
                    Assert.Equal(same.Select(m => (m.Status, m.Result.NominalValue, m.Utilization)), now.Select(m => (m.Status, m.Result.NominalValue, m.Utilization)));
                }
            }

            foreach (FailureMode rule in with.Where(m => m.Kind is FailureModeKind.ReinforcementTensionDetailing or FailureModeKind.ReinforcementShearDetailing))
            {
                FailureModeKind strength = rule.Kind == FailureModeKind.ReinforcementTensionDetailing ? FailureModeKind.ReinforcementTension : FailureModeKind.ReinforcementShear;
                Assert.Equal(rule.Status == ModeStatus.Satisfied, IsEffective(with, strength, rule.Side));
            }
        }
    }

    /// <summary>A second bar beside each bar halves what is used; a second bar beside one never means more use, nor another answer on place and development.</summary>
    [Fact]
    public void More_bars_never_weaken()
    {
        int compared = 0;
        foreach (AttachmentSample sample in Reinforced(seed: 5203))
        {
            AnchorReinforcement given = sample.Attachment.Reinforcement!;
            FailureMode[] once = Bars(sample, given);
            FailureMode[] twice = Bars(sample, Change(given, p => p.AddRange(p), p => p.AddRange(p), legs => 2 * legs));
            FailureMode[] oneMore = Bars(sample, Change(given, p => p.Add(p[0]), p => p.Add(p[0]), legs => legs + 1));
            for (int i = 0; i < once.Length; i++)
            {
                Assert.Equal(once[i].Status == ModeStatus.NotApplicable, twice[i].Status == ModeStatus.NotApplicable);
                if (once[i].Utilization is { } utilization)
                {
                    compared += utilization > 0 ? 1 : 0;
                    Assert.Equal(utilization / 2, twice[i].Utilization!.Value, 1e-12 * Math.Max(1, utilization));
                    Assert.InRange(oneMore[i].Utilization!.Value, 0, utilization * (1 + 1e-12));
                }
            }
        }

        Assert.InRange(compared, 100, int.MaxValue);
    }

    [Fact]
    public void A_mirrored_attachment_has_the_same_answer()
    {
        foreach (AttachmentSample sample in Reinforced(seed: 5204).Take(800))
        {
            AttachmentSample mirrored = sample.Mirrored();
            AnchorReinforcement bars = Moved(sample.Attachment.Reinforcement!, p => new(-p.X, p.Y), Variants.Mirrored, side => side.IsAlongX() ? 1 : -1);
            Outcome.AssertSame(
                Outcome.Of(Modes(sample), Variants.Mirrored), Outcome.Of(Modes(mirrored with { Attachment = mirrored.Attachment with { Reinforcement = bars } }), side => side));
        }
    }

    [Fact]
    public void A_quarter_turn_has_the_same_answer()
    {
        foreach (AttachmentSample sample in Reinforced(seed: 5205).Take(800))
        {
            AttachmentSample turned = sample.Turned();
            AnchorReinforcement bars = Moved(sample.Attachment.Reinforcement!, p => new(-p.Y, p.X), Variants.Turned, side => side.IsAlongX() ? -1 : 1);
            Outcome.AssertSame(
                Outcome.Of(Modes(sample), Variants.Turned), Outcome.Of(Modes(turned with { Attachment = turned.Attachment with { Reinforcement = bars } }), side => side));
        }
    }

    [Fact]
    public void Evaluate_allocates_nothing()
    {
        foreach (AttachmentSample sample in Reinforced(seed: 5206).Take(60))
        {
            PreparedAttachment prepared = sample.Prepared;
            PreparedActions actions = prepared.Prepare(sample.LoadCase);
            var results = new ModeResult[prepared.ModeCapacity];
            Assert.Equal(0, Allocation.Of(() =>
            {
                for (int i = 0; i < 50; i++)
                {
                    prepared.Evaluate(actions, results);
                }
            }));
        }
    }

    /// <summary>A member that is stronger, or bars that reach deeper, never turn developed bars into bars that are not.</summary>
    [Fact]
    public void Longer_bars_and_stronger_concrete_develop_no_worse()
    {
        foreach (AttachmentSample sample in Reinforced(seed: 5207).Where(s => s.Attachment.Reinforcement!.Tension is not null))
        {
            TensionReinforcement given = sample.Attachment.Reinforcement!.Tension!;
            if (!IsEffective(Modes(sample), FailureModeKind.ReinforcementTension, ConcreteSide.None))
            {
                continue;
            }

            var longer = new TensionReinforcement(given.Bars, given.Positions, given.UpperEnd, given.LowerEnd, sample.Attachment.Concrete.Thickness) { UpperEndDepth = given.UpperEndDepth };
            AttachmentSample deeper = sample with { Attachment = sample.Attachment with { Reinforcement = new() { Tension = longer } } };
            Assert.True(IsEffective(Modes(deeper), FailureModeKind.ReinforcementTension, ConcreteSide.None));
            AttachmentSample stronger = sample.WithStrength(1.3 * sample.Attachment.Concrete.Strength);
            stronger = stronger with { Attachment = stronger.Attachment with { Reinforcement = new() { Tension = given } } };
            Assert.True(IsEffective(Modes(stronger), FailureModeKind.ReinforcementTension, ConcreteSide.None));
        }
    }

    private static IEnumerable<FailureMode> Modes(AttachmentSample sample) => sample.Prepared.Verify([sample.LoadCase], SheetScope.None).Modes;

    private static FailureMode[] Bars(AttachmentSample sample, AnchorReinforcement bars) =>
        [.. Modes(sample with { Attachment = sample.Attachment with { Reinforcement = bars } }).Where(m => Own.Contains(m.Kind) && m.LoadCase is not null)];

    private static bool IsEffective(IEnumerable<FailureMode> modes, FailureModeKind kind, ConcreteSide side) =>
        modes.Any(m => m.Kind == kind && m.Side == side && m.Status is ModeStatus.Satisfied or ModeStatus.NotSatisfied);

    private static AnchorReinforcement Change(
        AnchorReinforcement given, Func<ImmutableArray<FastenerPosition>, ImmutableArray<FastenerPosition>> tension, Func<ImmutableArray<Length>, ImmutableArray<Length>> crossing, Func<int, int> legs) => new()
        {
            Tension = given.Tension is { } t ? new(t.Bars, tension(t.Positions), t.UpperEnd, t.LowerEnd, t.LowerEndDepth) { UpperEndDepth = t.UpperEndDepth } : null,
            Shear = [.. given.Shear.Select(s => Rebuilt(s, s.Side, crossing, legs))],
        };

    private static AnchorReinforcement Moved(AnchorReinforcement given, Func<FastenerPosition, FastenerPosition> place, Func<ConcreteSide, ConcreteSide> side, Func<ConcreteSide, int> sign) => new()
    {
        Tension = given.Tension is { } t ? new(t.Bars, [.. t.Positions.Select(place)], t.UpperEnd, t.LowerEnd, t.LowerEndDepth) { UpperEndDepth = t.UpperEndDepth } : null,
        Shear = [.. given.Shear.Select(s => Rebuilt(s, side(s.Side), places => [.. places.Select(p => sign(s.Side) * p)], legs => legs))],
    };

    private static ShearReinforcement Rebuilt(ShearReinforcement s, ConcreteSide side, Func<ImmutableArray<Length>, ImmutableArray<Length>> places, Func<int, int> legs) =>
        (s.IsEnclosing
            ? ShearReinforcement.Enclosing(side, s.Bars, legs(s.Legs), s.Depth, s.InnerEnd, s.InnerLength)
            : ShearReinforcement.Crossing(side, s.Bars, places(s.Places), s.Depth, s.OuterEnd, s.InnerEnd, s.InnerLength)) with { OuterCover = s.OuterCover, Eccentricity = s.Eccentricity };

    /// <summary>Random attachments with random bars, those that are refused left out.</summary>
    private static IEnumerable<AttachmentSample> Reinforced(int seed)
    {
        var random = new Random(seed);
        foreach (AttachmentSample sample in AttachmentSamples.Take(Count, seed))
        {
            AttachmentSample with = sample with { Attachment = sample.Attachment with { Reinforcement = Next(random, sample.Attachment) } };
            bool isRefused = false;
            try
            {
                _ = with.Prepared;
            }
            catch (InputException)
            {
                isRefused = true;
            }

            if (!isRefused)
            {
                yield return with;
            }
        }
    }

    private static AnchorReinforcement Next(Random random, Attachment attachment)
    {
        double hef = attachment.Fastener.EffectiveEmbedment.Millimeters, thickness = attachment.Concrete.Thickness.Millimeters;
        double Between(double a, double b) => a + ((b - a) * random.NextDouble());
        Length Mm(double value) => Length.FromMillimeters(value);
        BarEnd End() => random.Next(4) == 0 ? BarEnd.Straight : (BarEnd)(1 + random.Next(2)); // mostly what is short enough
        AnchorBars Bars()
        {
            DeformedBar bar = DeformedBar.Sizes[random.Next(4)];
            return new(bar, AnchorSteels.Find(random.Next(2) == 0 ? "ASTM A615 Grade 60" : "ASTM A706 Grade 60", bar.Diameter))
            {
                CoverToCenter = random.Next(3) == 0 ? null : Mm(Between(20, 100)),
                IsWellSpaced = random.Next(2) == 0,
                IsTopBar = random.Next(4) == 0,
                Coating = (BarCoating)random.Next(3),
                IsConfined = random.Next(4) > 0,
                HasSideCover = random.Next(4) > 0,
                MeetsHeadConditions = random.Next(4) > 0,
            };
        }

        double reach = random.Next(4) == 0 ? 0.7 * hef : 0.3 * hef;
        FastenerPosition About(FastenerPosition p) => new(p.X + Mm(Between(-reach, reach)), p.Y + Mm(Between(-reach, reach)));
        TensionReinforcement? tension = random.Next(5) == 0
            ? null
            : new(Bars(), [.. attachment.Layout.Positions.SelectMany(p => Enumerable.Range(0, 1 + random.Next(3)).Select(_ => About(p)))], End(), End(), Mm(Between(0.7, 1) * thickness))
            {
                UpperEndDepth = random.Next(2) == 0 ? null : Mm(Between(10, 50)),
            };
        var sides = ConcreteSides.All.Where(side => attachment.Concrete.Edges.Toward(side) is not null && random.Next(2) == 0).ToList();
        ShearReinforcement Shear(ConcreteSide side)
        {
            ShearReinforcement bars = random.Next(2) == 0
                ? ShearReinforcement.Enclosing(side, Bars(), 1 + random.Next(8), Mm(Between(20, 80)), End(), Mm(Between(50, 900)))
                : ShearReinforcement.Crossing(
                    side, Bars(), [.. attachment.Layout.Positions.Select(p => (side.IsAlongX() ? p.Y : p.X) + Mm(Between(-40, 40)))], Mm(Between(20, 60)), End(), End(), Mm(Between(50, 900)));
            return bars with { Eccentricity = random.Next(3) == 0 ? Mm(Between(0, 150)) : null };
        }

        return new() { Tension = tension, Shear = [.. sides.Select(Shear)] };
    }
}
