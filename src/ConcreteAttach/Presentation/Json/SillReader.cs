using System.Collections.Immutable;
using ConcreteAttach.Actions;
using ConcreteAttach.Actions.Asce7;
using ConcreteAttach.Attached;
using ConcreteAttach.Connections;
using ConcreteAttach.Materials;
using ConcreteAttach.Nds;
using ConcreteAttach.Quantities;

namespace ConcreteAttach.Presentation.Json;

/// <summary>Reads the wood sill of a document: as it is verified together with its concrete, and as the earthquake design names it.</summary>
internal static class SillReader
{
    private static readonly (string, SillDirection)[] Directions = [("x", SillDirection.X), ("y", SillDirection.Y)];

    /// <summary>What <see cref="OfCombination"/> takes a leading live load to be.</summary>
    public const string LiveLoadIsOccupancy = "Wood: live load is taken as from occupancy, time effect 0.8; where it is from storage, 0.7, give load cases (NDS-2018 Table N3).";

    /// <exception cref="InputException">Against the contract, at the place of the error.</exception>
    public static SillPlate Plate(InputValue value)
    {
        InputObject fields = value.Object("an object with species, thickness, direction and what else is known of the sill");
        fields.AllowOnly(["species", "thickness", "direction", "gap", "bendingYieldStrength", "roundedAsPrinted", "washer", "placement", "conditions"]);
        WoodSpecies species = WoodReader.Species(fields.Required("species"));
        return value.Guard(() => new SillPlate(species, fields.Required("thickness").Length(), fields.Required("direction").Choice(Directions))
        {
            Conditions = WoodReader.Moisture(fields.Optional("conditions")),
            Gap = fields.Optional("gap")?.Length() ?? default,
            BendingYieldStrength = fields.Optional("bendingYieldStrength")?.Stress(),
            IsRoundedAsPrinted = fields.Optional("roundedAsPrinted")?.TrueOrFalse() ?? false,
            Washer = fields.Optional("washer") is { } washer ? WoodReader.Washer(washer, []) : null,
            Placement = fields.Optional("placement") is { } placement ? WoodReader.Placement(placement, species.IsSoftwood) : null,
        });
    }

    /// <exception cref="InputException">Against the contract, at the place of the error.</exception>
    public static WoodSill Named(InputValue value)
    {
        InputObject fields = value.Object("an object with direction and thickness of the sill");
        fields.AllowOnly(["direction", "thickness", "embedment", "strengthByNds"]);
        return value.Guard(() => new WoodSill(fields.Required("direction").Choice(Directions), fields.Required("thickness").Length())
        {
            Embedment = fields.Optional("embedment")?.Length(),
            HasStrengthByNds = fields.Optional("strengthByNds")?.TrueOrFalse() ?? false,
        });
    }

    /// <summary>What the wood asks of each load case. Without a sill nothing may be given.</summary>
    /// <exception cref="InputException">Against the contract, at the place of the error.</exception>
    public static ImmutableArray<SillLoadCase> LoadCases(InputValue value, ImmutableArray<LoadCase> loadCases, bool hasSill)
    {
        List<InputValue> items = value.Items("an array of load cases");
        return [.. loadCases.Select((loadCase, i) => LoadCase(items[i].Object("an object"), loadCase, hasSill)).OfType<SillLoadCase>()];
    }

    /// <summary>
    /// What the wood asks of a load case that a combination formed: the time effect of its leading load (NDS-2018 Table N3; live load taken as from occupancy), or the duration of its shortest one (Table 2.3.2).
    /// </summary>
    public static SillLoadCase OfCombination(CombinedLoadCase combined) => combined.LoadCase.Format == SafetyFormat.AllowableStressDesign
        ? new(combined.LoadCase) { Duration = combined.Acting.Select(DurationOf).Max() }
        : new(combined.LoadCase)
        {
            TimeEffect = combined.Leading switch
            {
                LoadKind.Dead => TimeEffect.Dead,
                LoadKind.Wind or LoadKind.Earthquake => TimeEffect.WindEarthquakeOrImpact,
                _ => TimeEffect.OccupancyOrRoof,
            },
        };

    private static LoadDuration DurationOf(LoadKind kind) => kind switch
    {
        LoadKind.Dead => LoadDuration.Permanent,
        LoadKind.Live => LoadDuration.TenYears,
        LoadKind.Snow or LoadKind.Rain => LoadDuration.TwoMonths,
        LoadKind.RoofLive => LoadDuration.SevenDays,
        _ => LoadDuration.TenMinutes,
    };

    private static SillLoadCase? LoadCase(InputObject fields, LoadCase loadCase, bool hasSill)
    {
        (string needed, string other) = loadCase.Format == SafetyFormat.AllowableStressDesign ? ("duration", "timeEffect") : ("timeEffect", "duration");
        if (!hasSill)
        {
            return (fields.Optional(needed) ?? fields.Optional(other)) is { } given ? throw given.Error("none, or an object sill beside the load cases") : null;
        }

        return fields.Optional(other) is { } wrong ? throw wrong.Error($"none: this safety format goes by {needed}")
            : needed == "duration" ? new(loadCase) { Duration = fields.Required(needed).Choice(WoodReader.Durations) }
            : new(loadCase) { TimeEffect = fields.Required(needed).Choice(WoodReader.TimeEffects) };
    }
}
