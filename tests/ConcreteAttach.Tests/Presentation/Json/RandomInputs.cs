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
        string kind = One("headed bolt", "threaded rod with nut", "hooked bolt", "headed stud");
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
        var loadCases = new JsonArray();
        for (int i = 0; i <= _random.Next(3); i++)
        {
            loadCases.Add(LoadCase($"case {i.ToString(CultureInfo.InvariantCulture)}", places));
        }

        return new JsonObject
        {
            ["schema"] = "concreteattach/1",
            ["title"] = title,
            ["method"] = "ACI 318-19",
            ["constants"] = One("inch-pound", "SI"),
            ["concrete"] = concrete,
            ["fastener"] = fastener,
            ["positions"] = new JsonArray([.. places.Select(p => Place(p, places.Length < 4))]),
            ["loadCases"] = loadCases,
            ["options"] = new JsonObject { ["closeEdges"] = One("group", "all fasteners"), ["area"] = One("union", "bounding"), ["deep"] = One("revert", "extend") },
        }.ToJsonString();
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
