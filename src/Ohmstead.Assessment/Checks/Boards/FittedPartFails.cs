using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Checks.Boards;

/// <summary>A part was fitted although its own readings before fitting are outside their limits.</summary>
public sealed class FittedPartFails : IBoardCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } = new("fitted-part-fails", Severity.Error, "a part was fitted although its own readings before fitting are outside their limits");

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(BoardUnderCheck board)
    {
        foreach (var (visit, work, place, lot) in board.Fittings())
        {
            var here = board.Assessment.Readings.LastOrDefault(reading =>
                reading.IsNew && reading.Reading.Lot?.Value == lot.Id.Value && reading.Visit.Date.Value <= visit.Date.Value
                && (reading.Place is null || reading.Place.Ref.Value == place.Part.Ref.Value));
            var failed = here ?? WhenItCame(board, lot, visit);
            if (failed?.Overall == VerdictOutcome.Outside)
            {
                var why = failed.Verdicts.FirstOrDefault(verdict => verdict.Outcome == VerdictOutcome.Outside)?.Why ?? "its test failed";
                yield return board.Finding(Description, work.Spot, $"{place.Part.Ref.Value} was fitted from lot {lot.Id.Value}, whose reading failed: {why}", "fit another part, or record a later reading of this one")
                    with { Related = [new RelatedPlace(failed.Reading.Spot.In(here is null ? board.Workshop.StockFile!.Path : board.Board.Path), "the reading that failed")] };
            }
        }
    }
    // The last reading of incoming inspection speaks for the part when the part itself was not measured on the board.
    private static AssessedReading? WhenItCame(BoardUnderCheck board, Lot lot, BenchVisit fitted)
    {
        var incoming = board.Workshop.IncomingReadings[lot.Id.Value].Where(pair => pair.Visit.Date.Value <= fitted.Date.Value).OrderBy(pair => pair.Visit.Date.Value).ToArray();
        return incoming.Length == 0 ? null : new Assessor(board.Workshop).AssessIncoming(incoming[^1].Visit, incoming[^1].Reading);
    }
}
