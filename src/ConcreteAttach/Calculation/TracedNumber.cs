using ConcreteAttach.Quantities;

namespace ConcreteAttach.Calculation;

/// <summary>A number that keeps the expression it came from. Its value has the same bits as the <see cref="PlainNumber"/> of the same formula.</summary>
internal readonly struct TracedNumber(Expression expression) : IFormulaNumber<TracedNumber>
{
    public Expression Expression { get; } = expression;

    public double Value => Expression.Value;

    public static TracedNumber Literal(double value) => new(new LiteralExpression(value));

    public static TracedNumber operator +(TracedNumber left, TracedNumber right) => Binary(BinaryOperator.Add, left, right, left.Value + right.Value);

    public static TracedNumber operator +(double left, TracedNumber right) => Literal(left) + right;

    public static TracedNumber operator -(TracedNumber left, TracedNumber right) => Binary(BinaryOperator.Subtract, left, right, left.Value - right.Value);

    public static TracedNumber operator -(double left, TracedNumber right) => Literal(left) - right;

    public static TracedNumber operator -(TracedNumber left, double right) => left - Literal(right);

    public static TracedNumber operator *(TracedNumber left, TracedNumber right) => Binary(BinaryOperator.Multiply, left, right, left.Value * right.Value);

    public static TracedNumber operator *(double left, TracedNumber right) => Literal(left) * right;

    public static TracedNumber operator /(TracedNumber left, TracedNumber right) => Binary(BinaryOperator.Divide, left, right, left.Value / right.Value);

    public static TracedNumber operator /(double left, TracedNumber right) => Literal(left) / right;

    public static TracedNumber operator /(TracedNumber left, double right) => left / Literal(right);

    public static Condition<TracedNumber> operator >=(TracedNumber left, TracedNumber right) => new(left, Relation.AtLeast, right);

    public static Condition<TracedNumber> operator <=(TracedNumber left, TracedNumber right) => new(left, Relation.AtMost, right);

    public static Condition<TracedNumber> operator >(TracedNumber left, TracedNumber right) => new(left, Relation.Above, right);

    public static Condition<TracedNumber> operator <(TracedNumber left, TracedNumber right) => new(left, Relation.Below, right);

    public static TracedNumber Sqrt(TracedNumber x) => new(new FunctionExpression(FormulaFunction.SquareRoot, x.Expression, null, Math.Sqrt(x.Value)));

    public static TracedNumber Min(TracedNumber a, TracedNumber b) =>
        new(new FunctionExpression(FormulaFunction.Minimum, a.Expression, b.Expression, a.Value < b.Value ? a.Value : b.Value));

    public static TracedNumber Max(TracedNumber a, TracedNumber b) =>
        new(new FunctionExpression(FormulaFunction.Maximum, a.Expression, b.Expression, a.Value > b.Value ? a.Value : b.Value));

    public static TracedNumber Power(TracedNumber x, int numerator, int denominator) =>
        new(new PowerExpression(x.Expression, numerator, denominator, RationalPower.Of(x.Value, numerator, denominator)));

    public static TracedNumber Power(TracedNumber x, double exponent) =>
        new(new PowerExpression(x.Expression, exponent, 0, Math.Pow(x.Value, exponent)));

    public static TracedNumber Given(SheetRecorder? recorder, string id, double value, Dimension dimension, string? origin)
    {
        var symbol = new SymbolExpression(id, value, dimension, isGiven: true);
        recorder?.Add(new GivenLine(symbol, recorder.System, origin));
        return new(symbol);
    }

    public static TracedNumber Step(SheetRecorder? recorder, string id, TracedNumber value, Dimension dimension, string clause)
    {
        recorder?.Add(new StepLine(id, value.Expression, dimension, recorder.System, clause));
        return new(new SymbolExpression(id, value.Value, dimension, isGiven: false));
    }

    public static void Branch(SheetRecorder? recorder, in Condition<TracedNumber> condition, string? clause) =>
        recorder?.Add(new BranchLine(condition, recorder.System, clause));

    private static TracedNumber Binary(BinaryOperator op, TracedNumber left, TracedNumber right, double value) =>
        new(new BinaryExpression(op, left.Expression, right.Expression, value));
}
