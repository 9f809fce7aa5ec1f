using ConcreteAttach.Quantities;
using ConcreteAttach.Verification;

namespace ConcreteAttach.Presentation.Drawings;

/// <summary>The utilization of each mode as a bar against 1: the highest of all load cases.</summary>
public static class UtilizationDrawing
{
    private const double Row = 19;
    private const double BarHeight = 11;
    private const double WidthOfOne = 190;

    /// <summary>A bar longer than this many times its limit is broken off.</summary>
    private const double LongestBar = 1.5;

    /// <summary>Draws the bars as an SVG document.</summary>
    /// <param name="verification">What to draw.</param>
    /// <param name="options">What the drawing shows: with a load case, the bars of that one; null for the highest of all.</param>
    /// <returns>SVG, the same for the same input on every machine.</returns>
    /// <exception cref="InputException">No load case of the name that is asked for.</exception>
    public static string Write(AttachmentVerification verification, DrawingOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(verification);
        string? loadCase = options?.LoadCase is null ? null : ShownCase.Of(verification, options).LoadCase;
        return Draw(verification, loadCase).ToSvg();
    }

    internal static Drawing Draw(VerificationResult verification, string? loadCase = null)
    {
        FailureMode[] all = Decisive(verification.Modes.Where(m => loadCase is null || m.LoadCase is null || m.LoadCase == loadCase));
        FailureMode[] modes = [.. all.Where(m => m.Utilization != 0)];
        var drawing = new Drawing("Utilization of each mode", Description(modes));
        double bottom = modes.Length * Row;
        drawing.KeepFree(new(WidthOfOne - 3, -2, WidthOfOne + 3, bottom));
        for (int i = 0; i < modes.Length; i++)
        {
            Bar(drawing, modes[i], (i * Row) + (Row / 2), ReferenceEquals(modes[i], verification.Governing));
        }

        drawing.Line(Ink.Axis, 0, 0, 0, bottom);
        drawing.Line(Ink.LimitLine, WidthOfOne, -2, WidthOfOne, bottom + 2);
        _ = drawing.TryLabel(LabelText.Plain("1"), [new(WidthOfOne, -7)], colour: Inks.Accent, isBold: true);
        bool hasFailure = modes.Any(m => m.Status == ModeStatus.NotSatisfied);
        string which = loadCase is not null ? $"Demand over design strength in load case {loadCase}."
            : verification.LoadCaseNames.Length == 1 ? "Demand over design strength." : "Demand over design strength, the highest of all load cases.";
        drawing.Notes(which + (verification.Governing is null ? "" : " Bold: the mode that governs.") + (hasFailure ? " Striped: not satisfied." : "") + (modes.Length < all.Length ? " Modes without demand are left out." : ""));
        return drawing;
    }

    /// <summary>Of the modes of one id, the one that uses most; those that cannot occur are left out, and rules of detailing that are kept.</summary>
    private static FailureMode[] Decisive(IEnumerable<FailureMode> modes) =>
    [
        .. modes.GroupBy(m => m.Id, StringComparer.Ordinal).Select(MostUsed)
            .Where(m => m.Utilization is not null || m.Status is ModeStatus.NotCovered or ModeStatus.NotSatisfied),
    ];

    /// <summary>Of the modes of one id, the one that uses most; a gap before all others.</summary>
    internal static FailureMode MostUsed(IEnumerable<FailureMode> same) =>
        same.OrderByDescending(m => m is { Status: ModeStatus.NotCovered, Utilization: null } ? double.PositiveInfinity : m.Utilization ?? -1).First();

    private static void Bar(Drawing drawing, FailureMode mode, double y, bool governs)
    {
        double baseline = y + (0.3 * Drawing.TextSize), end = 4;
        if (mode.Utilization is { } utilization)
        {
            bool isBroken = utilization > LongestBar;
            double length = Math.Min(utilization, LongestBar) * WidthOfOne, top = y - (BarHeight / 2), bottom = y + (BarHeight / 2);
            bool fails = mode.Status != ModeStatus.Satisfied;
            PagePoint[] bar = isBroken
                ? [new(0, top), new(length + 4, top), new(length - 2, y), new(length + 4, y), new(length, bottom), new(0, bottom)]
                : [new(0, top), new(length, top), new(length, bottom), new(0, bottom)];
            if (length >= 0.5)
            {
                drawing.Polyline(fails ? Ink.WarningFill : Ink.BarFill, bar, isClosed: true);
                if (fails)
                {
                    drawing.Hatch(Ink.WarningHatch, [new(0, top), new(length - 2, top), new(length - 2, bottom), new(0, bottom)], 7);
                }
            }

            end = Math.Max(length, 0) + (isBroken ? 10 : 6);
        }

        string value = mode.Utilization is { } number ? NumberText.Utilization(number, mode.Status == ModeStatus.Satisfied) : "";
        string words = mode.Status switch { ModeStatus.NotCovered => "not covered", ModeStatus.NotSatisfied when mode.Utilization is null => "not satisfied", _ => "" };
        _ = drawing.TryLabel(LabelText.Plain(mode.Id), [new(-8, baseline, Anchor.End)], isBold: governs);
        _ = drawing.TryLabel(LabelText.Plain($"{value}{(value.Length > 0 && words.Length > 0 ? ", " : "")}{words}"), [new(end, baseline, Anchor.Start), new(WidthOfOne + 7, baseline, Anchor.Start)], isBold: governs);
    }

    private static string Description(FailureMode[] modes) => modes.Length == 0
        ? "No mode has a demand, so there is no bar against the limit 1."
        : "Bars against the limit 1. " + string.Join("; ", modes.Select(m => $"{m.Id} {(m.Utilization is { } u ? NumberText.Utilization(u, m.Status == ModeStatus.Satisfied) + " " : "")}{StatusText.Of(m.Status)}")) + ".";
}
