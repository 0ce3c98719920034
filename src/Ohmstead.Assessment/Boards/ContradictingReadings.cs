using Ohmstead.Assessment.Verdicts;
using Ohmstead.Electronics;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Boards;

/// <summary>Two readings of one quantity of one piece that contradict each other, with nothing done between them.</summary>
/// <param name="At">The part or the point.</param>
/// <param name="Failed">The one that fails.</param>
/// <param name="Passed">The one that passes.</param>
/// <param name="Measured">The quantity.</param>
public sealed record ContradictingReadings(string At, AssessedReading Failed, AssessedReading Passed, Measured Measured)
{
    /// <summary>What to do.</summary>
    internal const string NextStep = "measure it a third time, or say in a note on one of the two what was wrong with it, or decide with a reason";

    /// <summary>What says which of the two holds: a decision, or a third reading; null while nothing does.</summary>
    internal (Decision? Decision, AssessedReading? Reading, BenchVisit Visit)? Answer { get; private init; }

    /// <summary>The two in words.</summary>
    internal LazyText Words => LazyText.Of(this, static pair =>
        $"{VerdictWords.Of(pair.Measured)} fails on line {Line(pair.Failed)} and passes on line {Line(pair.Passed)}, with nothing done between: which of the two holds is not known");

    /// <summary>
    /// All pairs of a board whose readings still count: of one day, or of a new piece that lay in the drawer between them. Another instrument or another day may
    /// well give another answer; a minute later the same part should not.
    /// </summary>
    internal static IEnumerable<ContradictingReadings> Of(BoardAssessment board)
    {
        foreach (var place in board.Places)
        {
            for (var later = 1; later < place.Counting.Length; later++)
            {
                if (Pair(board, place, later) is { } pair)
                {
                    yield return pair;
                }
            }
        }
    }

    private static ContradictingReadings? Pair(BoardAssessment board, PlaceHistory place, int later)
    {
        var second = place.Counting[later];
        foreach (var verdict in second.Verdicts)
        {
            if (verdict.Outcome is not (VerdictOutcome.Inside or VerdictOutcome.Outside))
            {
                continue;
            }

            // The nearest reading of the same quantity that says anything.
            for (var earlier = later - 1; earlier >= 0; earlier--)
            {
                var first = place.Counting[earlier];
                if (Decided(first, verdict.Measured) is not { } other)
                {
                    continue;
                }

                if (other == verdict.Outcome || !AreOfOneOccasion(board, place, first, second))
                {
                    break;
                }

                var (failed, passed) = verdict.Outcome == VerdictOutcome.Inside ? (first, second) : (second, first);
                return new(place.Part.Ref.Value, failed, passed, verdict.Measured) { Answer = AnswerOf(board, place, first, later, verdict) };
            }
        }

        return null;
    }

    private static VerdictOutcome? Decided(AssessedReading reading, Measured measured)
    {
        foreach (var verdict in reading.Verdicts)
        {
            if (verdict.Measured == measured && verdict.Outcome is VerdictOutcome.Inside or VerdictOutcome.Outside)
            {
                return verdict.Outcome;
            }
        }

        return null;
    }

    private static bool AreOfOneOccasion(BoardAssessment board, PlaceHistory place, AssessedReading first, AssessedReading second) =>
        first.IsNew == second.IsNew && first.VisitOrder >= 0 && second.VisitOrder >= 0
        && (first.IsNew || first.Visit.Date.Value == second.Visit.Date.Value)
        && !WasWorkedOnBetween(board, place.Part.Ref.Value, first.At, second.At);

    private static bool WasWorkedOnBetween(BoardAssessment board, string reference, Moment first, Moment second)
    {
        for (var order = Math.Max(first.Visit, 0); order <= second.Visit; order++)
        {
            foreach (var work in board.Visits[order].Work)
            {
                if ((work.Part?.Value == reference || work.At?.Value == reference) && Moment.Of(order, work.Spot) is var at && at > first && at < second)
                {
                    return true;
                }
            }
        }

        return false;
    }

    private static (Decision?, AssessedReading?, BenchVisit)? AnswerOf(BoardAssessment board, PlaceHistory place, AssessedReading first, int later, Verdict verdict)
    {
        if (place.Decision is { } decision && place.DecidedAt > place.Counting[later].At)
        {
            return (decision, null, board.Visits[place.DecidedAt.Visit]);
        }

        if (first.Reading.Note is not null || place.Counting[later].Reading.Note is not null)
        {
            return (null, place.Counting[later], place.Counting[later].Visit);
        }

        for (var third = later + 1; third < place.Counting.Length; third++)
        {
            if (Decided(place.Counting[third], verdict.Measured) == verdict.Outcome)
            {
                return (null, place.Counting[third], place.Counting[third].Visit);
            }
        }

        return null;
    }

    private static string Line(AssessedReading reading) => reading.Reading.Spot.Line.ToString(System.Globalization.CultureInfo.InvariantCulture);
}
