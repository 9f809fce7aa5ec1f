using System.Text.Json.Nodes;
using ConcreteAttach.Materials;
using ConcreteAttach.Nds;
using ConcreteAttach.Presentation.Json;
using ConcreteAttach.Quantities;

namespace ConcreteAttach.Tests.Presentation.Json;

/// <summary>Documents of NDS-2018: what is read, what is refused and where, what comes out.</summary>
public sealed class WoodJsonTests
{
    private const string Lateral = """
        {
          "schema": "concreteattach/1", "method": "NDS-2018", "constants": "inch-pound",
          "connection": {
            "kind": "lateral", "format": "ASD", "count": 2,
            "fastener": { "kind": "bolt", "diameter": "5/8 in" },
            "main": { "material": "concrete", "compressiveStrength": "3000 psi", "bearingLength": "7 in" },
            "side": { "material": "wood", "species": "Douglas Fir-Larch", "bearingLength": "1.5 in", "loadToGrainDegrees": 0 },
            "doubleShear": false, "gap": "0 in", "roundedAsPrinted": true,
            "row": { "count": 2, "spacing": "4 in", "mainModulus": "1600 ksi", "mainArea": "8.25 in2", "sideModulus": "1600 ksi", "sideArea": "8.25 in2", "slip": "wood to wood" },
            "placement": { "load": "parallel tension", "endDistance": "6 in", "spacing": "4 in", "edgeDistance": "1.75 in" },
            "conditions": { "wetAtFabrication": false, "wetInService": false, "freeToShrink": true, "temperature": "up to 100 F", "diaphragmNail": false, "toeNail": false }
          },
          "loadCases": [ { "name": "wind", "lateral": "2000 lbf", "duration": "ten minutes" } ]
        }
        """;

    private const string Combined = """
        {
          "schema": "concreteattach/1", "method": "NDS-2018",
          "connection": {
            "kind": "combined", "format": "LRFD",
            "fastener": { "kind": "lag screw", "diameter": "3/8 in", "fullBody": false },
            "main": { "material": "wood", "species": "Douglas Fir-Larch", "bearingLength": "3 in", "loadToGrainDegrees": 90 },
            "side": { "material": "steel", "ultimateStrength": "58 ksi", "thickness": "1/4 in", "coldFormed": false },
            "withdrawal": { "species": "Douglas Fir-Larch", "penetration": "2 in", "endGrain": false },
            "head": { "species": "Douglas Fir-Larch", "headDiameter": "0.6 in", "thickness": "1 in" },
            "washer": { "shape": "round", "species": { "designation": "mine", "specificGravity": 0.5, "softwood": true, "compressionPerpendicular": "600 psi" }, "diameter": "1.5 in", "hole": "7/16 in", "awayFromEnd": true }
          },
          "loadCases": [ { "name": "wind", "lateral": "200 lbf", "axial": "600 lbf", "timeEffect": "wind, earthquake or impact" } ]
        }
        """;

    /// <summary>Document (false: the lateral, true: the combined one), change, place of the error (null: the same), found, permitted, whether the schema sees it.</summary>
    public static TheoryData<bool, string, string?, string?, string, string, bool> Changes => new()
    {
        { false, "/connection", null, null, "nothing", "an object with kind", true },
        { false, "/concrete", "{}", null, "an unknown field", "connection", true },
        { false, "/constants", "\"SI\"", null, "SI", "inch-pound", true },
        { false, "/connection/kind", "\"shear\"", null, "shear", "lateral, withdrawal, pull-through, washer bearing, combined", true },
        { false, "/connection/format", "\"LSD\"", null, "LSD", "ASD, LRFD", true },
        { false, "/connection/format", null, null, "nothing", "ASD, LRFD", true },
        { false, "/connection/count", "0", null, "the number 0", "1 or more", true },
        { false, "/connection/count", "1.5", null, "the number 1.5", "a whole number", true },
        { false, "/connection/washer", "{}", null, "an unknown field", "kind, format", true },
        { false, "/connection/fastener", null, null, "nothing", "kind and diameter", false },
        { false, "/connection/fastener/kind", "\"rivet\"", null, "rivet", "bolt, lag screw", true },
        { false, "/connection/fastener/diameter", "\"-1 in\"", null, "-1 in", "greater than 0", false },
        { false, "/connection/fastener/diameter", "5", null, "the number 5", "a length as text", true },
        { false, "/connection/fastener/rootDiameter", "\"1 in\"", null, "1 in", "at most the diameter", false },
        { false, "/connection/fastener", """{"kind":"lag screw","diameter":"0.3 in"}""", "/connection/fastener/rootDiameter", "none for 0.3 in", "a root diameter", false },
        { false, "/connection/fastener", """{"kind":"nail","diameter":"0.05 in"}""", "/connection/fastener/bendingYieldStrength", "none for 0.05 in", "a value by test", false },
        { false, "/connection/main/material", "\"stone\"", null, "stone", "wood, concrete, steel, tested", true },
        { false, "/connection/main/compressiveStrength", "\"0 psi\"", null, "0 psi", "greater than 0", false },
        { false, "/connection/main/thickness", "\"6 in\"", null, "an unknown field", "compressiveStrength", false },
        { false, "/connection/side/species", "\"Ironwood\"", null, "Ironwood", "Douglas Fir-Larch", true },
        { false, "/connection/side/species", """{"designation":"x","specificGravity":2,"softwood":true}""", "/connection/side/species/specificGravity", "2", "at most 1.5", true },
        { false, "/connection/side/loadToGrainDegrees", "91", null, "91", "0 to 90", true },
        { false, "/connection/side/loadToGrainDegrees", "\"0\"", null, "0", "an angle in degrees", true },
        { false, "/connection/gap", "\"-1 in\"", null, "-1 in", "0", false },
        { false, "/connection/penetration", "\"0 in\"", null, "0 in", "greater than 0", false },
        { false, "/connection/row/count", "0", null, "the number 0", "1 or more", true },
        { false, "/connection/row/slip", "\"wood to concrete\"", null, "wood to concrete", "wood to metal", true },
        { false, "/connection/row/sideArea", "\"0 in2\"", null, "0 in2", "greater than 0", false },
        { false, "/connection/placement/load", "\"sideways\"", null, "sideways", "perpendicular", true },
        { false, "/connection/placement/endDistance", "\"0 in\"", null, "0 in", "greater than 0", false },
        { false, "/connection/placement/softwood", "true", null, "an unknown field", "endDistance", true },
        { false, "/connection/conditions/temperature", "\"200 F\"", null, "200 F", "up to 150 F", true },
        { false, "/connection/conditions/toeNail", "true", null, "true with Bolt", "or a nail", false },
        { false, "/loadCases", "[]", null, "no load case", "at least one", true },
        { false, "/loadCases/0/duration", null, null, "nothing", "permanent, ten years", false },
        { false, "/loadCases/0/duration", "\"an hour\"", null, "an hour", "ten minutes", true },
        { false, "/loadCases/0/timeEffect", "\"dead\"", null, "an unknown field", "duration", false },
        { false, "/loadCases/0/lateral", "\"-1 kip\"", null, "-1 kip", "0 or more", false },
        { false, "/loadCases/0/axial", "\"1 kip\"", null, "1", "0: no withdrawal", false },
        { false, "/loadCases/0/N", "\"1 kip\"", null, "an unknown field", "lateral", true },
        { false, "/loadCases/0/name", "\"\"", null, "an empty", "a name", true },
        { true, "/connection/fastener/kind", "\"bolt\"", null, "bolt", "a bolt holds by its washer", false },
        { true, "/connection/withdrawal/penetration", "\"0 in\"", null, "0 in", "greater than 0", false },
        { true, "/connection/withdrawal/species", null, null, "nothing", "a species", true },
        { true, "/connection/head/headDiameter", "\"0 in\"", null, "0 in", "greater than 0", false },
        { true, "/connection/washer/shape", "\"hexagon\"", null, "hexagon", "round, square", true },
        { true, "/connection/washer/hole", "\"2 in\"", null, "2 in", "less than the washer", false },
        { true, "/connection/washer/side", "\"3 in\"", null, "an unknown field", "diameter", false },
        { true, "/connection/washer/species/compressionPerpendicular", "\"0 psi\"", null, "0 psi", "greater than 0", false },
        { true, "/loadCases/0/timeEffect", "\"impact\"", null, "impact", "wind, earthquake or impact", true },
        { true, "/loadCases/0/duration", "\"permanent\"", null, "an unknown field", "timeEffect", false },
    };

    [Theory]
    [MemberData(nameof(Changes))]
    public void A_refused_document_names_the_place(bool isCombined, string pointer, string? json, string? path, string found, string permitted, bool schemaSees)
    {
        string input = With(isCombined ? Combined : Lateral, pointer, json);

        InputException error = Assert.Throws<InputException>(() => VerificationJson.Read(input).Verify());

        Assert.Equal(path ?? pointer, error.Parameter);
        Assert.Contains(found, error.Found, StringComparison.Ordinal);
        Assert.Contains(permitted, error.Permitted, StringComparison.Ordinal);
        Assert.Equal(!schemaSees, Schemas.Input.Evaluate(JsonNode.Parse(input)).IsValid);
    }

    [Fact]
    public void A_combined_connection_needs_what_holds_the_pull()
    {
        string input = With(With(With(Combined, "/connection/withdrawal", null), "/connection/head", null), "/connection/washer", null);

        Assert.Equal("/connection/withdrawal", Assert.Throws<InputException>(() => VerificationJson.Read(input)).Parameter);
    }

    [Fact]
    public void Two_load_cases_of_one_name_are_refused()
    {
        string input = With(Lateral, "/loadCases", """[{"name":"a","lateral":"1 lbf","duration":"permanent"},{"name":"a","lateral":"1 lbf","duration":"permanent"}]""");

        Assert.Equal("/loadCases/1/name", Assert.Throws<InputException>(() => VerificationJson.Read(input).Verify()).Parameter);
    }

    [Fact]
    public void Documents_and_results_fit_the_schemas()
    {
        foreach (string input in new[] { Lateral, Combined })
        {
            Assert.True(Schemas.Input.Evaluate(JsonNode.Parse(input)).IsValid);
            Assert.True(Schemas.Result.Evaluate(JsonNode.Parse(VerificationJson.Verify(input))).IsValid);
        }
    }

    [Fact]
    public void Request_has_what_the_document_says()
    {
        WoodFastening lateral = Assert.IsType<WoodRequest>(VerificationJson.Read(Lateral)).Fastening, combined = Assert.IsType<WoodRequest>(VerificationJson.Read(Combined)).Fastening;

        Assert.Equal(2, lateral.Count);
        Assert.Equal((0.625, true, 2), (lateral.Lateral!.Fastener.Diameter.Inches, lateral.Lateral.IsRoundedAsPrinted, lateral.Lateral.Row!.Count));
        Assert.Equal((6, true), (lateral.Lateral.Placement!.EndDistance!.Value.Inches, lateral.Lateral.Placement.IsSoftwood));
        Assert.Equal((2, 0.6, 600), (combined.Withdrawal!.Penetration.Inches, combined.PullThrough!.HeadDiameter.Inches, combined.WasherSpecies!.CompressionPerpendicular!.Value.PoundsForcePerSquareInch));
        Assert.Equal(600, Assert.IsType<WoodRequest>(VerificationJson.Read(Combined)).LoadCases[0].Axial.PoundsForce, 1e-9);
    }

    [Fact]
    public void The_schema_lists_the_species_of_the_library()
    {
        JsonNode species = JsonNode.Parse(VerificationJson.InputSchema)!["$defs"]!["species"]!["anyOf"]![0]!["enum"]!;

        Assert.Equal(WoodSpeciesTable.Designations, species.AsArray().Select(s => s!.GetValue<string>()));
    }

    /// <summary>Each text of a choice, as the schema lists it, is read.</summary>
    [Fact]
    public void Every_choice_of_the_schema_is_read()
    {
        JsonNode definitions = JsonNode.Parse(VerificationJson.InputSchema)!["$defs"]!;
        JsonNode connection = definitions["connection"]!["properties"]!, loadCase = definitions["woodLoadCase"]!["properties"]!;
        (string Pointer, string Input, JsonNode Field)[] fields =
        [
            ("/connection/side/species", Lateral, definitions["species"]!["anyOf"]![0]!),
            ("/connection/row/slip", Lateral, connection["row"]!["anyOf"]![0]!["properties"]!["slip"]!),
            ("/connection/placement/load", Lateral, connection["placement"]!["anyOf"]![0]!["properties"]!["load"]!),
            ("/connection/conditions/temperature", Lateral, connection["conditions"]!["anyOf"]![0]!["properties"]!["temperature"]!),
            ("/loadCases/0/duration", Lateral, loadCase["duration"]!),
            ("/loadCases/0/timeEffect", Combined, loadCase["timeEffect"]!),
        ];
        foreach ((string pointer, string input, JsonNode field) in fields)
        {
            foreach (JsonNode choice in field["enum"]!.AsArray().OfType<JsonNode>())
            {
                VerificationJson.Read(With(input, pointer, choice.ToJsonString())).Verify();
            }
        }
    }

    /// <summary>Worked by hand: Z of Table 12E is 930 lbf; C_g of two bolts 4 in. apart in two 2x6 of 1,600,000 psi with m of 0.793223 (a constructed case) and R_EA of 1; C_D 1.6; 1,000 lbf a bolt.</summary>
    [Fact]
    public void Lateral_result()
    {
        JsonNode result = JsonNode.Parse(VerificationJson.Verify(Lateral))!, mode = Mode(result, "wood/yield");
        double m = 0.793223, m2 = m * m, group = m * (1 - (m2 * m2)) / (2 * (((1 + m2) * (1 + m)) - 1 + (m2 * m2))) * (2 / (1 - m));

        Assert.Equal(0.93 * group * 1.6, mode["design"]!["value"]!.GetValue<double>(), 1e-6);
        Assert.Equal(1 / (0.93 * group * 1.6), mode["utilization"]!.GetValue<double>(), 1e-6);
        Assert.Equal("satisfied", Mode(result, "detailing/wood/placement")["status"]!.GetValue<string>());
        Assert.Equal(("holds", "wood/yield"), (result["verdict"]!.GetValue<string>(), result["governing"]!["mode"]!.GetValue<string>()));
        Assert.Equal(0.93 * group * 1.6, result["loadFactor"]!.GetValue<double>(), 1e-6);
        Assert.Empty(result["fasteners"]!.AsArray());
    }

    /// <summary>By hand: 12.4-1 as a sum, R / Z'_α = (V cos α) / Z' + (N sin α) / W' with the components V and N.</summary>
    [Fact]
    public void Combined_result()
    {
        JsonNode result = JsonNode.Parse(VerificationJson.Verify(Combined))!;
        double z = Design("wood/yield"), w = Design("wood/withdrawal"), resultant = Math.Sqrt((0.2 * 0.2) + (0.6 * 0.6));

        Assert.Equal(((0.2 * 0.2 / z) + (0.6 * 0.6 / w)) / resultant, Mode(result, "wood/combined")["utilization"]!.GetValue<double>(), 1e-9);
        Assert.Equal(3.32 * 0.65 * 1.8 * Math.Pow(0.5, 1.5) * Math.Pow(0.375, 0.75) * 2, w, 1e-9);

        // 690 π 0.6 · 0.25 · 1 and π/4 (1.5² − 0.4375²) · 600 · 1.25, times the factors of LRFD.
        Assert.Equal(0.690 * Math.PI * 0.6 * 0.25 * 3.32 * 0.65, Design("wood/pull-through"), 1e-9);
        Assert.Equal(Math.PI / 4 * ((1.5 * 1.5) - (0.4375 * 0.4375)) * 0.6 * 1.25 * 1.67 * 0.9, Design("wood/bearing"), 1e-9);

        double Design(string id) => Mode(result, id)["design"]!["value"]!.GetValue<double>();
    }

    [Theory]
    [InlineData("/connection/placement/endDistance", "\"2 in\"", "does not hold", "detailing/wood/placement", "not satisfied")]
    [InlineData("/connection/placement/endDistance", "\"2 in\"", "does not hold", "wood/yield", "not covered")]
    [InlineData("/connection/main/compressiveStrength", "\"2000 psi\"", "not covered", "wood/yield", "not covered")]
    [InlineData("/connection/fastener/diameter", "\"1-1/8 in\"", "not covered", "wood/yield", "not covered")]
    [InlineData("/loadCases/0/lateral", "\"3 kip\"", "does not hold", "wood/yield", "not satisfied")]
    [InlineData("/loadCases/0/lateral", null, "holds", "wood/yield", "satisfied")]
    public void Verdicts(string pointer, string? json, string verdict, string mode, string status)
    {
        JsonNode result = JsonNode.Parse(VerificationJson.Verify(With(Lateral, pointer, json)))!;

        Assert.Equal(verdict, result["verdict"]!.GetValue<string>());
        Assert.Equal(status, Mode(result, mode)["status"]!.GetValue<string>());
        Assert.True(Schemas.Result.Evaluate(result).IsValid);
    }

    private static JsonNode Mode(JsonNode result, string id) => result["modes"]!.AsArray().Single(m => m!["id"]!.GetValue<string>() == id)!;

    /// <summary>A document with one change: JSON Pointer, and the new value or null to take the field out.</summary>
    private static string With(string input, string pointer, string? json)
    {
        JsonNode root = JsonNode.Parse(input)!, owner = root;
        string[] names = pointer.Split('/')[1..];
        foreach (string name in names[..^1])
        {
            owner = owner is JsonArray array ? array[int.Parse(name, System.Globalization.CultureInfo.InvariantCulture)]! : owner[name]!;
        }

        if (json is null)
        {
            owner.AsObject().Remove(names[^1]);
        }
        else
        {
            owner[names[^1]] = JsonNode.Parse(json);
        }

        return root.ToJsonString();
    }
}
