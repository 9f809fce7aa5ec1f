using ConcreteAttach.Calculation;
using ConcreteAttach.Quantities;
using UnitsNet;

namespace ConcreteAttach.Nds;

/// <summary>Between what members a row of fasteners slips (NDS-2018 11.3.6). Concrete is not named there; a thin steel plate comes nearer to it than wood.</summary>
public enum LoadSlip
{
    /// <summary>Wood to wood: γ = 180,000 D^1.5.</summary>
    WoodToWood,

    /// <summary>Wood to metal: γ = 270,000 D^1.5.</summary>
    WoodToMetal,
}

/// <summary>A row of fasteners in the direction of the load, as the group action factor needs it. Immutable.</summary>
public sealed class FastenerRow
{
    /// <summary>Creates a row.</summary>
    /// <param name="count">Fasteners in the row, at least 1.</param>
    /// <param name="spacing">Centre to centre along the row; greater than 0.</param>
    /// <param name="mainModulus">E_m; greater than 0.</param>
    /// <param name="mainArea">A_m, gross; greater than 0.</param>
    /// <param name="sideModulus">E_s; greater than 0.</param>
    /// <param name="sideArea">A_s, the sum of the gross areas of the side members; greater than 0.</param>
    /// <param name="slip">Kind of members.</param>
    /// <exception cref="InputException">A parameter is outside its range.</exception>
    public FastenerRow(int count, Length spacing, Pressure mainModulus, Area mainArea, Pressure sideModulus, Area sideArea, LoadSlip slip)
    {
        if (count < 1)
        {
            throw new InputException(nameof(count), QuantityText.Format(count), "at least 1");
        }

        if (!Enum.IsDefined(slip))
        {
            throw new InputException(nameof(slip), QuantityText.Format((int)slip), string.Join(", ", Enum.GetNames<LoadSlip>()));
        }

        const MeasurementSystem System = MeasurementSystem.PoundInch;
        Count = count;
        Slip = slip;
        Spacing = Require.Positive(nameof(spacing), spacing);
        MainStiffness = Require.Positive(nameof(mainModulus), mainModulus).In(System) * Require.Positive(nameof(mainArea), mainArea).In(System);
        SideStiffness = Require.Positive(nameof(sideModulus), sideModulus).In(System) * Require.Positive(nameof(sideArea), sideArea).In(System);
    }

    /// <summary>Fasteners in the row.</summary>
    public int Count { get; }

    /// <summary>Centre to centre along the row.</summary>
    public Length Spacing { get; }

    /// <summary>Kind of members.</summary>
    public LoadSlip Slip { get; }

    internal double MainStiffness { get; }

    internal double SideStiffness { get; }

    /// <summary>C_g (11.3-1). 1 below 1/4 in.</summary>
    internal T GroupAction<T>(Sheet<T> sheet, double diameter)
        where T : struct, IFormulaNumber<T>
    {
        if (Count == 1 || Limit.IsBelow(diameter, DowelData.SmallDiameter))
        {
            return sheet.Factor("C_g", 1, Count == 1 ? "11.3.6, one fastener" : "11.3.6.1, D < 1/4 in.");
        }

        T d = sheet.Given("D", diameter, Dimension.Length);
        T s = sheet.Given("s", Spacing.In(MeasurementSystem.PoundInch), Dimension.Length, "spacing in the row");
        T main = sheet.Given("EA_m", MainStiffness, Dimension.Force, "E_m A_m");
        T side = sheet.Given("EA_s", SideStiffness, Dimension.Force, "E_s A_s");
        T n = sheet.Given("n", Count, Dimension.None);
        T ratio = sheet.Factor("R_EA", T.Min(side / main, main / side), "11.3.6");
        T gamma = sheet.Step("gamma", (Slip == LoadSlip.WoodToWood ? 180_000 : 270_000) * T.Power(d, 3, 2), Dimension.ForcePerLength, "11.3.6, load/slip modulus");
        T u = sheet.Factor("u", 1 + (gamma * (s / 2) * ((1 / main) + (1 / side))), "11.3.6");
        T m = sheet.Factor("m", u - T.Sqrt(T.Power(u, 2, 1) - 1), "11.3.6");
        T far = T.Power(m, 2 * Count, 1);
        T near = T.Power(m, Count, 1);
        return sheet.Factor(
            "C_g", m * (1 - far) / (n * (((1 + (ratio * near)) * (1 + m)) - 1 + far)) * ((1 + ratio) / (1 - m)), "11.3-1");
    }
}
