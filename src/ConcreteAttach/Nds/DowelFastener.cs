using ConcreteAttach.Calculation;
using ConcreteAttach.Quantities;
using UnitsNet;

namespace ConcreteAttach.Nds;

/// <summary>A dowel-type fastener: kind, diameters and bending yield strength. Immutable.</summary>
public sealed class DowelFastener
{
    /// <summary>Creates a fastener; F_yb and the root diameter are those of the standard's tables unless they are given.</summary>
    /// <param name="kind">What it is.</param>
    /// <param name="diameter">Nominal diameter D (shank of a nail); greater than 0, finite.</param>
    /// <param name="bendingYieldStrength">F_yb, by a bending test (ASTM F1575) or of the product; greater than 0. Null: by kind and size (Table I1).</param>
    /// <param name="rootDiameter">D_r of the thread; greater than 0, at most <paramref name="diameter"/>. Null: by kind and size (Appendix L) for lag and wood screws.</param>
    /// <exception cref="InputException">A parameter is outside its range, or a table has no value for this size and none is given.</exception>
    public DowelFastener(DowelKind kind, Length diameter, Pressure? bendingYieldStrength = null, Length? rootDiameter = null)
    {
        if (!Enum.IsDefined(kind))
        {
            throw new InputException(nameof(kind), ((int)kind).ToString(System.Globalization.CultureInfo.InvariantCulture), string.Join(", ", Enum.GetNames<DowelKind>()));
        }

        Kind = kind;
        Diameter = Require.Positive(nameof(diameter), diameter);
        double size = diameter.In(MeasurementSystem.PoundInch);
        if (bendingYieldStrength is { } strength)
        {
            BendingYieldStrength = Require.Positive(nameof(bendingYieldStrength), strength);
            BendingYieldSource = "given by the user";
        }
        else
        {
            BendingYieldStrength = DowelTables.BendingYield(kind, size) is { } psi
                ? Pressure.FromPoundsForcePerSquareInch(psi)
                : throw new InputException(nameof(bendingYieldStrength), $"none for {QuantityText.Format(diameter)}", "a value by test: Table I1 has none for this kind and size");
            BendingYieldSource = DowelTables.BendingYieldSource;
        }

        if (rootDiameter is { } root)
        {
            RootDiameter = Require.Positive(nameof(rootDiameter), root);
            if (Limit.IsBelow(size, root.In(MeasurementSystem.PoundInch)))
            {
                throw new InputException(nameof(rootDiameter), QuantityText.Format(root), $"at most the diameter, {QuantityText.Format(diameter)}");
            }
        }
        else if (DowelTables.Root(kind, size) is { } listed)
        {
            RootDiameter = Length.FromInches(listed);
        }
        else if (kind is DowelKind.LagScrew or DowelKind.WoodScrew)
        {
            throw new InputException(nameof(rootDiameter), $"none for {QuantityText.Format(diameter)}", "a root diameter: Appendix L has none for this kind and size");
        }
    }

    /// <summary>What it is.</summary>
    public DowelKind Kind { get; }

    /// <summary>Nominal diameter D.</summary>
    public Length Diameter { get; }

    /// <summary>Bending yield strength F_yb.</summary>
    public Pressure BendingYieldStrength { get; }

    /// <summary>Where F_yb comes from.</summary>
    public string BendingYieldSource { get; }

    /// <summary>Root diameter D_r of the thread; null for bolts and nails unless it was given.</summary>
    public Length? RootDiameter { get; }

    /// <summary>
    /// Whether the body, not the thread, bears and bends in both members, so that D counts and not D_r: threads over no more than a quarter of the
    /// bearing length in the member that holds them (NDS-2018 12.3.7.2, from memory). Without a root diameter it makes no difference.
    /// </summary>
    public bool HasFullBody { get; init; }

    /// <summary>F_yb of a bending test: M_y / S with the plastic section S = D³/6 (NDS-2018 Appendix I; ASTM F1575).</summary>
    /// <param name="momentAtOffset">Moment at the 5 percent offset of the diameter; greater than 0, finite.</param>
    /// <param name="diameter">Diameter of the tested length; greater than 0, finite.</param>
    /// <exception cref="InputException">A parameter is outside its range.</exception>
    public static Pressure BendingYieldByTest(Torque momentAtOffset, Length diameter)
    {
        if (!(momentAtOffset.Value > 0 && double.IsFinite(momentAtOffset.Value)))
        {
            throw new InputException(nameof(momentAtOffset), QuantityText.Format(momentAtOffset), "greater than 0");
        }

        double d = Require.Positive(nameof(diameter), diameter).In(MeasurementSystem.PoundInch);
        return Pressure.FromPoundsForcePerSquareInch(momentAtOffset.In(MeasurementSystem.PoundInch) / (d * d * d / 6));
    }
}
