namespace ConcreteAttach.Tests.Benchmarks;

/// <summary>Bytes that code allocates on the managed heap.</summary>
internal static class Allocation
{
    /// <summary>
    /// The least of a few runs, after one that does not count. What code allocates it allocates each time; once in a while the runtime
    /// books some bytes on this thread that are not the code's: it sets something up, or has emptied the shared pool of arrays.
    /// </summary>
    public static long Of(Action action)
    {
        action();
        long least = long.MaxValue;
        for (int round = 0; round < 5 && least > 0; round++)
        {
            long before = GC.GetAllocatedBytesForCurrentThread();
            action();
            least = Math.Min(least, GC.GetAllocatedBytesForCurrentThread() - before);
        }

        return least;
    }
}
