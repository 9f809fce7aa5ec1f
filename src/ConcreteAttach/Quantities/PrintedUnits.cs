using UnitsNet;
using UnitsNet.Units;

namespace ConcreteAttach.Quantities;

/// <summary>
/// The border between UnitsNet and the plain numbers of the methods: each quantity is converted once, by the exact factors of
/// <see cref="Unit"/>; a unit outside that table goes through UnitsNet's own typed conversion.
/// </summary>
internal static class PrintedUnits
{
    public static double In(this Length length, MeasurementSystem system) =>
        UnitOf(length.Unit) is { } unit ? unit.ToPrinted(length.Value, system) : Unit.Millimetre.ToPrinted(length.Millimeters, system);

    public static double In(this Area area, MeasurementSystem system) =>
        UnitOf(area.Unit) is { } unit ? unit.ToPrinted(area.Value, system) : Unit.SquareMillimetre.ToPrinted(area.SquareMillimeters, system);

    public static double In(this Force force, MeasurementSystem system) =>
        UnitOf(force.Unit) is { } unit ? unit.ToPrinted(force.Value, system) : Unit.Newton.ToPrinted(force.Newtons, system);

    public static double In(this Pressure pressure, MeasurementSystem system) =>
        UnitOf(pressure.Unit) is { } unit ? unit.ToPrinted(pressure.Value, system) : Unit.Megapascal.ToPrinted(pressure.Megapascals, system);

    public static double In(this Torque moment, MeasurementSystem system) =>
        UnitOf(moment.Unit) is { } unit ? unit.ToPrinted(moment.Value, system) : Unit.NewtonMillimetre.ToPrinted(moment.NewtonMillimeters, system);

    public static double In(this Density density, MeasurementSystem system) =>
        UnitOf(density.Unit) is { } unit ? unit.ToPrinted(density.Value, system) : Unit.KilogramPerCubicMetre.ToPrinted(density.KilogramsPerCubicMeter, system);

    public static Length Length(double value, MeasurementSystem system) =>
        system == MeasurementSystem.PoundInch ? UnitsNet.Length.FromInches(value) : UnitsNet.Length.FromMillimeters(value);

    public static Area Area(double value, MeasurementSystem system) =>
        system == MeasurementSystem.PoundInch ? UnitsNet.Area.FromSquareInches(value) : UnitsNet.Area.FromSquareMillimeters(value);

    public static Force Force(double value, MeasurementSystem system) =>
        system == MeasurementSystem.PoundInch ? UnitsNet.Force.FromPoundsForce(value) : UnitsNet.Force.FromNewtons(value);

    public static Torque Moment(double value, MeasurementSystem system) =>
        system == MeasurementSystem.PoundInch ? Torque.FromPoundForceInches(value) : Torque.FromNewtonMillimeters(value);

    public static Pressure Pressure(double value, MeasurementSystem system) =>
        system == MeasurementSystem.PoundInch ? UnitsNet.Pressure.FromPoundsForcePerSquareInch(value) : UnitsNet.Pressure.FromMegapascals(value);

    internal static Unit? UnitOf(LengthUnit unit) => unit switch
    {
        LengthUnit.Inch => Unit.Inch,
        LengthUnit.Foot => Unit.Foot,
        LengthUnit.Millimeter => Unit.Millimetre,
        LengthUnit.Centimeter => Unit.Centimetre,
        LengthUnit.Meter => Unit.Metre,
        _ => null,
    };

    internal static Unit? UnitOf(AreaUnit unit) => unit switch
    {
        AreaUnit.SquareInch => Unit.SquareInch,
        AreaUnit.SquareFoot => Unit.SquareFoot,
        AreaUnit.SquareMillimeter => Unit.SquareMillimetre,
        AreaUnit.SquareCentimeter => Unit.SquareCentimetre,
        AreaUnit.SquareMeter => Unit.SquareMetre,
        _ => null,
    };

    internal static Unit? UnitOf(ForceUnit unit) => unit switch
    {
        ForceUnit.PoundForce => Unit.PoundForce,
        ForceUnit.KilopoundForce => Unit.Kip,
        ForceUnit.Newton => Unit.Newton,
        ForceUnit.Kilonewton => Unit.Kilonewton,
        _ => null,
    };

    internal static Unit? UnitOf(PressureUnit unit) => unit switch
    {
        PressureUnit.PoundForcePerSquareInch => Unit.Psi,
        PressureUnit.KilopoundForcePerSquareInch => Unit.Ksi,
        PressureUnit.Kilopascal => Unit.Kilopascal,
        PressureUnit.Megapascal => Unit.Megapascal,
        PressureUnit.NewtonPerSquareMillimeter => Unit.NewtonPerSquareMillimetre,
        PressureUnit.Gigapascal => Unit.Gigapascal,
        _ => null,
    };

    internal static Unit? UnitOf(TorqueUnit unit) => unit switch
    {
        TorqueUnit.PoundForceInch => Unit.PoundForceInch,
        TorqueUnit.PoundForceFoot => Unit.PoundForceFoot,
        TorqueUnit.KilopoundForceInch => Unit.KipInch,
        TorqueUnit.KilopoundForceFoot => Unit.KipFoot,
        TorqueUnit.NewtonMillimeter => Unit.NewtonMillimetre,
        TorqueUnit.NewtonMeter => Unit.NewtonMetre,
        TorqueUnit.KilonewtonMeter => Unit.KilonewtonMetre,
        _ => null,
    };

    internal static Unit? UnitOf(DensityUnit unit) => unit switch
    {
        DensityUnit.PoundPerCubicFoot => Unit.PoundPerCubicFoot,
        DensityUnit.KilogramPerCubicMeter => Unit.KilogramPerCubicMetre,
        _ => null,
    };
}
