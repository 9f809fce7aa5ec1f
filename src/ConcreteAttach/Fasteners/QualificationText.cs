using ConcreteAttach.Quantities;
using UnitsNet;

namespace ConcreteAttach.Fasteners;

/// <summary>How data of a product stand in a line of text.</summary>
internal static class QualificationText
{
    /// <summary>A name and what it is; nothing where it is not known.</summary>
    public static string[] Part(string name, string? value) => value is null ? [] : value.Length == 0 ? [name] : [$"{name} {value}"];

    /// <summary>The same of a length.</summary>
    public static string[] Part(string name, Length? value) => Part(name, value is { } length ? QuantityText.Format(length) : null);

    /// <summary>The values for both states of the concrete.</summary>
    public static string States(string? cracked, string? uncracked) => $"{cracked ?? "not given"} cracked, {uncracked ?? "not given"} uncracked";
}
