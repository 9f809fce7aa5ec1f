using System.Text;
using ConcreteAttach.Presentation;
using ConcreteAttach.Presentation.Json;
using ConcreteAttach.Quantities;
using ConcreteAttach.Verification;

namespace ConcreteAttach.Cli;

/// <summary>The command <c>verify</c>.</summary>
internal static class VerifyCommand
{
    private static readonly UTF8Encoding Utf8 = new(encoderShouldEmitUTF8Identifier: false);

    /// <summary>Verifies the input of one file; <paramref name="isTerminal"/> where a person reads the output as it comes.</summary>
    public static int File(VerifyOptions options, TextWriter output, TextWriter errors, bool isTerminal)
    {
        int code;
        string text;
        try
        {
            VerificationRequest request = VerificationJson.Read(Bytes(options.Input));
            VerificationResult verification = request.Verify(options.Sheets);
            code = ExitCode.Of(verification.Verdict);
            text = options.Drawing is null ? Rendered(verification, request.Title, options, isTerminal && options.Output is null) : DrawingCommand.Draw(verification, options);
        }
        catch (InputException error)
        {
            string place = error.Parameter.Length == 0 ? "" : $" at {error.Parameter}";
            errors.WriteLine($"concreteattach: {options.Input}{place}: found {error.Found}, permitted: {error.Permitted}");
            if (options.Format != OutputFormat.Json || options.Drawing is not null)
            {
                return ExitCode.BadInput;
            }

            code = ExitCode.BadInput;
            text = VerificationJson.WriteError(error) + "\n";
        }

        if (options.Output is { } file)
        {
            System.IO.File.WriteAllText(file, text, Utf8);
        }
        else
        {
            output.Write(text);
        }

        return code;
    }

    /// <summary>
    /// Verifies line by line: one input a line, one result or error a line, in order, blank lines skipped. Each result is handed on at once,
    /// so that a program that waits for it before it sends the next input is never kept waiting.
    /// </summary>
    public static int Lines(VerifyOptions options, Stream input, TextWriter output)
    {
        using StreamWriter? file = options.Output is { } path ? new StreamWriter(path, append: false, Utf8) : null;
        using var lines = new StreamReader(input, Utf8, leaveOpen: true);
        int worst = ExitCode.Holds;
        while (lines.ReadLine() is { } line)
        {
            if (string.IsNullOrWhiteSpace(line))
            {
                continue;
            }

            (string result, int code) = Line(line, options);
            worst = ExitCode.Worse(worst, code);
            TextWriter writer = file ?? output;
            writer.Write(result);
            writer.Write('\n');
            writer.Flush();
        }

        return worst;
    }

    private static (string Result, int Code) Line(string line, VerifyOptions options)
    {
        try
        {
            VerificationRequest request = VerificationJson.Read(line);
            VerificationResult verification = request.Verify(options.Sheets);
            return (VerificationJson.Write(verification, request.Title, indented: false), ExitCode.Of(verification.Verdict));
        }
        catch (InputException error)
        {
            return (VerificationJson.WriteError(error, indented: false), ExitCode.BadInput);
        }
    }

    private static string Rendered(VerificationResult verification, string? title, VerifyOptions options, bool isTerminal)
    {
        var report = new ReportOptions { Title = title, BothSystems = options.BothSystems, Level = options.Level, Date = options.Date };
        return options.Format switch
        {
            OutputFormat.Text => TextReport.Write(verification, report),
            OutputFormat.Markdown => MarkdownReport.Write(verification, report),
            OutputFormat.Html => HtmlReport.Write(verification, report),
            OutputFormat.Summary when isTerminal => TextSummary.WriteForTerminal(verification, report),
            OutputFormat.Summary => TextSummary.Write(verification, report),
            _ => VerificationJson.Write(verification, title) + "\n",
        };
    }

    private static byte[] Bytes(string path)
    {
        try
        {
            return System.IO.File.ReadAllBytes(path);
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            throw new InputException("", $"no file that can be read ({error.Message})", "the path of an input file");
        }
    }
}
