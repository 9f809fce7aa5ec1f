using System.Collections.Immutable;
using ConcreteAttach.Actions;
using ConcreteAttach.Attached;
using ConcreteAttach.Calculation;
using ConcreteAttach.Quantities;

namespace ConcreteAttach.Verification;

/// <summary>The sheet that shows how the forces of a load case reach the fasteners.</summary>
/// <param name="LoadCase">Name of the load case.</param>
/// <param name="Sheet">The calculation.</param>
public sealed record DistributionSheet(string LoadCase, CalculationSheet Sheet);

/// <summary>A sheet that shows where the forces of load cases come from: a force that a standard asks for, or a load combination.</summary>
/// <param name="Title">What it computes.</param>
/// <param name="LoadCase">Name of the load case that it forms; null where several take its result.</param>
/// <param name="Sheet">The calculation.</param>
public sealed record DemandSheet(string Title, string? LoadCase, CalculationSheet Sheet);

/// <summary>The answer to one attachment. Immutable.</summary>
public sealed class AttachmentVerification : VerificationResult
{
    /// <summary>Puts the modes of an attachment together and finds what governs.</summary>
    /// <exception cref="InputException">Modes of different safety formats.</exception>
    internal AttachmentVerification(
        string method, string constants, MeasurementSystem system, Attachment attachment, ImmutableArray<LoadCase> loadCases, ImmutableArray<FailureMode> modes, ImmutableArray<FastenerForces> forces,
        ImmutableArray<DistributionSheet> distribution, ImmutableArray<ContactState> contacts, ImmutableArray<string> assumptions, ImmutableArray<string> notices)
        : base(method, constants, system, modes, assumptions, notices)
    {
        Attachment = attachment;
        LoadCases = loadCases;
        Forces = forces;
        Distribution = distribution;
        Contacts = contacts;
    }

    /// <summary>What was verified.</summary>
    public Attachment Attachment { get; }

    /// <summary>The load cases that were verified.</summary>
    public ImmutableArray<LoadCase> LoadCases { get; }

    /// <inheritdoc/>
    public override ImmutableArray<string> LoadCaseNames => [.. LoadCases.Select(l => l.Name)];

    /// <summary>The force on each fastener in each load case.</summary>
    public ImmutableArray<FastenerForces> Forces { get; }

    /// <summary>How the forces reach the fasteners, for the load cases whose sheets were asked for.</summary>
    public ImmutableArray<DistributionSheet> Distribution { get; }

    /// <summary>How the plate bears on the concrete in each load case; empty without a plate in contact.</summary>
    public ImmutableArray<ContactState> Contacts { get; }

    /// <summary>What each option of ACI 318-19 17.10.5.3 and 17.10.6.3 gives, for the load cases whose sheets were asked for and whose earthquake part counts.</summary>
    public ImmutableArray<EarthquakeOption> EarthquakeOptions { get; internal init; } = [];

    /// <summary>Where the forces of the load cases come from, for the load cases whose sheets were asked for; empty where load cases were given.</summary>
    public ImmutableArray<DemandSheet> Demand { get; private set; } = [];

    /// <summary>The same verification with the calculation of its load cases.</summary>
    internal AttachmentVerification With(ImmutableArray<DemandSheet> demand, ImmutableArray<string> notices)
    {
        var copy = (AttachmentVerification)MemberwiseClone();
        copy.Demand = [.. demand.Where(d => d.LoadCase is null || Distribution.Any(s => s.LoadCase == d.LoadCase))];
        copy.Notices = [.. Notices, .. notices];
        return copy;
    }

    /// <summary>Inputs beside those of the attachment, as a report prints them.</summary>
    internal ImmutableArray<string> FurtherInputs { get; init; } = [];

    /// <summary>
    /// Verifies another attachment under other load cases by the same method, edition and readings, with or without sheets; null where that cannot be done. For figures that show
    /// how a result changes with the attachment.
    /// </summary>
    internal Func<Attachment, IEnumerable<LoadCase>, bool, AttachmentVerification>? Again { get; init; }
}
