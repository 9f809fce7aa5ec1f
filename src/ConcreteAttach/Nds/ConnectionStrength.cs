using System.Collections.Immutable;
using ConcreteAttach.Calculation;
using UnitsNet;

namespace ConcreteAttach.Nds;

/// <summary>Reference design value of one yield mode.</summary>
/// <param name="mode">The mode.</param>
/// <param name="strength">Z of the mode.</param>
public readonly struct YieldModeStrength(YieldMode mode, Force strength)
{
    /// <summary>The mode.</summary>
    public YieldMode Mode { get; } = mode;

    /// <summary>Z of the mode, not rounded.</summary>
    public Force Strength { get; } = strength;
}

/// <summary>What one fastener of a connection, or one washer, holds, and how that came about. Immutable.</summary>
public sealed class ConnectionStrength
{
    internal ConnectionStrength(
        Force? reference, Force? adjusted, ImmutableArray<YieldModeStrength> modes, YieldMode? governing, string? notCovered, ImmutableArray<string> notMet, SheetRecorder recorder, TracedNumber adjustedOnSheet = default)
    {
        Reference = reference;
        Adjusted = adjusted;
        Modes = modes;
        Governing = governing;
        NotCovered = notCovered;
        NotMet = notMet;
        Recorder = recorder;
        AdjustedOnSheet = adjustedOnSheet;
        Sheet = recorder.ToSheet();
    }

    /// <summary>Reference design value; null where it is not covered.</summary>
    public Force? Reference { get; }

    /// <summary>
    /// Adjusted design value, to compare with the load of the chosen format; null where it is not covered, or where a minimum in <see cref="NotMet"/> does not permit
    /// the connection.
    /// </summary>
    public Force? Adjusted { get; }

    /// <summary>Z of each yield mode that can occur, in the order of <see cref="YieldMode"/>; empty where the strength is not one of yield.</summary>
    public ImmutableArray<YieldModeStrength> Modes { get; }

    /// <summary>The yield mode with the least Z, the first of several equal ones; null where there is none.</summary>
    public YieldMode? Governing { get; }

    /// <summary>Why the standard does not cover it; null where it does.</summary>
    public string? NotCovered { get; }

    /// <summary>Minima of the standard that are not met, each with its clause; empty where all are.</summary>
    public ImmutableArray<string> NotMet { get; }

    /// <summary>The calculation, line by line.</summary>
    public CalculationSheet Sheet { get; }

    /// <summary>Takes further lines for a sheet that goes on to the demand.</summary>
    internal SheetRecorder Recorder { get; }

    /// <summary>The adjusted design value as a symbol of the sheet; meaningless where it is not covered.</summary>
    internal TracedNumber AdjustedOnSheet { get; }
}
