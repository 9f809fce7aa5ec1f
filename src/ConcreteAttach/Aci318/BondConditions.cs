using ConcreteAttach.Calculation;
using ConcreteAttach.Fasteners;
using ConcreteAttach.Quantities;
using ConcreteAttach.Verification;
using UnitsNet;

namespace ConcreteAttach.Aci318;

/// <summary>17.6.5.2.5 The conditions under which the table of minimum bond stresses holds, each a rule that is met or not.</summary>
internal static class BondConditions
{
    /// <summary>Number of modes that <see cref="Write"/> writes.</summary>
    public const int ModeCount = 5;

    private static readonly ModeName AgeName = new(FailureModeKind.BondAge, "17.6.5.2.5, 17.2.2");
    private static readonly ModeName TemperatureName = new(FailureModeKind.BondTemperature, "17.6.5.2.5");
    private static readonly ModeName MoistureName = new(FailureModeKind.BondMoisture, "Table 17.6.5.2.5");
    private static readonly ModeName DrillingName = new(FailureModeKind.BondDrilling, "17.6.5.2.5");
    private static readonly ModeName StrengthName = new(FailureModeKind.BondStrength, "17.6.5.2.5");

    /// <summary>Writes the conditions; nothing where the bond stress is the product's own, which its report ties to its own conditions.</summary>
    public static void Write<T>(AnchorageData data, ProductData product, in ModeWriter<T> writer)
        where T : struct, IFormulaNumber<T>
    {
        if (product.MinimumBond is not { } given)
        {
            return;
        }

        Sheet<T> sheet = writer.NewSheet();
        T age = sheet.Given("t", given.ConcreteAge.Days, Dimension.None, "age of the concrete at installation, in days");
        Rule(AgeName, sheet.When(age >= T.Literal(21)), "The concrete is less than 21 days old at installation.", writer);

        Temperatures(data, given, writer);

        sheet = writer.NewSheet();
        bool isIndoor = given.Environment == BondEnvironment.Indoor;
        sheet.Note(isIndoor ? "The indoor row holds for concrete that is dry at installation." : "The outdoor row holds for concrete from dry to saturated at installation, without standing water.");
        bool isDryEnough = given.Moisture == ConcreteMoisture.Dry || (!isIndoor && given.Moisture == ConcreteMoisture.Saturated);
        Rule(MoistureName, isDryEnough, isIndoor ? "The concrete is not dry at installation." : "There is standing water at installation.", writer);

        sheet = writer.NewSheet();
        sheet.Note("The table holds for holes drilled with a rotary impact drill or a rock drill.");
        Rule(DrillingName, given.Drilling == DrillingMethod.RotaryImpact, "The hole is not drilled with a rotary impact drill or a rock drill.", writer);

        sheet = writer.NewSheet();
        T strength = sheet.Given("f'_c", data.Strength, Dimension.Stress);
        Rule(StrengthName, sheet.When(strength >= T.Literal(data.Edition.MinimumBondStrength)), "The concrete is weaker than the table permits.", writer);
    }

    private static void Temperatures<T>(AnchorageData data, MinimumBondStress given, in ModeWriter<T> writer)
        where T : struct, IFormulaNumber<T>
    {
        bool isInchPound = data.Edition.System == MeasurementSystem.PoundInch;
        BondTemperatures limits = data.Edition.BondTemperatures;
        Sheet<T> sheet = writer.NewSheet();
        T atInstallation = sheet.Given(
            "T_i", Degrees(given.InstallationTemperature), Dimension.None, isInchPound ? "temperature of the concrete at installation, in °F" : "temperature of the concrete at installation, in °C");
        T peak = sheet.Given("T_max", Degrees(given.PeakTemperature), Dimension.None, isInchPound ? "highest temperature in service, in °F" : "highest temperature in service, in °C");
        bool isWarmEnough = sheet.When(atInstallation >= T.Literal(limits.Installation));
        bool isCoolEnough = sheet.When(peak <= T.Literal(given.Environment == BondEnvironment.Indoor ? limits.Indoor : limits.Outdoor), "Table 17.6.5.2.5");
        Rule(TemperatureName, isWarmEnough && isCoolEnough, isWarmEnough ? "The concrete gets too hot in service." : "The concrete is too cold at installation.", writer);

        double Degrees(Temperature temperature) => isInchPound ? temperature.DegreesFahrenheit : temperature.DegreesCelsius;
    }

    private static void Rule<T>(ModeName name, bool holds, string broken, in ModeWriter<T> writer)
        where T : struct, IFormulaNumber<T> =>
        Detailing.WriteRule(new ModeLabel(name), holds, broken, default, writer);
}
