using ConcreteAttach.Nds;
using ConcreteAttach.Presentation;

namespace ConcreteAttach.Samples.Pages;

/// <summary>The page on connections of wood.</summary>
internal static class WoodPage
{
    public static void Write(Fragments fragments)
    {
        Sheet(fragments, "wood-sill", WoodExamples.Sill());
        Sheet(fragments, "wood-gap", WoodExamples.SillWithGap());
        Sheet(fragments, "wood-washer", WoodExamples.Washer());
        Sheet(fragments, "wood-combined", WoodExamples.Combined());
        ModePages.Sheet(fragments, "sill-anchorage", WoodExamples.SillOnConcrete(), "wood/yield");
    }

    private static void Sheet(Fragments fragments, string name, ConnectionStrength strength) =>
        fragments.Write($"sheet-{name}", MarkdownReport.WriteSheet(strength.Sheet));
}
