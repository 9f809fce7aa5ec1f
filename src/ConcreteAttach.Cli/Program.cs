using System.Text;
using ConcreteAttach.Presentation.Json;

namespace ConcreteAttach.Cli;

/// <summary>The command-line tool: a thin layer over the library.</summary>
public static class Program
{
    private static readonly UTF8Encoding Utf8 = new(encoderShouldEmitUTF8Identifier: false);

    /// <summary>Runs a command.</summary>
    /// <returns>0 holds, 1 does not hold, 2 not covered, 3 bad input.</returns>
    public static int Main(string[] args)
    {
        Console.OutputEncoding = Utf8;
        using Stream input = Console.OpenStandardInput();
        using Stream output = Console.OpenStandardOutput();
        return Run(args, input, output, Console.Error, !Console.IsOutputRedirected);
    }

    /// <summary>Runs a command on the streams that are given. Input and output are UTF-8, lines end with a line feed.</summary>
    /// <param name="args">The command with its options.</param>
    /// <param name="input">What <c>verify -</c> reads.</param>
    /// <param name="output">Where results go; stays open.</param>
    /// <param name="errors">Where messages go.</param>
    /// <param name="isTerminal">Whether the output goes to a terminal, where a person reads it.</param>
    /// <returns>The exit code.</returns>
    public static int Run(string[] args, Stream input, Stream output, TextWriter errors, bool isTerminal = false)
    {
        ArgumentNullException.ThrowIfNull(args);
        ArgumentNullException.ThrowIfNull(errors);
        try
        {
            using var writer = new StreamWriter(output, Utf8, leaveOpen: true) { NewLine = "\n" };
            return Run(args, input, writer, errors, isTerminal);
        }
        catch (UsageException error)
        {
            errors.WriteLine($"concreteattach: {error.Message}");
            errors.WriteLine("\"concreteattach help\" shows the commands.");
            return ExitCode.BadInput;
        }
        catch (IOException error)
        {
            // A file that cannot be written, or a reader that has gone away.
            errors.WriteLine($"concreteattach: {error.Message}");
            return ExitCode.BadInput;
        }
        catch (UnauthorizedAccessException error)
        {
            errors.WriteLine($"concreteattach: {error.Message}");
            return ExitCode.BadInput;
        }
    }

    private static int Run(string[] args, Stream input, StreamWriter output, TextWriter errors, bool isTerminal)
    {
        switch (args)
        {
            case ["verify", .. string[] rest]:
                VerifyOptions options = VerifyOptions.Of(rest);
                return options.IsStream ? VerifyCommand.Lines(options, input, output) : VerifyCommand.File(options, output, errors, isTerminal);
            case ["schema", "input"]:
                output.Write(VerificationJson.InputSchema);
                return ExitCode.Holds;
            case ["schema", "result"]:
                output.Write(VerificationJson.ResultSchema);
                return ExitCode.Holds;
            case ["schema", ..]:
                throw new UsageException("schema takes one word: input or result.");
            case ["version" or "--version"]:
                output.WriteLine(VerificationJson.LibraryVersion);
                return ExitCode.Holds;
            case ["help" or "--help" or "-h"]:
                output.Write(HelpText.Text);
                return ExitCode.Holds;
            case []:
                throw new UsageException("no command is given.");
            default:
                throw new UsageException($"\"{string.Join(' ', args)}\" is no command of this tool.");
        }
    }
}
