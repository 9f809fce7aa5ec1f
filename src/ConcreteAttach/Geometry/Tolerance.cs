using ConcreteAttach.Calculation;

namespace ConcreteAttach.Geometry;

/// <summary>When two lengths count as equal: within 1e-9 of their size.</summary>
internal static class Tolerance
{
    /// <summary>Lengths that differ by no more than this part of their size are equal.</summary>
    public const double Relative = Limit.Tolerance;

    /// <summary>
    /// The distance below which two things are nearer than <paramref name="limit"/>. What stands at the limit itself,
    /// or within the tolerance of it, is not below.
    /// </summary>
    public static double Below(double limit) => limit * (1 - Relative);
}
