using System.Collections.Immutable;
using ConcreteAttach.Aci318;
using ConcreteAttach.Actions;
using ConcreteAttach.Attached;
using ConcreteAttach.Quantities;
using ConcreteAttach.Verification;

namespace ConcreteAttach.Presentation.Json;

/// <summary>What an input document of the JSON contract asks for: an attachment, its load cases and the method. Immutable.</summary>
public sealed record VerificationRequest
{
    /// <summary>Asks for a verification by ACI 318.</summary>
    /// <param name="attachment">The attachment.</param>
    /// <param name="loadCases">Factored load cases.</param>
    /// <param name="method">The method with its edition and options.</param>
    public VerificationRequest(Attachment attachment, ImmutableArray<LoadCase> loadCases, Aci318Method method)
    {
        Attachment = attachment ?? throw new ArgumentNullException(nameof(attachment));
        LoadCases = loadCases.IsDefault ? [] : loadCases;
        Aci318 = method ?? throw new ArgumentNullException(nameof(method));
    }

    /// <summary>Title of the verification, which the result repeats; null for none.</summary>
    public string? Title { get; init; }

    /// <summary>The attachment.</summary>
    public Attachment Attachment { get; }

    /// <summary>The load cases, in the order of the document.</summary>
    public ImmutableArray<LoadCase> LoadCases { get; }

    /// <summary>The method, where it is ACI 318. Each method has a property of its own, and one of them is not null.</summary>
    public Aci318Method? Aci318 { get; }

    /// <summary>Verifies the attachment.</summary>
    /// <param name="sheets">Which load cases carry their calculation sheets, and so their steps in the result.</param>
    /// <returns>The verification.</returns>
    /// <exception cref="InputException">As <see cref="Aci318Method.Verify"/>; the parameter is the place in the input document, such as
    /// <c>/loadCases/0/Mx</c>.</exception>
    public AttachmentVerification Verify(SheetScope sheets = SheetScope.All)
    {
        try
        {
            return Aci318!.Prepare(Attachment).Verify(LoadCases, sheets);
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
        "strength" or "thickness" or "density" or "cover" or "outline" => $"/concrete/{parameter}",
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
        PreparedAttachment prepared = Aci318!.Prepare(Attachment);
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
