using System.Text.RegularExpressions;
using System.Xml;
using System.Xml.Linq;
using ConcreteAttach.Aci318;
using ConcreteAttach.Attached;
using ConcreteAttach.Calculation;
using ConcreteAttach.Geometry;
using ConcreteAttach.Presentation.Drawings;
using ConcreteAttach.Presentation.Json;
using ConcreteAttach.Quantities;
using ConcreteAttach.Tests.Properties;
using ConcreteAttach.Verification;
using UnitsNet;

namespace ConcreteAttach.Tests.Presentation.Drawings;

/// <summary>What every drawing has in common, over the samples and thousands of random attachments.</summary>
public sealed class DrawingTests
{
    private const int RandomAttachments = 2_000;

    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    /// <summary>Every drawing of the library.</summary>
    private static readonly (string Name, Func<ShownCase, Drawing?> Draw)[] Figures =
    [
        ("plan", PlanDrawing.Draw),
        ("section", SectionDrawing.Draw),
        ("shear breakout", ShearBreakoutDrawing.Draw),
        ("forces", ForcesDrawing.Draw),
        ("utilization", shown => UtilizationDrawing.Draw(shown.Verification)),
        ("interaction", shown => InteractionDrawing.Draw(shown, shown.Verification)),
        ("against embedment", shown => CapacityDrawing.Draw(shown, CapacityVariable.Embedment)),
        ("against edge distance", shown => CapacityDrawing.Draw(shown, CapacityVariable.EdgeDistance)),
    ];

    /// <summary>The samples of the tests and of the documentation, every load case.</summary>
    private static IEnumerable<ShownCase> Samples() =>
        from verification in (IEnumerable<AttachmentVerification>)[ReportSamples.PergolaPost, ReportSamples.GardenRail, .. Json.Repository.Samples.Select(file => VerificationJson.Read(File.ReadAllBytes(file)).Verify()).OfType<AttachmentVerification>()]
        from loadCase in verification.LoadCases
        select ShownCase.Of(verification, new DrawingOptions { LoadCase = loadCase.Name });

    /// <summary>Random attachments under a plate that bears on the concrete.</summary>
    private static IEnumerable<ShownCase> Plates(int count, int seed)
    {
        foreach (AttachmentSample sample in AttachmentSamples.Take(count, seed))
        {
            FastenerPosition[] places = [.. sample.Attachment.Layout.Positions];
            double around = 0.3 * sample.Attachment.Fastener.EffectiveEmbedment.Millimeters;
            double left = places.Min(p => p.X.Millimeters) - around, right = places.Max(p => p.X.Millimeters) + around, bottom = places.Min(p => p.Y.Millimeters) - around, top = places.Max(p => p.Y.Millimeters) + around;
            FastenerPosition Corner(double x, double y) => new(Length.FromMillimeters(x), Length.FromMillimeters(y));
            var plate = new BasePlate(SurfaceOutline.Polygon(Corner(left, bottom), Corner(right, bottom), Corner(right, top), Corner(left, top)), PlateContact.StrainCompatibility) { Thickness = Length.FromMillimeters(20) };
            AttachmentVerification? verification = null;
            try
            {
                verification = sample.Method.Prepare(sample.Attachment with { Plate = plate }).Verify([sample.LoadCase], SheetScope.All);
            }
            catch (InputException)
            {
                // A load that this plate cannot pass on.
            }

            if (verification is not null)
            {
                yield return ShownCase.Of(verification, null);
            }
        }
    }

    private static IEnumerable<ShownCase> Random(int count, int seed) =>
        AttachmentSamples.Take(count, seed).Select((sample, i) => ShownCase.Of(sample.Prepared.Verify([sample.LoadCase], SheetScope.All), new DrawingOptions { BothSystems = i % 3 == 0 }));

    private static IEnumerable<ShownCase> Outlined(int count, int seed) => Enumerable.Range(seed * 1000, count)
        .Select(OutlineSamples.Next).Select(sample => ShownCase.Of(sample.Prepared.Verify([sample.LoadCase], SheetScope.All), null));

    [Fact]
    public void Labels_never_overlap()
    {
        int labels = 0;
        foreach (ShownCase shown in Samples().Concat(Random(RandomAttachments, seed: 81)).Concat(Plates(300, seed: 84)).Concat(Outlined(400, seed: 86)))
        {
            foreach ((string name, Func<ShownCase, Drawing?> draw) in Figures)
            {
                if (draw(shown) is not { } drawing)
                {
                    continue;
                }

                // Measured from the document itself, not from what the drawing says of its boxes.
                (string Text, Box Box)[] boxes = [.. SvgText.Boxes(drawing.ToSvg())];
                labels += boxes.Length;
                for (int i = 0; i < boxes.Length; i++)
                {
                    for (int k = 0; k < i; k++)
                    {
                        Assert.False(boxes[i].Box.Overlaps(boxes[k].Box), $"{name}, {shown.Verification.Attachment}: \"{boxes[i].Text}\" {boxes[i].Box} and \"{boxes[k].Text}\" {boxes[k].Box}");
                    }
                }
            }
        }

        Assert.InRange(labels, 10 * RandomAttachments, int.MaxValue);
    }

    [Fact]
    public void Every_drawing_is_well_formed_has_title_and_description_and_asks_for_nothing_outside()
    {
        foreach (ShownCase shown in Samples().Concat(Random(300, seed: 82)).Concat(Plates(100, seed: 85)).Concat(Outlined(100, seed: 87)))
        {
            foreach ((string name, Func<ShownCase, Drawing?> draw) in Figures)
            {
                if (draw(shown)?.ToSvg("a-") is not { } svg)
                {
                    continue;
                }

                XElement root = Parsed(svg);
                Assert.Equal(Svg + "svg", root.Name);
                Assert.Equal("img", root.Attribute("role")!.Value);
                Assert.Equal("a-title a-desc", root.Attribute("aria-labelledby")!.Value);
                Assert.False(string.IsNullOrWhiteSpace(root.Element(Svg + "title")!.Value), name);
                Assert.True(root.Element(Svg + "desc")!.Value.Length > 40, name);
                Assert.DoesNotContain("NaN", svg, StringComparison.Ordinal);
                Assert.DoesNotContain("Infinity", svg, StringComparison.Ordinal);
                Assert.DoesNotContain("∞", svg, StringComparison.Ordinal);
                Assert.Equal(2, Regex.Count(svg, " id=\"a-"));
                Assert.Equal(2, Regex.Count(svg, " id="));
                Assert.DoesNotMatch("href|url\\(|<script|<style|@import|<image", svg);
                AssertWithinView(root, name);
            }
        }
    }

    [Fact]
    public void The_same_input_gives_the_same_drawing_on_every_machine()
    {
        foreach ((_, Func<ShownCase, Drawing?> draw) in Figures)
        {
            string? Drawn() => draw(ShownCase.Of(ReportSamples.PergolaPost, new DrawingOptions { BothSystems = true }))?.ToSvg();
            string? svg = Drawn();
            Assert.Equal(svg, Drawn());
            Assert.Equal(svg, ReportSamples.InForeignCulture(Drawn));
            Parallel.For(0, 8, _ => Assert.Equal(svg, Drawn()));
        }
    }

    /// <summary>The shaded area of the plan is the A_Nc of the sheet, in size.</summary>
    [Fact]
    public void The_outline_on_the_plan_encloses_the_projected_area_of_the_sheet()
    {
        int compared = 0, unions = 0;
        foreach (ShownCase shown in Random(RandomAttachments, seed: 83))
        {
            if (shown.Cone() is not { } cone || cone.Sheet!.Lines.OfType<ValueLine>().FirstOrDefault(l => l.Id == "A_Nc") is not { } line)
            {
                continue;
            }

            // The rectangle about the squares may be larger than n A_Nco, which caps the area of the reading "bounding".
            if (line is StepLine { Formula: var formula } && formula.StartsWith("min", StringComparison.Ordinal))
            {
                continue;
            }

            double area = ProjectedOutline.Of(shown, cone).Sum(SignedArea);
            Assert.InRange(area / line.Value, 1 - 1e-9, 1 + 1e-9);
            compared++;
            unions += line is GivenLine ? 1 : 0;
        }

        Assert.InRange(compared, RandomAttachments / 2, int.MaxValue);
        Assert.InRange(unions, 50, int.MaxValue);
    }

    [Fact]
    public void A_load_case_that_is_not_there_is_refused()
    {
        InputException error = Assert.Throws<InputException>(() => PlanDrawing.Write(ReportSamples.PergolaPost, new DrawingOptions { LoadCase = "no such case" }));
        Assert.Equal("loadCase", error.Parameter);
        Assert.Contains("1.2D", error.Permitted, StringComparison.Ordinal);
    }

    [Fact]
    public void A_load_case_without_sheets_is_drawn_with_them()
    {
        // The governing load case carries its sheets; the other one does not.
        string svg = PlanDrawing.Write(ReportSamples.PergolaPost, new DrawingOptions { LoadCase = "1.2D" });
        Assert.Contains("No fastener is in tension.", svg, StringComparison.Ordinal);
        Assert.Contains("Shaded:", svg, StringComparison.Ordinal);
    }

    /// <summary>The neutral line is drawn where the plate lifts, and only there.</summary>
    [Fact]
    public void Contact_is_hatched_where_the_plate_presses()
    {
        int hatched = 0, lines = 0;
        foreach (ShownCase shown in Plates(200, seed: 86))
        {
            string svg = PlanDrawing.Draw(shown).ToSvg();
            bool presses = shown.Contact is { Zone.IsEmpty: false };
            Assert.Equal(presses, svg.Contains("Hatched: contact", StringComparison.Ordinal));
            hatched += presses ? 1 : 0;
            lines += svg.Contains("the neutral line", StringComparison.Ordinal) ? 1 : 0;
            Assert.False(!presses && svg.Contains("the neutral line", StringComparison.Ordinal));
        }

        Assert.InRange(hatched, 20, int.MaxValue);
        Assert.InRange(lines, 10, hatched);
    }

    /// <summary>Each point of a curve is a verification of its own, and the dot is this one.</summary>
    [Fact]
    public void The_dot_of_the_capacity_is_the_load_factor()
    {
        int compared = 0;
        foreach (ShownCase shown in Random(60, seed: 87).Where(s => s.Verification.LoadFactor is not null))
        {
            if (CapacityDrawing.Draw(shown, CapacityVariable.Embedment) is { } drawing)
            {
                Assert.Contains($"as it is, {NumberText.RoundedDown(shown.Verification.LoadFactor!.Value)} times", string.Join(' ', drawing.Labels.SelectMany(l => l.Text.Runs).Select(r => r.Text)), StringComparison.Ordinal);
                compared++;
            }
        }

        Assert.InRange(compared, 20, int.MaxValue);
    }

    private static double SignedArea(SurfacePoint[] ring)
    {
        double sum = 0;
        for (int i = 0; i < ring.Length; i++)
        {
            SurfacePoint a = ring[i], b = ring[(i + 1) % ring.Length];
            sum += (a.X * b.Y) - (b.X * a.Y);
        }

        return sum / 2;
    }

    internal static XElement Parsed(string xml)
    {
        using var reader = XmlReader.Create(new StringReader(xml), new XmlReaderSettings { DtdProcessing = DtdProcessing.Prohibit, XmlResolver = null });
        return XElement.Load(reader);
    }

    /// <summary>Nothing is cut off: every text and every point lies within the view box.</summary>
    private static void AssertWithinView(XElement root, string name)
    {
        double[] view = [.. root.Attribute("viewBox")!.Value.Split(' ').Select(v => double.Parse(v, System.Globalization.CultureInfo.InvariantCulture))];
        foreach ((string text, Box box) in SvgText.Boxes(root))
        {
            Assert.True(box.Left >= view[0] && box.Top >= view[1] && box.Right <= view[0] + view[2] && box.Bottom <= view[1] + view[3], $"{name}: \"{text}\" {box} outside of {string.Join(' ', view)}");
        }

        Assert.InRange(view[2], 100, 900);
        Assert.InRange(view[3], 60, name == "utilization" ? 2000 : 900);
    }
}
