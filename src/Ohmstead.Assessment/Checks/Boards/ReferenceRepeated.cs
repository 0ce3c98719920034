using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Checks.Boards;

/// <summary>A reference designator stands twice in one parts list.</summary>
public sealed class ReferenceRepeated : IBoardCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } =
        new("reference-repeated", Severity.Error, "a reference designator stands twice in one parts list");

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(BoardUnderCheck board)
    {
        var first = new Dictionary<string, Part>(board.Board.Parts.Length, StringComparer.Ordinal);
        foreach (var part in board.Board.Parts)
        {
            if (!first.TryAdd(part.Ref.Value, part))
            {
                yield return board.Finding(
                    Description,
                    part.Ref.Spot,
                    $"{part.Ref.Value} is already in this parts list",
                    "give it another reference, or take one of the two out"
                ) with
                {
                    Related = [new RelatedPlace(first[part.Ref.Value].Ref.Spot.In(board.Board.Path), "first written here")],
                };
            }
        }
    }
}
