using ConcreteAttach.Calculation;
using ConcreteAttach.Quantities;

namespace ConcreteAttach.Nds;

/// <summary>R_d of the three groups of modes (Table 12.3.1B).</summary>
internal readonly struct ReductionTerm<T>
    where T : struct, IFormulaNumber<T>
{
    private ReductionTerm(T bearing, T rotation, T hinge)
    {
        Bearing = bearing;
        Rotation = rotation;
        Hinge = hinge;
    }

    /// <summary>Im and Is.</summary>
    public T Bearing { get; }

    /// <summary>II.</summary>
    public T Rotation { get; }

    /// <summary>IIIm, IIIs and IV.</summary>
    public T Hinge { get; }

    /// <summary>
    /// The diameter of the table is that of the equations (12.3.7): the root where the thread bears. One solved example takes the nominal diameter of a wood screw into K_D, which
    /// lowers the strength; the cells of Table 12L that are remembered follow with the root and not with the nominal diameter (a case holds them).
    /// </summary>
    public static ReductionTerm<T> Of(Sheet<T> sheet, DowelData data)
    {
        if (!Limit.IsBelow(data.Diameter, DowelData.SmallDiameter))
        {
            T k = AngleFactor(sheet, data);
            return new(
                sheet.Factor("R_d_I", 4 * k, "Table 12.3.1B, modes Im and Is"),
                sheet.Factor("R_d_II", 3.6 * k, "Table 12.3.1B, mode II"),
                sheet.Factor("R_d_III", 3.2 * k, "Table 12.3.1B, modes IIIm, IIIs and IV"));
        }

        T small = SmallFactor(sheet, data);
        T all = data.IsSmall
            ? sheet.Factor("R_d", small, "Table 12.3.1B, D < 1/4 in.")
            : sheet.Factor("R_d", small * AngleFactor(sheet, data), "Table 12.3.1B footnote 1, D of at least 1/4 in. and root below 1/4 in.");
        return new(all, all, all);
    }

    /// <summary>K_θ, with the largest angle between load and grain of any member.</summary>
    private static T AngleFactor(Sheet<T> sheet, DowelData data)
    {
        T theta = sheet.Given("theta", Math.Max(data.Main.Angle, data.Side.Angle), Dimension.None, "largest angle between load and grain, degrees");
        return sheet.Factor("K_theta", 1 + (0.25 * (theta / 90)), "Table 12.3.1B");
    }

    /// <summary>K_D.</summary>
    private static T SmallFactor(Sheet<T> sheet, DowelData data)
    {
        T d = YieldLimit.Diameter(sheet, data);
        return sheet.When(d <= T.Literal(0.17), "Table 12.3.1B")
            ? sheet.Factor("K_D", 2.2, "Table 12.3.1B")
            : sheet.Factor("K_D", 0.5 + (10 * d), "Table 12.3.1B");
    }
}
