using ConcreteAttach.Geometry;
using ConcreteAttach.Quantities;
using ConcreteAttach.Verification;
using UnitsNet;

namespace ConcreteAttach.Presentation.Drawings;

/// <summary>
/// The attachment seen from above: concrete, plate and numbered fasteners, the projected areas of the modes that use most of their strength, edge distances and spacings, shear
/// on the fasteners, the contact zone and its neutral line.
/// </summary>
public static class PlanDrawing
{
    private const double Width = 330;
    private const double Height = 270;

    /// <summary>Space between the concrete and its dimensions.</summary>
    private const double ToChain = 24;

    /// <summary>Draws the plan as an SVG document.</summary>
    /// <param name="verification">What to draw.</param>
    /// <param name="options">What the drawing shows; null for the defaults.</param>
    /// <returns>SVG, the same for the same input on every machine.</returns>
    /// <exception cref="InputException">No load case of the name that is asked for.</exception>
    public static string Write(AttachmentVerification verification, DrawingOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(verification);
        return Draw(ShownCase.Of(verification, options)).ToSvg();
    }

    internal static Drawing Draw(ShownCase shown)
    {
        FailureMode? cone = shown.Cone();
        FailureMode? breakout = shown.Decisive(FailureModeKind.ConcreteBreakoutShear, FailureModeKind.ConcreteBreakoutParallel, FailureModeKind.ShearLugBreakout, FailureModeKind.ShearLugParallel);
        ShearBody? body = breakout is null ? null : ShearBody.Of(shown, breakout);
        var drawing = new Drawing("Plan", Description(shown, cone, breakout));

        List<SurfacePoint[]> area = cone is null ? [] : ProjectedOutline.Of(shown, cone);
        SurfacePoint[] trace = body is null ? [] : [.. body.Trace().Select(p => body.InSurface(shown.Concrete, p))];
        SurfacePoint[] plate = PlateOf(shown);
        ConcreteShape concrete = ConcreteShape.About(shown.Concrete, Seen(shown, [.. area.SelectMany(r => r), .. trace, .. plate]), shown.Outline);
        PlanScale scale = PlanScale.Fit(concrete.Window, Width, Height);
        concrete.Draw(drawing, scale);

        foreach (SurfacePoint[] ring in area)
        {
            drawing.Polyline(Ink.AreaFill, scale.At(ring), isClosed: true);
            drawing.Polyline(Ink.AreaOutline, scale.At(ring), isClosed: true);
        }

        if (trace.Length > 0)
        {
            drawing.Polyline(Ink.SecondAreaOutline, scale.At(trace));
        }

        bool hasNeutralLine = ContactZone.Draw(drawing, shown, scale);
        if (plate.Length > 0)
        {
            drawing.Polyline(Ink.Plate, scale.At(plate), isClosed: true);
        }

        ReinforcementMarks.Plan(drawing, shown, scale);
        LugMarks.OnPlan(drawing, shown, scale);
        FastenerMarks.Draw(drawing, shown, scale, FastenerMarks.ShearArrows(drawing, shown, scale));
        if (cone?.Sheet?.Find("A_Nc") is not null)
        {
            LabelArea(drawing, scale, area);
        }

        Dimensions(drawing, shown, concrete.Window, scale);
        Axes(drawing, scale.Y(concrete.Window.Bottom));
        drawing.Notes([.. Notes(shown, cone, breakout, hasNeutralLine)]);
        return drawing;
    }

    private static SurfacePoint[] PlateOf(ShownCase shown) =>
        shown.Verification.Attachment.Plate is { } plate ? [.. plate.Outline.Vertices.Select(v => new SurfacePoint(v.X.In(shown.System), v.Y.In(shown.System)))] : [];

    /// <summary>What must be on the plan.</summary>
    private static Rectangle Seen(ShownCase shown, SurfacePoint[] others)
    {
        double reach = Math.Max(2 * shown.Diameter, others.Length == 0 ? shown.Embedment : 0);
        double[] xs = [.. shown.X.Select(x => x - reach), .. shown.X.Select(x => x + reach), .. others.Select(p => p.X)];
        double[] ys = [.. shown.Y.Select(y => y - reach), .. shown.Y.Select(y => y + reach), .. others.Select(p => p.Y)];
        Rectangle concrete = shown.Concrete;
        return new(
            Math.Clamp(xs.Min(), concrete.Left, concrete.Right), Math.Clamp(xs.Max(), concrete.Left, concrete.Right),
            Math.Clamp(ys.Min(), concrete.Bottom, concrete.Top), Math.Clamp(ys.Max(), concrete.Bottom, concrete.Top));
    }

    private static void LabelArea(Drawing drawing, PlanScale scale, List<SurfacePoint[]> area)
    {
        PagePoint[] corners = [.. area.SelectMany(ring => scale.At(ring))];
        double left = corners.Min(p => p.X) + 6, top = corners.Min(p => p.Y) + 15, right = corners.Max(p => p.X) - 6, bottom = corners.Max(p => p.Y) - 8;
        IEnumerable<Place> places = from row in Enumerable.Range(0, 8)
                                    from column in Enumerable.Range(0, 8)
                                    let place = new Place(left + ((right - left) * column / 8), top + ((bottom - top) * row / 8), Anchor.Start)
                                    where IsInside(area, scale, place.X, place.Y - 5) && IsInside(area, scale, place.X + 26, place.Y - 5)
                                    select place;
        _ = drawing.TryLabel(LabelText.WithSymbols("{A_Nc}"), places, colour: Inks.Accent);
    }

    private static bool IsInside(List<SurfacePoint[]> area, PlanScale scale, double x, double y)
    {
        bool isInside = false;
        foreach (SurfacePoint[] ring in area)
        {
            PagePoint[] points = scale.At(ring);
            for (int i = 0; i < points.Length; i++)
            {
                PagePoint a = points[i], b = points[(i + 1) % points.Length];
                if ((a.Y > y) != (b.Y > y) && x < a.X + ((y - a.Y) / (b.Y - a.Y) * (b.X - a.X)))
                {
                    isInside = !isInside;
                }
            }
        }

        return isInside;
    }

    private static void Dimensions(Drawing drawing, ShownCase shown, Rectangle window, PlanScale scale)
    {
        var chain = new DimensionChain(drawing, shown.Length);
        double right = scale.X(window.Right), bottom = scale.Y(window.Bottom);
        double[] xs = DimensionChain.Places(shown.X, Visible(shown.Concrete.Left, window.Left), Visible(shown.Concrete.Right, window.Right));
        chain.Horizontal([.. xs.Select(x => new Station(x, scale.X(x), bottom + 3))], bottom + ToChain);
        double[] ys = DimensionChain.Places(shown.Y, Visible(shown.Concrete.Bottom, window.Bottom), Visible(shown.Concrete.Top, window.Top));
        chain.Vertical([.. ys.Select(y => new Station(y, scale.Y(y), right + 3))], right + ToChain);

        // Light lines from the fasteners to their dimensions.
        foreach (double x in xs.Where(x => xs.Length > 1 && x > window.Left && x < window.Right))
        {
            drawing.Line(Ink.Extension, scale.X(x), scale.Y(Nearest(shown.X, shown.Y, x).Min()), scale.X(x), bottom);
        }

        foreach (double y in ys.Where(y => ys.Length > 1 && y > window.Bottom && y < window.Top))
        {
            drawing.Line(Ink.Extension, scale.X(Nearest(shown.Y, shown.X, y).Max()), scale.Y(y), right, scale.Y(y));
        }

        static IEnumerable<double> Nearest(double[] along, double[] across, double place)
        {
            double least = along.Min(a => Math.Abs(a - place));
            return Enumerable.Range(0, along.Length).Where(i => Math.Abs(along[i] - place) <= least).Select(i => across[i]);
        }

        static double Visible(double edge, double window) => edge == window ? edge : double.NaN;
    }

    /// <summary>Which way x and y point.</summary>
    private static void Axes(Drawing drawing, double bottom)
    {
        const double X = -44, Length = 24;
        drawing.Arrow(X, bottom, X + Length, bottom, Ink.Axis, Ink.PointMark);
        drawing.Arrow(X, bottom, X, bottom - Length, Ink.Axis, Ink.PointMark);
        drawing.Label(LabelText.WithSymbols("{x}"), new(X + Length, bottom + 14));
        drawing.Label(LabelText.WithSymbols("{y}"), new(X - 8, bottom - Length + 6));
    }

    private static IEnumerable<string> Notes(ShownCase shown, FailureMode? cone, FailureMode? breakout, bool hasNeutralLine)
    {
        yield return $"{shown.LengthNote} {FastenerMarks.Note(shown)}";
        if (cone?.Sheet?.Find("A_Nc") is { } area)
        {
            yield return $"Shaded: {{A_Nc}} = {shown.Area(area)}, {InWords(cone)}, {ShownCase.Fasteners(cone.Group)}.";
        }

        if (breakout is not null && breakout.Side.Number == 0)
        {
            yield return $"Dash-dotted: {InWords(breakout)}{ShownCase.Of(breakout)}.";
        }

        if (ReinforcementMarks.Note(shown) is { } bars)
        {
            yield return bars;
        }

        if (!shown.Verification.Attachment.ShearLugs.IsEmpty)
        {
            yield return LugMarks.Note;
        }

        if (shown.Contact is { Zone.IsEmpty: false })
        {
            yield return hasNeutralLine ? "Hatched: contact of the plate with the concrete; the long dashes are the neutral line." : "Hatched: contact of the plate with the concrete.";
        }
    }

    private static string InWords(FailureMode mode) => char.ToLowerInvariant(mode.Title[0]) + mode.Title[1..];

    private static string Description(ShownCase shown, FailureMode? cone, FailureMode? breakout)
    {
        string edges = shown.Verification.Attachment.Concrete.Edges.ToString();
        string text = $"{QuantityText.Format(shown.X.Length)} fastener{(shown.X.Length == 1 ? "" : "s")} seen from above, load case {shown.LoadCase}. ";
        text += shown.Outline is not null ? "The concrete has an outline of its own." : edges.Length == 0 ? "No edge of the concrete is within reach." : $"Edges of the concrete, measured from the origin: {edges}.";
        text += cone?.Sheet?.Find("A_Nc") is { } area ? $" The projected area of {InWords(cone)} is {shown.Area(area)}, {ShownCase.Fasteners(cone.Group)}." : "";
        text += breakout is null || breakout.Side.Number > 0 ? "" : $" A line shows {InWords(breakout)}{ShownCase.Of(breakout)}.";
        return text;
    }
}
