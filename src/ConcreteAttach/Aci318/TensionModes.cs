using ConcreteAttach.Calculation;
using ConcreteAttach.Geometry;
using ConcreteAttach.Verification;

namespace ConcreteAttach.Aci318;

/// <summary>17.6 All failure modes in tension: which fasteners take part in which, in the order of the chapter.</summary>
internal static class TensionModes
{
    /// <summary>A force below this share of the largest one of the load case is no force.</summary>
    internal const double LeastShare = 1e-9;

    /// <summary>Length of the working memory for <paramref name="count"/> fasteners.</summary>
    public static int ScratchLength(int count) =>
        (6 * count) + (5 * Scratch.LengthOfInts(count + 1))
        + Math.Max(
            Math.Max(ProjectedArea.ScratchLength(count), SpanningTree.ScratchLength(count)),
            Math.Max(InfluenceGroups.ScratchLength(count), Math.Max(Rows.ScratchLength(count), Parts.ScratchLength(count))));

    /// <summary>Most modes that <paramref name="count"/> fasteners can give.</summary>
    public static int MostModes(int count) => 2 + count + (4 * count);

    /// <summary>Writes the modes; returns the highest ratio of demand to strength.</summary>
    /// <param name="data">The attachment.</param>
    /// <param name="forces">Axial force on each fastener, tension positive.</param>
    /// <param name="writer">Takes the modes.</param>
    /// <param name="free">Working memory of <see cref="ScratchLength"/>.</param>
    public static HighestRatio Write<T>(AnchorageData data, scoped ReadOnlySpan<double> forces, ref ModeWriter<T> writer, scoped Span<double> free)
        where T : struct, IFormulaNumber<T>
    {
        var memory = new Scratch(free);
        Span<int> loaded = memory.Ints(data.Count);
        Span<double> xs = memory.Doubles(data.Count);
        Span<double> ys = memory.Doubles(data.Count);
        Span<double> tensions = memory.Doubles(data.Count);
        int count = InTension(data, forces, loaded, xs, ys, tensions);
        bool hasDemand = count > 0;
        if (!hasDemand)
        {
            // No demand: the strength of a concentric load, all fasteners alike.
            count = data.Count;
            for (int i = 0; i < count; i++)
            {
                loaded[i] = i;
                tensions[i] = 1;
            }

            data.X.CopyTo(xs);
            data.Y.CopyTo(ys);
        }

        loaded = loaded[..count];
        xs = xs[..count];
        ys = ys[..count];
        tensions = tensions[..count];
        int most = MostLoaded(tensions);
        double largest = hasDemand ? tensions[most] : 0;
        ReadOnlySpan<int> mostLoaded = loaded.Slice(most, 1);

        Steel(data, largest, mostLoaded, ref writer);
        Breakout(data, loaded, xs, ys, tensions, hasDemand, ref writer, memory.Rest);
        PulloutOf(data, largest, mostLoaded, ref writer);
        Blowout(data, loaded, xs, ys, tensions, hasDemand, ref writer, memory.Rest);
        HighestRatio highest = writer.TakeHighest();
        return hasDemand ? highest : new HighestRatio(0, IsKnown: true);
    }

    private static void Steel<T>(AnchorageData data, double demand, scoped ReadOnlySpan<int> mostLoaded, ref ModeWriter<T> writer)
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

    private static void Breakout<T>(
        AnchorageData data, scoped ReadOnlySpan<int> loaded, scoped ReadOnlySpan<double> xs, scoped ReadOnlySpan<double> ys, scoped ReadOnlySpan<double> tensions,
        bool hasDemand, ref ModeWriter<T> writer, scoped Span<double> free)
        where T : struct, IFormulaNumber<T>
    {
        var mode = new ModeLabel(ConcreteBreakoutTension.Name);
        if (Limit.IsBelow(data.Edition.LargestDiameter, data.Diameter))
        {
            writer.WriteGap(mode, hasDemand, "The diameter exceeds the largest one that the breakout formulas cover (17.3.2).");
            return;
        }

        int count = xs.Length;
        var memory = new Scratch(free);
        Span<int> groupOf = memory.Ints(count);
        int groups = InfluenceGroups.Find(xs, ys, 3 * data.Embedment, groupOf, memory.Rest);
        if (groups == 1)
        {
            double demand = hasDemand ? Sum(tensions) : 0;
            BreakoutOf(data, mode, loaded, xs, ys, tensions, demand, ref writer, memory.Rest);
            return;
        }

        Span<double> groupXs = memory.Doubles(count);
        Span<double> groupYs = memory.Doubles(count);
        Span<double> groupTensions = memory.Doubles(count);
        Span<int> members = memory.Ints(count);
        for (int group = 0; group < groups; group++)
        {
            int size = 0;
            for (int i = 0; i < count; i++)
            {
                if (groupOf[i] == group)
                {
                    groupXs[size] = xs[i];
                    groupYs[size] = ys[i];
                    groupTensions[size] = tensions[i];
                    members[size++] = loaded[i];
                }
            }

            double demand = hasDemand ? Sum(groupTensions[..size]) : 0;
            BreakoutOf(data, mode with { Number = group + 1 }, members[..size], groupXs[..size], groupYs[..size], groupTensions[..size], demand, ref writer, memory.Rest);
        }
    }

    private static void BreakoutOf<T>(
        AnchorageData data, in ModeLabel mode, scoped ReadOnlySpan<int> members, scoped ReadOnlySpan<double> xs, scoped ReadOnlySpan<double> ys, scoped ReadOnlySpan<double> tensions,
        double demand, ref ModeWriter<T> writer, scoped Span<double> scratch)
        where T : struct, IFormulaNumber<T>
    {
        var group = new BreakoutGroup(data, xs, ys, Eccentricity(xs, tensions), Eccentricity(ys, tensions), scratch);
        Sheet<T> sheet = writer.NewSheet();
        T nominal = ConcreteBreakoutTension.NominalStrength(sheet, data, group, scratch);
        T phi = StrengthReduction.ConcreteTension(sheet, data);
        writer.Check(sheet, mode, nominal, phi, demand, members);
    }

    private static void PulloutOf<T>(AnchorageData data, double demand, scoped ReadOnlySpan<int> mostLoaded, ref ModeWriter<T> writer)
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

    private static void Blowout<T>(
        AnchorageData data, scoped ReadOnlySpan<int> loaded, scoped ReadOnlySpan<double> xs, scoped ReadOnlySpan<double> ys, scoped ReadOnlySpan<double> tensions,
        bool hasDemand, ref ModeWriter<T> writer, scoped Span<double> free)
        where T : struct, IFormulaNumber<T>
    {
        var any = new ModeLabel(SideFaceBlowout.Name);
        if (!data.IsHeaded)
        {
            writer.WriteWithout(any, ModeStatus.NotApplicable, "Side-face blowout is a matter of headed fasteners.");
            return;
        }

        bool hasEdge = false;
        foreach (ConcreteSide side in ConcreteSides.All)
        {
            if (double.IsInfinity(Layouts.EdgeDistance(data.Concrete, data.Extent, side)))
            {
                continue;
            }

            hasEdge = true;
            BlowoutAt(data, any with { Side = side }, loaded, xs, ys, tensions, hasDemand, ref writer, free);
        }

        if (!hasEdge)
        {
            writer.WriteWithout(any, ModeStatus.NotApplicable, "There is no edge within reach.");
        }
    }

    private static void BlowoutAt<T>(
        AnchorageData data, in ModeLabel mode, scoped ReadOnlySpan<int> loaded, scoped ReadOnlySpan<double> xs, scoped ReadOnlySpan<double> ys, scoped ReadOnlySpan<double> tensions,
        bool hasDemand, ref ModeWriter<T> writer, scoped Span<double> free)
        where T : struct, IFormulaNumber<T>
    {
        int count = xs.Length;
        var memory = new Scratch(free);
        Span<double> distances = memory.Doubles(count);
        Span<int> order = memory.Ints(count);
        Span<int> rowStarts = memory.Ints(count + 1);
        Span<int> partStarts = memory.Ints(count + 1);
        Span<int> members = memory.Ints(count);
        ReadOnlySpan<double> across = mode.Side.IsAlongX() ? xs : ys;
        ReadOnlySpan<double> along = mode.Side.IsAlongX() ? ys : xs;
        double nearest = double.PositiveInfinity;
        for (int i = 0; i < count; i++)
        {
            distances[i] = mode.Side.DistanceFrom(data.Concrete, across[i]);
            nearest = Math.Min(nearest, distances[i]);
        }

        if (!SideFaceBlowout.Applies(data.Embedment, nearest))
        {
            writer.WriteWithout(mode, ModeStatus.NotApplicable, "h_ef is at most 2.5 c_a1 (17.6.4.1).");
            return;
        }

        if (double.IsNaN(data.BearingArea))
        {
            writer.WriteGap(mode, hasDemand, "The bearing area of the head is not known: give bearingArea.");
            return;
        }

        int rows = Rows.Find(distances, order, rowStarts, memory.Rest);
        int number = 0;
        for (int row = 0; row < rows; row++)
        {
            Span<int> inRow = order[rowStarts[row]..rowStarts[row + 1]];
            double edgeDistance = distances[inRow[0]];
            if (!SideFaceBlowout.Applies(data.Embedment, edgeDistance))
            {
                break;
            }

            int parts = Parts.Find(along, inRow, 6 * edgeDistance, partStarts, memory.Rest);
            for (int rank = 0; rank < parts; rank++)
            {
                // Parts are numbered by their lowest fastener, not by their place along the edge.
                Span<int> part = PartOfRank(inRow, partStarts[..(parts + 1)], rank);
                double demand = 0;
                for (int k = 0; k < part.Length; k++)
                {
                    demand += tensions[part[k]];
                    members[k] = loaded[part[k]];
                }

                double first = along[part[0]];
                double last = along[part[^1]];
                double corner = part.Length > 1 ? double.PositiveInfinity
                    : mode.Side.IsAlongX() ? Math.Min(data.Concrete.Top - first, first - data.Concrete.Bottom) : Math.Min(data.Concrete.Right - first, first - data.Concrete.Left);
                members[..part.Length].Sort();
                var blowout = new BlowoutPart(part.Length, edgeDistance, corner, last - first);
                Sheet<T> sheet = writer.NewSheet();
                T nominal = SideFaceBlowout.NominalStrength(sheet, data, blowout);
                T phi = StrengthReduction.ConcreteTension(sheet, data);
                writer.Check(sheet, mode with { Number = ++number }, nominal, phi, hasDemand ? demand : 0, members[..part.Length]);
            }
        }
    }

    /// <summary>The part whose lowest fastener is the rank-th lowest among the parts of a row.</summary>
    internal static Span<int> PartOfRank(Span<int> row, ReadOnlySpan<int> starts, int rank)
    {
        int parts = starts.Length - 1;
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

    /// <summary>Distance of the resultant of the forces from the centroid of the fasteners, along one axis; 0 where it is rounding noise.</summary>
    internal static double Eccentricity(ReadOnlySpan<double> places, ReadOnlySpan<double> forces)
    {
        double sum = 0, moment = 0, mean = 0, reach = 0;
        for (int i = 0; i < places.Length; i++)
        {
            sum += forces[i];
            moment += forces[i] * places[i];
            mean += places[i];
            reach = Math.Max(reach, Math.Abs(places[i]));
        }

        double eccentricity = Math.Abs((moment / sum) - (mean / places.Length));
        return eccentricity <= 1e-12 * reach ? 0 : eccentricity;
    }

    private static int InTension(AnchorageData data, ReadOnlySpan<double> forces, Span<int> loaded, Span<double> xs, Span<double> ys, Span<double> tensions)
    {
        double largest = 0;
        foreach (double force in forces)
        {
            largest = Math.Max(largest, Math.Abs(force));
        }

        int count = 0;
        for (int i = 0; i < forces.Length; i++)
        {
            if (forces[i] > LeastShare * largest)
            {
                loaded[count] = i;
                xs[count] = data.X[i];
                ys[count] = data.Y[i];
                tensions[count++] = forces[i];
            }
        }

        return count;
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

    private static int MostLoaded(ReadOnlySpan<double> forces)
    {
        int most = 0;
        for (int i = 1; i < forces.Length; i++)
        {
            most = forces[i] > forces[most] ? i : most;
        }

        return most;
    }

    private static double Sum(ReadOnlySpan<double> values)
    {
        double sum = 0;
        foreach (double value in values)
        {
            sum += value;
        }

        return sum;
    }
}
