using System.Runtime.CompilerServices;
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

    /// <summary>The edges about them.</summary>
    public readonly GroupEdges Edges;

    /// <summary>Whether these are all fasteners of the attachment: see <see cref="WholeGroup"/>.</summary>
    public readonly bool IsWhole;

    /// <summary>e'_N along x.</summary>
    public readonly double EccentricityX;

    /// <summary>e'_N along y.</summary>
    public readonly double EccentricityY;

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
    {
        Members = members;
        X = xs;
        Y = ys;
        Extent = ref extent;
        EccentricityX = eccentricityX;
        EccentricityY = eccentricityY;
        IsWhole = members.Length == data.Count;
        Edges = IsWhole && data.Whole is { } whole ? whole.Edges : GroupEdges.Of(data, members, xs, ys, extent, scratch);
    }

    public int Count => X.Length;
}

/// <summary>The edges about a group, as 17.6 asks for them.</summary>
/// <param name="Smallest">c_a,min; infinite without an edge.</param>
/// <param name="Close">How many edges are closer than 1.5 h_ef.</param>
/// <param name="LargestClose">c_a,max of 17.6.2.1.2.</param>
/// <param name="LargestSpacing">s of 17.6.2.1.2: the longest link of the shortest tree that joins the fasteners; NaN where it is not needed.</param>
internal readonly record struct GroupEdges(double Smallest, int Close, double LargestClose, double LargestSpacing)
{
    /// <summary>Measures them.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)] // its temporaries cost nothing where the edges of all fasteners are known
    public static GroupEdges Of(
        AnchorageData data, ReadOnlySpan<int> members, ReadOnlySpan<double> xs, ReadOnlySpan<double> ys, in Rectangle extent, Span<double> scratch)
    {
        double reach = 1.5 * data.Embedment;
        bool isOfAll = data.Options.CloseEdges == CloseEdgesReading.AllFasteners;
        double smallest;
        int close;
        double largestClose;
        if (data.Outline is { } outline)
        {
            smallest = outline.SmallestEdge(members);
            (close, largestClose) = outline.CloseEdges(isOfAll ? data.All : members, reach);
        }
        else
        {
            smallest = Layouts.SmallestEdge(data.Concrete, extent);
            (close, largestClose) = Layouts.CloseEdges(data.Concrete, isOfAll ? data.Extent : extent, reach);
        }

        return new(smallest, close, largestClose, close >= 3 ? SpanningTree.LongestLink(xs, ys, scratch) : double.NaN);
    }
}

/// <summary>Headed fasteners in a row along an edge that blow the side face out together.</summary>
/// <param name="Count">Number of fasteners.</param>
/// <param name="EdgeDistance">c_a1.</param>
/// <param name="CornerDistance">c_a2 of a single fastener; infinite without a corner.</param>
/// <param name="OuterSpacing">s between the outer fasteners along the edge.</param>
internal readonly record struct BlowoutPart(int Count, double EdgeDistance, double CornerDistance, double OuterSpacing);
