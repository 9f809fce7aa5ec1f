using ConcreteAttach.Quantities;

namespace ConcreteAttach.Actions.Asce7;

/// <summary>The ranges of what the seismic chapters take.</summary>
internal static class SeismicInputs
{
    /// <exception cref="InputException">Not above 0, or not finite.</exception>
    public static double Positive(string parameter, double value) =>
        value is > 0 and < double.PositiveInfinity ? value : throw new InputException(parameter, QuantityText.Format(value), "greater than 0");

    /// <exception cref="InputException">Below 1, or not finite.</exception>
    public static double AtLeastOne(string parameter, double value) =>
        value is >= 1 and < double.PositiveInfinity ? value : throw new InputException(parameter, QuantityText.Format(value), "1 or more");

    /// <exception cref="InputException">Outside 0 to 1.</exception>
    public static double Ratio(string parameter, double value) =>
        value is >= 0 and <= 1 ? value : throw new InputException(parameter, QuantityText.Format(value), "from 0 (at or below the base) to 1 (at the roof)");

    /// <summary>I_e of buildings: 1, 1.25 or 1.5 (Table 1.5-2).</summary>
    /// <exception cref="InputException">Another number.</exception>
    public static double ImportanceOfBuilding(double value) =>
        value is 1 or 1.25 or 1.5 ? value : throw new InputException("importanceFactor", QuantityText.Format(value), "1, 1.25 or 1.5 (Table 1.5-2)");

    /// <summary>I_p of components: 1 or 1.5 (13.1.3).</summary>
    /// <exception cref="InputException">Another number.</exception>
    public static double ImportanceOfComponent(double value) =>
        value is 1 or 1.5 ? value : throw new InputException("importanceFactor", QuantityText.Format(value), "1 or 1.5 (13.1.3)");
}
