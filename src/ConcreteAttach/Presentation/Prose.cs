using System.Text;

namespace ConcreteAttach.Presentation;

/// <summary>Sentences with symbols in them: <c>h_ef</c> in plain text becomes an italic letter with a subscript.</summary>
internal static class Prose
{
    /// <summary>The sentence as HTML.</summary>
    public static string Html(string text)
    {
        if (!text.Contains('_', StringComparison.Ordinal))
        {
            return Markup.Escaped(text);
        }

        var html = new StringBuilder(text.Length + 64);
        int start = 0;
        for (int at = 0; at < text.Length; at++)
        {
            if (SubscriptOf(text, at) is not { } place)
            {
                continue;
            }

            html.Append(Markup.Escaped(text[start..at])).Append("<var>").Append(text[at]).Append(place.Start > at + 2 ? "′" : "").Append("</var><sub>");
            html.Append(Markup.Escaped(text[place.Start..place.End].Replace('_', ','))).Append("</sub>");
            start = place.End;
            at = place.End - 1;
        }

        return html.Append(Markup.Escaped(text[start..])).ToString();
    }

    /// <summary>Where the subscript of a symbol stands that starts here: one letter that no Latin letter, digit or underline precedes, a prime perhaps, an underline.</summary>
    private static (int Start, int End)? SubscriptOf(string text, int at)
    {
        if (!char.IsLetter(text[at]) || (at > 0 && (char.IsAsciiLetterOrDigit(text[at - 1]) || text[at - 1] == '_')))
        {
            return null;
        }

        int underline = at + 1 < text.Length && text[at + 1] == '\'' ? at + 2 : at + 1;
        if (underline >= text.Length || text[underline] != '_')
        {
            return null;
        }

        int end = underline + 1;
        while (end < text.Length && (char.IsAsciiLetterOrDigit(text[end]) || (text[end] is ',' or '_' && end + 1 < text.Length && char.IsAsciiLetterOrDigit(text[end + 1]))))
        {
            end++;
        }

        return end > underline + 1 ? (underline + 1, end) : null;
    }
}
