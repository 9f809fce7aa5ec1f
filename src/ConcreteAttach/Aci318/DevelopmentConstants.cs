namespace ConcreteAttach.Aci318;

/// <summary>The printed constants of 25.4 in one set of units: from memory of ACI 318-19 and ACI 318M-19; each pair agrees within the rounding of the SI one.</summary>
internal sealed record DevelopmentConstants
{
    /// <summary>25.4.2.4: 3/40, or 1/1.1.</summary>
    public required Quotient Detailed { get; init; }

    /// <summary>Table 25.4.2.3, well spaced, No. 6 and smaller.</summary>
    public required Quotient SpacedSmall { get; init; }

    /// <summary>Table 25.4.2.3, well spaced, No. 7 and larger.</summary>
    public required Quotient SpacedLarge { get; init; }

    /// <summary>Table 25.4.2.3, other cases, No. 6 and smaller.</summary>
    public required Quotient OtherSmall { get; init; }

    /// <summary>Table 25.4.2.3, other cases, No. 7 and larger.</summary>
    public required Quotient OtherLarge { get; init; }

    /// <summary>25.4.3.1(a): 55, or 23.</summary>
    public required double Hooked { get; init; }

    /// <summary>25.4.4.2(a): 75, or 31.</summary>
    public required double Headed { get; init; }

    /// <summary>Least l_d (25.4.2.1).</summary>
    public required double LeastStraight { get; init; }

    /// <summary>Least l_dh and l_dt, beside 8 d_b (25.4.3.1, 25.4.4.2).</summary>
    public required double LeastHookedOrHeaded { get; init; }

    /// <summary>Largest √f'c (25.4.1.4).</summary>
    public required double LargestRoot { get; init; }

    /// <summary>f'c from which ψ_c is 1 (Tables 25.4.3.2 and 25.4.4.3).</summary>
    public required double FullStrength { get; init; }

    /// <summary>Below it ψ_c is f'c over this number, plus 0.6.</summary>
    public required double StrengthSlope { get; init; }

    /// <summary>Largest f_y of anchor reinforcement (Table 20.2.2.4(a)).</summary>
    public required double LargestYield { get; init; }

    /// <summary>The same in special seismic systems; taken under every earthquake here.</summary>
    public required double LargestYieldUnderEarthquake { get; init; }

    public static DevelopmentConstants InchPound { get; } = new()
    {
        Detailed = new(3, 40),
        SpacedSmall = new(1, 25),
        SpacedLarge = new(1, 20),
        OtherSmall = new(3, 50),
        OtherLarge = new(3, 40),
        Hooked = 55,
        Headed = 75,
        LeastStraight = 12,
        LeastHookedOrHeaded = 6,
        LargestRoot = 100,
        FullStrength = 6_000,
        StrengthSlope = 15_000,
        LargestYield = 100_000,
        LargestYieldUnderEarthquake = 80_000,
    };

    public static DevelopmentConstants Si { get; } = new()
    {
        Detailed = new(1, 1.1),
        SpacedSmall = new(1, 2.1),
        SpacedLarge = new(1, 1.7),
        OtherSmall = new(1, 1.4),
        OtherLarge = new(1, 1.1),
        Hooked = 23,
        Headed = 31,
        LeastStraight = 300,
        LeastHookedOrHeaded = 150,
        LargestRoot = 8.3,
        FullStrength = 42,
        StrengthSlope = 105,
        LargestYield = 690,
        LargestYieldUnderEarthquake = 550,
    };
}

/// <summary>A constant as it is printed: a numerator before the fraction bar and a denominator behind it.</summary>
internal readonly record struct Quotient(double Numerator, double Denominator);
