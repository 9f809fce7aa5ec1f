using BenchmarkDotNet.Attributes;
using ConcreteAttach.Aci318;
using ConcreteAttach.Actions;
using ConcreteAttach.Attached;
using ConcreteAttach.Distribution;
using ConcreteAttach.Verification;
using UnitsNet;

namespace ConcreteAttach.Benchmarks;

/// <summary>Four bolts near two edges: a load case without earthquake, and the same as an earthquake's with ductile steel and overstrength (17.10).</summary>
[MemoryDiagnoser]
public class EarthquakeBenchmarks
{
    private readonly PreparedAttachment[] _prepared = new PreparedAttachment[2];
    private readonly PreparedActions[] _actions = new PreparedActions[2];
    private ModeResult[] _results = [];

    [GlobalSetup]
    public void Setup()
    {
        (Attachment plain, LoadCase loadCase) = SampleAttachments.Find("4 bolts, 2 edges, biaxial moment");
        Attachment designed = plain with
        {
            Earthquake = new EarthquakeDesign(SeismicDesignCategory.D)
            {
                Tension = EarthquakeTensionOption.DuctileSteel, Shear = EarthquakeShearOption.Overstrength, Overstrength = 2.5, StretchLength = Length.FromInches(8), IsKeptFromBuckling = true,
            },
        };
        LoadCase[] cases = [loadCase, loadCase with { Earthquake = new EarthquakeActions { N = loadCase.N, Vx = loadCase.Vx, Vy = loadCase.Vy, Mx = loadCase.Mx, My = loadCase.My } }];
        Attachment[] attachments = [plain, designed];
        for (int i = 0; i < attachments.Length; i++)
        {
            _prepared[i] = new Aci318Method(Aci318Edition.InchPound2019).Prepare(attachments[i]);
            _actions[i] = _prepared[i].Prepare(cases[i]);
        }

        _results = new ModeResult[_prepared.Max(p => p.ModeCapacity)];
        int count = _prepared[1].Evaluate(_actions[1], _results);
        if (!_results.Take(count).Any(r => r.Kind == FailureModeKind.EarthquakeTension && r.Status != ModeStatus.NotApplicable))
        {
            throw new InvalidOperationException("The earthquake does not count.");
        }
    }

    [Benchmark(Baseline = true)]
    public int Plain() => _prepared[0].Evaluate(_actions[0], _results);

    [Benchmark]
    public int UnderEarthquake() => _prepared[1].Evaluate(_actions[1], _results);
}

/// <summary>A column base on four rods near four edges: the rods take the shear, or a lug does (17.11).</summary>
[MemoryDiagnoser]
public class ShearLugBenchmarks
{
    private readonly PreparedAttachment[] _prepared = new PreparedAttachment[2];
    private readonly PreparedActions[] _actions = new PreparedActions[2];
    private ModeResult[] _results = [];

    [GlobalSetup]
    public void Setup()
    {
        (Attachment plain, LoadCase loadCase) = SampleAttachments.ColumnBase();
        Attachment[] attachments = [plain, plain with { ShearLugs = [new ShearLug(ShearAxis.X, Length.FromInches(1.5), Length.FromInches(8), Length.FromInches(4))] }];
        for (int i = 0; i < attachments.Length; i++)
        {
            _prepared[i] = new Aci318Method(Aci318Edition.InchPound2019).Prepare(attachments[i]);
            _actions[i] = _prepared[i].Prepare(loadCase);
        }

        _results = new ModeResult[_prepared.Max(p => p.ModeCapacity)];
        int count = _prepared[1].Evaluate(_actions[1], _results);
        if (!_results.Take(count).Any(r => r.Kind == FailureModeKind.ShearLugBearing && r.Utilization > 0))
        {
            throw new InvalidOperationException("The lug takes no shear.");
        }
    }

    [Benchmark(Baseline = true)]
    public int Rods() => _prepared[0].Evaluate(_actions[0], _results);

    [Benchmark]
    public int OnLug() => _prepared[1].Evaluate(_actions[1], _results);
}
