using ConcreteAttach.Attached;
using ConcreteAttach.Quantities;
using UnitsNet;

namespace ConcreteAttach.Presentation.Drawings;

/// <summary>The shear lugs on plans and sections.</summary>
internal static class LugMarks
{
    /// <summary>What the plan says of them.</summary>
    public const string Note = "Grey: shear lugs below the plate.";

    /// <summary>Draws each lug and its stiffeners as they stand below the plate, seen from above.</summary>
    public static void OnPlan(Drawing drawing, ShownCase shown, PlanScale scale)
    {
        foreach (ShearLug lug in shown.Verification.Attachment.ShearLugs)
        {
            (double x, double y) = Middle(lug, shown);
            (double alongX, double alongY) = Size(lug, shown);
            Bar(drawing, scale, x - (alongX / 2), x + (alongX / 2), y - (alongY / 2), y + (alongY / 2));
            foreach (Length place in lug.Stiffeners?.Places ?? [])
            {
                double at = place.In(shown.System), half = lug.Stiffeners!.Thickness.In(shown.System) / 2, reach = (lug.Thickness.In(shown.System) / 2) + lug.Stiffeners.Length.In(shown.System);
                if (lug.Takes == ShearAxis.X)
                {
                    Bar(drawing, scale, x - reach, x + reach, y + at - half, y + at + half);
                }
                else
                {
                    Bar(drawing, scale, x + at - half, x + at + half, y - reach, y + reach);
                }
            }
        }
    }

    /// <summary>Draws each lug from the underside of the plate down, with the depth of the deepest below the surface.</summary>
    public static void OnSection(Drawing drawing, ShownCase shown, PlanScale scale, bool isAlongX, double underside)
    {
        foreach (ShearLug lug in shown.Verification.Attachment.ShearLugs)
        {
            (double x, double y) = Middle(lug, shown);
            (double alongX, double alongY) = Size(lug, shown);
            (double middle, double size) = isAlongX ? (x, alongX) : (y, alongY);
            var box = new Box(scale.X(middle - (size / 2)), underside, scale.X(middle + (size / 2)), scale.Y(-Embedment(lug, shown)));
            drawing.Rectangle(Ink.BarFill, box);
            drawing.Rectangle(Ink.BarOutline, box);
            drawing.KeepFree(box);
        }

        if (shown.Verification.Attachment.ShearLugs.MaxBy(lug => lug.Depth) is { } deepest)
        {
            (double x, double y) = Middle(deepest, shown);
            double place = scale.X(isAlongX ? x : y), foot = scale.Y(-Embedment(deepest, shown));
            _ = drawing.TryLabel(LabelText.WithSymbols($"{{h_sl}} = {shown.Length(Embedment(deepest, shown))}"), [new(place, foot + 14), new(place, foot + 20)]);
        }
    }

    /// <summary>How far the deepest lug reaches below the surface; 0 without.</summary>
    public static double Deepest(ShownCase shown) => shown.Verification.Attachment.ShearLugs.Select(lug => Embedment(lug, shown)).DefaultIfEmpty(0).Max();

    /// <summary>How far a lug reaches below the surface.</summary>
    public static double Embedment(ShearLug lug, ShownCase shown) => lug.Depth.In(shown.System) - (shown.Verification.Attachment.Plate?.GroutThickness.In(shown.System) ?? 0);

    private static (double X, double Y) Middle(ShearLug lug, ShownCase shown) => (lug.At.X.In(shown.System), lug.At.Y.In(shown.System));

    /// <summary>Size along x and along y.</summary>
    private static (double AlongX, double AlongY) Size(ShearLug lug, ShownCase shown)
    {
        (double thickness, double width) = (lug.Thickness.In(shown.System), lug.Width.In(shown.System));
        return lug.Takes == ShearAxis.X ? (thickness, width) : (width, thickness);
    }

    private static void Bar(Drawing drawing, PlanScale scale, double left, double right, double bottom, double top)
    {
        var box = new Box(scale.X(left), scale.Y(top), scale.X(right), scale.Y(bottom));
        drawing.Rectangle(Ink.BarFill, box);
        drawing.Rectangle(Ink.BarOutline, box);
        drawing.KeepFree(box);
    }
}
