using System.Collections.Immutable;
using ConcreteAttach.Quantities;
using UnitsNet;

namespace ConcreteAttach.Geometry;

/// <summary>
/// An outline on the concrete surface, of the concrete itself or of a plate on it: any simple polygon, with openings. Immutable.
/// </summary>
/// <remarks>
/// <para>
/// Vertices follow each other around the boundary in either direction; the last is joined to the first. A vertex in the middle of a straight side makes
/// no corner.
/// </para>
/// <para>
/// Places within 1e-9 of the size of the outline count as the same place. A boundary may not come that near to itself, nor to another.
/// </para>
/// </remarks>
public sealed class SurfaceOutline
{
    private const double FarthestMillimetres = 1e9;
    private const string Outer = "vertices";
    private const string InsideOutline = "an opening inside of the outline that touches neither it nor another opening";

    private SurfaceOutline(ImmutableArray<FastenerPosition> vertices, ImmutableArray<ImmutableArray<FastenerPosition>> openings)
    {
        Vertices = vertices;
        Openings = openings;
    }

    /// <summary>The vertices of the outer boundary, as given.</summary>
    public ImmutableArray<FastenerPosition> Vertices { get; }

    /// <summary>The vertices of each opening, as given.</summary>
    public ImmutableArray<ImmutableArray<FastenerPosition>> Openings { get; }

    /// <summary>A polygon without openings.</summary>
    /// <param name="vertices">At least three, around the boundary in either direction.</param>
    /// <exception cref="InputException">
    /// Fewer than three vertices, one that is more than 1000 km away, neighbours at one place, all on one straight line, or a boundary that crosses or touches itself.
    /// </exception>
    public static SurfaceOutline Polygon(params IEnumerable<FastenerPosition> vertices)
    {
        ArgumentNullException.ThrowIfNull(vertices);
        ImmutableArray<FastenerPosition> given = [.. vertices];
        var ring = new GivenRing(Outer, given);
        RequireSimple(ring, ring.Size);
        return new(given, []);
    }

    /// <summary>The same outline with one more opening.</summary>
    /// <param name="vertices">Vertices of the opening, at least three, around its boundary in either direction.</param>
    /// <exception cref="InputException">
    /// A boundary that would not do as an outline, or an opening that is not wholly inside of the outline and apart from the other openings.
    /// </exception>
    public SurfaceOutline WithOpening(params IEnumerable<FastenerPosition> vertices)
    {
        ArgumentNullException.ThrowIfNull(vertices);
        ImmutableArray<FastenerPosition> given = [.. vertices];
        var opening = new GivenRing(OpeningPath(Openings.Length), given);
        var outer = new GivenRing(Outer, Vertices);
        RequireSimple(opening, outer.Size);
        RequireApart(opening, outer, outer.Size);
        if (!outer.IsAbout(opening))
        {
            throw new InputException(opening.Path, $"{opening.TextOf(0)}, outside of the outline", InsideOutline);
        }

        for (int i = 0; i < Openings.Length; i++)
        {
            var other = new GivenRing(OpeningPath(i), Openings[i]);
            RequireApart(opening, other, outer.Size);
            if (other.IsAbout(opening))
            {
                throw new InputException(opening.Path, $"an opening within {other.Path}", InsideOutline);
            }

            if (opening.IsAbout(other))
            {
                throw new InputException(opening.Path, $"an opening about {other.Path}", InsideOutline);
            }
        }

        return new(Vertices, Openings.Add(given));
    }

    /// <summary>How many vertices and openings.</summary>
    public override string ToString() => Openings.IsEmpty
        ? $"{QuantityText.Format(Vertices.Length)} vertices"
        : $"{QuantityText.Format(Vertices.Length)} vertices, {QuantityText.Format(Openings.Length)} {(Openings.Length == 1 ? "opening" : "openings")}";

    /// <summary>The outline in the unit of length of a system.</summary>
    internal Outline In(MeasurementSystem system) => new(Ring(Vertices, system), [.. Openings.Select(opening => Ring(opening, system))]);

    /// <summary>The outer boundary in the unit of length of a system.</summary>
    internal SimplePolygon RingIn(MeasurementSystem system) => Ring(Vertices, system);

    private static SimplePolygon Ring(ImmutableArray<FastenerPosition> vertices, MeasurementSystem system) =>
        SimplePolygon.Of([.. vertices.Select(v => v.X.In(system))], [.. vertices.Select(v => v.Y.In(system))]);

    private static string OpeningPath(int index) => $"openings[{QuantityText.Format(index)}]";

    /// <exception cref="InputException">Not finite, or so large that its products may not be.</exception>
    private static void RequireWithinReason(string parameter, Length value)
    {
        Require.Finite(parameter, value);
        if (!(Math.Abs(value.In(MeasurementSystem.NewtonMillimetre)) <= FarthestMillimetres))
        {
            throw new InputException(parameter, QuantityText.Format(value), "at most 1000000 m from the origin");
        }
    }

    /// <exception cref="InputException">Neighbours at one place, no area, or sides that meet elsewhere than at their common vertex.</exception>
    private static void RequireSimple(GivenRing ring, double size)
    {
        double tolerance = Tolerance.Relative * size;
        int count = ring.Count;
        for (int i = 0; i < count; i++)
        {
            if (Segments.Size(ring.X(i + 1) - ring.X(i), ring.Y(i + 1) - ring.Y(i)) <= tolerance)
            {
                throw new InputException(ring.PathOf(i + 1), $"{ring.TextOf(i + 1)}, the same place as {ring.PathOf(i)}", "a place of its own for each vertex");
            }
        }

        if (IsStraight(ring, tolerance))
        {
            throw new InputException(ring.Path, "vertices on one straight line", "vertices that enclose an area");
        }

        for (int i = 0; i < count; i++)
        {
            for (int k = i + 1; k < count; k++)
            {
                bool meet = k == i + 1 ? FoldsBack(ring, i, tolerance)
                    : i == 0 && k == count - 1 ? FoldsBack(ring, k, tolerance)
                    : DistanceOfSides(ring, i, ring, k) <= tolerance;
                if (meet)
                {
                    throw new InputException(ring.Path, $"{ring.TextOfSide(i)} meets {ring.TextOfSide(k)}", "a boundary that neither crosses nor touches itself");
                }
            }
        }
    }

    /// <exception cref="InputException">A side of the opening crosses or touches a side of the other boundary.</exception>
    private static void RequireApart(GivenRing opening, GivenRing other, double size)
    {
        for (int i = 0; i < opening.Count; i++)
        {
            for (int k = 0; k < other.Count; k++)
            {
                if (DistanceOfSides(opening, i, other, k) <= Tolerance.Relative * size)
                {
                    throw new InputException(opening.Path, $"{opening.TextOfSide(i)} meets {other.TextOfSide(k)} of {other.Path}", InsideOutline);
                }
            }
        }
    }

    /// <summary>Whether all vertices lie on the line through the first and the one farthest from it.</summary>
    private static bool IsStraight(GivenRing ring, double tolerance)
    {
        int[] all = [.. Enumerable.Range(0, ring.Count)];
        int farthest = all.MaxBy(i => Segments.Size(ring.X(i) - ring.X(0), ring.Y(i) - ring.Y(0)));
        var line = new OutlineSide(ring.X(0), ring.Y(0), ring.X(farthest), ring.Y(farthest), 0, 0);
        return all.All(i => Math.Abs(line.DistanceFromLine(ring.X(i), ring.Y(i))) <= tolerance);
    }

    /// <summary>Whether the side after side <paramref name="side"/> runs back along it.</summary>
    private static bool FoldsBack(GivenRing ring, int side, double tolerance) =>
        Segments.Distance(ring.X(side), ring.Y(side), ring.X(side + 1), ring.Y(side + 1), ring.X(side + 2), ring.Y(side + 2)) <= tolerance
        || Segments.Distance(ring.X(side + 1), ring.Y(side + 1), ring.X(side + 2), ring.Y(side + 2), ring.X(side), ring.Y(side)) <= tolerance;

    private static double DistanceOfSides(GivenRing a, int i, GivenRing b, int k) =>
        Segments.Distance(a.X(i), a.Y(i), a.X(i + 1), a.Y(i + 1), b.X(k), b.Y(k), b.X(k + 1), b.Y(k + 1));

    /// <summary>A ring as it was given, with the words for its parts. Indices go around.</summary>
    private sealed class GivenRing
    {
        private readonly ImmutableArray<FastenerPosition> _vertices;
        private readonly double[] _xs;
        private readonly double[] _ys;

        /// <exception cref="InputException">Fewer than three vertices, or one that is not finite or too far away.</exception>
        public GivenRing(string path, ImmutableArray<FastenerPosition> vertices)
        {
            Path = path;
            _vertices = vertices;
            if (vertices.Length < 3)
            {
                throw new InputException(path, vertices.Length switch { 0 => "no vertex", 1 => "1 vertex", _ => "2 vertices" }, "at least 3 vertices");
            }

            for (int i = 0; i < vertices.Length; i++)
            {
                RequireWithinReason($"{PathOf(i)}.x", vertices[i].X);
                RequireWithinReason($"{PathOf(i)}.y", vertices[i].Y);
            }

            _xs = [.. vertices.Select(v => v.X.In(MeasurementSystem.NewtonMillimetre))];
            _ys = [.. vertices.Select(v => v.Y.In(MeasurementSystem.NewtonMillimetre))];
        }

        public string Path { get; }

        public int Count => _vertices.Length;

        public double Size => SimplePolygon.Size(_xs, _ys);

        public double X(int vertex) => _xs[vertex % Count];

        public double Y(int vertex) => _ys[vertex % Count];

        public string PathOf(int vertex) => $"{Path}[{QuantityText.Format(vertex % Count)}]";

        public string TextOf(int vertex) => _vertices[vertex % Count].ToString();

        public string TextOfSide(int side) => $"the side from ({TextOf(side)}) to ({TextOf(side + 1)})";

        /// <summary>Whether a vertex of another boundary, which does not touch this one, lies within.</summary>
        public bool IsAbout(GivenRing other) => new Outline(SimplePolygon.Of(_xs, _ys)).Contains(other.X(0), other.Y(0));
    }
}
