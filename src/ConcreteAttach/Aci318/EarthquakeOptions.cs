using ConcreteAttach.Attached;
using ConcreteAttach.Distribution;
using ConcreteAttach.Quantities;
using ConcreteAttach.Verification;

namespace ConcreteAttach.Aci318;

/// <summary>17.10.5.3 and 17.10.6.3: the option that was taken beside what each of the others gives in the same load case.</summary>
internal static class EarthquakeOptions
{
    /// <summary>Every option that the load case has a choice of, in the order of the clause.</summary>
    /// <param name="attachment">The attachment, with its earthquake design.</param>
    /// <param name="loadCase">Name of the load case.</param>
    /// <param name="share">The earthquake's parts of its forces.</param>
    /// <param name="verify">Verifies another form of the attachment under the same load cases, without sheets.</param>
    public static IEnumerable<EarthquakeOption> Of(Attachment attachment, string loadCase, EarthquakeShare share, Func<Attachment, AttachmentVerification> verify)
    {
        EarthquakeDesign design = attachment.Earthquake!;
        if (Earthquake.Counts(share.Tension))
        {
            foreach (EarthquakeTensionOption option in Enum.GetValues<EarthquakeTensionOption>())
            {
                yield return Outcome(
                    new EarthquakeOption(loadCase, option, null, option == design.Tension, Verdict.NotCovered, null, null, null), attachment, design with { Tension = option },
                    option == EarthquakeTensionOption.Overstrength, verify);
            }
        }

        if (Earthquake.Counts(share.Shear) && !share.IsAlongSill)
        {
            foreach (EarthquakeShearOption option in Enum.GetValues<EarthquakeShearOption>())
            {
                yield return Outcome(
                    new EarthquakeOption(loadCase, null, option, option == design.Shear, Verdict.NotCovered, null, null, null), attachment, design with { Shear = option },
                    option == EarthquakeShearOption.Overstrength, verify);
            }
        }
    }

    private static EarthquakeOption Outcome(EarthquakeOption option, Attachment attachment, EarthquakeDesign design, bool needsOverstrength, Func<Attachment, AttachmentVerification> verify)
    {
        if (needsOverstrength && design.Overstrength is null)
        {
            return option with { Reason = "Ω_0 is not given." };
        }

        try
        {
            return Outcome(option, verify(attachment with { Earthquake = design }));
        }
        catch (InputException refused)
        {
            // Forces times Ω_0 may be more than any plane of a plate can balance.
            return option with { Reason = refused.Message };
        }
    }

    private static EarthquakeOption Outcome(EarthquakeOption option, AttachmentVerification verification)
    {
        FailureMode[] modes = [.. verification.Modes.Where(m => IsConcerned(option, m))];
        FailureMode? barred = Array.Find(modes, m => m is { Status: ModeStatus.NotSatisfied, Utilization: null }) ?? Array.Find(modes, m => m.Status == ModeStatus.NotCovered);
        FailureMode? strongest = modes.Where(m => m.Utilization is not null).MaxBy(m => m.Utilization);
        bool fails = Array.Exists(modes, m => m.Status == ModeStatus.NotSatisfied);
        FailureMode? governing = strongest is { Status: ModeStatus.NotSatisfied } ? strongest : barred ?? strongest;
        return option with
        {
            Verdict = fails ? Verdict.DoesNotHold : barred is not null ? Verdict.NotCovered : Verdict.Holds,
            Governing = governing?.Id,
            Utilization = governing?.Utilization,
            Reason = barred is null ? null : $"{barred.Id}: {barred.Reason}",
        };
    }

    /// <summary>An option for tension is told by tension, one for shear by shear, both by the interaction; the rules of 17.10 come with that for tension.</summary>
    private static bool IsConcerned(EarthquakeOption option, FailureMode mode)
    {
        bool isTension = option.Tension is not null;
        if (mode.LoadCase is null)
        {
            return isTension && FailureModeIds.IsEarthquakeRule(mode.Kind);
        }

        bool isOfOther = isTension
            ? FailureModeIds.IsShear(mode.Kind) || mode.Kind == FailureModeKind.EarthquakeShear
            : FailureModeIds.IsTension(mode.Kind) || mode.Kind == FailureModeKind.EarthquakeTension;
        return mode.LoadCase == option.LoadCase && !isOfOther;
    }
}
