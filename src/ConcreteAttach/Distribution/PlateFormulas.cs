using ConcreteAttach.Calculation;
using ConcreteAttach.Quantities;

namespace ConcreteAttach.Distribution;

/// <summary>
/// The formulas of a rigid plate on concrete, common to all methods: the stiffness of a fastener against that of the concrete, and the force that the plane gives it. What the plane is, <see cref="RigidPlate"/> finds.
/// </summary>
internal static class PlateFormulas
{
    /// <summary>What the sheets cite.</summary>
    public const string Source = "plane sections; ACI 318-19 17.2.1";

    /// <summary>κ with plane strains: n A_se.</summary>
    public static T StrainCompatibility<T>(Sheet<T> sheet, T modularRatio, double tensileArea)
        where T : struct, IFormulaNumber<T> =>
        sheet.Step("kappa", modularRatio * sheet.Given("A_se_N", tensileArea, Dimension.Area), Dimension.Area, Source);

    /// <summary>κ of a spring E_s A_se / L over a bed E_c / h_b: n A_se h_b / L.</summary>
    public static T ElasticBed<T>(Sheet<T> sheet, T modularRatio, double tensileArea, double bedDepth, double stretchLength)
        where T : struct, IFormulaNumber<T>
    {
        T area = sheet.Given("A_se_N", tensileArea, Dimension.Area);
        T depth = sheet.Given("h_b", bedDepth, Dimension.Length, "depth of the elastic bed");
        T length = sheet.Given("l_s", stretchLength, Dimension.Length, "stretch length of a fastener");
        return sheet.Step("kappa", modularRatio * area * depth / length, Dimension.Area, Source);
    }

    /// <summary>Force on a fastener where the plane is negative.</summary>
    public static T Tension<T>(T kappa, T p0, T px, T py, T x, T y)
        where T : struct, IFormulaNumber<T> => -1 * (kappa * (p0 + (px * x) + (py * y)));
}
