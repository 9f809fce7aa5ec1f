using System.Globalization;
using ConcreteAttach.Aci318;
using ConcreteAttach.Actions;
using ConcreteAttach.Attached;
using ConcreteAttach.Fasteners;
using ConcreteAttach.Geometry;
using ConcreteAttach.Materials;
using ConcreteAttach.Verification;
using UnitsNet;

namespace ConcreteAttach.Tests.Presentation;

/// <summary>Attachments whose reports are read. All data are invented.</summary>
internal static class ReportSamples
{
    /// <summary>Four bolts under a pergola post near a corner: tension, moments, shear; one bolt in compression.</summary>
    public static AttachmentVerification PergolaPost => new Aci318Method(Aci318Edition.InchPound2019).Verify(
        new Attachment(
            new ConcreteMember(Pressure.FromPoundsForcePerSquareInch(4000), Length.FromInches(14))
            {
                Edges = new EdgeDistances { PlusX = Length.FromInches(5), PlusY = Length.FromInches(9) },
            },
            new HeadedBolt(Length.FromInches(0.625), AnchorSteels.Find("ASTM F1554 Grade 36", Length.FromInches(0.625)), Length.FromInches(8)),
            FastenerLayout.Rectangle(2, Length.FromInches(6), 2, Length.FromInches(6))),
        new LoadCase("0.9D + 1.0W, gust from the west")
        {
            N = Force.FromKilopoundsForce(6), Vx = Force.FromPoundsForce(-900), Mx = Torque.FromKilopoundForceInches(-8), My = Torque.FromKilopoundForceInches(12),
        },
        new LoadCase("1.2D") { N = Force.FromKilopoundsForce(-4) });

    /// <summary>Two hooked bolts with hooks that are too short, beside one edge: not covered.</summary>
    public static AttachmentVerification GardenRail => new Aci318Method(Aci318Edition.InchPound2019).Verify(
        new Attachment(
            new ConcreteMember(Pressure.FromMegapascals(25), Length.FromMillimeters(300)) { IsCracked = false, Edges = new EdgeDistances { MinusY = Length.FromMillimeters(120) } },
            new HookedBolt(Length.FromInches(0.5), AnchorSteels.Find("ASTM A307", Length.FromInches(0.5)), Length.FromMillimeters(180), Length.FromMillimeters(30)),
            FastenerLayout.RowAlongX(2, Length.FromMillimeters(200))),
        new LoadCase("rail post") { N = Force.FromKilonewtons(12.5) });

    /// <summary>Two bonded bars of a porch beam in uncracked concrete near an edge: minimum bond stresses, sustained tension, bars set overhead. SI constants.</summary>
    public static AttachmentVerification PorchBars => new Aci318Method(Aci318Edition.Si2019).Verify(
        new Attachment(
            new ConcreteMember(Pressure.FromMegapascals(25), Length.FromMillimeters(300)) { IsCracked = false, Edges = new EdgeDistances { PlusX = Length.FromMillimeters(110) } },
            new AdhesiveBar(
                Length.FromMillimeters(16),
                new AnchorSteel("bar B500", Pressure.FromMegapascals(500), Pressure.FromMegapascals(550), false),
                Length.FromMillimeters(160),
                new AdhesiveQualification
                {
                    Source = "an invented report",
                    Category = 2,
                    BondStress = new MinimumBondStress
                    {
                        Environment = BondEnvironment.Outdoor, ConcreteAge = Duration.FromDays(90), InstallationTemperature = Temperature.FromDegreesCelsius(8),
                        PeakTemperature = Temperature.FromDegreesCelsius(45), Moisture = ConcreteMoisture.Saturated, Drilling = DrillingMethod.RotaryImpact,
                    },
                }) { Direction = InstallationDirection.Upward },
            FastenerLayout.RowAlongY(2, Length.FromMillimeters(150))),
        new LoadCase("1.4D") { N = Force.FromKilonewtons(6), SustainedTension = Force.FromKilonewtons(5), Vx = Force.FromKilonewtons(3) });

    /// <summary>Runs something under a culture whose numbers look different.</summary>
    public static T InForeignCulture<T>(Func<T> run)
    {
        var foreign = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        foreign.NumberFormat.NumberDecimalSeparator = ",";
        foreign.NumberFormat.NumberGroupSeparator = ".";
        foreign.NumberFormat.NegativeSign = "~";
        foreign.TextInfo.ListSeparator = ";";
        CultureInfo before = CultureInfo.CurrentCulture;
        CultureInfo.CurrentCulture = foreign;
        try
        {
            return run();
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
