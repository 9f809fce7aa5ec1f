using System.Collections.Immutable;
using System.Globalization;
using ConcreteAttach.Attached;
using ConcreteAttach.Calculation;
using ConcreteAttach.Fasteners;
using ConcreteAttach.Geometry;
using ConcreteAttach.Materials;
using ConcreteAttach.Nds;
using ConcreteAttach.Presentation.Drawings;
using ConcreteAttach.Quantities;
using ConcreteAttach.Verification;
using UnitsNet;

namespace ConcreteAttach.Presentation;

/// <summary>What a report says, in order. How it looks is the matter of the writers.</summary>
internal static class ReportContent
{
    /// <summary>Stands at the end of every rendering.</summary>
    public static readonly ImmutableArray<string> Cautions =
    [
        "Local codes and the judgement of a licensed professional govern. This calculation is an aid to that judgement and does not replace it.",
        "It holds for the inputs and assumptions stated here and for fasteners installed as drawn; have the work inspected.",
    ];

    private const string ChangedSection = "If embedment or edge distance were different";

    public static List<ReportBlock> Of(VerificationResult verification, ReportOptions options)
    {
        FailureMode[] calculated = [.. verification.Modes.Where(m => m.Sheet is not null && IsCalculated(verification, m, options.Level))];
        var attachment = verification as AttachmentVerification;
        var shown = new Lazy<ShownCase>(() => ShownCase.Of(attachment!, new DrawingOptions { BothSystems = options.BothSystems }));
        var blocks = new List<ReportBlock> { new HeadingBlock(1, options.Title ?? Title(verification)) };
        if (options.Date is { } date)
        {
            blocks.Add(new ParagraphBlock(DateText(date)));
        }

        blocks.Add(new ParagraphBlock(Verdict(verification), IsAnswer: true));
        blocks.Add(new HeadingBlock(2, "Results"));
        blocks.Add(new FigureBlock(() => UtilizationDrawing.Draw(verification)));
        if (attachment is not null && verification.Modes.Any(m => m is { Kind: FailureModeKind.Interaction, Utilization: not null }))
        {
            blocks.Add(new FigureBlock(() => InteractionDrawing.Draw(shown.Value, attachment)));
        }

        blocks.Add(Results(verification, options, calculated));
        AddReasons(blocks, verification);
        if (attachment is { EarthquakeOptions.IsEmpty: false })
        {
            blocks.Add(new HeadingBlock(3, "Options under earthquake"));
            blocks.Add(OptionsUnderEarthquake(attachment.EarthquakeOptions));
        }

        blocks.Add(new HeadingBlock(2, "Inputs"));
        if (attachment is not null)
        {
            AddInputs(blocks, attachment, shown);
        }
        else
        {
            WoodContent.AddInputs(blocks, (WoodVerification)verification);
        }

        blocks.Add(new HeadingBlock(2, "Assumptions and readings"));
        blocks.Add(new BulletsBlock(verification.Assumptions));
        if (!verification.Notices.IsEmpty)
        {
            blocks.Add(new HeadingBlock(2, "Notices"));
            blocks.Add(new BulletsBlock(verification.Notices));
        }

        if (options.Level != ReportLevel.Summary)
        {
            if (attachment is { Demand.IsEmpty: false })
            {
                blocks.Add(new HeadingBlock(2, "Demand"));
                foreach (DemandSheet demand in attachment.Demand)
                {
                    blocks.Add(new HeadingBlock(3, demand.Title));
                    blocks.Add(new SheetBlock(demand.Sheet));
                }
            }

            if (attachment is not null)
            {
                AddForces(blocks, attachment, options, shown);
            }

            AddSheets(blocks, calculated, shown);
        }

        if (attachment is not null && options.Level == ReportLevel.Everything)
        {
            blocks.Add(new FigureBlock(() => CapacityDrawing.Draw(shown.Value, CapacityVariable.Embedment), ChangedSection));
            blocks.Add(new FigureBlock(() => CapacityDrawing.Draw(shown.Value, CapacityVariable.EdgeDistance), ChangedSection));
        }

        blocks.Add(new HeadingBlock(2, "Cautions"));
        blocks.Add(new BulletsBlock(Cautions));
        return blocks;
    }

    /// <summary>The title of a report that has none of its own.</summary>
    public static string Title(VerificationResult verification) =>
        verification is AttachmentVerification ? "Verification of an attachment to concrete" : "Verification of a fastening in wood";

    private static void AddInputs(List<ReportBlock> blocks, AttachmentVerification verification, Lazy<ShownCase> shown)
    {
        blocks.Add(new BulletsBlock(Inputs(verification)));
        blocks.Add(new FigureBlock(() => PlanDrawing.Draw(shown.Value)));
        blocks.Add(new FigureBlock(() => SectionDrawing.Draw(shown.Value)));
        blocks.Add(Positions(verification.Attachment.Layout));
        blocks.Add(LoadCases(verification));
    }

    /// <summary>Whether a level shows the calculation of a mode.</summary>
    private static bool IsCalculated(VerificationResult verification, FailureMode mode, ReportLevel level)
    {
        if (level != ReportLevel.Governing)
        {
            return level == ReportLevel.Everything;
        }

        if (mode.Status == ModeStatus.NotSatisfied || ReferenceEquals(mode, verification.Governing))
        {
            return true;
        }

        string? governing = verification.Governing?.LoadCase;
        bool Counts(FailureMode other) => other.LoadCase == governing && other.Kind != FailureModeKind.Interaction && FailureModeIds.IsShear(other.Kind) == FailureModeIds.IsShear(mode.Kind);
        return mode.LoadCase == governing && mode.Utilization is { } own
            && (mode.Kind == FailureModeKind.Interaction || verification.Modes.Where(Counts).All(other => !(other.Utilization > own)));
    }

    private static void AddForces(List<ReportBlock> blocks, AttachmentVerification verification, ReportOptions options, Lazy<ShownCase> shown)
    {
        blocks.Add(new HeadingBlock(2, "Forces on the fasteners"));
        if (verification.Attachment.Layout.Positions.Length > 1)
        {
            blocks.Add(new FigureBlock(() => ForcesDrawing.Draw(shown.Value)));
        }

        blocks.Add(Forces(verification));
        if (!verification.Contacts.IsEmpty)
        {
            blocks.Add(new HeadingBlock(3, "Contact of the plate with the concrete"));
            blocks.Add(new BulletsBlock([.. verification.Contacts.Select(c => Contact(c, verification.System, options))]));
        }

        foreach (DistributionSheet distribution in verification.Distribution)
        {
            blocks.Add(new HeadingBlock(3, $"How load case {distribution.LoadCase} reaches the fasteners"));
            blocks.Add(new SheetBlock(distribution.Sheet));
        }
    }

    /// <summary>The answer in one sentence: whether it holds, and what governs. A second one says how the actions may grow.</summary>
    public static string Verdict(VerificationResult verification)
    {
        string subject = verification is AttachmentVerification ? "attachment" : "fastening";
        string answer = verification.Verdict switch
        {
            Verification.Verdict.Holds => $"The {subject} holds by {verification.Method}",
            Verification.Verdict.DoesNotHold => $"The {subject} does not hold by {verification.Method}",
            _ => $"No answer: at least one failure mode is not covered by {verification.Method} as implemented here, so do not take the {subject} to hold",
        };
        if (verification.Governing is { } governing)
        {
            string utilization = governing.Utilization is { } value
                ? $", utilization {NumberText.Utilization(value, governing.Status == ModeStatus.Satisfied)}"
                : "";
            string loadCase = governing.LoadCase is { } name ? $", load case {name}" : "";
            answer += $"; what governs is {char.ToLowerInvariant(governing.Title[0])}{governing.Title[1..]} ({governing.Id}){loadCase}{utilization}";
        }

        answer += ".";
        if (verification.LoadFactor is { } factor)
        {
            // Down, so that the factor shown never promises more than the factor computed.
            answer += factor < 1
                ? $" It would hold with all actions times {NumberText.RoundedDown(factor)}."
                : $" All actions may grow to {NumberText.RoundedDown(factor)} times before it no longer holds.";
        }

        return answer;
    }

    private static TableBlock Results(VerificationResult verification, ReportOptions options, FailureMode[] calculated)
    {
        var rows = new List<string[]>();
        foreach (FailureMode mode in verification.Modes)
        {
            rows.Add(
            [
                mode.Id,
                mode.LoadCase ?? "",
                Force(mode.Nominal, verification.System, options),
                mode.Factor is { } factor ? NumberText.Factor(factor) : "",
                Force(mode.Design, verification.System, options),
                Force(mode.Demand, verification.System, options),
                mode.Utilization is { } utilization ? NumberText.Utilization(utilization, mode.Status == ModeStatus.Satisfied) : "",
                StatusText.Of(mode.Status),
            ]);
        }

        return new TableBlock(
            "Results",
            [new("mode"), new("load case"), new("nominal", true), new(verification is AttachmentVerification ? "φ" : "factor", true), new("design", true), new("demand", true), new("utilization", true), new("status")],
            rows,
            [.. verification.Modes.Select(m => Array.IndexOf(calculated, m) is >= 0 and var index ? Name(index) : null)],
            Group: 1);
    }

    /// <summary>What the options of design for earthquake give, the one that was taken marked.</summary>
    private static TableBlock OptionsUnderEarthquake(ImmutableArray<EarthquakeOption> options) => new(
        "Options under earthquake",
        [new("load case"), new("of"), new("option"), new("mode"), new("utilization", true), new("verdict")],
        [.. options.Select(o => new[]
        {
            o.LoadCase, o.Tension is null ? "shear, 17.10.6.3" : "tension, 17.10.5.3", o.IsTaken ? $"{o.Title}, taken" : o.Title, o.Governing ?? "",
            o.ShownUtilization, StatusText.Of(o.Verdict),
        })],
        Group: 0);

    /// <summary>The date of the report.</summary>
    public static string DateText(DateOnly date) => $"Date: {date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)}.";

    /// <summary>Why modes do not apply, are not covered, or break a rule of detailing: one sentence for all that have the same reason.</summary>
    public static string[] Reasons(VerificationResult verification) =>
    [
        .. verification.Modes.Where(m => m.Reason is not null).GroupBy(m => (m.Status, m.Reason, Cases: CasesOf(verification, m)))
            .Select(same => $"{string.Join(", ", same.Select(m => m.Id).Distinct())}{same.Key.Cases}: {StatusText.Of(same.Key.Status)}. {same.Key.Reason}"),
    ];

    /// <summary>The load cases in which a mode has its reason; empty where it has it in all.</summary>
    private static string CasesOf(VerificationResult verification, FailureMode mode)
    {
        string[] cases = [.. verification.Modes.Where(m => m.Id == mode.Id && m.Status == mode.Status && m.Reason == mode.Reason).Select(m => m.LoadCase).OfType<string>()];
        return cases.Length == 0 || cases.Length == verification.LoadCaseNames.Length ? "" : $" ({string.Join("; ", cases)})";
    }

    private static void AddReasons(List<ReportBlock> blocks, VerificationResult verification)
    {
        string[] reasons = Reasons(verification);
        if (reasons.Length > 0)
        {
            blocks.Add(new BulletsBlock(reasons));
        }
    }

    private static List<string> Inputs(AttachmentVerification verification)
    {
        ConcreteMember member = verification.Attachment.Concrete;
        Fastener fastener = verification.Attachment.Fastener;
        var inputs = new List<string>
        {
            $"Method: {verification.Method}, {verification.Constants} constants.",
            $"Concrete: f'c {QuantityText.Format(member.Strength)}, {member.Density.Name}, thickness {QuantityText.Format(member.Thickness)}, {(member.IsCracked ? "cracked" : "uncracked")}.",
            Surface(member),
            $"Fastener: {fastener.Kind}, diameter {QuantityText.Format(fastener.Diameter)}, effective embedment {QuantityText.Format(fastener.EffectiveEmbedment)}.",
            $"Steel: {fastener.Steel.Designation}, f_ya {QuantityText.Format(fastener.Steel.Yield)}, f_uta {QuantityText.Format(fastener.Steel.Ultimate)}, {(fastener.Steel.IsDuctile ? "ductile" : "brittle")}.",
        };
        if (fastener is HookedBolt hooked)
        {
            inputs.Add($"Hook extension e_h: {QuantityText.Format(hooked.HookExtension)}.");
        }

        if (verification.Attachment.Reinforcement is { } reinforcement)
        {
            inputs.AddRange(OfReinforcement(reinforcement));
        }

        if (verification.Attachment.Plate is { } plate)
        {
            inputs.Add($"Plate: {plate}.");
        }

        inputs.AddRange(verification.Attachment.ShearLugs.Select(lug => $"Shear lug {lug}."));

        if (fastener is PostInstalledFastener product)
        {
            inputs.AddRange(OfProduct(product));
        }

        inputs.AddRange(verification.FurtherInputs);
        inputs.AddRange(verification.LoadCases.Where(l => l.WeightedLoadFactor is not null).Select(l => $"Weighted load factor of {l.Name}: {QuantityText.Format(l.WeightedLoadFactor!.Value)}."));
        if (verification.Attachment.Earthquake is { } earthquake)
        {
            inputs.Add($"Earthquake: {earthquake}.");
            inputs.AddRange(verification.LoadCases.Where(l => l.Earthquake is not null).Select(l => $"Earthquake part of {l.Name}: {l.Earthquake}."));
        }

        return inputs;
    }

    private static IEnumerable<string> OfReinforcement(AnchorReinforcement reinforcement)
    {
        if (reinforcement.Tension is { } tension)
        {
            yield return $"Anchor reinforcement for tension: {tension}; places {Vertices(tension.Positions)}.";
        }

        foreach (ShearReinforcement shear in reinforcement.Shear)
        {
            yield return $"Anchor reinforcement for shear toward {shear.Side.Words()}: {shear}.";
        }
    }

    private static IEnumerable<string> OfProduct(PostInstalledFastener fastener)
    {
        yield return $"Data of the product: {fastener.ProductQualification}; from {fastener.ProductQualification.Source ?? "a report that is not named"}.";
        switch (fastener)
        {
            case MechanicalFastener mechanical:
                yield return $"Pullout N_p: {mechanical.Qualification.Pullout?.ToString() ?? "not given"}.";
                break;
            case AdhesiveFastener adhesive:
                yield return $"Bond stress: {adhesive.Qualification.BondStress?.ToString() ?? "not given"}.";
                yield return adhesive.Direction switch
                {
                    InstallationDirection.Downward => "Installed downward.",
                    InstallationDirection.Horizontal => "Installed horizontally.",
                    InstallationDirection.Upward => "Installed upward.",
                    _ => "Direction of installation: not given.",
                };
                break;
        }

        if (fastener is TorqueControlledExpansion { HasSeparatedSleeve: true })
        {
            yield return "The distance sleeve is separated from the expansion sleeve.";
        }

        if (fastener.ProductQualification.Seismic is { } seismic)
        {
            yield return $"Data of the product for earthquake: {seismic}.";
        }
    }

    private static string Surface(ConcreteMember member)
    {
        if (member.Outline is { } outline)
        {
            string openings = string.Concat(outline.Openings.Select((o, i) => $"; opening {QuantityText.Format(i + 1)}: {Vertices(o)}"));
            return $"Outline, vertices in order, side k from the k-th to the next: {Vertices(outline.Vertices)}{openings}.";
        }

        string edges = member.Edges.ToString();
        return edges.Length == 0 ? "Edges: none within reach." : $"Edges, measured from the origin: {edges}.";
    }

    private static string Vertices(ImmutableArray<FastenerPosition> vertices) =>
        string.Join(", ", vertices.Select(v => $"({Zeroed(v.X.Value, QuantityText.Format(v.X))}, {Zeroed(v.Y.Value, QuantityText.Format(v.Y))})"));

    private static TableBlock Positions(FastenerLayout layout) => new(
        "Places of the fasteners",
        [new("fastener", true), new("x", true), new("y", true)],
        [.. layout.Positions.Select((p, i) => new[] { QuantityText.Format(i), Zeroed(p.X.Value, QuantityText.Format(p.X)), Zeroed(p.Y.Value, QuantityText.Format(p.Y)) })]);

    private static TableBlock LoadCases(AttachmentVerification verification) => new(
        "Load cases",
        [new("load case"), new("N", true), new("V_x", true), new("V_y", true), new("M_x", true), new("M_y", true), new("M_z", true), new("acting at")],
        [.. verification.LoadCases.Select(l => new[]
        {
            l.Name, Zeroed(l.N.Value, QuantityText.Format(l.N)), Zeroed(l.Vx.Value, QuantityText.Format(l.Vx)), Zeroed(l.Vy.Value, QuantityText.Format(l.Vy)),
            Zeroed(l.Mx.Value, QuantityText.Format(l.Mx)), Zeroed(l.My.Value, QuantityText.Format(l.My)), Zeroed(l.Mz.Value, QuantityText.Format(l.Mz)),
            AtText(l.At),
        })]);

    private static string Zeroed(double value, string text) => value == 0 ? "0" : text;

    private static string AtText(FastenerPosition at) =>
        at.X.Value == 0 && at.Y.Value == 0 ? "origin" : $"x {QuantityText.Format(at.X)}, y {QuantityText.Format(at.Y)}";

    private static TableBlock Forces(AttachmentVerification verification)
    {
        MeasurementSystem system = verification.System;
        string unit = Unit.Printed(Dimension.Force, system)!.Text;
        return new TableBlock(
            "Forces on the fasteners",
            [new("load case"), new("fastener", true), new($"tension, {unit}", true), new($"V_x, {unit}", true), new($"V_y, {unit}", true)],
            [.. verification.Forces.Select(f => new[]
            {
                f.LoadCase, QuantityText.Format(f.Index), NumberText.Computed(f.Tension.In(system)), NumberText.Computed(f.ShearX.In(system)), NumberText.Computed(f.ShearY.In(system)),
            })],
            Group: 0);
    }

    private static string Contact(ContactState contact, MeasurementSystem system, ReportOptions options)
    {
        if (contact.CompressionAt is null)
        {
            return $"{contact.LoadCase}: no contact; tension {Force(contact.Tension, system, options)}.";
        }

        string text = $"{contact.LoadCase}: compression {Force(contact.Compression, system, options)} at {Place(contact.CompressionAt, system, options)}";
        if (contact.TensionAt is not null)
        {
            text += $"; tension {Force(contact.Tension, system, options)} at {Place(contact.TensionAt, system, options)}";
        }

        if (contact.LeverArm is { } arm)
        {
            text += $"; lever arm {Quantity(arm.In(system), Dimension.Length, system, options)}";
        }

        return $"{text}; largest pressure {Quantity(contact.LargestPressure.In(system), Dimension.Stress, system, options)} at {Place(contact.LargestPressureAt, system, options)}; {Quantity(contact.Area.In(system), Dimension.Area, system, options)} under pressure.";
    }

    private static string Place(FastenerPosition? place, MeasurementSystem system, ReportOptions options) => place is { } point
        ? $"x {Quantity(point.X.In(system), Dimension.Length, system, options)}, y {Quantity(point.Y.In(system), Dimension.Length, system, options)}"
        : "";

    /// <summary>The name of the heading above the calculation of a mode.</summary>
    private static string Name(int index) => $"mode-{QuantityText.Format(index + 1)}";

    private static void AddSheets(List<ReportBlock> blocks, FailureMode[] calculated, Lazy<ShownCase> shown)
    {
        string? loadCase = null;
        bool hasShearFigure = false;
        for (int i = 0; i < calculated.Length; i++)
        {
            FailureMode mode = calculated[i];
            if (mode.LoadCase is null && loadCase != "")
            {
                blocks.Add(new HeadingBlock(2, "Detailing"));
                loadCase = "";
            }
            else if (mode.LoadCase is { } name && name != loadCase)
            {
                blocks.Add(new HeadingBlock(2, $"Calculation, load case {name}"));
                loadCase = name;
            }

            blocks.Add(new HeadingBlock(3, $"{mode.Title} ({mode.Clause})", Name(i)));
            string fasteners = mode.Group.IsEmpty ? "" : $" Fastener{(mode.Group.Length == 1 ? "" : "s")} {string.Join(", ", mode.Group.Select(i => QuantityText.Format(i)))}.";
            blocks.Add(new ParagraphBlock($"{mode.Id}: {StatusText.Of(mode.Status)}.{fasteners}{(mode.Reason is null ? "" : " " + mode.Reason)}"));
            if (!hasShearFigure && mode.Kind is FailureModeKind.ConcreteBreakoutShear or FailureModeKind.ConcreteBreakoutParallel && mode.Utilization > 0)
            {
                // Drawn once, where shear breakout is calculated first; the figure says which of its modes it shows.
                hasShearFigure = true;
                blocks.Add(new FigureBlock(() => ShearBreakoutDrawing.Draw(shown.Value)));
            }

            blocks.Add(new SheetBlock(mode.Sheet!));
        }
    }

    private static string Force(Force? force, MeasurementSystem system, ReportOptions options) =>
        force is { } value ? Quantity(value.In(system), Dimension.Force, system, options) : "";

    /// <summary>A computed number with its unit, and in the other system's unit where both are asked for.</summary>
    public static string Quantity(double value, Dimension dimension, MeasurementSystem system, ReportOptions options)
    {
        Unit? unit = Unit.Printed(dimension, system);
        return unit is null ? NumberText.Computed(value) : $"{NumberText.Computed(value)} {unit.Text}{Other(value, dimension, system, options)}";
    }

    /// <summary>The same number in the other system's unit, in brackets, where both are asked for; forces in kip or kN.</summary>
    public static string Other(double value, Dimension dimension, MeasurementSystem system, ReportOptions options)
    {
        if (!options.BothSystems || Unit.Printed(dimension, system) is not { } unit)
        {
            return "";
        }

        MeasurementSystem target = system == MeasurementSystem.PoundInch ? MeasurementSystem.NewtonMillimetre : MeasurementSystem.PoundInch;
        Unit other = dimension == Dimension.Force
            ? target == MeasurementSystem.PoundInch ? Unit.Kip : Unit.Kilonewton
            : Unit.Printed(dimension, target)!;
        return $" ({Notation.Plain.WithUnit(NumberText.Computed(unit.To(value, other)), other.Text)})";
    }
}
