using ConcreteAttach.Calculation;
using ConcreteAttach.Quantities;
using ConcreteAttach.Verification;

namespace ConcreteAttach.Aci318;

/// <summary>
/// What 17.5.2.1 asks of anchor reinforcement before it takes the place of breakout: developed for f_y on both sides of the breakout surface, or enclosing and touching the fastener and
/// developed beyond it. Where it may lie is from the commentary (R17.5.2.1).
/// </summary>
/// <remarks>The breakout surface rises from the head at 1.5 across for 1 up, and in shear runs from the fastener to the edge at 1.5 along for 1 across.</remarks>
internal static class ReinforcementDetailing
{
    /// <summary>Most modes that <see cref="Write"/> writes.</summary>
    public static int MostModes(int edges) => 1 + edges;

    private static readonly ModeName TensionName = new(FailureModeKind.ReinforcementTensionDetailing, "17.5.2.1(a)");
    private static readonly ModeName ShearName = new(FailureModeKind.ReinforcementShearDetailing, "17.5.2.1(b)");
    private static readonly ModeName EarthquakeName = new(FailureModeKind.EarthquakeReinforcement, "17.10.4");

    /// <summary>Writes the rules of each reinforcement.</summary>
    public static void Write<T>(AnchorageData data, in ModeWriter<T> writer)
        where T : struct, IFormulaNumber<T>
    {
        if (data.Reinforcement is not { } reinforcement)
        {
            return;
        }

        if (reinforcement.Tension is { } tension)
        {
            Sheet<T> sheet = writer.NewSheet();
            string? broken = Broken(sheet, data, tension);
            Detailing.WriteRule(new ModeLabel(TensionName), broken is null, broken ?? "", default, writer);
        }

        foreach (ShearBars? shear in reinforcement.Shear)
        {
            if (shear is not null)
            {
                Sheet<T> sheet = writer.NewSheet();
                string? broken = Broken(sheet, data, shear);
                Detailing.WriteRule(new ModeLabel(ShearName, shear.Edge.Side), broken is null, broken ?? "", default, writer);
            }
        }
    }

    /// <summary>Under earthquake: deformed bars by 20.2.2 (17.10.4).</summary>
    public static void WriteEarthquake<T>(AnchorageData data, in ModeWriter<T> writer)
        where T : struct, IFormulaNumber<T>
    {
        if (data.Reinforcement is not { } reinforcement)
        {
            return;
        }

        var bars = reinforcement.Shear.OfType<ShearBars>().Select(b => b.Given.Bars).Concat(reinforcement.Tension is { } tension ? [tension.Given.Bars] : []).ToList();
        bool isKnown = bars.TrueForAll(b => b.MeetsEarthquakeConditions || b.Steel.Designation.StartsWith("ASTM A706", StringComparison.Ordinal));
        writer.WriteWithout(
            new ModeLabel(EarthquakeName), isKnown ? ModeStatus.Satisfied : ModeStatus.NotCovered,
            isKnown ? null : "Anchor reinforcement under earthquake is of deformed bars by 20.2.2: ASTM A706, or A615 with the conditions of 20.2.2.5, which is not stated.");
    }

    /// <summary>The first rule that bars for tension break; null where they break none.</summary>
    public static string? Broken<T>(Sheet<T> sheet, AnchorageData data, TensionBars bars)
        where T : struct, IFormulaNumber<T>
    {
        T hef = sheet.Given("h_ef", data.Embedment, Dimension.Length);
        T farthest = sheet.Given("a_max", bars.Farthest, Dimension.Length, "farthest bar from its fastener, axis to axis");
        T nearest = sheet.Given("a_min", bars.Nearest, Dimension.Length, "nearest bar to its fastener");
        string? broken = Array.TrueForAll(bars.BarsOf, n => n > 0) ? null : "A fastener has no bar that is nearest to it: each needs its own.";
        broken = sheet.When(farthest <= 0.5 * hef, "R17.5.2.1(a)") ? broken : broken ?? "A bar is farther than 0.5 h_ef from its fastener.";

        T upperEnd = sheet.Given("c_t", bars.UpperEndDepth, Dimension.Length, bars.Given.UpperEndDepth is null ? "surface to the upper end: the cover" : "surface to the upper end");
        T above = sheet.Step("l_above", hef - (farthest / 1.5) - upperEnd, Dimension.Length, "17.5.2.1(a), above the breakout surface");
        T neededAbove = BarDevelopment.Needed(sheet, data, bars.Bar, bars.Given.UpperEnd);
        broken = sheet.When(above >= neededAbove, "17.5.2.1(a)") ? broken : broken ?? "The bars are not developed above the breakout surface.";

        T lowerEnd = sheet.Given("z_b", bars.LowerEndDepth, Dimension.Length, "surface to the lower end");
        T below = sheet.Step("l_below", lowerEnd - (hef - (nearest / 1.5)), Dimension.Length, "17.5.2.1(a), below the breakout surface");
        T neededBelow = BarDevelopment.Needed(sheet, data, bars.Bar, bars.Given.LowerEnd);
        broken = sheet.When(below >= neededBelow, "17.5.2.1(a)") ? broken : broken ?? "The bars are not developed below the breakout surface.";
        return BarDevelopment.Excluded(data, bars.Bar, bars.Given.UpperEnd) ?? BarDevelopment.Excluded(data, bars.Bar, bars.Given.LowerEnd) ?? broken;
    }

    /// <summary>The first rule that bars for shear break; null where they break none.</summary>
    public static string? Broken<T>(Sheet<T> sheet, AnchorageData data, ShearBars bars)
        where T : struct, IFormulaNumber<T>
    {
        string? broken = bars.Given.IsEnclosing ? Enclosing(sheet, data, bars) : Crossing(sheet, data, bars);
        T offset = sheet.Given("a_min", bars.Offset, Dimension.Length, bars.Given.IsEnclosing ? "leg from the axis of the fastener it touches: (d_a + d_b)/2" : "nearest bar to its fastener, along the edge");
        T length = sheet.Given("l_i", bars.InnerLength, Dimension.Length, "from the axis of the fastener to the inner end");
        T inside = sheet.Step("l_inside", length + (offset / 1.5), Dimension.Length, "17.5.2.1(b), beyond the breakout surface");
        T needed = BarDevelopment.Needed(sheet, data, bars.Bar, bars.Given.InnerEnd);
        broken = sheet.When(inside >= needed, "17.5.2.1(b)") ? broken : broken ?? "The bars are not developed beyond the breakout surface.";
        return BarDevelopment.Excluded(data, bars.Bar, bars.Given.InnerEnd) ?? broken;
    }

    /// <summary>Bars that touch the fastener lie where it stands.</summary>
    private static string? Enclosing<T>(Sheet<T> sheet, AnchorageData data, ShearBars bars)
        where T : struct, IFormulaNumber<T>
    {
        sheet.Note("The bars enclose the fasteners and touch them: what they need is development beyond the breakout surface.");
        T depth = sheet.Given("z_s", bars.Depth, Dimension.Length, "surface to the axis of the bars");
        T hef = sheet.Given("h_ef", data.Embedment, Dimension.Length);
        return sheet.When(depth <= hef) ? null : "The bars lie below the fasteners, so that they cannot enclose them.";
    }

    /// <summary>Bars beside the fasteners: where they may lie, reinforcement along the edge, development toward the edge.</summary>
    private static string? Crossing<T>(Sheet<T> sheet, AnchorageData data, ShearBars bars)
        where T : struct, IFormulaNumber<T>
    {
        string? broken = Array.TrueForAll(bars.Edge.Order, i => bars.BarsOf[i] > 0) ? null : "A fastener has no bar that is nearest to it: each needs its own.";
        PlacedBar decisive = bars.Decisive;
        T distance = sheet.Given("a", decisive.Distance, Dimension.Length, "bar from its fastener along the edge, where it uses most of what is permitted");
        T ofEdge = sheet.Given("c_a1", decisive.EdgeDistance, Dimension.Length);
        bool isNear = sheet.When(distance <= 0.5 * ofEdge, "R17.5.2.1(b)");
        if (double.IsFinite(decisive.SideDistance))
        {
            T ofSide = sheet.Given("c_a2", decisive.SideDistance, Dimension.Length);
            isNear &= sheet.When(distance <= 0.3 * ofSide, "R17.5.2.1(b)");
        }

        broken = isNear ? broken : broken ?? "A bar is farther from its fastener than the lesser of 0.5 c_a1 and 0.3 c_a2.";
        bool hasEdgeBar = data.EdgeReinforcement != Materials.EdgeReinforcement.None;
        sheet.Note(hasEdgeBar ? "Reinforcement along the edge, as stated: equilibrium needs it (R17.5.2.1(b))." : "No reinforcement along the edge is stated: equilibrium needs it (R17.5.2.1(b)).");
        broken = hasEdgeBar ? broken : broken ?? "Bars beside the fasteners need reinforcement along the edge for equilibrium: none is stated.";

        T nearestEdge = sheet.Given("c_a1_min", bars.EdgeDistance, Dimension.Length, "of the fasteners nearest to the edge");
        T farthest = sheet.Given("a_max", bars.Farthest, Dimension.Length, "farthest bar from its fastener, along the edge");
        T depth = sheet.Given("z_s", bars.Depth, Dimension.Length, "surface to the axis of the bars");
        T cover = sheet.Given("c_o", bars.OuterCover, Dimension.Length, bars.Given.OuterCover is null ? "edge to the outer end: the cover" : "edge to the outer end");
        T outside = sheet.Step("l_outside", nearestEdge - (T.Max(farthest, depth) / 1.5) - cover, Dimension.Length, "17.5.2.1(b), toward the edge from the breakout surface");
        T needed = BarDevelopment.Needed(sheet, data, bars.Bar, bars.Given.OuterEnd);
        broken = sheet.When(outside >= needed, "17.5.2.1(b)") ? broken : broken ?? "The bars are not developed toward the edge.";
        return BarDevelopment.Excluded(data, bars.Bar, bars.Given.OuterEnd) ?? broken;
    }
}
