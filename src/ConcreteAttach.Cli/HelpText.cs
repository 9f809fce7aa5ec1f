namespace ConcreteAttach.Cli;

/// <summary>What <c>help</c> prints.</summary>
internal static class HelpText
{
    public const string Text = """
        Verifies fastenings to concrete: what an attachment holds, what breaks first, and every step of the calculation.

        concreteattach verify FILE [options]   verifies the input of a file and writes a report
        concreteattach verify - [options]      reads one input a line from standard input, writes one JSON result a line
        concreteattach schema input            prints the JSON Schema of an input
        concreteattach schema result           prints the JSON Schema of a result
        concreteattach version                 prints the version
        concreteattach help                    prints this text

        Options of verify:
          --format text|markdown|json    how the report is written; text unless said otherwise
          --output FILE                  writes to a file in place of standard output
          --sheets governing|all|none    load cases that show their calculation; text and Markdown: the governing one, JSON: all
          --units own|both               results in the units of the method, or in US and SI units side by side (text, Markdown)

        Exit codes: 0 holds, 1 does not hold, 2 not covered, 3 bad input. Line by line: the worst of 3, 1, 2, 0.

        Local codes and the judgement of a licensed professional govern.

        """;
}
