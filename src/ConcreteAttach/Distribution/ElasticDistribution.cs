using System.Runtime.CompilerServices;
using ConcreteAttach.Calculation;
using ConcreteAttach.Quantities;

namespace ConcreteAttach.Distribution;

/// <summary>
/// Elastic distribution without contact, common to all methods: plane sections stay plane, all fasteners are equally stiff.
/// The formulas stand here once; the fast path and the sheet both run them.
/// </summary>
internal static class ElasticDistribution
{
    /// <summary>What the sheets and errors cite.</summary>
    public const string Source = "elastic theory; ACI 318-19 17.2.1";

    /// <summary>Moment about the centroid: M + r × F, with F out of the surface.</summary>
    public static (T Mx, T My) BendingAtCentroid<T>(Sheet<T> sheet, T n, T mx, T my, T armX, T armY)
        where T : struct, IFormulaNumber<T> => (
            sheet.Step("M_x_c", mx + (n * armY), Dimension.Moment, Source),
            sheet.Step("M_y_c", my - (n * armX), Dimension.Moment, Source));

    /// <summary>The moment about x with the couple of shear along y on the attached part and the bearing of shear lugs an arm below it.</summary>
    public static T BendingByY<T>(Sheet<T> sheet, T mx, T vy, T arm, string source)
        where T : struct, IFormulaNumber<T> => sheet.Step("M_x_sl", mx - (vy * arm), Dimension.Moment, source);

    /// <summary>The moment about y with the couple of shear along x and the bearing.</summary>
    public static T BendingByX<T>(Sheet<T> sheet, T my, T vx, T arm, string source)
        where T : struct, IFormulaNumber<T> => sheet.Step("M_y_sl", my + (vx * arm), Dimension.Moment, source);

    /// <summary>Torsion about the shear centre, with standard holes the centroid: M + r × F, with F in the surface.</summary>
    public static T TorsionAtCentre<T>(Sheet<T> sheet, T vx, T vy, T mz, T armX, T armY)
        where T : struct, IFormulaNumber<T> =>
        sheet.Step("M_z_c", mz + (armX * vy) - (armY * vx), Dimension.Moment, Source);

    /// <summary>
    /// The slopes of the plane T = N/n + β_y y − β_x x. For a layout with S_xy = 0 they are M_x / S_yy and M_y / S_xx; else the two
    /// moment equations are solved together; for fasteners on a line both lie along it.
    /// </summary>
    public static (T BetaX, T BetaY) Slopes<T>(Sheet<T> sheet, ElasticGroup group, T mx, T my)
        where T : struct, IFormulaNumber<T>
    {
        if (group.Shape == GroupShape.Single)
        {
            return (T.Literal(0), T.Literal(0));
        }

        T sxx = sheet.Given("S_xx", group.SumX2, Dimension.Area, "Σx² about the centroid");
        T syy = sheet.Given("S_yy", group.SumY2, Dimension.Area, "Σy² about the centroid");
        if (group.Shape == GroupShape.Line)
        {
            T ux = sheet.Given("u_x", group.DirectionX, Dimension.None, "direction of the line of fasteners");
            T uy = sheet.Given("u_y", group.DirectionY, Dimension.None);
            return (
                sheet.Step("beta_x", ((my * ux) - (mx * uy)) * ux / (sxx + syy), Dimension.ForcePerLength, Source),
                sheet.Step("beta_y", ((mx * uy) - (my * ux)) * uy / (sxx + syy), Dimension.ForcePerLength, Source));
        }

        if (group.SumXy == 0)
        {
            return (
                sheet.Step("beta_x", my / sxx, Dimension.ForcePerLength, Source),
                sheet.Step("beta_y", mx / syy, Dimension.ForcePerLength, Source));
        }

        T sxy = sheet.Given("S_xy", group.SumXy, Dimension.Area, "Σxy about the centroid");
        return (
            sheet.Step("beta_x", ((my * syy) + (mx * sxy)) / ((sxx * syy) - T.Power(sxy, 2, 1)), Dimension.ForcePerLength, Source),
            sheet.Step("beta_y", ((mx * sxx) + (my * sxy)) / ((sxx * syy) - T.Power(sxy, 2, 1)), Dimension.ForcePerLength, Source));
    }

    /// <summary>Axial force on the fastener at (x, y) from the centroid.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T Tension<T>(T mean, T betaX, T betaY, T x, T y)
        where T : struct, IFormulaNumber<T> => mean + (betaY * y) - (betaX * x);

    /// <summary>Twist: shear per unit of distance from the shear centre.</summary>
    public static T Twist<T>(Sheet<T> sheet, ShearGroup group, T mz)
        where T : struct, IFormulaNumber<T>
    {
        if (group.TakesNoTorsion)
        {
            return T.Literal(0);
        }

        (string sxxId, string syyId) = group.AllTakeBoth ? ("S_xx", "S_yy") : ("S_xx_V", "S_yy_V");
        T sxx = sheet.Given(sxxId, group.SumX2, Dimension.Area, group.AllTakeBoth ? "Σx² about the centroid" : "Σx² about the shear centre, over the fasteners that take shear along y");
        T syy = sheet.Given(syyId, group.SumY2, Dimension.Area, group.AllTakeBoth ? "Σy² about the centroid" : "Σy² about the shear centre, over the fasteners that take shear along x");
        return sheet.Step("theta", mz / (sxx + syy), Dimension.ForcePerLength, Source);
    }

    /// <summary>Shear along x on the fastener at (x, y) from the shear centre.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T ShearX<T>(T mean, T twist, T y)
        where T : struct, IFormulaNumber<T> => mean - (twist * y);

    /// <summary>Shear along y on the fastener at (x, y) from the shear centre.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T ShearY<T>(T mean, T twist, T x)
        where T : struct, IFormulaNumber<T> => mean + (twist * x);
}
