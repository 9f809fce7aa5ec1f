using System.Runtime.CompilerServices;
using ConcreteAttach.Calculation;
using ConcreteAttach.Geometry;
using ConcreteAttach.Quantities;
using UnitsNet;

namespace ConcreteAttach.Verification;

/// <summary>
/// What the fast path says of one failure mode: plain numbers in the units of the method, written into the caller's memory.
/// </summary>
public readonly struct ModeResult
{
    [MethodImpl(MethodImplOptions.AggressiveInlining)] // writes in place; else the numbers are stored and copied twice
    internal ModeResult(FailureModeKind kind, ConcreteSide side, int number, ModeStatus status, MeasurementSystem system,
        double nominal, double factor, double demand, double utilization)
    {
        Kind = kind;
        Side = side;
        Number = number;
        Status = status;
        System = system;
        NominalValue = nominal;
        Factor = factor;
        DemandValue = demand;
        Utilization = utilization;
    }

    /// <summary>Which failure mode.</summary>
    public FailureModeKind Kind { get; }

    /// <summary>The edge it belongs to, if any.</summary>
    public ConcreteSide Side { get; }

    /// <summary>Number of the group, row or part among the modes of this kind and side, from 1.</summary>
    public int Number { get; }

    /// <summary>How it came out.</summary>
    public ModeStatus Status { get; }

    /// <summary>Strength reduction factor φ: design strength over nominal strength. NaN where there is no strength.</summary>
    public double Factor { get; }

    /// <summary>Demand over design strength. NaN where the mode has none. An interaction that is not covered carries the sum of the ratios that are known.</summary>
    public double Utilization { get; }

    /// <summary>Nominal strength; of the group for group modes, of one fastener for steel and pullout.</summary>
    /// <exception cref="InvalidOperationException">The mode has no strength.</exception>
    public Force Nominal => HasStrength ? PrintedUnits.Force(NominalValue, System) : throw NoStrength();

    /// <summary>Design strength: <see cref="Factor"/> times <see cref="Nominal"/>.</summary>
    /// <exception cref="InvalidOperationException">The mode has no strength.</exception>
    public Force Design => HasStrength ? PrintedUnits.Force(Factor * NominalValue, System) : throw NoStrength();

    /// <summary>Demand, of the same fasteners as the strength.</summary>
    /// <exception cref="InvalidOperationException">The mode has no strength.</exception>
    public Force Demand => HasStrength ? PrintedUnits.Force(DemandValue, System) : throw NoStrength();

    /// <summary>Whether the mode has a nominal strength.</summary>
    public bool HasStrength => !double.IsNaN(NominalValue);

    internal MeasurementSystem System { get; }

    internal double NominalValue { get; }

    internal double DemandValue { get; }

    /// <summary>The result of a strength check.</summary>
    internal static ModeResult Checked(FailureModeKind kind, ConcreteSide side, int number, MeasurementSystem system, double nominal, double factor, double demand, double utilization) =>
        new(kind, side, number, Limit.IsBelow(1, utilization) ? ModeStatus.NotSatisfied : ModeStatus.Satisfied, system, nominal, factor, demand, utilization);

    /// <summary>A mode without numbers.</summary>
    internal static ModeResult Without(FailureModeKind kind, ConcreteSide side, int number, ModeStatus status, MeasurementSystem system) =>
        new(kind, side, number, status, system, double.NaN, double.NaN, double.NaN, double.NaN);

    private static InvalidOperationException NoStrength() => new("This failure mode has no strength; see HasStrength and Status.");
}
