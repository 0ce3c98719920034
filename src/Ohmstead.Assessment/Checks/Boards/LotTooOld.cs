using Ohmstead.Assessment.Boards;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Checks.Boards;

/// <summary>An electrolytic was fitted from a lot older than its shelf life that had not been formed again.</summary>
public sealed class LotTooOld : IBoardCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } = new("lot-too-old", Severity.Warning, "an electrolytic was fitted from a lot older than its shelf life that had not been formed again");

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(BoardUnderCheck board)
    {
        foreach (var (visit, work, place, lot) in board.Fittings())
        {
            if (!PartKind.IsElectrolytic(lot.Values.Kind.Value) || lot.Received is not { } received || visit.Date.Value > board.Today)
            {
                continue;
            }

            var fresh = lot.Formed is { } formed && formed.Value <= visit.Date.Value ? formed.Value : received.Value.Latest;
            if (visit.Date.Value > (lot.ShelfLife is { } life ? CalendarSpan.After(fresh, life.Value.Value) : fresh.AddYears(UsualShelfYears)))
            {
                yield return board.Finding(
                    Description,
                    work.Spot,
                    $"{place.Part.Ref.Value} was fitted from lot {lot.Id.Value}, which had lain since {fresh.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture)}, longer than its shelf life of {lot.ShelfLife?.Text ?? "3 years, which is usual"}",
                    $"form the lot again, measure it, and write formed: in stock.yaml")
                    with { Related = board.InStock(lot) };
            }
        }
    }

    // Makers disagree between 1 and 5 years; 3 years is the middle of what is published. Common practice.
    private const int UsualShelfYears = 3;
}
