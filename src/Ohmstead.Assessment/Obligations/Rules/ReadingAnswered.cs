using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Obligations.Basis;
using Ohmstead.Assessment.Verdicts;

namespace Ohmstead.Assessment.Obligations.Rules;

/// <summary>No failed reading or test of what sits on the board stands unanswered.</summary>
public sealed class ReadingAnswered : IObligationRule
{
    /// <inheritdoc/>
    public string Kind => "reading-answered";

    /// <inheritdoc/>
    public string Asks => "no reading of what sits there is outside its limit, or a decision that knew it keeps the part with a reason";

    /// <inheritdoc/>
    public string AsMet => "nothing that was read of it is outside";

    /// <inheritdoc/>
    public IEnumerable<Obligation> Ask(BoardUnderObligation board)
    {
        foreach (var place in board.Board.Places)
        {
            var at = place.Part.Ref.Value;
            if (place is { HasFailed: true, IsKeptByDecision: true, Decision: { } decision })
            {
                yield return Obligation.Met(Kind, at, Why(place), board.By(decision, board.Board.Visits[place.DecidedAt.Visit].Date.Value));
            }
            else if (place.HasFailed)
            {
                yield return Obligation.Open(Kind, BoardState.FaultStands, at, Told(place), NextStep(place), Act(place, at));
            }
            else if (!place.IsEmpty && place.FirstOf(VerdictOutcome.Inside) is { } inside)
            {
                yield return Obligation.Met(Kind, at, AsMet, board.By(inside.By, inside.Verdict));
            }
        }

        foreach (var reading in board.Board.Readings)
        {
            if (
                reading is { IsNew: true, Place: { } part, Reading.Lot: null }
                && reading.Overall == VerdictOutcome.Outside
                && !WasFittedSince(board.Board, part.Ref.Value, reading)
            )
            {
                yield return Obligation.Open(
                    Kind,
                    BoardState.ProofDue,
                    part.Ref.Value,
                    $"{reading.Verdicts[0].Why}; it is called a new part, and none was fitted since",
                    "say of which piece it is: state: as found, or the lot of the new one"
                );
            }
        }
    }

    private static bool WasFittedSince(BoardAssessment board, string at, AssessedReading reading)
    {
        for (var order = Math.Max(reading.VisitOrder, 0); order < board.Visits.Length; order++)
        {
            foreach (var work in board.Visits[order].Work)
            {
                if (work.PutsAPartIn && (work.Part ?? work.At)?.Value == at)
                {
                    return true;
                }
            }
        }

        return false;
    }

    private static string Why(PlaceHistory place) => place.FirstOf(VerdictOutcome.Outside)?.Verdict.Why.Text ?? "its test failed";

    // A decision that did not know the reading is told: whoever made it should hear that it does not hold.
    private static string Told(PlaceHistory place) =>
        Why(place) + (DecisionWords.Doubt(place) is { } doubt ? $"; '{place.Decision!.What.Text}': {doubt}" : string.Empty);

    private static string NextStep(PlaceHistory place) =>
        place.IsSafetyRelevant
            ? "replace it; defer to local codes and licensed practice"
            : "replace it, measure it again, or decide with a reason";

    private static string Act(PlaceHistory place, string at) =>
        place.IsSafetyRelevant
            ? $"replace {at}; defer to local codes and licensed practice"
            : $"replace {at}, measure it again, or decide with a reason";
}
