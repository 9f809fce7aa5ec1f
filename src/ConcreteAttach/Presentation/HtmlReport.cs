using System.Text;
using ConcreteAttach.Calculation;
using ConcreteAttach.Presentation.Drawings;
using ConcreteAttach.Quantities;
using ConcreteAttach.Verification;

namespace ConcreteAttach.Presentation;

/// <summary>
/// A verification as one HTML document: drawings as SVG, formulas as MathML, no script, nothing from outside. It is well-formed XML as well, prints on A4 and Letter, and reads on a phone.
/// </summary>
public static class HtmlReport
{
    /// <summary>Writes the report.</summary>
    /// <param name="verification">What to report.</param>
    /// <param name="options">What it shows; null for the defaults.</param>
    /// <returns>HTML with line feeds, the same for the same input on every machine.</returns>
    public static string Write(VerificationResult verification, ReportOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(verification);
        ReportOptions chosen = options ?? ReportOptions.Default;
        List<ReportBlock> blocks = Drawn(ReportContent.Of(verification, chosen));
        var html = new StringBuilder(64 * 1024);
        string title = Markup.Escaped(blocks.OfType<HeadingBlock>().First(h => h.Level == 1).Text);
        html.Append("<!DOCTYPE html>\n<html lang=\"en\" xmlns=\"http://www.w3.org/1999/xhtml\">\n<head>\n<meta charset=\"utf-8\"/>\n<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>\n<title>")
            .Append(title).Append("</title>\n<style>\n").Append(HtmlStyle.Text).Append("</style>\n</head>\n<body>\n<main>\n");
        var writer = new Writer(html, chosen, [.. blocks.OfType<HeadingBlock>().Where(h => h.Level == 2)]);
        foreach (ReportBlock block in blocks)
        {
            writer.Append(block);
        }

        writer.EndFigures();
        return html.Append("</main>\n</body>\n</html>\n").ToString();
    }

    /// <summary>Writes one calculation as a list, for a page of one's own; its look is the page's.</summary>
    /// <param name="sheet">The calculation.</param>
    /// <param name="options">What it shows; null for the defaults.</param>
    /// <returns>An HTML list with line feeds, formulas as MathML.</returns>
    public static string WriteSheet(CalculationSheet sheet, ReportOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        var html = new StringBuilder(8 * 1024);
        new Writer(html, options ?? ReportOptions.Default, []).AppendSheet(sheet);
        return html.ToString();
    }

    /// <summary>A figure that has been drawn.</summary>
    private sealed record DrawnBlock(Drawing Drawing) : ReportBlock;

    /// <summary>Draws the figures; those that have something to show get their section.</summary>
    private static List<ReportBlock> Drawn(List<ReportBlock> blocks)
    {
        var drawn = new List<ReportBlock>(blocks.Count);
        string? section = null;
        foreach (ReportBlock block in blocks)
        {
            if (block is not FigureBlock figure)
            {
                drawn.Add(block);
            }
            else if (figure.Draw() is { } drawing)
            {
                if (figure.Section is { } own && own != section)
                {
                    drawn.Add(new HeadingBlock(2, own));
                }

                section = figure.Section;
                drawn.Add(new DrawnBlock(drawing));
            }
        }

        return drawn;
    }

    private sealed class Writer(StringBuilder html, ReportOptions options, HeadingBlock[] sections)
    {
        /// <summary>A table up to this many rows stays on one page of paper.</summary>
        private const int ShortTable = 14;

        /// <summary>A figure that is wider than this many pixels does not stand beside another one on paper: its text would become too small.</summary>
        private const double Broad = 390;

        private int _section;
        private string _heading = "";
        private int _figures;
        private bool _isInFigures;

        public void Append(ReportBlock block)
        {
            if (block is not DrawnBlock)
            {
                EndFigures();
            }

            switch (block)
            {
                case HeadingBlock heading:
                    AppendHeading(heading);
                    break;
                case ParagraphBlock { IsAnswer: true } answer:
                    html.Append("<p class=\"answer\">").Append(Prose.Html(answer.Text)).Append("</p>\n");
                    AppendContents();
                    break;
                case ParagraphBlock paragraph:
                    html.Append("<p>").Append(Prose.Html(paragraph.Text)).Append("</p>\n");
                    break;
                case BulletsBlock bullets:
                    html.Append("<ul>\n");
                    foreach (string item in bullets.Items)
                    {
                        html.Append("<li>").Append(Prose.Html(item)).Append("</li>\n");
                    }

                    html.Append("</ul>\n");
                    break;
                case TableBlock table:
                    AppendTable(table);
                    break;
                case SheetBlock sheet:
                    AppendSheet(sheet.Sheet);
                    break;
                case DrawnBlock figure:
                    AppendFigure(figure.Drawing);
                    break;
            }
        }

        public void EndFigures()
        {
            if (_isInFigures)
            {
                html.Append("</div>\n");
                _isInFigures = false;
            }
        }

        public void AppendSheet(CalculationSheet sheet)
        {
            html.Append("<ul class=\"sheet\" tabindex=\"0\">\n");
            bool isAmongGivens = false;
            foreach (SheetLine line in sheet.Lines)
            {
                // Inputs that follow each other share a line.
                if (isAmongGivens && line is not GivenLine)
                {
                    html.Append("</li>\n");
                }

                switch (line)
                {
                    case GivenLine given:
                        html.Append(isAmongGivens ? " " : "<li class=\"given\">").Append("<span>").Append(Formula(Notation.MathML.Symbol(given.Id) + Notation.MathML.Equal + Result(given)));
                        html.Append(OtherUnit(given, sheet.System));
                        AppendSource(given.Origin);
                        html.Append("</span>");
                        break;
                    case StepLine step:
                        html.Append("<li><span>");
                        AppendStep(step);
                        html.Append(OtherUnit(step, sheet.System)).Append("</span>");
                        AppendSource(step.Clause);
                        break;
                    case BranchLine branch:
                        html.Append("<li><span>").Append(Formula(FormulaText.Comparison(branch, Notation.MathML))).Append("</span>");
                        AppendSource(branch.Clause);
                        break;
                    case NoteLine note:
                        html.Append("<li class=\"note\">").Append(Prose.Html(note.Text));
                        break;
                }

                isAmongGivens = line is GivenLine;
                html.Append(isAmongGivens ? "" : "</li>\n");
            }

            html.Append(isAmongGivens ? "</li>\n" : "").Append("</ul>\n");
        }

        private void AppendHeading(HeadingBlock heading)
        {
            string level = QuantityText.Format(heading.Level);
            _heading = heading.Text;
            string? id = heading.Level == 2 ? Section(_section++) : heading.Name;
            html.Append("<h").Append(level).Append(id is null ? "" : $" id=\"{id}\"").Append('>').Append(Prose.Html(heading.Text)).Append("</h").Append(level).Append(">\n");
        }

        private void AppendContents()
        {
            html.Append("<nav aria-label=\"Contents\">\n<ul>\n");
            for (int i = 0; i < sections.Length; i++)
            {
                html.Append("<li><a href=\"#").Append(Section(i)).Append("\">").Append(Prose.Html(sections[i].Text)).Append("</a></li>\n");
            }

            html.Append("</ul>\n</nav>\n");
        }

        private static string Section(int index) => $"section-{QuantityText.Format(index + 1)}";

        private void AppendTable(TableBlock table)
        {
            string caption = Markup.Escaped(table.Caption);
            html.Append("<div class=\"wide").Append(table.Rows.Count <= ShortTable ? " short" : "").Append("\" role=\"region\" tabindex=\"0\" aria-label=\"").Append(caption).Append("\">\n<table>\n");

            // A caption that repeats the heading above it is for those who jump from table to table.
            html.Append(table.Caption == _heading ? "<caption class=\"hidden\">" : "<caption>").Append(caption).Append("</caption>\n<thead><tr>");
            int[] columns = [.. Enumerable.Range(0, table.Columns.Count).Where(i => i != table.Group)];
            foreach (int column in columns)
            {
                html.Append("<th scope=\"col\"").Append(table.Columns[column].IsNumber ? " class=\"n\">" : ">").Append(Prose.Html(table.Columns[column].Heading)).Append("</th>");
            }

            html.Append("</tr></thead>\n<tbody>\n");
            string? group = null;
            for (int row = 0; row < table.Rows.Count; row++)
            {
                if (table.Group is { } column && table.Rows[row][column] != group)
                {
                    group = table.Rows[row][column];
                    AppendGroup(group.Length == 0 ? "Any load case" : $"{char.ToUpperInvariant(table.Columns[column].Heading[0])}{table.Columns[column].Heading[1..]} {group}", columns.Length, isFirst: row == 0);
                }

                html.Append("<tr>");
                foreach (int i in columns)
                {
                    AppendCell(table.Rows[row][i], table.Columns[i].IsNumber, i == 0 ? table.Targets?[row] : null);
                }

                html.Append("</tr>\n");
            }

            html.Append("</tbody>\n</table>\n</div>\n");
        }

        private void AppendGroup(string heading, int columns, bool isFirst) =>
            html.Append(isFirst ? "" : "</tbody>\n<tbody>\n").Append("<tr class=\"group\"><th scope=\"rowgroup\" colspan=\"").Append(QuantityText.Format(columns)).Append("\">").Append(Markup.Escaped(heading)).Append("</th></tr>\n");

        /// <summary>A number stays with its unit; the same in the other unit may stand below it.</summary>
        private void AppendCell(string cell, bool isNumber, string? target)
        {
            string text = Markup.Escaped(cell);
            if (isNumber)
            {
                int other = text.IndexOf(" (", StringComparison.Ordinal);
                html.Append("<td class=\"n\">").Append(other < 0 ? text : $"{text[..other]} <span>{text[(other + 1)..]}</span>").Append("</td>");
                return;
            }

            bool isFailure = cell == StatusText.Of(ModeStatus.NotSatisfied) || cell == StatusText.Of(ModeStatus.NotCovered);
            html.Append("<td>").Append(target is not null ? $"<a href=\"#{target}\">{text}</a>" : isFailure ? $"<strong>{text}</strong>" : text).Append("</td>");
        }

        private void AppendFigure(Drawing drawing)
        {
            if (!_isInFigures)
            {
                html.Append("<div class=\"figures\">\n");
                _isInFigures = true;
            }

            string number = QuantityText.Format(++_figures);
            html.Append(drawing.Extent.Width > Broad ? "<figure class=\"broad\">\n" : "<figure>\n").Append(drawing.ToSvg($"figure-{number}-"));
            html.Append("<figcaption>Figure ").Append(number).Append(". ").Append(Markup.Escaped(drawing.Title)).Append("</figcaption>\n</figure>\n");
        }

        /// <summary>Symbol, formula, numbers and result: a formula each, so that the line can break between them.</summary>
        private void AppendStep(StepLine step)
        {
            html.Append(Formula(Notation.MathML.Symbol(step.Id)));
            if (step.Expression is not LiteralExpression && step.Formula != step.Symbol)
            {
                html.Append(' ').Append(Formula(Notation.MathML.Equal + FormulaText.Symbolic(step.Expression, Notation.MathML)));
            }

            if (step.Expression is not (LiteralExpression or SymbolExpression))
            {
                html.Append(' ').Append(Formula(Notation.MathML.Equal + FormulaText.Substituted(step.Expression, Notation.MathML)));
            }

            html.Append(' ').Append(Formula(Notation.MathML.Equal + Result(step)));
        }

        private void AppendSource(string? source) => html.Append(source is null ? "" : $" <small>{Prose.Html(source)}</small>");

        private static string Formula(string elements) => $"<math>{elements}</math>";

        private static string Result(ValueLine line) => Notation.MathML.WithUnit(line.ShownValue, line.Unit);

        private string OtherUnit(ValueLine line, MeasurementSystem system) =>
            line.Dimension == Dimension.None ? "" : Markup.Escaped(ReportContent.Other(line.Value, line.Dimension, system, options));
    }
}
