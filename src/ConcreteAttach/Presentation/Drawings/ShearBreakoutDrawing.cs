using ConcreteAttach.Actions;
using ConcreteAttach.Attached;
using ConcreteAttach.Geometry;
using ConcreteAttach.Quantities;
using ConcreteAttach.Verification;

namespace ConcreteAttach.Presentation.Drawings;

/// <summary>The shear breakout that uses most of its strength: in plan, with the edge below; on the face of the edge, with its projected area; and in section.</summary>
public static class ShearBreakoutDrawing
{
    private const double Width = 400;
    private const double Height = 320;
    private const double Gap = 92;

    /// <summary>Draws the breakout as an SVG document.</summary>
    /// <param name="verification">What to draw.</param>
    /// <param name="options">What the drawing shows; null for the defaults.</param>
    /// <returns>SVG, the same for the same input on every machine; null where no shear breakout has a demand.</returns>
    /// <exception cref="InputException">No load case of the name that is asked for.</exception>
    public static string? Write(AttachmentVerification verification, DrawingOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(verification);
        return Draw(ShownCase.Of(verification, options))?.ToSvg();
    }

    internal static Drawing? Draw(ShownCase shown) =>
        shown.Decisive(FailureModeKind.ConcreteBreakoutShear, FailureModeKind.ConcreteBreakoutParallel, FailureModeKind.ShearLugBreakout, FailureModeKind.ShearLugParallel) is { } mode && ShearBody.Of(shown, mode) is { } body ? Draw(shown, mode, body) : null;

    private static Drawing Draw(ShownCase shown, FailureMode mode, ShearBody body)
    {
        var drawing = new Drawing("Shear breakout", Description(shown, mode, body));
        double around = 0.12 * (body.To - body.From), reach = body.To - body.From;
        double from = body.From - body.Low <= 0.3 * reach ? body.Low : body.From - around, to = body.High - body.To <= 0.3 * reach ? body.High : body.To + around;
        double behind = Behind(shown, body);
        bool isShortened = shown.Thickness > 1.35 * body.Depth;
        double depth = isShortened ? 1.3 * body.Depth : shown.Thickness;
        double pixels = Math.Min((Width - Gap) / (to - from + behind), (Height - 40) / (behind + depth));
        double left(double along) => (along - from) * pixels;
        double edge = behind * pixels, right = left(to), face = edge + 44;

        // Plan: the edge at the bottom.
        drawing.Rectangle(Ink.ConcreteFill, new(0, 0, right, edge));
        drawing.Line(Ink.Edge, 0, edge, right, edge);
        ConcreteShape.BreakLine(drawing, new(0, 0), new(right, 0));
        Side(drawing, 0, 0, edge, from == body.Low);
        Side(drawing, right, 0, edge, to == body.High);
        PagePoint[] trace = [.. body.Trace().Select(p => new PagePoint(left(p.X), edge - (p.Y * pixels)))];
        drawing.Polyline(Ink.AreaFill, trace, isClosed: true);
        drawing.Polyline(Ink.Cone, trace);
        Fasteners(drawing, shown, mode, body, left, edge, pixels, from, to, behind);

        // The face of the edge.
        double bottom = face + (depth * pixels);
        drawing.Rectangle(Ink.ConcreteFill, new(0, face, right, bottom));
        drawing.Line(Ink.Edge, 0, face, right, face);
        Floor(drawing, 0, right, bottom, isShortened);
        Side(drawing, 0, face, bottom, from == body.Low);
        Side(drawing, right, face, bottom, to == body.High);
        var area = new Box(left(body.From), face, left(body.To), face + (body.Depth * pixels));
        drawing.Rectangle(Ink.AreaFill, area);
        drawing.Rectangle(Ink.Cone, area);
        if (mode.Sheet!.Find("A_Vc") is not null)
        {
            double x = (area.Left + area.Right) / 2, y = (area.Top + area.Bottom) / 2;
            _ = drawing.TryLabel(LabelText.WithSymbols("{A_Vc}"), [new(x, y + 4), new(x, y)], colour: Inks.Accent);
        }

        // Section: the face of the edge on the left.
        double start = right + Gap - 16;
        Section(drawing, shown, body, start, face, bottom, pixels, behind, isShortened);
        Dimensions(drawing, shown, body, left, edge, right, face, bottom, pixels, start, isShortened);
        _ = drawing.TryLabel(LabelText.Plain("Plan"), [new(0, -9, Anchor.Start)], Drawing.NoteSize);
        _ = drawing.TryLabel(LabelText.Plain($"Edge {mode.Side} seen from outside"), [new(0, face - 9, Anchor.Start), new(0, face - 13, Anchor.Start)], Drawing.NoteSize);
        _ = drawing.TryLabel(LabelText.Plain("Section"), [new(start + (behind * pixels), face - 9, Anchor.End), new(start + (behind * pixels) + 12, face - 9, Anchor.Start)], Drawing.NoteSize);
        string projected = mode.Sheet.Find("A_Vc") is { } value ? $" {{A_Vc}} = {shown.Area(value)}." : "";
        drawing.Notes(
            $"{char.ToUpperInvariant(mode.Title[0])}{mode.Title[1..]}{ShownCase.Of(mode)}.{projected}",
            shown.LengthNote + (isShortened ? " The member is drawn shortened." : ""));
        return drawing;
    }

    /// <summary>How far the drawing reaches from the edge into the concrete.</summary>
    private static double Behind(ShownCase shown, ShearBody body) => body.RowDistance + Math.Max(0.35 * body.RowDistance, Math.Max(2 * shown.Diameter, 1.2 * Lug(shown, body).To));

    /// <summary>Of a shear lug: from where to where it stands behind c_a1, away from the edge; its depth in the concrete.</summary>
    private static (double From, double To, double Depth) Lug(ShownCase shown, ShearBody body)
    {
        if (body.Lug is not { } lug)
        {
            return default;
        }

        // c_a1 reaches to the bearing face where the shear points to the edge, else to the middle.
        bool isToward = (lug.Takes == ShearAxis.X) == body.Side.IsAlongX();
        double thickness = lug.Thickness.In(shown.System), half = lug.Width.In(shown.System) / 2, depth = LugMarks.Embedment(lug, shown);
        return isToward ? (0, thickness, depth) : (-half, half, depth);
    }

    private static void Side(Drawing drawing, double x, double top, double bottom, bool isEdge)
    {
        if (isEdge)
        {
            drawing.Line(Ink.Edge, x, top, x, bottom);
        }
        else
        {
            ConcreteShape.BreakLine(drawing, new(x, top), new(x, bottom));
        }
    }

    private static void Floor(Drawing drawing, double left, double right, double y, bool isShortened)
    {
        if (isShortened)
        {
            ConcreteShape.BreakLine(drawing, new(left, y), new(right, y));
        }
        else
        {
            drawing.Line(Ink.Edge, left, y, right, y);
        }
    }

    /// <summary>The fasteners that lie on the plan; those of the mode filled, with their shear as an arrow across or along the edge.</summary>
    private static void Fasteners(Drawing drawing, ShownCase shown, FailureMode mode, ShearBody body, Func<double, double> left, double edge, double pixels, double from, double to, double behind)
    {
        bool isAlongX = mode.Side.IsAlongX();
        double place = mode.Side.PlaceIn(shown.Concrete), radius = Math.Clamp(shown.Diameter / 2 * pixels, 3, 8);
        int sign = mode.Side.Sign();
        var marks = new List<(int Number, double X, double Y)>();
        for (int i = 0; i < shown.X.Length; i++)
        {
            double along = isAlongX ? shown.Y[i] : shown.X[i], inward = sign * (place - (isAlongX ? shown.X[i] : shown.Y[i]));
            if (along < from || along > to || inward > behind)
            {
                continue;
            }

            double x = left(along), y = edge - (inward * pixels);
            bool counts = mode.Group.Contains(i);
            if (counts)
            {
                double across = sign * (isAlongX ? shown.Forces[i].ShearX : shown.Forces[i].ShearY).In(shown.System);
                double parallel = (isAlongX ? shown.Forces[i].ShearY : shown.Forces[i].ShearX).In(shown.System);
                bool isParallel = mode.Kind == FailureModeKind.ConcreteBreakoutParallel;
                drawing.Arrow(x, y, x + (isParallel ? Math.Sign(parallel) * 30 : 0), y + (isParallel || across <= 0 ? 0 : 30));
            }

            drawing.Circle(counts ? Ink.Steel : Ink.OpenFastener, x, y, radius);
            drawing.KeepFree(Box.About(x, y, radius));
            marks.Add((i, x, y));
        }

        if (body.Lug is not null)
        {
            (double near, double far, _) = Lug(shown, body);
            var box = new Box(left(body.First), edge - ((body.RowDistance + far) * pixels), left(body.Last), edge - ((body.RowDistance + near) * pixels));
            drawing.Rectangle(Ink.BarFill, box);
            drawing.Rectangle(Ink.BarOutline, box);
            drawing.KeepFree(box);
            LoadCase loads = shown.Verification.LoadCases.First(l => l.Name == shown.LoadCase);
            double x = (box.Left + box.Right) / 2, y = (box.Top + box.Bottom) / 2;
            bool isParallel = mode.Kind == FailureModeKind.ShearLugParallel;
            drawing.Arrow(x, y, x + (isParallel ? Math.Sign((isAlongX ? loads.Vy : loads.Vx).Value) * 30 : 0), y + (isParallel ? 0 : 30));
        }

        foreach ((int number, double x, double y) in marks.Take(60))
        {
            _ = drawing.TryLabel(LabelText.Plain(QuantityText.Format(number)), FastenerMarks.About(x, y, radius + 2));
        }
    }

    private static void Section(Drawing drawing, ShownCase shown, ShearBody body, double start, double face, double bottom, double pixels, double behind, bool isShortened)
    {
        double end = start + (behind * pixels), fastener = start + (body.RowDistance * pixels), depth = face + (body.Depth * pixels);
        drawing.Rectangle(Ink.ConcreteFill, new(start, face, end, bottom));
        drawing.Line(Ink.Edge, start, face, end, face);
        drawing.Line(Ink.Edge, start, face, start, bottom);
        Floor(drawing, start, end, bottom, isShortened);
        ConcreteShape.BreakLine(drawing, new(end, face), new(end, bottom));
        if (body.Lug is not null)
        {
            (double near, double far, double reach) = Lug(shown, body);
            var lug = new Box(fastener + (near * pixels), face - 6, fastener + (far * pixels), Math.Min(face + (reach * pixels), bottom));
            drawing.Rectangle(Ink.BarFill, lug);
            drawing.Rectangle(Ink.BarOutline, lug);
            drawing.KeepFree(lug);
        }
        else
        {
            double half = Math.Max(shown.Diameter * pixels / 2, 1.4), tip = Math.Min(face + (shown.Embedment * pixels), bottom - 4);
            drawing.Rectangle(Ink.Steel, new(fastener - half, face - 12, fastener + half, tip));
            drawing.KeepFree(new(fastener - half, face - 12, fastener + half, tip));
        }

        // 1.5 across and down for 1 back: from the surface (of a lug from the foot of its bearing) at c_a1 to the face at 1.5 c_a1, or to the far face of a thin member.
        double below = face + (body.Below * pixels);
        double top = start + (body.EdgeDistance * pixels), foot = start + ((body.EdgeDistance - ((body.Depth - body.Below) / 1.5)) * pixels);
        drawing.Polyline(Ink.AreaFill, [new(top, face), new(top, below), new(Math.Max(foot, start), depth), new(start, depth), new(start, face)], isClosed: true);
        drawing.Line(Ink.Cone, top, below, Math.Max(foot, start), depth);
    }

    private static void Dimensions(
        Drawing drawing, ShownCase shown, ShearBody body, Func<double, double> left, double edge, double right, double face, double bottom, double pixels, double start, bool isShortened)
    {
        string row = body.EdgeDistance < body.RowDistance ? "c_a1'" : "c_a1";
        DimensionChain.Upright(drawing, edge - (body.RowDistance * pixels), edge, right + 18, right + 3, LabelText.WithSymbols($"{{c_a1}} = {shown.Length(body.RowDistance)}"));
        if (row == "c_a1'")
        {
            DimensionChain.Upright(drawing, edge - (body.EdgeDistance * pixels), edge, right + 108, right + 3, LabelText.WithSymbols($"{{{row}}} = {shown.Length(body.EdgeDistance)}"));
        }

        LabelText depth = body.Depth < (body.Below + (1.5 * body.EdgeDistance)) * (1 - 1e-9)
            ? LabelText.WithSymbols($"{{h_a}} = {shown.Length(body.Depth)}")
            : LabelText.WithSymbols($"{(body.Lug is null ? "" : "{h_ef_sl} + ")}1.5 {{{row}}} = {shown.Length(body.Depth)}");
        double end = start + (Behind(shown, body) * pixels);
        DimensionChain.Upright(drawing, face, face + (body.Depth * pixels), end + 18, end + 3, depth);
        double[] places = [.. new[] { body.From, body.First, body.Last, body.To }.Distinct()];
        double lowest = bottom + 22;
        new DimensionChain(drawing, shown.Length).Horizontal([.. places.Select(p => new Station(p, left(p), face + (body.Depth * pixels) + 2))], lowest);
        new DimensionChain(drawing, shown.Length).Horizontal([new(0, start, bottom + 3), new(body.RowDistance, start + (body.RowDistance * pixels), bottom + 3)], lowest);
    }

    private static string Description(ShownCase shown, FailureMode mode, ShearBody body)
    {
        string unit = shown.LengthUnit;
        string area = mode.Sheet?.Find("A_Vc") is { } value ? $" Its projected area is {shown.Area(value)}: {NumberText.Computed(body.To - body.From)} {unit} along the edge and {NumberText.Computed(body.Depth)} {unit} deep." : "";
        return $"{mode.Title}, load case {shown.LoadCase}{ShownCase.Of(mode)}, {NumberText.Computed(body.RowDistance)} {unit} from the edge, in plan, on the face of the edge and in section.{area}";
    }
}
