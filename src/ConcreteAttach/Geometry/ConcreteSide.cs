using ConcreteAttach.Quantities;

namespace ConcreteAttach.Geometry;

/// <summary>
/// A side of the concrete: of a rectangular member the edge in the direction of an axis, of an outline the side with its number. <see cref="None"/> for a mode
/// that belongs to no side.
/// </summary>
public readonly record struct ConcreteSide
{
    private const int AlongAxis = -1;

    private readonly int _ring; // −1: along an axis; 0: the outer boundary; k: the k-th opening
    private readonly int _number;

    private ConcreteSide(int ring, int number)
    {
        _ring = ring;
        _number = number;
    }

    /// <summary>No side: the mode does not belong to an edge.</summary>
    public static ConcreteSide None => default;

    /// <summary>The edge that is met going toward +x.</summary>
    public static ConcreteSide PlusX => new(AlongAxis, 1);

    /// <summary>The edge that is met going toward −x.</summary>
    public static ConcreteSide MinusX => new(AlongAxis, 2);

    /// <summary>The edge that is met going toward +y.</summary>
    public static ConcreteSide PlusY => new(AlongAxis, 3);

    /// <summary>The edge that is met going toward −y.</summary>
    public static ConcreteSide MinusY => new(AlongAxis, 4);

    /// <summary>Number of the side in an outline or opening, from 1: side k runs between the k-th vertex and the next. 0 for the edge along an axis and for none.</summary>
    public int Number => _ring < 0 ? 0 : _number;

    /// <summary>Number of the opening that it is a side of, from 1; 0 for a side of the outer boundary, the edge along an axis and none.</summary>
    public int Opening => Math.Max(0, _ring);

    /// <summary>A side of the outer boundary of an outline.</summary>
    /// <param name="number">Its number, from 1.</param>
    /// <exception cref="InputException">A number below 1.</exception>
    public static ConcreteSide OfOutline(int number) => new(0, AtLeastOne(nameof(number), number));

    /// <summary>A side of an opening.</summary>
    /// <param name="opening">Number of the opening, from 1.</param>
    /// <param name="number">Number of its side, from 1.</param>
    /// <exception cref="InputException">A number below 1.</exception>
    public static ConcreteSide OfOpening(int opening, int number) => new(AtLeastOne(nameof(opening), opening), AtLeastOne(nameof(number), number));

    /// <summary>Its name in ids: <c>+x</c>, <c>side-3</c>, <c>opening-1-side-2</c>; empty for none.</summary>
    public override string ToString() => (_ring, _number) switch
    {
        (AlongAxis, 1) => "+x",
        (AlongAxis, 2) => "-x",
        (AlongAxis, 3) => "+y",
        (AlongAxis, 4) => "-y",
        (0, 0) => "",
        (0, _) => $"side-{QuantityText.Format(_number)}",
        _ => $"opening-{QuantityText.Format(_ring)}-side-{QuantityText.Format(_number)}",
    };

    private static int AtLeastOne(string parameter, int value) =>
        value >= 1 ? value : throw new InputException(parameter, QuantityText.Format(value), "at least 1");
}

/// <summary>What a side is called, and how lengths are measured from the edges along the axes.</summary>
internal static class ConcreteSides
{
    /// <summary>The edges of a rectangular member.</summary>
    public static readonly ConcreteSide[] All = [ConcreteSide.PlusX, ConcreteSide.MinusX, ConcreteSide.PlusY, ConcreteSide.MinusY];

    /// <summary>In words: edge +x, side 3, side 2 of opening 1; an edge for none.</summary>
    public static string Words(this ConcreteSide side) => side switch
    {
        { Opening: > 0 } => $"side {QuantityText.Format(side.Number)} of opening {QuantityText.Format(side.Opening)}",
        { Number: > 0 } => $"side {QuantityText.Format(side.Number)}",
        _ => side == ConcreteSide.None ? "an edge" : $"edge {side}",
    };

    /// <summary>Reads the name that <see cref="ConcreteSide.ToString"/> gives a side.</summary>
    public static bool TryRead(string name, out ConcreteSide side)
    {
        foreach (ConcreteSide axis in All)
        {
            if (axis.ToString() == name)
            {
                side = axis;
                return true;
            }
        }

        string[] parts = name.Split('-');
        side = parts switch
        {
            ["side", var number] when Number(number) is >= 1 and var k => ConcreteSide.OfOutline(k),
            ["opening", var opening, "side", var number] when Number(opening) is >= 1 and var o && Number(number) is >= 1 and var k => ConcreteSide.OfOpening(o, k),
            _ => ConcreteSide.None,
        };
        return side != ConcreteSide.None && side.ToString() == name;

        static int Number(string text) => int.TryParse(text, System.Globalization.NumberStyles.None, System.Globalization.CultureInfo.InvariantCulture, out int value) ? value : 0;
    }

    /// <summary>The name of a side of an outline.</summary>
    public static ConcreteSide Name(this in OutlineSide side) =>
        side.Ring == 0 ? ConcreteSide.OfOutline(side.Number) : ConcreteSide.OfOpening(side.Ring, side.Number);

    /// <summary>True for the sides that are met along x.</summary>
    public static bool IsAlongX(this ConcreteSide side) => side == ConcreteSide.PlusX || side == ConcreteSide.MinusX;

    /// <summary>+1 or −1: the sign of the axis toward the side.</summary>
    public static int Sign(this ConcreteSide side) => side == ConcreteSide.PlusX || side == ConcreteSide.PlusY ? 1 : -1;

    /// <summary>Where that edge of the concrete lies on the axis toward the side.</summary>
    public static double PlaceIn(this ConcreteSide side, in Rectangle concrete) =>
        side == ConcreteSide.PlusX ? concrete.Right
        : side == ConcreteSide.MinusX ? concrete.Left
        : side == ConcreteSide.PlusY ? concrete.Top : concrete.Bottom;
}
