using System.Collections.Concurrent;

namespace ConcreteAttach.Calculation;

/// <summary>
/// A symbol in ASCII, base and subscripts parted by underlines (<c>psi_ec_N</c>, <c>h_ef'</c>, <c>e'_N_x</c>), as it is printed. A prime belongs to the base.
/// </summary>
internal static class SymbolText
{
    private static readonly ConcurrentDictionary<string, string> PlainTexts = new(StringComparer.Ordinal);

    /// <summary>Plain text: ψ_ec,N; h'_ef. The ids are those of the formulas, a few hundred, each on many lines: written once.</summary>
    public static string Plain(string id) => PlainTexts.GetOrAdd(id, WritePlain);

    private static readonly ConcurrentDictionary<string, string> MathTexts = new(StringComparer.Ordinal);

    /// <summary>MathML: an italic letter (several letters upright), a prime, an upright subscript.</summary>
    public static string MathML(string id) => MathTexts.GetOrAdd(id, WriteMath);

    private static string WriteMath(string id)
    {
        int product = id.IndexOf(' ', StringComparison.Ordinal);
        if (product > 0)
        {
            return MathML(id[..product]) + "<mo>\u2062</mo><mspace width=\".14em\"/>" + MathML(id[(product + 1)..]);
        }

        (string stem, bool prime, string subscript) = Split(id);
        string letter = $"<mi>{Greek(stem)}</mi>";
        string below = subscript.Length == 0 ? "" : $"<mtext>{Below(subscript).Replace('-', '−')}</mtext>";
        return (prime, below.Length > 0) switch
        {
            (true, true) => $"<msubsup>{letter}{below}<mo>′</mo></msubsup>",
            (true, false) => $"<msup>{letter}<mo>′</mo></msup>",
            (false, true) => $"<msub>{letter}{below}</msub>",
            _ => letter,
        };
    }

    private static string WritePlain(string id)
    {
        int product = id.IndexOf(' ', StringComparison.Ordinal);
        if (product > 0)
        {
            return $"{Plain(id[..product])} {Plain(id[(product + 1)..])}";
        }

        (string stem, bool prime, string subscript) = Split(id);
        return Greek(stem) + (prime ? "'" : "") + (subscript.Length == 0 ? "" : "_" + Below(subscript).Replace('-', '−'));
    }

    /// <summary>LaTeX: \psi_{ec,N}.</summary>
    public static string Latex(string id)
    {
        int product = id.IndexOf(' ', StringComparison.Ordinal);
        if (product > 0)
        {
            return $@"{Latex(id[..product])}\,{Latex(id[(product + 1)..])}";
        }

        (string stem, bool prime, string subscript) = Split(id);
        string letter = Greek(stem) != stem ? "\\" + stem : stem.Length > 1 ? $@"\mathrm{{{stem}}}" : stem;
        string below = string.Join(',', subscript.Split(',').Select(part => Greek(part) != part ? "\\" + part : part));
        string upright = below.Length == 0 ? "" : $"_{{\\mathrm{{{below}}}}}";
        return letter + (prime ? "'" : "") + upright;
    }

    /// <summary>Base letter (Greek letters by name), prime, and the subscripts joined by commas.</summary>
    public static (string Stem, bool HasPrime, string Subscript) Split(string id)
    {
        bool prime = id.Contains('\'', StringComparison.Ordinal);
        string bare = id.Replace("'", "", StringComparison.Ordinal);
        int first = bare.IndexOf('_', StringComparison.Ordinal);
        return first < 0
            ? (bare, prime, "")
            : (bare[..first], prime, bare[(first + 1)..].Replace('_', ','));
    }

    /// <summary>Subscripts with the names of Greek letters as letters: C_Δ.</summary>
    public static string Below(string subscript) => string.Join(',', subscript.Split(',').Select(Greek));

    /// <summary>The Greek letter of a name, or the text itself.</summary>
    public static string Greek(string stem) => stem switch
    {
        "alpha" => "α",
        "gamma" => "γ",
        "Delta" => "Δ",
        "psi" => "ψ",
        "phi" => "φ",
        "lambda" => "λ",
        "Omega" => "Ω",
        "tau" => "τ",
        "beta" => "β",
        "theta" => "θ",
        "kappa" => "κ",
        "rho" => "ρ",
        "mu" => "μ",
        "pi" => "π",
        _ => stem,
    };
}
