namespace ConcreteAttach.Tests.Nds;

/// <summary>
/// Independent reference for the yield modes: plastic limit analysis of a dowel, without modes. A beam with plastic moment M bears on each member with a distributed load
/// between −q and q; the most shear that any distribution in equilibrium carries over the plane between the members is the strength (static theorem).
/// </summary>
/// <remarks>
/// It is a linear program, and a chain: all that one cell passes on to the next is its shear and its moment. What a member can pass to the plane is therefore a convex polygon
/// in these two, and moving that polygon from cell to cell keeps every vertex of the program that matters. So the optimum is exact and needs no solver package: a general solver
/// of linear programs restores several hundred megabytes of native code.
/// </remarks>
internal static class DowelLimitAnalysis
{
    /// <summary>Share of the largest shear to which the strength is found.</summary>
    private const double Precision = 1e-12;

    /// <summary>
    /// Shear that one plane carries, lbf. In double shear the main member's half, with a symmetric middle. Cells are shorter toward the plane, where hinges form; the moment is
    /// held at their ends, so that the error falls with the square of their number.
    /// </summary>
    public static double Strength(double qm, double qs, double lm, double ls, double gap, double moment, bool isDoubleShear, int cells)
    {
        List<State> side = Reach(qs, ls, moment, freeEndMoment: 0, cells);
        List<State> main = Reach(qm, isDoubleShear ? lm / 2 : lm, moment, freeEndMoment: isDoubleShear ? moment : 0, cells);

        // From the free end of each member inward, shear and moment in one sense: the shears are equal, the moments change sign and the gap adds P g. The least sum of the moments is
        // convex in the shear and at most 0 at none, so that the largest shear with a sum of 0 is found by halving.
        double holds = 0, fails = Math.Min(side.Max(s => s.Shear), main.Max(s => s.Shear));
        if (Sum(fails) <= 0)
        {
            return fails;
        }

        while (fails - holds > Precision * fails)
        {
            double middle = (holds + fails) / 2;
            (holds, fails) = Sum(middle) <= 0 ? (middle, fails) : (holds, middle);
        }

        return holds;

        double Sum(double shear) => LeastMoment(side, shear) + LeastMoment(main, shear) + (shear * gap);
    }

    private readonly record struct State(double Shear, double Moment)
    {
        public State Plus(double sign, State other) => new(Shear + (sign * other.Shear), Moment + (sign * other.Moment));

        public double Cross(State other) => (Shear * other.Moment) - (Moment * other.Shear);
    }

    /// <summary>What a member can pass to the plane: vertices of a convex polygon, counterclockwise. A cell has constant load: V' = V + q h, M' = M + V h + q h² / 2.</summary>
    private static List<State> Reach(double strength, double length, double plastic, double freeEndMoment, int cells)
    {
        List<State> reach = [new(0, -freeEndMoment), new(0, freeEndMoment)];
        for (int i = cells; i > 0; i--)
        {
            double h = length * ((2 * i) - 1) / ((double)cells * cells);
            var load = new State(strength * h, strength * h * h / 2);
            reach = i == cells && freeEndMoment == 0
                ? Free(load, Math.Min(1, plastic / load.Moment))
                : Below(Below(Spread(reach.ConvertAll(s => s with { Moment = s.Moment + (s.Shear * h) }), load), plastic, 1), plastic, -1);
        }

        return reach;
    }

    /// <summary>The first cell from a free end: its load alone, as much of it as the moment permits.</summary>
    private static List<State> Free(State load, double share) => [new State(0, 0).Plus(-share, load), new State(0, 0).Plus(share, load)];

    /// <summary>The polygon moved by every share from −1 to 1 of a load: each vertex goes to the side that its edges look to, one between two sides to both.</summary>
    private static List<State> Spread(List<State> polygon, State load)
    {
        var spread = new List<State>(polygon.Count + 2);
        for (int i = 0; i < polygon.Count; i++)
        {
            double before = Side((i + polygon.Count - 1) % polygon.Count), after = Side(i);
            spread.Add(polygon[i].Plus(before, load));
            if (after != before)
            {
                spread.Add(polygon[i].Plus(after, load));
            }
        }

        return spread;

        double Side(int i) => polygon[(i + 1) % polygon.Count].Plus(-1, polygon[i]).Cross(load) < 0 ? 1 : -1;
    }

    /// <summary>The part of the polygon with a moment of at most the plastic one, in the sense of the sign.</summary>
    private static List<State> Below(List<State> polygon, double plastic, double sign)
    {
        var kept = new List<State>(polygon.Count + 1);
        for (int i = 0; i < polygon.Count; i++)
        {
            State a = polygon[i], b = polygon[(i + 1) % polygon.Count];
            double over = (sign * a.Moment) - plastic, next = (sign * b.Moment) - plastic;
            if (over <= 0)
            {
                kept.Add(a);
            }

            if ((over < 0 && next > 0) || (over > 0 && next < 0))
            {
                kept.Add(a.Plus(over / (over - next), b.Plus(-1, a)));
            }
        }

        return kept;
    }

    private static double LeastMoment(List<State> polygon, double shear)
    {
        double least = double.PositiveInfinity;
        for (int i = 0; i < polygon.Count; i++)
        {
            State a = polygon[i], b = polygon[(i + 1) % polygon.Count];
            double low = Math.Min(a.Shear, b.Shear), high = Math.Max(a.Shear, b.Shear);
            if (shear >= low && shear <= high)
            {
                least = Math.Min(least, high == low ? Math.Min(a.Moment, b.Moment) : a.Moment + ((shear - a.Shear) / (b.Shear - a.Shear) * (b.Moment - a.Moment)));
            }
        }

        return least;
    }
}
