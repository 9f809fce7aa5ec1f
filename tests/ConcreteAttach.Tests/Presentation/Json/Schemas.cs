using System.Text.Json.Nodes;
using ConcreteAttach.Presentation.Json;
using Json.Schema;

namespace ConcreteAttach.Tests.Presentation.Json;

/// <summary>The published schemas, read by a library that knows nothing of this one.</summary>
internal static class Schemas
{
    public static readonly PublishedSchema Input = new(JsonSchema.FromText(VerificationJson.InputSchema));

    public static readonly PublishedSchema Result = new(JsonSchema.FromText(VerificationJson.ResultSchema));

    /// <summary>The schema of JSON schemas.</summary>
    public static readonly PublishedSchema OfSchemas = new(MetaSchemas.Draft202012);

    /// <summary>A schema that one test at a time uses: nothing says that the library's evaluation is safe from several threads.</summary>
    internal sealed class PublishedSchema(JsonSchema schema)
    {
        private static readonly Lock OneAtATime = new();

        public EvaluationResults Evaluate(JsonNode? document, EvaluationOptions? options = null)
        {
            lock (OneAtATime)
            {
                return schema.Evaluate(document, options);
            }
        }
    }
}
