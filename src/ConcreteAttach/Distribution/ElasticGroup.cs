using ConcreteAttach.Calculation;
using ConcreteAttach.Quantities;

namespace ConcreteAttach.Distribution;

/// <summary>How the fasteners of a layout lie, which decides the bending moments that they can carry without contact.</summary>
internal enum GroupShape
{
    /// <summary>One fastener: no moment.</summary>
    Single,

    /// <summary>Fasteners on one line: a moment that varies along it.</summary>
    Line,

    /// <summary>Any other layout.</summary>
    Plane,
}

/// <summary>
/// The fasteners of a layout as an elastic group under a rigid attached part without contact: each carries N/n plus its share of
/// the bending moments, in proportion to its place. Common to all methods.
/// </summary>
internal sealed class ElasticGroup
{
    /// <summary>Two lengths or moments within this share of the scale at hand count as equal.</summary>
    private const double Tolerance = Limit.Tolerance;

    private readonly double[] _x;
    private readonly double[] _y;

    /// <param name="xs">Positions along x.</param>
    /// <param name="ys">Positions along y.</param>
    public ElasticGroup(ReadOnlySpan<double> xs, ReadOnlySpan<double> ys)
    {
        int n = xs.Length;
        _x = new double[n];
        _y = new double[n];
        for (int i = 0; i < n; i++)
        {
            CentroidX += xs[i] / n;
            CentroidY += ys[i] / n;
        }

        double farthest = 0;
        for (int i = 0; i < n; i++)
        {
            _x[i] = xs[i] - CentroidX;
            _y[i] = ys[i] - CentroidY;
            SumX2 += _x[i] * _x[i];
            SumY2 += _y[i] * _y[i];
            SumXy += _x[i] * _y[i];
            double distance = Math.Sqrt((_x[i] * _x[i]) + (_y[i] * _y[i]));
            if (distance > farthest)
            {
                farthest = distance;
                DirectionX = _x[i] / distance;
                DirectionY = _y[i] / distance;
            }
        }

        Reach = farthest;
        if (Limit.WithoutNoise(Math.Abs(SumXy), Math.Sqrt(SumX2 * SumY2)) == 0)
        {
            SumXy = 0;
        }

        Shape = n == 1 ? GroupShape.Single : IsLine() ? GroupShape.Line : GroupShape.Plane;
    }

    public GroupShape Shape { get; }

    public int Count => _x.Length;

    public double CentroidX { get; }

    public double CentroidY { get; }

    /// <summary>Σx² about the centroid.</summary>
    public double SumX2 { get; }

    /// <summary>Σy² about the centroid.</summary>
    public double SumY2 { get; }

    /// <summary>Σxy about the centroid; 0 where it is rounding noise.</summary>
    public double SumXy { get; }

    /// <summary>Distance of the farthest fastener from the centroid.</summary>
    public double Reach { get; }

    /// <summary>Direction of the line of a <see cref="GroupShape.Line"/>.</summary>
    public double DirectionX { get; }

    public double DirectionY { get; }

    /// <summary>The force on each fastener, tension positive, from the actions about the centroid.</summary>
    public void Tensions(in PreparedActions actions, Span<double> tensions)
    {
        var silent = default(Sheet<PlainNumber>);
        (PlainNumber betaX, PlainNumber betaY) = ElasticDistribution.Slopes(silent, this, new(actions.Mx), new(actions.My));
        var mean = new PlainNumber(actions.N / Count);
        for (int i = 0; i < tensions.Length; i++)
        {
            tensions[i] = ElasticDistribution.Tension(mean, betaX, betaY, new(_x[i]), new(_y[i])).Value;
        }
    }

    /// <summary>Distance along x of a place from the centroid; 0 where it is the noise of rounding.</summary>
    public double ArmX(double place) => Arm(place, CentroidX);

    /// <summary>Distance along y of a place from the centroid; 0 where it is the noise of rounding.</summary>
    public double ArmY(double place) => Arm(place, CentroidY);

    /// <summary>Place of a fastener along x from the centroid.</summary>
    public double X(int index) => _x[index];

    /// <summary>Place of a fastener along y from the centroid.</summary>
    public double Y(int index) => _y[index];

    /// <summary>Refuses a moment that the fasteners cannot carry without contact.</summary>
    /// <param name="mx">Moment about x through the centroid.</param>
    /// <param name="my">Moment about y through the centroid.</param>
    /// <param name="bendingScale">Size of the moments before the transfer to the centroid, for the tolerance.</param>
    /// <param name="system">Unit system of the numbers, for the message.</param>
    /// <exception cref="InputException">Such a moment.</exception>
    public void RequireCarried(double mx, double my, double bendingScale, MeasurementSystem system)
    {
        if (Shape == GroupShape.Single)
        {
            Refuse("Mx", mx, bendingScale, "the one fastener", "0: a single fastener carries no moment; let the forces act at its axis (at), or add fasteners", system);
            Refuse("My", my, bendingScale, "the one fastener", "0: a single fastener carries no moment; let the forces act at its axis (at), or add fasteners", system);
        }
        else if (Shape == GroupShape.Line)
        {
            // The moment vector along the line bends the group about its own line.
            double about = (mx * DirectionX) + (my * DirectionY);
            Refuse(Math.Abs(DirectionX) >= Math.Abs(DirectionY) ? "Mx" : "My", about, bendingScale, "the line of the fasteners",
                "0: fasteners on one line carry no moment about that line", system);
        }
    }

    private double Arm(double place, double centroid)
    {
        double arm = place - centroid;
        return Limit.WithoutNoise(Math.Abs(arm), Math.Abs(place) + Math.Abs(centroid) + Reach) == 0 ? 0 : arm;
    }

    private static void Refuse(string name, double moment, double scale, string about, string permitted, MeasurementSystem system)
    {
        if (Math.Abs(moment) > Tolerance * scale)
        {
            throw new InputException(name, $"{QuantityText.Format(moment, Dimension.Moment, system)} about {about}", permitted);
        }
    }

    private bool IsLine()
    {
        for (int i = 0; i < _x.Length; i++)
        {
            if (Math.Abs((_x[i] * DirectionY) - (_y[i] * DirectionX)) > Tolerance * Reach)
            {
                return false;
            }
        }

        return true;
    }
}
