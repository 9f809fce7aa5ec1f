using System.Collections.Immutable;
using ConcreteAttach.Actions;
using ConcreteAttach.Materials;
using ConcreteAttach.Nds;
using ConcreteAttach.Quantities;
using UnitsNet;

namespace ConcreteAttach.Presentation.Json;

/// <summary>Reads a document of NDS-2018: a connection and its load cases. The fields have the names of the typed model.</summary>
internal static class WoodReader
{
    private static readonly (string, DowelKind)[] Fasteners =
    [
        ("bolt", DowelKind.Bolt), ("lag screw", DowelKind.LagScrew), ("wood screw", DowelKind.WoodScrew), ("nail", DowelKind.Nail), ("ring-shank nail", DowelKind.RingShankNail),
    ];

    private static readonly (string, SafetyFormat)[] Formats = [("ASD", SafetyFormat.AllowableStressDesign), ("LRFD", SafetyFormat.StrengthDesign)];

    public static readonly (string, LoadDuration)[] Durations =
    [
        ("permanent", LoadDuration.Permanent), ("ten years", LoadDuration.TenYears), ("two months", LoadDuration.TwoMonths), ("seven days", LoadDuration.SevenDays), ("ten minutes", LoadDuration.TenMinutes),
    ];

    public static readonly (string, TimeEffect)[] TimeEffects =
    [
        ("dead", TimeEffect.Dead), ("storage", TimeEffect.Storage), ("occupancy or roof", TimeEffect.OccupancyOrRoof), ("wind, earthquake or impact", TimeEffect.WindEarthquakeOrImpact),
    ];

    private static readonly (string, TemperatureRange)[] Temperatures =
        [("up to 100 F", TemperatureRange.UpTo100F), ("up to 125 F", TemperatureRange.UpTo125F), ("up to 150 F", TemperatureRange.UpTo150F)];

    private static readonly (string, LoadSlip)[] Slips = [("wood to wood", LoadSlip.WoodToWood), ("wood to metal", LoadSlip.WoodToMetal)];

    private static readonly (string, GrainLoad)[] GrainLoads =
        [("parallel tension", GrainLoad.ParallelTension), ("parallel compression", GrainLoad.ParallelCompression), ("perpendicular", GrainLoad.Perpendicular)];

    private static readonly string[] OfAnyKind = ["kind", "format", "count", "conditions"];

    private static readonly string[] OfLateral = ["fastener", "main", "side", "doubleShear", "gap", "penetration", "roundedAsPrinted", "row", "placement"];

    private static readonly string[] OfRound = ["shape", "diameter", "hole", "awayFromEnd"];

    private static readonly string[] OfSquare = ["shape", "side", "hole", "slotLength", "awayFromEnd"];

    private static readonly string[] OfAxial = ["withdrawal", "head", "washer"];

    /// <summary>The kinds of a connection, and the fields that each takes beside those of any kind.</summary>
    private static readonly (string, string[])[] Kinds =
    [
        ("lateral", OfLateral),
        ("withdrawal", ["fastener", "withdrawal"]),
        ("pull-through", ["head"]),
        ("washer bearing", ["washer"]),
        ("combined", [.. OfLateral, .. OfAxial]),
    ];

    /// <exception cref="InputException">Against the contract, at the place of the error.</exception>
    public static WoodRequest Request(InputObject root)
    {
        root.AllowOnly(["schema", "title", "method", "constants", "connection", "loadCases"]);
        root.Optional("constants")?.Choice([(NdsMethod.Constants, true)]);
        InputObject connection = root.Required("connection").Object("an object with kind, format and what belongs to the kind");
        WoodFastening fastening = Fastening(connection);
        return new WoodRequest(fastening, LoadCases(root.Required("loadCases"), fastening)) { Title = root.Optional("title")?.Text("a text") };
    }

    private static WoodFastening Fastening(InputObject connection)
    {
        string[] fields = connection.Required("kind").Choice(Kinds);
        connection.AllowOnly([.. OfAnyKind, .. fields]);
        SafetyFormat format = connection.Required("format").Choice(Formats);
        DowelFastener? fastener = fields.Contains("fastener") ? Fastener(connection.Required("fastener")) : null;
        bool isCombined = fields.Contains("main") && fields.Contains("withdrawal");
        if (isCombined && Array.TrueForAll(OfAxial, name => connection.Optional(name) is null))
        {
            throw connection.Required("withdrawal").Error("an object, or else head or washer: what holds the pull");
        }

        (WasherBearing, WoodSpecies)? washer = Part(connection, fields, "washer", isCombined) is { } w ? WasherOnWood(w) : null;
        InputValue? withdrawal = Part(connection, fields, "withdrawal", isCombined);
        InputValue? head = Part(connection, fields, "head", isCombined);
        return connection.Value.Guard(() => new WoodFastening
        {
            Conditions = Conditions(connection.Optional("conditions"), format),
            Count = connection.Optional("count") is { } count ? WholeNumber(count) : 1,
            Lateral = fields.Contains("main") ? Lateral(connection, fastener!) : null,
            Withdrawal = withdrawal is null ? null : Withdrawal(withdrawal, fastener!, connection),
            PullThrough = head is null ? null : Head(head),
            Washer = washer?.Item1,
            WasherSpecies = washer?.Item2,
        });
    }

    /// <summary>A part that its own kind must have, and a combined one may.</summary>
    private static InputValue? Part(InputObject connection, string[] fields, string name, bool isCombined) =>
        !fields.Contains(name) ? null : isCombined ? connection.Optional(name) : connection.Required(name);

    private static ServiceConditions Conditions(InputValue? value, SafetyFormat format)
    {
        if (value is null)
        {
            return new() { Format = format };
        }

        InputObject fields = value.Object("an object with the moisture and the temperature of the wood");
        fields.AllowOnly(["wetAtFabrication", "wetInService", "freeToShrink", "temperature", "diaphragmNail", "toeNail"]);
        return new()
        {
            Format = format,
            IsWetAtFabrication = fields.Optional("wetAtFabrication")?.TrueOrFalse() ?? false,
            IsWetInService = fields.Optional("wetInService")?.TrueOrFalse() ?? false,
            IsFreeToShrink = fields.Optional("freeToShrink")?.TrueOrFalse() ?? false,
            Temperature = fields.Optional("temperature")?.Choice(Temperatures) ?? TemperatureRange.UpTo100F,
            IsDiaphragmNail = fields.Optional("diaphragmNail")?.TrueOrFalse() ?? false,
            IsToeNail = fields.Optional("toeNail")?.TrueOrFalse() ?? false,
        };
    }

    /// <summary>Moisture and temperature alone, of a sill.</summary>
    public static ServiceConditions Moisture(InputValue? value)
    {
        value?.Object("an object with the moisture and the temperature of the wood").AllowOnly(["wetAtFabrication", "wetInService", "freeToShrink", "temperature"]);
        return Conditions(value, SafetyFormat.AllowableStressDesign);
    }

    private static DowelFastener Fastener(InputValue value)
    {
        InputObject fields = value.Object("an object with kind and diameter");
        fields.AllowOnly(["kind", "diameter", "bendingYieldStrength", "rootDiameter", "fullBody"]);
        return value.Guard(() => new DowelFastener(
            fields.Required("kind").Choice(Fasteners), fields.Required("diameter").Length(), fields.Optional("bendingYieldStrength")?.Stress(), fields.Optional("rootDiameter")?.Length())
        {
            HasFullBody = fields.Optional("fullBody")?.TrueOrFalse() ?? false,
        });
    }

    private static WoodConnection Lateral(InputObject connection, DowelFastener fastener)
    {
        ConnectionMember main = Member(connection.Required("main")), side = Member(connection.Required("side"));
        return new(fastener, main, side)
        {
            IsDoubleShear = connection.Optional("doubleShear")?.TrueOrFalse() ?? false,
            Gap = connection.Optional("gap")?.Length() ?? default,
            Penetration = connection.Optional("penetration")?.Length(),
            IsRoundedAsPrinted = connection.Optional("roundedAsPrinted")?.TrueOrFalse() ?? false,
            Row = connection.Optional("row") is { } row ? Row(row) : null,
            Placement = connection.Optional("placement") is { } placement ? Placement(placement, IsSoftwood(main, side)) : null,
        };
    }

    private static ConnectionMember Member(InputValue value)
    {
        InputObject fields = value.Object("an object with material and what belongs to it");
        return fields.Required("material").Choice<Func<InputObject, ConnectionMember>>([("wood", Wood), ("concrete", Concrete), ("steel", Steel), ("tested", Tested)])(fields);
    }

    private static WoodMember Wood(InputObject fields)
    {
        fields.AllowOnly(["material", "species", "bearingLength", "loadToGrainDegrees", "endGrain"]);
        return fields.Value.Guard(() => new WoodMember(Species(fields.Required("species")), fields.Required("bearingLength").Length(), Degrees(fields.Required("loadToGrainDegrees")))
        {
            IsEndGrain = fields.Optional("endGrain")?.TrueOrFalse() ?? false,
        });
    }

    private static ConcreteBearingMember Concrete(InputObject fields)
    {
        fields.AllowOnly(["material", "compressiveStrength", "bearingLength"]);
        return fields.Value.Guard(() => new ConcreteBearingMember(fields.Required("compressiveStrength").Stress(), fields.Required("bearingLength").Length()));
    }

    private static SteelBearingMember Steel(InputObject fields)
    {
        fields.AllowOnly(["material", "ultimateStrength", "thickness", "coldFormed"]);
        return fields.Value.Guard(() => new SteelBearingMember(
            fields.Required("ultimateStrength").Stress(), fields.Required("thickness").Length(), fields.Required("coldFormed").TrueOrFalse()));
    }

    private static TestedMember Tested(InputObject fields)
    {
        fields.AllowOnly(["material", "dowelBearingStrength", "bearingLength", "loadToGrainDegrees"]);
        return fields.Value.Guard(() => new TestedMember(
            fields.Required("dowelBearingStrength").Stress(), fields.Required("bearingLength").Length(), fields.Optional("loadToGrainDegrees") is { } angle ? Degrees(angle) : 0));
    }

    /// <summary>A group of the table, or the user's own.</summary>
    public static WoodSpecies Species(InputValue value)
    {
        if (value.IsText)
        {
            string text = value.Text("a species or group");
            return WoodSpeciesTable.Designations.Contains(text) ? WoodSpeciesTable.Find(text) : throw value.Error($"{string.Join(", ", WoodSpeciesTable.Designations)}, or an object with specificGravity");
        }

        InputObject fields = value.Object("a species or group as text, or an object with designation, specificGravity and softwood");
        fields.AllowOnly(["designation", "specificGravity", "softwood", "compressionPerpendicular"]);
        return value.Guard(() => new WoodSpecies(
            fields.Required("designation").Text("a text"), fields.Required("specificGravity").Number("a number above 0, at most 1.5"), fields.Required("softwood").TrueOrFalse())
        {
            CompressionPerpendicular = fields.Optional("compressionPerpendicular")?.Stress(),
        });
    }

    private static FastenerRow Row(InputValue value)
    {
        InputObject fields = value.Object("an object with count, spacing, slip and the modulus and area of both members");
        fields.AllowOnly(["count", "spacing", "mainModulus", "mainArea", "sideModulus", "sideArea", "slip"]);
        return value.Guard(() => new FastenerRow(
            WholeNumber(fields.Required("count")), fields.Required("spacing").Length(), fields.Required("mainModulus").Stress(), fields.Required("mainArea").Area(),
            fields.Required("sideModulus").Stress(), fields.Required("sideArea").Area(), fields.Required("slip").Choice(Slips)));
    }

    /// <summary>Softwood needs more end distance: one member of it, or not knowing, makes the connection one of softwood.</summary>
    private static bool IsSoftwood(params ConnectionMember[] members) =>
        Array.TrueForAll(members, m => m is not WoodMember) || Array.Exists(members, m => m is WoodMember { Species.IsSoftwood: true });

    /// <summary>Where fasteners stand in the wood.</summary>
    public static FastenerPlacement Placement(InputValue value, bool isSoftwood)
    {
        InputObject fields = value.Object("an object with load and the distances and spacings in the wood");
        fields.AllowOnly(["load", "endDistance", "spacing", "spacingOfAttachedMembers", "edgeDistance", "unloadedEdgeDistance", "rowSpacing", "outerRows", "shearAreaRatio"]);
        return value.Guard(() => new FastenerPlacement(fields.Required("load").Choice(GrainLoads), isSoftwood)
        {
            EndDistance = fields.Optional("endDistance")?.Length(),
            Spacing = fields.Optional("spacing")?.Length(),
            SpacingOfAttachedMembers = fields.Optional("spacingOfAttachedMembers")?.Length(),
            EdgeDistance = fields.Optional("edgeDistance")?.Length(),
            UnloadedEdgeDistance = fields.Optional("unloadedEdgeDistance")?.Length(),
            RowSpacing = fields.Optional("rowSpacing")?.Length(),
            OuterRows = fields.Optional("outerRows")?.Length(),
            ShearAreaRatio = fields.Optional("shearAreaRatio")?.Number("a number above 0"),
        });
    }

    private static WithdrawalConnection Withdrawal(InputValue value, DowelFastener fastener, InputObject connection)
    {
        if (fastener.Kind == DowelKind.Bolt)
        {
            throw connection.Required("fastener").Object("an object").Required("kind").Error("a screw or a nail where there is a withdrawal: a bolt holds by its washer");
        }

        InputObject fields = value.Object("an object with species and penetration");
        fields.AllowOnly(["species", "penetration", "endGrain"]);
        return value.Guard(() => new WithdrawalConnection(fastener, Species(fields.Required("species")), fields.Required("penetration").Length())
        {
            IsEndGrain = fields.Optional("endGrain")?.TrueOrFalse() ?? false,
        });
    }

    private static HeadPullThrough Head(InputValue value)
    {
        InputObject fields = value.Object("an object with species, headDiameter and thickness");
        fields.AllowOnly(["species", "headDiameter", "thickness"]);
        return value.Guard(() => new HeadPullThrough(Species(fields.Required("species")), fields.Required("headDiameter").Length(), fields.Required("thickness").Length()));
    }

    private static (WasherBearing Washer, WoodSpecies Species) WasherOnWood(InputValue value)
    {
        WasherBearing washer = Washer(value, ["species"]);
        return (washer, Species(value.Object("an object").Required("species")));
    }

    /// <summary>A washer; fields beside its own are read elsewhere.</summary>
    public static WasherBearing Washer(InputValue value, string[] others)
    {
        InputObject fields = value.Object("an object with shape, size and hole");
        bool isRound = fields.Required("shape").Choice([("round", true), ("square", false)]);
        fields.AllowOnly([.. isRound ? OfRound : OfSquare, .. others]);
        bool isAway = fields.Optional("awayFromEnd")?.TrueOrFalse() ?? true;
        Length hole = fields.Required("hole").Length();
        return value.Guard(() => isRound
            ? WasherBearing.Round(fields.Required("diameter").Length(), hole, isAway)
            : WasherBearing.Square(fields.Required("side").Length(), hole, fields.Optional("slotLength")?.Length(), isAway));
    }

    private static ImmutableArray<WoodLoadCase> LoadCases(InputValue value, WoodFastening fastening)
    {
        const string Form = "an array of load cases, at least one";
        List<InputValue> items = value.Items(Form);
        return items.Count > 0 ? [.. items.Select(item => LoadCase(item, fastening))] : throw new InputException(value.Path, "no load case", Form);
    }

    private static WoodLoadCase LoadCase(InputValue value, WoodFastening fastening)
    {
        InputObject fields = value.Object("an object with name, the forces lateral and axial that act, and their duration or time effect");
        bool isAllowable = fastening.Conditions.Format == SafetyFormat.AllowableStressDesign;
        fields.AllowOnly(["name", "lateral", "axial", isAllowable ? "duration" : "timeEffect"]);

        // The wood under a washer knows neither; all else needs the one of its format.
        bool isNeeded = fastening.Lateral is not null || fastening.Withdrawal is not null || fastening.PullThrough is not null;
        InputValue? time = isNeeded ? fields.Required(isAllowable ? "duration" : "timeEffect") : fields.Optional(isAllowable ? "duration" : "timeEffect");
        return value.Guard(() => new WoodLoadCase(fields.Required("name").Text("a text, such as D + 0.6W"))
        {
            Lateral = fields.Optional("lateral")?.Force() ?? default,
            Axial = fields.Optional("axial")?.Force() ?? default,
            Duration = isAllowable && time is not null ? time.Choice(Durations) : LoadDuration.TenYears,
            TimeEffect = !isAllowable && time is not null ? time.Choice(TimeEffects) : TimeEffect.OccupancyOrRoof,
        });
    }

    private static double Degrees(InputValue value) => value.Number("an angle in degrees from 0 (along the grain) to 90, a plain number");

    private static int WholeNumber(InputValue value)
    {
        const string Permitted = "a whole number, 1 or more";
        double number = value.Number(Permitted);
        return number is >= 1 and <= 1e6 && Math.Floor(number) == number ? (int)number : throw value.Error(Permitted);
    }
}
