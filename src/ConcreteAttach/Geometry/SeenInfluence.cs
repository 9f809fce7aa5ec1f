using ConcreteAttach.Calculation;

namespace ConcreteAttach.Geometry;

/// <summary>
/// Which fasteners in an outline influence each other: those whose squares overlap in concrete that both see. The same as <see cref="InfluenceGroups"/> where nothing stands
/// between them; on two sides of a slot or an opening they are apart. Immutable.
/// </summary>
internal sealed class SeenInfluence
{
    private readonly int _count;
    private readonly bool[] _areConnected; // fastener by fastener

    /// <param name="fasteners">All fasteners.</param>
    /// <param name="reach">Half the side of the squares.</param>
    public SeenInfluence(FastenersInOutline fasteners, double reach)
    {
        _count = fasteners.Seen.Length;
        _areConnected = new bool[_count * _count];
        for (int i = 0; i < _count; i++)
        {
            for (int k = i + 1; k < _count; k++)
            {
                bool overlap = Overlap(fasteners, i, k, reach);
                _areConnected[(i * _count) + k] = overlap;
                _areConnected[(k * _count) + i] = overlap;
            }
        }
    }

    /// <summary>
    /// Writes the number of its group for each of some fasteners and returns how many groups there are. Groups are numbered from 0 in the order of their first fastener.
    /// </summary>
    /// <param name="members">Their numbers.</param>
    /// <param name="groupOf">Receives the group of each (as long as <paramref name="members"/>).</param>
    public int Find(ReadOnlySpan<int> members, Span<int> groupOf)
    {
        groupOf.Fill(-1);
        int groups = 0;
        for (int first = 0; first < members.Length; first++)
        {
            if (groupOf[first] >= 0)
            {
                continue;
            }

            groupOf[first] = groups;
            bool hasGrown = true;
            while (hasGrown)
            {
                hasGrown = Spread(members, groupOf, groups, first);
            }

            groups++;
        }

        return groups;
    }

    private bool Spread(ReadOnlySpan<int> members, Span<int> groupOf, int group, int first)
    {
        bool hasGrown = false;
        for (int i = first; i < members.Length; i++)
        {
            for (int k = first + 1; k < members.Length && groupOf[i] == group; k++)
            {
                if (groupOf[k] < 0 && _areConnected[(members[i] * _count) + members[k]])
                {
                    groupOf[k] = group;
                    hasGrown = true;
                }
            }
        }

        return hasGrown;
    }

    private static bool Overlap(FastenersInOutline fasteners, int a, int b, double reach)
    {
        SeenConcrete first = fasteners.Seen[a];
        SeenConcrete second = fasteners.Seen[b];
        if (!Limit.IsBelow(Math.Abs(first.X - second.X), 2 * reach) || !Limit.IsBelow(Math.Abs(first.Y - second.Y), 2 * reach))
        {
            return false;
        }

        double apart = fasteners.Project([a], reach).Area + fasteners.Project([b], reach).Area;
        return Limit.IsBelow(fasteners.Project([a, b], reach).Area, apart);
    }
}
