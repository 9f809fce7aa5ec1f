using System.Globalization;
using System.Text;
using System.Text.Json;
using ConcreteAttach.Quantities;
using UnitsNet;
using QuantityParser = ConcreteAttach.Quantities.QuantityParser;

namespace ConcreteAttach.Presentation.Json;

/// <summary>
/// A value of an input document together with the place where it stands, so that every error can name it. A field that is absent
/// is such a value too: reading it is then the error.
/// </summary>
internal sealed class InputValue
{
    /// <summary>
    /// Sizes that are read, in the unit of the text; 0 is read too. Far outside of what can be built, and so far inside of what a
    /// double holds that no power or product of inputs overflows or vanishes.
    /// </summary>
    private const double SmallestSize = 1e-9;

    private const double LargestSize = 1e12;

    /// <summary>An error quotes no more of a text than this.</summary>
    private const int MostCharactersQuoted = 100;

    private readonly InputValue? _parent;
    private readonly string _name;
    private readonly JsonElement _element;

    private InputValue(InputValue? parent, string name, JsonElement element)
    {
        _parent = parent;
        _name = name;
        _element = element;
    }

    /// <summary>Where the value stands, as a JSON Pointer (RFC 6901): <c>/fastener/diameter</c>; empty for the whole document.</summary>
    public string Path => _parent is null ? "" : $"{_parent.Path}/{_name.Replace("~", "~0", StringComparison.Ordinal).Replace("/", "~1", StringComparison.Ordinal)}";

    /// <summary>Whether nothing is given: the field is missing or null.</summary>
    public bool IsAbsent => _element.ValueKind is JsonValueKind.Undefined or JsonValueKind.Null;

    /// <summary>What stands there, in the words of an error.</summary>
    public string Found => _element.ValueKind switch
    {
        JsonValueKind.Undefined => "nothing",
        JsonValueKind.Null => "null",
        JsonValueKind.True => "true",
        JsonValueKind.False => "false",
        JsonValueKind.Number => $"the number {Shortened(_element.GetRawText())}",
        JsonValueKind.Array => "an array",
        JsonValueKind.Object => "an object",
        _ => TryText(out string text) ? (string.IsNullOrWhiteSpace(text) ? "an empty text" : Shortened(text)) : "text that is not valid Unicode",
    };

    public static InputValue Root(JsonElement element) => new(null, "", element);

    public InputValue Child(string name, JsonElement element) => new(this, name, element);

    public InputException Error(string permitted) => new(Path, Found, permitted);

    /// <summary>
    /// An error of the typed model about one of the fields of this object, at the place of that field. The model names its parameters
    /// as the contract names its fields.
    /// </summary>
    public InputException Error(InputException inner)
    {
        InputValue field = Child(inner.Parameter, _element.ValueKind == JsonValueKind.Object && _element.TryGetProperty(inner.Parameter, out JsonElement element) ? element : default);
        bool isWritten = field._element.ValueKind == JsonValueKind.String && field.TryText(out string text) && !string.IsNullOrWhiteSpace(text);
        return new(field.Path, isWritten ? field.Found : inner.Found, inner.Permitted);
    }

    public string Text(string permitted) =>
        _element.ValueKind == JsonValueKind.String && TryText(out string text) ? text : throw Error(permitted);

    public bool TrueOrFalse() => _element.ValueKind switch
    {
        JsonValueKind.True => true,
        JsonValueKind.False => false,
        _ => throw Error("true or false, without quotation marks"),
    };

    public InputObject Object(string permitted) => _element.ValueKind == JsonValueKind.Object ? new InputObject(this, _element) : throw Error(permitted);

    public List<InputValue> Items(string permitted)
    {
        if (_element.ValueKind != JsonValueKind.Array)
        {
            throw Error(permitted);
        }

        var items = new List<InputValue>(_element.GetArrayLength());
        foreach (JsonElement item in _element.EnumerateArray())
        {
            items.Add(Child(items.Count.ToString(CultureInfo.InvariantCulture), item));
        }

        return items;
    }

    /// <summary>One of the texts that are permitted.</summary>
    /// <param name="choices">The texts and what they stand for.</param>
    /// <param name="notYet">Texts of the contract that stand for something this version does not have.</param>
    public T Choice<T>((string Text, T Value)[] choices, params string[] notYet)
    {
        string permitted = string.Join(", ", Array.ConvertAll(choices, choice => choice.Text));
        string text = Text(permitted);
        foreach ((string name, T value) in choices)
        {
            if (name == text)
            {
                return value;
            }
        }

        throw Error(Array.IndexOf(notYet, text) >= 0 ? $"{permitted}; {text} is not available in this version" : permitted);
    }

    /// <summary>A plain number, without quotation marks.</summary>
    public double Number(string permitted) =>
        _element.ValueKind == JsonValueKind.Number && _element.TryGetDouble(out double number) && (number == 0 || Math.Abs(number) is >= SmallestSize and <= LargestSize) ? number : throw Error(permitted);

    /// <summary>Makes a part of the model from the fields of an object; an error of the model gets the place of its field.</summary>
    public T Guard<T>(Func<T> create)
    {
        try
        {
            return create();
        }
        catch (InputException error) when (!error.Parameter.StartsWith('/'))
        {
            throw Error(error);
        }
    }

    /// <summary>A temperature in degrees Fahrenheit or Celsius.</summary>
    public Temperature Temperature()
    {
        const string Permitted = "a temperature as text with its unit, such as 50 F or 10 C";
        (double value, char unit) = Decimal("FC", Permitted);
        return unit == 'F' ? UnitsNet.Temperature.FromDegreesFahrenheit(value) : UnitsNet.Temperature.FromDegreesCelsius(value);
    }

    /// <summary>An age in days.</summary>
    public Duration Age()
    {
        const string Permitted = "an age in days as text, such as 28 d, 0 or more";
        (double days, _) = Decimal("d", Permitted);
        return days >= 0 ? Duration.FromDays(days) : throw Error(Permitted);
    }

    /// <summary>A decimal with a unit of one letter, which no formula needs.</summary>
    private (double Value, char Unit) Decimal(string units, string permitted)
    {
        string text = Text(permitted).Trim(' ');
        char unit = text.Length > 0 ? text[^1] : ' ';
        bool isRead = double.TryParse(text.Length > 0 ? text[..^1].TrimEnd(' ') : "", NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double value);
        return isRead && units.Contains(unit, StringComparison.Ordinal) && Math.Abs(value) <= 1e5 ? (value, unit) : throw Error(permitted);
    }

    public bool IsText => _element.ValueKind == JsonValueKind.String;

    public Length Length() => Quantity(QuantityParser.Length, length => length.Value, "a length as text with its unit, such as 5/8 in or 16 mm");

    public Area Area() => Quantity(QuantityParser.Area, area => area.Value, "an area as text with its unit, such as 0.454 in2 or 293 mm2");

    public Force Force() => Quantity(QuantityParser.Force, force => force.Value, "a force as text with its unit, such as 6 kip or 25 kN");

    public Pressure Stress() => Quantity(QuantityParser.Pressure, stress => stress.Value, "a stress as text with its unit, such as 4000 psi or 25 MPa");

    public Torque Moment() => Quantity(QuantityParser.Moment, moment => moment.Value, "a moment as text with its unit, such as 3 kip-ft or 4 kN-m");

    public Density Density() => Quantity(QuantityParser.Density, density => density.Value, "a density as text with its unit, such as 110 lb/ft3 or 1760 kg/m3");

    private T Quantity<T>(Func<string, string, T> read, Func<T, double> valueOf, string permitted)
    {
        string text = Text(permitted);
        T quantity;
        try
        {
            quantity = read("", text);
        }
        catch (InputException error)
        {
            throw Error(error.Permitted);
        }

        double size = Math.Abs(valueOf(quantity));
        return size is 0 or >= SmallestSize and <= LargestSize ? quantity : throw Error("0, or a size from 0.000 000 001 to 1 000 000 000 000 in the unit of the text");
    }

    /// <summary>False where the text is not valid: half of a surrogate pair, or bytes that are no UTF-8.</summary>
    private bool TryText(out string text)
    {
        try
        {
            text = _element.GetString()!;
            return true;
        }
        catch (InvalidOperationException)
        {
            text = "";
            return false;
        }
    }

    private static string Shortened(string text)
    {
        if (text.Length <= MostCharactersQuoted)
        {
            return text;
        }

        int end = char.IsHighSurrogate(text[MostCharactersQuoted - 1]) ? MostCharactersQuoted - 1 : MostCharactersQuoted;
        return new StringBuilder(text, 0, end, MostCharactersQuoted + 1).Append('…').ToString();
    }
}

/// <summary>An object of an input document.</summary>
internal sealed class InputObject
{
    private readonly JsonElement _element;

    /// <exception cref="InputException">A field stands twice, or its name is no valid text.</exception>
    public InputObject(InputValue value, JsonElement element)
    {
        Value = value;
        _element = element;
        var names = new HashSet<string>(StringComparer.Ordinal);
        foreach (JsonProperty property in element.EnumerateObject())
        {
            if (!names.Add(NameOf(property)))
            {
                throw new InputException(value.Child(property.Name, property.Value).Path, "the field a second time", "each field once");
            }
        }
    }

    /// <summary>The object as a value.</summary>
    public InputValue Value { get; }

    /// <summary>A field that must be given: the error comes where its value is read.</summary>
    public InputValue Required(string name) => Value.Child(name, _element.TryGetProperty(name, out JsonElement field) ? field : default);

    /// <summary>All fields that are given, where their names are data.</summary>
    public IEnumerable<(string Name, InputValue Value)> Fields() =>
        _element.EnumerateObject().Select(field => (field.Name, Value.Child(field.Name, field.Value))).Where(field => !field.Item2.IsAbsent);

    /// <summary>A field that may be missing or null; null then.</summary>
    public InputValue? Optional(string name) => Required(name) is { IsAbsent: false } field ? field : null;

    /// <summary>Refuses fields that nobody would read.</summary>
    /// <param name="known">Names of the fields.</param>
    /// <param name="notYet">Fields of the contract for something this version does not have; null is let through.</param>
    /// <exception cref="InputException">An unknown field.</exception>
    public void AllowOnly(ReadOnlySpan<string> known, params ReadOnlySpan<string> notYet)
    {
        foreach (JsonProperty property in _element.EnumerateObject())
        {
            if (known.Contains(property.Name))
            {
                continue;
            }

            InputValue field = Value.Child(property.Name, property.Value);
            string permitted = $"one of {string.Join(", ", known.ToArray())}";
            if (!notYet.Contains(property.Name))
            {
                throw new InputException(field.Path, "an unknown field", permitted);
            }

            if (!field.IsAbsent)
            {
                throw new InputException(field.Path, "a field that is not available in this version", permitted);
            }
        }
    }

    private string NameOf(JsonProperty property)
    {
        try
        {
            return property.Name;
        }
        catch (InvalidOperationException)
        {
            throw new InputException(Value.Path, "a field whose name is not valid Unicode", "field names in valid Unicode");
        }
    }
}
