using ConcreteAttach.Fasteners;
using ConcreteAttach.Geometry;
using ConcreteAttach.Quantities;
using ConcreteAttach.Verification;
using UnitsNet;

namespace ConcreteAttach.Presentation.Drawings;

/// <summary>
/// A section through the cone of the tension breakout that uses most of its strength: fasteners with their heads, embedment, thickness of the member, edge distances, and how far the
/// breakout reaches.
/// </summary>
public static class SectionDrawing
{
    private const double Width = 330;
    private const double Height = 190;

    /// <summary>A member thicker than this many embedments is drawn shortened, with a kink in its sides.</summary>
    private const double DeepestInFull = 2.1;

    private const double ShortenedTo = 1.75;

    private const double ShankAbove = 11;

    /// <summary>Draws the section as an SVG document.</summary>
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
        bool isReinforced = ReinforcementMarks.InPlaceOfCone(shown) is not null;
        FailureMode? cone = isReinforced ? null : shown.Cone();
        int[] pulled = [.. Enumerable.Range(0, shown.X.Length).Where(shown.IsInTension)];
        int[] group = isReinforced && pulled.Length > 0 ? pulled : cone is null ? [.. Enumerable.Range(0, shown.X.Length)] : [.. cone.Group];
        bool isAlongX = IsAlongX(shown, group);
        double[] places = isAlongX ? shown.X : shown.Y;
        (double low, double high) = shown.Span(isAlongX);
        double coneDepth = cone is null ? shown.Embedment : shown.EmbedmentOf(cone);
        double first = group.Min(i => places[i]), last = group.Max(i => places[i]);
        double coneLow = Math.Max(first - (1.5 * coneDepth), low), coneHigh = Math.Min(last + (1.5 * coneDepth), high);

        double bars = ReinforcementMarks.Deepest(shown);
        double deepest = Math.Max(shown.Embedment, LugMarks.Deepest(shown));
        bool isShortened = shown.Thickness > Math.Max(DeepestInFull * deepest, 1.3 * bars);
        double bottom = isShortened ? Math.Max(ShortenedTo * deepest, 1.12 * bars) : shown.Thickness;
        Rectangle window = Window(shown, isAlongX, places, low, high, coneLow, coneHigh, Math.Max(bottom, shown.Embedment));
        PlanScale scale = PlanScale.Fit(window, Width, Height);
        var drawing = new Drawing("Section", Description(shown, cone, isAlongX, coneDepth));

        Concrete(drawing, window, scale, low, high, bottom, isShortened);
        double plateTop = Plate(drawing, shown, scale, isAlongX);
        LugMarks.OnSection(drawing, shown, scale, isAlongX, -Grout(shown, scale) - 1);
        foreach (int i in Enumerable.Range(0, places.Length).OrderBy(i => group.Contains(i)))
        {
            FastenerOf(drawing, shown, scale, places[i], group.Contains(i), plateTop);
        }

        if (cone is not null || isReinforced)
        {
            Cone(drawing, scale, [.. group.Select(i => places[i]).Distinct().Order()], coneDepth, coneLow, coneHigh, low, high);
        }

        ReinforcementMarks.Section(drawing, shown, scale, isAlongX, Math.Max(bottom, shown.Embedment));
        if (cone is not null)
        {
            Loads(drawing, shown, cone, scale, places, isAlongX, plateTop);
            Reach(drawing, shown, cone, scale, (first, last), (coneLow, coneHigh), (low, high), plateTop);
        }

        Dimensions(drawing, shown, cone, window, scale, isAlongX, bottom, isShortened, coneDepth);
        drawing.Notes([.. Notes(shown, cone, isReinforced, isAlongX, isShortened)]);
        return drawing;
    }

    /// <summary>Toward the nearest edge of the group; without one, along its longer side.</summary>
    private static bool IsAlongX(ShownCase shown, int[] group)
    {
        Rectangle extent = Layouts.ExtentOf([.. group.Select(i => shown.X[i])], [.. group.Select(i => shown.Y[i])]);
        (double left, double right) = shown.Span(isAlongX: true);
        (double bottom, double top) = shown.Span(isAlongX: false);
        double toX = Math.Min(extent.Left - left, right - extent.Right), toY = Math.Min(extent.Bottom - bottom, top - extent.Top);
        return double.IsFinite(Math.Min(toX, toY)) ? toX <= toY : extent.Width >= extent.Height;
    }

    private static Rectangle Window(ShownCase shown, bool isAlongX, double[] places, double low, double high, double coneLow, double coneHigh, double depth)
    {
        double around = 2 * shown.Diameter;
        double from = Math.Min(coneLow, places.Min() - around), to = Math.Max(coneHigh, places.Max() + around);
        if (shown.Verification.Attachment.Plate is { } plate)
        {
            double[] corners = [.. plate.Outline.Vertices.Select(v => (isAlongX ? v.X : v.Y).In(shown.System))];
            (from, to) = (Math.Min(from, corners.Min()), Math.Max(to, corners.Max()));
        }

        (from, to) = (Math.Max(from, low), Math.Min(to, high));
        double margin = 0.09 * (to - from);
        bool showsLow = from - low <= 0.6 * (to - from), showsHigh = high - to <= 0.6 * (to - from);
        return new(showsLow ? low : from - margin, showsHigh ? high : to + margin, -depth, 0);
    }

    private static void Concrete(Drawing drawing, Rectangle window, PlanScale scale, double low, double high, double bottom, bool isShortened)
    {
        double left = 0, right = scale.X(window.Right), floor = scale.Y(-bottom);
        drawing.Rectangle(Ink.ConcreteFill, new(left, 0, right, floor));
        drawing.Line(Ink.Edge, left, 0, right, 0);
        drawing.Line(Ink.Edge, left, floor, right, floor);
        foreach ((double x, bool isEdge) in new[] { (left, window.Left == low), (right, window.Right == high) })
        {
            if (!isEdge)
            {
                ConcreteShape.BreakLine(drawing, new(x, 0), new(x, floor));
            }
            else if (isShortened)
            {
                DimensionChain.Kinked(drawing, Ink.Edge, x, 0, floor);
            }
            else
            {
                drawing.Line(Ink.Edge, x, 0, x, floor);
            }
        }
    }

    /// <summary>The plate on the concrete; returns the height of its top on the page.</summary>
    private static double Plate(Drawing drawing, ShownCase shown, PlanScale scale, bool isAlongX)
    {
        if (shown.Verification.Attachment.Plate is not { } plate)
        {
            return 0;
        }

        double[] corners = [.. plate.Outline.Vertices.Select(v => scale.X((isAlongX ? v.X : v.Y).In(shown.System)))];
        double thickness = plate.Thickness is { } t ? Math.Clamp(t.In(shown.System) * scale.PixelsPerUnit, 4, 16) : 7;
        double underside = -Grout(shown, scale) - 1, top = underside - thickness;
        drawing.Rectangle(Ink.Plate, new(corners.Min(), top, corners.Max(), underside));
        if (plate.GroutThickness.Value > 0)
        {
            drawing.Rectangle(Ink.Break, new(corners.Min(), underside, corners.Max(), -1));
        }

        drawing.KeepFree(new(corners.Min(), top, corners.Max(), -1));
        return top;
    }

    /// <summary>Height of the grout below the plate on the page; 0 without.</summary>
    private static double Grout(ShownCase shown, PlanScale scale) =>
        shown.Verification.Attachment.Plate is { GroutThickness: { Value: > 0 } grout } ? Math.Clamp(grout.In(shown.System) * scale.PixelsPerUnit, 4, 16) : 0;

    private static void FastenerOf(Drawing drawing, ShownCase shown, PlanScale scale, double place, bool isInGroup, double plateTop)
    {
        Fastener fastener = shown.Verification.Attachment.Fastener;
        double x = scale.X(place), half = Math.Max(shown.Diameter * scale.PixelsPerUnit / 2, 1.4), depth = scale.Y(-shown.Embedment);
        double height = Math.Max(((fastener as CastInFastener)?.ResolveHeadHeight()?.In(shown.System) ?? shown.Diameter) * scale.PixelsPerUnit, 3);
        Ink ink = isInGroup ? Ink.Steel : Ink.OpenFastener;
        double top = fastener is HeadedStud ? Math.Min(plateTop, -2) : plateTop - ShankAbove;
        if (fastener is HookedBolt hooked)
        {
            double tip = x + half + (hooked.HookExtension.In(shown.System) * scale.PixelsPerUnit);
            double bend = depth + Math.Max(2 * half, 3);
            drawing.Polyline(ink, [new(x - half, top), new(x + half, top), new(x + half, depth), new(tip, depth), new(tip, bend), new(x - half, bend)], isClosed: true);
        }
        else if (fastener is PostInstalledFastener postInstalled)
        {
            // In its hole, which may be deeper.
            double hole = Math.Max((postInstalled.ProductQualification.HoleDiameter?.In(shown.System) ?? (1.15 * shown.Diameter)) * scale.PixelsPerUnit / 2, half + 1);
            double bottom = Math.Max(scale.Y(-(postInstalled.ProductQualification.HoleDepth?.In(shown.System) ?? shown.Embedment)), depth + 1);
            drawing.Rectangle(Ink.Break, new(x - hole, 0, x + hole, bottom));
            drawing.Rectangle(ink, new(x - half, top, x + half, depth));
        }
        else
        {
            drawing.Rectangle(ink, new(x - half, top, x + half, depth + height));
            drawing.Rectangle(ink, new(x - Math.Max(1.9 * half, half + 2), depth, x + Math.Max(1.9 * half, half + 2), depth + height));
        }

        drawing.KeepFree(new(x - half, top, x + half, depth + height));
    }

    /// <summary>The cone: from the outer fasteners at 1.5 across for 1 up, to the surface or the edge.</summary>
    private static void Cone(Drawing drawing, PlanScale scale, double[] places, double depth, double coneLow, double coneHigh, double low, double high)
    {
        double first = places[0], last = places[^1];
        double riseLow = coneLow == low ? (first - low) / 1.5 : depth, riseHigh = coneHigh == high ? (high - last) / 1.5 : depth;
        var line = new List<PagePoint> { scale.At(coneLow, -depth + Math.Min(riseLow, depth)), scale.At(first, -depth) };
        if (last > first)
        {
            line.Add(scale.At(last, -depth));
        }

        line.Add(scale.At(coneHigh, -depth + Math.Min(riseHigh, depth)));
        drawing.Polyline(Ink.Cone, [.. line]);
        PagePoint[] area = [.. line, scale.At(coneHigh, 0), scale.At(coneLow, 0)];
        drawing.Polyline(Ink.AreaFill, area, isClosed: true);
    }

    private static void Loads(Drawing drawing, ShownCase shown, FailureMode cone, PlanScale scale, double[] places, bool isAlongX, double plateTop)
    {
        if (!(cone.Utilization > 0) || cone.Demand is not { } demand)
        {
            return;
        }

        double start = plateTop - (shown.Verification.Attachment.Fastener is HeadedStud ? 6 : ShankAbove + 3);
        if (cone.Kind == FailureModeKind.Pryout)
        {
            double sum = cone.Group.Sum(i => (isAlongX ? shown.Forces[i].ShearX : shown.Forces[i].ShearY).In(shown.System));
            double middle = scale.X((cone.Group.Min(i => places[i]) + cone.Group.Max(i => places[i])) / 2), way = Math.Sign(sum);
            drawing.Arrow(middle - (way * 22), start - 4, middle + (way * 22), start - 4);
            drawing.Label(LabelText.WithSymbols($"{{V_ua_g}} = {shown.Force(demand.In(shown.System))}"), new(middle, start - 16), colour: Inks.Accent, step: -4);
            return;
        }

        var sums = cone.Group.GroupBy(i => places[i]).Select(g => (Place: g.Key, Force: g.Sum(i => shown.Forces[i].Tension.In(shown.System)))).ToArray();
        double largest = sums.Max(s => s.Force);
        foreach ((double place, double force) in sums)
        {
            drawing.Arrow(scale.X(place), start, scale.X(place), start - 14 - (22 * force / largest));
        }

        double left = scale.X(sums.Min(s => s.Place)), right = scale.X(sums.Max(s => s.Place));
        drawing.Label(LabelText.WithSymbols($"{{N_ua_g}} = {shown.Force(demand.In(shown.System))}"), new((left + right) / 2, start - 44), colour: Inks.Accent, step: -4);
    }

    /// <summary>How far the cone reaches where no edge cuts it.</summary>
    private static void Reach(Drawing drawing, ShownCase shown, FailureMode cone, PlanScale scale, (double First, double Last) group, (double Low, double High) reach, (double Low, double High) edges, double plateTop)
    {
        string symbol = cone.Sheet?.Find("h_ef'") is null ? "h_ef" : "h_ef'";
        LabelText label = LabelText.WithSymbols($"1.5 {{{symbol}}} = {shown.Length(1.5 * shown.EmbedmentOf(cone))}");
        double y = plateTop - 14;
        if (reach.Low > edges.Low)
        {
            DimensionChain.Across(drawing, scale.X(reach.Low), scale.X(group.First), y, -2, label);
        }

        if (reach.High < edges.High)
        {
            DimensionChain.Across(drawing, scale.X(group.Last), scale.X(reach.High), y, -2, label);
        }
    }

    private static void Dimensions(Drawing drawing, ShownCase shown, FailureMode? cone, Rectangle window, PlanScale scale, bool isAlongX, double bottom, bool isShortened, double coneDepth)
    {
        double right = scale.X(window.Right), floor = scale.Y(-bottom), depth = scale.Y(-shown.Embedment);
        double x = right + 20;
        if (cone?.Sheet?.Find("h_ef'") is not null)
        {
            LabelText reduced = LabelText.WithSymbols($"{{h_ef'}} = {shown.Length(coneDepth)}");
            DimensionChain.Upright(drawing, 0, scale.Y(-coneDepth), x, right + 3, reduced);
            x += reduced.Width(Drawing.TextSize) + 22;
        }

        LabelText embedment = LabelText.WithSymbols($"{{h_ef}} = {shown.Length(shown.Embedment)}");
        DimensionChain.Upright(drawing, 0, depth, x, right + 3, embedment);
        x += embedment.Width(Drawing.TextSize) + 22;
        DimensionChain.Upright(drawing, 0, floor, x, right + 3, LabelText.WithSymbols($"{{h_a}} = {shown.Length(shown.Thickness)}"), isShortened);

        (double low, double high) = shown.Span(isAlongX);
        double[] places = DimensionChain.Places(isAlongX ? shown.X : shown.Y, low == window.Left ? low : double.NaN, high == window.Right ? high : double.NaN);
        double lowest = Math.Max(floor, drawing.Extent.Bottom);
        new DimensionChain(drawing, shown.Length).Horizontal([.. places.Select(p => new Station(p, scale.X(p), floor + 3))], lowest + 22);
    }

    private static IEnumerable<string> Notes(ShownCase shown, FailureMode? cone, bool isReinforced, bool isAlongX, bool isShortened)
    {
        string shortened = isShortened ? " The member is drawn shortened." : "";
        yield return $"Section along {(isAlongX ? "{x}" : "{y}")}. {shown.LengthNote}{shortened}";
        if (ReinforcementMarks.Note(shown) is { } bars)
        {
            yield return bars;
        }

        if (isReinforced)
        {
            yield return "Dashed: the breakout surface that the bars cross, at 1.5 across for 1 up.";
        }

        if (cone is not null)
        {
            yield return $"Dashed: the cone of {char.ToLowerInvariant(cone.Title[0])}{cone.Title[1..]}, {ShownCase.Fasteners(cone.Group)}, at 1.5 across for 1 up.";
        }
    }

    private static string Description(ShownCase shown, FailureMode? cone, bool isAlongX, double coneDepth)
    {
        string unit = shown.LengthUnit;
        string text = $"Section along {(isAlongX ? "x" : "y")}, load case {shown.LoadCase}: {shown.Verification.Attachment.Fastener.Kind}, effective embedment {NumberText.AsGiven(shown.Embedment)} {unit}, member {NumberText.AsGiven(shown.Thickness)} {unit} thick.";
        return cone is null ? text : $"{text} The cone of {char.ToLowerInvariant(cone.Title[0])}{cone.Title[1..]} reaches {NumberText.Computed(1.5 * coneDepth)} {unit} from the outer fasteners, or to the edge where that is nearer.";
    }
}
