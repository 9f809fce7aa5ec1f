using System.Text;
using ConcreteAttach.Presentation.Drawings;
using ConcreteAttach.Quantities;
using ConcreteAttach.Verification;

namespace ConcreteAttach.Presentation;

/// <summary>
/// A verification on one page of a terminal: the answer, a bar for each mode, and what must be known before the answer is used; at most 80 columns wherever words can be broken.
/// </summary>
public static class TextSummary
{
    private const int Columns = 80;
    private const int BarOfOne = 30;
    private const int LongestBar = 36;

    /// <summary>Writes the summary in plain ASCII, as far as the words are those of the library: a title and names of load cases stay as they were given.</summary>
    /// <param name="verification">What to report.</param>
    /// <param name="options">What it shows; null for the defaults. A summary has one level.</param>
    /// <returns>Text with line feeds, the same for the same input on every machine.</returns>
    public static string Write(VerificationResult verification, ReportOptions? options = null) =>
        Write(verification, options ?? ReportOptions.Default, new Marks('#', '>', '|', Ascii));

    /// <summary>Writes the summary for a terminal that shows Unicode.</summary>
    /// <param name="verification">What to report.</param>
    /// <param name="options">What it shows; null for the defaults. A summary has one level.</param>
    /// <returns>Text with line feeds.</returns>
    public static string WriteForTerminal(VerificationResult verification, ReportOptions? options = null) =>
        Write(verification, options ?? ReportOptions.Default, new Marks('█', '▶', '│', text => text));

    /// <summary>The characters of a bar, and how the library's words are written.</summary>
    private readonly record struct Marks(char Full, char Beyond, char Limit, Func<string, string> Words);

    private static string Write(VerificationResult verification, ReportOptions options, Marks marks)
    {
        ArgumentNullException.ThrowIfNull(verification);
        var text = new StringBuilder();
        AppendWrapped(text, options.Title ?? ReportContent.Title(verification), "", "");
        if (options.Date is { } date)
        {
            AppendWrapped(text, ReportContent.DateText(date), "", "");
        }

        text.Append('\n');
        AppendWrapped(text, marks.Words(ReportContent.Verdict(verification)), "", "");
        text.Append('\n');
        AppendBars(text, verification, marks);
        AppendList(text, "Why no bar", ReportContent.Reasons(verification), marks);
        AppendList(text, "Notices", verification.Notices, marks);
        AppendList(text, $"Assumptions ({verification.Method}, {verification.Constants} constants)", verification.Assumptions, marks);
        AppendList(text, "Cautions", ReportContent.Cautions, marks);
        return text.ToString();
    }

    private static void AppendBars(StringBuilder text, VerificationResult verification, Marks marks)
    {
        FailureMode[] modes = [.. verification.Modes.GroupBy(m => m.Id, StringComparer.Ordinal).Select(UtilizationDrawing.MostUsed)];
        int names = modes.Max(m => m.Id.Length);
        foreach (FailureMode mode in modes)
        {
            var line = new StringBuilder("  ").Append(mode.Id.PadRight(names)).Append("  ");
            string value = mode.Utilization is { } utilization ? NumberText.Utilization(utilization, mode.Status == ModeStatus.Satisfied) : "";
            line.Append(value.PadLeft(4)).Append(' ');
            line.Append(mode.Utilization is { } share ? Bar(share, marks) : mode.Status == ModeStatus.Satisfied ? "satisfied" : "");
            if (mode.Status != ModeStatus.Satisfied)
            {
                line.Append(mode.Utilization is null ? "" : " ").Append(StatusText.Of(mode.Status));
            }

            text.Append(line.ToString().TrimEnd()).Append('\n');
        }

        if (verification.LoadCaseNames.Length > 1)
        {
            text.Append("\n  The highest of all load cases.\n");
        }
    }

    /// <summary>A bar with a mark at 1; what does not fit ends in an arrow.</summary>
    private static string Bar(double utilization, Marks marks)
    {
        double cells = Math.Min(utilization, 1e6) * BarOfOne;
        int length = (int)Math.Min(Math.Round(cells), LongestBar);
        char[] bar = new string(' ', Math.Max(BarOfOne + 1, length)).ToCharArray();
        Array.Fill(bar, marks.Full, 0, length);
        if (length <= BarOfOne)
        {
            bar[BarOfOne] = marks.Limit;
        }

        if (cells > LongestBar)
        {
            bar[^1] = marks.Beyond;
        }

        return new string(bar);
    }

    private static void AppendList(StringBuilder text, string heading, IReadOnlyCollection<string> items, Marks marks)
    {
        if (items.Count == 0)
        {
            return;
        }

        text.Append('\n').Append(heading).Append('\n');
        foreach (string item in items)
        {
            AppendWrapped(text, marks.Words(item), "- ", "  ");
        }
    }

    private static void AppendWrapped(StringBuilder text, string sentence, string first, string other) =>
        TextReport.AppendWrapped(text, sentence, first, other, "", Columns);

    /// <summary>The characters that the library itself uses beyond ASCII, in ASCII.</summary>
    private static string Ascii(string text)
    {
        var ascii = new StringBuilder(text.Length);
        foreach (char c in text)
        {
            _ = c switch
            {
                'α' => ascii.Append("alpha"),
                'γ' => ascii.Append("gamma"),
                'Δ' => ascii.Append("Delta"),
                'π' => ascii.Append("pi"),
                'ψ' => ascii.Append("psi"),
                'φ' => ascii.Append("phi"),
                'λ' => ascii.Append("lambda"),
                'Ω' => ascii.Append("Omega"),
                'τ' => ascii.Append("tau"),
                'ρ' => ascii.Append("rho"),
                'μ' => ascii.Append("mu"),
                'β' => ascii.Append("beta"),
                'θ' => ascii.Append("theta"),
                'κ' => ascii.Append("kappa"),
                'Σ' => ascii.Append("sum "),
                '²' => ascii.Append("^2"),
                '³' => ascii.Append("^3"),
                '−' or '–' => ascii.Append('-'),
                '·' => ascii.Append('*'),
                '×' => ascii.Append('x'),
                '√' => ascii.Append("sqrt "),
                '≥' => ascii.Append(">="),
                '≤' => ascii.Append("<="),
                '∞' => ascii.Append("inf"),
                '′' or '’' => ascii.Append('\''),
                _ => ascii.Append(c),
            };
        }

        return ascii.ToString();
    }
}
