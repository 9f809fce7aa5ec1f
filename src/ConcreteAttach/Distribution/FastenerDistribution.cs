using System.Runtime.CompilerServices;
using ConcreteAttach.Calculation;

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

    /// <summary>The two resultants under a plate in contact; neither without contact.</summary>
    /// <param name="actions">Prepared actions.</param>
    /// <param name="scratch">Working memory: one number for each fastener.</param>
    public PlateCouple Couple(in PreparedActions actions, Span<double> scratch)
    {
        if (Plate is null)
        {
            return default;
        }

        PressureSums sums = Plate.Region.Under(Plate.Solve(actions.N, actions.Mx, actions.My, scratch));
        double tension = 0, momentX = 0, momentY = 0;
        for (int i = 0; i < Elastic.Count; i++)
        {
            tension += scratch[i];
            momentX += scratch[i] * Elastic.X(i);
            momentY += scratch[i] * Elastic.Y(i);
        }

        double scale = tension + sums.U;
        if (Limit.WithoutNoise(sums.U, scale) == 0 || Limit.WithoutNoise(tension, scale) == 0)
        {
            return default;
        }

        double x = (momentX / tension) - (sums.UX / sums.U), y = (momentY / tension) - (sums.UY / sums.U);
        return new(sums.U, tension, Math.Sqrt((x * x) + (y * y)));
    }

    /// <summary>The shear on each fastener.</summary>
    public void Shears(in PreparedActions actions, Span<double> shearX, Span<double> shearY)
    {
        if (Lugs is null)
        {
            Shear.Shears(actions, shearX, shearY);
            return;
        }

        SharesOfWelded(Lugs, actions, shearX, shearY);
    }

    [MethodImpl(MethodImplOptions.NoInlining)] // costs fasteners without lugs nothing
    private static void SharesOfWelded(LugSupport lugs, in PreparedActions actions, Span<double> shearX, Span<double> shearY)
    {
        shearX.Fill(lugs.ShareX * actions.Vx);
        shearY.Fill(lugs.ShareY * actions.Vy);
    }
}
