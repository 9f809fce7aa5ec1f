using System.Collections.Immutable;
using ConcreteAttach.Attached;
using ConcreteAttach.Calculation;
using ConcreteAttach.Distribution;
using ConcreteAttach.Quantities;
using ConcreteAttach.Verification;

namespace ConcreteAttach.Aci318;

/// <summary>One shear lug in the units of an edition, with what of it bears on the concrete.</summary>
internal sealed class LugBody
{
    public LugBody(ShearLug lug, double grout, string suffix, MeasurementSystem system)
    {
        Thickness = lug.Thickness.In(system);
        Width = lug.Width.In(system);
        Depth = lug.Depth.In(system);
        Grout = grout;
        (double x, double y) = (lug.At.X.In(system), lug.At.Y.In(system));
        (Along, Across) = lug.Takes == ShearAxis.X ? (x, y) : (y, x);
        StiffenerLength = lug.Stiffeners?.Length.In(system);
        StiffenedWidth = lug.Stiffeners is { } stiffeners ? WidthNear(stiffeners, system) : 0;
        (ThicknessId, WidthId, DepthId, EmbedmentId, BandId, StiffenedId, AreaId) =
            ("t_sl" + suffix, "w_sl" + suffix, "d_sl" + suffix, "h_sl" + suffix, "h_b" + suffix, "w_st" + suffix, "A_ef_sl" + suffix);
        var silent = default(Sheet<PlainNumber>);
        Area = ShearLugs.EffectiveArea(silent, this).Value;
        Arm = ShearLugs.BearingArm(silent, this).Value;
        Embedment = Depth - Grout;
        EffectiveDepth = StiffenedWidth > 0 ? Embedment : Math.Min(Embedment, 2 * Thickness);
    }

    /// <summary>t_sl.</summary>
    public double Thickness { get; }

    public double Width { get; }

    /// <summary>Below the underside of the plate.</summary>
    public double Depth { get; }

    /// <summary>From the underside of the plate down to the concrete.</summary>
    public double Grout { get; }

    /// <summary>h_sl: below the surface of the concrete.</summary>
    public double Embedment { get; }

    /// <summary>Place of its middle along the shear.</summary>
    public double Along { get; }

    /// <summary>Place of its middle across the shear.</summary>
    public double Across { get; }

    /// <summary>Length of the stiffeners along the shear; null without.</summary>
    public double? StiffenerLength { get; }

    /// <summary>Width of the lug within 2 t_sl of its stiffeners; 0 without.</summary>
    public double StiffenedWidth { get; }

    /// <summary>A_ef,sl.</summary>
    public double Area { get; }

    /// <summary>h_ef,sl: how deep the effective bearing area reaches below the surface.</summary>
    public double EffectiveDepth { get; }

    /// <summary>Depth of the resultant of the bearing below the underside of the plate.</summary>
    public double Arm { get; }

    public string ThicknessId { get; }

    public string WidthId { get; }

    public string DepthId { get; }

    public string EmbedmentId { get; }

    public string BandId { get; }

    public string StiffenedId { get; }

    public string AreaId { get; }

    /// <summary>Union of the bands that reach 2 t_sl from the faces of each stiffener, cut at the ends of the lug.</summary>
    private double WidthNear(ShearLugStiffeners stiffeners, MeasurementSystem system)
    {
        double half = (stiffeners.Thickness.In(system) / 2) + (2 * Thickness);
        double end = -Width / 2;
        double sum = 0;
        foreach (double place in stiffeners.Places.Select(p => p.In(system)).Order())
        {
            double from = Math.Max(place - half, end);
            double to = Math.Min(place + half, Width / 2);
            sum += Math.Max(0, to - from);
            end = Math.Max(end, to);
        }

        return sum;
    }
}

/// <summary>The lugs that take shear along one axis, ordered along it.</summary>
internal sealed class LugSet
{
    public LugSet(ShearAxis axis, LugBody[] lugs)
    {
        IsAlongX = axis == ShearAxis.X;
        Lugs = [.. lugs.OrderBy(lug => lug.Along)];
        Area = ShearLugs.SumOfAreas(default(Sheet<PlainNumber>), this).Value;
        Deepest = lugs.MaxBy(lug => lug.Arm)!;
        Across = lugs.Sum(lug => lug.Area * lug.Across) / lugs.Sum(lug => lug.Area);
        Strongest = lugs.MaxBy(lug => lug.Area)!;
        for (int i = 1; i < Lugs.Length; i++)
        {
            StandBehindEachOther &= ClearGap(i) > 0 && SharedWidth(i) > 0;
        }
    }

    public bool IsAlongX { get; }

    public LugBody[] Lugs { get; }

    /// <summary>The sum of the effective areas.</summary>
    public double Area { get; }

    public LugBody Strongest { get; }

    /// <summary>The lug on which the bearing lies deepest, and so has the longest lever arm.</summary>
    public LugBody Deepest { get; }

    /// <summary>Where the resultant of the bearing acts across the shear.</summary>
    public double Across { get; }

    /// <summary>Whether each lug has the next one behind it, with concrete between: what 17.11.2.4 speaks of.</summary>
    public bool StandBehindEachOther { get; } = true;

    /// <summary>Concrete between a lug and the one before it along the axis.</summary>
    public double ClearGap(int index) => Lugs[index].Along - (Lugs[index].Thickness / 2) - Lugs[index - 1].Along - (Lugs[index - 1].Thickness / 2);

    /// <summary>Width that a lug and the one before it have in common.</summary>
    public double SharedWidth(int index)
    {
        (LugBody a, LugBody b) = (Lugs[index - 1], Lugs[index]);
        return Math.Min(a.Across + (a.Width / 2), b.Across + (b.Width / 2)) - Math.Max(a.Across - (a.Width / 2), b.Across - (b.Width / 2));
    }
}

/// <summary>All shear lugs of an attachment in the units of an edition, checked.</summary>
internal sealed class ShearLugData
{
    private ShearLugData(Attachment attachment, AnchorageData data)
    {
        MeasurementSystem system = data.Edition.System;
        double grout = attachment.Plate?.GroutThickness.In(system) ?? 0;
        ImmutableArray<ShearLug> given = attachment.ShearLugs;
        AlongX = SetOf(ShearAxis.X);
        AlongY = SetOf(ShearAxis.Y);
        Count = given.Length;
        TakeShare = data.IsStud;
        ContactArea = attachment.Plate is { Contact: not PlateContact.StandOff } && data.Plate is { } plate ? plate.Outline.Moments.Area : double.NaN;

        LugSet? SetOf(ShearAxis axis)
        {
            LugBody[] lugs = [.. given.Select((lug, i) => (Lug: lug, Number: i)).Where(l => l.Lug.Takes == axis).Select(l => Checked(l.Lug, l.Number, given.Count(g => g.Takes == axis) > 1))];
            return lugs.Length == 0 ? null : RequireApart(new LugSet(axis, lugs));
        }

        LugBody Checked(ShearLug lug, int number, bool isNumbered)
        {
            string parameter = $"shearLugs[{QuantityText.Format(number)}]";
            if (!Limit.IsBelow(grout, lug.Depth.In(system)))
            {
                throw new InputException($"{parameter}.depth", QuantityText.Format(lug.Depth), $"more than the grout below the plate, {QuantityText.Format(attachment.Plate!.GroutThickness)}, so that the lug reaches into the concrete");
            }

            var body = new LugBody(lug, grout, isNumbered ? "_" + QuantityText.Format(number + 1) : "", system);
            if (!Limit.IsBelow(body.Embedment, data.Thickness))
            {
                throw new InputException($"{parameter}.depth", QuantityText.Format(lug.Depth), $"a lug that ends within the member, {QuantityText.Format(attachment.Concrete.Thickness)} thick");
            }

            RequireInside(lug, body, parameter, data);
            return body;
        }
    }

    /// <summary>Lugs against shear along x; null without.</summary>
    public LugSet? AlongX { get; }

    /// <summary>Lugs against shear along y; null without.</summary>
    public LugSet? AlongY { get; }

    public int Count { get; }

    /// <summary>Whether the anchors are welded to the plate, so that a part of the shear goes to them.</summary>
    public bool TakeShare { get; }

    /// <summary>A_bp: the plate where it presses on concrete or grout; NaN without.</summary>
    public double ContactArea { get; }

    /// <summary>Most modes that <see cref="ShearLugModes"/> writes: bearing, breakout toward and along two edges, rules, and those that need no check.</summary>
    public int MostModes => 16 + (6 * Count);

    /// <summary>The lugs of an attachment; null without.</summary>
    /// <exception cref="InputException">A lug outside of the concrete or the plate, one that does not reach into the concrete, two in one place, one where a fastener stands.</exception>
    public static ShearLugData? Of(Attachment attachment, AnchorageData data) => attachment.ShearLugs.IsEmpty ? null : new(attachment, data);

    /// <summary>Whether the strength of a mode changes with the actions: bearing with the axial force, and what several lugs take with the shear on the concrete between them.</summary>
    public bool FollowsActions(FailureModeKind kind, double axial) => kind switch
    {
        FailureModeKind.ShearLugBearing => axial != 0 || HasSeveral,
        FailureModeKind.ShearLugBreakout or FailureModeKind.ShearLugParallel => HasSeveral,
        _ => false,
    };

    private bool HasSeveral => AlongX is { Lugs.Length: > 1 } || AlongY is { Lugs.Length: > 1 };

    /// <summary>How lugs and fasteners share the shear.</summary>
    public LugSupport Support(AnchorageData data)
    {
        return new(AlongX?.Deepest.Arm ?? 0, AlongY?.Deepest.Arm ?? 0, Share(AlongX), Share(AlongY));

        double Share(LugSet? set) => TakeShare && set is not null ? ShearLugs.ShareOfFastener(default(Sheet<PlainNumber>), data, set).Value : 0;
    }

    private static void RequireInside(ShearLug lug, LugBody body, string parameter, AnchorageData data)
    {
        (double along, double across) = (body.Thickness / 2, body.Width / 2);
        (double dx, double dy) = lug.Takes == ShearAxis.X ? (along, across) : (across, along);
        (double x, double y) = lug.Takes == ShearAxis.X ? (body.Along, body.Across) : (body.Across, body.Along);
        foreach ((double cornerX, double cornerY) in new[] { (x - dx, y - dy), (x + dx, y - dy), (x + dx, y + dy), (x - dx, y + dy) })
        {
            bool isInConcrete = data.Outline is { } fasteners
                ? fasteners.Outline.Contains(cornerX, cornerY)
                : cornerX > data.Concrete.Left && cornerX < data.Concrete.Right && cornerY > data.Concrete.Bottom && cornerY < data.Concrete.Top;
            if (!isInConcrete)
            {
                throw new InputException($"{parameter}.at", lug.At.ToString(), "a place where the whole lug stands in the concrete");
            }

            if (data.Plate is { } plate && !plate.Outline.Contains(cornerX, cornerY) && plate.Outline.DistanceFrom(cornerX, cornerY) > plate.Outline.Tolerance)
            {
                throw new InputException($"{parameter}.at", lug.At.ToString(), "a place where the whole lug stands below the plate");
            }
        }

        for (int i = 0; i < data.Count; i++)
        {
            if (Math.Abs(data.X[i] - x) < dx + (data.Diameter / 2) && Math.Abs(data.Y[i] - y) < dy + (data.Diameter / 2))
            {
                throw new InputException($"{parameter}.at", lug.At.ToString(), $"a place clear of the fasteners; number {QuantityText.Format(i)} stands there");
            }
        }
    }

    private static LugSet RequireApart(LugSet set)
    {
        for (int i = 1; i < set.Lugs.Length; i++)
        {
            for (int k = 0; k < i; k++)
            {
                (LugBody a, LugBody b) = (set.Lugs[k], set.Lugs[i]);
                if (Math.Abs(a.Along - b.Along) < (a.Thickness + b.Thickness) / 2 && Math.Abs(a.Across - b.Across) < (a.Width + b.Width) / 2)
                {
                    throw new InputException("shearLugs", $"two lugs for shear along {(set.IsAlongX ? "x" : "y")} in one place", "a place of its own for each lug");
                }
            }
        }

        return set;
    }
}
