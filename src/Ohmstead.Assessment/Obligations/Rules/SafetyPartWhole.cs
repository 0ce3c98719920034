using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Obligations.Basis;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Obligations.Rules;

/// <summary>
/// A part that people rely on not to be hurt is not repaired, modified or set: a fuse that was bridged is none. It is replaced by its like.
/// Common practice; defer to local codes and licensed practice.
/// </summary>
public sealed class SafetyPartWhole : IObligationRule
{
    private static readonly string[] Protecting =
    [
        "EARTH",
        "COVER",
        "GUARD",
        "SHIELD",
        "SHROUD",
        "INTERLOCK",
        "INSULAT",
        "BARRIER",
        "BLEEDER",
        "STRAIN RELIEF",
    ];

    /// <inheritdoc/>
    public string Kind => "safety-part-whole";

    /// <inheritdoc/>
    public string Asks => "a part that people rely on not to be hurt was not repaired, modified or set, but replaced";

    /// <inheritdoc/>
    public IEnumerable<Obligation> Ask(BoardUnderObligation board) => [.. Listed(board), .. Unlisted(board), .. TakenOff(board)];

    private IEnumerable<Obligation> Listed(BoardUnderObligation board)
    {
        foreach (var place in board.Board.Places.Where(place => place.IsSafetyRelevant && !place.IsEmpty))
        {
            for (var order = Math.Max(place.Since.Visit, 0); order < board.Board.Visits.Length; order++)
            {
                foreach (var work in board.Board.Visits[order].Work)
                {
                    if (IsMending(work) && IsAt(work, place) && Moment.At(order, work.Spot) > place.Since)
                    {
                        yield return Obligation.Open(
                            Kind,
                            BoardState.FaultStands,
                            place.Part.Ref.Value,
                            $"{place.Values.Kind.Text}, {work.Did.Text} on {BoardUnderObligation.Day(board.Board.Visits[order])}: "
                                + "people rely on it not to be hurt",
                            "replace it by its like; defer to local codes and licensed practice"
                        ) with
                        {
                            NeedsPart = true,
                        };
                    }
                }
            }
        }
    }

    // What no list has is known by its name: F and a number, or the word.
    private IEnumerable<Obligation> Unlisted(BoardUnderObligation board)
    {
        foreach (var visit in board.Board.Visits)
        {
            foreach (var work in visit.Work)
            {
                if (
                    IsMending(work)
                    && work is { Part: null, At: { } at }
                    && FindingWeight.IsAFuse(at.Value)
                    && board.Board.Place(at.Value) is null
                )
                {
                    yield return Obligation.Open(
                        Kind,
                        BoardState.FaultStands,
                        at.Value,
                        $"a fuse by its name, {work.Did.Text} on {BoardUnderObligation.Day(visit)}: people rely on it not to be hurt",
                        "replace it by its like and enter it in the list of parts; defer to local codes and licensed practice"
                    );
                }
            }
        }
    }

    // A cover, a guard or an earth wire protects by being there. Taking one off for the bench is undone before power.
    private IEnumerable<Obligation> TakenOff(BoardUnderObligation board)
    {
        for (var order = 0; order < board.Board.Visits.Length; order++)
        {
            foreach (var work in board.Board.Visits[order].Work)
            {
                if (
                    work is { Did.Value: WorkKind.Removed, Part: null, At: { } at }
                    && Protects(at.Value)
                    && board.Board.Place(at.Value) is null
                    && !IsThereAgain(board.Board, at.Value, Moment.At(order, work.Spot))
                )
                {
                    yield return Obligation.Open(
                        Kind,
                        BoardState.MakeSafe,
                        at.Value,
                        $"{at.Value}, {work.Did.Text} on {BoardUnderObligation.Day(board.Board.Visits[order])}, and not there again: it "
                            + "keeps people from being hurt",
                        $"put it back or fit its like, and record it: {{ at: {at.Value}, did: put back }}; defer to local codes and "
                            + "licensed practice"
                    );
                }
            }
        }
    }

    private static bool IsThereAgain(BoardAssessment board, string at, Moment since)
    {
        for (var order = since.Visit; order < board.Visits.Length; order++)
        {
            foreach (var work in board.Visits[order].Work)
            {
                if (
                    work.Did.Value is WorkKind.PutBack or WorkKind.Fitted or WorkKind.Replaced
                    && (work.Part ?? work.At)?.Value == at
                    && Moment.At(order, work.Spot) > since
                )
                {
                    return true;
                }
            }
        }

        return false;
    }

    private static bool Protects(string at) => Troubles.Speaks(at.ToUpperInvariant(), Protecting);

    // Letting down a charge is named by its hazard; any other way to make such a part safe than to replace it is a way round it.
    private static bool IsMending(WorkEntry work) =>
        work.Did.Value is WorkKind.Repaired or WorkKind.Modified or WorkKind.Adjusted
        || (work.Did.Value == WorkKind.MadeSafe && work.Hazard is null);

    private static bool IsAt(WorkEntry work, PlaceHistory place) =>
        work.Part?.Value == place.Part.Ref.Value || work.At?.Value == place.Part.Ref.Value;
}
