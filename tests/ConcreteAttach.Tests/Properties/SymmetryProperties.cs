using ConcreteAttach.Aci318;
using ConcreteAttach.Verification;
using FsCheck;
using FsCheck.Fluent;

namespace ConcreteAttach.Tests.Properties;

/// <summary>How an attachment is described does not matter: mirrored, turned, renumbered. All modes, in tension and in shear.</summary>
public sealed class SymmetryProperties
{
    private static readonly Config Thousand = Config.QuickThrowOnFailure.WithMaxTest(1_000).WithReplay(31, 3);

    internal static Arbitrary<AttachmentSample> Samples { get; } = Arb.From(Gen.Choose(0, int.MaxValue - 1).Select(seed => new AttachmentSamples(seed).Next()));

    [Fact]
    public void A_mirrored_attachment_has_the_same_answer() => Check.One(Thousand, Prop.ForAll(Samples, s =>
        Outcome.AssertSame(Outcome.Of(Modes(s), Variants.Mirrored), Outcome.Of(Modes(s.Mirrored()), side => side))));

    [Fact]
    public void A_quarter_turn_has_the_same_answer() => Check.One(Thousand, Prop.ForAll(Samples, s =>
        Outcome.AssertSame(Outcome.Of(Modes(s), Variants.Turned), Outcome.Of(Modes(s.Turned()), side => side))));

    [Fact]
    public void The_order_of_the_fasteners_changes_only_their_numbers() => Check.One(Thousand, Prop.ForAll(Samples, s =>
    {
        int count = s.Attachment.Layout.Positions.Length;
        int[] order = [.. Enumerable.Range(0, count)];
        new Random(count).Shuffle(order);
        AttachmentVerification before = s.Prepared.Verify([s.LoadCase], SheetScope.None), after = s.Renumbered(order).Prepared.Verify([s.LoadCase], SheetScope.None);

        Outcome.AssertSame(Outcome.Of(before.Modes, side => side), Outcome.Of(after.Modes, side => side));
        double size = before.Forces.Sum(f => Math.Abs(f.Tension.Newtons) + Math.Abs(f.ShearX.Newtons) + Math.Abs(f.ShearY.Newtons));
        for (int k = 0; k < count; k++)
        {
            Assert.Equal(before.Forces[order[k]].Tension.Newtons, after.Forces[k].Tension.Newtons, 1e-9 * size);
        }

        // The groups of the breakouts in tension are the same fasteners under their new numbers.
        Assert.Equal(Groups(before, i => Array.IndexOf(order, i)), Groups(after, i => i));
    }));

    private static SortedSet<string> Groups(AttachmentVerification verification, Func<int, int> number) => new(
        verification.Modes.Where(m => m.Kind is FailureModeKind.ConcreteBreakoutTension or FailureModeKind.SideFaceBlowout)
            .Select(m => $"{m.Kind} {m.Side} {string.Join(",", m.Group.Select(number).Order())}"), StringComparer.Ordinal);

    private static IEnumerable<FailureMode> Modes(AttachmentSample sample) => sample.Prepared.Verify([sample.LoadCase], SheetScope.None).Modes;
}
