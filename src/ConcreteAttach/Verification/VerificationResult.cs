using System.Collections.Immutable;
using ConcreteAttach.Quantities;

namespace ConcreteAttach.Verification;

/// <summary>
/// The answer of any method: what holds, what governs, and every line of why. Immutable.
/// </summary>
/// <remarks>A failed mode decides before a gap: does not hold, then not covered, then holds.</remarks>
public abstract class VerificationResult
{
    /// <summary>Puts the modes together and finds what governs.</summary>
    /// <exception cref="InputException">Modes of different safety formats.</exception>
    private protected VerificationResult(
        string method, string constants, MeasurementSystem system, ImmutableArray<FailureMode> modes, ImmutableArray<string> assumptions, ImmutableArray<string> notices)
    {
        Method = method;
        Constants = constants;
        System = system;
        Modes = modes;
        Assumptions = assumptions;
        Notices = notices;
        foreach (FailureMode mode in modes)
        {
            if (mode.Format != modes[0].Format)
            {
                throw new InputException("format", $"{modes[0].Format} and {mode.Format} in one verification", "one safety format for all demands and strengths");
            }
        }

        Verdict = modes.Any(m => m.Status == ModeStatus.NotSatisfied) ? Verdict.DoesNotHold
            : modes.Any(m => m.Status == ModeStatus.NotCovered) ? Verdict.NotCovered
            : Verdict.Holds;
        Governing = GoverningOf(modes);
        LoadFactor = LoadFactors.Of(modes, Verdict);
    }

    /// <summary>The standard, such as <c>ACI 318-19</c>.</summary>
    public string Method { get; }

    /// <summary>Which printed set of constants was used: <c>inch-pound</c> or <c>SI</c>.</summary>
    public string Constants { get; }

    /// <summary>The units in which the method computes and its sheets are printed.</summary>
    public MeasurementSystem System { get; }

    /// <summary>The names of the load cases that were verified.</summary>
    public abstract ImmutableArray<string> LoadCaseNames { get; }

    /// <summary>Holds, does not hold, or not covered.</summary>
    public Verdict Verdict { get; }

    /// <summary>The mode with the highest utilization, one that is not satisfied before all others; null where no mode has a utilization or fails.</summary>
    public FailureMode? Governing { get; }

    /// <summary>
    /// The factor on all actions at which the verdict just holds; null without demand, where a detailing rule is broken, and where a
    /// mode is not covered.
    /// </summary>
    public double? LoadFactor { get; }

    /// <summary>Every mode of every load case, and the detailing rules.</summary>
    public ImmutableArray<FailureMode> Modes { get; }

    /// <summary>What was assumed because the input does not say it, and which reading of the standard was taken.</summary>
    public ImmutableArray<string> Assumptions { get; }

    /// <summary>What the reader should know before using the result.</summary>
    public ImmutableArray<string> Notices { get; private protected set; }

    private static FailureMode? GoverningOf(ImmutableArray<FailureMode> modes)
    {
        FailureMode? governing = null;
        foreach (FailureMode mode in modes)
        {
            if (Rank(mode) is { } rank && (governing is null || rank.CompareTo(Rank(governing)!.Value) > 0))
            {
                governing = mode;
            }
        }

        return governing;
    }

    /// <summary>Modes that fail come first, then the utilization; a broken rule of detailing has none and comes after the strengths that fail.</summary>
    private static (int Failed, double Utilization)? Rank(FailureMode mode) => mode.Status switch
    {
        ModeStatus.NotSatisfied => (1, mode.Utilization ?? 0),
        ModeStatus.Satisfied when mode.Utilization is { } utilization => (0, utilization),
        _ => null,
    };
}

/// <summary>The load factor of a verification.</summary>
internal static class LoadFactors
{
    /// <summary>Sum of tension and shear ratio that the interaction of ACI 318 permits (17.8.3).</summary>
    internal const double InteractionLimit = 1.2;

    /// <summary>The least factor of a mode, and 1.2 / (largest tension ratio + largest shear ratio), over the load cases.</summary>
    public static double? Of(ImmutableArray<FailureMode> modes, Verdict verdict)
    {
        if (modes.Any(m => m.Status == ModeStatus.NotCovered || (FailureModeIds.IsRule(m.Kind) && m.Status == ModeStatus.NotSatisfied)))
        {
            return null;
        }

        double factor = double.PositiveInfinity;
        foreach (IGrouping<string?, FailureMode> loadCase in modes.GroupBy(m => m.LoadCase))
        {
            factor = Math.Min(factor, loadCase.Where(m => m.Kind != FailureModeKind.Interaction).Select(m => m.LoadFactor).DefaultIfEmpty(double.PositiveInfinity).Min());
            double tension = Largest(loadCase, FailureModeIds.IsTension);
            double shear = Largest(loadCase, FailureModeIds.IsShearOfFasteners);
            if (tension > 0 && shear > 0)
            {
                factor = Math.Min(factor, InteractionLimit / (tension + shear));
            }
        }

        return double.IsFinite(factor) ? factor : null;
    }

    private static double Largest(IEnumerable<FailureMode> modes, Func<FailureModeKind, bool> counts) =>
        modes.Where(m => counts(m.Kind)).Select(m => m.Utilization ?? 0).DefaultIfEmpty(0).Max();
}
