using ConcreteAttach.Aci318;
using ConcreteAttach.Actions;
using ConcreteAttach.Attached;
using ConcreteAttach.Benchmarks;
using ConcreteAttach.Distribution;
using ConcreteAttach.Quantities;
using ConcreteAttach.Verification;

namespace ConcreteAttach.Tests.Benchmarks;

/// <summary>
/// The hand-written kernel of the benchmarks does the same job as the library: what the speed is compared with must not be less work. Written apart from the
/// formulas of the library, it is a second calculation of every strength mode as well.
/// </summary>
public sealed class KernelTests
{
    private const double Tolerance = 1e-12;

    [Fact]
    public void Kernel_and_library_agree_on_random_attachments()
    {
        var source = new RandomAttachments(seed: 20_251);
        var seen = new HashSet<(FailureModeKind, ModeStatus)>();
        int compared = 0;
        while (compared < 10_000)
        {
            (Attachment attachment, LoadCase loadCase, Aci318Options options) = source.Next();
            try
            {
                Compare(attachment, loadCase, options, seen, compared);
                compared++;
            }
            catch (InputException)
            {
                // A moment about the line of a row: not a load of this layout.
            }
        }

        // All that can happen has happened.
        // Without a plate nothing stands off, and no lug hangs below it. What reinforcement takes over is two products and no part of the kernel.
        FailureModeKind[] kinds =
        [
            .. Enum.GetValues<FailureModeKind>().Where(kind => kind < FailureModeKind.StandOffCompression && kind is (< FailureModeKind.ShearLugBearing or > FailureModeKind.ShearLugDistance)
                and not (FailureModeKind.InteractionOfSteel or FailureModeKind.ReinforcementTension or FailureModeKind.ReinforcementShear)),
        ];
        Assert.All(kinds, kind => Assert.Contains((kind, ModeStatus.NotSatisfied), seen));
        Assert.All(kinds, kind => Assert.Contains((kind, ModeStatus.Satisfied), seen));
        Assert.All(kinds.Except([FailureModeKind.ConcreteBreakoutParallel, FailureModeKind.PryoutOfFastener, FailureModeKind.Pryout]), kind => Assert.Contains((kind, ModeStatus.NotCovered), seen));
    }

    private static void Compare(Attachment attachment, LoadCase loadCase, Aci318Options options, HashSet<(FailureModeKind, ModeStatus)> seen, int number)
    {
        PreparedAttachment prepared = new Aci318Method(Aci318Edition.InchPound2019, options).Prepare(attachment);
        PreparedActions actions = prepared.Prepare(loadCase);
        var kernel = new EvaluateKernel(new AnchorageData(attachment, Aci318Edition.InchPound2019, options));
        var library = new ModeResult[prepared.ModeCapacity];
        var own = new KernelResult[kernel.Capacity];
        int count = prepared.Evaluate(actions, library);
        Assert.Equal(count, kernel.Evaluate(actions, own));
        for (int i = 0; i < count; i++)
        {
            string where = $"attachment {number}, mode {i}";
            ModeResult expected = library[i];
            KernelResult actual = own[i];
            Assert.True((expected.Kind, expected.Side, expected.Number, expected.Status) == (actual.Kind, actual.Side, actual.Number, actual.Status),
                $"{where}: {expected.Kind} {expected.Side} {expected.Number} {expected.Status}, kernel {actual.Kind} {actual.Side} {actual.Number} {actual.Status}");
            Same(expected.NominalValue, actual.Nominal, where);
            Same(expected.Factor, actual.Factor, where);
            Same(expected.DemandValue, actual.Demand, where);
            Same(expected.Utilization, actual.Utilization, where);
            seen.Add((expected.Kind, expected.Status));
        }
    }

    private static void Same(double expected, double actual, string where) => Assert.True(
        double.IsNaN(expected) ? double.IsNaN(actual) : Math.Abs(actual - expected) <= Tolerance * Math.Abs(expected),
        $"{where}: library {expected:R}, kernel {actual:R}");
}
