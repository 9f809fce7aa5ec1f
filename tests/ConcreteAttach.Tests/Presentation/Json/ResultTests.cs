using System.Text.Json.Nodes;
using ConcreteAttach.Aci318;
using ConcreteAttach.Actions;
using ConcreteAttach.Calculation;
using ConcreteAttach.Geometry;
using ConcreteAttach.Presentation.Json;
using ConcreteAttach.Quantities;
using ConcreteAttach.Verification;

namespace ConcreteAttach.Tests.Presentation.Json;

public sealed class ResultTests
{
    private static readonly JsonObject Example = Result(ContractExample.Input);

    [Fact]
    public void Result_has_the_fields_of_the_contract_in_its_order()
    {
        Assert.Equal(
            ["schema", "title", "library", "method", "constants", "verdict", "governing", "loadFactor", "modes", "fasteners", "assumptions", "notices", "cautions"],
            Example.Select(field => field.Key));
        Assert.Equal("concreteattach/1", Text(Example["schema"]));
        Assert.Equal("Canopy post, north pier", Text(Example["title"]));
        Assert.Equal("ACI 318-19", Text(Example["method"]));
        Assert.Equal("inch-pound", Text(Example["constants"]));
        Assert.Equal(VerificationJson.LibraryVersion, Text(Example["library"]));
        Assert.Equal("holds", Text(Example["verdict"]));
        Assert.Equal(["mode", "case", "utilization"], Example["governing"]!.AsObject().Select(field => field.Key));
    }

    [Fact]
    public void Mode_has_the_fields_of_the_contract_in_its_order()
    {
        JsonObject mode = Mode(Example, "tension/breakout");

        Assert.Equal(
            ["id", "case", "group", "status", "clause", "nominal", "factor", "design", "demand", "utilization", "steps"], mode.Select(field => field.Key));
        Assert.Equal("1.2D + 1.0W", Text(mode["case"]));
        Assert.Equal([0, 1, 2, 3], mode["group"]!.AsArray().Select(n => n!.GetValue<int>()));
        Assert.Equal("kip", Text(mode["nominal"]!["unit"]));
    }

    // Worked by hand from ACI 318-19 17.6.2, its formulas and constants from memory.
    [Fact]
    public void Values_are_those_of_a_hand_calculation()
    {
        JsonObject mode = Mode(Example, "tension/breakout");
        double nb = 24 * Math.Sqrt(4000) * Math.Pow(8, 1.5);
        const double Anc = (12 + 6 + 6) * (12 + 6 + 6); // 12 in. beyond the fasteners inward, 6 in. between them, 6 in. to the edge
        double edge = 0.7 + (0.3 * 6 / 12);
        double ncbg = Anc / (9 * 8 * 8) * edge * nb;

        Assert.Equal(nb, Step(mode, "N_b"), nb * 1e-12);
        Assert.Equal(Anc, Step(mode, "A_Nc"), 1e-9);
        Assert.Equal(edge, Step(mode, "psi_ed_N"), 1e-12);
        Assert.Equal(ncbg / 1000, mode["nominal"]!["value"]!.GetValue<double>(), 1e-9);
        Assert.Equal(0.7, mode["factor"]!.GetValue<double>());
        Assert.Equal(0.7 * ncbg / 1000, mode["design"]!["value"]!.GetValue<double>(), 1e-9);
        Assert.Equal(6, mode["demand"]!["value"]!.GetValue<double>(), 1e-12);
        Assert.Equal(6000 / (0.7 * ncbg), mode["utilization"]!.GetValue<double>(), 1e-12);
    }

    [Fact]
    public void Step_says_symbol_unit_clause_formula_and_substitution()
    {
        JsonNode step = Mode(Example, "tension/breakout")["steps"]!.AsArray().Single(s => Text(s!["id"]) == "psi_ed_N")!;

        Assert.Equal("ψ_ed,N", Text(step["symbol"]));
        Assert.Equal("", Text(step["unit"]));
        Assert.StartsWith("17.6.2.4.1", Text(step["clause"]), StringComparison.Ordinal);
        Assert.Contains("c_a,min", Text(step["formula"]), StringComparison.Ordinal);
        Assert.Contains("1.5 · 8", Text(step["substitution"]), StringComparison.Ordinal);
    }

    [Fact]
    public void An_id_stands_once_in_a_mode_and_has_the_value_of_the_sheet()
    {
        foreach (AttachmentVerification verification in Samples())
        {
            JsonObject result = JsonNode.Parse(VerificationJson.Write(verification))!.AsObject();
            foreach (FailureMode mode in verification.Modes.Where(m => m.Sheet is not null))
            {
                JsonArray steps = result["modes"]!.AsArray()
                    .First(m => Text(m!["id"]) == mode.Id && (mode.LoadCase is null || Text(m["case"]) == mode.LoadCase))!["steps"]!.AsArray();
                Assert.Equal(steps.Count, steps.Select(s => Text(s!["id"])).Distinct().Count());
                Assert.All(steps, s => Assert.Equal(mode.Sheet!.Find(Text(s!["id"]))!.Value, s!["value"]!.GetValue<double>()));
            }
        }
    }

    // No method writes such a sheet today; the contract holds whatever comes.
    [Fact]
    public void A_symbol_twice_on_a_sheet_stands_once_and_what_is_not_finite_is_left_out()
    {
        AttachmentVerification example = Assert.IsType<AttachmentVerification>(VerificationJson.Read(ContractExample.Input).Verify());
        var recorder = new SheetRecorder(example.System);
        TracedNumber.Step(recorder, "N_b", TracedNumber.Literal(1), Dimension.Force, "17.6.2.2.1");
        TracedNumber.Step(recorder, "N_b", TracedNumber.Literal(2), Dimension.Force, "17.6.2.2.3");
        TracedNumber.Given(recorder, "c_a_min", double.PositiveInfinity, Dimension.Length, null);
        ModeResult result = ModeResult.Checked(
            FailureModeKind.ConcreteBreakoutTension, ConcreteSide.None, 1, example.System, nominal: 0, factor: 0.7, demand: 5, utilization: double.PositiveInfinity);
        var mode = new FailureMode(
            result, "tension/breakout", null, example.LoadCases[0].Name, [0], "17.6.2", null, SafetyFormat.StrengthDesign, recorder.ToSheet());
        var verification = new AttachmentVerification(
            example.Method, example.Constants, example.System, example.Attachment, example.LoadCases, [mode], example.Forces, [], [], [], []);

        JsonNode document = JsonNode.Parse(VerificationJson.Write(verification))!;

        JsonNode step = Assert.Single(document["modes"]![0]!["steps"]!.AsArray())!;
        Assert.Equal(("N_b", 1, "17.6.2.2.1"), (Text(step["id"]), step["value"]!.GetValue<double>(), Text(step["clause"])));
        Assert.False(document["modes"]![0]!.AsObject().ContainsKey("utilization"));
        Assert.Null(document["governing"]!["utilization"]);
        Assert.True(Schemas.Result.Evaluate(document).IsValid);
    }

    [Fact]
    public void Letters_and_signs_stay_readable()
    {
        string text = VerificationJson.Verify(ContractExample.With(("/title", "\"Stütze <Nord> & 'ψ ≤ 1' ± \\\"5/8\\\"\"")), indented: false);

        Assert.Contains("Stütze <Nord> & 'ψ ≤ 1' ± \\\"5/8\\\"", text, StringComparison.Ordinal);
        Assert.Contains("ψ_ed,N", text, StringComparison.Ordinal);
        Assert.Contains("√f'_c", text, StringComparison.Ordinal);
        Assert.DoesNotContain("\\u", text, StringComparison.Ordinal);
        Assert.DoesNotContain("\n", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Both_layouts_say_the_same()
    {
        string indented = VerificationJson.Verify(ContractExample.Input);
        string line = VerificationJson.Verify(ContractExample.Input, indented: false);

        Assert.True(JsonNode.DeepEquals(JsonNode.Parse(indented), JsonNode.Parse(line)));
        Assert.DoesNotContain('\n', line);
        Assert.DoesNotContain('\r', indented);
        Assert.Contains("\n        {\"id\":\"N_b\",", indented, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_title_there_is_none()
    {
        Assert.False(Result(ContractExample.With(("/title", null))).ContainsKey("title"));
        Assert.False(Result(ContractExample.With(("/title", "null"))).ContainsKey("title"));
    }

    [Fact]
    public void Forces_of_the_si_constants_are_in_kilonewtons_and_its_steps_in_newtons()
    {
        JsonObject result = Result(ContractExample.With(("/constants", "\"SI\"")));
        JsonObject mode = Mode(result, "tension/breakout");

        Assert.Equal("SI", Text(result["constants"]));
        Assert.Equal("kN", Text(mode["nominal"]!["unit"]));
        Assert.Equal(6 * 4.4482216152605, mode["demand"]!["value"]!.GetValue<double>(), 1e-9);
        Assert.Equal("N", Text(mode["steps"]!.AsArray().Single(s => Text(s!["id"]) == "N_b")!["unit"]));
        Assert.Equal(8 * 25.4, Step(mode, "h_ef"), 1e-12);
        Assert.Equal("kN", Text(result["fasteners"]![0]!["unit"]));
    }

    [Fact]
    public void Fasteners_are_listed_for_each_load_case()
    {
        JsonArray fasteners = Result(ContractExample.With(("/loadCases", """[{"name":"A","N":"6 kip"},{"name":"B","N":"-6 kip","Vy":"2 kip"}]""")))["fasteners"]!.AsArray();

        Assert.Equal(8, fasteners.Count);
        Assert.Equal(["index", "case", "tension", "shear", "unit"], fasteners[0]!.AsObject().Select(field => field.Key));
        JsonNode last = fasteners[7]!;
        Assert.Equal("B", Text(last["case"]));
        Assert.Equal(3, last["index"]!.GetValue<int>());
        Assert.Equal(-1.5, last["tension"]!["value"]!.GetValue<double>(), 1e-12);
        Assert.Equal([0, 0.5], last["shear"]!.AsArray().Select(v => v!.GetValue<double>()));
        Assert.Equal("kip", Text(last["unit"]));
    }

    [Fact]
    public void Detailing_stands_under_each_load_case()
    {
        JsonArray modes = Result(ContractExample.With(("/loadCases", """[{"name":"A","N":"6 kip"},{"name":"B","N":"3 kip"}]""")))["modes"]!.AsArray();

        Assert.All(modes, mode => Assert.True(mode!["case"] is JsonValue));
        foreach (string id in new[] { "detailing/spacing", "detailing/edge", "detailing/thickness" })
        {
            Assert.Equal(["A", "B"], modes.Where(m => Text(m!["id"]) == id).Select(m => Text(m!["case"])));
        }

        Assert.Equal(["A", "B"], modes.Select(m => Text(m!["case"])).Distinct());
        string[] cases = [.. modes.Select(m => Text(m!["case"]))];
        Assert.Equal(cases.Order(StringComparer.Ordinal), cases);
    }

    [Fact]
    public void A_rule_of_detailing_that_governs_has_the_first_load_case_and_no_utilization()
    {
        // Spacing 2 in., less than 4 d_a = 2.5 in.; light loads.
        JsonObject result = Result(ContractExample.With(
            ("/positions", """[["0 in","0 in"],["2 in","0 in"]]"""), ("/loadCases", """[{"name":"A","N":"1 kip"},{"name":"B","N":"2 kip"}]""")));

        Assert.Equal("does not hold", Text(result["verdict"]));
        Assert.Equal("detailing/spacing", Text(result["governing"]!["mode"]));
        Assert.Equal("A", Text(result["governing"]!["case"]));
        Assert.Null(result["governing"]!["utilization"]);
        Assert.True(result["governing"]!.AsObject().ContainsKey("utilization"));
        Assert.True(result.ContainsKey("loadFactor") && result["loadFactor"] is null);
    }

    [Fact]
    public void Without_demand_the_load_factor_is_null()
    {
        JsonObject result = Result(ContractExample.With(("/loadCases", """[{"name":"nothing"}]""")));

        Assert.True(result.ContainsKey("loadFactor") && result["loadFactor"] is null);
    }

    [Fact]
    public void Not_covered_and_not_applicable_carry_their_reason_and_no_numbers()
    {
        JsonObject result = Result(ContractExample.With(
            ("/fastener/kind", "\"hooked bolt\""), ("/fastener/bearingArea", null), ("/fastener/hookExtension", "\"1 in\"")));
        JsonObject pullout = Mode(result, "tension/pullout");

        Assert.Equal("not covered", Text(result["verdict"]));
        Assert.Null(result["loadFactor"]);
        Assert.Equal("not covered", Text(pullout["status"]));
        Assert.Contains("3 d_a", Text(pullout["reason"]), StringComparison.Ordinal);
        Assert.False(pullout.ContainsKey("nominal") || pullout.ContainsKey("factor") || pullout.ContainsKey("utilization"));
        Assert.All(
            result["modes"]!.AsArray().Where(m => Text(m!["status"]) is "not covered" or "not applicable"),
            m => Assert.False(string.IsNullOrWhiteSpace(Text(m!["reason"]))));
    }

    [Fact]
    public void Only_load_cases_whose_sheets_were_asked_for_carry_steps()
    {
        VerificationRequest request = VerificationJson.Read(ContractExample.With(("/loadCases", """[{"name":"A","N":"2 kip"},{"name":"B","N":"6 kip"}]""")));

        Assert.Equal(["B"], CasesWithSteps(SheetScope.Governing));
        Assert.Equal(["A", "B"], CasesWithSteps(SheetScope.All));
        Assert.Empty(CasesWithSteps(SheetScope.None));

        string[] CasesWithSteps(SheetScope sheets) =>
        [
            .. JsonNode.Parse(VerificationJson.Write(request.Verify(sheets)))!["modes"]!.AsArray()
                .Where(m => Text(m!["id"]) == "tension/steel" && m["steps"] is not null).Select(m => Text(m!["case"])),
        ];
    }

    [Fact]
    public void Cautions_and_assumptions_are_said()
    {
        Assert.Contains(Example["cautions"]!.AsArray(), c => Text(c).Contains("licensed professional", StringComparison.Ordinal));
        Assert.Contains(Example["assumptions"]!.AsArray(), a => Text(a).Contains("ACI 318-19", StringComparison.Ordinal));
    }

    [Fact]
    public void Request_has_what_the_document_says()
    {
        AttachmentRequest request = Assert.IsType<AttachmentRequest>(VerificationJson.Read(ContractExample.With(
            ("/concrete/density", "\"110 lb/ft3\""), ("/concrete/edgeReinforcement", "\"bar and stirrups\""), ("/concrete/cracked", "false"),
            ("/options", """{"closeEdges":"all fasteners","area":"bounding","deep":"extend"}"""), ("/loadCases/0/at", """["1 in","-2 in"]"""))));

        Assert.Equal("Canopy post, north pier", request.Title);
        Assert.Equal(new Aci318Options { Area = AreaReading.Bounding, CloseEdges = CloseEdgesReading.AllFasteners, Deep = DeepReading.Extend }, request.Aci318.Options);
        Assert.Same(Aci318Edition.InchPound2019, request.Aci318.Edition);
        Assert.Equal(110, request.Attachment.Concrete.Density.Value!.Value.PoundsPerCubicFoot, 1e-9);
        Assert.Equal(ConcreteAttach.Materials.EdgeReinforcement.BarAndStirrups, request.Attachment.Concrete.EdgeReinforcement);
        Assert.False(request.Attachment.Concrete.IsCracked);
        Assert.Null(request.Attachment.Concrete.Edges.MinusX);
        Assert.Equal(9, request.Attachment.Concrete.Edges.PlusX!.Value.Inches);
        Assert.Equal("ASTM F1554 Grade 36", request.Attachment.Fastener.Steel.Designation);
        Assert.Equal(4, request.Attachment.Layout.Positions.Length);
        Assert.Equal(-2, request.LoadCases[0].At.Y.Inches);
        Assert.Equal(2, request.LoadCases[0].Vx.KilopoundsForce);
    }

    [Fact]
    public void Null_is_as_good_as_absent()
    {
        string sparse = ContractExample.With(
            ("/concrete/density", null), ("/concrete/cracked", null), ("/concrete/supplementaryReinforcement", null), ("/concrete/edgeReinforcement", null),
            ("/concrete/edges", """{"+x":"9 in","+y":"9 in"}"""), ("/loadCases", """[{"name":"1.2D + 1.0W","N":"6 kip","Vx":"2 kip"}]"""), ("/options", null));
        string nulls = ContractExample.With(
            ("/concrete/density", "null"), ("/concrete/cracked", "null"), ("/concrete/supplementaryReinforcement", "null"), ("/concrete/edgeReinforcement", "null"),
            ("/concrete/aggregateSize", "null"), ("/concrete/splittingReinforcement", "null"), ("/concrete/outline", "null"),
            ("/fastener/tensileArea", "null"), ("/fastener/hookExtension", "null"), ("/fastener/weldedToPlate", "null"), ("/fastener/qualification", "null"),
            ("/loadCases/0/Mz", "null"), ("/loadCases/0/at", "null"), ("/loadCases/0/sustainedTension", "null"), ("/options", "null"));

        Assert.True(JsonNode.DeepEquals(Example, Result(sparse)));
        Assert.True(JsonNode.DeepEquals(Example, Result(nulls)));
    }

    [Fact]
    public void Units_of_the_input_do_not_matter()
    {
        JsonObject metric = Result(ContractExample.With(
            ("/concrete/thickness", "\"355.6 mm\""), ("/concrete/cover", "\"3.81 cm\""), ("/concrete/edges", """{"+x":"228.6 mm","+y":"0'-9\""}"""),
            ("/fastener/diameter", "\"15.875 mm\""), ("/fastener/effectiveEmbedment", "\"203.2 mm\""),
            ("/positions", """[["-76.2 mm","-7.62 cm"],["3 in","-0.25 ft"],["76.2 mm","0.0762 m"],["-3\"","3 in"]]"""), ("/loadCases/0/N", "\"6000 lbf\"")));

        foreach (JsonNode? mode in Example["modes"]!.AsArray().Where(m => m!["nominal"] is not null))
        {
            double expected = mode!["nominal"]!["value"]!.GetValue<double>();
            Assert.Equal(expected, Mode(metric, Text(mode["id"]))["nominal"]!["value"]!.GetValue<double>(), expected * 1e-12);
        }
    }

    [Fact]
    public void A_byte_order_mark_is_passed_over()
    {
        Assert.Equal("Canopy post, north pier", VerificationJson.Read("\uFEFF" + ContractExample.Input).Title);
        Assert.Equal("Canopy post, north pier", VerificationJson.Read([0xEF, 0xBB, 0xBF, .. System.Text.Encoding.UTF8.GetBytes(ContractExample.Input)]).Title);
    }

    [Fact]
    public void Error_document_has_the_fields_of_the_contract()
    {
        JsonObject error = JsonNode.Parse(VerificationJson.WriteError(new InputException("/fastener/diameter", "5/8 lb", "a length")))!.AsObject();

        Assert.Equal(["error"], error.Select(field => field.Key));
        Assert.Equal(["path", "found", "message", "permitted"], error["error"]!.AsObject().Select(field => field.Key));
        Assert.Equal("/fastener/diameter", Text(error["error"]!["path"]));
        Assert.Equal("5/8 lb", Text(error["error"]!["found"]));
        Assert.Equal("a length", Text(error["error"]!["permitted"]));
        Assert.Equal("/fastener/diameter: found 5/8 lb, permitted: a length", Text(error["error"]!["message"]));
    }

    [Fact]
    public void Version_is_that_of_the_assembly() =>
        Assert.Equal(typeof(VerificationJson).Assembly.GetName().Version!.ToString(3), VerificationJson.LibraryVersion);

    private static IEnumerable<AttachmentVerification> Samples() =>
        new[]
        {
            ContractExample.Input,
            ContractExample.With(("/loadCases/0/Mx", "\"20 kip-in\""), ("/loadCases/0/My", "\"-12 kip-in\""), ("/loadCases/0/Mz", "\"9 kip-in\""), ("/concrete/edges/-x", "\"4 in\"")),
            ContractExample.With(("/concrete/edges/+x", "\"5 in\""), ("/fastener/effectiveEmbedment", "\"12 in\""), ("/constants", "\"SI\"")),
            ContractExample.With(("/fastener/kind", "\"hooked bolt\""), ("/fastener/bearingArea", null), ("/fastener/hookExtension", "\"2.5 in\"")),
        }.Select(text => Assert.IsType<AttachmentVerification>(VerificationJson.Read(text).Verify()));

    private static JsonObject Result(string input)
    {
        JsonObject result = JsonNode.Parse(VerificationJson.Verify(input))!.AsObject();
        Assert.False(result.ContainsKey("error"), result.ToJsonString());
        return result;
    }

    private static JsonObject Mode(JsonObject result, string id) => result["modes"]!.AsArray().First(m => Text(m!["id"]) == id)!.AsObject();

    private static double Step(JsonObject mode, string id) => mode["steps"]!.AsArray().Single(s => Text(s!["id"]) == id)!["value"]!.GetValue<double>();

    private static string Text(JsonNode? node) => node!.GetValue<string>();
}
