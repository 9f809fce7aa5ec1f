using BenchmarkDotNet.Attributes;
using ConcreteAttach.Aci318;
using ConcreteAttach.Actions;
using ConcreteAttach.Attached;
using ConcreteAttach.Calculation;
using ConcreteAttach.Distribution;
using ConcreteAttach.Geometry;
using ConcreteAttach.Materials;
using ConcreteAttach.Verification;
using UnitsNet;

namespace ConcreteAttach.Benchmarks;

/// <summary>The library against the same job written by hand in plain doubles: all strength modes of one load case. Aim: at most 1.3 times, 0 B.</summary>
[MemoryDiagnoser]
public class EvaluateBenchmarks
{
    private PreparedAttachment _prepared = null!;
    private PreparedActions _actions;
    private EvaluateKernel _kernel = null!;
    private ModeResult[] _results = [];
    private KernelResult[] _kernelResults = [];

    [ParamsSource(nameof(Names))]
    public string Layout { get; set; } = "";

    public static IEnumerable<string> Names => SampleAttachments.Names;

    [GlobalSetup]
    public void Setup()
    {
        (Attachment attachment, LoadCase loadCase) = SampleAttachments.Find(Layout);
        _prepared = new Aci318Method(Aci318Edition.InchPound2019).Prepare(attachment);
        _actions = _prepared.Prepare(loadCase);
        _kernel = new EvaluateKernel(new AnchorageData(attachment, Aci318Edition.InchPound2019, Aci318Options.Default));
        _results = new ModeResult[_prepared.ModeCapacity];
        _kernelResults = new KernelResult[_kernel.Capacity];
    }

    [Benchmark(Baseline = true)]
    public int Kernel() => _kernel.Evaluate(_actions, _kernelResults);

    [Benchmark]
    public int Evaluate() => _prepared.Evaluate(_actions, _results);
}

/// <summary>
/// One group of four in a corner: the member given by its edges, and the same member with its far corner cut off, which makes an outline of it. What is near the
/// fasteners is the same, and so are all strengths that both have.
/// </summary>
[MemoryDiagnoser]
public class OutlinedGroupBenchmarks
{
    private readonly PreparedAttachment[] _prepared = new PreparedAttachment[2];
    private readonly PreparedActions[] _actions = new PreparedActions[2];
    private ModeResult[] _results = [];

    [GlobalSetup]
    public void Setup()
    {
        (Attachment attachment, LoadCase loadCase) = SampleAttachments.Find("4 bolts, 2 edges, biaxial moment");
        EdgeDistances near = attachment.Concrete.Edges;
        Length far = Length.FromInches(100);
        Length cut = Length.FromInches(-90);
        var member = attachment.Concrete with { Edges = near with { MinusX = far, MinusY = far } };
        var outline = SurfaceOutline.Polygon(
            new(cut, -far), new(near.PlusX!.Value, -far), new(near.PlusX.Value, near.PlusY!.Value), new(-far, near.PlusY.Value), new(-far, cut));
        ConcreteMember[] members = [member, member with { Edges = EdgeDistances.None, Outline = outline }];
        for (int i = 0; i < members.Length; i++)
        {
            _prepared[i] = new Aci318Method(Aci318Edition.InchPound2019).Prepare(new Attachment(members[i], attachment.Fastener, attachment.Layout));
            _actions[i] = _prepared[i].Prepare(loadCase);
        }

        _results = new ModeResult[_prepared.Max(p => p.ModeCapacity)];
        _ = _prepared[0].Evaluate(_actions[0], _results);
        double[] strengths = [.. _results.Where(r => r.Kind == FailureModeKind.ConcreteBreakoutTension).Select(r => r.NominalValue)];
        _ = _prepared[1].Evaluate(_actions[1], _results);
        if (!_results.Where(r => r.Kind == FailureModeKind.ConcreteBreakoutTension).Zip(strengths).All(p => Math.Abs(p.First.NominalValue - p.Second) <= 1e-9 * p.Second))
        {
            throw new InvalidOperationException("The outline has another strength in tension than the edges.");
        }
    }

    [Benchmark(Baseline = true)]
    public int Edges() => _prepared[0].Evaluate(_actions[0], _results);

    [Benchmark]
    public int Outlined() => _prepared[1].Evaluate(_actions[1], _results);
}

/// <summary>The library against hand-written code for the modes in tension alone, with the forces that they need.</summary>
[MemoryDiagnoser]
public class TensionBenchmarks
{
    private AnchorageData _data = null!;
    private PreparedActions _actions;
    private TensionKernel _kernel = null!;
    private ModeResult[] _results = [];
    private KernelResult[] _kernelResults = [];
    private double[] _forces = [];
    private double[] _scratch = [];

    [ParamsSource(nameof(Names))]
    public string Layout { get; set; } = "";

    public static IEnumerable<string> Names => SampleAttachments.Names;

    [GlobalSetup]
    public void Setup()
    {
        (Attachment attachment, LoadCase loadCase) = SampleAttachments.Find(Layout);
        _data = new AnchorageData(attachment, Aci318Edition.InchPound2019, Aci318Options.Default);
        PreparedAttachment prepared = new Aci318Method(Aci318Edition.InchPound2019).Prepare(attachment);
        _actions = prepared.Prepare(loadCase);
        _kernel = new TensionKernel(_data);
        _results = new ModeResult[prepared.ModeCapacity];
        _kernelResults = new KernelResult[_kernel.Capacity];
        _forces = new double[_data.Count];
        _scratch = new double[TensionModes.ScratchLength(_data.Count)];
    }

    [Benchmark(Baseline = true)]
    public int Kernel() => _kernel.Evaluate(_actions, _kernelResults);

    [Benchmark]
    public int TensionOfEvaluate()
    {
        var progress = default(ModeProgress);
        var writer = new ModeWriter<PlainNumber>(_results, ref progress, _data.Edition.System, null);
        _data.Distribution.Tensions(_actions, _forces);
        TensionModes.Write(_data, _forces, default, writer, _scratch);
        return progress.Count;
    }
}
