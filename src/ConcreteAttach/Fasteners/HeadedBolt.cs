using ConcreteAttach.Materials;
using ConcreteAttach.Quantities;
using UnitsNet;

namespace ConcreteAttach.Fasteners;

/// <summary>A cast-in bolt with a forged head.</summary>
public sealed record HeadedBolt : HeadedFastener
{
    /// <summary>Creates a headed bolt.</summary>
    /// <param name="diameter">Nominal diameter d_a; greater than 0, finite.</param>
    /// <param name="steel">The steel.</param>
    /// <param name="effectiveEmbedment">Effective embedment h_ef; greater than 0, finite.</param>
    /// <exception cref="InputException">A parameter is outside its range.</exception>
    public HeadedBolt(Length diameter, AnchorSteel steel, Length effectiveEmbedment)
        : base(diameter, steel, effectiveEmbedment)
    {
    }

    /// <inheritdoc/>
    public override string Kind => "headed bolt";

    /// <summary>
    /// The head: <see cref="HeadShape.Hex"/> (default, the smallest of them), <see cref="HeadShape.HeavyHex"/> or <see cref="HeadShape.Square"/>.
    /// </summary>
    /// <exception cref="InputException">Another shape.</exception>
    public HeadShape Head
    {
        get;
        init => field = HeadTable.RequireOneOf("head", value, HeadShape.Hex, HeadShape.HeavyHex, HeadShape.Square);
    } = HeadShape.Hex;

    /// <inheritdoc/>
    private protected override Length? HeadHeightFromTable() => HeadTable.Height(Head, Diameter);

    private protected override Area? BearingAreaFromTable(out string? assumption) => BearingAreaOf(Head, out assumption);
}
