namespace ConcreteAttach.Geometry;

/// <summary>
/// The surface of a concrete member in one unit of length: a polygon with openings, as <see cref="SurfaceOutline"/> has checked it. Immutable.
/// </summary>
internal sealed class Outline
{
    private readonly OutlineSide[] _sides;
    private readonly bool[] _startsReentrant;
    private readonly bool[] _endsReentrant;

    public Outline(SimplePolygon outer, params SimplePolygon[] openings)
    {
        OpeningCount = openings.Length;
        _sides = new OutlineSide[outer.Count + openings.Sum(o => o.Count)];
        _startsReentrant = new bool[_sides.Length];
        _endsReentrant = new bool[_sides.Length];
        int count = 0;
        Add(outer, 0, isOpening: false);
        for (int i = 0; i < openings.Length; i++)
        {
            Add(openings[i], i + 1, isOpening: true);
        }

        Bounds = Layouts.ExtentOf(outer.Xs, outer.Ys);
        Tolerance = Geometry.Tolerance.Relative * SimplePolygon.Size(outer.Xs, outer.Ys);
        Moments = AreaMoments.Of(_sides);
        MarkReentrantCorners();

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

    /// <summary>Whether it is a rectangle parallel to the axes without openings: its <see cref="Bounds"/>.</summary>
    public bool IsRectangle
    {
        get
        {
            foreach (ref readonly OutlineSide side in Sides)
            {
                if (!IsAt(side.StartX, Bounds.Left, Bounds.Right) || !IsAt(side.StartY, Bounds.Bottom, Bounds.Top))
                {
                    return false;
                }
            }

            return OpeningCount == 0 && Sides.Length == 4;

            bool IsAt(double place, double low, double high) => place - low <= Tolerance || high - place <= Tolerance;
        }
    }

    /// <summary>Whether a side starts at a re-entrant corner: then its line goes on through concrete.</summary>
    public bool StartsReentrant(int side) => _startsReentrant[side];

    /// <summary>Whether a side ends at a re-entrant corner.</summary>
    public bool EndsReentrant(int side) => _endsReentrant[side];

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

    /// <summary>The side that is nearest to a point.</summary>
    public ref readonly OutlineSide NearestSide(double x, double y)
    {
        int nearest = 0;
        for (int i = 1; i < _sides.Length; i++)
        {
            nearest = _sides[i].DistanceFrom(x, y) < _sides[nearest].DistanceFrom(x, y) ? i : nearest;
        }

        return ref _sides[nearest];
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

    /// <summary>Concrete lies to the left of every side, so a corner is re-entrant where the boundary turns to the right.</summary>
    private void MarkReentrantCorners()
    {
        for (int i = 0; i < _sides.Length; i++)
        {
            (double x, double y) = (_sides[i].EndX, _sides[i].EndY);
            int next = Array.FindIndex(_sides, s => s.StartX == x && s.StartY == y);
            bool turnsRight = Segments.Cross(x - _sides[i].StartX, y - _sides[i].StartY, _sides[next].EndX - x, _sides[next].EndY - y) < 0;
            _endsReentrant[i] = turnsRight;
            _startsReentrant[next] = turnsRight;
        }
    }
}
