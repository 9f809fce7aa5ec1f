using ConcreteAttach.Calculation;
using ConcreteAttach.Quantities;

namespace ConcreteAttach.Aci318;

/// <summary>17.5.3 Strength reduction factors φ.</summary>
internal static class StrengthReduction
{
    /// <summary>Table 17.5.3(a): steel in tension.</summary>
    public static T SteelTension<T>(Sheet<T> sheet, AnchorageData data)
        where T : struct, IFormulaNumber<T>
    {
        sheet.Note(data.IsDuctile ? "The steel counts as ductile (2.3)." : "The steel counts as brittle (2.3).");
        return sheet.Factor("phi", data.IsDuctile ? 0.75 : 0.65, "Table 17.5.3(a)");
    }

    /// <summary>Table 17.5.3(b): breakout, bond and side-face blowout.</summary>
    public static T ConcreteTension<T>(Sheet<T> sheet, AnchorageData data)
        where T : struct, IFormulaNumber<T>
    {
        if (data.Edition.Is2025)
        {
            return Edition2025.ConcreteTension(sheet, data);
        }

        sheet.Note(data.HasSupplementaryTension ? "Supplementary reinforcement is present." : "Supplementary reinforcement is not present.");
        if (data.Product is not { } product)
        {
            return sheet.Factor("phi", data.HasSupplementaryTension ? 0.75 : 0.70, "Table 17.5.3(b)");
        }

        return sheet.Factor("phi", product.ConcreteFactor, product.FactorClause);
    }

    /// <summary>φ of breakout and bond in tension of a post-installed fastener by its category, and φ of its pullout (Table 17.5.3(b), (c)).</summary>
    public static (double Concrete, double Pullout) OfCategory(int category, bool isTied) => category switch
    {
        1 => (isTied ? 0.75 : 0.65, 0.65),
        2 => (isTied ? 0.65 : 0.55, 0.55),
        _ => (isTied ? 0.55 : 0.45, 0.45),
    };

    /// <summary>Table 17.5.3(c): pullout.</summary>
    public static T Pullout<T>(Sheet<T> sheet, AnchorageData data)
        where T : struct, IFormulaNumber<T> =>
        data.Edition.Is2025 ? Edition2025.ConcreteTension(sheet, data)
            : data.Product is { } product ? sheet.Factor("phi", product.PulloutFactor, product.FactorClause)
            : sheet.Factor("phi", 0.70, "Table 17.5.3(c)");

    /// <summary>0.55 φ of bond under sustained tension (17.5.2.2).</summary>
    public static T Sustained<T>(Sheet<T> sheet, AnchorageData data)
        where T : struct, IFormulaNumber<T> =>
        sheet.Factor("phi_s", 0.55 * ConcreteTension(sheet, data), "17.5.2.2");

    /// <summary>0.75 φ of what the concrete holds in tension under earthquake (17.10.5.4).</summary>
    public static T Earthquake<T>(Sheet<T> sheet, T phi)
        where T : struct, IFormulaNumber<T> =>
        sheet.Factor("phi_e", 0.75 * phi, "17.10.5.4, earthquake");

    /// <summary>φ / α: what practice takes for allowable stress design; ACI 318 has strength design alone.</summary>
    public static T Allowable<T>(Sheet<T> sheet, T phi, double weightedLoadFactor)
        where T : struct, IFormulaNumber<T>
    {
        T alpha = sheet.Given("alpha", weightedLoadFactor, Dimension.None, "weighted load factor of the load case, as given");
        return sheet.Factor("phi_a", phi / alpha, "practice of allowable stress design, not of ACI 318");
    }

    /// <summary>Table 17.5.3(a): steel in shear.</summary>
    public static T SteelShear<T>(Sheet<T> sheet, AnchorageData data)
        where T : struct, IFormulaNumber<T>
    {
        sheet.Note(data.IsDuctile ? "The steel counts as ductile (2.3)." : "The steel counts as brittle (2.3).");
        return sheet.Factor("phi", data.IsDuctile ? 0.65 : 0.60, "Table 17.5.3(a)");
    }

    /// <summary>Table 17.5.3(a) of 318-19 and Table 21.2.1(k) of 318-25: anchor reinforcement.</summary>
    public static T Reinforcement<T>(Sheet<T> sheet, AnchorageData data)
        where T : struct, IFormulaNumber<T> =>
        data.Edition.Is2025 ? sheet.Factor("phi", 0.90, "Table 21.2.1(k)") : sheet.Factor("phi", 0.75, "17.5.2.1.1");

    /// <summary>Table 17.5.3(b): breakout in shear.</summary>
    public static T ConcreteShear<T>(Sheet<T> sheet, AnchorageData data)
        where T : struct, IFormulaNumber<T>
    {
        sheet.Note(data.HasSupplementaryShear ? "Supplementary reinforcement is present." : "Supplementary reinforcement is not present.");
        return sheet.Factor("phi", data.HasSupplementaryShear ? 0.75 : 0.70, "Table 17.5.3(b)");
    }

    /// <summary>Bearing and breakout of shear lugs (17.11.1).</summary>
    public static T ShearLug<T>(Sheet<T> sheet)
        where T : struct, IFormulaNumber<T> =>
        sheet.Factor("phi", 0.65, "17.11.1");

    /// <summary>Table 17.5.3(c): pryout.</summary>
    public static T Pryout<T>(Sheet<T> sheet)
        where T : struct, IFormulaNumber<T> =>
        sheet.Factor("phi", 0.70, "Table 17.5.3(c)");
}
