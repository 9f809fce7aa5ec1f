using System.Text.Json.Nodes;
using ConcreteAttach.Materials;
using ConcreteAttach.Presentation.Json;
using ConcreteAttach.Tests.Quantities;
using Json.Schema;

namespace ConcreteAttach.Tests.Presentation.Json;

/// <summary>The published schemas against the JSON Schema standard (draft 2020-12), against the reader and against the results.</summary>
public sealed class SchemaTests
{
    public static TheoryData<string> SampleFiles => new(Repository.Samples.Select(path => Path.GetFileName(path)!));

    [Fact]
    public void Schemas_are_schemas()
    {
        foreach (string text in new[] { VerificationJson.InputSchema, VerificationJson.ResultSchema })
        {
            EvaluationResults results = Schemas.OfSchemas.Evaluate(JsonNode.Parse(text));
            Assert.True(results.IsValid);
            Assert.Contains("https://json-schema.org/draft/2020-12/schema", text, StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("input")]
    [InlineData("result")]
    public void The_library_carries_the_schema_of_the_documentation(string name)
    {
        string file = File.ReadAllText(Path.Combine(Repository.Root, "docs", "reference", $"concreteattach-1.{name}.schema.json"));

        Assert.Equal(file, name == "input" ? VerificationJson.InputSchema : VerificationJson.ResultSchema);
    }

    [Fact]
    public void The_example_of_the_contract_is_valid() => Valid(Schemas.Input, ContractExample.Input);

    [Theory]
    [MemberData(nameof(SampleFiles))]
    public void Samples_and_their_results_are_valid(string file)
    {
        string input = File.ReadAllText(Repository.Sample(file));

        Valid(Schemas.Input, input);
        string result = VerificationJson.Verify(input);
        Valid(Schemas.Result, result);
        Assert.Null(JsonNode.Parse(result)!["error"]);
        Assert.Contains("invented", JsonNode.Parse(input)!["title"]!.GetValue<string>(), StringComparison.Ordinal);
    }

    // The inputs of the published and constructed cases were written from the contract by hand, not from the schema.
    [Fact]
    public void Inputs_of_the_cases_and_their_results_are_valid()
    {
        string[] files =
        [
            .. new[] { "PublishedCases", "ConstructedCases" }
                .SelectMany(folder => Directory.EnumerateFiles(Path.Combine(Repository.Root, "tests", "ConcreteAttach.Tests", folder), "*.json")),
        ];
        Assert.True(files.Length > 30);
        foreach (string file in files)
        {
            string input = JsonNode.Parse(File.ReadAllText(file))!["input"]!.ToJsonString();
            Valid(Schemas.Input, input);
            string result = VerificationJson.Verify(input, indented: false);
            Assert.True(JsonNode.Parse(result)!["error"] is null, $"{file}: {result}");
            Valid(Schemas.Result, result);
        }
    }

    [Fact]
    public void There_are_samples() => Assert.True(Repository.Samples.Count() >= 4);

    [Fact]
    public void Every_description_of_a_field_is_there()
    {
        foreach (string text in new[] { VerificationJson.InputSchema, VerificationJson.ResultSchema })
        {
            foreach ((string path, JsonObject field) in Fields(JsonNode.Parse(text)!, ""))
            {
                Assert.True(field.ContainsKey("description") || Describes(JsonNode.Parse(text)!, field), path);
            }
        }
    }

    [Fact]
    public void Schema_lists_the_steels_of_the_library()
    {
        JsonNode steel = JsonNode.Parse(VerificationJson.InputSchema)!["$defs"]!["fastener"]!["properties"]!["steel"]!["anyOf"]![0]!["enum"]!;

        Assert.Equal(AnchorSteels.Designations, steel.AsArray().Select(s => s!.GetValue<string>()));
    }

    // Each text of a choice, as the schema lists it, must also be read: 27 steels in a size each has, and all other choices.
    [Fact]
    public void Every_choice_of_the_schema_is_read()
    {
        JsonNode definitions = JsonNode.Parse(VerificationJson.InputSchema)!["$defs"]!;
        int choices = 0;
        foreach ((string pointer, JsonNode field) in new[]
        {
            ("/concrete/density", definitions["concrete"]!["properties"]!["density"]!["anyOf"]![0]!),
            ("/concrete/edgeReinforcement", definitions["concrete"]!["properties"]!["edgeReinforcement"]!),
            ("/fastener/thread", definitions["fastener"]!["properties"]!["thread"]!),
            ("/fastener/steel", definitions["fastener"]!["properties"]!["steel"]!["anyOf"]![0]!),
            ("/options/closeEdges", definitions["options"]!["properties"]!["closeEdges"]!),
            ("/options/area", definitions["options"]!["properties"]!["area"]!),
            ("/options/deep", definitions["options"]!["properties"]!["deep"]!),
            ("/constants", JsonNode.Parse(VerificationJson.InputSchema)!["properties"]!["constants"]!),
            // The method of wood has documents of its own: WoodJsonTests.
            ("/method", JsonNode.Parse(VerificationJson.InputSchema)!["properties"]!["method"]!),
        })
        {
            foreach (JsonNode? choice in field["enum"]!.AsArray().Where(c => c?.GetValue<string>() != "NDS-2018"))
            {
                string json = choice?.ToJsonString() ?? "null";
                string diameter = json switch { "\"ISO\"" => "\"16 mm\"", "\"8UN\"" => "\"1 in\"", "\"ASTM F593 CW2\"" => "\"3/4 in\"", _ => "\"5/8 in\"" };
                string input = ContractExample.With(("/fastener/thread", null), ("/fastener/diameter", diameter), (pointer, json));
                Valid(Schemas.Input, input);
                VerificationJson.Read(input).Verify();
                choices++;
            }
        }

        Assert.True(choices > 40);
    }

    [Theory]
    [MemberData(nameof(QuantityParserTests.Lengths), MemberType = typeof(QuantityParserTests))]
    public void Schema_accepts_the_lengths_that_are_read(string text, double inches)
    {
        Assert.True(double.IsFinite(inches));
        Valid(Schemas.Input, ContractExample.With(("/concrete/thickness", JsonValue.Create(text).ToJsonString())));
    }

    [Theory]
    [MemberData(nameof(QuantityParserTests.NoLengths), MemberType = typeof(QuantityParserTests))]
    public void Schema_refuses_the_lengths_that_are_not_read(string text, string permitted)
    {
        Assert.NotEmpty(permitted);
        bool isTooLong = text.Length > 300; // no pattern sees that the number overflows
        Assert.Equal(isTooLong, Schemas.Input.Evaluate(JsonNode.Parse(ContractExample.With(("/concrete/thickness", JsonValue.Create(text).ToJsonString())))).IsValid);
    }

    [Theory]
    [InlineData("/verdict", "\"maybe\"")]
    [InlineData("/loadFactor", "\"1.2\"")]
    [InlineData("/loadFactor", "-1")]
    [InlineData("/modes/0/status", "\"ok\"")]
    [InlineData("/modes/0/id", "\"Tension/steel\"")]
    [InlineData("/modes/0/nominal/unit", "\"lbf\"")]
    [InlineData("/modes/0/status", "\"not covered\"")]
    [InlineData("/modes/0/steps/0/value", "null")]
    [InlineData("/modes/0/steps/0/unit", "\"furlong\"")]
    [InlineData("/fasteners/0/shear", "[1]")]
    public void Schema_of_the_result_can_fail(string pointer, string json)
    {
        JsonNode result = JsonNode.Parse(VerificationJson.Verify(ContractExample.Input))!;
        Valid(Schemas.Result, result.ToJsonString());
        JsonNode owner = result;
        string[] names = pointer.Split('/')[1..];
        foreach (string name in names[..^1])
        {
            owner = owner is JsonArray array ? array[int.Parse(name, System.Globalization.CultureInfo.InvariantCulture)]! : owner[name]!;
        }

        owner[names[^1]] = JsonNode.Parse(json);
        Assert.False(Schemas.Result.Evaluate(result).IsValid);
    }

    private static void Valid(Schemas.PublishedSchema schema, string document)
    {
        EvaluationResults results = schema.Evaluate(JsonNode.Parse(document), new EvaluationOptions { OutputFormat = OutputFormat.List });
        Assert.True(results.IsValid, string.Join("\n", (results.Details ?? []).Where(d => d.Errors is not null).Select(d => $"{d.InstanceLocation}: {string.Join(", ", d.Errors!.Values)}")));
    }

    private static IEnumerable<(string Path, JsonObject Field)> Fields(JsonNode node, string path)
    {
        if (node is not JsonObject schema)
        {
            yield break;
        }

        foreach ((string key, JsonNode? value) in schema)
        {
            if (key == "properties" && !path.Contains("/if", StringComparison.Ordinal) && !path.Contains("/then", StringComparison.Ordinal) && !path.Contains("/else", StringComparison.Ordinal))
            {
                foreach ((string name, JsonNode? field) in value!.AsObject())
                {
                    yield return ($"{path}/{name}", field!.AsObject());
                }
            }

            IEnumerable<JsonNode?> inner = value as JsonArray as IEnumerable<JsonNode?> ?? new[] { value };
            foreach (JsonNode? item in inner.OfType<JsonNode>())
            {
                foreach (var found in Fields(item, $"{path}/{key}"))
                {
                    yield return found;
                }
            }
        }
    }

    /// <summary>A reference whose target is described, an object whose fields are, or one of several of that kind.</summary>
    private static bool Describes(JsonNode root, JsonObject field) =>
        (field["$ref"]?.GetValue<string>() is { } reference && root["$defs"]![reference["#/$defs/".Length..]]!.AsObject().ContainsKey("description"))
        || (field["anyOf"] is JsonArray any && any.Any(a => a!.AsObject().ContainsKey("description")))
        || field.ContainsKey("properties");
}
