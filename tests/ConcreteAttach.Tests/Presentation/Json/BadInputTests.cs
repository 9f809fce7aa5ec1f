using System.Text.Json.Nodes;
using ConcreteAttach.Presentation.Json;
using ConcreteAttach.Quantities;

namespace ConcreteAttach.Tests.Presentation.Json;

public sealed class BadInputTests
{
    /// <summary>
    /// Where the example of the contract is changed and to what (null: taken out); where the error is, or null for the same place; parts of
    /// what it says was found and is permitted; whether the JSON Schema sees it too.
    /// </summary>
    public static TheoryData<string, string?, string?, string, string, bool> Changes => new()
    {
        // The document.
        { "/schema", null, null, "nothing", "concreteattach/1", true },
        { "/schema", "\"concreteattach/2\"", null, "concreteattach/2", "concreteattach/1", true },
        { "/schema", "1", null, "the number 1", "concreteattach/1", true },
        { "/note", "\"hello\"", null, "an unknown field", "title, method", true },
        { "/note", "null", null, "an unknown field", "title, method", true },
        { "/title", "5", null, "the number 5", "a text", true },
        { "/method", null, null, "nothing", "ACI 318-19", true },
        { "/method", "\"ACI 318-14\"", null, "ACI 318-14", "ACI 318-19, ACI 318-25", true },
        { "/redundantFasteners", "\"yes\"", null, "yes", "true or false", true },
        { "/method", "\"EN 1992-4:2018\"", null, "EN 1992-4:2018", "EN 1992-4:2018 is not available in this version", true },
        { "/method", "true", null, "true", "ACI 318-19", true },
        { "/constants", null, null, "nothing", "inch-pound, SI", true },
        { "/constants", "\"si\"", null, "si", "inch-pound, SI", true },
        { "/options", "[]", null, "an array", "closeEdges", true },
        { "/options/closeEdges", "\"all\"", null, "all", "group, all fasteners", true },
        { "/options/area", "\"circle\"", null, "circle", "union, bounding", true },
        { "/options/deep", "true", null, "true", "revert, extend", true },
        { "/options/seismic", "true", null, "an unknown field", "closeEdges, area, deep", true },

        // Allowable stress design.
        { "/loadCases/0/weightedLoadFactor", "0.9", null, "0.9", "1 or more", true },
        { "/loadCases/0/weightedLoadFactor", "\"1.4\"", null, "1.4", "a number", true },

        // Earthquake.
        { "/earthquake", "true", null, "true", "an object", true },
        { "/earthquake", "{}", "/earthquake/category", "nothing", "A, B, C, D, E, F", true },
        { "/earthquake", """{"category":"G"}""", "/earthquake/category", "G", "A, B, C, D, E, F", true },
        { "/earthquake", """{"category":"D","omega":2}""", "/earthquake/omega", "an unknown field", "category", true },
        { "/earthquake", """{"category":"D","tension":"ductile"}""", "/earthquake/tension", "ductile", "ductile steel", true },
        { "/earthquake", """{"category":"D","shear":"ductile steel"}""", "/earthquake/shear", "ductile steel", "overstrength", true },
        { "/earthquake", """{"category":"D","overstrength":0.9}""", "/earthquake/overstrength", "0.9", "1 or more", true },
        { "/earthquake", """{"category":"D","tension":"overstrength"}""", "/earthquake/overstrength", "nothing", "1 or more", false },
        { "/earthquake", """{"category":"D","stretchLength":"0 in"}""", "/earthquake/stretchLength", "0 in", "greater than 0", false },
        { "/loadCases/0/earthquake", """{"N":"1 kip"}""", null, "an object", "none, or an object earthquake", false },

        // Anchor reinforcement.
        { "/concrete/anchorReinforcement", "true", null, "true", "an object", true },
        { "/concrete/anchorReinforcement", "{}", null, "an object", "tension, shear or both", true },
        { "/concrete/anchorReinforcement", """{"tension":{"bar":"No. 12","steel":"ASTM A615 Grade 60","positions":[["0 in","0 in"]],"upperEnd":"hooked","lowerEnd":"straight","lowerEndDepth":"12 in"}}""", "/concrete/anchorReinforcement/tension/bar", "No. 12", "No. 11, No. 14", true },
        { "/concrete/anchorReinforcement", """{"tension":{"bar":{"diameter":"0 in","area":"1 in2"},"steel":"ASTM A615 Grade 60","positions":[["0 in","0 in"]],"upperEnd":"hooked","lowerEnd":"straight","lowerEndDepth":"12 in"}}""", "/concrete/anchorReinforcement/tension/bar/diameter", "0 in", "greater than 0", false },
        { "/concrete/anchorReinforcement", """{"tension":{"steel":"ASTM A615 Grade 60","positions":[["0 in","0 in"]],"upperEnd":"hooked","lowerEnd":"straight","lowerEndDepth":"12 in"}}""", "/concrete/anchorReinforcement/tension/bar", "nothing", "the size of the bar", true },
        { "/concrete/anchorReinforcement", """{"tension":{"bar":"No. 4","steel":"A615","positions":[["0 in","0 in"]],"upperEnd":"hooked","lowerEnd":"straight","lowerEndDepth":"12 in"}}""", "/concrete/anchorReinforcement/tension/steel", "A615", "ASTM A706", true },
        { "/concrete/anchorReinforcement", """{"tension":{"bar":"No. 4","steel":"ASTM A615 Grade 60","positions":[],"upperEnd":"hooked","lowerEnd":"straight","lowerEndDepth":"12 in"}}""", "/concrete/anchorReinforcement/tension/positions", "no bar", "at least one", true },
        { "/concrete/anchorReinforcement", """{"tension":{"bar":"No. 4","steel":"ASTM A615 Grade 60","positions":[["100 in","0 in"]],"upperEnd":"hooked","lowerEnd":"straight","lowerEndDepth":"12 in"}}""", "/concrete/anchorReinforcement/tension/positions", "bar 0", "inside the concrete", false },
        { "/concrete/anchorReinforcement", """{"tension":{"bar":"No. 4","steel":"ASTM A615 Grade 60","positions":[["0 in","0 in"]],"upperEnd":"bent","lowerEnd":"straight","lowerEndDepth":"12 in"}}""", "/concrete/anchorReinforcement/tension/upperEnd", "bent", "straight, hooked, headed", true },
        { "/concrete/anchorReinforcement", """{"tension":{"bar":"No. 4","steel":"ASTM A615 Grade 60","positions":[["0 in","0 in"]],"upperEnd":"hooked","lowerEnd":"straight","lowerEndDepth":"12 ft"}}""", "/concrete/anchorReinforcement/tension/lowerEndDepth", "12", "at most the thickness", false },
        { "/concrete/anchorReinforcement", """{"tension":{"bar":"No. 4","steel":"ASTM A615 Grade 60","positions":[["0 in","0 in"]],"upperEnd":"hooked","lowerEnd":"straight","lowerEndDepth":"0 in"}}""", "/concrete/anchorReinforcement/tension/lowerEndDepth", "0 in", "greater than 0", false },
        { "/concrete/anchorReinforcement", """{"tension":{"bar":"No. 4","steel":"ASTM A615 Grade 60","positions":[["0 in","0 in"]],"upperEnd":"hooked","lowerEnd":"straight","lowerEndDepth":"12 in","coverToCenter":"0 in"}}""", "/concrete/anchorReinforcement/tension/coverToCenter", "0 in", "greater than 0", false },
        { "/concrete/anchorReinforcement", """{"tension":{"bar":"No. 4","steel":"ASTM A615 Grade 60","positions":[["0 in","0 in"]],"upperEnd":"hooked","lowerEnd":"straight","lowerEndDepth":"12 in","coating":"paint"}}""", "/concrete/anchorReinforcement/tension/coating", "paint", "none, epoxy", true },
        { "/concrete/anchorReinforcement", """{"tension":{"bar":"No. 4","steel":"ASTM A615 Grade 60","positions":[["0 in","0 in"]],"upperEnd":"hooked","lowerEnd":"straight","lowerEndDepth":"12 in","legs":2}}""", "/concrete/anchorReinforcement/tension/legs", "an unknown field", "bar, steel", true },
        { "/concrete/anchorReinforcement", """{"shear":{"east":{"arrangement":"enclosing","bar":"No. 4","steel":"ASTM A615 Grade 60","legs":8,"depth":"2 in","innerEnd":"straight","innerLength":"30 in"}}}""", "/concrete/anchorReinforcement/shear/east", "an unknown edge", "+x, -x", true },
        { "/concrete/anchorReinforcement", """{"shear":{"+x":{"arrangement":"around","bar":"No. 4","steel":"ASTM A615 Grade 60","legs":8,"depth":"2 in","innerEnd":"straight","innerLength":"30 in"}}}""", "/concrete/anchorReinforcement/shear/+x/arrangement", "around", "enclosing, crossing", true },
        { "/concrete/anchorReinforcement", """{"shear":{"+x":{"arrangement":"enclosing","bar":"No. 4","steel":"ASTM A615 Grade 60","legs":1.5,"depth":"2 in","innerEnd":"straight","innerLength":"30 in"}}}""", "/concrete/anchorReinforcement/shear/+x/legs", "1.5", "a whole number", true },
        { "/concrete/anchorReinforcement", """{"shear":{"+x":{"arrangement":"enclosing","bar":"No. 4","steel":"ASTM A615 Grade 60","depth":"2 in","innerEnd":"straight","innerLength":"30 in"}}}""", "/concrete/anchorReinforcement/shear/+x/legs", "nothing", "a whole number", true },
        { "/concrete/anchorReinforcement", """{"shear":{"+x":{"arrangement":"enclosing","bar":"No. 4","steel":"ASTM A615 Grade 60","legs":8,"places":["0 in"],"depth":"2 in","innerEnd":"straight","innerLength":"30 in"}}}""", "/concrete/anchorReinforcement/shear/+x/places", "an unknown field", "bar, steel", true },
        { "/concrete/anchorReinforcement", """{"shear":{"-x":{"arrangement":"enclosing","bar":"No. 4","steel":"ASTM A615 Grade 60","legs":8,"depth":"2 in","innerEnd":"straight","innerLength":"30 in"}}}""", "/concrete/anchorReinforcement/shear", "reinforcement toward edge -x", "+x, +y", false },
        { "/concrete/anchorReinforcement", """{"shear":{"+x":{"arrangement":"enclosing","bar":"No. 4","steel":"ASTM A615 Grade 60","legs":8,"depth":"2 in","eccentricity":"-1 in","innerEnd":"straight","innerLength":"30 in"}}}""", "/concrete/anchorReinforcement/shear/+x/eccentricity", "-1 in", "0 or more", false },
        { "/concrete/anchorReinforcement", """{"shear":{"+x":{"arrangement":"enclosing","bar":"No. 4","steel":"ASTM A615 Grade 60","legs":8,"depth":"100 in","innerEnd":"straight","innerLength":"30 in"}}}""", "/concrete/anchorReinforcement/shear/+x/depth", "100 in", "at most the thickness", false },
        { "/concrete/anchorReinforcement", """{"shear":{"+x":{"arrangement":"crossing","bar":"No. 4","steel":"ASTM A615 Grade 60","places":[],"depth":"2 in","outerEnd":"hooked","innerEnd":"straight","innerLength":"30 in"}}}""", "/concrete/anchorReinforcement/shear/+x/places", "no bar", "at least one", true },
        { "/concrete/anchorReinforcement", """{"shear":{"+x":{"arrangement":"crossing","bar":"No. 4","steel":"ASTM A615 Grade 60","places":["0 in"],"depth":"2 in","innerEnd":"straight","innerLength":"30 in"}}}""", "/concrete/anchorReinforcement/shear/+x/outerEnd", "nothing", "straight, hooked, headed", true },

        // A wood sill.
        { "/earthquake", """{"category":"D","woodSill":{"direction":"z","thickness":"1.5 in"}}""", "/earthquake/woodSill/direction", "z", "x, y", true },
        { "/earthquake", """{"category":"D","woodSill":{"direction":"x"}}""", "/earthquake/woodSill/thickness", "nothing", "a length", true },
        { "/earthquake", """{"category":"D","woodSill":{"direction":"x","thickness":"0 in"}}""", "/earthquake/woodSill/thickness", "0 in", "greater than 0", false },
        { "/earthquake", """{"category":"D","woodSill":{"direction":"x","thickness":"1.5 in","width":"4 in"}}""", "/earthquake/woodSill/width", "an unknown field", "direction, thickness", true },
        { "/sill", "true", null, "true", "an object", true },
        { "/sill", """{"thickness":"1.5 in","direction":"x"}""", "/sill/species", "nothing", "a species", true },
        { "/sill", """{"species":"Hem-Fir","thickness":"1.5 in"}""", "/sill/direction", "nothing", "x, y", true },
        { "/sill", """{"species":"Hem-Fir","thickness":"1.5 in","direction":"x","gap":"-1 in"}""", "/sill/gap", "-1 in", "0", false },
        { "/sill", """{"species":"Hem-Fir","thickness":"1.5 in","direction":"x","washer":{"shape":"round","diameter":"2 in","hole":"3 in"}}""", "/sill/washer/hole", "3 in", "less than the washer", false },
        { "/sill", """{"species":"Hem-Fir","thickness":"1.5 in","direction":"x","conditions":{"toeNail":true}}""", "/sill/conditions/toeNail", "an unknown field", "wetInService", false },
        { "/sill", """{"species":"Hem-Fir","thickness":"1.5 in","direction":"x"}""", "/loadCases/0/timeEffect", "nothing", "dead, storage", false },
        { "/loadCases/0/timeEffect", "\"dead\"", null, "dead", "none, or an object sill", false },
        { "/loadCases/0/duration", "\"permanent\"", null, "permanent", "none, or an object sill", false },

        // The concrete.
        { "/concrete", null, null, "nothing", "an object", true },
        { "/concrete", "null", null, "null", "an object", true },
        { "/concrete", "\"4000 psi\"", null, "4000 psi", "an object", true },
        { "/concrete/colour", "\"grey\"", null, "an unknown field", "strength, density", true },
        { "/concrete/a~1b~0c", "1", null, "an unknown field", "strength, density", true },
        { "/concrete/outline", "[]", null, "an array", "either edges or an outline", true },
        { "/concrete/openings", "[]", null, "an array", "only an outline has openings", true },
        { "/concrete/strength", null, null, "nothing", "a stress", true },
        { "/concrete/strength", "null", null, "null", "a stress", true },
        { "/concrete/strength", "4000", null, "the number 4000", "text with its unit", true },
        { "/concrete/strength", "\"\"", null, "an empty text", "psi, ksi", true },
        { "/concrete/strength", "\"4000\"", null, "4000", "with its unit: psi, ksi", true },
        { "/concrete/strength", "\"4000 psf\"", null, "4000 psf", "psi, ksi", true },
        { "/concrete/strength", "\"4,000 psi\"", null, "4,000 psi", "decimal", true },
        { "/concrete/strength", "\"-4000 psi\"", null, "-4000 psi", "greater than 0", false },
        { "/concrete/strength", "\"0 psi\"", null, "0 psi", "greater than 0", false },
        { "/concrete/strength", "\"10000000000000 psi\"", null, "10000000000000 psi", "1 000 000 000 000", false },
        { "/concrete/thickness", "\"14\"", null, "14", "with its unit: in", true },
        { "/concrete/thickness", "{}", null, "an object", "a length", true },
        { "/concrete/thickness", "\"0.0000000001 in\"", null, "0.0000000001 in", "0.000 000 001", false },
        { "/concrete/density", "\"heavy\"", null, "heavy", "normalweight, sand-lightweight, all-lightweight", true },
        { "/concrete/density", "110", null, "the number 110", "normalweight", true },
        { "/concrete/density", "\"110 pcf\"", null, "110 pcf", "lb/ft3", true },
        { "/concrete/density", "\"-5 kg/m3\"", null, "-5 kg/m3", "greater than 0", false },
        { "/concrete/cracked", "\"yes\"", null, "yes", "true or false", true },
        { "/concrete/cracked", "1", null, "the number 1", "true or false", true },
        { "/concrete/supplementaryReinforcement", "true", null, "true", "tension and shear", true },
        { "/concrete/supplementaryReinforcement/tension", "\"no\"", null, "no", "true or false", true },
        { "/concrete/supplementaryReinforcement/torsion", "false", null, "an unknown field", "tension, shear", true },
        { "/concrete/edgeReinforcement", "\"stirrups\"", null, "stirrups", "none, bar, bar and stirrups", true },
        { "/concrete/edgeReinforcement", "false", null, "false", "none, bar", true },
        { "/concrete/cover", "\"-1 in\"", null, "-1 in", "0 or more", false },
        { "/concrete/edges", "[]", null, "an array", "+x, -x, +y", true },
        { "/concrete/edges/+z", "\"9 in\"", null, "an unknown field", "+x, -x, +y, -y", true },
        { "/concrete/edges/+x", "9", null, "the number 9", "a length", true },
        { "/concrete/edges/-y", "\"9\"", null, "9", "with its unit", true },
        { "/concrete/edges/+x", "\"2 in\"", "/positions", "fastener 1 at x = 3 in", "inside the concrete", false },
        { "/concrete/edges/-y", "\"3 in\"", "/positions", "fastener 0", "edge -y", false },
        { "/concrete/aggregateSize", "\"0 in\"", null, "0 in", "greater than 0", false },
        { "/concrete/splittingReinforcement", "\"false\"", null, "false", "true or false", true },

        // The fastener.
        { "/fastener", "\"headed bolt\"", null, "headed bolt", "kind, diameter", true },
        { "/fastener/length", "\"12 in\"", null, "an unknown field", "effectiveEmbedment", true },
        { "/fastener/kind", null, null, "nothing", "headed bolt, threaded rod with nut, hooked bolt, headed stud", true },
        { "/fastener/kind", "\"Headed bolt\"", null, "Headed bolt", "headed bolt", true },
        { "/fastener/kind", "\"screw\"", "/fastener/bearingArea", "0.454 in2", "a post-installed fastener has no head", true },
        { "/fastener/qualification", "{}", null, "an object", "only post-installed fasteners", true },
        { "/fastener/installationDirection", "\"upward\"", null, "upward", "adhesive fasteners alone", true },
        { "/fastener/diameter", null, null, "nothing", "a length", true },
        { "/fastener/diameter", "0.625", null, "the number 0.625", "a length as text", true },
        { "/fastener/diameter", "\"5/8 lb\"", null, "5/8 lb", "in, ft, mm, cm, m", true },
        { "/fastener/diameter", "\"5/8\"", null, "5/8", "with its unit", true },
        { "/fastener/diameter", "\"-5/8 in\"", null, "-5/8 in", "greater than 0", false },
        { "/fastener/diameter", "\"0 in\"", null, "0 in", "greater than 0", false },
        { "/fastener/diameter", "\"0.6 in\"", null, "0.6 in", "a size of the UNC thread", false },
        { "/fastener/diameter", "\"5 in\"", null, "5 in", "0.25 in to 4 in for ASTM F1554 Grade 36", false },
        { "/fastener/thread", "\"NC\"", null, "NC", "UNC, 8UN, ISO", true },
        { "/fastener/thread", "\"ISO\"", "/fastener/diameter", "0.625 in", "a size of the ISO thread", false },
        { "/fastener/steel", null, null, "nothing", "a designation", true },
        { "/fastener/steel", "36", null, "the number 36", "a designation", true },
        { "/fastener/steel", "\"F1554\"", null, "F1554", "ASTM F1554 Grade 36, ASTM F1554 Grade 55", true },
        { "/fastener/steel", "\"\"", null, "an empty text", "ASTM F1554 Grade 36", true },
        { "/fastener/steel", "\"ASTM F593 CW2\"", "/fastener/diameter", "5/8 in", "0.75 in to 1.5 in", false },
        { "/fastener/steel", "{}", "/fastener/steel/yield", "nothing", "a stress", true },
        { "/fastener/steel", """{"yield":"36 ksi"}""", "/fastener/steel/ultimate", "nothing", "a stress", true },
        { "/fastener/steel", """{"yield":"36 ksi","ultimate":"30 ksi"}""", "/fastener/steel/ultimate", "30 ksi", "at least the yield strength", false },
        { "/fastener/steel", """{"yield":"0 ksi","ultimate":"30 ksi"}""", "/fastener/steel/yield", "0 ksi", "greater than 0", false },
        { "/fastener/steel", """{"yield":"36 ksi","ultimate":"58 ksi","ductile":"yes"}""", "/fastener/steel/ductile", "yes", "true or false", true },
        { "/fastener/steel", """{"yield":"36 ksi","ultimate":"58 ksi","name":"mine"}""", "/fastener/steel/name", "an unknown field", "yield, ultimate, ductile", true },
        { "/fastener/effectiveEmbedment", null, null, "nothing", "a length", true },
        { "/fastener/effectiveEmbedment", "\"0 in\"", null, "0 in", "greater than 0", false },
        { "/fastener/bearingArea", "\"0.454 in\"", null, "0.454 in", "in2, ft2, mm2", true },
        { "/fastener/bearingArea", "\"0 in2\"", null, "0 in2", "greater than 0", false },
        { "/fastener/tensileArea", "\"-1 in2\"", null, "-1 in2", "greater than 0", false },
        { "/fastener/shearArea", "0.2", null, "the number 0.2", "an area as text", true },
        { "/fastener/torqued", "\"no\"", null, "no", "true or false", true },
        { "/fastener/groutPad", "0", null, "the number 0", "true or false", true },
        { "/fastener/hookExtension", "\"2 in\"", null, "2 in", "only a hooked bolt has a hook", true },
        { "/fastener/weldedToPlate", """{"thickness":"1/2 in"}""", null, "an object", "only a headed stud", true },
        { "/fastener/kind", "\"hooked bolt\"", "/fastener/bearingArea", "0.454 in2", "a hooked bolt has no head", true },

        // Places.
        { "/positions", null, null, "nothing", "an array", true },
        { "/positions", "{}", null, "an object", "an array", true },
        { "/positions", "[]", null, "no fastener", "at least one", true },
        { "/positions/0", "\"0 in\"", null, "0 in", "a place [x, y]", true },
        { "/positions/0", "[\"0 in\"]", null, "an array of 1", "a place [x, y]", true },
        { "/positions/0", "[\"0 in\",\"0 in\",\"0 in\"]", null, "an array of 3", "a place [x, y]", true },
        { "/positions/2/0", "3", null, "the number 3", "a length", true },
        { "/positions/1/1", "\"3\"", null, "3", "with its unit", true },
        { "/positions/1/1", "\"3 kip\"", null, "3 kip", "in, ft, mm", true },
        { "/positions/1/1", "null", null, "null", "a length", true },
        { "/positions/1", "[\"-3 in\",\"-3 in\"]", "/positions", "fasteners 0 and 1", "a place of its own", false },
        { "/positions/3", "[\"9 in\",\"0 in\"]", "/positions", "fastener 3", "edge +x", false },

        // Load cases.
        { "/loadCases", null, null, "nothing", "at least one", true },
        { "/loadCases", "[]", null, "no load case", "at least one", true },
        { "/loadCases", "{}", null, "an object", "an array", true },
        { "/loadCases/0", "\"N\"", null, "N", "name and the components", true },
        { "/loadCases/0/name", null, null, "nothing", "a text", true },
        { "/loadCases/0/name", "\" \"", null, "an empty name", "a name", true },
        { "/loadCases/0/name", "5", null, "the number 5", "a text", true },
        { "/loadCases/0/P", "\"6 kip\"", null, "an unknown field", "name, N, Vx", true },
        { "/loadCases/0/N", "6", null, "the number 6", "a force as text", true },
        { "/loadCases/0/N", "\"6\"", null, "6", "with its unit: lbf, kip", true },
        { "/loadCases/0/N", "\"6 lb\"", null, "6 lb", "lbf", true },
        { "/loadCases/0/N", "\"6 kg\"", null, "6 kg", "lbf, kip, N, kN", true },
        { "/loadCases/0/N", "\"1e3 N\"", null, "1e3 N", "lbf, kip, N, kN", true },
        { "/loadCases/0/N", "\"6,5 kip\"", null, "6,5 kip", "decimal", true },
        { "/loadCases/0/Vx", "\"2 in\"", null, "2 in", "lbf, kip, N, kN", true },
        { "/loadCases/0/Vy", "\"two kip\"", null, "two kip", "decimal", true },
        { "/loadCases/0/Mx", "\"3 kip\"", null, "3 kip", "kip-ft", true },
        { "/loadCases/0/My", "\"3 kip*in\"", null, "3 kip*in", "kip-ft", true },
        { "/loadCases/0/Mz", "true", null, "true", "a moment as text", true },
        { "/loadCases/0/at", "\"origin\"", null, "origin", "a place [x, y]", true },
        { "/loadCases/0/at/1", "\"0\"", null, "0", "with its unit", true },
        { "/loadCases/0/sustainedTension", "\"7 kip\"", null, "7 kip", "from 0 to N", false },
        { "/loadCases/0/sustainedTension", "\"-1 kip\"", null, "-1 kip", "from 0 to N", false },
    };

    [Theory]
    [MemberData(nameof(Changes))]
    public void Error_names_the_place_what_was_found_and_what_is_permitted(string change, string? json, string? place, string found, string permitted, bool isSeenBySchema)
    {
        string input = ContractExample.With((change, json));

        InputException error = Refused(input);
        Assert.Equal(place ?? change, error.Parameter);
        Assert.Contains(found, error.Found, StringComparison.Ordinal);
        Assert.Contains(permitted, error.Permitted, StringComparison.Ordinal);

        JsonNode document = JsonNode.Parse(VerificationJson.Verify(input))!;
        Assert.Equal(error.Parameter, document["error"]!["path"]!.GetValue<string>());
        Assert.Equal(error.Found, document["error"]!["found"]!.GetValue<string>());
        Assert.Equal(error.Permitted, document["error"]!["permitted"]!.GetValue<string>());
        Assert.Contains(error.Found, document["error"]!["message"]!.GetValue<string>(), StringComparison.Ordinal);
        Assert.True(Schemas.Result.Evaluate(document).IsValid);
        Assert.Equal(isSeenBySchema, !Schemas.Input.Evaluate(JsonNode.Parse(input)).IsValid);
    }

    /// <summary>Loads and combinations in place of load cases: what is changed, to what, the place of the error, what it says, whether the schema sees it.</summary>
    public static TheoryData<string, string?, string, string, string, bool> Loads => new()
    {
        { "/combinations", null, "/combinations", "nothing", "standard and format", true },
        { "/loads", null, "/loads", "nothing", "an array of loads", true },
        { "/loads", "[]", "/loads", "no load", "at least one", true },
        { "/loadCases", """[{"name":"a","N":"1 kip"}]""", "/loadCases", "an array", "nothing beside loads", true },
        { "/combinations/standard", "\"ASCE 7-10\"", "/combinations/standard", "ASCE 7-10", "ASCE 7-16, ASCE 7-22", true },
        { "/combinations/format", "\"LRFD\"", "/combinations/format", "LRFD", "strength, allowable stress", true },
        { "/combinations/format", "\"allowable stress\"", "/combinations/weightedLoadFactor", "nothing", "1 or more", false },
        { "/combinations/weightedLoadFactor", "1.4", "/combinations/weightedLoadFactor", "1.4", "none in strength design", false },
        { "/combinations/SDS", null, "/combinations/SDS", "nothing", "greater than 0", false },
        { "/combinations/SDS", "-1", "/combinations/SDS", "-1", "greater than 0", true },
        { "/combinations/redundancy", "1.2", "/combinations/redundancy", "1.2", "1 or 1.3", true },
        { "/combinations/companionLive", "0.7", "/combinations/companionLive", "0.7", "1, or 0.5", true },
        { "/combinations/wind", "1", "/combinations/wind", "an unknown field", "standard, format", true },
        { "/earthquake", null, "/loads/3/kind", "E", "an object earthquake", false },
        { "/loads/0/kind", "\"H\"", "/loads/0/kind", "H", "D, L, Lr, S, R, W, E", true },
        { "/loads/0/Vz", "\"1 kip\"", "/loads/0/Vz", "an unknown field", "kind, name", true },
        { "/loads/0/Vy", "\"-1.5\"", "/loads/0/Vy", "-1.5", "unit", true },
        { "/loads/4/name", "\"out of plane\"", "/loads/4/name", "out of plane", "a name of its own", false },
        { "/loads/3/N", "\"1 kip\"", "/loads/3/N", "1 kip", "nothing beside wallAnchorage", false },
        { "/loads/2/wallAnchorage", """{"weight":"1 kip","along":"N"}""", "/loads/2/wallAnchorage", "an object", "it is a load of kind E", false },
        { "/loads/3/component", """{"weight":"1 kip","along":"N","ap":1,"Rp":2.5}""", "/loads/3/component", "an object", "nothing beside wallAnchorage", false },
        { "/loads/3/wallAnchorage/weight", "\"0 kip\"", "/loads/3/wallAnchorage/weight", "0 kip", "greater than 0", false },
        { "/loads/3/wallAnchorage/along", "\"z\"", "/loads/3/wallAnchorage/along", "z", "N, x, y", true },
        { "/loads/3/wallAnchorage/importance", "1.3", "/loads/3/wallAnchorage/importance", "1.3", "1, 1.25 or 1.5", true },
        { "/loads/3/wallAnchorage/flexibleSpan", "\"-1 ft\"", "/loads/3/wallAnchorage/flexibleSpan", "-1 ft", "0 or more", false },
        { "/loads/4", """{"kind":"E","baseShear":{"along":"x","R":0.5,"levels":[{"weight":"9 kip","height":"9 ft"}]}}""", "/loads/4/baseShear/R", "0.5", "1 or more", true },
        { "/loads/4", """{"kind":"E","baseShear":{"along":"x","R":5,"levels":[]}}""", "/loads/4/baseShear/levels", "no level", "at least one", true },
        { "/loads/4", """{"kind":"E","baseShear":{"along":"x","R":5,"levels":[{"weight":"9 kip","height":"9 ft"},{"weight":"9 kip","height":"9 ft"}]}}""", "/loads/4/baseShear/levels", "9 ft", "from the lowest up", false },
        { "/loads/4", """{"kind":"E","baseShear":{"along":"x","R":5,"levels":[{"weight":"0 kip","height":"9 ft"}]}}""", "/loads/4/baseShear/levels/0/weight", "0 kip", "greater than 0", false },
        { "/loads/4", """{"kind":"E","baseShear":{"along":"x","R":5,"levels":[{"weight":"9 kip","height":"9 ft"}],"story":2}}""", "/loads/4/baseShear/story", "2", "the number of levels", false },
        { "/loads/4", """{"kind":"E","baseShear":{"along":"x","R":5,"levels":[{"weight":"9 kip","height":"9 ft"}],"story":1.5}}""", "/loads/4/baseShear/story", "1.5", "a whole number", true },
        { "/loads/4", """{"kind":"E","baseShear":{"along":"x","R":5,"levels":[{"weight":"9 kip","height":"9 ft"}],"share":0}}""", "/loads/4/baseShear/share", "0", "above 0", true },
        { "/loads/4", """{"kind":"E","baseShear":{"along":"x","R":5,"levels":[{"weight":"9 kip","height":"9 ft"}],"SD1":-1}}""", "/loads/4/baseShear/SD1", "-1", "greater than 0", true },
        { "/loads/4", """{"kind":"E","baseShear":{"along":"x","R":5,"levels":[{"weight":"9 kip","height":"9 ft"}],"S1":0}}""", "/loads/4/baseShear/S1", "0", "greater than 0", true },
        { "/loads/4", """{"kind":"E","baseShear":{"along":"x","R":5,"levels":[{"weight":"9 kip","height":"9 ft"}],"longPeriod":0}}""", "/loads/4/baseShear/longPeriod", "0", "greater than 0", true },
        { "/loads/4", """{"kind":"E","baseShear":{"along":"x","R":5,"levels":[{"weight":"9 kip","height":"9 ft"}],"structure":"tent"}}""", "/loads/4/baseShear/structure", "tent", "other, steel moment frame", true },
        { "/loads/3/wallAnchorage/force", "\"roof\"", "/loads/3/wallAnchorage/force", "roof", "anchorage, wall", true },
        { "/loads/3/wallAnchorage/force", "\"wall\"", "/loads/3/wallAnchorage/flexibleSpan", "60 ft", "nothing with the force on the wall", false },
        { "/loads/4", """{"kind":"E","component":{"weight":"1 kip","along":"x","ap":3,"Rp":2.5}}""", "/loads/4/component/ap", "3", "from 1 to 2.5", true },
        { "/loads/4", """{"kind":"E","component":{"weight":"1 kip","along":"x","CAR":1,"Rpo":1.5}}""", "/loads/4/component/CAR", "an unknown field", "ap, Rp", false },
        { "/loads/4", """{"kind":"E","component":{"weight":"1 kip","along":"x","ap":1,"Rp":0.5}}""", "/loads/4/component/Rp", "0.5", "1 or more", true },
        { "/loads/4", """{"kind":"E","component":{"weight":"1 kip","along":"x","ap":1,"Rp":2.5,"heightRatio":1.1}}""", "/loads/4/component/heightRatio", "1.1", "from 0", true },
    };

    /// <summary>In an outline 40 in wide the bars of the fastener farthest from the edge end outside of the concrete, as they would in a rectangle.</summary>
    [Theory]
    [InlineData("30 in", true)]
    [InlineData("2 in", false)]
    public void Bars_of_shear_end_inside_the_outline(string innerLength, bool isOutside)
    {
        string bars = """{"shear":{"+x":{"arrangement":"enclosing","bar":"No. 4","steel":"ASTM A615 Grade 60","legs":8,"depth":"2 in","innerEnd":"straight","innerLength":"30 in"}}}"""
            .Replace("30 in", innerLength, StringComparison.Ordinal);
        string input = ContractExample.With(("/concrete/edges", null), ("/concrete/outline", Square), ("/concrete/anchorReinforcement", bars));
        JsonNode? error = JsonNode.Parse(VerificationJson.Verify(input))!["error"];
        Assert.Equal(isOutside ? "/concrete/anchorReinforcement/shear/+x/innerLength" : null, error?["path"]!.GetValue<string>());
        Assert.Equal(isOutside ? "30 in" : null, error?["found"]!.GetValue<string>());
    }

    [Theory]
    [MemberData(nameof(Loads))]
    public void Error_of_loads_names_the_place_what_was_found_and_what_is_permitted(string change, string? json, string place, string found, string permitted, bool isSeenBySchema)
    {
        string input = ContractExample.With(File.ReadAllText(Repository.Sample("pump-house-wall.json")), (change, json));

        InputException error = Refused(input);
        Assert.Equal(place, error.Parameter);
        Assert.Contains(found, error.Found, StringComparison.Ordinal);
        Assert.Contains(permitted, error.Permitted, StringComparison.Ordinal);
        Assert.Equal(isSeenBySchema, !Schemas.Input.Evaluate(JsonNode.Parse(input)).IsValid);
    }

    private const string Square = """[["-20 in","-20 in"],["20 in","-20 in"],["20 in","20 in"],["-20 in","20 in"]]""";

    /// <summary>An outline and openings in place of the edges; where the error is, parts of what was found and of what is permitted; whether the JSON Schema sees it too.</summary>
    public static TheoryData<string, string?, string, string, string, bool> Outlines => new()
    {
        { "{}", null, "/concrete/outline", "an object", "an array of vertices", true },
        { "[]", null, "/concrete/outline", "no vertex", "at least 3 vertices", true },
        { """[["0 in","0 in"],["9 in","0 in"]]""", null, "/concrete/outline", "2 vertices", "at least 3 vertices", true },
        { """[["0 in","0 in"],["9 in","0 in"],["18 in","0 in"]]""", null, "/concrete/outline", "on one straight line", "enclose an area", false },
        { """[["-20 in","-20 in"],["20 in","20 in"],["20 in","-20 in"],["-20 in","20 in"]]""", null, "/concrete/outline", "meets", "neither crosses nor touches itself", false },
        { """[["-20 in","-20 in"],["20 in","-20 in"],["20 in","-20 in"],["-20 in","20 in"]]""", null, "/concrete/outline/2", "the same place", "a place of its own", false },
        { """[["-20 in","-20 in"],["20 in"],["20 in","20 in"]]""", null, "/concrete/outline/1", "an array of 1", "[x, y]", true },
        { """[["-20 in","-20 in"],["20 in","-20 in"],["20 in","2"]]""", null, "/concrete/outline/2/1", "2", "with its unit", true },
        { """[["-20 in","-20 in"],["20 in","-20 in"],["20 in","5000000000 in"]]""", null, "/concrete/outline/2", "", "at most 1000000 m", false },
        { """[["-20 in","-20 in"],["20 in","-20 in"],["-20 in","20 in"]]""", null, "/positions", "fastener 1 at x = 3 in", "at or beyond side 2", false },
        { """[["-1 in","-20 in"],["20 in","-20 in"],["20 in","20 in"],["-1 in","20 in"]]""", null, "/positions", "fastener 0", "inside the concrete", false },
        { Square, "{}", "/concrete/openings", "an object", "an array of openings", true },
        { Square, "[[]]", "/concrete/openings/0", "no vertex", "at least 3 vertices", true },
        { Square, """[[["30 in","0 in"],["32 in","0 in"],["32 in","2 in"]]]""", "/concrete/openings/0", "outside of the outline", "inside of the outline", false },
        { Square, """[[["18 in","0 in"],["22 in","0 in"],["22 in","2 in"]]]""", "/concrete/openings/0", "meets", "inside of the outline", false },
        { Square, """[[["8 in","0 in"],["12 in","0 in"],["12 in","2 in"]],[["9 in","-1 in"],["11 in","-1 in"],["11 in","3 in"]]]""", "/concrete/openings/1", "meets", "nor another opening", false },
        { Square, """[[["2 in","2 in"],["4 in","2 in"],["4 in","4 in"],["2 in","4 in"]]]""", "/positions", "fastener 2", "of opening 1", false },
    };

    [Theory]
    [MemberData(nameof(Outlines))]
    public void Error_of_an_outline_names_the_place_what_was_found_and_what_is_permitted(
        string outline, string? openings, string place, string found, string permitted, bool isSeenBySchema)
    {
        string input = openings is null
            ? ContractExample.With(("/concrete/edges", null), ("/concrete/outline", outline))
            : ContractExample.With(("/concrete/edges", null), ("/concrete/outline", outline), ("/concrete/openings", openings));

        InputException error = Refused(input);

        Assert.Equal(place, error.Parameter);
        Assert.Contains(found, error.Found, StringComparison.Ordinal);
        Assert.Contains(permitted, error.Permitted, StringComparison.Ordinal);
        JsonNode document = JsonNode.Parse(VerificationJson.Verify(input))!;
        Assert.Equal(place, document["error"]!["path"]!.GetValue<string>());
        Assert.True(Schemas.Result.Evaluate(document).IsValid);
        Assert.Equal(!isSeenBySchema, Schemas.Input.Evaluate(JsonNode.Parse(input)).IsValid);
    }

    [Fact]
    public void The_example_itself_is_accepted() => VerificationJson.Read(ContractExample.Input).Verify();

    /// <summary>Text, and a part of what the error says was found.</summary>
    public static TheoryData<string, string> NoJson => new()
    {
        { "", "no text" },
        { " \r\n\t ", "no text" },
        { "{", "breaks off at line 1, column 2" },
        { "{\"schema\":\"concreteattach/1\"", "breaks off at line 1" },
        { "nul", "line 1, column" },
        { "{\"a\":1}}", "line 1, column 8: }" },
        { "{\"a\":1} {\"b\":2}", "line 1, column 9: {" },
        { "{\"a\":1,}", "line 1, column 8: }" },
        { "{'a':1}", "line 1, column 2: 'a'" },
        { "{\"a\":NaN}", "line 1, column 6: NaN" },
        { "{\"a\":.5}", "line 1, column 6: .5" },
        { "{\"a\": 1 // a comment\n}", "line 1, column 9: //" },
        { "{\n  \"ψψψ\": 1,\r\n  \"b\": ?\n}", "line 3, column 8: ?" },
        { "{\"ψψψ\": ?}", "line 1, column 9: ?" },
        { "{\"a\":\"line\nbreak\"}", "line 1" },
        { new string('[', 100), "line 1" },
        { "\u0000", "line 1, column 1" },
    };

    [Theory]
    [MemberData(nameof(NoJson))]
    public void What_is_not_json_is_refused_with_line_and_column(string input, string found)
    {
        InputException error = Refused(input);

        Assert.Equal("", error.Parameter);
        Assert.Contains(found, error.Found, StringComparison.Ordinal);
        Assert.Equal("one JSON object", error.Permitted);
        Assert.StartsWith("found ", JsonNode.Parse(VerificationJson.Verify(input))!["error"]!["message"]!.GetValue<string>(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("[1]", "an array")]
    [InlineData("\"text\"", "text")]
    [InlineData("5", "the number 5")]
    [InlineData("null", "null")]
    public void What_is_no_object_is_refused(string input, string found)
    {
        InputException error = Refused(input);

        Assert.Equal("", error.Parameter);
        Assert.Contains(found, error.Found, StringComparison.Ordinal);
        Assert.Equal("one JSON object", error.Permitted);
    }

    [Theory]
    [InlineData("\"schema\":", "\"schema\": \"concreteattach/1\", \"schema\":", "/schema")]
    [InlineData("\"strength\":", "\"strength\": \"3000 psi\", \"strength\":", "/concrete/strength")]
    [InlineData("\"strength\":", "\"str\\u0065ngth\": \"3000 psi\", \"strength\":", "/concrete/strength")]
    [InlineData("\"+x\":", "\"-x\": \"5 in\", \"+x\":", "/concrete/edges/-x")]
    [InlineData("\"kind\":", "\"diameter\": \"1 in\", \"kind\":", "/fastener/diameter")]
    [InlineData("\"N\":", "\"N\": \"9 kip\", \"N\":", "/loadCases/0/N")]
    public void A_field_that_stands_twice_is_refused(string at, string with, string path)
    {
        string input = ContractExample.Input.Replace(at, with, StringComparison.Ordinal);
        Assert.NotEqual(ContractExample.Input, input);

        InputException error = Refused(input);

        Assert.Equal(path, error.Parameter);
        Assert.Contains("second time", error.Found, StringComparison.Ordinal);
    }

    [Fact]
    public void Two_load_cases_of_one_name_are_refused_at_the_second()
    {
        InputException error = Refused(ContractExample.With(("/loadCases", """[{"name":"A"},{"name":"B"},{"name":"A"},{"name":"B"}]""")));

        Assert.Equal("/loadCases/2/name", error.Parameter);
        Assert.Contains("\"A\"", error.Found, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("""[["0 in","0 in"],["6 in","0 in"]]""", "Mx", "/loadCases/1/Mx")]
    [InlineData("""[["0 in","0 in"],["0 in","6 in"]]""", "My", "/loadCases/1/My")]
    [InlineData("""[["0 in","0 in"]]""", "Mz", "/loadCases/1/Mz")]
    [InlineData("""[["0 in","0 in"]]""", "Mx", "/loadCases/1/Mx")]
    public void A_moment_that_the_fasteners_cannot_carry_is_refused_in_its_load_case(string positions, string component, string path)
    {
        InputException error = Refused(ContractExample.With(
            ("/positions", positions), ("/loadCases", $$"""[{"name":"A","N":"1 kip"},{"name":"B","N":"1 kip","{{component}}":"10 kip-in"},{"name":"C","{{component}}":"10 kip-in"}]""")));

        Assert.Equal(path, error.Parameter);
        Assert.Contains("lbf-in", error.Found, StringComparison.Ordinal);
    }

    [Fact]
    public void A_hooked_bolt_needs_its_hook_and_a_stud_has_none()
    {
        InputException missing = Refused(ContractExample.With(("/fastener/kind", "\"hooked bolt\""), ("/fastener/bearingArea", null)));
        Assert.Equal("/fastener/hookExtension", missing.Parameter);
        Assert.Equal("nothing", missing.Found);

        InputException negative = Refused(ContractExample.With(
            ("/fastener/kind", "\"hooked bolt\""), ("/fastener/bearingArea", null), ("/fastener/hookExtension", "\"-2 in\"")));
        Assert.Equal("/fastener/hookExtension", negative.Parameter);

        InputException onStud = Refused(ContractExample.With(("/fastener/kind", "\"headed stud\""), ("/fastener/hookExtension", "\"2 in\"")));
        Assert.Equal("/fastener/hookExtension", onStud.Parameter);
    }

    [Theory]
    [InlineData("""{"thickness":"0 in"}""", "/fastener/weldedToPlate/thickness", "greater than 0")]
    [InlineData("""{}""", "/fastener/weldedToPlate/thickness", "a length")]
    [InlineData("""{"thickness":"1/2 in","cornerReinforcement":"yes"}""", "/fastener/weldedToPlate/cornerReinforcement", "true or false")]
    [InlineData("""{"thickness":"1/2 in","width":"8 in"}""", "/fastener/weldedToPlate/width", "thickness, cornerReinforcement")]
    [InlineData("\"1/2 in\"", "/fastener/weldedToPlate", "an object")]
    public void The_plate_of_a_stud_is_read_as_strictly(string plate, string path, string permitted)
    {
        InputException error = Refused(ContractExample.With(("/fastener/kind", "\"headed stud\""), ("/fastener/thread", null), ("/fastener/weldedToPlate", plate)));

        Assert.Equal(path, error.Parameter);
        Assert.Contains(permitted, error.Permitted, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("-6 kip", "1 kip")]
    [InlineData("-6 kip", "-1 kip")]
    [InlineData("0 kip", "1 kip")]
    [InlineData("0 kip", "0 kip")]
    public void Sustained_tension_needs_a_tension(string n, string sustained)
    {
        InputException error = Refused(ContractExample.With(("/loadCases/0/N", $"\"{n}\""), ("/loadCases/0/sustainedTension", $"\"{sustained}\"")));

        Assert.Equal("/loadCases/0/sustainedTension", error.Parameter);
        Assert.Contains(n, error.Permitted, StringComparison.Ordinal);
    }

    [Fact]
    public void Text_that_is_no_unicode_is_refused()
    {
        InputException title = Refused(ContractExample.Input.Replace("Canopy post, north pier", "\\ud800", StringComparison.Ordinal));
        Assert.Equal("/title", title.Parameter);
        Assert.Contains("Unicode", title.Found, StringComparison.Ordinal);

        InputException name = Refused(ContractExample.Input.Replace("\"strength\":", "\"\\udc00\": 1, \"strength\":", StringComparison.Ordinal));
        Assert.Equal("/concrete", name.Parameter);
        Assert.Contains("Unicode", name.Found, StringComparison.Ordinal);

        byte[] bytes = System.Text.Encoding.Latin1.GetBytes(ContractExample.Input.Replace("Canopy", "Vord\u00e4ch", StringComparison.Ordinal));
        Assert.Equal("/title", Assert.Throws<InputException>(() => VerificationJson.Read(bytes)).Parameter);
    }

    [Fact]
    public void A_long_text_is_quoted_in_part()
    {
        InputException error = Refused(ContractExample.With(("/fastener/steel", $"\"{new string('x', 100_000)}\"")));

        Assert.InRange(error.Found.Length, 10, 200);
    }

    // Every value of the example in turn, replaced by one of each kind: a result or an error at a place that is there, nothing else.
    [Fact]
    public void Whatever_stands_in_a_place_gives_a_result_or_an_error_at_a_place_of_the_document()
    {
        string[] values = ["null", "true", "-5", "1e308", "\"\"", "\"x\"", "\"1/3 in\"", "\"-2 kip\"", "\"999999999999 MPa\"", "\"0.000000001 mm\"", "[]", "[[\"1 in\",\"2 in\"]]", "{}"];
        int errors = 0;
        int results = 0;
        foreach (string pointer in Pointers(JsonNode.Parse(ContractExample.Input)!, ""))
        {
            foreach (string value in values)
            {
                string input = ContractExample.With((pointer, value));
                JsonNode answer = JsonNode.Parse(VerificationJson.Verify(input))!;
                if (answer["error"] is not { } error)
                {
                    results++;
                    Assert.True(Schemas.Result.Evaluate(answer).IsValid, $"{pointer} {value}");
                    continue;
                }

                errors++;
                string path = error["path"]!.GetValue<string>();
                string owner = path[..path.LastIndexOf('/')];
                Assert.True(Contains(JsonNode.Parse(input)!, owner), $"{pointer} {value}: no place {owner}");
            }
        }

        Assert.True(errors > 300, $"{errors} errors");
        Assert.True(results > 30, $"{results} results");
    }

    // Characters changed, taken out and put in at random places, from a fixed seed.
    [Fact]
    public void Damaged_text_gives_a_result_or_an_error_and_nothing_else()
    {
        var random = new Random(318);
        const string Signs = "{}[]\",:0123456789.-+/' eEinkptfuN\\\u0000\u00e9ψ\ud800";
        int refused = 0;
        for (int i = 0; i < 3000; i++)
        {
            var text = new System.Text.StringBuilder(ContractExample.Input);
            for (int change = random.Next(1, 4); change > 0; change--)
            {
                int at = random.Next(text.Length);
                switch (random.Next(3))
                {
                    case 0: text[at] = Signs[random.Next(Signs.Length)]; break;
                    case 1: text.Remove(at, Math.Min(random.Next(1, 8), text.Length - at)); break;
                    default: text.Insert(at, Signs[random.Next(Signs.Length)]); break;
                }
            }

            refused += JsonNode.Parse(VerificationJson.Verify(text.ToString(), indented: false))!["error"] is null ? 0 : 1;
        }

        Assert.InRange(refused, 1000, 2999);
    }

    private static IEnumerable<string> Pointers(JsonNode? node, string path)
    {
        if (path.Length > 0)
        {
            yield return path;
        }

        IEnumerable<(string Name, JsonNode? Value)> children = node switch
        {
            JsonObject fields => fields.Select(f => (f.Key, f.Value)),
            JsonArray items => items.Select((item, i) => (i.ToString(System.Globalization.CultureInfo.InvariantCulture), item)),
            _ => [],
        };
        foreach ((string name, JsonNode? value) in children)
        {
            foreach (string inner in Pointers(value, $"{path}/{name}"))
            {
                yield return inner;
            }
        }
    }

    private static bool Contains(JsonNode node, string pointer)
    {
        foreach (string name in pointer.Split('/').Skip(1))
        {
            if ((node is JsonArray items ? items[int.Parse(name, System.Globalization.CultureInfo.InvariantCulture)] : node[name]) is not { } child)
            {
                return false;
            }

            node = child;
        }

        return true;
    }

    [Fact]
    public void Only_a_missing_argument_is_another_exception() => Assert.Throws<ArgumentNullException>(() => VerificationJson.Read((string)null!));

    private static InputException Refused(string input) => Assert.Throws<InputException>(() => VerificationJson.Read(input).Verify());
}
