using ConcreteAttach.Geometry;

namespace ConcreteAttach.Presentation.Drawings;

/// <summary>From the surface (y up, units of the method) to the page (y down, pixels).</summary>
internal readonly record struct PlanScale(double PixelsPerUnit, double Left, double Top)
{
    /// <summary>Shows a part of the surface within a width and a height of the page, its upper left corner at 0, 0.</summary>
    public static PlanScale Fit(in Rectangle window, double width, double height) =>
        new(Math.Min(width / window.Width, height / window.Height), window.Left, window.Top);

    public double X(double x) => (x - Left) * PixelsPerUnit;

    public double Y(double y) => (Top - y) * PixelsPerUnit;

    public PagePoint At(double x, double y) => new(X(x), Y(y));

    public PagePoint[] At(IEnumerable<SurfacePoint> points)
    {
        PlanScale scale = this;
        return [.. points.Select(p => scale.At(p.X, p.Y))];
    }
}
