using ConcreteAttach.Presentation;

namespace ConcreteAttach.Samples.Pages;

/// <summary>Start page and concepts.</summary>
internal static class CommonParts
{
    public static void Write(Fragments fragments)
    {
        fragments.WriteText("first-report", TextReport.Write(FirstVerification.Verify()));
        fragments.Write("first-answer", new ReportSections(FirstVerification.Verify()).Answer);
        fragments.WriteText("bad-input", FirstVerification.BadInput());
        fragments.Write("largest-factor", FormattableString.Invariant($"The loop ends with a factor of {FirstVerification.LargestFactor():0.0}."));

        var forces = new ReportSections(ModeExamples.Forces());
        fragments.Write("forces", forces["Forces on the fasteners"]);
        fragments.Write("cautions", forces["Cautions"]);
        fragments.Write("assumptions", forces["Assumptions and readings"]);
    }
}
