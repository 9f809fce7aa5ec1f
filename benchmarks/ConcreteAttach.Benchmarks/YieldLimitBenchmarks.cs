using BenchmarkDotNet.Attributes;
using ConcreteAttach.Calculation;
using ConcreteAttach.Materials;
using ConcreteAttach.Nds;
using ConcreteAttach.Quantities;
using UnitsNet;

namespace ConcreteAttach.Benchmarks;

/// <summary>Yield modes of a sill bolt (NDS-2018 12.3): the formulas on bare doubles, with their sheet, the public answer, and hand-written doubles.</summary>
[MemoryDiagnoser]
public class YieldLimitBenchmarks
{
    private readonly double[] _modes = new double[YieldLimit.ModeCount];
    private WoodConnection _connection = null!;
    private DowelData _data = null!;

    /// <summary>Gap in in.: 0 takes the equations of the table, above 0 those of TR12.</summary>
    [Params(0, 0.25)]
    public double Gap { get; set; }

    [GlobalSetup]
    public void Setup()
    {
        var bolt = new DowelFastener(DowelKind.Bolt, Length.FromInches(0.5));
        var concrete = new ConcreteBearingMember(Pressure.FromPoundsForcePerSquareInch(3000), Length.FromInches(6));
        _connection = new(bolt, concrete, new WoodMember(WoodSpeciesTable.Find("Hem-Fir"), Length.FromInches(1.5), 90)) { Gap = Length.FromInches(Gap) };
        _data = _connection.Prepare();
        if (Gap == 0 && Math.Abs((Formulas() / Kernel()) - 1) > 1e-12)
        {
            throw new InvalidOperationException("The hand-written doubles do not give the strength of the formulas.");
        }
    }

    [Benchmark(Baseline = true)]
    public double Formulas() => YieldLimit.Strength(default(Sheet<PlainNumber>), _data, _modes).Value;

    [Benchmark]
    public CalculationSheet Recorded()
    {
        var recorder = new SheetRecorder(MeasurementSystem.PoundInch);
        YieldLimit.Strength(new Sheet<TracedNumber>(recorder), _data, _modes);
        return recorder.ToSheet();
    }

    [Benchmark]
    public ConnectionStrength PublicAnswer() => _connection.Lateral(new());

    /// <summary>The same six modes as straight doubles, without a gap, each group divided by its R_d once: fewer divisions than the formulas, which keep Z of each mode.</summary>
    [Benchmark]
    public double Kernel()
    {
        double d = _data.Diameter, fyb = _data.BendingYield, lm = _data.Main.Length, ls = _data.Side.Length;
        double fem = 7500, fes = 6100 * Math.Pow(_data.Side.Strength, 1.45) / Math.Sqrt(d);
        double k = 1 + (0.25 * _data.Side.Angle / 90), re = fem / fes, rt = lm / ls, d2 = d * d;
        double k1 = (Math.Sqrt(re + (2 * re * re * (1 + rt + (rt * rt))) + (rt * rt * re * re * re)) - (re * (1 + rt))) / (1 + re);
        double k2 = Math.Sqrt((2 * (1 + re)) + (2 * fyb * (1 + (2 * re)) * d2 / (3 * fem * lm * lm))) - 1;
        double k3 = Math.Sqrt((2 * (1 + re) / re) + (2 * fyb * (2 + re) * d2 / (3 * fem * ls * ls))) - 1;
        double bearing = Math.Min(d * lm * fem, d * ls * fes) / (4 * k), rotation = k1 * d * ls * fes / (3.6 * k);
        double hinges = Math.Min(k2 * d * lm * fem / (1 + (2 * re)), Math.Min(k3 * d * ls * fem / (2 + re), d2 * Math.Sqrt(2 * fem * fyb / (3 * (1 + re))))) / (3.2 * k);
        return Math.Min(bearing, Math.Min(rotation, hinges));
    }
}
