namespace ConcreteAttach.Geometry;

/// <summary>A part of a side that a fastener sees.</summary>
/// <param name="Side">The side, by its place in the outline.</param>
/// <param name="StartX">Where the part begins, going along the side.</param>
/// <param name="StartY">Where the part begins.</param>
/// <param name="EndX">Where it ends.</param>
/// <param name="EndY">Where it ends.</param>
/// <param name="Distance">Distance of the fastener from the part.</param>
internal readonly record struct SeenPart(int Side, double StartX, double StartY, double EndX, double EndY, double Distance);

/// <summary>
/// The concrete that a fastener sees: all places that a straight line through concrete joins with it. A ray of a breakout cone ends where it leaves the
/// concrete, so nothing behind an opening, a slot or a re-entrant corner belongs to the breakout.
/// </summary>
/// <remarks>
/// <para>
/// The view changes only in the directions of vertices. Between two neighbouring directions one side is the nearest, and of the wedge the fastener sees the
/// triangle before that side. The triangles make a polygon about the fastener: its edges are parts of sides, and the edges of shadows, which run straight
/// away from the fastener where it sees past a corner.
/// </para>
/// <para>
/// No two directions are told apart by a tolerance: a wedge of the width of a rounding has an area of that order, whichever side is taken for its nearest. Only a
/// part narrower than 1e-9 rad is not counted as seen: it may be a side that the fastener sees edge-on, on the line through it.
/// </para>
/// <para>Time grows with the square of the number of sides; it is spent once for each fastener of an attachment.</para>
/// </remarks>
internal sealed class SeenConcrete
{
    private const double NarrowestPart = 1e-9;

    private readonly double[] _xs;
    private readonly double[] _ys;
    private readonly bool[] _isShadow;
    private readonly SeenPart[] _parts;

    private SeenConcrete(double x, double y, List<Corner> corners, SeenPart[] parts)
    {
        X = x;
        Y = y;
        _xs = [.. corners.Select(c => c.X)];
        _ys = [.. corners.Select(c => c.Y)];
        _isShadow = [.. corners.Select(c => c.StartsShadow)];
        _parts = parts;
    }

    /// <summary>Place of the fastener.</summary>
    public double X { get; }

    /// <summary>Place of the fastener.</summary>
    public double Y { get; }

    /// <summary>The polygon of what is seen, counter-clockwise; empty for a fastener that does not stand in the concrete.</summary>
    public ReadOnlySpan<double> Xs => _xs;

    /// <summary>The polygon of what is seen.</summary>
    public ReadOnlySpan<double> Ys => _ys;

    /// <summary>For each vertex of the polygon: whether the edge that begins there is the edge of a shadow and not a part of a side.</summary>
    public ReadOnlySpan<bool> IsShadow => _isShadow;

    /// <summary>The parts of sides that are seen, in the order in which they lie about the fastener.</summary>
    public ReadOnlySpan<SeenPart> Parts => _parts;

    /// <summary>What a fastener at (<paramref name="x"/>, <paramref name="y"/>) sees of an outline.</summary>
    public static SeenConcrete From(Outline outline, double x, double y)
    {
        if (!outline.Contains(x, y))
        {
            return new(x, y, [], []);
        }

        Direction[] directions = DirectionsOf(outline, x, y);
        List<Stretch> stretches = Stretches(outline, x, y, directions);
        var corners = new List<Corner>(2 * stretches.Count);
        var parts = new List<SeenPart>(stretches.Count);
        foreach (Stretch stretch in stretches)
        {
            ref readonly OutlineSide side = ref outline.Sides[stretch.Side];
            Direction from = directions[stretch.From];
            Direction to = directions[stretch.To];
            (double startX, double startY) = PlaceOn(side, x, y, from);
            (double endX, double endY) = PlaceOn(side, x, y, to);
            Add(corners, startX, startY);
            corners.Add(new(endX, endY, StartsShadow: true)); // until the next stretch begins at the same place
            if (Segments.Cross(from.X, from.Y, to.X, to.Y) > NarrowestPart * from.Length * to.Length || IsWide(from, to))
            {
                parts.Add(new(stretch.Side, startX, startY, endX, endY, DistanceOf(outline, side, x, y, startX, startY, endX, endY)));
            }
        }

        Close(corners);
        return new(x, y, corners, [.. parts]);
    }

    private static bool IsWide(in Direction from, in Direction to) => (from.X * to.X) + (from.Y * to.Y) < 0;

    /// <summary>The start of a stretch: the end of the one before it, or beyond the edge of a shadow.</summary>
    private static void Add(List<Corner> corners, double x, double y)
    {
        if (corners.Count > 0 && corners[^1].X == x && corners[^1].Y == y)
        {
            corners.RemoveAt(corners.Count - 1);
        }

        corners.Add(new(x, y, StartsShadow: false));
    }

    /// <summary>The last corner of all, which may be the first.</summary>
    private static void Close(List<Corner> corners)
    {
        if (corners[^1].X == corners[0].X && corners[^1].Y == corners[0].Y)
        {
            corners.RemoveAt(corners.Count - 1);
        }
    }

    /// <summary>
    /// The directions of all vertices, counter-clockwise, and of the axes, so that no wedge is wider than a right angle.
    /// </summary>
    private static Direction[] DirectionsOf(Outline outline, double x, double y)
    {
        var directions = new List<Direction>(outline.Sides.Length + 4) { new(1, 0), new(0, 1), new(-1, 0), new(0, -1) };
        for (int i = 0; i < outline.Sides.Length; i++)
        {
            directions.Add(new(outline.Sides[i].StartX - x, outline.Sides[i].StartY - y));
        }

        return [.. directions.OrderBy(d => Math.Atan2(d.Y, d.X))];
    }

    /// <summary>For each wedge its nearest side; wedges beside each other that see the same side are one stretch.</summary>
    private static List<Stretch> Stretches(Outline outline, double x, double y, Direction[] directions)
    {
        var stretches = new List<Stretch>();
        for (int i = 0; i < directions.Length; i++)
        {
            int next = (i + 1) % directions.Length;
            Direction from = directions[i];
            Direction to = directions[next];
            double middleX = (from.X / from.Length) + (to.X / to.Length);
            double middleY = (from.Y / from.Length) + (to.Y / to.Length);
            int side = NearestSide(outline, x, y, middleX, middleY);
            if (stretches.Count > 0 && stretches[^1].Side == side)
            {
                stretches[^1] = stretches[^1] with { To = next };
            }
            else
            {
                stretches.Add(new(side, i, next));
            }
        }

        if (stretches[^1].Side == stretches[0].Side)
        {
            stretches[0] = stretches[0] with { From = stretches[^1].From };
            stretches.RemoveAt(stretches.Count - 1);
        }

        return stretches;
    }

    /// <summary>The side that a ray meets first. There is one, since the ray starts in the concrete.</summary>
    private static int NearestSide(Outline outline, double x, double y, double directionX, double directionY)
    {
        int nearest = 0;
        double shortest = double.PositiveInfinity;
        for (int i = 0; i < outline.Sides.Length; i++)
        {
            ref readonly OutlineSide side = ref outline.Sides[i];
            double startX = side.StartX - x;
            double startY = side.StartY - y;

            // Two sides that share a vertex see it on the same side of the ray: no ray passes between them.
            if ((Segments.Cross(directionX, directionY, startX, startY) > 0)
                == (Segments.Cross(directionX, directionY, side.EndX - x, side.EndY - y) > 0))
            {
                continue;
            }

            double alongX = side.EndX - side.StartX;
            double alongY = side.EndY - side.StartY;
            double distance = Segments.Cross(startX, startY, alongX, alongY) / Segments.Cross(directionX, directionY, alongX, alongY);
            if (distance > 0 && distance < shortest)
            {
                shortest = distance;
                nearest = i;
            }
        }

        return nearest;
    }

    /// <summary>Where a direction meets a side; its own vertex to the last bit where the direction is that of one.</summary>
    private static (double X, double Y) PlaceOn(in OutlineSide side, double x, double y, in Direction direction)
    {
        if (direction.X == side.StartX - x && direction.Y == side.StartY - y)
        {
            return (side.StartX, side.StartY);
        }

        if (direction.X == side.EndX - x && direction.Y == side.EndY - y)
        {
            return (side.EndX, side.EndY);
        }

        double alongX = side.EndX - side.StartX;
        double alongY = side.EndY - side.StartY;
        double share = Segments.Cross(side.StartX - x, side.StartY - y, direction.X, direction.Y)
            / Segments.Cross(direction.X, direction.Y, alongX, alongY);
        share = double.IsNaN(share) ? 0 : Math.Clamp(share, 0, 1); // a wedge of the width of a rounding
        return (side.StartX + (share * alongX), side.StartY + (share * alongY));
    }

    /// <summary>Perpendicular where the foot lies on the part, else to the nearer of its ends.</summary>
    private static double DistanceOf(
        Outline outline, in OutlineSide side, double x, double y, double startX, double startY, double endX, double endY)
    {
        double foot = side.FootOf(x, y);
        bool isBeside = foot >= side.FootOf(startX, startY) - outline.Tolerance && foot <= side.FootOf(endX, endY) + outline.Tolerance;
        return isBeside
            ? side.DistanceFromLine(x, y)
            : Math.Min(Segments.Size(startX - x, startY - y), Segments.Size(endX - x, endY - y));
    }

    /// <summary>A direction in which the view may change.</summary>
    private readonly record struct Direction(double X, double Y)
    {
        public double Length { get; } = Segments.Size(X, Y);
    }

    /// <summary>Neighbouring wedges with one nearest side.</summary>
    private readonly record struct Stretch(int Side, int From, int To);

    private readonly record struct Corner(double X, double Y, bool StartsShadow);
}
