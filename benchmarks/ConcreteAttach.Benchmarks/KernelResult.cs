using ConcreteAttach.Geometry;
using ConcreteAttach.Verification;

namespace ConcreteAttach.Benchmarks;

/// <summary>One failure mode in plain numbers.</summary>
internal readonly struct KernelResult
{
    public KernelResult(FailureModeKind kind, double nominal, double factor, double demand, ConcreteSide side = default, int number = 1)
    {
        Kind = kind;
        Side = side;
        Number = number;
        Nominal = nominal;
        Factor = factor;
        Demand = demand;
        Utilization = demand / (factor * nominal);
        Status = Utilization > 1 + 1e-9 ? ModeStatus.NotSatisfied : ModeStatus.Satisfied;
    }

    private KernelResult(FailureModeKind kind, ModeStatus status, ConcreteSide side, double ratio = double.NaN)
    {
        Kind = kind;
        Side = side;
        Number = 1;
        Status = status;
        Nominal = Factor = Demand = double.NaN;
        Utilization = ratio;
    }

    public FailureModeKind Kind { get; }

    public ConcreteSide Side { get; }

    public int Number { get; }

    public ModeStatus Status { get; }

    public double Nominal { get; }

    public double Factor { get; }

    public double Demand { get; }

    public double Utilization { get; }

    /// <summary>A mode without a strength that has a ratio.</summary>
    public static KernelResult OfRatio(FailureModeKind kind, double ratio, bool isKnown) =>
        new(kind, ratio > 1 + 1e-9 ? ModeStatus.NotSatisfied : isKnown ? ModeStatus.Satisfied : ModeStatus.NotCovered, ConcreteSide.None, ratio);

    /// <summary>A mode without numbers.</summary>
    public static KernelResult Without(FailureModeKind kind, ModeStatus status, ConcreteSide side = default) => new(kind, status, side);
}
