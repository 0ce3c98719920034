using Ohmstead.Records.Findings;

namespace Ohmstead.Assessment.Checks.Collection;

/// <summary>Two boards have the same number, or numbers that differ only by capitals.</summary>
public sealed class BoardNumberRepeated : ICollectionCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } = new("board-number-repeated", Severity.Error, "two boards have the same number, or numbers that differ only by capitals");

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(CollectionUnderCheck collection)
    {
        foreach (var group in collection.Boards.GroupBy(board => board.Id.Value.ToUpperInvariant().Normalize(), StringComparer.Ordinal).Where(group => group.Count() > 1))
        {
            var all = group.ToArray();
            foreach (var board in all)
            {
                var other = all.First(candidate => !ReferenceEquals(candidate, board));
                yield return new Finding(Description.Name, Description.Severity, board.Id.Spot.In(board.Path), $"{board.Id.Value} is also the number of {other.Path}", "give one of the two another number")
                {
                    Related = [new RelatedPlace(other.Id.Spot.In(other.Path), "the other one")],
                };
            }
        }
    }
}
