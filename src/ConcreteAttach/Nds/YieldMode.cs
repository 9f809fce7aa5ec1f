namespace ConcreteAttach.Nds;

/// <summary>Yield modes of a dowel (NDS-2018 Appendix I, Table 12.3.1A).</summary>
public enum YieldMode
{
    /// <summary>Im: the main member crushes.</summary>
    MainBearing,

    /// <summary>Is: the side member crushes.</summary>
    SideBearing,

    /// <summary>II: the dowel turns as a rigid body in both members; not in double shear.</summary>
    Rotation,

    /// <summary>IIIm: one plastic hinge, the main member crushes; not in double shear.</summary>
    HingeAndMainBearing,

    /// <summary>IIIs: one plastic hinge at each shear plane, the side member crushes.</summary>
    HingeAndSideBearing,

    /// <summary>IV: two plastic hinges at each shear plane.</summary>
    TwoHinges,
}
