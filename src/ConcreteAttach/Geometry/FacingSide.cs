using ConcreteAttach.Calculation;

namespace ConcreteAttach.Geometry;

/// <summary>
/// A side of the concrete that a fastener faces: the side toward which it may break out in shear.
/// </summary>
/// <remarks>
/// <para>
/// A fastener faces a side if the foot of the perpendicular lies on the side and the straight line to it runs through concrete. A foot at an end of the side,
/// within the tolerance of the outline, lies on it: the breakout is then checked with no concrete beyond, rather than not at all. A line that only touches
/// a corner runs through concrete.
/// </para>
/// <para>
/// Beyond a re-entrant corner the line of the side goes on through concrete. The side is taken to go on with it, as if all concrete beyond the line were taken away, which
/// can only lower the strength. So a fastener whose foot lies beyond such a corner faces the side as well, if the breakout toward the line, 1.5 c_a1 wide to
/// both hands of the foot, would reach the side and concrete joins the two.
/// </para>
/// <para>
/// The way to a side edge (c_a2) is measured along the side, from the foot to where concrete ends on the strip between the fastener and the line of the side: at
/// a convex end of the side, or before it at what the fastener sees there. So a corner of less than a right angle, which comes nearer with the distance from the side,
/// counts with its distance at the level of the fastener, and an opening beside the fastener counts as a side edge. At a corner of more than a
/// right angle the concrete beyond the end of the side is left out: the code's breakout body spreads to a straight edge, and what
/// lies beyond the bend only adds to it. All of this makes c_a2 smaller or leaves it: on the safe side.
/// </para>
/// </remarks>
/// <param name="Faces">Whether the fastener faces the side; else the rest is 0.</param>
/// <param name="Distance">c_a1: the perpendicular distance.</param>
/// <param name="Foot">Where the foot lies, from the start of the side; beyond its ends only past a re-entrant corner.</param>
/// <param name="TowardStart">c_a2 toward the start of the side.</param>
/// <param name="TowardEnd">c_a2 toward the end of the side.</param>
internal readonly record struct FacingSide(bool Faces, double Distance, double Foot, double TowardStart, double TowardEnd)
{
    /// <summary>Half the width of a shear breakout at the edge, over its distance.</summary>
    private const double HalfWidth = 1.5;

    /// <summary>How a fastener stands to a side.</summary>
    public static FacingSide Of(Outline outline, int sideIndex, SeenConcrete seen)
    {
        ref readonly OutlineSide side = ref outline.Sides[sideIndex];
        double distance = side.DistanceFromLine(seen.X, seen.Y);
        double foot = side.FootOf(seen.X, seen.Y);
        double beyond = Math.Max(-foot, foot - side.Length);
        bool isOnSide = beyond <= outline.Tolerance;
        if (distance <= outline.Tolerance || !(isOnSide || ReachesBack(outline, sideIndex, foot, beyond, distance))
            || (IsBarred(outline, sideIndex, seen, distance, touchIsLeft: false) && IsBarred(outline, sideIndex, seen, distance, touchIsLeft: true)))
        {
            return default;
        }

        foot = isOnSide ? Math.Clamp(foot, 0, side.Length) : foot;
        double towardStart = outline.StartsReentrant(sideIndex) ? double.PositiveInfinity : foot;
        double towardEnd = outline.EndsReentrant(sideIndex) ? double.PositiveInfinity : side.Length - foot;
        foreach (ref readonly SeenPart part in seen.Parts)
        {
            if (part.Side != sideIndex)
            {
                (double least, double most) = ExtentInStrip(side, part, seen, distance, outline.Tolerance);
                bool isTowardEnd = least + most >= 0; // no part lies across the way to the foot; one that touches it may seem to by a rounding
                towardEnd = isTowardEnd ? Math.Min(towardEnd, Math.Max(0, least)) : towardEnd;
                towardStart = isTowardEnd ? towardStart : Math.Min(towardStart, Math.Max(0, -most));
            }
        }

        bool isJoined = isOnSide || (foot < 0 ? towardEnd : towardStart) >= beyond - outline.Tolerance;
        return isJoined ? new(true, distance, foot, towardStart, towardEnd) : default;
    }

    /// <summary>Whether the foot lies past a re-entrant corner, and the breakout toward the line of the side is wide enough to reach back to it.</summary>
    private static bool ReachesBack(Outline outline, int side, double foot, double beyond, double distance) =>
        (foot < 0 ? outline.StartsReentrant(side) : outline.EndsReentrant(side)) && Limit.IsBelow(beyond, HalfWidth * distance);

    /// <summary>
    /// Whether a side lies across the way to the foot. A vertex on the way counts as lying to one hand of it: where the way only touches a corner, it is free
    /// with one of the two hands; where the boundary passes through the way at a vertex, with neither.
    /// </summary>
    private static bool IsBarred(Outline outline, int facing, SeenConcrete seen, double distance, bool touchIsLeft)
    {
        double normalX = outline.Sides[facing].NormalX;
        double normalY = outline.Sides[facing].NormalY;
        for (int i = 0; i < outline.Sides.Length; i++)
        {
            ref readonly OutlineSide side = ref outline.Sides[i];
            double start = Segments.Cross(normalX, normalY, side.StartX - seen.X, side.StartY - seen.Y);
            double end = Segments.Cross(normalX, normalY, side.EndX - seen.X, side.EndY - seen.Y);
            if (i == facing || IsLeft(start) == IsLeft(end))
            {
                continue;
            }

            double startAhead = (normalX * (side.StartX - seen.X)) + (normalY * (side.StartY - seen.Y));
            double endAhead = (normalX * (side.EndX - seen.X)) + (normalY * (side.EndY - seen.Y));
            double ahead = startAhead + ((endAhead - startAhead) * Math.Clamp(start / (start - end), 0, 1));
            if (ahead > 0 && ahead < distance - outline.Tolerance)
            {
                return true;
            }
        }

        return false;

        bool IsLeft(double cross) => touchIsLeft ? cross >= -outline.Tolerance : cross > outline.Tolerance;
    }

    /// <summary>
    /// Between which places along the side, from the foot, a seen part lies in the strip; infinitely far where it does not reach into it.
    /// </summary>
    private static (double Least, double Most) ExtentInStrip(in OutlineSide side, in SeenPart part, SeenConcrete seen, double distance, double tolerance)
    {
        double foot = side.FootOf(seen.X, seen.Y);
        double startAhead = distance - side.DistanceFromLine(part.StartX, part.StartY);
        double endAhead = distance - side.DistanceFromLine(part.EndX, part.EndY);
        if (Math.Max(startAhead, endAhead) <= tolerance || Math.Min(startAhead, endAhead) >= distance - tolerance)
        {
            return (double.PositiveInfinity, double.PositiveInfinity);
        }

        double startAlong = side.FootOf(part.StartX, part.StartY) - foot;
        double endAlong = side.FootOf(part.EndX, part.EndY) - foot;
        double first = AlongInStrip(startAhead, startAlong);
        double second = AlongInStrip(endAhead, endAlong);
        return (Math.Min(first, second), Math.Max(first, second));

        // Of an end within the strip its own place, of another the place where the part enters the strip.
        double AlongInStrip(double ahead, double along)
        {
            double within = Math.Clamp(ahead, 0, distance);
            return within == ahead ? along : startAlong + ((endAlong - startAlong) * ((within - startAhead) / (endAhead - startAhead)));
        }
    }
}
