using System.Numerics;

namespace ConcreteAttach.Geometry;

/// <summary>
/// A set of ranks 0 … capacity − 1 that finds the next member below or above a rank in a few steps.
/// </summary>
/// <remarks>
/// One bit per rank. Above each level of 64-bit words lies a level with one bit per word, set where the word is not
/// empty, up to a single word: up to 64 ranks one level, up to 4,096 two. The levels follow each other in memory.
/// </remarks>
internal readonly ref struct RankSet
{
    private readonly Span<ulong> _words;
    private readonly int _wordsOfRanks;

    /// <summary>An empty set in memory of <see cref="WordCount"/> words, whatever these hold.</summary>
    public RankSet(Span<ulong> words, int capacity)
    {
        _words = words;
        _wordsOfRanks = WordsFor(capacity);
        words.Clear();
    }

    /// <summary>How many words a set of this capacity takes.</summary>
    public static int WordCount(int capacity)
    {
        int total = 0;
        int level = capacity;
        do
        {
            level = WordsFor(level);
            total += level;
        }
        while (level > 1);
        return total;
    }

    public void Add(int rank)
    {
        int level = 0;
        int length = _wordsOfRanks;
        while (true)
        {
            ref ulong word = ref _words[level + (rank >> 6)];
            bool wasEmpty = word == 0;
            word |= 1UL << rank;
            if (!wasEmpty || length == 1)
            {
                return;
            }

            level += length;
            length = WordsFor(length);
            rank >>= 6;
        }
    }

    public void Remove(int rank)
    {
        int level = 0;
        int length = _wordsOfRanks;
        while (true)
        {
            ref ulong word = ref _words[level + (rank >> 6)];
            word &= ~(1UL << rank);
            if (word != 0 || length == 1)
            {
                return;
            }

            level += length;
            length = WordsFor(length);
            rank >>= 6;
        }
    }

    /// <summary>The highest member below <paramref name="rank"/>; there must be one.</summary>
    public int Before(int rank) => Before(0, _wordsOfRanks, rank);

    /// <summary>The lowest member above <paramref name="rank"/>; there must be one.</summary>
    public int After(int rank) => After(0, _wordsOfRanks, rank);

    // A shift of a ulong uses the lowest six bits of its count: 1UL << rank is the bit of the rank in its word.
    private int Before(int level, int length, int rank)
    {
        ulong below = _words[level + (rank >> 6)] & ((1UL << rank) - 1);
        if (below != 0)
        {
            return (rank & ~63) + BitOperations.Log2(below);
        }

        int word = Before(level + length, WordsFor(length), rank >> 6);
        return word * 64 + BitOperations.Log2(_words[level + word]);
    }

    private int After(int level, int length, int rank)
    {
        ulong above = _words[level + (rank >> 6)] & (~1UL << rank);
        if (above != 0)
        {
            return (rank & ~63) + BitOperations.TrailingZeroCount(above);
        }

        int word = After(level + length, WordsFor(length), rank >> 6);
        return word * 64 + BitOperations.TrailingZeroCount(_words[level + word]);
    }

    private static int WordsFor(int bits) => (bits + 63) / 64;
}
