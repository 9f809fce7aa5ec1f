namespace ConcreteAttach.Geometry;

/// <summary>
/// A closed ring of straight sides that neither crosses nor touches itself, counter-clockwise, without vertices in the middle of a straight side.
/// Whether a ring is one is checked by <see cref="SurfaceOutline"/>; here that is taken for granted.
/// </summary>
internal sealed class SimplePolygon
{
    private SimplePolygon(double[] xs, double[] ys, int[] numbers)
    {
        Xs = xs;
        Ys = ys;
        Numbers = numbers;
    }

    public double[] Xs { get; }

    public double[] Ys { get; }

    /// <summary>For the side that starts at each vertex: its number in the ring as given, from 1.</summary>
    public int[] Numbers { get; }

    public int Count => Xs.Length;

    /// <summary>Of the vertices of a ring, in either direction.</summary>
    public static SimplePolygon Of(ReadOnlySpan<double> xs, ReadOnlySpan<double> ys)
    {
        int[] corners = Corners(xs, ys);
        double[] cornerXs = new double[corners.Length];
        double[] cornerYs = new double[corners.Length];
        int[] numbers = new int[corners.Length];
        for (int i = 0; i < corners.Length; i++)
        {
            cornerXs[i] = xs[corners[i]];
            cornerYs[i] = ys[corners[i]];
            numbers[i] = corners[i] + 1;
        }

        if (SignedArea(cornerXs, cornerYs) < 0)
        {
            // The side that started at a vertex now ends there: its number moves to the vertex before.
            Array.Reverse(cornerXs);
            Array.Reverse(cornerYs);
            Array.Reverse(numbers);
            int first = numbers[0];
            numbers.AsSpan(1).CopyTo(numbers);
            numbers[^1] = first;
        }

        return new(cornerXs, cornerYs, numbers);
    }

    /// <summary>Area within a ring: positive where it runs counter-clockwise.</summary>
    public static double SignedArea(ReadOnlySpan<double> xs, ReadOnlySpan<double> ys)
    {
        double twice = 0;
        for (int i = 1; i < xs.Length - 1; i++)
        {
            twice += Segments.Cross(xs[i] - xs[0], ys[i] - ys[0], xs[i + 1] - xs[0], ys[i + 1] - ys[0]);
        }

        return twice / 2;
    }

    /// <summary>The larger side of the rectangle about the points: what is small is small against it.</summary>
    public static double Size(ReadOnlySpan<double> xs, ReadOnlySpan<double> ys)
    {
        Rectangle extent = Layouts.ExtentOf(xs, ys);
        return Math.Max(extent.Width, extent.Height);
    }

    /// <summary>The vertices at which the ring turns.</summary>
    private static int[] Corners(ReadOnlySpan<double> xs, ReadOnlySpan<double> ys)
    {
        double tolerance = Tolerance.Relative * Size(xs, ys);
        List<int> kept = [.. Enumerable.Range(0, xs.Length)];
        for (int i = 0; i < kept.Count && kept.Count > 3;)
        {
            int before = kept[(i + kept.Count - 1) % kept.Count];
            int after = kept[(i + 1) % kept.Count];
            if (Segments.Distance(xs[before], ys[before], xs[after], ys[after], xs[kept[i]], ys[kept[i]]) <= tolerance)
            {
                kept.RemoveAt(i);
            }
            else
            {
                i++;
            }
        }

        return [.. kept];
    }
}
