using System.Collections.Immutable;
using ConcreteAttach.Quantities;
using UnitsNet;

namespace ConcreteAttach.Geometry;

/// <summary>The place of a fastener's axis in the concrete surface.</summary>
/// <param name="X">Along x from the origin.</param>
/// <param name="Y">Along y from the origin.</param>
public readonly record struct FastenerPosition(Length X, Length Y)
{
    /// <summary>Both lengths.</summary>
    public override string ToString() => $"x = {QuantityText.Format(X)}, y = {QuantityText.Format(Y)}";
}

/// <summary>Where the fasteners stand. The order of the positions is the numbering of the fasteners, from 0.</summary>
public sealed class FastenerLayout
{
    private FastenerLayout(ImmutableArray<FastenerPosition> positions)
    {
        if (positions.IsDefaultOrEmpty)
        {
            throw new InputException("positions", "no fastener", "at least one position");
        }

        foreach (FastenerPosition position in positions)
        {
            Require.Finite("positions", position.X);
            Require.Finite("positions", position.Y);
        }

        Positions = positions;
    }

    /// <summary>The positions.</summary>
    public ImmutableArray<FastenerPosition> Positions { get; }

    /// <summary>One fastener at the origin.</summary>
    public static FastenerLayout Single() => new([new(Length.Zero, Length.Zero)]);

    /// <summary>Fasteners at any positions.</summary>
    /// <exception cref="InputException">No position, or one that is not finite.</exception>
    public static FastenerLayout Points(params IEnumerable<FastenerPosition> positions)
    {
        ArgumentNullException.ThrowIfNull(positions);
        return new([.. positions]);
    }

    /// <summary>A row along x, centred on the origin.</summary>
    /// <param name="count">Number of fasteners, at least 1.</param>
    /// <param name="spacing">Centre to centre, greater than 0.</param>
    /// <exception cref="InputException">A count below 1, or a spacing that is not positive.</exception>
    public static FastenerLayout RowAlongX(int count, Length spacing) => Rectangle(count, spacing, 1, spacing);

    /// <summary>A row along y, centred on the origin.</summary>
    /// <param name="count">Number of fasteners, at least 1.</param>
    /// <param name="spacing">Centre to centre, greater than 0.</param>
    /// <exception cref="InputException">A count below 1, or a spacing that is not positive.</exception>
    public static FastenerLayout RowAlongY(int count, Length spacing) => Rectangle(1, spacing, count, spacing);

    /// <summary>A rectangular grid centred on the origin, numbered row by row from the corner at −x, −y.</summary>
    /// <param name="countX">Fasteners along x, at least 1.</param>
    /// <param name="spacingX">Centre to centre along x, greater than 0.</param>
    /// <param name="countY">Fasteners along y, at least 1.</param>
    /// <param name="spacingY">Centre to centre along y, greater than 0.</param>
    /// <exception cref="InputException">A count below 1, or a spacing that is not positive.</exception>
    public static FastenerLayout Rectangle(int countX, Length spacingX, int countY, Length spacingY)
    {
        AtLeastOne(nameof(countX), countX);
        AtLeastOne(nameof(countY), countY);
        Require.Positive(nameof(spacingX), spacingX);
        Require.Positive(nameof(spacingY), spacingY);
        var positions = ImmutableArray.CreateBuilder<FastenerPosition>(countX * countY);
        for (int row = 0; row < countY; row++)
        {
            for (int column = 0; column < countX; column++)
            {
                positions.Add(new(Place(column, countX, spacingX), Place(row, countY, spacingY)));
            }
        }

        return new(positions.MoveToImmutable());
    }

    /// <summary>A circle about the origin, evenly spaced, counter-clockwise.</summary>
    /// <param name="count">Number of fasteners, at least 1.</param>
    /// <param name="radius">Radius of the bolt circle, greater than 0.</param>
    /// <param name="firstAngleDegrees">Angle of the first fastener from the x axis, in degrees.</param>
    /// <exception cref="InputException">A count below 1, a radius that is not positive, an angle that is not finite.</exception>
    public static FastenerLayout Circle(int count, Length radius, double firstAngleDegrees = 0)
    {
        AtLeastOne(nameof(count), count);
        Require.Positive(nameof(radius), radius);
        if (!double.IsFinite(firstAngleDegrees))
        {
            throw new InputException(nameof(firstAngleDegrees), QuantityText.Format(firstAngleDegrees), "a finite number");
        }

        var positions = ImmutableArray.CreateBuilder<FastenerPosition>(count);
        for (int i = 0; i < count; i++)
        {
            (double sin, double cos) = Math.SinCos((firstAngleDegrees + (360.0 * i / count)) * Math.PI / 180);
            positions.Add(new(new Length(radius.Value * cos, radius.Unit), new Length(radius.Value * sin, radius.Unit)));
        }

        return new(positions.MoveToImmutable());
    }

    private static Length Place(int index, int count, Length spacing) => new((index - ((count - 1) / 2.0)) * spacing.Value, spacing.Unit);

    private static void AtLeastOne(string parameter, int count)
    {
        if (count < 1)
        {
            throw new InputException(parameter, QuantityText.Format(count), "at least 1");
        }
    }
}
