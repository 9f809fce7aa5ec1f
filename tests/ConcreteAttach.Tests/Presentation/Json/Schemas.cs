using ConcreteAttach.Presentation.Json;
using Json.Schema;

namespace ConcreteAttach.Tests.Presentation.Json;

/// <summary>The published schemas, read by a library that knows nothing of this one.</summary>
internal static class Schemas
{
    public static readonly JsonSchema Input = JsonSchema.FromText(VerificationJson.InputSchema);

    public static readonly JsonSchema Result = JsonSchema.FromText(VerificationJson.ResultSchema);
}
