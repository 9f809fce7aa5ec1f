using System.Collections.Immutable;
using ConcreteAttach.Aci318;
using ConcreteAttach.Actions;
using ConcreteAttach.Attached;
using ConcreteAttach.Calculation;
using ConcreteAttach.Geometry;
using ConcreteAttach.Nds;
using ConcreteAttach.Quantities;
using ConcreteAttach.Verification;
using UnitsNet;

namespace ConcreteAttach.Connections;

/// <summary>
/// The bolts of a wood sill on concrete as a whole: wood by NDS-2018, steel and concrete by ACI 318, in one verification and one safety format. What governs is the weakest of both sides. Immutable.
/// </summary>
/// <remarks>
/// Each bolt takes of the load what elastic theory gives it. Its lateral force acts at an angle to the grain of the sill, by which its strength in the wood goes; the bolt that uses most of it is shown. Local codes
/// and the judgement of a licensed professional govern.
/// </remarks>
public sealed class SillAnchorage
{
    private const MeasurementSystem System = MeasurementSystem.PoundInch;

    private readonly Aci318Method _method;
    private readonly PreparedAttachment _concrete;

    /// <summary>The same without earthquake: the forces that reach the wood are not raised by Ω_0.</summary>
    private readonly PreparedAttachment _plain;

    private readonly DowelFastener _bolt;

    /// <summary>Puts a sill on its bolts.</summary>
    /// <param name="method">Method of the concrete's side.</param>
    /// <param name="bolts">The bolts in the concrete: cast-in or post-installed. An earthquake design may use the alternative for wood sills: its strength by NDS is then verified here.</param>
    /// <param name="sill">The sill.</param>
    /// <exception cref="InputException">The earthquake design names a sill of another direction or thickness, or the method refuses the attachment.</exception>
    public SillAnchorage(Aci318Method method, Attachment bolts, SillPlate sill)
    {
        ArgumentNullException.ThrowIfNull(method);
        ArgumentNullException.ThrowIfNull(bolts);
        ArgumentNullException.ThrowIfNull(sill);
        if (bolts.Earthquake?.WoodSill is { } named && (named.Direction != sill.Direction || named.Thickness.In(System) != sill.Thickness.In(System)))
        {
            throw new InputException("woodSill", named.ToString(), $"the sill that is verified: {new WoodSill(sill.Direction, sill.Thickness)}");
        }

        _method = method;
        Bolts = bolts with
        {
            Earthquake = bolts.Earthquake is { WoodSill: { } stated } design ? design with { WoodSill = stated with { HasStrengthByNds = true } } : bolts.Earthquake,
        };
        Sill = sill;
        _concrete = method.Prepare(Bolts);
        _plain = method.Prepare(bolts with { Earthquake = null });
        _bolt = new DowelFastener(DowelKind.Bolt, bolts.Fastener.Diameter, sill.BendingYieldStrength);
    }

    /// <summary>The bolts in the concrete.</summary>
    public Attachment Bolts { get; }

    /// <summary>The sill.</summary>
    public SillPlate Sill { get; }

    /// <summary>Verifies both sides.</summary>
    /// <param name="loadCases">Load cases, at least one, of different names and one safety format.</param>
    /// <param name="sheets">Which load cases carry their sheets.</param>
    /// <exception cref="InputException">As <see cref="PreparedAttachment.Verify(IEnumerable{LoadCase}, SheetScope)"/>; or a load case without the time effect or duration of its format, or with that of the other.</exception>
    public AttachmentVerification Verify(IEnumerable<SillLoadCase> loadCases, SheetScope sheets = SheetScope.Governing)
    {
        ArgumentNullException.ThrowIfNull(loadCases);
        SillLoadCase[] cases = [.. loadCases];
        Array.ForEach(cases, RequireTime);
        if (sheets != SheetScope.Governing)
        {
            return Verify(cases, sheets, name => sheets == SheetScope.All);
        }

        // The concrete's sheets are recorded for its own governing load case: where the wood governs another one, all are recorded and those that nobody asked for are left out.
        AttachmentVerification all = Verify(cases, SheetScope.All, _ => true);
        string? shown = all.Governing?.LoadCase ?? cases[0].Actions.Name;
        return cases.Length == 1 ? all : Verify(cases, SheetScope.All, name => name == shown);
    }

    private AttachmentVerification Verify(SillLoadCase[] cases, SheetScope sheets, Predicate<string> isShown)
    {
        AttachmentVerification concrete = _concrete.Verify(cases.Select(c => c.Actions), sheets);
        AttachmentVerification plain = _plain.Verify(cases.Select(c => c.Actions with { Earthquake = null }), SheetScope.None);
        var modes = ImmutableArray.CreateBuilder<FailureMode>();
        foreach (SillLoadCase loadCase in cases)
        {
            string name = loadCase.Actions.Name;
            modes.AddRange(concrete.Modes.Where(m => m.LoadCase == name).Select(m => isShown(name) ? m : m.WithoutSheet()));
            var bolts = plain.Forces.Where(f => f.LoadCase == name).ToArray();
            modes.Add(Yield(loadCase, bolts, isShown(name)));
            modes.Add(Bearing(loadCase, bolts, isShown(name)));
        }

        modes.AddRange(concrete.Modes.Where(m => m.LoadCase is null));
        if (Sill.Placement is not null)
        {
            ImmutableArray<string> notMet = Connection(0).Lateral(Conditions(cases[0])).NotMet;
            modes.Add(new(
                ModeResult.Without(FailureModeKind.WoodPlacement, ConcreteSide.None, 1, notMet.IsEmpty ? ModeStatus.Satisfied : ModeStatus.NotSatisfied, concrete.System),
                FailureModeIds.Path(FailureModeKind.WoodPlacement, ConcreteSide.None), null, null, [], "NDS 12.5.1", notMet.IsEmpty ? null : string.Join(" ", notMet), cases[0].Actions.Format, null));
        }

        return new AttachmentVerification(
            $"{concrete.Method} and {NdsMethod.Standard}", concrete.Constants, concrete.System, Bolts, concrete.LoadCases, modes.ToImmutable(), concrete.Forces,
            [.. concrete.Distribution.Where(d => isShown(d.LoadCase))], concrete.Contacts, [.. concrete.Assumptions, .. Assumptions()], [.. concrete.Notices, .. Notices()])
        {
            FurtherInputs = [.. Inputs(cases)],
        };
    }

    /// <summary>The bolt that uses most of its lateral strength in the wood.</summary>
    private FailureMode Yield(SillLoadCase loadCase, FastenerForces[] bolts, bool isShown)
    {
        ServiceConditions conditions = Conditions(loadCase);
        int most = 0;
        double highest = -1;
        foreach (FastenerForces bolt in bolts)
        {
            // Where no strength is known, the most loaded bolt stands for all.
            double force = Lateral(bolt);
            double use = Connection(Angle(bolt)).Lateral(conditions).Adjusted is { } z ? force / z.In(System) : force;
            if (use > highest)
            {
                (highest, most) = (use, Array.IndexOf(bolts, bolt));
            }
        }

        ConnectionStrength strength = Connection(Angle(bolts[most])).Lateral(conditions);
        return Checked(FailureModeKind.WoodYield, "NDS 12.3.1", strength, "Z_u", "lateral force of the bolt", Lateral(bolts[most]), most, loadCase, isShown);
    }

    /// <summary>The bolt with the largest tension, whose washer bears on the sill.</summary>
    private FailureMode Bearing(SillLoadCase loadCase, FastenerForces[] bolts, bool isShown)
    {
        FastenerForces most = bolts.MaxBy(b => b.Tension.In(System))!;
        double tension = Math.Max(most.Tension.In(System), 0);
        const FailureModeKind Kind = FailureModeKind.WoodBearing;
        if (Sill.Washer is not { } washer)
        {
            return Without(Kind, "NDS 3.10.2", tension, "The washer under the nut is not known: give washer.", loadCase);
        }

        return Checked(Kind, "NDS 3.10.2", washer.Strength(Sill.Species, Conditions(loadCase)), "R_u", "tension of the bolt", tension, most.Index, loadCase, isShown);
    }

    private FailureMode Checked(FailureModeKind kind, string clause, ConnectionStrength strength, string demandId, string origin, double demand, int bolt, SillLoadCase loadCase, bool isShown)
    {
        if (strength.Adjusted is not { } adjusted)
        {
            return Without(kind, clause, demand, strength.NotCovered ?? "A least distance or spacing in the sill is not met, and the standard permits no strength below it.", loadCase);
        }

        var sheet = new Sheet<TracedNumber>(strength.Recorder);
        TracedNumber utilization = sheet.Factor(FormulaText.UtilizationId, sheet.Given(demandId, demand, Dimension.Force, origin) / strength.AdjustedOnSheet, clause);
        MeasurementSystem system = _method.Edition.System;
        double nominal = strength.Reference!.Value.In(system);
        return new(
            ModeResult.Checked(kind, ConcreteSide.None, 1, system, nominal, adjusted.In(system) / nominal, Force.FromPoundsForce(demand).In(system), utilization.Value),
            FailureModeIds.Path(kind, ConcreteSide.None), null, loadCase.Actions.Name, demand > 0 ? [bolt] : [], clause, null, loadCase.Actions.Format, isShown ? strength.Recorder.ToSheet() : null);
    }

    private FailureMode Without(FailureModeKind kind, string clause, double demand, string reason, SillLoadCase loadCase) => new(
        ModeResult.Without(kind, ConcreteSide.None, 1, demand > 0 ? ModeStatus.NotCovered : ModeStatus.NotApplicable, _method.Edition.System),
        FailureModeIds.Path(kind, ConcreteSide.None), null, loadCase.Actions.Name, [], clause, demand > 0 ? reason : "No demand.", loadCase.Actions.Format, null);

    /// <summary>One bolt through the sill under a load at an angle to its grain.</summary>
    private WoodConnection Connection(double angle) => new(
        _bolt, new ConcreteBearingMember(Bolts.Concrete.Strength, Bolts.Fastener.EffectiveEmbedment), new WoodMember(Sill.Species, Sill.Thickness, angle))
    {
        Gap = Sill.Gap,
        IsRoundedAsPrinted = Sill.IsRoundedAsPrinted,
        Placement = Sill.Placement,
    };

    private static double Lateral(FastenerForces bolt)
    {
        double x = bolt.ShearX.In(System), y = bolt.ShearY.In(System);
        return Math.Sqrt((x * x) + (y * y));
    }

    /// <summary>Angle between the bolt's force and the grain, 0 to 90 degrees; 0 without a force.</summary>
    private double Angle(FastenerForces bolt)
    {
        double x = Math.Abs(bolt.ShearX.In(System)), y = Math.Abs(bolt.ShearY.In(System));
        (double along, double across) = Sill.Direction == SillDirection.X ? (x, y) : (y, x);

        // Rounding noise of a torsion that is none would otherwise make an angle of it.
        return across <= 1e-9 * along ? 0 : along <= 1e-9 * across ? 90 : Math.Atan2(across, along) * 180 / Math.PI;
    }

    private ServiceConditions Conditions(SillLoadCase loadCase) => Sill.Conditions with
    {
        Format = loadCase.Actions.Format,
        Duration = loadCase.Duration ?? LoadDuration.TenYears,
        TimeEffect = loadCase.TimeEffect ?? TimeEffect.OccupancyOrRoof,
    };

    private static void RequireTime(SillLoadCase loadCase)
    {
        bool isAllowable = loadCase.Actions.Format == SafetyFormat.AllowableStressDesign;
        string needed = isAllowable ? "duration" : "timeEffect", other = isAllowable ? "timeEffect" : "duration";
        bool hasNeeded = isAllowable ? loadCase.Duration is not null : loadCase.TimeEffect is not null, hasOther = isAllowable ? loadCase.TimeEffect is not null : loadCase.Duration is not null;
        if (!hasNeeded)
        {
            throw new InputException(needed, $"nothing in load case \"{loadCase.Actions.Name}\"", isAllowable ? "the shortest duration of its loads: allowable stress design needs it" : "its time effect: strength design needs it");
        }

        if (hasOther)
        {
            throw new InputException(other, $"one in load case \"{loadCase.Actions.Name}\"", $"none: {(isAllowable ? "allowable stress design" : "strength design")} goes by {needed}");
        }
    }

    private IEnumerable<string> Inputs(SillLoadCase[] cases)
    {
        yield return $"Sill: {Sill}.";
        yield return $"Bending yield strength of the bolts F_yb: {QuantityText.Format(_bolt.BendingYieldStrength)} ({_bolt.BendingYieldSource}).";
        if (Sill.Washer is { } washer)
        {
            yield return $"Washer: size {QuantityText.Format(washer.Size)}.";
        }

        if (Sill.Placement is { } placement)
        {
            yield return $"Placement in the sill: {placement}.";
        }

        foreach (SillLoadCase loadCase in cases)
        {
            yield return loadCase.TimeEffect is { } effect
                ? $"Time effect of {loadCase.Actions.Name}: {Words(effect.ToString())}."
                : $"Load duration of {loadCase.Actions.Name}: {Words(loadCase.Duration!.Value.ToString())}.";
        }
    }

    /// <summary>The name of an enumeration's member as words.</summary>
    private static string Words(string name) => string.Concat(name.Select((c, i) => i > 0 && char.IsUpper(c) ? $" {char.ToLowerInvariant(c)}" : char.ToLowerInvariant(c).ToString()));

    private IEnumerable<string> Assumptions()
    {
        yield return "Wood: the bolts bear in the concrete over the effective embedment, and the lateral force of each acts at its own angle to the grain.";
        yield return Sill.IsRoundedAsPrinted ? "Wood: F_e and Z are rounded as the tables of NDS print them." : "Wood: F_e and Z are not rounded as the tables of NDS print them.";
        yield return Sill.Placement is null ? "Wood: distances and spacings in the sill are assumed to be those of full strength, C_Delta and C_g are 1." : "Wood: C_g is 1.";
    }

    private IEnumerable<string> Notices()
    {
        yield return "Constants of NDS-2018 and TR12 are from memory unless a line names a source that was read: compare them with the standard.";
        if (Sill.Washer is not null)
        {
            yield return "Bending of the washer is not checked.";
        }

        if (Bolts.Earthquake is not null)
        {
            yield return "The wood takes the forces of the load cases without overstrength.";
        }
    }
}
