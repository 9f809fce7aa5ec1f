using System.Globalization;
using System.Reflection;
using System.Text;
using ConcreteAttach.Aci318;
using ConcreteAttach.Attached;
using ConcreteAttach.Verification;

namespace ConcreteAttach.Samples.Pages;

/// <summary>The page on the two printed sets of constants: the constants themselves, and what they do to strengths.</summary>
internal static class TwoEditions
{
    private const double NewtonPerPound = 4.4482216152605;
    private const double MillimetrePerInch = 25.4;
    private const double MegapascalPerPsi = 6.894757293168361e-3;
    private const double KilogramPerCubicMetrePerPcf = 16.018463373960142;

    /// <summary>
    /// What each constant is. The constants are no API of the library, so they are read by reflection; one that is not named here stops the
    /// program, and one that is named and gone does too.
    /// </summary>
    private static readonly (string Property, string Meaning, string Clause, string InchPoundUnit, string SiUnit, double PerUnit)[] Constants =
    [
        ("CastInBreakout", "$k_c$ of $N_b$, cast-in", "17.6.2.2.1", "", "", Coefficient(1.5)),
        ("PostInstalledBreakout", "$k_c$ of $N_b$, post-installed", "17.6.2.2.1", "", "", Coefficient(1.5)),
        ("DeepBreakout", "coefficient of $h_{ef}^{5/3}$", "17.6.2.2.3", "", "", Coefficient(5.0 / 3)),
        ("DeepFrom", "least $h_{ef}$ of it", "17.6.2.2.3", "in", "mm", MillimetrePerInch),
        ("DeepTo", "largest $h_{ef}$ of it", "17.6.2.2.3", "in", "mm", MillimetrePerInch),
        ("Blowout", "coefficient of $N_{sb}$", "17.6.4.1", "", "", Coefficient(2)),
        ("ShearBreakout", "coefficient of $V_b$", "17.7.2.2.1a", "", "", Coefficient(2)),
        ("ShearBreakoutWelded", "the same, studs welded to a plate", "17.7.2.2.2", "", "", Coefficient(2)),
        ("ShearBreakoutLimit", "coefficient of the upper limit of $V_b$", "17.7.2.2.1b", "", "", Coefficient(1.5)),
        ("PryoutFrom", "$h_{ef}$ from which $k_{cp}$ is 2", "17.7.3.1", "in", "mm", MillimetrePerInch),
        ("VentHole", "least hole beside a shear lug", "17.11.1.2", "in", "mm", MillimetrePerInch),
        ("WeldedPlateThickness", "least plate of welded studs", "17.7.2.2.2", "in", "mm", MillimetrePerInch),
        ("WeldedStudSpacing", "least spacing of welded studs", "17.7.2.2.2", "in", "mm", MillimetrePerInch),
        ("LargestStrengthCastIn", "largest $f'_c$ in the formulas, cast-in", "17.3.1", "psi", "MPa", MegapascalPerPsi),
        ("LargestStrengthPostInstalled", "the same, post-installed", "17.3.1", "psi", "MPa", MegapascalPerPsi),
        ("SmallestScrewEmbedment", "least $h_{ef}$ of a screw", "17.3.4", "in", "mm", MillimetrePerInch),
        ("ReferenceBond", "bond stress in $c_{Na}$", "17.6.5.1.2b", "psi", "MPa", MegapascalPerPsi),
        ("OutdoorBondCracked", "least $\\tau_{cr}$ outdoor", "17.6.5.2.5", "psi", "MPa", MegapascalPerPsi),
        ("OutdoorBondUncracked", "least $\\tau_{uncr}$ outdoor", "17.6.5.2.5", "psi", "MPa", MegapascalPerPsi),
        ("IndoorBondCracked", "least $\\tau_{cr}$ indoor", "17.6.5.2.5", "psi", "MPa", MegapascalPerPsi),
        ("IndoorBondUncracked", "least $\\tau_{uncr}$ indoor", "17.6.5.2.5", "psi", "MPa", MegapascalPerPsi),
        ("MinimumBondStrength", "least $f'_c$ for these", "17.6.5.2.5", "psi", "MPa", MegapascalPerPsi),
        ("DepthBehindEmbedment", "thickness less this, for $h_{ef}$", "17.9.4", "in", "mm", MillimetrePerInch),
        ("LargestDiameter", "largest $d_a$", "17.3.2", "in", "mm", MillimetrePerInch),
        ("LargestSteelStrength", "largest $f_{uta}$", "17.6.1.2", "psi", "MPa", MegapascalPerPsi),
        ("SmallestStructuralStrength", "least $f'_c$ of structural concrete", "19.2.1.1", "psi", "MPa", MegapascalPerPsi),
        ("DensityAllLightweight", "$w_c$ up to which $\\lambda$ is 0.75", "19.2.4.1", "lb/ft3", "kg/m3", KilogramPerCubicMetrePerPcf),
        ("DensityNormalweight", "$w_c$ above which $\\lambda$ is 1", "19.2.4.1", "lb/ft3", "kg/m3", KilogramPerCubicMetrePerPcf),
        ("SteelModulus", "$E_s$", "20.2.2.2", "psi", "MPa", MegapascalPerPsi),
        ("ModulusOfNormalweight", "coefficient of $E_c$, normalweight", "19.2.2.1b", "", "", Math.Sqrt(MegapascalPerPsi)),
        ("ModulusByDensity", "coefficient of $E_c$ by density", "19.2.2.1a", "", "", Math.Sqrt(MegapascalPerPsi) / Math.Pow(KilogramPerCubicMetrePerPcf, 1.5)),
        ("DensityOfModulusFrom", "least $w_c$ of it", "19.2.2.1", "lb/ft3", "kg/m3", KilogramPerCubicMetrePerPcf),
        ("DensityOfModulusTo", "largest $w_c$ of it", "19.2.2.1", "lb/ft3", "kg/m3", KilogramPerCubicMetrePerPcf),
        ("DensitySlope", "$\\lambda / w_c$ between them", "19.2.4.1", "", "", 1 / KilogramPerCubicMetrePerPcf),
    ];

    public static void Write(Fragments fragments)
    {
        fragments.Write("constants", ConstantsTable());
        fragments.Write(
            "two-editions-strengths",
            Strengths("Two 5/8 in. bolts, 3 in. from an edge", TwoEditionsExample.SlenderBolts)
            + Strengths("Two 1 in. bolts, 14 in. deep", TwoEditionsExample.ThickDeepBolts)
            + Strengths("Two studs welded to a plate", TwoEditionsExample.WeldedStuds));
        fragments.Write("two-editions-limit", Strengths("One stud, 2.5 in. deep", TwoEditionsExample.AtALimit));
    }

    /// <summary>A coefficient of force over √stress and a power of length.</summary>
    private static double Coefficient(double powerOfLength) =>
        NewtonPerPound / Math.Sqrt(MegapascalPerPsi) / Math.Pow(MillimetrePerInch, powerOfLength);

    private static string ConstantsTable()
    {
        PropertyInfo[] properties = [.. typeof(Aci318Edition).GetProperties(BindingFlags.Instance | BindingFlags.NonPublic).Where(p => p.PropertyType == typeof(double))];
        string[] unnamed = [.. properties.Select(p => p.Name).Except(Constants.Select(c => c.Property))];
        if (unnamed.Length > 0)
        {
            throw new InvalidOperationException($"The page on the constants does not know {string.Join(", ", unnamed)}.");
        }

        var text = new StringBuilder("| constant | clause | inch-pound | exactly converted | printed in SI | printed / exact |\n| --- | --- | ---: | ---: | ---: | ---: |\n");
        foreach ((string name, string meaning, string clause, string inchPoundUnit, string siUnit, double perUnit) in Constants)
        {
            PropertyInfo property = properties.Single(p => p.Name == name);
            double inchPound = (double)property.GetValue(Aci318Edition.InchPound2019)!;
            double si = (double)property.GetValue(Aci318Edition.Si2019)!;
            double exact = inchPound * perUnit;
            text.Append(CultureInfo.InvariantCulture, $"| {meaning} | {clause} | {Number(inchPound)} {inchPoundUnit} | {Figures(exact)} {siUnit} | {Number(si)} {siUnit} | {si / exact:0.000} |\n");
        }

        return text.ToString();
    }

    private static string Strengths(string what, Attachment attachment)
    {
        var text = new StringBuilder($"{what}:\n\n| mode | inch-pound, kN | SI, kN | SI / inch-pound |\n| --- | ---: | ---: | ---: |\n");
        (AttachmentVerification inchPound, AttachmentVerification si) = TwoEditionsExample.Both(attachment, TwoEditionsExample.Load);
        foreach (FailureMode mode in inchPound.Modes)
        {
            if (mode.Nominal is { } one && si.Modes.Single(m => m.Id == mode.Id).Nominal is { } other)
            {
                text.Append(CultureInfo.InvariantCulture, $"| `{mode.Id}` | {Figures(one.Kilonewtons)} | {Figures(other.Kilonewtons)} | {other.Kilonewtons / one.Kilonewtons:0.000} |\n");
            }
        }

        return text.Append('\n').ToString();
    }

    /// <summary>Digits in groups of three from five on, as on the sheets.</summary>
    private static string Number(double value) =>
        value.ToString(Math.Abs(value) >= 10_000 ? "#,##0.#####" : "0.#####", CultureInfo.InvariantCulture).Replace(',', ' ');

    private static string Figures(double value)
    {
        int decimals = Math.Clamp(3 - (int)Math.Floor(Math.Log10(Math.Abs(value))), 0, 9);
        return value.ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
    }
}
