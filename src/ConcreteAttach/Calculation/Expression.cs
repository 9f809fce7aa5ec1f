using ConcreteAttach.Quantities;

namespace ConcreteAttach.Calculation;

/// <summary>A node of the tree that a formula leaves behind when it is computed in <see cref="TracedNumber"/>.</summary>
internal abstract class Expression(double value)
{
    /// <summary>The value, computed when the node was made, in the same order of operations as the silent path.</summary>
    public double Value { get; } = value;

    /// <summary>What kind of quantity the tree stands for, as far as its symbols tell: enough for the unit in a comparison.</summary>
    public abstract Dimension Dimension { get; }
}

/// <summary>A number of the formula itself, such as 0.7.</summary>
internal sealed class LiteralExpression(double value) : Expression(value)
{
    public override Dimension Dimension => Dimension.None;
}

/// <summary>A named quantity: an input, or the result of an earlier step.</summary>
internal sealed class SymbolExpression(string id, double value, Dimension dimension, bool isGiven) : Expression(value)
{
    public string Id { get; } = id;

    public override Dimension Dimension { get; } = dimension;

    /// <summary>True for an input, which is shown as given; a computed value is shown rounded.</summary>
    public bool IsGiven { get; } = isGiven;

    /// <summary>The value as it is shown in a substitution.</summary>
    public string ShownValue => IsGiven ? NumberText.AsGiven(Value)
        : Dimension == Dimension.None ? NumberText.Factor(Value)
        : NumberText.Computed(Value);
}

internal enum BinaryOperator
{
    Add,
    Subtract,
    Multiply,
    Divide,
}

internal sealed class BinaryExpression(BinaryOperator op, Expression left, Expression right, double value) : Expression(value)
{
    public BinaryOperator Operator { get; } = op;

    public Expression Left { get; } = left;

    public Expression Right { get; } = right;

    public override Dimension Dimension => (Operator, Left.Dimension, Right.Dimension) switch
    {
        (BinaryOperator.Multiply, Dimension.None, var right) => right,
        (BinaryOperator.Multiply, var left, Dimension.None) => left,
        (BinaryOperator.Multiply, Dimension.Length, Dimension.Length) => Dimension.Area,
        (BinaryOperator.Multiply, Dimension.Area, Dimension.Stress) or (BinaryOperator.Multiply, Dimension.Stress, Dimension.Area) => Dimension.Force,
        (BinaryOperator.Divide, var left, Dimension.None) => left,
        (BinaryOperator.Add or BinaryOperator.Subtract, Dimension.None, var right) => right,
        (BinaryOperator.Add or BinaryOperator.Subtract, var left, _) => left,
        _ => Dimension.None,
    };
}

internal enum FormulaFunction
{
    SquareRoot,
    Minimum,
    Maximum,
}

/// <summary>A square root (one argument) or a minimum or maximum (two).</summary>
internal sealed class FunctionExpression(FormulaFunction function, Expression first, Expression? second, double value) : Expression(value)
{
    public FormulaFunction Function { get; } = function;

    public Expression First { get; } = first;

    public Expression? Second { get; } = second;

    public override Dimension Dimension => Function == FormulaFunction.SquareRoot ? Dimension.None : First.Dimension;
}

/// <summary>A power with a fraction (3/2, 5/3, 2/1) or a decimal (0.2, denominator 0) as exponent.</summary>
internal sealed class PowerExpression(Expression @base, double numerator, int denominator, double value) : Expression(value)
{
    public Expression Base { get; } = @base;

    /// <summary>The numerator, or the exponent itself where <see cref="Denominator"/> is 0.</summary>
    public double Numerator { get; } = numerator;

    public int Denominator { get; } = denominator;

    public override Dimension Dimension =>
        Denominator == 1 && Numerator == 2 && Base.Dimension == Dimension.Length ? Dimension.Area : Dimension.None;
}
