using ConcreteAttach.Attached;
using ConcreteAttach.Calculation;
using ConcreteAttach.Geometry;
using ConcreteAttach.Quantities;
using ConcreteAttach.Verification;

namespace ConcreteAttach.Presentation.Drawings;

/// <summary>
/// The concrete that a shear breakout tears out at an edge, in coordinates of the edge: along it, and from it into the concrete. The lengths are those of the sheet.
/// </summary>
internal sealed class ShearBody
{
    private ShearBody(ConcreteSide side, double edgeDistance, double rowDistance, double first, double last, double low, double high, double thickness, double below = 0)
    {
        Side = side;
        EdgeDistance = edgeDistance;
        RowDistance = rowDistance;
        First = first;
        Last = last;
        Low = low;
        High = high;
        Below = below;
        Depth = Math.Min(below + (1.5 * edgeDistance), thickness);
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

    /// <summary>The shear lug before which the body breaks out; null of fasteners.</summary>
    public ShearLug? Lug { get; private init; }

    /// <summary>h_ef,sl, below which the body of a shear lug reaches 1.5 c_a1 down; 0 of fasteners.</summary>
    public double Below { get; }

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

        if (ShownCase.IsOfLug(mode))
        {
            return OfLug(shown, mode, mode.Sheet, rowDistance);
        }

        bool isAlongX = mode.Side.IsAlongX();
        double[] along = [.. mode.Group.Select(i => isAlongX ? shown.Y[i] : shown.X[i])];
        (double low, double high) = isAlongX ? (shown.Concrete.Bottom, shown.Concrete.Top) : (shown.Concrete.Left, shown.Concrete.Right);
        return new(mode.Side, mode.Sheet.Find("c_a1'") ?? rowDistance, rowDistance, along.Min(), along.Max(), low, high, shown.Thickness);
    }

    /// <summary>The body before a shear lug; null along an edge where some of several lugs act together.</summary>
    private static ShearBody? OfLug(ShownCase shown, FailureMode mode, CalculationSheet sheet, double distance)
    {
        bool isAlongX = mode.Side.IsAlongX(), isParallel = mode.Kind == FailureModeKind.ShearLugParallel;
        ShearLug[] lugs = [.. shown.Verification.Attachment.ShearLugs.Where(lug => (lug.Takes == ShearAxis.X) == (isAlongX != isParallel)).OrderBy(lug => mode.Side.Sign() * -Along(lug, isAlongX))];
        if (isParallel && lugs.Length > 1)
        {
            return null;
        }

        ShearLug lug = lugs[isParallel ? 0 : mode.Result.Number - 1];
        double middle = Along(lug, !isAlongX), half = (isParallel ? lug.Thickness : lug.Width).In(shown.System) / 2;
        (double low, double high) = isAlongX ? (shown.Concrete.Bottom, shown.Concrete.Top) : (shown.Concrete.Left, shown.Concrete.Right);
        return new(mode.Side, sheet.Find("c_a1'") ?? distance, distance, middle - half, middle + half, low, high, shown.Thickness, sheet.Find("h_ef_sl") ?? 0) { Lug = lug };

        double Along(ShearLug one, bool alongX) => (alongX ? one.At.X : one.At.Y).In(shown.System);
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
