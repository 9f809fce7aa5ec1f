using System.Collections.Immutable;
using ConcreteAttach.Calculation;
using ConcreteAttach.Geometry;
using ConcreteAttach.Quantities;
using ConcreteAttach.Verification;

namespace ConcreteAttach.Presentation.Drawings;

/// <summary>The load case that a drawing shows: its modes with their sheets, its forces, and the places of the fasteners in the units of the method.</summary>
internal sealed class ShownCase
{
    private ShownCase(AttachmentVerification verification, string loadCase, DrawingOptions options)
    {
        Verification = verification;
        LoadCase = loadCase;
        Options = options;
        System = verification.System;
        Modes = [.. verification.Modes.Where(m => m.LoadCase == loadCase)];
        Forces = [.. verification.Forces.Where(f => f.LoadCase == loadCase)];
        Contact = verification.Contacts.FirstOrDefault(c => c.LoadCase == loadCase);
        X = [.. verification.Attachment.Layout.Positions.Select(p => p.X.In(System))];
        Y = [.. verification.Attachment.Layout.Positions.Select(p => p.Y.In(System))];
        Outline = verification.Attachment.Concrete.Outline?.In(System);
        Concrete = Outline?.Bounds ?? verification.Attachment.Concrete.Edges.ToRectangle(System);
        Embedment = verification.Attachment.Fastener.EffectiveEmbedment.In(System);
        Diameter = verification.Attachment.Fastener.Diameter.In(System);
        Thickness = verification.Attachment.Concrete.Thickness.In(System);
    }

    public AttachmentVerification Verification { get; }

    public string LoadCase { get; }

    public DrawingOptions Options { get; }

    public MeasurementSystem System { get; }

    public ImmutableArray<FailureMode> Modes { get; }

    public ImmutableArray<FastenerForces> Forces { get; }

    public ContactState? Contact { get; }

    /// <summary>Places of the fasteners.</summary>
    public double[] X { get; }

    public double[] Y { get; }

    /// <summary>The concrete; a side without an edge is infinitely far. Of an outline the rectangle about it.</summary>
    public Rectangle Concrete { get; }

    /// <summary>The outline of the surface; null for a member given by its edges.</summary>
    public Outline? Outline { get; }

    /// <summary>From where to where the concrete reaches on the line along an axis through the middle of the fasteners, as far as all of them stand in one piece of it.</summary>
    public (double Low, double High) Span(bool isAlongX)
    {
        if (Outline is null)
        {
            return isAlongX ? (Concrete.Left, Concrete.Right) : (Concrete.Bottom, Concrete.Top);
        }

        double[] along = isAlongX ? X : Y;
        double across = (isAlongX ? Y : X).Average();
        (double low, double high) = isAlongX ? (Concrete.Left, Concrete.Right) : (Concrete.Bottom, Concrete.Top);
        foreach (OutlineSide side in Outline.Sides)
        {
            (double fromAlong, double fromAcross, double toAlong, double toAcross) =
                isAlongX ? (side.StartX, side.StartY, side.EndX, side.EndY) : (side.StartY, side.StartX, side.EndY, side.EndX);
            if ((fromAcross > across) != (toAcross > across))
            {
                double place = fromAlong + ((across - fromAcross) / (toAcross - fromAcross) * (toAlong - fromAlong));
                low = place <= along.Min() ? Math.Max(low, place) : low;
                high = place >= along.Max() ? Math.Min(high, place) : high;
            }
        }

        return (low, high);
    }

    public double Embedment { get; }

    public double Diameter { get; }

    public double Thickness { get; }

    public string LengthUnit => Unit.Printed(Dimension.Length, System)!.Text;

    public string ForceUnit => Unit.Printed(Dimension.Force, System)!.Text;

    /// <exception cref="InputException">No load case of that name.</exception>
    public static ShownCase Of(AttachmentVerification verification, DrawingOptions? options)
    {
        DrawingOptions chosen = options ?? DrawingOptions.Default;
        string name = chosen.LoadCase ?? verification.Governing?.LoadCase ?? verification.LoadCases[0].Name;
        if (verification.LoadCases.All(l => l.Name != name))
        {
            throw new InputException("loadCase", $"\"{name}\"", string.Join(", ", verification.LoadCases.Select(l => $"\"{l.Name}\"")));
        }

        // A verification may carry the sheets of some load cases only; the drawing needs those of its own.
        bool hasSheets = verification.Modes.Any(m => m.LoadCase == name && m.Sheet is not null);
        AttachmentVerification shown = hasSheets || verification.Again is null
            ? verification
            : verification.Again(verification.Attachment, [verification.LoadCases.First(l => l.Name == name)], true);
        return new(shown, name, chosen);
    }

    /// <summary>The mode of these kinds that uses most of its strength; null where none has a demand.</summary>
    public FailureMode? Decisive(params FailureModeKind[] kinds)
    {
        FailureMode? decisive = null;
        foreach (FailureMode mode in Modes)
        {
            if (kinds.Contains(mode.Kind) && mode is { Sheet: not null, Utilization: > 0 } && (!mode.Group.IsEmpty || IsOfLug(mode)) && !(mode.Utilization <= decisive?.Utilization))
            {
                decisive = mode;
            }
        }

        return decisive;
    }

    /// <summary>The tension breakout whose cone is shown: the one that uses most of its strength; else pryout, which has the same cone; else that of an even load.</summary>
    public FailureMode? Cone() =>
        Decisive(FailureModeKind.ConcreteBreakoutTension)
        ?? Decisive(FailureModeKind.Pryout)
        ?? Modes.FirstOrDefault(m => m is { Kind: FailureModeKind.ConcreteBreakoutTension, Sheet: not null, Group.IsEmpty: false });

    /// <summary>h_ef of a cone, or h'_ef where the sheet has it.</summary>
    public double EmbedmentOf(FailureMode cone) => cone.Sheet?.Find("h_ef'") ?? Embedment;

    /// <summary>Whether a fastener pulls.</summary>
    public bool IsInTension(int fastener) => Forces[fastener].Tension.Value > 0 && Forces[fastener].Tension.In(System) > Limit.Tolerance * LargestAxialForce;

    private double LargestAxialForce => Forces.Max(f => Math.Abs(f.Tension.In(System)));

    /// <summary>A length as a label, without its unit: the notes give it.</summary>
    public string Length(double value) => Options.BothSystems
        ? $"{NumberText.AsGiven(value)} ({NumberText.Computed(Unit.Printed(Dimension.Length, System)!.To(value, Unit.Printed(Dimension.Length, Other)!))})"
        : NumberText.AsGiven(value);

    /// <summary>A force as a label, with its unit.</summary>
    public string Force(double value) => ReportContent.Quantity(value, Dimension.Force, System, AsReport);

    /// <summary>An area as a label, with its unit.</summary>
    public string Area(double value) =>
        Notation.Plain.WithUnit(NumberText.Computed(value), Unit.Printed(Dimension.Area, System)!.Text) + ReportContent.Other(value, Dimension.Area, System, AsReport);

    /// <summary>What the numbers of the dimension lines are.</summary>
    public string LengthNote => (System, Options.BothSystems) switch
    {
        (MeasurementSystem.PoundInch, false) => "Lengths in inches.",
        (MeasurementSystem.PoundInch, true) => "Lengths in inches (millimetres).",
        (_, false) => "Lengths in millimetres.",
        _ => "Lengths in millimetres (inches).",
    };

    /// <summary>Whether a mode is the breakout of a shear lug, which has no fasteners.</summary>
    public static bool IsOfLug(FailureMode mode) => mode.Kind is FailureModeKind.ShearLugBreakout or FailureModeKind.ShearLugParallel;

    /// <summary>The fasteners of a mode after a comma; empty where it has none.</summary>
    public static string Of(FailureMode mode) => mode.Group.IsEmpty ? "" : $", {Fasteners(mode.Group)}";

    /// <summary><c>fastener 0</c>, <c>fasteners 0, 1, 2</c>, <c>fasteners 0 to 5</c>.</summary>
    public static string Fasteners(ImmutableArray<int> group)
    {
        bool isRun = group.Length > 3 && group[^1] - group[0] == group.Length - 1;
        string numbers = isRun ? $"{QuantityText.Format(group[0])} to {QuantityText.Format(group[^1])}" : string.Join(", ", group.Select(i => QuantityText.Format(i)));
        return $"fastener{(group.Length == 1 ? "" : "s")} {numbers}";
    }

    private MeasurementSystem Other => System == MeasurementSystem.PoundInch ? MeasurementSystem.NewtonMillimetre : MeasurementSystem.PoundInch;

    private ReportOptions AsReport => Options.BothSystems ? Both : ReportOptions.Default;

    private static readonly ReportOptions Both = new() { BothSystems = true };
}
