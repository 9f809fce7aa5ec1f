using ConcreteAttach.Actions;
using ConcreteAttach.Attached;
using ConcreteAttach.Calculation;
using ConcreteAttach.Distribution;
using ConcreteAttach.Quantities;
using ConcreteAttach.Verification;
using UnitsNet;

namespace ConcreteAttach.Aci318;

/// <summary>17.10 Earthquake: which load cases it concerns, and the option that stands behind their forces.</summary>
internal static class Earthquake
{
    /// <summary>Modes that <see cref="Write"/> writes.</summary>
    public const int ModeCount = 2;

    /// <summary>A part of the tension or shear up to this one is neglected (17.10.5.1, 17.10.6.1).</summary>
    private const double Gate = 0.2;

    private static readonly ModeName TensionName = new(FailureModeKind.EarthquakeTension, "17.10.5");
    private static readonly ModeName ShearName = new(FailureModeKind.EarthquakeShear, "17.10.6");

    /// <summary>Whether a part counts.</summary>
    public static bool Counts(double share) => Limit.IsBelow(Gate, share);

    /// <exception cref="InputException">An option that needs Ω_0 without it.</exception>
    public static void RequireComplete(EarthquakeDesign design)
    {
        if (design.Overstrength is null && (design.Tension == EarthquakeTensionOption.Overstrength || design.Shear == EarthquakeShearOption.Overstrength))
        {
            throw new InputException("overstrength", "nothing", "Ω_0 of the seismic-force-resisting system, 1 or more, for the option overstrength (17.10.5.3(d), 17.10.6.3(c))");
        }
    }

    /// <summary>
    /// The earthquake's part of the forces on the fasteners: the largest, over the fasteners, of what the force is more than it would be without the earthquake, over the force. On elastic theory
    /// that is the part of the earthquake's forces alone; under a plate in contact, where forces do not add up, it is still what the earthquake adds.
    /// </summary>
    public static EarthquakeShare ShareOf(LoadCase loadCase, EarthquakeActions part, FastenerDistribution distribution, MeasurementSystem system, int count)
    {
        LoadCase rest = loadCase with
        {
            N = loadCase.N - part.N, Mx = loadCase.Mx - part.Mx, My = loadCase.My - part.My,
            Vx = loadCase.Vx - part.Vx, Vy = loadCase.Vy - part.Vy, Mz = loadCase.Mz - part.Mz,
        };
        PreparedActions all = PreparedActions.Of(loadCase, distribution, system);
        PreparedActions others = PreparedActions.Of(rest, distribution, system);
        double[] a = new double[count], b = new double[count], c = new double[count], d = new double[count];
        distribution.Tensions(all, a);
        distribution.Tensions(others, b);
        double tension = LargestPart(a, i => a[i], i => a[i] - Math.Max(b[i], 0));

        if (distribution.Lugs is null)
        {
            distribution.Shears(all, a, b);
            distribution.Shears(others, c, d);
        }
        else
        {
            // The lugs take the shear together.
            (a, b, c, d) = ([all.Vx], [all.Vy], [others.Vx], [others.Vy]);
        }

        double[] v = [.. a.Select((x, i) => Math.Sqrt((x * x) + (b[i] * b[i])))];
        double shear = LargestPart(v, i => v[i], i => Math.Sqrt(((a[i] - c[i]) * (a[i] - c[i])) + ((b[i] - d[i]) * (b[i] - d[i]))));
        return new EarthquakeShare(tension, shear, IsPresent: true);
    }

    private static double LargestPart(double[] forces, Func<int, double> whole, Func<int, double> part)
    {
        double largest = forces.Max(Math.Abs);
        return Enumerable.Range(0, forces.Length).Where(i => whole(i) > TensionModes.LeastShare * largest).Select(i => part(i) / whole(i)).DefaultIfEmpty(0).Max();
    }

    /// <summary>The load case with its earthquake part Ω_0 times, in tension, in shear or in both, where an option asks for it and the part counts (17.10.5.3(d), 17.10.6.3(c)).</summary>
    /// <remarks>With shear lugs the couple of the earthquake's shear and their bearing is a part of the tension.</remarks>
    public static LoadCase Amplified(LoadCase loadCase, EarthquakeActions part, EarthquakeDesign design, in EarthquakeShare share, WoodSill? openSill, LugSupport? lugs, MeasurementSystem system)
    {
        double tension = design.Tension == EarthquakeTensionOption.Overstrength && Counts(share.Tension) ? design.Overstrength!.Value - 1 : 0;
        double shear = design.Shear == EarthquakeShearOption.Overstrength && Counts(share.Shear) ? design.Overstrength!.Value - 1 : 0;
        LoadCase amplified = tension > 0
            ? loadCase with { N = loadCase.N + (tension * part.N), Mx = loadCase.Mx + (tension * part.Mx), My = loadCase.My + (tension * part.My) }
            : loadCase;
        if (tension > shear && lugs is not null)
        {
            double more = tension - shear;
            amplified = amplified with { Mx = amplified.Mx - (more * Couple(part.Vy, lugs.ArmY)), My = amplified.My + (more * Couple(part.Vx, lugs.ArmX)) };
        }

        if (shear <= 0)
        {
            return amplified;
        }

        // Along a sill whose bolts meet the building code's conditions 17.10.6.3 is deemed satisfied: that part counts once.
        double x = openSill?.Direction == SillDirection.X ? 0 : shear, y = openSill?.Direction == SillDirection.Y ? 0 : shear;
        return amplified with { Vx = loadCase.Vx + (x * part.Vx), Vy = loadCase.Vy + (y * part.Vy), Mz = loadCase.Mz + (shear * part.Mz) };

        Torque Couple(Force force, double arm) => force * PrintedUnits.Length(arm, system);
    }

    /// <summary>Writes which option stands behind the forces of a load case with an earthquake part, and whether it is open.</summary>
    /// <param name="data">The attachment, with its values under earthquake where these count.</param>
    /// <param name="design">What the design goes by.</param>
    /// <param name="share">The earthquake's parts.</param>
    /// <param name="largest">Tension on the most loaded fastener.</param>
    /// <param name="isKnown">Whether every mode in tension with demand is covered.</param>
    /// <param name="writer">Takes the modes.</param>
    public static void Write<T>(AnchorageData data, EarthquakeDesign design, in EarthquakeShare share, double largest, bool isKnown, in ModeWriter<T> writer)
        where T : struct, IFormulaNumber<T>
    {
        var tension = new ModeLabel(TensionName);
        if (Counts(share.Tension))
        {
            Tension(data, design, share.Tension, largest, isKnown, tension, writer);
        }
        else
        {
            writer.WriteWithout(tension, ModeStatus.NotApplicable, "The earthquake's part of the tension is at most 20 percent of it (17.10.5.1).");
        }

        var shear = new ModeLabel(ShearName);
        if (Counts(share.Shear) && share.IsAlongSill)
        {
            writer.WriteWithout(shear, ModeStatus.NotApplicable, WoodSills.Waived);
        }
        else if (Counts(share.Shear))
        {
            Shear(design, share.Shear, shear, writer);
        }
        else
        {
            writer.WriteWithout(shear, ModeStatus.NotApplicable, "The earthquake's part of the shear is at most 20 percent of it (17.10.6.1).");
        }
    }

    private static void Tension<T>(AnchorageData data, EarthquakeDesign design, double share, double largest, bool isKnown, ModeLabel mode, in ModeWriter<T> writer)
        where T : struct, IFormulaNumber<T>
    {
        Sheet<T> sheet = writer.NewSheet();
        T part = sheet.Given("r_E", share, Dimension.None, "earthquake's part of the tension, of the fastener where it is largest");
        sheet.When(part > T.Literal(Gate), "17.10.5.2");
        bool isComparable = isKnown && !double.IsNaN(data.TensileArea);
        bool isDuctile = isComparable && SteelIsWeaker(sheet, data, largest, writer.HighestOfConcrete);
        switch (design.Tension)
        {
            case EarthquakeTensionOption.DuctileSteel when !isComparable:
                writer.WriteWithout(mode, ModeStatus.NotCovered, "A mode in tension is not covered, so that it is not known whether the steel is the weaker part (17.10.5.3(a)).");
                return;
            case EarthquakeTensionOption.DuctileSteel:
                writer.WriteWithout(
                    mode, isDuctile ? ModeStatus.Satisfied : ModeStatus.NotSatisfied,
                    isDuctile ? null : "The concrete is weaker than 1.2 N_sa, so that the steel would not yield first (17.10.5.3(a)(i)).");
                return;
            case EarthquakeTensionOption.YieldingAttachment:
                writer.Notice("Earthquake tension by 17.10.5.3(b): the forces of the load cases are taken as the largest that reach the fasteners when the attached part yields, with overstrength and strain hardening of its material.");
                break;
            case EarthquakeTensionOption.NonYieldingAttachment:
                writer.Notice("Earthquake tension by 17.10.5.3(c): the forces of the load cases are taken as the largest that the attached part, which does not yield, can transmit.");
                break;
            case EarthquakeTensionOption.Overstrength:
                sheet.Given("Omega_0", design.Overstrength!.Value, Dimension.None, "17.10.5.3(d), on the earthquake part of N, M_x and M_y");
                break;
            default:
                writer.WriteWithout(mode, ModeStatus.NotCovered, "No option of 17.10.5.3 was chosen: give earthquake.tension.");
                return;
        }

        writer.WriteWithout(mode, ModeStatus.Satisfied, null);
    }

    /// <summary>Whether the steel, at 1.2 N_sa, is used no less than the concrete at its nominal strength (17.10.5.3(a)(i)).</summary>
    private static bool SteelIsWeaker<T>(Sheet<T> sheet, AnchorageData data, double largest, double ofConcrete)
        where T : struct, IFormulaNumber<T>
    {
        T steel = SteelTension.NominalStrength(sheet, data);
        T tension = sheet.Given("N_ua_i", largest, Dimension.Force, "most loaded fastener");
        T ratioOfSteel = sheet.Factor("r_s", tension / (1.2 * steel), "17.10.5.3(a)(i)");
        T ratioOfConcrete = sheet.Given("r_c", ofConcrete, Dimension.None, "highest ratio of tension to nominal strength of the concrete modes");
        bool isWeaker = sheet.When(ratioOfSteel >= ratioOfConcrete);
        sheet.Note(isWeaker ? "The steel yields before the concrete fails." : "The concrete fails before the steel yields: ductile steel is no option here.");
        return isWeaker;
    }

    private static void Shear<T>(EarthquakeDesign design, double share, ModeLabel mode, in ModeWriter<T> writer)
        where T : struct, IFormulaNumber<T>
    {
        Sheet<T> sheet = writer.NewSheet();
        T part = sheet.Given("r_E", share, Dimension.None, "earthquake's part of the shear, of the fastener where it is largest");
        sheet.When(part > T.Literal(Gate), "17.10.6.2");
        switch (design.Shear)
        {
            case EarthquakeShearOption.YieldingAttachment:
                writer.Notice("Earthquake shear by 17.10.6.3(a): the forces of the load cases are taken as the largest that reach the fasteners when the attached part yields, with overstrength and strain hardening of its material.");
                break;
            case EarthquakeShearOption.NonYieldingAttachment:
                writer.Notice("Earthquake shear by 17.10.6.3(b): the forces of the load cases are taken as the largest that the attached part, which does not yield, can transmit.");
                break;
            case EarthquakeShearOption.Overstrength:
                sheet.Given("Omega_0", design.Overstrength!.Value, Dimension.None, "17.10.6.3(c), on the earthquake part of V_x, V_y and M_z");
                break;
            default:
                writer.WriteWithout(mode, ModeStatus.NotCovered, "No option of 17.10.6.3 was chosen: give earthquake.shear.");
                return;
        }

        writer.WriteWithout(mode, ModeStatus.Satisfied, null);
    }
}
