using System.Collections.Immutable;
using ConcreteAttach.Actions;
using ConcreteAttach.Calculation;
using ConcreteAttach.Geometry;
using ConcreteAttach.Quantities;
using ConcreteAttach.Verification;

namespace ConcreteAttach.Nds;

/// <summary>Verifies fastenings in wood by NDS-2018 chapters 11 and 12, and TR12 where there is a gap.</summary>
/// <remarks>Local codes and the judgement of a licensed professional govern. Constants are from memory unless their source says otherwise.</remarks>
public static class NdsMethod
{
    /// <summary>The standard, as results name it.</summary>
    public const string Standard = "NDS-2018";

    /// <summary>The one set of constants of the standard, as results name it.</summary>
    public const string Constants = "inch-pound";

    private const string NoDemand = "No demand.";

    /// <summary>Verifies a fastening under its load cases.</summary>
    /// <param name="fastening">The fastening.</param>
    /// <param name="loadCases">Load cases, at least one, of different names.</param>
    /// <param name="sheets">Which load cases carry their sheets.</param>
    /// <exception cref="InputException">Nothing to verify, no load case, two of one name, or a force for which the fastening has no check.</exception>
    public static WoodVerification Verify(WoodFastening fastening, IEnumerable<WoodLoadCase> loadCases, SheetScope sheets = SheetScope.Governing)
    {
        ArgumentNullException.ThrowIfNull(fastening);
        ArgumentNullException.ThrowIfNull(loadCases);
        WoodLoadCase[] cases = [.. loadCases];
        RequireUsable(fastening, cases);
        WoodVerification all = Verify(fastening, cases, _ => true);
        string? governing = all.Governing?.LoadCase ?? cases[0].Name;
        return sheets switch
        {
            SheetScope.All => all,
            SheetScope.None => Verify(fastening, cases, _ => false),
            _ => cases.Length == 1 ? all : Verify(fastening, cases, name => name == governing),
        };
    }

    private static WoodVerification Verify(WoodFastening fastening, WoodLoadCase[] cases, Predicate<string> isShown)
    {
        var modes = ImmutableArray.CreateBuilder<FailureMode>();
        foreach (WoodLoadCase loadCase in cases)
        {
            new LoadCaseModes(fastening, loadCase, isShown(loadCase.Name), modes).Add();
        }

        if (fastening.Lateral is { Placement: not null } lateral)
        {
            // It does not depend on the load: one entry for all load cases.
            ImmutableArray<string> notMet = lateral.Lateral(fastening.Conditions).NotMet;
            modes.Add(Without(
                FailureModeKind.WoodPlacement, null, "12.5.1", notMet.IsEmpty ? ModeStatus.Satisfied : ModeStatus.NotSatisfied,
                notMet.IsEmpty ? null : string.Join(" ", notMet), fastening.Conditions.Format));
        }

        return new WoodVerification(fastening, [.. cases], modes.ToImmutable(), Assumptions(fastening), Notices(fastening));
    }

    private static FailureMode Without(FailureModeKind kind, string? loadCase, string clause, ModeStatus status, string? reason, SafetyFormat format) => new(
        ModeResult.Without(kind, ConcreteSide.None, 1, status, MeasurementSystem.PoundInch), FailureModeIds.Path(kind, ConcreteSide.None), null, loadCase, [], clause, reason, format, null);

    private static void RequireUsable(WoodFastening fastening, WoodLoadCase[] cases)
    {
        if (fastening.Lateral is null && !fastening.HasAxial)
        {
            throw new InputException("fastening", "nothing to verify", "a lateral connection, a withdrawal, a pull-through or a washer");
        }

        if (fastening.Washer is not null && fastening.WasherSpecies is null)
        {
            throw new InputException("washerSpecies", "nothing", "the wood under the washer");
        }

        if (fastening is { Lateral: { } lateral, Withdrawal: { } withdrawal } && lateral.Fastener.Kind != withdrawal.Fastener.Kind)
        {
            throw new InputException("withdrawal", $"a {withdrawal.Fastener.Kind}", $"the fastener of the lateral connection, a {lateral.Fastener.Kind}");
        }

        if (cases.Length == 0)
        {
            throw new InputException("loadCases", "no load case", "at least one");
        }

        var names = new HashSet<string>(StringComparer.Ordinal);
        foreach (WoodLoadCase loadCase in cases)
        {
            if (!names.Add(loadCase.Name))
            {
                throw new InputException("name", $"two load cases named {loadCase.Name}", "a name of its own for each load case");
            }

            if (loadCase.Lateral.Value > 0 && fastening.Lateral is null)
            {
                throw new InputException("lateral", QuantityText.Format(loadCase.Lateral), "0: no lateral connection is given");
            }

            if (loadCase.Axial.Value > 0 && !fastening.HasAxial)
            {
                throw new InputException("axial", QuantityText.Format(loadCase.Axial), "0: no withdrawal, pull-through or washer is given");
            }
        }
    }

    private static ImmutableArray<string> Assumptions(WoodFastening fastening)
    {
        var texts = new List<string> { $"Safety format: {(fastening.Conditions.Format == SafetyFormat.AllowableStressDesign ? "allowable stress design (ASD)" : "strength design (LRFD)")}." };
        if (fastening.Count > 1)
        {
            texts.Add("All fasteners take the same share of the load.");
        }

        if (fastening.Lateral is { } lateral)
        {
            texts.Add(lateral.IsRoundedAsPrinted ? "F_e and Z are rounded as the tables of the standard print them." : "F_e and Z are not rounded as the tables of the standard print them.");
            if (lateral.Placement is null)
            {
                texts.Add("Distances and spacings are assumed to be those of full strength: C_Delta is 1.");
            }

            if (lateral.Row is null)
            {
                texts.Add("No row in the direction of the load is given: C_g is 1.");
            }
        }

        if (fastening.Washer is { IsAwayFromEnd: true })
        {
            texts.Add("The washer is at least 3 in. from the end of the member.");
        }

        return [.. texts];
    }

    private static ImmutableArray<string> Notices(WoodFastening fastening)
    {
        var texts = new List<string> { "Constants of NDS-2018 and TR12 are from memory unless a line names a source that was read: compare them with the standard." };
        if (fastening.Lateral is { } lateral && (lateral.Main is ConcreteBearingMember || lateral.Side is ConcreteBearingMember))
        {
            texts.Add("This is the wood's side. Steel and concrete of the anchor are to be verified by ACI 318 chapter 17 as well.");
        }

        if (fastening.HasAxial)
        {
            texts.Add("Tension in the steel of the fastener is not checked (12.2.1.2 for lag screws).");
        }

        if (fastening.Washer is not null)
        {
            texts.Add("Bending of the washer is not checked.");
        }

        return [.. texts];
    }

    /// <summary>The modes of one load case.</summary>
    private sealed class LoadCaseModes(WoodFastening fastening, WoodLoadCase loadCase, bool withSheets, ImmutableArray<FailureMode>.Builder modes)
    {
        private const MeasurementSystem System = MeasurementSystem.PoundInch;

        private readonly ServiceConditions _conditions = fastening.Conditions with { Duration = loadCase.Duration, TimeEffect = loadCase.TimeEffect };

        private readonly double _lateral = loadCase.Lateral.In(System) / fastening.Count;

        private readonly double _axial = loadCase.Axial.In(System) / fastening.Count;

        public void Add()
        {
            ConnectionStrength? lateral = fastening.Lateral?.Lateral(_conditions);
            if (lateral is not null)
            {
                Check(FailureModeKind.WoodYield, "12.3.1", lateral, "Z_u", "lateral load of one fastener", _lateral);
            }

            ConnectionStrength? withdrawal = fastening.Withdrawal?.Strength(_conditions);
            if (withdrawal is not null)
            {
                Check(FailureModeKind.WoodWithdrawal, "12.2", withdrawal, "W_u", "pull on one fastener", _axial);
            }

            if (fastening.PullThrough is { } head)
            {
                Check(FailureModeKind.WoodPullThrough, "12.2.5", head.Strength(_conditions), "W_u", "pull on one fastener", _axial);
            }

            if (fastening.Washer is { } washer)
            {
                Check(FailureModeKind.WoodBearing, "3.10.2", washer.Strength(fastening.WasherSpecies!, _conditions), "R_u", "pull on one fastener", _axial);
            }

            if (lateral is not null && fastening.HasAxial)
            {
                Combined(lateral, withdrawal);
            }
        }

        private void Combined(ConnectionStrength lateral, ConnectionStrength? withdrawal)
        {
            const FailureModeKind Kind = FailureModeKind.WoodCombined;
            const string Clause = "12.4";
            DowelKind dowel = fastening.Lateral!.Fastener.Kind;
            if (dowel == DowelKind.Bolt)
            {
                Without(Kind, "12.3.10", ModeStatus.NotApplicable, "12.4 is for screws and nails. Of a bolt each component is held to its own strength.");
            }
            else if (_lateral == 0 || _axial == 0)
            {
                Without(Kind, Clause, ModeStatus.NotApplicable, "No lateral load and pull together.");
            }
            else if (withdrawal is null)
            {
                Without(Kind, Clause, ModeStatus.NotCovered, "12.4 combines lateral load with withdrawal, and no withdrawal is given.");
            }
            else if (lateral.Adjusted is { } z && withdrawal.Adjusted is { } w)
            {
                double angle = Math.Atan2(_axial, _lateral) * 180 / Math.PI;
                Check(Kind, Clause, CombinedLoad.Strength(dowel, z, w, angle), "Z_u_alpha", "resultant of lateral load and pull", Math.Sqrt((_lateral * _lateral) + (_axial * _axial)));
            }
            else
            {
                Without(Kind, Clause, ModeStatus.NotCovered, "One of the two strengths is not known.");
            }
        }

        private void Check(FailureModeKind kind, string clause, ConnectionStrength strength, string demandId, string origin, double demand)
        {
            if (strength.Adjusted is not { } adjusted)
            {
                string reason = strength.NotCovered ?? "A least distance or spacing is not met, and the standard permits no strength below it.";
                Without(kind, clause, demand > 0 ? ModeStatus.NotCovered : ModeStatus.NotApplicable, demand > 0 ? reason : NoDemand);
                return;
            }

            var sheet = new Sheet<TracedNumber>(strength.Recorder);
            TracedNumber given = fastening.Count == 1
                ? sheet.Given(demandId, demand, Dimension.Force, origin)
                : sheet.Step(demandId, sheet.Given("P", demand * fastening.Count, Dimension.Force, "load of all fasteners") / sheet.Given("n_f", fastening.Count, Dimension.None, "fasteners"), Dimension.Force, origin);
            TracedNumber utilization = sheet.Factor(FormulaText.UtilizationId, given / strength.AdjustedOnSheet, clause);
            double nominal = strength.Reference!.Value.In(System);
            modes.Add(new(
                ModeResult.Checked(kind, ConcreteSide.None, 1, System, nominal, adjusted.In(System) / nominal, demand, utilization.Value),
                FailureModeIds.Path(kind, ConcreteSide.None), null, loadCase.Name, [], clause, null, _conditions.Format, withSheets ? strength.Recorder.ToSheet() : null));
        }

        private void Without(FailureModeKind kind, string clause, ModeStatus status, string? reason) =>
            modes.Add(NdsMethod.Without(kind, loadCase.Name, clause, status, reason, _conditions.Format));
    }
}
