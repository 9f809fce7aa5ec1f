namespace ConcreteAttach.Presentation.Drawings;

/// <summary>A rectangle on the page: x to the right, y down.</summary>
internal readonly record struct Box(double Left, double Top, double Right, double Bottom)
{
    public double Width => Right - Left;

    public double Height => Bottom - Top;

    public bool Overlaps(in Box other) => Left < other.Right && other.Left < Right && Top < other.Bottom && other.Top < Bottom;

    public Box Grown(double by) => new(Left - by, Top - by, Right + by, Bottom + by);

    public static Box About(double x, double y, double radius) => new(x - radius, y - radius, x + radius, y + radius);
}

/// <summary>A point on the page.</summary>
internal readonly record struct PagePoint(double X, double Y);

/// <summary>Which end of a text stands at its point.</summary>
internal enum Anchor
{
    Start,
    Middle,
    End,
}

/// <summary>A place that a label may take.</summary>
internal readonly record struct Place(double X, double Y, Anchor Anchor = Anchor.Middle);
