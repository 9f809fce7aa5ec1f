namespace ConcreteAttach.Verification;

/// <summary>Which load cases of a verification carry their calculation sheets.</summary>
public enum SheetScope
{
    /// <summary>None: numbers and statuses only.</summary>
    None,

    /// <summary>The load case that governs.</summary>
    Governing,

    /// <summary>Every load case.</summary>
    All,
}
