using ConcreteAttach.Actions;
using ConcreteAttach.Attached;
using ConcreteAttach.Connections;
using ConcreteAttach.Fasteners;
using ConcreteAttach.Geometry;
using ConcreteAttach.Materials;
using ConcreteAttach.Nds;
using ConcreteAttach.Verification;
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

    public static AttachmentVerification SillOnConcrete()
    {
        #region wood-sill-anchorage
        var concrete = new ConcreteMember(Psi(3000), In(18))
        {
            Edges = new() { PlusX = In(80), MinusX = In(80), PlusY = In(4), MinusY = In(4) },
        };
        var bolt = new HeadedBolt(In(0.625), Grade36(0.625), In(7));
        FastenerLayout row = FastenerLayout.Points(
            [new(In(-48), In(0)), new(In(-16), In(0)), new(In(16), In(0)), new(In(48), In(0))]);
        var bolts = new Attachment(concrete, bolt, row)
        {
            Earthquake = new EarthquakeDesign(SeismicDesignCategory.D)
            {
                Tension = EarthquakeTensionOption.Overstrength,
                Overstrength = 2.5,
                WoodSill = new(SillDirection.X, In(1.5)),
            },
        };
        WoodSpecies hemFir = WoodSpeciesTable.Find("Hem-Fir");
        var sill = new SillPlate(hemFir, In(1.5), SillDirection.X)
        {
            Washer = WasherBearing.Square(In(3), hole: In(0.6875)),
        };
        var earthquake = new LoadCase("0.9D + 1.0E")
        {
            N = Kip(1.2),
            Vx = Kip(5),
            Earthquake = new() { N = Kip(1.2), Vx = Kip(5) },
        };
        AttachmentVerification verification = new SillAnchorage(Method, bolts, sill).Verify(
            [new(earthquake) { TimeEffect = TimeEffect.WindEarthquakeOrImpact }]);
        return verification;
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
