using System.Text.Json.Nodes;
using ConcreteAttach.Fasteners;
using ConcreteAttach.Presentation.Json;
using ConcreteAttach.Quantities;
using ConcreteAttach.Verification;

namespace ConcreteAttach.Tests.Presentation.Json;

/// <summary>The qualification of a post-installed product: strictly read, all that is wrong in one error, all that is missing in one notice.</summary>
public sealed class QualificationTests
{
    private const string Minimum =
        """{"minimum":{"environment":"indoor","concreteAge":"28 d","installationTemperature":"60 F","peakTemperature":"40 C","moisture":"dry","drilling":"rotary impact"}}""";

    /// <summary>Kind, qualification, where the error is below it, parts of what was found and what is permitted, whether the schema sees it too.</summary>
    public static TheoryData<string, string, string, string, string, bool> Wrong => new()
    {
        { "screw", "[]", "", "an array", "an object", true },
        { "screw", """{"maker":"x"}""", "/maker", "an unknown field", "source, category", true },
        { "screw", """{"source":5}""", "/source", "the number 5", "a text", true },
        { "screw", """{"category":4}""", "/category", "the number 4", "1, 2 or 3", true },
        { "screw", """{"category":"1"}""", "/category", "1", "1, 2 or 3", true },
        { "screw", """{"category":1.5}""", "/category", "1.5", "1, 2 or 3", true },
        { "screw", """{"k_c":17}""", "/k_c", "the number 17", "cracked and uncracked", true },
        { "screw", """{"k_c":{"cracked":0}}""", "/k_c/cracked", "the number 0", "greater than 0", true },
        { "screw", """{"k_c":{"uncracked":"24"}}""", "/k_c/uncracked", "24", "a number", true },
        { "screw", """{"k_c":{"both":24}}""", "/k_c/both", "an unknown field", "cracked, uncracked", true },
        { "screw", """{"criticalEdgeDistance":"0 in"}""", "/criticalEdgeDistance", "0 in", "greater than 0", false },
        { "screw", """{"criticalEdgeDistance":4}""", "/criticalEdgeDistance", "the number 4", "a length", true },
        { "screw", """{"pullout":"governs"}""", "/pullout", "governs", "does not govern", true },
        { "screw", """{"pullout":{"cracked":"0 kip"}}""", "/pullout/cracked", "0 kip", "greater than 0", false },
        { "screw", """{"pullout":{"cracked":"4 kip","at":"2500 psi","exponent":1.1}}""", "/pullout/exponent", "the number 1.1", "0 to 1", true },
        { "screw", """{"pullout":{"cracked":"4 kip","exponent":0.5}}""", "/pullout/at", "nothing", "for the exponent", false },
        { "screw", """{"pullout":{"cracked":"4 kip","at":"0 psi"}}""", "/pullout/at", "0 psi", "greater than 0", false },
        { "screw", $$"""{"bondStress":{{Minimum}}}""", "/bondStress", "an unknown field", "pullout", true },
        { "screw", """{"separatedSleeve":true}""", "/separatedSleeve", "true", "torque-controlled", true },
        { "screw", """{"steelShear":"-1 kip"}""", "/steelShear", "-1 kip", "greater than 0", false },
        { "screw", """{"minimumSpacing":"0 in"}""", "/minimumSpacing", "0 in", "greater than 0", false },
        { "screw", """{"minimumEdge":"0 in"}""", "/minimumEdge", "0 in", "greater than 0", false },
        { "screw", """{"minimumThickness":"0 in"}""", "/minimumThickness", "0 in", "greater than 0", false },
        { "screw", """{"ductile":"yes"}""", "/ductile", "yes", "true or false", true },
        { "screw", """{"seismic":{"N_p":"1 kip"}}""", "/seismic/N_p", "an unknown field", "pullout, steelShear", true },
        { "screw", """{"seismic":{"pullout":"0 kip"}}""", "/seismic/pullout", "0 kip", "greater than 0", false },
        { "adhesive rod", """{"pullout":"does not govern"}""", "/pullout", "an unknown field", "bondStress", true },
        { "adhesive rod", """{"bondStress":"900 psi"}""", "/bondStress", "900 psi", "cracked and uncracked", true },
        { "adhesive rod", """{"bondStress":{"cracked":"0 psi"}}""", "/bondStress/cracked", "0 psi", "greater than 0", false },
        { "adhesive rod", """{"bondStress":{"minimum":"indoor"}}""", "/bondStress/minimum", "indoor", "environment", true },
        { "adhesive rod", $$"""{"bondStress":{"cracked":"300 psi",{{Minimum[1..]}}}""", "/bondStress/cracked", "300 psi", "from the table", true },
        { "adhesive rod", $$"""{"bondStress":{{Minimum.Replace("28 d", "-1 d", StringComparison.Ordinal)}}}""", "/bondStress/minimum/concreteAge", "-1 d", "0 or more", true },
        { "adhesive rod", $$"""{"bondStress":{{Minimum.Replace("28 d", "28", StringComparison.Ordinal)}}}""", "/bondStress/minimum/concreteAge", "28", "28 d", true },
        { "adhesive rod", $$"""{"bondStress":{{Minimum.Replace("60 F", "60", StringComparison.Ordinal)}}}""", "/bondStress/minimum/installationTemperature", "60", "50 F or 10 C", true },
        { "adhesive rod", $$"""{"bondStress":{{Minimum.Replace("dry", "damp", StringComparison.Ordinal)}}}""", "/bondStress/minimum/moisture", "damp", "saturated", true },
        { "adhesive rod", $$"""{"bondStress":{{Minimum.Replace("rotary impact", "by hand", StringComparison.Ordinal)}}}""", "/bondStress/minimum/drilling", "by hand", "rotary impact", true },

        // What cannot be true together.
        { "screw", """{"nominalEmbedment":"2 in"}""", "", "nominalEmbedment 2 in", "at least effectiveEmbedment 2.5 in", false },
        { "screw", """{"nominalEmbedment":"3 in","holeDepth":"2.75 in"}""", "", "holeDepth 2.75 in", "at least the embedment 3 in", false },
        { "adhesive rod", """{"holeDiameter":"0.375 in"}""", "", "holeDiameter 0.375 in", "above the diameter 0.375 in", false },
    };

    [Theory]
    [MemberData(nameof(Wrong))]
    public void Error_names_the_place_what_was_found_and_what_is_permitted(string kind, string qualification, string place, string found, string permitted, bool isSeenBySchema)
    {
        string input = Input(kind, qualification);

        InputException error = Assert.Throws<InputException>(() => VerificationJson.Read(input).Verify());

        Assert.Equal($"/fastener/qualification{place}", error.Parameter);
        Assert.Contains(found, error.Found, StringComparison.Ordinal);
        Assert.Contains(permitted, error.Permitted, StringComparison.Ordinal);
        Assert.Equal(isSeenBySchema, !Schemas.Input.Evaluate(JsonNode.Parse(input)).IsValid);
    }

    [Fact]
    public void All_that_is_wrong_comes_in_one_error()
    {
        InputException error = Assert.Throws<InputException>(() => VerificationJson.Read(Input(
            "screw", """{"category":4,"k_c":{"cracked":-1,"uncracked":24},"pullout":{"exponent":0.5},"minimumEdge":"0 in"}""")));

        Assert.Equal("/fastener/qualification", error.Parameter);
        Assert.Equal("category the number 4; k_c/cracked the number -1; minimumEdge 0 in; pullout/at nothing", error.Found);
        Assert.All(new[] { "category: 1, 2 or 3", "k_c/cracked: ", "pullout/at: ", "minimumEdge: greater than 0" }, text => Assert.Contains(text, error.Permitted, StringComparison.Ordinal));
    }

    [Fact]
    public void Conditions_of_the_table_that_are_missing_come_in_one_error()
    {
        InputException error = Assert.Throws<InputException>(() => VerificationJson.Read(Input("adhesive rod", """{"category":1,"bondStress":{"minimum":{"environment":"indoor","moisture":"dry"}}}""")));

        Assert.Equal("/fastener/qualification", error.Parameter);
        Assert.All(new[] { "concreteAge", "installationTemperature", "peakTemperature", "drilling" }, name => Assert.Contains($"bondStress/minimum/{name} nothing", error.Found, StringComparison.Ordinal));
    }

    [Fact]
    public void Data_that_contradict_each_other_come_in_one_error()
    {
        InputException error = Assert.Throws<InputException>(() => VerificationJson.Read(Input("screw", """{"nominalEmbedment":"2 in","holeDepth":"1 in"}""")).Verify());

        Assert.Equal("/fastener/qualification", error.Parameter);
        Assert.Equal("nominalEmbedment 2 in; holeDepth 1 in", error.Found);
    }

    [Theory]
    [InlineData("screw", "category, pullout.cracked")]
    [InlineData("adhesive rod", "category, bondStress.cracked, bondStress.uncracked")]
    public void Without_a_qualification_nothing_is_taken_to_hold_and_one_notice_says_what_is_missing(string kind, string missing)
    {
        VerificationResult verification = VerificationJson.Read(Input(kind, "null")).Verify();

        Assert.Equal(Verdict.NotCovered, verification.Verdict);
        Assert.Null(verification.LoadFactor);
        Assert.Contains(verification.Notices, n => n.Contains($": {missing}.", StringComparison.Ordinal));
        Assert.All(verification.Modes.Where(m => m.Kind is FailureModeKind.ConcreteBreakoutTension or FailureModeKind.Bond || (m.Kind == FailureModeKind.Pullout && kind == "screw")), m =>
        {
            Assert.Equal(ModeStatus.NotCovered, m.Status);
            Assert.Contains("category", m.Reason, StringComparison.Ordinal);
        });
    }

    [Theory]
    [InlineData("headed bolt", "/fastener/qualification", """{"category":1}""")]
    [InlineData("headed bolt", "/fastener/installationDirection", "\"upward\"")]
    [InlineData("screw", "/fastener/installationDirection", "\"upward\"")]
    [InlineData("screw", "/fastener/bearingArea", "\"1 in2\"")]
    [InlineData("screw", "/fastener/hookExtension", "\"1 in\"")]
    [InlineData("adhesive bar", "/fastener/weldedToPlate", """{"thickness":"1 in"}""")]
    public void What_does_not_belong_to_a_kind_is_refused(string kind, string pointer, string json)
    {
        string input = ContractExample.With(("/fastener/kind", $"\"{kind}\""), ("/fastener/bearingArea", null), (pointer, json));

        Assert.Equal(pointer, Assert.Throws<InputException>(() => VerificationJson.Read(input)).Parameter);
        Assert.False(Schemas.Input.Evaluate(JsonNode.Parse(input)).IsValid);
    }

    [Fact]
    public void Every_field_of_the_report_reaches_the_model()
    {
        const string Qualification = """
            {"source":"invented report","category":2,"uncrackedOnly":true,"k_c":{"cracked":17,"uncracked":24},"criticalEdgeDistance":"6 in","pullout":{"cracked":"4 kip","uncracked":"5 kip","at":"2500 psi","exponent":0.5},
             "separatedSleeve":true,"steelShear":"3 kip","ductile":true,"minimumSpacing":"3 in","minimumEdge":"2 in","minimumThickness":"5 in","nominalEmbedment":"3 in","holeDiameter":"3/8 in","holeDepth":"3.5 in",
             "seismic":{"pullout":"2 kip","steelShear":"2.5 kip"}}
            """;
        var fastener = Assert.IsType<TorqueControlledExpansion>(Assert.IsType<AttachmentRequest>(VerificationJson.Read(Input("torque-controlled expansion", Qualification))).Attachment.Fastener);
        MechanicalQualification data = fastener.Qualification;

        Assert.True(fastener.HasSeparatedSleeve);
        Assert.Equal(("invented report", 2, true, true), (data.Source, data.Category, data.IsForUncrackedConcreteOnly, data.IsDuctile));
        Assert.Equal((17, 24, MeasurementSystem.PoundInch), (data.BreakoutCoefficient!.Cracked, data.BreakoutCoefficient.Uncracked, data.BreakoutCoefficient.System));
        Assert.Equal("4 kip cracked, 5 kip uncracked, at 2500 psi, exponent 0.5", data.Pullout!.ToString());
        Assert.Equal("N_p 2 kip, V_sa 2.5 kip", data.Seismic!.ToString());
        Assert.Equal(
            "category 2, for uncracked concrete only, k_c 17 cracked, 24 uncracked, c_ac 6 in, V_sa 3 kip, steel element ductile, least spacing 3 in, least edge distance 2 in, least thickness 5 in, "
            + "nominal embedment 3 in, diameter of the hole 0.375 in, depth of the hole 3.5 in",
            data.ToString());
    }

    [Fact]
    public void Sustained_tension_of_one_load_case_lowers_the_minimum_bond_of_all()
    {
        string input = ContractExample.With(
            ("/fastener", $$$"""{"kind":"adhesive rod","diameter":"5/8 in","steel":"ASTM A193 B7","effectiveEmbedment":"6 in","installationDirection":"upward","qualification":{"category":1,"bondStress":{{{Minimum}}}}}"""),
            ("/loadCases", """[{"name":"dead","N":"0.5 kip","sustainedTension":"0.5 kip"},{"name":"wind","N":"1 kip"}]"""));
        AttachmentVerification both = Assert.IsType<AttachmentVerification>(VerificationJson.Read(input).Verify());
        JsonNode alone = JsonNode.Parse(input)!;
        alone["loadCases"]!.AsArray().RemoveAt(0);
        AttachmentVerification one = Assert.IsType<AttachmentVerification>(VerificationJson.Read(alone.ToJsonString()).Verify());

        Assert.Equal(0.4 * Bond(one).Nominal!.Value.PoundsForce, Bond(both).Nominal!.Value.PoundsForce, 1e-9);
        Assert.Contains(both.Notices, n => n.Contains("certified installer and continuous inspection are required", StringComparison.Ordinal));
        Assert.DoesNotContain(one.Notices, n => n.Contains("certified installer", StringComparison.Ordinal));
        Assert.Equal(ModeStatus.NotApplicable, both.Modes.Single(m => m.Kind == FailureModeKind.BondSustained && m.LoadCase == "wind").Status);

        // The sustained check takes no part in the interaction, but the load factor knows it.
        FailureMode sustained = both.Modes.Single(m => m.Kind == FailureModeKind.BondSustained && m.LoadCase == "dead");
        Assert.True(both.LoadFactor <= 1 / sustained.Utilization);

        static FailureMode Bond(AttachmentVerification verification) => verification.Modes.First(m => m.Kind == FailureModeKind.Bond && m.LoadCase == "wind");
    }

    private static string Input(string kind, string qualification) => ContractExample.With(
        ("/fastener", $$"""{"kind":"{{kind}}","diameter":"3/8 in","thread":"UNC","steel":"ASTM A193 B7","effectiveEmbedment":"2.5 in","qualification":{{qualification}}}"""));
}
