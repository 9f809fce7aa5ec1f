using ConcreteAttach.Actions;
using ConcreteAttach.Attached;
using ConcreteAttach.Fasteners;
using ConcreteAttach.Geometry;
using ConcreteAttach.Materials;
using ConcreteAttach.Verification;
using static ConcreteAttach.Samples.Shorthand;

namespace ConcreteAttach.Samples;

/// <summary>A mast on a pier whose concrete alone is too weak: hairpins carry its tension and its shear. Invented.</summary>
internal static class ReinforcementExample
{
    public static AttachmentVerification Mast()
    {
        #region mast
        var pier = new ConcreteMember(Psi(4000), In(48))
        {
            Cover = In(1.5),
            Edges = new EdgeDistances { PlusX = In(15), MinusX = In(15), PlusY = In(15), MinusY = In(15) },
        };
        var rod = new ThreadedRodWithNut(In(1), Grade36(1), In(15));
        FastenerLayout layout = FastenerLayout.Rectangle(2, In(10), 2, In(10));

        // Inverted hairpins: a leg 3 in. on either side of each rod.
        var vertical = new AnchorBars(DeformedBar.Find("No. 5"), AnchorSteels.Find("ASTM A615 Grade 60", In(0.625)))
        {
            CoverToCenter = In(2), IsConfined = true, HasSideCover = true,
        };
        var tension = new TensionReinforcement(
            vertical,
            [
                new(In(-8), In(-5)), new(In(-2), In(-5)), new(In(2), In(-5)), new(In(8), In(-5)),
                new(In(-8), In(5)), new(In(-2), In(5)), new(In(2), In(5)), new(In(8), In(5)),
            ],
            BarEnd.Hooked, BarEnd.Straight, lowerEndDepth: In(30));

        // A hairpin around each rod: two legs at each.
        var horizontal = new AnchorBars(DeformedBar.Find("No. 4"), AnchorSteels.Find("ASTM A615 Grade 60", In(0.5)))
        {
            IsConfined = true, HasSideCover = true,
        };
        ShearReinforcement shear = ShearReinforcement.Enclosing(
            ConcreteSide.PlusX, horizontal, legs: 8, depth: In(2), BarEnd.Hooked, innerLength: In(8));

        var attachment = new Attachment(pier, rod, layout)
        {
            Reinforcement = new AnchorReinforcement { Tension = tension, Shear = [shear] },
        };
        var wind = new LoadCase("0.9D + 1.0W") { N = Kip(60), Vx = Kip(16) };
        return Method.Verify(attachment, wind);
        #endregion
    }
}
