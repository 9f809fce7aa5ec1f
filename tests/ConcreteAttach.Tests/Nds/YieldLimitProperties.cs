using ConcreteAttach.Calculation;
using ConcreteAttach.Nds;
using ConcreteAttach.Quantities;
using static ConcreteAttach.Tests.Nds.Wood;

namespace ConcreteAttach.Tests.Nds;

/// <summary>What must hold for every connection, over random ones.</summary>
public sealed class YieldLimitProperties
{
    private const int Connections = 20_000;

    /// <summary>Connections for which a linear program is solved.</summary>
    private const int Programs = 3_000;

    /// <summary>Share by which the program may miss the strength for its cells; <see cref="Finer_cells_come_nearer"/> shows that it is the cells.</summary>
    private const double CellError = 2e-3;

    /// <summary>Share by which rounding may part two equal strengths.</summary>
    private const double Rounding = 1e-9;

    /// <summary>One random connection of any size that the equations cover, without rounding.</summary>
    private static DowelData Any(Random random, bool isDouble, bool withGap)
    {
        double diameter = 0.1 + (0.9 * random.NextDouble());
        return new()
        {
            Kind = DowelKind.Bolt,
            NominalDiameter = diameter,
            Diameter = diameter,
            BendingYield = 30_000 + (100_000 * random.NextDouble()),
            BendingYieldSource = "random",
            Main = Member(random, diameter),
            Side = Member(random, diameter),
            Gap = withGap ? 2 * random.NextDouble() : 0,
            IsDoubleShear = isDouble,
            IsRounded = false,
            Penetration = double.PositiveInfinity,
        };
    }

    /// <summary>F_e from that of soft wood across the grain to that of steel; lengths of half a diameter to 20 diameters.</summary>
    private static MemberData Member(Random random, double diameter) =>
        new(BearingMaterial.Tested, Between(random, 1_000, 90_000), diameter * Between(random, 0.5, 20), 90 * random.NextDouble(), false);

    /// <summary>Every order of size alike.</summary>
    private static double Between(Random random, double least, double most) => least * Math.Pow(most / least, random.NextDouble());

    private static double[] Modes(DowelData data, bool? isGeneral = null)
    {
        double[] modes = new double[YieldLimit.ModeCount];
        YieldLimit.Strength(default(Sheet<PlainNumber>), data, isGeneral ?? data.Gap != 0, modes);
        return modes;
    }

    private static double Least(DowelData data) => YieldLimit.Strength(default(Sheet<PlainNumber>), data, new double[YieldLimit.ModeCount]).Value;

    private static DowelData With(DowelData d, double? diameter = null, double? bending = null, MemberData? main = null, MemberData? side = null, double? gap = null, bool? isDouble = null) => new()
    {
        Kind = d.Kind,
        NominalDiameter = diameter ?? d.NominalDiameter,
        Diameter = diameter ?? d.Diameter,
        BendingYield = bending ?? d.BendingYield,
        BendingYieldSource = d.BendingYieldSource,
        Main = main ?? d.Main,
        Side = side ?? d.Side,
        Gap = gap ?? d.Gap,
        IsDoubleShear = isDouble ?? d.IsDoubleShear,
        IsRounded = false,
        Penetration = d.Penetration,
    };

    private static void ForAny(int seed, Action<DowelData, Random> check)
    {
        var random = new Random(seed);
        for (int i = 0; i < Connections; i++)
        {
            check(Any(random, i % 2 == 0, i % 4 < 2), random);
        }
    }

    /// <summary>
    /// The least of the modes without R_d is the optimum of a linear program that knows of no modes: the list of modes is complete and each is right.
    /// </summary>
    [Theory]
    [InlineData(false, false)]
    [InlineData(false, true)]
    [InlineData(true, false)]
    [InlineData(true, true)]
    public void The_least_mode_is_the_limit_load(bool isDouble, bool withGap)
    {
        var governing = new int[YieldLimit.ModeCount];
        double worst = 0;
        var random = new Random(isDouble ? 41 : 42);
        DowelData[] all = [.. Enumerable.Range(0, Programs / 4).Select(_ => Any(random, isDouble, withGap))];
        Parallel.ForEach(all, data =>
        {
            (double miss, int mode) = Miss(data);
            lock (governing)
            {
                governing[mode]++;
                worst = Math.Max(worst, miss);
            }
        });
        Assert.True(worst < CellError, $"off by {worst:R}");
        int[] impossible = isDouble ? [(int)YieldMode.Rotation, (int)YieldMode.HingeAndMainBearing] : [];
        Assert.All(Enumerable.Range(0, YieldLimit.ModeCount), mode => Assert.Equal(!impossible.Contains(mode), governing[mode] > 0));
    }

    [Fact]
    public void Finer_cells_come_nearer()
    {
        var random = new Random(43);
        DowelData[] all = [.. Enumerable.Range(0, 100).Select(i => Any(random, i % 2 == 0, i % 4 < 2))];
        double coarse = all.Max(data => Miss(data, 40).Miss), fine = all.Max(data => Miss(data, 160).Miss);
        Assert.True(fine < coarse / 8, $"{coarse:R} with 40 cells, {fine:R} with 160");
    }

    /// <summary>Share by which the linear program and the least mode differ.</summary>
    private static (double Miss, int Mode) Miss(DowelData data, int cells = 80)
    {
        double d = data.Diameter;
        double limit = DowelLimitAnalysis.Strength(
            data.Main.Strength * d, data.Side.Strength * d, data.Main.Length, data.Side.Length, data.Gap, data.BendingYield * d * d * d / 6, data.IsDoubleShear, cells);
        (double least, int mode) = WithoutReduction(data);
        return (Math.Abs((limit / least * (data.IsDoubleShear ? 2 : 1)) - 1), mode);
    }

    /// <summary>The least strength of yield alone, R_d taken out again, and its mode.</summary>
    private static (double Strength, int Mode) WithoutReduction(DowelData data)
    {
        double[] modes = Modes(data);
        var recorder = new SheetRecorder(MeasurementSystem.PoundInch);
        YieldLimit.Strength(new Sheet<TracedNumber>(recorder), data, new double[YieldLimit.ModeCount]);
        CalculationSheet sheet = recorder.ToSheet();
        double bearing = sheet.Find("R_d") ?? sheet.Find("R_d_I")!.Value;
        double[] reduction = [bearing, bearing, sheet.Find("R_d_II") ?? bearing, .. Enumerable.Repeat(sheet.Find("R_d_III") ?? bearing, 3)];
        double[] plain = [.. modes.Zip(reduction, (z, r) => double.IsNaN(z) ? double.PositiveInfinity : z * r)];
        int least = Array.IndexOf(plain, plain.Min());
        return (plain[least], least);
    }

    /// <summary>Two publications, one mechanics: Table 12.3.1A and the general equations of TR12 with a gap of 0.</summary>
    [Fact]
    public void Without_a_gap_both_sets_of_equations_are_equal() => ForAny(1, (data, _) =>
    {
        DowelData closed = With(data, gap: 0);
        double[] table = Modes(closed, isGeneral: false), general = Modes(closed, isGeneral: true);
        Assert.All(table.Zip(general), pair => Assert.True(double.IsNaN(pair.First) ? double.IsNaN(pair.Second) : Math.Abs(pair.First - pair.Second) <= Rounding * pair.First, $"{pair}"));
    });

    [Fact]
    public void Silent_and_recorded_strengths_are_equal_to_the_bit() => ForAny(2, (data, _) =>
    {
        double[] silent = new double[YieldLimit.ModeCount], recorded = new double[YieldLimit.ModeCount];
        PlainNumber a = YieldLimit.Strength(default(Sheet<PlainNumber>), data, silent);
        TracedNumber b = YieldLimit.Strength(new Sheet<TracedNumber>(new SheetRecorder(MeasurementSystem.PoundInch)), data, recorded);
        Assert.Equal(BitConverter.DoubleToInt64Bits(a.Value), BitConverter.DoubleToInt64Bits(b.Value));
        Assert.Equal(silent, recorded);
        Assert.Equal(silent.Where(z => !double.IsNaN(z)).Min(), a.Value);
    });

    [Fact]
    public void A_wider_gap_never_raises_the_strength() => ForAny(3, (data, random) =>
        NotBelow(Least(data), Least(With(data, gap: data.Gap + random.NextDouble()))));

    [Fact]
    public void Stronger_or_longer_bearing_and_stiffer_steel_never_lower_the_strength() => ForAny(4, (data, random) =>
    {
        double more = 1 + random.NextDouble();
        NotBelow(Least(With(data, bending: data.BendingYield * more)), Least(data));
        NotBelow(Least(With(data, main: data.Main with { Strength = data.Main.Strength * more })), Least(data));
        NotBelow(Least(With(data, side: data.Side with { Strength = data.Side.Strength * more })), Least(data));
        NotBelow(Least(With(data, main: data.Main with { Length = data.Main.Length * more })), Least(data));
        NotBelow(Least(With(data, side: data.Side with { Length = data.Side.Length * more })), Least(data));
    });

    /// <summary>With one F_e. Across 1/4 in. R_d jumps from K_D to 4, 3.6 or 3.2 K_θ, so that the two sides are compared each for itself.</summary>
    [Fact]
    public void A_thicker_dowel_never_lowers_the_strength_on_either_side_of_a_quarter_inch() => ForAny(5, (data, random) =>
    {
        double largest = data.Diameter < DowelData.SmallDiameter ? DowelData.SmallDiameter * (1 - 2e-9) : 1;
        NotBelow(Least(With(data, diameter: data.Diameter + (Math.Max(0, largest - data.Diameter) * random.NextDouble()))), Least(data));
    });

    [Fact]
    public void More_skew_to_the_grain_never_raises_the_strength() => ForAny(6, (data, random) =>
        NotBelow(Least(data), Least(With(data, side: data.Side with { Angle = data.Side.Angle + ((90 - data.Side.Angle) * random.NextDouble()) }))));

    /// <summary>Two shear planes hold at least one, unless the middle member crushes, which both planes share.</summary>
    [Fact]
    public void Double_shear_holds_at_least_single_shear() => ForAny(7, (data, _) =>
        NotBelow(Least(With(data, isDouble: true)), Least(With(data, isDouble: false))));

    /// <summary>Members changed about are the same connection in single shear: Im and Is, IIIm and IIIs trade places.</summary>
    [Fact]
    public void Main_and_side_members_trade_places() => ForAny(8, (data, _) =>
    {
        DowelData one = With(data, isDouble: false), other = With(one, main: one.Side, side: one.Main);
        double[] a = Modes(one), b = Modes(other);
        Assert.All([(0, 1), (1, 0), (2, 2), (3, 4), (4, 3), (5, 5)], ((int Here, int There) at) => Assert.Equal(a[at.Here], b[at.There], 1e-7 * a[at.Here]));
    });

    private static void NotBelow(double upper, double lower) => Assert.True(upper >= lower * (1 - Rounding), $"{upper:R} < {lower:R}");
}
