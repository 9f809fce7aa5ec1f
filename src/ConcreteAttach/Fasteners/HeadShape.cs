using System.Globalization;
using ConcreteAttach.Quantities;
using UnitsNet;

namespace ConcreteAttach.Fasteners;

/// <summary>What bears against the concrete at the embedded end: the head of a bolt or stud, or a nut. See <see cref="HeadTable"/>.</summary>
public enum HeadShape
{
    /// <summary>Hex bolt head: ASME B18.2.1 in inch sizes, ISO 4014 / ISO 4017 in metric sizes.</summary>
    Hex,

    /// <summary>Heavy hex bolt head, ASME B18.2.1.</summary>
    HeavyHex,

    /// <summary>Square bolt head, ASME B18.2.1.</summary>
    Square,

    /// <summary>Round head of a headed stud, AWS D1.1.</summary>
    StudHead,

    /// <summary>Hex nut: ASME B18.2.2 in inch sizes, ISO 4032 in metric sizes.</summary>
    HexNut,

    /// <summary>Heavy hex nut, ASME B18.2.2.</summary>
    HeavyHexNut,
}

/// <summary>Sizes of heads and nuts, and their net bearing areas A_brg.</summary>
/// <remarks>
/// <para>
/// A_brg is the area of the head less the gross area of the shank (ACI 318-19 chapter 2, net bearing area of the head). The head counts
/// with its basic width: hexagon √3/2 F², square F², circle π d²/4; chamfers, washer faces and the minimum width are left out, as in the
/// tables that are commonly printed in concrete design notes. A heavy hex nut of minimum width has 6 to 10 % less.
/// Widths are the exact sixteenths behind the three-decimal print: 1.062 is 1-1/16.
/// </para>
/// <para>
/// Widths of heavy hex nuts: read in secondary listings of ASME B18.2.2. All other widths, and all heights but those of heavy hex nuts,
/// are from memory.
/// </para>
/// </remarks>
public static class HeadTable
{
    private const string FromMemory = ", widths and heights from memory";

    /// <summary>Diameter, width across flats and height of the head, in inches.</summary>
    private static readonly Size[] HexHeads =
    [
        new(1d / 4, 7d / 16, 11d / 64), new(5d / 16, 1d / 2, 7d / 32), new(3d / 8, 9d / 16, 1d / 4), new(7d / 16, 5d / 8, 19d / 64),
        new(1d / 2, 3d / 4, 11d / 32), new(9d / 16, 13d / 16, 23d / 64), new(5d / 8, 15d / 16, 27d / 64), new(3d / 4, 1 + (1d / 8), 1d / 2),
        new(7d / 8, 1 + (5d / 16), 37d / 64), new(1, 1 + (1d / 2), 43d / 64),
        new(1 + (1d / 8), 1 + (11d / 16), 3d / 4), new(1 + (1d / 4), 1 + (7d / 8), 27d / 32), new(1 + (3d / 8), 2 + (1d / 16), 29d / 32),
        new(1 + (1d / 2), 2 + (1d / 4), 1), new(1 + (3d / 4), 2 + (5d / 8), 1 + (5d / 32)), new(2, 3, 1 + (11d / 32)),
        new(2 + (1d / 4), 3 + (3d / 8), 1 + (1d / 2)), new(2 + (1d / 2), 3 + (3d / 4), 1 + (21d / 32)),
        new(2 + (3d / 4), 4 + (1d / 8), 1 + (13d / 16)), new(3, 4 + (1d / 2), 2),
        new(3 + (1d / 4), 4 + (7d / 8), 2 + (3d / 16)), new(3 + (1d / 2), 5 + (1d / 4), 2 + (5d / 16)),
        new(3 + (3d / 4), 5 + (5d / 8), 2 + (1d / 2)), new(4, 6, 2 + (11d / 16)),
    ];

    private static readonly Size[] SquareHeads =
    [
        new(1d / 4, 3d / 8, 11d / 64), new(5d / 16, 1d / 2, 13d / 64), new(3d / 8, 9d / 16, 1d / 4), new(7d / 16, 5d / 8, 19d / 64),
        new(1d / 2, 3d / 4, 21d / 64), new(5d / 8, 15d / 16, 27d / 64), new(3d / 4, 1 + (1d / 8), 1d / 2), new(7d / 8, 1 + (5d / 16), 19d / 32),
        new(1, 1 + (1d / 2), 21d / 32), new(1 + (1d / 8), 1 + (11d / 16), 3d / 4), new(1 + (1d / 4), 1 + (7d / 8), 27d / 32),
        new(1 + (3d / 8), 2 + (1d / 16), 29d / 32), new(1 + (1d / 2), 2 + (1d / 4), 1),
    ];

    private static readonly Size[] HexNuts =
    [
        new(1d / 4, 7d / 16, 7d / 32), new(5d / 16, 1d / 2, 17d / 64), new(3d / 8, 9d / 16, 21d / 64), new(7d / 16, 11d / 16, 3d / 8),
        new(1d / 2, 3d / 4, 7d / 16), new(9d / 16, 7d / 8, 31d / 64), new(5d / 8, 15d / 16, 35d / 64), new(3d / 4, 1 + (1d / 8), 41d / 64),
        new(7d / 8, 1 + (5d / 16), 3d / 4), new(1, 1 + (1d / 2), 55d / 64), new(1 + (1d / 8), 1 + (11d / 16), 31d / 32),
        new(1 + (1d / 4), 1 + (7d / 8), 1 + (1d / 16)), new(1 + (3d / 8), 2 + (1d / 16), 1 + (11d / 64)), new(1 + (1d / 2), 2 + (1d / 4), 1 + (9d / 32)),
    ];

    /// <summary>F is 1.5 d + 1/8 in. in all sizes but 5/16, 7/16 and 9/16 in., where it is 1/32 in. less.</summary>
    private static readonly Size[] HeavyHexNuts =
    [
        new(1d / 4, 1d / 2, 15d / 64), new(5d / 16, 9d / 16, 19d / 64), new(3d / 8, 11d / 16, 23d / 64), new(7d / 16, 3d / 4, 27d / 64),
        new(1d / 2, 7d / 8, 31d / 64), new(9d / 16, 15d / 16, 35d / 64), new(5d / 8, 1 + (1d / 16), 39d / 64), new(3d / 4, 1 + (1d / 4), 47d / 64),
        new(7d / 8, 1 + (7d / 16), 55d / 64), new(1, 1 + (5d / 8), 63d / 64),
        new(1 + (1d / 8), 1 + (13d / 16), 1 + (7d / 64)), new(1 + (1d / 4), 2, 1 + (7d / 32)), new(1 + (3d / 8), 2 + (3d / 16), 1 + (11d / 32)),
        new(1 + (1d / 2), 2 + (3d / 8), 1 + (15d / 32)), new(1 + (5d / 8), 2 + (9d / 16), 1 + (19d / 32)), new(1 + (3d / 4), 2 + (3d / 4), 1 + (23d / 32)),
        new(1 + (7d / 8), 2 + (15d / 16), 1 + (27d / 32)), new(2, 3 + (1d / 8), 1 + (31d / 32)),
        new(2 + (1d / 4), 3 + (1d / 2), 2 + (13d / 64)), new(2 + (1d / 2), 3 + (7d / 8), 2 + (29d / 64)), new(2 + (3d / 4), 4 + (1d / 4), 2 + (45d / 64)),
        new(3, 4 + (5d / 8), 2 + (61d / 64)), new(3 + (1d / 4), 5, 3 + (3d / 16)), new(3 + (1d / 2), 5 + (3d / 8), 3 + (7d / 16)),
        new(3 + (3d / 4), 5 + (3d / 4), 3 + (11d / 16)), new(4, 6 + (1d / 8), 3 + (15d / 16)),
    ];

    /// <summary>
    /// A heavy hex bolt head has the width of the heavy hex nut and the height of the hex head; ASME B18.2.1 has it from 1/2 to 3 in.
    /// </summary>
    private static readonly Size[] HeavyHexHeads = Array.ConvertAll(
        Array.FindAll(HexHeads, head => head.Diameter is >= 0.5 and <= 3 and not 0.5625),
        head => head with { Width = Array.Find(HeavyHexNuts, nut => nut.Diameter == head.Diameter).Width });

    /// <summary>Shank, head diameter and least head height in inches. The 1/4 in. stud is not in the figure of AWS D1.1 but in general use.</summary>
    private static readonly Size[] StudHeads =
    [
        new(1d / 4, 1d / 2, 3d / 16), new(3d / 8, 3d / 4, 9d / 32), new(1d / 2, 1, 9d / 32), new(5d / 8, 1 + (1d / 4), 9d / 32),
        new(3d / 4, 1 + (1d / 4), 3d / 8), new(7d / 8, 1 + (3d / 8), 3d / 8), new(1, 1 + (5d / 8), 1d / 2),
    ];

    /// <summary>Diameter, width across flats s and nominal head height k, in millimetres.</summary>
    private static readonly Size[] IsoHexHeads =
    [
        new(5, 8, 3.5), new(6, 10, 4), new(8, 13, 5.3), new(10, 16, 6.4), new(12, 18, 7.5), new(14, 21, 8.8), new(16, 24, 10), new(18, 27, 11.5),
        new(20, 30, 12.5), new(22, 34, 14), new(24, 36, 15), new(27, 41, 17), new(30, 46, 18.7), new(33, 50, 21), new(36, 55, 22.5), new(39, 60, 25),
        new(42, 65, 26), new(45, 70, 28), new(48, 75, 30), new(52, 80, 33), new(56, 85, 35), new(60, 90, 38), new(64, 95, 40),
    ];

    /// <summary>Greatest height m of the ISO hex nut by diameter, in millimetres; its width across flats is that of the bolt head.</summary>
    private static readonly (double Diameter, double Height)[] IsoHexNutHeights =
    [
        (5, 4.7), (6, 5.2), (8, 6.8), (10, 8.4), (12, 10.8), (14, 12.8), (16, 14.8), (18, 15.8), (20, 18), (22, 19.4), (24, 21.5), (27, 23.8),
        (30, 25.6), (33, 28.7), (36, 31), (39, 33.4), (42, 34), (45, 36), (48, 38), (52, 42), (56, 45), (60, 48), (64, 51),
    ];

    private static readonly Size[] IsoHexNuts = Array.ConvertAll(
        IsoHexHeads, head => head with { Height = Array.Find(IsoHexNutHeights, nut => nut.Diameter == head.Diameter).Height });

    private static readonly Table[] Tables =
    [
        new(HeadShape.Hex, MeasurementSystem.PoundInch, HexHeads, "ASME B18.2.1", "hex bolts; 9/16 in. from hex cap screws" + FromMemory),
        new(HeadShape.Hex, MeasurementSystem.NewtonMillimetre, IsoHexHeads, "ISO 4014 / ISO 4017", "product grades A and B" + FromMemory),
        new(HeadShape.HeavyHex, MeasurementSystem.PoundInch, HeavyHexHeads, "ASME B18.2.1", "heavy hex bolts" + FromMemory),
        new(HeadShape.Square, MeasurementSystem.PoundInch, SquareHeads, "ASME B18.2.1", "square bolts" + FromMemory),
        new(HeadShape.StudHead, MeasurementSystem.PoundInch, StudHeads, "AWS D1.1",
            "dimensions of headed studs (Figure 7.1, Figure 9.1 in the 2020 edition); 1/4 in. is common practice, no source" + FromMemory),
        new(HeadShape.HexNut, MeasurementSystem.PoundInch, HexNuts, "ASME B18.2.2", "hex nuts" + FromMemory),
        new(HeadShape.HexNut, MeasurementSystem.NewtonMillimetre, IsoHexNuts, "ISO 4032", "hex nuts, style 1" + FromMemory),
        new(HeadShape.HeavyHexNut, MeasurementSystem.PoundInch, HeavyHexNuts, "ASME B18.2.2",
            "heavy hex nuts, widths and heights read in secondary listings; 1-7/8 in. from memory"),
    ];

    /// <summary>
    /// Net bearing area A_brg: head or nut of basic width, less the gross shank area. In square inches or square millimetres as the table
    /// is printed, not rounded. Null where the table has no such size.
    /// </summary>
    /// <param name="shape">The head or nut.</param>
    /// <param name="diameter">Nominal diameter; matched within 1e-6 of its size.</param>
    /// <exception cref="InputException">No such shape.</exception>
    public static Area? BearingArea(HeadShape shape, Length diameter) =>
        Find(shape, diameter) is { } head ? PrintedUnits.Area(head.Area - NominalDiameter.CircleArea(head.Diameter), head.System) : null;

    /// <summary>Basic width across flats, for a stud the diameter of the head. Null where the table has no such size.</summary>
    /// <param name="shape">The head or nut.</param>
    /// <param name="diameter">Nominal diameter; matched within 1e-6 of its size.</param>
    /// <exception cref="InputException">No such shape.</exception>
    public static Length? Width(HeadShape shape, Length diameter) =>
        Find(shape, diameter) is { } head ? PrintedUnits.Length(head.Width, head.System) : null;

    /// <summary>
    /// Height of the head or nut: the basic height of inch heads and nuts, the nominal height of ISO heads, the greatest of ISO nuts, the
    /// least of studs. Null where the table has no such size.
    /// </summary>
    /// <param name="shape">The head or nut.</param>
    /// <param name="diameter">Nominal diameter; matched within 1e-6 of its size.</param>
    /// <exception cref="InputException">No such shape.</exception>
    public static Length? Height(HeadShape shape, Length diameter) =>
        Find(shape, diameter) is { } head ? PrintedUnits.Length(head.Height, head.System) : null;

    /// <summary>The standard that has this size, such as <c>ASME B18.2.1</c>. Null where the table has no such size.</summary>
    /// <param name="shape">The head or nut.</param>
    /// <param name="diameter">Nominal diameter; matched within 1e-6 of its size.</param>
    /// <exception cref="InputException">No such shape.</exception>
    public static string? Standard(HeadShape shape, Length diameter) => Find(shape, diameter)?.Standard;

    /// <summary>
    /// Standard and table that have this size, and whether they were read or are from memory. Null where the table has no such size.
    /// </summary>
    /// <param name="shape">The head or nut.</param>
    /// <param name="diameter">Nominal diameter; matched within 1e-6 of its size.</param>
    /// <exception cref="InputException">No such shape.</exception>
    public static string? Source(HeadShape shape, Length diameter) => Find(shape, diameter) is { } head ? $"{head.Standard}, {head.Provenance}" : null;

    /// <summary>Name of a shape in a sentence, such as <c>heavy hex nut</c>.</summary>
    /// <param name="shape">The head or nut.</param>
    /// <exception cref="InputException">No such shape.</exception>
    public static string NameOf(HeadShape shape) => shape switch
    {
        HeadShape.Hex => "hex head",
        HeadShape.HeavyHex => "heavy hex head",
        HeadShape.Square => "square head",
        HeadShape.StudHead => "stud head",
        HeadShape.HexNut => "hex nut",
        HeadShape.HeavyHexNut => "heavy hex nut",
        _ => throw new InputException(nameof(shape), Number((int)shape), string.Join(", ", Array.ConvertAll(Enum.GetValues<HeadShape>(), NameOf))),
    };

    /// <summary>The shape, if it is one of those that a kind of fastener can have.</summary>
    /// <exception cref="InputException">Another shape.</exception>
    internal static HeadShape RequireOneOf(string parameter, HeadShape value, params HeadShape[] permitted) =>
        Array.IndexOf(permitted, value) >= 0
            ? value
            : throw new InputException(
                parameter, Enum.IsDefined(value) ? NameOf(value) : Number((int)value), string.Join(", ", Array.ConvertAll(permitted, NameOf)));

    /// <summary>The table row of a head. Null where the table has no such size.</summary>
    internal static HeadSize? Find(HeadShape shape, Length diameter)
    {
        _ = NameOf(shape);
        foreach (Table table in Tables)
        {
            if (table.Shape != shape)
            {
                continue;
            }

            double plain = diameter.In(table.System);
            foreach (Size size in table.Sizes)
            {
                if (NominalDiameter.Is(size.Diameter, plain))
                {
                    return new HeadSize(size.Diameter, size.Width, size.Height, AreaOf(shape, size.Width), table.System, table.Standard, table.Provenance);
                }
            }
        }

        return null;
    }

    private static double AreaOf(HeadShape shape, double width) => shape switch
    {
        HeadShape.Square => width * width,
        HeadShape.StudHead => NominalDiameter.CircleArea(width),
        _ => Math.Sqrt(3) / 2 * width * width,
    };

    private static string Number(int value) => value.ToString(CultureInfo.InvariantCulture);

    private readonly record struct Size(double Diameter, double Width, double Height);

    private sealed record Table(HeadShape Shape, MeasurementSystem System, Size[] Sizes, string Standard, string Provenance);
}

/// <summary>One row of <see cref="HeadTable"/> in plain numbers of its unit system. <c>Area</c> is that of the whole head, shank included.</summary>
internal readonly record struct HeadSize(
    double Diameter, double Width, double Height, double Area, MeasurementSystem System, string Standard, string Provenance);
