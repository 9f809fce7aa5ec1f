using ConcreteAttach.Actions;
using ConcreteAttach.Attached;
using ConcreteAttach.Fasteners;
using ConcreteAttach.Geometry;
using ConcreteAttach.Materials;
using ConcreteAttach.Verification;
using static ConcreteAttach.Samples.Shorthand;

namespace ConcreteAttach.Samples;

/// <summary>Attachments to concrete that is no rectangle. All are invented.</summary>
internal static class OutlineExamples
{
    public static AttachmentVerification SlabCorner()
    {
        #region slab-corner
        var slab = new ConcreteMember(Psi(4000), In(12))
        {
            Outline = SurfaceOutline.Polygon(
                new(In(-10), In(-4.8)), new(In(16.4), In(-4.8)), new(In(-10), In(15))),
        };
        var bolt = new HeadedBolt(In(0.625), Grade36(0.625), In(6));
        var attachment = new Attachment(slab, bolt, FastenerLayout.Single());
        var wind = new LoadCase("0.9D + 1.0W") { N = Kip(3), Vx = Kip(0.6), Vy = Kip(0.8) };
        return Method.Verify(attachment, wind);
        #endregion
    }

    public static AttachmentVerification WallOpening()
    {
        #region wall-opening
        SurfaceOutline surface = SurfaceOutline
            .Polygon(new(In(-40), In(-30)), new(In(40), In(-30)), new(In(40), In(30)), new(In(-40), In(30)))
            .WithOpening(new(In(5), In(-3)), new(In(11), In(-3)), new(In(11), In(3)), new(In(5), In(3)));
        var wall = new ConcreteMember(Psi(4000), In(12)) { Outline = surface };
        var bolt = new HeadedBolt(In(0.625), Grade36(0.625), In(6));
        var attachment = new Attachment(wall, bolt, FastenerLayout.Single());
        var loads = new LoadCase("0.9D + 1.0W") { N = Kip(3), Vx = Kip(1) };
        return Method.Verify(attachment, loads);
        #endregion
    }
}
