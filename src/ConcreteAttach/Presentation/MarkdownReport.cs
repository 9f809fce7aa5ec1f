using System.Text;
using ConcreteAttach.Calculation;
using ConcreteAttach.Quantities;
using ConcreteAttach.Verification;

namespace ConcreteAttach.Presentation;

/// <summary>A verification as Markdown, formulas as LaTeX between dollar signs.</summary>
public static class MarkdownReport
{
    /// <summary>Writes the report.</summary>
    /// <param name="verification">What to report.</param>
    /// <param name="options">What it shows; null for the defaults.</param>
    /// <returns>Markdown with line feeds, the same for the same input on every machine.</returns>
    public static string Write(VerificationResult verification, ReportOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(verification);
        ReportOptions chosen = options ?? ReportOptions.Default;
        var text = new StringBuilder();
        foreach (ReportBlock block in ReportContent.Of(verification, chosen))
        {
            Append(text, block, chosen);
        }

        return text.ToString();
    }

    /// <summary>Writes one calculation as a list.</summary>
    /// <param name="sheet">The calculation.</param>
    /// <param name="options">What it shows; null for the defaults.</param>
    /// <returns>Markdown with line feeds.</returns>
    public static string WriteSheet(CalculationSheet sheet, ReportOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        var text = new StringBuilder();
        AppendSheet(text, sheet, options ?? ReportOptions.Default);
        return text.ToString();
    }

    private static void Append(StringBuilder text, ReportBlock block, ReportOptions options)
    {
        switch (block)
        {
            case HeadingBlock heading:
                text.Append('#', heading.Level).Append(' ').Append(Escaped(heading.Text)).Append("\n\n");
                break;
            case ParagraphBlock paragraph:
                text.Append(Escaped(paragraph.Text)).Append("\n\n");
                break;
            case BulletsBlock bullets:
                foreach (string item in bullets.Items)
                {
                    text.Append("- ").Append(Escaped(item)).Append('\n');
                }

                text.Append('\n');
                break;
            case TableBlock table:
                AppendRow(text, table.Columns.Select(c => Escaped(c.Heading)));
                AppendRow(text, table.Columns.Select(c => c.IsNumber ? "---:" : "---"));
                foreach (string[] row in table.Rows)
                {
                    AppendRow(text, row.Select(Escaped));
                }

                text.Append('\n');
                break;
            case SheetBlock sheet:
                AppendSheet(text, sheet.Sheet, options);
                break;
        }
    }

    private static void AppendRow(StringBuilder text, IEnumerable<string> cells) =>
        text.Append("| ").AppendJoin(" | ", cells).Append(" |\n");

    private static void AppendSheet(StringBuilder text, CalculationSheet sheet, ReportOptions options)
    {
        foreach (SheetLine line in sheet.Lines)
        {
            text.Append("- ");
            switch (line)
            {
                case GivenLine given:
                    text.Append('$').Append(SymbolText.Latex(given.Id)).Append(" = ").Append(Result(given)).Append('$');
                    text.Append(OtherUnit(given, sheet.System, options)).Append(given.Origin is null ? "" : $": {Escaped(given.Origin)}");
                    break;
                case StepLine step:
                    text.Append('$').Append(SymbolText.Latex(step.Id)).Append(" = ").AppendJoin("$ $= ", Parts(step)).Append('$');
                    text.Append(OtherUnit(step, sheet.System, options)).Append(" (").Append(Escaped(step.Clause)).Append(')');
                    break;
                case BranchLine branch:
                    text.Append('$').Append(FormulaText.Comparison(branch, Notation.Latex)).Append('$');
                    text.Append(branch.Clause is null ? "" : $" ({Escaped(branch.Clause)})");
                    break;
                case NoteLine note:
                    text.Append('*').Append(Escaped(note.Text)).Append('*');
                    break;
            }

            text.Append('\n');
        }

        text.Append('\n');
    }

    private static string[] Parts(StepLine step) => step.Expression switch
    {
        LiteralExpression => [Result(step)],
        SymbolExpression => [FormulaText.Symbolic(step.Expression, Notation.Latex), Result(step)],
        _ when step.Formula == step.Symbol => [FormulaText.Substituted(step.Expression, Notation.Latex), Result(step)],
        _ => [FormulaText.Symbolic(step.Expression, Notation.Latex), FormulaText.Substituted(step.Expression, Notation.Latex), Result(step)],
    };

    private static string Result(ValueLine line) => Notation.Latex.WithUnit(line.ShownValue, line.Unit);

    private static string OtherUnit(ValueLine line, MeasurementSystem system, ReportOptions options) =>
        line.Dimension == Dimension.None ? "" : Escaped(ReportContent.Other(line.Value, line.Dimension, system, options));

    /// <summary>Text in which nothing is read as Markdown.</summary>
    private static string Escaped(string text)
    {
        var escaped = new StringBuilder(text.Length + 8);
        foreach (char c in text.Replace("\r\n", " ", StringComparison.Ordinal))
        {
            if (c is '\\' or '*' or '_' or '[' or ']' or '<' or '>' or '|' or '`' or '#' or '$' or '~' or '&')
            {
                escaped.Append('\\');
            }

            escaped.Append(c is '\n' or '\r' ? ' ' : c);
        }

        return escaped.ToString();
    }
}
