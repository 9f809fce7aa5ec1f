using System.Runtime.CompilerServices;
using ConcreteAttach.Calculation;
using ConcreteAttach.Distribution;
using ConcreteAttach.Quantities;
using ConcreteAttach.Verification;

namespace ConcreteAttach.Aci318;

/// <summary>
/// What of the changes of ACI 318-25 is known to this library: read in secondary notes on its chapter 17 and Table 21.2.1. Where a mode needs a value that is not known it is not covered.
/// </summary>
internal static class Edition2025
{
    /// <summary>Why the modes of steel are not covered.</summary>
    public const string Steel = "ACI 318-25 has strength reduction factors of its own for steel (Table 21.2.1), which are not known to this library.";

    /// <summary>Why breakout in shear and pryout are not covered.</summary>
    public const string Shear = "Whether ψ_a of ACI 318-25 (17.5.4) lowers breakout in shear and pryout is not known to this library.";

    /// <summary>Why the check of steel under tension and shear is not covered.</summary>
    public const string SteelInteraction = "ACI 318-25 checks steel under tension and shear by a formula of its own (17.8.4), which is not known to this library.";

    private const string Redundant = "The strength reduction factors of ACI 318-25 for redundant fasteners (Table 21.2.1) are not known to this library.";

    private const string PostInstalled = "ψ_a of ACI 318-25 for post-installed fasteners (Table 17.5.4.1) is not known to this library.";

    /// <summary>Why concrete modes in tension are not covered; null for cast-in fasteners that are not redundant, and under other editions.</summary>
    public static string? TensionGap(Aci318Edition edition, bool isPostInstalled, bool isRedundant) =>
        !edition.Is2025 ? null : isPostInstalled ? PostInstalled : isRedundant ? Redundant : null;

    private static readonly ModeName InteractionOfSteel = new(FailureModeKind.InteractionOfSteel, "17.8.4");

    /// <summary>φ of the concrete in tension for non-redundant fasteners (Table 21.2.1(l)), times ψ_a of cast-in fasteners (Table 17.5.4.1).</summary>
    [MethodImpl(MethodImplOptions.NoInlining)] // costs the other editions nothing
    public static T ConcreteTension<T>(Sheet<T> sheet, AnchorageData data)
        where T : struct, IFormulaNumber<T>
    {
        T phi = sheet.Factor("phi", 0.65, "Table 21.2.1(l), fasteners that are not redundant");
        T psiA = sheet.Factor("psi_a", data.HasSupplementaryTension ? 1 : 0.95, data.HasSupplementaryTension ? "Table 17.5.4.1, cast-in, with supplementary reinforcement" : "Table 17.5.4.1, cast-in, without supplementary reinforcement");
        return sheet.Factor("phi_psi_a", phi * psiA, "17.5.4.1");
    }

    /// <summary>
    /// ψ_cm,N (17.6.2.7): the compression under a plate that a moment presses on the concrete holds the cone down. 1 where an edge is closer than 1.5 h_ef or the compression is at most 0.8 of the tension; else 2 − z / (1.5 h_ef), at least 1.
    /// </summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    public static T CompressionFactor<T>(Sheet<T> sheet, in BreakoutGroup group, T hef, in PlateCouple couple)
        where T : struct, IFormulaNumber<T>
    {
        if (!couple.IsPresent)
        {
            sheet.Note("No compression of a plate against the concrete counts beside this group.");
            return sheet.Factor("psi_cm_N", 1, "17.6.2.7");
        }

        if (double.IsFinite(group.Edges.Smallest))
        {
            T caMin = sheet.Given("c_a_min", group.Edges.Smallest, Dimension.Length);
            if (!sheet.When(caMin >= 1.5 * hef, "17.6.2.7"))
            {
                return sheet.Factor("psi_cm_N", 1, "17.6.2.7, an edge is closer than 1.5 h_ef");
            }
        }

        T compression = sheet.Given("C", couple.Compression, Dimension.Force, "compression under the plate");
        T tension = sheet.Given("T", couple.Tension, Dimension.Force, "tension of the fasteners");
        if (!sheet.When(compression > 0.8 * tension, "17.6.2.7"))
        {
            return sheet.Factor("psi_cm_N", 1, "17.6.2.7, the compression is at most 0.8 of the tension");
        }

        T z = sheet.Given("z", couple.LeverArm, Dimension.Length, "between the two resultants");
        return sheet.Factor("psi_cm_N", T.Max(T.Literal(1), 2 - (z / (1.5 * hef))), "17.6.2.7");
    }

    /// <summary>Writes the check of 17.8.4, which is not covered.</summary>
    public static void WriteInteractionOfSteel<T>(bool hasBoth, in ModeWriter<T> writer)
        where T : struct, IFormulaNumber<T>
    {
        var mode = new ModeLabel(InteractionOfSteel);
        if (hasBoth)
        {
            writer.WriteWithout(mode, ModeStatus.NotCovered, SteelInteraction);
        }
        else
        {
            writer.WriteWithout(mode, ModeStatus.NotApplicable, "There are not both tension and shear.");
        }
    }
}
