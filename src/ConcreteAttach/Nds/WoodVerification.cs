using System.Collections.Immutable;
using ConcreteAttach.Quantities;
using ConcreteAttach.Verification;

namespace ConcreteAttach.Nds;

/// <summary>The answer to one fastening in wood. Immutable.</summary>
public sealed class WoodVerification : VerificationResult
{
    internal WoodVerification(
        WoodFastening fastening, ImmutableArray<WoodLoadCase> loadCases, ImmutableArray<FailureMode> modes, ImmutableArray<string> assumptions, ImmutableArray<string> notices)
        : base(NdsMethod.Standard, NdsMethod.Constants, MeasurementSystem.PoundInch, modes, assumptions, notices)
    {
        Fastening = fastening;
        LoadCases = loadCases;
    }

    /// <summary>What was verified.</summary>
    public WoodFastening Fastening { get; }

    /// <summary>The load cases that were verified.</summary>
    public ImmutableArray<WoodLoadCase> LoadCases { get; }

    /// <inheritdoc/>
    public override ImmutableArray<string> LoadCaseNames => [.. LoadCases.Select(l => l.Name)];
}
