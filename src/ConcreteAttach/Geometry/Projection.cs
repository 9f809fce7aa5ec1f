namespace ConcreteAttach.Geometry;

/// <summary>
/// A projected area. Where the area fills its bounds it is a rectangle, can be printed as width × height, and
/// <see cref="Area"/> is that product to the last bit.
/// </summary>
/// <param name="Area">Area of the union, cut at the edges of the concrete.</param>
/// <param name="Bounds">The smallest rectangle about the area; all zero where the area is empty.</param>
/// <param name="IsRectangle">Whether the area fills its bounds, within 1e-9 of their area.</param>
internal readonly record struct Projection(double Area, Rectangle Bounds, bool IsRectangle);
