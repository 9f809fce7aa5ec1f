using ConcreteAttach.Aci318;

namespace ConcreteAttach.Cli;

/// <summary>How a result is written.</summary>
internal enum OutputFormat
{
    Text,
    Markdown,
    Json,
}

/// <summary>What follows the word <c>verify</c> on the command line.</summary>
internal sealed record VerifyOptions
{
    /// <summary>The word that stands for standard input.</summary>
    private const string StandardInput = "-";

    /// <summary>The input file, or <c>-</c>.</summary>
    public required string Input { get; init; }

    public required OutputFormat Format { get; init; }

    public required SheetScope Sheets { get; init; }

    public bool BothSystems { get; init; }

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
            else if (arg is not ("--format" or "--output" or "--sheets" or "--units"))
            {
                throw new UsageException($"verify has no option {arg}; it has --format, --output, --sheets and --units.");
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
            ("text", OutputFormat.Text), ("markdown", OutputFormat.Markdown), ("json", OutputFormat.Json));
        if (isStream && format != OutputFormat.Json)
        {
            throw new UsageException("verify - writes one JSON result a line; --format text and --format markdown are for a file.");
        }

        if (format == OutputFormat.Json && given.ContainsKey("--units"))
        {
            throw new UsageException("--units is for text and Markdown; JSON has the units of the method.");
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
            Output = output,
        };
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
