using System.Globalization;
using System.Text.Json.Nodes;

namespace ConcreteAttach.Tests.Presentation.Json;

/// <summary>Input documents of random attachments: every kind of fastener, layout, unit and option that the contract has today.</summary>
internal sealed class RandomInputs(int seed)
{
    private static readonly string[] Steels = ["ASTM F1554 Grade 36", "ASTM F1554 Grade 55", "ASTM F1554 Grade 105", "ASTM A307", "ISO 898-1 8.8"];

    private readonly Random _random = new(seed);

    public string Next(string title)
    {
        double diameter = One(0.5, 0.625, 0.75, 1);
        double embedment = Between(3, 28);
        (double X, double Y)[] places = Layout();
        string kind = One(
            "headed bolt", "threaded rod with nut", "hooked bolt", "headed stud", "torque-controlled expansion", "displacement-controlled expansion", "undercut", "screw", "adhesive rod", "adhesive bar");
        bool isCastIn = kind is "headed bolt" or "threaded rod with nut" or "hooked bolt" or "headed stud";
        string constants = One("inch-pound", "SI");
        var fastener = new JsonObject
        {
            ["kind"] = kind,
            ["diameter"] = Inches(diameter),
            ["steel"] = _random.Next(5) == 0 ? new JsonObject { ["yield"] = "50 ksi", ["ultimate"] = "65 ksi", ["ductile"] = Coin } : One(Steels),
            ["effectiveEmbedment"] = Length(embedment),
            ["torqued"] = _random.Next(8) == 0,
            ["groutPad"] = Coin,
        };
        if (kind == "hooked bolt")
        {
            fastener["hookExtension"] = Length(diameter * Between(2, 6));
        }

        if (!isCastIn && _random.Next(8) != 0)
        {
            fastener["qualification"] = Qualification(kind, diameter, embedment, constants == "SI" ? 7 : 17);
        }

        if (kind.StartsWith("adhesive", StringComparison.Ordinal))
        {
            fastener["installationDirection"] = One("downward", "horizontal", "upward", null);
        }

        if (kind == "headed stud" && Coin)
        {
            fastener["weldedToPlate"] = new JsonObject { ["thickness"] = Length(Between(0.25, 1)), ["cornerReinforcement"] = Coin };
        }

        var concrete = new JsonObject
        {
            ["strength"] = Coin ? $"{_random.Next(2000, 12000).ToString(CultureInfo.InvariantCulture)} psi" : $"{_random.Next(15, 80).ToString(CultureInfo.InvariantCulture)} MPa",
            ["density"] = One("normalweight", "normalweight", "sand-lightweight", "all-lightweight", "115 lb/ft3"),
            ["thickness"] = Length(embedment + Between(0.5, 20)),
            ["cracked"] = Coin,
            ["supplementaryReinforcement"] = new JsonObject { ["tension"] = Coin, ["shear"] = Coin },
            ["edgeReinforcement"] = One("none", "bar", "bar and stirrups"),
            ["edges"] = Edges(places),
        };
        if (_random.Next(4) == 0)
        {
            concrete["anchorReinforcement"] = new JsonObject { ["tension"] = Reinforcement(places, embedment) };
        }

        var loadCases = new JsonArray();
        for (int i = 0; i <= _random.Next(3); i++)
        {
            loadCases.Add(LoadCase($"case {i.ToString(CultureInfo.InvariantCulture)}", places));
        }

        JsonObject? earthquake = null;
        if (_random.Next(3) == 0)
        {
            earthquake = Earthquake(loadCases);
        }

        if (_random.Next(6) == 0)
        {
            foreach (JsonNode? loadCase in loadCases)
            {
                loadCase!["weightedLoadFactor"] = 1 + (0.125 * _random.Next(6));
            }
        }

        return new JsonObject
        {
            ["schema"] = "concreteattach/1",
            ["title"] = title,
            ["method"] = "ACI 318-19",
            ["constants"] = constants,
            ["concrete"] = concrete,
            ["fastener"] = fastener,
            ["positions"] = new JsonArray([.. places.Select(p => Place(p, places.Length < 4))]),
            ["earthquake"] = earthquake,
            ["loadCases"] = loadCases,
            ["options"] = new JsonObject { ["closeEdges"] = One("group", "all fasteners"), ["area"] = One("union", "bounding"), ["deep"] = One("revert", "extend") },
        }.ToJsonString();
    }

    /// <summary>A bar beside each fastener, developed or not.</summary>
    private JsonObject Reinforcement((double X, double Y)[] places, double embedment) => new()
    {
        ["bar"] = One("No. 3", "No. 4", "No. 5", "No. 6"),
        ["steel"] = One("ASTM A615 Grade 60", "ASTM A706 Grade 60"),
        ["positions"] = new JsonArray([.. places.Select(p => Place((p.X + 0.25, p.Y), isLine: true))]),
        ["upperEnd"] = One("straight", "hooked", "headed"),
        ["upperEndDepth"] = Coin ? Length(1) : null,
        ["lowerEnd"] = One("straight", "hooked", "headed"),
        ["lowerEndDepth"] = Length(embedment + 0.3),
        ["coverToCenter"] = Coin ? Length(Between(1, 3)) : null,
        ["wellSpaced"] = Coin,
        ["coating"] = One("none", "epoxy", "epoxy, well covered", null),
        ["confined"] = Coin,
        ["headConditions"] = Coin,
        ["earthquakeConditions"] = Coin,
    };

    /// <summary>A design for earthquake, and a part of the first load case that is the earthquake's.</summary>
    private JsonObject Earthquake(JsonArray loadCases)
    {
        JsonObject first = loadCases[0]!.AsObject();
        var part = new JsonObject();
        foreach (string component in new[] { "N", "Vx", "Vy", "Mx", "My", "Mz" })
        {
            if (first[component] is { } whole && Coin)
            {
                part[component] = whole.DeepClone();
            }
        }

        first["earthquake"] = part;
        return new JsonObject
        {
            ["category"] = One("A", "C", "D", "F"), ["tension"] = One("ductile steel", "yielding attachment", "non-yielding attachment", "overstrength", null),
            ["shear"] = One("yielding attachment", "non-yielding attachment", "overstrength", null), ["overstrength"] = 2.5, ["keptFromBuckling"] = Coin, ["plasticHinge"] = _random.Next(9) == 0,
            ["stretchLength"] = Coin ? Length(Between(2, 10)) : null, ["threads"] = One("part of the length", "whole length", "upset ends", null), ["staysUncracked"] = Coin,
        };
    }

    private JsonObject Qualification(string kind, double diameter, double embedment, double kc)
    {
        bool isAdhesive = kind.StartsWith("adhesive", StringComparison.Ordinal);
        var data = new JsonObject { ["source"] = "invented data", ["category"] = One(1, 2, 3), ["nominalEmbedment"] = Length(embedment + 0.5), ["holeDepth"] = Length(embedment + 1) };
        May("k_c", () => new JsonObject { ["cracked"] = kc, ["uncracked"] = 1.4 * kc });
        May("criticalEdgeDistance", () => Length(Between(2, 4) * embedment));
        May("steelShear", () => Force(Between(2, 20)));
        May("ductile", () => Coin);
        May("minimumSpacing", () => Length(Between(3, 8) * diameter));
        May("minimumEdge", () => Length(Between(3, 8) * diameter));
        May("minimumThickness", () => Length(embedment + 2));
        May("holeDiameter", () => Length(diameter + 0.125));
        May("uncrackedOnly", () => _random.Next(4) == 0);
        May("seismic", () => new JsonObject { ["steelShear"] = Force(Between(2, 20)) });
        if (!isAdhesive)
        {
            May("pullout", () => Coin ? "does not govern" : new JsonObject { ["cracked"] = Force(Between(2, 20)), ["uncracked"] = Force(Between(2, 20)), ["at"] = "2500 psi", ["exponent"] = 0.5 });
            May("separatedSleeve", () => kind == "torque-controlled expansion" && Coin);
            return data;
        }

        May("bondStress", () => Coin
            ? new JsonObject { ["cracked"] = "600 psi", ["uncracked"] = "9 MPa" }
            : new JsonObject
            {
                ["minimum"] = new JsonObject
                {
                    ["environment"] = One("indoor", "outdoor"), ["concreteAge"] = One("28 d", "14.5 d"), ["installationTemperature"] = One("10 C", "45 F", "65.5 F"), ["peakTemperature"] = One("40 C", "150 F"),
                    ["moisture"] = One("dry", "saturated", "water-filled"), ["drilling"] = One("rotary impact", "core", "other"),
                },
            });
        return data;

        void May(string name, Func<JsonNode> value)
        {
            if (Coin)
            {
                data[name] = value();
            }
        }
    }

    /// <summary>Fasteners on one line stay exactly on it: in inches as they are.</summary>
    private JsonArray Place((double X, double Y) place, bool isLine) =>
        isLine ? new JsonArray(Inches(place.X), Inches(place.Y)) : new JsonArray(Length(place.X), Length(place.Y));

    private bool Coin => _random.Next(2) == 0;

    private (double X, double Y)[] Layout()
    {
        (int columns, int rows) = One((1, 1), (2, 1), (1, 3), (2, 2), (3, 2), (4, 4));
        (double sx, double sy) = (Between(2.5, 20), Between(2.5, 20));
        (double skewX, double skewY) = Coin ? (0, 0) : (Between(-1, 1), Between(-1, 1));
        return [.. from row in Enumerable.Range(0, rows) from column in Enumerable.Range(0, columns) select (Rounded((column * sx) + (row * skewX)), Rounded((row * sy) + (column * skewY)))];
    }

    private JsonObject Edges((double X, double Y)[] places)
    {
        var edges = new JsonObject();
        Add("+x", places.Max(p => p.X));
        Add("-x", -places.Min(p => p.X));
        Add("+y", places.Max(p => p.Y));
        Add("-y", -places.Min(p => p.Y));
        return edges;

        void Add(string side, double outermost)
        {
            if (Coin)
            {
                edges[side] = Length(outermost + Between(1.5, 30));
            }
        }
    }

    private JsonObject LoadCase(string name, (double X, double Y)[] places)
    {
        var loadCase = new JsonObject { ["name"] = name, ["N"] = Force(Between(-5, 20)), ["Vx"] = Force(Between(-6, 6)), ["Vy"] = Force(Between(-6, 6)) };
        if (_random.Next(4) == 0)
        {
            (loadCase["N"], loadCase["sustainedTension"]) = ("8 kip", "3 kip");
        }

        bool isLine = places.Length < 4;
        if (!isLine)
        {
            loadCase["Mx"] = Moment();
            loadCase["My"] = Moment();
            loadCase["Mz"] = Moment();
        }

        // At the centroid a row carries everything; a few act elsewhere, which only a group can carry.
        double x = places.Average(p => p.X);
        double y = places.Average(p => p.Y);
        loadCase["at"] = !isLine && Coin ? new JsonArray(Length(x + Between(-2, 2)), Length(y)) : new JsonArray(Exact(x), Exact(y));
        return loadCase;
    }

    private string Length(double inches) => Coin ? Inches(Rounded(inches)) : $"{Rounded(inches * 25.4).ToString("0.###", CultureInfo.InvariantCulture)} mm";

    private string Force(double kip) => Coin ? $"{kip.ToString("0.00", CultureInfo.InvariantCulture)} kip" : $"{(kip * 4.448).ToString("0.00", CultureInfo.InvariantCulture)} kN";

    private string Moment() => $"{Between(-30, 30).ToString("0.0", CultureInfo.InvariantCulture)} kip-in";

    private static string Inches(double inches) => $"{inches.ToString("0.######", CultureInfo.InvariantCulture)} in";

    private static string Exact(double inches) => $"{((decimal)inches).ToString(CultureInfo.InvariantCulture)} in";

    private static double Rounded(double value) => Math.Round(value, 3);

    private double Between(double low, double high) => low + ((high - low) * _random.NextDouble());

    private T One<T>(params T[] choices) => choices[_random.Next(choices.Length)];
}
