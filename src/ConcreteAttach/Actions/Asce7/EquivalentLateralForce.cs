using System.Collections.Immutable;
using System.Globalization;
using ConcreteAttach.Calculation;
using ConcreteAttach.Quantities;
using UnitsNet;

namespace ConcreteAttach.Actions.Asce7;

/// <summary>Kinds of structure that Table 12.8-2 parts for the approximate period.</summary>
public enum PeriodStructure
{
    /// <summary>All others, light frames with wood panels among them.</summary>
    Other,

    /// <summary>Moment-resisting frames of steel.</summary>
    SteelMomentFrame,

    /// <summary>Moment-resisting frames of concrete.</summary>
    ConcreteMomentFrame,

    /// <summary>Eccentrically braced frames of steel, and buckling-restrained braced frames of steel.</summary>
    EccentricallyBracedFrame,
}

/// <summary>A level of a building: what weighs there on the structure in an earthquake.</summary>
/// <param name="Weight">w_x: effective seismic weight of the level; greater than 0.</param>
/// <param name="Height">h_x: height of the level above the base; greater than 0.</param>
public sealed record BuildingLevel(Force Weight, Length Height)
{
    /// <summary>w_x.</summary>
    public Force Weight { get; } = Require.Positive("weight", Weight);

    /// <summary>h_x.</summary>
    public Length Height { get; } = Require.Positive("height", Height);

    /// <summary>Weight and height.</summary>
    public override string ToString() => $"{QuantityText.Format(Weight)} at {QuantityText.Format(Height)}";
}

/// <summary>
/// The earthquake force on a building in one direction by the equivalent lateral force procedure, ASCE 7-16 and 7-22 12.8: seismic response coefficient, base shear, and how it spreads over the height. How the walls
/// of a story share its shear is the user's.
/// </summary>
/// <remarks>
/// From memory, but for what a test names. The coefficient by equations 12.8-2 to 12.8-6 with S_DS and S_D1; where 7-22 takes it from the multi-period spectrum, it is not covered. Whether the procedure is permitted
/// (12.6) is not checked.
/// </remarks>
public sealed record EquivalentLateralForce
{
    /// <summary>Describes a building in one direction.</summary>
    /// <param name="edition">The edition.</param>
    /// <param name="designAcceleration">S_DS, in g; greater than 0.</param>
    /// <param name="responseModification">R of Table 12.2-1 for the direction; 1 or more.</param>
    /// <param name="levels">The levels above the base, from the lowest up; at least one.</param>
    /// <exception cref="InputException">Outside its range, or a level that is not above the one before.</exception>
    public EquivalentLateralForce(Asce7Edition edition, double designAcceleration, double responseModification, IEnumerable<BuildingLevel> levels)
    {
        Edition = edition;
        DesignAcceleration = SeismicInputs.Positive(nameof(designAcceleration), designAcceleration);
        ResponseModification = SeismicInputs.AtLeastOne(nameof(responseModification), responseModification);
        ArgumentNullException.ThrowIfNull(levels);
        Levels = [.. levels];
        if (Levels.IsEmpty)
        {
            throw new InputException(nameof(levels), "no level", "at least one");
        }

        for (int i = 1; i < Levels.Length; i++)
        {
            if (!(Levels[i].Height.In(System) > Levels[i - 1].Height.In(System)))
            {
                throw new InputException(nameof(levels), QuantityText.Format(Levels[i].Height), $"levels from the lowest up: more than {QuantityText.Format(Levels[i - 1].Height)}");
            }
        }
    }

    private const MeasurementSystem System = MeasurementSystem.PoundInch;

    /// <summary>The edition.</summary>
    public Asce7Edition Edition { get; }

    /// <summary>S_DS, in g.</summary>
    public double DesignAcceleration { get; }

    /// <summary>R.</summary>
    public double ResponseModification { get; }

    /// <summary>The levels, from the lowest up.</summary>
    public ImmutableArray<BuildingLevel> Levels { get; }

    /// <summary>I_e, 1 by default.</summary>
    /// <exception cref="InputException">Not 1, 1.25 or 1.5.</exception>
    public double ImportanceFactor { get; init => field = SeismicInputs.ImportanceOfBuilding(value); } = 1;

    /// <summary>Kind of structure, for the approximate period T_a.</summary>
    public PeriodStructure Structure { get; init; }

    /// <summary>S_D1, in g, greater than 0; null: not known, and the coefficient is not lowered for a long period.</summary>
    /// <exception cref="InputException">Not above 0, or not finite.</exception>
    public double? OneSecondAcceleration { get; init => field = value is { } given ? SeismicInputs.Positive("oneSecondAcceleration", given) : null; }

    /// <summary>T_L, the long-period transition; null: the period of the building is below it.</summary>
    /// <exception cref="InputException">Not above 0, or not finite.</exception>
    public Duration? LongPeriod
    {
        get;
        init => field = value is null || value.Value.Seconds is > 0 and < double.PositiveInfinity ? value : throw new InputException("longPeriod", $"{QuantityText.Format(value.Value.Seconds)} s", "greater than 0");
    }

    /// <summary>S_1, in g, for the least coefficient near active faults (12.8-6, S_1 of at least 0.6 g); null: below 0.6 g.</summary>
    /// <exception cref="InputException">Not above 0, or not finite.</exception>
    public double? MappedOneSecond { get; init => field = value is { } given ? SeismicInputs.Positive("mappedOneSecond", given) : null; }

    /// <summary>What was described, in words.</summary>
    public override string ToString() =>
        $"{Edition.Designation()}, S_DS {QuantityText.Format(DesignAcceleration)}, R {QuantityText.Format(ResponseModification)}, I_e {QuantityText.Format(ImportanceFactor)}, {string.Join(", ", Levels)}";

    /// <summary>V = C_s W (12.8-1).</summary>
    public Demand BaseShear() => StoryShear(1);

    /// <summary>The shear in a story, the sum of the forces at the levels above it (12.8.4).</summary>
    /// <param name="story">1: the lowest, whose shear is the base shear; at most the number of levels.</param>
    /// <param name="share">The part of it that is asked for, above 0 to 1: of a wall line, of the bolts of one wall.</param>
    /// <returns>The force, with the sheet.</returns>
    /// <exception cref="InputException">No such story, or a share outside its range.</exception>
    public Demand StoryShear(int story, double share = 1)
    {
        if (story < 1 || story > Levels.Length)
        {
            throw new InputException(nameof(story), QuantityText.Format(story), $"from 1 to {QuantityText.Format(Levels.Length)}, the number of levels");
        }

        if (!(share is > 0 and <= 1))
        {
            throw new InputException(nameof(share), QuantityText.Format(share), "above 0, at most 1");
        }

        var recorder = new SheetRecorder(System);
        var sheet = new Sheet<TracedNumber>(recorder);
        (TracedNumber v, TracedNumber period) = BaseShear(sheet);
        TracedNumber shear = v;
        if (story > 1)
        {
            TracedNumber[] forces = Forces(sheet, v, period);
            shear = forces[story - 1];
            for (int i = story; i < forces.Length; i++)
            {
                shear += forces[i];
            }

            shear = sheet.Step($"V_x_{Number(story)}", shear, Dimension.Force, "12.8-13");
        }

        if (share < 1)
        {
            shear = sheet.Step("V_share", sheet.Given("r_V", share, Dimension.None, "share that is asked for") * shear, Dimension.Force, "12.8.4");
        }

        string title = $"{(story == 1 ? "Base shear" : $"Shear in story {Number(story)}")}, {Edition.Designation()} 12.8";
        return new Demand(title, Force.FromPoundsForce(shear.Value), recorder.ToSheet(), Notices);
    }

    /// <summary>F_x at each level, from the lowest up (12.8-11, 12.8-12). Their sum is the base shear.</summary>
    public ImmutableArray<Force> LevelForces()
    {
        var sheet = new Sheet<TracedNumber>(new SheetRecorder(System));
        (TracedNumber v, TracedNumber period) = BaseShear(sheet);
        return [.. Forces(sheet, v, period).Select(f => Force.FromPoundsForce(f.Value))];
    }

    private static readonly ImmutableArray<string> Notices =
    [
        "Equivalent lateral force: whether it is permitted (12.6), accidental torsion (12.8.4.2), and how the walls of a story share its shear are not looked at here.",
    ];

    /// <summary>V and T_a.</summary>
    private (TracedNumber Shear, TracedNumber Period) BaseShear(Sheet<TracedNumber> sheet)
    {
        TracedNumber sds = sheet.Given("S_DS", DesignAcceleration, Dimension.None);
        TracedNumber r = sheet.Given("R", ResponseModification, Dimension.None, "Table 12.2-1");
        TracedNumber ie = sheet.Given("I_e", ImportanceFactor, Dimension.None, "Table 1.5-2");
        TracedNumber w = sheet.Given("W", Levels.Sum(l => l.Weight.In(System)), Dimension.Force, "effective seismic weight of all levels");
        TracedNumber period = ApproximatePeriod(sheet);
        TracedNumber cs = Coefficient(sheet, sds, r, ie, period);
        return (sheet.Step("V", cs * w, Dimension.Force, "12.8-1"), period);
    }

    /// <summary>T_a (12.8-7). The table is for h_n in feet.</summary>
    private TracedNumber ApproximatePeriod(Sheet<TracedNumber> sheet)
    {
        (double coefficient, double exponent) = Structure switch
        {
            PeriodStructure.SteelMomentFrame => (0.028, 0.8),
            PeriodStructure.ConcreteMomentFrame => (0.016, 0.9),
            PeriodStructure.EccentricallyBracedFrame => (0.03, 0.75),
            _ => (0.02, 0.75),
        };
        TracedNumber height = sheet.Given("h_n", Levels[^1].Height.In(System), Dimension.Length, "height of the building");
        TracedNumber ct = sheet.Factor("C_t", coefficient, "Table 12.8-2");
        return sheet.Factor("T_a", ct * TracedNumber.Power(height / 12, exponent), "12.8-7, seconds, h_n in feet");
    }

    /// <summary>C_s (12.8.1.1).</summary>
    private TracedNumber Coefficient(Sheet<TracedNumber> sheet, TracedNumber sds, TracedNumber r, TracedNumber ie, TracedNumber period)
    {
        TracedNumber cs = sheet.Factor("C_s_1", sds / (r / ie), "12.8-2");
        if (OneSecondAcceleration is { } oneSecond)
        {
            TracedNumber sd1 = sheet.Given("S_D1", oneSecond, Dimension.None);
            cs = TracedNumber.Min(cs, Cap(sheet, sd1, r, ie, period));
        }

        TracedNumber least = sheet.Factor("C_s_min", TracedNumber.Max(0.044 * sds * ie, TracedNumber.Literal(0.01)), "12.8-5");
        TracedNumber number = TracedNumber.Max(cs, least);
        if (MappedOneSecond is { } mapped)
        {
            TracedNumber s1 = sheet.Given("S_1", mapped, Dimension.None);
            if (sheet.When(s1 >= TracedNumber.Literal(0.6), "12.8.1.1"))
            {
                number = TracedNumber.Max(number, sheet.Factor("C_s_min_1", 0.5 * s1 / (r / ie), "12.8-6"));
            }
        }

        return sheet.Factor("C_s", number, "12.8.1.1");
    }

    private TracedNumber Cap(Sheet<TracedNumber> sheet, TracedNumber sd1, TracedNumber r, TracedNumber ie, TracedNumber period)
    {
        if (LongPeriod is { } transition)
        {
            TracedNumber tl = sheet.Given("T_L", transition.Seconds, Dimension.None, "seconds");
            if (sheet.When(period > tl, "12.8.1.1"))
            {
                return sheet.Factor("C_s_max", sd1 * tl / (TracedNumber.Power(period, 2, 1) * (r / ie)), "12.8-4");
            }
        }

        return sheet.Factor("C_s_max", sd1 / (period * (r / ie)), "12.8-3");
    }

    /// <summary>F_x = C_vx V (12.8.3).</summary>
    private TracedNumber[] Forces(Sheet<TracedNumber> sheet, TracedNumber v, TracedNumber period)
    {
        TracedNumber k = sheet.When(period <= TracedNumber.Literal(0.5), "12.8.3") ? sheet.Factor("k", 1, "12.8.3")
            : sheet.When(period >= TracedNumber.Literal(2.5), "12.8.3") ? sheet.Factor("k", 2, "12.8.3")
            : sheet.Factor("k", 1 + ((period - 0.5) / 2), "12.8.3, between 1 and 2");
        var products = new TracedNumber[Levels.Length];
        for (int i = 0; i < products.Length; i++)
        {
            string level = Number(i + 1);
            TracedNumber w = sheet.Given($"w_{level}", Levels[i].Weight.In(System), Dimension.Force, "weight of the level");
            TracedNumber h = sheet.Given($"h_{level}", Levels[i].Height.In(System), Dimension.Length, "height of the level");

            // In feet, so that no height raised to a broken power has a unit that nobody knows: the ratio is the same.
            products[i] = sheet.Factor($"wh_{level}", w * TracedNumber.Power(h / 12, k.Value), "12.8-12, lbf, height in feet to the power k");
        }

        TracedNumber sum = products[0];
        for (int i = 1; i < products.Length; i++)
        {
            sum += products[i];
        }

        sum = sheet.Factor("wh", sum, "12.8-12");
        return [.. products.Select((p, i) => sheet.Step($"F_{Number(i + 1)}", p / sum * v, Dimension.Force, "12.8-11, 12.8-12"))];
    }

    private static string Number(int n) => n.ToString(CultureInfo.InvariantCulture);
}
