using System.Globalization;
using ConcreteAttach.Materials;
using ConcreteAttach.Quantities;

namespace ConcreteAttach.Nds;

/// <summary>
/// One fastener in wood, or several alike that share the load alike, with all that is to be verified of it. A load across the fasteners needs <see cref="Lateral"/>, a pull along
/// them at least one of <see cref="Withdrawal"/>, <see cref="PullThrough"/> and <see cref="Washer"/>. Immutable.
/// </summary>
public sealed record WoodFastening
{
    /// <summary>Under what conditions it works. Load duration and time effect are those of the load case.</summary>
    public ServiceConditions Conditions { get; init; } = new();

    /// <summary>Fasteners that share the load; at least 1.</summary>
    /// <exception cref="InputException">Less than 1.</exception>
    public int Count { get; init => field = value >= 1 ? value : throw new InputException("count", value.ToString(CultureInfo.InvariantCulture), "at least 1"); } = 1;

    /// <summary>The connection under a load across the fastener; null: none.</summary>
    public WoodConnection? Lateral { get; init; }

    /// <summary>The point that is pulled out of wood; null: none.</summary>
    public WithdrawalConnection? Withdrawal { get; init; }

    /// <summary>The head that is pulled through wood; null: none.</summary>
    public HeadPullThrough? PullThrough { get; init; }

    /// <summary>The washer that bears on wood when the fastener is pulled; null: none.</summary>
    public WasherBearing? Washer { get; init; }

    /// <summary>The wood under the washer; needed with <see cref="Washer"/>.</summary>
    public WoodSpecies? WasherSpecies { get; init; }

    /// <summary>The fastener, where one of the checks names it.</summary>
    internal DowelFastener? Fastener => Lateral?.Fastener ?? Withdrawal?.Fastener;

    internal bool HasAxial => Withdrawal is not null || PullThrough is not null || Washer is not null;
}
