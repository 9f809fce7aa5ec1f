using System.Runtime.CompilerServices;
using ConcreteAttach.Calculation;
using ConcreteAttach.Distribution;
using ConcreteAttach.Quantities;
using ConcreteAttach.Verification;

namespace ConcreteAttach.Aci318;

/// <summary>17.6.2 Concrete breakout strength of anchors in tension.</summary>
internal static class ConcreteBreakoutTension
{
    /// <summary>Why breakout and pryout are not covered for thick fasteners.</summary>
    public const string TooThick = "The diameter exceeds the largest one that the breakout formulas cover (17.3.2).";

    public static readonly ModeName Name = new(FailureModeKind.ConcreteBreakoutTension, "17.6.2", "phi N_cb", "N_ua_g");

    private static readonly AreaClauses Area = new(
        "17.6.2.1.1", "17.6.2.1.1, rectangle about the squares", "17.6.2.1.1, union of the squares about the fasteners, from the drawing",
        "17.6.2.1.1, what the squares about the fasteners reach of the outline, from the drawing");

    /// <summary>N_cb of one fastener, N_cbg of a group (17.6.2.1).</summary>
    public static T NominalStrength<T>(Sheet<T> sheet, AnchorageData data, in BreakoutGroup group, Span<double> scratch, in LoadState state = default)
        where T : struct, IFormulaNumber<T>
    {
        BreakoutTerms<T> terms = group.IsWhole && !sheet.IsRecording && data.Whole is { } whole ? whole.Breakout.As<T>() : Terms(sheet, data, group, scratch);
        if (data.Edition.Is2025)
        {
            return HeldDown(sheet, group, terms, state.Couple);
        }

        if (group.Count == 1)
        {
            return sheet.Step("N_cb", terms.Areas * terms.PsiEd * terms.PsiC * terms.PsiCp * terms.Basic, Dimension.Force, "17.6.2.1a");
        }

        T psiEc = EccentricityFactor(sheet, group, terms.Embedment);
        return sheet.Step("N_cb", terms.Areas * psiEc * terms.PsiEd * terms.PsiC * terms.PsiCp * terms.Basic, Dimension.Force, "17.6.2.1b, group: N_cbg");
    }

    /// <summary>The same by ACI 318-25: times ψ_cm,N.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)] // costs the other editions nothing
    private static T HeldDown<T>(Sheet<T> sheet, in BreakoutGroup group, BreakoutTerms<T> terms, PlateCouple couple)
        where T : struct, IFormulaNumber<T>
    {
        T psiEc = group.Count == 1 ? T.Literal(1) : EccentricityFactor(sheet, group, terms.Embedment);
        T psiCm = Edition2025.CompressionFactor(sheet, group, terms.Embedment, couple);
        return group.Count == 1
            ? sheet.Step("N_cb", terms.Areas * terms.PsiEd * terms.PsiC * terms.PsiCp * psiCm * terms.Basic, Dimension.Force, "17.6.2.1a")
            : sheet.Step("N_cb", terms.Areas * psiEc * terms.PsiEd * terms.PsiC * terms.PsiCp * psiCm * terms.Basic, Dimension.Force, "17.6.2.1b, group: N_cbg");
    }

    /// <summary>Everything but the eccentricity: it does not depend on the load. Of all fasteners <see cref="WholeGroup"/> keeps it.</summary>
    public static BreakoutTerms<T> Terms<T>(Sheet<T> sheet, AnchorageData data, in BreakoutGroup group, Span<double> scratch)
        where T : struct, IFormulaNumber<T>
    {
        T fc = ConcreteStrength.Limited(sheet, data);
        T lambdaA = ConcreteStrength.LightweightConcrete(sheet, data);
        T hef = EffectiveEmbedment(sheet, data, group);

        T anc = InfluenceArea.Of(sheet, data, group, 1.5 * hef, 9 * T.Power(hef, 2, 1), "A_Nc", Area, scratch);
        T anco = sheet.Step("A_Nco", 9 * T.Power(hef, 2, 1), Dimension.Area, "17.6.2.1.4");
        T psiEd = EdgeFactor(sheet, data, group, hef);
        T psiC = CrackingFactor(sheet, data);
        T psiCp = data.Product is { } product
            ? Splitting.Factor(sheet, data, product, group.Edges.Smallest, 1.5 * sheet.Given("h_ef", data.Embedment, Dimension.Length), Splitting.Breakout)
            : sheet.Factor("psi_cp_N", 1, "17.6.2.6.2, cast-in");
        T nb = BasicStrength(sheet, data, fc, lambdaA, hef);
        return new(hef, anc / anco, psiEd, psiC, psiCp, nb);
    }

    /// <summary>h_ef, or h'_ef where three or more edges are close (17.6.2.1.2).</summary>
    private static T EffectiveEmbedment<T>(Sheet<T> sheet, AnchorageData data, in BreakoutGroup group)
        where T : struct, IFormulaNumber<T>
    {
        T hef = sheet.Given("h_ef", data.Embedment, Dimension.Length);
        return group.Edges.Close < 3 ? hef : ReducedEmbedment(sheet, data, group, hef);
    }

    private static T ReducedEmbedment<T>(Sheet<T> sheet, AnchorageData data, in BreakoutGroup group, T hef)
        where T : struct, IFormulaNumber<T>
    {
        sheet.Note(group.Edges.Close == 3 ? "Three edges are closer than 1.5 h_ef: 17.6.2.1.2 applies." : "Four edges are closer than 1.5 h_ef: 17.6.2.1.2 applies.");
        T caMax = sheet.Given("c_a_max", group.Edges.LargestClose, Dimension.Length, "largest edge distance not above 1.5 h_ef");
        if (group.Count == 1)
        {
            return sheet.Step("h_ef'", caMax / 1.5, Dimension.Length, "17.6.2.1.2");
        }

        T s = sheet.Given("s", group.Edges.LargestSpacing, Dimension.Length, "largest spacing between adjacent fasteners");
        T reduced = T.Max(caMax / 1.5, s / 3);
        if (reduced.Value > data.Embedment)
        {
            sheet.Note("The limit never raises the embedment: at most h_ef.");
            reduced = T.Min(reduced, hef);
        }

        return sheet.Step("h_ef'", reduced, Dimension.Length, "17.6.2.1.2");
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
        if (double.IsPositiveInfinity(group.Edges.Smallest))
        {
            sheet.Note("No edge within reach.");
            return sheet.Factor("psi_ed_N", 1, "17.6.2.4.1a");
        }

        T caMin = sheet.Given("c_a_min", group.Edges.Smallest, Dimension.Length);
        return sheet.When(caMin >= 1.5 * hef)
            ? sheet.Factor("psi_ed_N", 1, "17.6.2.4.1a")
            : sheet.Factor("psi_ed_N", 0.7 + (0.3 * (caMin / (1.5 * hef))), "17.6.2.4.1b");
    }

    /// <summary>ψ_c,N (17.6.2.5.1); 1 with the k_c of a product for uncracked concrete.</summary>
    private static T CrackingFactor<T>(Sheet<T> sheet, AnchorageData data)
        where T : struct, IFormulaNumber<T>
    {
        if (data.IsCracked)
        {
            return sheet.Factor("psi_c_N", 1, "17.6.2.5.1, cracked");
        }

        return data.Product is not { } product ? sheet.Factor("psi_c_N", 1.25, "17.6.2.5.1, uncracked, cast-in")
            : product.IsBreakoutCoefficientOfProduct ? sheet.Factor("psi_c_N", 1, "17.6.2.5.1, k_c of the product for uncracked concrete")
            : sheet.Factor("psi_c_N", 1.4, "17.6.2.5.1, uncracked, post-installed");
    }

    /// <summary>N_b of one fastener in cracked concrete (17.6.2.2).</summary>
    private static T BasicStrength<T>(Sheet<T> sheet, AnchorageData data, T fc, T lambdaA, T hef)
        where T : struct, IFormulaNumber<T>
    {
        Aci318Edition edition = data.Edition;
        if (data.Product is { } product)
        {
            T own = BreakoutCoefficient(sheet, edition, product);
            return sheet.Step("N_b", own * lambdaA * T.Sqrt(fc) * T.Power(hef, 3, 2), Dimension.Force, "17.6.2.2.1");
        }

        if (data.IsHeaded && sheet.When(hef >= T.Literal(edition.DeepFrom), "17.6.2.2.3") && (data.Options.Deep == DeepReading.Extend || sheet.When(hef <= T.Literal(edition.DeepTo), "17.6.2.2.3")))
        {
            return sheet.Step("N_b", edition.DeepBreakout * lambdaA * T.Sqrt(fc) * T.Power(hef, 5, 3), Dimension.Force, "17.6.2.2.3");
        }

        T kc = sheet.Given("k_c", edition.CastInBreakout, Dimension.None, "17.6.2.2.1, cast-in");
        return sheet.Step("N_b", kc * lambdaA * T.Sqrt(fc) * T.Power(hef, 3, 2), Dimension.Force, "17.6.2.2.1");
    }

    /// <summary>k_c of a post-installed fastener: of the product, at most that of a cast-in one (17.6.2.2.2), else the default.</summary>
    private static T BreakoutCoefficient<T>(Sheet<T> sheet, Aci318Edition edition, ProductData product)
        where T : struct, IFormulaNumber<T>
    {
        T kc = sheet.Given("k_c", product.BreakoutCoefficient, Dimension.None, product.IsBreakoutCoefficientOfProduct ? "17.6.2.2.2, of the product" : "17.6.2.2.1, post-installed");
        if (product.BreakoutCoefficient <= edition.CastInBreakout)
        {
            return kc;
        }

        sheet.Note("17.6.2.2.2 limits the k_c of a product to that of a cast-in fastener.");
        return sheet.Factor("k_c_lim", T.Min(kc, T.Literal(edition.CastInBreakout)), "17.6.2.2.2");
    }
}

/// <summary>What the breakout strength in tension of a group is made of, its eccentricity apart.</summary>
/// <param name="Embedment">h_ef or h'_ef.</param>
/// <param name="Areas">A_Nc / A_Nco.</param>
/// <param name="PsiEd">ψ_ed,N.</param>
/// <param name="PsiC">ψ_c,N.</param>
/// <param name="PsiCp">ψ_cp,N.</param>
/// <param name="Basic">N_b.</param>
internal readonly record struct BreakoutTerms<T>(T Embedment, T Areas, T PsiEd, T PsiC, T PsiCp, T Basic)
    where T : struct, IFormulaNumber<T>
{
    /// <summary>The same in another number type.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public BreakoutTerms<TOther> As<TOther>()
        where TOther : struct, IFormulaNumber<TOther> =>
        new(TOther.Literal(Embedment.Value), TOther.Literal(Areas.Value), TOther.Literal(PsiEd.Value), TOther.Literal(PsiC.Value), TOther.Literal(PsiCp.Value), TOther.Literal(Basic.Value));
}
