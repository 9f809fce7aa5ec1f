using ConcreteAttach.Calculation;
using ConcreteAttach.Presentation;

namespace ConcreteAttach.Samples.Pages;

/// <summary>The page on loads and combinations.</summary>
internal static class DemandPage
{
    public static void Write(Fragments fragments)
    {
        Sheet(fragments, "wall", DemandExamples.Wall().Sheet);
        Sheet(fragments, "combination", DemandExamples.Combination().Sheet);
        Sheet(fragments, "base-shear", DemandExamples.BaseShear().Sheet);
        Sheet(fragments, "component", DemandExamples.Component().Sheet);
    }

    private static void Sheet(Fragments fragments, string name, CalculationSheet sheet) => fragments.Write($"sheet-demand-{name}", MarkdownReport.WriteSheet(sheet));
}
