using System.Collections.Immutable;
using ConcreteAttach.Calculation;
using ConcreteAttach.Quantities;
using UnitsNet;

namespace ConcreteAttach.Connections;

/// <summary>One rule for the bolts of a sill, and whether it is kept.</summary>
/// <param name="Name">What it asks, in words.</param>
/// <param name="Clause">Where it stands.</param>
/// <param name="IsMet">Whether it is kept.</param>
/// <param name="Found">What was found.</param>
/// <param name="Permitted">What is permitted.</param>
public sealed record SillBoltRule(string Name, string Clause, bool IsMet, string Found, string Permitted);

/// <summary>
/// Bolts of a wood sill on concrete by prescription, without calculation: IRC R403.1.6 and R403.1.6.1. A piece of sill is taken by itself. It says where bolts have to stand, never what they hold; walls
/// that are engineered, hold-downs and plate washers of braced walls are other rules.
/// </summary>
/// <remarks>
/// Size, embedment, spacing, count and end distances were read in a secondary source; the middle third, and 4 ft in R403.1.6.1, are from memory. Exceptions for pieces of at most 24 in. are not covered. Local codes
/// change these rules often, and they govern.
/// </remarks>
public static class PrescriptiveSillBolts
{
    private const MeasurementSystem System = MeasurementSystem.PoundInch;

    private const string Clause = "IRC R403.1.6";

    private const double LeastDiameter = 0.5;

    private const double LeastEmbedment = 7;

    private const double LargestEnd = 12;

    private const double LeastEndInDiameters = 7;

    private const int LeastCount = 2;

    /// <summary>Pieces up to this length, in., have exceptions that are not covered.</summary>
    private const double ShortPiece = 24;

    /// <summary>Largest spacing: 6 ft.</summary>
    public static Length LargestSpacing { get; } = Length.FromInches(72);

    /// <summary>Largest spacing in Seismic Design Categories D0 to D2, and for townhouses in C, in buildings above two stories (R403.1.6.1, from memory): 4 ft.</summary>
    public static Length LargestSpacingAboveTwoStories { get; } = Length.FromInches(48);

    /// <summary>Fewest bolts for a piece of sill, evenly spaced between the two beside its ends.</summary>
    /// <param name="pieceLength">Length of the piece; more than 24 in. and at least 14 bolt diameters, finite.</param>
    /// <param name="diameter">Nominal diameter of the bolts; at least 1/2 in.</param>
    /// <param name="largestSpacing">Largest spacing; greater than 0. Null: <see cref="LargestSpacing"/>.</param>
    /// <returns>Distances from one end of the piece, rising; symmetric.</returns>
    /// <exception cref="InputException">A parameter is outside its range.</exception>
    public static ImmutableArray<Length> Places(Length pieceLength, Length diameter, Length? largestSpacing = null)
    {
        double length = Piece(pieceLength), d = Require.Positive(nameof(diameter), diameter).In(System);
        double spacing = Require.Positive(nameof(largestSpacing), largestSpacing ?? LargestSpacing).In(System);
        if (Limit.IsBelow(d, LeastDiameter))
        {
            throw new InputException(nameof(diameter), QuantityText.Format(diameter), "at least 1/2 in.");
        }

        double leastEnd = LeastEndInDiameters * d;
        if (Limit.IsBelow(LargestEnd, leastEnd))
        {
            throw new InputException(nameof(diameter), QuantityText.Format(diameter), "at most 12/7 in.: a bolt within 12 in. of an end stands at least 7 diameters from it");
        }

        if (Limit.IsBelow(length, 2 * leastEnd))
        {
            throw new InputException(nameof(pieceLength), QuantityText.Format(pieceLength), $"at least 14 diameters, {QuantityText.Format(Length.FromInches(2 * leastEnd))}");
        }

        // As far from the ends as is permitted, so that the fewest bolts do; a short piece keeps its bolts at the quarter points, or 7 diameters from the ends where that is more.
        double end = Math.Max(leastEnd, Math.Min(LargestEnd, length / 4));
        double inner = length - (2 * end);
        int gaps = Math.Max(1, (int)Math.Ceiling((inner / spacing) - Limit.Tolerance));
        return [.. Enumerable.Range(0, gaps + 1).Select(i => Length.FromInches(end + (inner * i / gaps)))];
    }

    /// <summary>Checks bolts that are planned, or found.</summary>
    /// <param name="pieceLength">Length of the piece; more than 24 in., finite.</param>
    /// <param name="plateWidth">Actual width of the piece; greater than 0.</param>
    /// <param name="places">Distances of the bolts from one end, in any order, each within the piece.</param>
    /// <param name="fromEdge">Distance of the bolts from one side of the piece; greater than 0, within the width.</param>
    /// <param name="diameter">Nominal diameter of the bolts; greater than 0.</param>
    /// <param name="embedment">Length of the bolts in concrete or in grouted cells; greater than 0.</param>
    /// <param name="largestSpacing">Largest spacing; greater than 0. Null: <see cref="LargestSpacing"/>.</param>
    /// <returns>Every rule, in the order of the clause.</returns>
    /// <exception cref="InputException">A parameter is outside its range.</exception>
    public static ImmutableArray<SillBoltRule> Check(
        Length pieceLength, Length plateWidth, IEnumerable<Length> places, Length fromEdge, Length diameter, Length embedment, Length? largestSpacing = null)
    {
        ArgumentNullException.ThrowIfNull(places);
        double length = Piece(pieceLength), width = Require.Positive(nameof(plateWidth), plateWidth).In(System);
        double d = Require.Positive(nameof(diameter), diameter).In(System), h = Require.Positive(nameof(embedment), embedment).In(System);
        double spacing = Require.Positive(nameof(largestSpacing), largestSpacing ?? LargestSpacing).In(System);
        double side = Within(nameof(fromEdge), fromEdge, width);
        double[] at = [.. places.Select(place => Within(nameof(places), place, length)).Order()];
        double widest = at.Length < 2 ? 0 : at.Zip(at[1..], (a, b) => b - a).Max();
        double first = at.Length == 0 ? double.NaN : at[0], last = at.Length == 0 ? double.NaN : length - at[^1];
        return
        [
            AtLeast("Diameter", d, LeastDiameter),
            AtLeast("Length in the concrete", h, LeastEmbedment),
            AtMost("Spacing", widest, spacing),
            new("Bolts in the piece", Clause, at.Length >= LeastCount, QuantityText.Format(at.Length), $"at least {QuantityText.Format(LeastCount)}"),
            End("First bolt from its end", first, d),
            End("Last bolt from its end", last, d),
            new(
                "Middle third of the width", Clause, !Limit.IsBelow(side, width / 3) && !Limit.IsBelow(width * 2 / 3, side), Shown(side), $"{Shown(width / 3)} to {Shown(width * 2 / 3)} from the side"),
        ];
    }

    private static double Piece(Length pieceLength)
    {
        double length = Require.Positive(nameof(pieceLength), pieceLength).In(System);
        return Limit.IsBelow(ShortPiece, length)
            ? length
            : throw new InputException(nameof(pieceLength), QuantityText.Format(pieceLength), "more than 24 in.: the exceptions for shorter pieces are not covered");
    }

    private static double Within(string parameter, Length value, double whole)
    {
        double place = Require.Positive(parameter, value).In(System);
        return Limit.IsBelow(place, whole) ? place : throw new InputException(parameter, QuantityText.Format(value), $"less than {Shown(whole)}");
    }

    private static SillBoltRule AtLeast(string name, double found, double least) => new(name, Clause, !Limit.IsBelow(found, least), Shown(found), $"at least {Shown(least)}");

    private static SillBoltRule AtMost(string name, double found, double most) => new(name, Clause, !Limit.IsBelow(most, found), Shown(found), $"at most {Shown(most)}");

    private static SillBoltRule End(string name, double found, double diameter)
    {
        double least = LeastEndInDiameters * diameter;
        bool isMet = !double.IsNaN(found) && !Limit.IsBelow(found, least) && !Limit.IsBelow(LargestEnd, found);
        return new(name, Clause, isMet, double.IsNaN(found) ? "no bolt" : Shown(found), $"{Shown(least)} (7 diameters) to {Shown(LargestEnd)}");
    }

    private static string Shown(double inches) => QuantityText.Format(inches, Dimension.Length, System);
}
