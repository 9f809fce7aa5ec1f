using System.Globalization;
using System.Text;

namespace ConcreteAttach.Presentation.Drawings;

/// <summary>A label that has found its place.</summary>
internal sealed record PlacedLabel(LabelText Text, Place At, double Size, string Colour, bool IsBold, Box Box);

/// <summary>
/// A figure while it is drawn: lines and areas by ink, and labels that never overlap each other or what must stay visible. It grows to what is drawn on it.
/// </summary>
/// <remarks>Lengths are pixels of the page. Everything is rounded to a tenth of a pixel, so that the same input gives the same bytes on every machine.</remarks>
internal sealed class Drawing
{
    /// <summary>Size of the text of a figure.</summary>
    public const double TextSize = 12.5;

    /// <summary>Size of the notes under a figure.</summary>
    public const double NoteSize = 11.5;

    private const double Margin = 6;

    private const double HeadLength = 8;

    private readonly StringBuilder?[] _inks = new StringBuilder?[Enum.GetValues<Ink>().Length];
    private readonly List<PlacedLabel> _labels = [];
    private readonly List<Box> _keptFree = [];
    private double _left = double.PositiveInfinity, _top = double.PositiveInfinity, _right = double.NegativeInfinity, _bottom = double.NegativeInfinity;

    /// <param name="title">What the figure is, for readers who cannot see it.</param>
    /// <param name="description">What it shows, with its numbers, for the same readers.</param>
    public Drawing(string title, string description)
    {
        Title = title;
        Description = description;
    }

    public string Title { get; }

    public string Description { get; }

    public IReadOnlyList<PlacedLabel> Labels => _labels;

    /// <summary>What has been drawn so far.</summary>
    public Box Extent => new(_left, _top, _right, _bottom);

    /// <summary>A number of a figure: a tenth of a pixel.</summary>
    public static string Number(double value)
    {
        double rounded = Math.Round(value, 1) + 0.0; // + 0.0: no -0
        return rounded.ToString("0.#", CultureInfo.InvariantCulture);
    }

    public void Line(Ink ink, double x1, double y1, double x2, double y2) => Polyline(ink, [new(x1, y1), new(x2, y2)]);

    public void Polyline(Ink ink, ReadOnlySpan<PagePoint> points, bool isClosed = false)
    {
        StringBuilder path = PathOf(ink);
        for (int i = 0; i < points.Length; i++)
        {
            Append(path, i == 0 ? 'M' : 'L', points[i]);
        }

        if (isClosed)
        {
            path.Append('Z');
        }
    }

    public void Rectangle(Ink ink, in Box box) =>
        Polyline(ink, [new(box.Left, box.Top), new(box.Right, box.Top), new(box.Right, box.Bottom), new(box.Left, box.Bottom)], isClosed: true);

    public void Circle(Ink ink, double x, double y, double radius)
    {
        // Rounded before it is doubled: two arcs whose ends are nearer than the diameter make a lens.
        radius = Math.Round(radius, 1);
        StringBuilder path = PathOf(ink);
        Append(path, 'M', new(Math.Round(x, 1) - radius, y));
        string r = Number(radius);
        string across = Number(2 * radius);
        path.Append('a').Append(r).Append(' ').Append(r).Append(" 0 1 0 ").Append(across).Append(" 0a").Append(r).Append(' ').Append(r).Append(" 0 1 0 -").Append(across).Append(" 0Z");
        Reach(x, y - radius);
        Reach(x + radius, y + radius);
    }

    /// <summary>An arrow that ends at its second point.</summary>
    public void Arrow(double x1, double y1, double x2, double y2, Ink line = Ink.ForceLine, Ink head = Ink.ForceHead)
    {
        double length = Math.Sqrt(((x2 - x1) * (x2 - x1)) + ((y2 - y1) * (y2 - y1)));
        if (length < 1e-6)
        {
            return;
        }

        double ux = (x2 - x1) / length, uy = (y2 - y1) / length;
        double back = Math.Min(HeadLength, length);
        double bx = x2 - (back * ux), by = y2 - (back * uy);
        Line(line, x1, y1, bx, by);
        Polyline(head, [new(x2, y2), new(bx - (0.42 * back * uy), by + (0.42 * back * ux)), new(bx + (0.42 * back * uy), by - (0.42 * back * ux))], isClosed: true);
        KeepFree(Box.About((x2 + bx) / 2, (y2 + by) / 2, back / 2));
    }

    /// <summary>Parallel lines at 45 degrees within a convex ring of points.</summary>
    public void Hatch(Ink ink, IReadOnlyList<PagePoint> ring, double spacing)
    {
        if (ring.Count < 3)
        {
            return;
        }

        double least = ring.Min(p => p.X + p.Y), most = ring.Max(p => p.X + p.Y);
        Span<PagePoint> cut = stackalloc PagePoint[2];
        for (double sum = least + (spacing / 2); sum < most; sum += spacing)
        {
            int count = 0;
            for (int i = 0; i < ring.Count; i++)
            {
                PagePoint a = ring[i], b = ring[(i + 1) % ring.Count];
                double da = a.X + a.Y - sum, db = b.X + b.Y - sum;
                if ((da < 0) != (db < 0) && count < 2)
                {
                    double t = da / (da - db);
                    cut[count++] = new(a.X + (t * (b.X - a.X)), a.Y + (t * (b.Y - a.Y)));
                }
            }

            if (count == 2)
            {
                Polyline(ink, cut);
            }
        }
    }

    /// <summary>No label will cover this.</summary>
    public void KeepFree(in Box box) => _keptFree.Add(box);

    /// <summary>Sets a label at the first place where it covers nothing; false where there is none.</summary>
    public bool TryLabel(LabelText text, IEnumerable<Place> places, double size = TextSize, string colour = "#000", bool isBold = false)
    {
        double width = text.Width(size) * (isBold ? 1.12 : 1);
        bool hasSubscript = text.Runs.Any(run => run.Style == RunStyle.Subscript);
        foreach (Place place in places)
        {
            Box box = BoxOf(width, place, size, hasSubscript);
            if (IsFree(box.Grown(0.5)))
            {
                Set(new(text, place, size, colour, isBold, box));
                return true;
            }
        }

        return false;
    }

    /// <summary>Sets a label at its place, or below it (a step at a time) where that is taken: it always finds one.</summary>
    public void Label(LabelText text, Place place, double size = TextSize, string colour = "#000", bool isBold = false, double step = 4) =>
        _ = TryLabel(text, Downward(place, step), size, colour, isBold);

    public bool IsFree(in Box box)
    {
        foreach (Box kept in _keptFree)
        {
            if (kept.Overlaps(box))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>Lines of text under all that has been drawn, broken at blanks to the width of the figure.</summary>
    public void Notes(params ReadOnlySpan<string> notes)
    {
        double width = Math.Max(_right - _left, 300);
        double y = _bottom + 20;
        double left = _left;
        foreach (string note in notes)
        {
            foreach (string line in Broken(note, width))
            {
                Label(LabelText.WithSymbols(line), new(left, y, Anchor.Start), NoteSize);
                y += NoteSize * 1.35;
            }

            y += 2;
        }
    }

    /// <summary>The figure as an SVG document of its own.</summary>
    /// <param name="prefix">Stands before each id, so that a page may hold several figures.</param>
    public string ToSvg(string prefix = "")
    {
        double left = Math.Floor(_left - Margin), top = Math.Floor(_top - Margin);
        string width = Number(Math.Ceiling(_right + Margin) - left), height = Number(Math.Ceiling(_bottom + Margin) - top);
        var svg = new StringBuilder(4096);
        svg.Append("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"").Append(width).Append("\" height=\"").Append(height)
            .Append("\" viewBox=\"").Append(Number(left)).Append(' ').Append(Number(top)).Append(' ').Append(width).Append(' ').Append(height)
            .Append("\" role=\"img\" aria-labelledby=\"").Append(prefix).Append("title ").Append(prefix).Append("desc\" font-family=\"serif\" font-size=\"").Append(Number(TextSize)).Append("\">\n");
        svg.Append("<title id=\"").Append(prefix).Append("title\">").Append(Markup.Escaped(Title)).Append("</title>\n");
        svg.Append("<desc id=\"").Append(prefix).Append("desc\">").Append(Markup.Escaped(Description)).Append("</desc>\n");
        svg.Append("<rect x=\"").Append(Number(left)).Append("\" y=\"").Append(Number(top)).Append("\" width=\"").Append(width).Append("\" height=\"").Append(height).Append("\" fill=\"#fff\"/>\n");
        for (int ink = 0; ink < _inks.Length; ink++)
        {
            if (_inks[ink] is { } path)
            {
                svg.Append("<path ").Append(Inks.Attributes((Ink)ink)).Append(" d=\"").Append(path).Append("\"/>\n");
            }
        }

        // White about the letters keeps them legible where a line runs behind.
        svg.Append("<g stroke=\"#fff\" stroke-width=\"3\" stroke-linejoin=\"round\" paint-order=\"stroke\">\n");
        foreach (PlacedLabel label in _labels)
        {
            AppendLabel(svg, label);
        }

        return svg.Append("</g>\n</svg>\n").ToString();
    }

    private static Box BoxOf(double width, Place place, double size, bool hasSubscript)
    {
        double left = place.Anchor switch { Anchor.Start => place.X, Anchor.Middle => place.X - (width / 2), _ => place.X - width };
        return new(left, place.Y - (0.8 * size), left + width, place.Y + ((hasSubscript ? 0.45 : 0.27) * size));
    }

    private static IEnumerable<Place> Downward(Place place, double step)
    {
        for (double y = place.Y; ; y += step)
        {
            yield return place with { Y = y };
        }
    }

    private static IEnumerable<string> Broken(string note, double width)
    {
        var line = new StringBuilder();
        foreach (string word in note.Split(' '))
        {
            if (line.Length > 0 && LabelText.WithSymbols($"{line} {word}").Width(NoteSize) > width)
            {
                yield return line.ToString();
                line.Clear();
            }

            line.Append(line.Length == 0 ? "" : " ").Append(word);
        }

        yield return line.ToString();
    }

    private static void AppendLabel(StringBuilder svg, PlacedLabel label)
    {
        svg.Append("<text x=\"").Append(Number(label.At.X)).Append("\" y=\"").Append(Number(label.At.Y)).Append('"');
        svg.Append(label.At.Anchor switch { Anchor.Start => "", Anchor.Middle => " text-anchor=\"middle\"", _ => " text-anchor=\"end\"" });
        svg.Append(label.Size == TextSize ? "" : $" font-size=\"{Number(label.Size)}\"");
        svg.Append(label.Colour == "#000" ? "" : $" fill=\"{label.Colour}\"");
        svg.Append(label.IsBold ? " font-weight=\"bold\"" : "").Append('>');
        double drop = 0;
        foreach (LabelRun run in label.Text.Runs)
        {
            double wanted = run.Style == RunStyle.Subscript ? 0.25 * label.Size : 0;
            string shift = wanted == drop ? "" : $" dy=\"{Number(wanted - drop)}\"";
            string style = run.Style switch
            {
                RunStyle.Subscript => $" font-size=\"{Number(LabelText.SubscriptSize * label.Size)}\"",
                RunStyle.Italic => " font-style=\"italic\"",
                _ => "",
            };
            drop = wanted;
            string text = Markup.Escaped(run.Text);
            svg.Append(shift.Length + style.Length == 0 ? text : $"<tspan{shift}{style}>{text}</tspan>");
        }

        svg.Append("</text>\n");
    }

    private void Set(PlacedLabel label)
    {
        _labels.Add(label);
        _keptFree.Add(label.Box);
        Reach(label.Box.Left, label.Box.Top);
        Reach(label.Box.Right, label.Box.Bottom);
    }

    private StringBuilder PathOf(Ink ink) => _inks[(int)ink] ??= new StringBuilder();

    private void Append(StringBuilder path, char command, PagePoint point)
    {
        path.Append(command).Append(Number(point.X)).Append(' ').Append(Number(point.Y));
        Reach(point.X, point.Y);
    }

    private void Reach(double x, double y)
    {
        _left = Math.Min(_left, x);
        _right = Math.Max(_right, x);
        _top = Math.Min(_top, y);
        _bottom = Math.Max(_bottom, y);
    }
}
