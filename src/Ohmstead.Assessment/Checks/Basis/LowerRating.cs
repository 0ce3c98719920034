using Ohmstead.Electronics.Quantities;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Checks.Basis;

/// <summary>Replacements that are rated lower than what belongs in the place.</summary>
internal static class LowerRating
{
    /// <summary>A finding for each replacement that the rules refuse for a rating; where one of the two ratings is not written there is
    /// none.</summary>
    internal static IEnumerable<Finding> Look(
        BoardUnderCheck board,
        CheckDescription check,
        string aspect,
        Func<PartValues, Written<Quantity>?> rating
    )
    {
        foreach (var replacement in board.Replacements)
        {
            if (replacement.Against(aspect) is { } reason && rating(replacement.Place.Part.Values) is { } was)
            {
                yield return board.Finding(
                    check,
                    replacement.Work.Spot,
                    $"{replacement.Place.Part.Ref.Value} was fitted {replacement.From}: {reason.Words}",
                    $"fit a part of {was.Text} or more"
                ) with
                {
                    Related = board.InStock(replacement.Lot),
                };
            }
        }
    }
}
