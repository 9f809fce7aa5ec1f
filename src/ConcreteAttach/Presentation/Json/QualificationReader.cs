using ConcreteAttach.Fasteners;
using ConcreteAttach.Quantities;
using UnitsNet;

namespace ConcreteAttach.Presentation.Json;

/// <summary>
/// Reads the qualification of a post-installed fastener. All that is wrong in it comes in one error: a report is typed in at once, and is put right at once.
/// </summary>
internal sealed class QualificationReader
{
    private const string Form = "an object with the data of the evaluation report, such as category, k_c, pullout or bondStress";

    private static readonly string[] CommonFields =
    [
        "source", "category", "uncrackedOnly", "k_c", "criticalEdgeDistance", "steelShear", "ductile", "minimumSpacing", "minimumEdge", "minimumThickness",
        "nominalEmbedment", "holeDiameter", "holeDepth", "seismic",
    ];

    private static readonly (string, BondEnvironment)[] Environments = [("outdoor", BondEnvironment.Outdoor), ("indoor", BondEnvironment.Indoor)];

    private static readonly (string, ConcreteMoisture)[] Moistures =
        [("dry", ConcreteMoisture.Dry), ("saturated", ConcreteMoisture.Saturated), ("water-filled", ConcreteMoisture.WaterFilled)];

    private static readonly (string, DrillingMethod)[] DrillingMethods =
        [("rotary impact", DrillingMethod.RotaryImpact), ("core", DrillingMethod.Core), ("other", DrillingMethod.Other)];

    private readonly InputObject? _fields;
    private readonly MeasurementSystem _system;
    private readonly List<InputException> _errors = [];

    /// <param name="value">The field; null where it is absent: nothing is known of the product.</param>
    /// <param name="system">The units in which k_c stands.</param>
    public QualificationReader(InputValue? value, MeasurementSystem system)
    {
        _fields = value?.Object(Form);
        _system = system;
    }

    /// <summary>The qualification of an expansion, undercut or screw fastener.</summary>
    /// <param name="mayHaveSleeve">Whether the kind can have a distance sleeve.</param>
    /// <param name="hasSeparatedSleeve">Whether it is separated from the expansion sleeve.</param>
    public MechanicalQualification Mechanical(bool mayHaveSleeve, out bool hasSeparatedSleeve)
    {
        hasSeparatedSleeve = false;
        if (_fields is null)
        {
            return new MechanicalQualification();
        }

        _fields.AllowOnly([.. CommonFields, "pullout", "separatedSleeve"]);
        var data = (MechanicalQualification)Common(_fields, new MechanicalQualification());
        PulloutStrength? pullout = null;
        Take(_fields, "pullout", value => pullout = Pullout(value));
        bool separated = false;
        Take(_fields, "separatedSleeve", value => separated = value.TrueOrFalse() && (mayHaveSleeve ? true : throw value.Error("false: only a torque-controlled expansion fastener has a distance sleeve")));
        ThrowIfWrong();
        hasSeparatedSleeve = separated;
        return data with { Pullout = pullout };
    }

    /// <summary>The qualification of an adhesive fastener.</summary>
    public AdhesiveQualification Adhesive()
    {
        if (_fields is null)
        {
            return new AdhesiveQualification();
        }

        _fields.AllowOnly([.. CommonFields, "bondStress"]);
        var data = (AdhesiveQualification)Common(_fields, new AdhesiveQualification());
        BondStress? bond = null;
        Take(_fields, "bondStress", value => bond = Bond(value));
        ThrowIfWrong();
        return data with { BondStress = bond };
    }

    private ProductQualification Common(InputObject fields, ProductQualification data)
    {
        Take(fields, "source", v => data = data with { Source = v.Text("a text that names the report") });
        Take(fields, "category", v => data = data with { Category = Category(v) });
        Take(fields, "uncrackedOnly", v => data = data with { IsForUncrackedConcreteOnly = v.TrueOrFalse() });
        Take(fields, "k_c", v => data = data with { BreakoutCoefficient = Coefficient(v) });
        Take(fields, "criticalEdgeDistance", v => data = data with { CriticalEdgeDistance = v.Length() });
        Take(fields, "steelShear", v => data = data with { SteelShear = v.Force() });
        Take(fields, "ductile", v => data = data with { IsDuctile = v.TrueOrFalse() });
        Take(fields, "minimumSpacing", v => data = data with { MinimumSpacing = v.Length() });
        Take(fields, "minimumEdge", v => data = data with { MinimumEdgeDistance = v.Length() });
        Take(fields, "minimumThickness", v => data = data with { MinimumThickness = v.Length() });
        Take(fields, "nominalEmbedment", v => data = data with { NominalEmbedment = v.Length() });
        Take(fields, "holeDiameter", v => data = data with { HoleDiameter = v.Length() });
        Take(fields, "holeDepth", v => data = data with { HoleDepth = v.Length() });
        Take(fields, "seismic", v => data = data with { Seismic = Seismic(v) });
        return data;
    }

    private static int Category(InputValue value)
    {
        const string Permitted = "1, 2 or 3";
        double number = value.Number(Permitted);
        return number is 1 or 2 or 3 ? (int)number : throw value.Error(Permitted);
    }

    private BreakoutCoefficient Coefficient(InputValue value)
    {
        InputObject fields = value.Object("an object with cracked and uncracked");
        fields.AllowOnly(["cracked", "uncracked"]);
        const string Permitted = "a number greater than 0, in the units of constants";
        double? cracked = null, uncracked = null;
        Take(fields, "cracked", v => cracked = v.Number(Permitted) is > 0 and double number ? number : throw v.Error(Permitted));
        Take(fields, "uncracked", v => uncracked = v.Number(Permitted) is > 0 and double number ? number : throw v.Error(Permitted));
        return new BreakoutCoefficient(cracked, uncracked, _system);
    }

    private PulloutStrength Pullout(InputValue value)
    {
        const string NotGoverning = "does not govern";
        const string Forms = $"{NotGoverning}, or an object with cracked, uncracked, at and exponent";
        if (value.IsText)
        {
            return value.Text(Forms) == NotGoverning ? PulloutStrength.NotGoverning : throw value.Error(Forms);
        }

        InputObject fields = value.Object(Forms);
        fields.AllowOnly(["cracked", "uncracked", "at", "exponent"]);
        Force? cracked = null, uncracked = null;
        Pressure? at = null;
        double exponent = 0;
        Take(fields, "cracked", v => cracked = new PulloutStrength(v.Force(), null).Cracked);
        Take(fields, "uncracked", v => uncracked = new PulloutStrength(null, v.Force()).Uncracked);
        Take(fields, "at", v => at = new PulloutStrength(null, null) { At = v.Stress() }.At);
        Take(fields, "exponent", v => exponent = new PulloutStrength(null, null) { Exponent = v.Number("0 to 1") }.Exponent);
        if (exponent > 0 && fields.Required("at").IsAbsent)
        {
            _errors.Add(fields.Required("at").Error("the concrete strength at which N_p holds, for the exponent"));
        }

        return new PulloutStrength(cracked, uncracked) { At = at, Exponent = exponent };
    }

    private BondStress Bond(InputValue value)
    {
        InputObject fields = value.Object("an object with cracked and uncracked, or with minimum");
        fields.AllowOnly(["cracked", "uncracked", "minimum"]);
        if (fields.Optional("minimum") is { } minimum)
        {
            foreach (string name in new[] { "cracked", "uncracked" })
            {
                if (fields.Optional(name) is { } own)
                {
                    _errors.Add(own.Error("nothing: minimum takes the bond stresses from the table"));
                }
            }

            return Minimum(minimum.Object("an object with environment, concreteAge, installationTemperature, peakTemperature, moisture and drilling"));
        }

        Pressure? cracked = null, uncracked = null;
        Take(fields, "cracked", v => cracked = new ProductBondStress(v.Stress(), null).Cracked);
        Take(fields, "uncracked", v => uncracked = new ProductBondStress(null, v.Stress()).Uncracked);
        return new ProductBondStress(cracked, uncracked);
    }

    /// <summary>The table of minimum bond stresses: every condition must be stated.</summary>
    private MinimumBondStress Minimum(InputObject fields)
    {
        fields.AllowOnly(["environment", "concreteAge", "installationTemperature", "peakTemperature", "moisture", "drilling"]);
        var data = new MinimumBondStress
        {
            Environment = default, ConcreteAge = Duration.FromDays(0), InstallationTemperature = Temperature.FromDegreesCelsius(0), PeakTemperature = Temperature.FromDegreesCelsius(0),
            Moisture = default, Drilling = default,
        };
        Need(fields, "environment", v => data = data with { Environment = v.Choice(Environments) });
        Need(fields, "concreteAge", v => data = data with { ConcreteAge = v.Age() });
        Need(fields, "installationTemperature", v => data = data with { InstallationTemperature = v.Temperature() });
        Need(fields, "peakTemperature", v => data = data with { PeakTemperature = v.Temperature() });
        Need(fields, "moisture", v => data = data with { Moisture = v.Choice(Moistures) });
        Need(fields, "drilling", v => data = data with { Drilling = v.Choice(DrillingMethods) });
        return data;
    }

    private SeismicQualification Seismic(InputValue value)
    {
        InputObject fields = value.Object("an object with pullout, steelShear and bondStress");
        fields.AllowOnly(["pullout", "steelShear", "bondStress"]);
        var data = new SeismicQualification();
        Take(fields, "pullout", v => data = data with { Pullout = v.Force() });
        Take(fields, "steelShear", v => data = data with { SteelShear = v.Force() });
        Take(fields, "bondStress", v => data = data with { BondStress = v.Stress() });
        return data;
    }

    /// <summary>Reads a field that may be absent; what is wrong with it is kept.</summary>
    private void Take(InputObject fields, string name, Action<InputValue> read)
    {
        if (fields.Optional(name) is not null)
        {
            Need(fields, name, read);
        }
    }

    /// <summary>Reads a field that must be given; what is wrong with it is kept.</summary>
    private void Need(InputObject fields, string name, Action<InputValue> read)
    {
        try
        {
            read(fields.Required(name));
        }
        catch (InputException error)
        {
            _errors.Add(error.Parameter.StartsWith('/') ? error : new InputException(fields.Required(name).Path, fields.Required(name).Found, error.Permitted));
        }
    }

    /// <exception cref="InputException">One error: at its place; several: at the qualification, each with its place below it.</exception>
    private void ThrowIfWrong()
    {
        if (_errors.Count == 1)
        {
            throw _errors[0];
        }

        if (_errors.Count > 1)
        {
            string path = _fields!.Value.Path;
            throw new InputException(
                path,
                string.Join("; ", _errors.Select(e => $"{e.Parameter[(path.Length + 1)..]} {e.Found}")),
                string.Join("; ", _errors.Select(e => $"{e.Parameter[(path.Length + 1)..]}: {e.Permitted}")));
        }
    }
}
