using ConcreteAttach.Attached;
using ConcreteAttach.Calculation;
using ConcreteAttach.Distribution;
using ConcreteAttach.Geometry;
using ConcreteAttach.Quantities;

namespace ConcreteAttach.Aci318;

/// <summary>A base plate in the units of an edition: every input converted once.</summary>
internal sealed class PlateData
{
    private readonly double _modularRatio;
    private readonly double _stretchLength;
    private readonly double _bedDepth;

    /// <param name="plate">The plate.</param>
    /// <param name="fasteners">Number of fasteners.</param>
    /// <param name="embedment">h_ef, which stands for a stretch length that is not given.</param>
    /// <param name="system">Units.</param>
    /// <exception cref="InputException">Holes that do not fit the number of fasteners, or an elastic bed without its depth.</exception>
    public PlateData(BasePlate plate, int fasteners, double embedment, MeasurementSystem system)
    {
        Plate = plate;
        Outline = plate.Outline.In(system);
        Ring = plate.Outline.RingIn(system);
        _modularRatio = plate.ModularRatio ?? double.NaN;
        _stretchLength = plate.StretchLength?.In(system) ?? embedment;
        _bedDepth = plate.BedDepth?.In(system) ?? double.NaN;
        if (plate.Contact == PlateContact.ElasticBed && plate.BedDepth is null)
        {
            throw new InputException("bedDepth", "nothing", "the depth of concrete that yields under the plate: an elastic bed needs it");
        }

        if (!plate.Holes.IsEmpty && plate.Holes.Length != fasteners)
        {
            throw new InputException("holes", $"{QuantityText.Format(plate.Holes.Length)} holes", $"one for each of the {QuantityText.Format(fasteners)} fasteners, or none for standard holes");
        }
    }

    public BasePlate Plate { get; }

    public Outline Outline { get; }

    public SimplePolygon Ring { get; }

    public bool IsInContact => Plate.Contact != PlateContact.StandOff;

    /// <summary>Whether the modular ratio was given.</summary>
    public bool HasModularRatio => !double.IsNaN(_modularRatio);

    public bool TakesShearAlongX(int fastener) => Plate.Holes.IsEmpty || Plate.Holes[fastener] is PlateHole.Standard or PlateHole.SlottedAlongY;

    public bool TakesShearAlongY(int fastener) => Plate.Holes.IsEmpty || Plate.Holes[fastener] is PlateHole.Standard or PlateHole.SlottedAlongX;

    /// <summary>κ: the force on a fastener per unit of the plane of pressure.</summary>
    public T Stiffness<T>(Sheet<T> sheet, AnchorageData data)
        where T : struct, IFormulaNumber<T>
    {
        T ratio = HasModularRatio
            ? sheet.Given("n_m", _modularRatio, Dimension.None, "E_s/E_c, as given")
            : ElasticModulus.ModularRatio(sheet, data);
        return Plate.Contact == PlateContact.ElasticBed
            ? PlateFormulas.ElasticBed(sheet, ratio, data.TensileArea, _bedDepth, _stretchLength)
            : PlateFormulas.StrainCompatibility(sheet, ratio, data.TensileArea);
    }

    /// <summary>How forces reach the fasteners of an attachment, with its plate or without one.</summary>
    /// <exception cref="InputException">A fastener outside of the plate, or a stiffness that is not known.</exception>
    public static FastenerDistribution Distribution(AnchorageData data, PlateData? plate, LugSupport? lugs)
    {
        var elastic = new ElasticGroup(data.X, data.Y);
        bool[] takesX = new bool[data.Count];
        bool[] takesY = new bool[data.Count];
        for (int i = 0; i < data.Count; i++)
        {
            takesX[i] = plate?.TakesShearAlongX(i) ?? true;
            takesY[i] = plate?.TakesShearAlongY(i) ?? true;
        }

        plate?.RequireAbout(data);
        var shear = new ShearGroup(data.X, data.Y, takesX, takesY);
        return new(elastic, shear, plate is { IsInContact: true } ? plate.OnConcrete(data, elastic) : null, plate?.Plate.PryingAllowance ?? 0) { Lugs = lugs };
    }

    private RigidPlate OnConcrete(AnchorageData data, ElasticGroup elastic)
    {
        if (double.IsNaN(data.TensileArea))
        {
            throw new InputException("tensileArea", "nothing", "the tensile area, or the thread it follows from: a plate in contact shares forces by the stiffness of the fasteners");
        }

        if (!HasModularRatio && !ElasticModulus.IsKnown(data))
        {
            throw new InputException("modularRatio", "nothing", $"E_s/E_c: 19.2.2.1 gives no E_c for this concrete ({data.Density})");
        }

        double[] x = new double[data.Count];
        double[] y = new double[data.Count];
        for (int i = 0; i < data.Count; i++)
        {
            x[i] = elastic.X(i);
            y[i] = elastic.Y(i);
        }

        ContactRegion region = data.Outline is { } fasteners
            ? PlateSupport.On(fasteners.Outline, Ring, elastic.CentroidX, elastic.CentroidY)
            : PlateSupport.On(data.Concrete, Ring, elastic.CentroidX, elastic.CentroidY);
        return new(region, x, y, Stiffness(default(Sheet<PlainNumber>), data).Value);
    }

    /// <summary>Each fastener passes through the plate: its axis lies at least half a diameter inside.</summary>
    private void RequireAbout(AnchorageData data)
    {
        for (int i = 0; i < data.Count; i++)
        {
            if (!Outline.Contains(data.X[i], data.Y[i]) || Limit.IsBelow(Outline.DistanceFrom(data.X[i], data.Y[i]), data.Diameter / 2))
            {
                MeasurementSystem system = data.Edition.System;
                throw new InputException(
                    "positions",
                    $"fastener {QuantityText.Format(i)} at x = {QuantityText.Format(data.X[i], Dimension.Length, system)}, y = {QuantityText.Format(data.Y[i], Dimension.Length, system)}",
                    "a place inside the plate, at least half a diameter from its edge");
            }
        }
    }
}
