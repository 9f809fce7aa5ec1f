using System.Runtime.CompilerServices;
using ConcreteAttach.Calculation;

namespace ConcreteAttach.Geometry;

/// <summary>
/// The edges of an outline that are close to a group, as "three or more edges" (ACI 318-19 17.6.2.1.2) is read for any outline.
/// </summary>
/// <remarks>
/// <para>
/// The clause raises the strength of a group that is hemmed in, so a curve made of many sides or a cut corner must not bring it about. Hence directions
/// are counted, not sides: the direction of the nearest side's normal and the three at right angles to it are the middles of four sectors. A side belongs
/// to the sector in which its normal lies, and a sector counts once, with the smallest distance of its sides. For a rectangle these are the four edges.
/// </para>
/// <para>
/// A side whose normal lies at 45°, between two sectors (a corner cut at 45°), goes with that of the two which is nearer without such sides; between
/// equals, with that of the nearest side or the one opposite, one of which is always beside it. So it never makes a sector close beside one that is close
/// already, and neither the order of the sides nor a mirror changes the count.
/// </para>
/// <para>Where several sides are the nearest, the one counts that gives the fewest close sectors: the lower strength.</para>
/// </remarks>
internal struct CloseSectors
{
    private const int SectorCount = 4;

    private Four _sectors; // by quarter turns from the normal of the nearest side
    private Four _between; // k: between sector k and the next

    /// <summary>Without a side anywhere.</summary>
    public CloseSectors()
    {
        for (int i = 0; i < SectorCount; i++)
        {
            _sectors[i] = double.PositiveInfinity;
            _between[i] = double.PositiveInfinity;
        }
    }

    /// <summary>How many sectors are nearer than <paramref name="limit"/>, and the largest distance of any side that is not above it; 0 where none is nearer.</summary>
    /// <remarks>
    /// c_a,max of the clause is the largest of all sides, also where a nearer side stands in the same sector: a small one would give a small h'_ef and with it more strength.
    /// </remarks>
    /// <param name="outline">The outline.</param>
    /// <param name="distances">Distance of the group from each side of it; infinite for a side that none of its fasteners sees.</param>
    /// <param name="limit">The distance below which an edge is close.</param>
    public static (int Count, double Largest) Count(Outline outline, ReadOnlySpan<double> distances, double limit)
    {
        double nearest = double.PositiveInfinity;
        double largest = 0;
        foreach (double distance in distances)
        {
            nearest = Math.Min(nearest, distance);
            largest = Limit.IsBelow(limit, distance) ? largest : Math.Max(largest, distance);
        }

        if (!Limit.IsBelow(nearest, limit))
        {
            return (0, 0);
        }

        int fewest = SectorCount;
        for (int side = 0; side < distances.Length; side++)
        {
            if (double.IsFinite(distances[side]) && !Limit.IsBelow(nearest, distances[side]))
            {
                fewest = Math.Min(fewest, Of(outline, distances, side).Count(limit));
            }
        }

        return (fewest, largest);
    }

    /// <summary>The distances of the sectors about the normal of one side.</summary>
    private static CloseSectors Of(Outline outline, ReadOnlySpan<double> distances, int middle)
    {
        var sectors = new CloseSectors();
        double normalX = outline.Sides[middle].NormalX;
        double normalY = outline.Sides[middle].NormalY;
        for (int i = 0; i < distances.Length; i++)
        {
            if (double.IsFinite(distances[i]))
            {
                ref readonly OutlineSide side = ref outline.Sides[i];
                double along = (normalX * side.NormalX) + (normalY * side.NormalY);
                double across = Segments.Cross(normalX, normalY, side.NormalX, side.NormalY);
                sectors.Add(along, across, distances[i]);
            }
        }

        sectors.ShareOutBetween();
        return sectors;
    }

    private void Add(double along, double across, double distance)
    {
        double difference = Math.Abs(along) - Math.Abs(across);
        if (Math.Abs(difference) <= Tolerance.Relative)
        {
            int between = across > 0 ? (along > 0 ? 0 : 1) : (along > 0 ? 3 : 2);
            _between[between] = Math.Min(_between[between], distance);
            return;
        }

        int sector = difference > 0 ? (along > 0 ? 0 : 2) : (across > 0 ? 1 : 3);
        _sectors[sector] = Math.Min(_sectors[sector], distance);
    }

    private void ShareOutBetween()
    {
        Four without = _sectors;
        for (int i = 0; i < SectorCount; i++)
        {
            // Of the two sectors at 45° one is always that of the nearest side (0) or the opposite one (2).
            int even = i is 0 or 3 ? 0 : 2;
            int odd = i < 2 ? 1 : 3;
            int nearer = Limit.IsBelow(without[odd], without[even]) ? odd : even;
            _sectors[nearer] = Math.Min(_sectors[nearer], _between[i]);
        }
    }

    private readonly int Count(double limit)
    {
        int count = 0;
        for (int i = 0; i < SectorCount; i++)
        {
            count += Limit.IsBelow(_sectors[i], limit) ? 1 : 0;
        }

        return count;
    }

    [InlineArray(SectorCount)]
    private struct Four
    {
        private double _first;
    }
}
