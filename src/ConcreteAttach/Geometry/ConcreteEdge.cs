using ConcreteAttach.Quantities;

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
        : this(side, xs.Length, xs.Length)
    {
        bool isAlongX = side.IsAlongX();
        (NormalX, NormalY) = isAlongX ? (side.Sign(), 0) : (0, side.Sign());
        (DirectionX, DirectionY) = isAlongX ? (0, 1) : (1, 0);
        (double low, double high) = isAlongX ? (concrete.Bottom, concrete.Top) : (concrete.Left, concrete.Right);
        double place = side.Sign() * side.PlaceIn(concrete);
        for (int i = 0; i < xs.Length; i++)
        {
            Order[i] = i;
            Distances[i] = place - Outward(xs[i], ys[i]);
            Places[i] = Along(xs[i], ys[i]);
            ToLow[i] = Places[i] - low;
            ToHigh[i] = high - Places[i];
        }

        SortIntoRows();
    }

    /// <param name="fasteners">All fasteners in the outline.</param>
    /// <param name="sideIndex">The side, by its place in the outline.</param>
    /// <param name="facing">The fasteners that face it.</param>
    private ConcreteEdge(FastenersInOutline fasteners, int sideIndex, int[] facing)
        : this(fasteners.Outline.Sides[sideIndex].Name(), fasteners.Seen.Length, facing.Length)
    {
        ref readonly OutlineSide side = ref fasteners.Outline.Sides[sideIndex];
        (NormalX, NormalY) = (side.NormalX, side.NormalY);
        (DirectionX, DirectionY) = (-side.NormalY, side.NormalX);
        facing.CopyTo(Order, 0);
        foreach (int i in facing)
        {
            ref readonly FacingSide place = ref fasteners.Facing(i, sideIndex);
            Distances[i] = place.Distance;
            Places[i] = place.Foot;
            ToLow[i] = place.TowardStart;
            ToHigh[i] = place.TowardEnd;
        }

        SortIntoRows();
    }

    private ConcreteEdge(ConcreteSide side, int count, int facing)
    {
        Side = side;
        (LowId, SpanId, HighId) = side.Number > 0 ? ("c_a2_1", "s_1", "c_a2_2")
            : side.IsAlongX() ? ("c_-y", "s_y", "c_+y") : ("c_-x", "s_x", "c_+x");
        Distances = new double[count];
        Places = new double[count];
        ToLow = new double[count];
        ToHigh = new double[count];
        Order = new int[facing];
    }

    /// <summary>Which side of the concrete it is.</summary>
    public ConcreteSide Side { get; }

    /// <summary>Unit vector out of the concrete, across the edge.</summary>
    public double NormalX { get; }

    public double NormalY { get; }

    /// <summary>Unit vector along the edge: the way in which places along it grow.</summary>
    public double DirectionX { get; }

    public double DirectionY { get; }

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

    /// <summary>From each fastener to the side edge the way in which places fall; infinite without one.</summary>
    public double[] ToLow { get; }

    /// <summary>From each fastener to the side edge the way in which places grow; infinite without one.</summary>
    public double[] ToHigh { get; }

    /// <summary>
    /// The numbers of the fasteners that face the edge, of a rectangular member all: by rows from the edge inward, in a row along the edge. What stands above of
    /// others means nothing.
    /// </summary>
    public int[] Order { get; }

    /// <summary>The edges of a rectangular member, in the order of its sides.</summary>
    public static ConcreteEdge[] Of(Rectangle concrete, double[] xs, double[] ys) =>
        [.. ConcreteSides.All.Where(side => double.IsFinite(side.PlaceIn(concrete))).Select(side => new ConcreteEdge(side, concrete, xs, ys))];

    /// <summary>The sides of an outline that a fastener faces, in their order.</summary>
    public static ConcreteEdge[] Of(FastenersInOutline fasteners)
    {
        var edges = new List<ConcreteEdge>();
        for (int side = 0; side < fasteners.Outline.Sides.Length; side++)
        {
            int[] facing = [.. Enumerable.Range(0, fasteners.Seen.Length).Where(i => fasteners.Facing(i, side).Faces)];
            if (facing.Length > 0)
            {
                edges.Add(new(fasteners, side, facing));
            }
        }

        return [.. edges];
    }

    /// <summary>Component of a vector out of the concrete, across the edge.</summary>
    public double Outward(double x, double y) => (NormalX * x) + (NormalY * y);

    /// <summary>Component of a vector along the edge.</summary>
    public double Along(double x, double y) => (DirectionX * x) + (DirectionY * y);

    /// <summary>From a fastener to the nearer of its two side edges; infinite without one.</summary>
    public double ToNearestSide(int fastener) => ToLow[fastener] < ToHigh[fastener] ? ToLow[fastener] : ToHigh[fastener];

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

    /// <summary>In words, the way along the edge in which places grow (sign 1) or fall (−1): toward +y, at 135 degrees from +x.</summary>
    public string WayAlong(int sign)
    {
        double degrees = Math.Round((Math.Atan2(sign * DirectionY, sign * DirectionX) * 180 / Math.PI) + 360, 1) % 360;
        return Side.Number == 0
            ? $"toward {(sign > 0 ? "+" : "-")}{(Side.IsAlongX() ? "y" : "x")}"
            : $"at {QuantityText.Format(degrees)} degrees from +x";
    }

    private void SortIntoRows()
    {
        int count = Order.Length;
        int[] facing = [.. Order];
        double[] distances = [.. facing.Select(i => Distances[i])];
        int[] starts = new int[count + 1];
        double[] scratch = new double[Rows.ScratchLength(count)];
        int rows = Rows.Find(distances, Order, starts, scratch);
        for (int i = 0; i < count; i++)
        {
            Order[i] = facing[Order[i]];
        }

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
