using ConcreteAttach.Attached;
using ConcreteAttach.Calculation;
using ConcreteAttach.Distribution;
using ConcreteAttach.Fasteners;
using ConcreteAttach.Geometry;
using ConcreteAttach.Materials;
using ConcreteAttach.Quantities;

namespace ConcreteAttach.Aci318;

/// <summary>
/// An attachment in the units of an edition: every input converted once. Immutable, so that any number of threads may evaluate it.
/// </summary>
internal sealed class AnchorageData
{
    private readonly Rectangle _concrete;
    private readonly Rectangle _extent;

    /// <param name="attachment">The attachment.</param>
    /// <param name="edition">The edition.</param>
    /// <param name="options">The readings.</param>
    /// <param name="isEarthquake">For load cases whose earthquake part counts: cracked concrete unless shown otherwise (17.10.5.4), and the product's values under earthquake (17.10.3).</param>
    public AnchorageData(Attachment attachment, Aci318Edition edition, Aci318Options options, bool isEarthquake = false)
    {
        Edition = edition;
        Options = options;
        MeasurementSystem system = edition.System;

        ConcreteMember member = isEarthquake && attachment.Earthquake is { ConcreteStaysUncracked: false } ? attachment.Concrete with { IsCracked = true } : attachment.Concrete;
        Strength = member.Strength.In(system);
        Density = member.Density;
        DensityValue = member.Density.Value?.In(system) ?? double.NaN;
        IsLightweight = ConcreteStrength.IsLightweight(member.Density, DensityValue, edition);
        LightweightOfClass = ConcreteStrength.LightweightOfClass(member.Density);
        IsCracked = member.IsCracked;
        HasSupplementaryTension = member.HasSupplementaryReinforcementForTension;
        HasSupplementaryShear = member.HasSupplementaryReinforcementForShear;
        EdgeReinforcement = member.EdgeReinforcement;
        Thickness = member.Thickness.In(system);
        Cover = (member.Cover ?? ConcreteMember.DefaultCover).In(system);
        _concrete = member.ToRectangle(system, out Outline? outline);

        Fastener fastener = attachment.Fastener;
        Diameter = fastener.Diameter.In(system);
        Embedment = fastener.EffectiveEmbedment.In(system);
        IsHeaded = fastener is HeadedFastener;
        IsStud = fastener is HeadedStud;
        var castIn = fastener as CastInFastener;
        IsTorqued = castIn?.IsTorqued ?? false;
        HasGroutPad = fastener.HasGroutPad;
        HookExtension = fastener is HookedBolt hooked ? hooked.HookExtension.In(system) : double.NaN;
        TensileArea = fastener.ResolveTensileArea(out string? tensile)?.In(system) ?? double.NaN;
        ShearArea = fastener.ResolveShearArea(out string? shear)?.In(system) ?? double.NaN;
        string? bearing = null;
        BearingArea = castIn?.ResolveBearingArea(out bearing)?.In(system) ?? double.NaN;
        HeadHeight = castIn?.ResolveHeadHeight()?.In(system) ?? Diameter;
        WeldedPlateThickness = (fastener as HeadedStud)?.WeldedToPlate?.Thickness.In(system);
        HasCornerReinforcement = (fastener as HeadedStud)?.WeldedToPlate?.HasCornerReinforcement ?? false;
        SteelYield = fastener.Steel.Yield.In(system);
        SteelUltimate = fastener.Steel.Ultimate.In(system);
        Product = fastener is PostInstalledFastener postInstalled ? new ProductData(postInstalled, member, edition, isEarthquake) : null;
        IsDuctile = Product?.IsDuctile ?? fastener.Steel.IsDuctile;
        HasSplittingReinforcement = member.HasSplittingReinforcement;
        LargestStrength = Product is null ? edition.LargestStrengthCastIn : edition.LargestStrengthPostInstalled;
        string? breakoutGap = Limit.IsBelow(edition.LargestDiameter, Diameter) ? ConcreteBreakoutTension.TooThick : Product?.BreakoutGap;
        EditionTensionGap = Edition2025.TensionGap(edition, Product is not null, attachment.HasRedundantFasteners);
        BreakoutGap = breakoutGap ?? (edition.Is2025 ? Edition2025.Shear : null);
        BreakoutTensionGap = Product?.BreakoutTensionGap ?? breakoutGap ?? EditionTensionGap;
        SteelGap = edition.Is2025 ? Edition2025.Steel : null;
        TableValues = [.. new[] { tensile, shear, bearing }.OfType<string>()];

        X = [.. attachment.Layout.Positions.Select(p => p.X.In(system))];
        Y = [.. attachment.Layout.Positions.Select(p => p.Y.In(system))];
        if (outline is null)
        {
            RequireInside(attachment, _concrete, X, Y);
        }
        else
        {
            RequireInside(attachment, outline, X, Y);
            Outline = new(outline, X, Y);
            Influence = new(Outline, 1.5 * Embedment);
        }

        RequireApart(X, Y, system);
        Plate = attachment.Plate is { } plate ? new PlateData(plate, X.Length, Embedment, system) : null;
        Lugs = ShearLugData.Of(attachment, this);
        Distribution = PlateData.Distribution(this, Plate, Lugs?.Support(this));
        All = [.. Enumerable.Range(0, X.Length)];
        _extent = Layouts.ExtentOf(X, Y);
        Edges = Outline is null ? ConcreteEdge.Of(_concrete, X, Y) : ConcreteEdge.Of(Outline);
        ClosestPair = ClosestPair.Of(X, Y);
        BondReach = Product is { IsAdhesive: true } product ? Bond.CriticalDistance(default(Sheet<PlainNumber>), this, product).Value : double.NaN;
        BondInfluence = Outline is not null && double.IsFinite(BondReach) ? new(Outline, BondReach) : null;
        ShankFactor = ConcreteBreakoutShear.ShankFactor(default(Sheet<PlainNumber>), this).Value;
        Whole = new WholeGroup(this);
        Reinforcement = attachment.Reinforcement is { } reinforcement ? new ReinforcementData(this, reinforcement, isEarthquake) : null;
    }

    public Aci318Edition Edition { get; }

    public Aci318Options Options { get; }

    /// <summary>f'c as specified.</summary>
    public double Strength { get; }

    public ConcreteDensity Density { get; }

    /// <summary>Equilibrium density; NaN where the concrete is given by its class.</summary>
    public double DensityValue { get; }

    /// <summary>Whether the concrete is lightweight, whatever its λ.</summary>
    public bool IsLightweight { get; }

    /// <summary>λ of the class by which the concrete is given; NaN where it is given by its density.</summary>
    public double LightweightOfClass { get; }

    public bool IsCracked { get; }

    public bool HasSupplementaryTension { get; }

    public bool HasSupplementaryShear { get; }

    public EdgeReinforcement EdgeReinforcement { get; }

    /// <summary>Anchor reinforcement; null without.</summary>
    public ReinforcementData? Reinforcement { get; }

    /// <summary>Largest f'c that the formulas may use (17.3.1).</summary>
    public double LargestStrength { get; }

    /// <summary>Whether reinforcement limits splitting cracks (17.6.2.6.2).</summary>
    public bool HasSplittingReinforcement { get; }

    /// <summary>What is known of a post-installed product; null for a cast-in fastener.</summary>
    public ProductData? Product { get; }

    /// <summary>Why the strength of steel is not covered; null where it is.</summary>
    public string? SteelGap { get; }

    /// <summary>What the edition leaves open of the concrete in tension; null where nothing.</summary>
    public string? EditionTensionGap { get; }

    /// <summary>Why breakout in shear and pryout are not covered; null where they are.</summary>
    public string? BreakoutGap { get; }

    /// <summary>Why breakout in tension is not covered; null where it is.</summary>
    public string? BreakoutTensionGap { get; }

    /// <summary>h_a.</summary>
    public double Thickness { get; }

    public double Cover { get; }

    /// <summary>The surface between its edges, infinite where there is none; of an outline the rectangle about it.</summary>
    public ref readonly Rectangle Concrete => ref _concrete;

    /// <summary>The fasteners in the outline of the surface; null for a rectangle.</summary>
    public FastenersInOutline? Outline { get; }

    /// <summary>Which fasteners in an outline break out of it together in tension; null for a rectangle.</summary>
    public SeenInfluence? Influence { get; }

    /// <summary>The same for bond (17.6.5); null without an outline or an adhesive.</summary>
    public SeenInfluence? BondInfluence { get; }

    /// <summary>The edges, each with the fasteners as they stand before it.</summary>
    public ConcreteEdge[] Edges { get; }

    /// <summary>d_a.</summary>
    public double Diameter { get; }

    /// <summary>h_ef.</summary>
    public double Embedment { get; }

    /// <summary>Head or nut; else a hook.</summary>
    public bool IsHeaded { get; }

    public bool IsStud { get; }

    public bool IsTorqued { get; }

    public bool HasGroutPad { get; }

    /// <summary>e_h of a hook; NaN without.</summary>
    public double HookExtension { get; }

    /// <summary>A_se,N; NaN where unknown.</summary>
    public double TensileArea { get; }

    /// <summary>A_se,V; NaN where unknown.</summary>
    public double ShearArea { get; }

    /// <summary>A_brg; NaN where unknown or without a head.</summary>
    public double BearingArea { get; }

    /// <summary>What stands below h_ef: the head; d_a where it is unknown.</summary>
    public double HeadHeight { get; }

    /// <summary>Thickness of the plate that studs are welded to; null without.</summary>
    public double? WeldedPlateThickness { get; }

    public bool HasCornerReinforcement { get; }

    /// <summary>Smallest spacing of all fasteners, centre to centre; infinite for one fastener.</summary>
    public double SmallestSpacing => ClosestPair.Spacing;

    /// <summary>The nearest two fasteners.</summary>
    public ClosestPair ClosestPair { get; }

    public double SteelYield { get; }

    public double SteelUltimate { get; }

    public bool IsDuctile { get; }

    /// <summary>What was taken from tables, in words.</summary>
    public IReadOnlyList<string> TableValues { get; }

    /// <summary>c_Na, see <see cref="Bond.CriticalDistance"/>; NaN where there is no bond.</summary>
    public double BondReach { get; }

    /// <summary>See <see cref="ConcreteBreakoutShear.ShankFactor"/>.</summary>
    public double ShankFactor { get; }

    /// <summary>All fasteners as one group.</summary>
    public WholeGroup Whole { get; }

    public double[] X { get; }

    public double[] Y { get; }

    public int Count => X.Length;

    /// <summary>The numbers of all fasteners.</summary>
    public int[] All { get; }

    /// <summary>The plate that joins the fasteners; null without one.</summary>
    public PlateData? Plate { get; }

    /// <summary>Shear lugs below the plate; null without.</summary>
    public ShearLugData? Lugs { get; }

    /// <summary>Whether the plate stands off the concrete without grout.</summary>
    public bool IsStandOff => Plate is { IsInContact: false };

    /// <summary>How forces reach the fasteners.</summary>
    public FastenerDistribution Distribution { get; }

    /// <summary>The number of one fastener, as a list.</summary>
    public ReadOnlySpan<int> Only(int fastener) => All.AsSpan(fastener, 1);

    /// <summary>The rectangle about all fasteners.</summary>
    public ref readonly Rectangle Extent => ref _extent;

    private static void RequireInside(Attachment attachment, in Rectangle concrete, double[] x, double[] y)
    {
        for (int i = 0; i < x.Length; i++)
        {
            ConcreteSide outside = x[i] >= concrete.Right ? ConcreteSide.PlusX : x[i] <= concrete.Left ? ConcreteSide.MinusX
                : y[i] >= concrete.Top ? ConcreteSide.PlusY : y[i] <= concrete.Bottom ? ConcreteSide.MinusY : ConcreteSide.None;
            if (outside != ConcreteSide.None)
            {
                throw NotInside(attachment, i, outside);
            }
        }
    }

    private static void RequireInside(Attachment attachment, Outline outline, double[] x, double[] y)
    {
        for (int i = 0; i < x.Length; i++)
        {
            if (!outline.Contains(x[i], y[i]))
            {
                throw NotInside(attachment, i, outline.NearestSide(x[i], y[i]).Name());
            }
        }
    }

    private static InputException NotInside(Attachment attachment, int fastener, ConcreteSide outside)
    {
        FastenerPosition position = attachment.Layout.Positions[fastener];
        return new InputException(
            "positions",
            $"fastener {QuantityText.Format(fastener)} at x = {QuantityText.Format(position.X)}, y = {QuantityText.Format(position.Y)}",
            $"a place inside the concrete; this one is at or beyond {(outside.Number > 0 ? "" : "the ")}{outside.Words()}");
    }

    /// <summary>Two fasteners cannot stand in one place. Sorted first, so that large layouts stay cheap.</summary>
    private static void RequireApart(double[] x, double[] y, MeasurementSystem system)
    {
        int[] order = [.. Enumerable.Range(0, x.Length)];
        Array.Sort(order, (a, b) => x[a] != x[b] ? x[a].CompareTo(x[b]) : y[a].CompareTo(y[b]));
        for (int i = 1; i < order.Length; i++)
        {
            (int a, int b) = (order[i - 1], order[i]);
            if (x[a] == x[b] && y[a] == y[b])
            {
                throw new InputException(
                    "positions",
                    $"fasteners {QuantityText.Format(Math.Min(a, b))} and {QuantityText.Format(Math.Max(a, b))} both at x = {QuantityText.Format(x[a], Dimension.Length, system)}, y = {QuantityText.Format(y[a], Dimension.Length, system)}",
                    "a place of its own for each fastener");
            }
        }
    }
}
