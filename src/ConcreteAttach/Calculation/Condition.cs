using System.Runtime.CompilerServices;

namespace ConcreteAttach.Calculation;

/// <summary>How the two sides of a <see cref="Condition{T}"/> are compared.</summary>
internal enum Relation
{
    AtLeast,
    AtMost,
    Above,
    Below,
}

/// <summary>
/// A comparison that carries both of its sides, so that <see cref="Sheet{T}.When"/> can print what was compared and how it came out.
/// </summary>
internal readonly struct Condition<T>(T left, Relation relation, T right)
    where T : struct, IFormulaNumber<T>
{
    public T Left { get; } = left;

    public T Right { get; } = right;

    public Relation Relation { get; } = relation;

    /// <summary>Whether it holds; sides within <see cref="Limit.Tolerance"/> of each other count as equal.</summary>
    public bool Holds
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        get => Relation switch
        {
            Relation.AtLeast => !Limit.IsBelow(Left.Value, Right.Value),
            Relation.AtMost => !Limit.IsBelow(Right.Value, Left.Value),
            Relation.Above => Limit.IsBelow(Right.Value, Left.Value),
            _ => Limit.IsBelow(Left.Value, Right.Value),
        };
    }
}

/// <summary>The one rule by which limits are compared.</summary>
internal static class Limit
{
    /// <summary>Two numbers that differ by no more than this share of their size count as equal: a limit is met within it.</summary>
    public const double Tolerance = 1e-9;

    /// <summary>A difference below this share of the numbers it was taken from is the noise of their rounding.</summary>
    public const double Noise = 1e-12;

    /// <summary>A size of 0 or more, or 0 where it is noise against <paramref name="scale"/>.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static double WithoutNoise(double size, double scale) => size <= Noise * scale ? 0 : size;

    /// <summary>
    /// True if <paramref name="a"/> is less than <paramref name="b"/> by more than the tolerance. False with NaN. Either may be +∞, the distance
    /// to an edge that is not there: every finite number is below it.
    /// </summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static bool IsBelow(double a, double b) => b - a > Tolerance * Math.Abs(a);
}
