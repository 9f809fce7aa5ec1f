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
          --format FORMAT                summary, text, markdown, html or json; text unless said otherwise
          --output FILE                  writes to a file in place of standard output
          --sheets governing|all|none    load cases that show their calculation; JSON: all, else: the governing one
          --level LEVEL                  how much of it a report shows: everything (preset), governing or summary
          --units own|both               results in the units of the method, or in US and SI units side by side (not JSON)
          --date YYYY-MM-DD              the date that stands on a report; none unless given
          --drawing NAME                 writes one drawing as SVG in place of a report: plan, section, shear, forces,
                                         utilization, interaction, embedment or edge-distance
          --load-case NAME               the load case of the drawing; the one that governs unless said otherwise

        Exit codes: 0 holds, 1 does not hold, 2 not covered, 3 bad input. Line by line: the worst of 3, 1, 2, 0.

        Local codes and the judgement of a licensed professional govern.

        """;
}
