using System.Collections.Frozen;
using System.Globalization;
using ConcreteAttach.Quantities;
using UnitsNet;

namespace ConcreteAttach.Fasteners;

/// <summary>The screw threads whose tensile stress area is known, see <see cref="ThreadTable"/>.</summary>
public enum ScrewThread
{
    /// <summary>Unified coarse thread, UNC (ASME B1.1).</summary>
    UnifiedCoarse,

    /// <summary>Unified thread with 8 threads per inch in every size, 8UN (ASME B1.1).</summary>
    Unified8,

    /// <summary>ISO metric coarse thread (ISO 261, ISO 724).</summary>
    IsoCoarse,
}

/// <summary>Sizes of the screw threads and their tensile stress areas A_se.</summary>
/// <remarks>
/// Threads per inch: ASME B1.1, from memory. Pitches: ISO 261 / ISO 724, from memory; areas up to M39 were checked against a table that
/// was read in a secondary listing of ISO 898-1.
/// </remarks>
public static class ThreadTable
{
    /// <summary>Diameter in inches and threads per inch of the unified coarse threads.</summary>
    private static readonly (double Diameter, double ThreadsPerInch)[] UnifiedCoarse =
    [
        (1d / 4, 20), (5d / 16, 18), (3d / 8, 16), (7d / 16, 14), (1d / 2, 13), (9d / 16, 12), (5d / 8, 11), (3d / 4, 10), (7d / 8, 9),
        (1, 8), (1 + (1d / 8), 7), (1 + (1d / 4), 7), (1 + (3d / 8), 6), (1 + (1d / 2), 6), (1 + (3d / 4), 5),
        (2, 4.5), (2 + (1d / 4), 4.5), (2 + (1d / 2), 4), (2 + (3d / 4), 4),
        (3, 4), (3 + (1d / 4), 4), (3 + (1d / 2), 4), (3 + (3d / 4), 4), (4, 4),
    ];

    /// <summary>
    /// Diameters in inches of the 8-thread series. The standard starts it above 1 in.; at 1 in. the coarse thread has 8 threads
    /// as well, so a rod ordered as 8UN throughout is not an error there.
    /// </summary>
    private static readonly (double Diameter, double ThreadsPerInch)[] Unified8 =
    [
        (1, 8), (1 + (1d / 8), 8), (1 + (1d / 4), 8), (1 + (3d / 8), 8), (1 + (1d / 2), 8), (1 + (5d / 8), 8), (1 + (3d / 4), 8), (1 + (7d / 8), 8),
        (2, 8), (2 + (1d / 4), 8), (2 + (1d / 2), 8), (2 + (3d / 4), 8),
        (3, 8), (3 + (1d / 4), 8), (3 + (1d / 2), 8), (3 + (3d / 4), 8), (4, 8),
    ];

    /// <summary>Diameter and pitch in millimetres of the ISO coarse threads.</summary>
    private static readonly (double Diameter, double Pitch)[] IsoCoarse =
    [
        (5, 0.8), (6, 1), (8, 1.25), (10, 1.5), (12, 1.75), (14, 2), (16, 2), (18, 2.5), (20, 2.5), (22, 2.5), (24, 3), (27, 3),
        (30, 3.5), (33, 3.5), (36, 4), (39, 4), (42, 4.5), (45, 4.5), (48, 5), (52, 5), (56, 5.5), (60, 5.5), (64, 6),
    ];

    /// <summary>The threads by the name that stands in a JSON input: <c>UNC</c>, <c>8UN</c>, <c>ISO</c>.</summary>
    public static IReadOnlyDictionary<string, ScrewThread> Names { get; } = new Dictionary<string, ScrewThread>
    {
        ["UNC"] = ScrewThread.UnifiedCoarse,
        ["8UN"] = ScrewThread.Unified8,
        ["ISO"] = ScrewThread.IsoCoarse,
    }.ToFrozenDictionary(StringComparer.Ordinal);

    /// <summary>The name of a thread: <c>UNC</c>, <c>8UN</c> or <c>ISO</c>.</summary>
    /// <param name="thread">The thread.</param>
    /// <exception cref="InputException">No such thread.</exception>
    public static string NameOf(ScrewThread thread) => thread switch
    {
        ScrewThread.UnifiedCoarse => "UNC",
        ScrewThread.Unified8 => "8UN",
        ScrewThread.IsoCoarse => "ISO",
        _ => throw Unknown(thread),
    };

    /// <summary>The standard of a thread, and where its sizes and its area come from.</summary>
    /// <param name="thread">The thread.</param>
    /// <exception cref="InputException">No such thread.</exception>
    public static string Source(ScrewThread thread) => thread switch
    {
        ScrewThread.UnifiedCoarse or ScrewThread.Unified8 =>
            "ASME B1.1, threads per inch from memory; area by the formula of ACI 318-19 R17.6.1.2, from memory",
        ScrewThread.IsoCoarse =>
            "ISO 261 and ISO 724, pitch from memory; area by ISO 898-1 clause 9.1.6.1, from memory, checked to M39 against a secondary listing",
        _ => throw Unknown(thread),
    };

    /// <summary>The nominal diameters of a thread, in rising order, in inches or millimetres as the standard prints them.</summary>
    /// <param name="thread">The thread.</param>
    /// <exception cref="InputException">No such thread.</exception>
    public static IReadOnlyList<Length> Diameters(ScrewThread thread)
    {
        MeasurementSystem system = SystemOf(thread);
        return Array.AsReadOnly(Array.ConvertAll(SizesOf(thread), size => PrintedUnits.Length(size.Diameter, system)));
    }

    /// <summary>
    /// Tensile stress area A_se of a thread: π/4 (d_a − 0.9743/n_t)² for the unified threads (ACI 318-19 R17.6.1.2), in square inches;
    /// π/4 (d − 0.9382 P)² for the ISO thread (ISO 898-1 clause 9.1.6.1), in square millimetres. It is not rounded; the tables
    /// of the standards print it with three or four figures.
    /// </summary>
    /// <param name="thread">The thread.</param>
    /// <param name="diameter">Nominal diameter; one of <see cref="Diameters"/> within 1e-6 of its size.</param>
    /// <exception cref="InputException">The thread has no such size.</exception>
    public static Area TensileStressArea(ScrewThread thread, Length diameter)
    {
        MeasurementSystem system = SystemOf(thread);
        if (TryTensileStressArea(thread, diameter.In(system), out double area))
        {
            return PrintedUnits.Area(area, system);
        }

        string sizes = string.Join(", ", Array.ConvertAll(SizesOf(thread), size => QuantityText.Format(size.Diameter)));
        throw new InputException(
            nameof(diameter), QuantityText.Format(diameter), $"a size of the {NameOf(thread)} thread: {sizes} {Unit.Printed(Dimension.Length, system)!.Text}");
    }

    /// <summary>
    /// The thread that has exactly this diameter (within 1e-6 of its size); inch sizes first, and never the 8-thread series,
    /// which has to be asked for. Null where no thread has it.
    /// </summary>
    /// <param name="diameter">Nominal diameter.</param>
    public static ScrewThread? Infer(Length diameter) =>
        Has(ScrewThread.UnifiedCoarse, diameter) ? ScrewThread.UnifiedCoarse
        : Has(ScrewThread.IsoCoarse, diameter) ? ScrewThread.IsoCoarse
        : null;

    /// <summary>
    /// <see cref="TensileStressArea"/> in plain numbers: <paramref name="diameter"/> and <paramref name="area"/> in in. and in² for the
    /// unified threads, in mm and mm² for the ISO thread. False where the thread has no such size.
    /// </summary>
    internal static bool TryTensileStressArea(ScrewThread thread, double diameter, out double area)
    {
        foreach ((double nominal, double threadsPerInchOrPitch) in SizesOf(thread))
        {
            if (NominalDiameter.Is(nominal, diameter))
            {
                double depth = thread == ScrewThread.IsoCoarse ? 0.9382 * threadsPerInchOrPitch : 0.9743 / threadsPerInchOrPitch;
                area = NominalDiameter.CircleArea(nominal - depth);
                return true;
            }
        }

        area = 0;
        return false;
    }

    private static bool Has(ScrewThread thread, Length diameter) => TryTensileStressArea(thread, diameter.In(SystemOf(thread)), out _);

    private static MeasurementSystem SystemOf(ScrewThread thread) =>
        thread == ScrewThread.IsoCoarse ? MeasurementSystem.NewtonMillimetre : MeasurementSystem.PoundInch;

    private static (double Diameter, double ThreadsPerInchOrPitch)[] SizesOf(ScrewThread thread) => thread switch
    {
        ScrewThread.UnifiedCoarse => UnifiedCoarse,
        ScrewThread.Unified8 => Unified8,
        ScrewThread.IsoCoarse => IsoCoarse,
        _ => throw Unknown(thread),
    };

    private static InputException Unknown(ScrewThread thread) =>
        new("thread", ((int)thread).ToString(CultureInfo.InvariantCulture), "UNC, 8UN, ISO");
}
