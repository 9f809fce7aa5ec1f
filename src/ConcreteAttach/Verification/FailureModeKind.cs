using ConcreteAttach.Geometry;

namespace ConcreteAttach.Verification;

/// <summary>The ways in which an attachment can fail, and the rules of detailing that are checked beside them.</summary>
public enum FailureModeKind
{
    /// <summary>Tension: the fastener's steel.</summary>
    SteelTension,

    /// <summary>Tension: a cone of concrete breaks out.</summary>
    ConcreteBreakoutTension,

    /// <summary>Tension: the fastener pulls out.</summary>
    Pullout,

    /// <summary>Tension: the concrete beside a deep head bursts through the side face.</summary>
    SideFaceBlowout,

    /// <summary>Shear: the fastener's steel.</summary>
    SteelShear,

    /// <summary>Shear toward an edge: the concrete in front of the fasteners breaks out.</summary>
    ConcreteBreakoutShear,

    /// <summary>Shear along an edge: the concrete between the fasteners and the edge breaks out.</summary>
    ConcreteBreakoutParallel,

    /// <summary>Shear: the concrete behind the fasteners is pried out.</summary>
    Pryout,

    /// <summary>Shear: pryout of the most loaded fastener alone.</summary>
    PryoutOfFastener,

    /// <summary>Tension and shear together.</summary>
    Interaction,

    /// <summary>Compression on fasteners under a plate that stands off the concrete.</summary>
    StandOffCompression,

    /// <summary>Least spacing of the fasteners.</summary>
    Spacing,

    /// <summary>Least distance of the fasteners from an edge.</summary>
    EdgeDistance,

    /// <summary>Least thickness of the member.</summary>
    Thickness,
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
            FailureModeKind.ConcreteBreakoutTension => "tension/breakout",
            FailureModeKind.Pullout => "tension/pullout",
            FailureModeKind.SideFaceBlowout => "tension/blowout",
            FailureModeKind.SteelShear => "shear/steel",
            FailureModeKind.ConcreteBreakoutShear => "shear/breakout",
            FailureModeKind.ConcreteBreakoutParallel => "shear/parallel",
            FailureModeKind.Pryout => "shear/pryout",
            FailureModeKind.PryoutOfFastener => "shear/pryout/fastener",
            FailureModeKind.Interaction => "interaction",
            FailureModeKind.StandOffCompression => "compression/stand-off",
            FailureModeKind.Spacing => "detailing/spacing",
            FailureModeKind.EdgeDistance => "detailing/edge",
            _ => "detailing/thickness",
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
            FailureModeKind.ConcreteBreakoutTension => "Concrete breakout in tension",
            FailureModeKind.Pullout => "Pullout in tension",
            FailureModeKind.SideFaceBlowout => $"Side-face blowout in tension at {edge}",
            FailureModeKind.SteelShear => "Steel strength in shear",
            FailureModeKind.ConcreteBreakoutShear => $"Concrete breakout in shear toward {edge}",
            FailureModeKind.ConcreteBreakoutParallel => $"Concrete breakout in shear along {edge}",
            FailureModeKind.Pryout => "Concrete pryout in shear",
            FailureModeKind.PryoutOfFastener => "Concrete pryout in shear of the most loaded fastener",
            FailureModeKind.Interaction => "Tension and shear together",
            FailureModeKind.StandOffCompression => "Compression of the fasteners at a stand-off",
            FailureModeKind.Spacing => "Spacing of the fasteners",
            FailureModeKind.EdgeDistance => "Edge distance",
            _ => "Thickness of the member",
        };
    }

    /// <summary>True for the rules of detailing, which do not depend on the load.</summary>
    public static bool IsDetailing(FailureModeKind kind) => kind >= FailureModeKind.Spacing;
}
