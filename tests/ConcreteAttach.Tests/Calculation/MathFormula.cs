using System.Text;
using System.Xml.Linq;

namespace ConcreteAttach.Tests.Calculation;

/// <summary>
/// A formula in MathML as plain text that <see cref="ShownFormula"/> reads: it is read from the elements alone, by their meaning in MathML Core; what it does not know is an error.
/// </summary>
internal static class MathFormula
{
    public static string ToPlain(string elements) => Row(XElement.Parse($"<math>{elements}</math>"));

    private static string Row(XElement row)
    {
        var plain = new StringBuilder();
        foreach (XElement element in row.Elements())
        {
            plain.Append(Of(element));
        }

        return plain.ToString();
    }

    private static string Of(XElement element)
    {
        XElement[] parts = [.. element.Elements()];
        return element.Name.LocalName switch
        {
            "mi" => element.Value,
            "mn" => element.Value.Replace('\u202F', ' ').Replace('−', '-'),
            "mtext" => element.Value,
            "mspace" => "",
            "mo" => element.Value switch
            {
                "\u2062" => " ",
                "·" or "+" or "−" or "=" or "<" or ">" or "≥" or "≤" => $" {element.Value} ",
                "," => ", ",
                "(" or ")" or "/" => element.Value,
                _ => throw new FormatException($"operator {element.Value}"),
            },
            "mrow" => Row(element),
            "mfrac" when parts.Length == 2 => $"(({Of(parts[0])}) / ({Of(parts[1])}))",
            "msqrt" => $"√({Row(element)})",
            "msub" when parts.Length == 2 => $"{Of(parts[0])}_{Of(parts[1])}",
            "msup" when parts.Length == 2 && parts[1].Value == "′" => Of(parts[0]) + "'",
            "msup" when parts.Length == 2 => Of(parts[0]) + Of(parts[1]) switch { "2" => "²", "3" => "³", var e when e.Contains('/', StringComparison.Ordinal) => $"^({e})", var e => $"^{e}" },
            "msubsup" when parts.Length == 3 && parts[2].Value == "′" => $"{Of(parts[0])}'_{Of(parts[1])}",
            _ => throw new FormatException(element.ToString()),
        };
    }
}
