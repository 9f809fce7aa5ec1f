using ConcreteAttach.Aci318;
using ConcreteAttach.Materials;
using UnitsNet;

namespace ConcreteAttach.Samples;

/// <summary>Short names, so that the samples fit the width of a page.</summary>
internal static class Shorthand
{
    #region shorthand
    public static readonly Aci318Method Method = new(Aci318Edition.InchPound2019);

    public static Length In(double inches) => Length.FromInches(inches);

    public static Pressure Psi(double value) =>
        Pressure.FromPoundsForcePerSquareInch(value);

    public static Force Kip(double value) => Force.FromKilopoundsForce(value);

    public static Torque KipIn(double value) =>
        Torque.FromKilopoundForceInches(value);

    public static AnchorSteel Grade36(double inches) =>
        AnchorSteels.Find("ASTM F1554 Grade 36", In(inches));
    #endregion
}
