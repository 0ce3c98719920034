using System.Collections.Immutable;
using Ohmstead.Assessment.Shelf.Ages;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.History;

/// <summary>A new piece that was put into a place and sits there, as the history of its place tells it.</summary>
/// <param name="Place">The place.</param>
/// <param name="Work">The work that put it in.</param>
/// <param name="Visit">The visit of that work.</param>
public record NewPiece(PlaceHistory Place, WorkEntry Work, BenchVisit Visit)
{
    /// <summary>When it was put in.</summary>
    internal Moment At { get; init; }

    /// <summary>What it is, by its lot or by the work; null when the record does not say.</summary>
    public PartValues? Values => Place.FittedLot?.Values ?? Work.NewPart;

    /// <summary>
    /// How long an electrolytic may lie and from when, as seen on the day on which it was put in; null for other parts, and where nothing
    /// says how old it was.
    /// </summary>
    public ShelfLife? ShelfLife { get; init; }

    /// <summary>True when a bench measures parts of its kind one by one; others are proved by the board that works with them.</summary>
    public bool IsMeasured => Kind.ProvedBy.Length > 0;

    /// <summary>Read in this place and passed, as a new part before it went in or as what sits there since; null when it was not.</summary>
    internal AssessedReading? Own { get; init; }

    /// <summary>What it is, else what belongs there.</summary>
    internal PartKind Kind => (Values ?? Place.Part.Values).Kind.Value;

    /// <summary>The pieces that sit on a board, in order of the parts list.</summary>
    /// <param name="places">The places of the board.</param>
    /// <param name="datesOf">What the date code of a lot can mean, as seen on a day.</param>
    internal static ImmutableArray<NewPiece> On(ImmutableArray<PlaceHistory> places, Func<Lot, DateOnly, LotDates> datesOf)
    {
        var pieces = ImmutableArray.CreateBuilder<NewPiece>();
        foreach (var place in places)
        {
            if (place is { FittedBy: { } work, IsEmpty: false, Change.PutIn: { } putIn })
            {
                var kind = ((place.FittedLot?.Values ?? work.NewPart) ?? place.Part.Values).Kind.Value;
                pieces.Add(
                    new NewPiece(place, work, putIn.Visit)
                    {
                        At = putIn.At,
                        Own = place.Counting.LastOrDefault(reading => reading.Place is not null && Passes(reading, kind)),
                        ShelfLife = ShelfLifeOf(place.FittedLot, work.NewPart, putIn.Visit.Date.Value, datesOf),
                    }
                );
            }
        }

        return pieces.DrainToImmutable();
    }

    private static ShelfLife? ShelfLifeOf(Lot? lot, PartValues? part, DateOnly day, Func<Lot, DateOnly, LotDates> datesOf) =>
        (lot?.Values ?? part) is not { Kind.Value.IsElectrolytic: true } values ? null
        : lot is null ? ShelfLife.For(values, day)
        : ShelfLife.For(lot, day, datesOf);

    /// <summary>Whether a reading says that a part of a kind is what its mark says.</summary>
    internal static bool Passes(AssessedReading reading, PartKind kind)
    {
        return kind.ProvedBy.Length == 0
            ? reading.Overall == VerdictOutcome.Inside
            : HasInside(reading, kind.ProvedBy) || (kind.IsTestedByUse && reading.Reading.Result is { Value: TestResult.Pass });
    }

    private static bool HasInside(AssessedReading reading, ImmutableArray<Measured> quantities)
    {
        foreach (var verdict in reading.Verdicts)
        {
            if (verdict.Outcome == VerdictOutcome.Inside && quantities.Contains(verdict.Measured))
            {
                return true;
            }
        }

        return false;
    }
}
