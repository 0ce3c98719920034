using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Fit;
using Ohmstead.Assessment.Markings;

namespace Ohmstead.Output;

/// <summary>Of one place: whether each part that was fitted there fits, with every reason; and what date codes say.</summary>
internal static class FitOfPlace
{
    /// <summary>The lines; none when nothing was fitted and no date code is written.</summary>
    public static IEnumerable<string> Lines(BoardAssessment board, string reference, DateOnly today)
    {
        if (board.Place(reference) is not { } place)
        {
            yield break;
        }

        if (
            place.Part.Values.DateCode is { } original
            && DateWords.Describe(
                original.Value,
                place.Part.FromDesign is null || board.Design is not { } design
                    ? DateWindow.OfBoard(board, today)
                    : DateWindow.OfDesign(design, today)
            )
                is { } dated
        )
        {
            yield return $"the original: {dated}";
        }

        foreach (var replacement in board.Replacements.Where(replacement => replacement.Place == place))
        {
            yield return $"fitted {replacement.Visit.Date.Text} {replacement.From}: {FitWords.Describe(replacement.Fit)}";
            foreach (var reason in replacement.Fit.Reasons)
            {
                yield return $"  {FitWords.Describe(reason)}";
            }

            if (
                replacement.Lot is { Values.DateCode: { } code }
                && DateWords.Describe(code.Value, DateWindow.OfLot(replacement.Lot, today)) is { } made
            )
            {
                yield return $"  {made}";
            }
        }
    }
}
