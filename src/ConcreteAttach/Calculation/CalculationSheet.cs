using System.Collections.Immutable;
using ConcreteAttach.Quantities;

namespace ConcreteAttach.Calculation;

/// <summary>
/// The calculation of one failure mode, line by line, as it was computed: inputs, branches, steps with formula and substituted
/// numbers, remarks. Immutable. Text, Markdown and JSON are views of it.
/// </summary>
public sealed class CalculationSheet
{
    internal CalculationSheet(MeasurementSystem system, ImmutableArray<SheetLine> lines)
    {
        System = system;
        Lines = lines;
    }

    /// <summary>The units in which the formulas are printed and the substituted numbers stand.</summary>
    public MeasurementSystem System { get; }

    /// <summary>The lines in the order of the calculation.</summary>
    public ImmutableArray<SheetLine> Lines { get; }

    /// <summary>The sheet with remarks at its end.</summary>
    internal CalculationSheet With(IEnumerable<string> remarks) => new(System, [.. Lines, .. remarks.Select(r => new NoteLine(r))]);

    /// <summary>The value that a symbol has on this sheet.</summary>
    /// <param name="id">The symbol in ASCII, such as <c>N_b</c> or <c>psi_ed_N</c>.</param>
    /// <returns>The unrounded value in the printed unit; null where the sheet has no such line.</returns>
    public double? Find(string id)
    {
        foreach (SheetLine line in Lines)
        {
            if (line is ValueLine value && value.Id == id)
            {
                return value.Value;
            }
        }

        return null;
    }
}

/// <summary>One line of a <see cref="CalculationSheet"/>.</summary>
public abstract class SheetLine
{
    private protected SheetLine()
    {
    }
}

/// <summary>A line that gives a symbol its value: an input or a step.</summary>
public abstract class ValueLine : SheetLine
{
    private protected ValueLine(string id, double value, Dimension dimension, MeasurementSystem system)
    {
        Id = id;
        Value = value;
        Dimension = dimension;
        Unit = Quantities.Unit.Printed(dimension, system)?.Text ?? "";
    }

    /// <summary>The standard's symbol in ASCII: <c>A_Nc</c>, <c>psi_ec_N</c>. It never changes.</summary>
    public string Id { get; }

    /// <summary>The symbol as it is printed: <c>ψ_ec,N</c>.</summary>
    public string Symbol => SymbolText.Plain(Id);

    /// <summary>The unrounded value in <see cref="Unit"/>.</summary>
    public double Value { get; }

    /// <summary>What kind of quantity it is.</summary>
    public Dimension Dimension { get; }

    /// <summary>The value as it is shown: an input as given, a result with four significant figures.</summary>
    public string ShownValue => FormulaText.Result(this);

    /// <summary>The unit: <c>in</c>, <c>in2</c>, <c>lbf</c>, <c>psi</c>, <c>mm</c>, <c>mm2</c>, <c>N</c>, <c>MPa</c>; empty for a pure number.</summary>
    public string Unit { get; }
}

/// <summary>An input of the calculation, or a number taken from the drawing.</summary>
public sealed class GivenLine : ValueLine
{
    internal GivenLine(SymbolExpression symbol, MeasurementSystem system, string? origin)
        : base(symbol.Id, symbol.Value, symbol.Dimension, system)
    {
        Expression = symbol;
        Origin = origin;
    }

    /// <summary>Where the number comes from: a clause, a table, the drawing. Null where the symbol says it.</summary>
    public string? Origin { get; }

    internal SymbolExpression Expression { get; }
}

/// <summary>A computed step: symbol = formula = substituted numbers = result, and the clause it comes from.</summary>
public sealed class StepLine : ValueLine
{
    internal StepLine(string id, Expression expression, Dimension dimension, MeasurementSystem system, string clause)
        : base(id, expression.Value, dimension, system)
    {
        Expression = expression;
        Clause = clause;
    }

    /// <summary>The clause, table or equation of the standard.</summary>
    public string Clause { get; }

    /// <summary>The formula in symbols, such as <c>0.7 + 0.3 c_a,min / (1.5 h_ef)</c>.</summary>
    public string Formula => FormulaText.Symbolic(Expression, Notation.Plain);

    /// <summary>The formula with its numbers, such as <c>0.7 + 0.3 · 5 / (1.5 · 6)</c>.</summary>
    public string Substitution => FormulaText.Substituted(Expression, Notation.Plain);

    internal Expression Expression { get; }
}

/// <summary>A comparison that decided which formula was used.</summary>
public sealed class BranchLine : SheetLine
{
    internal BranchLine(in Condition<TracedNumber> condition, MeasurementSystem system, string? clause)
    {
        Left = condition.Left.Expression;
        Right = condition.Right.Expression;
        Relation = condition.Relation;
        Holds = condition.Holds;
        System = system;
        Clause = clause;
    }

    /// <summary>The clause that the comparison decides on; null where the step after it says so.</summary>
    public string? Clause { get; }

    /// <summary>Whether the comparison holds. The text shows the relation that is true.</summary>
    public bool Holds { get; }

    /// <summary>The comparison with its numbers, such as <c>c_a,min = 5 in &lt; 1.5 h_ef = 9 in</c>.</summary>
    public string Text => FormulaText.Comparison(this, Notation.Plain);

    internal Expression Left { get; }

    internal Expression Right { get; }

    internal Relation Relation { get; }

    internal MeasurementSystem System { get; }
}

/// <summary>A remark: a rule that was followed, a limit that was applied, a reading of the standard.</summary>
public sealed class NoteLine : SheetLine
{
    internal NoteLine(string text) => Text = text;

    /// <summary>The remark.</summary>
    public string Text { get; }
}
