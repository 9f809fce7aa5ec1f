using ConcreteAttach.Presentation.Drawings;
using ConcreteAttach.Verification;

namespace ConcreteAttach.Cli;

/// <summary>The drawings by the names that the tool gives them.</summary>
internal static class DrawingCommand
{
    private static readonly (string Name, Func<AttachmentVerification, DrawingOptions, string?> Write)[] Drawings =
    [
        ("plan", PlanDrawing.Write),
        ("section", SectionDrawing.Write),
        ("shear", ShearBreakoutDrawing.Write),
        ("forces", ForcesDrawing.Write),
        ("utilization", UtilizationDrawing.Write),
        ("interaction", InteractionDrawing.Write),
        ("embedment", (verification, options) => CapacityDrawing.Write(verification, CapacityVariable.Embedment, options)),
        ("edge-distance", (verification, options) => CapacityDrawing.Write(verification, CapacityVariable.EdgeDistance, options)),
    ];

    /// <summary>The names.</summary>
    public static IEnumerable<string> Names => Drawings.Select(d => d.Name);

    /// <summary>Draws one.</summary>
    /// <exception cref="UsageException">There is nothing to draw.</exception>
    public static string Draw(VerificationResult verification, VerifyOptions options)
    {
        if (verification is not AttachmentVerification attachment)
        {
            throw new UsageException($"there is nothing to draw for --drawing {options.Drawing}: drawings show attachments to concrete, not fastenings in wood.");
        }

        var drawing = new DrawingOptions { LoadCase = options.LoadCase, BothSystems = options.BothSystems };
        return Drawings.Single(d => d.Name == options.Drawing).Write(attachment, drawing)
            ?? throw new UsageException($"there is nothing to draw for --drawing {options.Drawing}: the load case puts no such demand on the attachment, or there is no edge.");
    }
}
