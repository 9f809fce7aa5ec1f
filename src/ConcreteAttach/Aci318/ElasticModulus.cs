using ConcreteAttach.Calculation;
using ConcreteAttach.Materials;
using ConcreteAttach.Quantities;

namespace ConcreteAttach.Aci318;

/// <summary>19.2.2 Modulus of elasticity of concrete, 20.2.2.2 of steel.</summary>
internal static class ElasticModulus
{
    /// <summary>Whether 19.2.2.1 gives E_c of this concrete: normalweight, or of a density within its range.</summary>
    public static bool IsKnown(AnchorageData data) => double.IsNaN(data.DensityValue)
        ? data.Density == ConcreteDensity.Normalweight
        : !Limit.IsBelow(data.DensityValue, data.Edition.DensityOfModulusFrom) && !Limit.IsBelow(data.Edition.DensityOfModulusTo, data.DensityValue);

    /// <summary>n = E_s/E_c.</summary>
    public static T ModularRatio<T>(Sheet<T> sheet, AnchorageData data)
        where T : struct, IFormulaNumber<T>
    {
        T es = sheet.Given("E_s", data.Edition.SteelModulus, Dimension.Stress, "20.2.2.2");
        return sheet.Factor("n_m", es / Concrete(sheet, data), "E_s/E_c");
    }

    /// <summary>E_c: by density (19.2.2.1a), of normalweight concrete (19.2.2.1b).</summary>
    private static T Concrete<T>(Sheet<T> sheet, AnchorageData data)
        where T : struct, IFormulaNumber<T>
    {
        T fc = sheet.Given("f'_c", data.Strength, Dimension.Stress);
        if (double.IsNaN(data.DensityValue))
        {
            return sheet.Step("E_c", data.Edition.ModulusOfNormalweight * T.Sqrt(fc), Dimension.Stress, "19.2.2.1b");
        }

        T wc = sheet.Given("w_c", data.DensityValue, Dimension.Density);
        return sheet.Step("E_c", data.Edition.ModulusByDensity * T.Power(wc, 3, 2) * T.Sqrt(fc), Dimension.Stress, "19.2.2.1a");
    }
}
