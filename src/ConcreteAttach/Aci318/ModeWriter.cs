using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using ConcreteAttach.Calculation;
using ConcreteAttach.Geometry;
using ConcreteAttach.Quantities;
using ConcreteAttach.Verification;

namespace ConcreteAttach.Aci318;

/// <summary>
/// Takes the failure modes as they are computed: the numbers into the caller's memory, and, where there is a <see cref="ModeTrace"/>, what
/// a reader wants beside them.
/// </summary>
/// <remarks>What changes stands in <see cref="ModeProgress"/>, so that the writer itself is passed on read-only.</remarks>
internal readonly ref struct ModeWriter<T>
    where T : struct, IFormulaNumber<T>
{
    private readonly Span<ModeResult> _results;
    private readonly ref ModeProgress _progress;
    private readonly MeasurementSystem _system;
    private readonly ModeTrace? _trace;

    public ModeWriter(Span<ModeResult> results, ref ModeProgress progress, MeasurementSystem system, ModeTrace? trace)
    {
        _results = results;
        _progress = ref progress;
        _system = system;
        _trace = trace;
    }

    /// <summary>Whether group, reason and clause are kept.</summary>
    public bool IsTracing => _trace is not null;

    /// <summary>A fresh sheet for one mode.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public Sheet<T> NewSheet() => typeof(T) == typeof(PlainNumber) ? default : new Sheet<T>(_trace?.NewRecorder(_system));

    /// <summary>Compares a demand with φ times a nominal strength, and writes the mode.</summary>
    /// <param name="sheet">The mode's sheet.</param>
    /// <param name="mode">Kind, edge, number, clause and names.</param>
    /// <param name="nominal">Nominal strength.</param>
    /// <param name="phi">Strength reduction factor.</param>
    /// <param name="demand">Demand in the printed unit.</param>
    /// <param name="group">Numbers of the fasteners that count.</param>
    public void Check(Sheet<T> sheet, ModeLabel mode, T nominal, T phi, double demand, ReadOnlySpan<int> group) =>
        Check(sheet, mode, nominal, phi, sheet.Given(mode.Name.DemandId, demand, Dimension.Force, mode.Name.DemandOrigin), group);

    /// <summary>The same with a demand that stands on the sheet already.</summary>
    public void Check(Sheet<T> sheet, ModeLabel mode, T nominal, T phi, T demand, ReadOnlySpan<int> group)
    {
        if (_progress.IsEarthquakeTension || _progress.WeightedLoadFactor > 0)
        {
            phi = Adjusted(sheet, mode, nominal, phi, demand);
        }

        T design = sheet.Step(mode.Name.DesignId, phi * nominal, Dimension.Force, "17.5.2");
        T utilization = sheet.Factor(FormulaText.UtilizationId, demand / design, "17.5.2");
        _progress.Highest = utilization.Value > _progress.Highest ? utilization.Value : _progress.Highest;
        ModeStatus status = Limit.IsBelow(1, utilization.Value) ? ModeStatus.NotSatisfied : ModeStatus.Satisfied;
        _results[_progress.Count++] = new ModeResult(mode.Kind, mode.Side, mode.Number, status, _system, nominal.Value, phi.Value, demand.Value, utilization.Value);
        _trace?.Keep(mode.Name.Clause, null, group);
    }

    /// <summary>α of allowable stress design; 0 in strength design.</summary>
    public double WeightedLoadFactor => _progress.WeightedLoadFactor;

    /// <summary>φ under earthquake, and in allowable stress design.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)] // costs others nothing
    private T Adjusted(Sheet<T> sheet, ModeLabel mode, T nominal, T phi, T demand)
    {
        if (_progress.IsEarthquakeTension && FailureModeIds.IsConcreteTension(mode.Kind))
        {
            phi = StrengthReduction.Earthquake(sheet, phi);
            _progress.HighestOfConcrete = Math.Max(_progress.HighestOfConcrete, demand.Value / nominal.Value);
        }

        if (_progress.IsEarthquakeTension && mode.Kind == FailureModeKind.ReinforcementTension)
        {
            // 17.10.5.5: no reduction beyond 17.5.2.1; it counts as the concrete strength that the steel has to be weaker than.
            _progress.HighestOfConcrete = Math.Max(_progress.HighestOfConcrete, demand.Value / nominal.Value);
        }

        return _progress.WeightedLoadFactor > 0 ? StrengthReduction.Allowable(sheet, phi, _progress.WeightedLoadFactor) : phi;
    }

    /// <summary>The highest ratio of the strength checks since the last call, and whether no mode was uncovered among them.</summary>
    public HighestRatio TakeHighest()
    {
        var highest = new HighestRatio(_progress.Highest, !_progress.HasGap);
        _progress.Highest = 0;
        _progress.HasGap = false;
        return highest;
    }

    /// <summary>Writes a mode that has no numbers: not applicable, not covered, or a rule of detailing.</summary>
    public void WriteWithout(ModeLabel mode, ModeStatus status, string? reason, ReadOnlySpan<int> group = default)
    {
        _progress.HasGap |= status == ModeStatus.NotCovered;
        _results[_progress.Count++] = new ModeResult(mode.Kind, mode.Side, mode.Number, status, _system, double.NaN, double.NaN, double.NaN, double.NaN);
        _trace?.Keep(mode.Name.Clause, reason, group);
    }

    /// <summary>Writes a mode that the method does not cover; without demand it is not applicable.</summary>
    public void WriteGap(ModeLabel mode, bool hasDemand, string reason)
    {
        if (hasDemand)
        {
            WriteWithout(mode, ModeStatus.NotCovered, reason);
        }
        else
        {
            WriteWithout(mode, ModeStatus.NotApplicable, "No demand.");
        }
    }

    /// <summary>Writes a mode that has a utilization and no strength.</summary>
    public void Write(in ModeResult result, string clause, string? reason, ReadOnlySpan<int> group)
    {
        _results[_progress.Count++] = result;
        _trace?.Keep(clause, reason, group);
    }

    /// <summary>Highest ratio of demand to nominal strength of the concrete in tension, where earthquake asks for it.</summary>
    public double HighestOfConcrete => _progress.HighestOfConcrete;

    /// <summary>Says where the next mode stands among its like, such as <c>row 1 of 2</c>.</summary>
    public void Place(string text)
    {
        if (_trace is not null)
        {
            _trace.Place = text;
        }
    }

    /// <summary>Tells the reader something about the load case as a whole. Literal text only.</summary>
    public void Notice(string text) => _trace?.Notice(text);
}

/// <summary>How far a <see cref="ModeWriter{T}"/> has come.</summary>
internal struct ModeProgress
{
    /// <summary>Modes written so far.</summary>
    public int Count;

    /// <summary>Highest ratio since <see cref="ModeWriter{T}.TakeHighest"/>.</summary>
    public double Highest;

    /// <summary>Whether a mode was not covered since then.</summary>
    public bool HasGap;

    /// <summary>Whether 17.10.5.4 lowers the concrete strengths in tension.</summary>
    public bool IsEarthquakeTension;

    /// <summary>α of allowable stress design; 0 in strength design.</summary>
    public double WeightedLoadFactor;

    /// <summary>Under earthquake tension: the highest ratio of demand to nominal strength among the modes of the concrete in tension.</summary>
    public double HighestOfConcrete;
}

/// <summary>What all modes of a kind are called: made once, so that the fast path carries one reference instead of five texts.</summary>
/// <param name="Kind">The kind.</param>
/// <param name="Clause">The clause of the standard.</param>
/// <param name="DesignId">Symbol of the design strength.</param>
/// <param name="DemandId">Symbol of the demand.</param>
/// <param name="DemandOrigin">What the demand is.</param>
internal sealed record ModeName(FailureModeKind Kind, string Clause, string DesignId = "", string DemandId = "", string? DemandOrigin = null);

/// <summary>Which mode: its name, the edge, and its number among those of its kind at that edge.</summary>
internal readonly record struct ModeLabel(ModeName Name, ConcreteSide Side = default, int Number = 1)
{
    public FailureModeKind Kind => Name.Kind;
}

/// <summary>What a reader wants to know of each mode beside its numbers; kept in the order in which the modes were written.</summary>
internal sealed class ModeTrace(bool withSheets)
{
    private readonly List<Entry> _entries = [];
    private SheetRecorder? _recorder;

    public IReadOnlyList<Entry> Entries => _entries;

    public List<string> Notices { get; } = [];

    /// <summary>Where the mode at hand stands among its like; null where that needs no words.</summary>
    public string? Place { get; set; }

    public SheetRecorder? NewRecorder(MeasurementSystem system) => _recorder = withSheets ? new SheetRecorder(system) : null;

    public void Keep(string clause, string? reason, ReadOnlySpan<int> group)
    {
        _entries.Add(new Entry([.. group], clause, Place, reason, _recorder?.ToSheet()));
        _recorder = null;
        Place = null;
    }

    /// <summary>Adds remarks to the sheet of a mode that was kept; nothing where it has none.</summary>
    public void Remark(int mode, IEnumerable<string> remarks)
    {
        Entry entry = _entries[mode];
        _entries[mode] = entry with { Sheet = entry.Sheet?.With(remarks) };
    }

    public void Notice(string text)
    {
        if (!Notices.Contains(text))
        {
            Notices.Add(text);
        }
    }

    public sealed record Entry(ImmutableArray<int> Group, string Clause, string? Place, string? Reason, CalculationSheet? Sheet);
}
