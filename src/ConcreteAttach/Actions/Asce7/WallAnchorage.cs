using System.Collections.Immutable;
using ConcreteAttach.Calculation;
using ConcreteAttach.Quantities;
using UnitsNet;

namespace ConcreteAttach.Actions.Asce7;

/// <summary>
/// The out-of-plane force of a structural wall and of its anchorage to what supports it (ASCE 7-16 and 7-22 12.11.1, 12.11.2; Seismic Design Category B and up, anchorage of 12.11.2 C and up where
/// diaphragms are flexible). The formulas are the same in both editions; from memory where the project's sheet says so.
/// </summary>
/// <remarks>
/// The reduction (1 + 2z/h)/3 where all diaphragms are rigid is not built in: then k_a is 1, and the lower limit of 12.11.1 is the unreduced force.
/// </remarks>
public sealed record WallAnchorage
{
    /// <summary>Describes the anchorage of a wall.</summary>
    /// <param name="edition">The edition.</param>
    /// <param name="designAcceleration">S_DS, in g; greater than 0.</param>
    /// <param name="weight">W_p: weight of the wall that is tributary to the anchor; greater than 0.</param>
    /// <exception cref="InputException">Outside its range.</exception>
    public WallAnchorage(Asce7Edition edition, double designAcceleration, Force weight)
    {
        Edition = edition;
        DesignAcceleration = SeismicInputs.Positive(nameof(designAcceleration), designAcceleration);
        Weight = Require.Positive(nameof(weight), weight);
    }

    /// <summary>The edition.</summary>
    public Asce7Edition Edition { get; }

    /// <summary>S_DS, in g.</summary>
    public double DesignAcceleration { get; }

    /// <summary>W_p.</summary>
    public Force Weight { get; }

    /// <summary>I_e of the building, 1 by default.</summary>
    /// <exception cref="InputException">Not 1, 1.25 or 1.5.</exception>
    public double ImportanceFactor { get; init => field = SeismicInputs.ImportanceOfBuilding(value); } = 1;

    /// <summary>L_f: span of the flexible diaphragm that supports the wall, between vertical elements; 0 for a rigid one.</summary>
    /// <exception cref="InputException">Below 0, or not finite.</exception>
    public Length FlexibleSpan { get; init => field = Require.NotNegative("flexibleSpan", value); }

    /// <summary>What was described, in words.</summary>
    public override string ToString() =>
        $"{Edition.Designation()}, S_DS {QuantityText.Format(DesignAcceleration)}, I_e {QuantityText.Format(ImportanceFactor)}, L_f {QuantityText.Format(FlexibleSpan)}, W_p {QuantityText.Format(Weight)}";

    /// <summary>The force on the anchorage, F_p of 12.11.2.</summary>
    public Demand Anchorage()
    {
        const MeasurementSystem System = MeasurementSystem.PoundInch;
        var recorder = new SheetRecorder(System);
        var sheet = new Sheet<TracedNumber>(recorder);
        TracedNumber sds = sheet.Given("S_DS", DesignAcceleration, Dimension.None);
        TracedNumber ie = sheet.Given("I_e", ImportanceFactor, Dimension.None, "Table 1.5-2");
        TracedNumber wp = sheet.Given("W_p", Weight.In(System), Dimension.Force, "wall tributary to the anchor");
        TracedNumber ka = AnchorageFactor(sheet, FlexibleSpan.In(System));
        TracedNumber fp = sheet.Step("F_p", TracedNumber.Max(0.4 * sds * ka * ie * wp, 0.2 * ka * ie * wp), Dimension.Force, "12.11-1");
        TracedNumber steel = sheet.Step("F_p_steel", 1.4 * fp, Dimension.Force, "12.11.2.2.2");
        return new Demand($"Anchorage of a structural wall, {Edition.Designation()} 12.11.2", Force.FromPoundsForce(fp.Value), recorder.ToSheet(), Notices)
        {
            OfSteelElements = Force.FromPoundsForce(steel.Value),
        };
    }

    /// <summary>The force on the wall itself out of its plane, of the same weight: F_p of 12.11.1.</summary>
    public Demand Wall()
    {
        const MeasurementSystem System = MeasurementSystem.PoundInch;
        var recorder = new SheetRecorder(System);
        var sheet = new Sheet<TracedNumber>(recorder);
        TracedNumber sds = sheet.Given("S_DS", DesignAcceleration, Dimension.None);
        TracedNumber ie = sheet.Given("I_e", ImportanceFactor, Dimension.None, "Table 1.5-2");
        TracedNumber w = sheet.Given("W_w", Weight.In(System), Dimension.Force, "weight of the wall");
        TracedNumber fp = sheet.Step("F_p", TracedNumber.Max(0.4 * sds * ie * w, 0.1 * w), Dimension.Force, "12.11.1");
        return new Demand($"Structural wall out of its plane, {Edition.Designation()} 12.11.1", Force.FromPoundsForce(fp.Value), recorder.ToSheet(), []);
    }

    private static readonly ImmutableArray<string> Notices =
    [
        "Anchorage of walls: where anchors are more than 4 ft apart, the wall bends between them (12.11.2.1).",
        "Anchorage of walls to wood diaphragms: no ledger in cross-grain bending, no nail in withdrawal, no toe-nail, continuous ties across the diaphragm (12.11.2.2.3).",
        "F_p,steel is for steel elements of the anchorage; anchor bolts and reinforcement are designed for F_p (12.11.2.2.2).",
    ];

    /// <summary>k_a = 1 + L_f / 100 ft, at most 2.</summary>
    private static T AnchorageFactor<T>(Sheet<T> sheet, double span)
        where T : struct, IFormulaNumber<T>
    {
        T lf = sheet.Given("L_f", span, Dimension.Length, "span of the flexible diaphragm, 0 if rigid");

        // Printed with L_f in feet: 100 ft are 1200 in.
        return sheet.Factor("k_a", T.Min(1 + (lf / 1200), T.Literal(2)), "12.11-2, 100 ft = 1200 in.");
    }
}
