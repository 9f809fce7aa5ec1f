using ConcreteAttach.Calculation;
using ConcreteAttach.Geometry;

namespace ConcreteAttach.Aci318;

/// <summary>A part of a row that takes part in a check of shear toward or along an edge.</summary>
/// <param name="Start">Where its fasteners start in the order of <see cref="RowLoads"/>.</param>
/// <param name="End">Where they end.</param>
/// <param name="EdgeDistance">c_a1 of its row.</param>
/// <param name="Lowest">Lowest number of its fasteners.</param>
/// <param name="Sign">Which way along its axis the set is pushed; 0 without demand.</param>
/// <param name="SetSum">Sum of the components of all fasteners that are pushed the same way.</param>
/// <param name="PartOfRow">Its own components over those of its row.</param>
/// <param name="Share">What its row takes of the sum.</param>
/// <param name="IsWeldedStud">Whether the coefficient and the rule of studs welded to a plate hold for its set.</param>
internal readonly record struct LoadedPart(int Start, int End, double EdgeDistance, int Lowest, int Sign, double SetSum, double PartOfRow, RowShare Share, bool IsWeldedStud);

/// <summary>
/// Shear toward or along one edge: splits the fasteners that count into rows, the rows into parts, and gives each part what it is checked with.
/// </summary>
/// <remarks>
/// A fastener counts if its own component points the way at hand. A row is the fasteners at one edge distance. Row k of m from the edge is checked with
/// V/(m − k + 1) and its own c_a1; where the second row is closer to the front row than c_a1 of the front row, the front row takes all; for studs welded to one plate the
/// farthest row does (17.7.2.2.2). A row falls into parts at gaps of 3 c_a1.
/// </remarks>
internal ref struct RowLoads
{
    private readonly AnchorageData _data;
    private readonly Span<double> _magnitudes;
    private readonly Span<int> _order;
    private readonly Span<int> _rowStarts;
    private readonly Span<int> _partStarts;
    private readonly Span<int> _members;
    private readonly Span<double> _distances;
    private readonly Span<double> _rest;
    private readonly Span<LoadedPart> _parts;
    private ConcreteSide _side;
    private bool _isParallel;
    private ReadOnlySpan<double> _across;
    private ReadOnlySpan<double> _along;
    private double _edge;
    private int _ordered;

    public RowLoads(AnchorageData data, Span<double> free)
    {
        int count = data.Count;
        var memory = new Scratch(free);
        _data = data;
        _magnitudes = memory.Doubles(count);
        _distances = memory.Doubles(count);
        _order = memory.Ints(count);
        _rowStarts = memory.Ints(count + 1);
        _partStarts = memory.Ints(count + 1);
        _members = memory.Ints(count);
        _parts = System.Runtime.InteropServices.MemoryMarshal.Cast<double, LoadedPart>(memory.Doubles(DoublesPerPart * count))[..count];
        _rest = memory.Rest;
    }

    /// <summary>Number of parts to check.</summary>
    public int Count { get; private set; }

    /// <summary>Whether a middle row is checked, of which the commentary says nothing.</summary>
    public bool HasMiddleRow { get; private set; }

    /// <summary>Whether studs are welded to a plate but do not meet 17.7.2.2.2 here.</summary>
    public bool HasUnmetWeldedStud { get; private set; }

    private static int DoublesPerPart => (System.Runtime.CompilerServices.Unsafe.SizeOf<LoadedPart>() + sizeof(double) - 1) / sizeof(double);

    /// <summary>Length of the working memory for <paramref name="count"/> fasteners.</summary>
    public static int ScratchLength(int count) =>
        (2 * count) + (4 * Scratch.LengthOfInts(count + 1)) + (DoublesPerPart * count) + Math.Max(Rows.ScratchLength(count), Parts.ScratchLength(count));

    /// <summary>Starts anew with an edge.</summary>
    /// <param name="side">The edge.</param>
    /// <param name="isParallel">Whether the shear runs along it.</param>
    public void Start(ConcreteSide side, bool isParallel)
    {
        _side = side;
        _isParallel = isParallel;
        _across = side.IsAlongX() ? _data.X : _data.Y;
        _along = side.IsAlongX() ? _data.Y : _data.X;
        _edge = side.PlaceIn(_data.Concrete);
        _ordered = 0;
        Count = 0;
        HasMiddleRow = false;
        HasUnmetWeldedStud = false;
    }

    /// <summary>Adds the fasteners whose component, times <paramref name="sign"/>, exceeds <paramref name="least"/>.</summary>
    public void AddSet(scoped ReadOnlySpan<double> components, int sign, double least)
    {
        int start = _ordered;
        double sum = 0;
        for (int i = 0; i < components.Length; i++)
        {
            double component = sign * components[i];
            if (component > least)
            {
                _magnitudes[i] = component;
                _order[_ordered++] = i;
                sum += component;
            }
        }

        if (_ordered > start)
        {
            Split(start, sign, sum);
        }
    }

    /// <summary>Without demand: all fasteners with an equal load.</summary>
    public void AddEqualLoad()
    {
        int count = _data.Count;
        for (int i = 0; i < count; i++)
        {
            _magnitudes[i] = 1;
            _order[i] = i;
        }

        _ordered = count;
        Split(0, 0, count);
    }

    /// <summary>The parts; in their order after <see cref="SortParts"/>.</summary>
    public readonly ref readonly LoadedPart this[int rank] => ref _parts[rank];

    /// <summary>Puts the parts into their order: rows from the edge inward, in a row by the lowest number of the fasteners.</summary>
    public readonly void SortParts()
    {
        // By insertion: the rows of one set are in order already.
        for (int i = 1; i < Count; i++)
        {
            for (int k = i; k > 0 && IsBefore(_parts[k], _parts[k - 1]); k--)
            {
                (_parts[k], _parts[k - 1]) = (_parts[k - 1], _parts[k]);
            }
        }
    }

    /// <summary>Numbers of a part's fasteners, ascending.</summary>
    public readonly ReadOnlySpan<int> Members(in LoadedPart part)
    {
        Span<int> members = _members[..(part.End - part.Start)];
        _order[part.Start..part.End].CopyTo(members);
        members.Sort();
        return members;
    }

    /// <summary>What the breakout formulas need of a part.</summary>
    public readonly ShearPart Describe(in LoadedPart part)
    {
        ReadOnlySpan<int> members = _order[part.Start..part.End];
        double first = _along[members[0]];
        double last = _along[members[^1]];
        double sum = 0, moment = 0, mean = 0, largestGap = 0, previous = first;
        foreach (int member in members)
        {
            double place = _along[member];
            double magnitude = _magnitudes[member];
            sum += magnitude;
            moment += magnitude * place;
            mean += place;
            largestGap = place - previous > largestGap ? place - previous : largestGap;
            previous = place;
        }

        double eccentricity = Math.Abs((moment / sum) - (mean / members.Length));
        double reach = Math.Max(Math.Abs(first), Math.Abs(last));
        ref readonly Rectangle concrete = ref _data.Concrete;
        return new ShearPart(
            _side,
            members.Length,
            part.EdgeDistance,
            _side.IsAlongX() ? first - concrete.Bottom : first - concrete.Left,
            _side.IsAlongX() ? concrete.Top - last : concrete.Right - last,
            last - first,
            largestGap,
            Limit.WithoutNoise(eccentricity, reach),
            _isParallel,
            part.IsWeldedStud);
    }

    private static bool IsBefore(in LoadedPart a, in LoadedPart b) =>
        Limit.IsBelow(a.EdgeDistance, b.EdgeDistance) || (!Limit.IsBelow(b.EdgeDistance, a.EdgeDistance) && a.Lowest < b.Lowest);

    /// <summary>Distance of a fastener from the edge.</summary>
    private readonly double DistanceOf(int member) => Math.Abs(_edge - _across[member]);

    private void Split(int start, int sign, double sum)
    {
        int count = _ordered - start;
        Span<double> distances = _distances[..count];
        Span<int> set = _order[start.._ordered];
        for (int k = 0; k < count; k++)
        {
            distances[k] = DistanceOf(set[k]);
        }

        // Rows orders places within the set; turn them into numbers of fasteners.
        Span<int> places = _members[..count];
        int rows = Rows.Find(distances, places, _rowStarts, _rest);
        for (int k = 0; k < count; k++)
        {
            places[k] = set[places[k]];
        }

        places.CopyTo(set);

        bool isWeldedStud = MeetsWeldedStud(set);
        (int firstRow, int endRow, RowRule rule) = RowsToCheck(set, rows, isWeldedStud);
        for (int row = firstRow; row < endRow; row++)
        {
            int sharing = rule == RowRule.Shared ? rows - row : 1;
            HasMiddleRow |= rule == RowRule.Shared && row > 0 && row < rows - 1;
            AddParts(start, row, sign, sum, new RowShare(row + 1, rows, sharing, rule), isWeldedStud);
        }
    }

    private readonly (int First, int End, RowRule Rule) RowsToCheck(scoped ReadOnlySpan<int> set, int rows, bool isWeldedStud)
    {
        if (rows == 1)
        {
            return (0, 1, RowRule.Only);
        }

        if (isWeldedStud)
        {
            return (rows - 1, rows, RowRule.WeldedFarthest);
        }

        double front = DistanceOf(set[0]);
        double second = DistanceOf(set[_rowStarts[1]]);
        return Limit.IsBelow(second - front, front) ? (0, 1, RowRule.FrontTakesAll) : (0, rows, RowRule.Shared);
    }

    private void AddParts(int start, int row, int sign, double sum, in RowShare share, bool isWeldedStud)
    {
        int rowStart = start + _rowStarts[row];
        Span<int> inRow = _order[rowStart..(start + _rowStarts[row + 1])];
        double edgeDistance = DistanceOf(inRow[0]);
        int parts = Parts.Find(_along, inRow, 3 * edgeDistance, _partStarts, _rest);
        for (int part = 0; part < parts; part++)
        {
            int from = _partStarts[part];
            int to = _partStarts[part + 1];
            int lowest = int.MaxValue;
            foreach (int member in inRow[from..to])
            {
                lowest = member < lowest ? member : lowest;
            }

            double partOfRow = parts == 1 ? 1 : Sum(inRow[from..to]) / Sum(inRow);
            _parts[Count++] = new LoadedPart(rowStart + from, rowStart + to, edgeDistance, lowest, sign, sum, partOfRow, share, isWeldedStud);
        }
    }

    /// <summary>17.7.2.2.2: plate, spacing, and corner reinforcement where a side edge is at 1.5 h_ef or nearer.</summary>
    private bool MeetsWeldedStud(scoped ReadOnlySpan<int> set)
    {
        if (_data.WeldedPlateThickness is not { } thickness)
        {
            return false;
        }

        Aci318Edition edition = _data.Edition;
        double nearest = double.PositiveInfinity;
        foreach (int member in set)
        {
            double place = _along[member];
            nearest = Math.Min(nearest, _side.IsAlongX()
                ? Math.Min(_data.Concrete.Top - place, place - _data.Concrete.Bottom)
                : Math.Min(_data.Concrete.Right - place, place - _data.Concrete.Left));
        }

        bool isMet = !Limit.IsBelow(thickness, Math.Max(edition.WeldedPlateThickness, _data.Diameter / 2))
            && !Limit.IsBelow(_data.SmallestSpacing, edition.WeldedStudSpacing)
            && (_data.HasCornerReinforcement || Limit.IsBelow(1.5 * _data.Embedment, nearest));
        HasUnmetWeldedStud |= !isMet;
        return isMet;
    }

    private readonly double Sum(scoped ReadOnlySpan<int> members)
    {
        double sum = 0;
        foreach (int member in members)
        {
            sum += _magnitudes[member];
        }

        return sum;
    }
}
