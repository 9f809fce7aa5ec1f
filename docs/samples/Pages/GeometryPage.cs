using ConcreteAttach.Verification;

namespace ConcreteAttach.Samples.Pages;

/// <summary>The page on edges, outlines and openings.</summary>
internal static class GeometryPage
{
    public static void Write(Fragments fragments)
    {
        AttachmentVerification corner = OutlineExamples.SlabCorner();
        ModePages.Sheet(fragments, "outline-shear", corner, "shear/breakout/side-2");
        fragments.Write("outline-notices", new ReportSections(corner).Notices);
        ModePages.Sheet(fragments, "outline-opening", OutlineExamples.WallOpening(), "tension/breakout");
    }
}
