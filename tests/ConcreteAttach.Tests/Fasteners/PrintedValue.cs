using System.Globalization;
using UnitsNet;

namespace ConcreteAttach.Tests.Fasteners;

/// <summary>
/// A number as a source prints it. What we compute must agree within half a unit of its last digit.
/// </summary>
/// <remarks><c>0.334</c> means ±0.0005; a whole number with an exponent gives its last significant digit: <c>112E1</c> means 1120 ± 5.</remarks>
internal static class PrintedValue
{
    public static void Agrees(string printed, double computed) =>
        Assert.InRange(computed, Value(printed) - HalfUnit(printed), Value(printed) + HalfUnit(printed));

    public static double Value(string printed) => double.Parse(printed, NumberStyles.Float, CultureInfo.InvariantCulture);

    /// <summary>Half a unit of the last digit printed.</summary>
    public static double HalfUnit(string printed)
    {
        string[] parts = printed.Split('E');
        int point = parts[0].IndexOf('.', StringComparison.Ordinal);
        int decimals = point < 0 ? 0 : parts[0].Length - point - 1;
        int exponent = parts.Length > 1 ? int.Parse(parts[1], CultureInfo.InvariantCulture) : 0;

        // A hair more than half, so that a value on the very middle is not decided by the last bit.
        return 0.5 * Math.Pow(10, exponent - decimals) * (1 + 1e-9);
    }

    /// <summary>Reads <c>1-1/8</c>, <c>5/8</c>, <c>2</c>: a size in inches as the trade writes it.</summary>
    public static Length Inches(string size)
    {
        double sum = 0;
        foreach (string part in size.Split('-'))
        {
            string[] fraction = part.Split('/');
            sum += Value(fraction[0]) / (fraction.Length > 1 ? Value(fraction[1]) : 1);
        }

        return Length.FromInches(sum);
    }
}
