using System.Globalization;

namespace ConcreteAttach.Quantities;

/// <summary>How numbers are shown on a calculation sheet.</summary>
/// <remarks>
/// Computed numbers show four significant figures, and never a zero in place of a digit before the point: 22307.9 is shown as
/// 22 308, 307.125 as 307.1, 0.83333 as 0.8333. Inputs and the constants of a formula are shown as given. Digits before the point stand in
/// groups of three from five digits on.
/// </remarks>
internal static class NumberText
{
    /// <summary>In the printed units (in, lbf, psi, mm, N, MPa) a number below this is the noise of rounding, and shown as 0.</summary>
    private const double Noise = 1e-9;

    /// <summary>Significant figures of a computed number.</summary>
    public const int SignificantFigures = 4;

    /// <summary>Also of −0, which a sum of forces can leave behind.</summary>
    private const string Zero = "0";

    /// <summary>More digits than this in an input come from a conversion, not from a person; it is then shown as a computed number.</summary>
    private const int MostDigitsAsGiven = 7;

    /// <summary>A computed number.</summary>
    public static string Rounded(double value)
    {
        if (value == 0 || !double.IsFinite(value))
        {
            return value == 0 ? Zero : value.ToString(CultureInfo.InvariantCulture);
        }

        int decimals = Decimals(value);
        if (decimals > 0 && Math.Round(Math.Abs(value), decimals) >= Math.Pow(10, SignificantFigures - decimals))
        {
            // 9.9996 gains a digit by rounding: 10.00, not 10.000.
            decimals--;
        }

        return Grouped(value.ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture));
    }

    /// <summary>A computed number of which whole values are shown without decimals: 6 rather than 6.000.</summary>
    public static string Computed(double value) =>
        Math.Abs(value) < Noise ? Zero : Math.Abs(value) < 1e15 && value == Math.Round(value) ? Grouped(value.ToString("F0", CultureInfo.InvariantCulture)) : Trimmed(Rounded(value), value);

    /// <summary>An input or a constant, as it was given.</summary>
    public static string AsGiven(double value)
    {
        if (Math.Abs(value) < Noise || !double.IsFinite(value))
        {
            return Math.Abs(value) < Noise ? Zero : value.ToString(CultureInfo.InvariantCulture);
        }

        string text = value.ToString("R", CultureInfo.InvariantCulture);
        int digits = 0;
        foreach (char c in text)
        {
            digits += char.IsAsciiDigit(c) ? 1 : 0;
        }

        return digits > MostDigitsAsGiven || text.Contains('E', StringComparison.Ordinal) ? Computed(value) : Grouped(text);
    }

    /// <summary>A factor: as a computed number, but 1.0 and 0.70 rather than 1 and 0.7, as the standards print them.</summary>
    public static string Factor(double value)
    {
        double whole = Math.Round(value);
        if (Math.Abs(whole) < 10 && (Math.Abs(value) < Noise || IsInFull(whole, value)))
        {
            return whole == 0 ? "0.0" : whole.ToString("F1", CultureInfo.InvariantCulture);
        }

        // From 100 on, one decimal may be all that four figures leave: 660.6 of 660.57 gets no zero.
        string text = Computed(value);
        return Math.Abs(value) < 100 && text.Length - text.IndexOf('.', StringComparison.Ordinal) == 2 ? text + "0" : text;
    }

    /// <summary>
    /// A utilization with two decimals; one that fails takes as many more as it needs, so that 1.00 is never printed for an
    /// attachment that does not hold.
    /// </summary>
    public static string Utilization(double value, bool isSatisfied)
    {
        if (!double.IsFinite(value))
        {
            return "∞";
        }

        int decimals = 2;
        while (!isSatisfied && value > 1 && decimals < 12 && Math.Round(value, decimals) <= 1)
        {
            decimals++;
        }

        return value.ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
    }

    /// <summary>A number with four significant figures, toward zero: for a promise that must not be rounded up.</summary>
    public static string RoundedDown(double value)
    {
        if (value == 0 || !double.IsFinite(value))
        {
            return value == 0 ? Zero : "∞";
        }

        double scale = Math.Pow(10, Decimals(value));
        return Computed(Math.Truncate(value * scale) / scale);
    }

    /// <summary>Decimals that give <see cref="SignificantFigures"/> figures.</summary>
    private static int Decimals(double value)
    {
        int exponent = (int)Math.Floor(Math.Log10(Math.Abs(value)));
        return Math.Clamp(SignificantFigures - 1 - exponent, 0, 15);
    }

    /// <summary>Drops trailing zeros where the shorter text is the number itself: 4.500 becomes 4.5, but 2.000 of 2.0003 stays.</summary>
    private static string Trimmed(string rounded, double value)
    {
        if (!rounded.Contains('.', StringComparison.Ordinal))
        {
            return rounded;
        }

        string shorter = rounded.TrimEnd('0').TrimEnd('.');
        double read = double.Parse(shorter.Replace(" ", "", StringComparison.Ordinal), CultureInfo.InvariantCulture);
        return IsInFull(read, value) ? shorter : rounded;
    }

    /// <summary>Whether a short number says all of a value but the last bits of its double.</summary>
    private static bool IsInFull(double shown, double value) => Math.Abs(shown - value) <= 1e-12 * Math.Abs(value);

    private static string Grouped(string text)
    {
        int start = text.StartsWith('-') ? 1 : 0;
        int point = text.IndexOf('.', StringComparison.Ordinal);
        int end = point < 0 ? text.Length : point;
        if (end - start < 5)
        {
            return text;
        }

        var grouped = new System.Text.StringBuilder(text.Length + 4);
        grouped.Append(text, 0, start);
        for (int i = start; i < end; i++)
        {
            if (i > start && (end - i) % 3 == 0)
            {
                grouped.Append(' ');
            }

            grouped.Append(text[i]);
        }

        return grouped.Append(text, end, text.Length - end).ToString();
    }
}
