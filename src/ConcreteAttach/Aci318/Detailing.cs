using ConcreteAttach.Calculation;
using ConcreteAttach.Fasteners;
using ConcreteAttach.Geometry;
using ConcreteAttach.Quantities;
using ConcreteAttach.Verification;

namespace ConcreteAttach.Aci318;

/// <summary>17.9 Edge distances, spacings and thicknesses to preclude splitting failure: rules, not strengths.</summary>
internal static class Detailing
{
    /// <summary>Most modes that <see cref="Write"/> writes.</summary>
    public const int MostModes = 3 + BondConditions.ModeCount;

    private static readonly ModeName SpacingName = new(FailureModeKind.Spacing, "17.9.2(a)");
    private static readonly ModeName EdgeName = new(FailureModeKind.EdgeDistance, "17.9.2(a)");
    private static readonly ModeName ThicknessName = new(FailureModeKind.Thickness, "20.5.1.3");
    private static readonly ModeName ThicknessOfProductName = new(FailureModeKind.Thickness, "17.9.4");

    public static void Write<T>(AnchorageData data, in ModeWriter<T> writer)
        where T : struct, IFormulaNumber<T>
    {
        Spacing(data, writer);
        Edge(data, writer);
        if (data.Product is { } product)
        {
            Thickness(data, product, writer);
            BondConditions.Write(data, product, writer);
        }
        else
        {
            Thickness(data, writer);
        }
    }

    /// <summary>Table 17.9.2(a), centre to centre: cast-in 4 d_a, torqued 6 d_a; post-installed the product's own, else 6 d_a, of screws at least 0.6 h_ef.</summary>
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
        ReadOnlySpan<int> pair = [Math.Min(closest.First, closest.Second), Math.Max(closest.First, closest.Second)];
        if (data.Product is { } product)
        {
            T least = LeastSpacing(sheet, data, product);
            WriteRule(mode, sheet.When(s >= least), "The smallest spacing is less than the least one of the product or of 17.9.2.", pair, writer);
            return;
        }

        T da = sheet.Given("d_a", data.Diameter, Dimension.Length);
        bool holds = sheet.When(s >= (data.IsTorqued ? 6 : 4) * da);
        sheet.Note(data.IsTorqued ? "Table 17.9.2(a): 6 d_a for cast-in fasteners that are torqued." : "Table 17.9.2(a): 4 d_a for cast-in fasteners that are not torqued.");
        WriteRule(mode, holds, data.IsTorqued ? "The smallest spacing is less than 6 d_a." : "The smallest spacing is less than 4 d_a.", pair, writer);
    }

    private static T LeastSpacing<T>(Sheet<T> sheet, AnchorageData data, ProductData product)
        where T : struct, IFormulaNumber<T>
    {
        if (product.MinimumSpacing is { } own)
        {
            return sheet.Given("s_min_p", own, Dimension.Length, "17.9.1, of the product");
        }

        T da = sheet.Given("d_a", data.Diameter, Dimension.Length);
        if (product.Fastener is not ScrewFastener)
        {
            sheet.Note("Table 17.9.2(a): 6 d_a for post-installed fasteners.");
            return 6 * da;
        }

        T hef = sheet.Given("h_ef", data.Embedment, Dimension.Length);
        sheet.Note("Table 17.9.2(a): the greater of 0.6 h_ef and 6 d_a for screws.");
        return T.Max(0.6 * hef, 6 * da);
    }

    /// <summary>Table 17.9.2(a): cast-in the cover, torqued 6 d_a; post-installed the cover, twice the aggregate and the product's own or Table 17.9.2(b).</summary>
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
        if (data.Product is { } product)
        {
            bool isMet = sheet.When(ca >= LeastEdgeDistance(sheet, product, da));
            if (product.AggregateSize is { } size)
            {
                T aggregate = sheet.Given("d_agg", size, Dimension.Length, "largest aggregate");
                isMet &= sheet.When(ca >= 2 * aggregate);
            }

            T ownCover = sheet.Given("c_c", data.Cover, Dimension.Length, "cover of 20.5.1.3, to the face of the fastener");
            isMet &= sheet.When(ca - (da / 2) >= ownCover);
            WriteRule(mode, isMet, "The edge distance is less than Table 17.9.2 or the product asks for.", [nearest], writer);
            return;
        }

        if (data.IsTorqued)
        {
            sheet.Note("Table 17.9.2(a): 6 d_a for cast-in fasteners that are torqued.");
            WriteRule(mode, sheet.When(ca >= 6 * da), "The edge distance is less than 6 d_a.", [nearest], writer);
            return;
        }

        T cover = sheet.Given("c_c", data.Cover, Dimension.Length, "cover of 20.5.1.3, to the face of the fastener");
        WriteRule(mode, sheet.When(ca - (da / 2) >= cover), "The cover beside the fastener is less than 20.5.1.3 asks for.", [nearest], writer);
    }

    private static T LeastEdgeDistance<T>(Sheet<T> sheet, ProductData product, T da)
        where T : struct, IFormulaNumber<T>
    {
        if (product.MinimumEdgeDistance is { } own)
        {
            return sheet.Given("c_min_p", own, Dimension.Length, "Table 17.9.2(a), of the product");
        }

        switch (product.Fastener)
        {
            case TorqueControlledExpansion:
                sheet.Note("Table 17.9.2(b): 8 d_a for torque-controlled expansion fasteners.");
                return 8 * da;
            case DisplacementControlledExpansion:
                sheet.Note("Table 17.9.2(b): 10 d_a for displacement-controlled expansion fasteners.");
                return 10 * da;
            default:
                sheet.Note("Table 17.9.2(b): 6 d_a for screw, undercut and adhesive fasteners.");
                return 6 * da;
        }
    }

    /// <summary>
    /// The least thickness of the product; without one, of expansion, screw and undercut fasteners h_ef at most the greater of two thirds of the thickness and the
    /// thickness less 4 in. (17.9.4). Whatever the rule, the hole ends within the member.
    /// </summary>
    private static void Thickness<T>(AnchorageData data, ProductData product, in ModeWriter<T> writer)
        where T : struct, IFormulaNumber<T>
    {
        var mode = new ModeLabel(ThicknessOfProductName);
        Sheet<T> sheet = writer.NewSheet();
        T ha = sheet.Given("h_a", data.Thickness, Dimension.Length);
        T depth = sheet.Given("h_0", product.Depth, Dimension.Length, "how deep the hole reaches, as far as it is known");
        bool isMet = sheet.When(depth < ha);
        if (product.MinimumThickness is { } own)
        {
            isMet &= sheet.When(ha >= sheet.Given("h_min", own, Dimension.Length, "of the product"), "17.9.1");
        }
        else if (product.IsAdhesive)
        {
            sheet.Note("17.9.4 has no rule for adhesive fasteners, and no least thickness of the product is given: only that the hole ends within the member.");
        }
        else
        {
            T hef = sheet.Given("h_ef", data.Embedment, Dimension.Length);
            isMet &= sheet.When(hef <= T.Max(2 * ha / 3, ha - data.Edition.DepthBehindEmbedment), "17.9.4");
        }

        WriteRule(mode, isMet, "The member is too thin for the embedment.", default, writer);
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

    internal static void WriteRule<T>(ModeLabel mode, bool holds, string broken, ReadOnlySpan<int> fasteners, in ModeWriter<T> writer)
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
