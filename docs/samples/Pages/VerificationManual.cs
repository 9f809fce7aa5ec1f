using System.Globalization;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using ConcreteAttach.Tests.PublishedCases;

namespace ConcreteAttach.Samples.Pages;

/// <summary>The verification manual, from the case files of the tests: case, stated, ours, difference.</summary>
internal static class VerificationManual
{
    private static readonly JsonSerializerOptions Indented = new() { WriteIndented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    public static void Write(Fragments fragments)
    {
        CaseFile[] files = [.. CaseFile.Paths.Select(CaseFile.Load)];
        CheckedCase[] published = [.. files.Where(f => f.IsPublished).Select(CheckedCase.Of)];
        CheckedCase[] constructed = [.. files.Where(f => !f.IsPublished).Select(CheckedCase.Of)];
        fragments.Write("cases-summary", Summary(("published", published), ("constructed", constructed)));
        fragments.Write("cases-disagreements", Disagreements([.. published, .. constructed]));
        fragments.Write("cases-published", Pages(published));
        fragments.Write("cases-constructed", Pages(constructed));
    }

    private static string Summary(params (string Name, CheckedCase[] Cases)[] kinds)
    {
        var text = new StringBuilder("| cases | files | stated values | ours agree | ours differ | values of the source that do not follow |\n| --- | ---: | ---: | ---: | ---: | ---: |\n");
        foreach ((string name, CheckedCase[] cases) in kinds)
        {
            int stated = cases.Sum(c => c.Runs.Sum(r => r.Expected.Count));
            int agree = cases.Sum(c => c.Runs.Sum(r => r.Expected.Count(e => e.Agrees)));
            int disagreements = cases.Sum(c => c.Runs.Sum(r => r.Disagreements.Count));
            text.Append(CultureInfo.InvariantCulture, $"| {name} | {cases.Length} | {stated} | {agree} | {stated - agree} | {disagreements} |\n");
        }

        return text.ToString();
    }

    private static string Disagreements(IEnumerable<CheckedCase> cases)
    {
        var text = new StringBuilder();
        foreach (CheckedCase checkedCase in cases)
        {
            foreach (CheckedRun run in checkedCase.Runs)
            {
                foreach (CaseComparison comparison in run.Disagreements)
                {
                    text.Append(CultureInfo.InvariantCulture, $"- {Escaped(checkedCase.File.Title)} ({Escaped(checkedCase.File.Source.Publication)}), {Place(comparison.Stated)}: ")
                        .Append(CultureInfo.InvariantCulture, $"the source has {Stated(comparison.Stated)}, we get {Ours(comparison)}. {Escaped(comparison.Stated.Why!)}\n");
                }
            }
        }

        return text.Length == 0 ? "None." : text.ToString();
    }

    private static string Pages(CheckedCase[] cases)
    {
        if (cases.Length == 0)
        {
            return "There is no case of this kind in this version.";
        }

        var text = new StringBuilder();
        foreach (CheckedCase checkedCase in cases)
        {
            CaseFile file = checkedCase.File;
            text.Append(CultureInfo.InvariantCulture, $"## {Escaped(file.Title)}\n\n");
            text.Append(CultureInfo.InvariantCulture, $"{Escaped(file.Source.Publication)}, {Escaped(file.Source.Edition)}; {Escaped(file.Source.Where)}. Provenance: **{file.Source.Provenance}**. File: `{file.Path}.json`.\n\n");
            foreach (string note in file.Notes)
            {
                text.Append(CultureInfo.InvariantCulture, $"- {Escaped(note)}\n");
            }

            text.Append('\n');
            foreach (CheckedRun run in checkedCase.Runs)
            {
                AppendRun(text, run);
            }

            text.Append("<details><summary>Input</summary>\n\n```json\n").Append(file.Input.ToJsonString(Indented)).Append("\n```\n\n</details>\n\n");
        }

        return text.ToString();
    }

    private static void AppendRun(StringBuilder text, CheckedRun run)
    {
        if (run.Name.Length > 0)
        {
            text.Append(CultureInfo.InvariantCulture, $"**{Escaped(run.Name)}**\n\n");
        }

        if (run.Refused is { } refused)
        {
            text.Append(CultureInfo.InvariantCulture, $"**The library refuses this input:** {Escaped(refused)}\n\n");
        }

        text.Append("| value | stated | ours | difference | |\n| --- | ---: | ---: | ---: | --- |\n");
        foreach (CaseComparison comparison in run.Expected)
        {
            AppendRow(text, comparison, comparison.Agrees ? "agrees" : "**differs**");
        }

        foreach (CaseComparison comparison in run.Disagreements)
        {
            AppendRow(text, comparison, comparison.Problem is not null || comparison.Agrees ? "**not as noted**" : "does not follow");
        }

        text.Append('\n');
        foreach (CaseComparison comparison in run.Disagreements)
        {
            text.Append(CultureInfo.InvariantCulture, $"- {Place(comparison.Stated)} does not follow: {Escaped(comparison.Stated.Why!)}\n");
        }

        text.Append(run.Disagreements.Count > 0 ? "\n" : "");
    }

    private static void AppendRow(StringBuilder text, CaseComparison comparison, string judgement) =>
        text.Append(CultureInfo.InvariantCulture, $"| {Place(comparison.Stated)} | {Stated(comparison.Stated)} | {Ours(comparison)} | {Difference(comparison)} | {judgement} |\n");

    private static string Place(CaseValue value)
    {
        string what = value.Mode is not null ? $"`{value.Mode}`" : value.Fastener is { } index ? string.Create(CultureInfo.InvariantCulture, $"fastener {index}") : "";
        string place = $"{what} {(value.Step is { } step ? $"`{step}`" : value.Field)}".Trim();
        string times = value.Times == 1 ? "" : string.Create(CultureInfo.InvariantCulture, $", times {value.Times}");
        return place + times + (value.Case is { } name ? $", {Escaped(name)}" : "");
    }

    private static string Stated(CaseValue value) => value.IsText ? Escaped(value.Value.GetString()!) : $"{value.Printed} {value.Unit}".Trim();

    /// <summary>Ours with two more digits than the source prints, so that the difference can be seen.</summary>
    private static string Ours(CaseComparison comparison) =>
        comparison.Problem is { } problem ? Escaped(problem)
        : comparison.Difference is { } difference ? (comparison.Stated.Value.GetDouble() + difference).ToString("F" + Decimals(comparison.Stated, 2), CultureInfo.InvariantCulture)
        : Escaped(comparison.Ours ?? "");

    private static string Difference(CaseComparison comparison) =>
        comparison.Difference is { } difference && comparison.Problem is null ? difference.ToString("+0.0E+0;-0.0E+0;0", CultureInfo.InvariantCulture) : "";

    private static string Decimals(CaseValue value, int more)
    {
        int point = value.Printed!.IndexOf('.', StringComparison.Ordinal);
        int printed = point < 0 ? 0 : value.Printed.Length - point - 1;
        return (printed + more).ToString(CultureInfo.InvariantCulture);
    }

    /// <summary>Text in which nothing is read as Markdown.</summary>
    private static string Escaped(string text)
    {
        var escaped = new StringBuilder(text.Length + 8);
        foreach (char c in text)
        {
            escaped.Append(c is '\\' or '*' or '_' or '[' or ']' or '<' or '>' or '|' or '`' or '#' or '$' ? "\\" : "").Append(c);
        }

        return escaped.ToString();
    }

    /// <summary>A case file with what the library gives for it.</summary>
    private sealed record CheckedCase(CaseFile File, IReadOnlyList<CheckedRun> Runs)
    {
        public static CheckedCase Of(CaseFile file) => new(file, [.. file.Runs().Select(run => CheckedRun.Of(run.Name, run.Input, run.Expected, run.Disagreements))]);
    }

    /// <summary>The case itself, or one of its variants.</summary>
    private sealed record CheckedRun(string Name, string? Refused, IReadOnlyList<CaseComparison> Expected, IReadOnlyList<CaseComparison> Disagreements)
    {
        public static CheckedRun Of(string name, JsonObject input, IReadOnlyList<CaseValue> expected, IReadOnlyList<CaseValue> disagreements)
        {
            JsonObject output = JsonNode.Parse(CaseRunner.Verify(input.ToJsonString()))!.AsObject();
            string? refused = output["error"]?["message"]?.GetValue<string>();
            return new(name, refused, [.. expected.Select(value => CaseComparison.Of(output, value))], [.. disagreements.Select(value => CaseComparison.Of(output, value))]);
        }
    }
}
