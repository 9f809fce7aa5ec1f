using Google.OrTools.LinearSolver;

namespace ConcreteAttach.Tests.Nds;

/// <summary>
/// Independent reference for the yield modes: plastic limit analysis of a dowel as a linear program, without modes. A beam with plastic moment M bears on each member with a
/// distributed load between −q and q; the most shear that any distribution in equilibrium carries over the plane between the members is the strength (static theorem).
/// </summary>
internal static class DowelLimitAnalysis
{
    /// <summary>
    /// Shear that one plane carries, lbf. In double shear the main member's half, with a symmetric middle. Cells are shorter toward the plane, where hinges form; the moment is
    /// held at their ends, so that the error falls with the square of their number.
    /// </summary>
    public static double Strength(double qm, double qs, double lm, double ls, double gap, double moment, bool isDoubleShear, int cells)
    {
        using Solver solver = Solver.CreateSolver("GLOP");
        Variable p = solver.MakeNumVar(0, double.PositiveInfinity, "P");
        Member side = Build(solver, qs, ls, moment, freeEndMoment: 0, cells);
        Member main = Build(solver, qm, isDoubleShear ? lm / 2 : lm, moment, freeEndMoment: isDoubleShear ? moment : 0, cells);

        // From the free end of each member inward, shear and moment in one sense: the shears are equal, the moments change sign and the gap adds P g.
        solver.Add(side.Shear == p);
        solver.Add(main.Shear == p);
        solver.Add(side.Moment + main.Moment + (p * gap) == 0);
        solver.Maximize(p);
        return solver.Solve() == Solver.ResultStatus.OPTIMAL ? solver.Objective().Value() : throw new InvalidOperationException("No optimum.");
    }

    private sealed record Member(Variable Shear, Variable Moment);

    /// <summary>Shear and moment at the plane, from cells with constant load: V' = V + q h, M' = M + V h + q h² / 2.</summary>
    private static Member Build(Solver solver, double strength, double length, double plastic, double freeEndMoment, int cells)
    {
        Variable shear = solver.MakeNumVar(0, 0, "");
        Variable moment = solver.MakeNumVar(-freeEndMoment, freeEndMoment, "");
        for (int i = cells; i > 0; i--)
        {
            double h = length * ((2 * i) - 1) / ((double)cells * cells);
            Variable q = solver.MakeNumVar(-strength, strength, "");
            Variable nextShear = solver.MakeNumVar(double.NegativeInfinity, double.PositiveInfinity, "");
            Variable nextMoment = solver.MakeNumVar(-plastic, plastic, "");
            solver.Add(nextShear == shear + (q * h));
            solver.Add(nextMoment == moment + (shear * h) + (q * (h * h / 2)));
            shear = nextShear;
            moment = nextMoment;
        }

        return new(shear, moment);
    }
}
