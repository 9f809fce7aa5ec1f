using ConcreteAttach.Actions;
using ConcreteAttach.Distribution;
using ConcreteAttach.Geometry;
using ConcreteAttach.Quantities;
using MathNet.Numerics.LinearAlgebra;
using UnitsNet;
using MeasurementSystem = ConcreteAttach.Quantities.MeasurementSystem;

namespace ConcreteAttach.Tests.Distribution;

/// <summary>
/// Elastic distribution without contact: equilibrium, the printed formulas, an independent solution, the transfer to the centroid, rotation, and the
/// moments that a layout cannot carry. All in lbf and in.
/// </summary>
public sealed class ElasticDistributionTests
{
    /// <summary>Forces and moments at a point.</summary>
    private readonly record struct Load(double N, double Vx, double Vy, double Mx, double My, double Mz, double AtX = 0, double AtY = 0)
    {
        public LoadCase ToLoadCase() => new("case")
        {
            N = Force.FromPoundsForce(N),
            Vx = Force.FromPoundsForce(Vx),
            Vy = Force.FromPoundsForce(Vy),
            Mx = Torque.FromPoundForceInches(Mx),
            My = Torque.FromPoundForceInches(My),
            Mz = Torque.FromPoundForceInches(Mz),
            At = new(Length.FromInches(AtX), Length.FromInches(AtY)),
        };

        public Load Rotated(double angle)
        {
            (double sin, double cos) = Math.SinCos(angle);
            return new(N, (Vx * cos) - (Vy * sin), (Vx * sin) + (Vy * cos), (Mx * cos) - (My * sin), (Mx * sin) + (My * cos), Mz, (AtX * cos) - (AtY * sin), (AtX * sin) + (AtY * cos));
        }
    }

    private readonly record struct Layout(double[] X, double[] Y)
    {
        public int Count => X.Length;

        public Layout Rotated(double angle)
        {
            (double sin, double cos) = Math.SinCos(angle);
            double[] x = X, y = Y;
            return new([.. x.Select((v, i) => (v * cos) - (y[i] * sin))], [.. x.Select((v, i) => (v * sin) + (y[i] * cos))]);
        }

        public Layout Moved(double dx, double dy) => new([.. X.Select(v => v + dx)], [.. Y.Select(v => v + dy)]);
    }

    private readonly record struct Forces(double[] N, double[] Vx, double[] Vy)
    {
        public static Forces Of(Layout layout, Load load)
        {
            FastenerDistribution group = Group(layout.X, layout.Y);
            PreparedActions actions = PreparedActions.Of(load.ToLoadCase(), group, MeasurementSystem.PoundInch);
            var forces = new Forces(new double[layout.Count], new double[layout.Count], new double[layout.Count]);
            group.Tensions(actions, forces.N);
            group.Shears(actions, forces.Vx, forces.Vy);
            return forces;
        }
    }

    private static readonly Layout Square = new([-3, 3, 3, -3], [-3, -3, 3, 3]);

    [Fact]
    public void The_forces_are_in_equilibrium_with_the_actions_about_the_origin()
    {
        var random = new Random(11);
        for (int i = 0; i < 5_000; i++)
        {
            Layout layout = RandomLayout(random);
            Load load = RandomLoad(random);
            Forces f = Forces.Of(layout, load);

            double size = Size(load) + f.N.Concat(f.Vx).Concat(f.Vy).Sum(Math.Abs);
            Close(load.N, f.N.Sum(), size);
            Close(load.Vx, f.Vx.Sum(), size);
            Close(load.Vy, f.Vy.Sum(), size);
            double arm = 1 + layout.X.Concat(layout.Y).Max(Math.Abs) + Math.Abs(load.AtX) + Math.Abs(load.AtY);
            Close(load.Mx + (load.N * load.AtY), Sum(layout.Count, k => f.N[k] * layout.Y[k]), size * arm);
            Close(load.My - (load.N * load.AtX), Sum(layout.Count, k => -f.N[k] * layout.X[k]), size * arm);
            Close(load.Mz + (load.AtX * load.Vy) - (load.AtY * load.Vx), Sum(layout.Count, k => (layout.X[k] * f.Vy[k]) - (layout.Y[k] * f.Vx[k])), size * arm);
        }
    }

    /// <summary>
    /// Tensions from the plane T = a + b x + c y about the origin: three equations of equilibrium, solved by MathNet.Numerics. Neither the centroid nor
    /// the transfer to it is used. Shear from the same rigid motion in the plane.
    /// </summary>
    [Fact]
    public void General_layouts_agree_with_an_independent_solution_of_the_three_equations()
    {
        var random = new Random(12);
        for (int i = 0; i < 2_000; i++)
        {
            Layout layout = RandomLayout(random);
            Load load = RandomLoad(random);
            Forces f = Forces.Of(layout, load);
            (double[] x, double[] y) = layout;
            double n = layout.Count, sx = x.Sum(), sy = y.Sum(), sxx = x.Sum(v => v * v), syy = y.Sum(v => v * v), sxy = Sum(layout.Count, k => x[k] * y[k]);

            Vector<double> plane = Matrix<double>.Build.DenseOfArray(new[,] { { n, sx, sy }, { sx, sxx, sxy }, { sy, sxy, syy } })
                .Solve(Vector<double>.Build.Dense([load.N, -(load.My - (load.N * load.AtX)), load.Mx + (load.N * load.AtY)]));

            // Rigid motion (u − θ y, v + θ x): ΣVx = n u − θ Σy, ΣVy = n v + θ Σx, Mz = −u Σy + v Σx + θ Σ(x² + y²).
            Vector<double> motion = Matrix<double>.Build.DenseOfArray(new[,] { { n, 0, -sy }, { 0, n, sx }, { -sy, sx, sxx + syy } })
                .Solve(Vector<double>.Build.Dense([load.Vx, load.Vy, load.Mz + (load.AtX * load.Vy) - (load.AtY * load.Vx)]));

            double size = Size(load) + f.N.Concat(f.Vx).Concat(f.Vy).Sum(Math.Abs);
            for (int k = 0; k < layout.Count; k++)
            {
                Close(plane[0] + (plane[1] * x[k]) + (plane[2] * y[k]), f.N[k], size);
                Close(motion[0] - (motion[2] * y[k]), f.Vx[k], size);
                Close(motion[1] + (motion[2] * x[k]), f.Vy[k], size);
            }
        }
    }

    // CONVENTIONS: T_i = N/n + M_x y_i/Σy² − M_y x_i/Σx², V_i = (−M_z y_i, +M_z x_i)/Σ(x² + y²), about the centroid.
    [Fact]
    public void A_layout_with_two_axes_follows_the_printed_formulas()
    {
        var random = new Random(13);
        for (int i = 0; i < 2_000; i++)
        {
            int columns = random.Next(2, 5), rows = random.Next(2, 5), count = columns * rows;
            double stepX = Between(random, 2, 12), stepY = Between(random, 2, 12);
            double[] x = [.. Enumerable.Range(0, count).Select(k => ((k % columns) - ((columns - 1) / 2.0)) * stepX)];
            double[] y = [.. Enumerable.Range(0, count).Select(k => ((k / columns) - ((rows - 1) / 2.0)) * stepY)];
            Load load = RandomLoad(random) with { AtX = 0, AtY = 0 };
            Forces f = Forces.Of(new(x, y), load);

            double sxx = x.Sum(v => v * v), syy = y.Sum(v => v * v), size = Size(load);
            for (int k = 0; k < count; k++)
            {
                Close((load.N / count) + (load.Mx * y[k] / syy) - (load.My * x[k] / sxx), f.N[k], size);
                Close((load.Vx / count) - (load.Mz * y[k] / (sxx + syy)), f.Vx[k], size);
                Close((load.Vy / count) + (load.Mz * x[k] / (sxx + syy)), f.Vy[k], size);
            }
        }
    }

    // Signs by hand: a moment about x lifts the fasteners at +y; one about y those at −x; torsion pushes a fastener at +x toward +y.
    [Fact]
    public void Signs_are_right_handed()
    {
        Assert.Equal([-100, -100, 100, 100], Forces.Of(Square, new(0, 0, 0, 1200, 0, 0)).N);
        Assert.Equal([100, -100, -100, 100], Forces.Of(Square, new(0, 0, 0, 0, 1200, 0)).N);
        Forces torsion = Forces.Of(Square, new(0, 0, 0, 0, 0, 720));
        Assert.Equal([30, 30, -30, -30], torsion.Vx);
        Assert.Equal([-30, 30, 30, -30], torsion.Vy);
    }

    // shared/reference, steel_stats_install 2.5, case B7: a constructed case, computed for the reference notes, printed with three decimals. Six anchors at
    // x = ±6, y = −8, 0, 8; N 30; moments 120 along x and 96 along y, named there by the axis along which they vary: M_y = −120 and M_x = 96 here.
    [Fact]
    public void Constructed_case_of_six_anchors()
    {
        Layout layout = new([-6, -6, -6, 6, 6, 6], [-8, 0, 8, -8, 0, 8]);
        double[] n = [-1.333, 1.667, 4.667, 5.333, 8.333, 11.333];
        double[] vx = [4.525, 3.000, 1.475, 4.525, 3.000, 1.475];
        double[] vy = [-1.144, -1.144, -1.144, 1.144, 1.144, 1.144];
        Forces f = Forces.Of(layout, new(30, 18, 0, 96, -120, 90));

        for (int k = 0; k < 6; k++)
        {
            Assert.InRange(f.N[k], n[k] - 0.0005, n[k] + 0.0005);
            Assert.InRange(f.Vx[k], vx[k] - 0.0005, vx[k] + 0.0005);
            Assert.InRange(f.Vy[k], vy[k] - 0.0005, vy[k] + 0.0005);
        }

        FastenerDistribution group = Group(layout.X, layout.Y);
        Assert.Equal((216, 256, 472), (group.Elastic.SumX2, group.Elastic.SumY2, group.Elastic.SumX2 + group.Elastic.SumY2));
    }

    // Textbook statics, by hand: 10 kip at 2 in. from the centroid along x is 10 kip and −20 kip-in about y.
    [Fact]
    public void A_force_off_the_centroid_is_the_force_and_its_moment()
    {
        Equal(Forces.Of(Square, new(10_000, 0, 0, 0, -20_000, 0)), Forces.Of(Square, new(10_000, 0, 0, 0, 0, 0, 2, 0)));
        Equal(Forces.Of(Square, new(10_000, 0, 0, 30_000, 0, 0)), Forces.Of(Square, new(10_000, 0, 0, 0, 0, 0, 0, 3)));
        Equal(Forces.Of(Square, new(0, 0, 5_000, 0, 0, 10_000)), Forces.Of(Square, new(0, 0, 5_000, 0, 0, 0, 2, 0)));
        Equal(Forces.Of(Square, new(0, 5_000, 0, 0, 0, -15_000)), Forces.Of(Square, new(0, 5_000, 0, 0, 0, 0, 0, 3)));
    }

    [Fact]
    public void Where_actions_are_given_does_not_matter_with_the_moment_that_belongs_to_it()
    {
        var random = new Random(14);
        for (int i = 0; i < 2_000; i++)
        {
            Layout layout = RandomLayout(random);
            Load load = RandomLoad(random);
            Load atOrigin = load with
            {
                Mx = load.Mx + (load.N * load.AtY), My = load.My - (load.N * load.AtX), Mz = load.Mz + (load.AtX * load.Vy) - (load.AtY * load.Vx), AtX = 0, AtY = 0,
            };
            Equal(Forces.Of(layout, load), Forces.Of(layout, atOrigin));

            // Layout and point moved together: nothing changes.
            double dx = Between(random, -50, 50), dy = Between(random, -50, 50);
            Equal(Forces.Of(layout, load), Forces.Of(layout.Moved(dx, dy), load with { AtX = load.AtX + dx, AtY = load.AtY + dy }));
        }
    }

    [Fact]
    public void Turning_everything_by_any_angle_turns_the_shears_and_leaves_the_tensions()
    {
        var random = new Random(15);
        for (int i = 0; i < 2_000; i++)
        {
            Layout layout = RandomLayout(random);
            Load load = RandomLoad(random);
            double angle = i < 8 ? i * Math.PI / 4 : Between(random, -Math.PI, Math.PI);
            (double sin, double cos) = Math.SinCos(angle);
            Forces f = Forces.Of(layout, load), turned = Forces.Of(layout.Rotated(angle), load.Rotated(angle));

            Equal(new(f.N, [.. f.Vx.Select((v, k) => (v * cos) - (f.Vy[k] * sin))], [.. f.Vx.Select((v, k) => (v * sin) + (f.Vy[k] * cos))]), turned);
        }
    }

    [Fact]
    public void A_line_at_any_angle_carries_the_moment_along_it()
    {
        var random = new Random(16);
        for (int i = 0; i < 2_000; i++)
        {
            double angle = i < 8 ? i * Math.PI / 4 : Between(random, -Math.PI, Math.PI);
            int count = random.Next(2, 7);
            double at = 0;
            double[] along = [.. Enumerable.Range(0, count).Select(_ => at += Between(random, 2, 9))];
            Layout row = new(along, new double[count]);
            double centre = along.Average(), sum = along.Sum(s => (s - centre) * (s - centre));

            // For a row along x: T = N/n − M_y s/Σs² about the centroid. Turned, the same forces.
            Load load = new(Between(random, -9, 9), Between(random, -9, 9), Between(random, -9, 9), 0, Between(random, -90, 90), Between(random, -90, 90), centre);
            Forces f = Forces.Of(row.Rotated(angle), load.Rotated(angle));
            for (int k = 0; k < count; k++)
            {
                Close((load.N / count) - (load.My * (along[k] - centre) / sum), f.N[k], Size(load));
                Close(Math.Sqrt(Math.Pow(load.Vx / count, 2) + Math.Pow((load.Vy / count) + (load.Mz * (along[k] - centre) / sum), 2)), Math.Sqrt((f.Vx[k] * f.Vx[k]) + (f.Vy[k] * f.Vy[k])), Size(load));
            }
        }
    }

    [Theory]
    [InlineData(0, 500, 0, "Mx")]
    [InlineData(90, 0, 500, "My")]
    [InlineData(30, 500, 0, "Mx")]
    [InlineData(30, 0, 500, "Mx")]
    [InlineData(60, 500, 0, "My")]
    [InlineData(60, 0, 500, "My")]
    [InlineData(-30, 500, 0, "Mx")]
    [InlineData(134.9, 0, 500, "My")]
    public void A_line_refuses_a_moment_about_itself_and_names_it(double degrees, double mx, double my, string name)
    {
        Layout line = new Layout([-4, 1, 6], [0, 0, 0]).Rotated(degrees * Math.PI / 180);
        Load load = new(1000, 0, 0, mx, my, 0, line.X.Average(), line.Y.Average());

        InputException refused = Assert.Throws<InputException>(() => Forces.Of(line, load));

        Assert.Equal(name, refused.Parameter);
        Assert.Contains("lbf-in", refused.Found, StringComparison.Ordinal);
        Assert.Contains("line", refused.Permitted, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0, 0, 0, 500, 0, 0, 0, 0, "Mx")]
    [InlineData(0, 0, 0, 0, -500, 0, 0, 0, "My")]
    [InlineData(0, 0, 0, 0, 0, 500, 0, 0, "Mz")]
    [InlineData(1000, 0, 0, 0, 0, 0, 2, 0, "My")]
    [InlineData(1000, 0, 0, 0, 0, 0, 0, 2, "Mx")]
    [InlineData(0, 1000, 0, 0, 0, 0, 0, 2, "Mz")]
    [InlineData(0, 0, 1000, 0, 0, 0, 2, 0, "Mz")]
    public void A_single_fastener_refuses_every_moment_and_names_it(double n, double vx, double vy, double mx, double my, double mz, double atX, double atY, string name)
    {
        InputException refused = Assert.Throws<InputException>(() => Forces.Of(new([0], [0]), new(n, vx, vy, mx, my, mz, atX, atY)));

        Assert.Equal(name, refused.Parameter);
        Assert.Contains("lbf-in", refused.Found, StringComparison.Ordinal);
    }

    [Fact]
    public void The_system_of_the_message_is_the_system_of_the_numbers()
    {
        FastenerDistribution group = Group([0], [0]);
        var load = new LoadCase("case") { Mx = Torque.FromKilonewtonMeters(1) };

        Assert.Contains("1 000 000 N-mm", Assert.Throws<InputException>(() => PreparedActions.Of(load, group, MeasurementSystem.NewtonMillimetre)).Found, StringComparison.Ordinal);
        Assert.Contains("8851 lbf-in", Assert.Throws<InputException>(() => PreparedActions.Of(load, group, MeasurementSystem.PoundInch)).Found, StringComparison.Ordinal);
    }

    [Fact]
    public void Rounding_of_positions_is_no_moment()
    {
        // One fastener far from the origin, the forces at the same place given in another unit: r × F is noise and is accepted.
        double inches = 123.456789;
        FastenerDistribution group = Group([inches], [-inches]);
        var load = new LoadCase("case")
        {
            N = Force.FromKilonewtons(100), Vx = Force.FromKilonewtons(30), Vy = Force.FromKilonewtons(-40), At = new(Length.FromMillimeters(inches * 25.4), Length.FromMillimeters(-inches * 25.4)),
        };
        double[] tension = new double[1];
        group.Tensions(PreparedActions.Of(load, group, MeasurementSystem.PoundInch), tension);
        Assert.Equal(100_000 / 4.4482216152605, tension[0], 9);

        // A row whose positions went through a rotation and back.
        Layout row = new Layout([1, 2, 3, 4], [5, 5, 5, 5]).Rotated(1).Rotated(-1);
        Assert.Equal(250, Forces.Of(row, new(1000, 0, 0, 0, 0, 0, 2.5, 5)).N[0], 6);
    }

    [Fact]
    public void Nearly_on_a_line_is_still_in_equilibrium()
    {
        // A row at an angle whose positions a person rounded: the lever arm across it is small, the forces are large, and they still balance.
        var random = new Random(18);
        foreach (double offset in new[] { 1e-1, 1e-2, 1e-3 })
        {
            for (int i = 0; i < 300; i++)
            {
                Layout layout = new Layout([-9, -3, 3, 9], [.. Enumerable.Range(0, 4).Select(_ => Between(random, -offset, offset))]).Rotated(Between(random, 0, 6));
                Load load = RandomLoad(random);
                Forces f = Forces.Of(layout, load);
                double size = f.N.Sum(Math.Abs);
                Close(load.N, f.N.Sum(), size);
                Close(load.Mx + (load.N * load.AtY), Sum(4, k => f.N[k] * layout.Y[k]), size * 10);
                Close(load.My - (load.N * load.AtX), Sum(4, k => -f.N[k] * layout.X[k]), size * 10);
            }
        }
    }

    [Fact]
    public void Scaled_actions_give_scaled_forces()
    {
        FastenerDistribution group = Group(Square.X, Square.Y);
        PreparedActions actions = PreparedActions.Of(new Load(1000, 200, -300, 400, 500, -600, 1, 2).ToLoadCase(), group, MeasurementSystem.PoundInch);
        double[] one = new double[4], half = new double[4];
        group.Tensions(actions, one);
        group.Tensions(actions.Scaled(0.5), half);

        Assert.Equal(one.Select(t => t / 2), half);
        Assert.Throws<InputException>(() => actions.Scaled(double.NaN));
        Assert.Throws<InputException>(() => actions.Scaled(double.PositiveInfinity));
    }

    [Theory]
    [InlineData(new double[] { 5 }, new double[] { 7 }, "Single")]
    [InlineData(new double[] { 5, 6 }, new double[] { 7, 9 }, "Line")]
    [InlineData(new double[] { 1, 2, 4 }, new double[] { 3, 5, 9 }, "Line")]
    [InlineData(new double[] { 0, 0, 0 }, new double[] { 1, 2, 3 }, "Line")]
    [InlineData(new double[] { 1, 2, 4 }, new double[] { 3, 5, 9.001 }, "Plane")]
    [InlineData(new double[] { -3, 3, 3, -3 }, new double[] { -3, -3, 3, 3 }, "Plane")]
    public void Shape_of_a_layout(double[] x, double[] y, string shape) => Assert.Equal(shape, new ElasticGroup(x, y).Shape.ToString());

    private static Layout RandomLayout(Random random)
    {
        int count = random.Next(3, 12);
        while (true)
        {
            double[] x = [.. Enumerable.Range(0, count).Select(_ => Between(random, -20, 20))], y = [.. Enumerable.Range(0, count).Select(_ => Between(random, -20, 20))];
            double mx = x.Average(), my = y.Average();
            double sxx = x.Sum(v => (v - mx) * (v - mx)), syy = y.Sum(v => (v - my) * (v - my)), sxy = Sum(count, k => (x[k] - mx) * (y[k] - my));
            if ((sxx * syy) - (sxy * sxy) > 1e-2 * sxx * syy)
            {
                return new(x, y);
            }
        }
    }

    private static Load RandomLoad(Random random) => new(
        Between(random, -9000, 9000), Between(random, -9000, 9000), Between(random, -9000, 9000), Between(random, -90000, 90000), Between(random, -90000, 90000), Between(random, -90000, 90000),
        Between(random, -9, 9), Between(random, -9, 9));

    private static double Size(Load load) => Math.Abs(load.N) + Math.Abs(load.Vx) + Math.Abs(load.Vy) + Math.Abs(load.Mx) + Math.Abs(load.My) + Math.Abs(load.Mz);

    private static void Equal(Forces expected, Forces actual)
    {
        double size = expected.N.Concat(expected.Vx).Concat(expected.Vy).Sum(Math.Abs);
        for (int k = 0; k < expected.N.Length; k++)
        {
            Close(expected.N[k], actual.N[k], size);
            Close(expected.Vx[k], actual.Vx[k], size);
            Close(expected.Vy[k], actual.Vy[k], size);
        }
    }

    private static void Close(double expected, double actual, double size) =>
        Assert.True(Math.Abs(expected - actual) <= 1e-9 * size, $"expected {expected:R}, found {actual:R}, size {size:R}");

    private static double Sum(int count, Func<int, double> of) => Enumerable.Range(0, count).Sum(of);

    private static double Between(Random random, double from, double to) => from + ((to - from) * random.NextDouble());

    /// <summary>Standard holes, no plate in contact.</summary>
    private static FastenerDistribution Group(double[] x, double[] y)
    {
        bool[] all = [.. x.Select(_ => true)];
        return new(new ElasticGroup(x, y), new ShearGroup(x, y, all, all), null, 0);
    }
}
