using ConcreteAttach.Geometry;
using FsCheck;
using FsCheck.Fluent;

namespace ConcreteAttach.Tests.Geometry;

/// <summary>Squares of one size in a piece of concrete, invented for the tests of the geometry.</summary>
internal sealed record Layout(string Kind, double[] Xs, double[] Ys, double HalfSide, Rectangle Concrete)
{
    public int Count => Xs.Length;

    public Projection Project() => Project(new double[ProjectedArea.ScratchLength(Count)]);

    public Projection Project(double[] scratch)
    {
        Array.Fill(scratch, double.NaN); // what is left in the scratch must not matter
        return ProjectedArea.Project(Xs, Ys, Layouts.ExtentOf(Xs, Ys), HalfSide, Concrete, scratch);
    }

    public override string ToString() => FormattableString.Invariant(
        $"{Kind}, half side {HalfSide:R}, {Concrete}: {string.Join(' ', Xs.Zip(Ys, (x, y) => FormattableString.Invariant($"({x:R}, {y:R})")))}");
}

internal static class InventedLayouts
{
    private static readonly string[] Kinds =
        ["single", "row", "column", "grid", "grid with gaps", "moved grid", "circle", "scattered", "clustered", "repeated coordinates"];

    /// <summary>
    /// Layouts of every kind, up to 40 fasteners, with edges on random sides; one in eight has fasteners outside the
    /// concrete.
    /// </summary>
    public static IEnumerable<Layout> Random(int randomSeed, int count)
    {
        var random = new Random(randomSeed);
        for (int i = 0; i < count; i++)
        {
            yield return Random(random, Kinds[i % Kinds.Length], allInside: i % 8 != 0);
        }
    }

    private static Layout Random(Random random, string kind, bool allInside)
    {
        double halfSide = 1 + 20 * random.NextDouble();
        double module = halfSide * (0.3 + 2.5 * random.NextDouble());
        int columns = random.Next(1, 7);
        int rows = random.Next(1, 7);
        int many = random.Next(2, 41);
        List<(double X, double Y)> points = kind switch
        {
            "single" => [(random.NextDouble(), random.NextDouble())],
            "row" => Grid(many, 1, module),
            "column" => Grid(1, many, module),
            "grid" => Grid(columns, rows, module),
            "grid with gaps" => Grid(columns + 1, rows + 1, module).Where((_, i) => i == 0 || random.Next(4) > 0).ToList(),
            "moved grid" => Grid(columns, rows, module).ConvertAll(p =>
                (p.X + module * (random.NextDouble() - 0.5), p.Y + module * (random.NextDouble() - 0.5))),
            "circle" => Circle(many, halfSide * many * random.NextDouble(), random.NextDouble()),
            "scattered" => Scattered(random, many, 0, 0, halfSide * (1 + 10 * random.NextDouble())),
            "clustered" => Scattered(random, many, 0, 0, halfSide / 2)
                .Concat(Scattered(random, many, 5 * halfSide, halfSide, halfSide)).ToList(),
            "repeated coordinates" => Scattered(random, many, 0, 0, 8).ConvertAll(p =>
                (halfSide * Math.Round(p.X) / 2, halfSide * Math.Round(p.Y) / 2)),
            _ => throw new ArgumentOutOfRangeException(nameof(kind)),
        };

        double[] xs = [.. points.Select(p => p.X)];
        double[] ys = [.. points.Select(p => p.Y)];
        Permute(random, xs, ys);

        double Edge(double outermost, double innermost, double direction) => random.Next(2) == 0
            ? direction * double.PositiveInfinity
            : allInside ? outermost + direction * 1.5 * halfSide * random.NextDouble()
            : innermost + (outermost - innermost) * random.NextDouble();
        var concrete = new Rectangle(
            Edge(xs.Min(), xs.Average(), -1), Edge(xs.Max(), xs.Average(), 1),
            Edge(ys.Min(), ys.Average(), -1), Edge(ys.Max(), ys.Average(), 1));
        return new Layout(kind, xs, ys, halfSide, concrete);
    }

    public static List<(double X, double Y)> Grid(int columns, int rows, double module) =>
    [
        .. from row in Enumerable.Range(0, rows)
           from column in Enumerable.Range(0, columns)
           select (column * module, row * module),
    ];

    public static List<(double X, double Y)> Circle(int count, double radius, double turn) =>
    [
        .. from i in Enumerable.Range(0, count)
           let angle = 2 * Math.PI * (turn + (double)i / count)
           select (radius * Math.Cos(angle), radius * Math.Sin(angle)),
    ];

    public static List<(double X, double Y)> Scattered(Random random, int count, double x, double y, double spread) =>
    [
        .. from _ in Enumerable.Range(0, count)
           select (x + spread * (2 * random.NextDouble() - 1), y + spread * (2 * random.NextDouble() - 1)),
    ];

    public static void Permute(Random random, double[] xs, double[] ys)
    {
        int[] order = [.. Enumerable.Range(0, xs.Length)];
        random.Shuffle(order);
        double[] oldXs = [.. xs];
        double[] oldYs = [.. ys];
        for (int i = 0; i < xs.Length; i++)
        {
            xs[i] = oldXs[order[i]];
            ys[i] = oldYs[order[i]];
        }
    }

    /// <summary>
    /// Layouts with every length a multiple of 1/4, up to 80 fasteners. Doubles carry their areas without rounding, so
    /// these can be compared to the last bit. Coordinates repeat and squares touch often. Shrinks by leaving out
    /// fasteners and edges.
    /// </summary>
    public static Arbitrary<Layout> OnQuarters()
    {
        static Gen<double> Quarters(int from, int to) => Gen.Choose(4 * from, 4 * to).Select(quarters => quarters / 4.0);

        Gen<double> Edge(int direction) => Gen.Frequency(
            (1, Gen.Constant(direction * double.PositiveInfinity)),
            (1, Quarters(2, 8).Select(distance => direction * distance)));

        Gen<Layout> layouts =
            from count in Gen.Choose(1, 80)
            from xs in Gen.ArrayOf(Quarters(-7, 7), count)
            from ys in Gen.ArrayOf(Quarters(-7, 7), count)
            from halfSide in Quarters(0, 3).Where(h => h > 0)
            from left in Edge(-1)
            from right in Edge(1)
            from bottom in Edge(-1)
            from top in Edge(1)
            select new Layout("on quarters", xs, ys, halfSide, new Rectangle(left, right, bottom, top));
        return Arb.From(layouts, Smaller);
    }

    private static IEnumerable<Layout> Smaller(Layout layout)
    {
        for (int i = 0; i < layout.Count && layout.Count > 1; i++)
        {
            int left = i;
            yield return layout with
            {
                Xs = [.. layout.Xs.Where((_, k) => k != left)],
                Ys = [.. layout.Ys.Where((_, k) => k != left)],
            };
        }

        if (layout.Concrete != Rectangle.Unbounded)
        {
            yield return layout with { Concrete = Rectangle.Unbounded };
        }
    }
}
