using ConcreteAttach.Quantities;

namespace ConcreteAttach.Presentation.Drawings;

/// <summary>An end of a dimension.</summary>
/// <param name="Value">Its place in the units of the method.</param>
/// <param name="Page">Its place along the chain on the page.</param>
/// <param name="From">Where its extension line starts, across the chain.</param>
internal readonly record struct Station(double Value, double Page, double From);

/// <summary>Dimension lines one after another, with oblique ticks. A label that finds no room on its own dimension stands farther out, with a leader.</summary>
internal sealed class DimensionChain(Drawing drawing, Func<double, string> text)
{
    private const double Tick = 3.5;
    private const double Overshoot = 5;
    private const double Lane = 15;

    /// <summary>Stations that differ by less than this share of the size are one.</summary>
    private const double SamePlace = 1e-6;

    /// <summary>More places along an axis than this get a dimension from the first to the last; the table has each.</summary>
    private const int MostPlaces = 9;

    /// <summary>The places of fasteners and edges along an axis, each once, ascending. Where there are too many, the outer ones.</summary>
    public static double[] Places(IEnumerable<double> fasteners, double low, double high)
    {
        double[] inner = [.. Distinct(fasteners)];
        inner = inner.Length > MostPlaces && !IsEven(inner) ? [inner[0], inner[^1]] : inner;
        return [.. new[] { low }.Where(double.IsFinite), .. inner, .. new[] { high }.Where(double.IsFinite)];
    }

    /// <summary>A chain along x below what it measures.</summary>
    public void Horizontal(IReadOnlyList<Station> stations, double y)
    {
        if (stations.Count < 2)
        {
            return;
        }

        foreach (Station station in stations)
        {
            drawing.Line(Ink.Extension, station.Page, station.From, station.Page, y + Overshoot);
            drawing.Line(Ink.Tick, station.Page - Tick, y + Tick, station.Page + Tick, y - Tick);
        }

        drawing.Line(Ink.Dimension, stations[0].Page, y, stations[^1].Page, y);
        var waiting = new List<(double Middle, LabelText Label)>();
        foreach ((double from, double to, LabelText label) in Dimensions(stations))
        {
            double middle = (from + to) / 2;
            bool fits = label.Width(Drawing.TextSize) + 8 <= to - from;
            if (!fits || !drawing.TryLabel(label, [new(middle, y - 4)]))
            {
                waiting.Add((middle, label));
            }
        }

        foreach ((double middle, LabelText label) in waiting)
        {
            // Lane by lane outward; in each lane on the spot first.
            double at = double.NaN;
            drawing.TryLabel(label, Lanes(middle, y + 4 + Lane).Select(place => { at = place.Y; return place; }));
            drawing.Line(Ink.LeaderLine, middle, y, middle, at - (0.8 * Drawing.TextSize) - 1);
        }
    }

    /// <summary>A chain along y to the right of what it measures.</summary>
    public void Vertical(IReadOnlyList<Station> stations, double x)
    {
        if (stations.Count < 2)
        {
            return;
        }

        foreach (Station station in stations)
        {
            drawing.Line(Ink.Extension, station.From, station.Page, x + Overshoot, station.Page);
            drawing.Line(Ink.Tick, x - Tick, station.Page + Tick, x + Tick, station.Page - Tick);
        }

        drawing.Line(Ink.Dimension, x, stations[0].Page, x, stations[^1].Page);
        foreach ((double from, double to, LabelText label) in Dimensions(stations))
        {
            double middle = (from + to) / 2, baseline = middle + (0.3 * Drawing.TextSize);
            double at = double.NaN;
            drawing.TryLabel(label, Columns(x + 7, baseline).Select(place => { at = place.X; return place; }));
            if (at > x + 7)
            {
                drawing.Line(Ink.LeaderLine, x, middle, at - 2, middle);
            }
        }
    }

    /// <summary>One dimension along x; its label above the line, else beside it, or as much higher as it takes.</summary>
    public static void Across(Drawing drawing, double from, double to, double y, double surface, LabelText label)
    {
        foreach (double x in new[] { from, to })
        {
            drawing.Line(Ink.Extension, x, surface, x, y - Overshoot);
            drawing.Line(Ink.Tick, x - Tick, y + Tick, x + Tick, y - Tick);
        }

        drawing.Line(Ink.Dimension, from, y, to, y);
        double beside = y + (0.3 * Drawing.TextSize);
        if (!drawing.TryLabel(label, [new((from + to) / 2, y - 5), new(Math.Max(from, to) + 6, beside, Anchor.Start), new(Math.Min(from, to) - 6, beside, Anchor.End)]))
        {
            drawing.Label(label, new((from + to) / 2, y - 5), step: -4);
        }
    }

    /// <summary>One dimension along y, its label to the right of the line; <paramref name="isBroken"/> where the drawing leaves out a part of it.</summary>
    public static void Upright(Drawing drawing, double top, double bottom, double x, double from, LabelText label, bool isBroken = false)
    {
        foreach (double y in new[] { top, bottom })
        {
            drawing.Line(Ink.Extension, from, y, x + Overshoot, y);
            drawing.Line(Ink.Tick, x - Tick, y + Tick, x + Tick, y - Tick);
        }

        if (isBroken)
        {
            Kinked(drawing, Ink.Dimension, x, top, bottom);
        }
        else
        {
            drawing.Line(Ink.Dimension, x, top, x, bottom);
        }

        _ = drawing.TryLabel(label, Columns(x + 7, ((top + bottom) / 2) + (0.3 * Drawing.TextSize)));
    }

    /// <summary>A line along y with a kink near its lower end, where a part of it is left out.</summary>
    public static void Kinked(Drawing drawing, Ink ink, double x, double top, double bottom)
    {
        double y = top + (0.86 * (bottom - top));
        drawing.Polyline(ink, [new(x, top), new(x, y - 7), new(x - 5, y - 3.5), new(x + 5, y + 3.5), new(x, y + 7), new(x, bottom)]);
    }

    private IEnumerable<(double From, double To, LabelText Label)> Dimensions(IReadOnlyList<Station> stations)
    {
        int start = 0;
        while (start < stations.Count - 1)
        {
            double first = stations[start + 1].Value - stations[start].Value;
            int end = start + 1;
            while (end < stations.Count - 1 && Math.Abs(stations[end + 1].Value - stations[end].Value - first) <= SamePlace * Math.Abs(first))
            {
                end++;
            }

            // Three equal spacings or more are one dimension: 4 × 6.
            if (end - start >= 3)
            {
                yield return (stations[start].Page, stations[end].Page, LabelText.Plain($"{QuantityText.Format(end - start)} × {text(first)}"));
                start = end;
            }
            else
            {
                yield return (stations[start].Page, stations[start + 1].Page, LabelText.Plain(text(Math.Abs(first))));
                start++;
            }
        }
    }

    private static IEnumerable<Place> Lanes(double x, double y)
    {
        for (double lane = y; ; lane += Lane)
        {
            yield return new(x, lane);
        }
    }

    private static IEnumerable<Place> Columns(double x, double y)
    {
        for (double column = x; ; column += 12)
        {
            yield return new(column, y, Anchor.Start);
        }
    }

    private static List<double> Distinct(IEnumerable<double> values)
    {
        double[] sorted = [.. values.Order()];
        double tolerance = SamePlace * Math.Max(sorted[^1] - sorted[0], Math.Abs(sorted[0]));
        var distinct = new List<double>();
        foreach (double value in sorted)
        {
            if (distinct.Count == 0 || value - distinct[^1] > tolerance)
            {
                distinct.Add(value);
            }
        }

        return distinct;
    }

    private static bool IsEven(double[] places)
    {
        double step = (places[^1] - places[0]) / (places.Length - 1);
        for (int i = 1; i < places.Length; i++)
        {
            if (Math.Abs(places[i] - places[i - 1] - step) > SamePlace * step)
            {
                return false;
            }
        }

        return true;
    }
}
