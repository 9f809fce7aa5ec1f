using System.Diagnostics;

namespace ConcreteAttach.Distribution;

/// <summary>
/// A rigid plate on concrete under an axial force and moments about both axes: fasteners pull and never push, the concrete pushes and never pulls, and both follow one plane.
/// Common to all methods.
/// </summary>
/// <remarks>
/// <para>
/// With u = a + b x + c y the pressure is max(0, u) and the force on a fastener κ max(0, −u). Equilibrium is three equations for a, b, c:
/// ∫max(0, u)(1, x, y) dA − Σ κ max(0, −u_i)(1, x_i, y_i) = (−N, M_y, −M_x).
/// They say that the convex energy ½∫max(0, u)² dA + ½κΣ max(0, −u_i)² − (−N, M_y, −M_x)·(a, b, c) is least, which has a solution whenever a fastener stands within the
/// contact region: no plane can gain from the load for ever without straining one or the other. The forces are unique; the plane is not where the plate hangs on fasteners in a
/// line and touches nothing.
/// </para>
/// <para>
/// The integrals are exact. Newton's step is the system with the area and the fasteners that are active at present. It is shortened where the energy would rise along it; a small multiple
/// of the unit matrix, which falls with the residual, holds the plate that hangs on too few fasteners.
/// </para>
/// </remarks>
internal sealed class RigidPlate
{
    /// <summary>Residual of equilibrium, relative to the forces, at which the solution is taken.</summary>
    private const double Accuracy = 1e-14;

    /// <summary>Residual that has to be met when no step betters it any more.</summary>
    private const double Required = 1e-10;

    private const int MostSteps = 200;

    private readonly ContactRegion _region;
    private readonly double[] _x;
    private readonly double[] _y;
    private readonly double _stiffness;
    private readonly double _centreX;
    private readonly double _centreY;
    private readonly double _size;

    /// <param name="region">Where the plate touches concrete.</param>
    /// <param name="xs">Fasteners along x, in the coordinates of the region.</param>
    /// <param name="ys">Fasteners along y.</param>
    /// <param name="stiffness">κ: force on a fastener per unit of the plane, an area.</param>
    public RigidPlate(ContactRegion region, ReadOnlySpan<double> xs, ReadOnlySpan<double> ys, double stiffness)
    {
        // The equations are solved about the middle of the region with its half diagonal as unit of length, so that their three rows weigh the same.
        double left = double.PositiveInfinity, right = double.NegativeInfinity, bottom = double.PositiveInfinity, top = double.NegativeInfinity;
        foreach ((double x, double y) in region.Corners)
        {
            left = Math.Min(left, x);
            right = Math.Max(right, x);
            bottom = Math.Min(bottom, y);
            top = Math.Max(top, y);
        }

        _centreX = (left + right) / 2;
        _centreY = (bottom + top) / 2;
        _size = Math.Sqrt(((right - left) * (right - left)) + ((top - bottom) * (top - bottom))) / 2;
        _region = region.Scaled(_centreX, _centreY, _size);
        _x = new double[xs.Length];
        _y = new double[ys.Length];
        for (int i = 0; i < _x.Length; i++)
        {
            _x[i] = (xs[i] - _centreX) / _size;
            _y[i] = (ys[i] - _centreY) / _size;
        }

        _stiffness = stiffness / (_size * _size);
        Region = region;
    }

    /// <summary>Where the plate touches concrete.</summary>
    public ContactRegion Region { get; }

    /// <summary>Finds the plane in equilibrium with the load, which acts at the origin of the coordinates, and the tension on each fastener.</summary>
    /// <param name="n">Axial force, tension positive.</param>
    /// <param name="mx">Moment about x.</param>
    /// <param name="my">Moment about y.</param>
    /// <param name="tensions">Receives the tension on each fastener, 0 or more.</param>
    /// <returns>The plane, in the coordinates of the region and in force per area.</returns>
    public PressurePlane Solve(double n, double mx, double my, Span<double> tensions)
    {
        var load = new Triple(-n, (my + (n * _centreX)) / _size, -(mx - (n * _centreY)) / _size);
        double scale = load.Largest();
        if (scale == 0)
        {
            tensions.Clear();
            return default;
        }

        load = 1 / scale * load;
        Triple plane = Solve(load);
        for (int i = 0; i < tensions.Length; i++)
        {
            double u = plane.At(_x[i], _y[i]);
            tensions[i] = u < 0 ? -u * _stiffness * scale : 0;
        }

        double pressure = scale / (_size * _size);
        return new(
            pressure * (plane.A - (((plane.B * _centreX) + (plane.C * _centreY)) / _size)),
            pressure * plane.B / _size,
            pressure * plane.C / _size);
    }

    private Triple Solve(Triple load)
    {
        State state = Linear();
        Triple plane = state.Stiffness.Solve(load, 0);
        state = At(plane);
        Triple residual = load - state.Forces;
        double error = residual.Largest();
        double damping = 1e-6;
        for (int step = 0; step < MostSteps && error > Accuracy * state.Scale; step++)
        {
            Triple direction = state.Stiffness.Solve(residual, damping * state.Stiffness.Trace);
            double descent = residual.Dot(direction);
            double length = 1;
            State next = At(plane + direction);
            double low = 0, slopeLow = -descent;
            double high = 1, slope = (next.Forces - load).Dot(direction);
            while (slope > 0.5 * descent && high > 1e-12)
            {
                // The slope of the energy along the step rises: between low and high it passes through zero.
                high = length;
                length = low + ((high - low) * Math.Clamp(-slopeLow / (slope - slopeLow), 0.1, 0.9));
                next = At(plane + (length * direction));
                double own = (next.Forces - load).Dot(direction);
                if (own < 0)
                {
                    break;
                }

                slope = own;
            }

            damping = length == 1 ? 0.01 * damping : Math.Clamp(10 * damping, 1e-10, 1e-1);
            Triple better = plane + (length * direction);
            Triple remaining = load - next.Forces;
            if (better == plane)
            {
                break;
            }

            plane = better;
            state = next;
            residual = remaining;
            error = residual.Largest();
        }

        Debug.Assert(error <= Required * state.Scale, "The plate is not in equilibrium.");
        return plane;
    }

    /// <summary>Full contact and all fasteners pulling: where the search starts.</summary>
    private State Linear()
    {
        PressureSums sums = _region.Under(new(1, 0, 0));
        var stiffness = Symmetric.Of(sums);
        for (int i = 0; i < _x.Length; i++)
        {
            stiffness.Add(_stiffness, _x[i], _y[i]);
        }

        return new(stiffness, default, 1);
    }

    private State At(Triple plane)
    {
        PressureSums sums = _region.Under(new(plane.A, plane.B, plane.C));
        var stiffness = Symmetric.Of(sums);
        var forces = new Triple(sums.U, sums.UX, sums.UY);
        double scale = 1 + Math.Abs(sums.U);
        for (int i = 0; i < _x.Length; i++)
        {
            double u = plane.At(_x[i], _y[i]);
            if (u < 0)
            {
                double force = _stiffness * u;
                stiffness.Add(_stiffness, _x[i], _y[i]);
                forces += force * new Triple(1, _x[i], _y[i]);
                scale -= force;
            }
        }

        return new(stiffness, forces, scale);
    }

    /// <summary>Forces of a plane, their derivative, and their size.</summary>
    private readonly record struct State(Symmetric Stiffness, Triple Forces, double Scale);

    /// <summary>A plane, or a force and its moments along x and y.</summary>
    private readonly record struct Triple(double A, double B, double C)
    {
        public static Triple operator +(Triple a, Triple b) => new(a.A + b.A, a.B + b.B, a.C + b.C);

        public static Triple operator -(Triple a, Triple b) => new(a.A - b.A, a.B - b.B, a.C - b.C);

        public static Triple operator *(double factor, Triple a) => new(factor * a.A, factor * a.B, factor * a.C);

        public double At(double x, double y) => A + (B * x) + (C * y);

        public double Dot(Triple other) => (A * other.A) + (B * other.B) + (C * other.C);

        public double Largest() => Math.Max(Math.Abs(A), Math.Max(Math.Abs(B), Math.Abs(C)));
    }

    /// <summary>A symmetric matrix of three rows.</summary>
    private struct Symmetric
    {
        private double _aa;
        private double _ab;
        private double _ac;
        private double _bb;
        private double _bc;
        private double _cc;

        public readonly double Trace => _aa + _bb + _cc;

        public static Symmetric Of(in PressureSums sums) => new()
        {
            _aa = sums.Area,
            _ab = sums.X,
            _ac = sums.Y,
            _bb = sums.XX,
            _bc = sums.XY,
            _cc = sums.YY,
        };

        /// <summary>Adds weight times the product of (1, x, y) with itself.</summary>
        public void Add(double weight, double x, double y)
        {
            _aa += weight;
            _ab += weight * x;
            _ac += weight * y;
            _bb += weight * x * x;
            _bc += weight * x * y;
            _cc += weight * y * y;
        }

        /// <summary>Solves with <paramref name="damping"/> added to the diagonal, by Cholesky's decomposition; a pivot that is only rounding is held at the damping.</summary>
        public readonly Triple Solve(Triple right, double damping)
        {
            double least = damping + (1e-15 * Trace);
            double d1 = Math.Max(_aa + damping, least);
            double l21 = _ab / d1;
            double l31 = _ac / d1;
            double d2 = Math.Max(_bb + damping - (l21 * _ab), least);
            double l32 = (_bc - (l31 * _ab)) / d2;
            double d3 = Math.Max(_cc + damping - (l31 * _ac) - (l32 * (_bc - (l31 * _ab))), least);
            double y1 = right.A;
            double y2 = right.B - (l21 * y1);
            double y3 = right.C - (l31 * y1) - (l32 * y2);
            double c = y3 / d3;
            double b = (y2 / d2) - (l32 * c);
            double a = (y1 / d1) - (l21 * b) - (l31 * c);
            return new(a, b, c);
        }
    }
}
