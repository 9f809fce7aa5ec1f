using ConcreteAttach.Actions;
using ConcreteAttach.Calculation;

namespace ConcreteAttach.Nds;

/// <summary>11.3 Adjustment of reference design values. The values are from memory.</summary>
internal static class Adjustment
{
    /// <summary>Table 11.3.1: format conversion and resistance factors of connections (Tables N1, N2).</summary>
    private const double FormatConversion = 3.32;
    private const double Resistance = 0.65;

    /// <summary>What stands at the end of every product: C_D for ASD; K_F, φ and λ for LRFD.</summary>
    public static T Format<T>(Sheet<T> sheet, ServiceConditions conditions, T value)
        where T : struct, IFormulaNumber<T>
    {
        if (conditions.Format == SafetyFormat.AllowableStressDesign)
        {
            return value * sheet.Factor("C_D", Duration(conditions.Duration), "Table 2.3.2");
        }

        T kf = sheet.Factor("K_F", FormatConversion, "Table N1");
        T phi = sheet.Factor("phi", Resistance, "Table N2");
        T lambda = sheet.Factor("lambda", TimeEffectFactor(conditions.TimeEffect), "Table N3");
        return value * kf * phi * lambda;
    }

    /// <summary>C_D.</summary>
    public static double Duration(LoadDuration duration) => duration switch
    {
        LoadDuration.Permanent => 0.9,
        LoadDuration.TenYears => 1.0,
        LoadDuration.TwoMonths => 1.15,
        LoadDuration.SevenDays => 1.25,
        _ => 1.6,
    };

    /// <summary>λ.</summary>
    public static double TimeEffectFactor(TimeEffect effect) => effect switch
    {
        TimeEffect.Dead => 0.6,
        TimeEffect.Storage => 0.7,
        TimeEffect.OccupancyOrRoof => 0.8,
        _ => 1.0,
    };

    /// <summary>C_M of lateral loads (Table 11.3.3).</summary>
    public static T LateralMoisture<T>(Sheet<T> sheet, ServiceConditions conditions, bool isSmall)
        where T : struct, IFormulaNumber<T>
    {
        double factor = (conditions.IsWetAtFabrication, conditions.IsWetInService) switch
        {
            (_, true) => 0.7,
            (true, false) when conditions.IsFreeToShrink => 1,
            (true, false) => isSmall ? 0.7 : 0.4,
            _ => 1,
        };
        return sheet.Factor("C_M", factor, "Table 11.3.3");
    }

    /// <summary>C_M of withdrawal (Table 11.3.3). It does not apply to toe-nails (12.5.4.1).</summary>
    public static T WithdrawalMoisture<T>(Sheet<T> sheet, ServiceConditions conditions, DowelKind kind)
        where T : struct, IFormulaNumber<T>
    {
        double factor = kind switch
        {
            DowelKind.LagScrew or DowelKind.WoodScrew => conditions.IsWetInService ? 0.7 : 1,
            DowelKind.Nail when !conditions.IsToeNail => conditions.IsWetAtFabrication == conditions.IsWetInService ? 1 : 0.25,
            _ => 1,
        };
        return sheet.Factor("C_M", factor, "Table 11.3.3");
    }

    /// <summary>C_t (Table 11.3.4).</summary>
    public static T Temperature<T>(Sheet<T> sheet, ServiceConditions conditions)
        where T : struct, IFormulaNumber<T> => sheet.Factor("C_t", TemperatureFactor(conditions), "Table 11.3.4");

    public static double TemperatureFactor(ServiceConditions conditions) => (conditions.Temperature, conditions.IsWetInService) switch
    {
        (TemperatureRange.UpTo100F, _) => 1,
        (TemperatureRange.UpTo125F, false) => 0.8,
        (TemperatureRange.UpTo125F, true) => 0.7,
        (_, false) => 0.7,
        _ => 0.5,
    };

    /// <summary>C_eg of lateral loads (12.5.2.2), C_di (12.5.3) and C_tn (12.5.4.2), each where it applies.</summary>
    public static T LateralPlace<T>(Sheet<T> sheet, ServiceConditions conditions, bool isEndGrain, T value)
        where T : struct, IFormulaNumber<T>
    {
        if (isEndGrain)
        {
            value *= sheet.Factor("C_eg", 0.67, "12.5.2.2");
        }

        if (conditions.IsDiaphragmNail)
        {
            value *= sheet.Factor("C_di", 1.1, "12.5.3");
        }

        if (conditions.IsToeNail)
        {
            value *= sheet.Factor("C_tn", 0.83, "12.5.4.2");
        }

        return value;
    }
}
