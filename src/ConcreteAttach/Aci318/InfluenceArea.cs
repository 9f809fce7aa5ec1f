using System.Runtime.CompilerServices;
using ConcreteAttach.Calculation;
using ConcreteAttach.Geometry;
using ConcreteAttach.Quantities;

namespace ConcreteAttach.Aci318;

/// <summary>The part of the surface that a group uses in tension: squares about its fasteners, cut at the edges (17.6.2.1.1, 17.6.5.1.1).</summary>
internal static class InfluenceArea
{
    /// <summary>A_Nc or A_Na, at most n times the area of one fastener.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="data">The attachment.</param>
    /// <param name="group">The fasteners.</param>
    /// <param name="reach">Half side of a square.</param>
    /// <param name="perFastener">Area of a whole square.</param>
    /// <param name="id">Symbol of the area.</param>
    /// <param name="clauses">Where it comes from.</param>
    /// <param name="scratch">Working memory of <see cref="ProjectedArea.ScratchLength"/>.</param>
    public static T Of<T>(Sheet<T> sheet, AnchorageData data, in BreakoutGroup group, T reach, T perFastener, string id, AreaClauses clauses, Span<double> scratch)
        where T : struct, IFormulaNumber<T>
    {
        if (data.Outline is { } outline)
        {
            return In(outline, sheet, data, group, reach, perFastener, id, clauses);
        }

        // One square is a rectangle wherever it is cut; of several it has to be found out.
        Projection projection = group.Count == 1 ? default : ProjectedArea.Project(group.X, group.Y, group.Extent, reach.Value, data.Concrete, scratch);
        bool isRectangle = group.Count == 1 || projection.IsRectangle;
        bool isBounding = !isRectangle && data.Options.Area == AreaReading.Bounding;
        if (!isRectangle && !isBounding)
        {
            return sheet.Given(id, projection.Area, Dimension.Area, clauses.Union);
        }

        return Rectangular(sheet, group, reach, perFastener, id, clauses, data.Concrete, isBounding);
    }

    /// <summary>In an outline: what the squares reach of the concrete that their fasteners see.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)] // outlines are rare: they cost the common path nothing
    private static T In<T>(
        FastenersInOutline outline, Sheet<T> sheet, AnchorageData data, in BreakoutGroup group, T reach, T perFastener, string id, AreaClauses clauses)
        where T : struct, IFormulaNumber<T>
    {
        Projection projection = outline.Project(group.Members, reach.Value);
        bool isBounding = !projection.IsRectangle && data.Options.Area == AreaReading.Bounding;
        if (!projection.IsRectangle && !isBounding)
        {
            return sheet.Given(id, projection.Area, Dimension.Area, clauses.Outline);
        }

        // Where the area ends at the reach of a square there is no edge.
        ref readonly Rectangle extent = ref group.Extent;
        (double left, double right, double bottom, double top) = projection.Bounds;
        var edges = new Rectangle(
            Limit.IsBelow(extent.Left - left, reach.Value) ? left : double.NegativeInfinity,
            Limit.IsBelow(right - extent.Right, reach.Value) ? right : double.PositiveInfinity,
            Limit.IsBelow(extent.Bottom - bottom, reach.Value) ? bottom : double.NegativeInfinity,
            Limit.IsBelow(top - extent.Top, reach.Value) ? top : double.PositiveInfinity);
        return Rectangular(sheet, group, reach, perFastener, id, clauses, edges, isBounding);
    }

    private static T Rectangular<T>(
        Sheet<T> sheet, in BreakoutGroup group, T reach, T perFastener, string id, AreaClauses clauses, in Rectangle concrete, bool isBounding)
        where T : struct, IFormulaNumber<T>
    {
        T width = Extent(sheet, reach, group.Extent.Left - concrete.Left, group.Extent.Width, concrete.Right - group.Extent.Right, "c_-x", "s_x", "c_+x");
        T height = Extent(sheet, reach, group.Extent.Bottom - concrete.Bottom, group.Extent.Height, concrete.Top - group.Extent.Top, "c_-y", "s_y", "c_+y");
        if (isBounding && width.Value * height.Value > group.Count * perFastener.Value)
        {
            T n = sheet.Given("n", group.Count, Dimension.None);
            return sheet.Step(id, T.Min(width * height, n * perFastener), Dimension.Area, clauses.Bounding);
        }

        return sheet.Step(id, width * height, Dimension.Area, clauses.Rectangle);
    }

    /// <summary>One side of a rectangle: to the edge or as far as a square reaches, whichever is less, on both sides of the outer fasteners.</summary>
    private static T Extent<T>(Sheet<T> sheet, T reach, double toLow, double span, double toHigh, string lowId, string spanId, string highId)
        where T : struct, IFormulaNumber<T>
    {
        T low = toLow < reach.Value ? sheet.Given(lowId, toLow, Dimension.Length, "to the edge, from the outermost fastener") : reach;
        T high = toHigh < reach.Value ? sheet.Given(highId, toHigh, Dimension.Length, "to the edge, from the outermost fastener") : reach;
        return span > 0 ? low + sheet.Given(spanId, span, Dimension.Length, "between the outer fasteners") + high : low + high;
    }
}

/// <summary>Where an area comes from, in words: made once, so that the fast path carries one reference.</summary>
/// <param name="Rectangle">A rectangle.</param>
/// <param name="Bounding">The rectangle about the squares, cut to n squares.</param>
/// <param name="Union">Any other union of squares.</param>
/// <param name="Outline">What the squares reach of an outline.</param>
internal sealed record AreaClauses(string Rectangle, string Bounding, string Union, string Outline);
