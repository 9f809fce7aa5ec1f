using System.Numerics;
using ConcreteAttach.Calculation;

namespace ConcreteAttach.Geometry;

/// <summary>
/// Groups of points whose influence overlaps: connected sets, where two points are connected if both |Δx| and |Δy| are
/// less than a distance. At the distance itself, within the relative tolerance, they are apart.
/// </summary>
internal static class InfluenceGroups
{
    /// <summary>Up to here the points still without a group are the bits of one word.</summary>
    private const int Few = 64;

    /// <summary>Length of the scratch that <paramref name="count"/> points need.</summary>
    public static int ScratchLength(int count) => count <= Few
        ? 0
        : 2 * count + 2 + 2 * Scratch.LengthOfInts(count)
            + Math.Max(Ordering.ScratchLength(count), RankSet.WordCount(count + 2));

    /// <summary>
    /// Writes the number of its group into <paramref name="group"/> for each point and returns how many groups there
    /// are. Groups are numbered from 0 in the order of their first point.
    /// </summary>
    public static int Find(
        ReadOnlySpan<double> xs, ReadOnlySpan<double> ys, double distance, Span<int> group, Span<double> scratch)
    {
        return xs.Length <= Few
            ? FindAmongFew(xs, ys, distance, group)
            : FindAmongMany(xs, ys, distance, group, new Scratch(scratch));
    }

    /// <summary>Starts from the first point without a group and spreads to all that can be reached from it.</summary>
    private static int FindAmongFew(ReadOnlySpan<double> xs, ReadOnlySpan<double> ys, double distance, Span<int> group)
    {
        ulong free = xs.IsEmpty ? 0 : ulong.MaxValue >> (Few - xs.Length);
        int groups = 0;
        while (free != 0)
        {
            ulong reached = free & (~free + 1); // its lowest bit
            free ^= reached;
            while (reached != 0)
            {
                int point = BitOperations.TrailingZeroCount(reached);
                reached &= reached - 1;
                group[point] = groups;
                for (ulong rest = free; rest != 0; rest &= rest - 1)
                {
                    int other = BitOperations.TrailingZeroCount(rest);
                    if (Limit.IsBelow(Math.Abs(xs[other] - xs[point]), distance)
                        && Limit.IsBelow(Math.Abs(ys[other] - ys[point]), distance))
                    {
                        reached |= 1UL << other;
                    }
                }

                free &= ~reached;
            }

            groups++;
        }

        return groups;
    }

    /// <summary>
    /// Sweeps from left to right and keeps the points that are near in x, in the order of their y. Any two of them are
    /// near in x, so a new point needs to be connected to no more than its neighbour below and its neighbour above:
    /// the others that are near in y are connected through these.
    /// </summary>
    private static int FindAmongMany(
        ReadOnlySpan<double> xs, ReadOnlySpan<double> ys, double distance, Span<int> group, Scratch memory)
    {
        int count = xs.Length;
        Span<double> byHeight = memory.Doubles(count + 2);
        Span<double> byX = memory.Doubles(count);
        Span<int> points = memory.Ints(count); // by height
        Span<int> ranks = memory.Ints(count); // by x; rank 1 … count, between two ranks that are near to none
        Span<int> parent = group[..count]; // by point: an earlier point of its group, or itself where it is the first

        ys.CopyTo(byHeight[1..]);
        for (int i = 0; i < count; i++)
        {
            points[i] = i;
            parent[i] = i;
        }

        Ordering.Ascending(byHeight.Slice(1, count), points, memory.Rest);
        byHeight[0] = double.NegativeInfinity;
        byHeight[count + 1] = double.PositiveInfinity;
        for (int i = 0; i < count; i++)
        {
            byX[i] = xs[points[i]];
            ranks[i] = i + 1;
        }

        Ordering.Ascending(byX, ranks, memory.Rest);
        var near = new RankSet(memory.Words(RankSet.WordCount(count + 2)), count + 2);
        near.Add(0);
        near.Add(count + 1);
        int first = 0;
        for (int i = 0; i < count; i++)
        {
            for (; first < i && !Limit.IsBelow(byX[i] - byX[first], distance); first++)
            {
                near.Remove(ranks[first]);
            }

            int rank = ranks[i];
            int lower = near.Before(rank);
            int upper = near.After(rank);
            near.Add(rank);
            if (Limit.IsBelow(byHeight[rank] - byHeight[lower], distance))
            {
                Join(parent, points[rank - 1], points[lower - 1]);
            }

            if (Limit.IsBelow(byHeight[upper] - byHeight[rank], distance))
            {
                Join(parent, points[rank - 1], points[upper - 1]);
            }
        }

        // Each parent comes before its child, so it has made way for the number of its group when the child needs it.
        int groups = 0;
        for (int i = 0; i < count; i++)
        {
            group[i] = parent[i] == i ? groups++ : group[parent[i]];
        }

        return groups;
    }

    private static void Join(Span<int> parent, int a, int b)
    {
        a = Root(parent, a);
        b = Root(parent, b);
        parent[Math.Max(a, b)] = Math.Min(a, b);
    }

    private static int Root(Span<int> parent, int point)
    {
        while (parent[point] != point)
        {
            parent[point] = parent[parent[point]];
            point = parent[point];
        }

        return point;
    }
}
