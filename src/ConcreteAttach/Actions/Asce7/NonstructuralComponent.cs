using System.Collections.Immutable;
using ConcreteAttach.Calculation;
using ConcreteAttach.Quantities;
using UnitsNet;

namespace ConcreteAttach.Actions.Asce7;

/// <summary>
/// The earthquake force on a nonstructural component, ASCE 7 13.3: what both editions share. The form of 7-16 is <see cref="Component2016"/>, that of 7-22 <see cref="Component2022"/>.
/// </summary>
public abstract record NonstructuralComponent
{
    private protected NonstructuralComponent(double designAcceleration, Force weight)
    {
        DesignAcceleration = SeismicInputs.Positive(nameof(designAcceleration), designAcceleration);
        Weight = Require.Positive(nameof(weight), weight);
    }

    /// <summary>S_DS, in g.</summary>
    public double DesignAcceleration { get; }

    /// <summary>W_p: operating weight of the component.</summary>
    public Force Weight { get; }

    /// <summary>I_p, 1 by default.</summary>
    /// <exception cref="InputException">Not 1 or 1.5.</exception>
    public double ImportanceFactor { get; init => field = SeismicInputs.ImportanceOfComponent(value); } = 1;

    /// <summary>z/h: height of the point of attachment over that of the roof, both above the base; 0 at and below the base, 1 at and above the roof. 0 by default.</summary>
    /// <exception cref="InputException">Outside 0 to 1.</exception>
    public double HeightRatio { get; init => field = SeismicInputs.Ratio("heightRatio", value); }

    /// <summary>The overstrength factor of the component's anchorage to concrete or masonry, Ω_0 of Tables 13.5-1 and 13.6-1 (7-22: Ω_0p), 1 or more; null: not known.</summary>
    /// <exception cref="InputException">Below 1, or not finite.</exception>
    public double? Overstrength { get; init => field = value is { } factor ? SeismicInputs.AtLeastOne("overstrength", factor) : null; }

    /// <summary>The designation of the edition.</summary>
    private protected abstract string Designation { get; }

    /// <summary>The symbol of the overstrength factor.</summary>
    private protected abstract string OverstrengthId { get; }

    /// <summary>F_p before its limits.</summary>
    private protected abstract TracedNumber Unlimited(Sheet<TracedNumber> sheet, TracedNumber sds, TracedNumber ip, TracedNumber wp);

    /// <summary>F_p, the vertical force, and F_p with overstrength.</summary>
    public Demand Force()
    {
        const MeasurementSystem System = MeasurementSystem.PoundInch;
        var recorder = new SheetRecorder(System);
        var sheet = new Sheet<TracedNumber>(recorder);
        TracedNumber sds = sheet.Given("S_DS", DesignAcceleration, Dimension.None);
        TracedNumber ip = sheet.Given("I_p", ImportanceFactor, Dimension.None, "13.1.3");
        TracedNumber wp = sheet.Given("W_p", Weight.In(System), Dimension.Force, "operating weight");
        TracedNumber raw = Unlimited(sheet, sds, ip, wp);
        TracedNumber most = sheet.Step("F_p_max", 1.6 * sds * ip * wp, Dimension.Force, "13.3-2");
        TracedNumber least = sheet.Step("F_p_min", 0.3 * sds * ip * wp, Dimension.Force, "13.3-3");
        TracedNumber fp = sheet.Step("F_p", TracedNumber.Max(TracedNumber.Min(raw, most), least), Dimension.Force, "13.3.1");
        TracedNumber vertical = sheet.Step("F_v", 0.2 * sds * wp, Dimension.Force, "13.3.1, up or down");
        UnitsNet.Force? amplified = null;
        if (Overstrength is { } factor)
        {
            TracedNumber omega = sheet.Given(OverstrengthId, factor, Dimension.None, "Tables 13.5-1, 13.6-1");
            amplified = UnitsNet.Force.FromPoundsForce(sheet.Step("F_p_Omega", omega * fp, Dimension.Force, "13.4.2").Value);
        }

        return new Demand($"Nonstructural component, {Designation} 13.3", UnitsNet.Force.FromPoundsForce(fp.Value), recorder.ToSheet(), Notices)
        {
            Vertical = UnitsNet.Force.FromPoundsForce(vertical.Value),
            WithOverstrength = amplified,
        };
    }

    /// <summary>What was described, in words.</summary>
    public sealed override string ToString() =>
        $"{Designation}, S_DS {QuantityText.Format(DesignAcceleration)}, I_p {QuantityText.Format(ImportanceFactor)}, z/h {QuantityText.Format(HeightRatio)}, W_p {QuantityText.Format(Weight)}";

    private static readonly ImmutableArray<string> Notices =
    [
        "F_p acts at the centre of gravity of the component, in whichever horizontal direction is worse, with F_v up or down; in a load combination F_v is E_v, where the dead load holds W_p. The redundancy factor is 1 (13.3.1).",
        "Fasteners in concrete or masonry: F_p with the overstrength factor unless they yield first (13.4.2, ACI 318-19 17.10.5.3, 17.10.6.3).",
    ];
}

/// <summary>A nonstructural component by ASCE 7-16 13.3.1 (the form of 7-05 to 7-16).</summary>
public sealed record Component2016 : NonstructuralComponent
{
    /// <summary>Describes a component.</summary>
    /// <param name="designAcceleration">S_DS, in g; greater than 0.</param>
    /// <param name="weight">W_p; greater than 0.</param>
    /// <param name="amplification">a_p of Tables 13.5-1 and 13.6-1, from 1 to 2.5.</param>
    /// <param name="responseModification">R_p of those tables, 1 or more.</param>
    /// <exception cref="InputException">Outside its range.</exception>
    public Component2016(double designAcceleration, Force weight, double amplification, double responseModification)
        : base(designAcceleration, weight)
    {
        Amplification = amplification is >= 1 and <= 2.5 ? amplification : throw new InputException(nameof(amplification), QuantityText.Format(amplification), "from 1 to 2.5 (Tables 13.5-1, 13.6-1)");
        ResponseModification = SeismicInputs.AtLeastOne(nameof(responseModification), responseModification);
    }

    /// <summary>a_p.</summary>
    public double Amplification { get; }

    /// <summary>R_p.</summary>
    public double ResponseModification { get; }

    private protected override string Designation => "ASCE 7-16";

    private protected override string OverstrengthId => "Omega_0";

    private protected override TracedNumber Unlimited(Sheet<TracedNumber> sheet, TracedNumber sds, TracedNumber ip, TracedNumber wp)
    {
        TracedNumber ap = sheet.Given("a_p", Amplification, Dimension.None, "Tables 13.5-1, 13.6-1");
        TracedNumber rp = sheet.Given("R_p", ResponseModification, Dimension.None, "Tables 13.5-1, 13.6-1");
        TracedNumber height = sheet.Given("r_z", HeightRatio, Dimension.None, "z/h");
        return sheet.Step("F_p_1", 0.4 * ap * sds * wp / (rp / ip) * (1 + (2 * height)), Dimension.Force, "13.3-1");
    }
}

/// <summary>The seismic force-resisting system of the building that carries a component, as ASCE 7-22 13.3.1.2 takes it.</summary>
/// <param name="ResponseModification">R, 1 or more.</param>
/// <param name="Overstrength">Ω_0, 1 or more.</param>
/// <param name="ImportanceFactor">I_e: 1, 1.25 or 1.5.</param>
public sealed record SeismicSystem(double ResponseModification, double Overstrength, double ImportanceFactor)
{
    /// <summary>R.</summary>
    public double ResponseModification { get; } = SeismicInputs.AtLeastOne("responseModification", ResponseModification);

    /// <summary>Ω_0.</summary>
    public double Overstrength { get; } = SeismicInputs.AtLeastOne("overstrength", Overstrength);

    /// <summary>I_e.</summary>
    public double ImportanceFactor { get; } = SeismicInputs.ImportanceOfBuilding(ImportanceFactor);
}

/// <summary>A nonstructural component by ASCE 7-22 13.3.1. From memory.</summary>
public sealed record Component2022 : NonstructuralComponent
{
    /// <summary>Describes a component.</summary>
    /// <param name="designAcceleration">S_DS, in g; greater than 0.</param>
    /// <param name="weight">W_p; greater than 0.</param>
    /// <param name="resonance">C_AR of Tables 13.5-1 and 13.6-1, 1 or more.</param>
    /// <param name="reserve">R_po of those tables, 1 or more.</param>
    /// <exception cref="InputException">Outside its range.</exception>
    public Component2022(double designAcceleration, Force weight, double resonance, double reserve)
        : base(designAcceleration, weight)
    {
        Resonance = SeismicInputs.AtLeastOne(nameof(resonance), resonance);
        Reserve = SeismicInputs.AtLeastOne(nameof(reserve), reserve);
    }

    /// <summary>C_AR: component resonance ductility factor.</summary>
    public double Resonance { get; }

    /// <summary>R_po: component strength factor.</summary>
    public double Reserve { get; }

    /// <summary>Whether a structure supports it at or below grade: then H_f and R_μ are 1.</summary>
    public bool IsAtGrade { get; init; }

    /// <summary>T_a of the supporting building; null: not known.</summary>
    /// <exception cref="InputException">Not above 0, or not finite.</exception>
    public Duration? Period
    {
        get;
        init => field = value is null || value.Value.Seconds is > 0 and < double.PositiveInfinity ? value : throw new InputException("period", $"{QuantityText.Format(value.Value.Seconds)} s", "greater than 0");
    }

    /// <summary>The seismic force-resisting system of the supporting building; null: not known, or none.</summary>
    public SeismicSystem? System { get; init; }

    private protected override string Designation => "ASCE 7-22";

    private protected override string OverstrengthId => "Omega_0p";

    private protected override TracedNumber Unlimited(Sheet<TracedNumber> sheet, TracedNumber sds, TracedNumber ip, TracedNumber wp)
    {
        TracedNumber car = sheet.Given("C_AR", Resonance, Dimension.None, "Tables 13.5-1, 13.6-1");
        TracedNumber rpo = sheet.Given("R_po", Reserve, Dimension.None, "Tables 13.5-1, 13.6-1");
        TracedNumber hf = HeightFactor(sheet);
        TracedNumber rmu = DuctilityFactor(sheet);
        return sheet.Step("F_p_1", 0.4 * sds * ip * wp * (hf / rmu) * (car / rpo), Dimension.Force, "13.3-1");
    }

    /// <summary>H_f: how the motion grows with height (13.3.1.1).</summary>
    private TracedNumber HeightFactor(Sheet<TracedNumber> sheet)
    {
        if (IsAtGrade)
        {
            return sheet.Factor("H_f", 1, "13.3.1.1, at or below grade");
        }

        TracedNumber height = sheet.Given("r_z", HeightRatio, Dimension.None, "z/h");
        if (Period is not { } period)
        {
            return sheet.Factor("H_f", 1 + (2.5 * height), "13.3-5, T_a not known");
        }

        TracedNumber ta = sheet.Given("T_a", period.Seconds, Dimension.None, "s");
        TracedNumber a1 = sheet.Factor("a_1", TracedNumber.Min(1 / ta, TracedNumber.Literal(2.5)), "13.3.1.1");
        TracedNumber a2 = sheet.Factor("a_2", TracedNumber.Max(1 - TracedNumber.Power(0.4 / ta, 2, 1), TracedNumber.Literal(0)), "13.3.1.1");
        return sheet.Factor("H_f", 1 + (a1 * height) + (a2 * TracedNumber.Power(height, 10, 1)), "13.3-4");
    }

    /// <summary>R_μ: how the ductility of the building lowers its motion (13.3.1.2).</summary>
    private TracedNumber DuctilityFactor(Sheet<TracedNumber> sheet)
    {
        if (IsAtGrade)
        {
            return sheet.Factor("R_mu", 1, "13.3.1.2, at or below grade");
        }

        if (System is not { } system)
        {
            return sheet.Factor("R_mu", 1.3, "13.3.1.2, system not known");
        }

        TracedNumber r = sheet.Given("R", system.ResponseModification, Dimension.None, "Table 12.2-1");
        TracedNumber ie = sheet.Given("I_e", system.ImportanceFactor, Dimension.None, "Table 1.5-2");
        TracedNumber omega = sheet.Given("Omega_0", system.Overstrength, Dimension.None, "Table 12.2-1");
        return sheet.Factor("R_mu", TracedNumber.Max(TracedNumber.Sqrt(1.1 * r / (ie * omega)), TracedNumber.Literal(1.3)), "13.3-6");
    }
}
