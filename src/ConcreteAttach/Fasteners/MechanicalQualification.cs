using ConcreteAttach.Quantities;
using UnitsNet;

namespace ConcreteAttach.Fasteners;

/// <summary>What tests by ACI 355.2 or their like have shown of an expansion, undercut or screw fastener.</summary>
public sealed record MechanicalQualification : ProductQualification
{
    /// <summary>N_p; null: not known, and pullout is not covered (ACI 318-19 17.6.3.2.1 has no default).</summary>
    public PulloutStrength? Pullout { get; init; }
}

/// <summary>Pullout strength N_p of one fastener by tests (ACI 318-19 17.6.3.2.1): the 5 percent fractile.</summary>
public sealed record PulloutStrength
{
    private PulloutStrength(bool doesNotGovern) => DoesNotGovern = doesNotGovern;

    /// <summary>States the strengths.</summary>
    /// <param name="cracked">N_p in cracked concrete, greater than 0; null: not stated.</param>
    /// <param name="uncracked">N_p in uncracked concrete, greater than 0; null: not stated.</param>
    /// <exception cref="InputException">A strength is not greater than 0, or not finite.</exception>
    public PulloutStrength(Force? cracked, Force? uncracked)
    {
        Cracked = cracked is { } c ? Require.Positive(nameof(cracked), c) : null;
        Uncracked = uncracked is { } u ? Require.Positive(nameof(uncracked), u) : null;
    }

    /// <summary>The tests have shown that pullout does not govern.</summary>
    public static PulloutStrength NotGoverning { get; } = new(doesNotGovern: true);

    /// <summary>Whether pullout does not govern.</summary>
    public bool DoesNotGovern { get; }

    /// <summary>N_p in cracked concrete; null: not stated.</summary>
    public Force? Cracked { get; }

    /// <summary>N_p in uncracked concrete; null: not stated.</summary>
    public Force? Uncracked { get; }

    /// <summary>The concrete strength at which the values hold; null: they hold as they are.</summary>
    /// <exception cref="InputException">Not greater than 0, or not finite.</exception>
    public Pressure? At { get; init => field = value is { } strength ? Require.Positive("at", strength) : null; }

    /// <summary>n of (f'c / <see cref="At"/>)ⁿ; 0 to 1, 0 by default: no gain from a stronger concrete.</summary>
    /// <exception cref="InputException">Outside of 0 to 1.</exception>
    public double Exponent { get; init => field = value is >= 0 and <= 1 ? value : throw new InputException("exponent", QuantityText.Format(value), "0 to 1"); }

    /// <summary>The strengths.</summary>
    public override string ToString()
    {
        if (DoesNotGovern)
        {
            return "does not govern";
        }

        string values = QualificationText.States(Cracked is { } cracked ? QuantityText.Format(cracked) : null, Uncracked is { } uncracked ? QuantityText.Format(uncracked) : null);
        return At is { } at ? $"{values}, at {QuantityText.Format(at)}, exponent {QuantityText.Format(Exponent)}" : values;
    }
}
