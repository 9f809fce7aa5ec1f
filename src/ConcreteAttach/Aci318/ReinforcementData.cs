using ConcreteAttach.Attached;
using ConcreteAttach.Calculation;
using ConcreteAttach.Geometry;
using ConcreteAttach.Quantities;

namespace ConcreteAttach.Aci318;

/// <summary>Anchor reinforcement in the units of an edition: which bars stand at which fastener, and whether they take the place of breakout. Made once.</summary>
/// <remarks>A bar belongs to the fastener that is nearest to it, in equal shares to those that are equally near: each fastener is held by its own bars, as elastic theory gives it its own force.</remarks>
internal sealed class ReinforcementData
{
    /// <param name="data">The attachment, with its fasteners and edges known.</param>
    /// <param name="reinforcement">The reinforcement.</param>
    /// <param name="isEarthquake">For load cases whose earthquake part counts.</param>
    /// <exception cref="InputException">Bars outside of the concrete, or toward an edge that is not there.</exception>
    public ReinforcementData(AnchorageData data, AnchorReinforcement reinforcement, bool isEarthquake)
    {
        Tension = reinforcement.Tension is { } tension ? new TensionBars(data, tension, isEarthquake) : null;
        Shear = new ShearBars?[data.Edges.Length];
        foreach (ShearReinforcement shear in reinforcement.Shear)
        {
            int edge = Array.FindIndex(data.Edges, e => e.Side == shear.Side);
            Shear[edge >= 0 ? edge : throw NoEdge(data, shear.Side)] = new ShearBars(data, data.Edges[edge], shear, isEarthquake);
        }
    }

    /// <summary>For tension; null without.</summary>
    public TensionBars? Tension { get; }

    /// <summary>For shear toward each edge of the attachment, in their order; null where there is none.</summary>
    public ShearBars?[] Shear { get; }

    private static InputException NoEdge(AnchorageData data, ConcreteSide side) => new(
        "anchorReinforcement/shear", $"reinforcement toward {side.Words()}",
        data.Edges.Length == 0 ? "none: no edge is within reach" : $"an edge that there is: {string.Join(", ", data.Edges.Select(e => e.Side.ToString()))}");

    /// <summary>Adds a bar in equal shares to those fasteners that are nearest to it; returns the least distance.</summary>
    internal static double Assign(ReadOnlySpan<double> distances, double[] barsOf)
    {
        double least = double.PositiveInfinity;
        foreach (double distance in distances)
        {
            least = Math.Min(least, distance);
        }

        int sharing = 0;
        foreach (double distance in distances)
        {
            sharing += IsNearest(distance, least) ? 1 : 0;
        }

        for (int i = 0; i < distances.Length; i++)
        {
            barsOf[i] += IsNearest(distances[i], least) ? 1.0 / sharing : 0;
        }

        return least;
    }

    internal static bool IsNearest(double distance, double least) => distance - least <= Limit.Tolerance * Math.Max(distance, 1);
}

/// <summary>Bars for tension.</summary>
internal sealed class TensionBars
{
    public TensionBars(AnchorageData data, TensionReinforcement given, bool isEarthquake)
    {
        MeasurementSystem system = data.Edition.System;
        Given = given;
        Bar = new BarData(given.Bars, data.Edition, isEarthquake);
        X = [.. given.Positions.Select(p => p.X.In(system))];
        Y = [.. given.Positions.Select(p => p.Y.In(system))];
        UpperEndDepth = given.UpperEndDepth?.In(system) ?? data.Cover;
        LowerEndDepth = given.LowerEndDepth.In(system);
        if (Limit.IsBelow(data.Thickness, LowerEndDepth))
        {
            throw new InputException("anchorReinforcement/tension/lowerEndDepth", QuantityText.Format(given.LowerEndDepth), $"at most the thickness of the member, {QuantityText.Format(data.Thickness, Dimension.Length, system)}");
        }

        BarsOf = new double[data.Count];
        double[] distances = new double[data.Count];
        Nearest = double.PositiveInfinity;
        for (int bar = 0; bar < X.Length; bar++)
        {
            RequireInside(data, given, bar, X[bar], Y[bar]);
            for (int i = 0; i < distances.Length; i++)
            {
                double dx = X[bar] - data.X[i], dy = Y[bar] - data.Y[i];
                distances[i] = Math.Sqrt((dx * dx) + (dy * dy));
            }

            double distance = ReinforcementData.Assign(distances, BarsOf);
            Nearest = Math.Min(Nearest, distance);
            Farthest = Math.Max(Farthest, distance);
        }

        IsEffective = ReinforcementDetailing.Broken(default(Sheet<PlainNumber>), data, this) is null;
    }

    public TensionReinforcement Given { get; }

    public BarData Bar { get; }

    /// <summary>Places of the bars.</summary>
    public double[] X { get; }

    public double[] Y { get; }

    /// <summary>How many bars hold each fastener.</summary>
    public double[] BarsOf { get; }

    /// <summary>Least distance of a bar from its fastener, axis to axis.</summary>
    public double Nearest { get; }

    /// <summary>Largest distance of a bar from its fastener.</summary>
    public double Farthest { get; }

    public double UpperEndDepth { get; }

    public double LowerEndDepth { get; }

    /// <summary>Whether every condition is met, so that the bars take the place of breakout.</summary>
    public bool IsEffective { get; }

    private static void RequireInside(AnchorageData data, TensionReinforcement given, int bar, double x, double y)
    {
        ref readonly Rectangle concrete = ref data.Concrete;
        bool isInside = data.Outline is { } outline ? outline.Outline.Contains(x, y) : x > concrete.Left && x < concrete.Right && y > concrete.Bottom && y < concrete.Top;
        if (!isInside)
        {
            throw new InputException("anchorReinforcement/tension/positions", $"bar {QuantityText.Format(bar)} at {given.Positions[bar]}", "a place inside the concrete");
        }
    }
}

/// <summary>Bars for shear toward one edge.</summary>
internal sealed class ShearBars
{
    public ShearBars(AnchorageData data, ConcreteEdge edge, ShearReinforcement given, bool isEarthquake)
    {
        MeasurementSystem system = data.Edition.System;
        Given = given;
        Edge = edge;
        Bar = new BarData(given.Bars, data.Edition, isEarthquake);
        Depth = given.Depth.In(system);
        InnerLength = given.InnerLength.In(system);
        OuterCover = given.OuterCover?.In(system) ?? data.Cover;
        Eccentricity = given.Eccentricity?.In(system) ?? Depth;
        if (Limit.IsBelow(data.Thickness, Depth))
        {
            throw new InputException($"anchorReinforcement/shear/{edge.Side}/depth", QuantityText.Format(given.Depth), $"at most the thickness of the member, {QuantityText.Format(data.Thickness, Dimension.Length, system)}");
        }

        EdgeDistance = double.PositiveInfinity;
        double farthest = 0;
        foreach (int fastener in edge.Order)
        {
            EdgeDistance = Math.Min(EdgeDistance, edge.Distances[fastener]);
            farthest = Math.Max(farthest, edge.Distances[fastener]);
        }

        RequireInside(data, edge, given, farthest + InnerLength);
        BarsOf = new double[data.Count];
        Places = [.. given.Places.Select(place => place.In(system))];
        Offset = (data.Diameter + Bar.Diameter) / 2;
        Farthest = Offset;
        if (given.IsEnclosing)
        {
            foreach (int fastener in edge.Order)
            {
                BarsOf[fastener] = (double)given.Legs / edge.Order.Length;
            }
        }
        else
        {
            Place(edge);
        }

        IsEffective = ReinforcementDetailing.Broken(default(Sheet<PlainNumber>), data, this) is null;
    }

    public ShearReinforcement Given { get; }

    public ConcreteEdge Edge { get; }

    public BarData Bar { get; }

    /// <summary>Places of bars beside the fasteners along the edge.</summary>
    public double[] Places { get; }

    /// <summary>How many bars hold each fastener.</summary>
    public double[] BarsOf { get; }

    /// <summary>Smallest c_a1 of the fasteners.</summary>
    public double EdgeDistance { get; }

    /// <summary>Least distance of a bar from its fastener along the edge, axis to axis.</summary>
    public double Offset { get; private set; }

    /// <summary>Largest distance of a bar from its fastener along the edge.</summary>
    public double Farthest { get; private set; }

    /// <summary>Of bars beside the fasteners: the one that is the farthest for where it may lie.</summary>
    public PlacedBar Decisive { get; private set; }

    public double Depth { get; }

    public double InnerLength { get; }

    public double OuterCover { get; }

    /// <summary>e_s.</summary>
    public double Eccentricity { get; }

    /// <summary>Whether every condition is met, so that the bars take the place of breakout.</summary>
    public bool IsEffective { get; }

    /// <summary>Gives the bars beside the fasteners to those that are nearest along the edge.</summary>
    private void Place(ConcreteEdge edge)
    {
        int[] order = edge.Order;
        double[] distances = new double[order.Length], shares = new double[order.Length];
        Offset = double.PositiveInfinity;
        Farthest = 0;
        double highest = -1;
        foreach (double place in Places)
        {
            for (int k = 0; k < order.Length; k++)
            {
                distances[k] = Math.Abs(place - edge.Places[order[k]]);
            }

            double distance = ReinforcementData.Assign(distances, shares);
            Offset = Math.Min(Offset, distance);
            Farthest = Math.Max(Farthest, distance);
            for (int k = 0; k < order.Length; k++)
            {
                var bar = new PlacedBar(distance, edge.Distances[order[k]], edge.ToNearestSide(order[k]));
                double use = distance / Math.Min(0.5 * bar.EdgeDistance, 0.3 * bar.SideDistance);
                if (ReinforcementData.IsNearest(distances[k], distance) && use > highest)
                {
                    highest = use;
                    Decisive = bar;
                }
            }
        }

        for (int k = 0; k < order.Length; k++)
        {
            BarsOf[order[k]] = shares[k];
        }
    }

    /// <summary>Bars end within the member.</summary>
    private static void RequireInside(AnchorageData data, ConcreteEdge edge, ShearReinforcement given, double reach)
    {
        MeasurementSystem system = data.Edition.System;
        if (data.Outline is { } outline)
        {
            double length = given.InnerLength.In(system);
            if (!Array.TrueForAll(edge.Order, i => outline.Outline.Contains(data.X[i] - (edge.NormalX * length), data.Y[i] - (edge.NormalY * length))))
            {
                throw new InputException($"anchorReinforcement/shear/{edge.Side}/innerLength", QuantityText.Format(given.InnerLength), "a length with which the bars end inside the concrete");
            }

            return;
        }

        double width = edge.Side.IsAlongX() ? data.Concrete.Right - data.Concrete.Left : data.Concrete.Top - data.Concrete.Bottom;
        if (Limit.IsBelow(width, reach))
        {
            throw new InputException(
                $"anchorReinforcement/shear/{edge.Side}/innerLength", QuantityText.Format(given.InnerLength),
                $"at most {QuantityText.Format(width - reach + given.InnerLength.In(system), Dimension.Length, system)}: there the member ends");
        }
    }
}

/// <summary>A bar beside a fastener.</summary>
/// <param name="Distance">Between the axes, along the edge.</param>
/// <param name="EdgeDistance">c_a1 of the fastener.</param>
/// <param name="SideDistance">c_a2 of the fastener; infinite without a side edge.</param>
internal readonly record struct PlacedBar(double Distance, double EdgeDistance, double SideDistance);
