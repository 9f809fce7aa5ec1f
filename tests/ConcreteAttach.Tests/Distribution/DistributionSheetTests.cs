using ConcreteAttach.Aci318;
using ConcreteAttach.Calculation;
using ConcreteAttach.Tests.Properties;
using ConcreteAttach.Verification;

namespace ConcreteAttach.Tests.Distribution;

/// <summary>What the sheet shows of the distribution is what the modes were computed with.</summary>
public sealed class DistributionSheetTests
{
    [Fact]
    public void The_sheet_shows_the_forces_on_the_most_tensioned_fastener()
    {
        int count = 0;
        foreach (AttachmentSample sample in AttachmentSamples.Take(1_000, seed: 21))
        {
            AttachmentVerification verification = sample.Prepared.Verify([sample.LoadCase], SheetScope.All);
            CalculationSheet sheet = Assert.Single(verification.Distribution).Sheet;
            bool pounds = verification.System == ConcreteAttach.Quantities.MeasurementSystem.PoundInch;
            double largest = verification.Forces.Max(f => pounds ? f.Tension.PoundsForce : f.Tension.Newtons);
            double size = verification.Forces.Sum(f => Math.Abs(f.Tension.Newtons) + Math.Abs(f.ShearX.Newtons) + Math.Abs(f.ShearY.Newtons));

            Assert.Equal(largest, sheet.Find("N_i")!.Value, 1e-9 * size);
            double centreX = sample.Attachment.Layout.Positions.Average(p => p.X.Inches), centreY = sample.Attachment.Layout.Positions.Average(p => p.Y.Inches);
            double x = (sheet.Find("x") ?? 0) / (pounds ? 1 : 25.4), y = (sheet.Find("y") ?? 0) / (pounds ? 1 : 25.4);
            Assert.Contains(verification.Forces, f =>
                Math.Abs(sample.Attachment.Layout.Positions[f.Index].X.Inches - centreX - x) < 1e-6
                && Math.Abs(sample.Attachment.Layout.Positions[f.Index].Y.Inches - centreY - y) < 1e-6
                && Math.Abs((pounds ? f.ShearX.PoundsForce : f.ShearX.Newtons) - sheet.Find("V_ix")!.Value) <= 1e-9 * size
                && Math.Abs((pounds ? f.ShearY.PoundsForce : f.ShearY.Newtons) - sheet.Find("V_iy")!.Value) <= 1e-9 * size);
            count++;
        }

        Assert.Equal(1_000, count);
    }
}
