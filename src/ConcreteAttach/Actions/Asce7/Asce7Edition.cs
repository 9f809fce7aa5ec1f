namespace ConcreteAttach.Actions.Asce7;

/// <summary>Editions of ASCE 7.</summary>
public enum Asce7Edition
{
    /// <summary>ASCE 7-16.</summary>
    Edition2016,

    /// <summary>ASCE 7-22: snow loads at strength level, and another form of the force on nonstructural components.</summary>
    Edition2022,
}

/// <summary>What the editions are called.</summary>
internal static class Asce7Editions
{
    /// <summary>The designation: <c>ASCE 7-16</c>.</summary>
    public static string Designation(this Asce7Edition edition) => edition == Asce7Edition.Edition2022 ? "ASCE 7-22" : "ASCE 7-16";
}
