using ConcreteAttach.Calculation;
using ConcreteAttach.Quantities;

namespace ConcreteAttach.Nds;

/// <summary>Rounding as the printed tables do: F_e to 50 psi, Z of fasteners of 1/4 in. and more to 10 lb, of smaller ones to 1 lb. Halves go up.</summary>
internal static class PrintedRounding
{
    private const double BearingStep = 50;

    /// <summary>F_e as the table prints it. A step of its own, so that the sheet shows both.</summary>
    public static T Bearing<T>(Sheet<T> sheet, string id, T value)
        where T : struct, IFormulaNumber<T> => sheet.Given(id, Round(value.Value, BearingStep), Dimension.Stress, "Table 12.3.3, to the nearest 50 psi");

    /// <summary>A reference design value as the tables print it.</summary>
    public static double Strength(double value, bool isSmall) => Round(value, isSmall ? 1 : 10);

    /// <summary>To the nearest multiple; what lies on the half within 1e-9, up.</summary>
    private static double Round(double value, double step) => Math.Floor((value / step) + 0.5 + Limit.Tolerance) * step;
}
