using ConcreteAttach.Attached;
using ConcreteAttach.Calculation;
using ConcreteAttach.Materials;
using ConcreteAttach.Quantities;
using UnitsNet;

namespace ConcreteAttach.Aci318;

/// <summary>Bars of anchor reinforcement in the units of an edition.</summary>
internal sealed class BarData
{
    /// <summary>No. 6 and No. 11: limits of the tables of 25.4.</summary>
    private static readonly Length No6 = DeformedBar.Find("No. 6").Diameter, No11 = DeformedBar.Find("No. 11").Diameter;

    /// <summary>Largest bar of the tests behind 17.5.2.1 (R17.5.2.1).</summary>
    private static readonly Length No5 = DeformedBar.Find("No. 5").Diameter;

    /// <summary>Grade 60 (420) and Grade 80 (550): a yield strength counts to the lower grade in either unit.</summary>
    private static readonly Pressure Grade60 = Pressure.FromMegapascals(420), Grade80 = Pressure.FromKilopoundsForcePerSquareInch(80);

    /// <summary>f_y from which 25.4.2.2 asks for transverse reinforcement: 80 ksi, in the SI edition 550 MPa, which is the lower.</summary>
    private static readonly Pressure HighStrength = Pressure.FromMegapascals(550);

    /// <param name="bars">The bars.</param>
    /// <param name="edition">The edition.</param>
    /// <param name="isEarthquake">For load cases whose earthquake part counts.</param>
    public BarData(AnchorBars bars, Aci318Edition edition, bool isEarthquake)
    {
        MeasurementSystem system = edition.System;
        Bars = bars;
        Diameter = bars.Bar.Diameter.In(system);
        Area = bars.Bar.Area.In(system);
        Yield = bars.Steel.Yield.In(system);
        LargestYield = isEarthquake ? edition.Development.LargestYieldUnderEarthquake : edition.Development.LargestYield;
        CoverToCenter = bars.CoverToCenter?.In(system) ?? double.NaN;
        TransverseIndex = bars.TransverseIndex.In(system);
        IsUpToNo5 = IsAtMost(bars.Bar.Diameter, No5);
        IsUpToNo6 = IsAtMost(bars.Bar.Diameter, No6);
        IsUpToNo11 = IsAtMost(bars.Bar.Diameter, No11);
        double yield = bars.Steel.Yield.In(MeasurementSystem.NewtonMillimetre);
        IsHighStrength = !Limit.IsBelow(yield, HighStrength.In(MeasurementSystem.NewtonMillimetre));
        GradeFactor = !Limit.IsBelow(Grade60.In(MeasurementSystem.NewtonMillimetre), yield) ? 1 : !Limit.IsBelow(Grade80.In(MeasurementSystem.NewtonMillimetre), yield) ? 1.15 : 1.3;
    }

    public AnchorBars Bars { get; }

    /// <summary>d_b.</summary>
    public double Diameter { get; }

    /// <summary>A_b.</summary>
    public double Area { get; }

    /// <summary>f_y as specified.</summary>
    public double Yield { get; }

    /// <summary>Largest f_y that may be used (Table 20.2.2.4(a)).</summary>
    public double LargestYield { get; }

    /// <summary>c_b; NaN where it is not given.</summary>
    public double CoverToCenter { get; }

    /// <summary>K_tr.</summary>
    public double TransverseIndex { get; }

    public bool IsUpToNo5 { get; }

    public bool IsUpToNo6 { get; }

    public bool IsUpToNo11 { get; }

    /// <summary>Whether straight bars need K_tr of 0.5 d_b where they are closely spaced (25.4.2.2).</summary>
    public bool IsHighStrength { get; }

    /// <summary>ψ_g of Table 25.4.2.5.</summary>
    public double GradeFactor { get; }

    /// <summary>f_y as it may be used.</summary>
    public T UsedYield<T>(Sheet<T> sheet)
        where T : struct, IFormulaNumber<T>
    {
        T yield = sheet.Given("f_y", Yield, Dimension.Stress);
        if (Yield <= LargestYield)
        {
            return yield;
        }

        sheet.Note("Table 20.2.2.4(a) limits the yield strength of anchor reinforcement that may be used.");
        return sheet.Step("f_y_lim", T.Min(yield, T.Literal(LargestYield)), Dimension.Stress, "Table 20.2.2.4(a)");
    }

    private static bool IsAtMost(Length diameter, Length limit) => !Limit.IsBelow(limit.In(MeasurementSystem.PoundInch), diameter.In(MeasurementSystem.PoundInch));
}
