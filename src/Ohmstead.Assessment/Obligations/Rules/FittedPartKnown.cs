using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Obligations.Basis;
using Ohmstead.Electronics;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Obligations.Rules;

/// <summary>What was fitted is known: it came from a lot in the drawer, or the work says what it is.</summary>
public sealed class FittedPartKnown : IObligationRule
{
    /// <inheritdoc/>
    public string Kind => "fitted-part-known";

    /// <inheritdoc/>
    public string Asks => "what was fitted is written: its lot, or its kind and ratings";

    /// <inheritdoc/>
    public string AsMet => "it is written what it is";

    /// <inheritdoc/>
    public IEnumerable<Obligation> Ask(BoardUnderObligation board)
    {
        foreach (var place in board.Board.Places)
        {
            if (
                place is { IsEmpty: false, Change: { Work: { Did.Value: WorkKind.PutBack } work } change }
                && (change.IsOfNothing || work.Lot is not null || work.NewPart is not null)
            )
            {
                yield return Obligation.Open(
                    Kind,
                    BoardState.ProofDue,
                    place.Part.Ref.Value,
                    change.IsOfNothing
                        ? $"put back on {BoardUnderObligation.Day(change.Visit)}, and nothing had been taken out"
                        : $"put back on {BoardUnderObligation.Day(change.Visit)}, and the work names a new part",
                    "write did: fitted or replaced for a new part; 'put back' is for the piece that was taken out"
                );
            }
        }

        foreach (var fitting in board.Board.Fitted)
        {
            var at = fitting.Place.Part.Ref.Value;
            if (fitting.Work is { Lot: not null, NewPart: not null })
            {
                yield return Obligation.Open(
                    Kind,
                    BoardState.ProofDue,
                    at,
                    $"what was fitted on {BoardUnderObligation.Day(fitting.Visit)} is told by its lot and by a description",
                    "leave one of the two out: lot, or new_part"
                );
            }
            else if (fitting.Work is { Lot: not null, TakenFrom: { } other })
            {
                yield return Obligation.Open(
                    Kind,
                    BoardState.ProofDue,
                    at,
                    $"what was fitted on {BoardUnderObligation.Day(fitting.Visit)} is said to come from a lot and from {other.Value}",
                    "leave one of the two out: lot, or taken_from"
                );
            }
            else if (fitting.Work is { Lot: null, NewPart: null })
            {
                yield return Obligation.Open(
                    Kind,
                    BoardState.ProofDue,
                    at,
                    $"{fitting.Work.Did.Text} on {BoardUnderObligation.Day(fitting.Visit)} with a part that the record does not name",
                    "add lot: with its lot, or new_part: { kind: …, } with what is printed on it; 'put back' is for the piece that was "
                        + "taken out"
                );
            }
            else if (fitting.Place.FittedLot is { Received: { } received } lot && fitting.Visit.Date.Value < received.Value.Earliest)
            {
                yield return Obligation.Open(
                    Kind,
                    BoardState.ProofDue,
                    at,
                    $"fitted on {BoardUnderObligation.Day(fitting.Visit)} from lot {lot.Id.Value}, which came on {received.Text}",
                    "mend the lot, or one of the two dates"
                );
            }
            else if (fitting.Values is { } values)
            {
                yield return Obligation.Met(
                    Kind,
                    at,
                    AsMet,
                    board.By(
                        fitting.Work,
                        fitting.Visit,
                        fitting.Work.Lot is { } from ? $"lot {from.Value}" : LazyText.For(values, PartWords.Describe)
                    )
                );
            }
        }
    }
}
