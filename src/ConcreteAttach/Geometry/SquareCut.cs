namespace ConcreteAttach.Geometry;

/// <summary>Where an edge of a region comes from.</summary>
internal enum RegionEdgeKind
{
    /// <summary>Part of a side of the concrete.</summary>
    Concrete,

    /// <summary>Edge of a shadow.</summary>
    Shadow,

    /// <summary>Upper or lower side of the square.</summary>
    Square,
}

/// <summary>An edge of a region, from left to right. Vertical edges cover nothing of a slab and are left out.</summary>
/// <param name="Left">Where it begins.</param>
/// <param name="LeftHeight">y there.</param>
/// <param name="Right">Where it ends.</param>
/// <param name="RightHeight">y there.</param>
/// <param name="Sign">+1: the region lies above it; −1: below.</param>
/// <param name="Kind">Where it comes from.</param>
/// <param name="Owner">The fastener.</param>
internal readonly record struct RegionEdge(
    double Left, double LeftHeight, double Right, double RightHeight, int Sign, RegionEdgeKind Kind, int Owner)
{
    private readonly double _slope = (RightHeight - LeftHeight) / (Right - Left);

    public double HeightAt(double x) => LeftHeight + (_slope * (x - Left));
}

/// <summary>Cuts what a fastener sees to the square about it.</summary>
/// <remarks>
/// Of each edge of the region only what lies within the width of the square counts; what lies above or below the square is pressed onto its upper or lower
/// side. Pressed edges that follow each other are one edge from the start of the first to the end of the last. Of a region cut so, every vertical line
/// covers the same as of the region cut in the plane.
/// </remarks>
internal ref struct SquareCut
{
    private readonly Span<RegionEdge> _edges;
    private readonly int _owner;
    private readonly double _left;
    private readonly double _right;
    private readonly double _bottom;
    private readonly double _top;
    private int _count;
    private double _pressedHeight; // NaN: no pressed edge is being drawn
    private double _pressedFrom;
    private double _pressedTo;

    private SquareCut(SeenConcrete seen, double reach, int owner, Span<RegionEdge> edges)
    {
        _edges = edges;
        _owner = owner;
        _left = seen.X - reach;
        _right = seen.X + reach;
        _bottom = seen.Y - reach;
        _top = seen.Y + reach;
        _pressedHeight = double.NaN;
    }

    /// <summary>The most edges that <see cref="WriteRegion"/> may write: of each edge of the region what lies below, within and above the square.</summary>
    public static int MostEdges(SeenConcrete seen) => 3 * seen.Xs.Length;

    /// <summary>Writes the edges of the region that a fastener sees within its square, and returns how many.</summary>
    public static int WriteRegion(SeenConcrete seen, double reach, int owner, Span<RegionEdge> edges)
    {
        var cut = new SquareCut(seen, reach, owner, edges);
        ReadOnlySpan<double> xs = seen.Xs;
        ReadOnlySpan<double> ys = seen.Ys;
        for (int i = 0; i < xs.Length; i++)
        {
            int next = i + 1 == xs.Length ? 0 : i + 1;
            cut.AddCutToWidth(xs[i], ys[i], xs[next], ys[next], seen.IsShadow[i] ? RegionEdgeKind.Shadow : RegionEdgeKind.Concrete);
        }

        cut.EndPressed();
        return cut._count;
    }

    private void AddCutToWidth(double x1, double y1, double x2, double y2, RegionEdgeKind kind)
    {
        if (x1 == x2 || Math.Max(x1, x2) <= _left || Math.Min(x1, x2) >= _right)
        {
            return;
        }

        double slope = (y2 - y1) / (x2 - x1);
        double from = Math.Clamp(x1, _left, _right);
        double to = Math.Clamp(x2, _left, _right);
        AddCutToHeight(
            from, from == x1 ? y1 : y1 + (slope * (from - x1)),
            to, to == x2 ? y2 : y1 + (slope * (to - x1)), kind);
    }

    private void AddCutToHeight(double x1, double y1, double x2, double y2, RegionEdgeKind kind)
    {
        if (Math.Min(y1, y2) >= _bottom && Math.Max(y1, y2) <= _top)
        {
            Add(x1, y1, x2, y2, kind);
            return;
        }

        if (y1 == y2)
        {
            AddPressed(x1, x2, Math.Clamp(y1, _bottom, _top));
            return;
        }

        double first = y2 > y1 ? _bottom : _top; // the side of the square that it would pass first
        double second = y2 > y1 ? _top : _bottom;
        double comes = Math.Clamp((first - y1) / (y2 - y1), 0, 1);
        double goes = Math.Clamp((second - y1) / (y2 - y1), 0, 1);
        double xIn = comes == 1 ? x2 : x1 + (comes * (x2 - x1));
        double xOut = goes == 1 ? x2 : x1 + (goes * (x2 - x1));
        AddPressed(x1, xIn, first);
        Add(xIn, comes == 0 ? y1 : first, xOut, goes == 1 ? y2 : second, kind);
        AddPressed(xOut, x2, second);
    }

    private void Add(double x1, double y1, double x2, double y2, RegionEdgeKind kind)
    {
        if (x1 == x2)
        {
            return;
        }

        EndPressed();
        Write(x1, y1, x2, y2, kind);
    }

    private void AddPressed(double x1, double x2, double height)
    {
        if (x1 == x2)
        {
            return;
        }

        if (height != _pressedHeight || x1 != _pressedTo)
        {
            EndPressed();
            _pressedHeight = height;
            _pressedFrom = x1;
        }

        _pressedTo = x2;
    }

    private void EndPressed()
    {
        if (!double.IsNaN(_pressedHeight) && _pressedFrom != _pressedTo)
        {
            Write(_pressedFrom, _pressedHeight, _pressedTo, _pressedHeight, RegionEdgeKind.Square);
        }

        _pressedHeight = double.NaN;
    }

    /// <summary>The region lies to the left of the way from 1 to 2.</summary>
    private void Write(double x1, double y1, double x2, double y2, RegionEdgeKind kind) =>
        _edges[_count++] = x1 < x2 ? new(x1, y1, x2, y2, 1, kind, _owner) : new(x2, y2, x1, y1, -1, kind, _owner);
}
