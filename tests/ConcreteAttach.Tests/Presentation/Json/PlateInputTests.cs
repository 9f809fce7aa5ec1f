using System.Text.Json.Nodes;
using ConcreteAttach.Presentation.Json;

namespace ConcreteAttach.Tests.Presentation.Json;

/// <summary>The plate of an input document: each error at its place, with what is permitted.</summary>
public sealed class PlateInputTests
{
    private const string Input = """
        {
          "schema": "concreteattach/1", "method": "ACI 318-19", "constants": "inch-pound",
          "concrete": { "strength": "4000 psi", "thickness": "20 in" },
          "fastener": { "kind": "headed bolt", "diameter": "3/4 in", "steel": "ASTM F1554 Grade 36", "effectiveEmbedment": "10 in" },
          "positions": [["-4 in", "-4 in"], ["4 in", "-4 in"], ["4 in", "4 in"], ["-4 in", "4 in"]],
          "plate": {
            "outline": [["-6 in", "-6 in"], ["6 in", "-6 in"], ["6 in", "6 in"], ["-6 in", "6 in"]],
            "contact": "elastic bed", "bedDepth": "20 in", "stretchLength": "12 in", "modularRatio": 8.04, "prying": 0.1,
            "thickness": "1 in", "yield": "36 ksi", "profile": [["-2 in", "-2 in"], ["2 in", "2 in"]],
            "holes": ["standard", "oversize", "slotted along x", "slotted along y"]
          },
          "loadCases": [{ "name": "M", "N": "-10 kip", "Mx": "120 kip-in", "Vx": "1 kip", "Vy": "1 kip" }]
        }
        """;

    [Fact]
    public void Every_field_is_read()
    {
        JsonNode result = Result(Input);
        JsonNode contact = result["contact"]![0]!;

        Assert.Equal("M", contact["case"]!.GetValue<string>());
        Assert.Equal(10, contact["compression"]!["value"]!.GetValue<double>() - contact["tension"]!["value"]!.GetValue<double>(), 1e-9);
        Assert.NotNull(contact["plateBending"]);
        Assert.Equal("in", contact["lengthUnit"]!.GetValue<string>());
        Assert.Equal([0.0, 0.0], result["fasteners"]!.AsArray().Single(f => f!["index"]!.GetValue<int>() == 1)!["shear"]!.AsArray().Select(v => v!.GetValue<double>()));
    }

    [Theory]
    [InlineData("/plate/outline/0/0", "\"-6 ins\"", "/plate/outline/0/0")]
    [InlineData("/plate/outline/1", "[\"-6 in\", \"-6 in\"]", "/plate/outline/1")]
    [InlineData("/plate/outline/2", "[\"-6 in\", \"5 in\"]", "/plate/outline")]
    [InlineData("/plate/outline", "[[\"0 in\", \"0 in\"], [\"1 in\", \"0 in\"]]", "/plate/outline")]
    [InlineData("/plate/outline", "null", "/plate/outline")]
    [InlineData("/plate/contact", "\"glued\"", "/plate/contact")]
    [InlineData("/plate/contact", "null", "/plate/contact")]
    [InlineData("/plate/modularRatio", "\"8\"", "/plate/modularRatio")]
    [InlineData("/plate/modularRatio", "-8", "/plate/modularRatio")]
    [InlineData("/plate/modularRatio", "1e300", "/plate/modularRatio")]
    [InlineData("/plate/prying", "-0.1", "/plate/prying")]
    [InlineData("/plate/thickness", "\"0 in\"", "/plate/thickness")]
    [InlineData("/plate/profile", "[[\"0 in\", \"0 in\"]]", "/plate/profile")]
    [InlineData("/plate/holes/1", "\"loose\"", "/plate/holes/1")]
    [InlineData("/plate/grout", "1", "/plate/grout")]
    public void A_bad_field_is_named_by_its_path(string pointer, string value, string path)
    {
        JsonNode input = JsonNode.Parse(Input)!;
        Set(input, pointer, JsonNode.Parse(value));
        JsonNode error = Result(input.ToJsonString())["error"]!;

        Assert.Equal(path, error["path"]!.GetValue<string>());
        Assert.False(string.IsNullOrEmpty(error["permitted"]!.GetValue<string>()));
    }

    [Theory]
    [InlineData("/plate/bedDepth", "null", "/plate/bedDepth")]
    [InlineData("/plate/holes", "[\"standard\"]", "/plate/holes")]
    [InlineData("/positions/0", "[\"-5.9 in\", \"0 in\"]", "/positions")]
    public void What_does_not_fit_together_is_named(string pointer, string value, string path)
    {
        JsonNode input = JsonNode.Parse(Input)!;
        Set(input, pointer, JsonNode.Parse(value));
        JsonNode error = Result(input.ToJsonString())["error"]!;

        Assert.Equal(path, error["path"]!.GetValue<string>());
    }

    private static void Set(JsonNode root, string pointer, JsonNode? value)
    {
        string[] keys = pointer.Split('/')[1..];
        JsonNode parent = root;
        foreach (string key in keys[..^1])
        {
            parent = parent is JsonArray array ? array[int.Parse(key, System.Globalization.CultureInfo.InvariantCulture)]! : parent[key]!;
        }

        if (parent is JsonArray last)
        {
            last[int.Parse(keys[^1], System.Globalization.CultureInfo.InvariantCulture)] = value;
        }
        else
        {
            parent[keys[^1]] = value;
        }
    }

    private static JsonNode Result(string input) => JsonNode.Parse(VerificationJson.Verify(input))!;
}
