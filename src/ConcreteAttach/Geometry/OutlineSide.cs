namespace ConcreteAttach.Geometry;

/// <summary>
/// A straight side of an outline or of an opening in it. It runs so that the concrete lies to its left: counter-clockwise about the concrete, clockwise
/// about an opening.
/// </summary>
/// <param name="StartX">Where it begins.</param>
/// <param name="StartY">Where it begins.</param>
/// <param name="EndX">Where it ends.</param>
/// <param name="EndY">Where it ends.</param>
/// <param name="Ring">0: the outer boundary; k: the k-th opening.</param>
/// <param name="Number">
/// Its number in the ring as that was given: side k runs between the k-th vertex and the next, counted from 1. A side that was merged from several
/// carries the number of the first of them.
/// </param>
internal readonly record struct OutlineSide(double StartX, double StartY, double EndX, double EndY, int Ring, int Number)
{
    /// <summary>Length of the side.</summary>
    public double Length { get; } = Segments.Size(EndX - StartX, EndY - StartY);

    /// <summary>The unit normal that points out of the concrete, for an opening into it. Exactly ±1 and 0 for a side parallel to an axis.</summary>
    public double NormalX => (EndY - StartY) / Length;

    /// <summary>The other part of the normal.</summary>
    public double NormalY => (StartX - EndX) / Length;

    /// <summary>Perpendicular distance of a point from the line through the side: positive where the concrete lies, negative beyond.</summary>
    public double DistanceFromLine(double x, double y) => ((StartX - x) * NormalX) + ((StartY - y) * NormalY);

    /// <summary>Where the foot of the perpendicular from a point lies, measured along the side from its start; may lie beyond either end.</summary>
    public double FootOf(double x, double y) => ((y - StartY) * NormalX) - ((x - StartX) * NormalY);

    /// <summary>Distance of a point from the side itself.</summary>
    public double DistanceFrom(double x, double y) => Segments.Distance(StartX, StartY, EndX, EndY, x, y);
}
