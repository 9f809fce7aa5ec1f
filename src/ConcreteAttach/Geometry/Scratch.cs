using System.Runtime.InteropServices;

namespace ConcreteAttach.Geometry;

/// <summary>
/// Deals out working memory from one span of doubles that the caller owns, so that nothing is allocated. What it
/// deals out holds whatever was left there before.
/// </summary>
internal ref struct Scratch(Span<double> free)
{
    private Span<double> _free = free;

    /// <summary>What has not been dealt out yet.</summary>
    public readonly Span<double> Rest => _free;

    /// <summary>How many doubles <paramref name="count"/> integers take.</summary>
    public static int LengthOfInts(int count) => (count + 1) / 2;

    public Span<double> Doubles(int count)
    {
        Span<double> dealt = _free[..count];
        _free = _free[count..];
        return dealt;
    }

    public Span<int> Ints(int count) => MemoryMarshal.Cast<double, int>(Doubles(LengthOfInts(count)))[..count];

    public Span<ulong> Words(int count) => MemoryMarshal.Cast<double, ulong>(Doubles(count));
}
