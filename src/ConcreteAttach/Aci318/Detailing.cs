using ConcreteAttach.Calculation;
using ConcreteAttach.Geometry;
using ConcreteAttach.Quantities;
using ConcreteAttach.Verification;

namespace ConcreteAttach.Aci318;

/// <summary>17.9 Edge distances, spacings and thicknesses to preclude splitting failure: rules, not strengths.</summary>
internal static class Detailing
{
    /// <summary>Number of modes that <see cref="Write"/> writes.</summary>
    public const int ModeCount = 3;

    private static readonly ModeName SpacingName = new(FailureModeKind.Spacing, "17.9.2(a)");
    private static readonly ModeName EdgeName = new(FailureModeKind.EdgeDistance, "17.9.2(a)");
    private static readonly ModeName ThicknessName = new(FailureModeKind.Thickness, "20.5.1.3");

    public static void Write<T>(AnchorageData data, in ModeWriter<T> writer)
        where T : struct, IFormulaNumber<T>
    {
        Spacing(data, writer);
        Edge(data, writer);
        Thickness(data, writer);
    }

    /// <summary>Table 17.9.2(a): 4 d_a, torqued 6 d_a, centre to centre.</summary>
    private static void Spacing<T>(AnchorageData data, in ModeWriter<T> writer)
        where T : struct, IFormulaNumber<T>
    {
        var mode = new ModeLabel(SpacingName);
        if (data.Count == 1)
        {
            writer.WriteWithout(mode, ModeStatus.NotApplicable, "There is one fastener.");
            return;
        }

        ClosestPair closest = data.ClosestPair;
        Sheet<T> sheet = writer.NewSheet();
        T s = sheet.Given("s_min", closest.Spacing, Dimension.Length, "smallest spacing, centre to centre");
        T da = sheet.Given("d_a", data.Diameter, Dimension.Length);
        bool holds = sheet.When(s >= (data.IsTorqued ? 6 : 4) * da);
        sheet.Note(data.IsTorqued ? "Table 17.9.2(a): 6 d_a for cast-in fasteners that are torqued." : "Table 17.9.2(a): 4 d_a for cast-in fasteners that are not torqued.");
        ReadOnlySpan<int> pair = [Math.Min(closest.First, closest.Second), Math.Max(closest.First, closest.Second)];
        WriteRule(mode, holds, data.IsTorqued ? "The smallest spacing is less than 6 d_a." : "The smallest spacing is less than 4 d_a.", pair, writer);
    }

    /// <summary>Table 17.9.2(a): the cover, torqued 6 d_a.</summary>
    private static void Edge<T>(AnchorageData data, in ModeWriter<T> writer)
        where T : struct, IFormulaNumber<T>
    {
        var mode = new ModeLabel(EdgeName);
        (double distance, int nearest) = SmallestEdge(data);
        if (double.IsPositiveInfinity(distance))
        {
            writer.WriteWithout(mode, ModeStatus.NotApplicable, "There is no edge within reach.");
            return;
        }

        Sheet<T> sheet = writer.NewSheet();
        T ca = sheet.Given("c_a_min", distance, Dimension.Length);
        T da = sheet.Given("d_a", data.Diameter, Dimension.Length);
        if (data.IsTorqued)
        {
            sheet.Note("Table 17.9.2(a): 6 d_a for cast-in fasteners that are torqued.");
            WriteRule(mode, sheet.When(ca >= 6 * da), "The edge distance is less than 6 d_a.", [nearest], writer);
            return;
        }

        T cover = sheet.Given("c_c", data.Cover, Dimension.Length, "cover of 20.5.1.3, to the face of the fastener");
        WriteRule(mode, sheet.When(ca - (da / 2) >= cover), "The cover beside the fastener is less than 20.5.1.3 asks for.", [nearest], writer);
    }

    /// <summary>Embedment, head and cover lie within the member. Common practice; 17.9 has no formula for cast-in fasteners.</summary>
    private static void Thickness<T>(AnchorageData data, in ModeWriter<T> writer)
        where T : struct, IFormulaNumber<T>
    {
        var mode = new ModeLabel(ThicknessName);
        Sheet<T> sheet = writer.NewSheet();
        T hef = sheet.Given("h_ef", data.Embedment, Dimension.Length);
        T head = sheet.Given("h_h", data.HeadHeight, Dimension.Length, "height of the head; d_a where it is not known");
        T cover = sheet.Given("c_c", data.Cover, Dimension.Length, "cover of 20.5.1.3");
        T ha = sheet.Given("h_a", data.Thickness, Dimension.Length);
        WriteRule(mode, sheet.When(hef + head + cover <= ha), "Embedment, head and cover do not fit into the member.", default, writer);
    }

    private static void WriteRule<T>(ModeLabel mode, bool holds, string broken, ReadOnlySpan<int> fasteners, in ModeWriter<T> writer)
        where T : struct, IFormulaNumber<T> =>
        writer.WriteWithout(mode, holds ? ModeStatus.Satisfied : ModeStatus.NotSatisfied, holds ? null : broken, holds ? default : fasteners);

    private static (double Distance, int Fastener) SmallestEdge(AnchorageData data)
    {
        (double Distance, int Fastener) best = (double.PositiveInfinity, 0);
        for (int i = 0; i < data.Count; i++)
        {
            double distance = data.Outline is { } outline
                ? outline.SmallestEdge(data.Only(i))
                : Layouts.SmallestEdge(data.Concrete, new Rectangle(data.X[i], data.X[i], data.Y[i], data.Y[i]));
            if (distance < best.Distance)
            {
                best = (distance, i);
            }
        }

        return best;
    }
}
