using ConcreteAttach.Geometry;

namespace ConcreteAttach.Tests.Geometry;

public sealed class AreaMomentsTests
{
    /// <summary>Rectangle b × h about its centroid: bh³/12 and hb³/12. Handbook formulas, from memory.</summary>
    [Fact]
    public void Rectangle_about_its_centroid()
    {
        AreaMoments moments = Of([(-3, 2), (5, 2), (5, 8), (-3, 8)]);

        Assert.Equal(48, moments.Area, 1e-12);
        Assert.Equal(1, moments.CentroidX, 1e-12);
        Assert.Equal(5, moments.CentroidY, 1e-12);
        Assert.Equal(8 * 8 * 8 * 6 / 12.0, moments.AboutCentroid().XX, 1e-10);
        Assert.Equal(6 * 6 * 6 * 8 / 12.0, moments.AboutCentroid().YY, 1e-10);
        Assert.Equal(0, moments.AboutCentroid().XY, 1e-10);
    }

    /// <summary>
    /// Right triangle with legs b on x and h on y: centroid b/3, h/3; about it bh³/36, hb³/36, and −b²h²/72. Handbook formulas, from memory.
    /// </summary>
    [Fact]
    public void Right_triangle()
    {
        AreaMoments moments = Of([(0, 0), (30, 0), (0, 40)]);

        Assert.Equal(600, moments.Area, 1e-10);
        Assert.Equal(10, moments.CentroidX, 1e-12);
        Assert.Equal(40 / 3.0, moments.CentroidY, 1e-12);
        Assert.Equal(40.0 * 30 * 30 * 30 / 36, moments.AboutCentroid().XX, 1e-8);
        Assert.Equal(30.0 * 40 * 40 * 40 / 36, moments.AboutCentroid().YY, 1e-8);
        Assert.Equal(-900.0 * 1600 / 72, moments.AboutCentroid().XY, 1e-8);
    }

    /// <summary>An opening takes away its own moments: 20 × 10 from the origin less 2 × 2 about (5, 5).</summary>
    [Fact]
    public void Opening_is_taken_away()
    {
        AreaMoments moments = Of([(0, 0), (20, 0), (20, 10), (0, 10)], [(4, 4), (6, 4), (6, 6), (4, 6)]);

        Assert.Equal(200 - 4, moments.Area, 1e-12);
        Assert.Equal((200 * 10) - (4 * 5), moments.X, 1e-11);
        Assert.Equal((200 * 5) - (4 * 5), moments.Y, 1e-11);
        Assert.Equal((10 * 8000 / 3.0) - ((16 / 12.0) + (4 * 25)), moments.XX, 1e-10);
        Assert.Equal((20 * 1000 / 3.0) - ((16 / 12.0) + (4 * 25)), moments.YY, 1e-10);
        Assert.Equal((200 * 10 * 5) - (4 * 25), moments.XY, 1e-10);
    }

    /// <summary>Reference: NetTopologySuite, area and centroid.</summary>
    [Fact]
    public void Area_and_centroid_agree_with_a_general_geometry_library()
    {
        foreach (Surface surface in InventedOutlines.Random(41, 600))
        {
            var concrete = GeneralGeometry.Concrete(surface);
            AreaMoments moments = surface.Outline.Moments;
            Assert.Equal(1, moments.Area / concrete.Area, 1e-12);
            Assert.Equal(concrete.Centroid.X, moments.CentroidX, 1e-10);
            Assert.Equal(concrete.Centroid.Y, moments.CentroidY, 1e-10);
        }
    }

    /// <summary>The sum of both second moments about the centroid, and the determinant of all three, stay when the region is turned.</summary>
    [Fact]
    public void Second_moments_turn_as_a_tensor()
    {
        var random = new Random(1);
        foreach (Surface surface in InventedOutlines.Random(42, 300))
        {
            AreaMoments moments = surface.Outline.Moments.AboutCentroid();
            AreaMoments turned = surface.Turned(7 * random.NextDouble()).Outline.Moments.AboutCentroid();
            double scale = moments.XX + moments.YY;
            Assert.Equal(1, (turned.XX + turned.YY) / scale, 1e-10);
            Assert.Equal(((moments.XX * moments.YY) - (moments.XY * moments.XY)) / scale / scale, ((turned.XX * turned.YY) - (turned.XY * turned.XY)) / scale / scale, 1e-10);
        }
    }

    private static AreaMoments Of((double X, double Y)[] outer, params (double X, double Y)[][] openings) =>
        new Surface("given", outer, openings, [], [], 1).Outline.Moments;
}
