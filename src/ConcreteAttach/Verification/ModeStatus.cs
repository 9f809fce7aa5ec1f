namespace ConcreteAttach.Verification;

/// <summary>How a failure mode came out.</summary>
public enum ModeStatus
{
    /// <summary>The demand does not exceed the strength.</summary>
    Satisfied,

    /// <summary>The demand exceeds the strength, or a rule of detailing is broken.</summary>
    NotSatisfied,

    /// <summary>The mode cannot occur here; the reason is given.</summary>
    NotApplicable,

    /// <summary>The method says nothing for this case, or a datum is missing; the reason is given. Never to be read as satisfied.</summary>
    NotCovered,
}

/// <summary>The answer for the whole attachment.</summary>
public enum Verdict
{
    /// <summary>Every mode that applies is satisfied, and none is uncovered.</summary>
    Holds,

    /// <summary>At least one mode is not satisfied.</summary>
    DoesNotHold,

    /// <summary>No mode fails, but at least one is not covered: the attachment may not be taken to hold.</summary>
    NotCovered,
}

/// <summary>The words that stand for statuses and verdicts in text and JSON.</summary>
internal static class StatusText
{
    public static string Of(ModeStatus status) => status switch
    {
        ModeStatus.Satisfied => "satisfied",
        ModeStatus.NotSatisfied => "not satisfied",
        ModeStatus.NotApplicable => "not applicable",
        _ => "not covered",
    };

    public static string Of(Verdict verdict) => verdict switch
    {
        Verdict.Holds => "holds",
        Verdict.DoesNotHold => "does not hold",
        _ => "not covered",
    };
}
