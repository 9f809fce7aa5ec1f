using System.Runtime.CompilerServices;
using ConcreteAttach.Calculation;
using ConcreteAttach.Geometry;
using ConcreteAttach.Quantities;
using ConcreteAttach.Verification;

namespace ConcreteAttach.Aci318;

/// <summary>17.6.5 Bond strength of adhesive anchors in tension, and 17.5.2.2 sustained tension.</summary>
internal static class Bond
{
    public static readonly ModeName Name = new(FailureModeKind.Bond, "17.6.5", "phi N_a", "N_ua_g");

    /// <summary>The mode of the fastener with the most sustained tension.</summary>
    public static readonly ModeName Sustained = new(FailureModeKind.BondSustained, "17.5.2.2", "phi_s N_ba", "N_ua_s");

    private static readonly AreaClauses Area = new(
        "17.6.5.1.1", "17.6.5.1.1, rectangle about the squares", "17.6.5.1.1, union of the squares about the fasteners, from the drawing",
        "17.6.5.1.1, what the squares about the fasteners reach of the outline, from the drawing");

    /// <summary>Symbol of λ_a of bond on a sheet of its own, and beside the λ_a of breakout in pryout.</summary>
    public const string LightweightId = "lambda_a";
    public const string LightweightInPryoutId = "lambda_a_Na";

    /// <summary>N_a of one fastener, N_ag of a group (17.6.5.1).</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="data">The attachment.</param>
    /// <param name="group">The fasteners.</param>
    /// <param name="isSustained">Whether the design includes sustained tension.</param>
    /// <param name="lightweightId">Symbol of λ_a.</param>
    /// <param name="scratch">Working memory of <see cref="ProjectedArea.ScratchLength"/>.</param>
    public static T NominalStrength<T>(Sheet<T> sheet, AnchorageData data, in BreakoutGroup group, bool isSustained, string lightweightId, Span<double> scratch)
        where T : struct, IFormulaNumber<T>
    {
        BondTerms<T> terms = group.IsWhole && !sheet.IsRecording && data.Whole is { } whole ? whole.Bond.As<T>() : Terms(sheet, data, group, scratch);
        T nba = BasicStrength(sheet, data, isSustained, lightweightId);
        if (group.Count == 1)
        {
            return sheet.Step("N_a", terms.Areas * terms.PsiEd * terms.PsiCp * nba, Dimension.Force, "17.6.5.1a");
        }

        T psiEc = EccentricityFactor(sheet, group, terms.Reach);
        return sheet.Step("N_a", terms.Areas * psiEc * terms.PsiEd * terms.PsiCp * nba, Dimension.Force, "17.6.5.1b, group: N_ag");
    }

    /// <summary>Everything but N_ba and the eccentricity: it depends neither on the load nor on its duration. Of all fasteners <see cref="WholeGroup"/> keeps it.</summary>
    public static BondTerms<T> Terms<T>(Sheet<T> sheet, AnchorageData data, in BreakoutGroup group, Span<double> scratch)
        where T : struct, IFormulaNumber<T>
    {
        ProductData product = data.Product!;
        T cna = sheet.IsRecording ? CriticalDistance(sheet, data, product) : T.Literal(data.BondReach);
        T anao = 4 * T.Power(cna, 2, 1);
        T ana = InfluenceArea.Of(sheet, data, group, cna, anao, "A_Na", Area, scratch);
        anao = sheet.Step("A_Nao", T.Power(2 * cna, 2, 1), Dimension.Area, "17.6.5.1.2a");
        T psiEd = EdgeFactor(sheet, group, cna);
        T psiCp = Splitting.Factor(sheet, data, product, group.Edges.Smallest, cna, Splitting.Bond);
        return new(cna, ana / anao, psiEd, psiCp);
    }

    /// <summary>N_ba of one fastener (17.6.5.2.1).</summary>
    public static T BasicStrength<T>(Sheet<T> sheet, AnchorageData data, bool isSustained, string lightweightId = LightweightId)
        where T : struct, IFormulaNumber<T>
    {
        T lambdaA = ConcreteStrength.LightweightBond(sheet, data, lightweightId);
        T tau = BondStress(sheet, data, data.Product!, isSustained);
        T pi = sheet.Given("pi", Math.PI, Dimension.None);
        T da = sheet.Given("d_a", data.Diameter, Dimension.Length);
        T hef = sheet.Given("h_ef", data.Embedment, Dimension.Length);
        return sheet.Step("N_ba", lambdaA * tau * pi * da * hef, Dimension.Force, data.IsCracked ? "17.6.5.2.1" : "17.6.5.2.1, 17.6.5.2.3, uncracked");
    }

    /// <summary>
    /// c_Na (17.6.5.1.2b), with τ_uncr of the product or the table whether the concrete is cracked or not: the factor of the table for sustained tension lowers
    /// the strength, not the reach. No group changes it, so that the fast path takes it from the prepared data.
    /// </summary>
    public static T CriticalDistance<T>(Sheet<T> sheet, AnchorageData data, ProductData product)
        where T : struct, IFormulaNumber<T>
    {
        T da = sheet.Given("d_a", data.Diameter, Dimension.Length);
        T uncracked = sheet.Given("tau_uncr", product.BondStressUncracked, Dimension.Stress, product.MinimumBond is null ? "of the product" : "Table 17.6.5.2.5");
        T reference = T.Literal(data.Edition.ReferenceBond);
        return sheet.Step("c_Na", 10 * da * T.Sqrt(uncracked / reference), Dimension.Length, "17.6.5.1.2b");
    }

    /// <summary>τ_cr or τ_uncr; the value of the table times 0.4 where the design includes sustained tension (Table 17.6.5.2.5).</summary>
    private static T BondStress<T>(Sheet<T> sheet, AnchorageData data, ProductData product, bool isSustained)
        where T : struct, IFormulaNumber<T>
    {
        T tau = sheet.Given(data.IsCracked ? "tau_cr" : "tau_uncr", product.BondStress, Dimension.Stress, product.MinimumBond is null ? "of the product" : "Table 17.6.5.2.5");
        if (product.EarthquakeBondFactor != 1)
        {
            tau = sheet.Step("tau_e", product.EarthquakeBondFactor * tau, Dimension.Stress, "Table 17.6.5.2.5, earthquake");
        }

        return product.MinimumBond is not null && isSustained
            ? sheet.Step("tau_s", 0.4 * tau, Dimension.Stress, "Table 17.6.5.2.5, sustained tension")
            : tau;
    }

    /// <summary>ψ_ec,Na about both axes (17.6.5.3.1).</summary>
    private static T EccentricityFactor<T>(Sheet<T> sheet, in BreakoutGroup group, T cna)
        where T : struct, IFormulaNumber<T>
    {
        T ex = sheet.Given("e'_N_x", group.EccentricityX, Dimension.Length, "resultant of the forces to the centroid of the group");
        T ey = sheet.Given("e'_N_y", group.EccentricityY, Dimension.Length);
        return sheet.Factor("psi_ec_Na", 1 / (1 + (ex / cna)) * (1 / (1 + (ey / cna))), "17.6.5.3.1");
    }

    /// <summary>ψ_ed,Na (17.6.5.4.1).</summary>
    private static T EdgeFactor<T>(Sheet<T> sheet, in BreakoutGroup group, T cna)
        where T : struct, IFormulaNumber<T>
    {
        if (double.IsPositiveInfinity(group.Edges.Smallest))
        {
            sheet.Note("No edge within reach.");
            return sheet.Factor("psi_ed_Na", 1, "17.6.5.4.1a");
        }

        T caMin = sheet.Given("c_a_min", group.Edges.Smallest, Dimension.Length);
        return sheet.When(caMin >= cna)
            ? sheet.Factor("psi_ed_Na", 1, "17.6.5.4.1a")
            : sheet.Factor("psi_ed_Na", 0.7 + (0.3 * (caMin / cna)), "17.6.5.4.1b");
    }
}

/// <summary>What the bond strength of a group is made of, N_ba and its eccentricity apart.</summary>
/// <param name="Reach">c_Na.</param>
/// <param name="Areas">A_Na / A_Nao.</param>
/// <param name="PsiEd">ψ_ed,Na.</param>
/// <param name="PsiCp">ψ_cp,Na.</param>
internal readonly record struct BondTerms<T>(T Reach, T Areas, T PsiEd, T PsiCp)
    where T : struct, IFormulaNumber<T>
{
    /// <summary>The same in another number type.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public BondTerms<TOther> As<TOther>()
        where TOther : struct, IFormulaNumber<TOther> =>
        new(TOther.Literal(Reach.Value), TOther.Literal(Areas.Value), TOther.Literal(PsiEd.Value), TOther.Literal(PsiCp.Value));
}
