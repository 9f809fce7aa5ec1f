using System.Runtime.CompilerServices;
using ConcreteAttach.Calculation;
using ConcreteAttach.Geometry;

namespace ConcreteAttach.Aci318;

/// <summary>17.7.3 Which fasteners are pried out together, and under what force.</summary>
internal static class PryoutModes
{
    /// <summary>Length of the working memory for <paramref name="count"/> fasteners.</summary>
    public static int ScratchLength(int count) =>
        (4 * count) + (3 * Scratch.LengthOfInts(count))
        + Math.Max(InfluenceGroups.ScratchLength(count), Math.Max(ProjectedArea.ScratchLength(count), SpanningTree.ScratchLength(count)));

    /// <summary>Writes pryout of each group of the fasteners in shear; without demand of all fasteners.</summary>
    public static void Write<T>(AnchorageData data, in FastenerShears shears, bool isSustained, in ModeWriter<T> writer, Span<double> free)
        where T : struct, IFormulaNumber<T>
    {
        int count = 0;
        foreach (double resultant in shears.Resultants)
        {
            count += !shears.HasDemand || resultant > shears.Least ? 1 : 0;
        }

        ReadOnlySpan<double> xs = data.X;
        ReadOnlySpan<double> ys = data.Y;
        ReadOnlySpan<int> members = data.All;
        var memory = new Scratch(free);
        if (count < data.Count)
        {
            Span<int> loaded = memory.Ints(count);
            int size = 0;
            for (int i = 0; i < data.Count; i++)
            {
                if (shears.Resultants[i] > shears.Least)
                {
                    loaded[size++] = i;
                }
            }

            members = loaded;
            xs = Places(data.X, members, memory.Doubles(count));
            ys = Places(data.Y, members, memory.Doubles(count));
        }

        Span<int> groupOf = memory.Ints(count);
        int groups = count == 1 || (count == data.Count && data.Whole.IsOneInBreakout) ? 1
            : data.Influence is { } influence ? influence.Find(members, groupOf)
            : InfluenceGroups.Find(xs, ys, 3 * data.Embedment, groupOf, memory.Rest);
        if (groups == 1)
        {
            WriteGroup(data, 1, members, xs, ys, shears, isSustained, writer, memory.Rest);
        }
        else
        {
            WriteEach(data, members, groupOf, groups, shears, isSustained, writer, memory);
        }
    }

    [MethodImpl(MethodImplOptions.NoInlining)] // several groups are rare: their spans cost the common path nothing
    private static void WriteEach<T>(
        AnchorageData data, ReadOnlySpan<int> members, ReadOnlySpan<int> groupOf, int groups, in FastenerShears shears, bool isSustained, in ModeWriter<T> writer, Scratch memory)
        where T : struct, IFormulaNumber<T>
    {
        Span<int> group = memory.Ints(members.Length);
        Span<double> xs = memory.Doubles(members.Length);
        Span<double> ys = memory.Doubles(members.Length);
        for (int number = 0; number < groups; number++)
        {
            int size = 0;
            for (int i = 0; i < members.Length; i++)
            {
                if (groupOf[i] == number)
                {
                    group[size++] = members[i];
                }
            }

            ReadOnlySpan<int> own = group[..size];
            WriteGroup(data, number + 1, own, Places(data.X, own, xs), Places(data.Y, own, ys), shears, isSustained, writer, memory.Rest);
        }
    }

    private static ReadOnlySpan<double> Places(double[] all, ReadOnlySpan<int> members, Span<double> places)
    {
        for (int i = 0; i < members.Length; i++)
        {
            places[i] = all[members[i]];
        }

        return places[..members.Length];
    }

    private static void WriteGroup<T>(
        AnchorageData data, int number, ReadOnlySpan<int> members, ReadOnlySpan<double> xs, ReadOnlySpan<double> ys,
        in FastenerShears shears, bool isSustained, in ModeWriter<T> writer, Span<double> scratch)
        where T : struct, IFormulaNumber<T>
    {
        var mode = new ModeLabel(Pryout.OfGroup, Number: number);
        GroupForce force = shears.HasDemand ? GroupForce.Of(members, xs, ys, shears) : default;
        Rectangle extent = members.Length == data.Count ? data.Extent : Layouts.ExtentOf(xs, ys);
        var group = new BreakoutGroup(data, members, xs, ys, extent, force.EccentricityX, force.EccentricityY, scratch);
        Sheet<T> sheet = writer.NewSheet();
        if (force.IsOpposed)
        {
            sheet.Note("Forces of the group point more than 90 degrees apart: ψ_ec,N is 1, and the most loaded fastener is checked as well against V_cp/n.");
            writer.Notice("Pryout under torsion: forces of a group point more than 90 degrees apart, so ψ_ec,N is taken as 1 and the most loaded fastener is checked against V_cp/n; ACI 318 has no rule for it.");
        }

        T nominal = Pryout.NominalStrength(sheet, data, group, isSustained, scratch);
        T phi = StrengthReduction.Pryout(sheet);
        writer.Check(sheet, mode, nominal, phi, shears.HasDemand ? force.Resultant : 0, members);
        if (!force.IsOpposed)
        {
            return;
        }

        int most = members[0];
        foreach (int member in members)
        {
            most = shears.Resultants[member] > shears.Resultants[most] ? member : most;
        }

        var alone = new ModeLabel(Pryout.OfFastener, Number: number);
        Sheet<T> own = writer.NewSheet();
        T share = Pryout.ShareOfFastener(own, nominal.Value, group.Count);
        writer.Check(own, alone, share, StrengthReduction.Pryout(own), shears.Resultants[most], data.Only(most));
    }
}

/// <summary>The shear of a group as one force.</summary>
/// <param name="Resultant">Magnitude of the vector sum.</param>
/// <param name="EccentricityX">Distance along x of its line from the centroid of the group; 0 where forces are opposed.</param>
/// <param name="EccentricityY">The same along y.</param>
/// <param name="IsOpposed">Whether two of the forces point more than 90 degrees apart.</param>
internal readonly record struct GroupForce(double Resultant, double EccentricityX, double EccentricityY, bool IsOpposed)
{
    public static GroupForce Of(ReadOnlySpan<int> members, ReadOnlySpan<double> xs, ReadOnlySpan<double> ys, in FastenerShears shears)
    {
        ReadOnlySpan<double> shearX = shears.X;
        ReadOnlySpan<double> shearY = shears.Y;
        if (members.Length == 1)
        {
            double x = shearX[members[0]], y = shearY[members[0]];
            return new(Math.Sqrt((x * x) + (y * y)), 0, 0, false);
        }

        double vx = 0, vy = 0, sum = 0, meanX = 0, meanY = 0, reach = 0;
        for (int k = 0; k < members.Length; k++)
        {
            vx += shearX[members[k]];
            vy += shearY[members[k]];
            sum += Math.Abs(shearX[members[k]]) + Math.Abs(shearY[members[k]]);
            meanX += xs[k] / members.Length;
            meanY += ys[k] / members.Length;
            reach = Math.Max(reach, Math.Max(Math.Abs(xs[k]), Math.Abs(ys[k])));
        }

        // Forces that turn about the centroid add up to nothing but the noise of rounding.
        double resultant = Math.Sqrt((vx * vx) + (vy * vy));
        resultant = Limit.WithoutNoise(resultant, sum);
        if (AreOpposed(members, shearX, shearY))
        {
            return new(resultant, 0, 0, true);
        }

        double torsion = 0;
        for (int k = 0; k < members.Length; k++)
        {
            torsion += ((xs[k] - meanX) * shearY[members[k]]) - ((ys[k] - meanY) * shearX[members[k]]);
        }

        double ex = Math.Abs(torsion * vy) / (resultant * resultant);
        double ey = Math.Abs(torsion * vx) / (resultant * resultant);
        return new(resultant, Limit.WithoutNoise(ex, reach), Limit.WithoutNoise(ey, reach), false);
    }

    /// <summary>
    /// Whether two of the forces point more than 90 degrees apart. All forces lie within 90 degrees of the first one, or two are opposed; then only the
    /// outermost two, to its left and right, need comparing.
    /// </summary>
    private static bool AreOpposed(ReadOnlySpan<int> members, ReadOnlySpan<double> shearX, ReadOnlySpan<double> shearY)
    {
        double firstX = shearX[members[0]], firstY = shearY[members[0]];
        double leftX = firstX, leftY = firstY, rightX = firstX, rightY = firstY;
        foreach (int member in members[1..])
        {
            double x = shearX[member], y = shearY[member];
            if (PointApart(firstX, firstY, x, y))
            {
                return true;
            }

            if ((leftX * y) - (leftY * x) > 0)
            {
                (leftX, leftY) = (x, y);
            }

            if ((rightX * y) - (rightY * x) < 0)
            {
                (rightX, rightY) = (x, y);
            }
        }

        return PointApart(leftX, leftY, rightX, rightY);
    }

    private static bool PointApart(double ax, double ay, double bx, double by)
    {
        double lengths = Math.Sqrt(((ax * ax) + (ay * ay)) * ((bx * bx) + (by * by)));
        return (ax * bx) + (ay * by) < -Limit.Tolerance * lengths;
    }
}
