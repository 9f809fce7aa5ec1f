using ConcreteAttach.Geometry;
using ConcreteAttach.Verification;

namespace ConcreteAttach.Presentation.Drawings;

/// <summary>
/// The concrete that a shear breakout tears out at an edge, in coordinates of the edge: along it, and from it into the concrete. The lengths are those of the sheet.
/// </summary>
internal sealed class ShearBody
{
    private ShearBody(ConcreteSide side, double edgeDistance, double rowDistance, double first, double last, double low, double high, double thickness)
    {
        Side = side;
        EdgeDistance = edgeDistance;
        RowDistance = rowDistance;
        First = first;
        Last = last;
        Low = low;
        High = high;
        Depth = Math.Min(1.5 * edgeDistance, thickness);
    }

    public ConcreteSide Side { get; }

    /// <summary>c_a1, or c'_a1 where the sheet has it.</summary>
    public double EdgeDistance { get; }

    /// <summary>From the edge to the fasteners of the row.</summary>
    public double RowDistance { get; }

    /// <summary>Place along the edge of the outer fasteners.</summary>
    public double First { get; }

    public double Last { get; }

    /// <summary>Where the concrete ends along the edge; infinite without a side edge.</summary>
    public double Low { get; }

    public double High { get; }

    /// <summary>How deep the body reaches: 1.5 c_a1 or the thickness.</summary>
    public double Depth { get; }

    /// <summary>Ends of the body at the edge.</summary>
    public double From => Math.Max(First - (1.5 * EdgeDistance), Low);

    public double To => Math.Min(Last + (1.5 * EdgeDistance), High);

    /// <summary>The body of a mode; null where the mode has no edge or no sheet.</summary>
    public static ShearBody? Of(ShownCase shown, FailureMode mode)
    {
        // The sides of an outline have bodies of their own making (between the sides that a fastener faces): not drawn.
        if (mode.Side == ConcreteSide.None || mode.Side.Number > 0 || mode.Sheet?.Find("c_a1") is not { } rowDistance)
        {
            return null;
        }

        bool isAlongX = mode.Side.IsAlongX();
        double[] along = [.. mode.Group.Select(i => isAlongX ? shown.Y[i] : shown.X[i])];
        (double low, double high) = isAlongX ? (shown.Concrete.Bottom, shown.Concrete.Top) : (shown.Concrete.Left, shown.Concrete.Right);
        return new(mode.Side, mode.Sheet.Find("c_a1'") ?? rowDistance, rowDistance, along.Min(), along.Max(), low, high, shown.Thickness);
    }

    /// <summary>The trace of the body on the surface, from the edge around the fasteners to the edge, as places along the edge (X) and from it (Y).</summary>
    public SurfacePoint[] Trace()
    {
        var trace = new List<SurfacePoint>(6);
        double reach = 1.5 * EdgeDistance;
        if (First - Low < reach)
        {
            trace.Add(new(Low, 0));
            trace.Add(new(Low, EdgeDistance - ((First - Low) / 1.5)));
        }
        else
        {
            trace.Add(new(First - reach, 0));
        }

        trace.Add(new(First, EdgeDistance));
        if (Last > First)
        {
            trace.Add(new(Last, EdgeDistance));
        }

        if (High - Last < reach)
        {
            trace.Add(new(High, EdgeDistance - ((High - Last) / 1.5)));
            trace.Add(new(High, 0));
        }
        else
        {
            trace.Add(new(Last + reach, 0));
        }

        return [.. trace];
    }

    /// <summary>A place before the edge as a place in the surface.</summary>
    public SurfacePoint InSurface(in Rectangle concrete, SurfacePoint place)
    {
        double edge = Side.PlaceIn(concrete), inward = edge - (Side.Sign() * place.Y);
        return Side.IsAlongX() ? new(inward, place.X) : new(place.X, inward);
    }
}
