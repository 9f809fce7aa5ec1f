using System.Runtime.CompilerServices;
using ConcreteAttach.Attached;
using ConcreteAttach.Calculation;
using ConcreteAttach.Geometry;
using ConcreteAttach.Quantities;
using ConcreteAttach.Verification;

namespace ConcreteAttach.Aci318;

/// <summary>17.7 All failure modes in shear: which fasteners take part in which, in the order of the chapter.</summary>
internal static class ShearModes
{
    /// <summary>Length of the working memory for <paramref name="count"/> fasteners.</summary>
    public static int ScratchLength(int count) =>
        count + Math.Max(RowLoads.ScratchLength(count), PryoutModes.ScratchLength(count));

    /// <summary>
    /// Most modes that <paramref name="count"/> fasteners can give: toward and along a number of <paramref name="edges"/>, what no edge covers, and pryout with its single fasteners.
    /// </summary>
    public static int MostModes(int count, int edges) => 2 + edges + (2 * edges * count) + (2 * count);

    /// <summary>Writes the modes; returns the highest ratio of demand to strength.</summary>
    /// <param name="data">The attachment.</param>
    /// <param name="shearX">Shear along x on each fastener.</param>
    /// <param name="shearY">Shear along y on each fastener.</param>
    /// <param name="state">Whether the design includes sustained tension, which lowers the bond in pryout.</param>
    /// <param name="writer">Takes the modes.</param>
    /// <param name="free">Working memory of <see cref="ScratchLength"/>.</param>
    public static HighestRatio Write<T>(
        AnchorageData data, ReadOnlySpan<double> shearX, ReadOnlySpan<double> shearY, in LoadState state, in ModeWriter<T> writer, Span<double> free)
        where T : struct, IFormulaNumber<T>
    {
        var memory = new Scratch(free);
        var shears = new FastenerShears(shearX, shearY, ref memory);
        Steel(data, shears, writer);
        Concrete(data, shears, state, null, writer, memory.Rest);
        HighestRatio highest = writer.TakeHighest();
        return shears.HasDemand ? highest : new HighestRatio(0, IsKnown: true);
    }

    /// <summary>The same under earthquake on the bolts of a wood sill that meet the building code's conditions: the concrete is checked for the shear across the sill alone.</summary>
    /// <param name="data">The attachment.</param>
    /// <param name="shearX">Shear along x on each fastener; what lies along the sill is taken out.</param>
    /// <param name="shearY">Shear along y on each fastener; what lies along the sill is taken out.</param>
    /// <param name="sill">Along which axis the sill runs.</param>
    /// <param name="state">The sustained part of the tension, which lowers the bond in pryout.</param>
    /// <param name="writer">Takes the modes.</param>
    /// <param name="free">Working memory of <see cref="ScratchLength"/>.</param>
    [MethodImpl(MethodImplOptions.NoInlining)] // costs others nothing
    public static HighestRatio WriteAcross<T>(
        AnchorageData data, Span<double> shearX, Span<double> shearY, SillDirection sill, in LoadState state, in ModeWriter<T> writer, Span<double> free)
        where T : struct, IFormulaNumber<T>
    {
        var memory = new Scratch(free);
        var all = new FastenerShears(shearX, shearY, ref memory);
        bool hasDemand = all.HasDemand;
        Steel(data, all, writer);
        (sill == SillDirection.X ? shearX : shearY).Clear();
        memory = new Scratch(free);
        var across = new FastenerShears(shearX, shearY, ref memory);
        Concrete(data, across, state, sill, writer, memory.Rest);
        HighestRatio highest = writer.TakeHighest();
        return hasDemand ? highest : new HighestRatio(0, IsKnown: true);
    }

    /// <summary>Breakout and pryout; what shear along a <paramref name="waived"/> sill would be checked by does not apply.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)] // one place in Write, as it would stand there
    private static void Concrete<T>(
        AnchorageData data, in FastenerShears shears, in LoadState state, SillDirection? waived, in ModeWriter<T> writer, Span<double> free)
        where T : struct, IFormulaNumber<T>
    {
        if (data.BreakoutGap is { } reason)
        {
            if (data.Reinforcement is not null)
            {
                Reinforcements(data.Reinforcement, data, shears, writer);
            }

            writer.WriteGap(new ModeLabel(ConcreteBreakoutShear.Toward), shears.HasDemand, reason);
            writer.WriteGap(new ModeLabel(Pryout.OfGroup), shears.HasDemand, reason);
        }
        else
        {
            if (data.Edges.Length > 0)
            {
                Breakout(data, shears, waived, writer, free);
            }

            if (data.Outline is not null)
            {
                TowardNoEdge(data, shears, writer, free);
            }

            if (waived is not null && !shears.HasDemand)
            {
                writer.WriteWithout(new ModeLabel(Pryout.OfGroup), ModeStatus.NotApplicable, WoodSills.Waived);
            }
            else if (data.Product?.BondGap is { } bondGap)
            {
                writer.WriteGap(new ModeLabel(Pryout.OfGroup), shears.HasDemand, bondGap);
            }
            else
            {
                PryoutModes.Write(data, shears, state.IsSustainedDesign, writer, free);
            }
        }
    }

    private static void Steel<T>(AnchorageData data, in FastenerShears shears, in ModeWriter<T> writer)
        where T : struct, IFormulaNumber<T>
    {
        var mode = new ModeLabel(SteelShear.Name);
        if ((data.SteelGap ?? data.Product?.SteelShearGap) is { } gap)
        {
            writer.WriteGap(mode, shears.HasDemand, gap);
            return;
        }

        if (double.IsNaN(data.ShearArea) && data.Product?.SteelShear is null)
        {
            writer.WriteGap(mode, shears.HasDemand, "The shear area is not known: give thread, tensileArea or shearArea.");
            return;
        }

        if (data.IsStandOff)
        {
            writer.WriteGap(mode, shears.HasDemand, StandOff.Shear);
            return;
        }

        Sheet<T> sheet = writer.NewSheet();
        T nominal = SteelShear.NominalStrength(sheet, data);
        T phi = StrengthReduction.SteelShear(sheet, data);
        writer.Check(sheet, mode, nominal, phi, shears.Largest, data.Only(shears.Most));
    }

    [MethodImpl(MethodImplOptions.NoInlining)] // its spans cost nothing where there is no edge
    private static void Breakout<T>(AnchorageData data, in FastenerShears shears, SillDirection? waived, in ModeWriter<T> writer, Span<double> free)
        where T : struct, IFormulaNumber<T>
    {
        for (int i = 0; i < data.Edges.Length; i++)
        {
            ConcreteEdge edge = data.Edges[i];
            var loads = new RowLoads(data, edge, shears, free);
            if (data.Reinforcement is { } reinforcement && IsReplaced(reinforcement.Shear[i], data, shears, writer))
            {
                writer.WriteWithout(new ModeLabel(ConcreteBreakoutShear.Toward, edge.Side), ModeStatus.NotApplicable, ReinforcementModes.Replaced);
            }
            else
            {
                loads.Toward();
                BreakoutAt(data, edge, loads, isParallel: false, waived, writer);
            }

            loads.Along();
            BreakoutAt(data, edge, loads, isParallel: true, waived, writer);
        }
    }

    /// <summary>Writes the mode of the reinforcement toward an edge, if there is one; whether it takes the place of breakout.</summary>
    private static bool IsReplaced<T>(ShearBars? bars, AnchorageData data, in FastenerShears shears, in ModeWriter<T> writer)
        where T : struct, IFormulaNumber<T>
    {
        if (bars is null)
        {
            return false;
        }

        ReinforcementModes.Shear(bars, data, shears, writer);
        return bars.IsEffective;
    }

    /// <summary>Writes the modes of the reinforcement where breakout is not covered.</summary>
    private static void Reinforcements<T>(ReinforcementData reinforcement, AnchorageData data, in FastenerShears shears, in ModeWriter<T> writer)
        where T : struct, IFormulaNumber<T>
    {
        foreach (ShearBars? bars in reinforcement.Shear)
        {
            IsReplaced(bars, data, shears, writer);
        }
    }

    /// <summary>
    /// In an outline concrete ends in every direction. A fastener that faces none of the sides that its shear points to (between it and the side the way leaves the concrete, or the foot lies
    /// beyond an end of the side) has no edge that the clause could be applied to.
    /// </summary>
    private static void TowardNoEdge<T>(AnchorageData data, in FastenerShears shears, in ModeWriter<T> writer, Span<double> free)
        where T : struct, IFormulaNumber<T>
    {
        var memory = new Scratch(free);
        Span<int> members = memory.Ints(data.Count);
        int count = 0;
        for (int i = 0; i < data.Count; i++)
        {
            if (shears.Resultants[i] > shears.Least && !PointsToAnEdge(data, i, shears))
            {
                members[count++] = i;
            }
        }

        if (count > 0)
        {
            writer.WriteWithout(new ModeLabel(ConcreteBreakoutShear.Toward), ModeStatus.NotCovered, ConcreteBreakoutShear.NoEdgeFaced, members[..count]);
        }
    }

    private static bool PointsToAnEdge(AnchorageData data, int fastener, in FastenerShears shears)
    {
        foreach (ConcreteEdge edge in data.Edges)
        {
            if (edge.Outward(shears.X[fastener], shears.Y[fastener]) > shears.Least && edge.Order.AsSpan().Contains(fastener))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Breakout toward or along one edge: every part of every row that is to be checked.</summary>
    private static void BreakoutAt<T>(AnchorageData data, ConcreteEdge edge, in RowLoads loads, bool isParallel, SillDirection? waived, in ModeWriter<T> writer)
        where T : struct, IFormulaNumber<T>
    {
        var mode = new ModeLabel(isParallel ? ConcreteBreakoutShear.Along : ConcreteBreakoutShear.Toward, edge.Side);
        if (waived is { } direction && !loads.HasDemand && WoodSills.IsAcross(edge, direction) != isParallel)
        {
            writer.WriteWithout(mode, ModeStatus.NotApplicable, WoodSills.Waived);
            return;
        }

        if (loads.HasUnmetWeldedStud)
        {
            writer.Notice("Studs welded to a plate: a condition of 17.7.2.2.2 is not met at an edge, so the coefficient and the rows of other fasteners are used there.");
        }

        if (loads.HasMiddleRow)
        {
            writer.Notice("Shear toward an edge with more than two rows: row k of m is checked with V/(m − k + 1), an extension of the commentary's two rows.");
        }

        for (int rank = 0; rank < loads.Count; rank++)
        {
            Sheet<T> sheet = writer.NewSheet();
            ref readonly LoadedPart loaded = ref loads[rank];
            Explain(sheet, loaded, isParallel);
            if (writer.IsTracing)
            {
                writer.Place(PlaceOf(loaded, edge, isParallel));
            }

            T nominal = ConcreteBreakoutShear.NominalStrength(sheet, data, edge, loaded.Part, isParallel);
            T phi = StrengthReduction.ConcreteShear(sheet, data);
            T demand = Demand(sheet, loaded, loads.HasDemand);
            writer.Check(sheet, mode with { Number = rank + 1 }, nominal, phi, demand, writer.IsTracing ? loads.Members(loaded) : default);
        }
    }

    /// <summary>The shear that a part of a row is checked with: its row's share of the sum, times its share of the row.</summary>
    private static T Demand<T>(Sheet<T> sheet, in LoadedPart loaded, bool hasDemand)
        where T : struct, IFormulaNumber<T>
    {
        double total = hasDemand ? loaded.SetSum : 0;
        if (loaded.Share.Sharing == 1 && loaded.PartOfRow == 1)
        {
            return sheet.Given("V_ua_g", total, Dimension.Force, "sum of the components that count");
        }

        T sum = sheet.Given("V_ua", total, Dimension.Force, "sum of the components that count");
        T share = loaded.Share.Sharing == 1 ? sum : sum / sheet.Given("n_r", loaded.Share.Sharing, Dimension.None, "rows that share it in this check");
        if (loaded.PartOfRow < 1)
        {
            share = share * sheet.Given("w", loaded.PartOfRow, Dimension.None, "share of this part of the row");
        }

        return sheet.Step("V_ua_g", share, Dimension.Force, "Fig. R17.7.2.1b");
    }

    private static void Explain<T>(Sheet<T> sheet, in LoadedPart loaded, bool isParallel)
        where T : struct, IFormulaNumber<T>
    {
        if (!sheet.IsRecording)
        {
            return;
        }

        RowShare share = loaded.Share;
        string place = $"Row {QuantityText.Format(share.Row)} of {QuantityText.Format(share.Rows)} from the edge";
        sheet.Note(share.Rule switch
        {
            RowRule.Only => "One row.",
            RowRule.FrontTakesAll => $"{place}. The next row is closer to it than its c_a1, so the front row takes all (case 3 of Fig. R17.7.2.1b).",
            RowRule.WeldedFarthest => $"{place}: studs welded to one plate, so the farthest row takes all (17.7.2.2.2).",
            _ when share.Sharing == 1 => $"{place}: the farthest row, checked with all of the shear (case 2 of Fig. R17.7.2.1b).",
            _ when share.Row == 1 => $"{place}, checked with 1/{QuantityText.Format(share.Sharing)} of the shear (case 1 of Fig. R17.7.2.1b).",
            _ => $"{place}, checked with 1/{QuantityText.Format(share.Sharing)} of the shear: the rows in front are taken as broken out.",
        });
        if (isParallel)
        {
            sheet.Note("Shear along the edge: twice the strength toward the edge with ψ_ed,V = 1; checked apart from the component toward the edge (17.7.2.1).");
        }
    }

    /// <summary>Row, part and, along an edge, which way the fasteners are pushed; empty for a plain single row.</summary>
    private static string PlaceOf(in LoadedPart loaded, ConcreteEdge edge, bool isParallel)
    {
        var words = new List<string>();
        if (isParallel && loaded.Sign != 0)
        {
            words.Add($"pushed {edge.WayAlong(loaded.Sign)}");
        }

        if (loaded.Share.Rows > 1)
        {
            words.Add($"row {QuantityText.Format(loaded.Share.Row)} of {QuantityText.Format(loaded.Share.Rows)}");
        }

        if (loaded.PartOfRow < 1)
        {
            words.Add("part of the row");
        }

        return string.Join(", ", words);
    }
}
