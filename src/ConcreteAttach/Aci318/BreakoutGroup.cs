using ConcreteAttach.Geometry;

namespace ConcreteAttach.Aci318;

/// <summary>Fasteners that break out or lose their bond together, as the formulas need them.</summary>
internal readonly ref struct BreakoutGroup
{
    /// <summary>Numbers of the fasteners.</summary>
    public readonly ReadOnlySpan<int> Members;

    /// <summary>Places of the fasteners along x.</summary>
    public readonly ReadOnlySpan<double> X;

    /// <summary>Places of the fasteners along y.</summary>
    public readonly ReadOnlySpan<double> Y;

    /// <summary>The rectangle about the fasteners; where it stands, for reading one side of it must not copy it.</summary>
    public readonly ref readonly Rectangle Extent;

    /// <summary>c_a,min; infinite without an edge.</summary>
    public readonly double SmallestEdge;

    /// <summary>e'_N along x.</summary>
    public readonly double EccentricityX;

    /// <summary>e'_N along y.</summary>
    public readonly double EccentricityY;

    /// <summary>How many edges are closer than 1.5 h_ef.</summary>
    public readonly int CloseEdges;

    /// <summary>c_a,max of 17.6.2.1.2.</summary>
    public readonly double LargestCloseEdge;

    /// <summary>s of 17.6.2.1.2: the longest link of the shortest tree that joins the fasteners; NaN where it is not needed.</summary>
    public readonly double LargestSpacing;

    /// <param name="data">The attachment.</param>
    /// <param name="members">Numbers of the group's fasteners.</param>
    /// <param name="xs">Places of the group's fasteners.</param>
    /// <param name="ys">Places of the group's fasteners.</param>
    /// <param name="extent">The rectangle about them.</param>
    /// <param name="eccentricityX">Distance along x of the resultant from the centroid of the group.</param>
    /// <param name="eccentricityY">The same along y.</param>
    /// <param name="scratch">Working memory of <see cref="SpanningTree.ScratchLength"/>.</param>
    public BreakoutGroup(
        AnchorageData data, ReadOnlySpan<int> members, ReadOnlySpan<double> xs, ReadOnlySpan<double> ys, in Rectangle extent, double eccentricityX, double eccentricityY, Span<double> scratch)
        : this(data, members, xs, ys, extent, eccentricityX, eccentricityY)
    {
        bool isOfAll = data.Options.CloseEdges == CloseEdgesReading.AllFasteners;
        if (data.Outline is { } outline)
        {
            (CloseEdges, LargestCloseEdge) = outline.CloseEdges(isOfAll ? data.All : members, 1.5 * data.Embedment);
        }
        else
        {
            ref readonly Rectangle deciding = ref isOfAll ? ref data.Extent : ref extent;
            (CloseEdges, LargestCloseEdge) = Layouts.CloseEdges(data.Concrete, deciding, 1.5 * data.Embedment);
        }

        LargestSpacing = CloseEdges >= 3 ? SpanningTree.LongestLink(xs, ys, scratch) : double.NaN;
    }

    private BreakoutGroup(AnchorageData data, ReadOnlySpan<int> members, ReadOnlySpan<double> xs, ReadOnlySpan<double> ys, in Rectangle extent, double eccentricityX, double eccentricityY)
    {
        Members = members;
        X = xs;
        Y = ys;
        Extent = ref extent;
        EccentricityX = eccentricityX;
        EccentricityY = eccentricityY;
        SmallestEdge = data.Outline is { } outline ? outline.SmallestEdge(members) : Layouts.SmallestEdge(data.Concrete, extent);
        LargestSpacing = double.NaN;
    }

    /// <summary>A group that fails in bond: 17.6.5 has no rule for three close edges.</summary>
    public static BreakoutGroup ForBond(
        AnchorageData data, ReadOnlySpan<int> members, ReadOnlySpan<double> xs, ReadOnlySpan<double> ys, in Rectangle extent, double eccentricityX, double eccentricityY) =>
        new(data, members, xs, ys, extent, eccentricityX, eccentricityY);

    public int Count => X.Length;
}

/// <summary>Headed fasteners in a row along an edge that blow the side face out together.</summary>
/// <param name="Count">Number of fasteners.</param>
/// <param name="EdgeDistance">c_a1.</param>
/// <param name="CornerDistance">c_a2 of a single fastener; infinite without a corner.</param>
/// <param name="OuterSpacing">s between the outer fasteners along the edge.</param>
internal readonly record struct BlowoutPart(int Count, double EdgeDistance, double CornerDistance, double OuterSpacing);
