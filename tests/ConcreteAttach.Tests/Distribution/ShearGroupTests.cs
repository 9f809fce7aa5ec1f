using ConcreteAttach.Actions;
using ConcreteAttach.Distribution;
using ConcreteAttach.Quantities;
using MathNet.Numerics.LinearAlgebra;
using UnitsNet;
using MeasurementSystem = ConcreteAttach.Quantities.MeasurementSystem;

namespace ConcreteAttach.Tests.Distribution;

/// <summary>Shear over the fasteners that take it: holes that are slotted or oversize, against the three equations of the rigid motion, and what nobody takes.</summary>
public sealed class ShearGroupTests
{
    [Fact]
    public void Holes_of_every_kind_agree_with_the_equations_of_the_rigid_motion()
    {
        var random = new Random(31);
        int compared = 0;
        while (compared < 2_000)
        {
            int count = random.Next(2, 9);
            double[] x = [.. Enumerable.Range(0, count).Select(_ => Between(random, -20, 20))];
            double[] y = [.. Enumerable.Range(0, count).Select(_ => Between(random, -20, 20))];
            bool[] takesX = [.. x.Select(_ => random.Next(3) > 0)];
            bool[] takesY = [.. x.Select(_ => random.Next(3) > 0)];
            if (takesX.Count(t => t) + takesY.Count(t => t) < 3 || !takesX.Contains(true) || !takesY.Contains(true))
            {
                continue;
            }

            double vx = Between(random, -9, 9), vy = Between(random, -9, 9), mz = Between(random, -90, 90);

            // Rigid motion (u − θ y, v + θ x) with stiffness 1 or 0 along each axis.
            double a = takesX.Count(t => t), b = takesY.Count(t => t);
            double sy = Sum(y, takesX), sx = Sum(x, takesY), j = Sum([.. y.Select(v => v * v)], takesX) + Sum([.. x.Select(v => v * v)], takesY);
            Matrix<double> matrix = Matrix<double>.Build.DenseOfArray(new[,] { { a, 0, -sy }, { 0, b, sx }, { -sy, sx, j } });
            if (matrix.ConditionNumber() > 1e8)
            {
                continue;
            }

            Vector<double> motion = matrix.Solve(Vector<double>.Build.Dense([vx, vy, mz]));
            (double[] shearX, double[] shearY) = Shears(x, y, takesX, takesY, vx, vy, mz);
            for (int i = 0; i < count; i++)
            {
                Assert.Equal(takesX[i] ? motion[0] - (motion[2] * y[i]) : 0, shearX[i], 1e-7);
                Assert.Equal(takesY[i] ? motion[1] + (motion[2] * x[i]) : 0, shearY[i], 1e-7);
            }

            compared++;
        }
    }

    // Two fasteners at x = ±4, the right one in a slot along x: it takes no V_x. V_x = 6 goes to the left one whole; V_y = 2 is shared; no torsion, for both lie on y = 0.
    [Fact]
    public void A_slot_sends_the_force_along_it_to_the_other_fastener()
    {
        (double[] shearX, double[] shearY) = Shears([-4, 4], [0, 0], [true, false], [true, true], 6, 2, 0);

        Assert.Equal([6, 0], shearX);
        Assert.Equal([1, 1], shearY);
    }

    [Theory]
    [InlineData("Vx", 1, 0, 0, false, true)]
    [InlineData("Vy", 0, 1, 0, true, false)]
    [InlineData("Mz", 0, 0, 1, true, false)]
    public void A_shear_that_no_hole_takes_is_named(string name, double vx, double vy, double mz, bool takesX, bool takesY)
    {
        InputException error = Assert.Throws<InputException>(() => Shears([-4, 4], [0, 0], [takesX, takesX], [takesY, takesY], vx, vy, mz));

        Assert.Equal(name, error.Parameter);
        Assert.Contains("1", error.Found, StringComparison.Ordinal);
    }

    private static (double[] X, double[] Y) Shears(double[] x, double[] y, bool[] takesX, bool[] takesY, double vx, double vy, double mz)
    {
        var distribution = new FastenerDistribution(new ElasticGroup(x, y), new ShearGroup(x, y, takesX, takesY), null, 0);
        var loadCase = new LoadCase("case") { Vx = Force.FromPoundsForce(vx), Vy = Force.FromPoundsForce(vy), Mz = Torque.FromPoundForceInches(mz) };
        PreparedActions actions = PreparedActions.Of(loadCase, distribution, MeasurementSystem.PoundInch);
        double[] shearX = new double[x.Length], shearY = new double[x.Length];
        distribution.Shears(actions, shearX, shearY);
        return (shearX, shearY);
    }

    private static double Sum(double[] values, bool[] counts) => values.Where((_, i) => counts[i]).Sum();

    private static double Between(Random random, double low, double high) => low + (random.NextDouble() * (high - low));
}
