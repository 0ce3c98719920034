using System.Collections.Immutable;
using System.Globalization;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Electronics;
using Ohmstead.Records.Model;
using Ohmstead.Records.Text;

namespace Ohmstead.Assessment.Boards;

/// <summary>Two readings of one quantity that contradict each other, with nothing done between them.</summary>
/// <param name="At">The part or the point.</param>
/// <param name="Measured">The quantity, or null for a test of function.</param>
/// <param name="First">Where the earlier one stands.</param>
/// <param name="Second">Where the later one stands.</param>
/// <param name="PassesFirst">True when the earlier one passes and the later one fails.</param>
public sealed record ContradictingReadings(string At, Measured? Measured, Spot First, Spot Second, bool PassesFirst)
{
    /// <summary>What to do.</summary>
    internal const string NextStep =
        "measure it a third time, or say in a note on one of the two what was wrong with it, or decide with a reason";

    /// <summary>What says which of the two holds: the words, the day and the place of it; null while nothing does.</summary>
    internal (LazyText Words, DateOnly Day, Spot Spot)? Answer { get; private init; }

    /// <summary>The two in words.</summary>
    internal LazyText Words =>
        LazyText.For(this, static pair =>
            string.Create(
                CultureInfo.InvariantCulture,
                $"{(pair.Measured is { } measured ? VerdictWords.Describe(measured) : "the test")} "
                    + $"{(pair.PassesFirst ? "passes" : "fails")} on line {pair.First.Line} and "
                    + $"{(pair.PassesFirst ? "fails" : "passes")} on line {pair.Second.Line}, with nothing done "
                    + $"between: which of the two holds is not known"
            )
        );

    /// <summary>
    /// All pairs of a board whose readings still count: of one day, or of a new piece that lay in the drawer between them. Another day may
    /// well give another answer; an hour later the same part should not.
    /// </summary>
    internal static IEnumerable<ContradictingReadings> Find(BoardHistory board)
    {
        foreach (var place in board.Places)
        {
            if (
                place.Counting.Length > 1
                && place.Counting.Any(Fails)
                && In(
                    board,
                    place.Part.Ref.Value,
                    [.. place.Counting.Where(reading => reading.VisitOrder >= 0).Select(ComparedReading.From)]
                )
                    is { } pair
            )
            {
                yield return pair;
            }
        }

        // Most boards have nothing that fails, and then nothing contradicts it.
        if (!board.Readings.Any(Fails) && !board.Proofs.Any(static proof => proof.Outcome == VerdictOutcome.Outside))
        {
            yield break;
        }

        var read = board
            .Readings.Where(static reading => reading.Reading is { Part: null, Lot: null, Point: not null })
            .ToLookup(static reading => reading.Reading.Point!.Value, StringComparer.Ordinal);
        foreach (var point in board.Points)
        {
            var name = point.Name.Value;
            var entries = read[name].Select(ComparedReading.From).Concat(board.ProofsAt(name).Select(ComparedReading.From));
            if (In(board, name, [.. entries.OrderBy(entry => entry.At)]) is { } pair)
            {
                yield return pair;
            }
        }
    }

    private static bool Fails(AssessedReading reading) => reading.Overall == VerdictOutcome.Outside;

    private static ContradictingReadings? In(BoardHistory board, string at, ImmutableArray<ComparedReading> entries)
    {
        for (var later = 1; later < entries.Length; later++)
        {
            if (Tests(board, at, entries, later) is { } tests)
            {
                return tests;
            }

            foreach (var verdict in entries[later].Verdicts)
            {
                if (
                    verdict.Outcome is VerdictOutcome.Inside or VerdictOutcome.Outside
                    && Nearest(entries, later, verdict.Measured) is { } first
                    && first.Says(verdict.Measured) != verdict.Outcome
                    && AreOfOneOccasion(board, at, first, entries[later])
                )
                {
                    return new(at, verdict.Measured, first.Spot, entries[later].Spot, verdict.Outcome == VerdictOutcome.Outside)
                    {
                        Answer = AnswerOf(board, at, entries, first, later, third =>
                            third.Says(verdict.Measured) is { } says ? says == verdict.Outcome : null
                        ),
                    };
                }
            }
        }

        return null;
    }

    // The nearest reading before that says anything of the quantity.
    private static ComparedReading? Nearest(ImmutableArray<ComparedReading> entries, int later, Measured measured)
    {
        for (var earlier = later - 1; earlier >= 0; earlier--)
        {
            if (entries[earlier].Says(measured) is not null)
            {
                return entries[earlier];
            }
        }

        return null;
    }

    // A test that fails and is passed a minute later is as much in doubt as a value.
    private static ContradictingReadings? Tests(BoardHistory board, string at, ImmutableArray<ComparedReading> entries, int later)
    {
        if (entries[later].Result is not { } result)
        {
            return null;
        }

        for (var earlier = later - 1; earlier >= 0; earlier--)
        {
            if (entries[earlier].Result is { } before)
            {
                return before == result || !AreOfOneOccasion(board, at, entries[earlier], entries[later])
                    ? null
                    : new(at, null, entries[earlier].Spot, entries[later].Spot, before == TestResult.Pass)
                    {
                        Answer = AnswerOf(board, at, entries, entries[earlier], later, third =>
                            third.Result is { } again ? again == result : null
                        ),
                    };
            }
        }

        return null;
    }

    private static bool AreOfOneOccasion(BoardHistory board, string at, ComparedReading first, ComparedReading second) =>
        first.IsNew == second.IsNew
        && (first.IsNew || first.Visit.Date.Value == second.Visit.Date.Value)
        && (first.Piece is null || second.Piece is null || first.Piece == second.Piece)
        && !WasWorkedOnBetween(board, at, first.At, second.At);

    // What was done to another part changes nothing in this one; what was mended anywhere may change what a point shows, what was cleaned
    // does not.
    private static bool WasWorkedOnBetween(BoardHistory board, string at, Moment first, Moment second)
    {
        var isPoint = board.Place(at) is null;
        for (var order = first.Visit; order <= second.Visit; order++)
        {
            foreach (var work in board.Visits[order].Work)
            {
                if (
                    work.Did.Value != WorkKind.LeftAlone
                    && (IsAt(work, at) || (isPoint && work.Did.Value is not (WorkKind.Cleaned or WorkKind.Washed)))
                    && Moment.At(order, work.Spot) is var done
                    && done > first
                    && done < second
                )
                {
                    return true;
                }
            }
        }

        return false;
    }

    private static bool IsAt(WorkEntry work, string at) =>
        work.Part?.Value == at
        || work.At?.Value == at
        || work.Clears?.Value == at
        || (work.Part is null && work.At is { } place && place.Value.Split(' ').Contains(at, StringComparer.Ordinal));

    private static (LazyText Words, DateOnly Day, Spot Spot)? AnswerOf(
        BoardHistory board,
        string at,
        ImmutableArray<ComparedReading> entries,
        ComparedReading first,
        int later,
        Func<ComparedReading, bool?> agrees
    )
    {
        var second = entries[later];
        if ((first.Note.SaySomething() ? first : second) is { Note: { } note } explained && explained.Note.SaySomething())
        {
            return (note.Value, explained.Visit.Date.Value, explained.Spot);
        }

        for (var third = later + 1; third < entries.Length; third++)
        {
            if (agrees(entries[third]) is { } agreed)
            {
                return agreed ? ("read a third time", entries[third].Visit.Date.Value, entries[third].Spot) : null;
            }
        }

        return DecisionAfter(board, at, second.At) is var (decision, visit)
            ? ($"decided: {decision.What.Text}, because {decision.Because.Value}", visit.Date.Value, decision.Spot)
            : null;
    }

    private static (Decision Decision, BenchVisit Visit)? DecisionAfter(BoardHistory board, string at, Moment moment)
    {
        for (var order = board.Visits.Length - 1; order >= moment.Visit; order--)
        {
            foreach (var decision in board.Visits[order].Decided)
            {
                if (decision.Place?.Value == at && decision.GivesAReason && Moment.At(order, decision.Spot) > moment)
                {
                    return (decision, board.Visits[order]);
                }
            }
        }

        return null;
    }

    private sealed record ComparedReading(
        Moment At,
        BenchVisit Visit,
        Spot Spot,
        ImmutableArray<Verdict> Verdicts,
        TestResult? Result,
        Written<string>? Note,
        bool IsNew,
        string? Piece
    )
    {
        internal static ComparedReading From(AssessedReading reading) =>
            new(
                reading.At,
                reading.Visit,
                reading.Reading.Spot,
                reading.Verdicts,
                reading.Reading.Result?.Value,
                reading.Reading.Note,
                reading.IsNew,
                reading.Reading.Piece?.Value
            );

        internal static ComparedReading From(AssessedProof proof) =>
            new(proof.At, proof.Visit, proof.Proof.Spot, proof.Verdicts, proof.Proof.Result?.Value, proof.Proof.Note, false, null);

        internal VerdictOutcome? Says(Measured measured)
        {
            foreach (var verdict in Verdicts)
            {
                if (verdict.Measured == measured && verdict.Outcome is VerdictOutcome.Inside or VerdictOutcome.Outside)
                {
                    return verdict.Outcome;
                }
            }

            return null;
        }
    }
}
