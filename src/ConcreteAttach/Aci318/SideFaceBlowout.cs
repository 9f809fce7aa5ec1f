using ConcreteAttach.Calculation;
using ConcreteAttach.Quantities;
using ConcreteAttach.Verification;

namespace ConcreteAttach.Aci318;

/// <summary>17.6.4 Concrete side-face blowout strength of headed anchors in tension.</summary>
internal static class SideFaceBlowout
{
    public static readonly ModeName Name = new(FailureModeKind.SideFaceBlowout, "17.6.4", "phi N_n", "N_ua_g");

    /// <summary>Whether a headed fastener is deep enough beside an edge to blow the side face out: h_ef > 2.5 c_a1 (17.6.4.1).</summary>
    public static bool Applies(double embedment, double edgeDistance) => Limit.IsBelow(2.5 * edgeDistance, embedment);

    /// <summary>N_sb of one fastener, N_sbg of several along the edge (17.6.4.1, 17.6.4.2).</summary>
    public static T NominalStrength<T>(Sheet<T> sheet, AnchorageData data, in BlowoutPart part)
        where T : struct, IFormulaNumber<T>
    {
        T fc = ConcreteStrength.Limited(sheet, data);
        T lambdaA = ConcreteStrength.LightweightConcrete(sheet, data);
        T hef = sheet.Given("h_ef", data.Embedment, Dimension.Length);
        T ca1 = sheet.Given("c_a1", part.EdgeDistance, Dimension.Length);
        sheet.When(hef > 2.5 * ca1, "17.6.4.1");
        T abrg = sheet.Given("A_brg", data.BearingArea, Dimension.Area);
        T nsb = sheet.Step("N_sb", data.Edition.Blowout * ca1 * T.Sqrt(abrg) * lambdaA * T.Sqrt(fc), Dimension.Force, "17.6.4.1");
        T strength = part.Count == 1 ? Corner(sheet, part, nsb, ca1) : Group(sheet, part, nsb, ca1);
        return sheet.Step("N_n", strength, Dimension.Force, "17.6.4");
    }

    /// <summary>One fastener: near a corner times (1 + c_a2/c_a1)/4 (17.6.4.1.1).</summary>
    private static T Corner<T>(Sheet<T> sheet, in BlowoutPart part, T nsb, T ca1)
        where T : struct, IFormulaNumber<T>
    {
        if (double.IsPositiveInfinity(part.CornerDistance))
        {
            return nsb;
        }

        T ca2 = sheet.Given("c_a2", part.CornerDistance, Dimension.Length);
        if (!sheet.When(ca2 < 3 * ca1, "17.6.4.1.1"))
        {
            return nsb;
        }

        if (sheet.When(ca2 < ca1, "17.6.4.1.1"))
        {
            sheet.Note("The ratio c_a2/c_a1 is taken as at least 1.");
            return sheet.Step("N_sb_corner", (1 + T.Literal(1)) / 4 * nsb, Dimension.Force, "17.6.4.1.1");
        }

        return sheet.Step("N_sb_corner", (1 + (ca2 / ca1)) / 4 * nsb, Dimension.Force, "17.6.4.1.1");
    }

    /// <summary>Fasteners closer than 6 c_a1: times 1 + s/(6 c_a1), s between the outer ones (17.6.4.2).</summary>
    private static T Group<T>(Sheet<T> sheet, in BlowoutPart part, T nsb, T ca1)
        where T : struct, IFormulaNumber<T>
    {
        T s = sheet.Given("s", part.OuterSpacing, Dimension.Length, "between the outer fasteners along the edge");
        return sheet.Step("N_sbg", (1 + (s / (6 * ca1))) * nsb, Dimension.Force, "17.6.4.2");
    }
}
