using System.Globalization;
using System.Text.Json.Nodes;
using ConcreteAttach.Aci318;
using ConcreteAttach.Actions;
using ConcreteAttach.Distribution;
using ConcreteAttach.Geometry;
using ConcreteAttach.Presentation.Json;
using ConcreteAttach.Quantities;
using ConcreteAttach.Tests.Benchmarks;
using ConcreteAttach.Tests.Presentation.Json;
using ConcreteAttach.Verification;
using FsCheck;
using FsCheck.Fluent;
using UnitsNet;
using Xunit.Abstractions;

namespace ConcreteAttach.Tests.Properties;

/// <summary>Attachments whose concrete is given by its outline.</summary>
public sealed class OutlineProperties(ITestOutputHelper output)
{
    private static readonly Config Thousand = Config.QuickThrowOnFailure.WithMaxTest(1_000).WithReplay(41, 3);

    private static readonly Arbitrary<AttachmentSample> Samples = Arb.From(Gen.Choose(0, int.MaxValue - 1).Select(OutlineSamples.Next));

    /// <summary>A rectangle, whatever vertex it starts from, either way around, with vertices within its sides, is the same as its four edges: to the last bit, in every word.</summary>
    [Fact]
    public void Rectangular_outline_is_the_same_as_its_edges()
    {
        int compared = 0;
        foreach (AttachmentSample sample in AttachmentSamples.Take(1_500, seed: 43))
        {
            Length far = Length.FromInches(4000);
            EdgeDistances given = sample.Attachment.Concrete.Edges;
            var edges = new EdgeDistances { PlusX = given.PlusX ?? far, MinusX = given.MinusX ?? far, PlusY = given.PlusY ?? far, MinusY = given.MinusY ?? far };
            Length left = -edges.MinusX!.Value, bottom = -edges.MinusY!.Value;
            FastenerPosition[] ring =
            [
                new(left, bottom), new((left + edges.PlusX!.Value) / 2, bottom), new(edges.PlusX!.Value, bottom), new(edges.PlusX!.Value, edges.PlusY!.Value), new(left, edges.PlusY!.Value),
            ];
            var random = new Random(compared);
            int first = random.Next(ring.Length);
            ring = [.. ring[first..], .. ring[..first]];
            if (random.Next(2) == 0)
            {
                Array.Reverse(ring);
            }

            AttachmentVerification expected = sample.With(c => c with { Edges = edges }).Prepared.Verify([sample.LoadCase], SheetScope.All);
            AttachmentVerification actual = sample.In(SurfaceOutline.Polygon(ring)).Prepared.Verify([sample.LoadCase], SheetScope.All);
            Assert.Equal(VerificationJson.Write(expected), VerificationJson.Write(actual));
            Assert.Equal(expected.Modes.Select(m => (m.Title, m.Side)), actual.Modes.Select(m => (m.Title, m.Side)));
            compared++;
        }
    }

    [Fact]
    public void Rectangular_outline_is_the_same_as_its_edges_in_JSON()
    {
        var random = new RandomInputs(4);
        int compared = 0;
        for (int i = 0; i < 2_000; i++)
        {
            JsonNode input = JsonNode.Parse(random.Next("title"))!;
            JsonObject edges = input["concrete"]!["edges"]!.AsObject();
            if (edges.Count < 4)
            {
                continue;
            }

            string At(string side) => edges[side]!.GetValue<string>();
            string expected = VerificationJson.Verify(input.ToJsonString());
            var outline = new JsonArray(
                new JsonArray(At("+x"), At("+y")), new JsonArray($"-{At("-x")}", At("+y")), new JsonArray($"-{At("-x")}", $"-{At("-y")}"), new JsonArray(At("+x"), $"-{At("-y")}"));
            input["concrete"]!.AsObject().Remove("edges");
            input["concrete"]!["outline"] = outline;
            Assert.Equal(expected, VerificationJson.Verify(input.ToJsonString()));
            compared++;
        }

        Assert.True(compared > 80);
    }

    [Fact]
    public void A_mirrored_outline_has_the_same_answer() => Check.One(Thousand, Prop.ForAll(Samples, s => Outcome.AssertSame(
        Outcome.Of(Modes(s), Variants.Mirrored), Outcome.Of(s.Moved((x, y) => (-x, y), l => l with { Vx = -l.Vx, My = -l.My, Mz = -l.Mz })), 1e-7)));

    [Fact]
    public void A_quarter_turn_of_an_outline_has_the_same_answer() => Check.One(Thousand, Prop.ForAll(Samples, s => Outcome.AssertSame(
        Outcome.Of(Modes(s), Variants.Turned), Outcome.Of(s.Moved((x, y) => (-y, x), l => l with { Vx = -l.Vy, Vy = l.Vx, Mx = -l.My, My = l.Mx })), 1e-7)));

    /// <summary>
    /// Turned by any angle, what depends on sides alone stays: breakout toward and along them, and blowout. Breakout in tension and pryout do not, for their squares stay parallel to the axes.
    /// </summary>
    [Fact]
    public void Turning_changes_nothing_at_the_sides() => Check.One(Thousand, Prop.ForAll(Samples, s =>
    {
        (double sin, double cos) = Math.SinCos(s.Attachment.Fastener.EffectiveEmbedment.Millimeters);
        (Force, Force) Forces(Force x, Force y) => ((cos * x) - (sin * y), (sin * x) + (cos * y));
        (Torque, Torque) Moments(Torque x, Torque y) => ((cos * x) - (sin * y), (sin * x) + (cos * y));
        AttachmentSample turned = s.Moved((x, y) => ((cos * x) - (sin * y), (sin * x) + (cos * y)), l =>
        {
            (Force vx, Force vy) = Forces(l.Vx, l.Vy);
            (Torque mx, Torque my) = Moments(l.Mx, l.My);
            return l with { Vx = vx, Vy = vy, Mx = mx, My = my };
        });
        if (s.Attachment.Concrete.Outline!.In(MeasurementSystem.NewtonMillimetre).IsRectangle)
        {
            return; // its sides have names of their own
        }

        static bool IsAtASide(FailureModeKind kind) =>
            kind is FailureModeKind.ConcreteBreakoutShear or FailureModeKind.ConcreteBreakoutParallel or FailureModeKind.SideFaceBlowout;
        Outcome.AssertSame(Outcome.Of(s, IsAtASide), Outcome.Of(turned, IsAtASide), 1e-6);
    }));

    /// <summary>Another vertex and an opening, both farther away than anything of the attachment reaches, leave all near modes as they are.</summary>
    [Fact]
    public void What_is_far_away_changes_nothing()
    {
        foreach (AttachmentSample sample in AttachmentSamples.Take(400, seed: 44))
        {
            double far = 4e5;
            double x = sample.Attachment.Layout.Positions.Max(p => p.X.Millimeters) + 150;
            double y = sample.Attachment.Layout.Positions.Max(p => p.Y.Millimeters) + 80;

            // A re-entrant corner beside the fasteners; sides 1 and 2 meet in it.
            FastenerPosition[] near = Places((far, y), (x, y), (x, far), (-far, far), (-far, -far), (far, -far));
            SurfaceOutline plain = SurfaceOutline.Polygon(near);
            SurfaceOutline changed = SurfaceOutline.Polygon([.. near[..4], .. Places((-0.9 * far, 0.1 * far)), .. near[4..]])
                .WithOpening(Places((-0.5 * far, -0.5 * far), (-0.4 * far, -0.5 * far), (-0.4 * far, -0.4 * far)));
            static bool IsNear(FailureMode m) => m.Side == ConcreteSide.None || m.Side == ConcreteSide.OfOutline(1) || m.Side == ConcreteSide.OfOutline(2);
            List<Outcome> Near(SurfaceOutline outline) =>
                Outcome.Of(sample.In(outline).Prepared.Verify([sample.LoadCase], SheetScope.None).Modes.Where(IsNear), side => side);
            Outcome.AssertSame(Near(plain), Near(changed));
        }
    }

    /// <summary>Silent and recorded runs are equal to the bit, allocate nothing, and give results or input errors, never anything else.</summary>
    [Fact]
    public void Fast_results_and_sheets_are_equal_to_the_bit_and_nothing_is_allocated()
    {
        int notCovered = 0;
        int atOpenings = 0;
        for (int seed = 0; seed < 1_500; seed++)
        {
            AttachmentSample sample = OutlineSamples.Next(seed);
            PreparedAttachment prepared = sample.Prepared;
            PreparedActions actions = prepared.Prepare(sample.LoadCase);
            var results = new ModeResult[prepared.ModeCapacity];
            int count = prepared.Evaluate(actions, results);
            FailureMode[] recorded = [.. prepared.Verify([sample.LoadCase], SheetScope.All).Modes.Where(m => m.LoadCase is not null)];

            Assert.Equal(count, recorded.Length);
            for (int i = 0; i < count; i++)
            {
                ModeResult silent = results[i], traced = recorded[i].Result;
                Assert.Equal((silent.Kind, silent.Side, silent.Number, silent.Status), (traced.Kind, traced.Side, traced.Number, traced.Status));
                Assert.Equal(BitConverter.DoubleToInt64Bits(silent.NominalValue), BitConverter.DoubleToInt64Bits(traced.NominalValue));
                Assert.Equal(BitConverter.DoubleToInt64Bits(silent.DemandValue), BitConverter.DoubleToInt64Bits(traced.DemandValue));
                Assert.Equal(BitConverter.DoubleToInt64Bits(silent.Utilization), BitConverter.DoubleToInt64Bits(traced.Utilization));
                Assert.True(double.IsNaN(silent.NominalValue) || silent.NominalValue > 0, $"seed {seed}: {recorded[i].Id} {silent.NominalValue}");
                notCovered += silent.Kind == FailureModeKind.ConcreteBreakoutShear && silent.Status == ModeStatus.NotCovered ? 1 : 0;
                atOpenings += silent.Side.Opening > 0 ? 1 : 0;
            }

            Assert.Equal(0, Allocation.Of(() => prepared.Evaluate(actions, results)));
        }

        output.WriteLine($"{notCovered} times a fastener faces no side that it is pushed to; {atOpenings} modes at openings");
        Assert.True(notCovered is > 10 and < 500 && atOpenings > 500);
    }

    /// <summary>Random outlines, some of which cross themselves or leave fasteners outside, through the stream of the tool.</summary>
    [Fact]
    public void Outlines_in_a_stream_give_results_or_errors_of_the_input()
    {
        var inputs = new RandomInputs(45);
        var random = new Random(46);
        var lines = new List<string>();
        for (int i = 0; i < 600; i++)
        {
            JsonNode input = JsonNode.Parse(inputs.Next($"line {i.ToString(CultureInfo.InvariantCulture)}"))!;
            JsonObject concrete = input["concrete"]!.AsObject();
            concrete.Remove("edges");
            concrete["outline"] = Ring(random, random.Next(3, 9), 20, 20, random.Next(4) == 0 ? 1.5 : 0.3, 60);
            if (random.Next(2) == 0)
            {
                concrete["openings"] = new JsonArray(Ring(random, 4, random.Next(-40, 60), random.Next(-40, 60), 0.2, 6));
            }

            lines.Add(input.ToJsonString());
        }

        CommandLineTests.Run run = CommandLineTests.Tool(["verify", "-"], string.Join('\n', lines));
        Assert.Equal("", run.Errors);
        Assert.DoesNotContain("NaN", run.Output, StringComparison.Ordinal);
        string[] results = run.Output[..^1].Split('\n');
        Assert.Equal(lines.Count, results.Length);
        int verified = 0;
        for (int i = 0; i < results.Length; i++)
        {
            JsonNode result = JsonNode.Parse(results[i])!;
            string? path = result["error"]?["path"]!.GetValue<string>();
            Assert.True(path is null || path.StartsWith("/concrete/o", StringComparison.Ordinal) || path.StartsWith("/positions", StringComparison.Ordinal) || path.StartsWith("/loadCases", StringComparison.Ordinal), results[i]);
            verified += path is null ? 1 : 0;
            if (path is null && i % 20 == 0)
            {
                Assert.True(Schemas.Result.Evaluate(result).IsValid, results[i]);
                Assert.True(Schemas.Input.Evaluate(JsonNode.Parse(lines[i])).IsValid, lines[i]);
            }
        }

        Assert.True(verified > 200, $"{verified}");
    }

    private static IEnumerable<FailureMode> Modes(AttachmentSample sample) => sample.Prepared.Verify([sample.LoadCase], SheetScope.None).Modes;

    private static JsonArray Ring(Random random, int count, double x, double y, double irregularity, double radius) =>
    [
        .. Enumerable.Range(0, count).Select(i =>
        {
            double angle = 2 * Math.PI * (i + (irregularity * random.NextDouble())) / count;
            double r = radius * (1 + (0.5 * random.NextDouble()));
            return (JsonNode)new JsonArray(Inches(x + (r * Math.Cos(angle))), Inches(y + (r * Math.Sin(angle))));
        }),
    ];

    private static string Inches(double value) => $"{value.ToString("0.###", CultureInfo.InvariantCulture)} in";

    private static FastenerPosition[] Places(params (double X, double Y)[] points) =>
        [.. points.Select(p => new FastenerPosition(Length.FromMillimeters(p.X), Length.FromMillimeters(p.Y)))];
}
