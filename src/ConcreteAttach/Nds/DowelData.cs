using ConcreteAttach.Calculation;
using ConcreteAttach.Quantities;

namespace ConcreteAttach.Nds;

/// <summary>What a member is made of, as far as bearing goes.</summary>
internal enum BearingMaterial
{
    Wood,
    Concrete,
    HotRolledSteel,
    ColdFormedSteel,
    Tested,
}

/// <summary>A member in the units of the standard (in., psi, degrees).</summary>
/// <param name="Material">What it is made of.</param>
/// <param name="Strength">G of wood, f'_c of concrete, F_u of steel, F_e by test.</param>
/// <param name="Length">Dowel bearing length.</param>
/// <param name="Angle">Angle between load and grain; 0 where there is no grain.</param>
/// <param name="IsEndGrain">Whether the fastener stands along the fibres.</param>
internal readonly record struct MemberData(BearingMaterial Material, double Strength, double Length, double Angle, bool IsEndGrain)
{
    public static MemberData Of(ConnectionMember member)
    {
        const MeasurementSystem System = MeasurementSystem.PoundInch;
        double length = member.BearingLength.In(System);
        return member switch
        {
            WoodMember wood => new(BearingMaterial.Wood, wood.Species.SpecificGravity, length, wood.IsEndGrain ? 90 : wood.LoadToGrainDegrees, wood.IsEndGrain),
            ConcreteBearingMember concrete => new(BearingMaterial.Concrete, concrete.CompressiveStrength.In(System), length, 0, false),
            SteelBearingMember steel => new(steel.IsColdFormed ? BearingMaterial.ColdFormedSteel : BearingMaterial.HotRolledSteel, steel.UltimateStrength.In(System), length, 0, false),
            TestedMember tested => new(BearingMaterial.Tested, tested.DowelBearingStrength.In(System), length, tested.LoadToGrainDegrees, false),
            _ => throw new InvalidOperationException("A member of an unknown kind."),
        };
    }
}

/// <summary>A connection in the units of the standard (in., psi, degrees), checked.</summary>
internal sealed class DowelData
{
    public required DowelKind Kind { get; init; }

    /// <summary>Nominal diameter.</summary>
    public required double NominalDiameter { get; init; }

    /// <summary>Diameter that bears and bends (12.3.7): D, or D_r where the thread does.</summary>
    public required double Diameter { get; init; }

    public required double BendingYield { get; init; }

    public required string BendingYieldSource { get; init; }

    public required MemberData Main { get; init; }

    public required MemberData Side { get; init; }

    public required double Gap { get; init; }

    public required bool IsDoubleShear { get; init; }

    public required bool IsRounded { get; init; }

    /// <summary>Penetration as the minimum counts it; infinite where there is none, NaN where it is not known.</summary>
    public required double Penetration { get; init; }

    /// <summary>Whether the root stands for the diameter.</summary>
    public bool UsesRoot => Diameter != NominalDiameter;

    /// <summary>Whether the fastener counts as small: D below 1/4 in.</summary>
    public bool IsSmall => Limit.IsBelow(NominalDiameter, SmallDiameter);

    /// <summary>The diameter in in. at which wood begins to bear differently along and across the grain (Tables 12.3.1B, 12.3.3).</summary>
    public const double SmallDiameter = 0.25;

    /// <summary>Largest diameter in in. of Table 12.3.1B.</summary>
    public const double LargestDiameter = 1;

    /// <summary>Least f'_c in psi for which the standard gives a bearing strength of concrete.</summary>
    public const double LeastConcreteStrength = 2500;

    /// <summary>Why the yield limit equations do not cover it; null where they do.</summary>
    public string? NotCovered =>
        Limit.IsBelow(LargestDiameter, NominalDiameter) ? "The diameter is above 1 in.: Table 12.3.1B has no reduction term."
        : double.IsNaN(Penetration) ? "The tapered tip of this lag screw is not known: give the penetration without it."
        : Limit.IsBelow(Penetration, LeastPenetration * NominalDiameter) ? $"The penetration {QuantityText.Format(Penetration, Dimension.Length, MeasurementSystem.PoundInch)} is below the minimum, {QuantityText.Format(LeastPenetration)} D ({(Kind == DowelKind.LagScrew ? "12.1.4.6" : Kind == DowelKind.WoodScrew ? "12.1.5.6" : "12.1.6.5")})."
        : IsWeakConcrete(Main) || IsWeakConcrete(Side) ? "f'_c is below 2500 psi: the standard has no dowel bearing strength."
        : null;

    /// <summary>Least penetration in diameters: 4 of lag screws, 6 of wood screws and nails (from memory).</summary>
    private double LeastPenetration => Kind == DowelKind.LagScrew ? 4 : 6;

    private static bool IsWeakConcrete(MemberData member) => member.Material == BearingMaterial.Concrete && Limit.IsBelow(member.Strength, LeastConcreteStrength);
}

/// <summary>The symbols of one member on the sheet, so that main and side member do not share a line.</summary>
internal sealed class MemberSymbols(string member)
{
    public static readonly MemberSymbols Main = new("m");

    public static readonly MemberSymbols Side = new("s");

    public string Gravity { get; } = "G_" + member;

    public string Angle { get; } = "theta_" + member;

    public string Sine { get; } = "sin_theta_" + member;

    public string Cosine { get; } = "cos_theta_" + member;

    public string Ultimate { get; } = "F_u_" + member;

    public string Parallel { get; } = "F_e_par_" + member;

    public string Perpendicular { get; } = "F_e_perp_" + member;

    public string Strength { get; } = "F_e" + member;

    /// <summary>The same before they are rounded as the table prints them.</summary>
    public string ExactParallel { get; } = $"F_e_par_{member}_exact";

    public string ExactPerpendicular { get; } = $"F_e_perp_{member}_exact";

    public string ExactStrength { get; } = $"F_e{member}_exact";
}
