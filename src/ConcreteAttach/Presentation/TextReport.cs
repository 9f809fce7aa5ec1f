using System.Text;
using ConcreteAttach.Calculation;
using ConcreteAttach.Quantities;
using ConcreteAttach.Verification;

namespace ConcreteAttach.Presentation;

/// <summary>A verification as plain text.</summary>
public static class TextReport
{
    /// <summary>A step stands on one line up to this many characters, else on one line for each of its parts.</summary>
    private const int LineLength = 96;

    /// <summary>Writes the report.</summary>
    /// <param name="verification">What to report.</param>
    /// <param name="options">What it shows; null for the defaults.</param>
    /// <returns>Text with line feeds, the same for the same input on every machine.</returns>
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

    /// <summary>Writes one calculation.</summary>
    /// <param name="sheet">The calculation.</param>
    /// <param name="options">What it shows; null for the defaults.</param>
    /// <returns>Text with line feeds.</returns>
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
                string title = OneLine(heading.Text);
                text.Append(text.Length == 0 ? "" : "\n").Append(title).Append('\n');
                if (heading.Level < 3)
                {
                    text.Append(heading.Level == 1 ? '=' : '-', title.Length).Append('\n');
                }

                break;
            case ParagraphBlock paragraph:
                AppendWrapped(text, paragraph.Text, "", "");
                break;
            case BulletsBlock bullets:
                foreach (string item in bullets.Items)
                {
                    AppendWrapped(text, item, "- ", "  ");
                }

                break;
            case TableBlock table:
                AppendTable(text, table);
                break;
            case SheetBlock sheet:
                AppendSheet(text, sheet.Sheet, options);
                break;
        }
    }

    /// <summary>A sentence in lines of at most <paramref name="columns"/> characters; a longer word stands alone.</summary>
    internal static void AppendWrapped(StringBuilder text, string sentence, string first, string other, string end = "", int columns = LineLength)
    {
        int length = first.Length;
        bool isLineEmpty = true;
        text.Append(first);
        foreach (string word in (OneLine(sentence) + end).Split(' '))
        {
            if (!isLineEmpty && length + 1 + word.Length > columns)
            {
                text.Append('\n').Append(other);
                length = other.Length;
                isLineEmpty = true;
            }

            text.Append(isLineEmpty ? "" : " ").Append(word);
            length += word.Length + (isLineEmpty ? 0 : 1);
            isLineEmpty = false;
        }

        text.Append('\n');
    }

    /// <summary>What a person wrote over several lines, on one.</summary>
    private static string OneLine(string text) =>
        text.Replace("\r\n", " ", StringComparison.Ordinal).Replace('\n', ' ').Replace('\r', ' ');

    private static void AppendTable(StringBuilder text, TableBlock table)
    {
        int columns = table.Columns.Count;
        string[][] rows = [.. table.Rows.Select(row => Array.ConvertAll(row, OneLine))];
        int[] widths = [.. table.Columns.Select((c, i) => rows.Select(r => r[i].Length).Append(c.Heading.Length).Max())];
        AppendRow([.. table.Columns.Select(c => c.Heading)]);
        foreach (string[] row in rows)
        {
            AppendRow(row);
        }

        text.Append('\n');

        void AppendRow(string[] cells)
        {
            var line = new StringBuilder();
            for (int i = 0; i < columns; i++)
            {
                line.Append("  ").Append(table.Columns[i].IsNumber ? cells[i].PadLeft(widths[i]) : cells[i].PadRight(widths[i]));
            }

            text.Append(line.ToString().TrimEnd()).Append('\n');
        }
    }

    private static void AppendSheet(StringBuilder text, CalculationSheet sheet, ReportOptions options)
    {
        foreach (SheetLine line in sheet.Lines)
        {
            switch (line)
            {
                case GivenLine given:
                    text.Append("  ").Append(given.Symbol).Append(" = ").Append(Result(given, sheet.System, options));
                    text.Append(given.Origin is null ? "" : $"   {given.Origin}").Append('\n');
                    break;
                case StepLine step:
                    AppendStep(text, step, sheet.System, options);
                    break;
                case BranchLine branch:
                    text.Append("  ").Append(branch.Text).Append(branch.Clause is null ? "" : $"   [{branch.Clause}]").Append('\n');
                    break;
                case NoteLine note:
                    AppendWrapped(text, note.Text, "  (", "   ", ")");
                    break;
            }
        }
    }

    private static void AppendStep(StringBuilder text, StepLine step, MeasurementSystem system, ReportOptions options)
    {
        string result = Result(step, system, options);
        string clause = $"   [{step.Clause}]";
        string[] parts = step.Expression switch
        {
            LiteralExpression => [result],
            SymbolExpression => [step.Formula, result],
            _ when step.Formula == step.Symbol => [step.Substitution, result],
            _ => [step.Formula, step.Substitution, result],
        };
        string head = $"  {step.Symbol} = ";
        string oneLine = head + string.Join(" = ", parts) + clause;
        if (oneLine.Length <= LineLength)
        {
            text.Append(oneLine).Append('\n');
            return;
        }

        string indent = "\n" + new string(' ', head.Length - 2) + "= ";
        text.Append(head).AppendJoin(indent, parts).Append(clause).Append('\n');
    }

    private static string Result(ValueLine line, MeasurementSystem system, ReportOptions options)
    {
        string shown = Notation.Plain.WithUnit(line.ShownValue, line.Unit);
        return line.Dimension == Dimension.None ? shown : shown + ReportContent.Other(line.Value, line.Dimension, system, options);
    }
}
