namespace ConcreteAttach.Actions;

/// <summary>What a load that is not yet factored comes from, by the letters of ASCE 7 chapter 2.</summary>
public enum LoadKind
{
    /// <summary>D: dead load.</summary>
    Dead,

    /// <summary>L: live load.</summary>
    Live,

    /// <summary>L_r: roof live load.</summary>
    RoofLive,

    /// <summary>S: snow load.</summary>
    Snow,

    /// <summary>R: rain load.</summary>
    Rain,

    /// <summary>W: wind load, at strength level.</summary>
    Wind,

    /// <summary>Q_E: effect of the horizontal earthquake forces, at strength level and without redundancy factor.</summary>
    Earthquake,
}
