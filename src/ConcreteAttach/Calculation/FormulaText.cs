using ConcreteAttach.Quantities;

namespace ConcreteAttach.Calculation;

/// <summary>Writes an expression tree as a formula, in symbols or with numbers. Brackets come from the tree, by precedence.</summary>
internal static class FormulaText
{
    /// <summary>The step that compares demand and design strength; never shown as 1.00 where it fails.</summary>
    public const string UtilizationId = "utilization";

    private const int Sum = 1;
    private const int Product = 2;
    private const int Quotient = 3;
    private const int Atom = 4;

    /// <summary>The formula in symbols.</summary>
    public static string Symbolic(Expression expression, Notation notation) => Write(expression, notation, numbers: false).Text;

    /// <summary>The formula with its numbers.</summary>
    public static string Substituted(Expression expression, Notation notation) => Write(expression, notation, numbers: true).Text;

    /// <summary>The result of a line, rounded, without its unit.</summary>
    public static string Result(ValueLine line) => line switch
    {
        GivenLine given => given.Expression.ShownValue,
        _ when line.Id == UtilizationId => NumberText.Utilization(line.Value, !Limit.IsBelow(1, line.Value)),
        _ when line.Dimension == Dimension.None => NumberText.Factor(line.Value),
        _ => NumberText.Computed(line.Value),
    };

    /// <summary>A comparison with its numbers; the relation shown is the one that is true.</summary>
    public static string Comparison(BranchLine line, Notation notation)
    {
        char relation = (line.Relation, line.Holds) switch
        {
            (Relation.AtLeast, true) or (Relation.Below, false) => '≥',
            (Relation.AtMost, true) or (Relation.Above, false) => '≤',
            (Relation.Above, true) or (Relation.AtMost, false) => '>',
            _ => '<',
        };
        Dimension dimension = line.Left.Dimension == Dimension.None ? line.Right.Dimension : line.Left.Dimension;
        return Side(line.Left, dimension, line.System, notation) + notation.Relation(relation) + Side(line.Right, dimension, line.System, notation);
    }

    private static string Side(Expression side, Dimension dimension, MeasurementSystem system, Notation notation)
    {
        string unit = Unit.Printed(dimension, system)?.Text ?? "";
        string shown = side switch
        {
            SymbolExpression symbol => symbol.ShownValue,
            LiteralExpression => NumberText.AsGiven(side.Value),
            _ => NumberText.Computed(side.Value),
        };
        string value = notation.WithUnit(shown, unit);
        return side is LiteralExpression ? value : Symbolic(side, notation) + notation.Equal + value;
    }

    private readonly record struct Piece(string Text, int Precedence);

    private static Piece Write(Expression expression, Notation notation, bool numbers) => expression switch
    {
        LiteralExpression literal => Number(NumberText.AsGiven(literal.Value), notation),
        SymbolExpression symbol when numbers => Number(symbol.ShownValue, notation),
        SymbolExpression symbol => new Piece(notation.Symbol(symbol.Id), IsProduct(symbol) ? Product : Atom),
        FunctionExpression function => Function(function, notation, numbers),
        PowerExpression power => Power(power, notation, numbers),
        BinaryExpression binary => Binary(binary, notation, numbers),
        _ => throw new InvalidOperationException("An expression of an unknown kind."),
    };

    private static Piece Number(string text, Notation notation) =>
        new(text.StartsWith('-') ? notation.Brackets(notation.Number(text)) : notation.Number(text), Atom);

    private static Piece Function(FunctionExpression function, Notation notation, bool numbers)
    {
        Piece first = Write(function.First, notation, numbers);
        if (function.Function == FormulaFunction.SquareRoot)
        {
            return new(notation.Root(first.Text, IsOneName(function.First, first)), Atom);
        }

        Piece second = Write(function.Second!, notation, numbers);
        string name = function.Function == FormulaFunction.Minimum ? "min" : "max";
        return new(notation.Function(name, first.Text, second.Text), Atom);
    }

    private static Piece Power(PowerExpression power, Notation notation, bool numbers)
    {
        Piece inner = Write(power.Base, notation, numbers);
        string @base = IsOneName(power.Base, inner) ? inner.Text : notation.Brackets(inner.Text);
        return new(notation.Power(@base, power.Numerator, power.Denominator), Atom);
    }

    /// <summary>A name such as φ N_cb is a product to the eye: below a fraction line, under a root and in a power it needs brackets.</summary>
    private static bool IsProduct(SymbolExpression symbol) => symbol.Id.Contains(' ', StringComparison.Ordinal);

    private static bool IsOneName(Expression expression, Piece piece) => expression is LiteralExpression or SymbolExpression && piece.Precedence == Atom;

    private static Piece Binary(BinaryExpression binary, Notation notation, bool numbers)
    {
        Piece left = Write(binary.Left, notation, numbers);
        Piece right = Write(binary.Right, notation, numbers);
        switch (binary.Operator)
        {
            case BinaryOperator.Add:
                return new(left.Text + notation.Plus + right.Text, Sum);
            case BinaryOperator.Subtract:
                return new(left.Text + notation.Minus + Bracketed(right, Product, notation), Sum);
            case BinaryOperator.Multiply:
                string second = Factor(right, notation);
                string between = numbers || notation.StartsWithNumber(second) ? notation.Dot : notation.Juxtaposition;
                return new(Factor(left, notation) + between + second, Product);
            default:
                return Divide(left, right, notation);
        }
    }

    private static Piece Divide(Piece left, Piece right, Notation notation)
    {
        if (notation.FractionIsClosed)
        {
            return new(notation.Fraction(left.Text, right.Text), Quotient);
        }

        // Both sides in brackets unless they are one name or number: a / b c reads two ways.
        string top = left.Precedence == Product ? left.Text : Bracketed(left, Atom, notation);
        return new(notation.Fraction(top, Bracketed(right, Atom, notation)), Quotient);
    }

    private static string Factor(Piece piece, Notation notation)
    {
        bool needsBrackets = piece.Precedence == Sum || (piece.Precedence == Quotient && !notation.FractionIsClosed);
        return needsBrackets ? notation.Brackets(piece.Text) : piece.Text;
    }

    private static string Bracketed(Piece piece, int least, Notation notation) =>
        piece.Precedence < least ? notation.Brackets(piece.Text) : piece.Text;
}
