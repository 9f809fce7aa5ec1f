using ConcreteAttach.Distribution;
using ConcreteAttach.Geometry;
using ConcreteAttach.Quantities;
using ConcreteAttach.Tests.Geometry;
using NetTopologySuite.Operation.Overlay;
using NetTopologySuite.Operation.OverlayNG;
using Shape = NetTopologySuite.Geometries.Geometry;

namespace ConcreteAttach.Tests.Distribution;

/// <summary>The part of a plate that lies on concrete of any outline, against NetTopologySuite, and the forces that it balances.</summary>
public sealed class PlateSupportTests
{
    /// <summary>An L with its re-entrant corner at the origin and an opening beside it; invented.</summary>
    private static readonly (double X, double Y)[] Pier = [(-300, -300), (250, -300), (250, 0), (0, 0), (0, 280), (-300, 280)];

    private static readonly (double X, double Y)[] Opening = [(-120, -140), (-40, -150), (-60, -60), (-130, -80)];

    private static readonly Outline Concrete =
        SurfaceOutline.Polygon(Surface.Places(Pier)).WithOpening(Surface.Places(Opening)).In(MeasurementSystem.NewtonMillimetre);

    private static readonly Shape ConcreteShape = GeneralGeometry.Polygon(Pier, Opening);

    [Fact]
    public void Plate_over_a_re_entrant_corner_and_an_opening_touches_what_is_left()
    {
        // 200 × 150 about the corner, less the 100 × 100 beyond it.
        Assert.Equal(20_000, Touched([(-100, -50), (100, -50), (100, 100), (-100, 100)]).Area, 1e-6);

        // Wholly over concrete, and wholly over the opening.
        Assert.Equal(100 * 80, Touched([(100, -200), (200, -200), (200, -120), (100, -120)]).Area, 1e-6);
        Assert.Equal(0, Touched([(-100, -120), (-80, -120), (-80, -100), (-100, -100)]).Area, 1e-6);
    }

    [Fact]
    public void Random_plates_touch_what_a_general_library_says()
    {
        var random = new Random(51);
        int cut = 0;
        for (int i = 0; i < 2_000; i++)
        {
            (double X, double Y)[] plate = RandomPlate(random);
            Shape expected = OverlayNGRobust.Overlay(ConcreteShape, GeneralGeometry.Polygon(plate), SpatialFunction.Intersection);
            ContactRegion region = Region(plate);
            PressureSums sums = region.Under(new(1, 0, 0));

            double whole = GeneralGeometry.Polygon(plate).Area;
            Assert.Equal(expected.Area, sums.Area, 1e-9 * whole);
            if (!expected.IsEmpty)
            {
                Assert.Equal(expected.Area * expected.Centroid.X, sums.X, 1e-9 * whole * 500);
                Assert.Equal(expected.Area * expected.Centroid.Y, sums.Y, 1e-9 * whole * 500);
            }

            // The largest pressure of a plane stands at a corner of the region.
            var plane = new PressurePlane(0, random.NextDouble() - 0.5, random.NextDouble() - 0.5);
            if (expected.Area > 1e-3 * whole)
            {
                Assert.Equal(expected.Coordinates.Max(c => plane.At(c.X, c.Y)), region.Corners.ToArray().Max(c => plane.At(c.X, c.Y)), 1e-6);
            }

            cut += expected.Area < (1 - 1e-9) * whole ? 1 : 0;
        }

        Assert.True(cut > 500, $"{cut}");
    }

    [Fact]
    public void Forces_of_a_plate_over_an_opening_balance_the_load()
    {
        var random = new Random(52);
        double[] x = [-180, 60, -180], y = [-180, -180, 60];
        double[] tensions = new double[3];
        for (int i = 0; i < 2_000; i++)
        {
            (double X, double Y)[] plate = [(-220, -220), (100 + (100 * random.NextDouble()), -220), (100, 100), (-220, 100 + (100 * random.NextDouble()))];
            ContactRegion region = Region(plate);
            double n = 200 * (random.NextDouble() - 0.7), mx = 20_000 * (random.NextDouble() - 0.5), my = 20_000 * (random.NextDouble() - 0.5);
            PressureSums sums = region.Under(new RigidPlate(region, x, y, 900).Solve(n, mx, my, tensions));

            double size = Math.Abs(n) + ((Math.Abs(mx) + Math.Abs(my)) / 300);
            Assert.Equal(n, tensions.Sum() - sums.U, 1e-9 * size);
            Assert.Equal(mx, tensions.Zip(y, (t, place) => t * place).Sum() - sums.UY, 1e-9 * size * 300);
            Assert.Equal(my, sums.UX - tensions.Zip(x, (t, place) => t * place).Sum(), 1e-9 * size * 300);
            Assert.All(tensions, t => Assert.True(t >= 0));
        }
    }

    private static PressureSums Touched((double X, double Y)[] plate) => Region(plate).Under(new(1, 0, 0));

    private static ContactRegion Region((double X, double Y)[] plate) =>
        PlateSupport.On(Concrete, SimplePolygon.Of([.. plate.Select(p => p.X)], [.. plate.Select(p => p.Y)]), 0, 0);

    private static (double X, double Y)[] RandomPlate(Random random)
    {
        int count = random.Next(3, 8);
        double x = -250 + (400 * random.NextDouble()), y = -250 + (400 * random.NextDouble()), size = 20 + (200 * random.NextDouble());
        return
        [
            .. from i in Enumerable.Range(0, count)
               let angle = 2 * Math.PI * (i + (0.5 * random.NextDouble())) / count
               let r = size * (0.4 + (0.6 * random.NextDouble()))
               select (x + (r * Math.Cos(angle)), y + (r * Math.Sin(angle))),
        ];
    }
}
