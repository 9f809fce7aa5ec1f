using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using ConcreteAttach.Calculation;
using ConcreteAttach.Geometry;

namespace ConcreteAttach.Aci318;

/// <summary>A part of a row that is checked for shear toward or along an edge.</summary>
internal struct LoadedPart
{
    /// <summary>What the breakout formulas need of it.</summary>
    public ShearPart Part;

    /// <summary>Where its fasteners start in the order of <see cref="RowLoads"/>.</summary>
    public int Start;

    /// <summary>Lowest number of its fasteners.</summary>
    public int Lowest;

    /// <summary>Which way along its axis the set is pushed; 0 without demand.</summary>
    public int Sign;

    /// <summary>Sum of the components of all fasteners that are pushed the same way.</summary>
    public double SetSum;

    /// <summary>Its own components over those of its row.</summary>
    public double PartOfRow;

    /// <summary>What its row takes of the sum.</summary>
    public RowShare Share;
}

/// <summary>
/// Shear toward or along one edge: splits the fasteners that count into rows, the rows into parts, and gives each part what it is checked with.
/// </summary>
/// <remarks>
/// A fastener counts if it faces the edge and its own component points the way at hand. A row is the fasteners at one edge distance. Row k of m from the edge is checked with
/// V/(m − k + 1) and its own c_a1; where the second row is closer to the front row than c_a1 of the front row, the front row takes all; for studs welded to one plate the
/// farthest row does (17.7.2.2.2). A row falls into parts at gaps of 3 c_a1.
/// </remarks>
internal ref struct RowLoads
{
    private readonly AnchorageData _data;
    private readonly ConcreteEdge _edge;
    private readonly ReadOnlySpan<double> _shearX;
    private readonly ReadOnlySpan<double> _shearY;
    private readonly double _least;

    // Those that count, in the order of the edge: by rows, in a row along it.
    private readonly Span<int> _fasteners;
    private readonly Span<double> _components;
    private readonly Span<int> _rowStarts;
    private readonly Span<int> _partStarts;
    private readonly Span<int> _members;
    private readonly Span<LoadedPart> _parts;
    private int _fastenerCount;

    /// <param name="data">The attachment.</param>
    /// <param name="edge">The edge.</param>
    /// <param name="shears">Shear on each fastener.</param>
    /// <param name="free">Working memory of <see cref="ScratchLength"/>.</param>
    public RowLoads(AnchorageData data, ConcreteEdge edge, in FastenerShears shears, Span<double> free)
    {
        int count = data.Count;
        var memory = new Scratch(free);
        _data = data;
        _edge = edge;
        _shearX = shears.X;
        _shearY = shears.Y;
        _least = shears.Least;
        _components = memory.Doubles(count);
        _fasteners = memory.Ints(count);
        _rowStarts = memory.Ints(count + 1);
        _partStarts = memory.Ints(count + 1);
        _members = memory.Ints(count);
        _parts = MemoryMarshal.Cast<double, LoadedPart>(memory.Doubles(DoublesPerPart * count))[..count];
    }

    /// <summary>Number of parts to check.</summary>
    public int Count { get; private set; }

    /// <summary>Whether a fastener counts; else all that face the edge are here, with an equal load.</summary>
    public bool HasDemand { get; private set; }

    /// <summary>Whether a middle row is checked, of which the commentary says nothing.</summary>
    public bool HasMiddleRow { get; private set; }

    /// <summary>Whether studs are welded to a plate but do not meet 17.7.2.2.2 here.</summary>
    public bool HasUnmetWeldedStud { get; private set; }

    private static int DoublesPerPart => (Unsafe.SizeOf<LoadedPart>() + sizeof(double) - 1) / sizeof(double);

    /// <summary>The parts: rows from the edge inward, in a row by the lowest number of the fasteners.</summary>
    public readonly ref readonly LoadedPart this[int rank] => ref _parts[rank];

    /// <summary>Length of the working memory for <paramref name="count"/> fasteners.</summary>
    public static int ScratchLength(int count) => count + (4 * Scratch.LengthOfInts(count + 1)) + (DoublesPerPart * count);

    /// <summary>Takes the fasteners that are pushed toward the edge.</summary>
    public void Toward()
    {
        Start();
        AddSet(_edge.NormalX, _edge.NormalY, 1);
        Finish();
    }

    /// <summary>Takes the fasteners that are pushed along the edge; those pushed one way and those pushed the other way are two sets, each with its own sum.</summary>
    public void Along()
    {
        Start();
        AddSet(_edge.DirectionX, _edge.DirectionY, 1);
        AddSet(-_edge.DirectionX, -_edge.DirectionY, -1);
        Finish();
    }

    /// <summary>Numbers of a part's fasteners, ascending.</summary>
    public readonly ReadOnlySpan<int> Members(in LoadedPart loaded)
    {
        Span<int> members = _members[..loaded.Part.Count];
        _fasteners.Slice(loaded.Start, loaded.Part.Count).CopyTo(members);
        members.Sort();
        return members;
    }

    private void Start()
    {
        _fastenerCount = 0;
        Count = 0;
        HasMiddleRow = false;
        HasUnmetWeldedStud = false;
    }

    /// <summary>Adds the fasteners whose component in a direction exceeds the least.</summary>
    private void AddSet(double directionX, double directionY, int sign)
    {
        int start = _fastenerCount;
        int count = start;
        double sum = 0;
        foreach (int fastener in _edge.Order)
        {
            double component = (directionX * _shearX[fastener]) + (directionY * _shearY[fastener]);
            if (component > _least)
            {
                _fasteners[count] = fastener;
                _components[count++] = component;
                sum += component;
            }
        }

        _fastenerCount = count;
        if (count > start)
        {
            Split(start, sign, sum);
        }
    }

    /// <summary>Without demand all that face the edge count, with an equal load. Then the parts are put into their order.</summary>
    private void Finish()
    {
        HasDemand = _fastenerCount > 0;
        if (!HasDemand)
        {
            _fastenerCount = _edge.Order.Length;
            _edge.Order.CopyTo(_fasteners);
            _components.Fill(1);
            Split(0, 0, _fastenerCount);
        }

        // By insertion: the rows of one set are in order already.
        for (int i = 1; i < Count; i++)
        {
            for (int k = i; k > 0 && IsBefore(_parts[k], _parts[k - 1]); k--)
            {
                (_parts[k], _parts[k - 1]) = (_parts[k - 1], _parts[k]);
            }
        }
    }

    private static bool IsBefore(in LoadedPart a, in LoadedPart b) =>
        a.Part.EdgeDistance < b.Part.EdgeDistance || (a.Part.EdgeDistance == b.Part.EdgeDistance && a.Lowest < b.Lowest);

    /// <summary>Splits the set that starts at <paramref name="start"/> and adds the parts of the rows that are to be checked.</summary>
    private void Split(int start, int sign, double sum)
    {
        ReadOnlySpan<int> set = _fasteners[start.._fastenerCount];
        int rows = _edge.FindRows(set, _rowStarts);
        bool isWeldedStud = MeetsWeldedStud(set);
        (int firstRow, int endRow, RowRule rule) = RowsToCheck(set, rows, isWeldedStud);
        for (int row = firstRow; row < endRow; row++)
        {
            int sharing = rule == RowRule.Shared ? rows - row : 1;
            HasMiddleRow |= rule == RowRule.Shared && row > 0 && row < rows - 1;
            AddParts(start + _rowStarts[row], start + _rowStarts[row + 1], sign, sum, new RowShare(row + 1, rows, sharing, rule), isWeldedStud);
        }
    }

    private readonly (int First, int End, RowRule Rule) RowsToCheck(ReadOnlySpan<int> set, int rows, bool isWeldedStud)
    {
        if (rows == 1)
        {
            return (0, 1, RowRule.Only);
        }

        if (isWeldedStud)
        {
            return (rows - 1, rows, RowRule.WeldedFarthest);
        }

        double front = _edge.Distances[set[0]];
        double second = _edge.Distances[set[_rowStarts[1]]];
        return Limit.IsBelow(second - front, front) ? (0, 1, RowRule.FrontTakesAll) : (0, rows, RowRule.Shared);
    }

    private void AddParts(int rowStart, int rowEnd, int sign, double sum, in RowShare share, bool isWeldedStud)
    {
        double edgeDistance = _edge.Distances[_fasteners[rowStart]];
        int parts = Parts.Find(_edge.Places, _edge.ToHigh, _fasteners[rowStart..rowEnd], 3 * edgeDistance, _partStarts);
        double ofRow = parts == 1 ? 0 : Sum(rowStart, rowEnd);
        for (int part = 0; part < parts; part++)
        {
            int start = rowStart + _partStarts[part];
            int end = rowStart + _partStarts[part + 1];
            ref LoadedPart loaded = ref _parts[Count++];
            loaded.Part = Describe(start, end, edgeDistance, isWeldedStud, out loaded.Lowest);
            loaded.Start = start;
            loaded.Sign = sign;
            loaded.SetSum = sum;
            loaded.PartOfRow = parts == 1 ? 1 : Sum(start, end) / ofRow;
            loaded.Share = share;
        }
    }

    /// <summary>What the breakout formulas need of neighbours in a row.</summary>
    private readonly ShearPart Describe(int start, int end, double edgeDistance, bool isWeldedStud, out int lowest)
    {
        double[] places = _edge.Places;
        ReadOnlySpan<int> members = _fasteners[start..end];
        ReadOnlySpan<double> components = _components[start..end];
        double first = places[members[0]];
        double last = places[members[^1]];
        double sum = 0, moment = 0, mean = 0, largestGap = 0, previous = first;
        lowest = members[0];
        for (int k = 0; k < members.Length; k++)
        {
            double place = places[members[k]];
            sum += components[k];
            moment += components[k] * place;
            mean += place;
            largestGap = place - previous > largestGap ? place - previous : largestGap;
            previous = place;
            lowest = members[k] < lowest ? members[k] : lowest;
        }

        double eccentricity = Math.Abs((moment / sum) - (mean / members.Length));
        double reach = Math.Max(Math.Abs(first), Math.Abs(last));
        return new ShearPart(
            members.Length, edgeDistance, _edge.ToLow[members[0]], _edge.ToHigh[members[^1]], last - first, largestGap, Limit.WithoutNoise(eccentricity, reach), isWeldedStud);
    }

    /// <summary>17.7.2.2.2: plate, spacing, and corner reinforcement where a side edge is at 1.5 h_ef or nearer.</summary>
    private bool MeetsWeldedStud(ReadOnlySpan<int> set)
    {
        if (_data.WeldedPlateThickness is not { } thickness)
        {
            return false;
        }

        Aci318Edition edition = _data.Edition;
        double nearest = double.PositiveInfinity;
        foreach (int member in set)
        {
            nearest = Math.Min(nearest, _edge.ToNearestSide(member));
        }

        bool isMet = !Limit.IsBelow(thickness, Math.Max(edition.WeldedPlateThickness, _data.Diameter / 2))
            && !Limit.IsBelow(_data.SmallestSpacing, edition.WeldedStudSpacing)
            && (_data.HasCornerReinforcement || Limit.IsBelow(1.5 * _data.Embedment, nearest));
        HasUnmetWeldedStud |= !isMet;
        return isMet;
    }

    private readonly double Sum(int start, int end)
    {
        double sum = 0;
        foreach (double component in _components[start..end])
        {
            sum += component;
        }

        return sum;
    }
}
