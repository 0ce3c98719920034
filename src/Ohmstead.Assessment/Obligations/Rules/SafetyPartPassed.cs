using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Obligations.Basis;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Electronics;
using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Obligations.Rules;

/// <summary>
/// A part that people rely on not to be hurt and that was read was passed by what was read: too close to call, without a limit, or measured
/// in a way that proves nothing is no pass. One that nobody read is told. Defer to local codes and licensed practice.
/// </summary>
public sealed class SafetyPartPassed : IObligationRule
{
    private const string NextStep = "measure it so that it decides, or replace it; defer to local codes and licensed practice";

    /// <inheritdoc/>
    public string Kind => "safety-part-passed";

    /// <inheritdoc/>
    public string Asks => "a part that people rely on not to be hurt, once it was read, passed; a decision is no pass";

    // Across the mains a short is a short, whichever of those that lie there it is of; in circuit it proves nothing against this one, and
    // somebody has to look.
    private static Verdict? ShortSince(PlaceHistory place, AssessedReading passed)
    {
        if (!PartKind.IsSuppressor(place.Values))
        {
            return null;
        }

        foreach (var reading in place.Counting)
        {
            if (reading.At <= passed.At)
            {
                continue;
            }

            foreach (var verdict in reading.Verdicts)
            {
                if (
                    verdict is { Outcome: VerdictOutcome.ProvesNothing, Measured: Measured.Insulation or Measured.Resistance }
                    && IsLow(verdict)
                )
                {
                    return verdict;
                }
            }
        }

        return null;
    }

    // A short has next to no ESR: only what a part of its kind is known by passes it, or what a voltage on it shows.
    private static bool IsPassedByWhatProvesIt(PlaceHistory place)
    {
        var proves = place.Values.Kind.Value.ProvedBy;
        for (var at = 0; at < place.StoodBy.Length; at++)
        {
            if (
                place.StoodBy[at].Verdict is { Outcome: VerdictOutcome.Inside, Measured: var measured }
                && (proves.Length == 0 || proves.Contains(measured) || measured is Measured.Insulation or Measured.Leakage)
            )
            {
                return true;
            }
        }

        return place.Tested is not null;
    }

    private static ILookup<PlaceHistory, FittedPiece> ByPlace(BoardAssessment board) =>
        board.Fitted.ToLookup<FittedPiece, PlaceHistory>(static piece => piece.Place, ReferenceEqualityComparer.Instance);

    private static bool IsLow(Verdict verdict) =>
        verdict.Reading.Value is var read
        && (
            read.Kind == IndicationKind.Short
            || (read.Exact is { } ohms && verdict.Limit?.Interval.Lower is { } least && ohms.Value < least.Value)
        );

    /// <inheritdoc/>
    public IEnumerable<Obligation> Ask(BoardUnderObligation board)
    {
        ILookup<PlaceHistory, FittedPiece>? fitted = null;
        foreach (var place in board.Board.Places.Where(place => place is { IsSafetyRelevant: true, IsEmpty: false, HasFailed: false }))
        {
            var at = place.Part.Ref.Value;
            if (place.IsToBeReplaced)
            {
                continue;
            }

            if (place.FirstOf(VerdictOutcome.Undecided) is { } undecided)
            {
                yield return Obligation.Open(Kind, BoardState.ProofDue, at, DecisionWords.WithDecision(place, undecided.Verdict), NextStep);
            }
            else if (place.FirstOf(VerdictOutcome.Inside) is { } good && ShortSince(place, good.By) is { } low)
            {
                yield return Obligation.Open(
                    Kind,
                    BoardState.ProofDue,
                    at,
                    $"{low.Why}; what makes it so low across the mains is not found",
                    "lift one leg, measure it, and find what lies beside it; defer to local codes and licensed practice"
                );
            }
            else if (place.FirstOf(VerdictOutcome.Inside) is { } alone && !IsPassedByWhatProvesIt(place))
            {
                yield return Obligation.Open(
                    Kind,
                    BoardState.ProofDue,
                    at,
                    $"it was read for {VerdictWords.Describe(alone.Verdict.Measured)} alone, which a shorted one may show too",
                    NextStep
                );
            }
            else if (place.FirstOf(VerdictOutcome.Inside) is { } inside)
            {
                // What was read of another piece of the lot passes this one no more than its neighbour; that it was not measured is told by
                // that.
                if (inside.By.Place is not null)
                {
                    yield return Obligation.Met(Kind, at, $"{place.Values.Kind.Text} passed", board.By(inside.By, inside.Verdict));
                }
                else if ((fitted ??= ByPlace(board.Board))[place].FirstOrDefault()?.MeasuredBy is { } measured)
                {
                    yield return Obligation.Met(Kind, at, $"{place.Values.Kind.Text} passed", board.By(measured));
                }
            }
            else if (place.Tested is { } tested)
            {
                yield return Obligation.Met(Kind, at, $"{place.Values.Kind.Text} passed its test", board.By(tested));
            }
            else if (place.Counting.LastOrDefault(reading => reading.Reading.Values.Length > 0) is { } read)
            {
                yield return Obligation.Open(
                    Kind,
                    BoardState.ProofDue,
                    at,
                    read.Verdicts.Length > 0
                        ? read.Verdicts[0].Why
                        : $"{place.Values.Kind.Text} was read, and nothing that was read passes it",
                    NextStep
                );
            }
            else
            {
                yield return Obligation.DoesNotApply(
                    Kind,
                    at,
                    LazyText.For(place, static one => $"{one.Values.Kind.Text}: nobody has read it; look at it before power is applied")
                );
            }
        }
    }
}
