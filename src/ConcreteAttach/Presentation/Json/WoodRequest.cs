using System.Collections.Immutable;
using ConcreteAttach.Nds;
using ConcreteAttach.Quantities;
using ConcreteAttach.Verification;

namespace ConcreteAttach.Presentation.Json;

/// <summary>An input document that asks for a fastening in wood by NDS-2018. Immutable.</summary>
public sealed record WoodRequest : VerificationRequest
{
    /// <summary>Asks for a verification by NDS-2018.</summary>
    /// <param name="fastening">The fastening.</param>
    /// <param name="loadCases">Load cases.</param>
    public WoodRequest(WoodFastening fastening, ImmutableArray<WoodLoadCase> loadCases)
    {
        Fastening = fastening ?? throw new ArgumentNullException(nameof(fastening));
        LoadCases = loadCases.IsDefault ? [] : loadCases;
    }

    /// <summary>The fastening.</summary>
    public WoodFastening Fastening { get; }

    /// <summary>The load cases, in the order of the document.</summary>
    public ImmutableArray<WoodLoadCase> LoadCases { get; }

    /// <inheritdoc/>
    public override WoodVerification Verify(SheetScope sheets = SheetScope.All)
    {
        try
        {
            return NdsMethod.Verify(Fastening, LoadCases, sheets);
        }
        catch (InputException error)
        {
            throw new InputException(PathOf(error.Parameter), error.Found, error.Permitted);
        }
    }

    /// <summary>The place in the input document of a parameter that the method refuses.</summary>
    private string PathOf(string parameter) => parameter switch
    {
        "loadCases" => "/loadCases",
        "name" => LoadCasePath(SecondOfOneName(), parameter),
        "lateral" => LoadCasePath(LoadCases.TakeWhile(l => l.Lateral.Value == 0).Count(), parameter),
        "axial" => LoadCasePath(LoadCases.TakeWhile(l => l.Axial.Value == 0).Count(), parameter),
        "isToeNail" => "/connection/conditions/toeNail",
        "isDiaphragmNail" => "/connection/conditions/diaphragmNail",
        _ => $"/connection/{parameter}",
    };

    private static string LoadCasePath(int index, string parameter) => $"/loadCases/{QuantityText.Format(index)}/{parameter}";

    private int SecondOfOneName()
    {
        var names = new HashSet<string>(StringComparer.Ordinal);
        return LoadCases.TakeWhile(loadCase => names.Add(loadCase.Name)).Count();
    }
}
