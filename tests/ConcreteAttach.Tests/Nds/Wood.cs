using ConcreteAttach.Materials;
using ConcreteAttach.Nds;
using UnitsNet;

namespace ConcreteAttach.Tests.Nds;

/// <summary>Short names for the wood of these tests.</summary>
internal static class Wood
{
    public static readonly ServiceConditions Plain = new();

    public static Length In(double value) => Length.FromInches(value);

    public static Pressure Psi(double value) => Pressure.FromPoundsForcePerSquareInch(value);

    public static WoodSpecies Gravity(double g) => new("wood of these tests", g, isSoftwood: true);

    public static ConcreteBearingMember Concrete(double embedment = 6) => new(Psi(2500), In(embedment));

    /// <summary>A bolt through a sill into concrete.</summary>
    public static WoodConnection Sill(double diameter, double gravity, double thickness, double angle, double embedment = 6, double gap = 0, bool rounded = true) =>
        new(new(DowelKind.Bolt, In(diameter)), Concrete(embedment), new WoodMember(Gravity(gravity), In(thickness), angle)) { IsRoundedAsPrinted = rounded, Gap = In(gap) };

    public static double Pounds(Force? force) => force!.Value.PoundsForce;

    public static double Reference(this WoodConnection connection) => Pounds(connection.Lateral(Plain).Reference);

    public static double Mode(this ConnectionStrength strength, YieldMode mode) => strength.Modes.Single(m => m.Mode == mode).Strength.PoundsForce;

    public static double Step(this ConnectionStrength strength, string id) => strength.Sheet.Find(id) ?? throw new InvalidOperationException($"No line {id}.");
}
