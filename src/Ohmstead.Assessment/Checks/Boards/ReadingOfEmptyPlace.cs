using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Records.Findings;

namespace Ohmstead.Assessment.Checks.Boards;

/// <summary>A reading was taken of a place whose part had been removed and nothing fitted since.</summary>
public sealed class ReadingOfEmptyPlace : IBoardCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } =
        new(
            "reading-of-empty-place",
            Severity.Warning,
            "a reading was taken of a place whose part had been removed and nothing fitted since",
            CheckEffect.Told,
            "the reading is judged against nothing and proves nothing"
        );

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(BoardUnderCheck board)
    {
        foreach (var reading in board.Assessment.Readings)
        {
            if (reading is { EmptiedOn: { } emptied, Place: { } place })
            {
                yield return board.Finding(
                    Description,
                    reading.Reading.Part?.Spot ?? reading.Reading.Spot,
                    $"{place.Ref.Value} was removed on {emptied.Date.Text} and nothing was fitted since, so this reading is judged "
                        + "against nothing",
                    "add the work that put a part there, or "
                        + (
                            ReferenceEquals(emptied, reading.Visit)
                                ? "leave out state: as left"
                                : $"move the reading to {emptied.Date.Text}"
                        )
                        + " if it is of the part that was removed"
                ) with
                {
                    Related = [new RelatedPlace(emptied.Spot.In(board.Board.Path), "the visit that removed it")],
                };
            }
        }
    }
}
