using System.Runtime.InteropServices;

namespace ConcreteAttach.Geometry;

/// <summary>Sorts numbers, and moves what belongs to them along, without allocating. NaN is not allowed.</summary>
/// <remarks>
/// A few numbers are sorted by insertion. Many are first dealt into as many equal buckets as there are numbers, by
/// where they lie between the smallest and the largest: coordinates are spread out, so a bucket holds one or a few,
/// which insertion puts in order, and time grows with the count. A bucket that still holds many is left to the
/// library's sort, so that no input takes longer than n log n. Equal numbers may change places.
/// </remarks>
internal static class Ordering
{
    /// <summary>Measured: up to here insertion is the fastest.</summary>
    private const int Few = 32;

    /// <summary>Length of the scratch for <paramref name="count"/> numbers.</summary>
    public static int ScratchLength(int count) => count <= Few ? 0 : 2 * count + Scratch.LengthOfInts(count + 1);

    /// <summary>
    /// Sorts <paramref name="keys"/> ascending and moves <paramref name="items"/> (same length, integers or doubles)
    /// along.
    /// </summary>
    public static void Ascending<T>(Span<double> keys, Span<T> items, Span<double> scratch)
        where T : unmanaged
    {
        if (keys.Length <= Few)
        {
            ByInsertion(keys, items);
        }
        else
        {
            ByBuckets(keys, items, scratch);
        }
    }

    private static void ByInsertion<T>(Span<double> keys, Span<T> items)
    {
        items = items[..keys.Length];
        for (int i = 1; i < keys.Length; i++)
        {
            double key = keys[i];
            T item = items[i];
            int at = i - 1;
            while (at >= 0 && keys[at] > key)
            {
                keys[at + 1] = keys[at];
                items[at + 1] = items[at];
                at--;
            }

            keys[at + 1] = key;
            items[at + 1] = item;
        }
    }

    private static void ByBuckets<T>(Span<double> keys, Span<T> items, Span<double> scratch)
        where T : unmanaged
    {
        double smallest = keys[0];
        double largest = keys[0];
        foreach (double key in keys)
        {
            smallest = Math.Min(smallest, key);
            largest = Math.Max(largest, key);
        }

        int count = keys.Length;
        double bucketsPerUnit = (count - 1) / (largest - smallest);
        if (!double.IsFinite(bucketsPerUnit) || bucketsPerUnit == 0)
        {
            keys.Sort(items); // all equal, or too far or too little apart to divide
            return;
        }

        var memory = new Scratch(scratch);
        Span<double> dealtKeys = memory.Doubles(count);
        Span<T> dealtItems = MemoryMarshal.Cast<double, T>(memory.Doubles(count))[..count];
        Span<int> place = memory.Ints(count + 1); // where the next number of a bucket goes
        place.Clear();
        foreach (double key in keys)
        {
            place[(int)((key - smallest) * bucketsPerUnit) + 1]++;
        }

        for (int bucket = 1; bucket < count; bucket++)
        {
            place[bucket] += place[bucket - 1];
        }

        for (int i = 0; i < count; i++)
        {
            double key = keys[i];
            int at = place[(int)((key - smallest) * bucketsPerUnit)]++;
            dealtKeys[at] = key;
            dealtItems[at] = items[i];
        }

        int start = 0;
        for (int bucket = 0; bucket < count; bucket++)
        {
            int end = place[bucket]; // by now where the next bucket starts
            SortBucket(dealtKeys[start..end], dealtItems[start..end]);
            start = end;
        }

        dealtKeys.CopyTo(keys);
        dealtItems.CopyTo(items);
    }

    private static void SortBucket<T>(Span<double> keys, Span<T> items)
    {
        if (keys.Length <= 1)
        {
            return;
        }

        if (keys.Length <= Few)
        {
            ByInsertion(keys, items);
        }
        else if (keys.ContainsAnyExcept(keys[0])) // else one column of a grid
        {
            keys.Sort(items);
        }
    }
}
