using ConcreteAttach.Geometry;

namespace ConcreteAttach.Tests.Geometry;

public sealed class RankSetTests
{
    /// <summary>Reference: the sorted set of the base class library.</summary>
    [Theory]
    [InlineData(3)]
    [InlineData(64)]
    [InlineData(65)]
    [InlineData(4096)]
    [InlineData(4097)]
    [InlineData(300_000)]
    public void Finds_the_same_neighbours_as_a_sorted_set(int capacity)
    {
        var random = new Random(capacity);
        ulong[] words = [.. Enumerable.Repeat(ulong.MaxValue, RankSet.WordCount(capacity))];
        var set = new RankSet(words, capacity);
        var reference = new SortedSet<int> { 0, capacity - 1 };
        set.Add(0);
        set.Add(capacity - 1);
        for (int step = 0; step < 20_000; step++)
        {
            // Fills and empties in turns, so that whole words come and go.
            int rank = 1 + random.Next(capacity - 2);
            if (random.Next(100) < (step / 4000 % 2 == 0 ? 70 : 20))
            {
                set.Add(rank);
                reference.Add(rank);
            }
            else
            {
                int gone = reference.Count > 2 && random.Next(2) == 0 ? reference.ElementAt(1) : rank;
                set.Remove(gone);
                reference.Remove(gone);
            }

            int asked = 1 + random.Next(capacity - 2);
            Assert.Equal(reference.GetViewBetween(0, asked - 1).Max, set.Before(asked));
            Assert.Equal(reference.GetViewBetween(asked + 1, capacity - 1).Min, set.After(asked));
        }
    }
}
