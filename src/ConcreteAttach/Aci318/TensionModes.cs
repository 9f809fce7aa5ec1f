using System.Runtime.CompilerServices;
using ConcreteAttach.Calculation;
using ConcreteAttach.Geometry;
using ConcreteAttach.Verification;

namespace ConcreteAttach.Aci318;

/// <summary>17.6 All failure modes in tension: which fasteners take part in which, in the order of the chapter.</summary>
internal static class TensionModes
{
    /// <summary>A force below this share of the largest one of the load case is no force.</summary>
    internal const double LeastShare = Limit.Tolerance;

    /// <summary>Length of the working memory for <paramref name="count"/> fasteners.</summary>
    public static int ScratchLength(int count) =>
        (6 * count) + (5 * Scratch.LengthOfInts(count + 1))
        + Math.Max(InfluenceGroups.ScratchLength(count), Math.Max(ProjectedArea.ScratchLength(count), SpanningTree.ScratchLength(count)));

    /// <summary>Most modes that <paramref name="count"/> fasteners before a number of <paramref name="edges"/> can give.</summary>
    public static int MostModes(int count, int edges) => 2 + count + Math.Max(1, edges * count);

    /// <summary>Writes the modes; returns the highest ratio of demand to strength.</summary>
    /// <param name="data">The attachment.</param>
    /// <param name="forces">Axial force on each fastener, tension positive.</param>
    /// <param name="writer">Takes the modes.</param>
    /// <param name="free">Working memory of <see cref="ScratchLength"/>.</param>
    public static HighestRatio Write<T>(AnchorageData data, ReadOnlySpan<double> forces, in ModeWriter<T> writer, Span<double> free)
        where T : struct, IFormulaNumber<T>
    {
        var memory = new Scratch(free);
        var fasteners = new TensionedFasteners(data, forces, ref memory);
        int most = fasteners.MostLoaded();
        double largest = fasteners.HasDemand ? fasteners.Forces[most] : 0;
        ReadOnlySpan<int> mostLoaded = fasteners.Members.Slice(most, 1);

        Steel(data, largest, mostLoaded, writer);
        Breakout(data, fasteners, writer, memory.Rest);
        PulloutOf(data, largest, mostLoaded, writer);
        Blowout(data, fasteners, writer, memory.Rest);
        HighestRatio highest = writer.TakeHighest();
        return fasteners.HasDemand ? highest : new HighestRatio(0, IsKnown: true);
    }

    private static void Steel<T>(AnchorageData data, double demand, ReadOnlySpan<int> mostLoaded, in ModeWriter<T> writer)
        where T : struct, IFormulaNumber<T>
    {
        var mode = new ModeLabel(SteelTension.Name);
        if (double.IsNaN(data.TensileArea))
        {
            writer.WriteGap(mode, demand > 0, "The tensile area is not known: give thread or tensileArea.");
            return;
        }

        Sheet<T> sheet = writer.NewSheet();
        T nominal = SteelTension.NominalStrength(sheet, data);
        T phi = StrengthReduction.SteelTension(sheet, data);
        writer.Check(sheet, mode, nominal, phi, demand, mostLoaded);
    }

    private static void Breakout<T>(AnchorageData data, in TensionedFasteners fasteners, in ModeWriter<T> writer, Span<double> free)
        where T : struct, IFormulaNumber<T>
    {
        var mode = new ModeLabel(ConcreteBreakoutTension.Name);
        if (Limit.IsBelow(data.Edition.LargestDiameter, data.Diameter))
        {
            writer.WriteGap(mode, fasteners.HasDemand, ConcreteBreakoutTension.TooThick);
            return;
        }

        var memory = new Scratch(free);
        Span<int> groupOf = memory.Ints(fasteners.Count);
        int groups = fasteners.Count == 1 ? 1
            : data.Influence is { } influence ? influence.Find(fasteners.Members, groupOf)
            : InfluenceGroups.Find(fasteners.X, fasteners.Y, 3 * data.Embedment, groupOf, memory.Rest);
        if (groups == 1)
        {
            BreakoutOf(data, mode, fasteners, writer, memory.Rest);
        }
        else
        {
            BreakoutOfEach(data, mode, fasteners, groupOf, groups, writer, memory);
        }
    }

    [MethodImpl(MethodImplOptions.NoInlining)] // several groups are rare: their spans cost the common path nothing
    private static void BreakoutOfEach<T>(
        AnchorageData data, ModeLabel mode, in TensionedFasteners fasteners, ReadOnlySpan<int> groupOf, int groups, in ModeWriter<T> writer, Scratch memory)
        where T : struct, IFormulaNumber<T>
    {
        Span<int> members = memory.Ints(fasteners.Count);
        Span<double> xs = memory.Doubles(fasteners.Count);
        Span<double> ys = memory.Doubles(fasteners.Count);
        Span<double> forces = memory.Doubles(fasteners.Count);
        for (int group = 0; group < groups; group++)
        {
            int size = 0;
            for (int i = 0; i < groupOf.Length; i++)
            {
                if (groupOf[i] == group)
                {
                    members[size] = fasteners.Members[i];
                    xs[size] = fasteners.X[i];
                    ys[size] = fasteners.Y[i];
                    forces[size++] = fasteners.Forces[i];
                }
            }

            var own = new TensionedFasteners(members[..size], xs[..size], ys[..size], forces[..size], fasteners.HasDemand);
            BreakoutOf(data, mode with { Number = group + 1 }, own, writer, memory.Rest);
        }
    }

    private static void BreakoutOf<T>(AnchorageData data, ModeLabel mode, in TensionedFasteners fasteners, in ModeWriter<T> writer, Span<double> scratch)
        where T : struct, IFormulaNumber<T>
    {
        (double force, double eccentricityX, double eccentricityY) = fasteners.Resultant();
        var group = new BreakoutGroup(data, fasteners.Members, fasteners.X, fasteners.Y, fasteners.Extent, eccentricityX, eccentricityY, scratch);
        Sheet<T> sheet = writer.NewSheet();
        T nominal = ConcreteBreakoutTension.NominalStrength(sheet, data, group, scratch);
        T phi = StrengthReduction.ConcreteTension(sheet, data);
        writer.Check(sheet, mode, nominal, phi, fasteners.HasDemand ? force : 0, fasteners.Members);
    }

    private static void PulloutOf<T>(AnchorageData data, double demand, ReadOnlySpan<int> mostLoaded, in ModeWriter<T> writer)
        where T : struct, IFormulaNumber<T>
    {
        var mode = new ModeLabel(Pullout.Name);
        if (Pullout.NotCovered(data) is { } reason)
        {
            writer.WriteGap(mode, demand > 0, reason);
            return;
        }

        Sheet<T> sheet = writer.NewSheet();
        T nominal = Pullout.NominalStrength(sheet, data);
        T phi = StrengthReduction.PulloutCastIn(sheet);
        writer.Check(sheet, mode, nominal, phi, demand, mostLoaded);
    }

    private static void Blowout<T>(AnchorageData data, in TensionedFasteners fasteners, in ModeWriter<T> writer, Span<double> free)
        where T : struct, IFormulaNumber<T>
    {
        var mode = new ModeLabel(SideFaceBlowout.Name);
        if (!data.IsHeaded)
        {
            writer.WriteWithout(mode, ModeStatus.NotApplicable, "Side-face blowout is a matter of headed fasteners.");
            return;
        }

        if (data.Edges.Length == 0)
        {
            writer.WriteWithout(mode, ModeStatus.NotApplicable, "There is no edge within reach.");
            return;
        }

        var memory = new Scratch(free);
        ReadOnlySpan<double> tension = fasteners.ByNumber(data.Count, ref memory);
        foreach (ConcreteEdge edge in data.Edges)
        {
            ModeLabel atEdge = mode with { Side = edge.Side };
            if (!SideFaceBlowout.Applies(data.Embedment, NearestInTension(edge, tension)))
            {
                writer.WriteWithout(atEdge, ModeStatus.NotApplicable, "h_ef is at most 2.5 c_a1 (17.6.4.1).");
            }
            else if (double.IsNaN(data.BearingArea))
            {
                writer.WriteGap(atEdge, fasteners.HasDemand, Pullout.HeadUnknown);
            }
            else
            {
                BlowoutAt(data, atEdge, edge, tension, fasteners.HasDemand, writer, memory.Rest);
            }
        }
    }

    private static double NearestInTension(ConcreteEdge edge, ReadOnlySpan<double> tension)
    {
        foreach (int fastener in edge.Order)
        {
            if (tension[fastener] > 0)
            {
                return edge.Distances[fastener];
            }
        }

        return double.PositiveInfinity;
    }

    private static void BlowoutAt<T>(
        AnchorageData data, ModeLabel mode, ConcreteEdge edge, ReadOnlySpan<double> tension, bool hasDemand, in ModeWriter<T> writer, Span<double> free)
        where T : struct, IFormulaNumber<T>
    {
        var memory = new Scratch(free);
        Span<int> fasteners = memory.Ints(data.Count);
        Span<int> rowStarts = memory.Ints(data.Count + 1);
        Span<int> partStarts = memory.Ints(data.Count + 1);
        int count = 0;
        foreach (int fastener in edge.Order)
        {
            if (tension[fastener] > 0)
            {
                fasteners[count++] = fastener;
            }
        }

        int rows = edge.FindRows(fasteners[..count], rowStarts);
        int number = 0;
        for (int row = 0; row < rows; row++)
        {
            Span<int> inRow = fasteners[rowStarts[row]..rowStarts[row + 1]];
            double edgeDistance = edge.Distances[inRow[0]];
            if (!SideFaceBlowout.Applies(data.Embedment, edgeDistance))
            {
                break;
            }

            int parts = Parts.Find(edge.Places, edge.ToHigh, inRow, 6 * edgeDistance, partStarts);
            for (int rank = 0; rank < parts; rank++)
            {
                // Parts are numbered by their lowest fastener, not by their place along the edge.
                Span<int> part = PartOfRank(inRow, partStarts[..(parts + 1)], rank);
                double demand = 0;
                foreach (int fastener in part)
                {
                    demand += tension[fastener];
                }

                double first = edge.Places[part[0]];
                double corner = part.Length > 1 ? double.PositiveInfinity : edge.ToNearestSide(part[0]);
                var blowout = new BlowoutPart(part.Length, edgeDistance, corner, edge.Places[part[^1]] - first);
                if (writer.IsTracing)
                {
                    part.Sort();
                }

                Sheet<T> sheet = writer.NewSheet();
                T nominal = SideFaceBlowout.NominalStrength(sheet, data, blowout);
                T phi = StrengthReduction.ConcreteTension(sheet, data);
                writer.Check(sheet, mode with { Number = ++number }, nominal, phi, hasDemand ? demand : 0, part);
            }
        }
    }

    /// <summary>The part whose lowest fastener is the rank-th lowest among the parts of a row.</summary>
    internal static Span<int> PartOfRank(Span<int> row, ReadOnlySpan<int> starts, int rank)
    {
        int parts = starts.Length - 1;
        if (parts == 1)
        {
            return row;
        }

        for (int part = 0; part < parts; part++)
        {
            int own = Lowest(row[starts[part]..starts[part + 1]]);
            int lower = 0;
            for (int other = 0; other < parts; other++)
            {
                lower += Lowest(row[starts[other]..starts[other + 1]]) < own ? 1 : 0;
            }

            if (lower == rank)
            {
                return row[starts[part]..starts[part + 1]];
            }
        }

        throw new ArgumentOutOfRangeException(nameof(rank));
    }

    private static int Lowest(ReadOnlySpan<int> members)
    {
        int lowest = int.MaxValue;
        foreach (int member in members)
        {
            lowest = Math.Min(lowest, member);
        }

        return lowest;
    }
}
