using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Checks.Boards;

/// <summary>A part or test point stands twice in one board's own list.</summary>
public sealed class ReferenceRepeated : IBoardCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } =
        new("reference-repeated", Severity.Error, "a part or test point stands twice in one board's own list");

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(BoardUnderCheck board) =>
        Repeated(board, "parts", board.Board.Parts.Length, board.Board.Parts.Select(part => part.Ref))
            .Concat(Repeated(board, "points", board.Board.Points.Length, board.Board.Points.Select(point => point.Name)));

    private IEnumerable<Finding> Repeated(BoardUnderCheck board, string list, int count, IEnumerable<Written<string>> names)
    {
        var first = new Dictionary<string, Written<string>>(count, StringComparer.Ordinal);
        foreach (var name in names)
        {
            if (!first.TryAdd(name.Value, name))
            {
                yield return board.Finding(
                    Description,
                    name.Spot,
                    $"{name.Value} is already in the {list} of this board",
                    "give it another name, or take one of the two out"
                ) with
                {
                    Related = [new RelatedPlace(first[name.Value].Spot.In(board.Board.Path), "first written here")],
                };
            }
        }
    }
}
