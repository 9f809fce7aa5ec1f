using System.Runtime.CompilerServices;
using ConcreteAttach.Calculation;
using ConcreteAttach.Quantities;
using ConcreteAttach.Verification;

namespace ConcreteAttach.Aci318;

/// <summary>
/// 17.5.2.1 The design strength of anchor reinforcement in place of that of breakout: of breakout in tension, and of breakout toward an edge; not of pullout, blowout, bond, pryout or breakout along an edge.
/// </summary>
internal static class ReinforcementModes
{
    /// <summary>Why breakout does not apply.</summary>
    public const string Replaced = "Replaced by anchor reinforcement (17.5.2.1).";

    private const string NotEffective = "The anchor reinforcement does not meet 17.5.2.1, see the rules of detailing: the concrete is checked for breakout.";

    private const string Nearest = "bars that are nearest to this fastener; a bar as near to several is shared";

    private const string Legs = "legs at this fastener: all of them over the fasteners";

    private static readonly ModeName TensionName = new(FailureModeKind.ReinforcementTension, "17.5.2.1(a)", "phi N_rs", "N_ua_i", "the fastener whose bars use most of their strength");
    private static readonly ModeName ShearName = new(FailureModeKind.ReinforcementShear, "17.5.2.1(b)", "phi V_rs", "V_ua_r");

    /// <summary>Bars for tension: of each fastener its own, against its own tension; the one that uses most of its bars is written.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)] // costs others nothing
    public static void Tension<T>(TensionBars bars, AnchorageData data, in TensionedFasteners fasteners, in ModeWriter<T> writer)
        where T : struct, IFormulaNumber<T>
    {
        var mode = new ModeLabel(TensionName);
        if (!bars.IsEffective)
        {
            writer.WriteWithout(mode, ModeStatus.NotApplicable, NotEffective);
            return;
        }

        int most = 0;
        for (int k = 1; k < fasteners.Count; k++)
        {
            most = fasteners.Forces[k] / bars.BarsOf[fasteners.Members[k]] > fasteners.Forces[most] / bars.BarsOf[fasteners.Members[most]] ? k : most;
        }

        int fastener = fasteners.Members[most];
        Sheet<T> sheet = writer.NewSheet();
        T nominal = Strength(sheet, "N_rs", bars.Bar, bars.BarsOf[fastener], Nearest, "17.5.2.1(a)", out T area, out T yield);
        T phi = StrengthReduction.Reinforcement(sheet, data);
        T demand = sheet.Given(TensionName.DemandId, fasteners.HasDemand ? fasteners.Forces[most] : 0, Dimension.Force, TensionName.DemandOrigin);
        Size(sheet, demand, phi, yield, area, writer);
        writer.Check(sheet, mode, nominal, phi, demand, data.Only(fastener));
    }

    /// <summary>Bars for shear toward an edge.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    public static void Shear<T>(ShearBars bars, AnchorageData data, in FastenerShears shears, in ModeWriter<T> writer)
        where T : struct, IFormulaNumber<T>
    {
        var mode = new ModeLabel(ShearName, bars.Edge.Side);
        if (!bars.IsEffective)
        {
            writer.WriteWithout(mode, ModeStatus.NotApplicable, NotEffective);
            return;
        }

        int most = bars.Edge.Order[0];
        double component = 0;
        foreach (int fastener in bars.Edge.Order)
        {
            double outward = bars.Edge.Outward(shears.X[fastener], shears.Y[fastener]);
            if (outward > shears.Least && outward / bars.BarsOf[fastener] > component / bars.BarsOf[most])
            {
                (most, component) = (fastener, outward);
            }
        }

        Sheet<T> sheet = writer.NewSheet();
        T nominal = Strength(sheet, "V_rs", bars.Bar, bars.BarsOf[most], bars.Given.IsEnclosing ? Legs : Nearest, "17.5.2.1(b)", out T area, out T yield);
        T phi = StrengthReduction.Reinforcement(sheet, data);
        T shear = sheet.Given("V_ua_i", component, Dimension.Force, "component toward the edge, of the fastener whose bars use most of their strength");
        T demand = bars.Eccentricity > 0 ? BarForce(sheet, data, bars, shear) : sheet.Step("V_ua_r", shear, Dimension.Force, "R17.5.2.1(b), e_s = 0 as given");
        Size(sheet, demand, phi, yield, area, writer);
        writer.Check(sheet, mode, nominal, phi, demand, data.Only(most));
    }

    /// <summary>
    /// The force in bars below the line of the shear is larger than the shear (R17.5.2.1). ACI gives no formula: moments about the compression in the member, with the lever arm of
    /// EN 1992-4 7.2.2.6 (from memory), 0.85 times a depth of at most 2 h_ef and 2 c_a1.
    /// </summary>
    private static T BarForce<T>(Sheet<T> sheet, AnchorageData data, ShearBars bars, T shear)
        where T : struct, IFormulaNumber<T>
    {
        T e = sheet.Given("e_s", bars.Eccentricity, Dimension.Length, bars.Given.Eccentricity is null ? "the surface, where the shear is taken to act, to the axis of the bars" : "line of the shear to the axis of the bars");
        T ha = sheet.Given("h_a", data.Thickness, Dimension.Length);
        T depth = sheet.Given("z_s", bars.Depth, Dimension.Length, "surface to the axis of the bars");
        T hef = sheet.Given("h_ef", data.Embedment, Dimension.Length);
        T ca1 = sheet.Given("c_a1", bars.EdgeDistance, Dimension.Length, "smallest of the fasteners");
        T z = sheet.Step("z", 0.85 * T.Min(ha - depth, T.Min(2 * hef, 2 * ca1)), Dimension.Length, "EN 1992-4 7.2.2.6, from memory; ACI 318 has no formula");
        return sheet.Step("V_ua_r", (T.Literal(1) + (e / z)) * shear, Dimension.Force, "R17.5.2.1(b), moments about the compression in the member");
    }

    private static T Strength<T>(Sheet<T> sheet, string id, BarData bar, double count, string origin, string clause, out T area, out T yield)
        where T : struct, IFormulaNumber<T>
    {
        T n = sheet.Given("n_b", count, Dimension.None, origin);
        area = sheet.Given("A_b", bar.Area, Dimension.Area, sheet.IsRecording ? bar.Bars.Bar.Designation : null);
        T all = sheet.Step("A_s", n * area, Dimension.Area, clause);
        yield = bar.UsedYield(sheet);
        return sheet.Step(id, all * yield, Dimension.Force, clause);
    }

    /// <summary>What the demand would need: area, and bars of this size before they are rounded up.</summary>
    private static void Size<T>(Sheet<T> sheet, T demand, T phi, T yield, T area, in ModeWriter<T> writer)
        where T : struct, IFormulaNumber<T>
    {
        if (!sheet.IsRecording)
        {
            return;
        }

        T needed = writer.WeightedLoadFactor > 0
            ? sheet.Given("alpha", writer.WeightedLoadFactor, Dimension.None, "weighted load factor of the load case, as given") * demand / (phi * yield)
            : demand / (phi * yield);
        T required = sheet.Step("A_s_req", needed, Dimension.Area, "17.5.2.1, area that the demand needs");
        sheet.Factor("n_b_req", required / area, "bars that the demand needs at this fastener, to be rounded up");
    }
}
