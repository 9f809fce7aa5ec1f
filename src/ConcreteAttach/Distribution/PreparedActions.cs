using ConcreteAttach.Actions;
using ConcreteAttach.Calculation;
using ConcreteAttach.Quantities;

namespace ConcreteAttach.Distribution;

/// <summary>
/// The actions of a load case, checked, in the units of the method and with bending moved to the centroid of the fasteners and torsion to the centre of those that take shear: what the fast path takes.
/// </summary>
public readonly struct PreparedActions
{
    private PreparedActions(double n, double vx, double vy, double mx, double my, double mz)
    {
        N = n;
        Vx = vx;
        Vy = vy;
        Mx = mx;
        My = my;
        Mz = mz;
    }

    internal double N { get; }

    internal double Vx { get; }

    internal double Vy { get; }

    internal double Mx { get; }

    internal double My { get; }

    internal double Mz { get; }

    /// <summary>The sustained part of the tension over all of it; 0 without.</summary>
    internal double SustainedShare { get; init; }

    /// <summary>Whether the design of which this load case is one includes sustained tension.</summary>
    internal bool IsSustainedDesign { get; init; }

    /// <summary>α of allowable stress design; 0 in strength design.</summary>
    internal double WeightedLoadFactor { get; init; }

    /// <summary>The earthquake's parts of the forces on the fasteners.</summary>
    internal EarthquakeShare Earthquake { get; init; }

    /// <summary>The same actions times a factor.</summary>
    /// <param name="factor">Factor on all forces and moments; any finite number.</param>
    /// <exception cref="InputException">The factor is not finite.</exception>
    public PreparedActions Scaled(double factor) => double.IsFinite(factor)
        ? new(factor * N, factor * Vx, factor * Vy, factor * Mx, factor * My, factor * Mz) 
        {
            SustainedShare = factor > 0 ? SustainedShare : 0,
            IsSustainedDesign = IsSustainedDesign,
            WeightedLoadFactor = WeightedLoadFactor,

            // Turned about, other fasteners are in tension: then the part is not known, and counts.
            Earthquake = factor > 0 || !Earthquake.IsPresent ? Earthquake : Earthquake with { Tension = double.PositiveInfinity },
        }
        : throw new InputException(nameof(factor), QuantityText.Format(factor), "a finite number");

    /// <summary>Moves the actions from where they act to the centroid, and for torsion to the shear centre: M + r × F.</summary>
    /// <exception cref="InputException">A moment or a shear that the fasteners cannot carry.</exception>
    internal static PreparedActions Of(LoadCase loadCase, FastenerDistribution distribution, MeasurementSystem system)
    {
        ElasticGroup group = distribution.Elastic;
        ShearGroup shear = distribution.Shear;
        double n = loadCase.N.In(system);
        double vx = loadCase.Vx.In(system);
        double vy = loadCase.Vy.In(system);
        double mx = loadCase.Mx.In(system);
        double my = loadCase.My.In(system);
        double mz = loadCase.Mz.In(system);
        double atX = loadCase.At.X.In(system);
        double atY = loadCase.At.Y.In(system);
        var silent = default(Sheet<PlainNumber>);
        (PlainNumber mxc, PlainNumber myc) = ElasticDistribution.BendingAtCentroid<PlainNumber>(silent, new(n), new(mx), new(my), new(group.ArmX(atX)), new(group.ArmY(atY)));
        double leverArms = 0;
        if (distribution.Lugs is { } lugs)
        {
            leverArms = (Math.Abs(vx) * lugs.ArmX) + (Math.Abs(vy) * lugs.ArmY);
            mxc = ElasticDistribution.BendingByY<PlainNumber>(silent, mxc, new(vy), new(lugs.ArmY), "");
            myc = ElasticDistribution.BendingByX<PlainNumber>(silent, myc, new(vx), new(lugs.ArmX), "");
        }

        (double torsionArmX, double torsionArmY) = distribution.Lugs is null ? (shear.ArmX(atX), shear.ArmY(atY)) : (group.ArmX(atX), group.ArmY(atY));
        PlainNumber mzc = ElasticDistribution.TorsionAtCentre<PlainNumber>(silent, new(vx), new(vy), new(mz), new(torsionArmX), new(torsionArmY));
        var actions = new PreparedActions(n, vx, vy, mxc.Value, myc.Value, mzc.Value);

        // Lever arms are differences of positions: their rounding is relative to the positions, not to the arm.
        double arm = Math.Abs(atX) + Math.Abs(atY) + Math.Abs(group.CentroidX) + Math.Abs(group.CentroidY) + group.Reach;
        if (distribution.Plate is null)
        {
            group.RequireCarried(actions.Mx, actions.My, Math.Abs(mx) + Math.Abs(my) + (Math.Abs(n) * arm) + leverArms, system);
        }

        if (distribution.Lugs is not null)
        {
            return actions;
        }

        shear.RequireCarried(vx, vy, actions.Mz, Math.Abs(mz) + ((Math.Abs(vx) + Math.Abs(vy)) * arm), system);
        return actions;
    }
}

/// <summary>The largest parts, over the fasteners, that the earthquake has in their tension and in their shear.</summary>
/// <param name="Tension">Part of the tension; 0 without tension.</param>
/// <param name="Shear">Part of the shear; 0 without shear.</param>
/// <param name="IsPresent">Whether the load case states an earthquake part that a design goes by.</param>
internal readonly record struct EarthquakeShare(double Tension, double Shear, bool IsPresent)
{
    /// <summary>Whether the earthquake's shear runs along a wood sill alone, whose bolts meet the building code's conditions.</summary>
    public bool IsAlongSill { get; init; }
}
