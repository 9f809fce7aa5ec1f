using System.Runtime.CompilerServices;
using ConcreteAttach.Quantities;

namespace ConcreteAttach.Calculation;

/// <summary>A bare double: formulas written in it run as fast as hand-written doubles and record nothing.</summary>
internal readonly struct PlainNumber(double value) : IFormulaNumber<PlainNumber>
{
    public double Value { [MethodImpl(MethodImplOptions.AggressiveInlining)] get; } = value;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static PlainNumber Literal(double value) => new(value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static PlainNumber operator +(PlainNumber left, PlainNumber right) => new(left.Value + right.Value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static PlainNumber operator +(double left, PlainNumber right) => new(left + right.Value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static PlainNumber operator -(PlainNumber left, PlainNumber right) => new(left.Value - right.Value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static PlainNumber operator -(double left, PlainNumber right) => new(left - right.Value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static PlainNumber operator -(PlainNumber left, double right) => new(left.Value - right);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static PlainNumber operator *(PlainNumber left, PlainNumber right) => new(left.Value * right.Value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static PlainNumber operator *(double left, PlainNumber right) => new(left * right.Value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static PlainNumber operator /(PlainNumber left, PlainNumber right) => new(left.Value / right.Value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static PlainNumber operator /(double left, PlainNumber right) => new(left / right.Value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static PlainNumber operator /(PlainNumber left, double right) => new(left.Value / right);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Condition<PlainNumber> operator >=(PlainNumber left, PlainNumber right) => new(left, Relation.AtLeast, right);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Condition<PlainNumber> operator <=(PlainNumber left, PlainNumber right) => new(left, Relation.AtMost, right);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Condition<PlainNumber> operator >(PlainNumber left, PlainNumber right) => new(left, Relation.Above, right);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Condition<PlainNumber> operator <(PlainNumber left, PlainNumber right) => new(left, Relation.Below, right);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static PlainNumber Sqrt(PlainNumber x) => new(Math.Sqrt(x.Value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static PlainNumber Min(PlainNumber a, PlainNumber b) => new(a.Value < b.Value ? a.Value : b.Value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static PlainNumber Max(PlainNumber a, PlainNumber b) => new(a.Value > b.Value ? a.Value : b.Value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static PlainNumber Power(PlainNumber x, int numerator, int denominator) =>
        new(RationalPower.Of(x.Value, numerator, denominator));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static PlainNumber Power(PlainNumber x, double exponent) => new(Math.Pow(x.Value, exponent));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static PlainNumber Given(SheetRecorder? recorder, string id, double value, Dimension dimension, string? origin) => new(value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static PlainNumber Step(SheetRecorder? recorder, string id, PlainNumber value, Dimension dimension, string clause) => value;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void Branch(SheetRecorder? recorder, in Condition<PlainNumber> condition, string? clause)
    {
    }
}

/// <summary>Powers with a fraction as exponent, by products and roots.</summary>
internal static class RationalPower
{
    /// <summary>x^(numerator/denominator) for numerator ≥ 1 and denominator 1, 2 (x ≥ 0) or 3; both constant at the call, so that the JIT keeps one branch.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static double Of(double x, int numerator, int denominator)
    {
        if (denominator == 2)
        {
            // x^1.5 = x √x: the standard's own hand calculation.
            return numerator == 3 ? x * Math.Sqrt(x) : Whole(Math.Sqrt(x), numerator);
        }

        return denominator == 3 ? Whole(Math.Cbrt(x), numerator) : Whole(x, numerator);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static double Whole(double x, int exponent) => exponent switch
    {
        1 => x,
        2 => x * x,
        3 => x * x * x,
        4 => x * x * (x * x),
        5 => x * x * (x * x) * x,
        _ => Math.Pow(x, exponent),
    };
}
