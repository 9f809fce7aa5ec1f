using ConcreteAttach.Quantities;

namespace ConcreteAttach.Aci318;

/// <summary>
/// An edition of ACI 318 with one of its printed sets of constants. The formulas are the same for all; what is printed differently stands here, once.
/// </summary>
/// <remarks>
/// The SI constants are those of ACI 318M, rounded by the committee: one fastener may get up to about 3 % another strength than from the inch-pound
/// constants. They are never converted from each other.
/// </remarks>
public sealed class Aci318Edition
{
    private Aci318Edition(int year, string constants, MeasurementSystem system)
    {
        Year = year;
        Standard = $"ACI 318-{QuantityText.Format(year % 100)}";
        Constants = constants;
        System = system;
    }

    /// <summary>ACI 318-19, inch-pound constants.</summary>
    /// <remarks>Constants from memory of ACI 318-19; each agrees with the SI constant within its rounding.</remarks>
    public static readonly Aci318Edition InchPound2019 = InchPound(2019);

    /// <summary>ACI 318-19 with the SI constants of ACI 318M-19.</summary>
    /// <remarks>
    /// k_c, the deep breakout, blowout, shear and steel constants and the limits of strength, diameter and embedment were read in secondary notes on
    /// ACI 318M-19, as were the bond stresses of Table 17.6.5.2.5 with their conditions; the limits of welded studs, density and pryout, the 100 mm of
    /// 17.9.4 and the elastic moduli are from memory.
    /// </remarks>
    public static readonly Aci318Edition Si2019 = Si(2019);

    /// <summary>ACI 318-25, inch-pound constants, as far as its changes are known.</summary>
    /// <remarks>
    /// Known from secondary notes: φ of the concrete for non-redundant fasteners, ψ_a of cast-in fasteners in tension, ψ_cm,N, that the SI constants of 17.6 and 17.7 and 17.6.4, 17.9.5, 17.10.5 and 17.11 did not
    /// change. What needs another new value, such as the φ of steel, is not covered: no result under this edition holds as a whole.
    /// </remarks>
    public static readonly Aci318Edition InchPound2025 = InchPound(2025);

    /// <summary>ACI 318-25, SI constants, as far as its changes are known; see <see cref="InchPound2025"/>.</summary>
    public static readonly Aci318Edition Si2025 = Si(2025);

    private static Aci318Edition InchPound(int year) => new(year, "inch-pound", MeasurementSystem.PoundInch)
    {
        CastInBreakout = 24,
        PostInstalledBreakout = 17,
        DeepBreakout = 16,
        DeepFrom = 11,
        DeepTo = 25,
        Blowout = 160,
        ShearBreakout = 7,
        ShearBreakoutWelded = 8,
        ShearBreakoutLimit = 9,
        PryoutFrom = 2.5,
        VentHole = 1,
        WeldedPlateThickness = 0.375,
        WeldedStudSpacing = 2.5,
        LargestStrengthCastIn = 10_000,
        LargestStrengthPostInstalled = 8_000,
        SmallestScrewEmbedment = 1.5,
        ReferenceBond = 1_100,
        OutdoorBondCracked = 200,
        OutdoorBondUncracked = 650,
        IndoorBondCracked = 300,
        IndoorBondUncracked = 1_000,
        MinimumBondStrength = 2_500,
        BondTemperatures = new(Installation: 50, Outdoor: 175, Indoor: 110),
        DepthBehindEmbedment = 4,
        LargestDiameter = 4,
        LargestSteelStrength = 125_000,
        SmallestStructuralStrength = 2_500,
        DensityAllLightweight = 100,
        DensityNormalweight = 135,
        DensitySlope = 0.0075,
        SteelModulus = 29_000_000,
        ModulusOfNormalweight = 57_000,
        ModulusByDensity = 33,
        DensityOfModulusFrom = 90,
        DensityOfModulusTo = 160,
        Development = DevelopmentConstants.InchPound,
    };

    private static Aci318Edition Si(int year) => new(year, "SI", MeasurementSystem.NewtonMillimetre)
    {
        CastInBreakout = 10,
        PostInstalledBreakout = 7,
        DeepBreakout = 3.9,
        DeepFrom = 280,
        DeepTo = 635,
        Blowout = 13,
        ShearBreakout = 0.6,
        ShearBreakoutWelded = 0.66,
        ShearBreakoutLimit = 3.7,
        PryoutFrom = 65,
        VentHole = 25,
        WeldedPlateThickness = 10,
        WeldedStudSpacing = 65,
        LargestStrengthCastIn = 70,
        LargestStrengthPostInstalled = 55,
        SmallestScrewEmbedment = 40,
        ReferenceBond = 7.6,
        OutdoorBondCracked = 1.4,
        OutdoorBondUncracked = 4.5,
        IndoorBondCracked = 2.1,
        IndoorBondUncracked = 7,
        MinimumBondStrength = 17,
        BondTemperatures = new(Installation: 10, Outdoor: 79, Indoor: 43),
        DepthBehindEmbedment = 100,
        LargestDiameter = 100,
        LargestSteelStrength = 860,
        SmallestStructuralStrength = 17,
        DensityAllLightweight = 1600,
        DensityNormalweight = 2160,
        DensitySlope = 0.00047,
        SteelModulus = 200_000,
        ModulusOfNormalweight = 4_700,
        ModulusByDensity = 0.043,
        DensityOfModulusFrom = 1_440,
        DensityOfModulusTo = 2_560,
        Development = DevelopmentConstants.Si,
    };

    /// <summary>The year of the edition.</summary>
    internal int Year { get; }

    /// <summary>Whether the clauses are those of 2025.</summary>
    internal bool Is2025 => Year == 2025;

    /// <summary>The standard's designation, such as <c>ACI 318-19</c>.</summary>
    public string Standard { get; }

    /// <summary>Which printed set of constants: <c>inch-pound</c> or <c>SI</c>.</summary>
    public string Constants { get; }

    /// <summary>The units in which the constants hold.</summary>
    public MeasurementSystem System { get; }

    /// <summary>k_c of cast-in fasteners (17.6.2.2.1).</summary>
    internal double CastInBreakout { get; private init; }

    /// <summary>k_c of post-installed fasteners without data of their own (17.6.2.2.1).</summary>
    internal double PostInstalledBreakout { get; private init; }

    /// <summary>Coefficient of h_ef^(5/3) (17.6.2.2.3).</summary>
    internal double DeepBreakout { get; private init; }

    /// <summary>Least embedment of 17.6.2.2.3.</summary>
    internal double DeepFrom { get; private init; }

    /// <summary>Largest embedment of 17.6.2.2.3.</summary>
    internal double DeepTo { get; private init; }

    /// <summary>Coefficient of N_sb (17.6.4.1).</summary>
    internal double Blowout { get; private init; }

    /// <summary>Coefficient of V_b (17.7.2.2.1a).</summary>
    internal double ShearBreakout { get; private init; }

    /// <summary>Coefficient of V_b of studs welded to a plate (17.7.2.2.2).</summary>
    internal double ShearBreakoutWelded { get; private init; }

    /// <summary>Coefficient of the upper limit of V_b (17.7.2.2.1b).</summary>
    internal double ShearBreakoutLimit { get; private init; }

    /// <summary>Embedment from which k_cp is 2 (17.7.3.1).</summary>
    internal double PryoutFrom { get; private init; }

    /// <summary>Least hole beside a shear lug (17.11.1.2); from memory.</summary>
    internal double VentHole { get; private init; }

    /// <summary>Least thickness of the plate of welded studs, beside d_a/2 (17.7.2.2.2).</summary>
    internal double WeldedPlateThickness { get; private init; }

    /// <summary>Least spacing of welded studs (17.7.2.2.2).</summary>
    internal double WeldedStudSpacing { get; private init; }

    /// <summary>Largest f'c in formulas for cast-in fasteners (17.3.1).</summary>
    internal double LargestStrengthCastIn { get; private init; }

    /// <summary>Largest f'c in formulas for post-installed fasteners (17.3.1).</summary>
    internal double LargestStrengthPostInstalled { get; private init; }

    /// <summary>Least effective embedment of a screw (17.3.4).</summary>
    internal double SmallestScrewEmbedment { get; private init; }

    /// <summary>The bond stress in c_Na (17.6.5.1.2b).</summary>
    internal double ReferenceBond { get; private init; }

    /// <summary>τ_cr outdoor (Table 17.6.5.2.5).</summary>
    internal double OutdoorBondCracked { get; private init; }

    /// <summary>τ_uncr outdoor (Table 17.6.5.2.5).</summary>
    internal double OutdoorBondUncracked { get; private init; }

    /// <summary>τ_cr indoor (Table 17.6.5.2.5).</summary>
    internal double IndoorBondCracked { get; private init; }

    /// <summary>τ_uncr indoor (Table 17.6.5.2.5).</summary>
    internal double IndoorBondUncracked { get; private init; }

    /// <summary>Least f'c at installation for Table 17.6.5.2.5.</summary>
    internal double MinimumBondStrength { get; private init; }

    /// <summary>Temperatures of the concrete for Table 17.6.5.2.5, in °F or °C.</summary>
    internal BondTemperatures BondTemperatures { get; private init; } = null!;

    /// <summary>What stays of the member behind a post-installed fastener, beside a third of it (17.9.4).</summary>
    internal double DepthBehindEmbedment { get; private init; }

    /// <summary>Largest diameter that the breakout formulas cover (17.3.2).</summary>
    internal double LargestDiameter { get; private init; }

    /// <summary>Largest f_uta, beside 1.9 f_ya (17.6.1.2, 17.7.1.2).</summary>
    internal double LargestSteelStrength { get; private init; }

    /// <summary>Least f'c of structural concrete (19.2.1.1).</summary>
    internal double SmallestStructuralStrength { get; private init; }

    /// <summary>Density up to which λ is 0.75 (Table 19.2.4.1(b)).</summary>
    internal double DensityAllLightweight { get; private init; }

    /// <summary>Density above which λ is 1 (Table 19.2.4.1(b)).</summary>
    internal double DensityNormalweight { get; private init; }

    /// <summary>λ per unit of density between the two (Table 19.2.4.1(b)).</summary>
    internal double DensitySlope { get; private init; }

    /// <summary>E_s (20.2.2.2).</summary>
    internal double SteelModulus { get; private init; }

    /// <summary>Coefficient of E_c of normalweight concrete (19.2.2.1b).</summary>
    internal double ModulusOfNormalweight { get; private init; }

    /// <summary>Coefficient of E_c by density (19.2.2.1a).</summary>
    internal double ModulusByDensity { get; private init; }

    /// <summary>Least density for which 19.2.2.1a gives E_c.</summary>
    internal double DensityOfModulusFrom { get; private init; }

    /// <summary>Largest density for which 19.2.2.1a gives E_c.</summary>
    internal double DensityOfModulusTo { get; private init; }

    /// <summary>Constants of 25.4.</summary>
    internal DevelopmentConstants Development { get; private init; } = null!;
}

/// <summary>Temperatures of the concrete for Table 17.6.5.2.5, in °F with inch-pound constants and in °C with SI constants.</summary>
/// <param name="Installation">Least at installation.</param>
/// <param name="Outdoor">Largest in service of the outdoor row.</param>
/// <param name="Indoor">Largest in service of the indoor row.</param>
internal sealed record BondTemperatures(double Installation, double Outdoor, double Indoor);
