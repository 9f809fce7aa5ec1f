using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Json.Serialization;

namespace ConcreteAttach.Tests.PublishedCases;

/// <summary>
/// One published or constructed case: an input document of the JSON contract, the values that the source states for it,
/// and those of its values that do not follow from its own inputs. The file is the test and the page of the verification manual.
/// </summary>
/// <remarks>
/// <para>
/// Files in <c>PublishedCases/</c> hold values that were read in, or are remembered from, a publication. Values that were computed,
/// by hand or by an independent script, stand in <c>ConstructedCases/</c> and are never called published.
/// </para>
/// <para>
/// <c>variants</c> change a few fields of <c>input</c> (JSON pointer to new value; <c>null</c> takes the field out) and state values of
/// their own. They serve the rows of a printed table and the two sides of a limit.
/// </para>
/// </remarks>
internal sealed record CaseFile
{
    internal const string Published = "PublishedCases";
    internal const string Constructed = "ConstructedCases";

    private static readonly JsonSerializerOptions Strict = new()
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
    };

    /// <summary>The name of the file without its extension; unique over both folders.</summary>
    public required string Id { get; init; }

    public required string Title { get; init; }

    public required CaseSource Source { get; init; }

    /// <summary>Edition differences, what is ours in the input, errors found in the source, traps.</summary>
    public required IReadOnlyList<string> Notes { get; init; }

    /// <summary>A complete input document of the JSON contract.</summary>
    public required JsonObject Input { get; init; }

    public required IReadOnlyList<CaseValue> Expected { get; init; }

    /// <summary>Values of the source that do not follow. They are asserted to differ, so that an entry cannot outlive its reason.</summary>
    public IReadOnlyList<CaseValue> Disagreements { get; init; } = [];

    public IReadOnlyList<CaseVariant> Variants { get; init; } = [];

    /// <summary>Folder and file name, as in <c>PublishedCases/aci-349-2r-07-a1</c>.</summary>
    [JsonIgnore]
    public string Path { get; private init; } = "";

    [JsonIgnore]
    public bool IsPublished => Path.StartsWith(Published + "/", StringComparison.Ordinal);

    /// <summary>The paths of all files of both folders beside the test assembly, in order.</summary>
    internal static IReadOnlyList<string> Paths =>
    [
        .. from folder in new[] { Published, Constructed }
           let directory = System.IO.Path.Combine(AppContext.BaseDirectory, folder)
           where Directory.Exists(directory)
           from file in Directory.EnumerateFiles(directory, "*.json").Order(StringComparer.Ordinal)
           select $"{folder}/{System.IO.Path.GetFileNameWithoutExtension(file)}"
    ];

    /// <exception cref="JsonException">The file is not JSON, lacks a field, or has one that is not known.</exception>
    internal static CaseFile Load(string path)
    {
        string text = File.ReadAllText(System.IO.Path.Combine(AppContext.BaseDirectory, path + ".json"));
        CaseFile file = JsonSerializer.Deserialize<CaseFile>(text, Strict) ?? throw new JsonException($"{path} holds null");
        return file with { Path = path };
    }

    /// <summary>The case itself, under the empty name, and its variants.</summary>
    internal IEnumerable<(string Name, JsonObject Input, IReadOnlyList<CaseValue> Expected, IReadOnlyList<CaseValue> Disagreements)> Runs()
    {
        yield return ("", Input, Expected, Disagreements);
        foreach (CaseVariant variant in Variants)
            yield return (variant.Name, variant.ApplyTo(Input), variant.Expected, variant.Disagreements);
    }
}

/// <summary>Where the values of a case come from.</summary>
internal sealed record CaseSource
{
    internal static readonly IReadOnlyList<string> PublishedProvenances = ["read", "read in a secondary source", "from memory"];
    internal const string ConstructedProvenance = "constructed";

    public required string Publication { get; init; }

    public required string Edition { get; init; }

    /// <summary>Page, example, table or clause.</summary>
    public required string Where { get; init; }

    /// <summary><c>read</c>, <c>read in a secondary source</c>, <c>from memory</c> or <c>constructed</c>.</summary>
    public required string Provenance { get; init; }
}

/// <summary>The input of the case with a few fields changed, and what the source states for it.</summary>
internal sealed record CaseVariant
{
    public required string Name { get; init; }

    /// <summary>JSON pointer into the input, and the new value; <c>null</c> takes the field out.</summary>
    public required IReadOnlyDictionary<string, JsonNode?> Set { get; init; }

    public required IReadOnlyList<CaseValue> Expected { get; init; }

    public IReadOnlyList<CaseValue> Disagreements { get; init; } = [];

    /// <exception cref="JsonException">A pointer leads nowhere.</exception>
    internal JsonObject ApplyTo(JsonObject input)
    {
        JsonObject copy = input.DeepClone().AsObject();
        foreach ((string pointer, JsonNode? value) in Set)
        {
            string[] keys = [.. pointer.Split('/').Skip(1).Select(key => key.Replace("~1", "/", StringComparison.Ordinal).Replace("~0", "~", StringComparison.Ordinal))];
            JsonNode parent = copy;
            foreach (string key in keys[..^1])
                parent = Child(parent, key) ?? throw new JsonException($"variant '{Name}': {pointer} leads nowhere");

            if (parent is JsonArray array)
                array[int.Parse(keys[^1], CultureInfo.InvariantCulture)] = value?.DeepClone();
            else if (value is null)
                parent.AsObject().Remove(keys[^1]);
            else
                parent[keys[^1]] = value.DeepClone();
        }

        return copy;
    }

    private static JsonNode? Child(JsonNode parent, string key) =>
        parent is JsonArray array ? array[int.Parse(key, CultureInfo.InvariantCulture)] : parent[key];
}

/// <summary>One value that a source states: where it stands in the output document, and what is printed.</summary>
internal sealed record CaseValue
{
    /// <summary>Fields of a mode entry whose value is a number.</summary>
    internal static readonly IReadOnlyList<string> NumberFields = ["nominal", "design", "demand", "utilization", "factor"];

    /// <summary>Fields of a mode entry whose value is text; a group is written <c>0, 1, 2</c>.</summary>
    internal static readonly IReadOnlyList<string> TextFields = ["status", "group"];

    /// <summary>Fields of one fastener's forces.</summary>
    internal static readonly IReadOnlyList<string> FastenerFields = ["tension", "shear x", "shear y"];

    /// <summary>
    /// Mode id. Where no entry has this very id, the entries beneath it count (<c>tension/blowout</c> finds
    /// <c>tension/blowout/+x</c>): a number needs exactly one of them, a status must be that of all.
    /// </summary>
    public string? Mode { get; init; }

    /// <summary>Index of a fastener, in place of a mode.</summary>
    public int? Fastener { get; init; }

    /// <summary>A field of the contact of a plate, in place of a mode: <c>compression</c>, <c>largestPressure</c> and the like.</summary>
    public string? Contact { get; init; }

    /// <summary>Name of the load case; may be absent where the input has one only.</summary>
    public string? Case { get; init; }

    /// <summary>Step id, or else <see cref="Field"/>.</summary>
    public string? Step { get; init; }

    /// <summary>A field of the mode, of the fastener, or with neither of them <c>verdict</c> or <c>loadFactor</c>.</summary>
    public string? Field { get; init; }

    /// <summary>Our value is multiplied by this, where the source prints, say, the sum over four fasteners and we report one.</summary>
    public double Times { get; init; } = 1;

    /// <summary>A number in <see cref="Unit"/>, or text.</summary>
    public required JsonElement Value { get; init; }

    /// <summary>The unit as the source prints it; absent for a ratio or a factor.</summary>
    public string? Unit { get; init; }

    /// <summary>The number as printed, with its blanks.</summary>
    public string? Printed { get; init; }

    /// <summary>Half a unit of the last printed digit, in <see cref="Unit"/>.</summary>
    public double? Tolerance { get; init; }

    /// <summary>Why a value of the source does not follow; disagreements only.</summary>
    public string? Why { get; init; }

    [JsonIgnore]
    internal bool IsText => Value.ValueKind == JsonValueKind.String;

    [JsonIgnore]
    internal string Place => string.Join(' ', new[] { Mode, Fastener is { } f ? string.Create(CultureInfo.InvariantCulture, $"fastener {f}") : null, Contact is null ? null : $"contact {Contact}", Step ?? Field, Case is null ? null : $"[{Case}]" }.Where(part => part is not null));

    [JsonIgnore]
    internal string Stated => IsText ? Value.GetString()! : string.Create(CultureInfo.InvariantCulture, $"{Printed} {Unit} ± {Tolerance}").Replace("  ", " ", StringComparison.Ordinal);

    /// <summary>The number in the printed text: blanks and thousands marks go, the point stays.</summary>
    /// <exception cref="FormatException">The text is not a plain decimal number.</exception>
    internal static (double Value, double HalfUnit) Read(string printed)
    {
        string plain = string.Concat(printed.Where(c => !char.IsWhiteSpace(c) && c != ','));
        int point = plain.IndexOf('.', StringComparison.Ordinal);
        int decimals = point < 0 ? 0 : plain.Length - point - 1;
        const NumberStyles Style = NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint;
        return (double.Parse(plain, Style, CultureInfo.InvariantCulture),
            double.Parse(string.Create(CultureInfo.InvariantCulture, $"5E-{decimals + 1}"), CultureInfo.InvariantCulture));
    }
}
