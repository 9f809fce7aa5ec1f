using BenchmarkDotNet.Attributes;
using ConcreteAttach.Aci318;
using ConcreteAttach.Actions;
using ConcreteAttach.Attached;
using ConcreteAttach.Distribution;
using ConcreteAttach.Verification;

namespace ConcreteAttach.Benchmarks;

/// <summary>10,000 load cases of one attachment, on one core and on all of them. Aim: two cores at least 1.6 times one.</summary>
[MemoryDiagnoser]
[InvocationCount(1)] // one batch is long enough; a shorter iteration finds both cores free more often
[IterationCount(200)]
public class BatchBenchmarks
{
    private const int Count = 10_000;

    private readonly PreparedActions[] _actions = new PreparedActions[Count];
    private readonly double[] _highest = new double[Count];
    private PreparedAttachment _prepared = null!;

    [GlobalSetup]
    public void Setup()
    {
        (Attachment attachment, LoadCase loadCase) = SampleAttachments.Find("4 bolts, 2 edges, biaxial moment");
        _prepared = new Aci318Method(Aci318Edition.InchPound2019).Prepare(attachment);
        PreparedActions actions = _prepared.Prepare(loadCase);
        for (int i = 0; i < Count; i++)
        {
            _actions[i] = actions.Scaled((i % 100) / 50.0);
        }
    }

    [Benchmark(Baseline = true)]
    public double[] OneCore()
    {
        Evaluate(0, Count);
        return _highest;
    }

    [Benchmark]
    public double[] AllCores()
    {
        int parts = 8 * Environment.ProcessorCount;
        Parallel.For(0, parts, part => Evaluate(Count * part / parts, Count * (part + 1) / parts));
        return _highest;
    }

    private void Evaluate(int from, int to)
    {
        var results = new ModeResult[_prepared.ModeCapacity];
        for (int i = from; i < to; i++)
        {
            int count = _prepared.Evaluate(_actions[i], results);
            double highest = 0;
            foreach (ref readonly ModeResult result in results.AsSpan(0, count))
            {
                highest = result.Utilization > highest ? result.Utilization : highest;
            }

            _highest[i] = highest;
        }
    }
}
