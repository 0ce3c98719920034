using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Checks.Boards;

/// <summary>A reading, work entry or decision names a part that is not in the parts list.</summary>
public sealed class PartUnknown : IBoardCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } =
        new("part-unknown", Severity.Error, "a reading, work entry or decision names a part that is not in the parts list");

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(BoardUnderCheck board)
    {
        if (board.Assessment.Places.Length == 0 && board.Board.Design is null)
        {
            yield break;
        }

        KnownNames? known = null;
        foreach (var visit in board.Assessment.Visits)
        {
            foreach (var part in Named(visit))
            {
                if (board.Assessment.Place(part.Value) is not null || board.MayBeUnreadPart(part.Value))
                {
                    continue;
                }

                yield return new UnknownName("part", $"add {part.Value} to parts")
                {
                    Otherwise = $"add {part.Value} to parts, or name a part that is there",
                }.In(
                    board,
                    Description,
                    part,
                    $"this board has no part '{part.Value}'",
                    known ??= new(board.Assessment.Places.Select(place => place.Part.Ref.Value))
                );
            }
        }
    }

    private static List<Written<string>> Named(BenchVisit visit) =>
        new List<Written<string>>(visit.Readings.Length)
            .And(visit.Readings, static reading => reading.Part)
            .And(visit.Work, static work => work.Part)
            .And(visit.Decided, static decision => decision.Part);
}
