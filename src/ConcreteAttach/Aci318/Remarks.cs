using System.Collections.Immutable;
using ConcreteAttach.Attached;
using ConcreteAttach.Calculation;
using ConcreteAttach.Materials;
using ConcreteAttach.Quantities;

namespace ConcreteAttach.Aci318;

/// <summary>What a result says beside its numbers: assumptions, readings of the standard, and notices.</summary>
internal static class Remarks
{
    /// <summary>What was assumed, and which readings were taken.</summary>
    public static ImmutableArray<string> Assumptions(Attachment attachment, AnchorageData data)
    {
        ConcreteMember member = attachment.Concrete;
        var assumptions = new List<string>
        {
            $"{data.Edition.Standard} chapter 17 with its {data.Edition.Constants} constants; strength design, factored loads.",
            Distribution(data),
            member.IsCracked ? "The concrete may be cracked at service load." : "An analysis shows the concrete uncracked at service load (17.6.2.5.1).",
            $"Supplementary reinforcement: tension {YesNo(member.HasSupplementaryReinforcementForTension)}, shear {YesNo(member.HasSupplementaryReinforcementForShear)}.",
            data.IsTorqued ? "The fasteners are torqued." : "The fasteners are not torqued.",
        };
        if (data.Plate is { } plate)
        {
            assumptions.AddRange(OfPlate(plate));
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
        if (data.Outline is not null)
        {
            yield return "ACI 318 chapter 17 speaks of orthogonal edges; its clauses were extended to the outline: rays of the breakout cone end where they leave the concrete, "
                + "each straight side is an edge of its own by its normal (past a re-entrant corner as if it went on), and close edges are counted by direction.";
        }

        if (Limit.IsBelow(data.Strength, data.Edition.SmallestStructuralStrength))
        {
            yield return $"f'c is less than {QuantityText.Format(data.Edition.SmallestStructuralStrength, Dimension.Stress, data.Edition.System)}, the least of structural concrete (Table 19.2.1.1).";
        }

        if (Limit.IsBelow(data.Edition.LargestStrengthCastIn, data.Strength))
        {
            yield return $"f'c in the formulas is limited to {QuantityText.Format(data.Edition.LargestStrengthCastIn, Dimension.Stress, data.Edition.System)} (17.3.1).";
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
