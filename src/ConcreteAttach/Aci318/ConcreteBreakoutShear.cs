using ConcreteAttach.Calculation;
using ConcreteAttach.Geometry;
using ConcreteAttach.Materials;
using ConcreteAttach.Quantities;
using ConcreteAttach.Verification;

namespace ConcreteAttach.Aci318;

/// <summary>17.7.2 Concrete breakout strength of anchors in shear, toward an edge and along it.</summary>
internal static class ConcreteBreakoutShear
{
    /// <summary>Why breakout toward a side is not covered in an outline.</summary>
    public const string NoEdgeFaced = "A fastener faces no side of the outline that its shear points to, so there is no straight edge that 17.7.2 could be applied to.";

    /// <summary>The mode toward an edge.</summary>
    public static readonly ModeName Toward = new(FailureModeKind.ConcreteBreakoutShear, "17.7.2", "phi V_cb", "V_ua_g");

    /// <summary>The mode along an edge.</summary>
    public static readonly ModeName Along = new(FailureModeKind.ConcreteBreakoutParallel, "17.7.2", "phi V_cb", "V_ua_g");

    /// <summary>V_cb of one fastener, V_cbg of several in a row (17.7.2.1).</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="data">The attachment.</param>
    /// <param name="edge">The edge.</param>
    /// <param name="part">The fasteners.</param>
    /// <param name="isParallel">Whether the shear runs along the edge.</param>
    public static T NominalStrength<T>(Sheet<T> sheet, AnchorageData data, ConcreteEdge edge, in ShearPart part, bool isParallel)
        where T : struct, IFormulaNumber<T>
    {
        T fc = ConcreteStrength.Limited(sheet, data);
        T lambdaA = ConcreteStrength.LightweightConcrete(sheet, data);
        T ha = sheet.Given("h_a", data.Thickness, Dimension.Length);
        T ca1 = EdgeDistance(sheet, part.EdgeDistance, Math.Max(part.LowSide, part.HighSide), part.Count > 1 ? part.LargestGap : double.NaN, ha);

        T avc = ProjectedArea(sheet, edge, part, ca1, ha);
        T avco = sheet.Step("A_Vco", 4.5 * T.Power(ca1, 2, 1), Dimension.Area, "17.7.2.1.3");
        T psiEd = EdgeFactor(sheet, Math.Min(part.LowSide, part.HighSide), isParallel, ca1);
        T psiC = CrackingFactor(sheet, data);
        T psiH = ThicknessFactor(sheet, ca1, ha);
        T vb = BasicStrength(sheet, data, part, fc, lambdaA, ca1);
        if (part.Count == 1)
        {
            return isParallel
                ? sheet.Step("V_cb", 2 * (avc / avco * psiEd * psiC * psiH * vb), Dimension.Force, "17.7.2.1c, along the edge")
                : sheet.Step("V_cb", avc / avco * psiEd * psiC * psiH * vb, Dimension.Force, "17.7.2.1a");
        }

        T psiEc = EccentricityFactor(sheet, part, ca1);
        return isParallel
            ? sheet.Step("V_cb", 2 * (avc / avco * psiEc * psiEd * psiC * psiH * vb), Dimension.Force, "17.7.2.1c, along the edge, group: V_cbg")
            : sheet.Step("V_cb", avc / avco * psiEc * psiEd * psiC * psiH * vb, Dimension.Force, "17.7.2.1b, group: V_cbg");
    }

    /// <summary>c_a1, or c'_a1 in a narrow and thin member (17.7.2.1.2).</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="edgeDistance">c_a1.</param>
    /// <param name="largestSide">Distance to the farther side edge.</param>
    /// <param name="largestGap">Largest spacing along the edge; NaN for one fastener or lug.</param>
    /// <param name="ha">h_a.</param>
    public static T EdgeDistance<T>(Sheet<T> sheet, double edgeDistance, double largestSide, double largestGap, T ha)
        where T : struct, IFormulaNumber<T>
    {
        T ca1 = sheet.Given("c_a1", edgeDistance, Dimension.Length);
        if (!Limit.IsBelow(largestSide, 1.5 * edgeDistance) || !sheet.When(ha < 1.5 * ca1))
        {
            return ca1;
        }

        sheet.Note("Both side edges and the thickness are less than 1.5 c_a1: 17.7.2.1.2 applies.");
        T ca2Max = sheet.Given("c_a2_max", largestSide, Dimension.Length);
        if (double.IsNaN(largestGap))
        {
            return sheet.Step("c_a1'", T.Max(ca2Max / 1.5, ha / 1.5), Dimension.Length, "17.7.2.1.2");
        }

        T s = sheet.Given("s", largestGap, Dimension.Length, "largest spacing along the edge");
        return sheet.Step("c_a1'", T.Max(T.Max(ca2Max / 1.5, ha / 1.5), s / 3), Dimension.Length, "17.7.2.1.2");
    }

    /// <summary>A_Vc: 1.5 c_a1 to both sides of the outer fasteners and 1.5 c_a1 deep, cut at the sides and the far face (17.7.2.1.1).</summary>
    private static T ProjectedArea<T>(Sheet<T> sheet, ConcreteEdge edge, in ShearPart part, T ca1, T ha)
        where T : struct, IFormulaNumber<T>
    {
        double reach = 1.5 * ca1.Value;
        T low = part.LowSide < reach ? sheet.Given(edge.LowId, part.LowSide, Dimension.Length, "to the side edge, from the outermost fastener") : 1.5 * ca1;
        T high = part.HighSide < reach ? sheet.Given(edge.HighId, part.HighSide, Dimension.Length, "to the side edge, from the outermost fastener") : 1.5 * ca1;
        T width = part.Span > 0
            ? low + sheet.Given(edge.SpanId, part.Span, Dimension.Length, "between the outer fasteners") + high
            : low + high;
        return sheet.Step("A_Vc", width * T.Min(1.5 * ca1, ha), Dimension.Area, "17.7.2.1.1");
    }

    /// <summary>ψ_ec,V (17.7.2.3.1).</summary>
    private static T EccentricityFactor<T>(Sheet<T> sheet, in ShearPart part, T ca1)
        where T : struct, IFormulaNumber<T>
    {
        T e = sheet.Given("e'_V", part.Eccentricity, Dimension.Length, "resultant of the shear to the centroid of the fasteners");
        return sheet.Factor("psi_ec_V", 1 / (1 + (e / (1.5 * ca1))), "17.7.2.3.1");
    }

    /// <summary>ψ_ed,V (17.7.2.4.1); 1 for shear along the edge (17.7.2.1c).</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="nearest">Distance to the nearer side edge; infinite without one.</param>
    /// <param name="isParallel">Whether the shear runs along the edge.</param>
    /// <param name="ca1">c_a1.</param>
    public static T EdgeFactor<T>(Sheet<T> sheet, double nearest, bool isParallel, T ca1)
        where T : struct, IFormulaNumber<T>
    {
        if (double.IsPositiveInfinity(nearest))
        {
            sheet.Note("No side edge within reach.");
            return sheet.Factor("psi_ed_V", 1, isParallel ? "17.7.2.1c" : "17.7.2.4.1a");
        }

        T ca2 = sheet.Given("c_a2", nearest, Dimension.Length);
        if (isParallel)
        {
            return sheet.Factor("psi_ed_V", 1, "17.7.2.1c");
        }

        return sheet.When(ca2 >= 1.5 * ca1)
            ? sheet.Factor("psi_ed_V", 1, "17.7.2.4.1a")
            : sheet.Factor("psi_ed_V", 0.7 + (0.3 * (ca2 / (1.5 * ca1))), "17.7.2.4.1b");
    }

    /// <summary>ψ_c,V (17.7.2.5.1).</summary>
    public static T CrackingFactor<T>(Sheet<T> sheet, AnchorageData data)
        where T : struct, IFormulaNumber<T>
    {
        if (!data.IsCracked)
        {
            return sheet.Factor("psi_c_V", 1.4, "17.7.2.5.1, uncracked");
        }

        return data.EdgeReinforcement switch
        {
            EdgeReinforcement.Bar => sheet.Factor("psi_c_V", 1.2, "Table 17.7.2.5.1, cracked, edge bar"),
            EdgeReinforcement.BarAndStirrups => sheet.Factor("psi_c_V", 1.4, "Table 17.7.2.5.1, cracked, edge bar in stirrups"),
            _ => sheet.Factor("psi_c_V", 1, "Table 17.7.2.5.1, cracked, no edge bar"),
        };
    }

    /// <summary>ψ_h,V (17.7.2.6.1).</summary>
    public static T ThicknessFactor<T>(Sheet<T> sheet, T ca1, T ha)
        where T : struct, IFormulaNumber<T> =>
        sheet.When(ha < 1.5 * ca1)
            ? sheet.Factor("psi_h_V", T.Sqrt(1.5 * ca1 / ha), "17.7.2.6.1")
            : sheet.Factor("psi_h_V", 1, "17.7.2.6.1");

    /// <summary>
    /// (l_e/d_a)^0.2 √d_a of V_b. No row or edge changes it and the power costs as much as the rest of V_b, so that the fast path takes it from the
    /// prepared data.
    /// </summary>
    public static T ShankFactor<T>(Sheet<T> sheet, AnchorageData data)
        where T : struct, IFormulaNumber<T>
    {
        T hef = sheet.Given("h_ef", data.Embedment, Dimension.Length);
        T da = sheet.Given("d_a", data.Diameter, Dimension.Length);
        T le = data.Product is { HasSeparatedSleeve: true }
            ? sheet.Step("l_e", 2 * da, Dimension.Length, "17.7.2.2.1, distance sleeve separated from the expansion sleeve")
            : sheet.Step("l_e", T.Min(hef, 8 * da), Dimension.Length, "17.7.2.2.1");
        return T.Power(le / da, 0.2) * T.Sqrt(da);
    }

    /// <summary>V_b that no diameter exceeds (17.7.2.2.1b); of a shear lug V_b itself (17.11.3).</summary>
    public static T UpperLimit<T>(Aci318Edition edition, T fc, T lambdaA, T ca1)
        where T : struct, IFormulaNumber<T> => edition.ShearBreakoutLimit * lambdaA * T.Sqrt(fc) * T.Power(ca1, 3, 2);

    /// <summary>V_b of one fastener in cracked concrete (17.7.2.2).</summary>
    private static T BasicStrength<T>(Sheet<T> sheet, AnchorageData data, in ShearPart part, T fc, T lambdaA, T ca1)
        where T : struct, IFormulaNumber<T>
    {
        Aci318Edition edition = data.Edition;
        T shank = sheet.IsRecording ? ShankFactor(sheet, data) : T.Literal(data.ShankFactor);
        double coefficient = part.IsWeldedStud ? edition.ShearBreakoutWelded : edition.ShearBreakout;
        T first = sheet.Step(
            "V_b_a",
            coefficient * shank * lambdaA * T.Sqrt(fc) * T.Power(ca1, 3, 2),
            Dimension.Force,
            part.IsWeldedStud ? "17.7.2.2.2" : "17.7.2.2.1a");
        T second = sheet.Step("V_b_b", UpperLimit(edition, fc, lambdaA, ca1), Dimension.Force, "17.7.2.2.1b");
        return sheet.Step("V_b", T.Min(first, second), Dimension.Force, part.IsWeldedStud ? "17.7.2.2.2" : "17.7.2.2.1");
    }
}
