namespace ConcreteAttach.Quantities;

/// <summary>What kind of quantity a number is. With a <see cref="MeasurementSystem"/> it fixes the unit.</summary>
public enum Dimension
{
    /// <summary>A pure number: a factor, a ratio, a count.</summary>
    None,

    /// <summary>A length: in or mm.</summary>
    Length,

    /// <summary>An area: in² or mm².</summary>
    Area,

    /// <summary>A force: lbf or N.</summary>
    Force,

    /// <summary>A stress or strength: psi or MPa.</summary>
    Stress,

    /// <summary>A moment of force: lbf-in or N-mm.</summary>
    Moment,

    /// <summary>A force per length: lbf/in or N/mm.</summary>
    ForcePerLength,

    /// <summary>A density: lb/ft³ or kg/m³.</summary>
    Density,

    /// <summary>A stress per length: psi/in or MPa/mm.</summary>
    StressPerLength,
}
