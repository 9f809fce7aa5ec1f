namespace ConcreteAttach.Quantities;

/// <summary>The units in which a standard is printed, and in which its constants hold.</summary>
public enum MeasurementSystem
{
    /// <summary>in, lbf, psi: the inch-pound edition of ACI 318.</summary>
    PoundInch,

    /// <summary>mm, N, MPa: the SI edition of ACI 318, and EN 1992-4.</summary>
    NewtonMillimetre,
}
