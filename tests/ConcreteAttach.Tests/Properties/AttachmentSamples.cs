using System.Reflection;
using ConcreteAttach.Aci318;
using ConcreteAttach.Actions;
using ConcreteAttach.Attached;
using ConcreteAttach.Fasteners;
using ConcreteAttach.Geometry;
using ConcreteAttach.Materials;
using ConcreteAttach.Quantities;
using UnitsNet;

namespace ConcreteAttach.Tests.Properties;

/// <summary>One random attachment with a load case that its fasteners can carry.</summary>
public sealed record AttachmentSample(Aci318Method Method, Attachment Attachment, LoadCase LoadCase)
{
    public PreparedAttachment Prepared => Method.Prepare(Attachment);
}

/// <summary>
/// Random attachments over what the library covers: concrete, kinds of fasteners, layouts, edges near and far, loads that hold and loads
/// that do not. Numbers are partly such as a person writes (eighths of an inch, whole millimetres), partly any. The same seed gives the same sample.
/// </summary>
internal sealed class AttachmentSamples(int seed)
{
    private readonly Random _random = new(seed);

    /// <summary>Every edition with every set of constants that the library has.</summary>
    public static IReadOnlyList<Aci318Edition> Editions { get; } =
    [
        .. typeof(Aci318Edition).GetFields(BindingFlags.Public | BindingFlags.Static)
            .Where(f => f.FieldType == typeof(Aci318Edition)).Select(f => (Aci318Edition)f.GetValue(null)!)
            .Where(e => e.Standard == "ACI 318-19"), // 318-25 leaves most modes open; it has properties of its own
    ];

    private static readonly double[] InchDiameters = [0.25, 0.375, 0.5, 0.625, 0.75, 0.875, 1, 1.25, 1.5, 2];

    private static readonly double[] StudDiameters = [0.375, 0.5, 0.625, 0.75, 0.875, 1];

    private static readonly double[] MetricDiameters = [8, 10, 12, 16, 20, 24, 30, 36];

    public static IEnumerable<AttachmentSample> Take(int count, int seed)
    {
        for (int i = 0; i < count; i++)
        {
            yield return new AttachmentSamples(unchecked((seed * 1_000_003) + i)).Next();
        }
    }

    public AttachmentSample Next()
    {
        bool metric = Chance(0.3);
        Aci318Edition edition = Pick([.. Editions]);
        Fastener fastener = Chance(0.4) ? NextPostInstalled(metric, edition) : NextFastener(metric);
        double embedment = fastener.EffectiveEmbedment.Millimeters;
        FastenerLayout layout = NextLayout(metric, embedment);
        var concrete = new ConcreteMember(NextStrength(metric), NextLength(metric, 0.8 * embedment, 4 * embedment))
        {
            Density = Pick(ConcreteDensity.Normalweight, ConcreteDensity.Normalweight, ConcreteDensity.SandLightweight, ConcreteDensity.AllLightweight, NextDensity(metric)),
            IsCracked = Chance(0.6),
            HasSupplementaryReinforcementForTension = Chance(0.3),
            HasSupplementaryReinforcementForShear = Chance(0.3),
            HasSplittingReinforcement = Chance(0.2),
            AggregateSize = Chance(0.3) ? NextLength(metric, 10, 40) : null,
            EdgeReinforcement = Pick(EdgeReinforcement.None, EdgeReinforcement.None, EdgeReinforcement.Bar, EdgeReinforcement.BarAndStirrups),
            Cover = Chance(0.5) ? null : NextLength(metric, 15, 80),
            Edges = NextEdges(metric, layout, embedment),
        };
        var method = new Aci318Method(edition, new Aci318Options
        {
            Area = Chance(0.8) ? AreaReading.Union : AreaReading.Bounding,
            CloseEdges = Chance(0.8) ? CloseEdgesReading.Group : CloseEdgesReading.AllFasteners,
            Deep = Chance(0.8) ? DeepReading.Revert : DeepReading.Extend,
        });
        var attachment = new Attachment(concrete, fastener, layout);
        return new(method, attachment, NextLoadCase(layout, embedment));
    }

    private CastInFastener NextFastener(bool metric)
    {
        int kind = _random.Next(4);
        double nominal = metric ? Pick(MetricDiameters) : kind == 3 ? Pick(StudDiameters) : Pick(InchDiameters);
        Length diameter = metric ? Length.FromMillimeters(nominal) : Length.FromInches(nominal);
        if (Chance(0.05))
        {
            // A size that no table has: areas unknown unless they are given.
            diameter = Length.FromMillimeters(Math.Round(Between(8, 40), 1) + 0.03);
        }

        double millimetres = diameter.Millimeters;
        Length embedment = NextLength(metric, 4 * millimetres, Chance(0.15) ? Math.Max(30 * millimetres, 800) : 16 * millimetres);
        AnchorSteel steel = NextSteel(diameter);
        bool torqued = Chance(0.2);
        bool grout = Chance(0.2);
        Area? tensile = Chance(0.2) ? Area.FromSquareMillimeters(Math.Round(0.6 * millimetres * millimetres, 1)) : null;
        Area? bearing = Chance(0.3) ? Area.FromSquareMillimeters(Math.Round(Between(1, 5) * millimetres * millimetres, 1)) : null;
        switch (kind)
        {
            case 0:
                return new HeadedBolt(diameter, steel, embedment) { IsTorqued = torqued, HasGroutPad = grout, TensileArea = tensile, BearingArea = bearing, Head = Pick(HeadShape.Hex, HeadShape.HeavyHex, HeadShape.Square) };
            case 1:
                PlateWasher? washer = !Chance(0.4) ? null
                    : Chance(0.5) ? PlateWasher.Square(3 * diameter, diameter / 2) : PlateWasher.Round(4 * diameter, Length.FromMillimeters(10));
                return new ThreadedRodWithNut(diameter, steel, embedment)
                {
                    IsTorqued = torqued, HasGroutPad = grout, TensileArea = tensile, BearingArea = bearing, Nut = Pick(HeadShape.HexNut, HeadShape.HeavyHexNut), Washer = washer,
                };
            case 2:
                return new HookedBolt(diameter, steel, embedment, Between(2.5, 6) * diameter) { IsTorqued = torqued, HasGroutPad = grout, TensileArea = tensile };
            default:
                WeldedPlate? plate = Chance(0.5) ? new WeldedPlate(Length.FromInches(Pick(0.25, 0.375, 0.5, 0.75)), Chance(0.5)) : null;
                return new HeadedStud(diameter, steel, embedment) { HasGroutPad = grout, TensileArea = tensile, BearingArea = bearing, WeldedToPlate = plate };
        }
    }

    private PostInstalledFastener NextPostInstalled(bool metric, Aci318Edition edition)
    {
        double nominal = metric ? Pick(8, 10, 12, 16, 20) : Pick(0.25, 0.375, 0.5, 0.625, 0.75);
        Length diameter = metric ? Length.FromMillimeters(nominal) : Length.FromInches(nominal);
        double millimetres = diameter.Millimeters;
        Length embedment = NextLength(metric, 3.8 * millimetres, Chance(0.3) ? 21 * millimetres : 10 * millimetres);
        AnchorSteel steel = NextSteel(diameter);
        double basic = edition.System == MeasurementSystem.PoundInch ? 17 : 7;
        int? category = Chance(0.95) ? _random.Next(1, 4) : null;
        BreakoutCoefficient? kc = Chance(0.4) ? new(Math.Round(basic * Between(0.9, 1.6), 1), Math.Round(basic * Between(0.9, 1.6), 1), edition.System) : null;
        Length? criticalEdge = Chance(0.4) ? NextLength(metric, 20 * millimetres, 50 * millimetres) : null;
        Force? shear = Chance(0.3) ? Force.FromKilonewtons(Math.Round(0.2 * millimetres * millimetres, 1)) : null;
        Length? spacing = Chance(0.3) ? NextLength(metric, 3 * millimetres, 8 * millimetres) : null;
        Length? edge = Chance(0.3) ? NextLength(metric, 3 * millimetres, 8 * millimetres) : null;
        Length? thickness = Chance(0.3) ? embedment * 1.5 : null;
        Area? tensile = Chance(0.7) ? Area.FromSquareMillimeters(Math.Round(0.6 * millimetres * millimetres, 1)) : null;
        bool grout = Chance(0.2);
        if (Chance(0.5))
        {
            BondStress? bond = Chance(0.7)
                ? new ProductBondStress(Pressure.FromMegapascals(Math.Round(Between(2, 10), 1)), Pressure.FromMegapascals(Math.Round(Between(6, 20), 1)))
                : Chance(0.9)
                ? new MinimumBondStress
                {
                    Environment = Pick(BondEnvironment.Indoor, BondEnvironment.Outdoor), ConcreteAge = Duration.FromDays(_random.Next(10, 60)),
                    InstallationTemperature = Temperature.FromDegreesFahrenheit(_random.Next(40, 80)), PeakTemperature = Temperature.FromDegreesFahrenheit(_random.Next(90, 190)),
                    Moisture = Pick(ConcreteMoisture.Dry, ConcreteMoisture.Saturated, ConcreteMoisture.WaterFilled), Drilling = Pick(DrillingMethod.RotaryImpact, DrillingMethod.Core, DrillingMethod.Other),
                }
                : null;
            var adhesive = new AdhesiveQualification
            {
                Category = category, BreakoutCoefficient = kc, CriticalEdgeDistance = criticalEdge, SteelShear = shear, MinimumSpacing = spacing, MinimumEdgeDistance = edge, MinimumThickness = thickness,
                BondStress = bond,
            };
            InstallationDirection? direction = Pick<InstallationDirection?>(null, InstallationDirection.Downward, InstallationDirection.Upward);
            return Chance(0.5)
                ? new AdhesiveRod(diameter, steel, embedment, adhesive) { TensileArea = tensile, HasGroutPad = grout, Direction = direction }
                : new AdhesiveBar(diameter, steel, embedment, adhesive) { TensileArea = tensile, HasGroutPad = grout, Direction = direction };
        }

        Force Pullout() => Force.FromKilonewtons(Math.Round(Math.Pow(embedment.Millimeters, 1.5) * Between(0.02, 0.08), 1));
        PulloutStrength? pullout = Chance(0.1) ? null
            : Chance(0.2) ? PulloutStrength.NotGoverning
            : Chance(0.5) ? new PulloutStrength(Pullout(), Pullout()) : new PulloutStrength(Pullout(), Pullout()) { At = Pressure.FromPoundsForcePerSquareInch(2500), Exponent = Pick(0.5, 0.3, 0.42) };
        var data = new MechanicalQualification
        {
            Category = category, BreakoutCoefficient = kc, CriticalEdgeDistance = criticalEdge, SteelShear = shear, MinimumSpacing = spacing, MinimumEdgeDistance = edge, MinimumThickness = thickness,
            Pullout = pullout,
        };
        return _random.Next(4) switch
        {
            0 => new TorqueControlledExpansion(diameter, steel, embedment, data) { TensileArea = tensile, HasGroutPad = grout, HasSeparatedSleeve = Chance(0.3) },
            1 => new DisplacementControlledExpansion(diameter, steel, embedment, data) { TensileArea = tensile, HasGroutPad = grout },
            2 => new UndercutFastener(diameter, steel, embedment, data) { TensileArea = tensile, HasGroutPad = grout },
            _ => new ScrewFastener(diameter, steel, embedment, data) { TensileArea = tensile, HasGroutPad = grout },
        };
    }

    private AnchorSteel NextSteel(Length diameter)
    {
        AnchorSteel[] fitting = [.. AnchorSteels.Designations.Select(d => AnchorSteels.TryFind(d, diameter, out AnchorSteel? s) ? s : null).OfType<AnchorSteel>()];
        if (Chance(0.85))
        {
            return Pick(fitting);
        }

        double yield = Math.Round(Between(30, 120), 1);
        return new AnchorSteel("invented steel", Pressure.FromKilopoundsForcePerSquareInch(yield), Pressure.FromKilopoundsForcePerSquareInch(yield * Between(1, 2.5)), Chance(0.5));
    }

    private FastenerLayout NextLayout(bool metric, double embedment)
    {
        Length Spacing() => NextLength(metric, 0.2 * embedment, (Chance(0.15) ? 6 : 2) * embedment);
        FastenerLayout layout = _random.Next(7) switch
        {
            0 => FastenerLayout.Single(),
            1 => FastenerLayout.RowAlongX(_random.Next(2, 5), Spacing()),
            2 => FastenerLayout.RowAlongY(_random.Next(2, 5), Spacing()),
            3 => FastenerLayout.Circle(_random.Next(3, 9), Spacing(), Between(0, 90)),
            4 => Scattered(_random.Next(2, 8), Spacing),
            _ => FastenerLayout.Rectangle(_random.Next(2, 4), Spacing(), _random.Next(2, 5), Spacing()),
        };
        if (!Chance(0.3))
        {
            return layout;
        }

        Length shiftX = NextLength(metric, 1, 2 * embedment), shiftY = NextLength(metric, 1, 2 * embedment);
        return FastenerLayout.Points([.. layout.Positions.Select(p => new FastenerPosition(p.X + shiftX, p.Y - shiftY))]);
    }

    /// <summary>Fasteners without any order, none closer than a spacing along x.</summary>
    private FastenerLayout Scattered(int count, Func<Length> spacing)
    {
        Length x = Length.Zero;
        var positions = new List<FastenerPosition>();
        for (int i = 0; i < count; i++)
        {
            positions.Add(new(x, spacing() * Between(-1, 1)));
            x += spacing();
        }

        return FastenerLayout.Points(positions);
    }

    private EdgeDistances NextEdges(bool metric, FastenerLayout layout, double embedment)
    {
        double right = layout.Positions.Max(p => p.X.Millimeters), left = -layout.Positions.Min(p => p.X.Millimeters);
        double top = layout.Positions.Max(p => p.Y.Millimeters), bottom = -layout.Positions.Min(p => p.Y.Millimeters);
        Length? Edge(double outermost)
        {
            if (Chance(0.35))
            {
                return null;
            }

            double reach = Chance(0.3) ? Between(0.1, 0.4) : Between(0.3, 3);
            double distance = Math.Max(reach * embedment, 20);
            double from = Math.Floor(outermost);
            return metric ? Length.FromMillimeters(Math.Ceiling(from + distance + 1)) : Length.FromInches(Math.Ceiling((from + distance + 1) / 25.4 * 8) / 8);
        }

        return new EdgeDistances { PlusX = Edge(right), MinusX = Edge(left), PlusY = Edge(top), MinusY = Edge(bottom) };
    }

    /// <summary>Actions of any size; moments only such as the layout carries, with the forces then at its centroid.</summary>
    private LoadCase NextLoadCase(FastenerLayout layout, double embedment)
    {
        double size = Math.Pow(10, Between(-0.5, 1.8)) * Math.Pow(embedment / 200, 1.5) * layout.Positions.Length;
        Force Component(double chance) => Chance(chance)
            ? Chance(0.5) ? Force.FromKilonewtons(size * Between(-1, 1)) : Force.FromKilopoundsForce(Math.Round(size * Between(-1, 1) / 4.4, 2))
            : Force.Zero;
        Torque Moment(double chance) => Chance(chance)
            ? Chance(0.5) ? Torque.FromKilonewtonMeters(size * embedment / 2000 * Between(-1, 1)) : Torque.FromKilopoundForceInches(Math.Round(size * embedment / 200 * Between(-1, 1), 1))
            : Torque.Zero;

        double centreX = layout.Positions.Average(p => p.X.Millimeters), centreY = layout.Positions.Average(p => p.Y.Millimeters);
        var centroid = new FastenerPosition(Length.FromMillimeters(centreX), Length.FromMillimeters(centreY));
        Force n = Chance(0.1) ? Component(0.5) : Chance(0.5) ? Force.FromKilonewtons(Math.Abs(size * Between(-1, 1))) : Force.FromKilopoundsForce(Math.Round(Math.Abs(size * Between(-1, 1) / 4.4), 2));
        Force? sustained = n.Value > 0 && Chance(0.4) ? n * Math.Round(Between(0, 1), 2) : null;
        var forces = new LoadCase("1.2D + 1.0W") { N = n, SustainedTension = sustained, Vx = Component(0.5), Vy = Component(0.5), At = centroid };
        FastenerPosition[] places = [.. layout.Positions];
        if (places.Length == 1)
        {
            return forces with { At = places[0] };
        }

        double dx = places.Max(p => p.X.Millimeters) - places.Min(p => p.X.Millimeters), dy = places.Max(p => p.Y.Millimeters) - places.Min(p => p.Y.Millimeters);
        bool alongX = dy < 1e-6 * dx, alongY = dx < 1e-6 * dy;
        if (alongX || alongY)
        {
            return forces with { Mx = alongX ? Torque.Zero : Moment(0.5), My = alongY ? Torque.Zero : Moment(0.5), Mz = Moment(0.3) };
        }

        if (places.Length == 2)
        {
            return forces with { Mz = Moment(0.3) };
        }

        LoadCase any = forces with { Mx = Moment(0.5), My = Moment(0.5), Mz = Moment(0.4) };
        return Chance(0.5) ? any with { At = new(Length.FromMillimeters(Math.Round(Between(-1, 1) * embedment)), Length.FromMillimeters(Math.Round(Between(-1, 1) * embedment))) } : any;
    }

    private Pressure NextStrength(bool metric) => _random.Next(3) switch
    {
        0 => Pressure.FromPoundsForcePerSquareInch(500 * _random.Next(4, 25)),
        1 => metric ? Pressure.FromMegapascals(_random.Next(15, 80)) : Pressure.FromPoundsForcePerSquareInch(100 * _random.Next(20, 120)),
        _ => Pressure.FromMegapascals(Between(15, 80)),
    };

    private ConcreteDensity NextDensity(bool metric) => ConcreteDensity.Of(
        metric ? Density.FromKilogramsPerCubicMeter(Math.Round(Between(1500, 2400))) : Density.FromPoundsPerCubicFoot(Chance(0.2) ? Pick(100.0, 135, 133.4) : Math.Round(Between(90, 150), 1)));

    /// <summary>A length between two, in millimetres: as a person writes it, or any.</summary>
    private Length NextLength(bool metric, double from, double to)
    {
        double value = Between(from, to);
        return _random.Next(4) == 0 ? Length.FromMillimeters(value)
            : metric ? Length.FromMillimeters(Math.Max(1, Math.Round(value)))
            : Length.FromInches(Math.Max(0.125, Math.Round(value / 25.4 * 8) / 8));
    }

    private double Between(double from, double to) => from + ((to - from) * _random.NextDouble());

    private bool Chance(double probability) => _random.NextDouble() < probability;

    private T Pick<T>(params T[] from) => from[_random.Next(from.Length)];
}
