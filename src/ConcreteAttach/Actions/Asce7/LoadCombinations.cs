using System.Collections.Immutable;
using System.Globalization;
using ConcreteAttach.Calculation;
using ConcreteAttach.Geometry;
using ConcreteAttach.Quantities;
using UnitsNet;

namespace ConcreteAttach.Actions.Asce7;

/// <summary>A load case that a load combination makes, with its sum.</summary>
/// <param name="LoadCase">The load case, named by its combination.</param>
/// <param name="Leading">The load that leads the combination.</param>
/// <param name="Acting">Every kind of load in it.</param>
/// <param name="Sheet">How each component comes about.</param>
public sealed record CombinedLoadCase(LoadCase LoadCase, LoadKind Leading, ImmutableArray<LoadKind> Acting, CalculationSheet Sheet);

/// <summary>
/// Load combinations of ASCE 7 chapter 2 with the seismic load effects of 12.4: strength design (2.3.1, 2.3.6) and allowable stress design (2.4.1, 2.4.5). Each combination is formed with and without each of its companion loads, for a
/// load that is absent may be the worse case, and with both signs of what reverses. From memory.
/// </summary>
/// <remarks>
/// Fluid, soil, flood, ice, tornado and self-straining loads are not in it: form load cases with them yourself. Whether an overstrength factor counts is for ACI 318-19 17.10 to say, which takes it on the earthquake's part of the load case;
/// 12.3.4.1 sets the redundancy factor to 1 there.
/// </remarks>
/// <param name="Edition">The edition.</param>
public sealed record LoadCombinations(Asce7Edition Edition)
{
    /// <summary>S_DS, in g, 0 or more; the vertical effect is 0.2 S_DS D. 0 by default; needed with an earthquake.</summary>
    /// <exception cref="InputException">Below 0, or not finite.</exception>
    public double DesignAcceleration
    {
        get;
        init => field = value is >= 0 and < double.PositiveInfinity ? value : throw new InputException("designAcceleration", QuantityText.Format(value), "0 or more");
    }

    /// <summary>ρ: 1 or 1.3 (12.3.4); 1 by default.</summary>
    /// <exception cref="InputException">Another number.</exception>
    public double Redundancy { get; init => field = value is 1 or 1.3 ? value : throw new InputException("redundancy", QuantityText.Format(value), "1 or 1.3 (12.3.4)"); } = 1;

    /// <summary>Factor on companion live load in strength design: 1, or 0.5 where 2.3.1 permits it (live load of at most 100 psf, no garage, no place of public assembly). 1 by default.</summary>
    /// <exception cref="InputException">Another number.</exception>
    public double CompanionLive { get; init => field = value is 1 or 0.5 ? value : throw new InputException("companionLive", QuantityText.Format(value), "1, or 0.5 where 2.3.1 permits it"); } = 1;

    /// <summary>The point of the surface at which the loads act; the origin by default.</summary>
    public FastenerPosition At { get; init; }

    /// <summary>The units in which the sums are printed; inch-pound by default.</summary>
    public MeasurementSystem System { get; init; }

    /// <summary>The settings, in words.</summary>
    public override string ToString() =>
        $"{Edition.Designation()}, S_DS {QuantityText.Format(DesignAcceleration)}, ρ {QuantityText.Format(Redundancy)}, companion live load {QuantityText.Format(CompanionLive)}, at {At}";

    /// <summary>The load cases of strength design.</summary>
    /// <param name="loads">Nominal loads; those of one kind add up, but winds and earthquakes, of which each acts alone.</param>
    /// <returns>The load cases, in the order of the combinations; of different names.</returns>
    /// <exception cref="InputException">No load, a wind or earthquake that cannot be told from another, or an earthquake without S_DS.</exception>
    public ImmutableArray<CombinedLoadCase> Strength(IEnumerable<NominalLoad> loads) => Form(StrengthCombinations(), [.. loads], null);

    /// <summary>The load cases of allowable stress design.</summary>
    /// <param name="loads">Nominal loads, wind and earthquake at strength level.</param>
    /// <param name="weightedLoadFactor">α by which strengths of ACI 318 are divided, see <see cref="LoadCase.WeightedLoadFactor"/>; 1 or more.</param>
    /// <returns>The load cases, in the order of the combinations; of different names.</returns>
    /// <exception cref="InputException">As in strength design, or a factor below 1.</exception>
    public ImmutableArray<CombinedLoadCase> AllowableStress(IEnumerable<NominalLoad> loads, double weightedLoadFactor) => Form(AllowableCombinations(), [.. loads], weightedLoadFactor);

    private Combination[] StrengthCombinations()
    {
        bool is2022 = Edition == Asce7Edition.Edition2022;
        double snow = is2022 ? 1.0 : 1.6, companionSnow = is2022 ? 0.3 : 0.5, snowWithEarthquake = is2022 ? 0.15 : 0.2;
        Part roof = new((LoadKind.RoofLive, 0.5), (LoadKind.Snow, companionSnow), (LoadKind.Rain, 0.5));
        var live = new Part((LoadKind.Live, CompanionLive));
        return
        [
            new("2.3.1, 1", 1.4, 0, null, []),
            new("2.3.1, 2", 1.2, 0, new((LoadKind.Live, 1.6)), [roof]),
            new("2.3.1, 3", 1.2, 0, new((LoadKind.RoofLive, 1.6), (LoadKind.Snow, snow), (LoadKind.Rain, 1.6)), [new((LoadKind.Live, CompanionLive), (LoadKind.Wind, 0.5))]),
            new("2.3.1, 4", 1.2, 0, new((LoadKind.Wind, 1)), [live, roof]),
            new("2.3.1, 5", 0.9, 0, new((LoadKind.Wind, 1)), []),
            new("2.3.6, 6", 1.2, 1, new((LoadKind.Earthquake, 1)), [live, new((LoadKind.Snow, snowWithEarthquake))]),
            new("2.3.6, 7", 0.9, -1, new((LoadKind.Earthquake, 1)), []),
        ];
    }

    private Combination[] AllowableCombinations()
    {
        bool is2022 = Edition == Asce7Edition.Edition2022;
        double snow = is2022 ? 0.7 : 1;
        Part roof = new((LoadKind.RoofLive, 1), (LoadKind.Snow, snow), (LoadKind.Rain, 1));
        Part lessRoof = new((LoadKind.RoofLive, 0.75), (LoadKind.Snow, 0.75 * snow), (LoadKind.Rain, 0.75));
        var live = new Part((LoadKind.Live, 0.75));
        return
        [
            new("2.4.1, 1", 1, 0, null, []),
            new("2.4.1, 2", 1, 0, new((LoadKind.Live, 1)), []),
            new("2.4.1, 3", 1, 0, roof, []),
            new("2.4.1, 4", 1, 0, live, [lessRoof]),
            new("2.4.1, 5", 1, 0, new((LoadKind.Wind, 0.6)), []),
            new("2.4.1, 6", 1, 0, new((LoadKind.Wind, 0.45)), [live, lessRoof]),
            new("2.4.1, 7", 0.6, 0, new((LoadKind.Wind, 0.6)), []),
            new("2.4.5, 8", 1, 0.7, new((LoadKind.Earthquake, 0.7)), []),
            new("2.4.5, 9", 1, 0.525, new((LoadKind.Earthquake, 0.525)), [live, new((LoadKind.Snow, is2022 ? 0.1 : 0.75))]),
            new("2.4.5, 10", 0.6, -0.7, new((LoadKind.Earthquake, 0.7)), []),
        ];
    }

    private ImmutableArray<CombinedLoadCase> Form(Combination[] combinations, NominalLoad[] loads, double? weightedLoadFactor)
    {
        RequireUsable(loads);
        var cases = new Dictionary<string, CombinedLoadCase>(StringComparer.Ordinal);
        foreach (Combination combination in combinations)
        {
            foreach (Acting[] acting in Choices(combination, loads))
            {
                CombinedLoadCase formed = Sum(combination, acting, loads, weightedLoadFactor);
                cases.TryAdd(formed.LoadCase.Name, formed);
            }
        }

        return [.. cases.Values];
    }

    private void RequireUsable(NominalLoad[] loads)
    {
        if (loads.Length == 0)
        {
            throw new InputException("loads", "no load", "at least one");
        }

        foreach (IGrouping<(LoadKind Kind, string? Name), NominalLoad> same in loads.Where(l => ActsAlone(l.Kind)).GroupBy(l => (l.Kind, l.Name)))
        {
            if (same.Count() > 1)
            {
                throw new InputException("name", $"two loads {Letter(same.Key.Kind)} named \"{same.Key.Name}\"", "a name of its own for each wind and each earthquake, for each acts alone");
            }
        }

        if (DesignAcceleration == 0 && Array.Exists(loads, l => l.Kind == LoadKind.Earthquake))
        {
            throw new InputException("designAcceleration", "0", "S_DS greater than 0 with an earthquake: its vertical effect is 0.2 S_DS D");
        }
    }

    private static bool ActsAlone(LoadKind kind) => kind is LoadKind.Wind or LoadKind.Earthquake;

    /// <summary>What may act in a combination: its leading load in every choice and sign, each companion absent or in every choice and sign.</summary>
    private static IEnumerable<Acting[]> Choices(Combination combination, NominalLoad[] loads)
    {
        IEnumerable<Acting[]> sets = combination.Leading is { } leading ? ChoicesOf(leading, loads).Select(a => new[] { a }) : [[]];
        foreach (Part companion in combination.Companions)
        {
            Acting[] choices = [.. ChoicesOf(companion, loads)];
            sets = sets.SelectMany(set => choices.Select(c => (Acting[])[.. set, c]).Prepend(set));
        }

        return sets;
    }

    private static IEnumerable<Acting> ChoicesOf(Part part, NominalLoad[] loads)
    {
        foreach ((LoadKind kind, double factor) in part.Choices)
        {
            NominalLoad[] ofKind = [.. loads.Where(l => l.Kind == kind)];
            if (!ActsAlone(kind))
            {
                if (ofKind.Length > 0)
                {
                    yield return new Acting(kind, factor, ofKind, null);
                }

                continue;
            }

            foreach (NominalLoad load in ofKind)
            {
                string? name = ofKind.Length > 1 ? load.Name : null;
                yield return new Acting(kind, factor, [load], name);
                if (load.Reverses)
                {
                    yield return new Acting(kind, -factor, [load], name);
                }
            }
        }
    }

    private CombinedLoadCase Sum(Combination combination, Acting[] acting, NominalLoad[] loads, double? weightedLoadFactor)
    {
        var recorder = new SheetRecorder(System);
        var sheet = new Sheet<TracedNumber>(recorder);
        NominalLoad[] dead = [.. loads.Where(l => l.Kind == LoadKind.Dead)];
        var sum = new Summation(this, combination, [new Acting(LoadKind.Dead, combination.Dead, dead, null), .. acting], sheet);
        (double n, double eN) = sum.Of("N", Dimension.Force, l => l.N.In(System));
        (double vx, double eVx) = sum.Of("V_x", Dimension.Force, l => l.Vx.In(System));
        (double vy, double eVy) = sum.Of("V_y", Dimension.Force, l => l.Vy.In(System));
        (double mx, double eMx) = sum.Of("M_x", Dimension.Moment, l => l.Mx.In(System));
        (double my, double eMy) = sum.Of("M_y", Dimension.Moment, l => l.My.In(System));
        (double mz, double eMz) = sum.Of("M_z", Dimension.Moment, l => l.Mz.In(System));
        double sustained = Math.Min(sum.SustainedTension(System), n);
        bool isEarthquake = Array.Exists(acting, a => a.Kind == LoadKind.Earthquake);
        var loadCase = new LoadCase(NameOf(combination, acting))
        {
            N = PrintedUnits.Force(n, System), Vx = PrintedUnits.Force(vx, System), Vy = PrintedUnits.Force(vy, System),
            Mx = PrintedUnits.Moment(mx, System), My = PrintedUnits.Moment(my, System), Mz = PrintedUnits.Moment(mz, System),
            At = At,
            SustainedTension = sustained > 0 ? PrintedUnits.Force(sustained, System) : null,
            Earthquake = !isEarthquake ? null : new EarthquakeActions
            {
                N = PrintedUnits.Force(eN, System), Vx = PrintedUnits.Force(eVx, System), Vy = PrintedUnits.Force(eVy, System),
                Mx = PrintedUnits.Moment(eMx, System), My = PrintedUnits.Moment(eMy, System), Mz = PrintedUnits.Moment(eMz, System),
            },
            Format = weightedLoadFactor is null ? SafetyFormat.StrengthDesign : SafetyFormat.AllowableStressDesign,
            WeightedLoadFactor = weightedLoadFactor,
        };
        LoadKind leading = acting.Length > 0 && combination.Leading is not null ? acting[0].Kind : LoadKind.Dead;
        return new CombinedLoadCase(loadCase, leading, [.. acting.Select(a => a.Kind).Prepend(LoadKind.Dead)], recorder.ToSheet());
    }

    /// <summary>The combination as it is written: <c>1.2D + 1.0W + 1.0L</c>, <c>0.9D - Ev - Eh</c>.</summary>
    private static string NameOf(Combination combination, Acting[] acting)
    {
        string text = $"{Number(combination.Dead)}D";
        foreach (Acting load in acting)
        {
            string sign = load.Factor < 0 ? "-" : "+";
            string factor = Number(Math.Abs(load.Factor));
            if (load.Kind == LoadKind.Earthquake)
            {
                string part = Math.Abs(load.Factor) == 1 ? "" : factor;
                text += $" {(combination.Vertical < 0 ? "-" : "+")} {part}Ev {sign} {part}Eh";
            }
            else
            {
                text += $" {sign} {factor}{Letter(load.Kind)}";
            }

            text += load.Name is null ? "" : $" ({load.Name})";
        }

        return text;
    }

    private static string Number(double factor) => factor.ToString("0.0###", CultureInfo.InvariantCulture);

    private static string Letter(LoadKind kind) => kind switch
    {
        LoadKind.Dead => "D",
        LoadKind.Live => "L",
        LoadKind.RoofLive => "Lr",
        LoadKind.Snow => "S",
        LoadKind.Rain => "R",
        LoadKind.Wind => "W",
        _ => "E",
    };

    /// <summary>A combination as the standard prints it.</summary>
    /// <param name="Clause">Clause and number.</param>
    /// <param name="Dead">Factor on D.</param>
    /// <param name="Vertical">Factor on E_v, which is 0.2 S_DS D.</param>
    /// <param name="Leading">The load without which it is not formed; null: D alone.</param>
    /// <param name="Companions">Loads that may act besides.</param>
    private sealed record Combination(string Clause, double Dead, double Vertical, Part? Leading, Part[] Companions);

    /// <summary>One of several loads, each with its factor.</summary>
    private sealed record Part(params (LoadKind Kind, double Factor)[] Choices);

    /// <summary>A load that acts, with its factor and sign.</summary>
    private sealed record Acting(LoadKind Kind, double Factor, NominalLoad[] Loads, string? Name);

    /// <summary>Adds up a combination, component by component.</summary>
    private sealed class Summation(LoadCombinations settings, Combination combination, Acting[] acting, Sheet<TracedNumber> sheet)
    {
        /// <summary>The component, and its part that is the horizontal effect of the earthquake.</summary>
        public (double Sum, double OfEarthquake) Of(string id, Dimension dimension, Func<NominalLoad, double> component)
        {
            if (Array.TrueForAll(acting, a => a.Loads.All(l => component(l) == 0)))
            {
                return (0, 0);
            }

            TracedNumber? sum = null;
            double ofEarthquake = 0;
            foreach (Acting load in acting)
            {
                double value = load.Loads.Sum(component);
                if (value == 0)
                {
                    continue;
                }

                TracedNumber given = sheet.Given($"{id}_{Letter(load.Kind)}", value, dimension);
                if (load.Kind == LoadKind.Earthquake)
                {
                    double redundancy = load.Loads[0].TakesRedundancy ? settings.Redundancy : 1;
                    TracedNumber rho = sheet.Given("rho", redundancy, Dimension.None, load.Loads[0].TakesRedundancy ? "12.3.4" : "12.3.4.1, 1 for this force");
                    ofEarthquake = load.Factor * redundancy * value;
                    sum = Add(sum, load.Factor, rho * given);
                    continue;
                }

                sum = Add(sum, load.Factor, given);
                if (load.Kind == LoadKind.Dead && combination.Vertical != 0)
                {
                    TracedNumber sds = sheet.Given("S_DS", settings.DesignAcceleration, Dimension.None, "E_v = 0.2 S_DS D, 12.4.2.2");
                    sum = Add(sum, combination.Vertical, 0.2 * sds * given);
                }
            }

            return (sheet.Step(id, sum!.Value, dimension, combination.Clause).Value, ofEarthquake);
        }

        /// <summary>Tension of the loads that stay, by their factors; 0 or more.</summary>
        public double SustainedTension(MeasurementSystem system) =>
            Math.Max(0, acting.Sum(a => a.Factor * a.Loads.Where(l => l.IsSustained).Sum(l => l.N.In(system))));

        private static TracedNumber Add(TracedNumber? sum, double factor, TracedNumber term)
        {
            TracedNumber scaled = Math.Abs(factor) == 1 ? term : Math.Abs(factor) * term;
            return sum is not { } before ? (factor < 0 ? -1 * scaled : scaled) : factor < 0 ? before - scaled : before + scaled;
        }
    }
}
