using System.Text.Json.Nodes;
using ConcreteAttach.Presentation.Json;

namespace ConcreteAttach.Tests.Presentation.Json;

/// <summary>Loads and combinations in place of load cases.</summary>
public sealed class LoadsTests
{
    /// <summary>Time effect by the leading load (NDS-2018 Table N3), load duration by the shortest one (Table 2.3.2), by hand.</summary>
    [Theory]
    [InlineData("strength", null, "1.4D", "lambda", 0.6)]
    [InlineData("strength", null, "1.2D + 1.0S", "lambda", 0.8)]
    [InlineData("strength", null, "1.2D + Ev + Eh + 0.15S", "lambda", 1.0)]
    [InlineData("allowable stress", 1.4, "1.0D", "C_D", 0.9)]
    [InlineData("allowable stress", 1.4, "1.0D + 0.7S", "C_D", 1.15)]
    [InlineData("allowable stress", 1.4, "0.6D - 0.7Ev - 0.7Eh", "C_D", 1.6)]
    public void A_sill_takes_time_effect_and_duration_from_the_combination(string format, double? weighted, string loadCase, string step, double factor)
    {
        JsonNode input = JsonNode.Parse(File.ReadAllText(Repository.Sample("sill-bolts-whole.json")))!;
        input.AsObject().Remove("loadCases");
        input["loads"] = JsonNode.Parse("""[{"kind":"D","N":"-1 kip"},{"kind":"S","Vx":"0.2 kip"},{"kind":"E","Vx":"2 kip","N":"1.5 kip"}]""");
        input["combinations"] = new JsonObject { ["standard"] = "ASCE 7-22", ["format"] = format, ["SDS"] = 1.0, ["weightedLoadFactor"] = weighted };
        Assert.True(Schemas.Input.Evaluate(input).IsValid);

        JsonNode result = JsonNode.Parse(VerificationJson.Verify(input.ToJsonString()))!;
        Assert.True(Schemas.Result.Evaluate(result).IsValid);
        JsonNode mode = result["modes"]!.AsArray().Single(m => m!["id"]!.GetValue<string>() == "wood/yield" && m["case"]!.GetValue<string>() == loadCase)!;
        Assert.Equal(factor, mode["steps"]!.AsArray().First(s => s!["id"]!.GetValue<string>() == step)!["value"]!.GetValue<double>(), 1e-12);
    }

    /// <summary>The sheets of computed forces and of the combinations stand in the result; the verification is that of the load cases they form.</summary>
    [Fact]
    public void The_result_shows_where_the_forces_come_from()
    {
        JsonNode result = JsonNode.Parse(VerificationJson.Verify(File.ReadAllText(Repository.Sample("pump-house-wall.json"))))!;
        Assert.True(Schemas.Result.Evaluate(result).IsValid);
        JsonArray demand = result["demand"]!.AsArray();
        Assert.Equal("Anchorage of a structural wall, ASCE 7-16 12.11.2", demand[0]!["title"]!.GetValue<string>());

        // 0.4 · 1.0 · 1.6 · 1 · 4300 lbf
        Assert.Equal(2752, demand[0]!["steps"]!.AsArray().First(s => s!["id"]!.GetValue<string>() == "F_p")!["value"]!.GetValue<double>(), 1e-9);
        string[] cases = [.. result["modes"]!.AsArray().Select(m => m!["case"]!.GetValue<string>()).Distinct()];
        Assert.Equal(cases, demand.Skip(1).Select(d => d!["case"]!.GetValue<string>()));
    }

    /// <summary>ρ raises an earthquake's effect on the structure, and not the force on a wall's anchorage (ASCE 7 12.3.4.1): by hand 1.3 · 1.2 kip and 1 · 2752 lbf.</summary>
    [Theory]
    [InlineData(null, 2752)]
    [InlineData(true, 1.3 * 2752)]
    public void Redundancy_does_not_raise_a_computed_force(bool? redundancy, double outOfPlane)
    {
        JsonNode input = JsonNode.Parse(File.ReadAllText(Repository.Sample("pump-house-wall.json")))!;
        input["combinations"]!["redundancy"] = 1.3;
        input["loads"]![3]!.AsObject().Add("redundancy", redundancy);
        if (redundancy is null)
        {
            input["loads"]![3]!.AsObject().Remove("redundancy");
        }

        Assert.True(Schemas.Input.Evaluate(input).IsValid);
        JsonArray demand = JsonNode.Parse(VerificationJson.Verify(input.ToJsonString()))!["demand"]!.AsArray();
        double Sum(string combination, string step) =>
            demand.Single(d => d!["case"]?.GetValue<string>() == combination)!["steps"]!.AsArray().Single(s => s!["id"]!.GetValue<string>() == step)!["value"]!.GetValue<double>();
        Assert.Equal(outOfPlane, Sum("0.9D - Ev + Eh (out of plane)", "N"), 1e-9);
        Assert.Equal(1.3 * 1200, Sum("0.9D - Ev + Eh (in plane)", "V_x"), 1e-9);
    }

    /// <summary>By hand: 39 kip / 6.5 = 6 kip, of which a quarter on these fasteners, with ρ; the force on the wall itself 0.4 · 4300 lbf, without.</summary>
    [Fact]
    public void Base_shear_and_the_force_on_the_wall_itself()
    {
        JsonNode input = JsonNode.Parse(File.ReadAllText(Repository.Sample("pump-house-wall.json")))!;
        input["combinations"]!["redundancy"] = 1.3;
        input["loads"]![4] = JsonNode.Parse("""{"kind":"E","name":"in plane","baseShear":{"along":"x","R":6.5,"levels":[{"weight":"24 kip","height":"9 ft"},{"weight":"15 kip","height":"18 ft"}],"share":0.25}}""");
        input["loads"]![3]!["wallAnchorage"] = JsonNode.Parse("""{"weight":"4.3 kip","along":"N","force":"wall"}""");
        Assert.True(Schemas.Input.Evaluate(input).IsValid);
        JsonNode result = JsonNode.Parse(VerificationJson.Verify(input.ToJsonString()))!;
        Assert.True(Schemas.Result.Evaluate(result).IsValid);
        JsonArray demand = result["demand"]!.AsArray();
        double Sum(string combination, string step) =>
            demand.Single(d => d!["case"]?.GetValue<string>() == combination)!["steps"]!.AsArray().Single(s => s!["id"]!.GetValue<string>() == step)!["value"]!.GetValue<double>();
        Assert.Equal(1720, Sum("0.9D - Ev + Eh (out of plane)", "N"), 1e-9);
        Assert.Equal(1.3 * 1500, Sum("0.9D - Ev + Eh (in plane)", "V_x"), 1e-9);
    }

    [Fact]
    public void A_sill_says_that_a_leading_live_load_is_taken_as_occupancy()
    {
        JsonNode input = JsonNode.Parse(File.ReadAllText(Repository.Sample("sill-bolts-whole.json")))!;
        input.AsObject().Remove("loadCases");
        input["combinations"] = new JsonObject { ["standard"] = "ASCE 7-22", ["format"] = "strength", ["SDS"] = 1.0 };
        string Notices(string kind)
        {
            input["loads"] = JsonNode.Parse($$"""[{"kind":"D","N":"-1 kip"},{"kind":"{{kind}}","Vx":"0.2 kip"}]""");
            return JsonNode.Parse(VerificationJson.Verify(input.ToJsonString()))!["notices"]!.ToJsonString();
        }

        Assert.Contains("taken as from occupancy", Notices("L"), StringComparison.Ordinal);
        Assert.DoesNotContain("taken as from occupancy", Notices("S"), StringComparison.Ordinal);
    }
}
