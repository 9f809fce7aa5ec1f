using ConcreteAttach.Attached;
using ConcreteAttach.Calculation;
using ConcreteAttach.Fasteners;
using ConcreteAttach.Quantities;
using ConcreteAttach.Verification;

namespace ConcreteAttach.Aci318;

/// <summary>What 17.10 asks of the fasteners whatever the load: where they stand, their qualification, and the conditions of ductile steel.</summary>
internal static class EarthquakeDetailing
{
    /// <summary>Most modes that <see cref="Write"/> writes.</summary>
    public const int MostModes = 7 + WoodSills.MostModes;

    private static readonly ModeName HingeName = new(FailureModeKind.EarthquakeHinge, "17.10.2");
    private static readonly ModeName QualificationName = new(FailureModeKind.EarthquakeQualification, "17.10.3");
    private static readonly ModeName SteelName = new(FailureModeKind.EarthquakeSteel, "17.10.5.3(a)(ii), (v)");
    private static readonly ModeName StretchName = new(FailureModeKind.EarthquakeStretch, "17.10.5.3(a)(ii)");
    private static readonly ModeName BucklingName = new(FailureModeKind.EarthquakeBuckling, "17.10.5.3(a)(iii)");
    private static readonly ModeName ThreadsName = new(FailureModeKind.EarthquakeThreads, "17.10.5.3(a)(iv)");

    /// <summary>The bars that may serve as ductile steel (17.10.5.3(a)(v)).</summary>
    private static readonly string[] DuctileBars = ["ASTM A615 Grade 40", "ASTM A615 Grade 60", "ASTM A706 Grade 60"];

    public static void Write<T>(AnchorageData data, Fastener fastener, EarthquakeDesign design, in ModeWriter<T> writer)
        where T : struct, IFormulaNumber<T>
    {
        Rule(HingeName, design.IsInPlasticHinge ? ModeStatus.NotCovered : ModeStatus.Satisfied, "The fasteners stand where a plastic hinge of the concrete is to be expected: chapter 17 does not cover that.", writer);
        if (data.Product is { } product)
        {
            bool isQualified = product.Fastener.ProductQualification.Seismic is not null;
            Rule(QualificationName, isQualified ? ModeStatus.Satisfied : ModeStatus.NotSatisfied, "The product is not stated to be qualified for earthquake: give seismic.", writer);
        }

        ReinforcementDetailing.WriteEarthquake(data, writer);
        if (design.WoodSill is { } sill)
        {
            WoodSills.Write(data, fastener, sill, writer);
        }

        if (design.Tension != EarthquakeTensionOption.DuctileSteel)
        {
            return;
        }

        bool isRightBar = fastener is not AdhesiveBar || Array.IndexOf(DuctileBars, fastener.Steel.Designation) >= 0;
        Rule(
            SteelName, data.IsDuctile && isRightBar ? ModeStatus.Satisfied : ModeStatus.NotSatisfied,
            isRightBar ? "The steel does not count as ductile." : $"Bars that are to yield are {string.Join(", ", DuctileBars)}.", writer);
        Stretch(data, design, writer);
        Rule(BucklingName, design.IsKeptFromBuckling ? ModeStatus.Satisfied : ModeStatus.NotCovered, "It is not stated that the stretch length is kept from buckling, or that its load does not reverse.", writer);
        Threads(data, fastener, design, writer);
    }

    /// <summary>A stretch length of at least 8 d_a.</summary>
    private static void Stretch<T>(AnchorageData data, EarthquakeDesign design, in ModeWriter<T> writer)
        where T : struct, IFormulaNumber<T>
    {
        if (design.StretchLength is not { } length)
        {
            Rule(StretchName, ModeStatus.NotCovered, "The stretch length is not known: give stretchLength.", writer);
            return;
        }

        Sheet<T> sheet = writer.NewSheet();
        T stretch = sheet.Given("l_s", length.In(data.Edition.System), Dimension.Length, "stretch length");
        T da = sheet.Given("d_a", data.Diameter, Dimension.Length);
        Detailing.WriteRule(new ModeLabel(StretchName), sheet.When(stretch >= 8 * da), "The stretch length is less than 8 d_a.", default, writer);
    }

    /// <summary>f_uta at least 1.3 f_ya where the rod is threaded over part of its length and its ends are not upset.</summary>
    private static void Threads<T>(AnchorageData data, Fastener fastener, EarthquakeDesign design, in ModeWriter<T> writer)
        where T : struct, IFormulaNumber<T>
    {
        var mode = new ModeLabel(ThreadsName);
        if (fastener is HeadedStud or AdhesiveBar)
        {
            writer.WriteWithout(mode, ModeStatus.NotApplicable, "There are no threads.");
            return;
        }

        if (design.Threads != RodThreads.PartOfLength)
        {
            writer.WriteWithout(mode, ModeStatus.Satisfied, null);
            return;
        }

        Sheet<T> sheet = writer.NewSheet();
        T yield = sheet.Given("f_ya", data.SteelYield, Dimension.Stress);
        T ultimate = sheet.Given("f_uta", data.SteelUltimate, Dimension.Stress);
        Detailing.WriteRule(mode, sheet.When(ultimate >= 1.3 * yield), "f_uta is less than 1.3 f_ya, and the rod is threaded over part of its length without upset ends.", default, writer);
    }

    private static void Rule<T>(ModeName name, ModeStatus status, string reason, in ModeWriter<T> writer)
        where T : struct, IFormulaNumber<T> =>
        writer.WriteWithout(new ModeLabel(name), status, status == ModeStatus.Satisfied ? null : reason);
}
