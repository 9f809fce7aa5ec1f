using ConcreteAttach.Calculation;
using ConcreteAttach.Quantities;
using ConcreteAttach.Verification;

namespace ConcreteAttach.Aci318;

/// <summary>17.7.3 Concrete pryout strength of anchors in shear.</summary>
internal static class Pryout
{
    /// <summary>The mode of a group.</summary>
    public static readonly ModeName OfGroup = new(FailureModeKind.Pryout, "17.7.3", "phi V_cp", "V_ua_g", "resultant of the group");

    /// <summary>The mode of the most loaded fastener alone.</summary>
    public static readonly ModeName OfFastener = new(FailureModeKind.PryoutOfFastener, "17.7.3", "phi V_cp_i", "V_ua_i", "most loaded fastener");

    /// <summary>
    /// V_cp of one fastener, V_cpg of a group: k_cp times the breakout strength in tension of the same fasteners, of adhesive ones the lesser of breakout and
    /// bond (17.7.3.1).
    /// </summary>
    public static T NominalStrength<T>(Sheet<T> sheet, AnchorageData data, in BreakoutGroup group, bool isSustained, Span<double> scratch)
        where T : struct, IFormulaNumber<T>
    {
        T ncp = ConcreteBreakoutTension.NominalStrength(sheet, data, group, scratch);
        if (data.Product is { IsAdhesive: true })
        {
            ncp = sheet.Step("N_cp", T.Min(Bond.NominalStrength(sheet, data, group, isSustained, Bond.LightweightInPryoutId, scratch), ncp), Dimension.Force, "17.7.3.1.1");
        }

        T hef = sheet.Given("h_ef", data.Embedment, Dimension.Length);
        T kcp = sheet.When(hef < T.Literal(data.Edition.PryoutFrom), "17.7.3.1") ? sheet.Factor("k_cp", 1, "17.7.3.1a") : sheet.Factor("k_cp", 2, "17.7.3.1b");
        return sheet.Step("V_cp", kcp * ncp, Dimension.Force, group.Count == 1 ? "17.7.3.1" : "17.7.3.1, group: V_cpg");
    }

    /// <summary>V_cp/n: the share of one fastener of a group whose forces are opposed. A reading of this library; ACI 318 has no rule for it.</summary>
    public static T ShareOfFastener<T>(Sheet<T> sheet, double groupStrength, int count)
        where T : struct, IFormulaNumber<T>
    {
        T strength = sheet.Given("V_cp", groupStrength, Dimension.Force, "of the group, with ψ_ec,N = 1");
        T n = sheet.Given("n", count, Dimension.None);
        return sheet.Step("V_cp_i", strength / n, Dimension.Force, "17.7.3, reading of this library");
    }
}
