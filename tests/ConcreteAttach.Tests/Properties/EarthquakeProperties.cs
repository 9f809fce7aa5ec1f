using ConcreteAttach.Aci318;
using ConcreteAttach.Actions;
using ConcreteAttach.Attached;
using ConcreteAttach.Calculation;
using ConcreteAttach.Distribution;
using ConcreteAttach.Fasteners;
using ConcreteAttach.Geometry;
using ConcreteAttach.Quantities;
using ConcreteAttach.Tests.Benchmarks;
using ConcreteAttach.Verification;
using UnitsNet;

namespace ConcreteAttach.Tests.Properties;

/// <summary>17.10 over random attachments.</summary>
public sealed class EarthquakeProperties
{
    private const int Count = 1500;

    private static readonly FailureModeKind[] Lowered = [FailureModeKind.ConcreteBreakoutTension, FailureModeKind.Pullout, FailureModeKind.SideFaceBlowout, FailureModeKind.Bond];

    /// <summary>Designed for earthquake, all of the load case the earthquake's, cast in cracked concrete: the concrete in tension holds three quarters, nothing else changes.</summary>
    [Fact]
    public void Concrete_in_tension_holds_three_quarters()
    {
        int lowered = 0;
        foreach (AttachmentSample sample in CastIn(seed: 1701))
        {
            ModeResult[] without = Evaluate(sample.Method, sample.Attachment, sample.LoadCase);
            ModeResult[] with = [.. Evaluate(sample.Method, Designed(sample.Attachment, EarthquakeTensionOption.NonYieldingAttachment), Wholly(sample.LoadCase)).Where(m => !IsOfEarthquake(m))];
            Assert.Equal(without.Length, with.Length);
            bool isTension = without.Any(m => Lowered.Contains(m.Kind) && m.Utilization > 0);
            for (int i = 0; i < without.Length; i++)
            {
                if (!without[i].HasStrength)
                {
                    continue;
                }

                double factor = isTension && Lowered.Contains(without[i].Kind) ? 0.75 : 1;
                lowered += factor < 1 ? 1 : 0;
                Assert.Equal(without[i].Nominal.Newtons, with[i].Nominal.Newtons);
                Assert.Equal(factor * without[i].Factor, with[i].Factor, 1e-15);
            }
        }

        Assert.InRange(lowered, 500, int.MaxValue);
    }

    /// <summary>More overstrength, on load cases that are the earthquake's alone, never means less use of a mode, and never another strength but through the eccentricity of tension.</summary>
    [Fact]
    public void Overstrength_only_raises_what_is_asked()
    {
        foreach (AttachmentSample sample in CastIn(seed: 1702))
        {
            ModeResult[] once = Evaluate(sample.Method, Designed(sample.Attachment, EarthquakeTensionOption.Overstrength, 1), Wholly(sample.LoadCase));
            ModeResult[] twice = Evaluate(sample.Method, Designed(sample.Attachment, EarthquakeTensionOption.Overstrength, 2), Wholly(sample.LoadCase));
            Assert.Equal(once.Length, twice.Length);
            for (int i = 0; i < once.Length; i++)
            {
                Assert.Equal(once[i].Kind, twice[i].Kind);
                if (once[i].HasStrength)
                {
                    // In one load case the whole of it is the earthquake's: all forces grow alike, so that no strength changes.
                    Assert.True(Math.Abs(once[i].Nominal.Newtons - twice[i].Nominal.Newtons) <= 1e-9 * once[i].Nominal.Newtons, $"{once[i].Kind}");
                    Assert.True(Math.Abs((2 * once[i].Utilization) - twice[i].Utilization) <= 1e-9 * twice[i].Utilization, $"{once[i].Kind}");
                }
            }
        }
    }

    /// <summary>An amplified load case is the one that the user could have written down.</summary>
    [Fact]
    public void Overstrength_is_the_sum_by_hand()
    {
        foreach (AttachmentSample sample in CastIn(seed: 1703).Take(400))
        {
            LoadCase given = sample.LoadCase;
            var part = new EarthquakeActions { N = 0.6 * given.N, Vx = 0.5 * given.Vx, Vy = 0.9 * given.Vy, Mx = 0.7 * given.Mx, My = 0.4 * given.My, Mz = 0.3 * given.Mz };
            Attachment designed = Designed(sample.Attachment, EarthquakeTensionOption.Overstrength, 2.5);
            AttachmentVerification verification = sample.Method.Prepare(designed).Verify([given with { Earthquake = part }], SheetScope.None);
            bool isTension = verification.Modes.Any(m => m.Kind == FailureModeKind.EarthquakeTension && m.Status == ModeStatus.Satisfied);
            bool isShear = verification.Modes.Any(m => m.Kind == FailureModeKind.EarthquakeShear && m.Status == ModeStatus.Satisfied);
            LoadCase byHand = given with
            {
                N = given.N + ((isTension ? 1.5 : 0) * part.N), Mx = given.Mx + ((isTension ? 1.5 : 0) * part.Mx), My = given.My + ((isTension ? 1.5 : 0) * part.My),
                Vx = given.Vx + ((isShear ? 1.5 : 0) * part.Vx), Vy = given.Vy + ((isShear ? 1.5 : 0) * part.Vy), Mz = given.Mz + ((isShear ? 1.5 : 0) * part.Mz),
            };
            AttachmentVerification plain = sample.Method.Prepare(sample.Attachment).Verify([byHand], SheetScope.None);
            double scale = plain.Forces.Max(f => Math.Abs(f.Tension.Newtons) + Math.Abs(f.ShearX.Newtons) + Math.Abs(f.ShearY.Newtons));
            foreach ((FastenerForces one, FastenerForces other) in plain.Forces.Zip(verification.Forces))
            {
                Assert.Equal(one.Tension.Newtons, other.Tension.Newtons, 1e-12 * scale);
                Assert.Equal(one.ShearX.Newtons, other.ShearX.Newtons, 1e-12 * scale);
                Assert.Equal(one.ShearY.Newtons, other.ShearY.Newtons, 1e-12 * scale);
            }
        }
    }

    /// <summary>Ductile steel is never open for one fastener whose concrete holds less than 1.2 N_sa, and always where all of it holds more.</summary>
    [Fact]
    public void Ductile_steel_is_open_where_the_concrete_holds_more()
    {
        int open = 0, closed = 0;
        foreach (AttachmentSample sample in CastIn(seed: 1704, 8 * Count).Where(s => s.Attachment.Layout.Positions.Length == 1))
        {
            LoadCase pull = Wholly(new LoadCase("pull") { N = Force.FromKilonewtons(5), At = sample.Attachment.Layout.Positions[0] });
            ModeResult[] modes = Evaluate(sample.Method, Designed(sample.Attachment, EarthquakeTensionOption.DuctileSteel), pull);
            ModeResult steel = modes.Single(m => m.Kind == FailureModeKind.SteelTension);
            ModeStatus status = modes.Single(m => m.Kind == FailureModeKind.EarthquakeTension).Status;
            if (!steel.HasStrength || status == ModeStatus.NotCovered)
            {
                continue;
            }

            double concrete = modes.Where(m => Lowered.Contains(m.Kind) && m.HasStrength).Min(m => m.Nominal.Newtons);
            bool isStronger = concrete >= 1.2 * steel.Nominal.Newtons * (1 - 1e-9);
            Assert.Equal(isStronger ? ModeStatus.Satisfied : ModeStatus.NotSatisfied, status);
            open += isStronger ? 1 : 0;
            closed += isStronger ? 0 : 1;
        }

        Assert.InRange(open, 10, int.MaxValue);
        Assert.InRange(closed, 10, int.MaxValue);
    }

    /// <summary>The silent and the recorded run give the same bits, for all kinds of fasteners and options.</summary>
    [Fact]
    public void Evaluate_is_verify()
    {
        var options = new Random(1705);
        foreach (AttachmentSample sample in AttachmentSamples.Take(Count, seed: 1705).Where(CanBeDesigned))
        {
            Attachment designed = Designed(sample.Attachment, (EarthquakeTensionOption)options.Next(4), 1 + (2 * options.NextDouble()));
            LoadCase loadCase = Wholly(sample.LoadCase);
            ModeResult[] silent = Evaluate(sample.Method, designed, loadCase);
            FailureMode[] recorded = [.. sample.Method.Prepare(designed).Verify([loadCase], SheetScope.All).Modes.Where(m => m.LoadCase is not null)];
            Assert.Equal(silent.Length, recorded.Length);
            for (int i = 0; i < silent.Length; i++)
            {
                Assert.Equal(silent[i].Kind, recorded[i].Kind);
                Assert.Equal(silent[i].Status, recorded[i].Status);
                Assert.Equal(silent[i].HasStrength ? silent[i].Utilization : double.NaN, recorded[i].Nominal is null ? double.NaN : recorded[i].Utilization!.Value);
            }
        }
    }

    [Fact]
    public void Evaluate_allocates_nothing()
    {
        AttachmentSample sample = CastIn(seed: 1706).First(s => s.Attachment.Layout.Positions.Length >= 4);
        PreparedAttachment prepared = sample.Method.Prepare(Designed(sample.Attachment, EarthquakeTensionOption.DuctileSteel));
        PreparedActions actions = prepared.Prepare(Wholly(sample.LoadCase));
        var results = new ModeResult[prepared.ModeCapacity];
        Assert.Equal(0, Allocation.Of(() =>
        {
            for (int i = 0; i < 200; i++)
            {
                prepared.Evaluate(actions, results);
            }
        }));
    }

    /// <summary>Tension alone, all of it the earthquake's: each option gives what a design by it gives, and overstrength as many times the use as the option that takes the forces as they are.</summary>
    [Fact]
    public void Options_are_told_as_a_design_by_them_would_come_out()
    {
        int open = 0, closed = 0;
        foreach (AttachmentSample sample in CastIn(seed: 1708).Take(300))
        {
            LoadCase pull = Wholly(new LoadCase("pull") { N = Force.FromKilonewtons(20), At = Centre(sample.Attachment) });
            Attachment designed = Designed(sample.Attachment, EarthquakeTensionOption.YieldingAttachment, overstrength: 2);
            AttachmentVerification verification = sample.Method.Prepare(designed).Verify([pull], SheetScope.All);
            EarthquakeOption[] options = [.. verification.EarthquakeOptions];
            Assert.Equal(Enum.GetValues<EarthquakeTensionOption>(), options.Select(o => o.Tension!.Value));
            Assert.Equal(EarthquakeTensionOption.YieldingAttachment, options.Single(o => o.IsTaken).Tension);
            Assert.Equal([.. options.Select(o => o.ToString())], verification.Modes.Single(m => m.Kind == FailureModeKind.EarthquakeTension).Sheet!.Lines.OfType<NoteLine>().TakeLast(4).Select(n => n.Text));
            foreach (EarthquakeOption option in options)
            {
                AttachmentVerification chosen = sample.Method.Prepare(designed with { Earthquake = designed.Earthquake! with { Tension = option.Tension } }).Verify([pull], SheetScope.None);
                FailureMode[] modes = [.. chosen.Modes.Where(m => m.LoadCase is not null || m.Id.StartsWith("detailing/earthquake", StringComparison.Ordinal))];
                bool fails = modes.Any(m => m.Status == ModeStatus.NotSatisfied), hasGap = modes.Any(m => m.Status == ModeStatus.NotCovered);
                Assert.Equal(fails ? Verdict.DoesNotHold : hasGap ? Verdict.NotCovered : Verdict.Holds, option.Verdict);
                open += option.Verdict == Verdict.Holds ? 1 : 0;
                closed += option.Verdict == Verdict.DoesNotHold ? 1 : 0;
            }

            if (options[2].Utilization is { } once && options[3].Utilization is { } twice)
            {
                Assert.Equal(2 * once, twice, 1e-9 * twice);
            }
        }

        Assert.True(open > 100 && closed > 100, $"{open} open, {closed} closed");
    }

    [Fact]
    public void Options_are_told_only_where_there_is_a_choice()
    {
        AttachmentSample sample = CastIn(seed: 1709).First();
        var pull = new LoadCase("pull") { N = Force.FromKilonewtons(10), At = Centre(sample.Attachment) };
        Attachment designed = sample.Attachment with { Earthquake = new EarthquakeDesign(SeismicDesignCategory.D) { Tension = EarthquakeTensionOption.DuctileSteel } };
        PreparedAttachment prepared = sample.Method.Prepare(designed);
        Assert.Empty(prepared.Verify(pull).EarthquakeOptions);
        Assert.Empty(prepared.Verify(pull with { Earthquake = new EarthquakeActions { N = Force.FromKilonewtons(2) } }).EarthquakeOptions);
        Assert.Empty(prepared.Verify([Wholly(pull)], SheetScope.None).EarthquakeOptions);
        EarthquakeOption unknown = prepared.Verify(Wholly(pull)).EarthquakeOptions.Single(o => o.Tension == EarthquakeTensionOption.Overstrength);
        Assert.Equal((Verdict.NotCovered, "Ω_0 is not given."), (unknown.Verdict, unknown.Reason));
    }

    [Fact]
    public void What_is_missing_or_wrong_is_said()
    {
        AttachmentSample sample = CastIn(seed: 1707).First();
        Assert.Equal("overstrength", Assert.Throws<InputException>(() => new EarthquakeDesign(SeismicDesignCategory.D) { Overstrength = 0.9 }).Parameter);
        Assert.Equal("overstrength", Assert.Throws<InputException>(() => new EarthquakeDesign(SeismicDesignCategory.D) { Overstrength = double.NaN }).Parameter);
        Assert.Equal("stretchLength", Assert.Throws<InputException>(() => new EarthquakeDesign(SeismicDesignCategory.D) { StretchLength = Length.Zero }).Parameter);
        Assert.Equal("overstrength", Assert.Throws<InputException>(
            () => sample.Method.Prepare(sample.Attachment with { Earthquake = new EarthquakeDesign(SeismicDesignCategory.D) { Shear = EarthquakeShearOption.Overstrength } })).Parameter);
        Assert.Equal("earthquake", Assert.Throws<InputException>(() => sample.Prepared.Prepare(Wholly(sample.LoadCase))).Parameter);

        Attachment unchosen = sample.Attachment with { Earthquake = new EarthquakeDesign(SeismicDesignCategory.C) };
        AttachmentVerification verification = sample.Method.Prepare(unchosen).Verify(Wholly(new LoadCase("pull") { N = Force.FromKilonewtons(1), Vx = Force.FromKilonewtons(1), At = Centre(sample.Attachment) }));
        Assert.NotEqual(Verdict.Holds, verification.Verdict);
        Assert.Equal(ModeStatus.NotCovered, verification.Modes.Single(m => m.Id == "earthquake/tension").Status);
        Assert.Equal(ModeStatus.NotCovered, verification.Modes.Single(m => m.Id == "earthquake/shear").Status);
    }

    private static IEnumerable<AttachmentSample> CastIn(int seed, int count = Count) =>
        AttachmentSamples.Take(count, seed).Where(s => s.Attachment.Fastener is CastInFastener && CanBeDesigned(s) && s.Attachment.Concrete.IsCracked);

    private static bool CanBeDesigned(AttachmentSample sample) => sample.LoadCase.SustainedTension is null && sample.LoadCase.Earthquake is null;

    private static Attachment Designed(Attachment attachment, EarthquakeTensionOption tension, double overstrength = 1.5) => attachment with
    {
        Earthquake = new EarthquakeDesign(SeismicDesignCategory.D)
        {
            Tension = tension,
            Shear = tension == EarthquakeTensionOption.Overstrength ? EarthquakeShearOption.Overstrength : EarthquakeShearOption.NonYieldingAttachment,
            Overstrength = overstrength,
        },
    };

    /// <summary>The load case as the earthquake's alone.</summary>
    private static LoadCase Wholly(LoadCase loadCase) => loadCase with
    {
        Earthquake = new EarthquakeActions { N = loadCase.N, Vx = loadCase.Vx, Vy = loadCase.Vy, Mx = loadCase.Mx, My = loadCase.My, Mz = loadCase.Mz },
    };

    private static FastenerPosition Centre(Attachment attachment) => new(
        Length.FromMillimeters(attachment.Layout.Positions.Average(p => p.X.Millimeters)), Length.FromMillimeters(attachment.Layout.Positions.Average(p => p.Y.Millimeters)));

    private static bool IsOfEarthquake(ModeResult mode) => mode.Kind is FailureModeKind.EarthquakeTension or FailureModeKind.EarthquakeShear;

    private static ModeResult[] Evaluate(Aci318Method method, Attachment attachment, LoadCase loadCase)
    {
        PreparedAttachment prepared = method.Prepare(attachment);
        var results = new ModeResult[prepared.ModeCapacity];
        int count = prepared.Evaluate(prepared.Prepare(loadCase), results);
        return results[..count];
    }
}
