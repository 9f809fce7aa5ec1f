using System.Globalization;
using ConcreteAttach.Calculation;

namespace ConcreteAttach.Tests.Calculation;

/// <summary>
/// Reads a calculation sheet as a careful reader does, from its public texts alone, and says where it does not hold together: each formula gives
/// its result from the values above it; each substitution, with every rounded number standing for half a unit of its last digit either way and every
/// exact number for itself, gives the result that is shown.
/// </summary>
internal sealed class SheetReader
{
    private readonly Dictionary<string, ValueLine> _known = new(StringComparer.Ordinal);
    private readonly List<string> _problems = [];
    private readonly List<string> _products = [];

    private SheetReader()
    {
    }

    /// <summary>How many steps were read; so that a test can tell that it read any.</summary>
    public int Steps { get; private set; }

    /// <summary>How many comparisons were read.</summary>
    public int Branches { get; private set; }

    public IReadOnlyList<string> Problems => _problems;

    public static SheetReader Read(CalculationSheet sheet)
    {
        var reader = new SheetReader();
        foreach (SheetLine line in sheet.Lines)
        {
            switch (line)
            {
                case StepLine step:
                    reader.ReadStep(step);
                    reader.Keep(step);
                    break;
                case ValueLine given:
                    reader.Keep(given);
                    break;
                case BranchLine branch:
                    reader.ReadBranch(branch);
                    break;
            }
        }

        return reader;
    }

    private void Keep(ValueLine line)
    {
        if (!double.IsFinite(line.Value))
        {
            _problems.Add($"{line.Id}: the value is {line.Value.ToString(CultureInfo.InvariantCulture)}");
            return;
        }

        if (!ShownFor(line.ShownValue, line.Value).Meets(Interval.Of(line.Value)))
        {
            _problems.Add($"{line.Id}: {Full(line.Value)} is shown as {line.ShownValue}");
        }

        if (!_known.TryAdd(line.Symbol, line))
        {
            _problems.Add($"{line.Id}: stands twice on the sheet");
        }

        if (line.Symbol.Contains(' ', StringComparison.Ordinal))
        {
            _products.Add(line.Symbol);
            double product = 1;
            foreach (string factor in line.Symbol.Split(' '))
            {
                product *= _known.TryGetValue(factor, out ValueLine? known) ? known.Value : double.NaN;
            }

            if (!(Math.Abs(product - line.Value) <= 1e-12 * Math.Abs(product)))
            {
                _problems.Add($"{line.Id}: reads as a product of symbols above, but {Full(line.Value)} is not that product ({Full(product)})");
            }
        }
    }

    private void ReadStep(StepLine step)
    {
        Steps++;
        (string formulaText, string substitutionText, string result) = (step.Formula, step.Substitution, step.ShownValue);
        ShownFormula formula, substitution;
        try
        {
            formula = ShownFormula.Read(formulaText, _products);
            substitution = ShownFormula.Read(substitutionText);
        }
        catch (FormatException e)
        {
            Problem(e.Message);
            return;
        }

        if (formula.Shape() != substitution.Shape())
        {
            Problem($"the formula has the shape {formula.Shape()}, its substitution {substitution.Shape()}");
            return;
        }

        Interval exact = formula.Evaluate(Value);
        if (!exact.Meets(Interval.Of(step.Value)))
        {
            Problem($"the formula gives {Full(exact.Low)}, the value is {Full(step.Value)}");
        }

        // Formula and substitution have one shape: their leaves pair off.
        Queue<ShownFormula> names = new(formula.Leaves());
        Interval shown = substitution.Evaluate(leaf => Substituted(Problem, names.Dequeue(), (ShownFormula.Number)leaf));
        if (!shown.Meets(ShownFor(result, step.Value)))
        {
            Problem($"the substitution gives {Full(shown.Low)} to {Full(shown.High)}");
        }

        void Problem(string text) => _problems.Add($"{step.Id} = {formulaText} = {substitutionText} = {result}: {text}");
    }

    /// <summary>What a number in a substitution stands for: the symbol's value as it is shown on its own line, or a number of the formula itself.</summary>
    private Interval Substituted(Action<string> problem, ShownFormula name, ShownFormula.Number number)
    {
        if (name is not ShownFormula.Symbol symbol)
        {
            if (name is not ShownFormula.Number { } own || own.Text != number.Text)
            {
                problem($"{number.Text} stands for {name}");
            }

            return Interval.Of(number.Value);
        }

        if (!_known.TryGetValue(symbol.Name, out ValueLine? line))
        {
            return Interval.Around(number.Value, number.HalfUnit);
        }

        if (line.ShownValue != number.Text)
        {
            problem($"{symbol.Name} is {line.ShownValue} on its own line and {number.Text} here");
        }

        return ShownFor(number.Text, line.Value);
    }

    private Interval Value(ShownFormula leaf)
    {
        switch (leaf)
        {
            case ShownFormula.Number number:
                return Interval.Of(number.Value);
            case ShownFormula.Symbol symbol when _known.TryGetValue(symbol.Name, out ValueLine? line):
                return Interval.Of(line.Value);
            default:
                _problems.Add($"{leaf} has no line above");
                return new(double.NegativeInfinity, double.PositiveInfinity, double.PositiveInfinity);
        }
    }

    private void ReadBranch(BranchLine branch)
    {
        Branches++;
        try
        {
            string relation = branch.Text.Split(' ').Single(w => w is "<" or ">" or "≤" or "≥");
            string[] sides = branch.Text.Split($" {relation} ");
            (Interval left, string leftUnit) = ReadSide(branch, sides[0]);
            (Interval right, string rightUnit) = ReadSide(branch, sides[1]);

            // At the limit itself a rule is met within one part in 10^9.
            double slack = 1e-9 * Math.Max(Math.Abs(left.High), Math.Abs(right.High));
            bool holds = relation switch
            {
                "<" => left.Low < right.High,
                "≤" => left.Low <= right.High + slack,
                ">" => left.High > right.Low,
                _ => left.High >= right.Low - slack,
            };
            if (!holds)
            {
                _problems.Add($"{branch.Text}: does not hold as shown");
            }

            if (leftUnit != rightUnit)
            {
                _problems.Add($"{branch.Text}: two units");
            }
        }
        catch (Exception e) when (e is FormatException or InvalidOperationException)
        {
            _problems.Add($"{branch.Text}: {e.Message}");
        }
    }

    /// <summary>One side of a comparison: <c>11 in</c>, or <c>1.5 h_ef = 9 in</c>. Checks that the formula gives the number.</summary>
    private (Interval Shown, string Unit) ReadSide(BranchLine branch, string side)
    {
        string[] parts = side.Split(" = ");
        string last = parts[^1];
        int unitAt = last.AsSpan().IndexOfAnyExcept("0123456789.- ");
        string unit = unitAt < 0 ? "" : last[unitAt..];
        var number = new ShownFormula.Number((unitAt < 0 ? last : last[..unitAt]).TrimEnd());
        if (parts.Length == 1)
        {
            return (Interval.Of(number.Value), unit);
        }

        ShownFormula formula = ShownFormula.Read(parts[0], _products);
        Interval value = formula.Evaluate(Value);
        Interval shown = ShownFor(number.Text, value.Low);
        if (!shown.Meets(value))
        {
            _problems.Add($"{branch.Text}: {parts[0]} is {Full(value.Low)}");
        }

        if (formula is ShownFormula.Symbol symbol && _known.TryGetValue(symbol.Name, out ValueLine? line) && line.Unit != unit.Replace('²', '2').Replace('³', '3'))
        {
            _problems.Add($"{branch.Text}: {symbol.Name} is in {line.Unit}");
        }

        return (shown, unit);
    }

    /// <summary>A number that is shown in full stands for itself (the last bits of a double apart); a rounded one for half a unit of its last digit either way.</summary>
    private static Interval ShownFor(string text, double value)
    {
        var number = new ShownFormula.Number(text);
        return Math.Abs(number.Value - value) <= 1e-12 * Math.Abs(value) ? Interval.Of(value) : Interval.Around(number.Value, number.HalfUnit);
    }

    private static string Full(double value) => value.ToString("R", CultureInfo.InvariantCulture);
}
