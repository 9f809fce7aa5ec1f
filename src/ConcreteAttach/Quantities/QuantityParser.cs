using System.Globalization;
using UnitsNet;
using UnitsNet.Units;

namespace ConcreteAttach.Quantities;

/// <summary>
/// Reads a quantity as people write it: <c>5/8 in</c>, <c>7 1/2 in</c>, <c>7-1/2 in</c>, <c>1'-6 1/2"</c>, <c>4000 psi</c>,
/// <c>3 kip-ft</c>. Invariant culture only; no exponent, no thousands mark.
/// </summary>
internal static class QuantityParser
{
    private const string NumberForms = "a decimal, a fraction such as 5/8, or both such as 7 1/2";

    /// <exception cref="InputException">The text is not a length.</exception>
    public static Length Length(string parameter, string text)
    {
        if (TryFeetAndInches(text, out double inches))
        {
            return UnitsNet.Length.FromInches(inches);
        }

        (double value, Unit unit) = Read(parameter, text, Dimension.Length);
        return new Length(value, unit.Text switch
        {
            "in" => LengthUnit.Inch,
            "ft" => LengthUnit.Foot,
            "mm" => LengthUnit.Millimeter,
            "cm" => LengthUnit.Centimeter,
            _ => LengthUnit.Meter,
        });
    }

    /// <exception cref="InputException">The text is not an area.</exception>
    public static Area Area(string parameter, string text)
    {
        (double value, Unit unit) = Read(parameter, text, Dimension.Area);
        return new Area(value, unit.Text switch
        {
            "in2" => AreaUnit.SquareInch,
            "ft2" => AreaUnit.SquareFoot,
            "mm2" => AreaUnit.SquareMillimeter,
            "cm2" => AreaUnit.SquareCentimeter,
            _ => AreaUnit.SquareMeter,
        });
    }

    /// <exception cref="InputException">The text is not a force.</exception>
    public static Force Force(string parameter, string text)
    {
        (double value, Unit unit) = Read(parameter, text, Dimension.Force);
        return new Force(value, unit.Text switch
        {
            "lbf" => ForceUnit.PoundForce,
            "kip" => ForceUnit.KilopoundForce,
            "N" => ForceUnit.Newton,
            _ => ForceUnit.Kilonewton,
        });
    }

    /// <exception cref="InputException">The text is not a stress.</exception>
    public static Pressure Pressure(string parameter, string text)
    {
        (double value, Unit unit) = Read(parameter, text, Dimension.Stress);
        return new Pressure(value, unit.Text switch
        {
            "psi" => PressureUnit.PoundForcePerSquareInch,
            "ksi" => PressureUnit.KilopoundForcePerSquareInch,
            "kPa" => PressureUnit.Kilopascal,
            "MPa" => PressureUnit.Megapascal,
            "N/mm2" => PressureUnit.NewtonPerSquareMillimeter,
            _ => PressureUnit.Gigapascal,
        });
    }

    /// <exception cref="InputException">The text is not a moment.</exception>
    public static Torque Moment(string parameter, string text)
    {
        (double value, Unit unit) = Read(parameter, text, Dimension.Moment);
        return new Torque(value, unit.Text switch
        {
            "kip-ft" => TorqueUnit.KilopoundForceFoot,
            "kip-in" => TorqueUnit.KilopoundForceInch,
            "lbf-ft" => TorqueUnit.PoundForceFoot,
            "lbf-in" => TorqueUnit.PoundForceInch,
            "kN-m" => TorqueUnit.KilonewtonMeter,
            "N-m" => TorqueUnit.NewtonMeter,
            _ => TorqueUnit.NewtonMillimeter,
        });
    }

    /// <exception cref="InputException">The text is not a density.</exception>
    public static Density Density(string parameter, string text)
    {
        (double value, Unit unit) = Read(parameter, text, Dimension.Density);
        return new Density(value, unit == Unit.PoundPerCubicFoot ? DensityUnit.PoundPerCubicFoot : DensityUnit.KilogramPerCubicMeter);
    }

    private static (double Value, Unit Unit) Read(string parameter, string text, Dimension dimension)
    {
        ReadOnlySpan<char> trimmed = text.AsSpan().Trim(' ');
        int split = UnitStart(trimmed);
        ReadOnlySpan<char> unitText = trimmed[split..];
        if (!TryNumber(trimmed[..split].TrimEnd(' '), out double value))
        {
            throw new InputException(parameter, Quoted(text), $"{NumberForms}, then a unit: {UnitsOf(dimension)}");
        }

        foreach (Unit unit in Unit.All)
        {
            if (unit.Dimension == dimension && unitText.SequenceEqual(unit.Text))
            {
                return (value, unit);
            }
        }

        if (dimension == Dimension.Force && unitText is "lb" or "lbs")
        {
            throw new InputException(parameter, Quoted(text), "a force in lbf (pound-force), kip, N or kN; plain lb could be a mass: write lbf");
        }

        string permitted = unitText.IsEmpty ? $"the number with its unit: {UnitsOf(dimension)}" : $"a quantity in {UnitsOf(dimension)}";
        throw new InputException(parameter, Quoted(text), permitted);
    }

    private static int UnitStart(ReadOnlySpan<char> text)
    {
        int i = 0;
        while (i < text.Length && !char.IsAsciiLetter(text[i]) && text[i] < 128)
        {
            i++;
        }

        return i;
    }

    private static string UnitsOf(Dimension dimension)
    {
        var names = new List<string>();
        foreach (Unit unit in Unit.All)
        {
            if (unit.Dimension == dimension)
            {
                names.Add(unit.Text);
            }
        }

        return string.Join(", ", names);
    }

    private static string Quoted(string text) => $"\"{text}\"";

    /// <summary>Feet and inches: <c>1'-6"</c>, <c>1'-6 1/2"</c>, <c>1'</c>, <c>6 1/2"</c>, with a sign before all of it.</summary>
    private static bool TryFeetAndInches(string text, out double inches)
    {
        inches = 0;
        ReadOnlySpan<char> rest = text.AsSpan().Trim(' ');
        int footMark = rest.IndexOf('\'');
        if (footMark < 0 && !rest.EndsWith("\""))
        {
            return false;
        }

        double sign = 1;
        if (rest[0] is '-' or '+')
        {
            sign = rest[0] == '-' ? -1 : 1;
            rest = rest[1..];
            footMark--;
        }

        double feet = 0;
        if (footMark >= 0)
        {
            if (!TryDecimal(rest[..footMark], out feet))
            {
                return false;
            }

            rest = rest[(footMark + 1)..].TrimStart(' ');
            if (rest.IsEmpty)
            {
                inches = sign * feet * 12;
                return true;
            }

            if (rest[0] == '-')
            {
                rest = rest[1..].TrimStart(' ');
            }
        }

        if (!rest.EndsWith("\"") || !TryUnsigned(rest[..^1].TrimEnd(' '), out double part))
        {
            return false;
        }

        inches = sign * ((feet * 12) + part);
        return true;
    }

    private static bool TryNumber(ReadOnlySpan<char> text, out double value)
    {
        double sign = 1;
        if (!text.IsEmpty && text[0] is '-' or '+')
        {
            sign = text[0] == '-' ? -1 : 1;
            text = text[1..].TrimStart(' ');
        }

        bool read = TryUnsigned(text, out value);
        value = value == 0 ? 0 : value * sign;
        return read;
    }

    /// <summary>A decimal, a fraction, or a whole number and a fraction with a blank or a hyphen between.</summary>
    private static bool TryUnsigned(ReadOnlySpan<char> text, out double value)
    {
        value = 0;
        int slash = text.IndexOf('/');
        if (slash < 0)
        {
            return TryDecimal(text, out value);
        }

        double whole = 0;
        ReadOnlySpan<char> numerator = text[..slash];
        int gap = numerator.IndexOfAny(' ', '-');
        if (gap >= 0)
        {
            if (!TryWhole(numerator[..gap], out whole))
            {
                return false;
            }

            numerator = numerator[(gap + 1)..].TrimStart(' ');
        }

        if (!TryWhole(numerator, out double top) || !TryWhole(text[(slash + 1)..], out double bottom) || bottom == 0)
        {
            return false;
        }

        value = whole + (top / bottom);
        return true;
    }

    private static bool TryWhole(ReadOnlySpan<char> text, out double value) =>
        double.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out value) && double.IsFinite(value);

    private static bool TryDecimal(ReadOnlySpan<char> text, out double value)
    {
        value = 0;
        return !text.IsEmpty && text[^1] != '.'
            && double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out value) && double.IsFinite(value);
    }
}
