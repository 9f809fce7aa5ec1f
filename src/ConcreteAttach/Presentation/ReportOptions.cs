namespace ConcreteAttach.Presentation;

/// <summary>How much of a calculation a report shows. Inputs, results, assumptions, notices and cautions stand in each.</summary>
public enum ReportLevel
{
    /// <summary>Every calculation that the verification carries.</summary>
    Everything,

    /// <summary>
    /// The calculation of the modes that decide: in the load case that governs, the one in tension and the one in shear that use most of their strength, and their interaction; and every
    /// mode that is not satisfied.
    /// </summary>
    Governing,

    /// <summary>No calculation.</summary>
    Summary,
}

/// <summary>What a report shows beside the verification itself.</summary>
public sealed record ReportOptions
{
    /// <summary>The defaults: no title, the units of the method alone.</summary>
    public static readonly ReportOptions Default = new();

    /// <summary>Heading of the report; null for a plain one.</summary>
    public string? Title { get; init; }

    /// <summary>How much of the calculation it shows; everything by default.</summary>
    public ReportLevel Level { get; init; }

    /// <summary>The date that stands on the report; null for none. The library never takes it from a clock.</summary>
    public DateOnly? Date { get; init; }

    /// <summary>Whether each result is shown in US and SI units side by side. Substituted numbers stay in the units of the printed formula.</summary>
    public bool BothSystems { get; init; }
}
