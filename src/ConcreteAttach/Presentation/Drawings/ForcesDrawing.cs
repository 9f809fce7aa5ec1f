using ConcreteAttach.Geometry;
using ConcreteAttach.Quantities;
using ConcreteAttach.Verification;
using UnitsNet;

namespace ConcreteAttach.Presentation.Drawings;

/// <summary>The forces on the fasteners with their numbers: tension as a ring, shear as an arrow; contact zone, neutral line and the resultants under a plate.</summary>
public static class ForcesDrawing
{
    private const double Width = 330;
    private const double Height = 250;
    private const double LargestRing = 20;

    /// <summary>Draws the forces as an SVG document.</summary>
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
        var drawing = new Drawing("Forces on the fasteners", Description(shown));
        SurfacePoint[] plate = shown.Verification.Attachment.Plate is { } p ? [.. p.Outline.Vertices.Select(v => new SurfacePoint(v.X.In(shown.System), v.Y.In(shown.System)))] : [];
        PlanScale scale = PlanScale.Fit(Window(shown, plate), Width, Height);
        bool hasNeutralLine = ContactZone.Draw(drawing, shown, scale);
        if (plate.Length > 0)
        {
            drawing.Polyline(Ink.Plate, scale.At(plate), isClosed: true);
        }

        Rings(drawing, shown, scale);
        bool hasArrows = FastenerMarks.ShearArrows(drawing, shown, scale);
        FastenerMarks.Draw(drawing, shown, scale, hasArrows);
        Resultants(drawing, shown, scale);
        bool hasAll = Numbers(drawing, shown, scale);
        drawing.Notes(
        [
            .. new[]
            {
                $"Forces in {shown.ForceUnit}. {{N}}: tension, the ring grows with it; {{V}}: shear, along the arrow.{(hasAll ? "" : " Numbers that find no room stand in the table.")}",
                ContactNote(shown, hasNeutralLine),
            }.Where(note => note.Length > 0),
        ]);
        return drawing;
    }

    private static Rectangle Window(ShownCase shown, SurfacePoint[] plate)
    {
        Rectangle extent = Layouts.ExtentOf([.. shown.X, .. plate.Select(p => p.X)], [.. shown.Y, .. plate.Select(p => p.Y)]);
        double around = Math.Max(Math.Max(extent.Width, extent.Height) * (plate.Length > 0 ? 0.06 : 0.22), 3 * shown.Diameter);
        return new(extent.Left - around, extent.Right + around, extent.Bottom - around, extent.Top + around);
    }

    private static void Rings(Drawing drawing, ShownCase shown, PlanScale scale)
    {
        for (int i = 0; i < shown.X.Length; i++)
        {
            if (shown.IsInTension(i))
            {
                drawing.Circle(Ink.AreaOutline, scale.X(shown.X[i]), scale.Y(shown.Y[i]), RingOf(shown, scale, i));
            }
        }
    }

    /// <summary>Radius of the ring about a fastener; that of its mark without tension.</summary>
    private static double RingOf(ShownCase shown, PlanScale scale, int fastener)
    {
        double least = FastenerMarks.Radius(shown, scale);
        double share = shown.IsInTension(fastener) ? shown.Forces[fastener].Tension.In(shown.System) / shown.Forces.Max(f => f.Tension.In(shown.System)) : 0;
        return least + ((LargestRing - least) * Math.Sqrt(share));
    }

    private static void Resultants(Drawing drawing, ShownCase shown, PlanScale scale)
    {
        foreach ((FastenerPosition? place, string symbol) in new[] { (shown.Contact?.CompressionAt, "C"), (shown.Contact?.TensionAt, "T") })
        {
            if (place is { } at)
            {
                double x = scale.X(at.X.In(shown.System)), y = scale.Y(at.Y.In(shown.System));
                drawing.Line(Ink.Tick, x - 5, y - 5, x + 5, y + 5);
                drawing.Line(Ink.Tick, x - 5, y + 5, x + 5, y - 5);
                drawing.KeepFree(Box.About(x, y, 5));
                _ = drawing.TryLabel(LabelText.WithSymbols($"{{{symbol}}}"), FastenerMarks.About(x, y, 6), isBold: true);
            }
        }
    }

    /// <summary>The numbers at the fasteners; returns whether all found room.</summary>
    private static bool Numbers(Drawing drawing, ShownCase shown, PlanScale scale)
    {
        bool hasAll = shown.X.Length <= 40;
        for (int i = 0; i < shown.X.Length && shown.X.Length <= 40; i++)
        {
            int fastener = i;
            double x = scale.X(shown.X[i]), y = scale.Y(shown.Y[i]), shear = FastenerMarks.Size(shown, shown.Forces[i]);
            double axial = shown.Forces[i].Tension.In(shown.System);
            IEnumerable<Place> places = new[] { 1.0, 8, 18, 30, 44 }.SelectMany(more => FastenerMarks.About(x, y, (0.75 * RingOf(shown, scale, fastener)) + more));
            hasAll &= axial == 0 || drawing.TryLabel(LabelText.WithSymbols($"{{N}} {NumberText.Computed(axial)}"), places);
            hasAll &= shear == 0 || drawing.TryLabel(LabelText.WithSymbols($"{{V}} {NumberText.Computed(shear)}"), places, colour: Inks.Accent);
        }

        return hasAll;
    }

    private static string ContactNote(ShownCase shown, bool hasNeutralLine)
    {
        if (shown.Contact is not { CompressionAt: not null } contact)
        {
            return "";
        }

        string tension = contact.TensionAt is null ? "" : $", {{T}} = {shown.Force(contact.Tension.In(shown.System))}";
        string line = hasNeutralLine ? " The long dashes are the neutral line." : "";
        return $"Hatched: contact with the concrete, {{C}} = {shown.Force(contact.Compression.In(shown.System))}{tension}.{line}";
    }

    private static string Description(ShownCase shown) =>
        $"Load case {shown.LoadCase}: " + string.Join("; ", shown.Forces.Select(f => $"fastener {QuantityText.Format(f.Index)} tension {NumberText.Computed(f.Tension.In(shown.System))}, shear {NumberText.Computed(FastenerMarks.Size(shown, f))}")) + $" ({shown.ForceUnit}).";
}
