// The program of someone who installed the package: .ci/run builds it against the packed .nupkg in three ways, runs each
// and compares what it prints with expected.txt. Numbers are printed with fewer digits than a double has, so that
// the last bit of a mathematical function of another runtime does not matter.
using System.Text.RegularExpressions;
using ConcreteAttach.Aci318;
using ConcreteAttach.Actions;
using ConcreteAttach.Attached;
using ConcreteAttach.Fasteners;
using ConcreteAttach.Geometry;
using ConcreteAttach.Materials;
using ConcreteAttach.Presentation;
using ConcreteAttach.Presentation.Drawings;
using ConcreteAttach.Presentation.Json;
using ConcreteAttach.Quantities;
using ConcreteAttach.Verification;
using UnitsNet;

// Four studs near an edge, as in PCA Notes on ACI 318, example 34.2 (from memory): φN_sa 38 220 lbf for four, A_Nc 307, N_b 14 490.
Length half = Length.FromInches(0.5);
var concrete = new ConcreteMember(Pressure.FromPoundsForcePerSquareInch(4000), Length.FromInches(8))
{
    Edges = new EdgeDistances { PlusX = Length.FromInches(6) },
};
var stud = new HeadedStud(half, AnchorSteels.Find("AWS D1.1 Type B", half), Length.FromInches(4.5));
var attachment = new Attachment(concrete, stud, FastenerLayout.Rectangle(2, Length.FromInches(6), 2, Length.FromInches(6)));
var pull = new LoadCase("pull") { N = Force.FromKilopoundsForce(14) };
var pullAndPush = new LoadCase("pull and push") { N = Force.FromKilopoundsForce(6), Vx = Force.FromKilopoundsForce(2), Mz = Torque.FromKilopoundForceInches(3) };

foreach (Aci318Edition edition in new[] { Aci318Edition.InchPound2019, Aci318Edition.Si2019 })
{
    PreparedAttachment prepared = new Aci318Method(edition).Prepare(attachment);
    AttachmentVerification verification = prepared.Verify([pull, pullAndPush], SheetScope.All);
    Print($"{verification.Method}, {verification.Constants}: {verification.Verdict}, load factor {verification.LoadFactor:F4}");
    foreach (FailureMode mode in verification.Modes)
    {
        Print($"  {mode.LoadCase}: {mode.Id}: {mode.Status} {mode.Design?.PoundsForce:F1} {mode.Utilization:F4}");
    }

    var results = new ModeResult[prepared.ModeCapacity];
    Print($"  fast path: {prepared.Evaluate(prepared.Prepare(pull), results)} modes, first {results[0].Utilization:F4}");
}

AttachmentVerification single = new Aci318Method(Aci318Edition.InchPound2019).Verify(attachment, pull);
var options = new ReportOptions { Title = "Four studs", BothSystems = true };
string report = TextReport.Write(single, options);
Console.WriteLine(string.Join('\n', report.Split('\n').Take(6)));
Print($"HTML with {Regex.Count(HtmlReport.Write(single, options), "<svg ")} drawings; plan: {Regex.Match(PlanDrawing.Write(single), "<title[^>]*>(.*?)</title>").Groups[1].Value}");

Console.WriteLine(VerificationJson.WriteError(Error(() => VerificationJson.Read("""{ "schema": "concreteattach/1", "method": "none" }""")), indented: false));
Console.WriteLine(Error(() => concrete with { Cover = Length.FromInches(-1) }).Message);

static void Print(FormattableString text) => Console.WriteLine(FormattableString.Invariant(text));

static InputException Error(Func<object> action)
{
    try
    {
        action();
    }
    catch (InputException error)
    {
        return error;
    }

    throw new InvalidOperationException("No error.");
}
