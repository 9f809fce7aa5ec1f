using System.Text;

namespace ConcreteAttach.Tests.Calculation;

/// <summary>A LaTeX formula as plain text that <see cref="ShownFormula"/> reads: fraction bars and roots become brackets, as the eye takes them.</summary>
internal static class LatexFormula
{
    private static readonly (string Latex, string Plain)[] Words =
    [
        (@",\, ", ", "), (@"\,", " "), (@" \cdot ", " · "), (@"\left(", "("), (@"\right)", ")"), (@"\min", "min"), (@"\max", "max"), (" - ", " − "),
        (@"\psi", "ψ"), (@"\phi", "φ"), (@"\lambda", "λ"), (@"\tau", "τ"), (@"\beta", "β"), (@"\theta", "θ"),
    ];

    public static string ToPlain(string latex)
    {
        var plain = new StringBuilder();
        for (int at = 0; at < latex.Length;)
        {
            if (Take(@"\frac{"))
            {
                string top = Group();
                plain.Append(Take("{") ? $"(({ToPlain(top)}) / ({ToPlain(Group())}))" : throw new FormatException(latex));
            }
            else if (Take(@"\sqrt{"))
            {
                plain.Append("√(").Append(ToPlain(Group())).Append(')');
            }
            else if (Take(@"_{\mathrm{"))
            {
                plain.Append('_').Append(Group());
                _ = Take("}") ? 0 : throw new FormatException(latex);
            }
            else if (Take("^{"))
            {
                string exponent = Group();
                plain.Append(exponent switch { "2" => "²", "3" => "³", _ when exponent.Contains('/', StringComparison.Ordinal) => $"^({exponent})", _ => $"^{exponent}" });
            }
            else if (Take("{"))
            {
                plain.Append('(').Append(ToPlain(Group())).Append(')');
            }
            else if (Words.FirstOrDefault(w => Sees(w.Latex)) is ({ } word, var meaning))
            {
                at += word.Length;
                plain.Append(meaning);
            }
            else
            {
                plain.Append(latex[at] is '\\' or '}' ? throw new FormatException($"{latex} at {latex[at..]}") : latex[at]);
                at++;
            }

            bool Sees(string what) => string.CompareOrdinal(latex, at, what, 0, what.Length) == 0;

            bool Take(string what)
            {
                bool sees = Sees(what);
                at += sees ? what.Length : 0;
                return sees;
            }

            string Group()
            {
                int start = at;
                for (int depth = 1; depth > 0; at++)
                {
                    depth += latex[at] switch { '{' => 1, '}' => -1, _ => 0 };
                }

                return latex[start..(at - 1)];
            }
        }

        return plain.ToString();
    }
}
