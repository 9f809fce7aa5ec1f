using ConcreteAttach.Attached;
using ConcreteAttach.Geometry;
using ConcreteAttach.Quantities;
using ConcreteAttach.Verification;
using UnitsNet;

namespace ConcreteAttach.Presentation.Drawings;

/// <summary>Bars of anchor reinforcement: on a plan squares for those along the fasteners and lines for those toward an edge, in a section lines.</summary>
internal static class ReinforcementMarks
{
    private const double End = 4;

    /// <summary>Whether bars take the place of breakout in tension in the load case that is shown.</summary>
    public static FailureMode? InPlaceOfCone(ShownCase shown) =>
        shown.Modes.FirstOrDefault(m => m.Kind == FailureModeKind.ReinforcementTension && m.Status is ModeStatus.Satisfied or ModeStatus.NotSatisfied);

    /// <summary>How deep bars for tension reach; 0 without.</summary>
    public static double Deepest(ShownCase shown) => shown.Verification.Attachment.Reinforcement?.Tension?.LowerEndDepth.In(shown.System) ?? 0;

    public static void Plan(Drawing drawing, ShownCase shown, PlanScale scale)
    {
        if (shown.Verification.Attachment.Reinforcement is not { } reinforcement)
        {
            return;
        }

        foreach (ShearReinforcement bars in reinforcement.Shear)
        {
            foreach (SurfacePoint[] line in Lines(shown, bars))
            {
                drawing.Polyline(Ink.Reinforcement, scale.At(line));
            }
        }

        if (reinforcement.Tension is { } tension)
        {
            double half = Math.Clamp(tension.Bars.Bar.Diameter.In(shown.System) / 2 * scale.PixelsPerUnit, 2.2, 6);
            foreach (FastenerPosition place in tension.Positions)
            {
                double x = scale.X(place.X.In(shown.System)), y = scale.Y(place.Y.In(shown.System));
                drawing.Rectangle(Ink.ReinforcementEnd, new(x - half, y - half, x + half, y + half));
                drawing.KeepFree(new(x - half, y - half, x + half, y + half));
            }
        }
    }

    /// <summary>Bars in a section along an axis; those that run across it are left out.</summary>
    public static void Section(Drawing drawing, ShownCase shown, PlanScale scale, bool isAlongX, double bottom)
    {
        if (shown.Verification.Attachment.Reinforcement is not { } reinforcement)
        {
            return;
        }

        if (reinforcement.Tension is { } tension)
        {
            double top = (tension.UpperEndDepth ?? shown.Verification.Attachment.Concrete.Cover ?? Materials.ConcreteMember.DefaultCover).In(shown.System);
            double lower = tension.LowerEndDepth.In(shown.System);
            bool isCut = lower > bottom;
            foreach (double place in tension.Positions.Select(p => (isAlongX ? p.X : p.Y).In(shown.System)).Distinct())
            {
                double x = scale.X(place), from = scale.Y(-top), to = scale.Y(-Math.Min(lower, bottom));
                drawing.Line(Ink.Reinforcement, x, from, x, to);
                EndOf(drawing, tension.UpperEnd, x, from);
                if (!isCut)
                {
                    EndOf(drawing, tension.LowerEnd, x, to);
                }
            }
        }

        foreach (ShearReinforcement bars in reinforcement.Shear.Where(b => b.Side.Number == 0 && b.Side.IsAlongX() == isAlongX))
        {
            double y = scale.Y(-bars.Depth.In(shown.System));
            foreach (SurfacePoint[] line in Lines(shown, bars))
            {
                double from = line.Min(p => isAlongX ? p.X : p.Y), to = line.Max(p => isAlongX ? p.X : p.Y);
                drawing.Line(Ink.Reinforcement, scale.X(from), y, scale.X(to), y);
            }
        }
    }

    /// <summary>What the bars are; null without.</summary>
    public static string? Note(ShownCase shown)
    {
        if (shown.Verification.Attachment.Reinforcement is not { } reinforcement)
        {
            return null;
        }

        var parts = new List<string>();
        if (reinforcement.Tension is { } tension)
        {
            parts.Add($"{QuantityText.Format(tension.Positions.Length)} {tension.Bars.Bar} for tension");
        }

        parts.AddRange(reinforcement.Shear.Select(b => $"{QuantityText.Format(b.IsEnclosing ? b.Legs : b.Places.Length)} {(b.IsEnclosing ? "legs " : "")}{b.Bars.Bar} for shear toward {b.Side.Words()}"));
        return $"Grey: anchor reinforcement, {string.Join("; ", parts)}.";
    }

    private static void EndOf(Drawing drawing, BarEnd end, double x, double y)
    {
        if (end == BarEnd.Hooked)
        {
            drawing.Line(Ink.Reinforcement, x, y, x + (2 * End), y);
        }
        else if (end == BarEnd.Headed)
        {
            drawing.Line(Ink.Reinforcement, x - End, y, x + End, y);
        }
    }

    /// <summary>Bars toward an edge, seen from above.</summary>
    private static IEnumerable<SurfacePoint[]> Lines(ShownCase shown, ShearReinforcement bars)
    {
        if (Directions(shown, bars.Side) is not { } axes)
        {
            yield break;
        }

        double Outward(int i) => (axes.NormalX * shown.X[i]) + (axes.NormalY * shown.Y[i]);
        double Along(int i) => shown.Outline is not null ? (-axes.NormalY * shown.X[i]) + (axes.NormalX * shown.Y[i]) : axes.NormalY == 0 ? shown.Y[i] : shown.X[i];
        SurfacePoint At(double outward, double along) => shown.Outline is null
            ? axes.NormalY == 0 ? new(axes.NormalX * outward, along) : new(along, axes.NormalY * outward)
            : new((axes.NormalX * outward) - (axes.NormalY * along), (axes.NormalY * outward) + (axes.NormalX * along));

        double inner = bars.InnerLength.In(shown.System);
        int[] fasteners = [.. Enumerable.Range(0, shown.X.Length)];
        if (bars.IsEnclosing)
        {
            double offset = (shown.Diameter + bars.Bars.Bar.Diameter.In(shown.System)) / 2;
            foreach (int i in fasteners)
            {
                double outward = Outward(i), along = Along(i);
                yield return [At(outward - inner, along - offset), At(outward, along - offset), At(outward + (0.8 * offset), along - (0.6 * offset)), At(outward + offset, along), At(outward + (0.8 * offset), along + (0.6 * offset)), At(outward, along + offset), At(outward - inner, along + offset)];
            }

            yield break;
        }

        double farthest = fasteners.Min(Outward);
        double cover = (bars.OuterCover ?? shown.Verification.Attachment.Concrete.Cover ?? Materials.ConcreteMember.DefaultCover).In(shown.System);
        foreach (Length place in bars.Places)
        {
            double along = place.In(shown.System);
            yield return [At(farthest - inner, along), At(axes.Place - cover, along)];
        }
    }

    /// <summary>The normal of a side, and how far out it lies; null where there is no such side.</summary>
    private static (double NormalX, double NormalY, double Place)? Directions(ShownCase shown, ConcreteSide side)
    {
        if (shown.Outline is not { } outline)
        {
            double sign = side.Sign();
            return side.IsAlongX() ? (sign, 0, sign * side.PlaceIn(shown.Concrete)) : (0, sign, sign * side.PlaceIn(shown.Concrete));
        }

        foreach (OutlineSide of in outline.Sides)
        {
            if (of.Name() == side)
            {
                return (of.NormalX, of.NormalY, (of.NormalX * of.StartX) + (of.NormalY * of.StartY));
            }
        }

        return null;
    }
}
