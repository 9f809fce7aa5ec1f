namespace ConcreteAttach.Quantities;

/// <summary>
/// A unit that the library reads and writes, as an exact multiple of the unit in which its system is printed
/// (in, lbf, psi, lbf-in or mm, N, MPa, N-mm).
/// </summary>
/// <remarks>
/// Conversions never pass through the metre: within a system they are ratios of whole numbers, between the systems one
/// exact factor. So 152.4 mm is 6 in to the last bit, and 1 ft is 12 in.
/// </remarks>
internal sealed record Unit(string Text, Dimension Dimension, MeasurementSystem System, double Multiple = 1, double Divisor = 1)
{
    /// <summary>Millimetres in 5 inches: 1 in = 25.4 mm exactly (international inch, 1959).</summary>
    private const double MillimetresPerFiveInches = 127;

    /// <summary>1 lbf in newtons, exact: 0.45359237 kg × 9.80665 m/s².</summary>
    internal const double NewtonsPerPoundForce = 4.4482216152605;

    /// <summary>1 psi in megapascals: 1 lbf / (25.4 mm)².</summary>
    internal const double MegapascalsPerPsi = 0.006894757293168361;

    /// <summary>1 lbf-in in newton-millimetres, exact.</summary>
    internal const double NewtonMillimetresPerPoundInch = 112.9848290276167;

    /// <summary>1 lb/ft³ in kg/m³: 0.45359237 / 0.3048³.</summary>
    internal const double KilogramsPerCubicMetrePerPcf = 16.018463373960142;

    public static readonly Unit Inch = new("in", Dimension.Length, MeasurementSystem.PoundInch);
    public static readonly Unit Foot = new("ft", Dimension.Length, MeasurementSystem.PoundInch, 12);
    public static readonly Unit Millimetre = new("mm", Dimension.Length, MeasurementSystem.NewtonMillimetre);
    public static readonly Unit Centimetre = new("cm", Dimension.Length, MeasurementSystem.NewtonMillimetre, 10);
    public static readonly Unit Metre = new("m", Dimension.Length, MeasurementSystem.NewtonMillimetre, 1000);

    public static readonly Unit SquareInch = new("in2", Dimension.Area, MeasurementSystem.PoundInch);
    public static readonly Unit SquareFoot = new("ft2", Dimension.Area, MeasurementSystem.PoundInch, 144);
    public static readonly Unit SquareMillimetre = new("mm2", Dimension.Area, MeasurementSystem.NewtonMillimetre);
    public static readonly Unit SquareCentimetre = new("cm2", Dimension.Area, MeasurementSystem.NewtonMillimetre, 100);
    public static readonly Unit SquareMetre = new("m2", Dimension.Area, MeasurementSystem.NewtonMillimetre, 1e6);

    public static readonly Unit PoundForce = new("lbf", Dimension.Force, MeasurementSystem.PoundInch);
    public static readonly Unit Kip = new("kip", Dimension.Force, MeasurementSystem.PoundInch, 1000);
    public static readonly Unit Newton = new("N", Dimension.Force, MeasurementSystem.NewtonMillimetre);
    public static readonly Unit Kilonewton = new("kN", Dimension.Force, MeasurementSystem.NewtonMillimetre, 1000);

    public static readonly Unit Psi = new("psi", Dimension.Stress, MeasurementSystem.PoundInch);
    public static readonly Unit Ksi = new("ksi", Dimension.Stress, MeasurementSystem.PoundInch, 1000);
    public static readonly Unit Kilopascal = new("kPa", Dimension.Stress, MeasurementSystem.NewtonMillimetre, 1, 1000);
    public static readonly Unit Megapascal = new("MPa", Dimension.Stress, MeasurementSystem.NewtonMillimetre);
    public static readonly Unit NewtonPerSquareMillimetre = new("N/mm2", Dimension.Stress, MeasurementSystem.NewtonMillimetre);
    public static readonly Unit Gigapascal = new("GPa", Dimension.Stress, MeasurementSystem.NewtonMillimetre, 1000);

    public static readonly Unit PoundForceInch = new("lbf-in", Dimension.Moment, MeasurementSystem.PoundInch);
    public static readonly Unit PoundForceFoot = new("lbf-ft", Dimension.Moment, MeasurementSystem.PoundInch, 12);
    public static readonly Unit KipInch = new("kip-in", Dimension.Moment, MeasurementSystem.PoundInch, 1000);
    public static readonly Unit KipFoot = new("kip-ft", Dimension.Moment, MeasurementSystem.PoundInch, 12000);
    public static readonly Unit NewtonMillimetre = new("N-mm", Dimension.Moment, MeasurementSystem.NewtonMillimetre);
    public static readonly Unit NewtonMetre = new("N-m", Dimension.Moment, MeasurementSystem.NewtonMillimetre, 1000);
    public static readonly Unit KilonewtonMetre = new("kN-m", Dimension.Moment, MeasurementSystem.NewtonMillimetre, 1e6);

    public static readonly Unit PoundForcePerInch = new("lbf/in", Dimension.ForcePerLength, MeasurementSystem.PoundInch);
    public static readonly Unit NewtonPerMillimetre = new("N/mm", Dimension.ForcePerLength, MeasurementSystem.NewtonMillimetre);

    public static readonly Unit PsiPerInch = new("psi/in", Dimension.StressPerLength, MeasurementSystem.PoundInch);
    public static readonly Unit MegapascalPerMillimetre = new("MPa/mm", Dimension.StressPerLength, MeasurementSystem.NewtonMillimetre);

    public static readonly Unit PoundPerCubicFoot = new("lb/ft3", Dimension.Density, MeasurementSystem.PoundInch);
    public static readonly Unit KilogramPerCubicMetre = new("kg/m3", Dimension.Density, MeasurementSystem.NewtonMillimetre);

    /// <summary>Every unit that is read, in the order in which an error lists them.</summary>
    public static readonly Unit[] All =
    [
        Inch, Foot, Millimetre, Centimetre, Metre,
        SquareInch, SquareFoot, SquareMillimetre, SquareCentimetre, SquareMetre,
        PoundForce, Kip, Newton, Kilonewton,
        Psi, Ksi, Kilopascal, Megapascal, NewtonPerSquareMillimetre, Gigapascal,
        KipFoot, KipInch, PoundForceFoot, PoundForceInch, KilonewtonMetre, NewtonMetre, NewtonMillimetre,
        PoundPerCubicFoot, KilogramPerCubicMetre,
    ];

    /// <summary>The unit in which a system's standards are printed; null for a pure number.</summary>
    public static Unit? Printed(Dimension dimension, MeasurementSystem system) => (dimension, system) switch
    {
        (Dimension.Length, MeasurementSystem.PoundInch) => Inch,
        (Dimension.Length, _) => Millimetre,
        (Dimension.Area, MeasurementSystem.PoundInch) => SquareInch,
        (Dimension.Area, _) => SquareMillimetre,
        (Dimension.Force, MeasurementSystem.PoundInch) => PoundForce,
        (Dimension.Force, _) => Newton,
        (Dimension.Stress, MeasurementSystem.PoundInch) => Psi,
        (Dimension.Stress, _) => Megapascal,
        (Dimension.Moment, MeasurementSystem.PoundInch) => PoundForceInch,
        (Dimension.Moment, _) => NewtonMillimetre,
        (Dimension.ForcePerLength, MeasurementSystem.PoundInch) => PoundForcePerInch,
        (Dimension.ForcePerLength, _) => NewtonPerMillimetre,
        (Dimension.StressPerLength, MeasurementSystem.PoundInch) => PsiPerInch,
        (Dimension.StressPerLength, _) => MegapascalPerMillimetre,
        (Dimension.Density, MeasurementSystem.PoundInch) => PoundPerCubicFoot,
        (Dimension.Density, _) => KilogramPerCubicMetre,
        _ => null,
    };

    /// <summary>The value of <paramref name="value"/> of this unit in the printed unit of <paramref name="system"/>.</summary>
    public double ToPrinted(double value, MeasurementSystem system)
    {
        double own = Divisor == 1 ? value * Multiple : value * Multiple / Divisor;
        if (system == System)
        {
            return own;
        }

        bool toMetric = system == MeasurementSystem.NewtonMillimetre;
        return Dimension switch
        {
            Dimension.Length => toMetric ? own * MillimetresPerFiveInches / 5 : own * 5 / MillimetresPerFiveInches,
            Dimension.Area => toMetric
                ? own * (MillimetresPerFiveInches * MillimetresPerFiveInches) / 25
                : own * 25 / (MillimetresPerFiveInches * MillimetresPerFiveInches),
            Dimension.Force => toMetric ? own * NewtonsPerPoundForce : own / NewtonsPerPoundForce,
            Dimension.Stress => toMetric ? own * MegapascalsPerPsi : own / MegapascalsPerPsi,
            Dimension.Moment => toMetric ? own * NewtonMillimetresPerPoundInch : own / NewtonMillimetresPerPoundInch,
            Dimension.ForcePerLength => toMetric ? own * NewtonsPerPoundForce * 5 / MillimetresPerFiveInches : own * MillimetresPerFiveInches / 5 / NewtonsPerPoundForce,
            Dimension.StressPerLength => toMetric ? own * MegapascalsPerPsi * 5 / MillimetresPerFiveInches : own * MillimetresPerFiveInches / 5 / MegapascalsPerPsi,
            Dimension.Density => toMetric ? own * KilogramsPerCubicMetrePerPcf : own / KilogramsPerCubicMetrePerPcf,
            _ => own,
        };
    }

    /// <summary>The value of <paramref name="value"/> of this unit in <paramref name="target"/>.</summary>
    public double To(double value, Unit target) =>
        ReferenceEquals(this, target) ? value : ToPrinted(value, target.System) * target.Divisor / target.Multiple;
}
