using System.Text.Json.Nodes;
using ConcreteAttach.Presentation.Json;

namespace ConcreteAttach.Tests.Presentation.Json;

/// <summary>The shear lugs of an input document: each error at its place, with what is permitted.</summary>
public sealed class ShearLugInputTests
{
    private const string Input = """
        {
          "schema": "concreteattach/1", "method": "ACI 318-19", "constants": "inch-pound",
          "concrete": { "strength": "4000 psi", "thickness": "20 in", "edges": { "+x": "12 in" } },
          "fastener": { "kind": "headed bolt", "diameter": "3/4 in", "thread": "UNC", "steel": "ASTM F1554 Grade 36", "effectiveEmbedment": "16 in" },
          "positions": [["-5 in", "-5 in"], ["5 in", "-5 in"], ["5 in", "5 in"], ["-5 in", "5 in"]],
          "plate": { "outline": [["-7 in", "-7 in"], ["7 in", "-7 in"], ["7 in", "7 in"], ["-7 in", "7 in"]], "contact": "strain compatibility", "groutThickness": "1 in" },
          "shearLugs": [
            { "takes": "x", "thickness": "1 in", "width": "6 in", "depth": "3 in", "at": ["0.5 in", "0 in"], "stiffeners": { "thickness": "1/2 in", "length": "2 in", "places": ["-1 in", "1 in"] } },
            { "takes": "y", "thickness": "1 in", "width": "6 in", "depth": "3 in" }
          ],
          "loadCases": [{ "name": "V", "Vx": "5 kip", "Vy": "2 kip" }]
        }
        """;

    [Fact]
    public void Every_field_is_read()
    {
        JsonNode result = Result(JsonNode.Parse(Input)!);
        JsonNode bearing = result["modes"]!.AsArray().Single(m => m!["id"]!.GetValue<string>() == "shear/lug/bearing/1")!;
        JsonNode breakout = result["modes"]!.AsArray().Single(m => m!["id"]!.GetValue<string>() == "shear/lug/breakout/+x")!;

        Assert.Equal(12, Step(bearing, "A_ef_sl"), 1e-12);
        Assert.Equal(2, Step(bearing, "h_sl"), 1e-12);
        Assert.Equal(11, Step(breakout, "c_a1"), 1e-12); // 12 - 0.5 - 1/2
        Assert.Contains("shear/lug/bearing/2", result["modes"]!.AsArray().Select(m => m!["id"]!.GetValue<string>()));
    }

    [Fact]
    public void No_lug_is_the_same_as_none_given()
    {
        JsonNode without = JsonNode.Parse(Input)!;
        without.AsObject().Remove("shearLugs");
        JsonNode empty = JsonNode.Parse(Input)!;
        empty["shearLugs"] = new JsonArray();

        Assert.Equal(Result(without).ToJsonString(), Result(empty).ToJsonString());
        Assert.Contains("shear/pryout", Result(without)["modes"]!.AsArray().Where(m => m!["status"]!.GetValue<string>() == "satisfied").Select(m => m!["id"]!.GetValue<string>()));
    }

    [Theory]
    [InlineData("", "{}", "/shearLugs", "an array")]
    [InlineData("/0", "\"lug\"", "/shearLugs/0", "an object")]
    [InlineData("/0/takes", "\"z\"", "/shearLugs/0/takes", "x, y")]
    [InlineData("/0/takes", null, "/shearLugs/0/takes", "x, y")]
    [InlineData("/1/thickness", "\"0 in\"", "/shearLugs/1/thickness", "greater than 0")]
    [InlineData("/1/thickness", null, "/shearLugs/1/thickness", "a length")]
    [InlineData("/1/width", "\"-6 in\"", "/shearLugs/1/width", "greater than 0")]
    [InlineData("/1/width", "\"6 kip\"", "/shearLugs/1/width", "in, ft, mm")]
    [InlineData("/1/depth", "\"0 mm\"", "/shearLugs/1/depth", "greater than 0")]
    [InlineData("/1/depth", "\"1 in\"", "/shearLugs/1/depth", "more than the grout")]
    [InlineData("/1/depth", "\"21 in\"", "/shearLugs/1/depth", "within the member")]
    [InlineData("/1/embedment", "\"3 in\"", "/shearLugs/1/embedment", "takes, thickness, width, depth")]
    [InlineData("/0/at", "[\"0 in\"]", "/shearLugs/0/at", "[x, y]")]
    [InlineData("/0/at", "[\"4.5 in\", \"4 in\"]", "/shearLugs/0/at", "clear of the fasteners")]
    [InlineData("/0/at", "[\"7 in\", \"0 in\"]", "/shearLugs/0/at", "below the plate")]
    [InlineData("/0/stiffeners/thickness", "\"0 in\"", "/shearLugs/0/stiffeners/thickness", "greater than 0")]
    [InlineData("/0/stiffeners/length", "\"0 in\"", "/shearLugs/0/stiffeners/length", "greater than 0")]
    [InlineData("/0/stiffeners/places", "[]", "/shearLugs/0/stiffeners/places", "at least one")]
    [InlineData("/0/stiffeners/places", "[\"3 in\"]", "/shearLugs/0/stiffeners", "within the width")]
    [InlineData("/0/stiffeners/weld", "1", "/shearLugs/0/stiffeners/weld", "thickness, length, places")]
    [InlineData("/2", """{ "takes": "y", "thickness": "1 in", "width": "6 in", "depth": "3 in", "at": ["1 in", "0.5 in"] }""", "/shearLugs", "a place of its own")]
    public void A_bad_field_is_named_by_its_path(string pointer, string? value, string path, string permitted)
    {
        JsonNode input = JsonNode.Parse(Input)!;
        Set(input, "/shearLugs" + pointer, value is null ? null : JsonNode.Parse(value));
        JsonNode error = Result(input)["error"]!;

        Assert.Equal(path, error["path"]!.GetValue<string>());
        Assert.Contains(permitted, error["permitted"]!.GetValue<string>(), StringComparison.Ordinal);
        Assert.False(string.IsNullOrEmpty(error["found"]!.GetValue<string>()));
    }

    [Fact]
    public void A_lug_stands_in_the_concrete_also_below_a_plate_that_reaches_beyond_its_edge()
    {
        JsonNode input = JsonNode.Parse(Input)!;
        input["concrete"]!["edges"]!["+x"] = "6 in";
        input["shearLugs"]![0]!["at"] = JsonNode.Parse("""["5.6 in", "0 in"]""");
        JsonNode error = Result(input)["error"]!;

        Assert.Equal("/shearLugs/0/at", error["path"]!.GetValue<string>());
        Assert.Contains("in the concrete", error["permitted"]!.GetValue<string>(), StringComparison.Ordinal);
    }

    [Fact]
    public void Grout_is_0_or_more()
    {
        JsonNode input = JsonNode.Parse(Input)!;
        input["plate"]!["groutThickness"] = "-1 in";

        Assert.Equal("/plate/groutThickness", Result(input)["error"]!["path"]!.GetValue<string>());
    }

    [Fact]
    public void A_wood_sill_has_no_shear_lug()
    {
        JsonNode input = JsonNode.Parse(Input)!;
        input["earthquake"] = JsonNode.Parse("""{ "category": "D", "woodSill": { "direction": "x", "thickness": "1.5 in" } }""");

        Assert.Equal("/earthquake/woodSill", Result(input)["error"]!["path"]!.GetValue<string>());
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
            int index = int.Parse(keys[^1], System.Globalization.CultureInfo.InvariantCulture);
            if (index == last.Count)
            {
                last.Add(value);
            }
            else
            {
                last[index] = value;
            }
        }
        else
        {
            parent[keys[^1]] = value;
        }
    }

    private static double Step(JsonNode mode, string id) => mode["steps"]!.AsArray().Single(s => s!["id"]!.GetValue<string>() == id || s["id"]!.GetValue<string>() == id + "_1")!["value"]!.GetValue<double>();

    private static JsonNode Result(JsonNode input) => JsonNode.Parse(VerificationJson.Verify(input.ToJsonString()))!;
}
