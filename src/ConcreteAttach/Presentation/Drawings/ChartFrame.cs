using ConcreteAttach.Quantities;

namespace ConcreteAttach.Presentation.Drawings;

/// <summary>The axes of a diagram: from numbers to the page, with ticks at round numbers.</summary>
internal sealed class ChartFrame(double width, double height, double fromX, double toX, double toY)
{
    public double X(double value) => (value - fromX) / (toX - fromX) * width;

    public double Y(double value) => height - (value / toY * height);

    public PagePoint At(double x, double y) => new(X(x), Y(y));

    public double Right => width;

    public double Bottom => height;

    /// <summary>Axes with light lines behind, numbers at the ticks, and what the axes are.</summary>
    public void Draw(Drawing drawing, LabelText x, LabelText y)
    {
        foreach (double tick in Ticks(fromX, toX))
        {
            drawing.Line(Ink.Grid, X(tick), 0, X(tick), height);
            drawing.Line(Ink.Axis, X(tick), height, X(tick), height + 4);
            _ = drawing.TryLabel(LabelText.Plain(Number(tick)), [new(X(tick), height + 17)]);
        }

        foreach (double tick in Ticks(0, toY))
        {
            drawing.Line(Ink.Grid, 0, Y(tick), width, Y(tick));
            drawing.Line(Ink.Axis, -4, Y(tick), 0, Y(tick));
            _ = drawing.TryLabel(LabelText.Plain(Number(tick)), [new(-8, Y(tick) + (0.32 * Drawing.TextSize), Anchor.End)]);
        }

        drawing.Polyline(Ink.Axis, [new(0, 0), new(0, height), new(width, height)]);
        drawing.Label(x, new(width / 2, height + 36));
        drawing.Label(y, new(-30, -12, Anchor.Start), step: -4);
    }

    private static IEnumerable<double> Ticks(double from, double to)
    {
        double step = Math.Pow(10, Math.Floor(Math.Log10((to - from) / 4)));
        step *= ((to - from) / step) switch { > 20 => 5, > 8 => 2, _ => 1 };
        for (double k = Math.Ceiling((from / step) - 1e-9); k * step <= to * (1 + 1e-9); k++)
        {
            yield return k * step;
        }
    }

    private static string Number(double value) => NumberText.Computed(Math.Round(value, 9));
}
