using System.Buffers;
using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using ConcreteAttach.Actions;
using ConcreteAttach.Attached;
using ConcreteAttach.Calculation;
using ConcreteAttach.Distribution;
using ConcreteAttach.Geometry;
using ConcreteAttach.Quantities;
using ConcreteAttach.Verification;

namespace ConcreteAttach.Aci318;

/// <summary>
/// An attachment, checked and converted once. Immutable: any number of threads may evaluate it at the same time.
/// </summary>
/// <remarks>
/// <see cref="Evaluate"/> is the fast path: it allocates nothing. <see cref="Verify(IEnumerable{LoadCase}, SheetScope)"/> runs the same code and adds what a reader wants:
/// names, reasons, groups, and the calculation sheets, recorded from the formulas that were run.
/// </remarks>
public sealed class PreparedAttachment
{
    /// <summary>Working memory up to this many numbers is taken from the stack.</summary>
    private const int MostOnStack = 1024;

    private readonly AnchorageData _data;

    /// <summary>The same under earthquake; null where no load case can have an earthquake part that counts.</summary>
    private readonly AnchorageData? _underEarthquake;
    private readonly Attachment _attachment;
    private readonly int _scratchLength;

    /// <summary>The sill along which shear under earthquake is waived; null where there is none, or its conditions are not met.</summary>
    private readonly WoodSill? _openSill;

    internal PreparedAttachment(Attachment attachment, Aci318Edition edition, Aci318Options options)
    {
        _attachment = attachment;
        _data = new AnchorageData(attachment, edition, options);
        if (attachment.Earthquake is { Applies: true } design)
        {
            Earthquake.RequireComplete(design);
            _underEarthquake = new AnchorageData(attachment, edition, options, isEarthquake: true);
            if (design.WoodSill is not null && _data.Lugs is not null)
            {
                throw new InputException("woodSill", "a wood sill on an attachment with shear lugs", "none, or no shear lugs: these hang below a steel plate");
            }

            _openSill = design.WoodSill is { } sill && WoodSills.AreMet(_data, attachment.Fastener, sill) ? sill : null;
        }

        int edges = _data.Edges.Length;
        int ofLugs = _data.Lugs?.MostModes ?? 0;
        ModeCapacity = Math.Max(
            TensionModes.MostModes(_data.Count, edges) + ShearModes.MostModes(_data.Count, edges) + 3 + Earthquake.ModeCount + ofLugs,
            Detailing.MostModes + ReinforcementDetailing.MostModes(edges) + EarthquakeDetailing.MostModes + ShearLugModes.DetailingCount);
        _scratchLength = (3 * _data.Count) + Math.Max(TensionModes.ScratchLength(_data.Count), ShearModes.ScratchLength(_data.Count));
    }

    /// <summary>The most results that <see cref="Evaluate"/> can write; a span of this length always suffices.</summary>
    public int ModeCapacity { get; }

    /// <summary>Checks a load case and converts it once: the form that <see cref="Evaluate"/> takes.</summary>
    /// <param name="loadCase">The load case, in strength design, or in allowable stress design with its weighted load factor.</param>
    /// <exception cref="InputException">Another safety format, or a moment or shear that the fasteners cannot carry.</exception>
    public PreparedActions Prepare(LoadCase loadCase)
    {
        ArgumentNullException.ThrowIfNull(loadCase);
        RequireUsable(loadCase);
        return Prepare(loadCase, WithOverstrength(loadCase, out EarthquakeShare share), share, IsSustained(loadCase));
    }

    /// <summary>The load case that is verified, and the earthquake's parts in the one that was given.</summary>
    private LoadCase WithOverstrength(LoadCase loadCase, out EarthquakeShare share)
    {
        share = default;
        if (loadCase.Earthquake is not { } part || _attachment.Earthquake is not { Applies: true } design)
        {
            return loadCase;
        }

        share = Earthquake.ShareOf(loadCase, part, _data.Distribution, _data.Edition.System, _data.Count) with { IsAlongSill = _openSill is { } sill && IsAlong(part, sill.Direction) };
        return Earthquake.Amplified(loadCase, part, design, share, _openSill, _data.Distribution.Lugs, _data.Edition.System);
    }

    private static bool IsAlong(EarthquakeActions part, SillDirection direction) => part.Mz.Value == 0 && (direction == SillDirection.X ? part.Vy : part.Vx).Value == 0;

    /// <summary>Prepares a load case of a design that includes sustained tension, in this load case or another, or does not.</summary>
    private PreparedActions Prepare(LoadCase loadCase, LoadCase verified, in EarthquakeShare share, bool isSustainedDesign)
    {
        double n = loadCase.N.In(_data.Edition.System);
        double sustained = loadCase.SustainedTension?.In(_data.Edition.System) ?? 0;
        return PreparedActions.Of(verified, _data.Distribution, _data.Edition.System) with
        {
            SustainedShare = sustained > 0 ? sustained / n : 0,
            IsSustainedDesign = isSustainedDesign,
            Earthquake = share,
            WeightedLoadFactor = loadCase.WeightedLoadFactor ?? 0,
        };
    }

    private void RequireUsable(LoadCase loadCase)
    {
        if (loadCase.Earthquake is not null && _attachment.Earthquake is null)
        {
            throw new InputException("earthquake", $"an earthquake part in load case \"{loadCase.Name}\"", "none, or an earthquake design of the attachment with its seismic design category");
        }

        bool isAllowable = loadCase.Format == SafetyFormat.AllowableStressDesign;
        if (!isAllowable && loadCase.Format != SafetyFormat.StrengthDesign)
        {
            throw new InputException("format", $"{loadCase.Format} in load case \"{loadCase.Name}\"", "strength design, or allowable stress design with its weighted load factor: the strengths of ACI 318 are design strengths");
        }

        if (isAllowable != loadCase.WeightedLoadFactor.HasValue)
        {
            throw new InputException(
                "weightedLoadFactor", $"{(isAllowable ? "none" : QuantityText.Format(loadCase.WeightedLoadFactor!.Value))} in load case \"{loadCase.Name}\", {loadCase.Format}",
                isAllowable ? "1 or more: allowable stress design needs it" : "none in strength design");
        }

        double n = loadCase.N.In(MeasurementSystem.NewtonMillimetre);
        double sustained = loadCase.SustainedTension?.In(MeasurementSystem.NewtonMillimetre) ?? 0;
        if (sustained < 0 || Limit.IsBelow(Math.Max(n, 0), sustained))
        {
            throw new InputException(
                "sustainedTension", QuantityText.Format(loadCase.SustainedTension!.Value), $"the sustained part of N, from 0 to N, where N is a tension; N is {QuantityText.Format(loadCase.N)}");
        }
    }

    private static bool IsSustained(LoadCase loadCase) => loadCase.SustainedTension is { Value: > 0 };

    /// <summary>Evaluates all strength modes for one load case. Allocates nothing.</summary>
    /// <param name="actions">Actions that were prepared by this attachment.</param>
    /// <param name="results">Receives the modes; at least <see cref="ModeCapacity"/> long.</param>
    /// <returns>The number of modes written.</returns>
    /// <exception cref="InputException"><paramref name="results"/> is too short.</exception>
    public int Evaluate(in PreparedActions actions, Span<ModeResult> results)
    {
        if (results.Length < ModeCapacity)
        {
            throw new InputException(nameof(results), $"{QuantityText.Format(results.Length)} places", $"at least {QuantityText.Format(ModeCapacity)} (ModeCapacity)");
        }

        var progress = new ModeProgress { IsEarthquakeTension = Earthquake.Counts(actions.Earthquake.Tension), WeightedLoadFactor = actions.WeightedLoadFactor };
        var writer = new ModeWriter<PlainNumber>(results, ref progress, _data.Edition.System, null);
        Run(actions, writer, default);
        return progress.Count;
    }

    /// <summary>Verifies the attachment under its load cases.</summary>
    /// <param name="loadCases">Factored load cases, at least one, of different names.</param>
    /// <exception cref="InputException">No load case, two of one name, one of another safety format, or a moment that the fasteners cannot carry.</exception>
    public AttachmentVerification Verify(params IEnumerable<LoadCase> loadCases) => Verify(loadCases, SheetScope.Governing);

    /// <summary>Verifies the attachment under its load cases, with the sheets that are asked for.</summary>
    /// <param name="loadCases">Factored load cases, at least one, of different names.</param>
    /// <param name="sheets">Which load cases carry their sheets.</param>
    /// <exception cref="InputException">No load case, two of one name, one of another safety format, or a moment that the fasteners cannot carry.</exception>
    public AttachmentVerification Verify(IEnumerable<LoadCase> loadCases, SheetScope sheets)
    {
        ArgumentNullException.ThrowIfNull(loadCases);
        LoadCase[] cases = [.. loadCases];
        RequireOneSet(cases);
        AttachmentVerification verification = Verify(cases, _ => sheets == SheetScope.All);
        if (sheets != SheetScope.Governing)
        {
            return verification;
        }

        string shown = verification.Governing?.LoadCase ?? cases[0].Name;
        return Verify(cases, name => name == shown);
    }

    private AttachmentVerification Verify(LoadCase[] cases, Predicate<string> isShown)
    {
        var modes = ImmutableArray.CreateBuilder<FailureMode>();
        var forces = ImmutableArray.CreateBuilder<FastenerForces>(cases.Length * _data.Count);
        var distribution = ImmutableArray.CreateBuilder<DistributionSheet>();
        var contacts = ImmutableArray.CreateBuilder<ContactState>();
        var options = ImmutableArray.CreateBuilder<EarthquakeOption>();
        var notices = new List<string>();
        bool isSustainedDesign = Array.Exists(cases, IsSustained);
        var byOption = new Dictionary<(EarthquakeTensionOption?, EarthquakeShearOption?), AttachmentVerification>();
        var results = new ModeResult[ModeCapacity];
        double[] perFastener = new double[3 * _data.Count];
        foreach (LoadCase loadCase in cases)
        {
            RequireUsable(loadCase);
            LoadCase verified = WithOverstrength(loadCase, out EarthquakeShare share);
            PreparedActions actions = Prepare(loadCase, verified, share, isSustainedDesign);
            if (!ReferenceEquals(verified, loadCase))
            {
                notices.Add(Remarks.OfOverstrength(verified, _attachment.Earthquake!));
            }

            var trace = new ModeTrace(isShown(loadCase.Name));
            int count = isShown(loadCase.Name)
                ? Traced<TracedNumber>(actions, results, trace, perFastener)
                : Traced<PlainNumber>(actions, results, trace, perFastener);
            if (isShown(loadCase.Name))
            {
                options.AddRange(OptionsOf(loadCase.Name, share, ByOption, results.AsSpan(0, count), trace));
            }

            AddModes(modes, results.AsSpan(0, count), trace, loadCase.Name, loadCase.Format, LoadFactorOf(actions));
            AddForces(forces, perFastener, loadCase.Name);
            if (ContactRecord.Of(_data, loadCase.Name, actions) is { } contact)
            {
                contacts.Add(contact);
                notices.AddRange(ContactRecord.Notices(_data, contact).Where(n => !notices.Contains(n)));
            }

            notices.AddRange(trace.Notices.Where(n => !notices.Contains(n)));
            if (isShown(loadCase.Name))
            {
                distribution.Add(new(loadCase.Name, DistributionRecord.Of(_data, verified)));
            }
        }

        var detailing = new ModeTrace(withSheets: true);
        var progress = default(ModeProgress);
        var detailingWriter = new ModeWriter<TracedNumber>(results, ref progress, _data.Edition.System, detailing);
        Detailing.Write(_data, detailingWriter);
        ReinforcementDetailing.Write(_data, detailingWriter);
        if (_data.Lugs is { } given)
        {
            ShearLugModes.WriteDetailing(_data, given, detailingWriter);
        }

        if (_underEarthquake is not null && Array.Exists(cases, c => c.Earthquake is not null))
        {
            EarthquakeDetailing.Write(_data, _attachment.Fastener, _attachment.Earthquake!, detailingWriter);
        }

        AddModes(modes, results.AsSpan(0, progress.Count), detailing, null, cases[0].Format, _ => null);

        return new AttachmentVerification(
            _data.Edition.Standard, _data.Edition.Constants, _data.Edition.System, _attachment, [.. cases], modes.ToImmutable(), forces.ToImmutable(), distribution.ToImmutable(), contacts.ToImmutable(),
            Remarks.Assumptions(_attachment, _data, cases[0].Format), [.. Remarks.Notices(_data), .. ReinforcementRemarks.Notices(_data), .. Remarks.OfSustainedTension(_data, isSustainedDesign), .. notices])
        {
            EarthquakeOptions = options.ToImmutable(),
            Again = (attachment, others, withSheets) => new PreparedAttachment(attachment, _data.Edition, _data.Options).Verify(others, withSheets ? SheetScope.All : SheetScope.None),
        };

        // Once for all load cases: each asks for the same few options.
        AttachmentVerification ByOption(Attachment other)
        {
            (EarthquakeTensionOption?, EarthquakeShearOption?) key = (other.Earthquake!.Tension, other.Earthquake.Shear);
            if (!byOption.TryGetValue(key, out AttachmentVerification? verification))
            {
                verification = new PreparedAttachment(other, _data.Edition, _data.Options).Verify(cases, _ => false);
                byOption.Add(key, verification);
            }

            return verification;
        }
    }

    /// <summary>What the options of 17.10 give in a load case, noted on the sheets of earthquake as well.</summary>
    private EarthquakeOption[] OptionsOf(string loadCase, in EarthquakeShare share, Func<Attachment, AttachmentVerification> byOption, ReadOnlySpan<ModeResult> results, ModeTrace trace)
    {
        EarthquakeOption[] options = share.IsPresent
            ? [.. EarthquakeOptions.Of(_attachment, loadCase, share, byOption)]
            : [];
        for (int i = 0; i < results.Length; i++)
        {
            if (results[i].Kind is FailureModeKind.EarthquakeTension or FailureModeKind.EarthquakeShear)
            {
                bool isTension = results[i].Kind == FailureModeKind.EarthquakeTension;
                trace.Remark(i, options.Where(o => o.Tension is not null == isTension).Select(o => o.ToString()));
            }
        }

        return options;
    }

    private int Traced<T>(in PreparedActions actions, Span<ModeResult> results, ModeTrace trace, Span<double> perFastener)
        where T : struct, IFormulaNumber<T>
    {
        var progress = new ModeProgress { IsEarthquakeTension = Earthquake.Counts(actions.Earthquake.Tension), WeightedLoadFactor = actions.WeightedLoadFactor };
        var writer = new ModeWriter<T>(results, ref progress, _data.Edition.System, trace);
        Run(actions, writer, perFastener);
        return progress.Count;
    }

    /// <summary>The one flow, for the fast path and for the sheets: forces on the fasteners, then the modes.</summary>
    /// <param name="actions">Prepared actions.</param>
    /// <param name="writer">Takes the modes.</param>
    /// <param name="perFastener">Receives tension, shear along x and along y of each fastener, unless empty.</param>
    [SkipLocalsInit]
    private void Run<T>(in PreparedActions actions, in ModeWriter<T> writer, Span<double> perFastener)
        where T : struct, IFormulaNumber<T>
    {
        AnchorageData data = Earthquake.Counts(Math.Max(actions.Earthquake.Tension, actions.Earthquake.Shear)) ? _underEarthquake! : _data;
        int count = data.Count;
        double[]? rented = _scratchLength > MostOnStack ? ArrayPool<double>.Shared.Rent(_scratchLength) : null;
        Span<double> scratch = rented is null ? stackalloc double[_scratchLength] : rented;
        var memory = new Scratch(scratch);
        Span<double> tension = memory.Doubles(count);
        Span<double> shearX = memory.Doubles(count);
        Span<double> shearY = memory.Doubles(count);
        data.Distribution.Tensions(actions, tension);
        data.Distribution.Shears(actions, shearX, shearY);
        if (!perFastener.IsEmpty)
        {
            Show(data, tension, shearX, shearY, writer, perFastener);
        }

        var state = new LoadState(actions.SustainedShare, actions.IsSustainedDesign, data.Edition.Is2025 ? data.Distribution.Couple(actions, memory.Rest[..count]) : default);
        HighestRatio tensionRatio = TensionModes.Write(data, tension, state, writer, memory.Rest);
        if (data.Lugs is not null || data.Edition.Is2025 || data.IsStandOff || actions.Earthquake.IsPresent)
        {
            RunOthers(data, actions, tension, shearX, shearY, state, tensionRatio, writer, memory.Rest);
        }
        else
        {
            HighestRatio shearRatio = ShearModes.Write(data, shearX, shearY, state, writer, memory.Rest);
            Interaction.Write(data, tensionRatio, shearRatio, writer);
        }

        if (rented is not null)
        {
            ArrayPool<double>.Shared.Return(rented);
        }
    }

    /// <summary>What follows the modes in tension where there is more than the fasteners of a plain load case: lugs, an earthquake, another edition, a plate that stands off.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)] // costs the plain load case nothing
    private void RunOthers<T>(
        AnchorageData data, in PreparedActions actions, ReadOnlySpan<double> tension, Span<double> shearX, Span<double> shearY, in LoadState state, HighestRatio tensionRatio, in ModeWriter<T> writer, Span<double> free)
        where T : struct, IFormulaNumber<T>
    {
        bool isSheared = data.Edition.Is2025 && Largest(shearX, shearY) > 0;
        HighestRatio shearRatio = data.Lugs is { } lugs ? ShearLugModes.Write(data, lugs, actions, tension, shearX, shearY, state, writer, free)
            : _openSill is not null && Earthquake.Counts(actions.Earthquake.Shear) ? ShearModes.WriteAcross(data, shearX, shearY, _openSill.Direction, state, writer, free)
            : ShearModes.Write(data, shearX, shearY, state, writer, free);
        if (actions.Earthquake.IsPresent)
        {
            Earthquake.Write(data, _attachment.Earthquake!, actions.Earthquake, Largest(tension), tensionRatio.IsKnown, writer);
        }

        if (data.Lugs is { TakeShare: false })
        {
            ShearLugModes.WriteNoInteraction(writer);
        }
        else
        {
            Interaction.Write(data, tensionRatio, shearRatio, writer);
        }

        if (data.Edition.Is2025)
        {
            Edition2025.WriteInteractionOfSteel(Largest(tension) > 0 && isSheared, writer);
        }

        if (data.IsStandOff)
        {
            StandOff.Write(tension, writer);
        }
    }

    [MethodImpl(MethodImplOptions.NoInlining)] // costs the fast path nothing
    private static void Show<T>(
        AnchorageData data, ReadOnlySpan<double> tension, ReadOnlySpan<double> shearX, ReadOnlySpan<double> shearY, in ModeWriter<T> writer, Span<double> perFastener)
        where T : struct, IFormulaNumber<T>
    {
        tension.CopyTo(perFastener);
        shearX.CopyTo(perFastener[data.Count..]);
        shearY.CopyTo(perFastener[(2 * data.Count)..]);
        Remarks.OfForces(data, tension, writer);
    }

    private static double Largest(ReadOnlySpan<double> forces)
    {
        double largest = 0;
        foreach (double force in forces)
        {
            largest = Math.Max(largest, force);
        }

        return largest;
    }

    private static double Largest(ReadOnlySpan<double> x, ReadOnlySpan<double> y)
    {
        double largest = 0;
        for (int i = 0; i < x.Length; i++)
        {
            largest = Math.Max(largest, Math.Abs(x[i]) + Math.Abs(y[i]));
        }

        return largest;
    }

    private static void RequireOneSet(LoadCase[] cases)
    {
        if (cases.Length == 0)
        {
            throw new InputException("loadCases", "no load case", "at least one");
        }

        var names = new HashSet<string>(StringComparer.Ordinal);
        foreach (LoadCase loadCase in cases)
        {
            if (loadCase.Format != cases[0].Format)
            {
                throw new InputException("format", $"{cases[0].Format} in load case \"{cases[0].Name}\" and {loadCase.Format} in \"{loadCase.Name}\"", "one safety format for all load cases of a verification");
            }

            if (!names.Add(loadCase.Name))
            {
                throw new InputException("name", $"two load cases named \"{loadCase.Name}\"", "a name of its own for each load case");
            }
        }
    }

    /// <summary>A number follows the id only where there are several modes of one kind and edge.</summary>
    private static void AddModes(ImmutableArray<FailureMode>.Builder modes, ReadOnlySpan<ModeResult> results, ModeTrace trace, string? loadCase, SafetyFormat format, Func<ModeResult, double?> loadFactor)
    {
        for (int i = 0; i < results.Length; i++)
        {
            ModeResult result = results[i];
            int alike = 0;
            foreach (ModeResult other in results)
            {
                alike += other.Kind == result.Kind && other.Side == result.Side ? 1 : 0;
            }

            string path = FailureModeIds.Path(result.Kind, result.Side);
            string id = alike > 1 ? $"{path}/{QuantityText.Format(result.Number)}" : path;
            ModeTrace.Entry entry = trace.Entries[i];
            modes.Add(new FailureMode(result, id, entry.Place, loadCase, entry.Group, entry.Clause, entry.Reason, format, entry.Sheet, loadFactor(result)));
        }
    }

    /// <summary>The load factor of a mode whose strength changes with the actions; null of others.</summary>
    private Func<ModeResult, double?> LoadFactorOf(PreparedActions actions) =>
        _data.Lugs is { } lugs ? mode => lugs.FollowsActions(mode.Kind, actions.N) ? LoadFactorOf(mode, actions) : null : _ => null;

    /// <summary>
    /// The largest factor on the actions, to the last bit, at which a mode and its like at the same edge still hold: searched for, by halves, with the fast path. Its like, for larger actions bring modes that
    /// are not there yet: lugs that no longer count together are checked apart.
    /// </summary>
    private double LoadFactorOf(ModeResult mode, PreparedActions actions)
    {
        if (mode.Status != ModeStatus.NotSatisfied && !(mode.Utilization > 0))
        {
            return double.PositiveInfinity;
        }

        var results = new ModeResult[ModeCapacity];
        double low = 0, high = 1;
        while (Holds(high) && double.IsFinite(2 * high))
        {
            (low, high) = (high, 2 * high);
        }

        for (double middle = (low + high) / 2; middle > low && middle < high; middle = (low + high) / 2)
        {
            (low, high) = Holds(middle) ? (middle, high) : (low, middle);
        }

        return low;

        bool Holds(double factor)
        {
            foreach (ModeResult other in results.AsSpan(0, Evaluate(actions.Scaled(factor), results)))
            {
                if (other.Kind == mode.Kind && other.Side == mode.Side && other.Status == ModeStatus.NotSatisfied)
                {
                    return false;
                }
            }

            return true;
        }
    }

    private void AddForces(ImmutableArray<FastenerForces>.Builder forces, ReadOnlySpan<double> perFastener, string loadCase)
    {
        int count = _data.Count;
        MeasurementSystem system = _data.Edition.System;
        for (int i = 0; i < count; i++)
        {
            forces.Add(new FastenerForces(
                loadCase, i, PrintedUnits.Force(perFastener[i], system), PrintedUnits.Force(perFastener[count + i], system), PrintedUnits.Force(perFastener[(2 * count) + i], system)));
        }
    }
}
