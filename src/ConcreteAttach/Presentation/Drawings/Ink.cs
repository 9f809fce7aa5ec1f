namespace ConcreteAttach.Presentation.Drawings;

/// <summary>What a line or an area is drawn with. The order is the order of drawing: what stands later lies on top.</summary>
internal enum Ink
{
    ConcreteFill,
    AreaFill,
    ContactFill,
    ContactHatch,
    Grid,
    Extension,
    Dimension,
    Tick,
    Break,
    Plate,
    AreaOutline,
    SecondAreaOutline,
    Cone,
    NeutralLine,
    Edge,
    BarFill,
    WarningFill,
    WarningHatch,
    BarOutline,
    Reinforcement,
    ReinforcementEnd,
    Axis,
    CurveOne,
    CurveTwo,
    CurveThree,
    CurveFour,
    CurveFive,
    CurveSix,
    LimitLine,
    Envelope,
    OpenFastener,
    Steel,
    ForceLine,
    ForceHead,
    PointMark,
    LeaderLine,
}

/// <summary>The look of each ink, as attributes of an SVG path.</summary>
internal static class Inks
{
    /// <summary>The one accent colour, that of the icon. Wherever it is used, a dash, a hatch or a bold label says the same without colour.</summary>
    public const string Accent = "#9b3420";

    public static string Attributes(Ink ink) => ink switch
    {
        Ink.ConcreteFill => "fill=\"#f2f2f0\" fill-rule=\"evenodd\"",
        Ink.AreaFill => $"fill=\"{Accent}\" fill-opacity=\".13\"",
        Ink.ContactFill => "fill=\"#fff\" fill-opacity=\".55\"",
        Ink.ContactHatch => Line(0.7, "#000"),
        Ink.Grid => Line(0.5, "#bbb"),
        Ink.Extension => Line(0.5, "#777"),
        Ink.Dimension => Line(0.7, "#000"),
        Ink.Tick => Line(1.3, "#000"),
        Ink.Break => Line(0.8, "#000"),
        Ink.Plate => Line(1.2, "#000"),
        Ink.AreaOutline or Ink.Cone => Line(1.5, Accent, "7 4"),
        Ink.SecondAreaOutline => Line(1.3, "#000", "9 3 2 3"),
        Ink.NeutralLine => Line(1.2, "#000", "12 3 2 3"),
        Ink.Edge => Line(2.4, "#000"),
        Ink.BarFill => "fill=\"#8a8a86\"",
        Ink.WarningFill => $"fill=\"{Accent}\"",
        Ink.WarningHatch => Line(1.2, "#fff"),
        Ink.BarOutline => Line(0.8, "#000"),
        Ink.Reinforcement => Line(2.2, "#777"),
        Ink.ReinforcementEnd => "fill=\"#777\"",
        Ink.Axis => Line(1, "#000"),
        Ink.CurveOne => Line(1.3, "#000"),
        Ink.CurveTwo => Line(1.3, "#000", "8 3"),
        Ink.CurveThree => Line(1.3, "#000", "2 3"),
        Ink.CurveFour => Line(1.3, "#000", "9 3 2 3"),
        Ink.CurveFive => Line(1.3, "#666"),
        Ink.CurveSix => Line(1.3, "#666", "5 3"),
        Ink.LimitLine => Line(1.6, Accent),
        Ink.Envelope => Line(3, Accent),
        Ink.OpenFastener => "fill=\"#fff\" stroke=\"#000\" stroke-width=\"1.3\"",
        Ink.Steel or Ink.PointMark => "fill=\"#000\"",
        Ink.ForceLine => Line(1.9, Accent),
        Ink.ForceHead => $"fill=\"{Accent}\"",
        Ink.LeaderLine => Line(0.5, "#000"),
        _ => throw new InvalidOperationException("An ink without a look."),
    };

    private static string Line(double width, string colour, string? dashes = null)
    {
        string dashed = dashes is null ? "" : $" stroke-dasharray=\"{dashes}\"";
        return $"fill=\"none\" stroke=\"{colour}\" stroke-width=\"{Drawing.Number(width)}\"{dashed}";
    }
}
