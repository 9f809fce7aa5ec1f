using ConcreteAttach.Quantities;
using ConcreteAttach.Verification;

namespace ConcreteAttach.Presentation.Drawings;

/// <summary>Tension against shear: the highest ratio of each in every load case, and the line that they may not pass (ACI 318-19 17.8).</summary>
public static class InteractionDrawing
{
    private const double Size = 240;

    /// <summary>Ratios beyond this are drawn at the rim.</summary>
    private const double LargestShown = 2;

    /// <summary>Draws the diagram as an SVG document.</summary>
    /// <param name="verification">What to draw.</param>
    /// <param name="options">What the drawing shows: the load case whose point is named in bold; null for the one that governs.</param>
    /// <returns>SVG, the same for the same input on every machine.</returns>
    /// <exception cref="InputException">No load case of the name that is asked for.</exception>
    public static string Write(AttachmentVerification verification, DrawingOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(verification);
        return Draw(ShownCase.Of(verification, options), verification).ToSvg();
    }

    internal static Drawing Draw(ShownCase shown, AttachmentVerification verification)
    {
        (string Name, double Tension, double Shear)[] points =
        [
            .. verification.LoadCases.Select(l => (l.Name, Highest(verification, l.Name, FailureModeIds.IsTension), Highest(verification, l.Name, FailureModeIds.IsShearOfFasteners))),
        ];
        var drawing = new Drawing("Tension and shear together", Description(points));
        double most = Math.Clamp(1.15 * points.Max(p => Math.Max(p.Tension, p.Shear)), 1.2, LargestShown);
        var frame = new ChartFrame(Size, Size, 0, most, most);
        frame.Draw(drawing, LabelText.WithSymbols("highest ratio in shear, {V_ua} / {phi}{V_n}"), LabelText.WithSymbols("highest ratio in tension, {N_ua} / {phi}{N_n}"));

        // 17.8.3: the sum is at most 1.2; neither ratio is above 1, and one of at most 0.2 leaves the other its full strength.
        double gate = LoadFactors.InteractionLimit - 1;
        PagePoint[] limit = [frame.At(0, 1), frame.At(gate, 1), frame.At(1, gate), frame.At(1, 0)];
        drawing.Polyline(Ink.AreaFill, [frame.At(0, 0), .. limit], isClosed: true);
        drawing.Polyline(Ink.LimitLine, limit);
        foreach ((_, double tension, double shear) in points)
        {
            double x = frame.X(Math.Min(shear, most)), y = frame.Y(Math.Min(tension, most));
            drawing.Circle(Ink.PointMark, x, y, 4);
            drawing.KeepFree(Box.About(x, y, 4));
        }

        var left = new List<string>();
        foreach ((string name, double tension, double shear) in points.OrderBy(p => p.Name != shown.LoadCase))
        {
            double x = frame.X(Math.Min(shear, most)), y = frame.Y(Math.Min(tension, most));
            bool isShown = name == shown.LoadCase;
            LabelText label = LabelText.Plain(name.Length <= 40 ? name : name[..38] + "…");
            if (!drawing.TryLabel(label, FastenerMarks.About(x, y, 5), isBold: isShown))
            {
                left.Add(name);
            }
        }

        string note = "The line: the sum of both ratios is 1.2; a ratio of at most 0.2 leaves the other its full strength (17.8).";
        string atRim = points.Any(p => Math.Max(p.Tension, p.Shear) > most) ? " Points at the rim lie farther out." : "";
        string unnamed = left.Count > 0 ? " Points without a name lie close together." : "";
        drawing.Notes(note + atRim + unnamed);
        return drawing;
    }

    private static double Highest(AttachmentVerification verification, string loadCase, Func<FailureModeKind, bool> counts) =>
        verification.Modes.Where(m => m.LoadCase == loadCase && counts(m.Kind)).Select(m => m.Utilization ?? 0).DefaultIfEmpty(0).Max();

    private static string Description((string Name, double Tension, double Shear)[] points) =>
        "The highest ratio of demand to design strength in tension and in shear: " + string.Join("; ", points.Select(p => $"{p.Name}: tension {Ratio(p.Tension)}, shear {Ratio(p.Shear)}")) + ".";

    private static string Ratio(double value) => NumberText.Utilization(value, value <= 1);
}
