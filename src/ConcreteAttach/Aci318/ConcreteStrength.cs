using ConcreteAttach.Calculation;
using ConcreteAttach.Materials;
using ConcreteAttach.Quantities;

namespace ConcreteAttach.Aci318;

/// <summary>17.3.1 Limit on the concrete strength, and 17.2.4 lightweight concrete.</summary>
internal static class ConcreteStrength
{
    /// <summary>f'c as it may be used in the formulas (17.3.1).</summary>
    public static T Limited<T>(Sheet<T> sheet, AnchorageData data)
        where T : struct, IFormulaNumber<T>
    {
        T strength = sheet.Given("f'_c", data.Strength, Dimension.Stress);
        T limit = T.Literal(data.LargestStrength);
        if (data.Strength <= data.LargestStrength)
        {
            return strength;
        }

        sheet.Note("17.3.1 limits the concrete strength that the formulas may use.");
        return sheet.Step("f'_c_lim", T.Min(strength, limit), Dimension.Stress, "17.3.1");
    }

    /// <summary>
    /// λ_a of concrete failure: 1.0 λ, or 0.8 λ for expansion, screw and adhesive fasteners (Table 17.2.4.1). The table is one for lightweight concrete: in
    /// normalweight concrete λ_a is 1 for all.
    /// </summary>
    public static T LightweightConcrete<T>(Sheet<T> sheet, AnchorageData data)
        where T : struct, IFormulaNumber<T>
    {
        T lambda = Lightweight(sheet, data);
        return data.Product is not { } product ? sheet.Factor("lambda_a", lambda, "Table 17.2.4.1, cast-in")
            : product.LightweightFactor == 1 ? sheet.Factor("lambda_a", lambda, "Table 17.2.4.1, undercut")
            : data.IsLightweight ? sheet.Factor("lambda_a", product.LightweightFactor * lambda, "Table 17.2.4.1, expansion, screw and adhesive")
            : sheet.Factor("lambda_a", lambda, "17.2.4.1, normalweight");
    }

    /// <summary>λ_a of the concrete at a shear lug: that of cast-in anchors, whatever the fasteners are (Table 17.2.4.1).</summary>
    public static T LightweightAtLug<T>(Sheet<T> sheet, AnchorageData data)
        where T : struct, IFormulaNumber<T> => sheet.Factor("lambda_a", Lightweight(sheet, data), "Table 17.2.4.1, as cast-in");

    /// <summary>λ_a of bond failure: 0.6 λ in lightweight concrete (Table 17.2.4.1).</summary>
    public static T LightweightBond<T>(Sheet<T> sheet, AnchorageData data, string id)
        where T : struct, IFormulaNumber<T>
    {
        T lambda = Lightweight(sheet, data);
        return data.IsLightweight ? sheet.Factor(id, 0.6 * lambda, "Table 17.2.4.1, bond") : sheet.Factor(id, lambda, "17.2.4.1, normalweight");
    }

    /// <summary>Whether a concrete is lightweight: by its class, or by a density up to that of Table 19.2.4.1(b).</summary>
    public static bool IsLightweight(ConcreteDensity density, double value, Aci318Edition edition) =>
        density.Value is null ? density != ConcreteDensity.Normalweight : !Limit.IsBelow(edition.DensityNormalweight, value);

    /// <summary>λ of a concrete that is given by its class (Table 19.2.4.1(a)); NaN where it is given by its density. Compares texts: once, not in each formula.</summary>
    public static double LightweightOfClass(ConcreteDensity density) =>
        density.Value is not null ? double.NaN
        : density == ConcreteDensity.AllLightweight ? 0.75
        : density == ConcreteDensity.SandLightweight ? 0.85
        : 1;

    /// <summary>λ of the concrete (19.2.4.1).</summary>
    private static T Lightweight<T>(Sheet<T> sheet, AnchorageData data)
        where T : struct, IFormulaNumber<T>
    {
        return double.IsNaN(data.LightweightOfClass)
            ? LightweightOfDensity(sheet, data)
            : sheet.Given("lambda", data.LightweightOfClass, Dimension.None, sheet.IsRecording ? $"Table 19.2.4.1(a), {data.Density.Name}" : null);
    }

    private static T LightweightOfDensity<T>(Sheet<T> sheet, AnchorageData data)
        where T : struct, IFormulaNumber<T>
    {
        T wc = sheet.Given("w_c", data.DensityValue, Dimension.Density);
        if (sheet.When(wc <= T.Literal(data.Edition.DensityAllLightweight)))
        {
            return sheet.Factor("lambda", 0.75, "Table 19.2.4.1(b)");
        }

        return sheet.When(wc <= T.Literal(data.Edition.DensityNormalweight))
            ? sheet.Factor("lambda", T.Min(data.Edition.DensitySlope * wc, T.Literal(1)), "Table 19.2.4.1(b)")
            : sheet.Factor("lambda", 1, "Table 19.2.4.1(b)");
    }
}
