using ConcreteAttach.Geometry;

namespace ConcreteAttach.Aci318;

/// <summary>Shear on all fasteners of the layout, by their numbers.</summary>
internal readonly ref struct FastenerShears
{
    /// <summary>Component along x.</summary>
    public readonly ReadOnlySpan<double> X;

    /// <summary>Component along y.</summary>
    public readonly ReadOnlySpan<double> Y;

    /// <summary>Size of both together.</summary>
    public readonly ReadOnlySpan<double> Resultants;

    /// <summary>The fastener with the largest resultant.</summary>
    public readonly int Most;

    /// <summary>A resultant or component up to this one is none.</summary>
    public readonly double Least;

    /// <param name="x">Shear along x on each fastener.</param>
    /// <param name="y">Shear along y on each fastener.</param>
    /// <param name="memory">Working memory: one number for each fastener.</param>
    public FastenerShears(ReadOnlySpan<double> x, ReadOnlySpan<double> y, ref Scratch memory)
    {
        Span<double> resultants = memory.Doubles(x.Length);
        int most = 0;
        for (int i = 0; i < resultants.Length; i++)
        {
            resultants[i] = Math.Sqrt((x[i] * x[i]) + (y[i] * y[i]));
            most = resultants[i] > resultants[most] ? i : most;
        }

        X = x;
        Y = y;
        Resultants = resultants;
        Most = most;
        Least = TensionModes.LeastShare * resultants[most];
    }

    /// <summary>The largest resultant.</summary>
    public double Largest => Resultants[Most];

    /// <summary>Whether there is any shear.</summary>
    public bool HasDemand => Least > 0;
}
