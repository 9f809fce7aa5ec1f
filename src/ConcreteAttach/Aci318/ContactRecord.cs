using System.Collections.Immutable;
using ConcreteAttach.Calculation;
using ConcreteAttach.Distribution;
using ConcreteAttach.Geometry;
using ConcreteAttach.Quantities;
using ConcreteAttach.Verification;

namespace ConcreteAttach.Aci318;

/// <summary>How the plate bears on the concrete in a load case, in the words of a result, and what a reader should know of it.</summary>
internal static class ContactRecord
{
    /// <summary>φ of bearing on concrete (21.2.1).</summary>
    private const double BearingFactor = 0.65;

    /// <summary>Strength in bearing over f'c where the supporting surface is no larger than the loaded one (22.8.3.2).</summary>
    private const double BearingCoefficient = 0.85;

    /// <summary>The state of contact; null without a plate in contact.</summary>
    public static ContactState? Of(AnchorageData data, string loadCase, in PreparedActions actions)
    {
        if (data.Distribution.Plate is not { } plate)
        {
            return null;
        }

        MeasurementSystem system = data.Edition.System;
        ElasticGroup group = data.Distribution.Elastic;
        PlateForces forces = PlateForces.Of(plate, group, actions);
        return new ContactState(
            loadCase,
            PrintedUnits.Force(forces.Compression, system),
            Place(forces.CompressionAt),
            PrintedUnits.Force(forces.Tension, system),
            Place(forces.TensionAt),
            forces.LeverArm is { } arm ? PrintedUnits.Length(arm, system) : null,
            PrintedUnits.Pressure(forces.LargestPressure, system),
            Place(forces.LargestPressureAt),
            PrintedUnits.Area(forces.Area, system),
            Zone(data, forces.Plane),
            Bending(data, forces) is { } bending ? PrintedUnits.Pressure(bending, system) : null);

        FastenerPosition? Place((double X, double Y)? place) => place is { } point
            ? new(PrintedUnits.Length(point.X + group.CentroidX, system), PrintedUnits.Length(point.Y + group.CentroidY, system))
            : null;
    }

    /// <summary>What the contact of a load case calls for.</summary>
    public static IEnumerable<string> Notices(AnchorageData data, ContactState contact)
    {
        MeasurementSystem system = data.Edition.System;
        double limit = BearingFactor * BearingCoefficient * data.Strength;
        double largest = contact.LargestPressure.In(system);
        if (Limit.IsBelow(limit, largest))
        {
            yield return $"The largest contact pressure, {NumberText.Computed(largest)} {Unit.Printed(Dimension.Stress, system)!.Text}, exceeds 0.65 · 0.85 f'c (22.8.3.2 with A2 = A1): check bearing on the concrete.";
        }

        if (contact.PlateBending is { } bending && data.Plate?.Plate.Yield is { } yield && Limit.IsBelow(yield.In(system), bending.In(system)))
        {
            yield return $"Bending of the plate beside the profile, {NumberText.Computed(bending.In(system))} {Unit.Printed(Dimension.Stress, system)!.Text}, exceeds its yield strength: the plate is not rigid, and some fasteners carry more than shown.";
        }
    }

    /// <summary>The part of the plate's outline where the plane presses.</summary>
    private static ImmutableArray<FastenerPosition> Zone(AnchorageData data, PressurePlane plane)
    {
        MeasurementSystem system = data.Edition.System;
        ElasticGroup group = data.Distribution.Elastic;
        SimplePolygon ring = data.Plate!.Ring;
        List<(double X, double Y)> zone = PlateSupport.Cut([.. ring.Xs.Zip(ring.Ys)], p => plane.At(p.X - group.CentroidX, p.Y - group.CentroidY));
        return zone.Count < 3 ? [] : [.. zone.Select(p => new FastenerPosition(PrintedUnits.Length(p.X, system), PrintedUnits.Length(p.Y, system)))];
    }

    /// <summary>Largest bending stress of the plate, 6 m / t²; null where its thickness or the profile are not known.</summary>
    private static double? Bending(AnchorageData data, in PlateForces forces)
    {
        if (data.Plate!.Plate is not { Thickness: { } thickness, Profile: { } profile })
        {
            return null;
        }

        MeasurementSystem system = data.Edition.System;
        double x1 = profile.From.X.In(system), x2 = profile.To.X.In(system), y1 = profile.From.Y.In(system), y2 = profile.To.Y.In(system);
        var area = new Rectangle(Math.Min(x1, x2), Math.Max(x1, x2), Math.Min(y1, y2), Math.Max(y1, y2));
        (double moment, _) = PlateBending.Largest(data.Distribution.Plate!, forces.Plane, forces.Tensions, data.Distribution.Elastic, data.Plate.Ring, area);
        double t = thickness.In(system);
        return 6 * moment / (t * t);
    }
}
