using System.Globalization;
using System.Xml.Linq;
using ConcreteAttach.Presentation.Drawings;

namespace ConcreteAttach.Tests.Presentation.Drawings;

/// <summary>
/// The boxes of the texts of an SVG document, as a reader's program would set them: from the elements alone. Character widths are those of DejaVu Serif, the widest of the usual serif
/// fonts, in thousandths of the font size (from the horizontal metrics of DejaVu 2.37); what is not in the table is taken as wide as an M.
/// </summary>
internal static class SvgText
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    private static readonly int[] Ascii = 
    [
        318, 402, 460, 838, 636, 950, 890, 275, 390, 390, 500, 838, 318, 338, 318, 337, 636, 636, 636, 636, 636, 636, 636, 636, 636, 636, 337, 337, 838, 838,
        838, 536, 1000, 722, 735, 765, 802, 730, 694, 799, 872, 395, 401, 747, 664, 1024, 875, 820, 673, 820, 753, 685, 667, 843, 722, 1028, 712, 660, 695,
        390, 337, 390, 838, 500, 500, 596, 640, 560, 640, 592, 370, 640, 644, 320, 310, 606, 320, 948, 644, 602, 640, 640, 478, 513, 402, 644, 565, 856, 564,
        565, 527, 636, 337, 636, 838,
    ];

    public static IEnumerable<(string Text, Box Box)> Boxes(string svg) => Boxes(XElement.Parse(svg));

    public static IEnumerable<(string Text, Box Box)> Boxes(XElement root)
    {
        double size = Number(root, "font-size", 12);
        foreach (XElement text in root.Descendants(Svg + "text"))
        {
            double own = Number(text, "font-size", size), x = Number(text, "x", 0), y = Number(text, "y", 0);
            double bold = text.Attribute("font-weight") is null ? 1 : 1.1;
            double width = 0, drop = 0, lowest = 0.24 * own;
            foreach (XNode node in text.Nodes())
            {
                double run = node is XElement span ? Number(span, "font-size", own) : own;
                drop += node is XElement shifted ? Number(shifted, "dy", 0) : 0;
                string letters = node is XElement element ? element.Value : ((XText)node).Value;
                width += bold * run * letters.Sum(c => c is >= ' ' and <= '~' ? Ascii[c - ' '] : c is '²' or '³' or '′' ? 401 : 1024) / 1000;
                lowest = Math.Max(lowest, drop + (0.24 * run));
            }

            double left = text.Attribute("text-anchor")?.Value switch { "middle" => x - (width / 2), "end" => x - width, _ => x };
            yield return (text.Value, new Box(left, y - (0.76 * own), left + width, y + lowest));
        }
    }

    private static double Number(XElement element, string attribute, double preset) =>
        element.Attribute(attribute) is { } given ? double.Parse(given.Value, CultureInfo.InvariantCulture) : preset;
}
