namespace ConcreteAttach.Quantities;

/// <summary>
/// The one error of this library: an input that cannot be. It names the parameter, what was found there (with its unit)
/// and what is permitted.
/// </summary>
/// <remarks>
/// A value that is possible but against a rule of a standard (a spacing below the minimum, say) is never an exception:
/// it is a failure mode that is not satisfied.
/// </remarks>
public sealed class InputException : ArgumentException
{
    /// <summary>Creates the error.</summary>
    /// <param name="parameter">Name of the parameter, as the caller wrote it, such as <c>effectiveEmbedment</c>.</param>
    /// <param name="found">The value that was found, with its unit.</param>
    /// <param name="permitted">What is permitted instead.</param>
    public InputException(string parameter, string found, string permitted)
        : base($"{parameter}: found {found}, permitted: {permitted}")
    {
        Parameter = parameter;
        Found = found;
        Permitted = permitted;
    }

    /// <summary>Name of the parameter.</summary>
    public string Parameter { get; }

    /// <summary>The value that was found, with its unit.</summary>
    public string Found { get; }

    /// <summary>What is permitted.</summary>
    public string Permitted { get; }
}
