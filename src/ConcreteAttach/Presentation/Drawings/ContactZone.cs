using System.Collections.Immutable;
using ConcreteAttach.Geometry;
using ConcreteAttach.Quantities;

namespace ConcreteAttach.Presentation.Drawings;

/// <summary>Where a plate presses on the concrete, and the neutral line at which the pressure ends.</summary>
internal static class ContactZone
{
    /// <summary>How far the neutral line runs beyond the plate.</summary>
    private const double Overshoot = 14;

    /// <summary>Hatches the zone; returns whether a neutral line runs through the plate.</summary>
    public static bool Draw(Drawing drawing, ShownCase shown, PlanScale scale)
    {
        if (shown.Contact is not { Zone.IsEmpty: false } contact || shown.Verification.Attachment.Plate is not { } plate)
        {
            return false;
        }

        PagePoint[] zone = Ring(contact.Zone, shown, scale), outline = Ring(plate.Outline.Vertices, shown, scale);
        drawing.Polyline(Ink.ContactFill, zone, isClosed: true);
        drawing.Hatch(Ink.ContactHatch, zone, 7);

        // The plane of pressure cuts the outline in one straight line: the sides of the zone that are no part of the outline.
        int longest = -1;
        double length = 1;
        for (int i = 0; i < zone.Length; i++)
        {
            PagePoint a = zone[i], b = zone[(i + 1) % zone.Length];
            double own = Math.Sqrt(((b.X - a.X) * (b.X - a.X)) + ((b.Y - a.Y) * (b.Y - a.Y)));
            if (own > length && !LiesOn(outline, (a.X + b.X) / 2, (a.Y + b.Y) / 2))
            {
                (longest, length) = (i, own);
            }
        }

        if (longest < 0)
        {
            return false;
        }

        PagePoint from = zone[longest], to = zone[(longest + 1) % zone.Length];
        double ux = (to.X - from.X) / length * Overshoot, uy = (to.Y - from.Y) / length * Overshoot;
        drawing.Line(Ink.NeutralLine, from.X - ux, from.Y - uy, to.X + ux, to.Y + uy);
        return true;
    }

    private static PagePoint[] Ring(ImmutableArray<FastenerPosition> points, ShownCase shown, PlanScale scale) =>
        [.. points.Select(p => scale.At(p.X.In(shown.System), p.Y.In(shown.System)))];

    private static bool LiesOn(PagePoint[] outline, double x, double y)
    {
        for (int i = 0; i < outline.Length; i++)
        {
            PagePoint a = outline[i], b = outline[(i + 1) % outline.Length];
            if (Segments.Distance(a.X, a.Y, b.X, b.Y, x, y) < 0.01)
            {
                return true;
            }
        }

        return false;
    }
}
