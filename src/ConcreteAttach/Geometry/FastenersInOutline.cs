using System.Buffers;

namespace ConcreteAttach.Geometry;

/// <summary>
/// Fasteners in a concrete outline, with all that depends only on where they stand: what each of them sees, how far it is from each side, which sides it
/// faces. Immutable; to ask it for a group allocates nothing.
/// </summary>
internal sealed class FastenersInOutline
{
    private readonly SeenConcrete[] _seen;
    private readonly FacingSide[] _facing; // fastener by fastener
    private readonly double[] _distances; // fastener by fastener

    public FastenersInOutline(Outline outline, ReadOnlySpan<double> xs, ReadOnlySpan<double> ys)
    {
        Outline = outline;
        int sides = outline.Sides.Length;
        _seen = new SeenConcrete[xs.Length];
        _facing = new FacingSide[xs.Length * sides];
        _distances = new double[xs.Length * sides];
        Array.Fill(_distances, double.PositiveInfinity);
        for (int i = 0; i < xs.Length; i++)
        {
            _seen[i] = SeenConcrete.From(outline, xs[i], ys[i]);
            foreach (ref readonly SeenPart part in _seen[i].Parts)
            {
                ref double distance = ref _distances[(i * sides) + part.Side];
                distance = Math.Min(distance, part.Distance);
            }

            for (int side = 0; side < sides && !_seen[i].Xs.IsEmpty; side++)
            {
                _facing[(i * sides) + side] = FacingSide.Of(outline, side, _seen[i]);
            }
        }
    }

    public Outline Outline { get; }

    /// <summary>What each fastener sees.</summary>
    public ReadOnlySpan<SeenConcrete> Seen => _seen;

    /// <summary>How a fastener stands to a side of the outline.</summary>
    public ref readonly FacingSide Facing(int fastener, int side) => ref _facing[(fastener * Outline.Sides.Length) + side];

    /// <summary>Distance of a fastener from the part of a side that it sees; infinite where it sees nothing of it.</summary>
    public double Distance(int fastener, int side) => _distances[(fastener * Outline.Sides.Length) + side];

    /// <summary>c_a,min: the smallest distance of a fastener of the group from a side.</summary>
    public double SmallestEdge(ReadOnlySpan<int> group)
    {
        double smallest = double.PositiveInfinity;
        for (int side = 0; side < Outline.Sides.Length; side++)
        {
            smallest = Math.Min(smallest, Distance(group, side));
        }

        return smallest;
    }

    /// <summary>How many edges are nearer to the group than <paramref name="limit"/>, and the largest distance that is not above it: see <see cref="CloseSectors"/>.</summary>
    public (int Count, double Largest) CloseEdges(ReadOnlySpan<int> group, double limit)
    {
        double[] distances = ArrayPool<double>.Shared.Rent(Outline.Sides.Length);
        for (int side = 0; side < Outline.Sides.Length; side++)
        {
            distances[side] = Distance(group, side);
        }

        (int Count, double Largest) close = CloseSectors.Count(Outline, distances.AsSpan(0, Outline.Sides.Length), limit);
        ArrayPool<double>.Shared.Return(distances);
        return close;
    }

    /// <summary>The area that a breakout of the group reaches on the surface: see <see cref="SeenArea"/>.</summary>
    public Projection Project(ReadOnlySpan<int> group, double reach) => SeenArea.Project(_seen, group, reach);

    private double Distance(ReadOnlySpan<int> group, int side)
    {
        double smallest = double.PositiveInfinity;
        foreach (int fastener in group)
        {
            smallest = Math.Min(smallest, Distance(fastener, side));
        }

        return smallest;
    }
}
