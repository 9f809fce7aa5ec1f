using ConcreteAttach.Calculation;
using ConcreteAttach.Quantities;
using ConcreteAttach.Verification;

namespace ConcreteAttach.Aci318;

/// <summary>17.6.1 Steel strength of anchors in tension.</summary>
internal static class SteelTension
{
    /// <summary>Why the strength is not covered where the area is not known.</summary>
    public const string AreaUnknown = "The tensile area is not known: give thread or tensileArea.";

    public static readonly ModeName Name = new(FailureModeKind.SteelTension, "17.6.1", "phi N_sa", "N_ua_i", "most loaded fastener");

    /// <summary>N_sa of one fastener (17.6.1.2).</summary>
    public static T NominalStrength<T>(Sheet<T> sheet, AnchorageData data)
        where T : struct, IFormulaNumber<T>
    {
        T area = sheet.Given("A_se_N", data.TensileArea, Dimension.Area);
        return sheet.Step("N_sa", area * Ultimate(sheet, data), Dimension.Force, "17.6.1.2");
    }

    /// <summary>f_uta as it may be used: at most 1.9 f_ya and 125 000 psi (17.6.1.2, 17.7.1.2).</summary>
    public static T Ultimate<T>(Sheet<T> sheet, AnchorageData data)
        where T : struct, IFormulaNumber<T>
    {
        T fya = sheet.Given("f_ya", data.SteelYield, Dimension.Stress);
        T specified = sheet.Given("f_u", data.SteelUltimate, Dimension.Stress, "specified tensile strength");
        return sheet.Step("f_uta", T.Min(specified, T.Min(1.9 * fya, T.Literal(data.Edition.LargestSteelStrength))), Dimension.Stress, "17.6.1.2");
    }
}
