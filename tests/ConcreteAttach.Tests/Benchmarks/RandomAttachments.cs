using ConcreteAttach.Aci318;
using ConcreteAttach.Actions;
using ConcreteAttach.Attached;
using ConcreteAttach.Fasteners;
using ConcreteAttach.Geometry;
using ConcreteAttach.Materials;
using ConcreteAttach.Quantities;
using UnitsNet;

namespace ConcreteAttach.Tests.Benchmarks;

/// <summary>
/// Random attachments that reach every branch of the modes: all kinds of fastener, missing data, any layout from one fastener to far groups,
/// zero to four edges near and far, compression, no demand, and every option. Half of the lengths are whole inches, so that limits are met exactly.
/// </summary>
internal sealed class RandomAttachments(int seed)
{
    private readonly Random _random = new(seed);

    public (Attachment Attachment, LoadCase LoadCase, Aci318Options Options) Next()
    {
        bool isPostInstalled = Likely(0.5);
        double embedment = isPostInstalled ? Pick(Between(1.2, 10), Whole(2, 10), 2.5) : Pick(Between(2, 30), Whole(2, 30), Whole(4, 12), 11, 25);
        List<FastenerPosition> positions = Positions(embedment);
        double right = positions.Max(p => p.X.Inches), left = positions.Min(p => p.X.Inches);
        double top = positions.Max(p => p.Y.Inches), bottom = positions.Min(p => p.Y.Inches);
        var edges = new EdgeDistances
        {
            PlusX = Edge(right, embedment),
            MinusX = Edge(-left, embedment),
            PlusY = Edge(top, embedment),
            MinusY = Edge(-bottom, embedment),
        };
        var concrete = new ConcreteMember(Pressure.FromPoundsForcePerSquareInch(Pick(4000, 10_000, Between(2000, 14_000))), Inches(Between(4, 48)))
        {
            Edges = edges,
            Density = Pick(ConcreteDensity.Normalweight, ConcreteDensity.SandLightweight, ConcreteDensity.AllLightweight, ConcreteDensity.Of(Density.FromPoundsPerCubicFoot(Between(90, 150)))),
            IsCracked = Likely(0.6),
            HasSupplementaryReinforcementForTension = Likely(0.3),
            HasSupplementaryReinforcementForShear = Likely(0.3),
            EdgeReinforcement = Pick(EdgeReinforcement.None, EdgeReinforcement.Bar, EdgeReinforcement.BarAndStirrups),
            HasSplittingReinforcement = Likely(0.2),
        };
        var options = new Aci318Options
        {
            Area = Likely(0.3) ? AreaReading.Bounding : AreaReading.Union,
            CloseEdges = Likely(0.3) ? CloseEdgesReading.AllFasteners : CloseEdgesReading.Group,
            Deep = Likely(0.3) ? DeepReading.Extend : DeepReading.Revert,
        };
        Fastener fastener = isPostInstalled ? PostInstalled(embedment) : CastIn(embedment);
        return (new Attachment(concrete, fastener, FastenerLayout.Points(positions)), LoadCaseFor(positions), options);
    }

    private PostInstalledFastener PostInstalled(double embedment)
    {
        Length diameter = Inches(Pick(0.25, 0.375, 0.5, 0.625, 0.75, Between(0.25, 1.25)));
        Length hef = Inches(embedment);
        var steel = new AnchorSteel("steel of a test", Psi(60_000), Psi(Between(65_000, 140_000)), Likely(0.5));
        int? category = Likely(0.9) ? _random.Next(1, 4) : null;
        BreakoutCoefficient? kc = Likely(0.5) ? new(Maybe(Between(15, 27)), Maybe(Between(15, 32)), MeasurementSystem.PoundInch) : null;
        Length? criticalEdge = Likely(0.4) ? Inches(embedment * Between(1, 5)) : null;
        Force? shear = Likely(0.3) ? Kip(Between(1, 20)) : null;
        bool isUncrackedOnly = Likely(0.05);
        Area? tensile = Likely(0.7) ? Area.FromSquareInches(Between(0.05, 0.6)) : null;
        bool hasGroutPad = Likely(0.2);
        if (Likely(0.5))
        {
            BondStress? bond = _random.Next(5) switch
            {
                0 => null,
                1 => new MinimumBondStress
                {
                    Environment = Pick(BondEnvironment.Indoor, BondEnvironment.Outdoor), ConcreteAge = Duration.FromDays(Between(7, 60)),
                    InstallationTemperature = Temperature.FromDegreesFahrenheit(Between(40, 80)), PeakTemperature = Temperature.FromDegreesFahrenheit(Between(80, 200)),
                    Moisture = Pick(ConcreteMoisture.Dry, ConcreteMoisture.Saturated, ConcreteMoisture.WaterFilled), Drilling = Pick(DrillingMethod.RotaryImpact, DrillingMethod.Core),
                },
                _ => new ProductBondStress(Likely(0.9) ? Psi(Between(200, 1500)) : null, Likely(0.95) ? Psi(Between(600, 3000)) : null),
            };
            var adhesive = new AdhesiveQualification
            {
                Category = category, BreakoutCoefficient = kc, CriticalEdgeDistance = criticalEdge, SteelShear = shear, IsForUncrackedConcreteOnly = isUncrackedOnly, BondStress = bond,
            };
            return Likely(0.5)
                ? new AdhesiveRod(diameter, steel, hef, adhesive) { TensileArea = tensile, HasGroutPad = hasGroutPad }
                : new AdhesiveBar(diameter, steel, hef, adhesive) { TensileArea = tensile, HasGroutPad = hasGroutPad };
        }

        PulloutStrength? pullout = _random.Next(5) switch
        {
            0 => null,
            1 => PulloutStrength.NotGoverning,
            2 => new PulloutStrength(Kip(Between(1, 20)), Kip(Between(1, 20))),
            _ => new PulloutStrength(Likely(0.9) ? Kip(Between(1, 20)) : null, Likely(0.9) ? Kip(Between(1, 20)) : null) { At = Psi(2500), Exponent = Pick(0.5, Between(0, 1)) },
        };
        var data = new MechanicalQualification
        {
            Category = category, BreakoutCoefficient = kc, CriticalEdgeDistance = criticalEdge, SteelShear = shear, IsForUncrackedConcreteOnly = isUncrackedOnly, Pullout = pullout,
        };
        return _random.Next(4) switch
        {
            0 => new TorqueControlledExpansion(diameter, steel, hef, data) { TensileArea = tensile, HasGroutPad = hasGroutPad, HasSeparatedSleeve = Likely(0.3) },
            1 => new DisplacementControlledExpansion(diameter, steel, hef, data) { TensileArea = tensile, HasGroutPad = hasGroutPad },
            2 => new UndercutFastener(diameter, steel, hef, data) { TensileArea = tensile, HasGroutPad = hasGroutPad },
            _ => new ScrewFastener(diameter, steel, hef, data) { TensileArea = tensile, HasGroutPad = hasGroutPad },
        };
    }

    private double? Maybe(double value) => Likely(0.8) ? value : null;

    private CastInFastener CastIn(double embedment)
    {
        double diameter = Pick(0.5, 0.625, 0.75, 1, 1.5, Between(0.4, 2), 4, 4.5); // tables know some of them
        Length length = Inches(diameter);
        double yield = Between(30_000, 110_000);
        var steel = new AnchorSteel("steel of a test", Psi(yield), Psi(yield * Between(1.05, 2.2)), Likely(0.5));
        bool hasGroutPad = Likely(0.2);
        Area? bearing = Likely(0.7) ? Area.FromSquareInches(Between(0.3, 3) * diameter * diameter) : null;
        Area? tensile = Likely(0.5) ? Area.FromSquareInches(Between(0.5, 0.78) * diameter * diameter) : null;
        return _random.Next(5) switch
        {
            0 => new HookedBolt(length, steel, Inches(embedment), Inches(diameter * Pick(3, 4.5, Between(2, 6)))) { HasGroutPad = hasGroutPad, TensileArea = tensile },
            1 => new HeadedStud(length, steel, Inches(embedment))
            {
                BearingArea = bearing,
                WeldedToPlate = Likely(0.7) ? new WeldedPlate(Inches(Pick(0.25, 0.375, 0.5, 1)), Likely(0.5)) : null,
                HasGroutPad = hasGroutPad,
            },
            2 => new ThreadedRodWithNut(length, steel, Inches(embedment)) { BearingArea = bearing, TensileArea = tensile, HasGroutPad = hasGroutPad },
            _ => new HeadedBolt(length, steel, Inches(embedment)) { BearingArea = bearing, TensileArea = tensile, HasGroutPad = hasGroutPad },
        };
    }

    private List<FastenerPosition> Positions(double embedment)
    {
        double spacing = Pick(Whole(2, 12), Between(2, 12), 3 * embedment, Between(0.5, 4) * embedment);
        double other = Pick(Whole(2, 12), Between(2, 12), Between(0.5, 4) * embedment);
        switch (_random.Next(7))
        {
            case 0:
                return [.. FastenerLayout.Single().Positions];
            case 1:
                return [.. FastenerLayout.RowAlongX(_random.Next(2, 8), Inches(spacing)).Positions];
            case 2:
                return [.. FastenerLayout.RowAlongY(_random.Next(2, 8), Inches(spacing)).Positions];
            case 3:
                return [.. FastenerLayout.Circle(_random.Next(3, 13), Inches(spacing + 2), Between(0, 90)).Positions];
            case 4:
                // Two grids apart.
                FastenerLayout grid = FastenerLayout.Rectangle(_random.Next(1, 4), Inches(Math.Min(spacing, 6)), _random.Next(1, 4), Inches(Math.Min(other, 6)));
                Length shift = Inches(Whole(10, 100));
                return [.. grid.Positions, .. grid.Positions.Select(p => new FastenerPosition(p.X + shift, p.Y))];
            case 5:
                // Scattered: a place of its own in a cell for each.
                int columns = _random.Next(2, 6);
                return [.. Enumerable.Range(0, _random.Next(3, 30)).Select(i => new FastenerPosition(
                    Inches((spacing * (i % columns)) + Between(0, 0.9 * spacing)), Inches((other * (i / columns)) + Between(0, 0.9 * other))))];
            default:
                return [.. FastenerLayout.Rectangle(_random.Next(1, 6), Inches(spacing), _random.Next(1, 6), Inches(other)).Positions];
        }
    }

    /// <summary>A load that the layout can carry: no moment that needs contact.</summary>
    private LoadCase LoadCaseFor(List<FastenerPosition> positions)
    {
        if (Likely(0.05))
        {
            return new LoadCase("none");
        }

        bool isPoint = positions.Count == 1;
        bool isRowAlongX = positions.All(p => p.Y.Inches == positions[0].Y.Inches);
        bool isRowAlongY = positions.All(p => p.X.Inches == positions[0].X.Inches);
        double size = positions.Count * 10;
        double tension = Pick(Between(-0.3, 1), Between(0, 1), 0) * size;
        return new LoadCase("case")
        {
            N = Kip(tension),
            SustainedTension = tension > 0 && Likely(0.5) ? Kip(tension * Between(0, 1)) : null,
            Vx = Kip(Pick(Between(-1, 1), 0) * size),
            Vy = Kip(Pick(Between(-1, 1), 0) * size),
            Mx = Moment(isPoint || isRowAlongX ? 0 : Pick(Between(-1, 1), 0) * size * 3),
            My = Moment(isPoint || isRowAlongY ? 0 : Pick(Between(-1, 1), 0) * size * 3),
            Mz = Moment(isPoint ? 0 : Pick(Between(-1, 1), 0, 0) * size * 3),
            At = isPoint || isRowAlongX || isRowAlongY
                ? new FastenerPosition(positions.Aggregate(Length.Zero, (sum, p) => sum + p.X) / positions.Count, positions.Aggregate(Length.Zero, (sum, p) => sum + p.Y) / positions.Count)
                : default,
        };
    }

    private Length? Edge(double outermost, double embedment) => _random.Next(6) switch
    {
        0 or 1 => null,
        2 => Inches(outermost + (1.5 * embedment)),
        3 => Inches(outermost + Whole(2, 10)),
        4 => Inches(outermost + (embedment * Between(0.15, 0.6))),
        _ => Inches(outermost + Between(1.5, 40)),
    };

    private double Between(double low, double high) => low + ((high - low) * _random.NextDouble());

    private double Whole(int low, int high) => _random.Next(low, high + 1);

    private bool Likely(double probability) => _random.NextDouble() < probability;

    private T Pick<T>(params T[] choices) => choices[_random.Next(choices.Length)];

    private static Length Inches(double value) => Length.FromInches(value);

    private static Pressure Psi(double value) => Pressure.FromPoundsForcePerSquareInch(value);

    private static Force Kip(double value) => Force.FromKilopoundsForce(value);

    private static Torque Moment(double kipInches) => Torque.FromKilopoundForceInches(kipInches);
}
