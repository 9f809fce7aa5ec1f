using ConcreteAttach.Attached;
using ConcreteAttach.Calculation;
using ConcreteAttach.Fasteners;
using ConcreteAttach.Geometry;
using ConcreteAttach.Quantities;
using ConcreteAttach.Verification;
using UnitsNet;

namespace ConcreteAttach.Aci318;

/// <summary>
/// The building code's alternative for bolts of wood sills of light-frame walls under earthquake (IBC 2012 to 2021, 1905.1.8; from memory). Where all conditions are met, 17.10.6.3 is deemed satisfied for shear
/// along the sill, and breakout and pryout under it (17.7.2, 17.7.3) need not be computed. The steel of the bolts is checked all the same: the alternative does not name it.
/// </summary>
internal static class WoodSills
{
    /// <summary>Most modes that <see cref="Write"/> writes.</summary>
    public const int MostModes = 6;

    /// <summary>Why a mode does not apply to shear along the sill.</summary>
    public const string Waived = "Shear along a wood sill under earthquake: the building code's conditions for its bolts are met, and the wood standard decides (IBC 1905.1.8).";

    private const string Clause = "IBC 1905.1.8";

    /// <summary>Actual thicknesses of sills 2 in. and 3 in. nominal, in.</summary>
    private static readonly double[] Thicknesses = [1.5, 2.5];

    private const double LargestDiameter = 0.625;

    private const double LeastEmbedment = 7;

    private const double LeastEdge = 1.75;

    private const double EndInDiameters = 15;

    /// <summary>Whether every condition is met.</summary>
    public static bool AreMet(AnchorageData data, Fastener fastener, WoodSill sill) =>
        sill.HasStrengthByNds
        && ThicknessIsMet(default(Sheet<PlainNumber>), data, sill)
        && DiameterIsMet(default(Sheet<PlainNumber>), data)
        && EmbedmentIsMet(default(Sheet<PlainNumber>), data, fastener, sill)
        && EdgeIsMet(default(Sheet<PlainNumber>), data, sill)
        && EndIsMet(default(Sheet<PlainNumber>), data, sill);

    /// <summary>Whether the normal of an edge lies along the sill at all: such an edge is one across it.</summary>
    public static bool IsAcross(ConcreteEdge edge, SillDirection direction) => Math.Abs(direction == SillDirection.X ? edge.NormalX : edge.NormalY) > Limit.Tolerance;

    /// <summary>Writes each condition.</summary>
    public static void Write<T>(AnchorageData data, Fastener fastener, WoodSill sill, in ModeWriter<T> writer)
        where T : struct, IFormulaNumber<T>
    {
        Sheet<T> sheet = writer.NewSheet();
        Rule(FailureModeKind.SillThickness, ThicknessIsMet(sheet, data, sill), "The sill is not one of 2 in. or 3 in. nominal, 1-1/2 in. or 2-1/2 in. thick.", writer);
        sheet = writer.NewSheet();
        Rule(FailureModeKind.SillDiameter, DiameterIsMet(sheet, data), "The bolts are thicker than 5/8 in.", writer);
        sheet = writer.NewSheet();
        Rule(FailureModeKind.SillEmbedment, EmbedmentIsMet(sheet, data, fastener, sill), "The bolts stand less than 7 in. in the concrete.", writer);
        sheet = writer.NewSheet();
        Rule(FailureModeKind.SillEdge, EdgeIsMet(sheet, data, sill), "A bolt is closer than 1-3/4 in. to an edge along the sill.", writer);
        sheet = writer.NewSheet();
        Rule(FailureModeKind.SillEnd, EndIsMet(sheet, data, sill), "A bolt is closer than 15 diameters to an edge across the sill.", writer);
        writer.NewSheet();
        var strength = new ModeLabel(new ModeName(FailureModeKind.SillStrength, Clause));
        writer.WriteWithout(
            strength, sill.HasStrengthByNds ? ModeStatus.Satisfied : ModeStatus.NotCovered,
            sill.HasStrengthByNds ? null : "It is not stated that the strength along the sill is that of NDS parallel to grain.");
    }

    private static void Rule<T>(FailureModeKind kind, bool isMet, string reason, in ModeWriter<T> writer)
        where T : struct, IFormulaNumber<T> => Detailing.WriteRule(new ModeLabel(new ModeName(kind, Clause)), isMet, reason, default, writer);

    private static bool ThicknessIsMet<T>(Sheet<T> sheet, AnchorageData data, WoodSill sill)
        where T : struct, IFormulaNumber<T>
    {
        double thickness = sill.Thickness.In(data.Edition.System);
        sheet.Given("t_s", thickness, Dimension.Length, "actual thickness of the sill");
        return Array.Exists(Thicknesses, dressed => !Limit.IsBelow(thickness, Of(data, dressed)) && !Limit.IsBelow(Of(data, dressed), thickness));
    }

    private static bool DiameterIsMet<T>(Sheet<T> sheet, AnchorageData data)
        where T : struct, IFormulaNumber<T> => sheet.When(sheet.Given("d_a", data.Diameter, Dimension.Length) <= T.Literal(Of(data, LargestDiameter)));

    private static bool EmbedmentIsMet<T>(Sheet<T> sheet, AnchorageData data, Fastener fastener, WoodSill sill)
        where T : struct, IFormulaNumber<T>
    {
        double embedment = (sill.Embedment ?? fastener.EffectiveEmbedment).In(data.Edition.System);
        return sheet.When(sheet.Given("h", embedment, Dimension.Length, sill.Embedment is null ? "effective embedment" : "length in the concrete") >= T.Literal(Of(data, LeastEmbedment)));
    }

    private static bool EdgeIsMet<T>(Sheet<T> sheet, AnchorageData data, WoodSill sill)
        where T : struct, IFormulaNumber<T>
    {
        double nearest = Nearest(data, sill, isAcross: false);
        return double.IsPositiveInfinity(nearest) || sheet.When(sheet.Given("c_s", nearest, Dimension.Length, "to the edge along the sill") >= T.Literal(Of(data, LeastEdge)));
    }

    private static bool EndIsMet<T>(Sheet<T> sheet, AnchorageData data, WoodSill sill)
        where T : struct, IFormulaNumber<T>
    {
        double nearest = Nearest(data, sill, isAcross: true);
        return double.IsPositiveInfinity(nearest)
            || sheet.When(sheet.Given("c_e", nearest, Dimension.Length, "to the edge across the sill") >= EndInDiameters * sheet.Given("d_a", data.Diameter, Dimension.Length));
    }

    private static double Nearest(AnchorageData data, WoodSill sill, bool isAcross)
    {
        double nearest = double.PositiveInfinity;
        foreach (ConcreteEdge edge in data.Edges)
        {
            if (IsAcross(edge, sill.Direction) == isAcross)
            {
                foreach (int fastener in edge.Order)
                {
                    nearest = Math.Min(nearest, edge.Distances[fastener]);
                }
            }
        }

        return nearest;
    }

    /// <summary>A limit that is printed in inches, in the units of the edition.</summary>
    private static double Of(AnchorageData data, double inches) => Length.FromInches(inches).In(data.Edition.System);
}
