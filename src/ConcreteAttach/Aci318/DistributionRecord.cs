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
        ElasticGroup group = data.Elastic;
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
        TracedNumber mzc = ElasticDistribution.TorsionAtCentroid(sheet, vx, vy, mz, armX, armY);
        (TracedNumber betaX, TracedNumber betaY) = ElasticDistribution.Slopes(sheet, group, mxc, myc);
        TracedNumber twist = ElasticDistribution.Twist(sheet, group, mzc);

        TracedNumber mean = sheet.Step("N_m", n / count, Dimension.Force, ElasticDistribution.Source);
        if (group.Shape == GroupShape.Single)
        {
            sheet.Step("N_i", mean, Dimension.Force, ElasticDistribution.Source);
            sheet.Step("V_ix", vx, Dimension.Force, ElasticDistribution.Source);
            sheet.Step("V_iy", vy, Dimension.Force, ElasticDistribution.Source);
            return recorder.ToSheet();
        }

        int most = MostTensioned(data, loadCase);
        sheet.Note($"Fastener {QuantityText.Format(most)} has the most tension; the forces on all stand in the table.");
        TracedNumber x = sheet.Given("x", group.X(most), Dimension.Length, "from the centroid");
        TracedNumber y = sheet.Given("y", group.Y(most), Dimension.Length);
        sheet.Step("N_i", ElasticDistribution.Tension(mean, betaX, betaY, x, y), Dimension.Force, ElasticDistribution.Source);
        sheet.Step("V_ix", ElasticDistribution.ShearX(vx / count, twist, y), Dimension.Force, ElasticDistribution.Source);
        sheet.Step("V_iy", ElasticDistribution.ShearY(vy / count, twist, x), Dimension.Force, ElasticDistribution.Source);
        return recorder.ToSheet();
    }

    private static int MostTensioned(AnchorageData data, LoadCase loadCase)
    {
        double[] tensions = new double[data.Count];
        data.Elastic.Tensions(PreparedActions.Of(loadCase, data.Elastic, data.Edition.System), tensions);
        int most = 0;
        for (int i = 1; i < tensions.Length; i++)
        {
            most = tensions[i] > tensions[most] ? i : most;
        }

        return most;
    }
}
