using ConcreteAttach.Actions;
using ConcreteAttach.Attached;
using ConcreteAttach.Fasteners;
using ConcreteAttach.Geometry;
using ConcreteAttach.Materials;
using ConcreteAttach.Verification;
using UnitsNet;
using static ConcreteAttach.Samples.Shorthand;

namespace ConcreteAttach.Samples;

/// <summary>One small attachment for each failure mode. All are invented.</summary>
internal static class ModeExamples
{
    public static AttachmentVerification Forces()
    {
        #region forces
        var bolt = new HeadedBolt(In(0.75), Grade36(0.75), In(10));
        FastenerLayout layout = FastenerLayout.Rectangle(2, In(8), 2, In(6));
        var concrete = new ConcreteMember(Psi(4000), In(20));
        var attachment = new Attachment(concrete, bolt, layout);
        var wind = new LoadCase("0.9D + 1.0W")
        {
            N = Kip(4), Vx = Kip(2), My = KipIn(48), At = new(In(1), In(0)),
        };
        return Method.Verify(attachment, wind);
        #endregion
    }

    public static AttachmentVerification TensionSteel()
    {
        #region tension-steel
        AnchorSteel steel = AnchorSteels.Find("ASTM F1554 Grade 105", In(0.75));
        var rod = new ThreadedRodWithNut(In(0.75), steel, In(12));
        var concrete = new ConcreteMember(Psi(4000), In(20));
        var attachment = new Attachment(concrete, rod, FastenerLayout.Single());
        var loads = new LoadCase("1.2D + 1.6L") { N = Kip(20) };
        return Method.Verify(attachment, loads);
        #endregion
    }

    public static AttachmentVerification TensionBreakout()
    {
        #region tension-breakout
        var concrete = new ConcreteMember(Psi(4000), In(12))
        {
            Edges = new EdgeDistances { PlusX = In(8) },
        };
        var bolt = new HeadedBolt(In(0.625), Grade36(0.625), In(6));
        FastenerLayout layout = FastenerLayout.Rectangle(2, In(6), 2, In(6));
        var attachment = new Attachment(concrete, bolt, layout);
        var uplift = new LoadCase("0.9D + 1.0W") { N = Kip(9), My = KipIn(-9) };
        return Method.Verify(attachment, uplift);
        #endregion
    }

    public static AttachmentVerification NarrowMember()
    {
        #region tension-breakout-narrow
        var wall = new ConcreteMember(Psi(4000), In(30))
        {
            Edges = new EdgeDistances { PlusX = In(9.5), PlusY = In(5), MinusY = In(5) },
        };
        var bolt = new HeadedBolt(In(0.625), Grade36(0.625), In(8));
        var attachment = new Attachment(wall, bolt, FastenerLayout.RowAlongX(2, In(7)));
        var loads = new LoadCase("0.9D + 1.0W") { N = Kip(6) };
        return Method.Verify(attachment, loads);
        #endregion
    }

    public static AttachmentVerification PulloutOfHead()
    {
        #region pullout-head
        var bolt = new HeadedBolt(In(0.75), Grade36(0.75), In(9));
        var concrete = new ConcreteMember(Psi(3000), In(18));
        var attachment = new Attachment(concrete, bolt, FastenerLayout.Single());
        var loads = new LoadCase("0.9D + 1.0W") { N = Kip(8) };
        return Method.Verify(attachment, loads);
        #endregion
    }

    public static AttachmentVerification PulloutOfHook()
    {
        #region pullout-hook
        Length extension = In(3);
        var hook = new HookedBolt(In(0.625), Grade36(0.625), In(9), extension);
        var concrete = new ConcreteMember(Psi(3000), In(18));
        var attachment = new Attachment(concrete, hook, FastenerLayout.Single());
        var loads = new LoadCase("0.9D + 1.0W") { N = Kip(3) };
        return Method.Verify(attachment, loads);
        #endregion
    }

    public static AttachmentVerification PulloutByTests()
    {
        #region pullout-tests
        var data = new MechanicalQualification
        {
            Source = "invented data",
            Category = 1,
            Pullout = new PulloutStrength(cracked: Kip(4), uncracked: Kip(5.5))
            {
                At = Psi(2500), Exponent = 0.5,
            },
        };
        AnchorSteel steel = AnchorSteels.Find("ASTM A193 B7", In(0.5));
        var expansion = new TorqueControlledExpansion(In(0.5), steel, In(3.25), data)
        {
            Thread = ScrewThread.UnifiedCoarse,
        };
        var concrete = new ConcreteMember(Psi(4000), In(8));
        var attachment = new Attachment(concrete, expansion, FastenerLayout.Single());
        var loads = new LoadCase("1.2D + 1.6L") { N = Kip(2) };
        return Method.Verify(attachment, loads);
        #endregion
    }

    public static AttachmentVerification Splitting()
    {
        #region splitting
        var data = new MechanicalQualification
        {
            Source = "invented data",
            Category = 1,
            Pullout = PulloutStrength.NotGoverning,
        };
        AnchorSteel steel = AnchorSteels.Find("ASTM A193 B7", In(0.5));
        var expansion = new TorqueControlledExpansion(In(0.5), steel, In(3.25), data)
        {
            Thread = ScrewThread.UnifiedCoarse,
        };
        var concrete = new ConcreteMember(Psi(3000), In(10))
        {
            IsCracked = false,
            Edges = new EdgeDistances { PlusX = In(4) },
        };
        var attachment = new Attachment(concrete, expansion, FastenerLayout.Single());
        var loads = new LoadCase("1.2D + 1.6L") { N = Kip(1) };
        return Method.Verify(attachment, loads);
        #endregion
    }

    public static AttachmentVerification Bond()
    {
        #region bond
        var data = new AdhesiveQualification
        {
            Source = "invented data",
            Category = 1,
            BondStress = new ProductBondStress(cracked: Psi(700), uncracked: Psi(1500)),
        };
        AnchorSteel steel = AnchorSteels.Find("ASTM A193 B7", In(0.625));
        var rod = new AdhesiveRod(In(0.625), steel, In(6), data)
        {
            Direction = InstallationDirection.Downward,
        };
        var concrete = new ConcreteMember(Psi(4000), In(12))
        {
            Edges = new EdgeDistances { PlusX = In(8) },
        };
        FastenerLayout layout = FastenerLayout.Rectangle(2, In(6), 2, In(6));
        var attachment = new Attachment(concrete, rod, layout);
        var dead = new LoadCase("1.4D")
        {
            N = Kip(5), My = KipIn(-6), SustainedTension = Kip(4),
        };
        return Method.Verify(attachment, dead);
        #endregion
    }

    public static AttachmentVerification MinimumBond()
    {
        #region bond-minimum
        var table = new MinimumBondStress
        {
            Environment = BondEnvironment.Indoor,
            ConcreteAge = Duration.FromDays(400),
            InstallationTemperature = Temperature.FromDegreesFahrenheit(65),
            PeakTemperature = Temperature.FromDegreesFahrenheit(90),
            Moisture = ConcreteMoisture.Saturated,
            Drilling = DrillingMethod.RotaryImpact,
        };
        var data = new AdhesiveQualification { Category = 2, BondStress = table };
        AnchorSteel steel = AnchorSteels.Find("ASTM A615 Grade 60", In(0.5));
        var bar = new AdhesiveBar(In(0.5), steel, In(5), data);
        var concrete = new ConcreteMember(Psi(3000), In(10));
        var attachment = new Attachment(concrete, bar, FastenerLayout.Single());
        var loads = new LoadCase("1.2D + 1.6L") { N = Kip(1) };
        return Method.Verify(attachment, loads);
        #endregion
    }

    public static AttachmentVerification PryoutOfAdhesive()
    {
        #region pryout-adhesive
        var data = new AdhesiveQualification
        {
            Source = "invented data",
            Category = 1,
            BondStress = new ProductBondStress(cracked: Psi(500), uncracked: Psi(1200)),
        };
        AnchorSteel steel = AnchorSteels.Find("ASTM A193 B7", In(0.5));
        var rod = new AdhesiveRod(In(0.5), steel, In(4), data);
        var concrete = new ConcreteMember(Psi(4000), In(10));
        var attachment = new Attachment(concrete, rod, FastenerLayout.RowAlongX(2, In(5)));
        return Method.Verify(attachment, new LoadCase("wind") { Vx = Kip(4) });
        #endregion
    }

    public static AttachmentVerification Earthquake()
    {
        #region earthquake
        var concrete = new ConcreteMember(Psi(4000), In(24)) { Edges = new EdgeDistances { PlusY = In(14), MinusY = In(14) } };
        var rod = new ThreadedRodWithNut(In(0.75), Grade36(0.75), In(14)) { BearingArea = Area.FromSquareInches(1.8) };
        var attachment = new Attachment(concrete, rod, FastenerLayout.Single())
        {
            Earthquake = new EarthquakeDesign(SeismicDesignCategory.D)
            {
                Tension = EarthquakeTensionOption.DuctileSteel,
                StretchLength = In(8),
                IsKeptFromBuckling = true,
                Shear = EarthquakeShearOption.Overstrength,
                Overstrength = 2.5,
            },
        };
        var loads = new LoadCase("0.9D + 1.0E") { N = Kip(9), Vx = Kip(0.4), Earthquake = new EarthquakeActions { N = Kip(11), Vx = Kip(0.4) } };
        return Method.Verify(attachment, loads);
        #endregion
    }

    public static AttachmentVerification Blowout()
    {
        #region blowout
        var concrete = new ConcreteMember(Psi(4000), In(24))
        {
            Edges = new EdgeDistances { PlusX = In(3) },
        };
        var bolt = new HeadedBolt(In(0.75), Grade36(0.75), In(12));
        var attachment = new Attachment(concrete, bolt, FastenerLayout.RowAlongY(3, In(6)));
        var loads = new LoadCase("0.9D + 1.0W") { N = Kip(18) };
        return Method.Verify(attachment, loads);
        #endregion
    }

    public static AttachmentVerification BlowoutAtCorner()
    {
        #region blowout-corner
        var concrete = new ConcreteMember(Psi(4000), In(24))
        {
            Edges = new EdgeDistances { PlusX = In(3), PlusY = In(5) },
        };
        var bolt = new HeadedBolt(In(0.75), Grade36(0.75), In(12));
        var attachment = new Attachment(concrete, bolt, FastenerLayout.Single());
        var loads = new LoadCase("0.9D + 1.0W") { N = Kip(6) };
        return Method.Verify(attachment, loads);
        #endregion
    }

    public static AttachmentVerification ShearSteel()
    {
        #region shear-steel
        var bolt = new HeadedBolt(In(0.75), Grade36(0.75), In(8))
        {
            HasGroutPad = true,
        };
        var concrete = new ConcreteMember(Psi(4000), In(18));
        var attachment = new Attachment(concrete, bolt, FastenerLayout.RowAlongX(2, In(6)));
        var shear = new LoadCase("1.2D + 1.6L") { Vx = Kip(4), Vy = Kip(3) };
        return Method.Verify(attachment, shear);
        #endregion
    }

    public static AttachmentVerification ShearTowardEdge()
    {
        #region shear-breakout
        var concrete = new ConcreteMember(Psi(4000), In(24))
        {
            Edges = new EdgeDistances { PlusX = In(10) },
        };
        var bolt = new HeadedBolt(In(0.75), Grade36(0.75), In(8));
        FastenerLayout layout = FastenerLayout.Rectangle(2, In(8), 2, In(6));
        var attachment = new Attachment(concrete, bolt, layout);
        var wind = new LoadCase("1.2D + 1.0W") { Vx = Kip(12), Vy = Kip(5) };
        return Method.Verify(attachment, wind);
        #endregion
    }

    public static AttachmentVerification NarrowThinMember()
    {
        #region shear-breakout-narrow
        var beam = new ConcreteMember(Psi(4000), In(9))
        {
            Edges = new EdgeDistances { PlusX = In(10), PlusY = In(8), MinusY = In(9) },
        };
        var bolt = new HeadedBolt(In(0.625), Grade36(0.625), In(6));
        var attachment = new Attachment(beam, bolt, FastenerLayout.RowAlongY(2, In(6)));
        var loads = new LoadCase("1.2D + 1.0W") { Vx = Kip(4) };
        return Method.Verify(attachment, loads);
        #endregion
    }

    public static AttachmentVerification Pryout()
    {
        #region pryout
        var bolt = new HeadedBolt(In(0.625), Grade36(0.625), In(4));
        var concrete = new ConcreteMember(Psi(4000), In(10));
        FastenerLayout layout = FastenerLayout.Rectangle(2, In(5), 2, In(5));
        var attachment = new Attachment(concrete, bolt, layout);
        return Method.Verify(
            attachment,
            new LoadCase("shear") { Vx = Kip(8) },
            new LoadCase("shear and torsion") { Vx = Kip(4), Mz = KipIn(40) });
        #endregion
    }

    public static AttachmentVerification Interaction()
    {
        #region interaction
        var concrete = new ConcreteMember(Psi(4000), In(14))
        {
            Edges = new EdgeDistances { PlusX = In(6) },
        };
        var bolt = new HeadedBolt(In(0.625), Grade36(0.625), In(8));
        var attachment = new Attachment(concrete, bolt, FastenerLayout.Single());
        var wind = new LoadCase("0.9D + 1.0W") { N = Kip(6), Vx = Kip(1.5) };
        return Method.Verify(attachment, wind);
        #endregion
    }

    public static AttachmentVerification Detailing()
    {
        #region detailing
        var concrete = new ConcreteMember(Psi(4000), In(14))
        {
            Edges = new EdgeDistances { PlusX = In(3) },
            Cover = In(3),
        };
        var bolt = new HeadedBolt(In(0.75), Grade36(0.75), In(8));
        var attachment = new Attachment(concrete, bolt, FastenerLayout.RowAlongY(2, In(4)));
        var loads = new LoadCase("1.4D") { N = Kip(1) };
        return Method.Verify(attachment, loads);
        #endregion
    }

    public static AttachmentVerification DetailingOfExpansion()
    {
        #region detailing-expansion
        var data = new MechanicalQualification
        {
            Source = "invented data",
            Category = 1,
            Pullout = PulloutStrength.NotGoverning,
            MinimumSpacing = In(3),
        };
        AnchorSteel steel = AnchorSteels.Find("ASTM A193 B7", In(0.5));
        var expansion = new TorqueControlledExpansion(In(0.5), steel, In(4), data)
        {
            Thread = ScrewThread.UnifiedCoarse,
        };
        var concrete = new ConcreteMember(Psi(4000), In(5.5))
        {
            Edges = new EdgeDistances { PlusX = In(4) },
            AggregateSize = In(1),
        };
        var attachment = new Attachment(concrete, expansion, FastenerLayout.RowAlongY(2, In(4)));
        return Method.Verify(attachment, new LoadCase("1.4D") { N = Kip(1) });
        #endregion
    }
}
