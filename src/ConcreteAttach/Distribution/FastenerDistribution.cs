namespace ConcreteAttach.Distribution;

/// <summary>How the forces on the attached part reach the fasteners: tension elastically or under a plate in contact, shear by the fasteners that take it.</summary>
/// <param name="elastic">All fasteners as an elastic group; its centroid is where the axial force and the bending moments are taken.</param>
/// <param name="shear">The fasteners that take shear.</param>
/// <param name="plate">The plate in contact with the concrete, in coordinates from that centroid; null without contact.</param>
/// <param name="prying">Prying as a share of the tension.</param>
internal sealed class FastenerDistribution(ElasticGroup elastic, ShearGroup shear, RigidPlate? plate, double prying)
{
    public ElasticGroup Elastic { get; } = elastic;

    public ShearGroup Shear { get; } = shear;

    public RigidPlate? Plate { get; } = plate;

    public double Prying { get; } = prying;

    /// <summary>Shear lugs that take the shear in place of the fasteners; null without.</summary>
    public LugSupport? Lugs { get; init; }

    /// <summary>The axial force on each fastener, tension positive.</summary>
    public void Tensions(in PreparedActions actions, Span<double> tensions)
    {
        if (Plate is null)
        {
            Elastic.Tensions(actions, tensions);
        }
        else
        {
            Plate.Solve(actions.N, actions.Mx, actions.My, tensions);
        }

        if (Prying > 0)
        {
            foreach (ref double tension in tensions)
            {
                tension = tension > 0 ? (1 + Prying) * tension : tension;
            }
        }
    }

    /// <summary>The shear on each fastener.</summary>
    public void Shears(in PreparedActions actions, Span<double> shearX, Span<double> shearY)
    {
        if (Lugs is null)
        {
            Shear.Shears(actions, shearX, shearY);
            return;
        }

        shearX.Fill(Lugs.ShareX * actions.Vx);
        shearY.Fill(Lugs.ShareY * actions.Vy);
    }
}
