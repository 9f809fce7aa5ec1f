using System.Globalization;
using System.Reflection;
using System.Text.RegularExpressions;
using ConcreteAttach.Aci318;
using ConcreteAttach.Actions;
using ConcreteAttach.Attached;
using ConcreteAttach.Presentation;
using ConcreteAttach.Presentation.Drawings;
using ConcreteAttach.Quantities;
using ConcreteAttach.Tests.Calculation;
using ConcreteAttach.Tests.Properties;
using ConcreteAttach.Verification;
using UnitsNet;

namespace ConcreteAttach.Tests.Presentation;

/// <summary>What every rendering has in common.</summary>
public sealed partial class ReportTests
{
    private delegate string Rendering(VerificationResult verification, ReportOptions? options);

    /// <summary>Every rendering of the library: found, not listed, so that a new one cannot forget its cautions.</summary>
    private static readonly Rendering[] Renderings =
    [
        .. typeof(TextReport).Assembly.GetExportedTypes().Where(t => t.Namespace == typeof(TextReport).Namespace)
            .SelectMany(t => t.GetMethods(BindingFlags.Public | BindingFlags.Static))
            .Where(m => m.ReturnType == typeof(string) && m.GetParameters().Select(p => p.ParameterType).SequenceEqual([typeof(VerificationResult), typeof(ReportOptions)]))
            .Select(m => m.CreateDelegate<Rendering>()),
    ];

    [Fact]
    public void There_are_text_markdown_and_html() => Assert.InRange(Renderings.Length, 3, int.MaxValue);

    [Fact]
    public void Every_rendering_of_anything_carries_its_cautions_edition_and_assumptions()
    {
        foreach (AttachmentSample sample in AttachmentSamples.Take(100, seed: 41))
        {
            AttachmentVerification verification = sample.Prepared.Verify([sample.LoadCase], SheetScope.Governing);
            foreach (Rendering rendering in Renderings)
            {
                string text = Plain(rendering(verification, null));
                Assert.Contains("Local codes and the judgement of a licensed professional govern.", text, StringComparison.Ordinal);
                Assert.Contains("have the work inspected", text, StringComparison.Ordinal);
                Assert.Contains(verification.Method, text, StringComparison.Ordinal);
                Assert.Contains($"{verification.Constants} constants", text, StringComparison.Ordinal);
                Assert.All(verification.Assumptions, Says);
                Assert.All(verification.Notices, Says);
                Assert.All(verification.Modes, m => Says(m.Id));
                Assert.All(verification.Modes.Where(m => m.Reason is not null), m => Says(m.Reason!));

                // The plain summary writes Greek letters and signs in ASCII; the one for a terminal is read here too and writes them as they are.
                void Says(string sentence) => Assert.True(text.Contains(sentence, StringComparison.Ordinal) || (rendering.Method.Name == nameof(TextSummary.Write)
                    && rendering.Method.DeclaringType == typeof(TextSummary) && sentence.Any(c => c > 127)), $"{rendering.Method.DeclaringType!.Name}: {sentence}");
            }
        }
    }

    [Fact]
    public void The_same_input_gives_the_same_text_on_every_machine()
    {
        foreach (Rendering rendering in Renderings)
        {
            string text = rendering(ReportSamples.PergolaPost, new ReportOptions { BothSystems = true });

            Assert.Equal(text, rendering(ReportSamples.PergolaPost, new ReportOptions { BothSystems = true }));
            Assert.Equal(text, ReportSamples.InForeignCulture(() => rendering(ReportSamples.PergolaPost, new ReportOptions { BothSystems = true })));
            Parallel.For(0, 16, _ => Assert.Equal(text, rendering(ReportSamples.PergolaPost, new ReportOptions { BothSystems = true })));
            Assert.DoesNotContain('\r', text);
            Assert.EndsWith("\n", text, StringComparison.Ordinal);
            Assert.All(text.Split('\n'), line => Assert.Equal(line.TrimEnd(), line));
        }
    }

    [Fact]
    public void A_failing_mode_is_never_shown_as_one()
    {
        var sample = new AttachmentSamples(7).Next();
        AttachmentVerification unit = sample.Prepared.Verify([sample.LoadCase], SheetScope.None);
        double highest = unit.Modes.Where(m => m.Kind != FailureModeKind.Interaction).Max(m => m.Utilization ?? 0);
        foreach (double over in new[] { 1e-8, 1e-6, 1e-4, 1e-3 })
        {
            AttachmentVerification verification = sample.Prepared.Verify([sample.LoadCase.Times((1 + over) / highest)], SheetScope.Governing);
            Assert.Equal(Verdict.DoesNotHold, verification.Verdict);
            foreach (Rendering rendering in Renderings)
            {
                string text = rendering(verification, null);
                FailureMode failing = verification.Modes.First(m => m.Status == ModeStatus.NotSatisfied && m.Utilization is not null);
                string shown = NumberText.Utilization(failing.Utilization!.Value, isSatisfied: false);
                Assert.StartsWith("1.0", shown, StringComparison.Ordinal);
                Assert.NotEqual("1.00", shown);
                Assert.Contains(shown, text, StringComparison.Ordinal);
            }
        }
    }

    /// <summary>Every pair such as <c>13 108 lbf (58.31 kN)</c> is one quantity, within half a unit of the digits of both.</summary>
    [Fact]
    public void Both_unit_systems_say_the_same()
    {
        int pairs = 0;
        foreach (AttachmentSample sample in AttachmentSamples.Take(60, seed: 42))
        {
            AttachmentVerification verification = sample.Prepared.Verify([sample.LoadCase], SheetScope.All);
            string text = TextReport.Write(verification, new ReportOptions { BothSystems = true });
            foreach (Match match in Pair().Matches(text))
            {
                ShownFormula.Number own = new(match.Groups[1].Value), other = new(match.Groups[3].Value);
                double factor = Factor(match.Groups[2].Value, match.Groups[4].Value);

                // The own number may be an input with all its digits or a rounded result; the other is always computed.
                double slack = (own.HalfUnit * factor) + other.HalfUnit;
                Assert.True(Math.Abs((own.Value * factor) - other.Value) <= slack * (1 + 1e-9), match.Value);
                pairs++;
            }

            Assert.DoesNotContain("kN)", TextReport.Write(verification), StringComparison.Ordinal);
            Assert.DoesNotContain("kip)", TextReport.Write(verification), StringComparison.Ordinal);
        }

        Assert.InRange(pairs, 5_000, int.MaxValue);

        // Exact: 1 in = 25.4 mm, 1 lbf = 4.4482216152605 N.
        static double Factor(string from, string to) => (from, to) switch
        {
            ("lbf", "kN") => 0.0044482216152605,
            ("N", "kip") => 1 / 4448.2216152605,
            ("in", "mm") => 25.4,
            ("mm", "in") => 1 / 25.4,
            ("in²", "mm²") => 645.16,
            ("mm²", "in²") => 1 / 645.16,
            ("psi", "MPa") => 4.4482216152605 / 645.16,
            ("MPa", "psi") => 645.16 / 4.4482216152605,
            ("lbf-in", "N-mm") => 4.4482216152605 * 25.4,
            ("N-mm", "lbf-in") => 1 / (4.4482216152605 * 25.4),
            ("lbf/in", "N/mm") => 4.4482216152605 / 25.4,
            ("N/mm", "lbf/in") => 25.4 / 4.4482216152605,
            ("lb/ft³", "kg/m³") => 0.45359237 / (0.3048 * 0.3048 * 0.3048),
            ("kg/m³", "lb/ft³") => 0.3048 * 0.3048 * 0.3048 / 0.45359237,
            _ => throw new FormatException($"{from} ({to})"),
        };
    }

    [Fact]
    public void Text_is_wrapped_and_tables_are_aligned()
    {
        foreach (AttachmentSample sample in AttachmentSamples.Take(100, seed: 43))
        {
            AttachmentVerification verification = sample.Prepared.Verify([sample.LoadCase], SheetScope.All);
            foreach (string line in TextReport.Write(verification).Split('\n'))
            {
                // Paragraphs, bullets and remarks. Tables and steps are as wide as they are.
                if (line.Length > 0 && (line[0] != ' ' || line.StartsWith("  (", StringComparison.Ordinal)))
                {
                    Assert.True(line.Length <= 96, line);
                }
            }
        }
    }

    [Theory]
    [InlineData("Trellis *north* _post_ [a](b) <b>x</b> `c` | # $5 \\ {d}")]
    [InlineData("1. ~~struck~~ &lt;tag&gt; & co")]
    [InlineData("+ plus - minus = equals ! bang")]
    [InlineData("two\nlines\r\nof | title")]
    public void What_a_person_writes_is_text_in_markdown(string written)
    {
        AttachmentSample sample = new AttachmentSamples(3).Next();
        LoadCase loadCase = new(written) { N = sample.LoadCase.N, At = sample.LoadCase.At };
        string report = MarkdownReport.Write(sample.Prepared.Verify([loadCase], SheetScope.Governing), new ReportOptions { Title = written });
        string expected = LineBreak().Replace(written, " ");

        string heading = report.Split('\n')[0];
        Assert.StartsWith("# ", heading, StringComparison.Ordinal);
        Assert.Equal(expected, Read(heading[2..]).Replace("  ", " ", StringComparison.Ordinal));

        // In the table of results every row has the same number of cells, and the second is the name.
        string[] rows = [.. report.Split('\n').SkipWhile(l => !l.StartsWith("| mode", StringComparison.Ordinal)).TakeWhile(l => l.StartsWith('|'))];
        Assert.All(rows, row => Assert.Equal(Cells(rows[0]).Length, Cells(row).Length));
        Assert.Equal(expected, Read(Cells(rows[2])[2].Trim()).Replace("  ", " ", StringComparison.Ordinal));
    }

    [Fact]
    public void A_line_break_in_a_name_breaks_no_table_of_the_text()
    {
        AttachmentSample sample = new AttachmentSamples(3).Next();
        LoadCase loadCase = new("gust\nfrom the west") { N = sample.LoadCase.N, At = sample.LoadCase.At };
        string report = TextReport.Write(sample.Prepared.Verify([loadCase], SheetScope.None), new ReportOptions { Title = "Trellis\npost" });

        Assert.Contains("gust from the west", report, StringComparison.Ordinal);
        Assert.StartsWith("Trellis post\n============\n", report, StringComparison.Ordinal);
    }

    [Fact]
    public void Formulas_in_markdown_have_their_brackets_in_pairs()
    {
        int formulas = 0;
        foreach (AttachmentSample sample in AttachmentSamples.Take(60, seed: 44))
        {
            string report = MarkdownReport.Write(sample.Prepared.Verify([sample.LoadCase], SheetScope.All));
            foreach (Match match in Formula().Matches(report))
            {
                string latex = match.Groups[1].Value;
                formulas++;
                Assert.Equal(latex.Count(c => c == '{'), latex.Count(c => c == '}'));
                Assert.Equal(Regex.Count(latex, @"\\left\("), Regex.Count(latex, @"\\right\)"));

                // LaTeX engines without Unicode know none of these.
                Assert.DoesNotContain(latex, c => c > 127);
            }
        }

        Assert.InRange(formulas, 2_000, int.MaxValue);
    }

    [Theory]
    [InlineData("pergola-post.txt")]
    [InlineData("pergola-post-both-systems.txt")]
    [InlineData("pergola-post.md")]
    [InlineData("garden-rail.txt")]
    [InlineData("garden-rail.md")]
    [InlineData("garden-rail.html")]
    [InlineData("pergola-post-governing.md")]
    [InlineData("pergola-post-summary.txt")]
    [InlineData("porch-bars.txt")]
    [InlineData("porch-bars.md")]
    public void Approved_reports(string file)
    {
        AttachmentVerification verification = file.StartsWith("pergola", StringComparison.Ordinal) ? ReportSamples.PergolaPost
            : file.StartsWith("porch", StringComparison.Ordinal) ? ReportSamples.PorchBars : ReportSamples.GardenRail;
        var options = new ReportOptions
        {
            Title = "Invented sample",
            BothSystems = file.Contains("both", StringComparison.Ordinal),
            Level = file.Contains("governing", StringComparison.Ordinal) ? ReportLevel.Governing : file.Contains("summary", StringComparison.Ordinal) ? ReportLevel.Summary : ReportLevel.Everything,
            Date = file.Contains("summary", StringComparison.Ordinal) ? new DateOnly(2026, 3, 9) : null,
        };
        string text = Path.GetExtension(file) switch
        {
            ".md" => MarkdownReport.Write(verification, options),
            ".html" => HtmlReport.Write(verification, options),
            _ => TextReport.Write(verification, options),
        };

        ApprovedText.Verify(text, file);
    }

    [Theory]
    [InlineData("pergola-post-plan.svg")]
    [InlineData("pergola-post-section.svg")]
    public void Approved_drawings(string file) =>
        ApprovedText.Verify(file.Contains("plan", StringComparison.Ordinal) ? PlanDrawing.Write(ReportSamples.PergolaPost) : SectionDrawing.Write(ReportSamples.PergolaPost), file);

    /// <summary>The words of a rendering without its line breaks and escapes.</summary>
    private static string Plain(string text) => text.StartsWith("<!DOCTYPE", StringComparison.Ordinal)
        ? Blanks().Replace(HtmlText.Of(text), " ")
        : Blanks().Replace(Escape().Replace(text, "$1"), " ");

    /// <summary>Markdown text as it is read: a backslash before punctuation is not shown, and nothing without one may mean anything.</summary>
    private static string Read(string markdown)
    {
        string bare = Escape().Replace(markdown, "");
        Assert.DoesNotContain(bare, c => c is '*' or '_' or '[' or ']' or '<' or '`' or '|' or '$' or '~' or '\\');
        Assert.False(Entity().IsMatch(bare), $"{markdown} holds a character reference");
        return Escape().Replace(markdown, "$1");
    }

    private static string[] Cells(string row) => Regex.Split(row, @"(?<!\\)\|");

    [GeneratedRegex(@"(?<![\d.])(-?(?:\d{1,3}(?: \d{3})+|\d+)(?:\.\d+)?) (lbf-in|lbf/in|lbf|in²|in|psi|lb/ft³|N-mm|N/mm|N|mm²|mm|MPa|kg/m³) \((-?(?:\d{1,3}(?: \d{3})+|\d+)(?:\.\d+)?) ([^)]+)\)")]
    private static partial Regex Pair();

    [GeneratedRegex(@"\$([^$]+)\$")]
    private static partial Regex Formula();

    [GeneratedRegex(@"\r\n|\n|\r")]
    private static partial Regex LineBreak();

    [GeneratedRegex(@"\s+")]
    private static partial Regex Blanks();

    [GeneratedRegex(@"\\([!-/:-@\[-`{-~])")]
    private static partial Regex Escape();

    [GeneratedRegex("&#?[A-Za-z0-9]+;")]
    private static partial Regex Entity();
}
