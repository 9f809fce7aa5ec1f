using ConcreteAttach.Actions;
using ConcreteAttach.Attached;
using ConcreteAttach.Quantities;
using ConcreteAttach.Verification;

namespace ConcreteAttach.Aci318;

/// <summary>
/// Anchoring to concrete by chapter 17 of ACI 318: concrete and steel side of cast-in and post-installed fasteners.
/// </summary>
/// <param name="edition">Edition and printed constants.</param>
/// <param name="options">Readings where the standard leaves a choice; null for the defaults.</param>
public sealed class Aci318Method(Aci318Edition edition, Aci318Options? options = null)
{
    /// <summary>Edition and printed constants.</summary>
    public Aci318Edition Edition { get; } = edition ?? throw new ArgumentNullException(nameof(edition));

    /// <summary>Readings where the standard leaves a choice.</summary>
    public Aci318Options Options { get; } = options ?? Aci318Options.Default;

    /// <summary>Checks an attachment and converts it once, for any number of evaluations.</summary>
    /// <param name="attachment">The attachment.</param>
    /// <exception cref="InputException">A value that cannot be: a fastener outside the concrete, two in one place, a diameter that its thread does not have.</exception>
    public PreparedAttachment Prepare(Attachment attachment)
    {
        ArgumentNullException.ThrowIfNull(attachment);
        return new(attachment, Edition, Options);
    }

    /// <summary>Verifies an attachment under its load cases.</summary>
    /// <param name="attachment">The attachment.</param>
    /// <param name="loadCases">Factored load cases, at least one.</param>
    /// <exception cref="InputException">As <see cref="Prepare"/>; no load case, two of one name, one of another safety format, or a moment that the fasteners cannot carry.</exception>
    public AttachmentVerification Verify(Attachment attachment, params IEnumerable<LoadCase> loadCases) =>
        Prepare(attachment).Verify(loadCases);
}
