using ConcreteAttach.Actions;
using ConcreteAttach.Attached;
using ConcreteAttach.Fasteners;
using ConcreteAttach.Geometry;
using ConcreteAttach.Materials;
using UnitsNet;

namespace ConcreteAttach.Benchmarks;

/// <summary>The attachments that are timed: invented, each with what makes its calculation different from the others.</summary>
internal static class SampleAttachments
{
    public static readonly string[] Names =
    [
        "1 bolt, no edge",
        "4 bolts, 2 edges, biaxial moment",
        "16 bolts",
        "2 far groups",
        "3 close edges",
        "4 adhesive rods, 1 edge",
        "4 screws, 2 edges",
    ];

    public static (Attachment Attachment, LoadCase LoadCase) Find(string name) => name switch
    {
        "1 bolt, no edge" => (
            Of(8, EdgeDistances.None, FastenerLayout.Single()),
            Case(6, 2, 1, 0, 0, 0)),
        "4 bolts, 2 edges, biaxial moment" => (
            Of(8, new EdgeDistances { PlusX = Inches(5), PlusY = Inches(9) }, FastenerLayout.Rectangle(2, Inches(6), 2, Inches(6))),
            Case(6, 2, -1, -8, 12, 0)),
        "16 bolts" => (
            Of(8, new EdgeDistances { MinusX = Inches(14) }, FastenerLayout.Rectangle(4, Inches(5), 4, Inches(6))),
            Case(20, -8, 3, 30, -20, 0)),
        "2 far groups" => (
            Of(6, new EdgeDistances { PlusY = Inches(10), MinusY = Inches(10) }, FastenerLayout.Points(
                At(-26, -3), At(-20, -3), At(-26, 3), At(-20, 3), At(20, -3), At(26, -3), At(20, 3), At(26, 3))),
            Case(12, 2, 4, 15, 60, 20)),
        "3 close edges" => (
            Of(10, new EdgeDistances { PlusX = Inches(8), MinusX = Inches(8), PlusY = Inches(9) }, FastenerLayout.Rectangle(2, Inches(6), 2, Inches(8))),
            Case(8, 3, -2, 10, 6, 0)),
        "4 adhesive rods, 1 edge" => (
            Adhesive(new EdgeDistances { PlusX = Inches(8) }, FastenerLayout.Rectangle(2, Inches(6), 2, Inches(6))),
            Case(4, 2, -1, -8, 12, 0) with { SustainedTension = Force.FromKilopoundsForce(1) }),
        "4 screws, 2 edges" => (
            Screws(new EdgeDistances { PlusX = Inches(6), PlusY = Inches(9) }, FastenerLayout.Rectangle(2, Inches(4), 2, Inches(4))),
            Case(3, 1, -1, -2, 3, 0)),
        _ => throw new ArgumentOutOfRangeException(nameof(name)),
    };

    /// <summary>A square grid of bolts 6 in. apart in a slab with one edge.</summary>
    public static (Attachment Attachment, LoadCase LoadCase) Grid(int columns, int rows) => (
        Of(8, new EdgeDistances { MinusX = Inches((3.0 * columns) + 4) }, FastenerLayout.Rectangle(columns, Inches(6), rows, Inches(6))),
        Case(columns * rows, -0.5 * columns * rows, 0.2 * columns * rows, 20, -30, 40));

    /// <summary>A column base of four rods with a plate in contact, in a pier, under uplift and shear along x.</summary>
    public static (Attachment Attachment, LoadCase LoadCase) ColumnBase()
    {
        Length diameter = Inches(1);
        Length side = Inches(18);
        var concrete = new ConcreteMember(Pressure.FromPoundsForcePerSquareInch(4000), Inches(36)) { Edges = new EdgeDistances { PlusX = side, MinusX = side, PlusY = side, MinusY = side } };
        var outline = SurfaceOutline.Polygon(At(-9, -9), At(9, -9), At(9, 9), At(-9, 9));
        var attachment = new Attachment(concrete, new HeadedBolt(diameter, AnchorSteels.Find("ASTM F1554 Grade 36", diameter), Inches(18)), FastenerLayout.Rectangle(2, Inches(14), 2, Inches(14)))
        {
            Plate = new BasePlate(outline, PlateContact.StrainCompatibility),
        };
        return (attachment, Case(12, 14, 0, 0, 60, 0));
    }

    private static Attachment Of(double embedment, EdgeDistances edges, FastenerLayout layout)
    {
        Length diameter = Inches(0.625);
        var concrete = new ConcreteMember(Pressure.FromPoundsForcePerSquareInch(4000), Inches(24)) { Edges = edges };
        return new(concrete, new HeadedBolt(diameter, AnchorSteels.Find("ASTM F1554 Grade 36", diameter), Inches(embedment)), layout);
    }

    private static Attachment Adhesive(EdgeDistances edges, FastenerLayout layout)
    {
        Length diameter = Inches(0.625);
        var concrete = new ConcreteMember(Pressure.FromPoundsForcePerSquareInch(4000), Inches(12)) { Edges = edges };
        var bond = new ProductBondStress(Pressure.FromPoundsForcePerSquareInch(800), Pressure.FromPoundsForcePerSquareInch(1600));
        var data = new AdhesiveQualification { Category = 1, BondStress = bond };
        return new(concrete, new AdhesiveRod(diameter, AnchorSteels.Find("ASTM A193 B7", diameter), Inches(6), data), layout);
    }

    private static Attachment Screws(EdgeDistances edges, FastenerLayout layout)
    {
        var concrete = new ConcreteMember(Pressure.FromPoundsForcePerSquareInch(4000), Inches(8)) { Edges = edges, IsCracked = false };
        var data = new MechanicalQualification
        {
            Category = 1, Pullout = new PulloutStrength(null, Force.FromKilopoundsForce(4)) { At = Pressure.FromPoundsForcePerSquareInch(2500), Exponent = 0.5 },
        };
        var steel = new AnchorSteel("invented", Pressure.FromKilopoundsForcePerSquareInch(100), Pressure.FromKilopoundsForcePerSquareInch(125), false);
        return new(concrete, new ScrewFastener(Inches(0.375), steel, Inches(2.5), data) { TensileArea = Area.FromSquareInches(0.103) }, layout);
    }

    private static LoadCase Case(double tension, double shearX, double shearY, double momentX, double momentY, double torsion) => new("1.2D + 1.0W")
    {
        N = Force.FromKilopoundsForce(tension),
        Vx = Force.FromKilopoundsForce(shearX),
        Vy = Force.FromKilopoundsForce(shearY),
        Mx = Torque.FromKilopoundForceInches(momentX),
        My = Torque.FromKilopoundForceInches(momentY),
        Mz = Torque.FromKilopoundForceInches(torsion),
    };

    private static FastenerPosition At(double x, double y) => new(Inches(x), Inches(y));

    private static Length Inches(double value) => Length.FromInches(value);
}
