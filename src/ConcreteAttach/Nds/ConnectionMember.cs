using ConcreteAttach.Materials;
using ConcreteAttach.Quantities;
using UnitsNet;

namespace ConcreteAttach.Nds;

/// <summary>A member of a connection as the dowel sees it: how long it bears, and how strong (NDS-2018 12.3.3, 12.3.5).</summary>
public abstract class ConnectionMember
{
    private protected ConnectionMember(string parameter, Length bearingLength) => BearingLength = Require.Positive(parameter, bearingLength);

    /// <summary>
    /// Dowel bearing length ℓ_m or ℓ_s: the thickness of the member, or how deep the fastener stands in it. Of a penetration with a tapered tip of length E only
    /// p − E/2 counts (12.3.5.3, from memory).
    /// </summary>
    public Length BearingLength { get; }
}

/// <summary>A member of wood. Its dowel bearing strength follows from the specific gravity.</summary>
public sealed class WoodMember : ConnectionMember
{
    /// <summary>Creates a member of wood.</summary>
    /// <param name="species">Species or group.</param>
    /// <param name="bearingLength">Dowel bearing length; greater than 0, finite.</param>
    /// <param name="loadToGrainDegrees">Angle θ between load and grain in degrees, 0 (parallel) to 90 (perpendicular).</param>
    /// <exception cref="InputException">A parameter is outside its range.</exception>
    public WoodMember(WoodSpecies species, Length bearingLength, double loadToGrainDegrees)
        : base(nameof(bearingLength), bearingLength)
    {
        ArgumentNullException.ThrowIfNull(species);
        if (!(loadToGrainDegrees >= 0 && loadToGrainDegrees <= 90))
        {
            throw new InputException(nameof(loadToGrainDegrees), QuantityText.Format(loadToGrainDegrees), "0 to 90");
        }

        Species = species;
        LoadToGrainDegrees = loadToGrainDegrees;
    }

    /// <summary>Species or group.</summary>
    public WoodSpecies Species { get; }

    /// <summary>Angle θ between load and grain in degrees.</summary>
    public double LoadToGrainDegrees { get; }

    /// <summary>Whether the fastener stands in end grain, along the fibres: the strength perpendicular to grain then counts (12.3.3.4), and C_eg.</summary>
    public bool IsEndGrain { get; init; }
}

/// <summary>A member of concrete.</summary>
public sealed class ConcreteBearingMember : ConnectionMember
{
    /// <summary>Creates a member of concrete.</summary>
    /// <param name="compressiveStrength">f'_c; greater than 0, finite. Below 2500 psi the standard has no bearing strength: not covered.</param>
    /// <param name="bearingLength">Embedment of the bolt; greater than 0, finite.</param>
    /// <exception cref="InputException">A parameter is outside its range.</exception>
    public ConcreteBearingMember(Pressure compressiveStrength, Length bearingLength)
        : base(nameof(bearingLength), bearingLength) => CompressiveStrength = Require.Positive(nameof(compressiveStrength), compressiveStrength);

    /// <summary>Specified compressive strength f'_c.</summary>
    public Pressure CompressiveStrength { get; }
}

/// <summary>A member of steel.</summary>
public sealed class SteelBearingMember : ConnectionMember
{
    /// <summary>Creates a member of steel.</summary>
    /// <param name="ultimateStrength">F_u; greater than 0, finite.</param>
    /// <param name="thickness">Thickness; greater than 0, finite.</param>
    /// <param name="isColdFormed">Whether it is cold-formed (bearing 2.2 F_u / 1.6) and not hot-rolled (2.4 F_u / 1.6).</param>
    /// <exception cref="InputException">A parameter is outside its range.</exception>
    public SteelBearingMember(Pressure ultimateStrength, Length thickness, bool isColdFormed)
        : base(nameof(thickness), thickness)
    {
        UltimateStrength = Require.Positive(nameof(ultimateStrength), ultimateStrength);
        IsColdFormed = isColdFormed;
    }

    /// <summary>Specified tensile strength F_u.</summary>
    public Pressure UltimateStrength { get; }

    /// <summary>Whether the steel is cold-formed.</summary>
    public bool IsColdFormed { get; }
}

/// <summary>A member whose dowel bearing strength is known otherwise: by test (ASTM D5764), of a product, or of masonry, for which NDS has none.</summary>
public sealed class TestedMember : ConnectionMember
{
    /// <summary>Creates a member from its dowel bearing strength.</summary>
    /// <param name="dowelBearingStrength">F_e in the direction of the load; greater than 0, finite.</param>
    /// <param name="bearingLength">Dowel bearing length; greater than 0, finite.</param>
    /// <param name="loadToGrainDegrees">Angle between load and grain where it is wood, 0 to 90 degrees; 0 for other materials. It counts in K_θ.</param>
    /// <exception cref="InputException">A parameter is outside its range.</exception>
    public TestedMember(Pressure dowelBearingStrength, Length bearingLength, double loadToGrainDegrees = 0)
        : base(nameof(bearingLength), bearingLength)
    {
        DowelBearingStrength = Require.Positive(nameof(dowelBearingStrength), dowelBearingStrength);
        if (!(loadToGrainDegrees >= 0 && loadToGrainDegrees <= 90))
        {
            throw new InputException(nameof(loadToGrainDegrees), QuantityText.Format(loadToGrainDegrees), "0 to 90");
        }

        LoadToGrainDegrees = loadToGrainDegrees;
    }

    /// <summary>Dowel bearing strength F_e.</summary>
    public Pressure DowelBearingStrength { get; }

    /// <summary>Angle between load and grain in degrees.</summary>
    public double LoadToGrainDegrees { get; }
}
