using ConcreteAttach.Calculation;
using ConcreteAttach.Verification;

namespace ConcreteAttach.Aci318;

/// <summary>A plate on levelling nuts above the concrete, without grout: what chapter 17 has no formula for.</summary>
internal static class StandOff
{
    /// <summary>Why steel strength in shear is not covered.</summary>
    public const string Shear = "The plate stands off the concrete without grout, so that shear bends the fasteners: chapter 17 has no formula for it.";

    private const string Compression = "Fasteners in compression under a plate that stands off the concrete: chapter 17 has no formula for their buckling and for the concrete below them.";

    private static readonly ModeName Name = new(FailureModeKind.StandOffCompression, "17.1");

    /// <summary>Writes that compression is not covered, where there is some.</summary>
    public static void Write<T>(ReadOnlySpan<double> tension, in ModeWriter<T> writer)
        where T : struct, IFormulaNumber<T>
    {
        double largest = 0;
        double lowest = 0;
        foreach (double force in tension)
        {
            largest = Math.Max(largest, Math.Abs(force));
            lowest = Math.Min(lowest, force);
        }

        writer.WriteGap(new ModeLabel(Name), lowest < -TensionModes.LeastShare * largest, Compression);
    }
}
