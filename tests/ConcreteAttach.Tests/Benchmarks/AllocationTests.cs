using ConcreteAttach.Aci318;
using ConcreteAttach.Actions;
using ConcreteAttach.Attached;
using ConcreteAttach.Benchmarks;
using ConcreteAttach.Distribution;
using ConcreteAttach.Verification;
using UnitsNet;

namespace ConcreteAttach.Tests.Benchmarks;

/// <summary>Evaluating what has been prepared allocates nothing, from one fastener to hundreds.</summary>
public sealed class AllocationTests
{
    public static TheoryData<string> Layouts => [.. SampleAttachments.Names];

    [Theory]
    [MemberData(nameof(Layouts))]
    public void Evaluate_allocates_nothing(string name)
    {
        (Attachment attachment, LoadCase loadCase) = SampleAttachments.Find(name);
        AssertAllocatesNothing(attachment, loadCase);
    }

    [Theory]
    [InlineData(5, 5)]
    [InlineData(8, 8)]
    [InlineData(13, 5)] // the first that no longer fits one word of bits
    [InlineData(20, 10)]
    public void Evaluate_of_a_grid_allocates_nothing(int columns, int rows)
    {
        (Attachment attachment, LoadCase loadCase) = SampleAttachments.Grid(columns, rows);
        AssertAllocatesNothing(attachment, loadCase);
    }

    private static void AssertAllocatesNothing(Attachment attachment, LoadCase loadCase)
    {
        PreparedAttachment prepared = new Aci318Method(Aci318Edition.InchPound2019).Prepare(attachment);
        PreparedActions[] actions =
        [
            prepared.Prepare(loadCase),
            prepared.Prepare(new LoadCase("none")),
            prepared.Prepare(new LoadCase("shear") { N = Force.FromKilopoundsForce(1), Vx = Force.FromKilopoundsForce(3), Vy = Force.FromKilopoundsForce(-2) }),
        ];
        var results = new ModeResult[prepared.ModeCapacity];
        Assert.Equal(0, Allocation.Of(() =>
        {
            for (int i = 0; i < 1000; i++)
            {
                prepared.Evaluate(actions[i % actions.Length], results);
            }
        }));
    }
}
