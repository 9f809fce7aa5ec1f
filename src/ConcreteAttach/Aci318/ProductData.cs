using ConcreteAttach.Calculation;
using ConcreteAttach.Fasteners;
using ConcreteAttach.Materials;
using ConcreteAttach.Quantities;

namespace ConcreteAttach.Aci318;

/// <summary>
/// The qualification of a post-installed fastener in the units of an edition, for the state of the concrete at hand: what the user gave, and the defaults of
/// the standard where it has them.
/// </summary>
internal sealed class ProductData
{
    private readonly List<string> _missing = [];
    private string? _pulloutGap;

    /// <exception cref="InputException">Data that cannot be true together, all of them in one error.</exception>
    public ProductData(PostInstalledFastener fastener, ConcreteMember member, Aci318Edition edition, bool isEarthquake)
    {
        MeasurementSystem system = edition.System;
        ProductQualification given = fastener.ProductQualification;
        RequireConsistent(fastener, edition);

        Fastener = fastener;
        IsAdhesive = fastener is AdhesiveFastener;
        (ConcreteFactor, PulloutFactor) = StrengthReduction.OfCategory(given.Category ?? 3, member.HasSupplementaryReinforcementForTension);
        FactorClause = $"Table 17.5.3, Category {QuantityText.Format(given.Category ?? 3)}";
        LightweightFactor = fastener is UndercutFastener ? 1 : 0.8;
        HasSeparatedSleeve = fastener is TorqueControlledExpansion { HasSeparatedSleeve: true };

        double? product = member.IsCracked ? given.BreakoutCoefficient?.Cracked : given.BreakoutCoefficient?.Uncracked;
        BreakoutCoefficient = product ?? edition.PostInstalledBreakout;
        IsBreakoutCoefficientOfProduct = product is not null;
        BreakoutCoefficientCracked = Math.Min(given.BreakoutCoefficient?.Cracked ?? edition.PostInstalledBreakout, edition.CastInBreakout);
        CriticalEdgeDistance = given.CriticalEdgeDistance?.In(system);
        SteelShear = given.SteelShear?.In(system);
        IsDuctile = given.IsDuctile;

        AggregateSize = member.AggregateSize?.In(system);
        MinimumSpacing = given.MinimumSpacing?.In(system);
        MinimumEdgeDistance = given.MinimumEdgeDistance?.In(system);
        MinimumThickness = given.MinimumThickness?.In(system);
        Depth = (given.HoleDepth ?? given.NominalEmbedment ?? fastener.EffectiveEmbedment).In(system);

        StateGap = given.IsForUncrackedConcreteOnly && member.IsCracked ? "The product is qualified for uncracked concrete alone, and the concrete is taken as cracked." : null;
        BreakoutGap = StateGap ?? (fastener is ScrewFastener ? ScrewLimits(fastener, edition) : null);
        if (given.Category is null)
        {
            _missing.Add("category");
        }

        switch (fastener)
        {
            case MechanicalFastener mechanical:
                TakePullout(mechanical.Qualification, member.IsCracked, system);
                break;
            case AdhesiveFastener adhesive:
                TakeBond(adhesive, member.IsCracked, edition);
                break;
        }

        if (isEarthquake)
        {
            TakeEarthquake(given.Seismic, system);
        }

        string? categoryGap = given.Category is null ? "The category of the product is not known: give category (17.5.3)." : null;
        BreakoutTensionGap = Joined(BreakoutGap, categoryGap);
        PulloutGap = StateGap ?? Joined(_pulloutGap, categoryGap);
        BondTensionGap = StateGap ?? Joined(BondGap, categoryGap);
    }

    public PostInstalledFastener Fastener { get; }

    public bool IsAdhesive { get; }

    /// <summary>φ of breakout and bond in tension; of no meaning where the category is not known.</summary>
    public double ConcreteFactor { get; }

    /// <summary>φ of pullout; of no meaning where the category is not known.</summary>
    public double PulloutFactor { get; }

    /// <summary>Where they come from.</summary>
    public string FactorClause { get; }

    /// <summary>λ_a / λ of concrete failure (Table 17.2.4.1).</summary>
    public double LightweightFactor { get; }

    /// <summary>Whether l_e is 2 d_a (17.7.2.2.1).</summary>
    public bool HasSeparatedSleeve { get; }

    /// <summary>k_c for the state of the concrete, before the limit of 17.6.2.2.2.</summary>
    public double BreakoutCoefficient { get; }

    /// <summary>Whether k_c is the product's own, so that ψ_c,N is 1.</summary>
    public bool IsBreakoutCoefficientOfProduct { get; }

    /// <summary>k_c that would count in cracked concrete, within the limit of 17.6.2.2.2.</summary>
    public double BreakoutCoefficientCracked { get; }

    /// <summary>c_ac of the product; null: by 17.9.5.</summary>
    public double? CriticalEdgeDistance { get; }

    /// <summary>c_ac / h_ef by 17.9.5.</summary>
    public double CriticalEdgeFactor => Fastener switch
    {
        UndercutFastener => 2.5,
        AdhesiveFastener => 2,
        _ => 4,
    };

    /// <summary>V_sa by tests; null: by the formula.</summary>
    public double? SteelShear { get; private set; }

    /// <summary>Whether the report calls the steel ductile; null: as the steel.</summary>
    public bool? IsDuctile { get; }

    public double? AggregateSize { get; }

    public double? MinimumSpacing { get; }

    public double? MinimumEdgeDistance { get; }

    public double? MinimumThickness { get; }

    /// <summary>How deep the hole reaches, as far as it is known: its depth, else the nominal, else the effective embedment.</summary>
    public double Depth { get; }

    /// <summary>Why breakout in tension and shear and pryout are not covered; null where they are.</summary>
    public string? BreakoutGap { get; }

    /// <summary>Why nothing that the concrete holds is covered, whatever the mode; null where that is not so.</summary>
    public string? StateGap { get; }

    /// <summary>Why breakout in tension is not covered; null where it is.</summary>
    public string? BreakoutTensionGap { get; }

    /// <summary>Why pullout is not covered; null where it is.</summary>
    public string? PulloutGap { get; }

    /// <summary>Why bond is not covered; null where it is.</summary>
    public string? BondTensionGap { get; }

    /// <summary>Whether tests have shown that pullout does not govern.</summary>
    public bool PulloutDoesNotGovern { get; private set; }

    /// <summary>N_p for the state of the concrete, at the strength of the tests; NaN where it is not known.</summary>
    public double Pullout { get; private set; } = double.NaN;

    /// <summary>f'c of the tests; null where N_p holds as it is.</summary>
    public double? PulloutAt { get; private set; }

    /// <summary>Exponent of f'c / f'c of the tests.</summary>
    public double PulloutExponent { get; private set; }

    /// <summary>τ for the state of the concrete, before the factor for sustained tension; NaN where it is not known.</summary>
    public double BondStress { get; private set; } = double.NaN;

    /// <summary>τ_cr; NaN where it is not known.</summary>
    public double BondStressCracked { get; private set; } = double.NaN;

    /// <summary>τ_uncr, which c_Na needs in any case; NaN where it is not known.</summary>
    public double BondStressUncracked { get; private set; } = double.NaN;

    /// <summary>The conditions of the table of minimum bond stresses; null where the bond stress is the product's own.</summary>
    public MinimumBondStress? MinimumBond { get; private set; }

    /// <summary>Why bond has no nominal strength, and so pryout neither; null where it has.</summary>
    public string? BondGap { get; private set; }

    /// <summary>Why the steel has no strength in shear; null where it has.</summary>
    public string? SteelShearGap { get; private set; }

    /// <summary>Factor of the table of minimum bond stresses for earthquake; 1 without (Table 17.6.5.2.5).</summary>
    public double EarthquakeBondFactor { get; private set; } = 1;

    /// <summary>Data without a default that were not given, by their names in an input.</summary>
    public IReadOnlyList<string> Missing => _missing;

    private static string? Joined(string? first, string? second) => first is null ? second : second is null ? first : $"{first} {second}";

    private static void RequireConsistent(PostInstalledFastener fastener, Aci318Edition edition)
    {
        List<(string Found, string Permitted)> contradictions = [.. fastener.Contradictions()];
        if (fastener.ProductQualification.BreakoutCoefficient is { } kc && kc.System != edition.System)
        {
            contradictions.Add(($"k_c with {ConstantsOf(kc.System)} constants", $"k_c with {edition.Constants} constants"));
        }

        if (contradictions.Count > 0)
        {
            throw new InputException("qualification", string.Join("; ", contradictions.Select(c => c.Found)), string.Join("; ", contradictions.Select(c => c.Permitted)));
        }
    }

    private static string ConstantsOf(MeasurementSystem system) => system == MeasurementSystem.PoundInch ? "inch-pound" : "SI";

    private static string? ScrewLimits(PostInstalledFastener fastener, Aci318Edition edition)
    {
        double hef = fastener.EffectiveEmbedment.In(edition.System);
        double da = fastener.Diameter.In(edition.System);
        return Limit.IsBelow(hef, edition.SmallestScrewEmbedment) ? $"h_ef is less than {QuantityText.Format(edition.SmallestScrewEmbedment, Dimension.Length, edition.System)} (17.3.4)."
            : Limit.IsBelow(hef, 5 * da) ? "h_ef is less than 5 d_a (17.3.4)."
            : Limit.IsBelow(10 * da, hef) ? "h_ef is more than 10 d_a (17.3.4)."
            : null;
    }

    private void TakePullout(MechanicalQualification given, bool isCracked, MeasurementSystem system)
    {
        PulloutDoesNotGovern = given.Pullout is { DoesNotGovern: true };
        if (PulloutDoesNotGovern)
        {
            return;
        }

        if ((isCracked ? given.Pullout?.Cracked : given.Pullout?.Uncracked) is not { } strength)
        {
            string name = isCracked ? "pullout.cracked" : "pullout.uncracked";
            _missing.Add(name);
            _pulloutGap = $"N_p is known from tests alone (17.6.3.2.1): give {name}.";
            return;
        }

        Pullout = strength.In(system);
        PulloutAt = given.Pullout!.At?.In(system);
        PulloutExponent = given.Pullout.Exponent;
    }

    private void TakeBond(AdhesiveFastener fastener, bool isCracked, Aci318Edition edition)
    {
        double cracked = double.NaN;
        switch (fastener.Qualification.BondStress)
        {
            case ProductBondStress product:
                cracked = product.Cracked?.In(edition.System) ?? double.NaN;
                BondStressUncracked = product.Uncracked?.In(edition.System) ?? double.NaN;
                break;
            case MinimumBondStress minimum:
                bool isIndoor = minimum.Environment == BondEnvironment.Indoor;
                MinimumBond = minimum;
                cracked = isIndoor ? edition.IndoorBondCracked : edition.OutdoorBondCracked;
                BondStressUncracked = isIndoor ? edition.IndoorBondUncracked : edition.OutdoorBondUncracked;
                break;
        }

        BondStressCracked = cracked;
        BondStress = isCracked ? cracked : BondStressUncracked;
        string[] missing =
        [
            .. double.IsNaN(BondStress) && isCracked ? ["bondStress.cracked"] : Array.Empty<string>(),
            .. double.IsNaN(BondStressUncracked) ? ["bondStress.uncracked"] : Array.Empty<string>(),
        ];
        _missing.AddRange(missing);
        double hef = fastener.EffectiveEmbedment.In(edition.System);
        double da = fastener.Diameter.In(edition.System);
        BondGap = missing.Length > 0 ? $"The characteristic bond stress is not known: give {string.Join(" and ", missing)} (17.6.5.1.2, 17.6.5.2)."
            : Limit.IsBelow(hef, 4 * da) ? "h_ef is less than 4 d_a (17.3.3)."
            : Limit.IsBelow(20 * da, hef) ? "h_ef is more than 20 d_a (17.3.3)."
            : null;
    }

    /// <summary>
    /// What the product was shown to hold under earthquake takes the place of what it holds otherwise; a datum that its report does not state is not known. Without any, 17.10.3 is not met and
    /// the values stay.
    /// </summary>
    private void TakeEarthquake(SeismicQualification? given, MeasurementSystem system)
    {
        if (MinimumBond is not null)
        {
            // Table 17.6.5.2.5: 0.8 for cracked, 0.4 for uncracked concrete.
            EarthquakeBondFactor = BondStress == BondStressCracked ? 0.8 : 0.4;
        }

        if (given is null)
        {
            return;
        }

        SteelShear = given.SteelShear?.In(system);
        SteelShearGap = SteelShear is null ? NotStated("seismic.steelShear", "V_sa") : null;
        if (IsAdhesive && MinimumBond is null)
        {
            BondStress = BondStressCracked = given.BondStress?.In(system) ?? double.NaN;
            BondGap ??= double.IsNaN(BondStress) ? NotStated("seismic.bondStress", "The bond stress") : null;
        }
        else if (!IsAdhesive && !PulloutDoesNotGovern)
        {
            Pullout = given.Pullout?.In(system) ?? double.NaN;
            _pulloutGap = double.IsNaN(Pullout) ? NotStated("seismic.pullout", "N_p") : null;
        }
    }

    private string NotStated(string name, string symbol)
    {
        _missing.Add(name);
        return $"{symbol} under earthquake is known from tests alone (17.10.3): give {name}.";
    }
}
