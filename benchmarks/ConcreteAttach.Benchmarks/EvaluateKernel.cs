using ConcreteAttach.Aci318;
using ConcreteAttach.Distribution;
using ConcreteAttach.Verification;

namespace ConcreteAttach.Benchmarks;

/// <summary>
/// What <see cref="PreparedAttachment.Evaluate"/> is measured against: all strength modes of ACI 318-19 with its inch-pound constants,
/// written by hand in plain doubles, with nothing for a reader: no symbols, no sheet, no clauses.
/// </summary>
/// <remarks>
/// It may do all that an expert would do for speed: it shares what several modes need (λ_a √f'c, the extent of the fasteners, one pass for all sums), leaves
/// out what does not change the numbers, and keeps its memory, so that it serves one thread. It does the same job: any layout, any number of groups, rows and
/// parts, the same readings of the standard, the same geometry code. What the library prepares once, the inputs and the power in V_b, it prepares as well; all
/// other formulas of the chapter are computed at each call, and unlike the library it sorts the fasteners into rows at each call. A test holds it equal to the library.
/// </remarks>
internal sealed class EvaluateKernel(AnchorageData data)
{
    private readonly TensionKernel _tension = new(data);
    private readonly ShearKernel _shear = new(data);

    /// <summary>The most results that <see cref="Evaluate"/> can write.</summary>
    public int Capacity => _tension.Capacity + _shear.Capacity + 1;

    /// <summary>Writes the modes in the order of the chapter; returns how many.</summary>
    public int Evaluate(in PreparedActions actions, Span<KernelResult> results)
    {
        int tension = _tension.Evaluate(actions, results);
        int shear = _shear.Evaluate(actions, _tension, results[tension..]);
        (double tensionRatio, bool isTensionKnown) = Highest(results[..tension]);
        (double shearRatio, bool isShearKnown) = Highest(results.Slice(tension, shear));

        // 17.8 interaction
        bool isKnown = isTensionKnown && isShearKnown;
        const double gate = 0.2 * (1 + 1e-9);
        double sum = (tensionRatio + shearRatio) / 1.2;
        results[tension + shear] = (isTensionKnown && tensionRatio <= gate) || (isShearKnown && shearRatio <= gate)
            ? KernelResult.Without(FailureModeKind.Interaction, ModeStatus.NotApplicable)
            : KernelResult.OfRatio(FailureModeKind.Interaction, sum, isKnown);
        return tension + shear + 1;
    }

    private static (double Ratio, bool IsKnown) Highest(ReadOnlySpan<KernelResult> results)
    {
        double highest = 0;
        bool isKnown = true;
        foreach (ref readonly KernelResult result in results)
        {
            if (result.Kind != FailureModeKind.BondSustained)
            {
                highest = result.Utilization > highest ? result.Utilization : highest;
                isKnown &= result.Status != ModeStatus.NotCovered;
            }
        }

        return (highest, isKnown);
    }
}
