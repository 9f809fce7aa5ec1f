using System.Collections.Immutable;
using ConcreteAttach.Calculation;
using ConcreteAttach.Quantities;
using UnitsNet;

namespace ConcreteAttach.Nds;

/// <summary>
/// A dowel-type connection with at least one member of wood, under lateral load, by NDS-2018 chapter 12 and TR12: a sill to concrete, a ledger, a steel plate on wood. The
/// concrete's own failure modes are those of ACI 318 chapter 17 and stand apart. Immutable.
/// </summary>
/// <remarks>Local codes and the judgement of a licensed professional govern. Constants are from memory unless their source says otherwise.</remarks>
public sealed class WoodConnection
{
    /// <summary>Creates a connection.</summary>
    /// <param name="fastener">The fastener.</param>
    /// <param name="main">Main member: the concrete, the thicker member, the middle one in double shear.</param>
    /// <param name="side">Side member; in double shear each of the two, or the weaker one (12.3.8).</param>
    public WoodConnection(DowelFastener fastener, ConnectionMember main, ConnectionMember side)
    {
        ArgumentNullException.ThrowIfNull(fastener);
        ArgumentNullException.ThrowIfNull(main);
        ArgumentNullException.ThrowIfNull(side);
        Fastener = fastener;
        Main = main;
        Side = side;
    }

    /// <summary>The fastener.</summary>
    public DowelFastener Fastener { get; }

    /// <summary>Main member.</summary>
    public ConnectionMember Main { get; }

    /// <summary>Side member.</summary>
    public ConnectionMember Side { get; }

    /// <summary>Whether the fastener crosses two shear planes, the main member in the middle.</summary>
    public bool IsDoubleShear { get; init; }

    /// <summary>Gap between the members, such as a sheet that does not bear: 0 or more. Above 0 the general dowel equations of TR12 count.</summary>
    /// <exception cref="InputException">Below 0, or not finite.</exception>
    public Length Gap { get; init => field = Require.NotNegative("gap", value); }

    /// <summary>
    /// Penetration of a screw or nail into the member that holds its point, as its minimum counts it: of a nail or wood screw with the tapered tip, of a lag screw without. Null: as it
    /// follows from the bearing length. Below 4 D (lag screws) or 6 D (wood screws, nails) the standard gives no strength (NDS-2018 12.1.4.6, 12.1.5.6, 12.1.6.5, from memory).
    /// </summary>
    /// <exception cref="InputException">Not above 0, or not finite.</exception>
    public Length? Penetration { get; init => field = value is { } length ? Require.Positive("penetration", length) : null; }

    /// <summary>Whether F_e and Z are rounded as the printed tables are: F_e to 50 psi, Z to 10 lb (1 lb below 1/4 in.).</summary>
    public bool IsRoundedAsPrinted { get; init; }

    /// <summary>The row of fasteners for C_g; null: one fastener, or C_g of 1.</summary>
    public FastenerRow? Row { get; init; }

    /// <summary>Where the fasteners stand, for C_Δ; null: everything at full distances.</summary>
    public FastenerPlacement? Placement { get; init; }

    /// <summary>Lateral design value of one fastener.</summary>
    /// <param name="conditions">Under what conditions the connection works.</param>
    /// <returns>Z of each mode, the governing one, Z' and the sheet.</returns>
    /// <exception cref="InputException">The conditions name a toe-nail or a diaphragm nail and the fastener is no nail.</exception>
    public ConnectionStrength Lateral(ServiceConditions conditions)
    {
        ArgumentNullException.ThrowIfNull(conditions);
        if ((conditions.IsToeNail || conditions.IsDiaphragmNail) && Fastener.Kind is not (DowelKind.Nail or DowelKind.RingShankNail))
        {
            throw new InputException(conditions.IsToeNail ? "isToeNail" : "isDiaphragmNail", $"true with {Fastener.Kind}", "false, or a nail");
        }

        DowelData data = Prepare();
        var recorder = new SheetRecorder(MeasurementSystem.PoundInch);
        if (data.NotCovered is { } reason)
        {
            recorder.Add(new NoteLine(reason));
            return new(null, null, [], null, reason, [], recorder);
        }

        Span<double> modes = stackalloc double[YieldLimit.ModeCount];
        var notMet = new List<string>();
        (TracedNumber reference, TracedNumber adjusted) = Strength(new Sheet<TracedNumber>(recorder), data, conditions, modes, notMet);
        return new(
            Force.FromPoundsForce(reference.Value), notMet.Count == 0 ? Force.FromPoundsForce(adjusted.Value) : null,
            Strengths(modes), Governing(modes), null, [.. notMet], recorder, adjusted);
    }

    /// <summary>Checked once, converted once.</summary>
    internal DowelData Prepare()
    {
        const MeasurementSystem System = MeasurementSystem.PoundInch;
        double nominal = Fastener.Diameter.In(System);
        return new()
        {
            Kind = Fastener.Kind,
            NominalDiameter = nominal,
            Diameter = Fastener is { HasFullBody: false, RootDiameter: { } root } ? root.In(System) : nominal,
            BendingYield = Fastener.BendingYieldStrength.In(System),
            BendingYieldSource = Fastener.BendingYieldSource,
            Main = MemberData.Of(Main),
            Side = MemberData.Of(Side),
            Gap = Gap.In(System),
            IsDoubleShear = IsDoubleShear,
            IsRounded = IsRoundedAsPrinted,
            Penetration = PenetrationOf(IsDoubleShear ? Side : Main, nominal),
        };
    }

    /// <summary>
    /// Penetration that counts for the minimum. The bearing length reaches to the middle of the tapered tip (12.3.5.3), so that a nail or wood screw penetrates at least as far, and
    /// a lag screw half its tip less. Infinite where there is no minimum: bolts, and points in concrete or steel.
    /// </summary>
    private double PenetrationOf(ConnectionMember holding, double diameter)
    {
        const MeasurementSystem System = MeasurementSystem.PoundInch;
        return Fastener.Kind == DowelKind.Bolt || holding is ConcreteBearingMember or SteelBearingMember ? double.PositiveInfinity
            : Penetration is { } given ? given.In(System)
            : Fastener.Kind == DowelKind.LagScrew ? holding.BearingLength.In(System) - (DowelTables.Tip(diameter) / 2)
            : holding.BearingLength.In(System);
    }

    /// <summary>Z and Z' (Table 11.3.1).</summary>
    internal (T Reference, T Adjusted) Strength<T>(Sheet<T> sheet, DowelData data, ServiceConditions conditions, Span<double> modes, List<string> notMet)
        where T : struct, IFormulaNumber<T>
    {
        T least = YieldLimit.Strength(sheet, data, modes);
        T z = data.IsRounded
            ? sheet.Given("Z", PrintedRounding.Strength(sheet.Step("Z_exact", least, Dimension.Force, "12.3.1, least of the modes").Value, data.IsSmall), Dimension.Force, "as the tables print it")
            : sheet.Step("Z", least, Dimension.Force, "12.3.1, least of the modes");
        T product = z * Adjustment.LateralMoisture(sheet, conditions, data.IsSmall) * Adjustment.Temperature(sheet, conditions);
        if (Row is { } row)
        {
            product *= row.GroupAction(sheet, data.NominalDiameter);
        }

        if (Placement is { } placement)
        {
            product *= placement.GeometryFactor(sheet, data.NominalDiameter, LengthInWood(data), notMet);
        }

        product = Adjustment.LateralPlace(sheet, conditions, data.Main.IsEndGrain || data.Side.IsEndGrain, product);
        return (z, sheet.Step("Z'", Adjustment.Format(sheet, conditions, product), Dimension.Force, "Table 11.3.1"));
    }

    /// <summary>Length of the fastener in wood for ℓ/D of 12.5.1: the lesser of the main member's and that of all side members, those of wood.</summary>
    private static double LengthInWood(DowelData data)
    {
        double main = data.Main.Material == BearingMaterial.Wood ? data.Main.Length : double.PositiveInfinity;
        double side = data.Side.Material == BearingMaterial.Wood ? (data.IsDoubleShear ? 2 : 1) * data.Side.Length : double.PositiveInfinity;
        return double.IsPositiveInfinity(Math.Min(main, side)) ? Math.Min(data.Main.Length, data.Side.Length) : Math.Min(main, side);
    }

    private static ImmutableArray<YieldModeStrength> Strengths(ReadOnlySpan<double> modes)
    {
        ImmutableArray<YieldModeStrength>.Builder builder = ImmutableArray.CreateBuilder<YieldModeStrength>(modes.Length);
        for (int i = 0; i < modes.Length; i++)
        {
            if (!double.IsNaN(modes[i]))
            {
                builder.Add(new((YieldMode)i, Force.FromPoundsForce(modes[i])));
            }
        }

        return builder.ToImmutable();
    }

    private static YieldMode Governing(ReadOnlySpan<double> modes)
    {
        int least = 0;
        for (int i = 1; i < modes.Length; i++)
        {
            if (Limit.IsBelow(modes[i], modes[least]))
            {
                least = i;
            }
        }

        return (YieldMode)least;
    }
}
