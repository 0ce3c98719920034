using System.Collections.Immutable;
using Ohmstead.Assessment.Fit;
using Ohmstead.Assessment.History;
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
    /// The parts that a board needs: for a place that is empty, whose part failed and is not kept by a decision, whose part is to be
    /// replaced by a decision that no later work carried out, that holds something that must go, or whose obligation nothing but another
    /// part will meet. A finding alone asks for work, not for a part.
    /// </summary>
    public static ImmutableArray<PartNeed> Collect(JudgedBoard board)
    {
        var named = NamedBy(board);
        return
        [
            .. board
                .Places.Where(place => Needs(named, place))
                .Select(place => new PartNeed(place.What, board.Board.Id.Value, place.Part.Ref.Value, place.Part.Values)
                {
                    Place = FitPlace.From(board, place),
                }),
        ];
    }

    private static bool Needs(HashSet<string>? named, PlaceHistory place) =>
        place.IsEmpty
        || (place.HasFailed && !place.IsKeptByDecision)
        || place.IsToBeReplaced
        || (named is not null && named.Contains(place.Part.Ref.Value));

    // The places that an obligation or a hazard names; most boards have none.
    private static HashSet<string>? NamedBy(JudgedBoard board)
    {
        HashSet<string>? named = null;
        foreach (var obligation in board.Obligations)
        {
            if (obligation is { NeedsPart: true, At: { } at })
            {
                (named ??= new(StringComparer.Ordinal)).Add(at);
            }
        }

        foreach (var hazard in board.Hazards)
        {
            if (hazard is { MustGo: true, MadeSafe: null, Hazard.At: { } at })
            {
                (named ??= new(StringComparer.Ordinal)).Add(at.Value);
            }
        }

        return named;
    }
}
