using System.Buffers;
using ConcreteAttach.Calculation;

namespace ConcreteAttach.Geometry;

/// <summary>
/// Area of the union of what the fasteners of a group reach: of each the square about it, cut to the concrete that it sees.
/// </summary>
/// <remarks>
/// <para>
/// The plane is cut into vertical slabs at every x where an edge of a region begins, ends or crosses another. Within a slab nothing crosses, so the length
/// that the union covers of a vertical line is linear across it: its length in the middle × the width of the slab is the area, exactly. No term is negative.
/// Edges that lie on each other, or pass each other at the distance of a rounding, do no harm: to take them in the wrong order changes the area by what lies between them.
/// </para>
/// <para>
/// Only edges of shadows are tested for crossings, with each other and with the upper and lower sides of the squares: a region has a vertex wherever it
/// meets a side of the concrete, and two sides of squares meet at a place where one of them begins. With convex concrete there is nothing to test.
/// </para>
/// <para>
/// Time grows with the number of slabs × the number of edges across one; the number of slabs with that of the crossings, so that 64 fasteners within a star of
/// 64 spikes take some 10⁻¹ s, where with a few openings and corners they take 10⁻⁴ s. Working memory comes from the shared pool: how many
/// crossings there are is not known before.
/// </para>
/// </remarks>
internal static class SeenArea
{
    /// <summary>
    /// Area, bounds, and whether the area fills them, as <see cref="ProjectedArea.Project"/> gives for squares and a rectangle.
    /// </summary>
    /// <param name="seen">What each fastener of the attachment sees.</param>
    /// <param name="group">The fasteners of the group, by their place in <paramref name="seen"/>.</param>
    /// <param name="reach">Half the side of the squares.</param>
    public static Projection Project(ReadOnlySpan<SeenConcrete> seen, ReadOnlySpan<int> group, double reach)
    {
        int most = 0;
        foreach (int fastener in group)
        {
            most += SquareCut.MostEdges(seen[fastener]);
        }

        RegionEdge[] edges = ArrayPool<RegionEdge>.Shared.Rent(Math.Max(1, most));
        try
        {
            int count = 0;
            foreach (int fastener in group)
            {
                count += SquareCut.WriteRegion(seen[fastener], reach, fastener, edges.AsSpan(count));
            }

            return Project(edges.AsSpan(0, count), reach);
        }
        finally
        {
            ArrayPool<RegionEdge>.Shared.Return(edges);
        }
    }

    private static Projection Project(Span<RegionEdge> edges, double reach)
    {
        if (edges.IsEmpty)
        {
            return default;
        }

        edges.Sort(static (a, b) => a.Left.CompareTo(b.Left));
        var cuts = new PooledNumbers(4 * edges.Length);
        int[] across = ArrayPool<int>.Shared.Rent(edges.Length);
        double[] heights = ArrayPool<double>.Shared.Rent(edges.Length);
        try
        {
            AddEnds(edges, ref cuts);
            AddCrossings(edges, ref cuts);
            cuts.Numbers.Sort();
            return Sweep(edges, cuts.Numbers, across, heights, Limit.Noise * reach);
        }
        finally
        {
            cuts.Return();
            ArrayPool<int>.Shared.Return(across);
            ArrayPool<double>.Shared.Return(heights);
        }
    }

    private static void AddEnds(ReadOnlySpan<RegionEdge> edges, ref PooledNumbers cuts)
    {
        foreach (ref readonly RegionEdge edge in edges)
        {
            cuts.Add(edge.Left);
            cuts.Add(edge.Right);
        }
    }

    /// <summary>Where the edges of shadows cross what comes from another fastener. The edges are in the order of their left ends.</summary>
    private static void AddCrossings(ReadOnlySpan<RegionEdge> edges, ref PooledNumbers cuts)
    {
        for (int i = 0; i < edges.Length; i++)
        {
            ref readonly RegionEdge edge = ref edges[i];
            if (edge.Kind == RegionEdgeKind.Concrete)
            {
                continue;
            }

            for (int k = i + 1; k < edges.Length && edges[k].Left < edge.Right; k++)
            {
                ref readonly RegionEdge other = ref edges[k];
                if (other.Owner != edge.Owner && MayCross(edge.Kind, other.Kind))
                {
                    AddCrossing(edge, other, ref cuts);
                }
            }
        }
    }

    private static bool MayCross(RegionEdgeKind a, RegionEdgeKind b) =>
        a == RegionEdgeKind.Shadow ? b != RegionEdgeKind.Concrete : b == RegionEdgeKind.Shadow;

    private static void AddCrossing(in RegionEdge a, in RegionEdge b, ref PooledNumbers cuts)
    {
        double left = Math.Max(a.Left, b.Left);
        double right = Math.Min(a.Right, b.Right);
        double atLeft = a.HeightAt(left) - b.HeightAt(left);
        double atRight = a.HeightAt(right) - b.HeightAt(right);
        if ((atLeft < 0 && atRight > 0) || (atLeft > 0 && atRight < 0))
        {
            cuts.Add(left + ((right - left) * (atLeft / (atLeft - atRight))));
        }
    }

    /// <summary>Goes from slab to slab and keeps the edges across it in the order of their height.</summary>
    private static Projection Sweep(ReadOnlySpan<RegionEdge> edges, ReadOnlySpan<double> cuts, Span<int> across, Span<double> heights, double noise)
    {
        double area = 0;
        var bounds = new Rectangle(double.PositiveInfinity, double.NegativeInfinity, double.PositiveInfinity, double.NegativeInfinity);
        int count = 0;
        int next = 0;
        for (int i = 1; i < cuts.Length; i++)
        {
            double left = cuts[i - 1];
            double right = cuts[i];
            if (left >= right)
            {
                continue;
            }

            count = Leave(edges, across[..count], left);
            for (; next < edges.Length && edges[next].Left <= left; next++)
            {
                across[count++] = next;
            }

            Order(edges, across[..count], heights, left + ((right - left) / 2));
            double covered = 0;
            int depth = 0; // how many regions the line is in
            int bottom = 0;
            for (int k = 0; k < count; k++)
            {
                bool opens = depth <= 0;
                depth += edges[across[k]].Sign;
                if (opens && depth > 0)
                {
                    bottom = k;
                }
                else if (!opens && depth <= 0 && heights[k] - heights[bottom] > 0)
                {
                    covered += heights[k] - heights[bottom];
                    if (heights[k] - heights[bottom] > noise)
                    {
                        bounds = Around(bounds, left, right, edges[across[bottom]], edges[across[k]]);
                    }
                }
            }

            area += covered * (right - left);
        }

        if (area <= 0 || bounds.Left >= bounds.Right)
        {
            return default;
        }

        bool isRectangle = area >= (1 - Limit.Tolerance) * bounds.Area;
        return new Projection(isRectangle ? bounds.Area : area, bounds, isRectangle);
    }

    /// <summary>Leaves out the edges that end at the start of a slab, and returns how many stay.</summary>
    private static int Leave(ReadOnlySpan<RegionEdge> edges, Span<int> across, double left)
    {
        int stay = 0;
        foreach (int edge in across)
        {
            if (edges[edge].Right > left)
            {
                across[stay++] = edge;
            }
        }

        return stay;
    }

    /// <summary>By insertion: from one slab to the next the order hardly changes.</summary>
    private static void Order(ReadOnlySpan<RegionEdge> edges, Span<int> across, Span<double> heights, double x)
    {
        for (int i = 0; i < across.Length; i++)
        {
            int edge = across[i];
            double height = edges[edge].HeightAt(x);
            int at = i - 1;
            for (; at >= 0 && heights[at] > height; at--)
            {
                heights[at + 1] = heights[at];
                across[at + 1] = across[at];
            }

            heights[at + 1] = height;
            across[at + 1] = edge;
        }
    }

    private static Rectangle Around(in Rectangle bounds, double left, double right, in RegionEdge bottom, in RegionEdge top) => new(
        Math.Min(bounds.Left, left),
        Math.Max(bounds.Right, right),
        Math.Min(bounds.Bottom, Math.Min(bottom.HeightAt(left), bottom.HeightAt(right))),
        Math.Max(bounds.Top, Math.Max(top.HeightAt(left), top.HeightAt(right))));

    /// <summary>Numbers in memory of the shared pool that grows as needed.</summary>
    private struct PooledNumbers(int capacity)
    {
        private double[] _memory = ArrayPool<double>.Shared.Rent(capacity);
        private int _count;

        public readonly Span<double> Numbers => _memory.AsSpan(0, _count);

        public void Add(double number)
        {
            if (_count == _memory.Length)
            {
                double[] larger = ArrayPool<double>.Shared.Rent(2 * _memory.Length);
                Numbers.CopyTo(larger);
                ArrayPool<double>.Shared.Return(_memory);
                _memory = larger;
            }

            _memory[_count++] = number;
        }

        public readonly void Return() => ArrayPool<double>.Shared.Return(_memory);
    }
}
