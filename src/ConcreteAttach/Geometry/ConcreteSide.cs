namespace ConcreteAttach.Geometry;

/// <summary>A side of the concrete, named by the direction in which it lies from the origin.</summary>
public enum ConcreteSide
{
    /// <summary>No side: the mode does not belong to an edge.</summary>
    None,

    /// <summary>The edge that is met going toward +x.</summary>
    PlusX,

    /// <summary>The edge that is met going toward −x.</summary>
    MinusX,

    /// <summary>The edge that is met going toward +y.</summary>
    PlusY,

    /// <summary>The edge that is met going toward −y.</summary>
    MinusY,
}

/// <summary>What a side is called in ids, and how lengths are measured from it.</summary>
internal static class ConcreteSides
{
    public static readonly ConcreteSide[] All = [ConcreteSide.PlusX, ConcreteSide.MinusX, ConcreteSide.PlusY, ConcreteSide.MinusY];

    /// <summary><c>+x</c>, <c>-x</c>, <c>+y</c>, <c>-y</c>.</summary>
    public static string Name(this ConcreteSide side) => side switch
    {
        ConcreteSide.PlusX => "+x",
        ConcreteSide.MinusX => "-x",
        ConcreteSide.PlusY => "+y",
        ConcreteSide.MinusY => "-y",
        _ => "",
    };

    /// <summary>True for the sides that are met along x.</summary>
    public static bool IsAlongX(this ConcreteSide side) => side is ConcreteSide.PlusX or ConcreteSide.MinusX;

    /// <summary>+1 or −1: the sign of the axis toward the side.</summary>
    public static int Sign(this ConcreteSide side) => side is ConcreteSide.PlusX or ConcreteSide.PlusY ? 1 : -1;

    /// <summary>Where that edge of the concrete lies on the axis toward the side.</summary>
    public static double PlaceIn(this ConcreteSide side, in Rectangle concrete) => side switch
    {
        ConcreteSide.PlusX => concrete.Right,
        ConcreteSide.MinusX => concrete.Left,
        ConcreteSide.PlusY => concrete.Top,
        _ => concrete.Bottom,
    };
}
