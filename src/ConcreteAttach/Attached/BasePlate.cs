using System.Collections.Immutable;
using ConcreteAttach.Geometry;
using ConcreteAttach.Quantities;
using UnitsNet;

namespace ConcreteAttach.Attached;

/// <summary>How a plate and the concrete under it share compression.</summary>
public enum PlateContact
{
    /// <summary>
    /// Plane strains, as in a reinforced section: the stress in a fastener is the modular ratio times what the plane of concrete stress is at its place, tension only.
    /// </summary>
    StrainCompatibility,

    /// <summary>
    /// Fasteners as springs E_s A_se / L over their stretch length, and the concrete as an elastic bed of a depth: pressure E_c / depth per unit of displacement.
    /// </summary>
    ElasticBed,

    /// <summary>The plate stands off the concrete, without grout: no contact. The fasteners carry compression and shear with bending, for which a method may have no formula.</summary>
    StandOff,
}

/// <summary>What a hole in the plate leaves a fastener to carry in shear. In tension every fastener counts.</summary>
public enum PlateHole
{
    /// <summary>A hole that bears on the fastener in every direction.</summary>
    Standard,

    /// <summary>So large that the fastener takes no shear.</summary>
    Oversize,

    /// <summary>A slot along x: shear along y only.</summary>
    SlottedAlongX,

    /// <summary>A slot along y: shear along x only.</summary>
    SlottedAlongY,
}

/// <summary>The rectangle on the plate that the attached profile holds stiff: where the plate begins to bend.</summary>
/// <param name="From">One corner.</param>
/// <param name="To">The opposite corner.</param>
public sealed record StiffArea(FastenerPosition From, FastenerPosition To)
{
    /// <summary>Both corners.</summary>
    public override string ToString() => $"from {From} to {To}";
}

/// <summary>
/// A steel plate that joins the fasteners and presses on the concrete. It is taken as rigid; forces reach the fasteners by plane sections, with contact where it touches concrete.
/// </summary>
/// <remarks>Fasteners pull and never push; the concrete pushes and never pulls (as ACI 318-19 17.2.1 and EN 1992-4 6.2.1 permit).</remarks>
public sealed record BasePlate
{
    /// <summary>Describes a plate.</summary>
    /// <param name="outline">Its outline: any simple polygon, in the coordinates of the fasteners.</param>
    /// <param name="contact">How it shares compression with the concrete.</param>
    /// <exception cref="InputException">An outline with openings.</exception>
    public BasePlate(SurfaceOutline outline, PlateContact contact)
    {
        ArgumentNullException.ThrowIfNull(outline);
        if (!outline.Openings.IsEmpty)
        {
            throw new InputException(nameof(outline), outline.ToString(), "a plate without openings");
        }

        if (!Enum.IsDefined(contact))
        {
            throw new InputException(nameof(contact), QuantityText.Format((int)contact), "a way of contact that there is");
        }

        Outline = outline;
        Contact = contact;
    }

    /// <summary>The outline.</summary>
    public SurfaceOutline Outline { get; }

    /// <summary>How the plate shares compression with the concrete.</summary>
    public PlateContact Contact { get; }

    /// <summary>Thickness, where it is known: only to tell whether the plate may count as rigid.</summary>
    public Length? Thickness { get; init => field = value is { } thickness ? Require.Positive("thickness", thickness) : null; }

    /// <summary>Yield strength of the plate, where it is known: only to tell whether the plate may count as rigid.</summary>
    public Pressure? Yield { get; init => field = value is { } yield ? Require.Positive("yield", yield) : null; }

    /// <summary>Where the attached profile stands, where it is known: only to tell whether the plate may count as rigid.</summary>
    public StiffArea? Profile { get; init; }

    /// <summary>Modular ratio E_s/E_c; null: from the method's elastic moduli.</summary>
    /// <exception cref="InputException">Not above 0, or not finite.</exception>
    public double? ModularRatio { get; init => field = value is { } ratio ? RequirePositive("modularRatio", ratio) : null; }

    /// <summary>Length over which a fastener stretches, of an elastic bed; null: the effective embedment.</summary>
    public Length? StretchLength { get; init => field = value is { } length ? Require.Positive("stretchLength", length) : null; }

    /// <summary>Depth of concrete that yields under the plate, of an elastic bed: it has to be given there.</summary>
    public Length? BedDepth { get; init => field = value is { } depth ? Require.Positive("bedDepth", depth) : null; }

    /// <summary>Grout between the concrete and the underside of the plate, 0 by default: shear lugs do not bear on it.</summary>
    /// <exception cref="InputException">Below 0, or not finite.</exception>
    public Length GroutThickness { get; init => field = Require.NotNegative("groutThickness", value); }

    /// <summary>Prying as a share of the tension: each fastener is checked with (1 + this) times the tension from equilibrium. 0 by default.</summary>
    /// <exception cref="InputException">Below 0, or not finite.</exception>
    public double PryingAllowance
    {
        get;
        init => field = value >= 0 && double.IsFinite(value) ? value : throw new InputException("prying", QuantityText.Format(value), "0 or more");
    }

    /// <summary>The hole of each fastener; empty: standard holes.</summary>
    public ImmutableArray<PlateHole> Holes { get; init => field = value.IsDefault ? [] : value; } = [];

    /// <summary>Contact, corners, and what else was given.</summary>
    public override string ToString()
    {
        var parts = new List<string>
        {
            Contact switch
            {
                PlateContact.StrainCompatibility => "contact by strain compatibility",
                PlateContact.ElasticBed => "contact with an elastic bed",
                _ => "stand-off without grout",
            },
            "corners " + string.Join("; ", Outline.Vertices.Select(v => $"({QuantityText.Format(v.X)}, {QuantityText.Format(v.Y)})")),
        };
        if (Thickness is { } thickness)
        {
            parts.Add($"thickness {QuantityText.Format(thickness)}");
        }

        if (GroutThickness.Value > 0)
        {
            parts.Add($"grout {QuantityText.Format(GroutThickness)}");
        }

        if (ModularRatio is { } ratio)
        {
            parts.Add($"E_s/E_c {QuantityText.Format(ratio)}");
        }

        if (BedDepth is { } depth)
        {
            parts.Add($"bed depth {QuantityText.Format(depth)}");
        }

        if (StretchLength is { } stretch)
        {
            parts.Add($"stretch length {QuantityText.Format(stretch)}");
        }

        if (PryingAllowance > 0)
        {
            parts.Add($"allowance for prying {QuantityText.Format(PryingAllowance)}");
        }

        return string.Join(", ", parts);
    }

    /// <summary>A rectangular plate about the origin.</summary>
    /// <param name="width">Along x, greater than 0.</param>
    /// <param name="depth">Along y, greater than 0.</param>
    /// <param name="contact">How it shares compression with the concrete.</param>
    /// <exception cref="InputException">A length that is not positive.</exception>
    public static BasePlate Rectangle(Length width, Length depth, PlateContact contact)
    {
        Require.Positive(nameof(width), width);
        Require.Positive(nameof(depth), depth);
        var x = new Length(width.Value / 2, width.Unit);
        var y = new Length(depth.Value / 2, depth.Unit);
        return new(SurfaceOutline.Polygon(new(-x, -y), new(x, -y), new(x, y), new(-x, y)), contact);
    }

    private static double RequirePositive(string parameter, double value) =>
        value > 0 && double.IsFinite(value) ? value : throw new InputException(parameter, QuantityText.Format(value), "greater than 0");
}
