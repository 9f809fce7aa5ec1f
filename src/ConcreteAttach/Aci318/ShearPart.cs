namespace ConcreteAttach.Aci318;

/// <summary>Fasteners of one row that break out toward an edge together, as the shear breakout formulas need them.</summary>
/// <param name="Count">Number of fasteners.</param>
/// <param name="EdgeDistance">c_a1 of the row.</param>
/// <param name="LowSide">From the outermost fastener to the side edge in the negative direction along the edge; infinite without.</param>
/// <param name="HighSide">The same in the positive direction.</param>
/// <param name="Span">Between the outer fasteners along the edge.</param>
/// <param name="LargestGap">Largest spacing along the edge between adjacent fasteners.</param>
/// <param name="Eccentricity">e'_V.</param>
/// <param name="IsWeldedStud">Whether the coefficient of studs welded to a plate holds (17.7.2.2.2).</param>
internal readonly record struct ShearPart(
    int Count, double EdgeDistance, double LowSide, double HighSide, double Span, double LargestGap, double Eccentricity, bool IsWeldedStud);

/// <summary>How the shear toward an edge is shared: which row is checked with what part of it.</summary>
/// <param name="Row">Row from the edge, from 1.</param>
/// <param name="Rows">Number of rows.</param>
/// <param name="Sharing">Number of rows that share the load in this check.</param>
/// <param name="Rule">Why.</param>
internal readonly record struct RowShare(int Row, int Rows, int Sharing, RowRule Rule);

/// <summary>The rule that decides what a row carries (Fig. R17.7.2.1b).</summary>
internal enum RowRule
{
    /// <summary>There is one row.</summary>
    Only,

    /// <summary>Rows at least c_a1 apart: each is checked with its share, the farthest with all (cases 1 and 2).</summary>
    Shared,

    /// <summary>The next row is closer than c_a1: the front row takes all (case 3).</summary>
    FrontTakesAll,

    /// <summary>Studs welded to one plate: the farthest row takes all.</summary>
    WeldedFarthest,
}
