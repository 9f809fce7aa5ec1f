using ConcreteAttach.Calculation;
using ConcreteAttach.Quantities;

namespace ConcreteAttach.Nds;

/// <summary>
/// 12.3.1 Yield limit equations of one fastener: Table 12.3.1A where the members touch, the general dowel equations of TR12 where there is a gap between them.
/// Both are the same limit analysis; a test holds them equal without a gap.
/// </summary>
internal static class YieldLimit
{
    /// <summary>Room for the strengths of all modes.</summary>
    public const int ModeCount = 6;

    /// <summary>The diameter that bears and bends, under its own symbol where it is the root.</summary>
    public static T Diameter<T>(Sheet<T> sheet, DowelData data)
        where T : struct, IFormulaNumber<T> => data.UsesRoot
            ? sheet.Given("D_r", data.Diameter, Dimension.Length, "12.3.7, the thread bears")
            : sheet.Given("D", data.Diameter, Dimension.Length);

    /// <summary>Z of each mode in the order of <see cref="YieldMode"/>; NaN for those that do not occur in double shear. Returns the least, Z.</summary>
    public static T Strength<T>(Sheet<T> sheet, DowelData data, Span<double> modes)
        where T : struct, IFormulaNumber<T> => Strength(sheet, data, data.Gap != 0, modes);

    /// <summary>The same with the equations that are asked for.</summary>
    public static T Strength<T>(Sheet<T> sheet, DowelData data, bool isGeneral, Span<double> modes)
        where T : struct, IFormulaNumber<T>
    {
        T d = Diameter(sheet, data);
        T fyb = sheet.Given("F_yb", data.BendingYield, Dimension.Stress, data.BendingYieldSource);
        T lm = sheet.Given("l_m", data.Main.Length, Dimension.Length);
        T ls = sheet.Given("l_s", data.Side.Length, Dimension.Length);
        T fem = DowelBearing.Strength(sheet, data, data.Main, MemberSymbols.Main);
        T fes = DowelBearing.Strength(sheet, data, data.Side, MemberSymbols.Side);
        ReductionTerm<T> rd = ReductionTerm<T>.Of(sheet, data);
        modes.Fill(double.NaN);
        return isGeneral ? General(sheet, data, d, fyb, lm, ls, fem, fes, rd, modes)
            : data.IsDoubleShear ? DoubleShear(sheet, d, fyb, lm, ls, fem, fes, rd, modes)
            : SingleShear(sheet, d, fyb, lm, ls, fem, fes, rd, modes);
    }

    private static T SingleShear<T>(Sheet<T> sheet, T d, T fyb, T lm, T ls, T fem, T fes, ReductionTerm<T> rd, Span<double> modes)
        where T : struct, IFormulaNumber<T>
    {
        T re = sheet.Factor("R_e", fem / fes, "Table 12.3.1A");
        T rt = sheet.Factor("R_t", lm / ls, "Table 12.3.1A");
        T k1 = sheet.Factor(
            "k_1",
            (T.Sqrt(re + (2 * T.Power(re, 2, 1) * (1 + rt + T.Power(rt, 2, 1))) + (T.Power(rt, 2, 1) * T.Power(re, 3, 1))) - (re * (1 + rt))) / (1 + re),
            "Table 12.3.1A");
        T k2 = sheet.Factor("k_2", T.Sqrt((2 * (1 + re)) + (2 * fyb * (1 + (2 * re)) * T.Power(d, 2, 1) / (3 * fem * T.Power(lm, 2, 1)))) - 1, "Table 12.3.1A");
        T k3 = HingeFactor(sheet, d, fyb, ls, fem, re);
        T im = Mode(sheet, modes, YieldMode.MainBearing, "Z_Im", d * lm * fem / rd.Bearing, "12.3-1");
        T @is = Mode(sheet, modes, YieldMode.SideBearing, "Z_Is", d * ls * fes / rd.Bearing, "12.3-2");
        T ii = Mode(sheet, modes, YieldMode.Rotation, "Z_II", k1 * d * ls * fes / rd.Rotation, "12.3-3");
        T iiim = Mode(sheet, modes, YieldMode.HingeAndMainBearing, "Z_IIIm", k2 * d * lm * fem / ((1 + (2 * re)) * rd.Hinge), "12.3-4");
        T iiis = Mode(sheet, modes, YieldMode.HingeAndSideBearing, "Z_IIIs", k3 * d * ls * fem / ((2 + re) * rd.Hinge), "12.3-5");
        T iv = Mode(sheet, modes, YieldMode.TwoHinges, "Z_IV", T.Power(d, 2, 1) / rd.Hinge * T.Sqrt(2 * fem * fyb / (3 * (1 + re))), "12.3-6");
        return Least(Least(Least(im, @is), Least(ii, iiim)), Least(iiis, iv));
    }

    private static T DoubleShear<T>(Sheet<T> sheet, T d, T fyb, T lm, T ls, T fem, T fes, ReductionTerm<T> rd, Span<double> modes)
        where T : struct, IFormulaNumber<T>
    {
        T re = sheet.Factor("R_e", fem / fes, "Table 12.3.1A");
        T k3 = HingeFactor(sheet, d, fyb, ls, fem, re);
        T im = Mode(sheet, modes, YieldMode.MainBearing, "Z_Im", d * lm * fem / rd.Bearing, "12.3-7");
        T @is = Mode(sheet, modes, YieldMode.SideBearing, "Z_Is", 2 * d * ls * fes / rd.Bearing, "12.3-8");
        T iiis = Mode(sheet, modes, YieldMode.HingeAndSideBearing, "Z_IIIs", 2 * k3 * d * ls * fem / ((2 + re) * rd.Hinge), "12.3-9");
        T iv = Mode(sheet, modes, YieldMode.TwoHinges, "Z_IV", 2 * T.Power(d, 2, 1) / rd.Hinge * T.Sqrt(2 * fem * fyb / (3 * (1 + re))), "12.3-10");
        return Least(Least(im, @is), Least(iiis, iv));
    }

    /// <summary>k_3, the same in single and double shear.</summary>
    private static T HingeFactor<T>(Sheet<T> sheet, T d, T fyb, T ls, T fem, T re)
        where T : struct, IFormulaNumber<T> =>
        sheet.Factor("k_3", T.Sqrt((2 * (1 + re) / re) + (2 * fyb * (2 + re) * T.Power(d, 2, 1) / (3 * fem * T.Power(ls, 2, 1)))) - 1, "Table 12.3.1A");

    /// <summary>TR12 Table 1-1: dowel of one diameter and one plastic moment, members apart by g.</summary>
    private static T General<T>(Sheet<T> sheet, DowelData data, T d, T fyb, T lm, T ls, T fem, T fes, ReductionTerm<T> rd, Span<double> modes)
        where T : struct, IFormulaNumber<T>
    {
        T g = sheet.Given("g", data.Gap, Dimension.Length, "gap between the members");
        T qm = sheet.Step("q_m", fem * d, Dimension.ForcePerLength, "TR12");
        T qs = sheet.Step("q_s", fes * d, Dimension.ForcePerLength, "TR12");
        T m = sheet.Step("M", fyb * T.Power(d, 3, 1) / 6, Dimension.Moment, "TR12, plastic moment of the dowel");
        double planes = data.IsDoubleShear ? 2 : 1;
        T im = Mode(sheet, modes, YieldMode.MainBearing, "Z_Im", qm * lm / rd.Bearing, "TR12, mode Im");
        T @is = Mode(sheet, modes, YieldMode.SideBearing, "Z_Is", Planes(planes, qs * ls) / rd.Bearing, "TR12, mode Is");
        T iiis = Mode(
            sheet, modes, YieldMode.HingeAndSideBearing, "Z_IIIs",
            Planes(planes, Root(sheet, IiisSymbols, (1 / (4 * qs)) + (1 / (2 * qm)), (ls / 2) + g, (qs * T.Power(ls, 2, 1) / 4) + m)) / rd.Hinge, "TR12, mode IIIs");
        T iv = Mode(
            sheet, modes, YieldMode.TwoHinges, "Z_IV",
            Planes(planes, Root(sheet, IvSymbols, (1 / (2 * qs)) + (1 / (2 * qm)), g, 2 * m)) / rd.Hinge, "TR12, mode IV");
        T least = Least(Least(im, @is), Least(iiis, iv));
        if (data.IsDoubleShear)
        {
            return least;
        }

        T ii = Mode(
            sheet, modes, YieldMode.Rotation, "Z_II",
            Root(sheet, IiSymbols, (1 / (4 * qs)) + (1 / (4 * qm)), (ls / 2) + g + (lm / 2), (qs * T.Power(ls, 2, 1) / 4) + (qm * T.Power(lm, 2, 1) / 4)) / rd.Rotation,
            "TR12, mode II");
        T iiim = Mode(
            sheet, modes, YieldMode.HingeAndMainBearing, "Z_IIIm",
            Root(sheet, IiimSymbols, (1 / (2 * qs)) + (1 / (4 * qm)), g + (lm / 2), m + (qm * T.Power(lm, 2, 1) / 4)) / rd.Hinge, "TR12, mode IIIm");
        return Least(least, Least(ii, iiim));
    }

    private static readonly QuadraticSymbols IiSymbols = new("A_II", "B_II", "C_II", "P_II");
    private static readonly QuadraticSymbols IiimSymbols = new("A_IIIm", "B_IIIm", "C_IIIm", "P_IIIm");
    private static readonly QuadraticSymbols IiisSymbols = new("A_IIIs", "B_IIIs", "C_IIIs", "P_IIIs");
    private static readonly QuadraticSymbols IvSymbols = new("A_IV", "B_IV", "C_IV", "P_IV");

    private sealed record QuadraticSymbols(string A, string B, string C, string P);

    /// <summary>
    /// P of A P² + B P = C, the positive root; TR12 writes −C on the left. A has the unit of length over force, which the sheet does not show. Written with the root
    /// below the line, so that nothing is lost by subtraction where the gap is wide.
    /// </summary>
    private static T Root<T>(Sheet<T> sheet, QuadraticSymbols ids, T a, T b, T c)
        where T : struct, IFormulaNumber<T>
    {
        a = sheet.Factor(ids.A, a, "TR12, in/lbf");
        b = sheet.Step(ids.B, b, Dimension.Length, "TR12");
        c = sheet.Step(ids.C, c, Dimension.Moment, "TR12");
        return sheet.Step(ids.P, 2 * c / (b + T.Sqrt(T.Power(b, 2, 1) + (4 * a * c))), Dimension.Force, "TR12, A P² + B P − C = 0");
    }

    /// <summary>The lesser strength under its own symbol, so that the sheet names the mode and not six numbers.</summary>
    private static T Least<T>(T a, T b)
        where T : struct, IFormulaNumber<T> => b.Value < a.Value ? b : a;

    /// <summary>The strength of both shear planes; a factor of 1 is not written.</summary>
    private static T Planes<T>(double planes, T strength)
        where T : struct, IFormulaNumber<T> => planes == 1 ? strength : planes * strength;

    private static T Mode<T>(Sheet<T> sheet, Span<double> modes, YieldMode mode, string id, T strength, string clause)
        where T : struct, IFormulaNumber<T>
    {
        T step = sheet.Step(id, strength, Dimension.Force, clause);
        modes[(int)mode] = step.Value;
        return step;
    }
}
