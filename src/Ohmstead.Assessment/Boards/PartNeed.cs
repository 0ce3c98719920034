using System.Collections.Immutable;
using Ohmstead.Assessment.Fit;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Boards;

/// <summary>A part that a place needs.</summary>
/// <param name="What">The part in words; equal needs have equal words.</param>
/// <param name="Board">The board.</param>
/// <param name="Reference">The place.</param>
/// <param name="Values">What belongs there.</param>
public sealed record PartNeed(string What, string Board, string Reference, PartValues Values)
{
    /// <summary>The place as something that a part must fit.</summary>
    public FitPlace Place { get; init; } = new(Values);

    /// <summary>
    /// The parts that a board needs: for a place that is empty, whose part failed and is not kept by a decision, whose part is to be replaced by a
    /// decision that no later work carried out, that holds something that must go, or whose obligation nothing but another part will meet. A finding alone asks
    /// for work, not for a part.
    /// </summary>
    public static ImmutableArray<PartNeed> Of(BoardAssessment board) =>
        [.. board.Places.Where(place => Needs(board, place)).Select(place => new PartNeed(place.What, board.Board.Id.Value, place.Part.Ref.Value, place.Part.Values) { Place = FitPlace.Of(board, place) })];

    /// <summary>Whether a place needs another part.</summary>
    internal static bool Needs(BoardAssessment board, PlaceHistory place) =>
        place.IsEmpty
        || (place.HasFailed && !place.IsKeptByDecision)
        || place.IsToBeReplaced
        || HoldsWhatMustGo(board, place.Part.Ref.Value)
        || IsAskedFor(board, place.Part.Ref.Value);

    private static bool IsAskedFor(BoardAssessment board, string reference)
    {
        for (var at = 0; at < board.Obligations.Length; at++)
        {
            if (board.Obligations[at] is { NeedsPart: true } obligation && obligation.At == reference)
            {
                return true;
            }
        }

        return false;
    }

    private static bool HoldsWhatMustGo(BoardAssessment board, string reference)
    {
        for (var at = 0; at < board.Hazards.Length; at++)
        {
            if (board.Hazards[at] is { MustGo: true, MadeSafe: null } hazard && hazard.Hazard.At?.Value == reference)
            {
                return true;
            }
        }

        return false;
    }
}
