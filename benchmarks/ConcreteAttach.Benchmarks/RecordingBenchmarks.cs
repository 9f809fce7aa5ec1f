using BenchmarkDotNet.Attributes;
using ConcreteAttach.Aci318;
using ConcreteAttach.Actions;
using ConcreteAttach.Attached;
using ConcreteAttach.Calculation;
using ConcreteAttach.Presentation;
using ConcreteAttach.Presentation.Json;
using ConcreteAttach.Verification;

namespace ConcreteAttach.Benchmarks;

/// <summary>
/// What a reader costs: the calculation sheets of all modes of a load case, and the text of them. Aims: a sheet under 50 µs, the text of a whole report
/// under 500 µs.
/// </summary>
[MemoryDiagnoser]
public class RecordingBenchmarks
{
    private static readonly string[] Layouts = ["4 bolts, 2 edges, biaxial moment", "3 close edges"];

    private PreparedAttachment _prepared = null!;
    private LoadCase[] _loadCases = [];
    private AttachmentVerification _verification = null!;
    private CalculationSheet _sheet = null!;

    [ParamsSource(nameof(Names))]
    public string Layout { get; set; } = "";

    public static IEnumerable<string> Names => Layouts;

    [GlobalSetup]
    public void Setup()
    {
        (Attachment attachment, LoadCase loadCase) = SampleAttachments.Find(Layout);
        _prepared = new Aci318Method(Aci318Edition.InchPound2019).Prepare(attachment);
        _loadCases = [loadCase];
        _verification = _prepared.Verify(_loadCases, SheetScope.All);
        _sheet = _verification.Modes.Single(mode => mode.Id == "tension/breakout").Sheet!;
    }

    /// <summary>Verification with numbers, statuses, reasons and groups, without sheets.</summary>
    [Benchmark(Baseline = true)]
    public AttachmentVerification WithoutSheets() => _prepared.Verify(_loadCases, SheetScope.None);

    /// <summary>The same with the sheet of every mode.</summary>
    [Benchmark]
    public AttachmentVerification WithSheets() => _prepared.Verify(_loadCases, SheetScope.All);

    [Benchmark]
    public string TextOfOneSheet() => TextReport.WriteSheet(_sheet);

    [Benchmark]
    public string TextOfReport() => TextReport.Write(_verification);

    [Benchmark]
    public string MarkdownOfReport() => MarkdownReport.Write(_verification);
}

/// <summary>One line of JSON in, one line of JSON out: reading, verifying, and writing with the steps of every mode.</summary>
[MemoryDiagnoser]
public class JsonBenchmarks
{
    // Invented; the shape of the JSON contract's example.
    private const string Line =
        """{"schema":"concreteattach/1","title":"Sample post","method":"ACI 318-19","constants":"inch-pound","concrete":{"strength":"4000 psi","thickness":"24 in","edges":{"+x":"5 in","+y":"9 in"}},"fastener":{"kind":"headed bolt","diameter":"5/8 in","steel":"ASTM F1554 Grade 36","effectiveEmbedment":"8 in"},"positions":[["-3 in","-3 in"],["3 in","-3 in"],["-3 in","3 in"],["3 in","3 in"]],"loadCases":[{"name":"1.2D + 1.0W","N":"6 kip","Vx":"2 kip","Vy":"-1 kip","Mx":"-8 kip-in","My":"12 kip-in"}]}""";

    [Benchmark]
    public string LineInLineOut() => VerificationJson.Verify(Line, indented: false);
}
