using System.Globalization;
using System.Text.Json.Nodes;

namespace ConcreteAttach.Tests.Presentation.Json;

/// <summary>The input document that the contract shows, and changed copies of it.</summary>
internal static class ContractExample
{
    public const string Input = """
        {
          "schema": "concreteattach/1",
          "title": "Canopy post, north pier",
          "method": "ACI 318-19",
          "constants": "inch-pound",
          "concrete": {
            "strength": "4000 psi", "density": "normalweight", "thickness": "14 in", "cracked": true,
            "supplementaryReinforcement": { "tension": false, "shear": false },
            "edgeReinforcement": "none",
            "cover": "1.5 in",
            "edges": { "+x": "9 in", "-x": null, "+y": "9 in", "-y": null }
          },
          "fastener": { "kind": "headed bolt", "diameter": "5/8 in", "thread": "UNC", "steel": "ASTM F1554 Grade 36",
                        "effectiveEmbedment": "8 in", "bearingArea": "0.454 in2" },
          "positions": [["-3 in", "-3 in"], ["3 in", "-3 in"], ["3 in", "3 in"], ["-3 in", "3 in"]],
          "loadCases": [ { "name": "1.2D + 1.0W", "N": "6 kip", "Vx": "2 kip", "Vy": "0 kip",
                           "Mx": "0 kip-in", "My": "0 kip-in", "Mz": "0 kip-in", "at": ["0 in", "0 in"] } ],
          "options": {}
        }
        """;

    /// <summary>The example with changes: JSON Pointer and the new value as JSON text, or null to take the field out.</summary>
    public static string With(params (string Pointer, string? Json)[] changes) => With(Input, changes);

    /// <summary>Another document with changes.</summary>
    public static string With(string input, params (string Pointer, string? Json)[] changes)
    {
        JsonNode root = JsonNode.Parse(input)!;
        foreach ((string pointer, string? json) in changes)
        {
            string[] names = [.. pointer.Split('/').Skip(1).Select(n => n.Replace("~1", "/", StringComparison.Ordinal).Replace("~0", "~", StringComparison.Ordinal))];
            JsonNode owner = root;
            foreach (string name in names[..^1])
            {
                owner = owner is JsonArray array ? array[int.Parse(name, CultureInfo.InvariantCulture)]! : owner[name] ?? (owner[name] = new JsonObject());
            }

            JsonNode? value = json is null ? null : JsonNode.Parse(json);
            if (owner is JsonArray items)
            {
                items[int.Parse(names[^1], CultureInfo.InvariantCulture)] = value;
            }
            else if (json is null)
            {
                owner.AsObject().Remove(names[^1]);
            }
            else
            {
                owner[names[^1]] = value;
            }
        }

        return root.ToJsonString();
    }
}
