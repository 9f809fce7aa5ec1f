using ConcreteAttach.Calculation;
using ConcreteAttach.Quantities;
using UnitsNet;

namespace ConcreteAttach.Nds;

/// <summary>Direction of the load to the grain, as the tables of 12.5.1 part it. A load at an angle between has no row of its own there.</summary>
public enum GrainLoad
{
    /// <summary>Parallel to grain, the fastener bears toward the end.</summary>
    ParallelTension,

    /// <summary>Parallel to grain, the fastener bears away from the end.</summary>
    ParallelCompression,

    /// <summary>Perpendicular to grain.</summary>
    Perpendicular,
}

/// <summary>
/// Where fasteners stand in a member of wood, for the geometry factor C_Δ and the minima of NDS-2018 12.5.1. What is null does not occur (no second fastener, no
/// second row, no end near) and is not checked. The tables count for diameters of 1/4 in. and more. Values of the tables are from memory.
/// </summary>
public sealed class FastenerPlacement
{
    /// <summary>Creates a placement.</summary>
    /// <param name="load">Direction of the load.</param>
    /// <param name="isSoftwood">Whether the member is of softwood.</param>
    /// <exception cref="InputException">The direction is none of the enumeration.</exception>
    public FastenerPlacement(GrainLoad load, bool isSoftwood)
    {
        if (!Enum.IsDefined(load))
        {
            throw new InputException(nameof(load), QuantityText.Format((int)load), string.Join(", ", Enum.GetNames<GrainLoad>()));
        }

        Load = load;
        IsSoftwood = isSoftwood;
    }

    /// <summary>Direction of the load.</summary>
    public GrainLoad Load { get; }

    /// <summary>Whether the member is of softwood.</summary>
    public bool IsSoftwood { get; }

    /// <summary>Distance to the end of the member (Table 12.5.1A).</summary>
    public Length? EndDistance { get; init => field = Checked("endDistance", value); }

    /// <summary>Centre to centre in a row (Table 12.5.1B).</summary>
    public Length? Spacing { get; init => field = Checked("spacing", value); }

    /// <summary>Spacing that the attached members need, for C_Δ = 1 in rows across the grain (Table 12.5.1B); at least 3 D counts. Null: 3 D.</summary>
    public Length? SpacingOfAttachedMembers { get; init => field = Checked("spacingOfAttachedMembers", value); }

    /// <summary>Distance to the edge that the load points to, or to the nearer edge under a load parallel to grain (Table 12.5.1C).</summary>
    public Length? EdgeDistance { get; init => field = Checked("edgeDistance", value); }

    /// <summary>Distance to the edge that a load perpendicular to grain points away from (Table 12.5.1C).</summary>
    public Length? UnloadedEdgeDistance { get; init => field = Checked("unloadedEdgeDistance", value); }

    /// <summary>Centre to centre of rows (Table 12.5.1D).</summary>
    public Length? RowSpacing { get; init => field = Checked("rowSpacing", value); }

    /// <summary>Distance between the outer rows parallel to grain on one splice plate, unless shrinkage is provided for: at most 5 in. (12.5.1.3).</summary>
    public Length? OuterRows { get; init => field = Checked("outerRows", value); }

    /// <summary>Shear area over that of full strength, where the fastener is loaded at an angle to its axis (12.5.1.2); greater than 0.</summary>
    /// <exception cref="InputException">Not above 0, or not finite.</exception>
    public double? ShearAreaRatio
    {
        get;
        init => field = value is null or > 0 and < double.PositiveInfinity ? value : throw new InputException("shearAreaRatio", QuantityText.Format(value.Value), "greater than 0");
    }

    /// <summary>Direction of the load and what is given, in words.</summary>
    public override string ToString()
    {
        string load = Load switch
        {
            GrainLoad.ParallelTension => "load along the grain toward the end",
            GrainLoad.ParallelCompression => "load along the grain away from the end",
            _ => "load across the grain",
        };
        (string Name, Length? Value)[] given =
        [
            ("end distance", EndDistance), ("spacing", Spacing), ("spacing that the attached members need", SpacingOfAttachedMembers), ("edge distance", EdgeDistance),
            ("unloaded edge distance", UnloadedEdgeDistance), ("row spacing", RowSpacing), ("outer rows", OuterRows),
        ];
        string ratio = ShearAreaRatio is { } area ? $", shear area ratio {QuantityText.Format(area)}" : "";
        return $"{load}, {(IsSoftwood ? "softwood" : "hardwood")}{string.Concat(given.Where(g => g.Value is not null).Select(g => $", {g.Name} {QuantityText.Format(g.Value!.Value)}"))}{ratio}";
    }

    /// <summary>C_Δ: the least of the ratios, for all fasteners of the group; what is below a minimum goes into <paramref name="notMet"/>.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="diameter">Nominal diameter, in.</param>
    /// <param name="slenderLength">Lesser of the bearing lengths in wood main and side members, in.</param>
    /// <param name="notMet">Takes the minima that are not met.</param>
    internal T GeometryFactor<T>(Sheet<T> sheet, double diameter, double slenderLength, List<string> notMet)
        where T : struct, IFormulaNumber<T>
    {
        if (Limit.IsBelow(diameter, DowelData.SmallDiameter))
        {
            return sheet.Factor("C_Delta", 1, "12.5.1, D < 1/4 in.");
        }

        T d = sheet.Given("D", diameter, Dimension.Length);
        T? least = null;
        if (EndDistance is { } end)
        {
            double full = Load == GrainLoad.ParallelTension ? (IsSoftwood ? 7 : 5) : 4;
            least = Least(least, Ratio(sheet, new("a_end", "C_Delta_end", "Table 12.5.1A", "End distance"), In(end), full * d, full / 2 * d, notMet));
        }

        if (Spacing is { } spacing)
        {
            T full = Load != GrainLoad.Perpendicular ? 4 * d
                : SpacingOfAttachedMembers is { } needed ? T.Max(3 * d, sheet.Given("s_full", In(needed), Dimension.Length, "as the attached members need"))
                : 3 * d;
            least = Least(least, Ratio(sheet, new("s", "C_Delta_s", "Table 12.5.1B", "Spacing in a row"), In(spacing), full, 3 * d, notMet));
        }

        if (ShearAreaRatio is { } area)
        {
            T one = sheet.Given("A_full", 1, Dimension.None, "shear area of full strength");
            least = Least(least, Ratio(sheet, new("A_ratio", "C_Delta_A", "12.5.1.2(b)", "Shear area ratio", Dimension.None), area, one, 0.5 * one, notMet));
        }

        Edges(sheet, d, slenderLength / diameter, notMet);
        return least is { } ratio
            ? sheet.Factor("C_Delta", ratio, "12.5.1, least of the ratios")
            : sheet.Factor("C_Delta", 1, "12.5.1, no end, row or shear area that lowers it");
    }

    /// <summary>Edge distance and distance of rows: minima without a reduction.</summary>
    private void Edges<T>(Sheet<T> sheet, T d, double slenderness, List<string> notMet)
        where T : struct, IFormulaNumber<T>
    {
        bool isAcross = Load == GrainLoad.Perpendicular;
        T ratio = sheet.Given("l/D", slenderness, Dimension.None, "lesser bearing length in wood over D");
        if (EdgeDistance is { } edge)
        {
            T least = isAcross ? 4 * d : 1.5 * d;
            if (!isAcross && RowSpacing is { } rows && sheet.When(ratio > T.Literal(6), "Table 12.5.1C"))
            {
                least = T.Max(least, 0.5 * sheet.Given("s_row", In(rows), Dimension.Length, "spacing between rows"));
            }

            Minimum(sheet, new("a_edge", "", "Table 12.5.1C", "Edge distance"), In(edge), least, notMet);
        }

        if (UnloadedEdgeDistance is { } far)
        {
            Minimum(sheet, new("a_edge_u", "", "Table 12.5.1C", "Unloaded edge distance"), In(far), 1.5 * d, notMet);
        }

        if (RowSpacing is { } row)
        {
            T least = !isAcross ? 1.5 * d
                : sheet.When(ratio <= T.Literal(2), "Table 12.5.1D") ? 2.5 * d
                : sheet.When(ratio >= T.Literal(6), "Table 12.5.1D") ? 5 * d
                : ((5 * (ratio * d)) + (10 * d)) / 8;
            Minimum(sheet, new("s_row", "", "Table 12.5.1D", "Spacing between rows"), In(row), least, notMet);
        }

        if (OuterRows is { } outer && !isAcross)
        {
            T most = T.Literal(5);
            T found = sheet.Given("s_outer", In(outer), Dimension.Length, "between the outer rows");
            if (!sheet.When(found <= most, "12.5.1.3"))
            {
                notMet.Add($"The outer rows are {Text(found.Value)} apart, more than 5 in. (12.5.1.3).");
            }
        }
    }

    private static T Least<T>(T? before, T ratio)
        where T : struct, IFormulaNumber<T> => before is { } other && other.Value <= ratio.Value ? other : ratio;

    /// <summary>Found over what full strength needs, at most 1.</summary>
    private static T Ratio<T>(Sheet<T> sheet, Rule rule, double found, T full, T least, List<string> notMet)
        where T : struct, IFormulaNumber<T>
    {
        T a = Minimum(sheet, rule, found, least, notMet);
        return sheet.When(a >= full, rule.Clause) ? sheet.Factor(rule.FactorId, 1, rule.Clause) : sheet.Factor(rule.FactorId, a / full, rule.Clause);
    }

    private static T Minimum<T>(Sheet<T> sheet, Rule rule, double found, T least, List<string> notMet)
        where T : struct, IFormulaNumber<T>
    {
        T a = sheet.Given(rule.Id, found, rule.Dimension, rule.Name);
        if (!sheet.When(a >= least, rule.Clause))
        {
            string permitted = QuantityText.Format(least.Value, rule.Dimension, MeasurementSystem.PoundInch);
            notMet.Add($"{rule.Name} {QuantityText.Format(found, rule.Dimension, MeasurementSystem.PoundInch)} is below the minimum, {permitted} ({rule.Clause}).");
        }

        return a;
    }

    private readonly record struct Rule(string Id, string FactorId, string Clause, string Name, Dimension Dimension = Dimension.Length);

    private static Length? Checked(string parameter, Length? value) => value is { } length ? Require.Positive(parameter, length) : null;

    private static double In(Length length) => length.In(MeasurementSystem.PoundInch);

    private static string Text(double inches) => QuantityText.Format(inches, Dimension.Length, MeasurementSystem.PoundInch);
}
