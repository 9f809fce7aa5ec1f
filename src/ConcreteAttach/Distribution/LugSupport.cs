namespace ConcreteAttach.Distribution;

/// <summary>Shear lugs below the attached part: where they take the shear, and what they leave to each fastener.</summary>
/// <param name="ArmX">How far below the attached part shear along x is taken.</param>
/// <param name="ArmY">How far below the attached part shear along y is taken.</param>
/// <param name="ShareX">Part of the shear along x that goes to each fastener; 0 where the lugs take all.</param>
/// <param name="ShareY">The same along y.</param>
internal sealed record LugSupport(double ArmX, double ArmY, double ShareX, double ShareY);
