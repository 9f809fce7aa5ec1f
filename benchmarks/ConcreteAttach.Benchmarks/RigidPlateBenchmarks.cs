using BenchmarkDotNet.Attributes;
using ConcreteAttach.Distribution;
using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.Optimization;

namespace ConcreteAttach.Benchmarks;

/// <summary>A rigid plate partly in contact: our Newton against a general optimiser over the same energy and the same exact integrals.</summary>
[MemoryDiagnoser]
public class RigidPlateBenchmarks
{
    private PlateProblem _problem = null!;
    private double[] _tensions = [];

    [Params(4, 16, 64)]
    public int Fasteners { get; set; }

    [GlobalSetup]
    public void Setup()
    {
        _problem = PlateProblem.Of(Fasteners, 4);
        _tensions = new double[Fasteners];
        _problem.Solve(_tensions);
        double[] other = _problem.TensionsByOptimiser();
        for (int i = 0; i < other.Length; i++)
        {
            if (Math.Abs(other[i] - _tensions[i]) > 1e-8 * _tensions.Max())
            {
                throw new InvalidOperationException($"fastener {i}: {_tensions[i]} and {other[i]}");
            }
        }
    }

    [Benchmark(Baseline = true)]
    public double Newton()
    {
        _problem.Solve(_tensions);
        return _tensions[0];
    }

    [Benchmark]
    public double GeneralOptimiser() => _problem.TensionsByOptimiser()[0];
}

/// <summary>How the solver grows with fasteners and with the corners of the plate.</summary>
[MemoryDiagnoser]
public class RigidPlateGrowthBenchmarks
{
    private PlateProblem _problem = null!;
    private double[] _tensions = [];

    [Params(4, 16, 64, 256)]
    public int Fasteners { get; set; }

    [Params(4, 32, 256)]
    public int Corners { get; set; }

    [GlobalSetup]
    public void Setup()
    {
        _problem = PlateProblem.Of(Fasteners, Corners);
        _tensions = new double[Fasteners];
    }

    [Benchmark]
    public double Newton()
    {
        _problem.Solve(_tensions);
        return _tensions[0];
    }
}

/// <summary>A plate of regular shape, about 20 in. wide, with fasteners in a ring, under compression with moments about both axes that lift a part of it.</summary>
internal sealed class PlateProblem
{
    private const double N = -40_000;
    private const double Mx = 350_000;
    private const double My = -260_000;
    private const double Kappa = 8 * 0.606;

    private readonly ContactRegion _region;
    private readonly RigidPlate _plate;
    private readonly double[] _x;
    private readonly double[] _y;

    private PlateProblem(double[] plateX, double[] plateY, double[] x, double[] y)
    {
        _region = new ContactRegion(plateX, plateY);
        _x = x;
        _y = y;
        _plate = new RigidPlate(_region, x, y, Kappa);
    }

    public static PlateProblem Of(int fasteners, int corners)
    {
        (double[] px, double[] py) = Ring(corners, 14, Math.PI / 4);
        (double[] x, double[] y) = Ring(fasteners, 8, 0.3);
        return new(px, py, x, y);
    }

    public void Solve(Span<double> tensions) => _plate.Solve(N, Mx, My, tensions);

    public double[] TensionsByOptimiser()
    {
        const double Size = 14;
        double load = Math.Abs(N) + ((Math.Abs(Mx) + Math.Abs(My)) / Size);
        ContactRegion region = _region.Scaled(0, 0, Size);
        double kappa = Kappa / (Size * Size);
        Vector<double> work = Vector<double>.Build.Dense([-N / load, My / Size / load, -Mx / Size / load]);
        var objective = ObjectiveFunction.Gradient(Evaluate);
        Vector<double> least = new BfgsMinimizer(1e-11, 1e-16, 1e-18, 1_000).FindMinimum(objective, Vector<double>.Build.Dense([-N / load, 0, 0])).MinimizingPoint;
        return [.. _x.Select((x, i) => load * kappa * Math.Max(0, -(least[0] + (least[1] * x / Size) + (least[2] * _y[i] / Size))))];

        (double, Vector<double>) Evaluate(Vector<double> p)
        {
            PressureSums sums = region.Under(new(p[0], p[1], p[2]));
            double a = sums.U, b = sums.UX, c = sums.UY;
            for (int i = 0; i < _x.Length; i++)
            {
                double x = _x[i] / Size, y = _y[i] / Size, force = kappa * Math.Min(0, p[0] + (p[1] * x) + (p[2] * y));
                a += force;
                b += force * x;
                c += force * y;
            }

            // The energy is a square: half of the parameters times its derivative.
            Vector<double> derivative = Vector<double>.Build.Dense([a, b, c]);
            return ((0.5 * (p * derivative)) - (work * p), derivative - work);
        }
    }

    private static (double[] X, double[] Y) Ring(int count, double radius, double from)
    {
        double[] angles = [.. Enumerable.Range(0, count).Select(i => from + (2 * Math.PI * i / count))];
        return ([.. angles.Select(a => radius * Math.Cos(a))], [.. angles.Select(a => radius * Math.Sin(a))]);
    }
}
