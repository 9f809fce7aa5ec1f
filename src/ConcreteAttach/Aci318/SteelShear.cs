using ConcreteAttach.Calculation;
using ConcreteAttach.Quantities;
using ConcreteAttach.Verification;

namespace ConcreteAttach.Aci318;

/// <summary>17.7.1 Steel strength of anchors in shear.</summary>
internal static class SteelShear
{
    /// <summary>Why the strength is not covered where the area is not known.</summary>
    public const string AreaUnknown = "The shear area is not known: give thread, tensileArea or shearArea.";

    public static readonly ModeName Name = new(FailureModeKind.SteelShear, "17.7.1", "phi V_sa", "V_ua_i", "most loaded fastener, resultant");

    /// <summary>V_sa of one fastener (17.7.1.2), with a built-up grout pad times 0.80 (17.7.1.2.1).</summary>
    public static T NominalStrength<T>(Sheet<T> sheet, AnchorageData data)
        where T : struct, IFormulaNumber<T>
    {
        if (data.Product?.SteelShear is { } byTests)
        {
            return ByTests(sheet, data, byTests);
        }

        T area = sheet.Given("A_se_V", data.ShearArea, Dimension.Area);
        T futa = SteelTension.Ultimate(sheet, data);
        T strength = data.IsStud ? area * futa : 0.6 * area * futa;
        if (data.HasGroutPad)
        {
            sheet.Note("A built-up grout pad: times 0.80 (17.7.1.2.1).");
            strength = 0.80 * strength;
        }

        return sheet.Step("V_sa", strength, Dimension.Force, data.IsStud ? "17.7.1.2a, headed stud" : "17.7.1.2b");
    }

    /// <summary>V_sa of a product by tests (17.7.1.2c).</summary>
    private static T ByTests<T>(Sheet<T> sheet, AnchorageData data, double value)
        where T : struct, IFormulaNumber<T>
    {
        if (!data.HasGroutPad)
        {
            return sheet.Given("V_sa", value, Dimension.Force, "17.7.1.2c, by tests");
        }

        T tested = sheet.Given("V_sa_t", value, Dimension.Force, "17.7.1.2c, by tests");
        sheet.Note("A built-up grout pad: times 0.80 (17.7.1.2.1).");
        return sheet.Step("V_sa", 0.80 * tested, Dimension.Force, "17.7.1.2.1");
    }
}
