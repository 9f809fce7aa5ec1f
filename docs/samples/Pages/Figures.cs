using System.Text;
using ConcreteAttach.Presentation;
using ConcreteAttach.Presentation.Drawings;
using ConcreteAttach.Presentation.Json;
using ConcreteAttach.Verification;

namespace ConcreteAttach.Samples.Pages;

/// <summary>The drawings and full reports that the pages show and link.</summary>
internal static class Figures
{
    private static readonly UTF8Encoding Utf8 = new(encoderShouldEmitUTF8Identifier: false);

    public static void Write(string folder)
    {
        Set(folder, "market-hall", "Market-hall canopy (invented)", MarketHallCanopy.Verify());
        Set(folder, "pier-corner", "Post on a pier corner (invented)", PierCornerPost.Verify());
        Set(folder, "boathouse", "Column base in a corner (invented)", BoathouseColumn.Verify());
        Set(folder, "stem-wall", "Rods in an old stem wall (invented)", StemWallRetrofit.Verify());
        Set(folder, "ledger", "Ledger with screws (invented)", LedgerScrews.Verify());
        Set(folder, "slab-corner", "Bolt at a skew corner of a slab (invented)", OutlineExamples.SlabCorner());
        Set(folder, "wall-opening", "Bolt beside an opening of a wall (invented)", OutlineExamples.WallOpening());
        foreach (string file in Directory.EnumerateFiles(Repository.Sample(""), "*.json").Order(StringComparer.Ordinal))
        {
            VerificationRequest request = VerificationJson.Read(File.ReadAllBytes(file));
            string name = Path.GetFileNameWithoutExtension(file);
            if (request.Verify() is AttachmentVerification attachment)
            {
                Set(folder, name, request.Title!, attachment);
            }
            else
            {
                Put(folder, "reports", $"{name}.html", HtmlReport.Write(request.Verify(), new ReportOptions { Title = request.Title }));
            }
        }

        AttachmentVerification market = MarketHallCanopy.Verify();
        Put(folder, "figures", "market-hall-even-uplift-plan.svg", ReportExample.Plan(market));
        Put(folder, "reports", "market-hall-governing.html", ReportExample.Report(market));
        Put(folder, "reports", "market-hall-summary.html", HtmlReport.Write(market, new ReportOptions { Title = "Market-hall canopy (invented)", Level = ReportLevel.Summary }));
    }

    private static void Set(string folder, string name, string title, AttachmentVerification verification)
    {
        Put(folder, "reports", $"{name}.html", HtmlReport.Write(verification, new ReportOptions { Title = title }));
        (string Name, string? Svg)[] figures =
        [
            ("plan", PlanDrawing.Write(verification)),
            ("section", SectionDrawing.Write(verification)),
            ("shear", ShearBreakoutDrawing.Write(verification)),
            ("forces", ForcesDrawing.Write(verification)),
            ("utilization", UtilizationDrawing.Write(verification)),
            ("interaction", InteractionDrawing.Write(verification)),
            ("embedment", CapacityDrawing.Write(verification, CapacityVariable.Embedment)),
            ("edge-distance", CapacityDrawing.Write(verification, CapacityVariable.EdgeDistance)),
        ];
        foreach ((string figure, string? svg) in figures)
        {
            if (svg is not null)
            {
                Put(folder, "figures", $"{name}-{figure}.svg", svg);
            }
        }
    }

    private static void Put(string folder, string kind, string name, string text)
    {
        Directory.CreateDirectory(Path.Combine(folder, kind));
        File.WriteAllText(Path.Combine(folder, kind, name), text, Utf8);
    }
}
