using ConcreteAttach.Actions;
using ConcreteAttach.Actions.Asce7;
using UnitsNet;
using static ConcreteAttach.Samples.Shorthand;

namespace ConcreteAttach.Samples;

/// <summary>Demand by ASCE 7. All are invented.</summary>
internal static class DemandExamples
{
    public static Demand Wall()
    {
        #region wall-anchorage
        var wall = new WallAnchorage(
            Asce7Edition.Edition2016, designAcceleration: 1.0, weight: Kip(4.3))
        {
            FlexibleSpan = Length.FromFeet(60),
        };
        return wall.Anchorage();
        #endregion
    }

    public static Demand BaseShear()
    {
        #region base-shear
        var building = new EquivalentLateralForce(
            Asce7Edition.Edition2016, designAcceleration: 1.0, responseModification: 6.5,
            [new(Kip(24), Length.FromFeet(9)), new(Kip(15), Length.FromFeet(18))])
        {
            OneSecondAcceleration = 0.6,
        };
        return building.StoryShear(2, share: 0.5); // of one of two walls
        #endregion
    }

    public static CombinedLoadCase Combination()
    {
        #region combinations
        NominalLoad[] loads =
        [
            new(LoadKind.Dead) { Vy = Kip(-1.5) },
            new(LoadKind.RoofLive) { Vy = Kip(-0.8) },
            new(LoadKind.Wind) { N = Kip(1.1), Reverses = true },
            new(LoadKind.Earthquake) { N = Wall().Force },
        ];
        var combinations = new LoadCombinations(Asce7Edition.Edition2016)
        {
            DesignAcceleration = 1.0,
        };
        IEnumerable<CombinedLoadCase> cases = combinations.Strength(loads);
        return cases.Single(c => c.LoadCase.Name == "1.2D + Ev + Eh");
        #endregion
    }

    public static Demand Component()
    {
        #region component
        var cabinet = new Component2022(
            designAcceleration: 0.9, weight: Kip(0.8), resonance: 2.2, reserve: 1.5)
        {
            HeightRatio = 0.5,
            Period = Duration.FromSeconds(0.3),
            System = new(ResponseModification: 6.5, Overstrength: 3, ImportanceFactor: 1),
        };
        return cabinet.Force();
        #endregion
    }
}
