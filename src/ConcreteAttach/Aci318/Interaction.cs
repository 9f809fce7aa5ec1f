using System.Runtime.CompilerServices;
using ConcreteAttach.Calculation;
using ConcreteAttach.Quantities;
using ConcreteAttach.Verification;

namespace ConcreteAttach.Aci318;

/// <summary>17.8 Interaction of tensile and shear forces.</summary>
internal static class Interaction
{
    public static readonly ModeName Name = new(FailureModeKind.Interaction, "17.8");

    /// <summary>A ratio up to this one is neglected (17.8.2).</summary>
    private const double Gate = 0.2;

    /// <summary>Writes the interaction of the highest tension ratio with the highest shear ratio (17.8.3).</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)] // one place in the plain flow
    public static void Write<T>(AnchorageData data, in HighestRatio tension, in HighestRatio shear, in ModeWriter<T> writer)
        where T : struct, IFormulaNumber<T>
    {
        var mode = new ModeLabel(Name);
        // One ratio that is known to be at most 0.2 decides, whatever the other is.
        bool isTensionSmall = tension.IsKnown && !Limit.IsBelow(Gate, tension.Value);
        bool isShearSmall = shear.IsKnown && !Limit.IsBelow(Gate, shear.Value);
        if (isTensionSmall || isShearSmall)
        {
            writer.WriteWithout(mode, ModeStatus.NotApplicable, isShearSmall ? "The shear ratio is at most 0.2 (17.8.2)." : "The tension ratio is at most 0.2 (17.8.2).");
            return;
        }

        bool isKnown = tension.IsKnown && shear.IsKnown;
        Sheet<T> sheet = writer.NewSheet();
        T n = sheet.Given("r_N", tension.Value, Dimension.None, "highest ratio N_ua / φN_n of the modes in tension");
        T v = sheet.Given("r_V", shear.Value, Dimension.None, "highest ratio V_ua / φV_n of the modes in shear");
        T utilization = sheet.Factor(FormulaText.UtilizationId, (n + v) / LoadFactors.InteractionLimit, "17.8.3");
        bool holds = !Limit.IsBelow(1, utilization.Value);
        ModeStatus status = !holds ? ModeStatus.NotSatisfied : isKnown ? ModeStatus.Satisfied : ModeStatus.NotCovered;
        string? reason = status == ModeStatus.NotCovered ? "A mode in tension or shear is not covered, so its ratio is not known." : null;
        writer.Write(new ModeResult(mode.Kind, mode.Side, mode.Number, status, data.Edition.System, double.NaN, double.NaN, double.NaN, utilization.Value), Name.Clause, reason, default);
    }
}

/// <summary>The highest ratio of demand to design strength among some modes.</summary>
/// <param name="Value">The ratio; 0 without demand.</param>
/// <param name="IsKnown">False where a mode that has demand is not covered.</param>
internal readonly record struct HighestRatio(double Value, bool IsKnown);
