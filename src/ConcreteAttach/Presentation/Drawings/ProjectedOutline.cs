using ConcreteAttach.Geometry;
using ConcreteAttach.Verification;

namespace ConcreteAttach.Presentation.Drawings;

/// <summary>A place in the surface of the concrete, in the units of the method.</summary>
internal readonly record struct SurfacePoint(double X, double Y);

/// <summary>The outline of a projected area: the figure whose area the sheet calls A_Nc.</summary>
internal static class ProjectedOutline
{
    /// <summary>With more fasteners than this, the outline of a scattered group is no longer traced: nobody could read it.</summary>
    private const int MostTraced = 256;

    /// <summary>The boundary of the union of the squares about the fasteners of a mode, cut at the edges; counter-clockwise outside, clockwise about holes.</summary>
    public static List<SurfacePoint[]> Of(ShownCase shown, FailureMode cone)
    {
        double reach = 1.5 * shown.EmbedmentOf(cone);
        int[] group = [.. cone.Group];
        double[] xs = [.. group.Select(i => shown.X[i])], ys = [.. group.Select(i => shown.Y[i])];

        if (shown.Outline is { } outline)
        {
            return [.. group.Take(MostTraced).Select(i => Seen(outline, shown.X[i], shown.Y[i], reach)).Where(ring => ring.Length > 0)];
        }

        // On the sheet an area that was found on the drawing is given; one that is width times height is computed.
        bool isRectangle = cone.Sheet?.Lines.OfType<Calculation.StepLine>().Any(step => step.Id == "A_Nc") == true;
        Rectangle concrete = shown.Concrete;
        if (isRectangle || group.Length > MostTraced)
        {
            Rectangle extent = Layouts.ExtentOf(xs, ys);
            return [Ring(Math.Max(extent.Left - reach, concrete.Left), Math.Min(extent.Right + reach, concrete.Right), Math.Max(extent.Bottom - reach, concrete.Bottom), Math.Min(extent.Top + reach, concrete.Top))];
        }

        return Union(xs, ys, reach, concrete);
    }

    /// <summary>The boundary of the union of equal squares, cut at the sides of the concrete.</summary>
    public static List<SurfacePoint[]> Union(double[] xs, double[] ys, double halfSide, in Rectangle concrete)
    {
        double left = concrete.Left, right = concrete.Right, bottom = concrete.Bottom, top = concrete.Top;
        double[] columns = Stations(xs, halfSide, left, right), rows = Stations(ys, halfSide, bottom, top);
        bool[,] isCovered = new bool[Math.Max(columns.Length - 1, 0), Math.Max(rows.Length - 1, 0)];
        for (int i = 0; i < xs.Length; i++)
        {
            int fromColumn = IndexOf(columns, Math.Clamp(xs[i] - halfSide, left, right)), toColumn = IndexOf(columns, Math.Clamp(xs[i] + halfSide, left, right));
            int fromRow = IndexOf(rows, Math.Clamp(ys[i] - halfSide, bottom, top)), toRow = IndexOf(rows, Math.Clamp(ys[i] + halfSide, bottom, top));
            for (int column = fromColumn; column < toColumn; column++)
            {
                for (int row = fromRow; row < toRow; row++)
                {
                    isCovered[column, row] = true;
                }
            }
        }

        return Trace(isCovered, columns, rows);
    }

    /// <summary>What a fastener sees of the concrete within its square. The areas of several lie over one another; the sheet counts their union.</summary>
    private static SurfacePoint[] Seen(Outline outline, double x, double y, double reach)
    {
        SeenConcrete seen = SeenConcrete.From(outline, x, y);
        var ring = new ShapeSide[seen.Xs.Length];
        for (int i = 0; i < ring.Length; i++)
        {
            int next = (i + 1) % ring.Length;
            ring[i] = new(new(seen.Xs[i], seen.Ys[i]), new(seen.Xs[next], seen.Ys[next]), IsEdge: true);
        }

        return [.. ConcreteShape.Cut(ring, new(x - reach, x + reach, y - reach, y + reach)).Select(side => side.From)];
    }

    private static SurfacePoint[] Ring(double left, double right, double bottom, double top) => [new(left, bottom), new(right, bottom), new(right, top), new(left, top)];

    private static double[] Stations(double[] centres, double halfSide, double low, double high) =>
        [.. centres.SelectMany(c => new[] { Math.Clamp(c - halfSide, low, high), Math.Clamp(c + halfSide, low, high) }).Distinct().Order()];

    private static int IndexOf(double[] stations, double value) => Array.BinarySearch(stations, value);

    /// <summary>Walks around the covered cells, with the covered side on the left hand.</summary>
    private static List<SurfacePoint[]> Trace(bool[,] isCovered, double[] columns, double[] rows)
    {
        int width = isCovered.GetLength(0), height = isCovered.GetLength(1);
        bool Covered(int column, int row) => column >= 0 && column < width && row >= 0 && row < height && isCovered[column, row];

        // From each node of the grid, the ways that run along a boundary: 0 right, 1 up, 2 left, 3 down.
        bool IsBoundary(int column, int row, int way) => way switch
        {
            0 => Covered(column, row) && !Covered(column, row - 1),
            1 => Covered(column - 1, row) && !Covered(column, row),
            2 => Covered(column - 1, row - 1) && !Covered(column - 1, row),
            _ => Covered(column, row - 1) && !Covered(column - 1, row - 1),
        };

        var rings = new List<SurfacePoint[]>();
        var walked = new HashSet<(int, int, int)>();
        for (int row = 0; row <= height; row++)
        {
            for (int column = 0; column <= width; column++)
            {
                for (int way = 0; way < 4; way++)
                {
                    if (IsBoundary(column, row, way) && !walked.Contains((column, row, way)))
                    {
                        rings.Add(Walk(column, row, way));
                    }
                }
            }
        }

        return rings;

        SurfacePoint[] Walk(int column, int row, int way)
        {
            var corners = new List<SurfacePoint>();
            int before = -1;
            while (walked.Add((column, row, way)))
            {
                if (way != before)
                {
                    corners.Add(new(columns[column], rows[row]));
                }

                before = way;
                (column, row) = way switch { 0 => (column + 1, row), 1 => (column, row + 1), 2 => (column - 1, row), _ => (column, row - 1) };

                // Left first: two squares that touch at a corner stay two.
                int left = (way + 1) % 4, right = (way + 3) % 4;
                way = IsBoundary(column, row, left) ? left : IsBoundary(column, row, way) ? way : right;
            }

            return [.. corners];
        }
    }
}
