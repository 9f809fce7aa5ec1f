using ConcreteAttach.Geometry;

namespace ConcreteAttach.Verification;

/// <summary>The ways in which an attachment can fail, and the rules of detailing that are checked beside them.</summary>
public enum FailureModeKind
{
    /// <summary>Tension: the fastener's steel.</summary>
    SteelTension,

    /// <summary>Tension: anchor reinforcement in place of breakout yields.</summary>
    ReinforcementTension,

    /// <summary>Tension: a cone of concrete breaks out.</summary>
    ConcreteBreakoutTension,

    /// <summary>Tension: the fastener pulls out.</summary>
    Pullout,

    /// <summary>Tension: the concrete beside a deep head bursts through the side face.</summary>
    SideFaceBlowout,

    /// <summary>Tension: an adhesive fastener comes out of its bond.</summary>
    Bond,

    /// <summary>Tension that stays: an adhesive fastener creeps in its bond.</summary>
    BondSustained,

    /// <summary>Shear: the fastener's steel.</summary>
    SteelShear,

    /// <summary>Shear toward an edge: anchor reinforcement in place of breakout yields.</summary>
    ReinforcementShear,

    /// <summary>Shear toward an edge: the concrete in front of the fasteners breaks out.</summary>
    ConcreteBreakoutShear,

    /// <summary>Shear along an edge: the concrete between the fasteners and the edge breaks out.</summary>
    ConcreteBreakoutParallel,

    /// <summary>Shear: the concrete behind the fasteners is pried out.</summary>
    Pryout,

    /// <summary>Shear: pryout of the most loaded fastener alone.</summary>
    PryoutOfFastener,

    /// <summary>Shear: the concrete on which a shear lug bears.</summary>
    ShearLugBearing,

    /// <summary>Shear toward an edge: the concrete in front of a shear lug breaks out.</summary>
    ShearLugBreakout,

    /// <summary>Shear along an edge: the concrete between shear lugs and the edge breaks out.</summary>
    ShearLugParallel,

    /// <summary>Torsion on shear lugs.</summary>
    ShearLugTorsion,

    /// <summary>How deep the anchors in tension are set for the depth of a shear lug.</summary>
    ShearLugDepth,

    /// <summary>How deep the anchors in tension are set for their distance from a shear lug.</summary>
    ShearLugDistance,

    /// <summary>Tension and shear together.</summary>
    Interaction,

    /// <summary>Tension and shear together in the fastener's steel, a check of its own in ACI 318-25.</summary>
    InteractionOfSteel,

    /// <summary>Compression on fasteners under a plate that stands off the concrete.</summary>
    StandOffCompression,

    /// <summary>Which option of 17.10.5.3 stands behind earthquake tension, and whether it is open.</summary>
    EarthquakeTension,

    /// <summary>Which option of 17.10.6.3 stands behind earthquake shear.</summary>
    EarthquakeShear,

    /// <summary>Wood: the fastener presses into its members, turns or bends.</summary>
    WoodYield,

    /// <summary>Wood: the fastener is pulled out of the wood along its axis.</summary>
    WoodWithdrawal,

    /// <summary>Wood: the head is pulled through the wood.</summary>
    WoodPullThrough,

    /// <summary>Wood: a washer crushes the wood under it.</summary>
    WoodBearing,

    /// <summary>Wood: lateral load and withdrawal together.</summary>
    WoodCombined,

    /// <summary>Least spacing of the fasteners.</summary>
    Spacing,

    /// <summary>Least distance of the fasteners from an edge.</summary>
    EdgeDistance,

    /// <summary>Least thickness of the member.</summary>
    Thickness,

    /// <summary>Anchor reinforcement for tension: where it stands, and its development.</summary>
    ReinforcementTensionDetailing,

    /// <summary>Anchor reinforcement for shear toward an edge: where it lies, and its development.</summary>
    ReinforcementShearDetailing,
    /// <summary>Shear lugs: the number of anchors.</summary>
    ShearLugAnchors,

    /// <summary>Shear lugs: the base plate that they are welded to.</summary>
    ShearLugPlate,

    /// <summary>Shear lugs: the length of their stiffeners.</summary>
    ShearLugStiffeners,

    /// <summary>Minimum bond stress of a table: age of the concrete at installation.</summary>
    BondAge,

    /// <summary>Minimum bond stress of a table: temperature at installation and in service.</summary>
    BondTemperature,

    /// <summary>Minimum bond stress of a table: moisture of the concrete.</summary>
    BondMoisture,

    /// <summary>Minimum bond stress of a table: how the hole is drilled.</summary>
    BondDrilling,

    /// <summary>Minimum bond stress of a table: strength of the concrete.</summary>
    BondStrength,

    /// <summary>Earthquake: no plastic hinge where the fasteners stand.</summary>
    EarthquakeHinge,

    /// <summary>Earthquake: post-installed fasteners are qualified for it.</summary>
    EarthquakeQualification,

    /// <summary>Earthquake: the bars of anchor reinforcement.</summary>
    EarthquakeReinforcement,

    /// <summary>Earthquake, ductile steel: the steel counts as ductile.</summary>
    EarthquakeSteel,

    /// <summary>Earthquake, ductile steel: the length that can stretch.</summary>
    EarthquakeStretch,

    /// <summary>Earthquake, ductile steel: no buckling where the load reverses.</summary>
    EarthquakeBuckling,

    /// <summary>Earthquake, ductile steel: the threads do not break before the shank yields.</summary>
    EarthquakeThreads,

    /// <summary>Bolts of a wood sill under earthquake: thickness of the sill.</summary>
    SillThickness,

    /// <summary>Bolts of a wood sill under earthquake: their diameter.</summary>
    SillDiameter,

    /// <summary>Bolts of a wood sill under earthquake: their embedment.</summary>
    SillEmbedment,

    /// <summary>Bolts of a wood sill under earthquake: distance to the edge along the sill.</summary>
    SillEdge,

    /// <summary>Bolts of a wood sill under earthquake: distance to an edge across the sill.</summary>
    SillEnd,

    /// <summary>Bolts of a wood sill under earthquake: the wood decides their strength along it.</summary>
    SillStrength,

    /// <summary>Wood: least distances and spacings of the fasteners.</summary>
    WoodPlacement,
}

/// <summary>The stable ids of failure modes.</summary>
internal static class FailureModeIds
{
    /// <summary>The path of a mode without a number: <c>tension/breakout</c>, <c>shear/breakout/+x</c>.</summary>
    public static string Path(FailureModeKind kind, ConcreteSide side)
    {
        string path = kind switch
        {
            FailureModeKind.SteelTension => "tension/steel",
            FailureModeKind.ReinforcementTension => "tension/reinforcement",
            FailureModeKind.ConcreteBreakoutTension => "tension/breakout",
            FailureModeKind.Pullout => "tension/pullout",
            FailureModeKind.SideFaceBlowout => "tension/blowout",
            FailureModeKind.Bond => "tension/bond",
            FailureModeKind.BondSustained => "tension/bond/sustained",
            FailureModeKind.SteelShear => "shear/steel",
            FailureModeKind.ReinforcementShear => "shear/reinforcement",
            FailureModeKind.ConcreteBreakoutShear => "shear/breakout",
            FailureModeKind.ConcreteBreakoutParallel => "shear/parallel",
            FailureModeKind.Pryout => "shear/pryout",
            FailureModeKind.PryoutOfFastener => "shear/pryout/fastener",
            FailureModeKind.ShearLugBearing => "shear/lug/bearing",
            FailureModeKind.ShearLugBreakout => "shear/lug/breakout",
            FailureModeKind.ShearLugParallel => "shear/lug/parallel",
            FailureModeKind.ShearLugTorsion => "shear/lug/torsion",
            FailureModeKind.ShearLugDepth => "shear/lug/depth",
            FailureModeKind.ShearLugDistance => "shear/lug/distance",
            FailureModeKind.Interaction => "interaction",
            FailureModeKind.InteractionOfSteel => "interaction/steel",
            FailureModeKind.StandOffCompression => "compression/stand-off",
            FailureModeKind.WoodYield => "wood/yield",
            FailureModeKind.WoodWithdrawal => "wood/withdrawal",
            FailureModeKind.WoodPullThrough => "wood/pull-through",
            FailureModeKind.WoodBearing => "wood/bearing",
            FailureModeKind.WoodCombined => "wood/combined",
            FailureModeKind.SillThickness => "detailing/earthquake/sill/thickness",
            FailureModeKind.SillDiameter => "detailing/earthquake/sill/diameter",
            FailureModeKind.SillEmbedment => "detailing/earthquake/sill/embedment",
            FailureModeKind.SillEdge => "detailing/earthquake/sill/edge",
            FailureModeKind.SillEnd => "detailing/earthquake/sill/end",
            FailureModeKind.SillStrength => "detailing/earthquake/sill/strength",
            FailureModeKind.WoodPlacement => "detailing/wood/placement",
            FailureModeKind.Spacing => "detailing/spacing",
            FailureModeKind.EdgeDistance => "detailing/edge",
            FailureModeKind.Thickness => "detailing/thickness",
            FailureModeKind.ReinforcementTensionDetailing => "detailing/reinforcement/tension",
            FailureModeKind.ReinforcementShearDetailing => "detailing/reinforcement/shear",
            FailureModeKind.ShearLugAnchors => "detailing/lug/anchors",
            FailureModeKind.ShearLugPlate => "detailing/lug/plate",
            FailureModeKind.ShearLugStiffeners => "detailing/lug/stiffeners",
            FailureModeKind.BondAge => "detailing/bond/age",
            FailureModeKind.BondTemperature => "detailing/bond/temperature",
            FailureModeKind.BondMoisture => "detailing/bond/moisture",
            FailureModeKind.BondDrilling => "detailing/bond/drilling",
            FailureModeKind.EarthquakeTension => "earthquake/tension",
            FailureModeKind.EarthquakeShear => "earthquake/shear",
            FailureModeKind.EarthquakeHinge => "detailing/earthquake/hinge",
            FailureModeKind.EarthquakeQualification => "detailing/earthquake/qualification",
            FailureModeKind.EarthquakeReinforcement => "detailing/earthquake/reinforcement",
            FailureModeKind.EarthquakeSteel => "detailing/earthquake/steel",
            FailureModeKind.EarthquakeStretch => "detailing/earthquake/stretch",
            FailureModeKind.EarthquakeBuckling => "detailing/earthquake/buckling",
            FailureModeKind.EarthquakeThreads => "detailing/earthquake/threads",
            _ => "detailing/bond/strength",
        };
        return side == ConcreteSide.None ? path : $"{path}/{side}";
    }

    /// <summary>What a mode is called in a heading.</summary>
    public static string Title(FailureModeKind kind, ConcreteSide side)
    {
        string edge = side.Words();
        return kind switch
        {
            FailureModeKind.SteelTension => "Steel strength in tension",
            FailureModeKind.ReinforcementTension => "Anchor reinforcement in tension",
            FailureModeKind.ConcreteBreakoutTension => "Concrete breakout in tension",
            FailureModeKind.Pullout => "Pullout in tension",
            FailureModeKind.SideFaceBlowout => $"Side-face blowout in tension at {edge}",
            FailureModeKind.Bond => "Bond in tension",
            FailureModeKind.BondSustained => "Bond in sustained tension",
            FailureModeKind.SteelShear => "Steel strength in shear",
            FailureModeKind.ReinforcementShear => $"Anchor reinforcement in shear toward {edge}",
            FailureModeKind.ConcreteBreakoutShear => $"Concrete breakout in shear toward {edge}",
            FailureModeKind.ConcreteBreakoutParallel => $"Concrete breakout in shear along {edge}",
            FailureModeKind.Pryout => "Concrete pryout in shear",
            FailureModeKind.PryoutOfFastener => "Concrete pryout in shear of the most loaded fastener",
            FailureModeKind.ShearLugBearing => "Bearing of the shear lug",
            FailureModeKind.ShearLugBreakout => $"Concrete breakout of the shear lug toward {edge}",
            FailureModeKind.ShearLugParallel => $"Concrete breakout of the shear lug along {edge}",
            FailureModeKind.ShearLugTorsion => "Torsion on the shear lug",
            FailureModeKind.ShearLugDepth => "Depth of the anchors below the shear lug",
            FailureModeKind.ShearLugDistance => "Distance of the anchors from the shear lug",
            FailureModeKind.Interaction => "Tension and shear together",
            FailureModeKind.InteractionOfSteel => "Tension and shear together in the steel",
            FailureModeKind.StandOffCompression => "Compression of the fasteners at a stand-off",
            FailureModeKind.WoodYield => "Yield of the fastener in its members",
            FailureModeKind.WoodWithdrawal => "Withdrawal from the wood",
            FailureModeKind.WoodPullThrough => "Head pulled through the wood",
            FailureModeKind.WoodBearing => "Bearing of the washer on the wood",
            FailureModeKind.WoodCombined => "Lateral load and withdrawal together",
            FailureModeKind.SillThickness => "Wood sill under earthquake: thickness",
            FailureModeKind.SillDiameter => "Wood sill under earthquake: diameter of the bolts",
            FailureModeKind.SillEmbedment => "Wood sill under earthquake: embedment of the bolts",
            FailureModeKind.SillEdge => "Wood sill under earthquake: edge along the sill",
            FailureModeKind.SillEnd => "Wood sill under earthquake: edges across the sill",
            FailureModeKind.SillStrength => "Wood sill under earthquake: strength by the wood standard",
            FailureModeKind.WoodPlacement => "Placement of the fasteners in the wood",
            FailureModeKind.Spacing => "Spacing of the fasteners",
            FailureModeKind.EdgeDistance => "Edge distance",
            FailureModeKind.Thickness => "Thickness of the member",
            FailureModeKind.ReinforcementTensionDetailing => "Anchor reinforcement for tension: place and development",
            FailureModeKind.ReinforcementShearDetailing => $"Anchor reinforcement for shear toward {edge}: place and development",
            FailureModeKind.ShearLugAnchors => "Shear lug: number of anchors",
            FailureModeKind.ShearLugPlate => "Shear lug: base plate",
            FailureModeKind.ShearLugStiffeners => "Shear lug: length of the stiffeners",
            FailureModeKind.BondAge => "Minimum bond stress: age of the concrete",
            FailureModeKind.BondTemperature => "Minimum bond stress: temperature",
            FailureModeKind.BondMoisture => "Minimum bond stress: moisture",
            FailureModeKind.BondDrilling => "Minimum bond stress: drilling",
            FailureModeKind.EarthquakeTension => "Earthquake tension",
            FailureModeKind.EarthquakeShear => "Earthquake shear",
            FailureModeKind.EarthquakeHinge => "Earthquake: plastic hinges",
            FailureModeKind.EarthquakeQualification => "Earthquake: qualification of the product",
            FailureModeKind.EarthquakeReinforcement => "Earthquake: bars of the anchor reinforcement",
            FailureModeKind.EarthquakeSteel => "Ductile steel for earthquake: the steel",
            FailureModeKind.EarthquakeStretch => "Ductile steel for earthquake: stretch length",
            FailureModeKind.EarthquakeBuckling => "Ductile steel for earthquake: buckling",
            FailureModeKind.EarthquakeThreads => "Ductile steel for earthquake: threads",
            _ => "Minimum bond stress: strength of the concrete",
        };
    }

    /// <summary>True for the modes in tension that take part in the interaction with shear.</summary>
    public static bool IsTension(FailureModeKind kind) => kind <= FailureModeKind.Bond;

    /// <summary>True for the modes in tension that the concrete decides: those that earthquake lowers (17.10.5.4), and that steel has to be weaker than to be ductile.</summary>
    public static bool IsConcreteTension(FailureModeKind kind) => kind is >= FailureModeKind.ConcreteBreakoutTension and <= FailureModeKind.Bond;

    /// <summary>True for the modes in shear.</summary>
    public static bool IsShear(FailureModeKind kind) => kind is >= FailureModeKind.SteelShear and <= FailureModeKind.ShearLugTorsion;

    /// <summary>True for the modes in shear of the fasteners: those that take part in the interaction with tension.</summary>
    public static bool IsShearOfFasteners(FailureModeKind kind) => kind is >= FailureModeKind.SteelShear and <= FailureModeKind.PryoutOfFastener;

    /// <summary>True for rules that decide without a utilization, so that no load factor mends them.</summary>
    public static bool IsRule(FailureModeKind kind) =>
        IsDetailing(kind) || kind is FailureModeKind.EarthquakeTension or FailureModeKind.ShearLugDepth or FailureModeKind.ShearLugDistance;

    /// <summary>True for the modes that take part in no interaction of ACI 318: sustained tension of a bond, and the wood's.</summary>
    public static bool StandsAlone(FailureModeKind kind) => kind is FailureModeKind.BondSustained or (>= FailureModeKind.WoodYield and <= FailureModeKind.WoodCombined);

    /// <summary>True for the rules of detailing, which do not depend on the load.</summary>
    public static bool IsDetailing(FailureModeKind kind) => kind >= FailureModeKind.Spacing;

    /// <summary>Whether it is a rule of 17.10 that the option for tension brings, or that holds for all.</summary>
    public static bool IsEarthquakeRule(FailureModeKind kind) => kind is >= FailureModeKind.EarthquakeHinge and <= FailureModeKind.EarthquakeThreads;
}
