using System.Globalization;
using System.Text;
using System.Text.Json.Nodes;
using CommandLine = ConcreteAttach.Cli.Program;

namespace ConcreteAttach.Samples.Pages;

/// <summary>The pages on JSON and the command line: what the tool prints for the files of docs/samples.</summary>
internal static class CommandLinePage
{
    public static void Write(Fragments fragments)
    {
        fragments.WriteText("help", Run("help").Output);
        fragments.WriteText("canopy-post-report", Run("verify", Repository.Sample("canopy-post.json"), "--sheets", "none").Output);
        fragments.WriteText("canopy-post-summary", Run("verify", Repository.Sample("canopy-post.json"), "--format", "summary").Output);
        fragments.WriteText("hooked-bolt-result", JsonText.ReadThenVerify(File.ReadAllText(Repository.Sample("hooked-bolt.json"))), "json");
        fragments.Write("sample-exit-codes", ExitCodes());
        WriteBatch(fragments);
    }

    private static string ExitCodes()
    {
        var text = new StringBuilder("| file | verdict | exit code |\n| --- | --- | ---: |\n");
        foreach (string file in Directory.EnumerateFiles(Repository.Sample(""), "*.json").Order(StringComparer.Ordinal))
        {
            (string output, int code) = Run("verify", file, "--format", "json", "--sheets", "none");
            text.Append(CultureInfo.InvariantCulture, $"| `{Path.GetFileName(file)}` | {Verdict(output)} | {code} |\n");
        }

        return text.ToString();
    }

    private static void WriteBatch(Fragments fragments)
    {
        (string output, int code) = Run(File.ReadAllBytes(Repository.Sample("batch.jsonl")), "verify", "-", "--sheets", "none");
        string[] lines = output.Split('\n', StringSplitOptions.RemoveEmptyEntries);
        var text = new StringBuilder("| line of output | `title` | `verdict` or `error` |\n| ---: | --- | --- |\n");
        for (int i = 0; i < lines.Length; i++)
        {
            text.Append(CultureInfo.InvariantCulture, $"| {i + 1} | {JsonNode.Parse(lines[i])!["title"]?.GetValue<string>() ?? "(none)"} | {Verdict(lines[i])} |\n");
        }

        fragments.Write("batch", string.Create(CultureInfo.InvariantCulture, $"{text}\nExit code: {code}."));
        string refused = File.ReadLines(Repository.Sample("batch.jsonl")).Single(line => line.Contains("5/8 lb", StringComparison.Ordinal));
        fragments.WriteText("error-document", JsonText.Verify(refused), "json");
    }

    private static string Verdict(string document)
    {
        JsonNode node = JsonNode.Parse(document)!;
        return node["error"] is { } error ? $"error at `{error["path"]!.GetValue<string>()}`" : node["verdict"]!.GetValue<string>();
    }

    private static (string Output, int Code) Run(params string[] arguments) => Run([], arguments);

    private static (string Output, int Code) Run(byte[] input, params string[] arguments)
    {
        using var reader = new MemoryStream(input);
        using var output = new MemoryStream();
        using var errors = new StringWriter();
        int code = CommandLine.Run(arguments, reader, output, errors);
        return (Encoding.UTF8.GetString(output.ToArray()), code);
    }
}
