using ConcreteAttach.Actions;
using ConcreteAttach.Attached;
using ConcreteAttach.Geometry;
using ConcreteAttach.Materials;
using ConcreteAttach.Verification;
using UnitsNet;

namespace ConcreteAttach.Tests.Properties;

/// <summary>The same attachment, described differently: mirrored, turned, renumbered, moved, in other units.</summary>
internal static class Variants
{
    /// <summary>Mirrored in the plane x = 0. A moment is an axial vector: the one about x stays, the others change sign.</summary>
    public static AttachmentSample Mirrored(this AttachmentSample s) => s.With(
        p => new(-p.X, p.Y),
        e => e with { PlusX = e.MinusX, MinusX = e.PlusX },
        l => l with { Vx = -l.Vx, My = -l.My, Mz = -l.Mz });

    public static ConcreteSide Mirrored(this ConcreteSide side) =>
        side == ConcreteSide.PlusX ? ConcreteSide.MinusX : side == ConcreteSide.MinusX ? ConcreteSide.PlusX : side;

    /// <summary>Turned by 90 degrees about z.</summary>
    public static AttachmentSample Turned(this AttachmentSample s) => s.With(
        p => new(-p.Y, p.X),
        e => new EdgeDistances { PlusY = e.PlusX, MinusX = e.PlusY, MinusY = e.MinusX, PlusX = e.MinusY },
        l => l with { Vx = -l.Vy, Vy = l.Vx, Mx = -l.My, My = l.Mx });

    public static ConcreteSide Turned(this ConcreteSide side) =>
        side == ConcreteSide.PlusX ? ConcreteSide.PlusY
        : side == ConcreteSide.PlusY ? ConcreteSide.MinusX
        : side == ConcreteSide.MinusX ? ConcreteSide.MinusY
        : side == ConcreteSide.MinusY ? ConcreteSide.PlusX : side;

    /// <summary>The fasteners in another order: new number k is old number order[k].</summary>
    public static AttachmentSample Renumbered(this AttachmentSample s, int[] order) =>
        s with { Attachment = new(s.Attachment.Concrete, s.Attachment.Fastener, FastenerLayout.Points(order.Select(i => s.Attachment.Layout.Positions[i]))) };

    /// <summary>The concrete changed.</summary>
    public static AttachmentSample With(this AttachmentSample s, Func<ConcreteMember, ConcreteMember> change) =>
        s with { Attachment = new(change(s.Attachment.Concrete), s.Attachment.Fastener, s.Attachment.Layout) };

    public static AttachmentSample WithStrength(this AttachmentSample s, Pressure strength) => s.With(c => new ConcreteMember(strength, c.Thickness)
    {
        Density = c.Density,
        IsCracked = c.IsCracked,
        HasSupplementaryReinforcementForTension = c.HasSupplementaryReinforcementForTension,
        HasSupplementaryReinforcementForShear = c.HasSupplementaryReinforcementForShear,
        EdgeReinforcement = c.EdgeReinforcement,
        HasSplittingReinforcement = c.HasSplittingReinforcement,
        AggregateSize = c.AggregateSize,
        Cover = c.Cover,
        Edges = c.Edges,
    });

    public static AttachmentSample WithEmbedment(this AttachmentSample s, Length embedment) =>
        s with { Attachment = new(s.Attachment.Concrete, s.Attachment.Fastener with { EffectiveEmbedment = embedment }, s.Attachment.Layout) };

    /// <summary>All forces and moments times a factor.</summary>
    public static LoadCase Times(this LoadCase l, double factor) => l with
    {
        N = l.N * factor, SustainedTension = l.SustainedTension * factor, Vx = l.Vx * factor, Vy = l.Vy * factor, Mx = l.Mx * factor, My = l.My * factor, Mz = l.Mz * factor,
    };

    private static AttachmentSample With(
        this AttachmentSample s, Func<FastenerPosition, FastenerPosition> place, Func<EdgeDistances, EdgeDistances> edges, Func<LoadCase, LoadCase> actions) => s with
        {
            Attachment = new(
                s.Attachment.Concrete with { Edges = edges(s.Attachment.Concrete.Edges) }, s.Attachment.Fastener, FastenerLayout.Points(s.Attachment.Layout.Positions.Select(place))),
            LoadCase = actions(s.LoadCase) with { At = place(s.LoadCase.At) },
        };
}

/// <summary>What the modes of a verification say, without the numbering of modes and fasteners: for comparing two descriptions of one attachment.</summary>
internal sealed record Outcome(FailureModeKind Kind, ConcreteSide Side, ModeStatus Status, double Nominal, double Factor, double Demand, double Utilization)
{
    public static List<Outcome> Of(AttachmentSample sample, Func<FailureModeKind, bool>? counts = null) => Of(sample.Prepared.Verify([sample.LoadCase], SheetScope.None).Modes, s => s, counts);

    /// <summary>The outcomes in an order that does not depend on numbering.</summary>
    /// <param name="modes">The modes.</param>
    /// <param name="side">What each side is called in the other description.</param>
    /// <param name="counts">Which modes are compared; null for all.</param>
    public static List<Outcome> Of(IEnumerable<FailureMode> modes, Func<ConcreteSide, ConcreteSide> side, Func<FailureModeKind, bool>? counts = null) =>
    [
        .. modes.Where(m => counts?.Invoke(m.Kind) ?? true)
            .Select(m => new Outcome(m.Kind, side(m.Side), m.Status, m.Nominal?.Newtons ?? 0, m.Factor ?? 0, m.Demand?.Newtons ?? 0, m.Utilization ?? 0))
            .OrderBy(o => o.Kind).ThenBy(o => o.Side.ToString(), StringComparer.Ordinal).ThenBy(o => Rounded(o.Nominal)).ThenBy(o => Rounded(o.Demand)),
    ];

    public static bool IsTension(FailureModeKind kind) => kind <= FailureModeKind.Bond;

    /// <summary>The same modes with the same numbers, within a share of the largest strength and demand.</summary>
    public static void AssertSame(List<Outcome> expected, List<Outcome> actual, double tolerance = 1e-9)
    {
        double largest = expected.Select(o => Math.Max(o.Nominal, o.Demand)).DefaultIfEmpty(0).Max();
        bool same = expected.Count == actual.Count && expected.Zip(actual).All(pair => pair.First.IsSame(pair.Second, tolerance, largest));
        Assert.True(same, $"expected\n{string.Join("\n", expected)}\nfound\n{string.Join("\n", actual)}");
    }

    private bool IsSame(Outcome other, double tolerance, double largest) =>
        (Kind, Side, Status, Factor) == (other.Kind, other.Side, other.Status, other.Factor)
        && Math.Abs(Nominal - other.Nominal) <= tolerance * Math.Max(Nominal, other.Nominal)
        && Math.Abs(Demand - other.Demand) <= tolerance * largest
        && Math.Abs(Utilization - other.Utilization) <= tolerance * Math.Max(1, Utilization);

    private static double Rounded(double value) => value == 0 ? 0 : Math.Round(value, Math.Clamp(6 - (int)Math.Floor(Math.Log10(value)), 0, 15));
}
