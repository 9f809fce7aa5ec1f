using BenchmarkDotNet.Attributes;
using ConcreteAttach.Aci318;
using ConcreteAttach.Actions;
using ConcreteAttach.Attached;
using ConcreteAttach.Calculation;
using ConcreteAttach.Distribution;
using ConcreteAttach.Verification;

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

/// <summary>The same for the modes in tension alone, with the forces that they need.</summary>
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
