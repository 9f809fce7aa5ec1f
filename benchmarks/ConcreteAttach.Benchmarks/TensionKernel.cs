using ConcreteAttach.Aci318;
using ConcreteAttach.Distribution;
using ConcreteAttach.Geometry;
using ConcreteAttach.Materials;
using ConcreteAttach.Verification;

namespace ConcreteAttach.Benchmarks;

/// <summary>
/// The tension part of <see cref="EvaluateKernel"/>: 17.6 of ACI 318-19 with its inch-pound constants, and the forces on the fasteners.
/// </summary>
internal sealed class TensionKernel
{
    private const double Above = 1 + 1e-9;
    private const double Below = 1 - 1e-9;

    private readonly double[] _x;
    private readonly double[] _y;
    private readonly double[] _fromCentroidX;
    private readonly double[] _fromCentroidY;
    private readonly GroupShape _shape;
    private readonly double _sumX2, _sumY2, _sumXy, _directionX, _directionY;
    private readonly double _left, _right, _bottom, _top;
    private readonly double _strength, _lambda, _hef, _diameter, _hook;
    private readonly double _tensileArea, _bearingArea, _yield, _ultimate;
    private readonly bool _isHeaded, _isCracked, _isDuctile, _isTied, _isBounding, _isDeepExtended;
    private readonly bool _closeEdgesOfAll;

    // Post-installed fasteners
    private readonly ProductData? _product;
    private readonly bool _isAdhesive, _isBreakoutGap, _isPulloutGap, _isBondGap;
    private readonly double _largestStrength, _bondLambda, _breakoutCoefficient, _cracking, _criticalEdge, _phiConcrete, _phiPullout;
    private readonly double _pullout, _pulloutAt, _pulloutExponent, _bond, _bondReach;
    private readonly Rectangle _concrete;
    private readonly Rectangle _extent;
    private readonly double[] _scratch;

    public TensionKernel(AnchorageData data)
    {
        _x = data.X;
        _y = data.Y;
        int count = _x.Length;
        ElasticGroup elastic = data.Distribution.Elastic;
        _fromCentroidX = [.. Enumerable.Range(0, count).Select(elastic.X)];
        _fromCentroidY = [.. Enumerable.Range(0, count).Select(elastic.Y)];
        _shape = elastic.Shape;
        _sumX2 = elastic.SumX2;
        _sumY2 = elastic.SumY2;
        _sumXy = elastic.SumXy;
        _directionX = elastic.DirectionX;
        _directionY = elastic.DirectionY;

        _concrete = data.Concrete;
        _left = data.Concrete.Left;
        _right = data.Concrete.Right;
        _bottom = data.Concrete.Bottom;
        _top = data.Concrete.Top;
        _extent = data.Extent;

        _strength = data.Strength;
        _lambda = Lambda(data.Density, data.DensityValue);
        _hef = data.Embedment;
        _diameter = data.Diameter;
        _hook = data.HookExtension;
        _tensileArea = data.TensileArea;
        _bearingArea = data.BearingArea;
        _yield = data.SteelYield;
        _ultimate = data.SteelUltimate;
        _isHeaded = data.IsHeaded;
        _isCracked = data.IsCracked;
        _isDuctile = data.IsDuctile;
        _isTied = data.HasSupplementaryTension;
        _isBounding = data.Options.Area == AreaReading.Bounding;
        _isDeepExtended = data.Options.Deep == DeepReading.Extend;
        _closeEdgesOfAll = data.Options.CloseEdges == CloseEdgesReading.AllFasteners;
        bool isLight = data.Density != ConcreteDensity.Normalweight && !(data.DensityValue > 135 * Above);
        _largestStrength = data.Product is null ? 10_000 : 8_000;
        _cracking = _isCracked ? 1 : 1.25;
        _breakoutCoefficient = 24;
        _criticalEdge = double.NaN;
        _phiConcrete = _isTied ? 0.75 : 0.70;
        _phiPullout = 0.70;
        _isBreakoutGap = _diameter > 4 * Above;
        _isPulloutGap = _isHeaded ? double.IsNaN(_bearingArea) : _hook < 3 * Below * _diameter;
        _pulloutAt = double.NaN;
        if (data.Product is { } product)
        {
            _product = product;
            _isAdhesive = product.IsAdhesive;
            _lambda *= isLight ? product.LightweightFactor : 1;
            _bondLambda = Lambda(data.Density, data.DensityValue) * (isLight ? 0.6 : 1);
            _breakoutCoefficient = Lesser(product.BreakoutCoefficient, 24);
            _cracking = _isCracked || product.IsBreakoutCoefficientOfProduct ? 1 : 1.4;
            _criticalEdge = _isCracked || data.HasSplittingReinforcement ? double.NaN : product.CriticalEdgeDistance ?? (product.CriticalEdgeFactor * _hef);
            int category = product.Fastener.ProductQualification.Category ?? 1;
            _phiConcrete = (_isTied ? 0.85 : 0.75) - (0.1 * category);
            _phiPullout = 0.75 - (0.1 * category);
            _isBreakoutGap |= product.BreakoutTensionGap is not null;
            _isPulloutGap = product.PulloutGap is not null;
            _isBondGap = product.BondTensionGap is not null;
            _pullout = product.Pullout;
            _pulloutAt = product.PulloutExponent == 0 ? double.NaN : product.PulloutAt ?? double.NaN;
            _pulloutExponent = product.PulloutExponent;
            _bond = product.BondStress;
            _bondReach = 10 * _diameter * Math.Sqrt(product.BondStressUncracked / 1100);
        }

        _scratch = new double[TensionModes.ScratchLength(count) + Math.Max(Rows.ScratchLength(count), KernelParts.ScratchLength(count)) + (6 * count) + 8];
    }

    /// <summary>The most results that <see cref="Evaluate"/> can write.</summary>
    public int Capacity => 3 + (6 * _x.Length);

    /// <summary>Writes the modes in the order of the chapter; returns how many. Not for several threads at once: it keeps its memory.</summary>
    public int Evaluate(in PreparedActions actions, Span<KernelResult> results)
    {
        var memory = new Scratch(_scratch);
        int all = _x.Length;
        Span<double> forces = memory.Doubles(all);
        double betaX = 0, betaY = 0;
        if (_shape == GroupShape.Plane)
        {
            if (_sumXy == 0)
            {
                betaX = actions.My / _sumX2;
                betaY = actions.Mx / _sumY2;
            }
            else
            {
                double determinant = (_sumX2 * _sumY2) - (_sumXy * _sumXy);
                betaX = ((actions.My * _sumY2) + (actions.Mx * _sumXy)) / determinant;
                betaY = ((actions.Mx * _sumX2) + (actions.My * _sumXy)) / determinant;
            }
        }
        else if (_shape == GroupShape.Line)
        {
            double along = ((actions.My * _directionX) - (actions.Mx * _directionY)) / (_sumX2 + _sumY2);
            betaX = along * _directionX;
            betaY = -along * _directionY;
        }

        double mean = actions.N / all;
        double largest = 0;
        double smallest = double.PositiveInfinity;
        double[] fromCentroidX = _fromCentroidX;
        double[] fromCentroidY = _fromCentroidY;
        for (int i = 0; i < forces.Length; i++)
        {
            double force = mean + (betaY * fromCentroidY[i]) - (betaX * fromCentroidX[i]);
            forces[i] = force;
            double size = Math.Abs(force);
            largest = size > largest ? size : largest;
            smallest = force < smallest ? force : smallest;
        }

        ReadOnlySpan<double> xs = _x;
        ReadOnlySpan<double> ys = _y;
        Rectangle extent = _extent;
        double demand = largest; // of the most loaded fastener
        bool hasDemand = true;
        double least = 1e-9 * largest;
        if (!(smallest > least))
        {
            Span<double> tensionXs = memory.Doubles(all);
            Span<double> tensionYs = memory.Doubles(all);
            int count = 0;
            demand = 0;
            for (int i = 0; i < all; i++)
            {
                double force = forces[i];
                if (force > least)
                {
                    tensionXs[count] = _x[i];
                    tensionYs[count] = _y[i];
                    forces[count++] = force;
                    demand = force > demand ? force : demand;
                }
            }

            if (count > 0)
            {
                xs = tensionXs[..count];
                ys = tensionYs[..count];
                forces = forces[..count];
                extent = Layouts.ExtentOf(xs, ys);
            }
            else
            {
                // No demand: the strength of a concentric load.
                hasDemand = false;
                forces.Fill(1);
            }
        }

        double fc = Lesser(_strength, _largestStrength);
        double lambdaRootFc = _lambda * Math.Sqrt(fc);
        double phiConcrete = _phiConcrete;
        int written = 0;

        // 17.6.1 steel
        ModeStatus gap = hasDemand ? ModeStatus.NotCovered : ModeStatus.NotApplicable;
        results[written++] = double.IsNaN(_tensileArea)
            ? KernelResult.Without(FailureModeKind.SteelTension, gap)
            : new(FailureModeKind.SteelTension, _tensileArea * Lesser(_ultimate, Lesser(1.9 * _yield, 125_000)), _isDuctile ? 0.75 : 0.65, demand);

        // 17.6.2 breakout
        if (_isBreakoutGap)
        {
            results[written++] = KernelResult.Without(FailureModeKind.ConcreteBreakoutTension, gap);
        }
        else if (xs.Length == 1)
        {
            results[written++] = Of(FailureModeKind.ConcreteBreakoutTension, xs, ys, forces, extent, hasDemand, lambdaRootFc, phiConcrete, 1, memory.Rest);
        }
        else
        {
            written = Groups(FailureModeKind.ConcreteBreakoutTension, 3 * _hef, xs, ys, forces, extent, hasDemand, lambdaRootFc, phiConcrete, results, written, memory);
        }

        // 17.6.3 pullout
        if (_isAdhesive || _product is { PulloutDoesNotGovern: true, StateGap: null })
        {
            results[written++] = KernelResult.Without(FailureModeKind.Pullout, ModeStatus.NotApplicable);
        }
        else if (_isPulloutGap)
        {
            results[written++] = KernelResult.Without(FailureModeKind.Pullout, gap);
        }
        else
        {
            double crushing = _product is not null ? double.IsNaN(_pulloutAt) ? _pullout : _pullout * Math.Pow(fc / _pulloutAt, _pulloutExponent)
                : (_isCracked ? 1 : 1.4) * (_isHeaded ? 8 * _bearingArea * fc : 0.9 * fc * Lesser(_hook, 4.5 * _diameter) * _diameter);
            results[written++] = new(FailureModeKind.Pullout, crushing, _phiPullout, demand);
        }

        // 17.6.4 side-face blowout
        if (!_isHeaded || (double.IsInfinity(_right) && double.IsInfinity(_left) && double.IsInfinity(_top) && double.IsInfinity(_bottom)))
        {
            results[written++] = KernelResult.Without(FailureModeKind.SideFaceBlowout, ModeStatus.NotApplicable);
            return _isAdhesive ? Bond(actions, xs, ys, forces, extent, demand, hasDemand, gap, phiConcrete, results, written, memory) : written;
        }

        written = Blowout(ConcreteSide.PlusX, _right - extent.Right, _right, -1, xs, ys, _bottom, _top, forces, hasDemand, lambdaRootFc, phiConcrete, results, written, memory);
        written = Blowout(ConcreteSide.MinusX, extent.Left - _left, -_left, 1, xs, ys, _bottom, _top, forces, hasDemand, lambdaRootFc, phiConcrete, results, written, memory);
        written = Blowout(ConcreteSide.PlusY, _top - extent.Top, _top, -1, ys, xs, _left, _right, forces, hasDemand, lambdaRootFc, phiConcrete, results, written, memory);
        return Blowout(ConcreteSide.MinusY, extent.Bottom - _bottom, -_bottom, 1, ys, xs, _left, _right, forces, hasDemand, lambdaRootFc, phiConcrete, results, written, memory);
    }

    /// <summary>17.6.5 bond and 17.5.2.2 sustained tension.</summary>
    private int Bond(
        in PreparedActions actions, ReadOnlySpan<double> xs, ReadOnlySpan<double> ys, ReadOnlySpan<double> forces, in Rectangle extent, double demand, bool hasDemand,
        ModeStatus gap, double phi, Span<KernelResult> results, int written, Scratch memory)
    {
        if (_isBondGap)
        {
            results[written++] = KernelResult.Without(FailureModeKind.Bond, gap);
            results[written++] = KernelResult.Without(FailureModeKind.BondSustained, hasDemand && actions.SustainedShare > 0 ? gap : ModeStatus.NotApplicable);
            return written;
        }

        double basic = BasicBond(actions.IsSustainedDesign);
        if (xs.Length == 1)
        {
            results[written++] = Of(FailureModeKind.Bond, xs, ys, forces, extent, hasDemand, basic, phi, 1, memory.Rest);
        }
        else
        {
            written = Groups(FailureModeKind.Bond, 2 * _bondReach, xs, ys, forces, extent, hasDemand, basic, phi, results, written, memory);
        }

        results[written++] = hasDemand && actions.SustainedShare > 0
            ? new(FailureModeKind.BondSustained, basic, 0.55 * phi, actions.SustainedShare * demand)
            : KernelResult.Without(FailureModeKind.BondSustained, ModeStatus.NotApplicable);
        return written;
    }

    /// <summary>N_ba.</summary>
    internal double BasicBond(bool isSustained) => _bondLambda * _bond * (isSustained && _product!.MinimumBond is not null ? 0.4 : 1) * Math.PI * _diameter * _hef;

    /// <summary>N_a or N_ag of fasteners whose bond fails together.</summary>
    internal double BondStrength(
        ReadOnlySpan<double> xs, ReadOnlySpan<double> ys, in Rectangle extent, double eccentricityX, double eccentricityY, double basic, Span<double> scratch)
    {
        double reach = _bondReach;
        double smallestEdge = Lesser(Lesser(_right - extent.Right, extent.Left - _left), Lesser(_top - extent.Top, extent.Bottom - _bottom));
        Projection projection = ProjectedArea.Project(xs, ys, extent, reach, _concrete, scratch);
        double largestArea = 4 * reach * reach;
        double area = _isBounding ? Lesser(projection.Bounds.Area, xs.Length * largestArea) : projection.Area;
        double edge = smallestEdge >= reach * Below ? 1 : 0.7 + (0.3 * (smallestEdge / reach));
        double nominal = area / largestArea * edge * SplittingFactor(smallestEdge, reach) * basic;
        return xs.Length > 1 ? nominal * reach * reach / ((reach + eccentricityX) * (reach + eccentricityY)) : nominal;
    }

    private double SplittingFactor(double smallestEdge, double reach) =>
        double.IsNaN(_criticalEdge) || smallestEdge >= _criticalEdge * Below ? 1 : Lesser(Greater(smallestEdge, reach) / _criticalEdge, 1);

    private int Groups(
        FailureModeKind kind, double limit, ReadOnlySpan<double> xs, ReadOnlySpan<double> ys, ReadOnlySpan<double> forces, in Rectangle extent, bool hasDemand,
        double basic, double phi, Span<KernelResult> results, int written, Scratch memory)
    {
        int count = xs.Length;
        Span<int> groupOf = memory.Ints(count);
        int groups = InfluenceGroups.Find(xs, ys, limit, groupOf, memory.Rest);
        if (groups == 1)
        {
            results[written++] = Of(kind, xs, ys, forces, extent, hasDemand, basic, phi, 1, memory.Rest);
            return written;
        }

        Span<double> groupXs = memory.Doubles(count);
        Span<double> groupYs = memory.Doubles(count);
        Span<double> groupForces = memory.Doubles(count);
        for (int group = 0; group < groups; group++)
        {
            int size = 0;
            for (int i = 0; i < count; i++)
            {
                if (groupOf[i] == group)
                {
                    groupXs[size] = xs[i];
                    groupYs[size] = ys[i];
                    groupForces[size++] = forces[i];
                }
            }

            ReadOnlySpan<double> ownXs = groupXs[..size];
            ReadOnlySpan<double> ownYs = groupYs[..size];
            results[written++] = Of(
                kind, ownXs, ownYs, groupForces[..size], Layouts.ExtentOf(ownXs, ownYs), hasDemand, basic, phi, group + 1, memory.Rest);
        }

        return written;
    }

    /// <summary>Breakout or bond of one group; <paramref name="basic"/> is λ_a √f'c or N_ba.</summary>
    private KernelResult Of(
        FailureModeKind kind, ReadOnlySpan<double> xs, ReadOnlySpan<double> ys, ReadOnlySpan<double> forces, in Rectangle extent, bool hasDemand,
        double basic, double phi, int number, Span<double> scratch)
    {
        double demand = forces[0];
        double eccentricityX = 0;
        double eccentricityY = 0;
        if (xs.Length > 1)
        {
            double sumX = 0, sumY = 0, momentX = 0, momentY = 0, sum = 0;
            for (int i = 0; i < xs.Length; i++)
            {
                double force = forces[i];
                sum += force;
                sumX += xs[i];
                sumY += ys[i];
                momentX += force * xs[i];
                momentY += force * ys[i];
            }

            demand = sum;
            eccentricityX = Math.Abs((momentX / sum) - (sumX / xs.Length));
            eccentricityY = Math.Abs((momentY / sum) - (sumY / xs.Length));
        }

        double nominal = kind == FailureModeKind.Bond
            ? BondStrength(xs, ys, extent, eccentricityX, eccentricityY, basic, scratch)
            : BreakoutStrength(xs, ys, extent, eccentricityX, eccentricityY, basic, scratch);
        return new(kind, nominal, phi, hasDemand ? demand : 0, ConcreteSide.None, number);
    }

    /// <summary>N_cb or N_cbg of fasteners that break out together.</summary>
    internal double BreakoutStrength(
        ReadOnlySpan<double> xs, ReadOnlySpan<double> ys, in Rectangle extent, double eccentricityX, double eccentricityY, double lambdaRootFc, Span<double> scratch)
    {
        double toRight = _right - extent.Right;
        double toLeft = extent.Left - _left;
        double toTop = _top - extent.Top;
        double toBottom = extent.Bottom - _bottom;
        double smallestEdge = Lesser(Lesser(toRight, toLeft), Lesser(toTop, toBottom));

        // Three or four edges closer than 1.5 h_ef (17.6.2.1.2)
        double hef = _hef;
        if (smallestEdge < 1.5 * hef || _closeEdgesOfAll)
        {
            hef = EffectiveEmbedment(xs, ys, toRight, toLeft, toTop, toBottom, scratch);
        }

        double reach = 1.5 * hef;
        Projection projection = ProjectedArea.Project(xs, ys, extent, reach, _concrete, scratch);
        double largestArea = 9 * hef * hef;
        double area = _isBounding ? Lesser(projection.Bounds.Area, xs.Length * largestArea) : projection.Area;
        double edge = smallestEdge >= reach * Below ? 1 : 0.7 + (0.3 * (smallestEdge / reach));
        double basic = _isHeaded && hef >= 11 * Below && (_isDeepExtended || hef <= 25 * Above)
            ? 16 * lambdaRootFc * FiveThirds(hef)
            : _breakoutCoefficient * lambdaRootFc * hef * Math.Sqrt(hef);
        double nominal = area / largestArea * edge * _cracking * SplittingFactor(smallestEdge, 1.5 * _hef) * basic;
        return xs.Length > 1 ? nominal * reach * reach / ((reach + eccentricityX) * (reach + eccentricityY)) : nominal;
    }

    private double EffectiveEmbedment(
        ReadOnlySpan<double> xs, ReadOnlySpan<double> ys, double toRight, double toLeft, double toTop, double toBottom, Span<double> scratch)
    {
        if (_closeEdgesOfAll)
        {
            toRight = _right - _extent.Right;
            toLeft = _extent.Left - _left;
            toTop = _top - _extent.Top;
            toBottom = _extent.Bottom - _bottom;
        }

        double near = 1.5 * _hef * Below;
        int close = (toRight < near ? 1 : 0) + (toLeft < near ? 1 : 0) + (toTop < near ? 1 : 0) + (toBottom < near ? 1 : 0);
        if (close < 3)
        {
            return _hef;
        }

        double limit = 1.5 * _hef * Above;
        double largest = toRight <= limit ? toRight : 0;
        largest = toLeft <= limit ? Greater(largest, toLeft) : largest;
        largest = toTop <= limit ? Greater(largest, toTop) : largest;
        largest = toBottom <= limit ? Greater(largest, toBottom) : largest;
        return xs.Length == 1
            ? largest / 1.5
            : Lesser(_hef, Greater(largest / 1.5, SpanningTree.LongestLink(xs, ys, scratch) / 3));
    }

    /// <param name="side">The edge.</param>
    /// <param name="nearest">Distance of the nearest fastener from it.</param>
    /// <param name="edge">Place of the edge along the axis across it, times the sign of the way in.</param>
    /// <param name="inward">−1 where the axis points to the edge, +1 where it points inward.</param>
    /// <param name="across">Places of the fasteners along the axis across the edge.</param>
    /// <param name="along">Places along the edge.</param>
    /// <param name="low">The edge at the lower end.</param>
    /// <param name="high">The edge at the upper end.</param>
    /// <param name="forces">Tension on the fasteners.</param>
    /// <param name="hasDemand">Whether there is any.</param>
    /// <param name="lambdaRootFc">λ_a √f'c.</param>
    /// <param name="phi">φ.</param>
    /// <param name="results">Receives the modes.</param>
    /// <param name="written">How many stand there.</param>
    /// <param name="memory">Working memory.</param>
    private int Blowout(
        ConcreteSide side, double nearest, double edge, double inward, ReadOnlySpan<double> across, ReadOnlySpan<double> along, double low, double high,
        ReadOnlySpan<double> forces, bool hasDemand, double lambdaRootFc, double phi, Span<KernelResult> results, int written, Scratch memory)
    {
        if (double.IsInfinity(edge))
        {
            return written;
        }

        double farthest = _hef * Below / 2.5;
        if (nearest >= farthest)
        {
            results[written++] = KernelResult.Without(FailureModeKind.SideFaceBlowout, ModeStatus.NotApplicable, side);
            return written;
        }

        if (double.IsNaN(_bearingArea))
        {
            results[written++] = KernelResult.Without(FailureModeKind.SideFaceBlowout, hasDemand ? ModeStatus.NotCovered : ModeStatus.NotApplicable, side);
            return written;
        }

        int count = across.Length;
        Span<double> distances = memory.Doubles(count);
        Span<int> order = memory.Ints(count);
        Span<int> rowStarts = memory.Ints(count + 1);
        Span<int> partStarts = memory.Ints(count + 1);
        for (int i = 0; i < count; i++)
        {
            distances[i] = edge + (inward * across[i]);
        }

        double perEdgeDistance = 160 * Math.Sqrt(_bearingArea) * lambdaRootFc;
        int rows = Rows.Find(distances, order, rowStarts, memory.Rest);
        int number = 0;
        for (int row = 0; row < rows; row++)
        {
            Span<int> inRow = order[rowStarts[row]..rowStarts[row + 1]];
            double edgeDistance = distances[inRow[0]];
            if (edgeDistance >= farthest)
            {
                break;
            }

            int parts = KernelParts.Find(along, inRow, 6 * edgeDistance, partStarts, memory.Rest);
            for (int rank = 0; rank < parts; rank++)
            {
                Span<int> part = parts == 1 ? inRow : TensionModes.PartOfRank(inRow, partStarts[..(parts + 1)], rank);
                double nominal = edgeDistance * perEdgeDistance;
                double first = along[part[0]];
                double demand = 0;
                foreach (int fastener in part)
                {
                    demand += forces[fastener];
                }

                if (part.Length > 1)
                {
                    nominal *= 1 + ((along[part[^1]] - first) / (6 * edgeDistance));
                }
                else
                {
                    double corner = Lesser(high - first, first - low);
                    if (corner < 3 * Below * edgeDistance)
                    {
                        nominal *= (1 + Greater(1, corner / edgeDistance)) / 4;
                    }
                }

                results[written++] = new(FailureModeKind.SideFaceBlowout, nominal, phi, hasDemand ? demand : 0, side, ++number);
            }
        }

        return written;
    }

    // One comparison: unlike Math.Min and Math.Max, these need not mind NaN and −0.
    private static double Lesser(double a, double b) => a < b ? a : b;

    private static double Greater(double a, double b) => a > b ? a : b;

    /// <summary>x^(5/3).</summary>
    private static double FiveThirds(double x)
    {
        double root = Math.Cbrt(x);
        double squared = root * root;
        return squared * squared * root;
    }

    /// <summary>λ (19.2.4.1).</summary>
    internal static double Lambda(ConcreteDensity density, double value) =>
        density == ConcreteDensity.AllLightweight ? 0.75
        : density == ConcreteDensity.SandLightweight ? 0.85
        : double.IsNaN(value) || value > 135 * Above ? 1
        : value <= 100 * Above ? 0.75
        : Lesser(0.0075 * value, 1);
}
