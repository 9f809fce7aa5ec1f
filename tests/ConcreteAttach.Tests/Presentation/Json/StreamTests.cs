using System.Diagnostics;
using System.Globalization;
using System.Text;
using System.Text.Json.Nodes;
using ConcreteAttach.Presentation.Json;

namespace ConcreteAttach.Tests.Presentation.Json;

public sealed class StreamTests
{
    [Fact]
    public void Two_hundred_lines_good_bad_and_blank_keep_their_order()
    {
        var input = new StringBuilder();
        var expected = new List<string>();
        string[] kinds = ["holds", "fails", "blank", "gap", "bad", "nojson", "twice", "blank"];
        for (int i = 0; i < 200; i++)
        {
            string kind = kinds[(i * 5 + (i / 8)) % kinds.Length];
            string line = kind switch
            {
                "blank" => i % 3 == 0 ? "" : " \t ",
                "nojson" => $"{{ \"line\": {i.ToString(CultureInfo.InvariantCulture)}",
                "twice" => Line("holds").Replace("{\"schema\"", "{\"title\":\"a\",\"schema\"", StringComparison.Ordinal),
                _ => Line(kind),
            };
            string title = $"line {i.ToString(CultureInfo.InvariantCulture)}";
            input.Append(line.Replace("TITLE", title, StringComparison.Ordinal)).Append(i % 4 == 0 ? "\r\n" : "\n");
            switch (kind)
            {
                case "holds": expected.Add($"{title}: holds"); break;
                case "fails": expected.Add($"{title}: does not hold"); break;
                case "gap": expected.Add($"{title}: not covered"); break;
                case "bad": expected.Add("error /fastener/diameter"); break;
                case "nojson": expected.Add("error "); break;
                case "twice": expected.Add("error /title"); break;
            }
        }

        CommandLineTests.Run run = CommandLineTests.Tool(["verify", "-"], input.ToString());

        Assert.Equal((3, ""), (run.Code, run.Errors));
        Assert.EndsWith("\n", run.Output, StringComparison.Ordinal);
        string[] lines = run.Output[..^1].Split('\n');
        Assert.Equal(expected, lines.Select(Summary));
        Assert.Equal(150, lines.Length);
        Assert.True(expected.Distinct().Count() > 70);
    }

    // Random attachments, from a fixed seed: every line an answer, in order, valid by the schema, finite numbers, never an exception.
    [Fact]
    public void Thousands_of_random_attachments_are_answered_in_order()
    {
        int count = Environment.GetEnvironmentVariable("CONCRETEATTACH_SLOW") == "1" ? 10_000 : 1_000;
        var random = new RandomInputs(20250611);
        string[] inputs = [.. Enumerable.Range(0, count).Select(i => random.Next($"line {i.ToString(CultureInfo.InvariantCulture)}"))];

        var watch = Stopwatch.StartNew();
        CommandLineTests.Run run = CommandLineTests.Tool(["verify", "-"], string.Join('\n', inputs));
        watch.Stop();

        Assert.Equal("", run.Errors);
        Assert.DoesNotContain("NaN", run.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("Infinity", run.Output, StringComparison.Ordinal);
        string[] lines = run.Output[..^1].Split('\n');
        Assert.Equal(count, lines.Length);
        var verdicts = new Dictionary<string, int>();
        for (int i = 0; i < count; i++)
        {
            string summary = Summary(lines[i]);
            if (!summary.StartsWith("error ", StringComparison.Ordinal))
            {
                string title = $"line {i.ToString(CultureInfo.InvariantCulture)}: ";
                Assert.StartsWith(title, summary, StringComparison.Ordinal);
                summary = summary[title.Length..];
            }

            verdicts[summary] = verdicts.GetValueOrDefault(summary) + 1;
            if (i % 50 == 0)
            {
                Assert.True(Schemas.Input.Evaluate(JsonNode.Parse(inputs[i])).IsValid, inputs[i]);
                Assert.True(Schemas.Result.Evaluate(JsonNode.Parse(lines[i])).IsValid, lines[i]);
            }
        }

        // The mixture must not be one-sided, or the test would see little.
        Assert.All(new[] { "holds", "does not hold", "not covered" }, v => Assert.True(verdicts.GetValueOrDefault(v) > count / 50, $"{v}: {verdicts.GetValueOrDefault(v)}"));
        Assert.DoesNotContain(verdicts.Keys, v => v.StartsWith("error ", StringComparison.Ordinal) && !v.StartsWith("error /loadCases/", StringComparison.Ordinal));
        Assert.True(watch.Elapsed < TimeSpan.FromMinutes(count / 1000), $"{count} lines took {watch.Elapsed}.");
    }

    /// <summary>A line of a kind; its title is TITLE.</summary>
    internal static string Line(string kind) => kind switch
    {
        "holds" => ContractExample.With(("/title", "\"TITLE\"")),
        "fails" => ContractExample.With(("/title", "\"TITLE\""), ("/loadCases/0/N", "\"60 kip\"")),
        "gap" => ContractExample.With(
            ("/title", "\"TITLE\""), ("/fastener/kind", "\"hooked bolt\""), ("/fastener/bearingArea", null), ("/fastener/hookExtension", "\"1 in\"")),
        _ => ContractExample.With(("/title", "\"TITLE\""), ("/fastener/diameter", "\"5/8 lb\"")),
    };

    private static string Summary(string line)
    {
        JsonNode node = JsonNode.Parse(line)!;
        return node["error"] is { } error
            ? $"error {error["path"]!.GetValue<string>()}"
            : $"{node["title"]!.GetValue<string>()}: {node["verdict"]!.GetValue<string>()}";
    }
}
