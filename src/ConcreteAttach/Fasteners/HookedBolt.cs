using System.Globalization;
using ConcreteAttach.Materials;
using ConcreteAttach.Quantities;
using UnitsNet;

namespace ConcreteAttach.Fasteners;

/// <summary>Shape of the bent end of a hooked bolt.</summary>
public enum HookShape
{
    /// <summary>A bend of 90 degrees.</summary>
    L,

    /// <summary>A bend of 180 degrees.</summary>
    J,
}

/// <summary>A cast-in bolt that is bent at the embedded end.</summary>
public sealed record HookedBolt : CastInFastener
{
    /// <summary>Creates a hooked bolt.</summary>
    /// <param name="diameter">Nominal diameter d_a; greater than 0, finite.</param>
    /// <param name="steel">The steel.</param>
    /// <param name="effectiveEmbedment">Effective embedment h_ef; greater than 0, finite.</param>
    /// <param name="hookExtension">Hook e_h, see <see cref="HookExtension"/>; greater than 0, finite.</param>
    /// <exception cref="InputException">A parameter is outside its range.</exception>
    public HookedBolt(Length diameter, AnchorSteel steel, Length effectiveEmbedment, Length hookExtension)
        : base(diameter, steel, effectiveEmbedment)
    {
        HookExtension = hookExtension;
    }

    /// <inheritdoc/>
    public override string Kind => "hooked bolt";

    /// <summary>
    /// e_h: distance from the inner face of the shaft to the outer tip of the hook; greater than 0, finite. ACI 318-19 17.6.3.2.2b holds for
    /// 3 d_a ≤ e_h ≤ 4.5 d_a; what lies outside is for the method to judge.
    /// </summary>
    /// <exception cref="InputException">Not greater than 0, or not finite.</exception>
    public Length HookExtension
    {
        get;
        init => field = Require.Positive("hookExtension", value);
    }

    /// <summary>Shape of the hook. ACI 318-19 treats both alike.</summary>
    /// <exception cref="InputException">No such shape.</exception>
    public HookShape Hook
    {
        get;
        init => field = value is HookShape.L or HookShape.J
            ? value
            : throw new InputException("hook", ((int)value).ToString(CultureInfo.InvariantCulture), "L, J");
    }

    /// <inheritdoc/>
    public override Area? ResolveBearingArea(out string? assumption)
    {
        assumption = null;
        return null;
    }

    /// <inheritdoc/>
    public override Length? ResolveHeadHeight() => Diameter;
}
