using System.Collections.Immutable;
using ConcreteAttach.Attached;
using ConcreteAttach.Geometry;
using ConcreteAttach.Materials;
using ConcreteAttach.Quantities;

namespace ConcreteAttach.Presentation.Json;

/// <summary>Reads the anchor reinforcement of an input document.</summary>
internal static class AnchorReinforcementReader
{
    private static readonly (string, BarEnd)[] Ends = [("straight", BarEnd.Straight), ("hooked", BarEnd.Hooked), ("headed", BarEnd.Headed)];

    private static readonly (string, BarCoating)[] Coatings =
        [("none", BarCoating.None), ("epoxy", BarCoating.Epoxy), ("epoxy, well covered", BarCoating.EpoxyWellCovered)];

    private static readonly string[] BarFields =
        ["bar", "steel", "coverToCenter", "transverseIndex", "wellSpaced", "topBars", "coating", "confined", "sideCover", "headConditions", "earthquakeConditions"];

    /// <exception cref="InputException">Against the contract, at the place of the error.</exception>
    public static AnchorReinforcement Read(InputValue value)
    {
        InputObject fields = value.Object("an object with tension, shear or both");
        fields.AllowOnly(["tension", "shear"]);
        TensionReinforcement? tension = fields.Optional("tension") is { } bars ? Tension(bars.Object("an object with bar, steel, positions, upperEnd, lowerEnd and lowerEndDepth")) : null;
        InputObject? shear = fields.Optional("shear")?.Object("an object with the edges, such as +x, that the reinforcement holds");
        return tension is null && shear is null
            ? throw value.Error("an object with tension, shear or both")
            : new AnchorReinforcement { Tension = tension, Shear = shear is null ? [] : [.. shear.Fields().Select(edge => Shear(edge.Name, edge.Value))] };
    }

    private static TensionReinforcement Tension(InputObject fields)
    {
        fields.AllowOnly([.. BarFields, "positions", "upperEnd", "upperEndDepth", "lowerEnd", "lowerEndDepth"]);
        AnchorBars bars = Bars(fields);
        ImmutableArray<FastenerPosition> positions = [.. fields.Required("positions").Items("an array with the place [x, y] of each bar").Select(PlateReader.Position)];
        return fields.Value.Guard(() => new TensionReinforcement(
            bars, positions, fields.Required("upperEnd").Choice(Ends), fields.Required("lowerEnd").Choice(Ends), fields.Required("lowerEndDepth").Length())
        {
            UpperEndDepth = fields.Optional("upperEndDepth")?.Length(),
        });
    }

    private static ShearReinforcement Shear(string edge, InputValue value)
    {
        if (!ConcreteSides.TryRead(edge, out ConcreteSide side))
        {
            throw new InputException(value.Path, "an unknown edge", "+x, -x, +y or -y; of an outline side-1 and so on, or opening-1-side-1");
        }

        InputObject fields = value.Object("an object with arrangement, bar, steel, depth, innerEnd and innerLength");
        bool isEnclosing = fields.Required("arrangement").Choice([("enclosing", true), ("crossing", false)]);
        string[] own = isEnclosing ? ["legs"] : ["places", "outerEnd", "outerCover"];
        fields.AllowOnly([.. BarFields, "arrangement", "depth", "innerEnd", "innerLength", "eccentricity", .. own]);
        AnchorBars bars = Bars(fields);
        ShearReinforcement reinforcement = fields.Value.Guard(() => isEnclosing
            ? ShearReinforcement.Enclosing(side, bars, Legs(fields.Required("legs")), fields.Required("depth").Length(), fields.Required("innerEnd").Choice(Ends), fields.Required("innerLength").Length())
            : ShearReinforcement.Crossing(
                side, bars, [.. fields.Required("places").Items("an array with the place of each bar along the edge").Select(place => place.Length())], fields.Required("depth").Length(),
                fields.Required("outerEnd").Choice(Ends), fields.Required("innerEnd").Choice(Ends), fields.Required("innerLength").Length()));
        return fields.Value.Guard(() => reinforcement with { Eccentricity = fields.Optional("eccentricity")?.Length(), OuterCover = fields.Optional("outerCover")?.Length() });
    }

    private static int Legs(InputValue value)
    {
        const string Permitted = "a whole number, 1 or more; a hairpin has two legs";
        double number = value.Number(Permitted);
        return number >= 1 && number <= 10_000 && number == Math.Floor(number) ? (int)number : throw value.Error(Permitted);
    }

    private static AnchorBars Bars(InputObject fields)
    {
        DeformedBar bar = Bar(fields.Required("bar"));
        AnchorSteel steel = Steel(fields.Required("steel"), bar);
        return fields.Value.Guard(() => new AnchorBars(bar, steel)
        {
            CoverToCenter = fields.Optional("coverToCenter")?.Length(),
            TransverseIndex = fields.Optional("transverseIndex")?.Length() ?? default,
            IsWellSpaced = fields.Optional("wellSpaced")?.TrueOrFalse() ?? false,
            IsTopBar = fields.Optional("topBars")?.TrueOrFalse() ?? false,
            Coating = fields.Optional("coating")?.Choice(Coatings) ?? BarCoating.None,
            IsConfined = fields.Optional("confined")?.TrueOrFalse() ?? false,
            HasSideCover = fields.Optional("sideCover")?.TrueOrFalse() ?? false,
            MeetsHeadConditions = fields.Optional("headConditions")?.TrueOrFalse() ?? false,
            MeetsEarthquakeConditions = fields.Optional("earthquakeConditions")?.TrueOrFalse() ?? false,
        });
    }

    /// <summary>A designation that is unknown, or does not come in the size of the bar, is an error of the steel.</summary>
    private static AnchorSteel Steel(InputValue value, DeformedBar bar)
    {
        try
        {
            return FastenerReader.Steel(value, bar.Diameter);
        }
        catch (InputException error) when (error.Parameter is "steel" or "diameter")
        {
            throw value.Error(error.Permitted);
        }
    }

    private static DeformedBar Bar(InputValue value)
    {
        if (value.IsText)
        {
            string name = value.Text("the size of the bar");
            return DeformedBar.Sizes.FirstOrDefault(bar => bar.Designation == name) ?? throw value.Error($"{string.Join(", ", DeformedBar.Sizes)}, or an object with diameter and area");
        }

        InputObject fields = value.Object("the size of the bar, such as No. 4, or an object with diameter and area");
        fields.AllowOnly(["diameter", "area"]);
        return value.Guard(() =>
        {
            UnitsNet.Length diameter = fields.Required("diameter").Length();
            return new DeformedBar($"bar {QuantityText.Format(diameter)}", diameter, fields.Required("area").Area());
        });
    }
}
