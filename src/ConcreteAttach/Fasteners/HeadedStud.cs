using ConcreteAttach.Materials;
using ConcreteAttach.Quantities;
using UnitsNet;

namespace ConcreteAttach.Fasteners;

/// <summary>A headed stud that is welded to the attached plate.</summary>
public sealed record HeadedStud : HeadedFastener
{
    /// <summary>Creates a headed stud.</summary>
    /// <param name="diameter">Nominal diameter d_a of the shank; greater than 0, finite.</param>
    /// <param name="steel">The steel.</param>
    /// <param name="effectiveEmbedment">Effective embedment h_ef; greater than 0, finite.</param>
    /// <exception cref="InputException">A parameter is outside its range.</exception>
    public HeadedStud(Length diameter, AnchorSteel steel, Length effectiveEmbedment)
        : base(diameter, steel, effectiveEmbedment)
    {
    }

    /// <inheritdoc/>
    public override string Kind => "headed stud";

    /// <summary>The plate that the stud is continuously welded to; null: not known, and the rules for welded studs are not used.</summary>
    public WeldedPlate? WeldedToPlate { get; init; }

    /// <summary>
    /// The effective cross section in tension A_se,N: <see cref="Fastener.TensileArea"/> where it is given, else the full section π d_a²/4
    /// of the shank, or of the thread where one is given. In the unit system of its source.
    /// </summary>
    /// <param name="assumption">What was taken and from where; null where the area was given.</param>
    /// <exception cref="InputException">The thread that was given has no such diameter.</exception>
    public override Area? ResolveTensileArea(out string? assumption)
    {
        if (TensileArea is not null || Thread is not null)
        {
            return base.ResolveTensileArea(out assumption);
        }

        Area area = NominalDiameter.FullSection(Diameter);
        assumption = $"tensile area of the stud is its full section: {NominalDiameter.Text(area)}";
        return area;
    }

    /// <inheritdoc/>
    private protected override Length? HeadHeightFromTable() => HeadTable.Height(HeadShape.StudHead, Diameter);

    private protected override Area? BearingAreaFromTable(out string? assumption) => BearingAreaOf(HeadShape.StudHead, out assumption);
}

/// <summary>The plate that studs are continuously welded to, as ACI 318-19 17.7.2.2.2 asks for it.</summary>
public sealed record WeldedPlate
{
    /// <summary>Creates the plate.</summary>
    /// <param name="thickness">Thickness; greater than 0, finite.</param>
    /// <param name="hasCornerReinforcement">Whether there is reinforcement at the corners where a side edge is near.</param>
    /// <exception cref="InputException">The thickness is outside its range.</exception>
    public WeldedPlate(Length thickness, bool hasCornerReinforcement)
    {
        Thickness = Require.Positive(nameof(thickness), thickness);
        HasCornerReinforcement = hasCornerReinforcement;
    }

    /// <summary>Thickness.</summary>
    public Length Thickness { get; }

    /// <summary>Whether there is reinforcement at the corners where a side edge is at 1.5 h_ef or nearer.</summary>
    public bool HasCornerReinforcement { get; }

    /// <summary>Thickness and corner reinforcement.</summary>
    public override string ToString() =>
        $"plate {QuantityText.Format(Thickness)} thick, {(HasCornerReinforcement ? "with" : "without")} corner reinforcement";
}
