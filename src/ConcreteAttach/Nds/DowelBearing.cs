using ConcreteAttach.Calculation;
using ConcreteAttach.Quantities;

namespace ConcreteAttach.Nds;

/// <summary>12.3.3, 12.3.4 Dowel bearing strength.</summary>
internal static class DowelBearing
{
    /// <summary>F_em or F_es.</summary>
    public static T Strength<T>(Sheet<T> sheet, DowelData data, in MemberData member, MemberSymbols ids)
        where T : struct, IFormulaNumber<T> => member.Material switch
        {
            BearingMaterial.Wood => Wood(sheet, data, member, ids),
            BearingMaterial.Concrete => sheet.Given(ids.Strength, Concrete, Dimension.Stress, "Table 12E, concrete of f'_c of at least 2500 psi"),
            BearingMaterial.Tested => sheet.Given(ids.Strength, member.Strength, Dimension.Stress, "given by the user"),
            _ => Steel(sheet, member, ids),
        };

    /// <summary>F_e of concrete in psi. Read in a secondary source; editions before 2005 had 6000 psi (from memory).</summary>
    private const double Concrete = 7500;

    /// <summary>
    /// Table 12.3.3. From 1/4 in. up wood bears differently along and across the grain, with the nominal diameter also where the root is the one that bends; the footnotes
    /// give the formulas (from memory).
    /// </summary>
    private static T Wood<T>(Sheet<T> sheet, DowelData data, in MemberData member, MemberSymbols ids)
        where T : struct, IFormulaNumber<T>
    {
        T g = sheet.Given(ids.Gravity, member.Strength, Dimension.None, "Table 12.3.3A");
        T d = sheet.Given("D", data.NominalDiameter, Dimension.Length);
        if (sheet.When(d < T.Literal(DowelData.SmallDiameter), "Table 12.3.3"))
        {
            return Printed(sheet, data, ids.Strength, ids.ExactStrength, 16_600 * T.Power(g, 1.84), "Table 12.3.3, D < 1/4 in.");
        }

        if (member.IsEndGrain)
        {
            sheet.Note("In end grain the strength perpendicular to grain counts (12.3.3.4).");
        }

        return member.Angle switch
        {
            0 => Printed(sheet, data, ids.Strength, ids.ExactStrength, 11_200 * g, "Table 12.3.3, parallel to grain"),
            90 => Printed(sheet, data, ids.Strength, ids.ExactStrength, Across(g, d), "Table 12.3.3, perpendicular to grain"),
            _ => AtAngle(sheet, data, member, ids, g, d),
        };
    }

    private static T Across<T>(T g, T d)
        where T : struct, IFormulaNumber<T> => 6_100 * T.Power(g, 1.45) / T.Sqrt(d);

    /// <summary>Hankinson's formula (12.3-11) on the two strengths of the table.</summary>
    private static T AtAngle<T>(Sheet<T> sheet, DowelData data, in MemberData member, MemberSymbols ids, T g, T d)
        where T : struct, IFormulaNumber<T>
    {
        T along = Printed(sheet, data, ids.Parallel, ids.ExactParallel, 11_200 * g, "Table 12.3.3, parallel to grain");
        T across = Printed(sheet, data, ids.Perpendicular, ids.ExactPerpendicular, Across(g, d), "Table 12.3.3, perpendicular to grain");
        (double sine, double cosine) = Math.SinCos(member.Angle * Math.PI / 180);
        sheet.Given(ids.Angle, member.Angle, Dimension.None, "angle between load and grain, degrees");
        T sin = sheet.Given(ids.Sine, sine, Dimension.None, "of that angle");
        T cos = sheet.Given(ids.Cosine, cosine, Dimension.None, "of that angle");
        return sheet.Step(ids.Strength, along * across / ((along * T.Power(sin, 2, 1)) + (across * T.Power(cos, 2, 1))), Dimension.Stress, "12.3.4, 12.3-11");
    }

    /// <summary>
    /// Bearing strength of steel over the load duration factor 1.6, so that no adjustment can raise it above that of the steel's own standard (read in a secondary
    /// source). Not rounded: the tables print 61,850 psi for 45 ksi (from memory), where half a step up from 61,875 would be 61,900.
    /// </summary>
    private static T Steel<T>(Sheet<T> sheet, in MemberData member, MemberSymbols ids)
        where T : struct, IFormulaNumber<T>
    {
        T fu = sheet.Given(ids.Ultimate, member.Strength, Dimension.Stress);
        return member.Material == BearingMaterial.HotRolledSteel
            ? sheet.Step(ids.Strength, 2.4 * fu / 1.6, Dimension.Stress, "Appendix I.2, hot-rolled steel")
            : sheet.Step(ids.Strength, 2.2 * fu / 1.6, Dimension.Stress, "Appendix I.2, cold-formed steel");
    }

    /// <summary>The value of the formula, or with rounding that of the printed table, which then carries the symbol.</summary>
    private static T Printed<T>(Sheet<T> sheet, DowelData data, string id, string exactId, T value, string clause)
        where T : struct, IFormulaNumber<T> => data.IsRounded
            ? PrintedRounding.Bearing(sheet, id, sheet.Step(exactId, value, Dimension.Stress, clause))
            : sheet.Step(id, value, Dimension.Stress, clause);
}
