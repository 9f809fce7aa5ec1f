using System.Text.Json;
using System.Text.Json.Nodes;
using Xunit;

namespace ConcreteAttach.Tests.PublishedCases;

/// <summary>Runs every case file against the library, and holds the files themselves to their rules.</summary>
public sealed class CaseTests
{
    public static TheoryData<string, string> Runs
    {
        get
        {
            var rows = new TheoryData<string, string>();
            foreach (string path in CaseFile.Paths)
            {
                foreach (var (name, _, _, _) in CaseFile.Load(path).Runs())
                    rows.Add(path, name);
            }

            return rows;
        }
    }

    public static TheoryData<string> Files
    {
        get
        {
            var rows = new TheoryData<string>();
            foreach (string path in CaseFile.Paths)
                rows.Add(path);
            return rows;
        }
    }

    [Theory]
    [MemberData(nameof(Runs))]
    public void Stated_values_follow(string path, string variant)
    {
        CaseFile file = CaseFile.Load(path);
        var (_, input, expected, disagreements) = file.Runs().Single(run => run.Name == variant);
        JsonObject output = JsonNode.Parse(CaseRunner.Verify(input.ToJsonString()))!.AsObject();
        if (output["error"] is { } error)
            Assert.Fail($"{file.Title}: the library refuses the input: {error.ToJsonString()}");

        string[] failures = Failures(output, expected, disagreements);
        if (failures.Length > 0)
            Assert.Fail($"{file.Title} ({file.Source.Publication}, {file.Source.Where}, {file.Source.Provenance})\n  {string.Join("\n  ", failures)}");
    }

    private static string[] Failures(JsonObject output, IEnumerable<CaseValue> expected, IEnumerable<CaseValue> disagreements) =>
    [
        .. expected.Select(value => CaseComparison.Of(output, value)).Where(c => !c.Agrees).Select(c => c.ToString()),
        .. disagreements.Select(value => CaseComparison.Of(output, value)).Where(c => c.Problem is not null).Select(c => c.ToString()),
        .. disagreements.Select(value => CaseComparison.Of(output, value)).Where(c => c.Agrees).Select(c => $"{c}: agrees, so it is no disagreement any more"),
    ];

    [Theory]
    [InlineData(CaseFile.Published)]
    [InlineData(CaseFile.Constructed)]
    public void Folder_is_copied_beside_the_tests(string folder) =>
        Assert.Contains(CaseFile.Paths, path => path.StartsWith(folder + "/", StringComparison.Ordinal));

    [Fact]
    public void Ids_are_unique()
    {
        IEnumerable<string> twice = CaseFile.Paths.Select(path => CaseFile.Load(path).Id).GroupBy(id => id).Where(g => g.Count() > 1).Select(g => g.Key);
        Assert.Empty(twice);
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void File_names_its_source(string path)
    {
        CaseFile file = CaseFile.Load(path);
        Assert.Equal(path[(path.IndexOf('/', StringComparison.Ordinal) + 1)..], file.Id);
        Assert.All(new[] { file.Title, file.Source.Publication, file.Source.Edition, file.Source.Where }, text => Assert.False(string.IsNullOrWhiteSpace(text)));
        Assert.NotEmpty(file.Notes);
        if (file.IsPublished)
            Assert.Contains(file.Source.Provenance, CaseSource.PublishedProvenances);
        else
            Assert.Equal(CaseSource.ConstructedProvenance, file.Source.Provenance);
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void Input_has_what_the_contract_requires(string path)
    {
        JsonObject input = CaseFile.Load(path).Input;
        foreach (string field in new[] { "schema", "method", "loadCases" })
            Assert.True(input.ContainsKey(field), $"{path}: no {field}");
        if (input["method"]!.GetValue<string>() == "NDS-2018")
        {
            foreach (string field in new[] { "kind", "format" })
                Assert.True(input["connection"]!.AsObject().ContainsKey(field), $"{path}: no connection/{field}");
            return;
        }

        foreach (string field in new[] { "constants", "positions" })
            Assert.True(input.ContainsKey(field), $"{path}: no {field}");
        foreach (string field in new[] { "strength", "thickness" })
            Assert.True(input["concrete"]!.AsObject().ContainsKey(field), $"{path}: no concrete/{field}");
        foreach (string field in new[] { "kind", "diameter", "steel", "effectiveEmbedment" })
            Assert.True(input["fastener"]!.AsObject().ContainsKey(field), $"{path}: no fastener/{field}");
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void Variants_have_names_of_their_own_and_change_the_input(string path)
    {
        CaseFile file = CaseFile.Load(path);
        Assert.Equal(file.Variants.Count, file.Variants.Select(v => v.Name).Where(name => name.Length > 0).Distinct().Count());
        Assert.All(file.Variants, v => Assert.False(JsonNode.DeepEquals(file.Input, v.ApplyTo(file.Input)), $"{path}: '{v.Name}' changes nothing"));
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void Tolerance_is_half_a_unit_of_the_last_printed_digit(string path)
    {
        foreach (var (name, _, expected, disagreements) in CaseFile.Load(path).Runs())
        {
            Assert.NotEmpty(expected);
            foreach (CaseValue value in expected.Concat(disagreements))
            {
                string where = $"{path} {name}: {value.Place}";
                if (value.IsText)
                {
                    Assert.True(value is { Printed: null, Tolerance: null, Unit: null, Times: 1 }, where);
                    continue;
                }

                Assert.True(value.Printed is not null && value.Tolerance is not null, where);
                var (number, halfUnit) = CaseValue.Read(value.Printed!);
                Assert.True(number == value.Value.GetDouble(), where);
                Assert.True(halfUnit == value.Tolerance, where);
                Assert.True(value.Unit is null || CaseUnits.Knows(value.Unit), where);
            }
        }
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void Values_stand_at_a_place_of_the_output(string path)
    {
        foreach (var (name, input, expected, disagreements) in CaseFile.Load(path).Runs())
        {
            var cases = input["loadCases"]!.AsArray().Select(c => c!["name"]!.GetValue<string>()).ToHashSet();
            foreach (CaseValue value in expected.Concat(disagreements))
            {
                string where = $"{path} {name}: {value.Place}";
                Assert.True(value.Contact is null ? value.Step is null != value.Field is null : value.Step is null && value.Field is null, where);
                Assert.True(value.Step is null || value.Mode is not null, where);
                bool known = value switch
                {
                    { Step: not null } => !value.IsText,
                    { Contact: not null } => value.Mode is null && value.Fastener is null && !value.IsText,
                    { Fastener: not null } => value.Mode is null && !value.IsText && CaseValue.FastenerFields.Contains(value.Field!),
                    { Mode: not null } => (value.IsText ? CaseValue.TextFields : CaseValue.NumberFields).Contains(value.Field!),
                    _ => value.Field == (value.IsText ? "verdict" : "loadFactor"),
                };
                Assert.True(known, where);
                bool caseless = value.Mode is null && value.Fastener is null && value.Contact is null;
                Assert.True(caseless ? value.Case is null : value.Case is null ? cases.Count == 1 : cases.Contains(value.Case), where);
            }

            Assert.All(expected, value => Assert.Null(value.Why));
            Assert.All(disagreements, value => Assert.False(string.IsNullOrWhiteSpace(value.Why)));
        }
    }

    [Theory]
    [InlineData("14 490", 14490, 0.5)]
    [InlineData("640\u2009000", 640000, 0.5)]
    [InlineData("14,200", 14200, 0.5)]
    [InlineData("0.955", 0.955, 0.0005)]
    [InlineData("4.0", 4, 0.05)]
    [InlineData("-2.5", -2.5, 0.05)]
    [InlineData("15.41702", 15.41702, 0.000005)]
    public void Printed_text_gives_the_tolerance(string printed, double value, double halfUnit) =>
        Assert.Equal((value, halfUnit), CaseValue.Read(printed));

    [Theory]
    [InlineData(1, "in", "mm", 25.4)]
    [InlineData(1, "kip", "kN", 4.4482216152605)]
    [InlineData(1, "ksi", "MPa", 6.894757293168361)]
    [InlineData(1, "in2", "mm2", 645.16)]
    [InlineData(2, "kip-ft", "lbf-in", 24000)]
    [InlineData(0.5, "", null, 0.5)]
    public void Units_convert_exactly(double value, string from, string? to, double expected) =>
        Assert.Equal(expected, CaseUnits.Convert(value, from, to), 1e-12 * expected);

    [Theory]
    [InlineData("kip", null)]
    [InlineData("", "kip")]
    [InlineData("kip", "in")]
    [InlineData("stone", "kip")]
    public void Units_that_do_not_fit_are_refused(string from, string? to) =>
        Assert.Throws<FormatException>(() => CaseUnits.Convert(1, from, to));

    // An output written by hand, so that the comparison itself is seen to fail.
    private const string Sample = """
        {
          "verdict": "holds", "loadFactor": 1.25,
          "modes": [
            { "id": "tension/breakout", "case": "A", "group": [0, 2], "status": "satisfied", "factor": 0.7,
              "nominal": { "value": 10.6, "unit": "kip" }, "steps": [ { "id": "N_b", "value": 22308.2, "unit": "lbf" }, { "id": "psi_ed_N", "value": 0.8666, "unit": "" } ] },
            { "id": "shear/breakout/+x/1", "case": "A", "status": "satisfied", "nominal": { "value": 5, "unit": "kip" } },
            { "id": "shear/breakout/+x/2", "case": "A", "status": "not satisfied", "nominal": { "value": 6, "unit": "kip" } },
            { "id": "tension/blowout/+x", "case": "A", "status": "not applicable", "reason": "far from the edge" }
          ],
          "fasteners": [ { "index": 0, "case": "A", "tension": { "value": 1.5, "unit": "kip" }, "shear": [0.5, -0.25], "unit": "kip" } ]
        }
        """;

    [Theory]
    [InlineData("""{ "mode": "tension/breakout", "step": "N_b", "value": 22308, "unit": "lbf", "printed": "22 308", "tolerance": 0.5 }""", true)]
    [InlineData("""{ "mode": "tension/breakout", "step": "N_b", "value": 22.31, "unit": "kip", "printed": "22.31", "tolerance": 0.005 }""", true)]
    [InlineData("""{ "mode": "tension/breakout", "step": "N_b", "value": 22.30, "unit": "kip", "printed": "22.30", "tolerance": 0.005 }""", false)]
    [InlineData("""{ "mode": "tension/breakout", "step": "N_b", "value": 22308, "printed": "22 308", "tolerance": 0.5 }""", false)]
    [InlineData("""{ "mode": "tension/breakout", "step": "N_cb", "value": 22308, "unit": "lbf", "printed": "22 308", "tolerance": 0.5 }""", false)]
    [InlineData("""{ "mode": "tension/breakout", "step": "psi_ed_N", "value": 0.867, "printed": "0.867", "tolerance": 0.0005 }""", true)]
    [InlineData("""{ "mode": "tension/breakout", "field": "nominal", "times": 2, "value": 21.2, "unit": "kip", "printed": "21.2", "tolerance": 0.05 }""", true)]
    [InlineData("""{ "mode": "tension/breakout", "field": "factor", "value": 0.75, "printed": "0.75", "tolerance": 0.005 }""", false)]
    [InlineData("""{ "mode": "tension/breakout", "field": "group", "value": "0, 2" }""", true)]
    [InlineData("""{ "mode": "tension/breakout", "field": "group", "value": "0, 1" }""", false)]
    [InlineData("""{ "mode": "tension/breakout", "case": "B", "field": "factor", "value": 0.70, "printed": "0.70", "tolerance": 0.005 }""", false)]
    [InlineData("""{ "mode": "tension/blowout", "field": "status", "value": "not applicable" }""", true)]
    [InlineData("""{ "mode": "tension/blowout", "field": "nominal", "value": 5, "unit": "kip", "printed": "5", "tolerance": 0.5 }""", false)]
    [InlineData("""{ "mode": "shear/breakout", "field": "status", "value": "satisfied" }""", false)]
    [InlineData("""{ "mode": "shear/breakout/+x", "field": "nominal", "value": 5, "unit": "kip", "printed": "5", "tolerance": 0.5 }""", false)]
    [InlineData("""{ "mode": "shear/breakout/+x/1", "field": "nominal", "value": 5, "unit": "kip", "printed": "5", "tolerance": 0.5 }""", true)]
    [InlineData("""{ "fastener": 0, "field": "shear y", "value": -250, "unit": "lbf", "printed": "-250", "tolerance": 0.5 }""", true)]
    [InlineData("""{ "fastener": 1, "field": "tension", "value": 1.5, "unit": "kip", "printed": "1.5", "tolerance": 0.05 }""", false)]
    [InlineData("""{ "field": "verdict", "value": "does not hold" }""", false)]
    [InlineData("""{ "field": "loadFactor", "value": 1.25, "printed": "1.25", "tolerance": 0.005 }""", true)]
    public void Comparison_can_fail(string stated, bool agrees)
    {
        CaseValue value = JsonSerializer.Deserialize<CaseValue>(stated, JsonSerializerOptions.Web)!;
        JsonObject output = JsonNode.Parse(Sample)!.AsObject();
        CaseComparison comparison = CaseComparison.Of(output, value);
        Assert.True(agrees == comparison.Agrees, comparison.ToString());
        Assert.Equal(agrees ? 0 : 1, Failures(output, [value], []).Length);
        Assert.Equal(agrees || comparison.Problem is not null ? 1 : 0, Failures(output, [], [value]).Length);
    }
}
