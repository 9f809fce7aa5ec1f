using ConcreteAttach.Attached;
using ConcreteAttach.Calculation;
using ConcreteAttach.Quantities;

namespace ConcreteAttach.Aci318;

/// <summary>25.4 Development of deformed bars in tension, for the full f_y: what 17.5.2.1 asks for. Formulas and factors from memory of ACI 318-19.</summary>
/// <remarks>The reduction for excess reinforcement (25.4.10) is not taken: 25.4.10.2(b) excludes places where f_y has to be developed, and R17.5.2.1 anchor reinforcement by name.</remarks>
internal static class BarDevelopment
{
    /// <summary>The length that an end needs.</summary>
    public static T Needed<T>(Sheet<T> sheet, AnchorageData data, BarData bar, BarEnd end)
        where T : struct, IFormulaNumber<T> => end switch
        {
            BarEnd.Straight => Straight(sheet, data, bar),
            BarEnd.Hooked => Hooked(sheet, data, bar),
            _ => Headed(sheet, data, bar),
        };

    /// <summary>Why an end cannot be developed whatever its length; null where it can.</summary>
    public static string? Excluded(AnchorageData data, BarData bar, BarEnd end) =>
        end == BarEnd.Straight && bar.IsHighStrength && Limit.IsBelow(bar.TransverseIndex, 0.5 * bar.Diameter)
            ? "Straight bars of f_y 80 ksi (550 MPa) or more need K_tr of at least 0.5 d_b where they stand closer than 6 in. (25.4.2.2, from memory); their spacing is not known here, so K_tr has to be given (transverseIndex)."
        : end != BarEnd.Headed ? null
        : !bar.IsUpToNo11 ? "Headed bars larger than No. 11 are outside 25.4.4.1."
        : data.IsLightweight ? "Headed bars in lightweight concrete are outside 25.4.4.1."
        : !bar.Bars.MeetsHeadConditions ? "It is not stated that the heads meet 25.4.4.1: bearing area 4 A_b, cover 2 d_b, spacing 3 d_b."
        : null;

    /// <summary>l_d (25.4.2): by the formula of 25.4.2.4 where c_b is known, else by Table 25.4.2.3.</summary>
    private static T Straight<T>(Sheet<T> sheet, AnchorageData data, BarData bar)
        where T : struct, IFormulaNumber<T>
    {
        DevelopmentConstants constants = data.Edition.Development;
        T db = sheet.Given("d_b", bar.Diameter, Dimension.Length, sheet.IsRecording ? bar.Bars.Bar.Designation : null);
        T fy = bar.UsedYield(sheet);
        T root = Root(sheet, data);
        T lambda = Lightweight(sheet, data);
        T psiT = sheet.Factor("psi_t", bar.Bars.IsTopBar ? 1.3 : 1, "Table 25.4.2.5");
        T psiE = sheet.Factor("psi_e", bar.Bars.Coating switch { BarCoating.None => 1, BarCoating.Epoxy => 1.5, _ => 1.2 }, "Table 25.4.2.5");
        T psiG = sheet.Factor("psi_g", bar.GradeFactor, "Table 25.4.2.5");
        T product = bar.Bars.IsTopBar && bar.Bars.Coating != BarCoating.None ? T.Min(psiT * psiE, T.Literal(1.7)) : psiT * psiE;
        if (double.IsNaN(bar.CoverToCenter))
        {
            sheet.Note(bar.Bars.IsWellSpaced ? "Table 25.4.2.3, first row: spacing and cover as stated." : "Table 25.4.2.3, other cases: c_b is not given.");
            Quotient table = (bar.Bars.IsWellSpaced, bar.IsUpToNo6) switch
            {
                (true, true) => constants.SpacedSmall,
                (true, false) => constants.SpacedLarge,
                (false, true) => constants.OtherSmall,
                _ => constants.OtherLarge,
            };
            T byTable = Over(fy * (product * psiG), table, lambda * root) * db;
            return sheet.Step("l_d", T.Max(byTable, T.Literal(constants.LeastStraight)), Dimension.Length, "Table 25.4.2.3");
        }

        T psiS = sheet.Factor("psi_s", bar.IsUpToNo6 ? 0.8 : 1, "Table 25.4.2.5");
        T cb = sheet.Given("c_b", bar.CoverToCenter, Dimension.Length, "to the nearest surface, or half the spacing");
        T ktr = sheet.Given("K_tr", bar.TransverseIndex, Dimension.Length, "transverse reinforcement; 0 is permitted");
        T confinement = T.Min((cb + ktr) / db, T.Literal(2.5));
        T length = Over(fy, constants.Detailed, lambda * root) * (product * psiS * psiG / confinement) * db;
        return sheet.Step("l_d", T.Max(length, T.Literal(constants.LeastStraight)), Dimension.Length, "25.4.2.4a");
    }

    /// <summary>l_dh (25.4.3.1): to the outside of a standard hook.</summary>
    private static T Hooked<T>(Sheet<T> sheet, AnchorageData data, BarData bar)
        where T : struct, IFormulaNumber<T>
    {
        DevelopmentConstants constants = data.Edition.Development;
        T db = sheet.Given("d_b", bar.Diameter, Dimension.Length, sheet.IsRecording ? bar.Bars.Bar.Designation : null);
        T fy = bar.UsedYield(sheet);
        T root = Root(sheet, data);
        T lambda = Lightweight(sheet, data);
        T psiE = sheet.Factor("psi_e_h", bar.Bars.Coating == BarCoating.None ? 1 : 1.2, "Table 25.4.3.2");
        T psiR = sheet.Factor("psi_r", bar.Bars.IsConfined && bar.IsUpToNo11 ? 1 : 1.6, "Table 25.4.3.2");
        T psiO = sheet.Factor("psi_o", SideCover(bar), "Table 25.4.3.2");
        T psiC = StrengthFactor(sheet, data, "Table 25.4.3.2");
        T length = fy * psiE * psiR * psiO * psiC / (constants.Hooked * (lambda * root)) * T.Power(db, 3, 2);
        return sheet.Step("l_dh", T.Max(T.Max(length, 8 * db), T.Literal(constants.LeastHookedOrHeaded)), Dimension.Length, "25.4.3.1");
    }

    /// <summary>l_dt (25.4.4.2): to the bearing face of the head.</summary>
    private static T Headed<T>(Sheet<T> sheet, AnchorageData data, BarData bar)
        where T : struct, IFormulaNumber<T>
    {
        DevelopmentConstants constants = data.Edition.Development;
        T db = sheet.Given("d_b", bar.Diameter, Dimension.Length, sheet.IsRecording ? bar.Bars.Bar.Designation : null);
        T fy = bar.UsedYield(sheet);
        T root = Root(sheet, data);
        T psiE = sheet.Factor("psi_e_h", bar.Bars.Coating == BarCoating.None ? 1 : 1.2, "Table 25.4.4.3");
        T psiP = sheet.Factor("psi_p", bar.Bars.IsConfined && bar.IsUpToNo11 ? 1 : 1.6, "Table 25.4.4.3");
        T psiO = sheet.Factor("psi_o", SideCover(bar), "Table 25.4.4.3");
        T psiC = StrengthFactor(sheet, data, "Table 25.4.4.3");
        T length = fy * psiE * psiP * psiO * psiC / (constants.Headed * root) * T.Power(db, 3, 2);
        return sheet.Step("l_dt", T.Max(T.Max(length, 8 * db), T.Literal(constants.LeastHookedOrHeaded)), Dimension.Length, "25.4.4.2");
    }

    private static T Over<T>(T upper, Quotient constant, T lower)
        where T : struct, IFormulaNumber<T> =>
        (constant.Numerator == 1 ? upper : constant.Numerator * upper) / (constant.Denominator * lower);

    private static double SideCover(BarData bar) => bar.Bars.HasSideCover && bar.IsUpToNo11 ? 1 : 1.25;

    /// <summary>√f'c, at most 100 psi (25.4.1.4).</summary>
    private static T Root<T>(Sheet<T> sheet, AnchorageData data)
        where T : struct, IFormulaNumber<T>
    {
        T strength = sheet.Given("f'_c", data.Strength, Dimension.Stress);
        double largest = data.Edition.Development.LargestRoot;
        return data.Strength <= largest * largest ? T.Sqrt(strength) : T.Min(T.Sqrt(strength), T.Literal(largest));
    }

    /// <summary>λ of 25.4: 0.75 in lightweight concrete of any kind.</summary>
    private static T Lightweight<T>(Sheet<T> sheet, AnchorageData data)
        where T : struct, IFormulaNumber<T> =>
        sheet.Factor("lambda", data.IsLightweight ? 0.75 : 1, "Table 25.4.2.5");

    /// <summary>ψ_c of hooked and headed bars.</summary>
    private static T StrengthFactor<T>(Sheet<T> sheet, AnchorageData data, string clause)
        where T : struct, IFormulaNumber<T>
    {
        DevelopmentConstants constants = data.Edition.Development;
        T strength = sheet.Given("f'_c", data.Strength, Dimension.Stress);
        return sheet.When(strength < T.Literal(constants.FullStrength))
            ? sheet.Factor("psi_c", (strength / constants.StrengthSlope) + T.Literal(0.6), clause)
            : sheet.Factor("psi_c", 1, clause);
    }
}
