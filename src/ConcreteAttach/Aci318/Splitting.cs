using ConcreteAttach.Calculation;
using ConcreteAttach.Fasteners;
using ConcreteAttach.Quantities;

namespace ConcreteAttach.Aci318;

/// <summary>17.6.2.6 and 17.6.5.5 Splitting of uncracked concrete by post-installed fasteners near an edge: ψ_cp, the same rule for breakout and for bond.</summary>
internal static class Splitting
{
    /// <summary>Symbols and clauses of ψ_cp,N.</summary>
    public static readonly SplittingName Breakout = new(
        "psi_cp_N", "17.6.2.6.1a", "17.6.2.6.1b", "17.6.2.6.2, cracked", "17.6.2.6.2, reinforcement controls splitting");

    /// <summary>Symbols and clauses of ψ_cp,Na.</summary>
    public static readonly SplittingName Bond = new(
        "psi_cp_Na", "17.6.5.5.1a", "17.6.5.5.1b", "17.6.5.5.2, cracked", "17.6.5.5.2, reinforcement controls splitting");

    /// <summary>ψ_cp: 1, or in uncracked concrete without reinforcement against splitting max(c_a,min, reach) / c_ac, at most 1.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="data">The attachment.</param>
    /// <param name="product">Its product.</param>
    /// <param name="smallestEdge">c_a,min; infinite without an edge.</param>
    /// <param name="reach">1.5 h_ef with the actual h_ef, or c_Na.</param>
    /// <param name="name">Symbols and clauses.</param>
    public static T Factor<T>(Sheet<T> sheet, AnchorageData data, ProductData product, double smallestEdge, T reach, SplittingName name)
        where T : struct, IFormulaNumber<T>
    {
        if (data.IsCracked || data.HasSplittingReinforcement)
        {
            return sheet.Factor(name.Id, 1, data.IsCracked ? name.Cracked : name.Reinforced);
        }

        if (double.IsPositiveInfinity(smallestEdge))
        {
            return sheet.Factor(name.Id, 1, name.Far);
        }

        T cac = CriticalEdgeDistance(sheet, data, product);
        T caMin = sheet.Given("c_a_min", smallestEdge, Dimension.Length);
        return sheet.When(caMin >= cac)
            ? sheet.Factor(name.Id, 1, name.Far)
            : sheet.Factor(name.Id, T.Min(T.Max(caMin, reach) / cac, T.Literal(1)), name.Near);
    }

    /// <summary>c_ac: of the product, else by 17.9.5.</summary>
    private static T CriticalEdgeDistance<T>(Sheet<T> sheet, AnchorageData data, ProductData product)
        where T : struct, IFormulaNumber<T>
    {
        if (product.CriticalEdgeDistance is { } own)
        {
            return sheet.Given("c_ac", own, Dimension.Length, "critical edge distance of the product");
        }

        T hef = sheet.Given("h_ef", data.Embedment, Dimension.Length);
        return sheet.Step("c_ac", product.CriticalEdgeFactor * hef, Dimension.Length, product.Fastener switch
        {
            UndercutFastener => "17.9.5, undercut",
            AdhesiveFastener => "17.9.5, adhesive",
            ScrewFastener => "17.9.5, screw",
            TorqueControlledExpansion => "17.9.5, torque-controlled expansion",
            _ => "17.9.5, displacement-controlled expansion",
        });
    }

    /// <summary>
    /// The breakout strength that a group would have in cracked concrete over the one it has uncracked: above 1 where splitting makes the uncracked assumption
    /// the weaker one. NaN where that cannot be.
    /// </summary>
    public static double CrackedOverUncracked(AnchorageData data, in BreakoutGroup group)
    {
        if (data.Product is not { } product || !Counts(data, group))
        {
            return double.NaN;
        }

        double splitting = Factor<PlainNumber>(default, data, product, group.Edges.Smallest, new(1.5 * data.Embedment), Breakout).Value;
        double uncracked = Math.Min(product.BreakoutCoefficient, data.Edition.CastInBreakout) * (product.IsBreakoutCoefficientOfProduct ? 1 : 1.4);
        return product.BreakoutCoefficientCracked / (uncracked * splitting);
    }

    /// <summary>The same of the bond strength.</summary>
    public static double CrackedOverUncrackedBond(AnchorageData data, in BreakoutGroup group) =>
        data.Product is { } product && Counts(data, group)
            ? product.BondStressCracked / (product.BondStressUncracked * Factor<PlainNumber>(default, data, product, group.Edges.Smallest, new(data.BondReach), Bond).Value)
            : double.NaN;

    private static bool Counts(AnchorageData data, in BreakoutGroup group) =>
        !data.IsCracked && !data.HasSplittingReinforcement && !double.IsPositiveInfinity(group.Edges.Smallest);
}

/// <summary>Symbols and clauses of a splitting factor: made once, so that the fast path carries one reference.</summary>
/// <param name="Id">The factor.</param>
/// <param name="Far">c_a,min at least c_ac.</param>
/// <param name="Near">c_a,min less than c_ac.</param>
/// <param name="Cracked">Cracked concrete.</param>
/// <param name="Reinforced">Reinforcement that controls splitting.</param>
internal sealed record SplittingName(string Id, string Far, string Near, string Cracked, string Reinforced);
