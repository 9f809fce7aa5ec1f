using ConcreteAttach.Materials;
using ConcreteAttach.Quantities;
using UnitsNet;

namespace ConcreteAttach.Fasteners;

/// <summary>A fastener, cast in or installed into hardened concrete: the diameter, steel and embedment that every kind has.</summary>
/// <remarks>The lengths and areas are checked where they are set, also by <c>with</c>.</remarks>
public abstract record Fastener
{
    private protected Fastener(Length diameter, AnchorSteel steel, Length effectiveEmbedment)
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
    /// Effective embedment h_ef; greater than 0, finite. Cast in: from the surface of the concrete to the bearing surface of the head, nut, washer or hook.
    /// Post-installed: as the qualification defines it, often less than the nominal embedment; of an adhesive fastener, the bonded length.
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

    /// <summary>Kind, diameter and steel.</summary>
    public sealed override string ToString() => $"{Kind} {QuantityText.Format(Diameter)}, {Steel}";
}
