using System.Globalization;
using ConcreteAttach.Verification;
using ConcreteAttach.Presentation;

namespace ConcreteAttach.Cli;

/// <summary>How a result is written.</summary>
internal enum OutputFormat
{
    Text,
    Markdown,
    Json,
    Html,
    Summary,
}

/// <summary>What follows the word <c>verify</c> on the command line.</summary>
internal sealed record VerifyOptions
{
    /// <summary>The word that stands for standard input.</summary>
    private const string StandardInput = "-";

    private static readonly string[] Known = ["--format", "--output", "--sheets", "--units", "--level", "--date", "--drawing", "--load-case"];

    private static readonly string[] OnlyForReports = ["--units", "--level", "--date"];

    private static readonly string[] NotForDrawings = ["--format", "--level", "--date", "--sheets"];

    /// <summary>The input file, or <c>-</c>.</summary>
    public required string Input { get; init; }

    public required OutputFormat Format { get; init; }

    public required SheetScope Sheets { get; init; }

    public bool BothSystems { get; init; }

    /// <summary>How much of the calculation a report shows.</summary>
    public ReportLevel Level { get; init; }

    /// <summary>The date that stands on a report; null for none.</summary>
    public DateOnly? Date { get; init; }

    /// <summary>The drawing that is wanted in place of a report; null for a report.</summary>
    public string? Drawing { get; init; }

    /// <summary>The load case of the drawing; null for the one that governs.</summary>
    public string? LoadCase { get; init; }

    /// <summary>The file to write; null for standard output.</summary>
    public string? Output { get; init; }

    /// <summary>Whether inputs come line by line from standard input.</summary>
    public bool IsStream => Input == StandardInput;

    /// <exception cref="UsageException">An unknown option, a value it does not have, or a mixture that has no meaning.</exception>
    public static VerifyOptions Of(string[] args)
    {
        string? input = null;
        var given = new Dictionary<string, string>(StringComparer.Ordinal);
        for (int i = 0; i < args.Length; i++)
        {
            string arg = args[i];
            if (!arg.StartsWith("--", StringComparison.Ordinal))
            {
                input = input is null ? arg : throw new UsageException($"verify takes one input, here are \"{input}\" and \"{arg}\".");
            }
            else if (!Known.Contains(arg))
            {
                throw new UsageException($"verify has no option {arg}; it has {string.Join(", ", Known[..^1])} and {Known[^1]}.");
            }
            else if (++i == args.Length || !given.TryAdd(arg, args[i]))
            {
                throw new UsageException(i == args.Length ? $"{arg} needs a value." : $"{arg} is given twice.");
            }
        }

        if (string.IsNullOrEmpty(input))
        {
            throw new UsageException("verify needs the input file, or - for inputs line by line from standard input.");
        }

        bool isStream = input == StandardInput;
        OutputFormat format = Choice(given, "--format", isStream ? "json" : "text",
            ("text", OutputFormat.Text), ("markdown", OutputFormat.Markdown), ("html", OutputFormat.Html), ("summary", OutputFormat.Summary), ("json", OutputFormat.Json));
        if (isStream && format != OutputFormat.Json)
        {
            throw new UsageException("verify - writes one JSON result a line; the other formats are for a file.");
        }

        string? drawing = DrawingName(given, isStream);
        if (format == OutputFormat.Json && drawing is null && OnlyForReports.FirstOrDefault(given.ContainsKey) is { } option)
        {
            throw new UsageException($"{option} is for reports; JSON has the units of the method, all that was computed, and no date.");
        }

        if (drawing is null && given.ContainsKey("--load-case"))
        {
            throw new UsageException("--load-case is for a drawing: give --drawing too.");
        }

        if (given.TryGetValue("--output", out string? output) && (output.Length == 0 || (!isStream && Path.GetFullPath(output) == Path.GetFullPath(input))))
        {
            throw new UsageException("--output needs a file other than the input.");
        }

        return new VerifyOptions
        {
            Input = input,
            Format = format,
            Sheets = Choice(given, "--sheets", format == OutputFormat.Json ? "all" : "governing",
                ("governing", SheetScope.Governing), ("all", SheetScope.All), ("none", SheetScope.None)),
            BothSystems = Choice(given, "--units", "own", ("own", false), ("both", true)),
            Level = Choice(given, "--level", "everything", ("everything", ReportLevel.Everything), ("governing", ReportLevel.Governing), ("summary", ReportLevel.Summary)),
            Date = Day(given),
            Drawing = drawing,
            LoadCase = given.GetValueOrDefault("--load-case"),
            Output = output,
        };
    }

    private static string? DrawingName(Dictionary<string, string> given, bool isStream)
    {
        if (!given.TryGetValue("--drawing", out string? name))
        {
            return null;
        }

        if (isStream)
        {
            throw new UsageException("verify - writes one JSON result a line; --drawing is for a file.");
        }

        if (NotForDrawings.FirstOrDefault(given.ContainsKey) is { } option)
        {
            throw new UsageException($"{option} is for reports; a drawing has --load-case, --units and --output.");
        }

        return Choice(given, "--drawing", name, [.. DrawingCommand.Names.Select(n => (n, n))]);
    }

    private static DateOnly? Day(Dictionary<string, string> given)
    {
        if (!given.TryGetValue("--date", out string? text))
        {
            return null;
        }

        return DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly date)
            ? date
            : throw new UsageException($"--date takes a day such as 2026-03-09; here it is \"{text}\".");
    }

    private static T Choice<T>(Dictionary<string, string> given, string option, string preset, params (string Name, T Value)[] choices)
    {
        string name = given.GetValueOrDefault(option, preset);
        foreach ((string known, T value) in choices)
        {
            if (known == name)
            {
                return value;
            }
        }

        throw new UsageException($"{option} takes {string.Join(", ", choices.Select(c => c.Name))}; here it is \"{name}\".");
    }
}
