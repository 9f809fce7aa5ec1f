using System.Globalization;
using System.Text;
using ConcreteAttach.Presentation;
using ConcreteAttach.Presentation.Json;
using ConcreteAttach.Verification;

namespace ConcreteAttach.Samples.Pages;

/// <summary>The worked examples, section by section.</summary>
internal static class WorkedExamples
{
    private const int LoadCaseColumn = 1;

    public static void Write(Fragments fragments)
    {
        Example(fragments, "market-hall", MarketHallCanopy.Verify());
        var second = new ReportSections(MarketHallCanopy.VerifyWithSupplementaryReinforcement());
        fragments.Write("market-hall-second-answer", second.Answer);
        Example(fragments, "pier-corner", PierCornerPost.Verify());
        Example(fragments, "boathouse", BoathouseColumn.Verify());
        var boathouse = new ReportSections(BoathouseColumn.Verify());
        fragments.Write("boathouse-distribution", boathouse.Distribution);
        Example(fragments, "stem-wall", StemWallRetrofit.Verify());
        Example(fragments, "ledger", LedgerScrews.Verify());
        var lug = new ReportSections((AttachmentVerification)VerificationJson.Read(File.ReadAllBytes(Repository.Sample("shear-lug-base.json"))).Verify(SheetScope.Governing));
        fragments.Write("shear-lug-answer", lug.Answer);
        fragments.Write("shear-lug-distribution", lug.Distribution);
        fragments.Write("ledger-cracked-answer", new ReportSections(LedgerScrews.VerifyCracked()).Answer);
    }

    private static void Example(Fragments fragments, string name, AttachmentVerification verification)
    {
        var report = new ReportSections(verification, new ReportOptions { BothSystems = false });
        fragments.Write($"{name}-answer", report.Answer);
        fragments.Write($"{name}-results", ByLoadCase(report["Results"]));
        fragments.Write($"{name}-inputs", report["Inputs"]);
        fragments.Write($"{name}-assumptions", report["Assumptions and readings"]);
        fragments.Write($"{name}-notices", report.Notices);
        fragments.Write($"{name}-forces", report["Forces on the fasteners"]);
        fragments.Write($"{name}-calculation", report.Calculation);
        fragments.Write($"{name}-detailing", report["Detailing"]);
    }

    /// <summary>The table of results as one table for each load case, so that it fits the width of a page.</summary>
    private static string ByLoadCase(string results)
    {
        string[] lines = results.Split('\n');
        string[] rows = [.. lines.TakeWhile(line => line.StartsWith('|'))];
        string[][] cells = [.. rows.Select(row => row.Split('|')[1..^1])];
        var text = new StringBuilder();
        foreach (IGrouping<string, string[]> loadCase in cells.Skip(2).GroupBy(row => row[LoadCaseColumn].Trim()))
        {
            text.Append(CultureInfo.InvariantCulture, $"### {(loadCase.Key.Length == 0 ? "Detailing, any load case" : loadCase.Key)}\n\n");
            foreach (string[] row in cells.Take(2).Concat(loadCase))
            {
                text.Append('|').AppendJoin('|', row.Where((_, column) => column != LoadCaseColumn)).Append("|\n");
            }

            text.Append('\n');
        }

        return text.Append("### Why some do not apply\n\n").AppendJoin('\n', lines.Skip(rows.Length)).ToString();
    }
}
