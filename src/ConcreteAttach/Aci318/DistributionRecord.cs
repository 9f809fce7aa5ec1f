using ConcreteAttach.Actions;
using ConcreteAttach.Calculation;
using ConcreteAttach.Distribution;
using ConcreteAttach.Quantities;

namespace ConcreteAttach.Aci318;

/// <summary>The sheet of how a load case reaches the fasteners, from the formulas that the fast path runs.</summary>
internal static class DistributionRecord
{
    public static CalculationSheet Of(AnchorageData data, LoadCase loadCase)
    {
        MeasurementSystem system = data.Edition.System;
        FastenerDistribution distribution = data.Distribution;
        ElasticGroup group = distribution.Elastic;
        var recorder = new SheetRecorder(system);
        var sheet = new Sheet<TracedNumber>(recorder);

        TracedNumber n = sheet.Given("N", loadCase.N.In(system), Dimension.Force);
        TracedNumber vx = sheet.Given("V_x", loadCase.Vx.In(system), Dimension.Force);
        TracedNumber vy = sheet.Given("V_y", loadCase.Vy.In(system), Dimension.Force);
        TracedNumber mx = sheet.Given("M_x", loadCase.Mx.In(system), Dimension.Moment);
        TracedNumber my = sheet.Given("M_y", loadCase.My.In(system), Dimension.Moment);
        TracedNumber mz = sheet.Given("M_z", loadCase.Mz.In(system), Dimension.Moment);
        TracedNumber count = sheet.Given("n", group.Count, Dimension.None);
        TracedNumber armX = sheet.Given("r_x", group.ArmX(loadCase.At.X.In(system)), Dimension.Length, "from the centroid of the fasteners to where the forces act");
        TracedNumber armY = sheet.Given("r_y", group.ArmY(loadCase.At.Y.In(system)), Dimension.Length);
        (TracedNumber mxc, TracedNumber myc) = ElasticDistribution.BendingAtCentroid(sheet, n, mx, my, armX, armY);
        string momentX = "M_x_c", momentY = "M_y_c";
        if (distribution.Lugs is not null)
        {
            sheet.Note("The lugs take the shear below the plate: its couple with their bearing bends the attachment. The lever arm reaches from the underside of the plate to the middle of the bearing.");
            if (data.Lugs!.AlongY is { } alongY)
            {
                (mxc, momentX) = (ElasticDistribution.BendingByY(sheet, mxc, vy, LeverArm(sheet, alongY, "e_sl_y"), ShearLugs.CoupleClause), "M_x_sl");
            }

            if (data.Lugs.AlongX is { } alongX)
            {
                (myc, momentY) = (ElasticDistribution.BendingByX(sheet, myc, vx, LeverArm(sheet, alongX, "e_sl_x"), ShearLugs.CoupleClause), "M_y_sl");
            }
        }

        TracedNumber mzc = distribution.Lugs is not null ? ElasticDistribution.TorsionAtCentre(sheet, vx, vy, mz, armX, armY) : Torsion(sheet, distribution.Shear, loadCase, vx, vy, mz, armX, armY, system);
        PreparedActions actions = PreparedActions.Of(loadCase, distribution, system);
        double[] tensions = new double[data.Count];
        distribution.Tensions(actions, tensions);
        int most = 0;
        for (int i = 1; i < tensions.Length; i++)
        {
            most = tensions[i] > tensions[most] ? i : most;
        }

        if (distribution.Plate is { } plate)
        {
            TensionUnderPlate(sheet, data, PlateForces.Of(plate, group, actions), most, momentX, momentY);
        }
        else
        {
            ElasticTension(sheet, group, n / count, mxc, myc, most);
        }

        if (distribution.Lugs is not null)
        {
            ShearBesideLugs(sheet, data, vx, vy);
        }
        else
        {
            Shear(sheet, distribution.Shear, vx, vy, mzc, most);
        }

        return recorder.ToSheet();
    }

    private static TracedNumber LeverArm(Sheet<TracedNumber> sheet, LugSet set, string id) =>
        sheet.Step(id, ShearLugs.BearingArm(sheet, set.Deepest), Dimension.Length, ShearLugs.CoupleClause);

    private static void ShearBesideLugs(Sheet<TracedNumber> sheet, AnchorageData data, TracedNumber vx, TracedNumber vy)
    {
        ShearLugData lugs = data.Lugs!;
        if (!lugs.TakeShare)
        {
            sheet.Note("The shear lugs take the shear: none is left to the fasteners.");
            return;
        }

        sheet.Note("The fasteners are welded to the plate: each takes its part of the shear, by bearing areas, for the interaction of 17.8.");
        Share(lugs.AlongX, "V_ix", vx);
        Share(lugs.AlongY, "V_iy", vy);

        void Share(LugSet? set, string id, TracedNumber shear)
        {
            if (set is not null)
            {
                sheet.Step(id, ShearLugs.ShareOfFastener(sheet, data, set) * shear, Dimension.Force, "R17.11.1.1");
            }
        }
    }

    private static TracedNumber Torsion(
        Sheet<TracedNumber> sheet, ShearGroup group, LoadCase loadCase, TracedNumber vx, TracedNumber vy, TracedNumber mz, TracedNumber armX, TracedNumber armY, MeasurementSystem system)
    {
        if (!group.AllTakeBoth)
        {
            armX = sheet.Given("r_x_V", group.ArmX(loadCase.At.X.In(system)), Dimension.Length, "from the shear centre of the fasteners to where the forces act");
            armY = sheet.Given("r_y_V", group.ArmY(loadCase.At.Y.In(system)), Dimension.Length);
        }

        return ElasticDistribution.TorsionAtCentre(sheet, vx, vy, mz, armX, armY);
    }

    private static void ElasticTension(Sheet<TracedNumber> sheet, ElasticGroup group, TracedNumber share, TracedNumber mx, TracedNumber my, int most)
    {
        (TracedNumber betaX, TracedNumber betaY) = ElasticDistribution.Slopes(sheet, group, mx, my);
        TracedNumber mean = sheet.Step("N_m", share, Dimension.Force, ElasticDistribution.Source);
        if (group.Shape == GroupShape.Single)
        {
            sheet.Step("N_i", mean, Dimension.Force, ElasticDistribution.Source);
            return;
        }

        (TracedNumber x, TracedNumber y) = Place(sheet, group, most);
        sheet.Step("N_i", ElasticDistribution.Tension(mean, betaX, betaY, x, y), Dimension.Force, ElasticDistribution.Source);
    }

    /// <summary>The plane is found by iteration; the sheet shows it, the force that it gives, and that both sides balance.</summary>
    private static void TensionUnderPlate(Sheet<TracedNumber> sheet, AnchorageData data, in PlateForces forces, int most, string momentX, string momentY)
    {
        ElasticGroup group = data.Distribution.Elastic;
        TracedNumber kappa = data.Plate!.Stiffness(sheet, data);
        TracedNumber p0 = sheet.Given("p_0", forces.Plane.A, Dimension.Stress, "pressure p = p_0 + p_x x + p_y y from the centroid of the fasteners, where it is positive; found so that the forces below balance");
        TracedNumber px = sheet.Given("p_x", forces.Plane.B, Dimension.StressPerLength);
        TracedNumber py = sheet.Given("p_y", forces.Plane.C, Dimension.StressPerLength);
        TracedNumber area = sheet.Given("A_c", forces.Area, Dimension.Area, "area under pressure");
        TracedNumber compression = sheet.Given("C", forces.Compression, Dimension.Force, "sum of the pressure");
        TracedNumber tension = sheet.Given("T", forces.Tension, Dimension.Force, "sum of the tensions");
        if (forces.CompressionAt is { } at)
        {
            sheet.Step("p_m", compression / area, Dimension.Stress, "mean pressure");
            TracedNumber xc = sheet.Given("x_C", at.X, Dimension.Length, "where C acts");
            TracedNumber yc = sheet.Given("y_C", at.Y, Dimension.Length);
            if (forces.TensionAt is { } pull)
            {
                TracedNumber xt = sheet.Given("x_T", pull.X, Dimension.Length, "where T acts");
                TracedNumber yt = sheet.Given("y_T", pull.Y, Dimension.Length);
                sheet.Step("N_eq", tension - compression, Dimension.Force, "balance with N");
                sheet.Step("M_x_eq", (tension * yt) - (compression * yc), Dimension.Moment, $"balance with {momentX}");
                sheet.Step("M_y_eq", (compression * xc) - (tension * xt), Dimension.Moment, $"balance with {momentY}");
                sheet.Step("z", TracedNumber.Sqrt(TracedNumber.Power(xc - xt, 2, 1) + TracedNumber.Power(yc - yt, 2, 1)), Dimension.Length, "lever arm");
            }
            else
            {
                sheet.Note("No fastener is in tension: the contact carries all.");
                sheet.Step("N_eq", -1 * compression, Dimension.Force, "balance with N");
                sheet.Step("M_x_eq", -1 * (compression * yc), Dimension.Moment, $"balance with {momentX}");
                sheet.Step("M_y_eq", compression * xc, Dimension.Moment, $"balance with {momentY}");
                return;
            }
        }
        else
        {
            sheet.Note("The plate lifts off: the fasteners carry all.");
            if (forces.TensionAt is null)
            {
                return;
            }
        }

        (TracedNumber x, TracedNumber y) = Place(sheet, group, most);
        TracedNumber own = sheet.Step("N_i", PlateFormulas.Tension(kappa, p0, px, py, x, y), Dimension.Force, PlateFormulas.Source);
        if (data.Distribution.Prying > 0)
        {
            sheet.Step("N_i_q", (1 + sheet.Given("q", data.Distribution.Prying, Dimension.None, "allowance for prying")) * own, Dimension.Force, "prying, as given");
        }
    }

    private static void Shear(Sheet<TracedNumber> sheet, ShearGroup group, TracedNumber vx, TracedNumber vy, TracedNumber mz, int most)
    {
        if (group.Count == 1 && group.AllTakeBoth)
        {
            sheet.Step("V_ix", vx, Dimension.Force, ElasticDistribution.Source);
            sheet.Step("V_iy", vy, Dimension.Force, ElasticDistribution.Source);
            return;
        }

        TracedNumber twist = ElasticDistribution.Twist(sheet, group, mz);
        (TracedNumber nx, TracedNumber ny) = (Named("n", group.CountX), Named("n", group.CountY));
        (TracedNumber x, TracedNumber y) = (Named("x", group.X(most)), Named("y", group.Y(most)));
        if (!group.AllTakeBoth)
        {
            (nx, ny) = (sheet.Given("n_x", group.CountX, Dimension.None, "fasteners that take shear along x"), sheet.Given("n_y", group.CountY, Dimension.None, "fasteners that take shear along y"));
            (x, y) = (sheet.Given("x_V", group.X(most), Dimension.Length, "from the shear centre"), sheet.Given("y_V", group.Y(most), Dimension.Length));
        }

        sheet.Step("V_ix", group.TakesX(most) ? ElasticDistribution.ShearX(vx / nx, twist, y) : TracedNumber.Literal(0), Dimension.Force, ElasticDistribution.Source);
        sheet.Step("V_iy", group.TakesY(most) ? ElasticDistribution.ShearY(vy / ny, twist, x) : TracedNumber.Literal(0), Dimension.Force, ElasticDistribution.Source);

        static TracedNumber Named(string id, double value) => Sheet<TracedNumber>.Named(id, value, id == "n" ? Dimension.None : Dimension.Length);
    }

    private static (TracedNumber X, TracedNumber Y) Place(Sheet<TracedNumber> sheet, ElasticGroup group, int fastener)
    {
        sheet.Note($"Fastener {QuantityText.Format(fastener)} has the most tension; the forces on all stand in the table.");
        return (sheet.Given("x", group.X(fastener), Dimension.Length, "from the centroid"), sheet.Given("y", group.Y(fastener), Dimension.Length));
    }
}
