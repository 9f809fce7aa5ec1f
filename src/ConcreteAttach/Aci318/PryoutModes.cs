using ConcreteAttach.Calculation;
using ConcreteAttach.Geometry;
using ConcreteAttach.Verification;

namespace ConcreteAttach.Aci318;

/// <summary>17.7.3 Which fasteners are pried out together, and under what force.</summary>
internal static class PryoutModes
{
    /// <summary>Length of the working memory for <paramref name="count"/> fasteners.</summary>
    public static int ScratchLength(int count) =>
        (4 * count) + (3 * Scratch.LengthOfInts(count))
        + Math.Max(InfluenceGroups.ScratchLength(count), Math.Max(ProjectedArea.ScratchLength(count), SpanningTree.ScratchLength(count)));

    /// <summary>Writes pryout of each group of the fasteners in shear; without demand of all fasteners.</summary>
    public static void Write<T>(
        AnchorageData data, scoped ReadOnlySpan<double> shearX, scoped ReadOnlySpan<double> shearY, scoped ReadOnlySpan<double> resultants, double least,
        ref ModeWriter<T> writer, scoped Span<double> free)
        where T : struct, IFormulaNumber<T>
    {
        var memory = new Scratch(free);
        Span<double> xs = memory.Doubles(data.Count);
        Span<double> ys = memory.Doubles(data.Count);
        Span<int> loaded = memory.Ints(data.Count);
        int count = 0;
        bool hasDemand = least > 0;
        for (int i = 0; i < data.Count; i++)
        {
            if (!hasDemand || resultants[i] > least)
            {
                xs[count] = data.X[i];
                ys[count] = data.Y[i];
                loaded[count++] = i;
            }
        }

        Span<int> groupOf = memory.Ints(data.Count);
        Span<int> members = memory.Ints(data.Count);
        Span<double> groupXs = memory.Doubles(data.Count);
        Span<double> groupYs = memory.Doubles(data.Count);
        int groups = InfluenceGroups.Find(xs[..count], ys[..count], 3 * data.Embedment, groupOf, memory.Rest);
        for (int group = 0; group < groups; group++)
        {
            int size = 0;
            for (int i = 0; i < count; i++)
            {
                if (groupOf[i] == group)
                {
                    groupXs[size] = xs[i];
                    groupYs[size] = ys[i];
                    members[size++] = loaded[i];
                }
            }

            var force = hasDemand ? GroupForce.Of(members[..size], groupXs[..size], groupYs[..size], shearX, shearY) : default;
            WriteGroup(data, group + 1, members[..size], groupXs[..size], groupYs[..size], force, resultants, hasDemand, ref writer, memory.Rest);
        }
    }

    private static void WriteGroup<T>(
        AnchorageData data, int number, scoped ReadOnlySpan<int> members, scoped ReadOnlySpan<double> xs, scoped ReadOnlySpan<double> ys, in GroupForce force,
        scoped ReadOnlySpan<double> resultants, bool hasDemand, ref ModeWriter<T> writer, scoped Span<double> scratch)
        where T : struct, IFormulaNumber<T>
    {
        var mode = new ModeLabel(Pryout.OfGroup, Number: number);
        var group = new BreakoutGroup(data, xs, ys, force.EccentricityX, force.EccentricityY, scratch);
        Sheet<T> sheet = writer.NewSheet();
        if (force.IsOpposed)
        {
            sheet.Note("Forces of the group point more than 90 degrees apart: ψ_ec,N is 1, and the most loaded fastener is checked as well against V_cp/n.");
            writer.Notice("Pryout under torsion: forces of a group point more than 90 degrees apart, so ψ_ec,N is taken as 1 and the most loaded fastener is checked against V_cp/n; ACI 318 has no rule for it.");
        }

        T nominal = Pryout.NominalStrength(sheet, data, group, scratch);
        T phi = StrengthReduction.Pryout(sheet);
        writer.Check(sheet, mode, nominal, phi, hasDemand ? force.Resultant : 0, members);
        if (!force.IsOpposed)
        {
            return;
        }

        int most = members[0];
        foreach (int member in members)
        {
            most = resultants[member] > resultants[most] ? member : most;
        }

        var alone = new ModeLabel(Pryout.OfFastener, Number: number);
        Sheet<T> own = writer.NewSheet();
        T share = Pryout.ShareOfFastener(own, nominal.Value, group.Count);
        ReadOnlySpan<int> mostLoaded = [most];
        writer.Check(own, alone, share, StrengthReduction.Pryout(own), resultants[most], mostLoaded);
    }
}

/// <summary>The shear of a group as one force.</summary>
/// <param name="Resultant">Magnitude of the vector sum.</param>
/// <param name="EccentricityX">Distance along x of its line from the centroid of the group; 0 where forces are opposed.</param>
/// <param name="EccentricityY">The same along y.</param>
/// <param name="IsOpposed">Whether two of the forces point more than 90 degrees apart.</param>
internal readonly record struct GroupForce(double Resultant, double EccentricityX, double EccentricityY, bool IsOpposed)
{
    public static GroupForce Of(
        ReadOnlySpan<int> members, ReadOnlySpan<double> xs, ReadOnlySpan<double> ys, ReadOnlySpan<double> shearX, ReadOnlySpan<double> shearY)
    {
        double vx = 0, vy = 0, meanX = 0, meanY = 0, reach = 0;
        for (int k = 0; k < members.Length; k++)
        {
            vx += shearX[members[k]];
            vy += shearY[members[k]];
            meanX += xs[k] / members.Length;
            meanY += ys[k] / members.Length;
            reach = Math.Max(reach, Math.Max(Math.Abs(xs[k]), Math.Abs(ys[k])));
        }

        double resultant = Math.Sqrt((vx * vx) + (vy * vy));
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
        double noise = 1e-12 * reach;
        return new(resultant, ex <= noise ? 0 : ex, ey <= noise ? 0 : ey, false);
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
