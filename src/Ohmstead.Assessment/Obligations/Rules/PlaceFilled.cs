using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Obligations.Basis;

namespace Ohmstead.Assessment.Obligations.Rules;

/// <summary>No place from which a part was taken out is empty.</summary>
public sealed class PlaceFilled : IObligationRule
{
    private static readonly char[] Between = [' ', ',', ';', '/', '+', '&', '(', ')'];
    private static readonly string[] BesideIt =
    [
        "WIRE",
        "LEAD",
        "LEG",
        "CABLE",
        "HEATSINK",
        "HEAT SINK",
        "SCREW",
        "CLIP",
        "SLEEVE",
        "COVER",
        "WASHER",
        "MICA",
    ];

    /// <inheritdoc/>
    public string Kind => "place-filled";

    /// <inheritdoc/>
    public string Asks => "where a part was taken out, a part sits again";

    /// <inheritdoc/>
    public string AsMet => "a part sits there";

    /// <inheritdoc/>
    public IEnumerable<Obligation> Ask(BoardUnderObligation board) => [.. Filled(board), .. Unclear(board)];

    // Work that puts in or takes out at 'C4 and R1' tells of neither place what sits there now.
    private IEnumerable<Obligation> Unclear(BoardUnderObligation board)
    {
        foreach (var visit in board.Board.Visits)
        {
            foreach (var work in visit.Work)
            {
                if (
                    work is { ChangesAPlace: true, Part: null, At: { } at }
                    && board.Board.Place(at.Value) is null
                    && PartIn(board.Board, at.Value) is { } part
                )
                {
                    yield return Obligation.Open(
                        Kind,
                        BoardState.ProofDue,
                        part,
                        $"{work.Did.Text} on {BoardUnderObligation.Day(visit)} at '{at.Value}': what sits in {part} now is not said",
                        $"write part: {part}, a line for each part"
                    );
                }
            }
        }
    }

    // A socket, a track or a wire that is named after a part is not the part.
    private static string? PartIn(BoardAssessment board, string at)
    {
        if (Troubles.NamesAPlace(at) || Troubles.Speaks(at.ToUpperInvariant(), BesideIt))
        {
            return null;
        }

        foreach (var word in at.Split(Between, StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
        {
            if (word.Length < at.Length && board.Place(word) is not null)
            {
                return word;
            }
        }

        return null;
    }

    private IEnumerable<Obligation> Filled(BoardUnderObligation board)
    {
        foreach (var place in board.Board.Places)
        {
            if (place.IsEmpty)
            {
                yield return Obligation.Open(
                    Kind,
                    BoardState.FaultStands,
                    place.Part.Ref.Value,
                    "the place is empty",
                    "fit a part that was measured",
                    $"fit {place.Part.Ref.Value}, whose place is empty"
                );
            }
            else if (place.Change is { } change)
            {
                yield return Obligation.Met(Kind, place.Part.Ref.Value, AsMet, board.By(change.Work, change.Visit, change.Work.Did.Text));
            }
        }
    }
}
