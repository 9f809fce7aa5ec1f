using System.Runtime.CompilerServices;
using ConcreteAttach.Quantities;

namespace ConcreteAttach.Calculation;

/// <summary>
/// What a formula writes on. It hands out the inputs and takes the steps; whether anything is kept is decided by the number type:
/// <see cref="PlainNumber"/> keeps nothing and costs nothing, <see cref="TracedNumber"/> records each line.
/// </summary>
internal readonly struct Sheet<T>(SheetRecorder? recorder)
    where T : struct, IFormulaNumber<T>
{
    private readonly SheetRecorder? _recorder = recorder;

    /// <summary>Whether lines are kept. Text that has to be put together is made only then.</summary>
    public bool IsRecording
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        get => typeof(T) != typeof(PlainNumber) && _recorder is not null;
    }

    /// <summary>Brings a number into the calculation under its symbol.</summary>
    /// <param name="id">The standard's symbol in ASCII, such as <c>c_a_min</c>.</param>
    /// <param name="value">The value in the printed unit.</param>
    /// <param name="dimension">What kind of quantity it is.</param>
    /// <param name="origin">Where it comes from, where that is not plain: a clause, a table, the drawing.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public T Given(string id, double value, Dimension dimension, string? origin = null) => T.Given(_recorder, id, value, dimension, origin);

    /// <summary>A number that takes part in formulas under its symbol but needs no line of its own: its line stands already, or the formula shows it.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T Named(string id, double value, Dimension dimension) => T.Given(null, id, value, dimension, null);

    /// <summary>Records a result with the formula it came from, and returns it under its symbol.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public T Step(string id, T value, Dimension dimension, string clause) => T.Step(_recorder, id, value, dimension, clause);

    /// <summary>Records a pure number with the formula it came from.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public T Factor(string id, T value, string clause) => T.Step(_recorder, id, value, Dimension.None, clause);

    /// <summary>Records a factor that a rule of the standard sets to a plain number.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public T Factor(string id, double value, string clause) => T.Step(_recorder, id, T.Literal(value), Dimension.None, clause);

    /// <summary>Decides a branch and records what was compared.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public bool When(Condition<T> condition, string? clause = null)
    {
        T.Branch(_recorder, condition, clause);
        return condition.Holds;
    }

    /// <summary>Records a remark, such as why a branch was taken. Only for literal text: put text together behind <see cref="IsRecording"/>.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Note(string text)
    {
        if (IsRecording)
        {
            _recorder!.Add(new NoteLine(text));
        }
    }
}

/// <summary>Collects the lines of one calculation sheet.</summary>
internal sealed class SheetRecorder(MeasurementSystem system)
{
    private readonly List<SheetLine> _lines = [];
    private readonly HashSet<string> _given = new(StringComparer.Ordinal);
    private readonly Dictionary<string, double> _steps = new(StringComparer.Ordinal);

    /// <summary>The units in which the formulas are printed.</summary>
    public MeasurementSystem System { get; } = system;

    /// <summary>Adds a line. An input that several formulas of one sheet ask for stands on it once, and so does a step that comes out the same again.</summary>
    public void Add(SheetLine line)
    {
        if (line is GivenLine given ? _given.Add(given.Id) : line is not StepLine step || IsNew(step))
        {
            _lines.Add(line);
        }
    }

    private bool IsNew(StepLine step)
    {
        bool isSame = _steps.TryGetValue(step.Id, out double before) && before.Equals(step.Value);
        _steps[step.Id] = step.Value;
        return !isSame;
    }

    public CalculationSheet ToSheet() => new(System, [.. _lines]);
}
