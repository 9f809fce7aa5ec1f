using ConcreteAttach.Calculation;
using ConcreteAttach.Geometry;
using ConcreteAttach.Quantities;

namespace ConcreteAttach.Aci318;

/// <summary>What breaks out before one edge: a lug, or along an edge lugs that act together.</summary>
/// <param name="Side">The edge.</param>
/// <param name="EdgeDistance">c_a1: from the bearing face, along an edge from the middle of the lug.</param>
/// <param name="Extent">Of the lugs along the edge.</param>
/// <param name="LowSide">From the lugs to the side edge where places fall; infinite without one.</param>
/// <param name="HighSide">The same where places grow.</param>
/// <param name="EffectiveDepth">h_ef,sl.</param>
/// <param name="Area">A_ef,sl.</param>
internal readonly record struct LugBreakout(ConcreteSide Side, double EdgeDistance, double Extent, double LowSide, double HighSide, double EffectiveDepth, double Area);

/// <summary>17.11.3 Concrete breakout of shear lugs, toward an edge and along it.</summary>
internal static class ShearLugBreakout
{
    /// <summary>V_cb,sl: 17.7.2 with V_b of 17.7.2.2.1b.</summary>
    /// <remarks>
    /// Along an edge 17.7.2.1c doubles it, with c_a1 to the middle of the lug. Of that area as well A_ef,sl is taken off: a reading to the safe side, as the clause does not repeat how the area is found.
    /// </remarks>
    public static T NominalStrength<T>(Sheet<T> sheet, AnchorageData data, in LugBreakout body, bool isParallel)
        where T : struct, IFormulaNumber<T>
    {
        T fc = ConcreteStrength.Limited(sheet, data);
        T lambdaA = ConcreteStrength.LightweightAtLug(sheet, data);
        T ha = sheet.Given("h_a", data.Thickness, Dimension.Length);
        T ca1 = ConcreteBreakoutShear.EdgeDistance(sheet, body.EdgeDistance, Math.Max(body.LowSide, body.HighSide), double.NaN, ha);
        T avc = ProjectedArea(sheet, body, isParallel, ca1, ha);
        T avco = sheet.Step("A_Vco", 4.5 * T.Power(ca1, 2, 1), Dimension.Area, "17.7.2.1.3");
        T psiEc = sheet.Factor("psi_ec_V", 1, isParallel ? "17.11.3.2" : "17.7.2.3.1, the bearing is even");
        T psiEd = ConcreteBreakoutShear.EdgeFactor(sheet, Math.Min(body.LowSide, body.HighSide), isParallel, ca1);
        T psiC = ConcreteBreakoutShear.CrackingFactor(sheet, data);
        T psiH = ConcreteBreakoutShear.ThicknessFactor(sheet, ca1, ha);
        T vb = sheet.Step("V_b", ConcreteBreakoutShear.UpperLimit(data.Edition, fc, lambdaA, ca1), Dimension.Force, "17.11.3.1 with 17.7.2.2.1b");
        return isParallel
            ? sheet.Step("V_cb_sl", 2 * (avc / avco * psiEc * psiEd * psiC * psiH * vb), Dimension.Force, "17.11.3.2 with 17.7.2.1c")
            : sheet.Step("V_cb_sl", avc / avco * psiEc * psiEd * psiC * psiH * vb, Dimension.Force, "17.11.3.1 with 17.7.2.1b");
    }

    /// <summary>A_Vc: 1.5 c_a1 to both sides of the lug and below h_ef,sl, cut at the sides and the far face, less A_ef,sl (17.11.3.1).</summary>
    private static T ProjectedArea<T>(Sheet<T> sheet, in LugBreakout body, bool isParallel, T ca1, T ha)
        where T : struct, IFormulaNumber<T>
    {
        double reach = 1.5 * ca1.Value;
        (string lowId, string highId) = body.Side.IsAlongX() ? ("c_-y", "c_+y") : ("c_-x", "c_+x");
        T low = body.LowSide < reach ? sheet.Given(lowId, body.LowSide, Dimension.Length, "to the side edge, from the lug") : 1.5 * ca1;
        T high = body.HighSide < reach ? sheet.Given(highId, body.HighSide, Dimension.Length, "to the side edge, from the lug") : 1.5 * ca1;
        T extent = sheet.Given(isParallel ? "l_sl" : "w_sl", body.Extent, Dimension.Length, isParallel ? "of the lugs along the edge" : "width of the lug");
        T depth = sheet.Given("h_ef_sl", body.EffectiveDepth, Dimension.Length, "depth of the effective bearing");
        T area = sheet.Given("A_ef_sl", body.Area, Dimension.Area, "17.11.2.1.1, see bearing");
        return sheet.Step("A_Vc", ((low + extent + high) * T.Min(depth + (1.5 * ca1), ha)) - area, Dimension.Area, "17.11.3.1");
    }
}
