using ConcreteAttach.Aci318;
using ConcreteAttach.Fasteners;
using ConcreteAttach.Materials;
using UnitsNet;

namespace ConcreteAttach.Presentation.Json;

/// <summary>Reads the fastener of an input document.</summary>
internal static class FastenerReader
{
    private static readonly (string, FastenerKind)[] Kinds =
    [
        ("headed bolt", FastenerKind.HeadedBolt),
        ("threaded rod with nut", FastenerKind.ThreadedRodWithNut),
        ("hooked bolt", FastenerKind.HookedBolt),
        ("headed stud", FastenerKind.HeadedStud),
        ("torque-controlled expansion", FastenerKind.TorqueControlledExpansion),
        ("displacement-controlled expansion", FastenerKind.DisplacementControlledExpansion),
        ("undercut", FastenerKind.Undercut),
        ("screw", FastenerKind.Screw),
        ("adhesive rod", FastenerKind.AdhesiveRod),
        ("adhesive bar", FastenerKind.AdhesiveBar),
    ];

    private static readonly (string, ScrewThread)[] Threads =
        Array.ConvertAll([ScrewThread.UnifiedCoarse, ScrewThread.Unified8, ScrewThread.IsoCoarse], thread => (ThreadTable.NameOf(thread), thread));

    private static readonly (string, InstallationDirection)[] Directions =
        [("downward", InstallationDirection.Downward), ("horizontal", InstallationDirection.Horizontal), ("upward", InstallationDirection.Upward)];

    private enum FastenerKind
    {
        HeadedBolt,
        ThreadedRodWithNut,
        HookedBolt,
        HeadedStud,
        TorqueControlledExpansion,
        DisplacementControlledExpansion,
        Undercut,
        Screw,
        AdhesiveRod,
        AdhesiveBar,
    }

    /// <summary>Reads the fastener.</summary>
    /// <param name="fastener">The object.</param>
    /// <param name="edition">The edition, in whose units k_c stands.</param>
    public static Fastener Read(InputObject fastener, Aci318Edition edition)
    {
        fastener.AllowOnly(
            [
                "kind", "diameter", "thread", "steel", "effectiveEmbedment", "tensileArea", "shearArea", "bearingArea", "hookExtension", "torqued", "groutPad", "weldedToPlate",
                "qualification", "installationDirection",
            ]);
        FastenerKind kind = fastener.Required("kind").Choice(Kinds);
        bool isAdhesive = kind is FastenerKind.AdhesiveRod or FastenerKind.AdhesiveBar;
        bool isPostInstalled = kind >= FastenerKind.TorqueControlledExpansion;
        RefuseUnless(kind != FastenerKind.HookedBolt, fastener, "bearingArea", "nothing: a hooked bolt has no head that bears");
        RefuseUnless(!isPostInstalled, fastener, "bearingArea", "nothing: a post-installed fastener has no head in the concrete");
        RefuseUnless(kind == FastenerKind.HookedBolt, fastener, "hookExtension", "nothing: only a hooked bolt has a hook");
        RefuseUnless(kind == FastenerKind.HeadedStud, fastener, "weldedToPlate", "nothing: only a headed stud is welded to a plate");
        RefuseUnless(isPostInstalled, fastener, "qualification", "nothing: only post-installed fasteners are qualified by tests");
        RefuseUnless(isAdhesive, fastener, "installationDirection", "nothing: it counts for adhesive fasteners alone");
        return fastener.Value.Guard(() =>
        {
            Length diameter = fastener.Required("diameter").Length();
            AnchorSteel steel = Steel(fastener.Required("steel"), diameter);
            Length embedment = fastener.Required("effectiveEmbedment").Length();
            Fastener bare = isPostInstalled
                ? PostInstalled(kind, fastener, new QualificationReader(fastener.Optional("qualification"), edition.System), diameter, steel, embedment)
                : CastIn(kind, fastener, diameter, steel, embedment) with { IsTorqued = fastener.Optional("torqued")?.TrueOrFalse() ?? false };
            return bare with
            {
                Thread = fastener.Optional("thread")?.Choice(Threads),
                TensileArea = fastener.Optional("tensileArea")?.Area(),
                ShearArea = fastener.Optional("shearArea")?.Area(),
                HasGroutPad = fastener.Optional("groutPad")?.TrueOrFalse() ?? false,
            };
        });
    }

    private static CastInFastener CastIn(FastenerKind kind, InputObject fastener, Length diameter, AnchorSteel steel, Length embedment)
    {
        Area? bearingArea = fastener.Optional("bearingArea")?.Area();
        return kind switch
        {
            FastenerKind.HeadedBolt => new HeadedBolt(diameter, steel, embedment) { BearingArea = bearingArea },
            FastenerKind.ThreadedRodWithNut => new ThreadedRodWithNut(diameter, steel, embedment) { BearingArea = bearingArea },
            FastenerKind.HookedBolt => new HookedBolt(diameter, steel, embedment, fastener.Required("hookExtension").Length()),
            _ => new HeadedStud(diameter, steel, embedment) { BearingArea = bearingArea, WeldedToPlate = Plate(fastener.Optional("weldedToPlate")) },
        };
    }

    private static PostInstalledFastener PostInstalled(
        FastenerKind kind, InputObject fastener, QualificationReader qualification, Length diameter, AnchorSteel steel, Length embedment)
    {
        // Whether it is torqued changes no rule of a post-installed fastener; read so that no wrong value passes.
        _ = fastener.Optional("torqued")?.TrueOrFalse();
        if (kind is FastenerKind.AdhesiveRod or FastenerKind.AdhesiveBar)
        {
            InstallationDirection? direction = fastener.Optional("installationDirection")?.Choice(Directions);
            AdhesiveQualification adhesive = qualification.Adhesive();
            return kind == FastenerKind.AdhesiveRod
                ? new AdhesiveRod(diameter, steel, embedment, adhesive) { Direction = direction }
                : new AdhesiveBar(diameter, steel, embedment, adhesive) { Direction = direction };
        }

        MechanicalQualification data = qualification.Mechanical(kind == FastenerKind.TorqueControlledExpansion, out bool hasSeparatedSleeve);
        return kind switch
        {
            FastenerKind.TorqueControlledExpansion => new TorqueControlledExpansion(diameter, steel, embedment, data) { HasSeparatedSleeve = hasSeparatedSleeve },
            FastenerKind.DisplacementControlledExpansion => new DisplacementControlledExpansion(diameter, steel, embedment, data),
            FastenerKind.Undercut => new UndercutFastener(diameter, steel, embedment, data),
            _ => new ScrewFastener(diameter, steel, embedment, data),
        };
    }

    private static void RefuseUnless(bool fits, InputObject fastener, string field, string permitted)
    {
        if (!fits && fastener.Optional(field) is { } value)
        {
            throw value.Error(permitted);
        }
    }

    internal static AnchorSteel Steel(InputValue value, Length diameter)
    {
        const string Forms = "a designation such as ASTM F1554 Grade 36, or an object with yield, ultimate and ductile";
        if (value.IsText)
        {
            return AnchorSteels.Find(value.Text(Forms), diameter);
        }

        InputObject steel = value.Object(Forms);
        steel.AllowOnly(["yield", "ultimate", "ductile"]);
        Pressure yield = steel.Required("yield").Stress();
        Pressure ultimate = steel.Required("ultimate").Stress();
        return value.Guard(() => new AnchorSteel("given by its strengths", yield, ultimate, steel.Optional("ductile")?.TrueOrFalse() ?? false));
    }

    private static WeldedPlate? Plate(InputValue? value)
    {
        if (value is null)
        {
            return null;
        }

        InputObject plate = value.Object("an object with thickness and cornerReinforcement");
        plate.AllowOnly(["thickness", "cornerReinforcement"]);
        return value.Guard(() => new WeldedPlate(plate.Required("thickness").Length(), plate.Optional("cornerReinforcement")?.TrueOrFalse() ?? false));
    }
}
