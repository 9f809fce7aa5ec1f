using ConcreteAttach.Materials;
using ConcreteAttach.Quantities;
using UnitsNet;

namespace ConcreteAttach.Fasteners;

/// <summary>A fastener that is cast into the concrete: the diameter, steel and embedment that every kind has.</summary>
/// <remarks>The lengths and areas are checked where they are set, also by <c>with</c>.</remarks>
public abstract record CastInFastener
{
    private protected CastInFastener(Length diameter, AnchorSteel steel, Length effectiveEmbedment)
    {
        Diameter = diameter;
        Steel = steel;
        EffectiveEmbedment = effectiveEmbedment;
    }

    /// <summary>The kind of fastener as it is named in an input and on a sheet, such as <c>headed bolt</c>.</summary>
    public abstract string Kind { get; }

    /// <summary>Nominal outside diameter d_a of the shank; greater than 0, finite.</summary>
    /// <exception cref="InputException">Not greater than 0, or not finite.</exception>
    public Length Diameter
    {
        get;
        init => field = Require.Positive("diameter", value);
    }

    /// <summary>The steel.</summary>
    /// <exception cref="InputException">Absent.</exception>
    public AnchorSteel Steel
    {
        get;
        init => field = value ?? throw new InputException("steel", "nothing", "an anchor steel");
    }

    /// <summary>
    /// Effective embedment h_ef, from the surface of the concrete to the bearing surface of the head, nut, washer or hook; greater than 0, finite.
    /// </summary>
    /// <exception cref="InputException">Not greater than 0, or not finite.</exception>
    public Length EffectiveEmbedment
    {
        get;
        init => field = Require.Positive("effectiveEmbedment", value);
    }

    /// <summary>The screw thread; null: inferred from the diameter where a table has it.</summary>
    /// <exception cref="InputException">No such thread.</exception>
    public ScrewThread? Thread
    {
        get;
        init
        {
            if (value is { } thread)
            {
                _ = ThreadTable.NameOf(thread);
            }

            field = value;
        }
    }

    /// <summary>Effective cross section in tension A_se,N; null: resolved by <see cref="ResolveTensileArea"/>.</summary>
    /// <exception cref="InputException">Not greater than 0, or not finite.</exception>
    public Area? TensileArea
    {
        get;
        init => field = value is { } area ? Require.Positive("tensileArea", area) : null;
    }

    /// <summary>Effective cross section in shear A_se,V; null: as in tension.</summary>
    /// <exception cref="InputException">Not greater than 0, or not finite.</exception>
    public Area? ShearArea
    {
        get;
        init => field = value is { } area ? Require.Positive("shearArea", area) : null;
    }

    /// <summary>Whether the fastener is torqued after casting, which raises its minimum spacing and edge distance (ACI 318-19 17.9.2).</summary>
    public bool IsTorqued { get; init; }

    /// <summary>Whether there is a built-up grout pad under the attached plate (ACI 318-19 17.7.1.2.1).</summary>
    public bool HasGroutPad { get; init; }

    /// <summary>
    /// The effective cross section in tension A_se,N: <see cref="TensileArea"/> where it is given, else from the thread. In the unit of its source.
    /// Null where the area is not given and no thread has this diameter.
    /// </summary>
    /// <param name="assumption">What was taken and from where; null where the area was given or is unknown.</param>
    /// <exception cref="InputException">The thread that was given has no such diameter.</exception>
    public virtual Area? ResolveTensileArea(out string? assumption)
    {
        assumption = null;
        if (TensileArea is { } given)
        {
            return given;
        }

        if ((Thread ?? ThreadTable.Infer(Diameter)) is not { } thread)
        {
            return null;
        }

        Area area = ThreadTable.TensileStressArea(thread, Diameter);
        string inferred = Thread is null ? $", thread inferred from the diameter {QuantityText.Format(Diameter)}" : "";
        assumption = $"tensile area of the {ThreadTable.NameOf(thread)} thread: {NominalDiameter.Text(area)}{inferred}";
        return area;
    }

    /// <summary>
    /// The effective cross section in shear A_se,V: <see cref="ShearArea"/> where it is given, else the area in tension.
    /// Null where that is unknown.
    /// </summary>
    /// <param name="assumption">What was taken; null where the area was given or is unknown.</param>
    /// <exception cref="InputException">The thread that was given has no such diameter.</exception>
    public Area? ResolveShearArea(out string? assumption)
    {
        assumption = null;
        if (ShearArea is { } given)
        {
            return given;
        }

        Area? area = ResolveTensileArea(out _);
        assumption = area is { } tensile ? $"shear area as the tensile area: {NominalDiameter.Text(tensile)}" : null;
        return area;
    }

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

    /// <summary>Kind, diameter and steel.</summary>
    public sealed override string ToString() => $"{Kind} {QuantityText.Format(Diameter)}, {Steel}";
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
