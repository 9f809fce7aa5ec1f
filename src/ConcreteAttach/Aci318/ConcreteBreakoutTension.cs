using System.Runtime.CompilerServices;
using ConcreteAttach.Calculation;
using ConcreteAttach.Geometry;
using ConcreteAttach.Quantities;
using ConcreteAttach.Verification;

namespace ConcreteAttach.Aci318;

/// <summary>17.6.2 Concrete breakout strength of anchors in tension.</summary>
internal static class ConcreteBreakoutTension
{
    /// <summary>Why breakout and pryout are not covered for thick fasteners.</summary>
    public const string TooThick = "The diameter exceeds the largest one that the breakout formulas cover (17.3.2).";

    public static readonly ModeName Name = new(FailureModeKind.ConcreteBreakoutTension, "17.6.2", "phi N_cb", "N_ua_g");

    /// <summary>N_cb of one fastener, N_cbg of a group (17.6.2.1).</summary>
    public static T NominalStrength<T>(Sheet<T> sheet, AnchorageData data, in BreakoutGroup group, Span<double> scratch)
        where T : struct, IFormulaNumber<T>
    {
        T fc = ConcreteStrength.CastIn(sheet, data);
        T lambdaA = ConcreteStrength.LightweightCastIn(sheet, data);
        T hef = EffectiveEmbedment(sheet, data, group);

        T anc = ProjectedArea(sheet, data, group, hef, scratch);
        T anco = sheet.Step("A_Nco", 9 * T.Power(hef, 2, 1), Dimension.Area, "17.6.2.1.4");
        T psiEd = EdgeFactor(sheet, data, group, hef);
        T psiC = CrackingFactor(sheet, data);
        T psiCp = sheet.Factor("psi_cp_N", 1, "17.6.2.6.2, cast-in");
        T nb = BasicStrength(sheet, data, fc, lambdaA, hef);
        if (group.Count == 1)
        {
            return sheet.Step("N_cb", anc / anco * psiEd * psiC * psiCp * nb, Dimension.Force, "17.6.2.1a");
        }

        T psiEc = EccentricityFactor(sheet, group, hef);
        return sheet.Step("N_cb", anc / anco * psiEc * psiEd * psiC * psiCp * nb, Dimension.Force, "17.6.2.1b, group: N_cbg");
    }

    /// <summary>h_ef, or h'_ef where three or more edges are close (17.6.2.1.2).</summary>
    private static T EffectiveEmbedment<T>(Sheet<T> sheet, AnchorageData data, in BreakoutGroup group)
        where T : struct, IFormulaNumber<T>
    {
        T hef = sheet.Given("h_ef", data.Embedment, Dimension.Length);
        return group.CloseEdges < 3 ? hef : ReducedEmbedment(sheet, data, group, hef);
    }

    private static T ReducedEmbedment<T>(Sheet<T> sheet, AnchorageData data, in BreakoutGroup group, T hef)
        where T : struct, IFormulaNumber<T>
    {
        sheet.Note(group.CloseEdges == 3 ? "Three edges are closer than 1.5 h_ef: 17.6.2.1.2 applies." : "Four edges are closer than 1.5 h_ef: 17.6.2.1.2 applies.");
        T caMax = sheet.Given("c_a_max", group.LargestCloseEdge, Dimension.Length, "largest edge distance not above 1.5 h_ef");
        if (group.Count == 1)
        {
            return sheet.Step("h_ef'", caMax / 1.5, Dimension.Length, "17.6.2.1.2");
        }

        T s = sheet.Given("s", group.LargestSpacing, Dimension.Length, "largest spacing between adjacent fasteners");
        T reduced = T.Max(caMax / 1.5, s / 3);
        if (reduced.Value > data.Embedment)
        {
            sheet.Note("The limit never raises the embedment: at most h_ef.");
            reduced = T.Min(reduced, hef);
        }

        return sheet.Step("h_ef'", reduced, Dimension.Length, "17.6.2.1.2");
    }

    /// <summary>A_Nc: what 1.5 h_ef about the fasteners covers of the surface, at most n A_Nco (17.6.2.1.1).</summary>
    private static T ProjectedArea<T>(Sheet<T> sheet, AnchorageData data, in BreakoutGroup group, T hef, Span<double> scratch)
        where T : struct, IFormulaNumber<T>
    {
        double reach = 1.5 * hef.Value;
        if (data.Outline is { } outline)
        {
            return ProjectedAreaIn(outline, sheet, data, group, hef);
        }

        // One square is a rectangle wherever it is cut; of several it has to be found out.
        Projection projection = group.Count == 1 ? default : Geometry.ProjectedArea.Project(group.X, group.Y, group.Extent, reach, data.Concrete, scratch);
        bool isRectangle = group.Count == 1 || projection.IsRectangle;
        bool isBounding = !isRectangle && data.Options.Area == AreaReading.Bounding;
        if (!isRectangle && !isBounding)
        {
            return sheet.Given("A_Nc", projection.Area, Dimension.Area, "17.6.2.1.1, union of the squares about the fasteners, from the drawing");
        }

        return RectangularArea(sheet, group, hef, data.Concrete, isBounding);
    }

    /// <summary>A_Nc in an outline: what the squares reach of the concrete that their fasteners see.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)] // outlines are rare: they cost the common path nothing
    private static T ProjectedAreaIn<T>(FastenersInOutline outline, Sheet<T> sheet, AnchorageData data, in BreakoutGroup group, T hef)
        where T : struct, IFormulaNumber<T>
    {
        double reach = 1.5 * hef.Value;
        Projection projection = outline.Project(group.Members, reach);
        bool isBounding = !projection.IsRectangle && data.Options.Area == AreaReading.Bounding;
        if (!projection.IsRectangle && !isBounding)
        {
            return sheet.Given("A_Nc", projection.Area, Dimension.Area, "17.6.2.1.1, what the squares about the fasteners reach of the outline, from the drawing");
        }

        // Where the area ends at 1.5 h_ef there is no edge.
        ref readonly Rectangle extent = ref group.Extent;
        (double left, double right, double bottom, double top) = projection.Bounds;
        var edges = new Rectangle(
            Limit.IsBelow(extent.Left - left, reach) ? left : double.NegativeInfinity,
            Limit.IsBelow(right - extent.Right, reach) ? right : double.PositiveInfinity,
            Limit.IsBelow(extent.Bottom - bottom, reach) ? bottom : double.NegativeInfinity,
            Limit.IsBelow(top - extent.Top, reach) ? top : double.PositiveInfinity);
        return RectangularArea(sheet, group, hef, edges, isBounding);
    }

    private static T RectangularArea<T>(Sheet<T> sheet, in BreakoutGroup group, T hef, in Rectangle concrete, bool isBounding)
        where T : struct, IFormulaNumber<T>
    {
        T width = Extent(sheet, hef, group.Extent.Left - concrete.Left, group.Extent.Width, concrete.Right - group.Extent.Right, "c_-x", "s_x", "c_+x");
        T height = Extent(sheet, hef, group.Extent.Bottom - concrete.Bottom, group.Extent.Height, concrete.Top - group.Extent.Top, "c_-y", "s_y", "c_+y");
        double ceiling = group.Count * 9 * hef.Value * hef.Value;
        if (isBounding && width.Value * height.Value > ceiling)
        {
            T n = sheet.Given("n", group.Count, Dimension.None);
            return sheet.Step("A_Nc", T.Min(width * height, n * (9 * T.Power(hef, 2, 1))), Dimension.Area, "17.6.2.1.1, rectangle about the squares");
        }

        return sheet.Step("A_Nc", width * height, Dimension.Area, "17.6.2.1.1");
    }

    /// <summary>One side of a rectangular projected area: to the edge or 1.5 h_ef, whichever is less, on both sides of the outer fasteners.</summary>
    private static T Extent<T>(Sheet<T> sheet, T hef, double toLow, double span, double toHigh, string lowId, string spanId, string highId)
        where T : struct, IFormulaNumber<T>
    {
        double reach = 1.5 * hef.Value;
        T low = toLow < reach ? sheet.Given(lowId, toLow, Dimension.Length, "to the edge, from the outermost fastener") : 1.5 * hef;
        T high = toHigh < reach ? sheet.Given(highId, toHigh, Dimension.Length, "to the edge, from the outermost fastener") : 1.5 * hef;
        return span > 0 ? low + sheet.Given(spanId, span, Dimension.Length, "between the outer fasteners") + high : low + high;
    }

    /// <summary>ψ_ec,N about both axes (17.6.2.3.1).</summary>
    private static T EccentricityFactor<T>(Sheet<T> sheet, in BreakoutGroup group, T hef)
        where T : struct, IFormulaNumber<T>
    {
        T ex = sheet.Given("e'_N_x", group.EccentricityX, Dimension.Length, "resultant of the forces to the centroid of the group");
        T ey = sheet.Given("e'_N_y", group.EccentricityY, Dimension.Length);
        return sheet.Factor("psi_ec_N", 1 / (1 + (ex / (1.5 * hef))) * (1 / (1 + (ey / (1.5 * hef)))), "17.6.2.3.1");
    }

    /// <summary>ψ_ed,N (17.6.2.4.1).</summary>
    private static T EdgeFactor<T>(Sheet<T> sheet, AnchorageData data, in BreakoutGroup group, T hef)
        where T : struct, IFormulaNumber<T>
    {
        if (double.IsPositiveInfinity(group.SmallestEdge))
        {
            sheet.Note("No edge within reach.");
            return sheet.Factor("psi_ed_N", 1, "17.6.2.4.1a");
        }

        T caMin = sheet.Given("c_a_min", group.SmallestEdge, Dimension.Length);
        return sheet.When(caMin >= 1.5 * hef)
            ? sheet.Factor("psi_ed_N", 1, "17.6.2.4.1a")
            : sheet.Factor("psi_ed_N", 0.7 + (0.3 * (caMin / (1.5 * hef))), "17.6.2.4.1b");
    }

    /// <summary>ψ_c,N of cast-in fasteners (17.6.2.5.1).</summary>
    private static T CrackingFactor<T>(Sheet<T> sheet, AnchorageData data)
        where T : struct, IFormulaNumber<T> =>
        sheet.Factor("psi_c_N", data.IsCracked ? 1 : 1.25, data.IsCracked ? "17.6.2.5.1, cracked" : "17.6.2.5.1, uncracked, cast-in");

    /// <summary>N_b of one fastener in cracked concrete (17.6.2.2).</summary>
    private static T BasicStrength<T>(Sheet<T> sheet, AnchorageData data, T fc, T lambdaA, T hef)
        where T : struct, IFormulaNumber<T>
    {
        Aci318Edition edition = data.Edition;
        if (data.IsHeaded && sheet.When(hef >= T.Literal(edition.DeepFrom), "17.6.2.2.3") && (data.Options.Deep == DeepReading.Extend || sheet.When(hef <= T.Literal(edition.DeepTo), "17.6.2.2.3")))
        {
            return sheet.Step("N_b", edition.DeepBreakout * lambdaA * T.Sqrt(fc) * T.Power(hef, 5, 3), Dimension.Force, "17.6.2.2.3");
        }

        T kc = sheet.Given("k_c", edition.CastInBreakout, Dimension.None, "17.6.2.2.1, cast-in");
        return sheet.Step("N_b", kc * lambdaA * T.Sqrt(fc) * T.Power(hef, 3, 2), Dimension.Force, "17.6.2.2.1");
    }
}
