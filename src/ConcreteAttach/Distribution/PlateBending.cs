using ConcreteAttach.Geometry;

namespace ConcreteAttach.Distribution;

/// <summary>
/// Bending of the plate where it reaches beyond the attached profile, under the forces that a rigid plate gives: whether the plate may count as rigid. Common to all methods.
/// </summary>
/// <remarks>Elastic bending, the moment of all that stands beyond a face of the profile spread over the width of the plate there. EN 1992-4 6.2.1 asks that the plate stays elastic.</remarks>
internal static class PlateBending
{
    /// <summary>The largest moment per width of plate at the four faces of a profile, and the face.</summary>
    /// <param name="plate">The plate in contact.</param>
    /// <param name="plane">The plane of pressure.</param>
    /// <param name="tensions">Tension on each fastener.</param>
    /// <param name="group">The fasteners.</param>
    /// <param name="ring">The outline of the plate, in the coordinates of the fasteners.</param>
    /// <param name="profile">The profile, in the same coordinates.</param>
    public static (double MomentPerWidth, ConcreteSide Face) Largest(
        RigidPlate plate, PressurePlane plane, ReadOnlySpan<double> tensions, ElasticGroup group, SimplePolygon ring, in Rectangle profile)
    {
        (double MomentPerWidth, ConcreteSide Face) largest = (0, ConcreteSide.None);
        foreach (ConcreteSide face in ConcreteSides.All)
        {
            double sign = face.Sign();
            bool isAlongX = face.IsAlongX();
            double place = face.PlaceIn(profile);
            double fromCentroid = place - (isAlongX ? group.CentroidX : group.CentroidY);
            PressureSums sums = plate.Region.Beyond(p => sign * ((isAlongX ? p.X : p.Y) - fromCentroid)).Under(plane);
            double moment = sign * ((isAlongX ? sums.UX : sums.UY) - (fromCentroid * sums.U));
            for (int i = 0; i < tensions.Length; i++)
            {
                moment -= tensions[i] * Math.Max(0, sign * ((isAlongX ? group.X(i) : group.Y(i)) - fromCentroid));
            }

            double width = WidthAt(isAlongX ? ring.Xs : ring.Ys, isAlongX ? ring.Ys : ring.Xs, place);
            if (width > 0 && Math.Abs(moment) / width > largest.MomentPerWidth)
            {
                largest = (Math.Abs(moment) / width, face);
            }
        }

        return largest;
    }

    /// <summary>Length of a line across a ring that lies within it.</summary>
    /// <param name="across">Coordinate of the ring's points across the line.</param>
    /// <param name="along">Coordinate along it.</param>
    /// <param name="place">Where the line lies.</param>
    private static double WidthAt(double[] across, double[] along, double place)
    {
        var crossings = new List<double>();
        for (int i = 0; i < across.Length; i++)
        {
            int next = (i + 1) % across.Length;
            if (across[i] > place != across[next] > place)
            {
                crossings.Add(along[i] + ((place - across[i]) / (across[next] - across[i]) * (along[next] - along[i])));
            }
        }

        crossings.Sort();
        double width = 0;
        for (int i = 0; i + 1 < crossings.Count; i += 2)
        {
            width += crossings[i + 1] - crossings[i];
        }

        return width;
    }
}
