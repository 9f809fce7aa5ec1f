using System.Collections.Immutable;
using ConcreteAttach.Actions;
using ConcreteAttach.Attached;
using ConcreteAttach.Calculation;
using ConcreteAttach.Fasteners;
using ConcreteAttach.Materials;
using ConcreteAttach.Quantities;

namespace ConcreteAttach.Aci318;

/// <summary>What a result says beside its numbers: assumptions, readings of the standard, and notices.</summary>
internal static class Remarks
{
    /// <summary>What was assumed, and which readings were taken.</summary>
    public static ImmutableArray<string> Assumptions(Attachment attachment, AnchorageData data, SafetyFormat format)
    {
        ConcreteMember member = attachment.Concrete;
        var assumptions = new List<string>
        {
            $"{data.Edition.Standard} chapter 17 with its {data.Edition.Constants} constants; {(format == SafetyFormat.StrengthDesign ? "strength design, factored loads" : "allowable stress design as practice has it: service loads, design strengths divided by the weighted load factor that is given")}.",
            Distribution(data),
            member.IsCracked ? "The concrete may be cracked at service load." : "An analysis shows the concrete uncracked at service load (17.6.2.5.1).",
            $"Supplementary reinforcement: tension {YesNo(member.HasSupplementaryReinforcementForTension)}, shear {YesNo(member.HasSupplementaryReinforcementForShear)}.",
        };
        assumptions.AddRange(ReinforcementRemarks.Assumptions(member, attachment.Reinforcement));
        if (data.Edition.Is2025)
        {
            assumptions.Add("ACI 318-25 as far as its changes are known to this library: formulas, limits and rules of detailing as in 318-19; φ of the concrete and ψ_a of cast-in fasteners in tension and ψ_cm,N as in 318-25. What needs another new value is not covered.");
            assumptions.Add(attachment.HasRedundantFasteners ? "The fasteners are redundant (Table 21.2.1)." : "The fasteners are not redundant (Table 21.2.1).");
        }

        if (data.Product is { } product)
        {
            assumptions.AddRange(OfProduct(data, product));
        }
        else
        {
            assumptions.Add(data.IsTorqued ? "The fasteners are torqued." : "The fasteners are not torqued.");
        }

        if (data.Plate is { } plate)
        {
            assumptions.AddRange(OfPlate(plate));
        }

        if (data.Lugs is not null)
        {
            assumptions.Add("Shear lugs take all of the shear, which reaches them at the underside of the plate: the lever arm from there to the middle of the bearing is counted, grout included; one above the plate is a moment of the load case.");
            assumptions.Add("What fills the pocket about a lug is at least as strong as the concrete; the strength of the lug and of its weld is not checked here.");
        }

        if (member.Cover is null)
        {
            assumptions.Add($"Cover {QuantityText.Format(ConcreteMember.DefaultCover)} (not given; Table 20.5.1.3.1, not exposed to weather; cast against earth it is 3 in).");
        }

        assumptions.AddRange(data.TableValues.Select(Sentence));
        assumptions.Add(data.Options.Area == AreaReading.Union
            ? "Projected area of a tension breakout: union of the squares about the fasteners (option area: union)."
            : data.Outline is null
                ? "Projected area of a tension breakout: rectangle about the squares, at most n A_Nco (option area: bounding)."
                : "Projected area of a tension breakout: rectangle about what the squares reach of the outline, at most n A_Nco; it may cover places without concrete (option area: bounding).");
        assumptions.Add(data.Options.CloseEdges == CloseEdgesReading.Group
            ? "Close edges of 17.6.2.1.2: those near the breakout group (option closeEdges: group)."
            : "Close edges of 17.6.2.1.2: those near any fastener (option closeEdges: all fasteners).");
        if (data.IsHeaded)
        {
            assumptions.Add(data.Options.Deep == DeepReading.Revert
                ? "Embedment above 17.6.2.2.3: back to h_ef^1.5 (option deep: revert)."
                : "Embedment above 17.6.2.2.3: h_ef^(5/3) goes on (option deep: extend).");
        }

        assumptions.Add("A limit counts as met within one part in 10^9.");
        return [.. assumptions];
    }

    /// <summary>Notices that do not depend on the load.</summary>
    public static IEnumerable<string> Notices(AnchorageData data)
    {
        if (data.Lugs is not null)
        {
            yield return $"Shear lugs: a plate that is installed level has a hole of at least {QuantityText.Format(data.Edition.VentHole, Dimension.Length, data.Edition.System)} along each long side of a lug, so that air escapes and the filling can be seen (17.11.1.2).";
        }

        if (data.Outline is not null)
        {
            yield return "ACI 318 chapter 17 speaks of orthogonal edges; its clauses were extended to the outline: rays of the breakout cone end where they leave the concrete, "
                + "each straight side is an edge of its own by its normal (past a re-entrant corner as if it went on), and close edges are counted by direction.";
        }

        if (Limit.IsBelow(data.Strength, data.Edition.SmallestStructuralStrength))
        {
            yield return $"f'c is less than {QuantityText.Format(data.Edition.SmallestStructuralStrength, Dimension.Stress, data.Edition.System)}, the least of structural concrete (Table 19.2.1.1).";
        }

        if (Limit.IsBelow(data.LargestStrength, data.Strength))
        {
            yield return $"f'c in the formulas is limited to {QuantityText.Format(data.LargestStrength, Dimension.Stress, data.Edition.System)} (17.3.1).";
        }

        if (data.Product is not { } product)
        {
            yield break;
        }

        if (product.Missing.Count > 0)
        {
            yield return $"Data of the product that are missing and have no default: {string.Join(", ", product.Missing)}. What needs them is not covered.";
        }

        if (product.BreakoutCoefficient > data.Edition.CastInBreakout)
        {
            yield return $"k_c of the product is limited to {QuantityText.Format(data.Edition.CastInBreakout)} (17.6.2.2.2).";
        }

        yield return "Post-installed fasteners: install and inspect by the printed instructions of the maker and by 26.7 and 26.13; the strengths hold for nothing else.";
    }

    /// <summary>Says with which forces a load case was verified where its earthquake part counts Ω_0 times.</summary>
    public static string OfOverstrength(LoadCase verified, EarthquakeDesign design) =>
        $"Load case {verified.Name} is verified with its earthquake part {QuantityText.Format(design.Overstrength!.Value)} times (Ω_0): N {QuantityText.Format(verified.N)}, V_x {QuantityText.Format(verified.Vx)}, V_y {QuantityText.Format(verified.Vy)}, M_x {QuantityText.Format(verified.Mx)}, M_y {QuantityText.Format(verified.My)}, M_z {QuantityText.Format(verified.Mz)}.";

    /// <summary>What is taken for a post-installed product: the defaults of the standard where the product has no datum of its own.</summary>
    private static IEnumerable<string> OfProduct(AnchorageData data, ProductData product)
    {
        ProductQualification given = product.Fastener.ProductQualification;
        yield return $"Data of the product are the user's, from {given.Source ?? "a report that is not named"}; the library ships none.";
        if (data.IsCracked)
        {
            yield return "The product is qualified for cracked concrete.";
        }

        if (!product.IsBreakoutCoefficientOfProduct)
        {
            yield return $"k_c {QuantityText.Format(data.Edition.PostInstalledBreakout)}, the default of 17.6.2.2.1 for post-installed fasteners.";
        }

        if (!data.IsCracked && !data.HasSplittingReinforcement && product.CriticalEdgeDistance is null)
        {
            yield return $"c_ac {QuantityText.Format(product.CriticalEdgeFactor)} h_ef, the default of 17.9.5.";
        }

        if (product.MinimumSpacing is null && data.Count > 1)
        {
            yield return "Least spacing by Table 17.9.2(a), for the product gives none.";
        }

        if (product.MinimumEdgeDistance is null && data.Edges.Length > 0)
        {
            yield return "Least edge distance by Table 17.9.2(b), for the product gives none.";
        }

        if (product.AggregateSize is null && data.Edges.Length > 0)
        {
            yield return "The size of the aggregate is not given: twice the largest is taken to lie within the edge distance (17.9.2).";
        }

        if (product.Fastener is AdhesiveFastener)
        {
            yield return product.MinimumBond is null
                ? "Bond stresses hold for the temperature, moisture, drilling and inspection of this installation, in concrete at least 21 days old (17.2.2)."
                : "The adhesive meets ACI 355.4; bond stresses are the minimum ones of Table 17.6.5.2.5.";
        }
        else if (product.PulloutAt is null && !double.IsNaN(product.Pullout))
        {
            yield return "N_p holds as given, whatever the strength of the concrete.";
        }
    }

    /// <summary>Says where splitting makes the uncracked assumption the weaker one for breakout.</summary>
    public static void OfSplitting<T>(AnchorageData data, in BreakoutGroup group, T nominal, Sheet<T> sheet, in ModeWriter<T> writer)
        where T : struct, IFormulaNumber<T>
    {
        if (writer.IsTracing && Splitting.CrackedOverUncracked(data, group) is var ratio && Limit.IsBelow(1, ratio))
        {
            writer.Notice("Uncracked concrete is the weaker assumption here: nearer to an edge than c_ac splitting governs, and ψ_cp,N takes more than ψ_c,N gives. Taken as cracked, the breakout strength would be higher; it is not switched silently.");
            NoteIfCracked(data, "ψ_cp,N is 1 and N_cb", nominal.Value * ratio, sheet);
        }
    }

    /// <summary>Says where splitting makes the uncracked assumption the weaker one for bond.</summary>
    public static void OfSplittingBond<T>(AnchorageData data, in BreakoutGroup group, T nominal, Sheet<T> sheet, in ModeWriter<T> writer)
        where T : struct, IFormulaNumber<T>
    {
        if (writer.IsTracing && Splitting.CrackedOverUncrackedBond(data, group) is var ratio && Limit.IsBelow(1, ratio))
        {
            writer.Notice("Uncracked concrete is the weaker assumption for bond here: nearer to an edge than c_ac splitting governs, and ψ_cp,Na takes more than τ_uncr gives over τ_cr. Taken as cracked, the bond strength would be higher; it is not switched silently.");
            NoteIfCracked(data, "ψ_cp,Na is 1 and N_a", nominal.Value * ratio, sheet);
        }
    }

    private static void NoteIfCracked<T>(AnchorageData data, string what, double strength, Sheet<T> sheet)
        where T : struct, IFormulaNumber<T>
    {
        if (sheet.IsRecording)
        {
            string unit = Unit.Printed(Dimension.Force, data.Edition.System)!.Text;
            sheet.Note($"Splitting makes the uncracked assumption the weaker one: in cracked concrete {what} would be {NumberText.Computed(strength)} {unit}.");
        }
    }

    /// <summary>Notices that the sustained tension of an adhesive fastener calls for.</summary>
    public static IEnumerable<string> OfSustainedTension(AnchorageData data, bool isSustainedDesign)
    {
        if (!isSustainedDesign || data.Product?.Fastener is not AdhesiveFastener adhesive)
        {
            yield break;
        }

        switch (adhesive.Direction)
        {
            case InstallationDirection.Horizontal or InstallationDirection.Upward:
                yield return "Adhesive fasteners installed horizontally or upward under sustained tension: a certified installer and continuous inspection are required (26.7, 26.13).";
                break;
            case null:
                yield return "Adhesive fasteners under sustained tension: if they are installed horizontally or upward, a certified installer and continuous inspection are required (26.7, 26.13); the direction is not given.";
                break;
        }

        if (data.Product.MinimumBond is not null)
        {
            yield return "The design includes sustained tension: bond stresses of Table 17.6.5.2.5 are taken times 0.4 in every load case; c_Na stays with the value of the table.";
        }
    }

    /// <summary>Notices that the forces of a load case call for.</summary>
    public static void OfForces<T>(AnchorageData data, ReadOnlySpan<double> tension, in ModeWriter<T> writer)
        where T : struct, IFormulaNumber<T>
    {
        double largest = 0;
        double lowest = 0;
        foreach (double force in tension)
        {
            largest = Math.Max(largest, Math.Abs(force));
            lowest = Math.Min(lowest, force);
        }

        if (!data.IsStandOff && lowest < -TensionModes.LeastShare * largest)
        {
            writer.Notice("Some fasteners are in compression by elastic theory without contact: shown, not checked, and not passed on to the concrete.");
        }
    }

    private static string Distribution(AnchorageData data) => data.Plate?.Plate.Contact switch
    {
        PlateContact.StrainCompatibility =>
            "The plate is rigid: plane sections, fasteners in tension only, the concrete in compression only, strains of both compatible as in a reinforced section; the strength of the plate is not checked here.",
        PlateContact.ElasticBed =>
            "The plate is rigid: plane sections, fasteners as springs in tension only, the concrete as an elastic bed in compression only; the strength of the plate is not checked here.",
        PlateContact.StandOff =>
            "The plate is rigid and stands off the concrete without grout: elastic forces without contact pressure; the strength of the plate is not checked here.",
        _ => "The attached part is stiff and passes its forces to the fasteners elastically, without contact pressure; its own strength is not checked here.",
    };

    private static IEnumerable<string> OfPlate(PlateData plate)
    {
        BasePlate given = plate.Plate;
        if (plate.IsInContact && !plate.HasModularRatio)
        {
            yield return "Modular ratio E_s/E_c from 19.2.2.1 and 20.2.2.2 (not given).";
        }

        if (given.Contact == PlateContact.ElasticBed && given.StretchLength is null)
        {
            yield return "The fasteners stretch over their effective embedment (stretch length not given).";
        }

        yield return given.PryingAllowance > 0
            ? $"Prying: the tension from equilibrium times {QuantityText.Format(1 + given.PryingAllowance)}, as given."
            : "No allowance for prying.";
        if (given.Holes.Any(hole => hole != PlateHole.Standard))
        {
            yield return "Fasteners in oversize holes take no shear, those in slotted holes none along the slot.";
        }

        if (plate.IsInContact)
        {
            if (given.Thickness is null || given.Yield is null || given.Profile is null)
            {
                yield return "Whether the plate may count as rigid was not tested: that takes its thickness, its yield strength and the place of the attached profile.";
            }

            yield return "Friction under the plate is not counted: chapter 17 has no rule for it.";
        }
    }

    private static string YesNo(bool value) => value ? "yes" : "no";

    private static string Sentence(string text) => string.Concat(char.ToUpperInvariant(text[0]).ToString(), text.AsSpan(1), ".");
}
