using System.Collections.Immutable;
using System.Text;
using System.Text.Json;
using ConcreteAttach.Aci318;
using ConcreteAttach.Actions;
using ConcreteAttach.Actions.Asce7;
using ConcreteAttach.Attached;
using ConcreteAttach.Calculation;
using ConcreteAttach.Connections;
using ConcreteAttach.Fasteners;
using ConcreteAttach.Geometry;
using ConcreteAttach.Materials;
using ConcreteAttach.Nds;
using ConcreteAttach.Quantities;
using ConcreteAttach.Verification;
using UnitsNet;

namespace ConcreteAttach.Presentation.Json;

/// <summary>Reads an input document of the JSON contract. Every field is known or refused; every error names its place.</summary>
internal static class RequestReader
{
    private static readonly Aci318Edition[] Editions = [Aci318Edition.InchPound2019, Aci318Edition.Si2019, Aci318Edition.InchPound2025, Aci318Edition.Si2025];

    private static readonly (string, string)[] Methods = [.. Editions.Select(e => e.Standard).Append(NdsMethod.Standard).Distinct().Select(method => (method, method))];

    private static readonly string[] MethodsNotYet = ["EN 1992-4:2018"];

    private static readonly (string, EdgeReinforcement)[] EdgeReinforcements =
        [("none", EdgeReinforcement.None), ("bar", EdgeReinforcement.Bar), ("bar and stirrups", EdgeReinforcement.BarAndStirrups)];

    private static readonly ConcreteDensity[] Densities = [ConcreteDensity.Normalweight, ConcreteDensity.SandLightweight, ConcreteDensity.AllLightweight];

    private static readonly (string, CloseEdgesReading)[] CloseEdges = [("group", CloseEdgesReading.Group), ("all fasteners", CloseEdgesReading.AllFasteners)];

    private static readonly (string, AreaReading)[] Areas = [("union", AreaReading.Union), ("bounding", AreaReading.Bounding)];

    private static readonly (string, DeepReading)[] Deep = [("revert", DeepReading.Revert), ("extend", DeepReading.Extend)];

    /// <exception cref="InputException">Not JSON, or against the contract. The parameter is the place of the error.</exception>
    public static VerificationRequest Read(ReadOnlySpan<byte> utf8)
    {
        ReadOnlySpan<byte> text = utf8.StartsWith("\uFEFF"u8) ? utf8[3..] : utf8;
        JsonDocument document;
        try
        {
            document = JsonDocument.Parse(text.ToArray());
        }
        catch (JsonException error)
        {
            throw NotJson(text, error);
        }

        using (document)
        {
            return Request(InputValue.Root(document.RootElement).Object("one JSON object"));
        }
    }

    private static VerificationRequest Request(InputObject root)
    {
        // First, so that a document of a later contract is told so and not that its fields are unknown.
        root.Required("schema").Choice([(VerificationJson.Schema, true)]);
        if (root.Required("method").Choice(Methods, MethodsNotYet) == NdsMethod.Standard)
        {
            return WoodReader.Request(root);
        }

        root.AllowOnly(["schema", "title", "method", "constants", "concrete", "fastener", "positions", "plate", "shearLugs", "redundantFasteners", "earthquake", "sill", "loadCases", "loads", "combinations", "options"]);
        Aci318Edition edition = Edition(root);
        InputObject member = root.Required("concrete").Object("an object with strength, thickness and what else is known of the concrete");
        ConcreteMember concrete = Concrete(member);
        Fastener fastener = FastenerReader.Read(root.Required("fastener").Object("an object with kind, diameter, steel and effectiveEmbedment"), edition);
        FastenerLayout layout = Layout(root);
        BasePlate? plate = root.Optional("plate") is { } given ? PlateReader.Plate(given.Object("an object with outline, contact and what else is known of the plate")) : null;
        ImmutableArray<ShearLug> lugs = root.Optional("shearLugs") is { } array ? ShearLugReader.Lugs(array) : [];
        EarthquakeDesign? earthquake = root.Optional("earthquake") is { } design ? EarthquakeReader.Design(design.Object("an object with category and what else the design for earthquake goes by")) : null;
        SillPlate? sill = root.Optional("sill") is { } wood ? SillReader.Plate(wood) : null;
        (ImmutableArray<LoadCase> loadCases, ImmutableArray<SillLoadCase> sillLoadCases, ImmutableArray<DemandSheet> demand, ImmutableArray<string> notices) = Actions(root, edition, earthquake, sill is not null);
        var method = new Aci318Method(edition, Options(root.Optional("options")));
        var attachment = new Attachment(concrete, fastener, layout)
        {
            Plate = plate,
            ShearLugs = lugs,
            Earthquake = earthquake,
            Reinforcement = member.Optional("anchorReinforcement") is { } bars ? AnchorReinforcementReader.Read(bars) : null,
            HasRedundantFasteners = root.Optional("redundantFasteners")?.TrueOrFalse() ?? false,
        };
        return new AttachmentRequest(attachment, loadCases, method)
        {
            Title = root.Optional("title")?.Text("a text"),
            Sill = sill,
            SillLoadCases = sillLoadCases,
            Demand = demand,
            DemandNotices = notices,
        };
    }

    /// <summary>The load cases as they are given, or as the combinations form them of loads by kind.</summary>
    private static (ImmutableArray<LoadCase> LoadCases, ImmutableArray<SillLoadCase> OfSill, ImmutableArray<DemandSheet> Demand, ImmutableArray<string> Notices) Actions(
        InputObject root, Aci318Edition edition, EarthquakeDesign? earthquake, bool hasSill)
    {
        if (root.Optional("loads") is null && root.Optional("combinations") is null)
        {
            ImmutableArray<LoadCase> given = LoadCases(root.Required("loadCases"), earthquake);
            return (given, SillReader.LoadCases(root.Required("loadCases"), given, hasSill), [], []);
        }

        if (root.Optional("loadCases") is { } both)
        {
            throw both.Error("nothing beside loads: give either load cases, or loads and combinations");
        }

        (ImmutableArray<CombinedLoadCase> combined, ImmutableArray<Demand> demands) = LoadsReader.Read(root, edition, earthquake);
        return (
            [.. combined.Select(c => c.LoadCase)],
            hasSill ? [.. combined.Select(SillReader.OfCombination)] : [],
            [.. demands.Select(d => new DemandSheet(d.Title, null, d.Sheet)), .. combined.Select(c => new DemandSheet($"Combination {c.LoadCase.Name}", c.LoadCase.Name, c.Sheet))],
            [.. demands.SelectMany(d => d.Notices).Distinct(), .. hasSill && combined.Any(c => c.Leading == LoadKind.Live) ? [SillReader.LiveLoadIsOccupancy] : Array.Empty<string>()]);
    }

    private static Aci318Edition Edition(InputObject root)
    {
        string standard = root.Required("method").Choice(Methods, MethodsNotYet);
        return root.Required("constants").Choice([.. Editions.Where(e => e.Standard == standard).Select(e => (e.Constants, e))]);
    }

    private static ConcreteMember Concrete(InputObject concrete)
    {
        concrete.AllowOnly(
            ["strength", "density", "thickness", "cracked", "supplementaryReinforcement", "edgeReinforcement", "cover", "edges", "outline", "openings", "aggregateSize", "splittingReinforcement", "anchorReinforcement"]);
        InputObject? supplementary = concrete.Optional("supplementaryReinforcement")?.Object("an object with tension and shear");
        supplementary?.AllowOnly(["tension", "shear"]);
        InputObject? edges = concrete.Optional("edges")?.Object("an object with the distances +x, -x, +y and -y");
        edges?.AllowOnly(["+x", "-x", "+y", "-y"]);
        SurfaceOutline? outline = Outline(concrete, hasEdges: edges is not null);
        return concrete.Value.Guard(() => new ConcreteMember(concrete.Required("strength").Stress(), concrete.Required("thickness").Length())
        {
            Density = concrete.Optional("density") is { } density ? DensityOf(density) : ConcreteDensity.Normalweight,
            IsCracked = concrete.Optional("cracked")?.TrueOrFalse() ?? true,
            HasSupplementaryReinforcementForTension = supplementary?.Optional("tension")?.TrueOrFalse() ?? false,
            HasSupplementaryReinforcementForShear = supplementary?.Optional("shear")?.TrueOrFalse() ?? false,
            EdgeReinforcement = concrete.Optional("edgeReinforcement")?.Choice(EdgeReinforcements) ?? EdgeReinforcement.None,
            HasSplittingReinforcement = concrete.Optional("splittingReinforcement")?.TrueOrFalse() ?? false,
            Cover = concrete.Optional("cover")?.Length(),
            AggregateSize = concrete.Optional("aggregateSize")?.Length(),
            Edges = edges is null ? EdgeDistances.None : EdgesOf(edges),
            Outline = outline,
        });
    }

    private static SurfaceOutline? Outline(InputObject concrete, bool hasEdges)
    {
        InputValue? openings = concrete.Optional("openings");
        if (concrete.Optional("outline") is not { } vertices)
        {
            return openings is null ? null : throw openings.Error("nothing: only an outline has openings");
        }

        return hasEdges ? throw vertices.Error("nothing beside edges: give either edges or an outline") : PlateReader.Outline(vertices, openings);
    }

    private static ConcreteDensity DensityOf(InputValue density)
    {
        string classes = string.Join(", ", Densities.Select(d => d.Name));
        string text = density.Text($"{classes}, or a density as text");
        if (Array.Find(Densities, d => d.Name == text) is { } known)
        {
            return known;
        }

        if (text.Length > 0 && char.IsAsciiLetter(text[0]))
        {
            throw density.Error($"{classes}, or a density such as 110 lb/ft3");
        }

        return ConcreteDensity.Of(density.Density());
    }

    private static EdgeDistances EdgesOf(InputObject edges) => new()
    {
        PlusX = edges.Optional("+x")?.Length(),
        MinusX = edges.Optional("-x")?.Length(),
        PlusY = edges.Optional("+y")?.Length(),
        MinusY = edges.Optional("-y")?.Length(),
    };

    private static FastenerLayout Layout(InputObject root)
    {
        List<InputValue> places = root.Required("positions").Items("an array with the place [x, y] of each fastener");
        return root.Value.Guard(() => FastenerLayout.Points(places.ConvertAll(PlateReader.Position)));
    }

    private static ImmutableArray<LoadCase> LoadCases(InputValue value, EarthquakeDesign? earthquake)
    {
        const string Form = "an array of load cases, at least one";
        List<InputValue> items = value.Items(Form);
        LoadCase[] cases = items.Count > 0 ? [.. items.Select(item => LoadCase(item, earthquake))] : throw new InputException(value.Path, "no load case", Form);
        int other = Array.FindIndex(cases, c => c.Format != cases[0].Format);
        return other < 0
            ? [.. cases]
            : throw items[other].Child("weightedLoadFactor", default).Error(cases[other].WeightedLoadFactor is null ? "a number as in the first load case: all of one safety format" : "none, as in the first load case: all of one safety format");
    }

    private static LoadCase LoadCase(InputValue value, EarthquakeDesign? earthquake)
    {
        InputObject fields = value.Object("an object with name and the components N, Vx, Vy, Mx, My, Mz that act");
        fields.AllowOnly(["name", "N", "Vx", "Vy", "Mx", "My", "Mz", "at", "sustainedTension", "earthquake", "weightedLoadFactor", "timeEffect", "duration"]);
        LoadCase loadCase = value.Guard(() => new LoadCase(fields.Required("name").Text("a text, such as 1.2D + 1.0W"))
        {
            N = fields.Optional("N")?.Force() ?? default,
            Vx = fields.Optional("Vx")?.Force() ?? default,
            Vy = fields.Optional("Vy")?.Force() ?? default,
            Mx = fields.Optional("Mx")?.Moment() ?? default,
            My = fields.Optional("My")?.Moment() ?? default,
            Mz = fields.Optional("Mz")?.Moment() ?? default,
            At = fields.Optional("at") is { } at ? PlateReader.Position(at) : default,
            SustainedTension = fields.Optional("sustainedTension")?.Force(),
            Format = fields.Optional("weightedLoadFactor") is null ? SafetyFormat.StrengthDesign : SafetyFormat.AllowableStressDesign,
            WeightedLoadFactor = fields.Optional("weightedLoadFactor")?.Number("a number, 1 or more, such as 1.43"),
            Earthquake = fields.Optional("earthquake") is { } part ? EarthquakeReader.Part(part, earthquake) : null,
        });
        return IsPart(loadCase.SustainedTension, loadCase.N)
            ? loadCase
            : throw fields.Required("sustainedTension").Error($"the sustained part of N, from 0 to N, where N is a tension; N is {QuantityText.Format(loadCase.N)}");
    }

    private static bool IsPart(Force? sustained, Force whole)
    {
        if (sustained is not { } part)
        {
            return true;
        }

        double n = whole.In(MeasurementSystem.NewtonMillimetre);
        double s = part.In(MeasurementSystem.NewtonMillimetre);
        return n > 0 && s >= 0 && !Limit.IsBelow(n, s);
    }

    private static Aci318Options Options(InputValue? value)
    {
        if (value is null)
        {
            return Aci318Options.Default;
        }

        InputObject options = value.Object("an object with closeEdges, area or deep");
        options.AllowOnly(["closeEdges", "area", "deep"]);
        return new Aci318Options
        {
            CloseEdges = options.Optional("closeEdges")?.Choice(CloseEdges) ?? CloseEdgesReading.Group,
            Area = options.Optional("area")?.Choice(Areas) ?? AreaReading.Union,
            Deep = options.Optional("deep")?.Choice(Deep) ?? DeepReading.Revert,
        };
    }

    private static InputException NotJson(ReadOnlySpan<byte> text, JsonException error)
    {
        if (text.Trim(" \t\r\n"u8).IsEmpty)
        {
            return new InputException("", "no text", "one JSON object");
        }

        int line = (int)(error.LineNumber ?? 0);
        ReadOnlySpan<byte> rest = text;
        for (int i = 0; i < line; i++)
        {
            rest = rest[(rest.IndexOf((byte)'\n') + 1)..];
        }

        int column = Math.Clamp((int)(error.BytePositionInLine ?? 0), 0, rest.Length);
        int end = rest.IndexOf((byte)'\n');
        ReadOnlySpan<byte> after = rest[column..Math.Max(column, end < 0 ? rest.Length : end)];
        string shown = Encoding.UTF8.GetString(after[..Math.Min(after.Length, 20)]).TrimEnd('\r', '\uFFFD');
        string place = $"line {QuantityText.Format(line + 1)}, column {QuantityText.Format(Encoding.UTF8.GetCharCount(rest[..column]) + 1)}";
        return new InputException("", shown.Length == 0 ? $"text that ends or breaks off at {place}" : $"text that is not JSON at {place}: {shown}", "one JSON object");
    }
}
