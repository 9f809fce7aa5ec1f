using ConcreteAttach.Attached;
using ConcreteAttach.Calculation;
using ConcreteAttach.Quantities;

namespace ConcreteAttach.Verification;

/// <summary>
/// What an option of ACI 318-19 17.10.5.3 (tension) or 17.10.6.3 (shear) gives in a load case, all else as it is: the option that was taken, or one of the others.
/// </summary>
/// <param name="LoadCase">Name of the load case.</param>
/// <param name="Tension">The option for tension; null where it is one for shear.</param>
/// <param name="Shear">The option for shear; null where it is one for tension.</param>
/// <param name="IsTaken">Whether it is the one that the attachment is designed by.</param>
/// <param name="Verdict">Whether the tension, or the shear, of the load case then holds, with the interaction and the rules that the option brings.</param>
/// <param name="Governing">Id of the mode that then governs; null where none has a utilization or fails.</param>
/// <param name="Utilization">Its utilization, 0 or more, no unit; null where it has none.</param>
/// <param name="Reason">Why the option is not open, or not covered; null where it is open.</param>
public sealed record EarthquakeOption(
    string LoadCase, EarthquakeTensionOption? Tension, EarthquakeShearOption? Shear, bool IsTaken, Verdict Verdict, string? Governing, double? Utilization, string? Reason)
{
    /// <summary>The option with its letter in the clause, such as <c>(d) overstrength</c>.</summary>
    public string Title => Tension switch
    {
        EarthquakeTensionOption.DuctileSteel => "(a) ductile steel",
        EarthquakeTensionOption.YieldingAttachment => "(b) yielding attachment",
        EarthquakeTensionOption.NonYieldingAttachment => "(c) non-yielding attachment",
        EarthquakeTensionOption.Overstrength => "(d) overstrength",
        _ => Shear switch
        {
            EarthquakeShearOption.YieldingAttachment => "(a) yielding attachment",
            EarthquakeShearOption.NonYieldingAttachment => "(b) non-yielding attachment",
            _ => "(c) overstrength",
        },
    };

    /// <summary>Whether it takes the forces of the load case as the largest that the attached part can transmit: its answer means something only where they are.</summary>
    public bool IsByGivenForces =>
        Tension is EarthquakeTensionOption.YieldingAttachment or EarthquakeTensionOption.NonYieldingAttachment
        || Shear is EarthquakeShearOption.YieldingAttachment or EarthquakeShearOption.NonYieldingAttachment;

    /// <summary>The utilization as it is shown; empty where there is none.</summary>
    internal string ShownUtilization => Utilization is { } value ? NumberText.Utilization(value, !Limit.IsBelow(1, value)) : "";

    /// <summary>The option and what it gives, as the sheet notes it.</summary>
    public override string ToString()
    {
        string taken = IsTaken ? ", the one taken" : "";
        string forces = IsByGivenForces ? ", if the forces of the load case are the largest that the attached part transmits" : "";
        string governs = Governing is null ? "" : $", {Governing} {ShownUtilization}".TrimEnd();
        return $"Option {Title}{taken}{forces}: {StatusText.Of(Verdict)}{governs}.{(Reason is null ? "" : " " + Reason)}";
    }
}
