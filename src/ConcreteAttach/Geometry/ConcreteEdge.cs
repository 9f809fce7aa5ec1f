namespace ConcreteAttach.Geometry;

/// <summary>
/// A straight edge of the concrete, and the fasteners as they stand before it: how far from it, where along it, in which order. None of that depends on a
/// load, so it is made once, and a load case only picks the fasteners that count.
/// </summary>
/// <remarks>
/// A row is the fasteners at one distance from the edge. Its fasteners have the same number in <see cref="Distances"/>, so that a row of those that count is a
/// run of equal distances in <see cref="Order"/>.
/// </remarks>
internal sealed class ConcreteEdge
{
    private ConcreteEdge(ConcreteSide side, in Rectangle concrete, ReadOnlySpan<double> xs, ReadOnlySpan<double> ys)
    {
        Side = side;
        bool isAlongX = side.IsAlongX();
        (NormalX, NormalY) = isAlongX ? (side.Sign(), 0) : (0, side.Sign());
        (DirectionX, DirectionY) = isAlongX ? (0, 1) : (1, 0);
        (Low, High) = isAlongX ? (concrete.Bottom, concrete.Top) : (concrete.Left, concrete.Right);
        (Axis, LowId, SpanId, HighId) = isAlongX ? ("y", "c_-y", "s_y", "c_+y") : ("x", "c_-x", "s_x", "c_+x");

        int count = xs.Length;
        double place = side.Sign() * side.PlaceIn(concrete);
        Distances = new double[count];
        Places = new double[count];
        Order = new int[count];
        for (int i = 0; i < count; i++)
        {
            Distances[i] = place - Outward(xs[i], ys[i]);
            Places[i] = Along(xs[i], ys[i]);
        }

        SortIntoRows();
    }

    /// <summary>Which side of the concrete it is.</summary>
    public ConcreteSide Side { get; }

    /// <summary>Unit vector out of the concrete, across the edge.</summary>
    public double NormalX { get; }

    public double NormalY { get; }

    /// <summary>Unit vector along the edge: the way in which places along it grow.</summary>
    public double DirectionX { get; }

    public double DirectionY { get; }

    /// <summary>Where along it the concrete ends at the lower side edge; −∞ without one.</summary>
    public double Low { get; }

    /// <summary>Where it ends at the upper side edge; +∞ without one.</summary>
    public double High { get; }

    /// <summary>Name of the axis along it.</summary>
    public string Axis { get; }

    /// <summary>Symbol of a distance to the lower side edge.</summary>
    public string LowId { get; }

    /// <summary>Symbol of a distance along it between fasteners.</summary>
    public string SpanId { get; }

    /// <summary>Symbol of a distance to the upper side edge.</summary>
    public string HighId { get; }

    /// <summary>Distance of each fastener from the edge: that of its row, from which its own differs by no more than the tolerance of <see cref="Rows"/>.</summary>
    public double[] Distances { get; }

    /// <summary>Place of each fastener along the edge.</summary>
    public double[] Places { get; }

    /// <summary>The numbers of all fasteners: by rows from the edge inward, in a row along the edge.</summary>
    public int[] Order { get; }

    /// <summary>The edges of a rectangular member, in the order of its sides.</summary>
    public static ConcreteEdge[] Of(Rectangle concrete, double[] xs, double[] ys) =>
        [.. ConcreteSides.All.Where(side => double.IsFinite(side.PlaceIn(concrete))).Select(side => new ConcreteEdge(side, concrete, xs, ys))];

    /// <summary>Component of a vector out of the concrete, across the edge.</summary>
    public double Outward(double x, double y) => (NormalX * x) + (NormalY * y);

    /// <summary>Component of a vector along the edge.</summary>
    public double Along(double x, double y) => (DirectionX * x) + (DirectionY * y);

    /// <summary>From a place along the edge to the nearer of the two side edges; infinite without one.</summary>
    public double ToNearestSide(double place) => place - Low < High - place ? place - Low : High - place;

    /// <summary>
    /// Finds the rows of some of the fasteners, which stand in the order of <see cref="Order"/>, and returns their number: row k is
    /// <c>fasteners[starts[k]..starts[k + 1]]</c>.
    /// </summary>
    /// <param name="fasteners">Their numbers.</param>
    /// <param name="starts">Receives where each row starts, and after the last one the number of fasteners (one longer than <paramref name="fasteners"/>).</param>
    public int FindRows(ReadOnlySpan<int> fasteners, Span<int> starts)
    {
        int rows = 0;
        double distance = double.NaN;
        for (int i = 0; i < fasteners.Length; i++)
        {
            if (Distances[fasteners[i]] != distance)
            {
                distance = Distances[fasteners[i]];
                starts[rows++] = i;
            }
        }

        starts[rows] = fasteners.Length;
        return rows;
    }

    private void SortIntoRows()
    {
        int count = Order.Length;
        int[] starts = new int[count + 1];
        double[] scratch = new double[Rows.ScratchLength(count)];
        int rows = Rows.Find(Distances, Order, starts, scratch);
        for (int row = 0; row < rows; row++)
        {
            Span<int> inRow = Order.AsSpan(starts[row]..starts[row + 1]);
            double distance = Distances[inRow[0]];
            foreach (int fastener in inRow)
            {
                Distances[fastener] = distance;
            }

            inRow.Sort((a, b) => Places[a].CompareTo(Places[b]));
        }
    }
}
