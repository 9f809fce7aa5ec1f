using ConcreteAttach.Quantities;
using ConcreteAttach.Verification;

namespace ConcreteAttach.Presentation.Drawings;

/// <summary>Fasteners on a plan: filled where they are in tension, with their numbers, and arrows for their shear.</summary>
internal static class FastenerMarks
{
    private const double ShortestArrow = 20;
    private const double LongestArrow = 46;

    /// <summary>Beyond this many fasteners the numbers would be all that is seen.</summary>
    private const int MostNumbers = 150;

    public static double Radius(ShownCase shown, PlanScale scale) => Math.Clamp(shown.Diameter / 2 * scale.PixelsPerUnit, 3.2, 9);

    /// <summary>An arrow for the shear on each fastener; returns whether there is one.</summary>
    public static bool ShearArrows(Drawing drawing, ShownCase shown, PlanScale scale)
    {
        double largest = shown.Forces.Max(f => Size(shown, f));
        if (largest <= 0)
        {
            return false;
        }

        foreach (FastenerForces force in shown.Forces)
        {
            double size = Size(shown, force);
            if (size > Calculation.Limit.Tolerance * largest)
            {
                double length = ShortestArrow + ((LongestArrow - ShortestArrow) * size / largest);
                double x = scale.X(shown.X[force.Index]), y = scale.Y(shown.Y[force.Index]);
                drawing.Arrow(x, y, x + (length * force.ShearX.In(shown.System) / size), y - (length * force.ShearY.In(shown.System) / size));
            }
        }

        return true;
    }

    /// <summary>The marks, then their numbers where they find room.</summary>
    public static void Draw(Drawing drawing, ShownCase shown, PlanScale scale, bool hasArrows)
    {
        double radius = Radius(shown, scale);
        for (int i = 0; i < shown.X.Length; i++)
        {
            double x = scale.X(shown.X[i]), y = scale.Y(shown.Y[i]);
            drawing.Circle(shown.IsInTension(i) ? Ink.Steel : Ink.OpenFastener, x, y, radius);
            drawing.KeepFree(Box.About(x, y, radius));
        }

        for (int i = 0; i < shown.X.Length && shown.X.Length <= MostNumbers; i++)
        {
            _ = drawing.TryLabel(LabelText.Plain(QuantityText.Format(i)), About(scale.X(shown.X[i]), scale.Y(shown.Y[i]), radius + (hasArrows ? 3 : 2)));
        }
    }

    /// <summary>What the marks mean.</summary>
    public static string Note(ShownCase shown)
    {
        int inTension = Enumerable.Range(0, shown.X.Length).Count(shown.IsInTension);
        string fasteners = inTension == 0 ? "No fastener is in tension." : inTension == shown.X.Length ? "All fasteners are in tension." : "Filled: fasteners in tension.";
        return shown.Forces.Any(f => Size(shown, f) > 0) ? $"{fasteners} Arrows: shear on the fasteners." : fasteners;
    }

    /// <summary>Shear on a fastener.</summary>
    public static double Size(ShownCase shown, FastenerForces force)
    {
        double x = force.ShearX.In(shown.System), y = force.ShearY.In(shown.System);
        return Math.Sqrt((x * x) + (y * y));
    }

    /// <summary>Places about a mark, the upper right one first.</summary>
    public static IEnumerable<Place> About(double x, double y, double distance)
    {
        const double Rise = 0.35 * Drawing.TextSize;
        foreach (double away in new[] { distance, distance + 5, distance + 10 })
        {
            yield return new(x + away, y - away, Anchor.Start);
            yield return new(x - away, y - away, Anchor.End);
            yield return new(x + away, y + away + (2 * Rise), Anchor.Start);
            yield return new(x - away, y + away + (2 * Rise), Anchor.End);
            yield return new(x, y - away - 2);
            yield return new(x, y + away + (2.4 * Rise));
            yield return new(x + away + 2, y + Rise, Anchor.Start);
            yield return new(x - away - 2, y + Rise, Anchor.End);
        }
    }
}
