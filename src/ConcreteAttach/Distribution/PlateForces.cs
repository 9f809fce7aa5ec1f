using ConcreteAttach.Calculation;

namespace ConcreteAttach.Distribution;

/// <summary>The two resultants under a plate in contact, in coordinates from the centroid of the fasteners.</summary>
/// <param name="Plane">The plane of pressure.</param>
/// <param name="Compression">Sum of the contact pressure.</param>
/// <param name="CompressionAt">Where it acts; null without contact.</param>
/// <param name="Tension">Sum of the tensions without prying.</param>
/// <param name="TensionAt">Where it acts; null without tension.</param>
/// <param name="LargestPressure">Largest contact pressure.</param>
/// <param name="LargestPressureAt">Where it stands; null without contact.</param>
/// <param name="Area">Area under pressure.</param>
/// <param name="Tensions">Tension on each fastener without prying.</param>
internal readonly record struct PlateForces(
    PressurePlane Plane, double Compression, (double X, double Y)? CompressionAt, double Tension, (double X, double Y)? TensionAt,
    double LargestPressure, (double X, double Y)? LargestPressureAt, double Area, double[] Tensions)
{
    /// <summary>z: distance between the resultants.</summary>
    public double? LeverArm => CompressionAt is { } c && TensionAt is { } t ? Math.Sqrt(((c.X - t.X) * (c.X - t.X)) + ((c.Y - t.Y) * (c.Y - t.Y))) : null;

    public static PlateForces Of(RigidPlate plate, ElasticGroup group, in PreparedActions actions)
    {
        double[] tensions = new double[group.Count];
        PressurePlane plane = plate.Solve(actions.N, actions.Mx, actions.My, tensions);
        PressureSums sums = plate.Region.Under(plane);
        double tension = 0, momentX = 0, momentY = 0;
        for (int i = 0; i < tensions.Length; i++)
        {
            tension += tensions[i];
            momentX += tensions[i] * group.X(i);
            momentY += tensions[i] * group.Y(i);
        }

        double largest = 0;
        (double X, double Y)? largestAt = null;
        foreach ((double x, double y) in plate.Region.Corners)
        {
            double pressure = plane.At(x, y);
            if (pressure > largest)
            {
                largest = pressure;
                largestAt = (x, y);
            }
        }

        double scale = tension + sums.U;
        bool presses = Limit.WithoutNoise(sums.U, scale) > 0;
        bool pulls = Limit.WithoutNoise(tension, scale) > 0;
        return new(
            plane,
            presses ? sums.U : 0,
            presses ? (sums.UX / sums.U, sums.UY / sums.U) : null,
            pulls ? tension : 0,
            pulls ? (momentX / tension, momentY / tension) : null,
            presses ? largest : 0,
            presses ? largestAt : null,
            presses ? sums.Area : 0,
            tensions);
    }
}
