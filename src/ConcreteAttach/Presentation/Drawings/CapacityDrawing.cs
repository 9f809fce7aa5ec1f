using ConcreteAttach.Actions;
using ConcreteAttach.Attached;
using ConcreteAttach.Geometry;
using ConcreteAttach.Materials;
using ConcreteAttach.Quantities;
using ConcreteAttach.Verification;

namespace ConcreteAttach.Presentation.Drawings;

/// <summary>What is changed along the axis of a <see cref="CapacityDrawing"/>.</summary>
public enum CapacityVariable
{
    /// <summary>The effective embedment of all fasteners.</summary>
    Embedment,

    /// <summary>The distance from the nearest edge to the fastener that is nearest to it.</summary>
    EdgeDistance,
}

/// <summary>
/// How many times the actions of a load case the attachment and each of its modes hold, as the embedment or the distance to the nearest edge changes and all else stays. Each point is a
/// verification of its own.
/// </summary>
public static class CapacityDrawing
{
    private const double Width = 300;
    private const double Height = 210;
    private const int Points = 29;

    private static readonly Ink[] Curves = [Ink.CurveOne, Ink.CurveTwo, Ink.CurveThree, Ink.CurveFour, Ink.CurveFive, Ink.CurveSix];

    /// <summary>Draws the curves as an SVG document.</summary>
    /// <param name="verification">What to draw.</param>
    /// <param name="variable">What is changed.</param>
    /// <param name="options">What the drawing shows; null for the defaults.</param>
    /// <returns>SVG, the same for the same input on every machine; null without demand, and for the edge distance where there is no edge.</returns>
    /// <exception cref="InputException">No load case of the name that is asked for.</exception>
    public static string? Write(AttachmentVerification verification, CapacityVariable variable, DrawingOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(verification);
        return Draw(ShownCase.Of(verification, options), variable)?.ToSvg();
    }

    internal static Drawing? Draw(ShownCase shown, CapacityVariable variable)
    {
        (ConcreteSide side, double distance) = NearestEdge(shown);
        bool isEmbedment = variable == CapacityVariable.Embedment;
        double current = isEmbedment ? shown.Embedment : distance;
        if (shown.Verification.Again is null || !double.IsFinite(current) || current <= 0 || !double.IsFinite(FactorOf(shown.Modes, null)))
        {
            return null;
        }

        LoadCase loadCase = shown.Verification.LoadCases.First(l => l.Name == shown.LoadCase);
        double from = (isEmbedment ? 0.5 : 0.4) * current, to = (isEmbedment ? 1.75 : 2.2) * current;
        var places = new List<double>(Points + 1);
        for (int i = 0; i < Points; i++)
        {
            places.Add(from + ((to - from) * i / (Points - 1)));
        }

        FailureMode[]?[] results = [.. places.Select(place => Verified(shown, loadCase, isEmbedment ? WithEmbedment(shown, place) : WithEdge(shown, side, place - distance)))];
        double here = FactorOf(shown.Modes, null);
        double most = Math.Max(2.2 * here, 1.5);
        var frame = new ChartFrame(Width, Height, from, to, most);
        string what = isEmbedment ? "{h_ef}" : $"distance to edge {side}";
        var drawing = new Drawing(isEmbedment ? "Strength against embedment" : "Strength against edge distance", Description(shown, variable, side, current, here, places, results));
        frame.Draw(drawing, LabelText.WithSymbols($"{what}, {shown.LengthUnit}"), LabelText.Plain("times the actions"));
        drawing.Line(Ink.NeutralLine, frame.X(current), 0, frame.X(current), Height);
        drawing.Line(Ink.Extension, 0, frame.Y(1), Width, frame.Y(1));

        int curve = 0;
        FailureModeKind[] kinds = [.. results.OfType<FailureMode[]>().SelectMany(m => m).Where(m => m.Utilization > 0 && (FailureModeIds.IsTension(m.Kind) || FailureModeIds.IsShear(m.Kind) || m.Kind == FailureModeKind.BondSustained)).Select(m => m.Kind).Distinct().Order()];
        (FailureModeKind Kind, double End)[] decisive = [.. kinds.Select(kind => (kind, results.OfType<FailureMode[]>().Min(r => FactorOf(r, kind)))).OrderBy(k => k.Item2).Take(Curves.Length)];
        foreach ((FailureModeKind kind, _) in decisive)
        {
            PagePoint? end = Curve(drawing, frame, Curves[curve++], places, [.. results.Select(r => r is null ? double.NaN : FactorOf(r, kind))], most);
            if (end is { } at)
            {
                LabelText name = LabelText.Plain(Name(kind));
                bool isAtTop = at.X < Width - 1;
                drawing.Label(name, isAtTop ? new(at.X + 3, at.Y - 4, Anchor.Start) : new(Width + 7, at.Y + 4, Anchor.Start), step: isAtTop ? -4 : 4);
            }
        }

        _ = Curve(drawing, frame, Ink.Envelope, places, [.. results.Select(r => r is null ? double.NaN : FactorOf(r, null))], most);
        drawing.Circle(Ink.PointMark, frame.X(current), frame.Y(Math.Min(here, most)), 4.5);
        drawing.Notes(
            $"Load case {shown.LoadCase}: how many times its actions each mode holds, and (heavy) all of them with their interaction. The dot: as it is, {NumberText.RoundedDown(here)} times at {shown.Length(current)} {shown.LengthUnit}.",
            shown.Verification.Attachment.Reinforcement is null
                ? "All else stays; the rules of detailing are not counted here. Where a curve ends within the frame, the method gives no answer."
                : "All else stays, also the bars; the rules of detailing are not counted here. Where a curve ends within the frame, the method gives no answer, or bars and breakout change places: only developed bars count.");
        return drawing;
    }

    /// <summary>The factor on the actions at which the modes of a kind, or all of them together, just hold; infinite without demand.</summary>
    private static double FactorOf(IEnumerable<FailureMode> modes, FailureModeKind? kind)
    {
        FailureMode[] strengths = [.. modes.Where(m => !FailureModeIds.IsDetailing(m.Kind) && (kind is null || m.Kind == kind))];
        if (kind is null)
        {
            return strengths.Any(m => m.Status == ModeStatus.NotCovered) ? double.NaN : LoadFactors.Of([.. strengths], Verdict.Holds) ?? double.PositiveInfinity;
        }

        return strengths.Any(m => m.Status == ModeStatus.NotCovered) ? double.NaN : strengths.Select(m => m.LoadFactor).DefaultIfEmpty(double.PositiveInfinity).Min();
    }

    /// <summary>Draws a curve as far as it lies in the frame; returns its right end.</summary>
    private static PagePoint? Curve(Drawing drawing, ChartFrame frame, Ink ink, List<double> places, double[] factors, double most)
    {
        PagePoint? end = null;
        var run = new List<PagePoint>();
        for (int i = 0; i <= places.Count; i++)
        {
            bool isInside = i < places.Count && factors[i] <= most;
            if (isInside)
            {
                if (run.Count == 0 && i > 0 && double.IsFinite(factors[i - 1]) && factors[i - 1] > most)
                {
                    run.Add(Crossing(i - 1));
                }

                run.Add(frame.At(places[i], factors[i]));
            }
            else if (run.Count > 0)
            {
                if (i < places.Count && double.IsFinite(factors[i]) && factors[i] > most)
                {
                    run.Add(Crossing(i - 1));
                }

                drawing.Polyline(ink, [.. run]);
                end = run[^1];
                run.Clear();
            }
        }

        return end;

        PagePoint Crossing(int i) =>
            frame.At(places[i] + ((places[i + 1] - places[i]) * (most - factors[i]) / (factors[i + 1] - factors[i])), most);
    }

    private static FailureMode[]? Verified(ShownCase shown, LoadCase loadCase, Attachment? attachment)
    {
        try
        {
            return attachment is null ? null : [.. shown.Verification.Again!(attachment, [loadCase], false).Modes];
        }
        catch (InputException)
        {
            // A fastener outside of the concrete, say: the curve has no point there.
            return null;
        }
    }

    private static Attachment WithEmbedment(ShownCase shown, double embedment)
    {
        Attachment attachment = shown.Verification.Attachment;
        return new(attachment.Concrete, attachment.Fastener with { EffectiveEmbedment = PrintedUnits.Length(embedment, shown.System) }, attachment.Layout) { Plate = attachment.Plate, ShearLugs = attachment.ShearLugs, Earthquake = attachment.Earthquake, Reinforcement = attachment.Reinforcement, HasRedundantFasteners = attachment.HasRedundantFasteners };
    }

    private static Attachment WithEdge(ShownCase shown, ConcreteSide side, double farther)
    {
        Attachment attachment = shown.Verification.Attachment;
        EdgeDistances edges = attachment.Concrete.Edges;
        UnitsNet.Length moved = PrintedUnits.Length(edges.Toward(side)!.Value.In(shown.System) + farther, shown.System);
        ConcreteMember member = attachment.Concrete with
        {
            Edges = side == ConcreteSide.PlusX ? edges with { PlusX = moved }
                : side == ConcreteSide.MinusX ? edges with { MinusX = moved }
                : side == ConcreteSide.PlusY ? edges with { PlusY = moved }
                : edges with { MinusY = moved },
        };
        return new(member, attachment.Fastener, attachment.Layout) { Plate = attachment.Plate, ShearLugs = attachment.ShearLugs, Earthquake = attachment.Earthquake, Reinforcement = attachment.Reinforcement, HasRedundantFasteners = attachment.HasRedundantFasteners };
    }

    /// <summary>The edge that is nearest to a fastener, and how near; infinite without one, and in an outline, whose sides cannot be moved for themselves.</summary>
    private static (ConcreteSide Side, double Distance) NearestEdge(ShownCase shown) => shown.Outline is not null ? (ConcreteSide.None, double.PositiveInfinity) : ConcreteSides.All
        .Select(side => (Side: side, Distance: (side.IsAlongX() ? shown.X : shown.Y).Min(place => side.Sign() * (side.PlaceIn(shown.Concrete) - place))))
        .MinBy(edge => edge.Distance);

    private static string Name(FailureModeKind kind) => kind switch
    {
        FailureModeKind.SteelTension => "steel, tension",
        FailureModeKind.ReinforcementTension => "reinforcement, tension",
        FailureModeKind.ReinforcementShear => "reinforcement, shear",
        FailureModeKind.ConcreteBreakoutTension => "breakout, tension",
        FailureModeKind.Pullout => "pullout",
        FailureModeKind.SideFaceBlowout => "blowout",
        FailureModeKind.Bond => "bond",
        FailureModeKind.BondSustained => "bond, sustained",
        FailureModeKind.SteelShear => "steel, shear",
        FailureModeKind.ConcreteBreakoutShear => "breakout toward an edge",
        FailureModeKind.ConcreteBreakoutParallel => "breakout along an edge",
        _ => "pryout",
    };

    private static string Description(ShownCase shown, CapacityVariable variable, ConcreteSide side, double current, double here, List<double> places, FailureMode[]?[] results)
    {
        string what = variable == CapacityVariable.Embedment ? "effective embedment" : $"distance of the nearest fastener from edge {side}";
        string At(int i) => results[i] is { } modes && FactorOf(modes, null) is var factor && double.IsFinite(factor) ? $"{NumberText.RoundedDown(factor)} times" : "no answer";
        return $"Load case {shown.LoadCase}: how many times the actions the attachment holds against {what}. {At(0)} at {NumberText.Computed(places[0])} {shown.LengthUnit}, {NumberText.RoundedDown(here)} times as it is at {NumberText.AsGiven(current)} {shown.LengthUnit}, {At(places.Count - 1)} at {NumberText.Computed(places[^1])} {shown.LengthUnit}.";
    }
}
