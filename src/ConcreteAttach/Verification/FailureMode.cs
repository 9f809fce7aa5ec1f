using System.Collections.Immutable;
using ConcreteAttach.Actions;
using ConcreteAttach.Calculation;
using ConcreteAttach.Geometry;
using ConcreteAttach.Quantities;
using UnitsNet;

namespace ConcreteAttach.Verification;

/// <summary>One failure mode of a verification, of the concrete side or of the attached side. Immutable.</summary>
public sealed class FailureMode
{
    private readonly string? _place;
    private readonly double? _loadFactor;

    internal FailureMode(ModeResult result, string id, string? place, string? loadCase, ImmutableArray<int> group, string clause, string? reason, SafetyFormat format, CalculationSheet? sheet, double? loadFactor = null)
    {
        Result = result;
        Id = id;
        _place = place;
        LoadCase = loadCase;
        Group = group;
        Clause = clause;
        Reason = reason;
        Format = format;
        Sheet = sheet;
        _loadFactor = loadFactor;
    }

    /// <summary>Stable id, such as <c>tension/breakout</c>; a number follows where several groups or rows are checked.</summary>
    public string Id { get; }

    /// <summary>Heading in words, with edge, row and number where the mode has them.</summary>
    public string Title
    {
        get
        {
            string place = string.IsNullOrEmpty(_place) ? "" : $", {_place}";
            string number = string.IsNullOrEmpty(_place) && Id != FailureModeIds.Path(Kind, Side) ? $", no. {QuantityText.Format(Result.Number)}" : "";
            return FailureModeIds.Title(Kind, Side) + place + number;
        }
    }

    /// <summary>Which failure mode.</summary>
    public FailureModeKind Kind => Result.Kind;

    /// <summary>The edge it belongs to, if any.</summary>
    public ConcreteSide Side => Result.Side;

    /// <summary>The load case; null for detailing, which does not depend on the load.</summary>
    public string? LoadCase { get; }

    /// <summary>Numbers of the fasteners that count in the mode, from 0; empty where the mode has none.</summary>
    public ImmutableArray<int> Group { get; }

    /// <summary>How it came out.</summary>
    public ModeStatus Status => Result.Status;

    /// <summary>Why it is not applicable, not covered, or (detailing) not satisfied; else null.</summary>
    public string? Reason { get; }

    /// <summary>The clause of the standard.</summary>
    public string Clause { get; }

    /// <summary>Safety format of the strengths and the demand.</summary>
    public SafetyFormat Format { get; }

    /// <summary>Nominal strength; null where there is none. Of the group for group modes, of one fastener for steel and pullout.</summary>
    public Force? Nominal => Result.HasStrength ? Result.Nominal : null;

    /// <summary>Strength reduction factor φ; null where there is no strength.</summary>
    public double? Factor => Result.HasStrength ? Result.Factor : null;

    /// <summary>Design strength; null where there is none.</summary>
    public Force? Design => Result.HasStrength ? Result.Design : null;

    /// <summary>Demand; null where there is no strength.</summary>
    public Force? Demand => Result.HasStrength ? Result.Demand : null;

    /// <summary>Demand over design strength; at most 1 is satisfied. Null where the mode has none.</summary>
    public double? Utilization => double.IsNaN(Result.Utilization) ? null : Result.Utilization;

    /// <summary>The calculation, where it was asked for.</summary>
    public CalculationSheet? Sheet { get; }

    /// <summary>
    /// The factor on the actions at which the mode just holds; infinite without demand. 1 over the utilization, but where the strength changes with the actions (shear lugs and the axial force).
    /// </summary>
    internal double LoadFactor => _loadFactor ?? (Result.Utilization > 0 ? 1 / Result.Utilization : double.PositiveInfinity);

    /// <summary>The same without its calculation.</summary>
    internal FailureMode WithoutSheet() => new(Result, Id, _place, LoadCase, Group, Clause, Reason, Format, null, _loadFactor);

    internal ModeResult Result { get; }
}
