using Ohmstead.Records.Findings;

namespace Ohmstead.Assessment.Checks.Boards;

/// <summary>A replacement has a lower rated temperature than what belongs in the place.</summary>
public sealed class ReplacementTemperatureLower : IBoardCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } = new("replacement-temperature-lower", Severity.Error, "a replacement has a lower rated temperature than what belongs in the place");

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(BoardUnderCheck board)
    {
        foreach (var (_, work, place, lot) in board.Fittings())
        {
            if (place.Part.Values.Temperature is { } was && lot.Values.Temperature is { } now && now.Value.Value < was.Value.Value)
            {
                yield return board.Finding(
                    Description,
                    work.Spot,
                    $"lot {lot.Id.Value} is rated {now.Text}, but {place.Part.Ref.Value} needs {was.Text}",
                    $"fit a part of {was.Text} or more")
                    with { Related = board.InStock(lot) };
            }
        }
    }
}
