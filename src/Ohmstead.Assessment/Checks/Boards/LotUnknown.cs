using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Checks.Boards;

/// <summary>A reading or work entry names a lot that is not in the drawer.</summary>
public sealed class LotUnknown : IBoardCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } = new("lot-unknown", Severity.Error, "a reading or work entry names a lot that is not in the drawer");

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(BoardUnderCheck board)
    {
        foreach (var visit in board.Assessment.Visits)
        {
            var named = visit.Readings.Select(reading => reading.Lot).Concat(visit.Work.Select(work => work.Lot));
            foreach (var lot in named.OfType<Written<string>>().Where(lot => !board.Workshop.Lots.ContainsKey(lot.Value)))
            {
                var near = Nearest.To(lot.Value, board.Workshop.Lots.Keys.Order(StringComparer.Ordinal));
                yield return board.Finding(
                    Description,
                    lot.Spot,
                    $"there is no lot '{lot.Value}' in the drawer" + (near is null ? string.Empty : $", '{near}' is the nearest"),
                    near is null ? $"add lot {lot.Value} to stock.yaml" : $"write lot: {near}, or add {lot.Value} to stock.yaml");
            }
        }
    }
}
