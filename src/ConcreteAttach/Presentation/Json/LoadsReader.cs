using System.Collections.Immutable;
using ConcreteAttach.Actions;
using ConcreteAttach.Actions.Asce7;
using ConcreteAttach.Aci318;
using ConcreteAttach.Attached;
using ConcreteAttach.Quantities;
using UnitsNet;

namespace ConcreteAttach.Presentation.Json;

/// <summary>Reads loads by kind and the combinations that make load cases of them, in place of load cases.</summary>
internal static class LoadsReader
{
    private static readonly (string, Asce7Edition)[] Standards = [("ASCE 7-16", Asce7Edition.Edition2016), ("ASCE 7-22", Asce7Edition.Edition2022)];

    private static readonly (string, SafetyFormat)[] Formats = [("strength", SafetyFormat.StrengthDesign), ("allowable stress", SafetyFormat.AllowableStressDesign)];

    private static readonly (string, LoadKind)[] Kinds =
    [
        ("D", LoadKind.Dead), ("L", LoadKind.Live), ("Lr", LoadKind.RoofLive), ("S", LoadKind.Snow), ("R", LoadKind.Rain), ("W", LoadKind.Wind), ("E", LoadKind.Earthquake),
    ];

    private static readonly (string, Axis)[] Axes = [("N", Axis.Normal), ("x", Axis.X), ("y", Axis.Y)];

    private static readonly string[] Components = ["N", "Vx", "Vy", "Mx", "My", "Mz"];

    /// <summary>What computes the force of a load of kind E.</summary>
    private static readonly string[] Computed = ["wallAnchorage", "component", "baseShear"];

    /// <summary>Whether the force of <c>wallAnchorage</c> is that on the wall itself.</summary>
    private static readonly (string, bool)[] WallForces = [("anchorage", false), ("wall", true)];

    private static readonly (string, PeriodStructure)[] Structures =
    [
        ("other", PeriodStructure.Other), ("steel moment frame", PeriodStructure.SteelMomentFrame), ("concrete moment frame", PeriodStructure.ConcreteMomentFrame),
        ("eccentrically braced frame", PeriodStructure.EccentricallyBracedFrame),
    ];

    /// <summary>The axis along which a computed force acts.</summary>
    private enum Axis
    {
        Normal,
        X,
        Y,
    }

    /// <summary>The load cases that the combinations form, and the forces that were computed for them.</summary>
    /// <exception cref="InputException">Against the contract, at the place of the error.</exception>
    public static (ImmutableArray<CombinedLoadCase> Cases, ImmutableArray<Demand> Demands) Read(InputObject root, Aci318Edition edition, EarthquakeDesign? earthquake)
    {
        InputObject fields = root.Required("combinations").Object("an object with standard and format, beside loads");
        fields.AllowOnly(["standard", "format", "SDS", "redundancy", "companionLive", "weightedLoadFactor", "at"]);
        Asce7Edition standard = fields.Required("standard").Choice(Standards);
        SafetyFormat format = fields.Required("format").Choice(Formats);
        double? acceleration = fields.Optional("SDS")?.Number("a number greater than 0, such as 1.0");
        if (acceleration is <= 0)
        {
            throw fields.Required("SDS").Error("a number greater than 0, such as 1.0");
        }

        LoadCombinations combinations = fields.Value.Guard(() => new LoadCombinations(standard)
        {
            DesignAcceleration = acceleration ?? 0,
            Redundancy = fields.Optional("redundancy")?.Number("1 or 1.3") ?? 1,
            CompanionLive = fields.Optional("companionLive")?.Number("1 or 0.5") ?? 1,
            At = fields.Optional("at") is { } at ? PlateReader.Position(at) : default,
            System = edition.System,
        });
        const string Form = "an array of loads by kind, at least one";
        List<InputValue> items = root.Required("loads").Items(Form);
        if (items.Count == 0)
        {
            throw new InputException(root.Required("loads").Path, "no load", Form);
        }

        var demands = ImmutableArray.CreateBuilder<Demand>();
        NominalLoad[] loads = [.. items.Select(item => Load(item, standard, acceleration, earthquake, demands))];
        if (acceleration is null && Array.Exists(loads, l => l.Kind == LoadKind.Earthquake))
        {
            throw fields.Required("SDS").Error("a number greater than 0, such as 1.0, with a load of kind E");
        }

        int second = SecondOfOneName(loads);
        if (second >= 0)
        {
            throw items[second].Object("a load").Required("name").Error("a name of its own for each load W and each load E: each acts alone");
        }

        if (format == SafetyFormat.AllowableStressDesign)
        {
            double factor = fields.Required("weightedLoadFactor").Number("a number, 1 or more, such as 1.43");
            return (fields.Value.Guard(() => combinations.AllowableStress(loads, factor)), demands.ToImmutable());
        }

        return fields.Optional("weightedLoadFactor") is { } given ? throw given.Error("none in strength design") : (combinations.Strength(loads), demands.ToImmutable());
    }

    private static int SecondOfOneName(NominalLoad[] loads)
    {
        var names = new HashSet<(LoadKind, string?)>();
        return Array.FindIndex(loads, l => l.Kind is LoadKind.Wind or LoadKind.Earthquake && !names.Add((l.Kind, l.Name)));
    }

    private static NominalLoad Load(InputValue value, Asce7Edition standard, double? acceleration, EarthquakeDesign? earthquake, ImmutableArray<Demand>.Builder demands)
    {
        InputObject fields = value.Object("an object with kind and the components N, Vx, Vy, Mx, My, Mz that act");
        fields.AllowOnly(["kind", "name", "reverses", "sustained", "redundancy", .. Components, .. Computed]);
        LoadKind kind = fields.Required("kind").Choice(Kinds);
        if (kind == LoadKind.Earthquake && earthquake is null)
        {
            throw fields.Required("kind").Error("another kind, or an object earthquake beside the loads that gives the category");
        }

        string[] computed = [.. Computed.Where(c => fields.Optional(c) is not null)];
        NominalLoad load = value.Guard(() => new NominalLoad(kind)
        {
            Name = fields.Optional("name")?.Text("a text, such as along x"),
            N = fields.Optional("N")?.Force() ?? default,
            Vx = fields.Optional("Vx")?.Force() ?? default,
            Vy = fields.Optional("Vy")?.Force() ?? default,
            Mx = fields.Optional("Mx")?.Moment() ?? default,
            My = fields.Optional("My")?.Moment() ?? default,
            Mz = fields.Optional("Mz")?.Moment() ?? default,
            Reverses = fields.Optional("reverses")?.TrueOrFalse() ?? (kind == LoadKind.Earthquake),
            IsSustained = fields.Optional("sustained")?.TrueOrFalse() ?? (kind == LoadKind.Dead),
            TakesRedundancy = fields.Optional("redundancy")?.TrueOrFalse() ?? (computed.Length == 0 || computed[0] == "baseShear"),
        });
        if (computed.Length == 0)
        {
            return load;
        }

        InputValue force = fields.Required(computed[0]);
        if (kind != LoadKind.Earthquake)
        {
            throw force.Error("nothing: it is a load of kind E");
        }

        if (computed.Length > 1)
        {
            throw fields.Required(computed[1]).Error($"nothing beside {computed[0]}: give one of {string.Join(", ", Computed)}");
        }

        if (Array.Find(Components, c => fields.Optional(c) is not null) is { } stated)
        {
            throw fields.Required(stated).Error($"nothing beside {computed[0]}, which gives the force");
        }

        double sds = acceleration ?? throw new InputException("/combinations/SDS", "nothing", "a number greater than 0, such as 1.0");
        (Demand demand, Axis axis) = computed[0] switch
        {
            "wallAnchorage" => Wall(force, standard, sds),
            "component" => Component(force, standard, sds),
            _ => BaseShear(force, standard, sds),
        };
        demands.Add(demand);
        return axis switch
        {
            Axis.Normal => load with { N = demand.Force },
            Axis.X => load with { Vx = demand.Force },
            _ => load with { Vy = demand.Force },
        };
    }

    private static (Demand Demand, Axis Axis) Wall(InputValue value, Asce7Edition standard, double acceleration)
    {
        InputObject fields = value.Object("an object with weight, along and what else the force on the wall's anchorage goes by");
        fields.AllowOnly(["weight", "along", "importance", "flexibleSpan", "force"]);
        Axis axis = fields.Required("along").Choice(Axes);
        WallAnchorage wall = Placed(value, () => new WallAnchorage(standard, acceleration, fields.Required("weight").Force())
        {
            ImportanceFactor = fields.Optional("importance")?.Number("1, 1.25 or 1.5") ?? 1,
            FlexibleSpan = fields.Optional("flexibleSpan")?.Length() ?? default,
        });
        bool isOfWall = fields.Optional("force")?.Choice(WallForces) ?? false;
        if (isOfWall && fields.Optional("flexibleSpan") is { } span)
        {
            throw span.Error("nothing with the force on the wall itself, which the diaphragm does not raise (12.11.1)");
        }

        return (isOfWall ? wall.Wall() : wall.Anchorage(), axis);
    }

    private static (Demand Demand, Axis Axis) BaseShear(InputValue value, Asce7Edition standard, double acceleration)
    {
        InputObject fields = value.Object("an object with along, R and levels of the building");
        fields.AllowOnly(["along", "R", "importance", "levels", "structure", "SD1", "longPeriod", "S1", "story", "share"]);
        Axis axis = fields.Required("along").Choice(Axes);
        BuildingLevel[] levels = [.. fields.Required("levels").Items("an array of levels, from the lowest up").Select(Level)];
        Demand demand = Placed(value, () => new EquivalentLateralForce(standard, acceleration, Factor(fields, "R"), levels)
        {
            ImportanceFactor = fields.Optional("importance")?.Number("1, 1.25 or 1.5") ?? 1,
            Structure = fields.Optional("structure")?.Choice(Structures) ?? PeriodStructure.Other,
            OneSecondAcceleration = fields.Optional("SD1")?.Number("a number greater than 0, in g"),
            LongPeriod = fields.Optional("longPeriod") is { } period ? Duration.FromSeconds(period.Number("a period in seconds, greater than 0, such as 8")) : null,
            MappedOneSecond = fields.Optional("S1")?.Number("a number greater than 0, in g"),
        }.StoryShear(Story(fields), fields.Optional("share")?.Number("a number above 0, at most 1") ?? 1));
        return (demand, axis);
    }

    private static int Story(InputObject fields)
    {
        const string Form = "a whole number, 1 for the lowest story";
        double number = fields.Optional("story")?.Number(Form) ?? 1;
        return number is >= 1 and <= 1000 && number == Math.Floor(number) ? (int)number : throw fields.Required("story").Error(Form);
    }

    private static BuildingLevel Level(InputValue value)
    {
        InputObject fields = value.Object("an object with weight and height of a level");
        fields.AllowOnly(["weight", "height"]);
        return Placed(value, () => new BuildingLevel(fields.Required("weight").Force(), fields.Required("height").Length()));
    }

    private static (Demand Demand, Axis Axis) Component(InputValue value, Asce7Edition standard, double acceleration)
    {
        InputObject fields = value.Object("an object with weight, along and the factors of the component");
        bool is2022 = standard == Asce7Edition.Edition2022;
        string[] ofEdition = is2022 ? ["CAR", "Rpo", "atGrade", "period", "system"] : ["ap", "Rp"];
        fields.AllowOnly(["weight", "along", "importance", "heightRatio", .. ofEdition]);
        Axis axis = fields.Required("along").Choice(Axes);
        Force weight = fields.Required("weight").Force();
        double importance = fields.Optional("importance")?.Number("1 or 1.5") ?? 1;
        double height = fields.Optional("heightRatio")?.Number("a number from 0 to 1") ?? 0;
        NonstructuralComponent component = Placed<NonstructuralComponent>(value, () => is2022
            ? new Component2022(acceleration, weight, Factor(fields, "CAR"), Factor(fields, "Rpo"))
            {
                ImportanceFactor = importance, HeightRatio = height, IsAtGrade = fields.Optional("atGrade")?.TrueOrFalse() ?? false,
                Period = fields.Optional("period") is { } period ? Duration.FromSeconds(period.Number("a period in seconds, greater than 0, such as 0.5")) : null,
                System = fields.Optional("system") is { } system ? System(system) : null,
            }
            : new Component2016(acceleration, weight, Factor(fields, "ap"), Factor(fields, "Rp"))
            {
                ImportanceFactor = importance, HeightRatio = height,
            });
        return (component.Force(), axis);
    }

    private static SeismicSystem System(InputValue value)
    {
        InputObject fields = value.Object("an object with R and Omega0 of the building's seismic force-resisting system");
        fields.AllowOnly(["R", "Omega0", "importance"]);
        return Placed(value, () => new SeismicSystem(Factor(fields, "R"), Factor(fields, "Omega0"), fields.Optional("importance")?.Number("1, 1.25 or 1.5") ?? 1));
    }

    private static double Factor(InputObject fields, string name) => fields.Required(name).Number("a number, 1 or more");

    /// <summary>Creates, and says what is wrong at the place in the document that the parameter stands for: factors are named there by the symbols of the standard.</summary>
    private static T Placed<T>(InputValue value, Func<T> create)
    {
        try
        {
            return create();
        }
        catch (InputException error) when (!error.Parameter.StartsWith('/'))
        {
            string field = error.Parameter switch
            {
                "importanceFactor" => "importance",
                "amplification" => "ap",
                "responseModification" when typeof(T) != typeof(NonstructuralComponent) => "R",
                "responseModification" => "Rp",
                "resonance" => "CAR",
                "reserve" => "Rpo",
                "overstrength" => "Omega0",
                "oneSecondAcceleration" => "SD1",
                "mappedOneSecond" => "S1",
                _ => error.Parameter,
            };
            throw new InputException($"{value.Path}/{field}", error.Found, error.Permitted);
        }
    }
}
