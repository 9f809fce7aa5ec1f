using System.Collections.Immutable;
using ConcreteAttach.Attached;
using ConcreteAttach.Geometry;
using ConcreteAttach.Quantities;

namespace ConcreteAttach.Presentation.Json;

/// <summary>Reads the plate of an input document, and outlines.</summary>
internal static class PlateReader
{
    private const string PlaceForm = "a place [x, y]: two lengths as text, such as [\"3 in\", \"-3 in\"]";

    private static readonly (string, PlateContact)[] Contacts =
    [
        ("strain compatibility", PlateContact.StrainCompatibility),
        ("elastic bed", PlateContact.ElasticBed),
        ("stand-off", PlateContact.StandOff),
    ];

    private static readonly (string, PlateHole)[] Holes =
    [
        ("standard", PlateHole.Standard),
        ("oversize", PlateHole.Oversize),
        ("slotted along x", PlateHole.SlottedAlongX),
        ("slotted along y", PlateHole.SlottedAlongY),
    ];

    /// <exception cref="InputException">Against the contract, at the place of the error.</exception>
    public static BasePlate Plate(InputObject plate)
    {
        plate.AllowOnly(["outline", "contact", "thickness", "groutThickness", "yield", "profile", "modularRatio", "stretchLength", "bedDepth", "prying", "holes"]);
        SurfaceOutline outline = Outline(plate.Required("outline"), null);
        return plate.Value.Guard(() => new BasePlate(outline, plate.Required("contact").Choice(Contacts))
        {
            Thickness = plate.Optional("thickness")?.Length(),
            GroutThickness = plate.Optional("groutThickness")?.Length() ?? default,
            Yield = plate.Optional("yield")?.Stress(),
            Profile = plate.Optional("profile") is { } profile ? Profile(profile) : null,
            ModularRatio = plate.Optional("modularRatio")?.Number("a number above 0, such as 8.04"),
            StretchLength = plate.Optional("stretchLength")?.Length(),
            BedDepth = plate.Optional("bedDepth")?.Length(),
            PryingAllowance = plate.Optional("prying")?.Number("a number, 0 or more, such as 0.2 for tension times 1.2") ?? 0,
            Holes = plate.Optional("holes") is { } holes ? [.. holes.Items("an array with the hole of each fastener").Select(hole => hole.Choice(Holes))] : [],
        });
    }

    /// <summary>A place in the surface.</summary>
    public static FastenerPosition Position(InputValue value)
    {
        List<InputValue> coordinates = value.Items(PlaceForm);
        return coordinates.Count == 2
            ? new(coordinates[0].Length(), coordinates[1].Length())
            : throw new InputException(value.Path, $"an array of {QuantityText.Format(coordinates.Count)}", PlaceForm);
    }

    /// <summary>A polygon, with openings where there are some.</summary>
    /// <exception cref="InputException">A boundary that crosses itself and the like, at the place of the vertex or of the polygon.</exception>
    public static SurfaceOutline Outline(InputValue vertices, InputValue? openings)
    {
        ImmutableArray<FastenerPosition> outer = Vertices(vertices);
        SurfaceOutline outline = At(vertices, () => SurfaceOutline.Polygon(outer));
        foreach (InputValue opening in openings?.Items("an array of openings, each an array of vertices") ?? [])
        {
            ImmutableArray<FastenerPosition> ring = Vertices(opening);
            SurfaceOutline before = outline;
            outline = At(opening, () => before.WithOpening(ring));
        }

        return outline;
    }

    private static ImmutableArray<FastenerPosition> Vertices(InputValue value) => [.. value.Items("an array of vertices, each a place [x, y]").Select(Position)];

    /// <summary>An error of the geometry gets the place of the polygon, or of the vertex that it names: <c>vertices[2]</c>.</summary>
    private static SurfaceOutline At(InputValue polygon, Func<SurfaceOutline> create)
    {
        try
        {
            return create();
        }
        catch (InputException error)
        {
            int vertex = error.Parameter.LastIndexOf('[');
            bool namesVertex = vertex >= 0 && (error.Parameter.StartsWith("vertices[", StringComparison.Ordinal) || error.Parameter.IndexOf('[', StringComparison.Ordinal) < vertex);
            string path = namesVertex ? $"{polygon.Path}/{error.Parameter[(vertex + 1)..error.Parameter.IndexOf(']', vertex)]}" : polygon.Path;
            throw new InputException(path, error.Found, error.Permitted);
        }
    }

    private static StiffArea Profile(InputValue value)
    {
        List<InputValue> corners = value.Items("an array of two opposite corners, each a place [x, y]");
        return corners.Count == 2
            ? new(Position(corners[0]), Position(corners[1]))
            : throw new InputException(value.Path, $"an array of {QuantityText.Format(corners.Count)}", "two opposite corners, each a place [x, y]");
    }
}
