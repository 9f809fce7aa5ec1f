using ConcreteAttach.Materials;
using ConcreteAttach.Quantities;
using UnitsNet;

namespace ConcreteAttach.Fasteners;

/// <summary>A fastener that is cast into the concrete.</summary>
public abstract record CastInFastener : Fastener
{
    private protected CastInFastener(Length diameter, AnchorSteel steel, Length effectiveEmbedment)
        : base(diameter, steel, effectiveEmbedment)
    {
    }

    /// <summary>Whether the fastener is torqued after casting, which raises its minimum spacing and edge distance (ACI 318-19 17.9.2).</summary>
    public bool IsTorqued { get; init; }

    /// <summary>
    /// The net bearing area A_brg of the head or nut (ACI 318-19 17.6.3.2.2a). Null where it is unknown, and for a hooked bolt, which has none.
    /// </summary>
    /// <param name="assumption">What was taken and from where; null where the area was given or is unknown.</param>
    public abstract Area? ResolveBearingArea(out string? assumption);

    /// <summary>
    /// What reaches deeper than h_ef: the height of the head, of the nut and its washer, or the diameter of the hook. The free end of a rod
    /// below its nut is not counted. Null where it is unknown.
    /// </summary>
    public abstract Length? ResolveHeadHeight();
}

/// <summary>A cast-in fastener that is held by a head or a nut.</summary>
public abstract record HeadedFastener : CastInFastener
{
    private protected HeadedFastener(Length diameter, AnchorSteel steel, Length effectiveEmbedment)
        : base(diameter, steel, effectiveEmbedment)
    {
    }

    /// <summary>Net bearing area A_brg; null: from the table of heads and nuts, see <see cref="HeadTable"/>.</summary>
    /// <exception cref="InputException">Not greater than 0, or not finite.</exception>
    public Area? BearingArea
    {
        get;
        init => field = value is { } area ? Require.Positive("bearingArea", area) : null;
    }

    /// <inheritdoc/>
    public sealed override Area? ResolveBearingArea(out string? assumption)
    {
        assumption = null;
        return BearingArea ?? BearingAreaFromTable(out assumption);
    }

    /// <inheritdoc/>
    /// <remarks>A head whose bearing area was given is not the head of the table, so its height is unknown.</remarks>
    public sealed override Length? ResolveHeadHeight() => BearingArea is null ? HeadHeightFromTable() : null;

    /// <summary>The height that follows from the kind; null where no table has it.</summary>
    private protected abstract Length? HeadHeightFromTable();

    /// <summary>The bearing area that follows from the kind, without one that was given.</summary>
    private protected abstract Area? BearingAreaFromTable(out string? assumption);

    /// <summary>The bearing area of a head or nut from <see cref="HeadTable"/>.</summary>
    private protected Area? BearingAreaOf(HeadShape shape, out string? assumption)
    {
        Area? area = HeadTable.BearingArea(shape, Diameter);
        assumption = area is { } found
            ? $"bearing area of the {HeadTable.NameOf(shape)} from {HeadTable.Standard(shape, Diameter)}: {NominalDiameter.Text(found)}"
            : null;
        return area;
    }
}
