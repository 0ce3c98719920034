using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Obligations.Basis;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Obligations.Rules;

/// <summary>What was decided to be done was done: replaced, formed again and read since, measured out of circuit.</summary>
public sealed class DecisionDone : IObligationRule
{
    /// <inheritdoc/>
    public string Kind => "decision-done";

    /// <inheritdoc/>
    public string Asks => "what was decided to be done was done, and what was formed again was read since";

    /// <inheritdoc/>
    public IEnumerable<Obligation> Ask(BoardUnderObligation board) => [.. Listed(board), .. Unlisted(board)];

    private IEnumerable<Obligation> Listed(BoardUnderObligation board)
    {
        foreach (var place in board.Board.Places)
        {
            if (place is not { Decision: { } decision, IsEmpty: false })
            {
                continue;
            }

            var at = place.Part.Ref.Value;
            switch (decision.What.Value)
            {
                case DecisionKind.Replace when place is { IsToBeReplaced: true, HasFailed: false }:
                    yield return Obligation.Open(
                        Kind,
                        BoardState.FaultStands,
                        at,
                        $"decided to be replaced: {decision.Because.Value}",
                        "replace it",
                        $"replace {at}, as decided"
                    );
                    break;
                case DecisionKind.FormAgain:
                    yield return Formed(board, place, decision);
                    break;
                case DecisionKind.MeasureOutOfCircuit:
                    yield return OutOfCircuit(board, place) is { } reading
                        ? Obligation.Met(Kind, at, "decided to be measured out of circuit", board.By(reading))
                        : Obligation.Open(
                            Kind,
                            BoardState.ProofDue,
                            at,
                            $"decided to be measured out of circuit, and not read so since: {decision.Because.Value}",
                            "lift a leg and measure it",
                            $"lift a leg of {at} and measure it, as decided"
                        );
                    break;
                case DecisionKind.Keep or DecisionKind.Watch or DecisionKind.LeaveAlone or DecisionKind.Replace:
                    break;
            }
        }
    }

    // What no list of parts has can be decided about, too.
    private IEnumerable<Obligation> Unlisted(BoardUnderObligation board)
    {
        var latest = new SortedDictionary<string, (Moment At, Decision Decision)>(StringComparer.Ordinal);
        for (var order = 0; order < board.Board.Visits.Length; order++)
        {
            foreach (var decision in board.Board.Visits[order].Decided)
            {
                if (decision.Place is { } place && board.Board.Place(place.Value) is null)
                {
                    latest[place.Value] = (Moment.At(order, decision.Spot), decision);
                }
            }
        }

        foreach (var (at, (moment, decision)) in latest)
        {
            if (!decision.What.Value.LetsStay() && !IsDone(board, at, moment, decision.What.Value))
            {
                yield return Obligation.Open(
                    Kind,
                    BoardState.FaultStands,
                    at,
                    $"decided: {decision.What.Text}, and not done since: {decision.Because.Value}",
                    "do it, and record the work or the reading there",
                    $"{at}: {decision.What.Text}, as decided"
                );
            }
        }
    }

    private static bool IsDone(BoardUnderObligation board, string at, Moment decided, DecisionKind what) =>
        what switch
        {
            DecisionKind.MeasureOutOfCircuit => board
                .ReadingsOf(at)
                .Any(reading => reading.At > decided && reading.Reading.Circuit is { Value: Circuit.Out }),
            DecisionKind.FormAgain => WasDone(board, at, decided, work => work is WorkKind.Reformed or WorkKind.Replaced),
            DecisionKind.Replace => WasDone(board, at, decided, work => work is WorkKind.Replaced or WorkKind.Fitted),
            DecisionKind.Keep or DecisionKind.Watch or DecisionKind.LeaveAlone => true,
        };

    // Work of the visit that decided it carries it out, wherever it stands there.
    private static bool WasDone(BoardUnderObligation board, string at, Moment decided, Func<WorkKind, bool> isIt) =>
        board.WorkAt(at).Any(done => done.Order >= decided.Visit && isIt(done.Work.Did.Value));

    private Obligation Formed(BoardUnderObligation board, PlaceHistory place, Decision decision)
    {
        var (at, work) = (place.Part.Ref.Value, LastForming(board, place));
        return work is not { } formed
                ? Obligation.Open(
                    Kind,
                    BoardState.FaultStands,
                    at,
                    $"decided to be formed again, and not done since: {decision.Because.Value}",
                    "form it again slowly, let it rest, measure its leakage",
                    $"form {at} again slowly, let it rest, measure its leakage"
                )
            : place.Counting.LastOrDefault(reading =>
                reading.At > formed.At && reading.Verdicts.Any(verdict => verdict.Outcome == Verdicts.VerdictOutcome.Inside)
            )
                is { } reading
                ? Obligation.Met(Kind, at, "decided to be formed again", board.By(reading))
            : Obligation.Open(
                Kind,
                BoardState.ProofDue,
                at,
                $"formed again on {BoardUnderObligation.Day(formed.Visit)} and not read inside its limits since",
                "measure its leakage after a rest, and its capacitance",
                $"measure the leakage of {at} after a rest, and its capacitance"
            );
    }

    private static (Moment At, BenchVisit Visit)? LastForming(BoardUnderObligation board, PlaceHistory place)
    {
        // Forming of the visit that decided it counts, wherever it stands there.
        (Moment At, BenchVisit Visit)? last = null;
        foreach (var (order, visit, work) in board.WorkAt(place.Part.Ref.Value))
        {
            if (order >= place.DecidedAt.Visit && work is { Did.Value: WorkKind.Reformed, Part: not null })
            {
                last = (Moment.At(order, work.Spot), visit);
            }
        }

        return last;
    }

    private static AssessedReading? OutOfCircuit(BoardUnderObligation board, PlaceHistory place) =>
        place.Counting.LastOrDefault(reading =>
            reading.At > place.DecidedAt
            && reading.Reading.Circuit is { Value: Circuit.Out }
            && reading.Verdicts.Any(verdict =>
                verdict.Outcome is Verdicts.VerdictOutcome.Inside or Verdicts.VerdictOutcome.Outside or Verdicts.VerdictOutcome.Undecided
            )
        );
}
