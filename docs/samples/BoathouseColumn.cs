using ConcreteAttach.Actions;
using ConcreteAttach.Attached;
using ConcreteAttach.Fasteners;
using ConcreteAttach.Geometry;
using ConcreteAttach.Materials;
using ConcreteAttach.Verification;
using UnitsNet;
using static ConcreteAttach.Samples.Shorthand;

namespace ConcreteAttach.Samples;

/// <summary>Worked example: the base plate of a steel column in the corner of a footing, axial load with moments about both axes. Invented.</summary>
internal static class BoathouseColumn
{
    public static AttachmentVerification Verify()
    {
        #region inputs
        var footing = new ConcreteMember(Psi(4000), thickness: In(30))
        {
            Edges = new EdgeDistances { PlusX = In(16), PlusY = In(16) },
            Cover = In(3),
        };
        AnchorSteel steel = AnchorSteels.Find("ASTM F1554 Grade 55", In(0.875));
        var rod = new ThreadedRodWithNut(In(0.875), steel, effectiveEmbedment: In(15));
        FastenerLayout layout = FastenerLayout.Rectangle(2, In(11), 2, In(11));
        BasePlate plate = BasePlate.Rectangle(
            In(15), In(15), PlateContact.StrainCompatibility) with
        {
            Thickness = In(1.5),
            Yield = Psi(50_000),
            Profile = new StiffArea(new(In(-4), In(-4)), new(In(4), In(4))),
        };
        var attachment = new Attachment(footing, rod, layout) { Plate = plate };
        #endregion

        #region loads
        LoadCase[] loadCases =
        [
            new("1.2D + 1.0W across the pier")
            {
                N = Kip(-40), Mx = KipIn(-420), My = KipIn(330),
                Vx = Kip(4), Vy = Kip(5),
            },
            new("0.9D + 1.0W, uplift")
            {
                N = Kip(9), Mx = KipIn(120), My = KipIn(-120), Vx = Kip(-3),
            },
            new("1.2D + 1.6S") { N = Kip(-60), Mx = KipIn(40) },
        ];
        #endregion

        #region verify
        AttachmentVerification verification = Method.Verify(attachment, loadCases);
        #endregion

        return verification;
    }

    /// <summary>What the contact is, read from the result.</summary>
    public static (Force Compression, Length? LeverArm, Pressure Largest) Contact()
    {
        AttachmentVerification verification = Verify();
        #region contact
        ContactState contact = verification.Contacts[0];
        Force compression = contact.Compression;
        Length? leverArm = contact.LeverArm;
        Pressure largest = contact.LargestPressure;
        #endregion
        return (compression, leverArm, largest);
    }
}
