using BenchmarkDotNet.Attributes;
using ConcreteAttach.Aci318;
using ConcreteAttach.Actions;
using ConcreteAttach.Attached;
using ConcreteAttach.Distribution;
using ConcreteAttach.Geometry;
using ConcreteAttach.Materials;
using ConcreteAttach.Verification;
using UnitsNet;

namespace ConcreteAttach.Benchmarks;

/// <summary>Four bolts near two edges, as they are and with anchor reinforcement in place of breakout in tension and toward one edge.</summary>
[MemoryDiagnoser]
public class ReinforcedGroupBenchmarks
{
    private readonly PreparedAttachment[] _prepared = new PreparedAttachment[2];
    private readonly PreparedActions[] _actions = new PreparedActions[2];
    private ModeResult[] _results = [];

    [GlobalSetup]
    public void Setup()
    {
        (Attachment plain, LoadCase loadCase) = SampleAttachments.Find("4 bolts, 2 edges, biaxial moment");
        ConcreteMember deep = new(plain.Concrete.Strength, Length.FromInches(60)) { Edges = plain.Concrete.Edges };
        var bars = new AnchorBars(DeformedBar.Find("No. 3"), AnchorSteels.Find("ASTM A615 Grade 60", Length.FromInches(0.375))) { IsConfined = true, HasSideCover = true, MeetsHeadConditions = true };
        Length away = Length.FromInches(0.75);
        var reinforcement = new AnchorReinforcement
        {
            Tension = new TensionReinforcement(bars, [.. plain.Layout.Positions.Select(p => new FastenerPosition(p.X - away, p.Y))], BarEnd.Headed, BarEnd.Hooked, Length.FromInches(55))
            {
                UpperEndDepth = Length.FromInches(0.5),
            },
            Shear = [ShearReinforcement.Enclosing(ConcreteSide.PlusX, bars, 2 * plain.Layout.Positions.Length, Length.FromInches(1.5), BarEnd.Hooked, Length.FromInches(8))],
        };
        Attachment[] attachments = [new(deep, plain.Fastener, plain.Layout), new(deep, plain.Fastener, plain.Layout) { Reinforcement = reinforcement }];
        for (int i = 0; i < attachments.Length; i++)
        {
            _prepared[i] = new Aci318Method(Aci318Edition.InchPound2019).Prepare(attachments[i]);
            _actions[i] = _prepared[i].Prepare(loadCase);
        }

        _results = new ModeResult[_prepared.Max(p => p.ModeCapacity)];
        int count = _prepared[1].Evaluate(_actions[1], _results);
        if (!_results.Take(count).Any(r => r.Kind == FailureModeKind.ReinforcementTension && r.Utilization > 0))
        {
            throw new InvalidOperationException("The bars are not developed.");
        }
    }

    [Benchmark(Baseline = true)]
    public int Concrete() => _prepared[0].Evaluate(_actions[0], _results);

    [Benchmark]
    public int Reinforced() => _prepared[1].Evaluate(_actions[1], _results);
}
