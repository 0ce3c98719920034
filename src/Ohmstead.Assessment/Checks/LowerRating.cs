using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Checks;

/// <summary>Replacements that are rated lower than what belongs in the place.</summary>
internal static class LowerRating
{
    /// <summary>A finding for each fitting whose lot has a lower rating; where one of the two ratings is not written there is none.</summary>
    internal static IEnumerable<Finding> Look(BoardUnderCheck board, CheckDescription check, Func<PartValues, Written<Quantity>?> rating)
    {
        foreach (var (_, work, place, lot) in board.Fittings())
        {
            if (rating(place.Part.Values) is { } was && rating(lot.Values) is { } now && now.Value.Value < was.Value.Value)
            {
                yield return board.Finding(
                    check, work.Spot, $"lot {lot.Id.Value} is rated {now.Text}, but {place.Part.Ref.Value} needs {was.Text}", $"fit a part of {was.Text} or more")
                    with { Related = board.InStock(lot) };
            }
        }
    }
}
