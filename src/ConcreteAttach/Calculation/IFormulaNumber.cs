using ConcreteAttach.Quantities;

namespace ConcreteAttach.Calculation;

/// <summary>
/// A number that a formula can be written in. <see cref="PlainNumber"/> is a bare double and computes; <see cref="TracedNumber"/> computes
/// the same double and keeps the expression it came from, so that the sheet prints the formula that was run.
/// </summary>
/// <typeparam name="T">The implementing struct. A struct, because the JIT then compiles each formula anew for it.</typeparam>
internal interface IFormulaNumber<T>
    where T : struct, IFormulaNumber<T>
{
    /// <summary>The number itself.</summary>
    double Value { get; }

    /// <summary>A constant of the formula, shown as it is printed in the standard.</summary>
    static abstract T Literal(double value);

    static abstract T operator +(T left, T right);

    static abstract T operator +(double left, T right);

    static abstract T operator -(T left, T right);

    static abstract T operator -(double left, T right);

    static abstract T operator -(T left, double right);

    static abstract T operator *(T left, T right);

    static abstract T operator *(double left, T right);

    static abstract T operator /(T left, T right);

    static abstract T operator /(double left, T right);

    static abstract T operator /(T left, double right);

    static abstract Condition<T> operator >=(T left, T right);

    static abstract Condition<T> operator <=(T left, T right);

    static abstract Condition<T> operator >(T left, T right);

    static abstract Condition<T> operator <(T left, T right);

    static abstract T Sqrt(T x);

    /// <summary>The lesser of two numbers, neither of them NaN: one comparison.</summary>
    static abstract T Min(T a, T b);

    /// <summary>The greater of two numbers, neither of them NaN: one comparison.</summary>
    static abstract T Max(T a, T b);

    /// <summary>
    /// x to the power numerator/denominator, for denominators 1, 2 and 3: products and roots, several times faster than a general
    /// power, and printed as the standard prints them.
    /// </summary>
    static abstract T Power(T x, int numerator, int denominator);

    /// <summary>x to a power that the standard prints as a decimal, such as 0.2.</summary>
    static abstract T Power(T x, double exponent);

    /// <summary>Names a number that comes into the calculation from outside it.</summary>
    static abstract T Given(SheetRecorder? recorder, string id, double value, Dimension dimension, string? origin);

    /// <summary>Names a result, and records it where there is a recorder.</summary>
    static abstract T Step(SheetRecorder? recorder, string id, T value, Dimension dimension, string clause);

    /// <summary>Records a comparison where there is a recorder.</summary>
    static abstract void Branch(SheetRecorder? recorder, in Condition<T> condition, string? clause);
}
