using ConcreteAttach.Calculation;
using ConcreteAttach.Quantities;

namespace ConcreteAttach.Distribution;

/// <summary>
/// The fasteners that take shear, as an elastic group under a rigid part: each takes an equal part of the force along every direction that its hole lets it take, and a part of
/// the torsion about the shear centre in proportion to its distance. Common to all methods.
/// </summary>
/// <remarks>
/// The shear centre lies at the mean y of the fasteners that take shear along x and at the mean x of those that take shear along y. About it forces and torsion do not mix.
/// With standard holes it is the centroid.
/// </remarks>
internal sealed class ShearGroup
{
    private readonly double[] _x;
    private readonly double[] _y;
    private readonly bool[] _takesX;
    private readonly bool[] _takesY;
    private readonly double _reach;

    /// <param name="xs">Positions along x.</param>
    /// <param name="ys">Positions along y.</param>
    /// <param name="takesX">Whether each fastener takes shear along x.</param>
    /// <param name="takesY">Whether each fastener takes shear along y.</param>
    public ShearGroup(ReadOnlySpan<double> xs, ReadOnlySpan<double> ys, ReadOnlySpan<bool> takesX, ReadOnlySpan<bool> takesY)
    {
        _takesX = takesX.ToArray();
        _takesY = takesY.ToArray();
        CountX = takesX.Count(true);
        CountY = takesY.Count(true);
        CentreX = Mean(xs, takesY);
        CentreY = Mean(ys, takesX);
        int n = xs.Length;
        _x = new double[n];
        _y = new double[n];
        for (int i = 0; i < n; i++)
        {
            _x[i] = xs[i] - CentreX;
            _y[i] = ys[i] - CentreY;
            SumX2 += takesY[i] ? _x[i] * _x[i] : 0;
            SumY2 += takesX[i] ? _y[i] * _y[i] : 0;
            _reach = Math.Max(_reach, Math.Max(Math.Abs(xs[i]), Math.Abs(ys[i])));
        }

        if (Limit.WithoutNoise(Math.Sqrt(SumX2 + SumY2), _reach) == 0)
        {
            SumX2 = 0;
            SumY2 = 0;
        }

        AllTakeBoth = CountX == n && CountY == n;
    }

    /// <summary>Number of fasteners, whether they take shear or not.</summary>
    public int Count => _x.Length;

    /// <summary>Number of fasteners that take shear along x.</summary>
    public int CountX { get; }

    /// <summary>Number of fasteners that take shear along y.</summary>
    public int CountY { get; }

    /// <summary>Whether no hole is slotted or oversize.</summary>
    public bool AllTakeBoth { get; }

    /// <summary>The shear centre along x.</summary>
    public double CentreX { get; }

    /// <summary>The shear centre along y.</summary>
    public double CentreY { get; }

    /// <summary>Σx² about the shear centre over the fasteners that take shear along y.</summary>
    public double SumX2 { get; }

    /// <summary>Σy² about the shear centre over the fasteners that take shear along x.</summary>
    public double SumY2 { get; }

    /// <summary>Whether the group can turn freely.</summary>
    public bool TakesNoTorsion => SumX2 + SumY2 == 0;

    /// <summary>Place of a fastener along x from the shear centre.</summary>
    public double X(int index) => _x[index];

    /// <summary>Place of a fastener along y from the shear centre.</summary>
    public double Y(int index) => _y[index];

    /// <summary>Whether a fastener takes shear along x.</summary>
    public bool TakesX(int index) => _takesX[index];

    /// <summary>Whether a fastener takes shear along y.</summary>
    public bool TakesY(int index) => _takesY[index];

    /// <summary>Distance along x of a place from the shear centre; 0 where it is the noise of rounding.</summary>
    public double ArmX(double place) => Arm(place, CentreX);

    /// <summary>Distance along y of a place from the shear centre; 0 where it is the noise of rounding.</summary>
    public double ArmY(double place) => Arm(place, CentreY);

    /// <summary>The shear on each fastener, from the forces and the torsion about the shear centre.</summary>
    public void Shears(in PreparedActions actions, Span<double> shearX, Span<double> shearY)
    {
        PlainNumber twist = ElasticDistribution.Twist(default(Sheet<PlainNumber>), this, new(actions.Mz));
        var meanX = new PlainNumber(CountX == 0 ? 0 : actions.Vx / CountX);
        var meanY = new PlainNumber(CountY == 0 ? 0 : actions.Vy / CountY);
        for (int i = 0; i < shearX.Length; i++)
        {
            shearX[i] = _takesX[i] ? ElasticDistribution.ShearX(meanX, twist, new(_y[i])).Value : 0;
            shearY[i] = _takesY[i] ? ElasticDistribution.ShearY(meanY, twist, new(_x[i])).Value : 0;
        }
    }

    /// <summary>Refuses shear that no fastener takes.</summary>
    /// <param name="vx">Shear along x.</param>
    /// <param name="vy">Shear along y.</param>
    /// <param name="mz">Torsion about the shear centre.</param>
    /// <param name="torsionScale">Size of the moments before the transfer to the shear centre, for the tolerance.</param>
    /// <param name="system">Unit system of the numbers, for the message.</param>
    /// <exception cref="InputException">Such a shear.</exception>
    public void RequireCarried(double vx, double vy, double mz, double torsionScale, MeasurementSystem system)
    {
        if (CountX == 0 && vx != 0)
        {
            throw new InputException("Vx", QuantityText.Format(vx, Dimension.Force, system), "0: no hole of the plate lets a fastener take shear along x");
        }

        if (CountY == 0 && vy != 0)
        {
            throw new InputException("Vy", QuantityText.Format(vy, Dimension.Force, system), "0: no hole of the plate lets a fastener take shear along y");
        }

        if (TakesNoTorsion && Math.Abs(mz) > Limit.Tolerance * torsionScale)
        {
            string moment = QuantityText.Format(mz, Dimension.Moment, system);
            throw _x.Length == 1
                ? new InputException("Mz", $"{moment} about the one fastener", "0: a single fastener carries no torsion; let the forces act at its axis (at), or add fasteners")
                : new InputException("Mz", $"{moment} about the shear centre of the fasteners", "0: the fasteners that take shear carry no torsion");
        }
    }

    private double Arm(double place, double centre)
    {
        double arm = place - centre;
        return Limit.WithoutNoise(Math.Abs(arm), Math.Abs(place) + Math.Abs(centre) + _reach) == 0 ? 0 : arm;
    }

    /// <summary>Mean of the places of those that count; of all where none does.</summary>
    private static double Mean(ReadOnlySpan<double> places, ReadOnlySpan<bool> counts)
    {
        bool any = counts.Contains(true);
        int n = any ? counts.Count(true) : places.Length;
        double mean = 0;
        for (int i = 0; i < places.Length; i++)
        {
            mean += !any || counts[i] ? places[i] / n : 0;
        }

        return mean;
    }
}
