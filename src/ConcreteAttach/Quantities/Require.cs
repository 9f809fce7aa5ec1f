using UnitsNet;

namespace ConcreteAttach.Quantities;

/// <summary>The checks that inputs go through, each with the one clear error.</summary>
internal static class Require
{
    /// <exception cref="InputException">Not above 0, or not finite.</exception>
    public static Length Positive(string parameter, Length value) => Positive(value.Value) ? value : throw Bad(parameter, QuantityText.Format(value));

    /// <exception cref="InputException">Not above 0, or not finite.</exception>
    public static Area Positive(string parameter, Area value) => Positive(value.Value) ? value : throw Bad(parameter, QuantityText.Format(value));

    /// <exception cref="InputException">Not above 0, or not finite.</exception>
    public static Pressure Positive(string parameter, Pressure value) => Positive(value.Value) ? value : throw Bad(parameter, QuantityText.Format(value));

    /// <exception cref="InputException">Not above 0, or not finite.</exception>
    public static Force Positive(string parameter, Force value) => Positive(value.Value) ? value : throw Bad(parameter, QuantityText.Format(value));

    /// <exception cref="InputException">Not above 0, or not finite.</exception>
    public static Density Positive(string parameter, Density value) => Positive(value.Value) ? value : throw Bad(parameter, QuantityText.Format(value));

    /// <exception cref="InputException">Below 0, or not finite.</exception>
    public static Length NotNegative(string parameter, Length value) =>
        value.Value >= 0 && double.IsFinite(value.Value)
            ? value
            : throw new InputException(parameter, QuantityText.Format(value), "0 or more");

    /// <exception cref="InputException">Not a finite number.</exception>
    public static Length Finite(string parameter, Length value) => double.IsFinite(value.Value) ? value : throw NotFinite(parameter, QuantityText.Format(value));

    /// <exception cref="InputException">Not a finite number.</exception>
    public static Force Finite(string parameter, Force value) => double.IsFinite(value.Value) ? value : throw NotFinite(parameter, QuantityText.Format(value));

    /// <exception cref="InputException">Not a finite number.</exception>
    public static Torque Finite(string parameter, Torque value) => double.IsFinite(value.Value) ? value : throw NotFinite(parameter, QuantityText.Format(value));

    private static bool Positive(double value) => value > 0 && double.IsFinite(value);

    private static InputException Bad(string parameter, string found) => new(parameter, found, "greater than 0");

    private static InputException NotFinite(string parameter, string found) => new(parameter, found, "a finite number");
}
