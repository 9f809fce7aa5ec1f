using System.Diagnostics;
using System.Text;
using System.Text.Json.Nodes;
using ConcreteAttach.Cli;
using ConcreteAttach.Presentation.Json;

namespace ConcreteAttach.Tests.Presentation.Json;

public sealed class CommandLineTests
{
    [Theory]
    [InlineData("canopy-post.json", 0)]
    [InlineData("anchor-bolt-row.json", 1)]
    [InlineData("hooked-bolt.json", 2)]
    [InlineData("stud-plate.json", 0)]
    [InlineData("hold-down-rod.json", 0)]
    [InlineData("pier-with-hairpins.json", 0)]
    [InlineData("shear-lug-base.json", 0)]
    [InlineData("sill-bolts-in-wood.json", 0)]
    [InlineData("lag-screws-of-a-strap.json", 0)]
    [InlineData("sill-bolts-whole.json", 0)]
    [InlineData("pump-house-wall.json", 0)]
    public void Exit_code_is_the_verdict(string sample, int code)
    {
        foreach (string format in new[] { "summary", "text", "markdown", "html", "json" })
        {
            Run run = Tool("verify", Repository.Sample(sample), "--format", format);

            Assert.Equal(code, run.Code);
            Assert.Equal("", run.Errors);
            Assert.EndsWith("\n", run.Output, StringComparison.Ordinal);
            Assert.DoesNotContain('\r', run.Output);
            Assert.Contains("invented", run.Output, StringComparison.Ordinal);
            Assert.Contains("licensed professional", run.Output, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Text_is_the_format_unless_said_otherwise()
    {
        string file = Repository.Sample("canopy-post.json");

        Assert.Equal(Tool("verify", file, "--format", "text").Output, Tool("verify", file).Output);
        Assert.StartsWith("# ", Tool("verify", "--format", "markdown", file).Output, StringComparison.Ordinal);
        Assert.Equal(VerificationJson.Verify(File.ReadAllText(file)) + "\n", Tool("verify", file, "--format", "json").Output);
    }

    [Fact]
    public void Sheets_and_units_are_options()
    {
        string file = Repository.Sample("canopy-post.json");
        string none = Tool("verify", file, "--sheets", "none").Output;
        string governing = Tool("verify", file).Output;
        string all = Tool("verify", file, "--sheets", "all").Output;

        Assert.True(none.Length < governing.Length && governing.Length < all.Length);
        Assert.Equal(governing, Tool("verify", file, "--sheets", "governing", "--units", "own").Output);
        Assert.DoesNotContain("kN)", governing, StringComparison.Ordinal);
        Assert.Contains("kN)", Tool("verify", file, "--units", "both").Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Levels_and_a_date_are_options_of_reports()
    {
        string file = Repository.Sample("canopy-post.json");
        string everything = Tool("verify", file, "--format", "html").Output, governing = Tool("verify", file, "--format", "html", "--level", "governing").Output;
        string summary = Tool("verify", file, "--format", "html", "--level", "summary", "--date", "2026-03-09").Output;

        Assert.True(summary.Length < governing.Length && governing.Length < everything.Length);
        Assert.Contains("Date: 2026-03-09.", summary, StringComparison.Ordinal);
        Assert.DoesNotContain("Date:", everything, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("plan")]
    [InlineData("section")]
    [InlineData("shear")]
    [InlineData("forces")]
    [InlineData("utilization")]
    [InlineData("interaction")]
    [InlineData("embedment")]
    [InlineData("edge-distance")]
    public void A_drawing_is_written_in_place_of_a_report(string name)
    {
        Run run = Tool("verify", Repository.Sample("canopy-post.json"), "--drawing", name, "--units", "both");
        Assert.Equal(0, run.Code);
        Assert.StartsWith("<svg ", run.Output, StringComparison.Ordinal);
        Assert.Contains("</svg>\n", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Fastenings_in_wood_have_no_drawings_and_run_in_a_stream()
    {
        Run drawing = Tool("verify", Repository.Sample("sill-bolts-in-wood.json"), "--drawing", "plan");
        Assert.Equal(3, drawing.Code);
        Assert.Contains("nothing to draw", drawing.Errors, StringComparison.Ordinal);

        string line = JsonNode.Parse(File.ReadAllText(Repository.Sample("sill-bolts-in-wood.json")))!.ToJsonString();
        using var input = new MemoryStream(Encoding.UTF8.GetBytes(line + "\n" + line));
        using var output = new MemoryStream();
        Assert.Equal(0, Program.Run(["verify", "-"], input, output, TextWriter.Null));
        string[] results = Encoding.UTF8.GetString(output.ToArray()).Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal(2, results.Length);
        Assert.Equal("NDS-2018", JsonNode.Parse(results[1])!["method"]!.GetValue<string>());
    }

    [Fact]
    public void A_drawing_that_has_nothing_to_show_is_refused()
    {
        Run run = Tool("verify", Repository.Sample("canopy-post.json"), "--drawing", "shear", "--load-case", "1.2D + 1.6S");
        Assert.Equal(3, run.Code);
        Assert.Equal("", run.Output);
        Assert.Contains("nothing to draw", run.Errors, StringComparison.Ordinal);

        Run other = Tool("verify", Repository.Sample("canopy-post.json"), "--drawing", "plan", "--load-case", "no such case");
        Assert.Equal(3, other.Code);
        Assert.Contains("loadCase", other.Errors, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("canopy-post.json")]
    [InlineData("anchor-bolt-row.json")]
    [InlineData("hooked-bolt.json")]
    [InlineData("stud-plate.json")]
    [InlineData("hold-down-rod.json")]
    [InlineData("pier-with-hairpins.json")]
    public void A_summary_has_a_bar_for_each_mode_in_80_columns(string sample)
    {
        string[] arguments = ["verify", Repository.Sample(sample), "--format", "summary"];
        string plain = Tool(arguments).Output;

        Assert.All(plain.Split('\n'), line => Assert.True(line.Length <= 80, line));
        Assert.All(plain, c => Assert.InRange(c, '\n', '~'));
        Assert.Matches(@"tension/steel +0\.\d\d #+ *\|", plain);

        using var output = new MemoryStream();
        using var errors = new StringWriter();
        Program.Run(arguments, Stream.Null, output, errors, isTerminal: true);
        string terminal = Encoding.UTF8.GetString(output.ToArray());
        Assert.Contains('█', terminal);
        Assert.All(terminal.Split('\n'), line => Assert.True(line.Length <= 80, line));
    }

    [Fact]
    public void Output_goes_to_a_file()
    {
        string folder = Directory.CreateTempSubdirectory("concreteattach").FullName;
        try
        {
            string file = Path.Combine(folder, "result.json");
            Run run = Tool("verify", Repository.Sample("canopy-post.json"), "--format", "json", "--output", file);
            Assert.Equal((0, "", ""), (run.Code, run.Output, run.Errors));
            byte[] bytes = File.ReadAllBytes(file);
            Assert.Equal((byte)'{', bytes[0]);
            Assert.Equal("holds", JsonNode.Parse(bytes)!["verdict"]!.GetValue<string>());

            Run stream = Tool(["verify", "-", "--output", file], File.ReadAllText(Repository.Sample("batch.jsonl")));
            Assert.Equal((3, ""), (stream.Code, stream.Output));
            Assert.Equal(5, File.ReadAllLines(file).Length);

            Run nowhere = Tool("verify", Repository.Sample("canopy-post.json"), "--output", Path.Combine(folder, "none", "x.txt"));
            Assert.Equal(3, nowhere.Code);
            Assert.Contains("x.txt", nowhere.Errors, StringComparison.Ordinal);

            string input = Path.Combine(folder, "input.json");
            File.WriteAllText(input, ContractExample.Input);
            Assert.Equal(3, Tool("verify", input, "--output", input).Code);
            Assert.Equal(ContractExample.Input, File.ReadAllText(input));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    [Fact]
    public void A_bad_file_gives_one_message_and_in_json_an_error_document()
    {
        string file = Path.Combine(Path.GetTempPath(), $"{Guid.NewGuid():N}.json");
        File.WriteAllText(file, ContractExample.With(("/fastener/diameter", "\"5/8 lb\"")));
        try
        {
            Run text = Tool("verify", file);
            Assert.Equal((3, ""), (text.Code, text.Output));
            Assert.Equal($"concreteattach: {file} at /fastener/diameter: found 5/8 lb, permitted: a quantity in in, ft, mm, cm, m{Environment.NewLine}", text.Errors);

            Run json = Tool("verify", file, "--format", "json");
            Assert.Equal(3, json.Code);
            Assert.Equal("/fastener/diameter", JsonNode.Parse(json.Output)!["error"]!["path"]!.GetValue<string>());
            Assert.Equal(text.Errors, json.Errors);
        }
        finally
        {
            File.Delete(file);
        }
    }

    [Fact]
    public void A_file_that_is_not_there_is_bad_input()
    {
        Run run = Tool("verify", "no-such-file.json", "--format", "json");

        Assert.Equal(3, run.Code);
        Assert.Contains("no-such-file.json", run.Errors, StringComparison.Ordinal);
        Assert.Equal("", JsonNode.Parse(run.Output)!["error"]!["path"]!.GetValue<string>());
        Assert.Equal(3, Tool("verify", Path.GetTempPath()).Code);
    }

    [Theory]
    [InlineData("")]
    [InlineData("verify")]
    [InlineData("check a.json")]
    [InlineData("verify a.json b.json")]
    [InlineData("verify a.json --format")]
    [InlineData("verify a.json --format pdf")]
    [InlineData("verify a.json --level most")]
    [InlineData("verify a.json --date 9.3.2026")]
    [InlineData("verify a.json --date 2026-02-30")]
    [InlineData("verify a.json --drawing nice")]
    [InlineData("verify a.json --drawing plan --format html")]
    [InlineData("verify a.json --load-case wind")]
    [InlineData("verify - --drawing plan")]
    [InlineData("verify a.json --format json --date 2026-03-09")]
    [InlineData("verify a.json --format text --format json")]
    [InlineData("verify a.json --sheets some")]
    [InlineData("verify a.json --units si")]
    [InlineData("verify a.json --colour red")]
    [InlineData("verify a.json --format json --units both")]
    [InlineData("verify - --format text")]
    [InlineData("schema")]
    [InlineData("schema output")]
    [InlineData("schema input result")]
    [InlineData("version now")]
    public void A_command_line_that_means_nothing_is_refused(string line)
    {
        Run run = Tool(line.Split(' ', StringSplitOptions.RemoveEmptyEntries));

        Assert.Equal((3, ""), (run.Code, run.Output));
        Assert.StartsWith("concreteattach: ", run.Errors, StringComparison.Ordinal);
        Assert.Contains("concreteattach help", run.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void Schema_version_and_help_are_printed()
    {
        Assert.Equal(new Run(0, VerificationJson.InputSchema, ""), Tool("schema", "input"));
        Assert.Equal(new Run(0, VerificationJson.ResultSchema, ""), Tool("schema", "result"));
        Assert.Equal(new Run(0, VerificationJson.LibraryVersion + "\n", ""), Tool("version"));
        Run help = Tool("help");
        Assert.Equal((0, ""), (help.Code, help.Errors));
        Assert.All(new[] { "--format", "--output", "--sheets", "--units", "schema input", "verify -", "3 bad input" }, word => Assert.Contains(word, help.Output, StringComparison.Ordinal));
        Assert.Equal(help, Tool("--help"));
    }

    [Theory]
    [InlineData("holds", 0)]
    [InlineData("holds fails", 1)]
    [InlineData("holds gap", 2)]
    [InlineData("gap fails", 1)]
    [InlineData("fails gap bad holds", 3)]
    [InlineData("bad", 3)]
    [InlineData("", 0)]
    public void A_stream_exits_with_the_worst(string lines, int code)
    {
        string input = string.Join('\n', lines.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(StreamTests.Line));

        Assert.Equal(code, Tool(["verify", "-"], input).Code);
    }

    // Through the operating system: the process, its pipes, its exit code, and an answer before the next question.
    [Fact]
    public async Task A_program_at_the_other_end_is_never_kept_waiting()
    {
        var start = new ProcessStartInfo(Environment.ProcessPath ?? "dotnet")
        {
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            StandardOutputEncoding = Encoding.UTF8,
            StandardInputEncoding = new UTF8Encoding(false),
            ArgumentList = { "exec", Path.Combine(AppContext.BaseDirectory, "ConcreteAttach.Cli.dll"), "verify", "-" },
        };
        if (!Path.GetFileNameWithoutExtension(start.FileName).Equals("dotnet", StringComparison.OrdinalIgnoreCase))
        {
            start.FileName = "dotnet";
        }

        using Process process = Process.Start(start)!;
        using var patience = new CancellationTokenSource(TimeSpan.FromMinutes(2));
        foreach (string title in new[] { "first ψ", "second" })
        {
            await process.StandardInput.WriteLineAsync(ContractExample.With(("/title", $"\"{title}\"")).AsMemory(), patience.Token);
            await process.StandardInput.FlushAsync(patience.Token);
            string? answer = await process.StandardOutput.ReadLineAsync(patience.Token);
            Assert.Equal(title, JsonNode.Parse(answer!)!["title"]!.GetValue<string>());
        }

        process.StandardInput.Close();
        await process.WaitForExitAsync(patience.Token);
        Assert.Equal(0, process.ExitCode);
        Assert.Equal("", await process.StandardError.ReadToEndAsync(patience.Token));
    }

    internal sealed record Run(int Code, string Output, string Errors);

    internal static Run Tool(params string[] args) => Tool(args, "");

    internal static Run Tool(string[] args, string input)
    {
        using var stdin = new MemoryStream(Encoding.UTF8.GetBytes(input));
        using var stdout = new MemoryStream();
        using var errors = new StringWriter();
        int code = Program.Run(args, stdin, stdout, errors);
        return new Run(code, Encoding.UTF8.GetString(stdout.ToArray()), errors.ToString());
    }
}
