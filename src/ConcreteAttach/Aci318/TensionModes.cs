using System.Runtime.CompilerServices;
using ConcreteAttach.Calculation;
using ConcreteAttach.Distribution;
using ConcreteAttach.Geometry;
using ConcreteAttach.Quantities;
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
    public static int MostModes(int count, int edges) => 4 + (2 * count) + Math.Max(1, edges * count);

    /// <summary>Writes the modes; returns the highest ratio of demand to strength.</summary>
    /// <param name="data">The attachment.</param>
    /// <param name="forces">Axial force on each fastener, tension positive.</param>
    /// <param name="state">What else of the load case matters.</param>
    /// <param name="writer">Takes the modes.</param>
    /// <param name="free">Working memory of <see cref="ScratchLength"/>.</param>
    public static HighestRatio Write<T>(AnchorageData data, ReadOnlySpan<double> forces, in LoadState state, in ModeWriter<T> writer, Span<double> free)
        where T : struct, IFormulaNumber<T>
    {
        var memory = new Scratch(free);
        var fasteners = new TensionedFasteners(data, forces, ref memory);
        int most = fasteners.MostLoaded();
        double largest = fasteners.HasDemand ? fasteners.Forces[most] : 0;
        ReadOnlySpan<int> mostLoaded = fasteners.Members.Slice(most, 1);

        Steel(data, largest, mostLoaded, writer);
        Breakout(data, fasteners, state, writer, memory.Rest);
        PulloutOf(data, largest, mostLoaded, writer);
        Blowout(data, fasteners, writer, memory.Rest);
        HighestRatio highest = data.Product is { IsAdhesive: true } product
            ? BondModes(data, product, fasteners, largest, mostLoaded, state, writer, memory.Rest)
            : writer.TakeHighest();
        return fasteners.HasDemand ? highest : new HighestRatio(0, IsKnown: true);
    }

    private static void Steel<T>(AnchorageData data, double demand, ReadOnlySpan<int> mostLoaded, in ModeWriter<T> writer)
        where T : struct, IFormulaNumber<T>
    {
        var mode = new ModeLabel(SteelTension.Name);
        if (double.IsNaN(data.TensileArea) || data.SteelGap is not null)
        {
            writer.WriteGap(mode, demand > 0, data.SteelGap ?? "The tensile area is not known: give thread or tensileArea.");
            return;
        }

        Sheet<T> sheet = writer.NewSheet();
        T nominal = SteelTension.NominalStrength(sheet, data);
        T phi = StrengthReduction.SteelTension(sheet, data);
        writer.Check(sheet, mode, nominal, phi, demand, mostLoaded);
    }

    private static void Breakout<T>(AnchorageData data, in TensionedFasteners fasteners, in LoadState state, in ModeWriter<T> writer, Span<double> free)
        where T : struct, IFormulaNumber<T>
    {
        var mode = new ModeLabel(ConcreteBreakoutTension.Name);
        if (data.Reinforcement?.Tension is { } bars)
        {
            ReinforcementModes.Tension(bars, data, fasteners, writer);
            if (bars.IsEffective)
            {
                writer.WriteWithout(mode, ModeStatus.NotApplicable, ReinforcementModes.Replaced);
                return;
            }
        }

        if (data.BreakoutTensionGap is { } reason)
        {
            writer.WriteGap(mode, fasteners.HasDemand, reason);
            return;
        }

        EachGroup<T, BreakoutCheck>(data, mode, data.Whole.IsOneInBreakout, 3 * data.Embedment, data.Influence, fasteners, state, writer, free);
    }

    /// <summary>Bond, and the fastener with the most sustained tension (17.5.2.2). Returns the highest ratio of all modes so far but the sustained one, which takes no part in the interaction.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)] // costs other fasteners nothing
    private static HighestRatio BondModes<T>(
        AnchorageData data, ProductData product, in TensionedFasteners fasteners, double largest, ReadOnlySpan<int> mostLoaded, in LoadState state,
        in ModeWriter<T> writer, Span<double> free)
        where T : struct, IFormulaNumber<T>
    {
        string? gap = product.BondTensionGap ?? data.EditionTensionGap;
        if (gap is null)
        {
            EachGroup<T, BondCheck>(data, new ModeLabel(Bond.Name), data.Whole.IsOneInBond, 2 * data.BondReach, data.BondInfluence, fasteners, state, writer, free);
        }
        else
        {
            writer.WriteGap(new ModeLabel(Bond.Name), fasteners.HasDemand, gap);
        }

        HighestRatio highest = writer.TakeHighest();
        var mode = new ModeLabel(Bond.Sustained);
        if (state.SustainedShare == 0 || !fasteners.HasDemand)
        {
            writer.WriteWithout(mode, ModeStatus.NotApplicable, "There is no sustained tension.");
        }
        else if (gap is not null)
        {
            writer.WriteGap(mode, hasDemand: true, gap);
        }
        else
        {
            Sheet<T> sheet = writer.NewSheet();
            T nominal = Bond.BasicStrength(sheet, data, isSustained: true);
            T phi = StrengthReduction.Sustained(sheet, data);
            T tension = sheet.Given("N_ua_i", largest, Dimension.Force, "most loaded fastener");
            T share = sheet.Given("r_s", state.SustainedShare, Dimension.None, "sustained part of N");
            writer.Check(sheet, mode, nominal, phi, sheet.Step("N_ua_s", share * tension, Dimension.Force, "17.5.2.2"), mostLoaded);
        }

        writer.TakeHighest();
        return highest;
    }

    /// <summary>Splits the fasteners into groups and checks each.</summary>
    /// <param name="data">The attachment.</param>
    /// <param name="mode">The mode.</param>
    /// <param name="isWholeOne">Whether all fasteners of the attachment act together.</param>
    /// <param name="limit">Fasteners nearer than this along both axes act together.</param>
    /// <param name="influence">In an outline, which fasteners act together; else null.</param>
    /// <param name="fasteners">Those in tension.</param>
    /// <param name="state">What else of the load case matters.</param>
    /// <param name="writer">Takes the modes.</param>
    /// <param name="free">Working memory.</param>
    private static void EachGroup<T, TCheck>(
        AnchorageData data, ModeLabel mode, bool isWholeOne, double limit, SeenInfluence? influence, in TensionedFasteners fasteners, in LoadState state,
        in ModeWriter<T> writer, Span<double> free)
        where T : struct, IFormulaNumber<T>
        where TCheck : IGroupCheck
    {
        var memory = new Scratch(free);
        Span<int> groupOf = memory.Ints(fasteners.Count);
        int groups = fasteners.Count == 1 || (isWholeOne && fasteners.Count == data.Count) ? 1
            : influence is not null ? influence.Find(fasteners.Members, groupOf)
            : InfluenceGroups.Find(fasteners.X, fasteners.Y, limit, groupOf, memory.Rest);
        if (groups == 1)
        {
            TCheck.Write(data, mode, fasteners, state, writer, memory.Rest);
        }
        else
        {
            EachOfSeveral<T, TCheck>(data, mode, fasteners, groupOf, groups, state, writer, memory);
        }
    }

    [MethodImpl(MethodImplOptions.NoInlining)] // several groups are rare: their spans cost the common path nothing
    private static void EachOfSeveral<T, TCheck>(
        AnchorageData data, ModeLabel mode, in TensionedFasteners fasteners, ReadOnlySpan<int> groupOf, int groups, in LoadState state,
        in ModeWriter<T> writer, Scratch memory)
        where T : struct, IFormulaNumber<T>
        where TCheck : IGroupCheck
    {
        Span<int> members = memory.Ints(fasteners.Count);
        Span<double> xs = memory.Doubles(fasteners.Count);
        Span<double> ys = memory.Doubles(fasteners.Count);
        Span<double> forces = memory.Doubles(fasteners.Count);
        LoadState ofGroup = state with { Couple = default }; // which of the groups the compression holds down is not known
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
            TCheck.Write(data, mode with { Number = group + 1 }, own, ofGroup, writer, memory.Rest);
        }
    }

    private static void PulloutOf<T>(AnchorageData data, double demand, ReadOnlySpan<int> mostLoaded, in ModeWriter<T> writer)
        where T : struct, IFormulaNumber<T>
    {
        var mode = new ModeLabel(Pullout.Name);
        if (data.Product is { IsAdhesive: true })
        {
            writer.WriteWithout(mode, ModeStatus.NotApplicable, "Adhesive fasteners fail in bond (17.6.5).");
            return;
        }

        if (data.Product is { PulloutDoesNotGovern: true, StateGap: null })
        {
            writer.WriteWithout(mode, ModeStatus.NotApplicable, "Tests have shown that pullout does not govern.");
            return;
        }

        if (Pullout.NotCovered(data) is { } reason)
        {
            writer.WriteGap(mode, demand > 0, reason);
            return;
        }

        Sheet<T> sheet = writer.NewSheet();
        T nominal = Pullout.NominalStrength(sheet, data);
        T phi = StrengthReduction.Pullout(sheet, data);
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
            else if (double.IsNaN(data.BearingArea) || data.EditionTensionGap is not null)
            {
                writer.WriteGap(atEdge, fasteners.HasDemand, data.EditionTensionGap ?? Pullout.HeadUnknown);
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

/// <summary>What of a load case matters beside the forces on the fasteners.</summary>
/// <param name="SustainedShare">Sustained tension over all of it (17.5.2.2); 0 without.</param>
/// <param name="IsSustainedDesign">Whether the design of the attachment includes sustained tension, in this load case or another (Table 17.6.5.2.5).</param>
/// <param name="Couple">Tension and compression under the plate, where the edition counts the compression.</param>
internal readonly record struct LoadState(double SustainedShare, bool IsSustainedDesign, PlateCouple Couple);

/// <summary>A check of fasteners that fail in tension together. A type of its own for each, so that the JIT compiles the splitting into groups anew for it.</summary>
internal interface IGroupCheck
{
    static abstract void Write<T>(
        AnchorageData data, ModeLabel mode, in TensionedFasteners fasteners, in LoadState state, in ModeWriter<T> writer, Span<double> scratch)
        where T : struct, IFormulaNumber<T>;
}

/// <summary>Concrete breakout of one group.</summary>
internal readonly struct BreakoutCheck : IGroupCheck
{
    public static void Write<T>(
        AnchorageData data, ModeLabel mode, in TensionedFasteners fasteners, in LoadState state, in ModeWriter<T> writer, Span<double> scratch)
        where T : struct, IFormulaNumber<T>
    {
        (double force, double eccentricityX, double eccentricityY) = fasteners.Resultant();
        var group = new BreakoutGroup(data, fasteners.Members, fasteners.X, fasteners.Y, fasteners.Extent, eccentricityX, eccentricityY, scratch);
        Sheet<T> sheet = writer.NewSheet();
        T nominal = ConcreteBreakoutTension.NominalStrength(sheet, data, group, scratch, state);
        Remarks.OfSplitting(data, group, nominal, sheet, writer);
        T phi = StrengthReduction.ConcreteTension(sheet, data);
        writer.Check(sheet, mode, nominal, phi, fasteners.HasDemand ? force : 0, fasteners.Members);
    }
}

/// <summary>Bond of one group.</summary>
internal readonly struct BondCheck : IGroupCheck
{
    public static void Write<T>(
        AnchorageData data, ModeLabel mode, in TensionedFasteners fasteners, in LoadState state, in ModeWriter<T> writer, Span<double> scratch)
        where T : struct, IFormulaNumber<T>
    {
        (double force, double eccentricityX, double eccentricityY) = fasteners.Resultant();
        var group = new BreakoutGroup(data, fasteners.Members, fasteners.X, fasteners.Y, fasteners.Extent, eccentricityX, eccentricityY, scratch);
        Sheet<T> sheet = writer.NewSheet();
        T nominal = Bond.NominalStrength(sheet, data, group, state.IsSustainedDesign, Bond.LightweightId, scratch);
        Remarks.OfSplittingBond(data, group, nominal, sheet, writer);
        T phi = StrengthReduction.ConcreteTension(sheet, data);
        writer.Check(sheet, mode, nominal, phi, fasteners.HasDemand ? force : 0, fasteners.Members);
    }
}
