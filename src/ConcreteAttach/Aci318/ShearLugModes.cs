using ConcreteAttach.Calculation;
using ConcreteAttach.Distribution;
using ConcreteAttach.Geometry;
using ConcreteAttach.Quantities;
using ConcreteAttach.Verification;

namespace ConcreteAttach.Aci318;

/// <summary>17.11 The modes of an attachment with shear lugs: which lugs take part in which, with what part of the shear.</summary>
internal static class ShearLugModes
{
    /// <summary>Why the modes in shear of the anchors are not applicable.</summary>
    private const string NoShearOnAnchors = "The shear lug takes the shear: the anchors need no check of their steel, of breakout or of pryout in shear (17.11.1.1).";

    private const string BesideEachOther = "Shear lugs of one axis do not stand one behind the other: 17.11.2.4 speaks of such lugs alone.";
    private const string InOutline = "Breakout of a shear lug in a concrete surface that is given by an outline: 17.11.3 speaks of orthogonal edges.";
    private const string NoSteelArea = "The tensile area is not known, so that N_sa of 17.11.2.2.1a is not: give thread or tensileArea.";
    private const string NoAreaLeft = "The lug takes up the whole area that would break out along the edge.";
    private const string NoBearingLeft = "The axial tension is n N_sa or more: no bearing strength is left (17.11.2.2.1a).";

    public static readonly ModeName Bearing = new(FailureModeKind.ShearLugBearing, "17.11.2", "phi V_brg_sl", "V_ua_sl", "shear along the axis of the lugs");

    private static readonly ModeName Toward = new(FailureModeKind.ShearLugBreakout, "17.11.3", "phi V_cb_sl", "V_ua_sl");
    private static readonly ModeName Along = new(FailureModeKind.ShearLugParallel, "17.11.3", "phi V_cb_sl", "V_ua_sl");
    private static readonly ModeName TorsionName = new(FailureModeKind.ShearLugTorsion, "17.11");
    private static readonly ModeName DepthName = new(FailureModeKind.ShearLugDepth, "17.11.1.1");
    private static readonly ModeName DistanceName = new(FailureModeKind.ShearLugDistance, "17.11.1.1");
    private static readonly ModeName AnchorsName = new(FailureModeKind.ShearLugAnchors, "17.11.1.1");
    private static readonly ModeName PlateName = new(FailureModeKind.ShearLugPlate, "17.11.1.1");
    private static readonly ModeName StiffenersName = new(FailureModeKind.ShearLugStiffeners, "17.11.2.3");

    /// <summary>Least of h_ef over h_sl and over c_sl (17.11.1.1).</summary>
    private const double LeastRatio = 2.5;

    /// <summary>Least number of anchors (17.11.1.1).</summary>
    private const int LeastAnchors = 4;

    /// <summary>Rules that hold whatever the load; how many <see cref="WriteDetailing"/> writes.</summary>
    public const int DetailingCount = 3;

    /// <summary>Writes the modes of the lugs, and of the anchors beside them.</summary>
    /// <param name="data">The attachment.</param>
    /// <param name="lugs">Its lugs.</param>
    /// <param name="actions">The load case.</param>
    /// <param name="tension">Tension on each anchor.</param>
    /// <param name="shearX">Shear along x on each anchor, where it is welded.</param>
    /// <param name="shearY">Shear along y on each anchor, where it is welded.</param>
    /// <param name="state">What of the load case the modes of the anchors go by.</param>
    /// <param name="writer">Takes the modes.</param>
    /// <param name="free">Working memory of <see cref="ShearModes.ScratchLength"/>.</param>
    /// <returns>The highest ratio of the anchors' shear, for the interaction.</returns>
    public static HighestRatio Write<T>(
        AnchorageData data, ShearLugData lugs, in PreparedActions actions, ReadOnlySpan<double> tension, ReadOnlySpan<double> shearX, ReadOnlySpan<double> shearY,
        in LoadState state, in ModeWriter<T> writer, Span<double> free)
        where T : struct, IFormulaNumber<T>
    {
        HighestRatio ofAnchors = new(0, IsKnown: true);
        if (lugs.TakeShare)
        {
            writer.Notice("The anchors are welded to the plate: each takes its part of the shear beside the lug, for all modes in shear and the interaction (17.11.1.1, 17.8). The lug is checked with all of it.");
            ofAnchors = ShearModes.Write(data, shearX, shearY, state, writer, free);
        }
        else
        {
            writer.WriteWithout(new ModeLabel(SteelShear.Name), ModeStatus.NotApplicable, NoShearOnAnchors);
            writer.WriteWithout(new ModeLabel(ConcreteBreakoutShear.Toward), ModeStatus.NotApplicable, NoShearOnAnchors);
            writer.WriteWithout(new ModeLabel(ConcreteBreakoutShear.Along), ModeStatus.NotApplicable, NoShearOnAnchors);
            writer.WriteWithout(new ModeLabel(Pryout.OfGroup), ModeStatus.NotApplicable, NoShearOnAnchors);
        }

        double least = TensionModes.LeastShare * Math.Max(Math.Abs(actions.Vx), Math.Abs(actions.Vy));
        int tensioned = CountInTension(tension);
        OneAxis(data, lugs, lugs.AlongX, isAlongX: true, actions.N, Clean(actions.Vx, least), tensioned, writer);
        OneAxis(data, lugs, lugs.AlongY, isAlongX: false, actions.N, Clean(actions.Vy, least), tensioned, writer);
        Torsion(data, lugs, actions, least, writer);
        Depth(data, lugs, tensioned, writer);
        Distance(data, lugs.AlongX, data.X, Clean(actions.Vx, least), tension, writer);
        Distance(data, lugs.AlongY, data.Y, Clean(actions.Vy, least), tension, writer);
        if (lugs is { AlongX: not null, AlongY: not null } && Clean(actions.Vx, least) != 0 && Clean(actions.Vy, least) != 0)
        {
            writer.Notice("Shear along both axes: each component is checked with the lugs of its axis, apart from the other; 17.11 has no rule for both together.");
        }

        _ = writer.TakeHighest(); // lugs take no part in the interaction of 17.8
        return ofAnchors;
    }

    /// <summary>Writes that 17.8 has nothing to combine where the anchors take no shear.</summary>
    public static void WriteNoInteraction<T>(in ModeWriter<T> writer)
        where T : struct, IFormulaNumber<T> =>
        writer.WriteWithout(new ModeLabel(Interaction.Name), ModeStatus.NotApplicable, "The shear lug takes the shear, so that no anchor has tension and shear together (17.11.1.1).");

    /// <summary>Writes what holds whatever the load: number of anchors, plate, stiffeners.</summary>
    public static void WriteDetailing<T>(AnchorageData data, ShearLugData lugs, in ModeWriter<T> writer)
        where T : struct, IFormulaNumber<T>
    {
        bool isEnough = data.Count >= LeastAnchors;
        writer.WriteWithout(new ModeLabel(AnchorsName), isEnough ? ModeStatus.Satisfied : ModeStatus.NotCovered, isEnough ? null : "An attachment with shear lugs has at least four anchors: chapter 17 does not cover fewer.");
        bool hasPlate = data.Plate is not null;
        writer.WriteWithout(new ModeLabel(PlateName), hasPlate ? ModeStatus.Satisfied : ModeStatus.NotCovered, hasPlate ? null : "Shear lugs are welded to a base plate, and none is given: give plate.");
        var stiffeners = new ModeLabel(StiffenersName);
        LugBody? worst = null;
        foreach (LugBody lug in (lugs.AlongX?.Lugs ?? []).Concat(lugs.AlongY?.Lugs ?? []))
        {
            worst = lug.StiffenerLength is { } length && (worst is null || length / lug.Embedment < worst.StiffenerLength / worst.Embedment) ? lug : worst;
        }

        if (worst is null)
        {
            writer.WriteWithout(stiffeners, ModeStatus.NotApplicable, "The lugs have no stiffeners.");
            return;
        }

        Sheet<T> sheet = writer.NewSheet();
        T given = sheet.Given("l_st", worst.StiffenerLength!.Value, Dimension.Length, "length of the stiffeners along the shear");
        T hsl = sheet.Given("h_sl", worst.Embedment, Dimension.Length, "below the surface of the concrete");
        Detailing.WriteRule(stiffeners, sheet.When(given >= 0.5 * hsl), "The stiffeners are shorter than half the embedment of the lug.", default, writer);
    }

    private static double Clean(double shear, double least) => Math.Abs(shear) > least ? shear : 0;

    private static int CountInTension(ReadOnlySpan<double> tension)
    {
        double largest = 0;
        foreach (double force in tension)
        {
            largest = Math.Max(largest, Math.Abs(force));
        }

        int count = 0;
        foreach (double force in tension)
        {
            count += force > TensionModes.LeastShare * largest ? 1 : 0;
        }

        return count;
    }

    private static void OneAxis<T>(AnchorageData data, ShearLugData lugs, LugSet? set, bool isAlongX, double axial, double shear, int tensioned, in ModeWriter<T> writer)
        where T : struct, IFormulaNumber<T>
    {
        var bearing = new ModeLabel(Bearing, Number: isAlongX ? 1 : 2);
        if (set is null && shear == 0)
        {
            return;
        }

        writer.Place(isAlongX ? "shear along x" : "shear along y");
        if (set is null)
        {
            writer.WriteWithout(bearing, ModeStatus.NotCovered, isAlongX ? "There is shear along x and no shear lug for it." : "There is shear along y and no shear lug for it.");
            return;
        }

        if (!set.StandBehindEachOther || (axial > 0 && double.IsNaN(data.TensileArea)))
        {
            writer.WriteGap(bearing, shear != 0, set.StandBehindEachOther ? NoSteelArea : BesideEachOther);
        }
        else
        {
            Sheet<T> sheet = writer.NewSheet();
            T nominal = ShearLugs.BearingStrength(sheet, data, lugs, set, axial, tensioned, shear);
            if (nominal.Value > 0)
            {
                writer.Check(sheet, bearing, nominal, StrengthReduction.ShearLug(sheet), Math.Abs(shear), default);
            }
            else
            {
                writer.WriteWithout(bearing, shear != 0 ? ModeStatus.NotSatisfied : ModeStatus.NotApplicable, shear != 0 ? NoBearingLeft : "No demand.");
            }
        }

        if (!set.StandBehindEachOther || data.Outline is not null)
        {
            writer.WriteGap(new ModeLabel(Toward, Number: bearing.Number), shear != 0, data.Outline is null ? BesideEachOther : InOutline);
            return;
        }

        bool allCount = ShearLugs.AllCount(data, set, shear);
        (ConcreteSide high, ConcreteSide low) = isAlongX ? (ConcreteSide.PlusX, ConcreteSide.MinusX) : (ConcreteSide.PlusY, ConcreteSide.MinusY);
        (ConcreteSide left, ConcreteSide right) = isAlongX ? (ConcreteSide.PlusY, ConcreteSide.MinusY) : (ConcreteSide.PlusX, ConcreteSide.MinusX);
        if (shear >= 0)
        {
            TowardEdge(data, set, high, shear, allCount, writer);
        }

        if (shear <= 0)
        {
            TowardEdge(data, set, low, -shear, allCount, writer);
        }

        AlongEdge(data, set, left, Math.Abs(shear), allCount, writer);
        AlongEdge(data, set, right, Math.Abs(shear), allCount, writer);
    }

    /// <summary>
    /// Breakout toward an edge, a surface before each lug. Lug k from the edge is checked with its part, by area, of what it and the lugs behind it take, which is all of the shear (cases 1 and 2 of Fig. R17.7.2.1b); where the next lug
    /// is closer to the front one than its c_a1 the front lug takes all (case 3). Where the lugs do not count together each takes all.
    /// </summary>
    private static void TowardEdge<T>(AnchorageData data, LugSet set, ConcreteSide side, double shear, bool allCount, in ModeWriter<T> writer)
        where T : struct, IFormulaNumber<T>
    {
        if (!double.IsFinite(side.PlaceIn(data.Concrete)))
        {
            return;
        }

        int count = set.Lugs.Length;
        int sign = side.Sign();
        double behind = set.Area;
        for (int k = 0; k < count; k++)
        {
            LugBody lug = set.Lugs[sign > 0 ? count - 1 - k : k];
            LugBreakout body = BodyToward(data, lug, side);
            bool isFrontAlone = false;
            if (allCount && k == 0 && count > 1)
            {
                LugBody next = set.Lugs[sign > 0 ? count - 2 : 1];
                isFrontAlone = Limit.IsBelow(Math.Abs(next.Along - lug.Along), body.EdgeDistance);
            }

            Sheet<T> sheet = writer.NewSheet();
            if (count > 1)
            {
                sheet.Note(
                    !allCount ? "The lugs do not count together (17.11.2.4): each is checked with all of the shear."
                    : isFrontAlone ? "The next lug is closer than c_a1 of the front one, which takes all (case 3 of Fig. R17.7.2.1b)."
                    : "Of this lug and those behind it, which take all of the shear once those before it have broken out, its part by area (cases 1 and 2 of Fig. R17.7.2.1b).");
                if (writer.IsTracing)
                {
                    writer.Place($"lug {QuantityText.Format(k + 1)} of {QuantityText.Format(count)} from the edge");
                }
            }

            T nominal = ShearLugBreakout.NominalStrength(sheet, data, body, isParallel: false);
            T phi = StrengthReduction.ShearLug(sheet);
            T demand = sheet.Given(count > 1 ? "V_ua" : Toward.DemandId, shear, Dimension.Force, "shear toward the edge");
            if (count > 1)
            {
                double part = !allCount || isFrontAlone ? 1 : k == count - 1 ? 1 : lug.Area / behind;
                demand = sheet.Step(Toward.DemandId, demand * sheet.Given("w_A", part, Dimension.None, "part of this lug, by area"), Dimension.Force, "Fig. R17.7.2.1b");
                behind -= lug.Area;
            }

            writer.Check(sheet, new ModeLabel(Toward, side, k + 1), nominal, phi, demand, default);
            if (isFrontAlone)
            {
                return;
            }
        }
    }

    private static LugBreakout BodyToward(AnchorageData data, LugBody lug, ConcreteSide side)
    {
        ref readonly Rectangle concrete = ref data.Concrete;
        (double low, double high) = side.IsAlongX() ? (concrete.Bottom, concrete.Top) : (concrete.Left, concrete.Right);
        double distance = (side.Sign() * (side.PlaceIn(concrete) - lug.Along)) - (lug.Thickness / 2);
        return new(side, distance, lug.Width, lug.Across - (lug.Width / 2) - low, high - lug.Across - (lug.Width / 2), lug.EffectiveDepth, lug.Area);
    }

    /// <summary>
    /// Breakout along an edge: lugs whose areas meet, at gaps below 3 c_a1, act together from the one nearest to the edge; others apart, with their part of the shear by area. Where the lugs do not
    /// count together each takes all.
    /// </summary>
    private static void AlongEdge<T>(AnchorageData data, LugSet set, ConcreteSide side, double shear, bool allCount, in ModeWriter<T> writer)
        where T : struct, IFormulaNumber<T>
    {
        double place = side.PlaceIn(data.Concrete);
        if (!double.IsFinite(place))
        {
            return;
        }

        double nearest = double.PositiveInfinity;
        foreach (LugBody lug in set.Lugs)
        {
            nearest = Math.Min(nearest, side.Sign() * (place - lug.Across));
        }

        int number = 0;
        for (int start = 0; start < set.Lugs.Length;)
        {
            int end = start + 1;
            while (allCount && end < set.Lugs.Length && Limit.IsBelow(set.ClearGap(end), 3 * nearest))
            {
                end++;
            }

            LugBreakout body = BodyAlong(data, set, start, end, side);
            Sheet<T> sheet = writer.NewSheet();
            sheet.Note("Shear along the edge: twice the strength toward the edge with ψ_ed,V = 1, c_a1 to the middle of the lug; checked apart from the component toward the edge (17.11.3.2).");
            T nominal = ShearLugBreakout.NominalStrength(sheet, data, body, isParallel: true);
            var mode = new ModeLabel(Along, side, ++number);
            if (nominal.Value > 0)
            {
                T phi = StrengthReduction.ShearLug(sheet);
                bool isWhole = !allCount || end - start == set.Lugs.Length;
                T demand = sheet.Given(isWhole ? Along.DemandId : "V_ua", shear, Dimension.Force, "shear along the edge");
                if (!isWhole)
                {
                    demand = sheet.Step(Along.DemandId, demand * sheet.Given("w_A", body.Area / set.Area, Dimension.None, "part of these lugs, by area"), Dimension.Force, "17.11.3.2");
                }

                writer.Check(sheet, mode, nominal, phi, demand, default);
            }
            else
            {
                writer.WriteGap(mode, shear > 0, NoAreaLeft);
            }

            start = end;
        }
    }

    private static LugBreakout BodyAlong(AnchorageData data, LugSet set, int start, int end, ConcreteSide side)
    {
        ref readonly Rectangle concrete = ref data.Concrete;
        (double low, double high) = side.IsAlongX() ? (concrete.Bottom, concrete.Top) : (concrete.Left, concrete.Right);
        double distance = double.PositiveInfinity, depth = double.PositiveInfinity, area = 0;
        foreach (LugBody lug in set.Lugs.AsSpan(start..end))
        {
            distance = Math.Min(distance, side.Sign() * (side.PlaceIn(concrete) - lug.Across));
            depth = Math.Min(depth, lug.EffectiveDepth);
            area += lug.Area;
        }

        double first = set.Lugs[start].Along - (set.Lugs[start].Thickness / 2);
        double last = set.Lugs[end - 1].Along + (set.Lugs[end - 1].Thickness / 2);
        return new(side, distance, last - first, first - low, high - last, depth, area);
    }

    /// <summary>Torsion about where the lugs take the shear. No clause says how lugs carry it, one or several.</summary>
    private static void Torsion<T>(AnchorageData data, ShearLugData lugs, in PreparedActions actions, double least, in ModeWriter<T> writer)
        where T : struct, IFormulaNumber<T>
    {
        ElasticGroup group = data.Distribution.Elastic;
        double armX = (lugs.AlongY?.Across ?? group.CentroidX) - group.CentroidX;
        double armY = (lugs.AlongX?.Across ?? group.CentroidY) - group.CentroidY;
        double torsion = actions.Mz - (armX * actions.Vy) + (armY * actions.Vx);
        double scale = Math.Abs(actions.Mz) + (least / TensionModes.LeastShare * (group.Reach + Math.Abs(armX) + Math.Abs(armY) + Math.Abs(group.CentroidX) + Math.Abs(group.CentroidY)));
        bool isTwisted = Math.Abs(torsion) > TensionModes.LeastShare * scale;
        writer.WriteGap(new ModeLabel(TorsionName), isTwisted, "The shear does not pass through the middle of the lugs that take it, or there is torsion: 17.11 has no rule for torsion on shear lugs.");
    }

    /// <summary>h_ef/h_sl of at least 2.5 where anchors are in tension.</summary>
    private static void Depth<T>(AnchorageData data, ShearLugData lugs, int tensioned, in ModeWriter<T> writer)
        where T : struct, IFormulaNumber<T>
    {
        var mode = new ModeLabel(DepthName);
        if (tensioned == 0)
        {
            writer.WriteWithout(mode, ModeStatus.NotApplicable, "No anchor is in tension.");
            return;
        }

        Sheet<T> sheet = writer.NewSheet();
        T hef = sheet.Given("h_ef", data.Embedment, Dimension.Length);
        T hsl = sheet.Given("h_sl", Math.Max(Deepest(lugs.AlongX), Deepest(lugs.AlongY)), Dimension.Length, "below the surface of the concrete, deepest lug");
        Detailing.WriteRule(mode, sheet.When(hef >= LeastRatio * hsl), "h_ef is less than 2.5 h_sl.", default, writer);

        static double Deepest(LugSet? set)
        {
            double deepest = 0;
            foreach (LugBody lug in set is null ? [] : set.Lugs)
            {
                deepest = Math.Max(deepest, lug.Embedment);
            }

            return deepest;
        }
    }

    /// <summary>h_ef/c_sl of at least 2.5: c_sl from the middle of a lug to the nearest row of anchors in tension, along the shear; the lug where it is largest.</summary>
    private static void Distance<T>(AnchorageData data, LugSet? set, double[] places, double shear, ReadOnlySpan<double> tension, in ModeWriter<T> writer)
        where T : struct, IFormulaNumber<T>
    {
        if (set is null)
        {
            return;
        }

        double largest = 0;
        foreach (double force in tension)
        {
            largest = Math.Max(largest, Math.Abs(force));
        }

        double farthest = -1;
        int anchor = 0;
        foreach (LugBody lug in set.Lugs)
        {
            int nearest = -1;
            for (int i = 0; i < tension.Length; i++)
            {
                bool isInTension = tension[i] > TensionModes.LeastShare * largest;
                nearest = isInTension && (nearest < 0 || Math.Abs(places[i] - lug.Along) < Math.Abs(places[nearest] - lug.Along)) ? i : nearest;
            }

            if (nearest >= 0 && Math.Abs(places[nearest] - lug.Along) > farthest)
            {
                (farthest, anchor) = (Math.Abs(places[nearest] - lug.Along), nearest);
            }
        }

        var mode = new ModeLabel(DistanceName, Number: set.IsAlongX ? 1 : 2);
        writer.Place(set.IsAlongX ? "shear along x" : "shear along y");
        if (farthest < 0 || shear == 0)
        {
            writer.WriteWithout(mode, ModeStatus.NotApplicable, farthest < 0 ? "No anchor is in tension." : "No demand.");
            return;
        }

        Sheet<T> sheet = writer.NewSheet();
        T hef = sheet.Given("h_ef", data.Embedment, Dimension.Length);
        T csl = sheet.Given("c_sl", farthest, Dimension.Length, "from the middle of the lug to the nearest row of anchors in tension, along the shear");
        Detailing.WriteRule(mode, sheet.When(hef >= LeastRatio * csl), "h_ef is less than 2.5 c_sl.", data.Only(anchor), writer);
    }
}
