using ConcreteAttach.Aci318;
using ConcreteAttach.Distribution;
using ConcreteAttach.Geometry;
using ConcreteAttach.Materials;
using ConcreteAttach.Verification;

namespace ConcreteAttach.Benchmarks;

/// <summary>The shear part of <see cref="EvaluateKernel"/>: 17.7 of ACI 318-19 with its inch-pound constants.</summary>
internal sealed class ShearKernel
{
    private const double Above = 1 + 1e-9;
    private const double Below = 1 - 1e-9;

    private readonly int _count;
    private readonly double[] _x, _y, _fromCentroidX, _fromCentroidY;
    private readonly double _sumR2;
    private readonly double _left, _right, _bottom, _top, _thickness;
    private readonly double _strength, _lambda, _hef, _diameter, _shearArea, _yield, _ultimate;
    private readonly bool _isStud, _hasGrout, _isDuctile, _isTied;
    private readonly double _psiC, _shank, _largestStrength, _testedShear;
    private readonly bool _isBreakoutGap, _isAdhesive, _isBondGap;
    private readonly Rectangle _extent;

    // Studs welded to a plate (17.7.2.2.2)
    private readonly bool _mayBeWelded, _hasCornerReinforcement;

    // Kept memory
    private readonly double[] _vx, _vy, _resultants, _magnitudes, _distances, _groupX, _groupY, _setX, _setY, _scratch;
    private readonly int[] _order, _sorted, _rowStarts, _partStarts, _members, _groupOf, _set;
    private readonly Part[] _parts;
    private int _partCount;

    public ShearKernel(AnchorageData data)
    {
        _count = data.Count;
        _x = data.X;
        _y = data.Y;
        _fromCentroidX = [.. Enumerable.Range(0, _count).Select(data.Distribution.Elastic.X)];
        _fromCentroidY = [.. Enumerable.Range(0, _count).Select(data.Distribution.Elastic.Y)];
        _sumR2 = data.Distribution.Elastic.Shape == GroupShape.Single ? double.PositiveInfinity : data.Distribution.Elastic.SumX2 + data.Distribution.Elastic.SumY2;
        _left = data.Concrete.Left;
        _right = data.Concrete.Right;
        _bottom = data.Concrete.Bottom;
        _top = data.Concrete.Top;
        _extent = data.Extent;
        _thickness = data.Thickness;
        _strength = data.Strength;
        _lambda = TensionKernel.Lambda(data.Density, data.DensityValue);
        _hef = data.Embedment;
        _diameter = data.Diameter;
        _shearArea = data.ShearArea;
        _yield = data.SteelYield;
        _ultimate = data.SteelUltimate;
        _isStud = data.IsStud;
        _hasGrout = data.HasGroutPad;
        _isDuctile = data.IsDuctile;
        _isTied = data.HasSupplementaryShear;
        _psiC = !data.IsCracked || data.EdgeReinforcement == EdgeReinforcement.BarAndStirrups ? 1.4 : data.EdgeReinforcement == EdgeReinforcement.Bar ? 1.2 : 1;
        _shank = Math.Sqrt(_diameter) * Math.Pow(data.Product is { HasSeparatedSleeve: true } ? 2 : Math.Min(_hef, 8 * _diameter) / _diameter, 0.2);
        bool isLight = data.Density != ConcreteDensity.Normalweight && !(data.DensityValue > 135 * Above);
        _lambda *= isLight ? data.Product?.LightweightFactor ?? 1 : 1;
        _largestStrength = data.Product is null ? 10_000 : 8_000;
        _testedShear = data.Product?.SteelShear ?? double.NaN;
        _isBreakoutGap = data.BreakoutGap is not null;
        _isAdhesive = data.Product is { IsAdhesive: true };
        _isBondGap = data.Product?.BondGap is not null;
        _mayBeWelded = data.WeldedPlateThickness is { } plate && plate >= Math.Max(0.375, _diameter / 2) * Below && data.SmallestSpacing >= 2.5 * Below;
        _hasCornerReinforcement = data.HasCornerReinforcement;

        _vx = new double[_count];
        _vy = new double[_count];
        _resultants = new double[_count];
        _magnitudes = new double[_count];
        _distances = new double[_count];
        _groupX = new double[_count];
        _groupY = new double[_count];
        _setX = new double[_count];
        _setY = new double[_count];
        _order = new int[_count];
        _sorted = new int[_count];
        _rowStarts = new int[_count + 1];
        _partStarts = new int[_count + 1];
        _members = new int[_count];
        _groupOf = new int[_count];
        _set = new int[_count];
        _parts = new Part[_count];
        _scratch = new double[ShearModes.ScratchLength(_count) + Math.Max(Rows.ScratchLength(_count), KernelParts.ScratchLength(_count))];
    }

    /// <summary>The most results that <see cref="Evaluate"/> can write.</summary>
    public int Capacity => 1 + (10 * _count);

    /// <summary>Writes the modes in the order of the chapter; returns how many.</summary>
    public int Evaluate(in PreparedActions actions, TensionKernel tension, Span<KernelResult> results)
    {
        double twist = actions.Mz / _sumR2;
        double meanX = actions.Vx / _count;
        double meanY = actions.Vy / _count;
        double largest = 0;
        for (int i = 0; i < _vx.Length; i++)
        {
            double vx = meanX - (twist * _fromCentroidY[i]);
            double vy = meanY + (twist * _fromCentroidX[i]);
            _vx[i] = vx;
            _vy[i] = vy;
            double resultant = Math.Sqrt((vx * vx) + (vy * vy));
            _resultants[i] = resultant;
            largest = resultant > largest ? resultant : largest;
        }

        bool hasDemand = largest > 0;
        double least = 1e-9 * largest;
        ModeStatus gap = hasDemand ? ModeStatus.NotCovered : ModeStatus.NotApplicable;
        int written = 0;

        // 17.7.1 steel
        double steel = (double.IsNaN(_testedShear) ? (_isStud ? 1 : 0.6) * _shearArea * Lesser(_ultimate, Lesser(1.9 * _yield, 125_000)) : _testedShear) * (_hasGrout ? 0.80 : 1);
        results[written++] = double.IsNaN(steel)
            ? KernelResult.Without(FailureModeKind.SteelShear, gap)
            : new(FailureModeKind.SteelShear, steel, _isDuctile ? 0.65 : 0.60, largest);
        if (_isBreakoutGap)
        {
            results[written++] = KernelResult.Without(FailureModeKind.ConcreteBreakoutShear, gap);
            results[written++] = KernelResult.Without(FailureModeKind.Pryout, gap);
            return written;
        }

        // 17.7.2 breakout toward and along each edge
        double lambdaRootFc = _lambda * Math.Sqrt(Lesser(_strength, _largestStrength));
        double bearing = _shank * lambdaRootFc;
        written = Breakout(ConcreteSide.PlusX, _right, 1, _x, _y, _bottom, _top, _vx, _vy, least, bearing, lambdaRootFc, results, written);
        written = Breakout(ConcreteSide.MinusX, _left, -1, _x, _y, _bottom, _top, _vx, _vy, least, bearing, lambdaRootFc, results, written);
        written = Breakout(ConcreteSide.PlusY, _top, 1, _y, _x, _left, _right, _vy, _vx, least, bearing, lambdaRootFc, results, written);
        written = Breakout(ConcreteSide.MinusY, _bottom, -1, _y, _x, _left, _right, _vy, _vx, least, bearing, lambdaRootFc, results, written);
        if (_isBondGap)
        {
            results[written++] = KernelResult.Without(FailureModeKind.Pryout, gap);
            return written;
        }

        return Pryout(tension, hasDemand, least, lambdaRootFc, _isAdhesive ? tension.BasicBond(actions.IsSustainedDesign) : 0, results, written);
    }

    private int Breakout(
        ConcreteSide side, double edge, double sign, double[] across, double[] along, double low, double high, double[] toward, double[] parallel,
        double least, double bearing, double lambdaRootFc, Span<KernelResult> results, int written)
    {
        if (double.IsInfinity(edge))
        {
            return written;
        }

        int ordered = AddSet(toward, sign, least, 0, edge, across, along, low, high);
        written = Strengths(side, ordered > 0, false, edge, across, along, low, high, bearing, lambdaRootFc, results, written);
        ordered = AddSet(parallel, 1, least, 0, edge, across, along, low, high);
        ordered = AddSet(parallel, -1, least, ordered, edge, across, along, low, high);
        return Strengths(side, ordered > 0, true, edge, across, along, low, high, bearing, lambdaRootFc, results, written);
    }

    /// <summary>Gathers the fasteners that are pushed one way, and splits them into rows and parts; returns how many are gathered so far.</summary>
    private int AddSet(double[] components, double sign, double least, int start, double edge, double[] across, double[] along, double low, double high)
    {
        int end = start;
        double sum = 0;
        for (int i = 0; i < components.Length; i++)
        {
            double component = sign * components[i];
            if (component > least)
            {
                _magnitudes[i] = component;
                _order[end++] = i;
                sum += component;
            }
        }

        if (start == 0)
        {
            _partCount = 0;
        }

        if (end > start)
        {
            Split(start, end, sum, edge, across, along, low, high);
        }

        return end;
    }

    private void Split(int start, int end, double sum, double edge, double[] across, double[] along, double low, double high)
    {
        int count = end - start;
        Span<int> set = _order.AsSpan(start, count);
        double nearestSide = double.PositiveInfinity;
        for (int k = 0; k < set.Length; k++)
        {
            _distances[k] = Math.Abs(edge - across[set[k]]);
            double place = along[set[k]];
            nearestSide = Lesser(nearestSide, Lesser(high - place, place - low));
        }

        int rows = Rows.Find(_distances.AsSpan(0, count), _sorted, _rowStarts, _scratch);
        bool isWelded = _mayBeWelded && (_hasCornerReinforcement || nearestSide > 1.5 * _hef * Above);
        double front = _distances[_sorted[0]];
        int first = 0;
        int last = rows;
        bool isShared = false;
        if (rows > 1)
        {
            if (isWelded)
            {
                first = rows - 1;
            }
            else if (_distances[_sorted[_rowStarts[1]]] - front < front * Below)
            {
                last = 1;
            }
            else
            {
                isShared = true;
            }
        }

        for (int row = first; row < last; row++)
        {
            int from = start + _rowStarts[row];
            double edgeDistance = _distances[_sorted[_rowStarts[row]]];
            for (int k = _rowStarts[row]; k < _rowStarts[row + 1]; k++)
            {
                _members[k] = set[_sorted[k]];
            }

            Span<int> inRow = _members.AsSpan(_rowStarts[row].._rowStarts[row + 1]);
            double sharing = isShared ? rows - row : 1;
            int parts = KernelParts.Find(along, inRow, 3 * edgeDistance, _partStarts, _scratch);
            double rowSum = Sum(inRow);
            for (int part = 0; part < parts; part++)
            {
                ReadOnlySpan<int> inPart = inRow[_partStarts[part].._partStarts[part + 1]];
                int lowest = int.MaxValue;
                double own = 0, moment = 0, places = 0, gap = 0, previous = along[inPart[0]];
                foreach (int member in inPart)
                {
                    double place = along[member];
                    own += _magnitudes[member];
                    moment += _magnitudes[member] * place;
                    places += place;
                    gap = place - previous > gap ? place - previous : gap;
                    previous = place;
                    lowest = member < lowest ? member : lowest;
                }

                double begin = along[inPart[0]];
                double finish = along[inPart[^1]];
                _parts[_partCount++] = new Part(
                    edgeDistance, lowest, inPart.Length, begin - low, high - finish, finish - begin, gap, Math.Abs((moment / own) - (places / inPart.Length)),
                    parts == 1 ? sum / sharing : sum / sharing * (own / rowSum), isWelded);
            }
        }
    }

    private int Strengths(
        ConcreteSide side, bool hasDemand, bool isParallel, double edge, double[] across, double[] along, double low, double high,
        double bearing, double lambdaRootFc, Span<KernelResult> results, int written)
    {
        if (!hasDemand)
        {
            for (int i = 0; i < _count; i++)
            {
                _magnitudes[i] = 1;
                _order[i] = i;
            }

            _partCount = 0;
            Split(0, _count, _count, edge, across, along, low, high);
        }

        for (int i = 1; i < _partCount; i++)
        {
            for (int k = i; k > 0 && IsBefore(_parts[k], _parts[k - 1]); k--)
            {
                (_parts[k], _parts[k - 1]) = (_parts[k - 1], _parts[k]);
            }
        }

        double thickness = _thickness;
        for (int i = 0; i < _partCount; i++)
        {
            ref readonly Part part = ref _parts[i];
            double ca1 = part.EdgeDistance;
            double largestSide = Greater(part.Low, part.High);
            if (largestSide < 1.5 * ca1 * Below && thickness < 1.5 * ca1 * Below)
            {
                ca1 = Greater(largestSide, thickness) / 1.5;
                ca1 = part.Count > 1 ? Greater(ca1, part.Gap / 3) : ca1;
            }

            double reach = 1.5 * ca1;
            double width = Lesser(part.Low, reach) + part.Span + Lesser(part.High, reach);
            double area = width * Lesser(reach, thickness) / (4.5 * ca1 * ca1);
            double nearest = Lesser(part.Low, part.High);
            double edgeFactor = isParallel ? 2 : nearest >= reach * Below ? 1 : 0.7 + (0.3 * (nearest / reach));
            double basic = Lesser((part.IsWelded ? 8 : 7) * bearing, 9 * lambdaRootFc) * ca1 * Math.Sqrt(ca1);
            double nominal = area * edgeFactor * _psiC * basic;
            if (thickness < reach * Below)
            {
                nominal *= Math.Sqrt(reach / thickness);
            }

            if (part.Count > 1)
            {
                nominal *= reach / (reach + part.Eccentricity);
            }

            results[written++] = new(
                isParallel ? FailureModeKind.ConcreteBreakoutParallel : FailureModeKind.ConcreteBreakoutShear,
                nominal, _isTied ? 0.75 : 0.70, hasDemand ? part.Demand : 0, side, i + 1);
        }

        return written;
    }

    private int Pryout(TensionKernel tension, bool hasDemand, double least, double lambdaRootFc, double basicBond, Span<KernelResult> results, int written)
    {
        double factor = _hef < 2.5 * Below ? 1 : 2;
        int count = 0;
        for (int i = 0; i < _count; i++)
        {
            if (!hasDemand || _resultants[i] > least)
            {
                _setX[count] = _x[i];
                _setY[count] = _y[i];
                _set[count++] = i;
            }
        }

        int groups = count == 1 ? 1 : InfluenceGroups.Find(_setX.AsSpan(0, count), _setY.AsSpan(0, count), 3 * _hef, _groupOf, _scratch);
        if (groups == 1)
        {
            return PryoutOf(tension, 1, _set.AsSpan(0, count), _setX.AsSpan(0, count), _setY.AsSpan(0, count), hasDemand, factor, lambdaRootFc, basicBond, results, written);
        }

        for (int group = 0; group < groups; group++)
        {
            int size = 0;
            for (int i = 0; i < count; i++)
            {
                if (_groupOf[i] == group)
                {
                    _groupX[size] = _setX[i];
                    _groupY[size] = _setY[i];
                    _members[size++] = _set[i];
                }
            }

            written = PryoutOf(
                tension, group + 1, _members.AsSpan(0, size), _groupX.AsSpan(0, size), _groupY.AsSpan(0, size), hasDemand, factor, lambdaRootFc, basicBond, results, written);
        }

        return written;
    }

    private int PryoutOf(
        TensionKernel tension, int number, ReadOnlySpan<int> members, ReadOnlySpan<double> xs, ReadOnlySpan<double> ys, bool hasDemand,
        double factor, double lambdaRootFc, double basicBond, Span<KernelResult> results, int written)
    {
        double resultant = 0, eccentricityX = 0, eccentricityY = 0;
        bool isOpposed = false;
        if (hasDemand)
        {
            double vx = 0, vy = 0, size = 0, sumX = 0, sumY = 0, torsion = 0;
            for (int k = 0; k < members.Length; k++)
            {
                double x = _vx[members[k]];
                double y = _vy[members[k]];
                vx += x;
                vy += y;
                size += Math.Abs(x) + Math.Abs(y);
                sumX += xs[k];
                sumY += ys[k];
                torsion += (xs[k] * y) - (ys[k] * x);
            }

            double squared = (vx * vx) + (vy * vy);
            resultant = Math.Sqrt(squared);
            resultant = resultant <= 1e-12 * size ? 0 : resultant;
            isOpposed = members.Length > 1 && AreOpposed(members);
            if (!isOpposed)
            {
                torsion -= ((sumX * vy) - (sumY * vx)) / members.Length;
                eccentricityX = Math.Abs(torsion * vy) / squared;
                eccentricityY = Math.Abs(torsion * vx) / squared;
            }
        }

        Rectangle extent = members.Length == _count ? _extent : Layouts.ExtentOf(xs, ys);
        double inTension = tension.BreakoutStrength(xs, ys, extent, eccentricityX, eccentricityY, lambdaRootFc, _scratch);
        double nominal = factor * (_isAdhesive ? Lesser(inTension, tension.BondStrength(xs, ys, extent, eccentricityX, eccentricityY, basicBond, _scratch)) : inTension);
        results[written++] = new(FailureModeKind.Pryout, nominal, 0.70, resultant, ConcreteSide.None, number);
        if (isOpposed)
        {
            double largest = 0;
            foreach (int member in members)
            {
                largest = _resultants[member] > largest ? _resultants[member] : largest;
            }

            results[written++] = new(FailureModeKind.PryoutOfFastener, nominal / members.Length, 0.70, largest, ConcreteSide.None, number);
        }

        return written;
    }

    /// <summary>Whether two forces point more than 90 degrees apart: one is more than that from the first, or the outermost two to its sides are.</summary>
    private bool AreOpposed(ReadOnlySpan<int> members)
    {
        int first = members[0], left = first, right = first;
        foreach (int member in members[1..])
        {
            if (PointApart(first, member))
            {
                return true;
            }

            left = (_vx[left] * _vy[member]) - (_vy[left] * _vx[member]) > 0 ? member : left;
            right = (_vx[right] * _vy[member]) - (_vy[right] * _vx[member]) < 0 ? member : right;
        }

        return PointApart(left, right);
    }

    private bool PointApart(int a, int b) => (_vx[a] * _vx[b]) + (_vy[a] * _vy[b]) < -1e-9 * _resultants[a] * _resultants[b];

    private double Sum(ReadOnlySpan<int> members)
    {
        double sum = 0;
        foreach (int member in members)
        {
            sum += _magnitudes[member];
        }

        return sum;
    }

    private static bool IsBefore(in Part a, in Part b) =>
        a.EdgeDistance < b.EdgeDistance * Below || (a.EdgeDistance <= b.EdgeDistance * Above && a.Lowest < b.Lowest);

    private static double Lesser(double a, double b) => a < b ? a : b;

    private static double Greater(double a, double b) => a > b ? a : b;

    /// <summary>Fasteners of one row that break out together, and the shear that they are checked with.</summary>
    private readonly record struct Part(
        double EdgeDistance, int Lowest, int Count, double Low, double High, double Span, double Gap, double Eccentricity, double Demand, bool IsWelded);
}
