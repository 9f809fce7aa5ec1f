using ConcreteAttach.Calculation;

namespace ConcreteAttach.Nds;

/// <summary>Published sizes and strengths of dowel-type fasteners, in. and psi. All from memory.</summary>
internal static class DowelTables
{
    /// <summary>Where F_yb by size comes from.</summary>
    public const string BendingYieldSource = "NDS-2018 Appendix I, Table I1, from memory";

    /// <summary>Where root diameters come from.</summary>
    public const string RootSource = "NDS-2018 Appendix L, from memory";

    /// <summary>F_yb of bolts. 45,000 psi was read in the commentary of 1991 (A36 bolts).</summary>
    private const double Bolts = 45_000;

    /// <summary>Low- to medium-carbon steel: nails, spikes, lag screws and wood screws, from above the diameter before up to and including this one.</summary>
    private static readonly Band[] Plain =
    [
        new(0.142, 100_000), new(0.177, 90_000), new(0.236, 80_000), new(0.273, 70_000), new(0.344, 60_000), new(1, 45_000),
    ];

    private const double SmallestPlain = 0.099;

    private static readonly Band[] Hardened = [new(0.142, 130_000), new(0.192, 115_000), new(0.207, 100_000)];

    private const double SmallestHardened = 0.120;

    /// <summary>Root diameters of lag screws, Table L2.</summary>
    private static readonly (double Diameter, double Root)[] LagScrews =
    [
        (0.25, 0.173), (0.3125, 0.227), (0.375, 0.265), (0.4375, 0.328), (0.5, 0.371), (0.625, 0.471), (0.75, 0.579), (0.875, 0.683), (1, 0.780),
    ];

    /// <summary>Lengths E of the tapered tips of lag screws, Table L2.</summary>
    private static readonly (double Diameter, double Tip)[] LagTips =
    [
        (0.25, 5.0 / 32), (0.3125, 3.0 / 16), (0.375, 7.0 / 32), (0.4375, 9.0 / 32), (0.5, 5.0 / 16), (0.625, 13.0 / 32), (0.75, 0.5), (0.875, 19.0 / 32), (1, 11.0 / 16),
    ];

    /// <summary>Root diameters of cut-thread wood screws, numbers 6 to 20, Table L3.</summary>
    private static readonly (double Diameter, double Root)[] WoodScrews =
    [
        (0.138, 0.113), (0.151, 0.122), (0.164, 0.131), (0.177, 0.142), (0.190, 0.152), (0.216, 0.171), (0.242, 0.196), (0.268, 0.209), (0.294, 0.232), (0.320, 0.255),
    ];

    /// <summary>F_yb of a kind and nominal diameter; null outside the table.</summary>
    public static double? BendingYield(DowelKind kind, double diameter) => kind switch
    {
        DowelKind.Bolt => Bolts,
        DowelKind.RingShankNail => Of(Hardened, SmallestHardened, diameter),
        _ => Of(Plain, SmallestPlain, diameter),
    };

    /// <summary>Root diameter of a threaded kind; null where the table has no such size or the kind no thread that counts.</summary>
    public static double? Root(DowelKind kind, double diameter) => kind switch
    {
        DowelKind.LagScrew => Of(LagScrews, diameter),
        DowelKind.WoodScrew => Of(WoodScrews, diameter),
        _ => null,
    };

    /// <summary>Length of the tapered tip of a lag screw; NaN where the table has no such size.</summary>
    public static double Tip(double diameter) => Of(LagTips, diameter) ?? double.NaN;

    private static double? Of(Band[] bands, double smallest, double diameter)
    {
        if (Limit.IsBelow(diameter, smallest))
        {
            return null;
        }

        foreach (Band band in bands)
        {
            if (!Limit.IsBelow(band.Largest, diameter))
            {
                return band.Strength;
            }
        }

        return null;
    }

    private static double? Of((double Diameter, double Value)[] sizes, double diameter)
    {
        foreach ((double size, double value) in sizes)
        {
            if (!Limit.IsBelow(size, diameter) && !Limit.IsBelow(diameter, size))
            {
                return value;
            }
        }

        return null;
    }

    private readonly record struct Band(double Largest, double Strength);
}
