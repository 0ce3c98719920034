using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Checks.Boards;

/// <summary>A reading or work entry names a lot that is not in the drawer.</summary>
public sealed class LotUnknown : IBoardCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } =
        new("lot-unknown", Severity.Error, "a reading or work entry names a lot that is not in the drawer");

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(BoardUnderCheck board)
    {
        KnownNames? known = null;
        foreach (var visit in board.Assessment.Visits)
        {
            foreach (var lot in Named(visit))
            {
                if (IsKnown(board, lot.Value))
                {
                    continue;
                }

                yield return new UnknownName("lot", $"add lot {lot.Value} to stock.yaml").In(
                    board,
                    Description,
                    lot,
                    $"there is no lot '{lot.Value}' in the drawer",
                    known ??= new(board.Workshop.Lots.Keys.Order(StringComparer.Ordinal))
                );
            }
        }
    }

    private static List<Written<string>> Named(BenchVisit visit) =>
        new List<Written<string>>().And(visit.Readings, static reading => reading.Lot).And(visit.Work, static work => work.Lot);

    private static bool IsKnown(BoardUnderCheck board, string name) =>
        board.Workshop.Lots.ContainsKey(name) || (board.Workshop.StockFile?.UnreadLots.MayHold(name) ?? false);
}
