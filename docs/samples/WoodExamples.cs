using ConcreteAttach.Materials;
using ConcreteAttach.Nds;
using static ConcreteAttach.Samples.Shorthand;

namespace ConcreteAttach.Samples;

/// <summary>Wood on concrete. All are invented.</summary>
internal static class WoodExamples
{
    public static ConnectionStrength Sill()
    {
        #region wood-sill
        WoodSpecies hemFir = WoodSpeciesTable.Find("Hem-Fir");
        var bolt = new DowelFastener(DowelKind.Bolt, In(0.5));
        var sill = new WoodMember(hemFir, In(1.5), loadToGrainDegrees: 0);
        var concrete = new ConcreteBearingMember(Psi(3000), In(7));
        var connection = new WoodConnection(bolt, concrete, sill)
        {
            IsRoundedAsPrinted = true,
            Placement = new(GrainLoad.ParallelTension, isSoftwood: true)
            {
                EndDistance = In(3.5), EdgeDistance = In(1.75),
            },
        };
        var wind = new ServiceConditions { Duration = LoadDuration.TenMinutes };
        return connection.Lateral(wind);
        #endregion
    }

    public static ConnectionStrength SillWithGap()
    {
        #region wood-gap
        WoodSpecies hemFir = WoodSpeciesTable.Find("Hem-Fir");
        var bolt = new DowelFastener(DowelKind.Bolt, In(0.5));
        var sill = new WoodMember(hemFir, In(1.5), loadToGrainDegrees: 90);
        var concrete = new ConcreteBearingMember(Psi(3000), In(7));
        var connection = new WoodConnection(bolt, concrete, sill) { Gap = In(0.25) };
        return connection.Lateral(new ServiceConditions());
        #endregion
    }

    public static ConnectionStrength Washer()
    {
        #region wood-washer
        WoodSpecies hemFir = WoodSpeciesTable.Find("Hem-Fir");
        WasherBearing washer =
            WasherBearing.Square(In(3), hole: In(0.8125), slotLength: In(1.75));
        return washer.Strength(hemFir, new ServiceConditions());
        #endregion
    }

    public static ConnectionStrength Combined()
    {
        #region wood-combined
        WoodSpecies fir = WoodSpeciesTable.Find("Douglas Fir-Larch");
        var lag = new DowelFastener(DowelKind.LagScrew, In(0.375));
        var strap = new SteelBearingMember(Psi(58_000), In(0.25), isColdFormed: false);
        var post = new WoodMember(fir, In(3), loadToGrainDegrees: 90);
        var conditions = new ServiceConditions();
        ConnectionStrength lateral =
            new WoodConnection(lag, post, strap).Lateral(conditions);
        ConnectionStrength axial =
            new WithdrawalConnection(lag, fir, In(2)).Strength(conditions);
        return CombinedLoad.Strength(
            lag.Kind, lateral.Adjusted!.Value, axial.Adjusted!.Value, toSurfaceDegrees: 40);
        #endregion
    }
}
