using System.Collections.Immutable;
using ConcreteAttach.Aci318;
using ConcreteAttach.Actions;
using ConcreteAttach.Attached;
using ConcreteAttach.Connections;
using ConcreteAttach.Quantities;
using ConcreteAttach.Verification;

namespace ConcreteAttach.Presentation.Json;

/// <summary>An input document that asks for an attachment to concrete by ACI 318. Immutable.</summary>
public sealed record AttachmentRequest : VerificationRequest
{
    /// <summary>Asks for a verification by ACI 318.</summary>
    /// <param name="attachment">The attachment.</param>
    /// <param name="loadCases">Factored load cases.</param>
    /// <param name="method">The method with its edition and options.</param>
    public AttachmentRequest(Attachment attachment, ImmutableArray<LoadCase> loadCases, Aci318Method method)
    {
        Attachment = attachment ?? throw new ArgumentNullException(nameof(attachment));
        LoadCases = loadCases.IsDefault ? [] : loadCases;
        Aci318 = method ?? throw new ArgumentNullException(nameof(method));
    }

    /// <summary>The attachment.</summary>
    public Attachment Attachment { get; }

    /// <summary>The load cases, in the order of the document.</summary>
    public ImmutableArray<LoadCase> LoadCases { get; }

    /// <summary>The method with its edition and options.</summary>
    public Aci318Method Aci318 { get; }

    /// <summary>The wood sill that is verified together with the attachment; null: none.</summary>
    public SillPlate? Sill { get; init; }

    /// <summary>With a sill, the load cases with what the wood asks of them; else empty.</summary>
    public ImmutableArray<SillLoadCase> SillLoadCases { get; init; } = [];

    /// <summary>How the load cases come about, where the document gives loads and combinations in place of them; else empty.</summary>
    public ImmutableArray<DemandSheet> Demand { get; init; } = [];

    /// <summary>What the reader should know of forces that were computed.</summary>
    internal ImmutableArray<string> DemandNotices { get; init; } = [];

    /// <inheritdoc/>
    public override AttachmentVerification Verify(SheetScope sheets = SheetScope.All)
    {
        try
        {
            AttachmentVerification verification = Sill is null ? Aci318.Prepare(Attachment).Verify(LoadCases, sheets) : new SillAnchorage(Aci318, Attachment, Sill).Verify(SillLoadCases, sheets);
            return Demand.IsEmpty ? verification : verification.With(Demand, DemandNotices);
        }
        catch (InputException error)
        {
            throw new InputException(PathOf(error.Parameter), error.Found, error.Permitted);
        }
    }

    /// <summary>The place in the input document of a parameter that the method refuses.</summary>
    private string PathOf(string parameter) => parameter switch
    {
        "positions" or "loadCases" => $"/{parameter}",
        "name" or "N" or "Vx" or "Vy" or "Mx" or "My" or "Mz" or "at" or "format" or "sustainedTension" when !Demand.IsEmpty => "/loads",
        "strength" or "thickness" or "density" or "cover" or "outline" => $"/concrete/{parameter}",
        _ when parameter.StartsWith("anchorReinforcement", StringComparison.Ordinal) => $"/concrete/{parameter}",
        "woodSill" => "/earthquake/woodSill",
        "bedDepth" or "holes" or "modularRatio" => $"/plate/{parameter}",
        "name" => LoadCasePath(SecondOfOneName(), parameter),
        "N" or "Vx" or "Vy" or "Mx" or "My" or "Mz" or "at" or "format" or "sustainedTension" => LoadCasePath(FirstRefused(), parameter),
        _ when parameter.StartsWith("shearLugs", StringComparison.Ordinal) => "/" + parameter.Replace('[', '/').Replace("]", "", StringComparison.Ordinal).Replace('.', '/'),
        _ => $"/fastener/{parameter}",
    };

    private static string LoadCasePath(int index, string parameter) => $"/loadCases/{QuantityText.Format(index)}/{parameter}";

    private int SecondOfOneName()
    {
        var names = new HashSet<string>(StringComparer.Ordinal);
        return LoadCases.TakeWhile(loadCase => names.Add(loadCase.Name)).Count();
    }

    private int FirstRefused()
    {
        PreparedAttachment prepared = Aci318.Prepare(Attachment);
        return LoadCases.TakeWhile(IsAccepted).Count();

        bool IsAccepted(LoadCase loadCase)
        {
            try
            {
                prepared.Prepare(loadCase);
                return true;
            }
            catch (InputException)
            {
                return false;
            }
        }
    }
}
