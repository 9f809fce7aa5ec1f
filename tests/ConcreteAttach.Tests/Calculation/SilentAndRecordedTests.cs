using ConcreteAttach.Aci318;
using ConcreteAttach.Distribution;
using ConcreteAttach.Tests.Properties;
using ConcreteAttach.Verification;

namespace ConcreteAttach.Tests.Calculation;

/// <summary>The fast path and the recorded path run one formula: their results are equal to the last bit.</summary>
public sealed class SilentAndRecordedTests
{
    private const int Attachments = 20_000;

    [Fact]
    public void Fast_results_and_sheets_are_equal_to_the_bit()
    {
        int compared = 0;
        Parallel.ForEach(AttachmentSamples.Take(Attachments, seed: 2), sample =>
        {
            PreparedAttachment prepared = sample.Prepared;
            PreparedActions actions = prepared.Prepare(sample.LoadCase);
            var results = new ModeResult[prepared.ModeCapacity];
            int count = prepared.Evaluate(actions, results);
            FailureMode[] recorded = [.. prepared.Verify([sample.LoadCase], SheetScope.All).Modes.Where(m => m.LoadCase is not null)];

            Assert.Equal(count, recorded.Length);
            for (int i = 0; i < count; i++)
            {
                ModeResult silent = results[i], traced = recorded[i].Result;
                Assert.Equal((silent.Kind, silent.Side, silent.Number, silent.Status), (traced.Kind, traced.Side, traced.Number, traced.Status));
                Equal(silent.NominalValue, traced.NominalValue);
                Equal(silent.Factor, traced.Factor);
                Equal(silent.DemandValue, traced.DemandValue);
                Equal(silent.Utilization, traced.Utilization);
                if (recorded[i].Sheet?.Find("utilization") is { } shown)
                {
                    Equal(silent.Utilization, shown);
                }
            }

            Interlocked.Add(ref compared, count);
        });
        Assert.InRange(compared, 5 * Attachments, int.MaxValue);
    }

    private static void Equal(double silent, double recorded) => Assert.Equal(BitConverter.DoubleToInt64Bits(silent), BitConverter.DoubleToInt64Bits(recorded));
}
