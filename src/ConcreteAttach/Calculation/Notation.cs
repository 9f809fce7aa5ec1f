namespace ConcreteAttach.Calculation;

/// <summary>How the parts of a formula are written: one notation for plain text, one for LaTeX.</summary>
internal abstract class Notation
{
    public static readonly Notation Plain = new PlainNotation();

    public static readonly Notation Latex = new LatexNotation();

    /// <summary>True where a fraction stands for itself (a bar), so that it needs no brackets as a factor.</summary>
    public abstract bool FractionIsClosed { get; }

    public abstract string Dot { get; }

    public abstract string Minus { get; }

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

    private sealed class PlainNotation : Notation
    {
        public override bool FractionIsClosed => false;

        public override string Dot => " · ";

        public override string Minus => "−";

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
            unit.Length == 0 ? number : $"{number} {unit.Replace('2', '²').Replace('3', '³')}";
    }

    private sealed class LatexNotation : Notation
    {
        public override bool FractionIsClosed => true;

        public override string Dot => @" \cdot ";

        public override string Minus => "-";

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

        /// <summary>Exponents raised; a hyphen as text, or it would be set as a minus.</summary>
        private static string Upright(string unit) => unit.Replace("2", "^2", StringComparison.Ordinal)
            .Replace("3", "^3", StringComparison.Ordinal).Replace("-", @"\text{-}", StringComparison.Ordinal);
    }

    /// <summary>Halves as decimals (1.5), thirds as fractions (5/3): as the standards print them.</summary>
    private static string Exponent(double numerator, int denominator) => denominator switch
    {
        0 => Quantities.NumberText.AsGiven(numerator),
        1 => Quantities.NumberText.AsGiven(numerator),
        2 => Quantities.NumberText.AsGiven(numerator / 2),
        _ => $"{Quantities.NumberText.AsGiven(numerator)}/{Quantities.NumberText.AsGiven(denominator)}",
    };
}
