using ConcreteAttach.Calculation;
using ConcreteAttach.Materials;
using ConcreteAttach.Quantities;
using UnitsNet;

namespace ConcreteAttach.Nds;

/// <summary>A lag screw, wood screw or nail that is pulled out of wood along its axis (NDS-2018 12.2). Constants from memory. Immutable.</summary>
public sealed class WithdrawalConnection
{
    /// <summary>Creates a connection.</summary>
    /// <param name="fastener">Lag screw, wood screw or nail.</param>
    /// <param name="species">Wood that holds the point.</param>
    /// <param name="penetration">Threaded length (lag and wood screws) or shank (nails) in that wood; of a lag screw without the tapered tip. Greater than 0.</param>
    /// <exception cref="InputException">A parameter is outside its range, or the fastener is a bolt.</exception>
    public WithdrawalConnection(DowelFastener fastener, WoodSpecies species, Length penetration)
    {
        ArgumentNullException.ThrowIfNull(fastener);
        ArgumentNullException.ThrowIfNull(species);
        Fastener = fastener.Kind == DowelKind.Bolt
            ? throw new InputException(nameof(fastener), nameof(DowelKind.Bolt), "a lag screw, wood screw or nail: a bolt holds by its washer")
            : fastener;
        Species = species;
        Penetration = Require.Positive(nameof(penetration), penetration);
    }

    /// <summary>The fastener.</summary>
    public DowelFastener Fastener { get; }

    /// <summary>Wood that holds the point.</summary>
    public WoodSpecies Species { get; }

    /// <summary>Length that counts.</summary>
    public Length Penetration { get; }

    /// <summary>Whether the fastener stands in end grain. Only lag screws hold there (12.2.1.1, C_eg 0.75).</summary>
    public bool IsEndGrain { get; init; }

    /// <summary>Withdrawal design value of one fastener. The tensile strength of its steel stands apart (12.2.1.2) and is not checked here.</summary>
    /// <param name="conditions">Under what conditions the connection works.</param>
    /// <exception cref="InputException">The conditions name a toe-nail and the fastener is no nail.</exception>
    public ConnectionStrength Strength(ServiceConditions conditions)
    {
        ArgumentNullException.ThrowIfNull(conditions);
        if (conditions.IsToeNail && Fastener.Kind is not (DowelKind.Nail or DowelKind.RingShankNail))
        {
            throw new InputException("isToeNail", $"true with {Fastener.Kind}", "false, or a nail");
        }

        var recorder = new SheetRecorder(MeasurementSystem.PoundInch);
        if (IsEndGrain && Fastener.Kind != DowelKind.LagScrew)
        {
            const string Reason = "Nails and wood screws have no withdrawal value in end grain (12.2.2, 12.2.3).";
            recorder.Add(new NoteLine(Reason));
            return new(null, null, [], null, Reason, [], recorder);
        }

        var sheet = new Sheet<TracedNumber>(recorder);
        TracedNumber w = PerLength(sheet);
        TracedNumber p = sheet.Given("p_w", Penetration.In(MeasurementSystem.PoundInch), Dimension.Length, "penetration that counts");
        TracedNumber reference = sheet.Step("W_p", w * p, Dimension.Force, "12.2");
        TracedNumber product = reference * Adjustment.WithdrawalMoisture(sheet, conditions, Fastener.Kind) * Adjustment.Temperature(sheet, conditions);
        if (IsEndGrain)
        {
            product *= sheet.Factor("C_eg", 0.75, "12.5.2.1");
        }

        if (conditions.IsToeNail)
        {
            product *= sheet.Factor("C_tn", 0.67, "12.5.4.1");
        }

        TracedNumber adjusted = sheet.Step("W'_p", Adjustment.Format(sheet, conditions, product), Dimension.Force, "Table 11.3.1");
        return new(Force.FromPoundsForce(reference.Value), Force.FromPoundsForce(adjusted.Value), [], null, null, [], recorder, adjusted);
    }

    /// <summary>W per inch (12.2-1 to 12.2-4).</summary>
    internal T PerLength<T>(Sheet<T> sheet)
        where T : struct, IFormulaNumber<T>
    {
        T g = sheet.Given("G", Species.SpecificGravity, Dimension.None, "Table 12.3.3A");
        T d = sheet.Given("D", Fastener.Diameter.In(MeasurementSystem.PoundInch), Dimension.Length);
        return Fastener.Kind switch
        {
            DowelKind.LagScrew => sheet.Step("W", 1_800 * T.Power(g, 3, 2) * T.Power(d, 0.75), Dimension.ForcePerLength, "12.2-1, lag screw"),
            DowelKind.WoodScrew => sheet.Step("W", 2_850 * T.Power(g, 2, 1) * d, Dimension.ForcePerLength, "12.2-2, wood screw"),
            DowelKind.Nail => sheet.Step("W", 1_380 * T.Power(g, 5, 2) * d, Dimension.ForcePerLength, "12.2-3, plain nail"),
            _ => sheet.Step("W", 1_800 * T.Power(g, 2, 1) * d, Dimension.ForcePerLength, "12.2-4, post-frame ring-shank nail"),
        };
    }
}
