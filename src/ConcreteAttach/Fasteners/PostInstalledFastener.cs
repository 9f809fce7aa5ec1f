using ConcreteAttach.Calculation;
using ConcreteAttach.Materials;
using ConcreteAttach.Quantities;
using UnitsNet;

namespace ConcreteAttach.Fasteners;

/// <summary>A fastener that is installed into hardened concrete. What tests have shown of the product stands in its qualification.</summary>
public abstract record PostInstalledFastener : Fastener
{
    private protected PostInstalledFastener(Length diameter, AnchorSteel steel, Length effectiveEmbedment)
        : base(diameter, steel, effectiveEmbedment)
    {
    }

    /// <summary>What the evaluation report of the product states, whatever the kind.</summary>
    public abstract ProductQualification ProductQualification { get; }

    /// <summary>
    /// What cannot be true together, such as a nominal embedment below the effective one; empty where all fits. Found, and what is permitted.
    /// </summary>
    internal virtual IEnumerable<(string Found, string Permitted)> Contradictions()
    {
        ProductQualification data = ProductQualification;
        if (data.NominalEmbedment is { } nominal && IsLess(nominal, EffectiveEmbedment))
        {
            yield return ($"nominalEmbedment {QuantityText.Format(nominal)}", $"nominalEmbedment at least effectiveEmbedment {QuantityText.Format(EffectiveEmbedment)}");
        }

        Length reached = data.NominalEmbedment ?? EffectiveEmbedment;
        if (data.HoleDepth is { } depth && IsLess(depth, reached))
        {
            yield return ($"holeDepth {QuantityText.Format(depth)}", $"holeDepth at least the embedment {QuantityText.Format(reached)}");
        }
    }

    /// <summary>Whether a length is less than another, beyond rounding.</summary>
    private protected static bool IsLess(Length a, Length b) =>
        Limit.IsBelow(a.In(MeasurementSystem.NewtonMillimetre), b.In(MeasurementSystem.NewtonMillimetre));
}

/// <summary>A post-installed fastener that is held by friction, by an undercut of the hole or by a thread cut into the concrete.</summary>
public abstract record MechanicalFastener : PostInstalledFastener
{
    private protected MechanicalFastener(Length diameter, AnchorSteel steel, Length effectiveEmbedment, MechanicalQualification qualification)
        : base(diameter, steel, effectiveEmbedment)
    {
        Qualification = qualification;
    }

    /// <summary>What tests by ACI 355.2 or their like have shown of the product.</summary>
    /// <exception cref="InputException">Absent.</exception>
    public MechanicalQualification Qualification
    {
        get;
        init => field = value ?? throw new InputException("qualification", "nothing", "the data of the evaluation report; an empty qualification where none are known");
    }

    /// <inheritdoc/>
    public sealed override ProductQualification ProductQualification => Qualification;

    /// <summary>
    /// The effective cross section in tension A_se,N: <see cref="Fastener.TensileArea"/> where it is given, else from the <see cref="Fastener.Thread"/> that
    /// is named. Null where neither is: the mechanism may be thinner than the thread (ACI 318-19 R17.6.1.2), so that no thread is inferred.
    /// </summary>
    /// <param name="assumption">What was taken and from where; null where the area was given or is unknown.</param>
    /// <exception cref="InputException">The thread that was given has no such diameter.</exception>
    public sealed override Area? ResolveTensileArea(out string? assumption)
    {
        if (TensileArea is not null || Thread is not null)
        {
            return base.ResolveTensileArea(out assumption);
        }

        assumption = null;
        return null;
    }
}

/// <summary>Which way an adhesive fastener is installed.</summary>
public enum InstallationDirection
{
    /// <summary>Into a surface below: adhesive does not run out.</summary>
    Downward,

    /// <summary>Into a wall.</summary>
    Horizontal,

    /// <summary>Upward or upwardly inclined, such as into a soffit.</summary>
    Upward,
}

/// <summary>A fastener that is bonded into a drilled hole by an adhesive.</summary>
public abstract record AdhesiveFastener : PostInstalledFastener
{
    private protected AdhesiveFastener(Length diameter, AnchorSteel steel, Length effectiveEmbedment, AdhesiveQualification qualification)
        : base(diameter, steel, effectiveEmbedment)
    {
        Qualification = qualification;
    }

    /// <summary>What tests by ACI 355.4 or their like have shown of the product.</summary>
    /// <exception cref="InputException">Absent.</exception>
    public AdhesiveQualification Qualification
    {
        get;
        init => field = value ?? throw new InputException("qualification", "nothing", "the data of the evaluation report; an empty qualification where none are known");
    }

    /// <summary>Which way it is installed; null: not known.</summary>
    /// <exception cref="InputException">No such direction.</exception>
    public InstallationDirection? Direction
    {
        get;
        init => field = value is null or InstallationDirection.Downward or InstallationDirection.Horizontal or InstallationDirection.Upward
            ? value
            : throw new InputException("installationDirection", QuantityText.Format((int)value), "downward, horizontal, upward");
    }

    /// <inheritdoc/>
    public sealed override ProductQualification ProductQualification => Qualification;

    internal sealed override IEnumerable<(string Found, string Permitted)> Contradictions()
    {
        foreach ((string Found, string Permitted) contradiction in base.Contradictions())
        {
            yield return contradiction;
        }

        if (Qualification.HoleDiameter is { } hole && !IsLess(Diameter, hole))
        {
            yield return ($"holeDiameter {QuantityText.Format(hole)}", $"holeDiameter above the diameter {QuantityText.Format(Diameter)}: the adhesive needs a gap");
        }
    }
}
