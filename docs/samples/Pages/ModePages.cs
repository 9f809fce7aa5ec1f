using ConcreteAttach.Presentation;
using ConcreteAttach.Presentation.Json;
using ConcreteAttach.Verification;

namespace ConcreteAttach.Samples.Pages;

/// <summary>The calculation sheets on the pages of the failure modes.</summary>
internal static class ModePages
{
    public static void Write(Fragments fragments)
    {
        Sheet(fragments, "tension-steel", ModeExamples.TensionSteel(), "tension/steel");
        Sheet(fragments, "tension-breakout", ModeExamples.TensionBreakout(), "tension/breakout");
        Sheet(fragments, "tension-breakout-narrow", ModeExamples.NarrowMember(), "tension/breakout");
        Sheet(fragments, "pullout-head", ModeExamples.PulloutOfHead(), "tension/pullout");
        Sheet(fragments, "pullout-hook", ModeExamples.PulloutOfHook(), "tension/pullout");
        Sheet(fragments, "pullout-tests", ModeExamples.PulloutByTests(), "tension/pullout");
        Sheet(fragments, "splitting", ModeExamples.Splitting(), "tension/breakout");
        AttachmentVerification bond = ModeExamples.Bond();
        Sheet(fragments, "bond", bond, "tension/bond");
        Sheet(fragments, "bond-sustained", bond, "tension/bond/sustained");
        AttachmentVerification minimum = ModeExamples.MinimumBond();
        Sheet(fragments, "bond-minimum", minimum, "tension/bond");
        Sheet(fragments, "bond-minimum-moisture", minimum, "detailing/bond/moisture");
        Sheet(fragments, "blowout", ModeExamples.Blowout(), "tension/blowout/+x");
        Sheet(fragments, "blowout-corner", ModeExamples.BlowoutAtCorner(), "tension/blowout/+x");
        Sheet(fragments, "shear-steel", ModeExamples.ShearSteel(), "shear/steel");
        AttachmentVerification rows = ModeExamples.ShearTowardEdge();
        Sheet(fragments, "shear-breakout-1", rows, "shear/breakout/+x/1");
        Sheet(fragments, "shear-breakout-2", rows, "shear/breakout/+x/2");
        Sheet(fragments, "shear-parallel-1", rows, "shear/parallel/+x/1");
        Sheet(fragments, "shear-breakout-narrow", ModeExamples.NarrowThinMember(), "shear/breakout/+x");
        AttachmentVerification pryout = ModeExamples.Pryout();
        Sheet(fragments, "pryout", pryout, "shear/pryout");
        Sheet(fragments, "pryout-fastener", pryout, "shear/pryout/fastener");
        Sheet(fragments, "pryout-adhesive", ModeExamples.PryoutOfAdhesive(), "shear/pryout");
        AttachmentVerification earthquake = ModeExamples.Earthquake();
        Sheet(fragments, "earthquake-tension", earthquake, "earthquake/tension");
        Sheet(fragments, "earthquake-breakout", earthquake, "tension/breakout");
        Sheet(fragments, "earthquake-stretch", earthquake, "detailing/earthquake/stretch");
        AttachmentVerification mast = ReinforcementExample.Mast();
        Sheet(fragments, "reinforcement-tension", mast, "tension/reinforcement");
        Sheet(fragments, "reinforcement-shear", mast, "shear/reinforcement/+x");
        Sheet(fragments, "reinforcement-tension-detailing", mast, "detailing/reinforcement/tension");
        Sheet(fragments, "reinforcement-shear-detailing", mast, "detailing/reinforcement/shear/+x");
        var lug = (AttachmentVerification)VerificationJson.Read(File.ReadAllBytes(Repository.Sample("shear-lug-base.json"))).Verify(SheetScope.Governing);
        Sheet(fragments, "lug-bearing", lug, "shear/lug/bearing");
        Sheet(fragments, "lug-breakout", lug, "shear/lug/breakout/+x");
        Sheet(fragments, "lug-parallel", lug, "shear/lug/parallel/+y");
        Sheet(fragments, "interaction", ModeExamples.Interaction(), "interaction");
        AttachmentVerification detailing = ModeExamples.Detailing();
        Sheet(fragments, "detailing-spacing", detailing, "detailing/spacing");
        Sheet(fragments, "detailing-edge", detailing, "detailing/edge");
        Sheet(fragments, "detailing-thickness", detailing, "detailing/thickness");
        AttachmentVerification expansion = ModeExamples.DetailingOfExpansion();
        Sheet(fragments, "detailing-expansion-edge", expansion, "detailing/edge");
        Sheet(fragments, "detailing-expansion-thickness", expansion, "detailing/thickness");
    }

    /// <summary>Writes the sheet of a mode; of the load case that has one.</summary>
    internal static void Sheet(Fragments fragments, string name, AttachmentVerification verification, string id)
    {
        FailureMode mode = verification.Modes.Single(m => m.Id == id && m.Sheet is not null);
        string fasteners = mode.Group.IsEmpty ? "" : $" Fastener{(mode.Group.Length == 1 ? "" : "s")} {string.Join(", ", mode.Group)}.";
        string reason = mode.Reason is null ? "" : $" {mode.Reason}";
        string loadCase = mode.LoadCase is null ? "" : $", load case *{mode.LoadCase}*";
        fragments.Write($"sheet-{name}", $"`{mode.Id}`{loadCase}: **{Words(mode.Status)}**.{reason}{fasteners}\n\n{MarkdownReport.WriteSheet(mode.Sheet!)}");
    }

    private static string Words(ModeStatus status) => status switch
    {
        ModeStatus.Satisfied => "satisfied",
        ModeStatus.NotSatisfied => "not satisfied",
        ModeStatus.NotApplicable => "not applicable",
        _ => "not covered",
    };
}
