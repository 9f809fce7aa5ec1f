using System.Text.RegularExpressions;
using System.Xml.Linq;
using ConcreteAttach.Tests.Presentation.Drawings;

namespace ConcreteAttach.Tests.Presentation;

/// <summary>The HTML report as XML, and its words as the plain text writes them.</summary>
internal static partial class HtmlText
{
    public static readonly XNamespace Html = "http://www.w3.org/1999/xhtml";

    /// <summary>The document; the one line of its document type is no XML that we read.</summary>
    public static XElement Parsed(string html) => DrawingTests.Parsed(html[(html.IndexOf('\n', StringComparison.Ordinal) + 1)..]);

    /// <summary>All words: a symbol with a subscript as h_ef, elements parted by a blank where they stand apart.</summary>
    public static string Of(string html)
    {
        string marked = Subscript().Replace(html, m => $"{m.Groups[1].Value.Replace('′', '\'')}_{m.Groups[2].Value}");
        marked = marked.Replace("</td>", " </td>", StringComparison.Ordinal).Replace("</li>", " </li>", StringComparison.Ordinal).Replace("</p>", " </p>", StringComparison.Ordinal);
        return Parsed(marked).Element(Html + "body")!.Value;
    }

    [GeneratedRegex("<var>([^<]*)</var><sub>([^<]*)</sub>")]
    private static partial Regex Subscript();
}
