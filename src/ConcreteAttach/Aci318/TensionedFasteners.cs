using System.Runtime.CompilerServices;
using ConcreteAttach.Calculation;
using ConcreteAttach.Geometry;

namespace ConcreteAttach.Aci318;

/// <summary>Fasteners in tension that take part in a mode, in the order of the layout.</summary>
internal readonly ref struct TensionedFasteners
{
    /// <summary>Their numbers.</summary>
    public readonly ReadOnlySpan<int> Members;

    /// <summary>Their places along x.</summary>
    public readonly ReadOnlySpan<double> X;

    /// <summary>Their places along y.</summary>
    public readonly ReadOnlySpan<double> Y;

    /// <summary>Tension on each.</summary>
    public readonly ReadOnlySpan<double> Forces;

    /// <summary>The rectangle about them.</summary>
    public readonly Rectangle Extent;

    /// <summary>False where no fastener is in tension: then all are here, with equal forces, for the strength of a concentric load.</summary>
    public readonly bool HasDemand;

    /// <summary>Those of all fasteners that are in tension.</summary>
    /// <param name="data">The attachment.</param>
    /// <param name="forces">Axial force on each fastener, tension positive.</param>
    /// <param name="memory">Working memory: four numbers for each fastener.</param>
    public TensionedFasteners(AnchorageData data, ReadOnlySpan<double> forces, ref Scratch memory)
    {
        double largest = 0;
        double lowest = double.PositiveInfinity;
        foreach (double force in forces)
        {
            double size = Math.Abs(force);
            largest = size > largest ? size : largest;
            lowest = force < lowest ? force : lowest;
        }

        double least = TensionModes.LeastShare * largest;
        if (lowest > least)
        {
            Members = data.All;
            X = data.X;
            Y = data.Y;
            Forces = forces;
            Extent = data.Extent;
            HasDemand = true;
        }
        else
        {
            this = Above(least, data, forces, ref memory);
        }
    }

    /// <param name="members">Their numbers.</param>
    /// <param name="xs">Their places along x.</param>
    /// <param name="ys">Their places along y.</param>
    /// <param name="forces">Tension on each.</param>
    /// <param name="hasDemand">Whether the forces are those of a load.</param>
    public TensionedFasteners(ReadOnlySpan<int> members, ReadOnlySpan<double> xs, ReadOnlySpan<double> ys, ReadOnlySpan<double> forces, bool hasDemand)
    {
        Members = members;
        X = xs;
        Y = ys;
        Forces = forces;
        Extent = Layouts.ExtentOf(xs, ys);
        HasDemand = hasDemand;
    }

    public int Count => X.Length;

    /// <summary>Where the largest force is.</summary>
    public int MostLoaded()
    {
        int most = 0;
        for (int i = 1; i < Forces.Length; i++)
        {
            most = Forces[i] > Forces[most] ? i : most;
        }

        return most;
    }

    /// <summary>Tension on each fastener of the layout by its number; 0 on those that are not here.</summary>
    public ReadOnlySpan<double> ByNumber(int layoutCount, ref Scratch memory)
    {
        if (Count == layoutCount)
        {
            return Forces;
        }

        Span<double> forces = memory.Doubles(layoutCount);
        forces.Clear();
        for (int i = 0; i < Members.Length; i++)
        {
            forces[Members[i]] = Forces[i];
        }

        return forces;
    }

    /// <summary>Sum of the forces, and the distance of their resultant from the centroid along each axis; a distance is 0 where it is rounding noise.</summary>
    public (double Force, double EccentricityX, double EccentricityY) Resultant() =>
        Count == 1 ? (Forces[0], 0, 0) : ResultantOfSeveral();

    private (double Force, double EccentricityX, double EccentricityY) ResultantOfSeveral()
    {
        double sum = 0, momentX = 0, momentY = 0, sumX = 0, sumY = 0;
        for (int i = 0; i < Forces.Length; i++)
        {
            sum += Forces[i];
            momentX += Forces[i] * X[i];
            momentY += Forces[i] * Y[i];
            sumX += X[i];
            sumY += Y[i];
        }

        return (sum, UnlessNoise((momentX / sum) - (sumX / Count), Extent.Left, Extent.Right), UnlessNoise((momentY / sum) - (sumY / Count), Extent.Bottom, Extent.Top));
    }

    /// <summary>Those with more than a least force; without any, all.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    private static TensionedFasteners Above(double least, AnchorageData data, ReadOnlySpan<double> forces, ref Scratch memory)
    {
        Span<int> members = memory.Ints(forces.Length);
        Span<double> xs = memory.Doubles(forces.Length);
        Span<double> ys = memory.Doubles(forces.Length);
        Span<double> tensions = memory.Doubles(forces.Length);
        int count = 0;
        for (int i = 0; i < forces.Length; i++)
        {
            if (forces[i] > least)
            {
                members[count] = i;
                xs[count] = data.X[i];
                ys[count] = data.Y[i];
                tensions[count++] = forces[i];
            }
        }

        if (count == 0)
        {
            tensions.Fill(1);
            return new(data.All, data.X, data.Y, tensions, hasDemand: false);
        }

        return new(members[..count], xs[..count], ys[..count], tensions[..count], hasDemand: true);
    }

    private static double UnlessNoise(double difference, double low, double high)
    {
        double size = Math.Abs(difference);
        return Limit.WithoutNoise(size, Math.Max(Math.Abs(low), Math.Abs(high)));
    }
}
