namespace ConcreteAttach.Presentation.Drawings;

/// <summary>What a drawing shows.</summary>
public sealed record DrawingOptions
{
    /// <summary>The defaults: the load case that governs, the units of the method alone.</summary>
    public static readonly DrawingOptions Default = new();

    /// <summary>Name of the load case that is shown; null for the one that governs, or the first where none does.</summary>
    public string? LoadCase { get; init; }

    /// <summary>Whether each length and force is shown in US and SI units side by side.</summary>
    public bool BothSystems { get; init; }
}
