using ConcreteAttach.Calculation;

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

    /// <summary>Table 17.5.3(b): breakout and side-face blowout of cast-in fasteners.</summary>
    public static T ConcreteTension<T>(Sheet<T> sheet, AnchorageData data)
        where T : struct, IFormulaNumber<T>
    {
        sheet.Note(data.HasSupplementaryTension ? "Supplementary reinforcement is present." : "Supplementary reinforcement is not present.");
        return sheet.Factor("phi", data.HasSupplementaryTension ? 0.75 : 0.70, "Table 17.5.3(b)");
    }

    /// <summary>Table 17.5.3(c): pullout of cast-in fasteners.</summary>
    public static T PulloutCastIn<T>(Sheet<T> sheet)
        where T : struct, IFormulaNumber<T> =>
        sheet.Factor("phi", 0.70, "Table 17.5.3(c)");

    /// <summary>Table 17.5.3(a): steel in shear.</summary>
    public static T SteelShear<T>(Sheet<T> sheet, AnchorageData data)
        where T : struct, IFormulaNumber<T>
    {
        sheet.Note(data.IsDuctile ? "The steel counts as ductile (2.3)." : "The steel counts as brittle (2.3).");
        return sheet.Factor("phi", data.IsDuctile ? 0.65 : 0.60, "Table 17.5.3(a)");
    }

    /// <summary>Table 17.5.3(b): breakout in shear.</summary>
    public static T ConcreteShear<T>(Sheet<T> sheet, AnchorageData data)
        where T : struct, IFormulaNumber<T>
    {
        sheet.Note(data.HasSupplementaryShear ? "Supplementary reinforcement is present." : "Supplementary reinforcement is not present.");
        return sheet.Factor("phi", data.HasSupplementaryShear ? 0.75 : 0.70, "Table 17.5.3(b)");
    }

    /// <summary>Table 17.5.3(c): pryout.</summary>
    public static T Pryout<T>(Sheet<T> sheet)
        where T : struct, IFormulaNumber<T> =>
        sheet.Factor("phi", 0.70, "Table 17.5.3(c)");
}
