namespace ConcreteAttach.Tests.PublishedCases;

/// <summary>Exact conversion between the units of the JSON contract, apart from the library so that neither can cover for the other.</summary>
internal static class CaseUnits
{
    private const double Inch = 25.4; // mm
    private const double PoundForce = 4.4482216152605; // N
    private const double Ksi = 6.894757293168361; // MPa

    private static readonly Dictionary<string, (string Kind, double Size)> Units = new(StringComparer.Ordinal)
    {
        ["mm"] = ("length", 1),
        ["cm"] = ("length", 10),
        ["m"] = ("length", 1000),
        ["in"] = ("length", Inch),
        ["ft"] = ("length", 12 * Inch),
        ["mm2"] = ("area", 1),
        ["cm2"] = ("area", 100),
        ["m2"] = ("area", 1e6),
        ["in2"] = ("area", Inch * Inch),
        ["ft2"] = ("area", 144 * Inch * Inch),
        ["N"] = ("force", 1),
        ["kN"] = ("force", 1000),
        ["lbf"] = ("force", PoundForce),
        ["kip"] = ("force", 1000 * PoundForce),
        ["MPa"] = ("pressure", 1),
        ["N/mm2"] = ("pressure", 1),
        ["kPa"] = ("pressure", 1e-3),
        ["GPa"] = ("pressure", 1000),
        ["psi"] = ("pressure", Ksi / 1000),
        ["ksi"] = ("pressure", Ksi),
        ["N/mm"] = ("force per length", 1),
        ["lbf/in"] = ("force per length", PoundForce / Inch),
        ["N-mm"] = ("moment", 1),
        ["N-m"] = ("moment", 1000),
        ["kN-m"] = ("moment", 1e6),
        ["lbf-in"] = ("moment", PoundForce * Inch),
        ["lbf-ft"] = ("moment", 12 * PoundForce * Inch),
        ["kip-in"] = ("moment", 1000 * PoundForce * Inch),
        ["kip-ft"] = ("moment", 12000 * PoundForce * Inch),
    };

    internal static bool Knows(string unit) => Units.ContainsKey(unit);

    /// <summary>The value in another unit; no unit, or an empty one, is a pure number.</summary>
    /// <exception cref="FormatException">A unit is not known, or the two measure different things.</exception>
    internal static double Convert(double value, string? from, string? to)
    {
        if (string.IsNullOrEmpty(from) && string.IsNullOrEmpty(to) || from == to)
            return value;
        if (from is null || to is null || !Units.TryGetValue(from, out var a) || !Units.TryGetValue(to, out var b) || a.Kind != b.Kind)
            throw new FormatException($"cannot turn '{from}' into '{to}'");
        return value * a.Size / b.Size;
    }
}
