using System.Text;

namespace ConcreteAttach.Presentation;

/// <summary>Text in HTML, MathML and SVG.</summary>
internal static class Markup
{
    /// <summary>Text in which nothing is read as markup, in content and in attributes. Characters that XML does not know are left out.</summary>
    public static string Escaped(string text)
    {
        if (!text.AsSpan().ContainsAny(Special) && !HasControl(text))
        {
            return text;
        }

        var escaped = new StringBuilder(text.Length + 16);
        for (int i = 0; i < text.Length; i++)
        {
            char c = text[i];
            switch (c)
            {
                case '&':
                    escaped.Append("&amp;");
                    break;
                case '<':
                    escaped.Append("&lt;");
                    break;
                case '>':
                    escaped.Append("&gt;");
                    break;
                case '"':
                    escaped.Append("&quot;");
                    break;
                case '\r':
                    escaped.Append(i + 1 < text.Length && text[i + 1] == '\n' ? "" : " ");
                    break;
                case '\n' or '\t':
                    escaped.Append(' ');
                    break;
                default:
                    bool isPair = char.IsHighSurrogate(c) && i + 1 < text.Length && char.IsLowSurrogate(text[i + 1]);
                    if (isPair)
                    {
                        escaped.Append(c).Append(text[++i]);
                    }
                    else if (!char.IsSurrogate(c) && !char.IsControl(c) && c is not ('\uFFFE' or '\uFFFF'))
                    {
                        escaped.Append(c);
                    }

                    break;
            }
        }

        return escaped.ToString();
    }

    private static ReadOnlySpan<char> Special => "&<>\"\uFFFE\uFFFF";

    private static bool HasControl(string text)
    {
        foreach (char c in text)
        {
            if (char.IsControl(c) || char.IsSurrogate(c))
            {
                return true;
            }
        }

        return false;
    }
}
