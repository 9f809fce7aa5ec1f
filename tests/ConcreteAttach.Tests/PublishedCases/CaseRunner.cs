using ConcreteAttach.Presentation.Json;

namespace ConcreteAttach.Tests.PublishedCases;

/// <summary>The one place where the cases meet the library.</summary>
internal static class CaseRunner
{
    /// <summary>An input document of the JSON contract in, an output document out.</summary>
    internal static string Verify(string inputJson) =>
        VerificationJson.Verify(inputJson);
}
