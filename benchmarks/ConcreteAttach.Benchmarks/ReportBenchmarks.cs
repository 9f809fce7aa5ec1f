using BenchmarkDotNet.Attributes;
using ConcreteAttach.Aci318;
using ConcreteAttach.Actions;
using ConcreteAttach.Attached;
using ConcreteAttach.Presentation;
using ConcreteAttach.Presentation.Drawings;
using ConcreteAttach.Verification;

namespace ConcreteAttach.Benchmarks;

/// <summary>The HTML report of six bolts at each level, and its drawings. Aim: the report with everything under 20 ms (and under 300 kB, which a test holds).</summary>
[MemoryDiagnoser]
public class ReportBenchmarks
{
    private AttachmentVerification _verification = null!;

    [GlobalSetup]
    public void Setup()
    {
        (Attachment attachment, LoadCase loadCase) = SampleAttachments.Grid(3, 2);
        _verification = new Aci318Method(Aci318Edition.InchPound2019).Prepare(attachment).Verify([loadCase], SheetScope.All);
    }

    [Params(ReportLevel.Everything, ReportLevel.Governing, ReportLevel.Summary)]
    public ReportLevel Level { get; set; }

    [Benchmark(Baseline = true)]
    public string Html() => HtmlReport.Write(_verification, new ReportOptions { Level = Level });

    [Benchmark]
    public string Plan() => PlanDrawing.Write(_verification);

    [Benchmark]
    public string Section() => SectionDrawing.Write(_verification);

    /// <summary>A curve of 29 verifications.</summary>
    [Benchmark]
    public string? AgainstEmbedment() => CapacityDrawing.Write(_verification, CapacityVariable.Embedment);
}
