namespace ConcreteAttach.Calculation;

/// <summary>How the parts of a formula are written: one notation for plain text, one for LaTeX, one for MathML.</summary>
internal abstract class Notation
{
    public static readonly Notation Plain = new PlainNotation();

    public static readonly Notation Latex = new LatexNotation();

    public static readonly Notation MathML = new MathNotation();

    /// <summary>True where a fraction stands for itself (a bar), so that it needs no brackets as a factor.</summary>
    public abstract bool FractionIsClosed { get; }

    public abstract string Dot { get; }

    public abstract string Plus { get; }

    public abstract string Minus { get; }

    /// <summary>Between the two sides of an equation.</summary>
    public abstract string Equal { get; }

    /// <summary>Between two symbols of a product.</summary>
    public abstract string Juxtaposition { get; }

    public abstract string Symbol(string id);

    public abstract string Number(string text);

    public abstract string Brackets(string inner);

    public abstract string Fraction(string top, string bottom);

    public abstract string Root(string inner, bool isSimple);

    public abstract string Power(string @base, double numerator, int denominator);

    public abstract string Function(string name, string first, string second);

    /// <summary>A unit after a number.</summary>
    public abstract string WithUnit(string number, string unit);

    /// <summary>Between the two sides of a comparison: ≥, ≤, > or &lt;.</summary>
    public abstract string Relation(char sign);

    /// <summary>Whether a text starts with a number, so that a dot must stand before it in a product.</summary>
    public virtual bool StartsWithNumber(string text) => char.IsAsciiDigit(text[0]);

    private sealed class PlainNotation : Notation
    {
        public override bool FractionIsClosed => false;

        public override string Dot => " · ";

        public override string Plus => " + ";

        public override string Minus => " − ";

        public override string Equal => " = ";

        public override string Juxtaposition => " ";

        public override string Symbol(string id) => SymbolText.Plain(id);

        public override string Number(string text) => text;

        public override string Brackets(string inner) => $"({inner})";

        public override string Fraction(string top, string bottom) => $"{top} / {bottom}";

        public override string Root(string inner, bool isSimple) => isSimple ? $"√{inner}" : $"√({inner})";

        public override string Power(string @base, double numerator, int denominator) => @base + Exponent(numerator, denominator) switch
        {
            "2" => "²",
            "3" => "³",
            var text when text.Contains('/', StringComparison.Ordinal) => $"^({text})",
            var text => $"^{text}",
        };

        public override string Function(string name, string first, string second) => $"{name}({first}, {second})";

        public override string WithUnit(string number, string unit) =>
            unit.Length == 0 ? number : $"{number} {Raised(unit)}";

        public override string Relation(char sign) => $" {sign} ";
    }

    private sealed class LatexNotation : Notation
    {
        public override bool FractionIsClosed => true;

        public override string Dot => @" \cdot ";

        public override string Plus => " + ";

        public override string Minus => " - ";

        public override string Equal => " = ";

        public override string Juxtaposition => @"\,";

        public override string Symbol(string id) => SymbolText.Latex(id);

        public override string Number(string text) => text.Replace(" ", @"\,", StringComparison.Ordinal);

        public override string Brackets(string inner) => $@"\left({inner}\right)";

        public override string Fraction(string top, string bottom) => $@"\frac{{{top}}}{{{bottom}}}";

        public override string Root(string inner, bool isSimple) => $@"\sqrt{{{inner}}}";

        public override string Power(string @base, double numerator, int denominator)
        {
            // A prime is an exponent already: h'^2 is an error, {h'}^2 is not.
            string closed = @base.Contains('\'', StringComparison.Ordinal) ? $"{{{@base}}}" : @base;
            return $"{closed}^{{{Exponent(numerator, denominator)}}}";
        }

        public override string Function(string name, string first, string second) => $@"\{name}\left({first},\, {second}\right)";

        public override string WithUnit(string number, string unit) => unit.Length == 0 ? Number(number) : $@"{Number(number)}\ \mathrm{{{Upright(unit)}}}";

        public override string Relation(char sign) => sign switch { '≥' => @" \ge ", '≤' => @" \le ", _ => $" {sign} " };

        /// <summary>Exponents raised; a hyphen as text, or it would be set as a minus.</summary>
        private static string Upright(string unit) => unit.Replace("2", "^2", StringComparison.Ordinal)
            .Replace("3", "^3", StringComparison.Ordinal).Replace("-", @"\text{-}", StringComparison.Ordinal);
    }

    /// <summary>Presentation MathML (MathML Core): elements of which a row is made.</summary>
    private sealed class MathNotation : Notation
    {
        /// <summary>Between the groups of three digits: narrow, and no place to break a line.</summary>
        private const char ThinBlank = '\u202F';

        public override bool FractionIsClosed => true;

        public override string Dot => "<mo>·</mo>";

        public override string Plus => "<mo>+</mo>";

        public override string Minus => "<mo>−</mo>";

        public override string Equal => "<mo>=</mo>";

        /// <summary>A product for a reader who hears it, a narrow gap for one who sees it.</summary>
        public override string Juxtaposition => "<mo>\u2062</mo><mspace width=\".14em\"/>";

        public override string Symbol(string id) => SymbolText.MathML(id);

        public override string Number(string text) => $"<mn>{text.Replace(' ', ThinBlank).Replace('-', '−')}</mn>";

        public override string Brackets(string inner) => $"<mrow><mo>(</mo>{inner}<mo>)</mo></mrow>";

        public override string Fraction(string top, string bottom) => $"<mfrac>{One(top)}{One(bottom)}</mfrac>";

        public override string Root(string inner, bool isSimple) => $"<msqrt>{inner}</msqrt>";

        public override string Power(string @base, double numerator, int denominator)
        {
            string[] exponent = Exponent(numerator, denominator).Split('/');
            string raised = exponent.Length == 1 ? $"<mn>{exponent[0]}</mn>" : $"<mrow><mn>{exponent[0]}</mn><mo>/</mo><mn>{exponent[1]}</mn></mrow>";
            return $"<msup>{One(@base)}{raised}</msup>";
        }

        public override string Function(string name, string first, string second) => $"<mrow><mi>{name}</mi><mo>(</mo>{first}<mo>,</mo>{second}<mo>)</mo></mrow>";

        public override string WithUnit(string number, string unit) =>
            unit.Length == 0 ? Number(number) : $"{Number(number)}<mspace width=\".25em\"/><mtext>{Raised(unit)}</mtext>";

        public override string Relation(char sign) => sign == '<' ? "<mo>&lt;</mo>" : sign == '>' ? "<mo>&gt;</mo>" : $"<mo>{sign}</mo>";

        public override bool StartsWithNumber(string text) => text.StartsWith("<mn>", StringComparison.Ordinal) || text.StartsWith("<msup><mn>", StringComparison.Ordinal);

        /// <summary>One element: several are put in a row.</summary>
        private static string One(string elements)
        {
            int depth = 0;
            for (int at = 0; at < elements.Length; at++)
            {
                if (elements[at] != '<')
                {
                    continue;
                }

                bool closes = elements[at + 1] == '/';
                int end = elements.IndexOf('>', at);
                depth += closes ? -1 : elements[end - 1] == '/' ? 0 : 1;
                if (depth == 0)
                {
                    return end == elements.Length - 1 ? elements : $"<mrow>{elements}</mrow>";
                }
            }

            return elements;
        }
    }

    /// <summary>A unit with its exponents raised: in².</summary>
    private static string Raised(string unit) => unit.Replace('2', '²').Replace('3', '³');

    /// <summary>Halves as decimals (1.5), thirds as fractions (5/3): as the standards print them.</summary>
    private static string Exponent(double numerator, int denominator) => denominator switch
    {
        0 => Quantities.NumberText.AsGiven(numerator),
        1 => Quantities.NumberText.AsGiven(numerator),
        2 => Quantities.NumberText.AsGiven(numerator / 2),
        _ => $"{Quantities.NumberText.AsGiven(numerator)}/{Quantities.NumberText.AsGiven(denominator)}",
    };
}
