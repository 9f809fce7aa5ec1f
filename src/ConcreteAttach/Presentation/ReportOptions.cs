namespace ConcreteAttach.Presentation;

/// <summary>What a report shows beside the verification itself.</summary>
public sealed record ReportOptions
{
    /// <summary>The defaults: no title, the units of the method alone.</summary>
    public static readonly ReportOptions Default = new();

    /// <summary>Heading of the report; null for a plain one.</summary>
    public string? Title { get; init; }

    /// <summary>Whether each result is shown in US and SI units side by side. Substituted numbers stay in the units of the printed formula.</summary>
    public bool BothSystems { get; init; }
}
