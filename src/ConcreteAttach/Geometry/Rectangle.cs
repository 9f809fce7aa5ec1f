namespace ConcreteAttach.Geometry;

/// <summary>
/// A rectangle parallel to the axes, in any one unit of length. The surface of the concrete is such a rectangle; a side
/// where the concrete has no edge is infinitely far away.
/// </summary>
internal readonly record struct Rectangle(double Left, double Right, double Bottom, double Top)
{
    /// <summary>Concrete without an edge.</summary>
    public static Rectangle Unbounded { get; } = new(
        double.NegativeInfinity, double.PositiveInfinity, double.NegativeInfinity, double.PositiveInfinity);

    /// <summary>Length along x.</summary>
    public double Width => Right - Left;

    /// <summary>Length along y.</summary>
    public double Height => Top - Bottom;

    /// <summary>Width × height.</summary>
    public double Area => Width * Height;
}
