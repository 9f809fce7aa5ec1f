using System.Reflection;
using System.Text;
using ConcreteAttach.Quantities;
using ConcreteAttach.Verification;

namespace ConcreteAttach.Presentation.Json;

/// <summary>
/// The JSON contract <c>concreteattach/1</c>: one verification in, one verification out. Quantities go in as text with units and come
/// out as numbers with units; culture never matters. <see cref="InputSchema"/> and <see cref="ResultSchema"/> describe both documents.
/// </summary>
public static class VerificationJson
{
    /// <summary>The name of the contract, which stands in the field <c>schema</c> of both documents.</summary>
    public const string Schema = "concreteattach/1";

    private static readonly Lazy<string> LazyInputSchema = new(() => Resource("concreteattach-1.input.schema.json"));

    private static readonly Lazy<string> LazyResultSchema = new(() => Resource("concreteattach-1.result.schema.json"));

    /// <summary>The JSON Schema (draft 2020-12) of an input document.</summary>
    public static string InputSchema => LazyInputSchema.Value;

    /// <summary>The JSON Schema (draft 2020-12) of a result and of an error.</summary>
    public static string ResultSchema => LazyResultSchema.Value;

    /// <summary>The version of this library, as the field <c>library</c> of a result gives it: <c>0.1.0</c>.</summary>
    public static string LibraryVersion { get; } =
        typeof(VerificationJson).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()?.InformationalVersion.Split('+')[0] ?? "unknown";

    /// <summary>Reads an input document.</summary>
    /// <param name="input">One JSON object.</param>
    /// <returns>What the document asks for.</returns>
    /// <exception cref="InputException">Not JSON, or against the contract. The parameter is the place of the error as a JSON Pointer
    /// (RFC 6901), such as <c>/fastener/diameter</c>; empty where the text is not JSON.</exception>
    public static VerificationRequest Read(string input)
    {
        ArgumentNullException.ThrowIfNull(input);
        return RequestReader.Read(Encoding.UTF8.GetBytes(input));
    }

    /// <summary>Reads an input document.</summary>
    /// <param name="utf8Input">One JSON object in UTF-8, with or without a byte order mark.</param>
    /// <returns>What the document asks for.</returns>
    /// <exception cref="InputException">As <see cref="Read(string)"/>.</exception>
    public static VerificationRequest Read(ReadOnlySpan<byte> utf8Input) => RequestReader.Read(utf8Input);

    /// <summary>Reads an input document, verifies, and writes the result, or the error where the input is refused. Never throws for an input.</summary>
    /// <param name="input">One JSON object.</param>
    /// <param name="indented">Whether the result is laid out on lines; else it is one line.</param>
    /// <returns>A result document or an error document, with the calculation of every load case.</returns>
    public static string Verify(string input, bool indented = true)
    {
        try
        {
            VerificationRequest request = Read(input);
            return Write(request.Verify(), request.Title, indented);
        }
        catch (InputException error)
        {
            return WriteError(error, indented);
        }
    }

    /// <summary>Writes a verification as a result document.</summary>
    /// <param name="verification">The verification. Modes of the load cases whose sheets were asked for carry their steps.</param>
    /// <param name="title">Title to repeat; null for none.</param>
    /// <param name="indented">Whether the result is laid out on lines; else it is one line.</param>
    /// <remarks>The rules of detailing do not depend on the load; their modes are repeated under each load case, for readers that go by load case.</remarks>
    public static string Write(VerificationResult verification, string? title = null, bool indented = true)
    {
        ArgumentNullException.ThrowIfNull(verification);
        return ResultWriter.Result(verification, title, indented);
    }

    /// <summary>Writes an input error as an error document.</summary>
    /// <param name="error">The error; its parameter is the path.</param>
    /// <param name="indented">Whether the document is laid out on lines; else it is one line.</param>
    public static string WriteError(InputException error, bool indented = true)
    {
        ArgumentNullException.ThrowIfNull(error);
        return ResultWriter.Error(error, indented);
    }

    private static string Resource(string name)
    {
        using Stream stream = typeof(VerificationJson).Assembly.GetManifestResourceStream(name)
            ?? throw new InvalidOperationException($"The library was built without its resource {name}.");
        using var reader = new StreamReader(stream, Encoding.UTF8);
        return reader.ReadToEnd();
    }
}
