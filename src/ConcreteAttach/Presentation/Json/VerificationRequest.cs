using ConcreteAttach.Quantities;
using ConcreteAttach.Verification;

namespace ConcreteAttach.Presentation.Json;

/// <summary>What an input document of the JSON contract asks for: what is to be verified, its load cases and the method. Immutable.</summary>
public abstract record VerificationRequest
{
    private protected VerificationRequest()
    {
    }

    /// <summary>Title of the verification, which the result repeats; null for none.</summary>
    public string? Title { get; init; }

    /// <summary>Verifies what the document asks for.</summary>
    /// <param name="sheets">Which load cases carry their calculation sheets, and so their steps in the result.</param>
    /// <returns>The verification.</returns>
    /// <exception cref="InputException">The method refuses the input; the parameter is the place in the input document, such as
    /// <c>/loadCases/0/Mx</c>.</exception>
    public abstract VerificationResult Verify(SheetScope sheets = SheetScope.All);
}
