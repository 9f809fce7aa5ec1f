namespace ConcreteAttach.Geometry;

/// <summary>
/// The surface of a concrete member in one unit of length: a polygon with openings, as <see cref="SurfaceOutline"/> has checked it. Immutable.
/// </summary>
internal sealed class Outline
{
    private readonly OutlineSide[] _sides;

    public Outline(SimplePolygon outer, params SimplePolygon[] openings)
    {
        OpeningCount = openings.Length;
        _sides = new OutlineSide[outer.Count + openings.Sum(o => o.Count)];
        int count = 0;
        Add(outer, 0, isOpening: false);
        for (int i = 0; i < openings.Length; i++)
        {
            Add(openings[i], i + 1, isOpening: true);
        }

        Bounds = Layouts.ExtentOf(outer.Xs, outer.Ys);
        Tolerance = Geometry.Tolerance.Relative * SimplePolygon.Size(outer.Xs, outer.Ys);
        Moments = AreaMoments.Of(_sides);

        void Add(SimplePolygon ring, int number, bool isOpening)
        {
            for (int i = 0; i < ring.Count; i++)
            {
                int next = (i + 1) % ring.Count;
                _sides[count++] = isOpening
                    ? new(ring.Xs[next], ring.Ys[next], ring.Xs[i], ring.Ys[i], number, ring.Numbers[i])
                    : new(ring.Xs[i], ring.Ys[i], ring.Xs[next], ring.Ys[next], number, ring.Numbers[i]);
            }
        }
    }

    /// <summary>All sides, ring by ring. A side is known by its place here.</summary>
    public ReadOnlySpan<OutlineSide> Sides => _sides;

    public int OpeningCount { get; }

    /// <summary>The rectangle about the concrete.</summary>
    public Rectangle Bounds { get; }

    /// <summary>The length below which two places are the same: 1e-9 of the size of the outline.</summary>
    public double Tolerance { get; }

    /// <summary>Area and moments of the concrete surface, without the openings.</summary>
    public AreaMoments Moments { get; }

    /// <summary>
    /// Whether a point lies in the concrete. On a side, or within <see cref="Tolerance"/> of one, it does not.
    /// </summary>
    /// <remarks>Counts how many sides lie above the point: an odd number above a place in the concrete. A vertex above belongs to one of its sides.</remarks>
    public bool Contains(double x, double y)
    {
        bool isOdd = false;
        foreach (ref readonly OutlineSide side in Sides)
        {
            if ((side.StartX > x) != (side.EndX > x)
                && (Segments.Cross(side.EndX - side.StartX, side.EndY - side.StartY, x - side.StartX, y - side.StartY) < 0) == (side.EndX > side.StartX))
            {
                isOdd = !isOdd;
            }
        }

        return isOdd && DistanceFrom(x, y) > Tolerance;
    }

    /// <summary>Distance of a point from the nearest side, whether it lies in the concrete or not.</summary>
    public double DistanceFrom(double x, double y)
    {
        double nearest = double.PositiveInfinity;
        foreach (ref readonly OutlineSide side in Sides)
        {
            nearest = Math.Min(nearest, side.DistanceFrom(x, y));
        }

        return nearest;
    }
}
