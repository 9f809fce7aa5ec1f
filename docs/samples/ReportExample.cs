using ConcreteAttach.Presentation;
using ConcreteAttach.Presentation.Drawings;
using ConcreteAttach.Verification;

namespace ConcreteAttach.Samples;

/// <summary>Reports and drawings from a program.</summary>
internal static class ReportExample
{
    public static string Report(AttachmentVerification verification)
    {
        #region report
        string html = HtmlReport.Write(verification, new ReportOptions
        {
            Title = "Market-hall canopy (invented)",
            Level = ReportLevel.Governing,
            BothSystems = true,
            Date = new DateOnly(2026, 3, 9),
        });
        #endregion

        return html;
    }

    public static string Plan(AttachmentVerification verification)
    {
        #region drawing
        string svg = PlanDrawing.Write(verification, new DrawingOptions
        {
            LoadCase = verification.LoadCases[0].Name,
        });
        #endregion

        return svg;
    }
}
