using ConcreteAttach.Calculation;
using ConcreteAttach.Quantities;
using ConcreteAttach.Verification;

namespace ConcreteAttach.Aci318;

/// <summary>17.6.3 Pullout strength of anchors in tension.</summary>
internal static class Pullout
{
    public static readonly ModeName Name = new(FailureModeKind.Pullout, "17.6.3", "phi N_pn", "N_ua_i", "most loaded fastener");

    /// <summary>Why modes of the head are not covered where it is not known.</summary>
    public const string HeadUnknown = "The bearing area of the head is not known: give bearingArea.";

    /// <summary>Why there is no pullout strength; null where there is.</summary>
    public static string? NotCovered(AnchorageData data)
    {
        if (data.Product is { } product)
        {
            return product.PulloutGap ?? data.EditionTensionGap;
        }

        if (data.EditionTensionGap is { } gap)
        {
            return gap;
        }

        if (data.IsHeaded)
        {
            return double.IsNaN(data.BearingArea) ? HeadUnknown : null;
        }

        return Limit.IsBelow(data.HookExtension, 3 * data.Diameter) ? "The hook extension e_h is less than 3 d_a (17.6.3.2.2)." : null;
    }

    /// <summary>N_pn of one fastener (17.6.3.1).</summary>
    public static T NominalStrength<T>(Sheet<T> sheet, AnchorageData data)
        where T : struct, IFormulaNumber<T>
    {
        T fc = ConcreteStrength.Limited(sheet, data);
        if (data.Product is { } product)
        {
            T byTests = ByTests(sheet, product, fc);
            T own = sheet.Factor("psi_c_P", 1, "17.6.3.3.1, N_p is that of the product for this concrete");
            return sheet.Step("N_pn", own * byTests, Dimension.Force, "17.6.3.1");
        }

        T np = data.IsHeaded ? Headed(sheet, data, fc) : Hooked(sheet, data, fc);
        T psi = sheet.Factor("psi_c_P", data.IsCracked ? 1 : 1.4, data.IsCracked ? "17.6.3.3.1, cracked" : "17.6.3.3.1, uncracked");
        return sheet.Step("N_pn", psi * np, Dimension.Force, "17.6.3.1");
    }

    /// <summary>N_p of a product by tests, for the strength of the concrete at hand (17.6.3.2.1).</summary>
    private static T ByTests<T>(Sheet<T> sheet, ProductData product, T fc)
        where T : struct, IFormulaNumber<T>
    {
        if (product.PulloutAt is not { } at || product.PulloutExponent == 0)
        {
            return sheet.Given("N_p", product.Pullout, Dimension.Force, "17.6.3.2.1, by tests");
        }

        T tested = sheet.Given("N_p_t", product.Pullout, Dimension.Force, "17.6.3.2.1, by tests");
        T reference = sheet.Given("f'_c_t", at, Dimension.Stress, "concrete strength at which it holds");
        return sheet.Step("N_p", tested * T.Power(fc / reference, product.PulloutExponent), Dimension.Force, "17.6.3.2.1");
    }

    /// <summary>Crushing under the head (17.6.3.2.2a).</summary>
    private static T Headed<T>(Sheet<T> sheet, AnchorageData data, T fc)
        where T : struct, IFormulaNumber<T>
    {
        T abrg = sheet.Given("A_brg", data.BearingArea, Dimension.Area);
        return sheet.Step("N_p", 8 * abrg * fc, Dimension.Force, "17.6.3.2.2a");
    }

    /// <summary>Crushing inside the hook (17.6.3.2.2b). A hook longer than 4.5 d_a counts as 4.5 d_a.</summary>
    private static T Hooked<T>(Sheet<T> sheet, AnchorageData data, T fc)
        where T : struct, IFormulaNumber<T>
    {
        T da = sheet.Given("d_a", data.Diameter, Dimension.Length);
        T eh = sheet.Given("e_h", data.HookExtension, Dimension.Length);
        sheet.When(eh >= 3 * da, "17.6.3.2.2b");
        if (!sheet.When(eh <= 4.5 * da, "17.6.3.2.2b"))
        {
            eh = sheet.Step("e_h_lim", 4.5 * da, Dimension.Length, "17.6.3.2.2b");
        }

        return sheet.Step("N_p", 0.9 * fc * eh * da, Dimension.Force, "17.6.3.2.2b");
    }
}
