namespace ConcreteAttach.Distribution;

/// <summary>Tension of the fasteners and compression under a plate, as two resultants.</summary>
/// <param name="Compression">Sum of the contact pressure.</param>
/// <param name="Tension">Sum of the tensions without prying.</param>
/// <param name="LeverArm">z: distance between the two.</param>
internal readonly record struct PlateCouple(double Compression, double Tension, double LeverArm)
{
    /// <summary>Whether there are both.</summary>
    public bool IsPresent => Compression > 0 && Tension > 0;
}
