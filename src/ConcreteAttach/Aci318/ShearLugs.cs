using ConcreteAttach.Calculation;
using ConcreteAttach.Quantities;

namespace ConcreteAttach.Aci318;

/// <summary>
/// 17.11.2 Bearing of shear lugs, and what of the shear reaches anchors beside them. The formulas; <see cref="ShearLugModes"/> says where they apply.
/// </summary>
/// <remarks>The text of 17.11 was read in secondary notes on ACI 318M-19; the numbers of its paragraphs below 17.11.2.2 are from memory.</remarks>
internal static class ShearLugs
{
    /// <summary>What carries the couple of the shear and the bearing.</summary>
    public const string CoupleClause = "17.11.1.1, couple of the shear and the bearing on the lug";

    /// <summary>Most stress on the concrete between lugs that count together, over f'c (17.11.2.4).</summary>
    private const double StressBetween = 0.2;

    /// <summary>A_ef,sl of one lug: within 2 t_sl of the surface on which the plate or its grout stands, and of stiffeners (17.11.2.1.1).</summary>
    public static T EffectiveArea<T>(Sheet<T> sheet, LugBody lug)
        where T : struct, IFormulaNumber<T>
    {
        (T hsl, T band) = Depths(sheet, lug);
        T width = Width(sheet, lug);
        if (lug.StiffenedWidth == 0)
        {
            return sheet.Step(lug.AreaId, width * band, Dimension.Area, "17.11.2.1.1");
        }

        T stiffened = Stiffened(sheet, lug);
        return sheet.Step(lug.AreaId, (width * band) + (stiffened * (hsl - band)), Dimension.Area, "17.11.2.1.1(a) to (c)");
    }

    /// <summary>
    /// Lever arm of the couple: from the underside of the plate, where the lug takes the shear over, down to the middle of A_ef,sl, on which the bearing is even.
    /// </summary>
    public static T BearingArm<T>(Sheet<T> sheet, LugBody lug)
        where T : struct, IFormulaNumber<T>
    {
        T arm = DepthOfBearing(sheet, lug);
        return lug.Grout > 0 ? Grout(sheet, lug) + arm : arm;
    }

    private static T DepthOfBearing<T>(Sheet<T> sheet, LugBody lug)
        where T : struct, IFormulaNumber<T>
    {
        (T hsl, T band) = Depths(sheet, lug);
        if (lug.StiffenedWidth == 0)
        {
            return band / 2;
        }

        T width = Width(sheet, lug);
        T stiffened = Stiffened(sheet, lug);
        return ((width * T.Power(band, 2, 1)) + (stiffened * (T.Power(hsl, 2, 1) - T.Power(band, 2, 1)))) / (2 * ((width * band) + (stiffened * (hsl - band))));
    }

    private static T Grout<T>(Sheet<T> sheet, LugBody lug)
        where T : struct, IFormulaNumber<T> => sheet.Given("t_g", lug.Grout, Dimension.Length, "grout between plate and concrete");

    private static T Width<T>(Sheet<T> sheet, LugBody lug)
        where T : struct, IFormulaNumber<T> => sheet.Given(lug.WidthId, lug.Width, Dimension.Length, "width of the lug");

    private static T Stiffened<T>(Sheet<T> sheet, LugBody lug)
        where T : struct, IFormulaNumber<T> => sheet.Given(lug.StiffenedId, lug.StiffenedWidth, Dimension.Length, "width of the lug within 2 t_sl of stiffeners, from the drawing");

    /// <summary>The areas of all lugs of a set, each recorded; the sum without a line of its own.</summary>
    public static T SumOfAreas<T>(Sheet<T> sheet, LugSet set)
        where T : struct, IFormulaNumber<T>
    {
        T sum = EffectiveArea(sheet, set.Lugs[0]);
        for (int i = 1; i < set.Lugs.Length; i++)
        {
            sum = sum + EffectiveArea(sheet, set.Lugs[i]);
        }

        return sum;
    }

    /// <summary>V_brg,sl of the lugs of a set (17.11.2.1).</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="data">The attachment.</param>
    /// <param name="lugs">All lugs.</param>
    /// <param name="set">Those that take the shear.</param>
    /// <param name="axial">Axial force on the attachment, tension positive.</param>
    /// <param name="tensioned">Number of anchors in tension.</param>
    /// <param name="shear">Shear along the axis of the set.</param>
    public static T BearingStrength<T>(Sheet<T> sheet, AnchorageData data, ShearLugData lugs, LugSet set, double axial, int tensioned, double shear)
        where T : struct, IFormulaNumber<T>
    {
        T fc = ConcreteStrength.Limited(sheet, data);
        T area = CountingArea(sheet, set, fc, shear);
        T psi = AxialFactor(sheet, data, lugs, fc, axial, tensioned);
        return sheet.Step("V_brg_sl", 1.7 * fc * area * psi, Dimension.Force, "17.11.2.1");
    }

    /// <summary>Whether all lugs of a set count: the shear on the concrete between them stays within 0.2 f'c (17.11.2.4).</summary>
    public static bool AllCount(AnchorageData data, LugSet set, double shear)
    {
        var silent = default(Sheet<PlainNumber>);
        return set.Lugs.Length == 1 || StressHolds(silent, set, ConcreteStrength.Limited(silent, data), shear);
    }

    /// <summary>
    /// What of the shear goes to one anchor that is welded to the plate, for the interaction of 17.8: its bearing area 2 d_a² over that of all (R17.11.1.1).
    /// </summary>
    public static T ShareOfFastener<T>(Sheet<T> sheet, AnchorageData data, LugSet set)
        where T : struct, IFormulaNumber<T>
    {
        T da = sheet.Given("d_a", data.Diameter, Dimension.Length);
        T n = sheet.Given("n", data.Count, Dimension.None);
        T area = set.Lugs.Length == 1 ? EffectiveArea(sheet, set.Lugs[0]) : sheet.Step("A_ef_sl", SumOfAreas(sheet, set), Dimension.Area, "17.11.2.4");
        return 2 * T.Power(da, 2, 1) / (area + (n * (2 * T.Power(da, 2, 1))));
    }

    private static (T Embedment, T Band) Depths<T>(Sheet<T> sheet, LugBody lug)
        where T : struct, IFormulaNumber<T>
    {
        T t = sheet.Given(lug.ThicknessId, lug.Thickness, Dimension.Length);
        T hsl;
        if (lug.Grout > 0)
        {
            T depth = sheet.Given(lug.DepthId, lug.Depth, Dimension.Length, "below the underside of the plate");
            hsl = sheet.Step(lug.EmbedmentId, depth - Grout(sheet, lug), Dimension.Length, "below the surface of the concrete");
        }
        else
        {
            hsl = sheet.Given(lug.EmbedmentId, lug.Depth, Dimension.Length, "below the plate and the surface of the concrete");
        }

        return (hsl, sheet.Step(lug.BandId, T.Min(hsl, 2 * t), Dimension.Length, lug.Grout > 0 ? "17.11.2.1.1(b)" : "17.11.2.1.1(a)"));
    }

    private static T CountingArea<T>(Sheet<T> sheet, LugSet set, T fc, double shear)
        where T : struct, IFormulaNumber<T>
    {
        T sum = sheet.IsRecording ? SumOfAreas(sheet, set) : T.Literal(set.Area);
        if (set.Lugs.Length == 1)
        {
            return sum;
        }

        if (StressHolds(sheet, set, fc, shear))
        {
            return sheet.Step("A_ef_sl", sum, Dimension.Area, "17.11.2.4, all lugs");
        }

        sheet.Note("The shear on the concrete between the lugs is more than 0.2 f'c: the lug with the largest area counts alone (17.11.2.4).");
        return sheet.Given("A_ef_sl", set.Strongest.Area, Dimension.Area, "17.11.2.4, one lug");
    }

    /// <summary>
    /// 17.11.2.4: the shear on the plane at the bottom of the lugs between one and the next, of the smallest plane. The load on it is all of the shear: a reading to the safe side, as the clause as it is
    /// known here does not say which part of it.
    /// </summary>
    private static bool StressHolds<T>(Sheet<T> sheet, LugSet set, T fc, double shear)
        where T : struct, IFormulaNumber<T>
    {
        int smallest = 1;
        for (int i = 2; i < set.Lugs.Length; i++)
        {
            smallest = set.SharedWidth(i) * set.ClearGap(i) < set.SharedWidth(smallest) * set.ClearGap(smallest) ? i : smallest;
        }

        T v = sheet.Given("V_ua_sl", Math.Abs(shear), Dimension.Force, "shear along the axis of the lugs");
        T width = sheet.Given("b_sl", set.SharedWidth(smallest), Dimension.Length, "width that both lugs share");
        T gap = sheet.Given("s_sl", set.ClearGap(smallest), Dimension.Length, "concrete between the lugs");
        T stress = sheet.Step("tau_sl", v / (width * gap), Dimension.Stress, "17.11.2.4");
        return sheet.When(stress <= StressBetween * fc, "17.11.2.4");
    }

    /// <summary>ψ_brg,sl by the axial force (17.11.2.2.1).</summary>
    private static T AxialFactor<T>(Sheet<T> sheet, AnchorageData data, ShearLugData lugs, T fc, double axial, int tensioned)
        where T : struct, IFormulaNumber<T>
    {
        if (axial == 0)
        {
            return sheet.Factor("psi_brg_sl", 1, "17.11.2.2.1b, no axial force");
        }

        if (axial > 0)
        {
            T pull = sheet.Given("P_u", -axial, Dimension.Force, "axial force, tension negative");
            T n = sheet.Given("n_t", tensioned, Dimension.None, "anchors in tension");
            T nsa = SteelTension.NominalStrength(sheet, data);
            return sheet.Factor("psi_brg_sl", 1 + (pull / (n * nsa)), "17.11.2.2.1a, tension");
        }

        if (double.IsNaN(lugs.ContactArea))
        {
            sheet.Note("No plate presses on the concrete, so that the compression does not help the bearing.");
            return sheet.Factor("psi_brg_sl", 1, "17.11.2.2.1b");
        }

        T push = sheet.Given("P_u", -axial, Dimension.Force, "axial force, compression positive");
        T abp = sheet.Given("A_bp", lugs.ContactArea, Dimension.Area, "plate on the concrete or grout");
        return sheet.Factor("psi_brg_sl", T.Min(1 + (4 * push / (abp * fc)), T.Literal(2)), "17.11.2.2.1c, compression");
    }
}
