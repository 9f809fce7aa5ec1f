using System.Text;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using ConcreteAttach.Aci318;
using ConcreteAttach.Actions;
using ConcreteAttach.Attached;
using ConcreteAttach.Fasteners;
using ConcreteAttach.Geometry;
using ConcreteAttach.Materials;
using ConcreteAttach.Presentation;
using ConcreteAttach.Tests.Properties;
using ConcreteAttach.Verification;
using UnitsNet;

namespace ConcreteAttach.Tests.Presentation;

/// <summary>What the HTML report has beyond the words that all renderings share.</summary>
public sealed class HtmlReportTests
{
    private static readonly XNamespace Html = HtmlText.Html;
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    private static IEnumerable<AttachmentVerification> Verifications(int count, int seed) =>
        [ReportSamples.PergolaPost, ReportSamples.GardenRail, .. AttachmentSamples.Take(count, seed).Select(s => s.Prepared.Verify([s.LoadCase], SheetScope.All))];

    [Fact]
    public void It_is_one_well_formed_document_that_asks_for_nothing()
    {
        foreach (AttachmentVerification verification in Verifications(60, seed: 91))
        {
            string html = HtmlReport.Write(verification);
            XElement root = HtmlText.Parsed(html);

            Assert.Equal("en", root.Attribute("lang")!.Value);
            Assert.Single(root.Descendants(Html + "h1"));
            Assert.Single(root.Descendants(Html + "main"));
            Assert.DoesNotContain(root.Descendants(), e => e.Name.LocalName is "script" or "link" or "img" or "iframe" or "object" or "embed" or "form" or "base" or "image" or "use");
            Assert.DoesNotContain(root.Descendants().Attributes(), a => a.Name.LocalName.StartsWith("on", StringComparison.Ordinal) || a.Name.LocalName is "src" or "srcset" or "data");
            Assert.All(root.Descendants().Attributes("href"), a => Assert.StartsWith("#", a.Value, StringComparison.Ordinal));
            Assert.DoesNotMatch("url\\(|@import|https?://(?!www\\.w3\\.org/)", html);

            string[] ids = [.. root.Descendants().Attributes("id").Select(a => a.Value)];
            Assert.Equal(ids.Length, ids.Distinct().Count());
            Assert.All(root.Descendants().Attributes("href"), a => Assert.Contains(a.Value[1..], ids));
            Assert.All(root.Descendants().Attributes("aria-labelledby").SelectMany(a => a.Value.Split(' ')), id => Assert.Contains(id, ids));
            Assert.InRange(root.Descendants(Svg + "svg").Count(), 2, 20);
        }
    }

    [Fact]
    public void Headings_go_down_a_step_at_a_time()
    {
        int[] levels = [.. HtmlText.Parsed(HtmlReport.Write(ReportSamples.PergolaPost)).Descendants().Where(e => Regex.IsMatch(e.Name.LocalName, "^h[1-6]$")).Select(e => e.Name.LocalName[1] - '0')];
        Assert.Equal(1, levels[0]);
        Assert.All(levels.Zip(levels[1..]), pair => Assert.InRange(pair.Second - pair.First, -5, 1));
    }

    [Fact]
    public void A_column_of_every_table_has_its_heading()
    {
        foreach (XElement table in HtmlText.Parsed(HtmlReport.Write(ReportSamples.PergolaPost)).Descendants(Html + "table"))
        {
            XElement[] headings = [.. table.Element(Html + "thead")!.Descendants(Html + "th")];
            Assert.NotNull(table.Element(Html + "caption"));
            Assert.All(headings, th => Assert.Equal("col", th.Attribute("scope")!.Value));
            foreach (XElement row in table.Elements(Html + "tbody").Elements())
            {
                if (row.Attribute("class")?.Value == "group")
                {
                    Assert.Equal(headings.Length.ToString(System.Globalization.CultureInfo.InvariantCulture), row.Element(Html + "th")!.Attribute("colspan")!.Value);
                }
                else
                {
                    Assert.Equal(headings.Length, row.Elements(Html + "td").Count());
                }
            }
        }
    }

    [Theory]
    [InlineData("Trellis <script>alert(1)</script> & \"north\" 'post'")]
    [InlineData("two\nlines\tand a \u0001 control")]
    [InlineData("snow ❄ and a pair \U0001F3D7, half a pair \uD83C")]
    public void What_a_person_writes_is_text(string written)
    {
        AttachmentSample sample = new AttachmentSamples(3).Next();
        LoadCase loadCase = new(written) { N = sample.LoadCase.N, At = sample.LoadCase.At };
        XElement root = HtmlText.Parsed(HtmlReport.Write(sample.Prepared.Verify([loadCase], SheetScope.Governing), new ReportOptions { Title = written }));

        string expected = Regex.Replace(written, "[\n\t]", " ").Replace("\u0001", "", StringComparison.Ordinal).TrimEnd('\uD83C');
        Assert.Equal(expected, root.Descendants(Html + "h1").Single().Value);
        Assert.Equal(expected, root.Descendants(Html + "title").Single().Value);
        Assert.Empty(root.Descendants(Html + "script"));
    }

    [Fact]
    public void Levels_show_less_and_less_of_the_calculation()
    {
        AttachmentVerification verification = ReportSamples.PergolaPost;
        string[] Modes(ReportLevel level) => [.. HtmlText.Parsed(HtmlReport.Write(verification, new ReportOptions { Level = level })).Descendants(Html + "h3").Where(h => h.Attribute("id") is not null).Select(h => h.Value)];

        Assert.Empty(Modes(ReportLevel.Summary));
        Assert.Equal(verification.Modes.Count(m => m.Sheet is not null), Modes(ReportLevel.Everything).Length);
        string[] governing = Modes(ReportLevel.Governing);
        Assert.InRange(governing.Length, 2, 4);
        Assert.Contains(governing, title => title.StartsWith(verification.Governing!.Title, StringComparison.Ordinal));
        Assert.Subset(Modes(ReportLevel.Everything).ToHashSet(), governing.ToHashSet());

        // Less calculation, never less answer.
        Assert.All(Enum.GetValues<ReportLevel>(), level =>
        {
            string text = HtmlText.Of(HtmlReport.Write(verification, new ReportOptions { Level = level }));
            Assert.All(verification.Modes, m => Assert.Contains(m.Id, text, StringComparison.Ordinal));
            Assert.All(verification.Assumptions, a => Assert.Contains(a, text, StringComparison.Ordinal));
            Assert.All(verification.Notices, n => Assert.Contains(n, text, StringComparison.Ordinal));
        });
    }

    [Fact]
    public void What_fails_is_calculated_at_the_level_of_the_governing_modes()
    {
        int failures = 0;
        foreach (AttachmentSample sample in AttachmentSamples.Take(40, seed: 92))
        {
            AttachmentVerification verification = sample.Prepared.Verify([sample.LoadCase], SheetScope.All);
            string html = HtmlReport.Write(verification, new ReportOptions { Level = ReportLevel.Governing });
            foreach (FailureMode mode in verification.Modes.Where(m => m is { Status: ModeStatus.NotSatisfied, Sheet: not null }))
            {
                Assert.Contains($"<p>{mode.Id}: not satisfied.", html, StringComparison.Ordinal);
                failures++;
            }
        }

        Assert.InRange(failures, 20, int.MaxValue);
    }

    [Fact]
    public void The_date_is_the_one_that_is_given_and_none_without()
    {
        Assert.DoesNotContain("Date:", HtmlReport.Write(ReportSamples.GardenRail), StringComparison.Ordinal);
        Assert.Contains("<p>Date: 2026-03-09.</p>", HtmlReport.Write(ReportSamples.GardenRail, new ReportOptions { Date = new DateOnly(2026, 3, 9) }), StringComparison.Ordinal);
    }

    [Fact]
    public void The_first_sentence_says_whether_it_holds_and_what_governs()
    {
        foreach (AttachmentVerification verification in Verifications(40, seed: 93).Where(v => v.Governing is not null))
        {
            string answer = HtmlText.Parsed(HtmlReport.Write(verification)).Descendants(Html + "p").First(p => p.Attribute("class")?.Value == "answer").Value;
            Assert.Contains(verification.Governing!.Id, answer, StringComparison.Ordinal);
            Assert.Contains(verification.Verdict switch { Verdict.Holds => " holds by ", Verdict.DoesNotHold => " does not hold by ", _ => "not covered" }, answer, StringComparison.Ordinal);
        }
    }

    /// <summary>The aim: a group of six in a corner, under all six actions, with everything, stays below 300 kB.</summary>
    [Fact]
    public void A_report_stays_small()
    {
        Length In(double value) => Length.FromInches(value);
        var concrete = new ConcreteMember(Pressure.FromPoundsForcePerSquareInch(4000), In(24)) { Edges = new EdgeDistances { PlusX = In(14), PlusY = In(12) } };
        var attachment = new Attachment(concrete, new HeadedBolt(In(0.75), AnchorSteels.Find("ASTM F1554 Grade 36", In(0.75)), In(9)), FastenerLayout.Rectangle(3, In(6), 2, In(8)));
        var loadCase = new LoadCase("1.2D + 1.0W")
        {
            N = Force.FromKilopoundsForce(10), Vx = Force.FromKilopoundsForce(4), Vy = Force.FromKilopoundsForce(2),
            Mx = Torque.FromKilopoundForceInches(20), My = Torque.FromKilopoundForceInches(-15), Mz = Torque.FromKilopoundForceInches(12),
        };
        AttachmentVerification six = new Aci318Method(Aci318Edition.InchPound2019).Prepare(attachment).Verify([loadCase], SheetScope.All);

        Assert.InRange(Encoding.UTF8.GetByteCount(HtmlReport.Write(six)), 30_000, 300_000);
        Assert.InRange(Encoding.UTF8.GetByteCount(HtmlReport.Write(six, new ReportOptions { BothSystems = true })), 30_000, 300_000);
    }
}
