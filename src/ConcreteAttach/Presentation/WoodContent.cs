using ConcreteAttach.Nds;
using ConcreteAttach.Quantities;
using UnitsNet;

namespace ConcreteAttach.Presentation;

/// <summary>What a report says of the inputs of a fastening in wood.</summary>
internal static class WoodContent
{
    public static void AddInputs(List<ReportBlock> blocks, WoodVerification verification)
    {
        blocks.Add(new BulletsBlock([.. Inputs(verification.Fastening)]));
        bool isAllowable = verification.Fastening.Conditions.Format == Actions.SafetyFormat.AllowableStressDesign;
        blocks.Add(new TableBlock(
            "Load cases",
            [new("load case"), new("lateral", true), new("axial", true), new(isAllowable ? "duration" : "time effect")],
            [.. verification.LoadCases.Select(l => new[] { l.Name, Shown(l.Lateral), Shown(l.Axial), isAllowable ? Words(l.Duration) : Words(l.TimeEffect) })]));
    }

    private static string Shown(Force force) => force.Value == 0 ? "0" : QuantityText.Format(force);

    private static IEnumerable<string> Inputs(WoodFastening fastening)
    {
        yield return $"Method: {NdsMethod.Standard}, {NdsMethod.Constants} constants.";
        if (fastening.Fastener is { } fastener)
        {
            string root = fastener.RootDiameter is { } d ? $", root {QuantityText.Format(d)}{(fastener.HasFullBody ? ", full body in both members" : "")}" : "";
            yield return $"Fastener: {Words(fastener.Kind)}, diameter {QuantityText.Format(fastener.Diameter)}{root}, F_yb {QuantityText.Format(fastener.BendingYieldStrength)} ({fastener.BendingYieldSource}).";
        }

        if (fastening.Count > 1)
        {
            yield return $"Fasteners that share the load: {QuantityText.Format(fastening.Count)}.";
        }

        if (fastening.Lateral is { } lateral)
        {
            yield return $"Main member: {Words(lateral.Main)}.";
            yield return $"Side member{(lateral.IsDoubleShear ? "s, one on each side" : "")}: {Words(lateral.Side)}.";
            if (lateral.Gap.Value > 0)
            {
                yield return $"Gap between the members: {QuantityText.Format(lateral.Gap)}.";
            }

            if (lateral.Penetration is { } penetration)
            {
                yield return $"Penetration into the member that holds the point: {QuantityText.Format(penetration)}.";
            }

            if (lateral.Row is { } row)
            {
                yield return $"Row: {QuantityText.Format(row.Count)} fasteners, {QuantityText.Format(row.Spacing)} apart, {(row.Slip == LoadSlip.WoodToWood ? "wood to wood" : "wood to metal")}.";
            }

            if (lateral.Placement is { } placement)
            {
                yield return $"Placement: {placement}.";
            }
        }

        if (fastening.Withdrawal is { } withdrawal)
        {
            yield return $"Withdrawal: {withdrawal.Species}, penetration that counts {QuantityText.Format(withdrawal.Penetration)}{(withdrawal.IsEndGrain ? ", end grain" : "")}.";
        }

        if (fastening.PullThrough is { } head)
        {
            yield return $"Head: diameter {QuantityText.Format(head.HeadDiameter)} on {QuantityText.Format(head.Thickness)} of {head.Species}.";
        }

        if (fastening.Washer is { } washer)
        {
            yield return $"Washer: size {QuantityText.Format(washer.Size)} on {fastening.WasherSpecies}.";
        }

        yield return $"Wood: {Words(fastening.Conditions)}.";
    }

    private static string Words(ConnectionMember member) => member switch
    {
        WoodMember wood => $"{wood.Species}, G {QuantityText.Format(wood.Species.SpecificGravity)}, bearing length {QuantityText.Format(wood.BearingLength)}, load at {QuantityText.Format(wood.LoadToGrainDegrees)} degrees to the grain{(wood.IsEndGrain ? ", end grain" : "")}",
        ConcreteBearingMember concrete => $"concrete, f'c {QuantityText.Format(concrete.CompressiveStrength)}, bearing length {QuantityText.Format(concrete.BearingLength)}",
        SteelBearingMember steel => $"{(steel.IsColdFormed ? "cold-formed" : "hot-rolled")} steel, F_u {QuantityText.Format(steel.UltimateStrength)}, thickness {QuantityText.Format(steel.BearingLength)}",
        TestedMember tested => $"F_e by test {QuantityText.Format(tested.DowelBearingStrength)}, bearing length {QuantityText.Format(tested.BearingLength)}",
        _ => "not known",
    };

    private static string Words(DowelKind kind) => kind switch
    {
        DowelKind.Bolt => "bolt",
        DowelKind.LagScrew => "lag screw",
        DowelKind.WoodScrew => "wood screw",
        DowelKind.Nail => "nail",
        _ => "ring-shank nail",
    };

    private static string Words(LoadDuration duration) => duration switch
    {
        LoadDuration.Permanent => "permanent",
        LoadDuration.TenYears => "ten years",
        LoadDuration.TwoMonths => "two months",
        LoadDuration.SevenDays => "seven days",
        _ => "ten minutes",
    };

    private static string Words(TimeEffect effect) => effect switch
    {
        TimeEffect.Dead => "dead",
        TimeEffect.Storage => "storage",
        TimeEffect.OccupancyOrRoof => "occupancy or roof",
        _ => "wind, earthquake or impact",
    };

    private static string Words(ServiceConditions conditions)
    {
        string moisture = (conditions.IsWetAtFabrication, conditions.IsWetInService) switch
        {
            (false, false) => "at most 19 % moisture at fabrication and in service",
            (true, false) => $"above 19 % moisture at fabrication, dry in service{(conditions.IsFreeToShrink ? ", free to shrink" : "")}",
            (false, true) => "above 19 % moisture in service",
            _ => "above 19 % moisture at fabrication and in service",
        };
        string heat = conditions.Temperature switch { TemperatureRange.UpTo100F => "at most 100 °F", TemperatureRange.UpTo125F => "at most 125 °F", _ => "at most 150 °F" };
        string nail = conditions.IsToeNail ? ", toe-nail" : conditions.IsDiaphragmNail ? ", nail of a diaphragm" : "";
        return $"{moisture}, {heat}{nail}";
    }
}
