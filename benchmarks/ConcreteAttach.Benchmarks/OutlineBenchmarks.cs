using BenchmarkDotNet.Attributes;
using ConcreteAttach.Geometry;
using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Overlay;
using NetTopologySuite.Operation.OverlayNG;
using Shape = NetTopologySuite.Geometries.Geometry;

namespace ConcreteAttach.Benchmarks;

/// <summary>
/// The area that a group reaches in a concrete outline, against a general geometry library. The library is given what each fastener sees, so that both do the
/// same work at evaluation: cut to the squares, unite, measure. The two must agree before anything is timed.
/// </summary>
[MemoryDiagnoser]
public class OutlineBenchmarks
{
    private const double Reach = 9;
    private const double Module = 14;

    private double[] _xs = [];
    private double[] _ys = [];
    private int[] _group = [];
    private Outline _outline = null!;
    private FastenersInOutline _fasteners = null!;
    private Polygon[] _seen = [];
    private Shape[] _squares = [];

    [Params(1, 4, 16, 64)]
    public int Fasteners { get; set; }

    [Params(4, 8, 32, 128)]
    public int Vertices { get; set; }

    /// <summary>
    /// <c>Round</c>: a regular polygon close about the fasteners, without a shadow. <c>Opening</c>: a square member with an opening of the other vertices in its
    /// middle (at least three vertices); each fastener sees past it both ways.
    /// </summary>
    [Params("Round", "Opening")]
    public string Concrete { get; set; } = "Round";

    [GlobalSetup]
    public void Setup()
    {
        var random = new Random(20_250_717);
        int columns = (int)Math.Round(Math.Sqrt(Fasteners));
        double half = Module * columns / 2.0;
        _xs = new double[Fasteners];
        _ys = new double[Fasteners];
        for (int i = 0; i < Fasteners; i++)
        {
            (int row, int column) = Math.DivRem(i, columns);
            _xs[i] = (Module * (column + 0.5 + (0.4 * (random.NextDouble() - 0.5)))) - half;
            _ys[i] = (Module * (row + 0.5 + (0.4 * (random.NextDouble() - 0.5)))) - half;
        }

        _group = [.. Enumerable.Range(0, Fasteners)];
        _outline = Concrete == "Round"
            ? new Outline(Regular(Vertices, 0, 0, 1.5 * half))
            : new Outline(Regular(4, 0, 0, 1.6 * half), Regular(Math.Max(3, Vertices - 4), 0.3, 0.2, 2));
        _fasteners = new FastenersInOutline(_outline, _xs, _ys);

        var factory = new GeometryFactory();
        SeenConcrete[] seen = [.. _fasteners.Seen.ToArray().Where(s => s.Xs.Length > 0)];
        _seen = [.. seen.Select(s => factory.CreatePolygon(
            [.. Enumerable.Range(0, s.Xs.Length + 1).Select(k => new Coordinate(s.Xs[k % s.Xs.Length], s.Ys[k % s.Xs.Length]))]))];
        _squares = [.. seen.Select(s => factory.ToGeometry(new Envelope(s.X - Reach, s.X + Reach, s.Y - Reach, s.Y + Reach)))];
        if (Math.Abs(ReachedArea() - Reference()) > 1e-9 * Reference())
        {
            throw new InvalidOperationException($"area {ReachedArea()}, expected {Reference()}");
        }
    }

    [Benchmark(Baseline = true)]
    public double ReachedArea() => _fasteners.Project(_group, Reach).Area;

    /// <summary>NetTopologySuite: cut and unite by its newer overlay.</summary>
    [Benchmark]
    public double Reference() =>
        OverlayNGRobust.Union(_seen.Zip(_squares, (seen, square) => OverlayNGRobust.Overlay(seen, square, SpatialFunction.Intersection)).ToArray()).Area;

    [Benchmark]
    public int CloseEdges() => _fasteners.CloseEdges(_group, Reach).Count;

    /// <summary>What is computed once for an attachment.</summary>
    [Benchmark]
    public int Prepare() => new FastenersInOutline(_outline, _xs, _ys).Seen.Length;

    private static SimplePolygon Regular(int count, double x, double y, double radius)
    {
        double[] angles = [.. Enumerable.Range(0, count).Select(i => Math.PI * ((2 * i) + 1) / count)];
        return SimplePolygon.Of([.. angles.Select(a => x + (radius * Math.Cos(a)))], [.. angles.Select(a => y + (radius * Math.Sin(a)))]);
    }
}
