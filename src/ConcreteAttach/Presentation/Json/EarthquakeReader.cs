using ConcreteAttach.Actions;
using ConcreteAttach.Attached;
using ConcreteAttach.Quantities;

namespace ConcreteAttach.Presentation.Json;

/// <summary>Reads what concerns earthquake: the design of the attachment, and the earthquake's part of a load case.</summary>
internal static class EarthquakeReader
{
    private static readonly (string, SeismicDesignCategory)[] Categories =
    [
        ("A", SeismicDesignCategory.A), ("B", SeismicDesignCategory.B), ("C", SeismicDesignCategory.C),
        ("D", SeismicDesignCategory.D), ("E", SeismicDesignCategory.E), ("F", SeismicDesignCategory.F),
    ];

    private static readonly (string, EarthquakeTensionOption)[] TensionOptions =
    [
        ("ductile steel", EarthquakeTensionOption.DuctileSteel),
        ("yielding attachment", EarthquakeTensionOption.YieldingAttachment),
        ("non-yielding attachment", EarthquakeTensionOption.NonYieldingAttachment),
        ("overstrength", EarthquakeTensionOption.Overstrength),
    ];

    private static readonly (string, EarthquakeShearOption)[] ShearOptions =
    [
        ("yielding attachment", EarthquakeShearOption.YieldingAttachment),
        ("non-yielding attachment", EarthquakeShearOption.NonYieldingAttachment),
        ("overstrength", EarthquakeShearOption.Overstrength),
    ];

    private static readonly (string, RodThreads)[] Threads =
    [
        ("part of the length", RodThreads.PartOfLength),
        ("whole length", RodThreads.WholeLength),
        ("upset ends", RodThreads.UpsetEnds),
    ];

    /// <exception cref="InputException">Against the contract, at the place of the error.</exception>
    public static EarthquakeDesign Design(InputObject fields)
    {
        fields.AllowOnly(["category", "plasticHinge", "tension", "shear", "overstrength", "stretchLength", "keptFromBuckling", "threads", "staysUncracked", "woodSill"]);
        EarthquakeDesign design = fields.Value.Guard(() => new EarthquakeDesign(fields.Required("category").Choice(Categories))
        {
            IsInPlasticHinge = fields.Optional("plasticHinge")?.TrueOrFalse() ?? false,
            Tension = fields.Optional("tension")?.Choice(TensionOptions),
            Shear = fields.Optional("shear")?.Choice(ShearOptions),
            Overstrength = fields.Optional("overstrength")?.Number("a number, 1 or more, such as 2.5"),
            StretchLength = fields.Optional("stretchLength")?.Length(),
            IsKeptFromBuckling = fields.Optional("keptFromBuckling")?.TrueOrFalse() ?? false,
            Threads = fields.Optional("threads")?.Choice(Threads) ?? RodThreads.PartOfLength,
            WoodSill = fields.Optional("woodSill") is { } sill ? SillReader.Named(sill) : null,
            ConcreteStaysUncracked = fields.Optional("staysUncracked")?.TrueOrFalse() ?? false,
        });
        bool isAsked = design.Tension == EarthquakeTensionOption.Overstrength || design.Shear == EarthquakeShearOption.Overstrength;
        return isAsked && design.Overstrength is null
            ? throw fields.Required("overstrength").Error("a number, 1 or more, such as 2.5, for the option overstrength")
            : design;
    }

    /// <exception cref="InputException">Against the contract, at the place of the error.</exception>
    public static EarthquakeActions Part(InputValue value, EarthquakeDesign? design)
    {
        InputObject fields = value.Object("an object with the part of N, Vx, Vy, Mx, My and Mz that is the earthquake's");
        fields.AllowOnly(["N", "Vx", "Vy", "Mx", "My", "Mz"]);
        return design is null
            ? throw value.Error("none, or an object earthquake beside the load cases that gives the category")
            : value.Guard(() => new EarthquakeActions
            {
                N = fields.Optional("N")?.Force() ?? default,
                Vx = fields.Optional("Vx")?.Force() ?? default,
                Vy = fields.Optional("Vy")?.Force() ?? default,
                Mx = fields.Optional("Mx")?.Moment() ?? default,
                My = fields.Optional("My")?.Moment() ?? default,
                Mz = fields.Optional("Mz")?.Moment() ?? default,
            });
    }
}
