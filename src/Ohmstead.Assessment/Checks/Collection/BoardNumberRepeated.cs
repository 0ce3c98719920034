using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Records.Binding;
using Ohmstead.Records.Findings;

namespace Ohmstead.Assessment.Checks.Collection;

/// <summary>Two boards have the same number, or numbers that differ only by capitals.</summary>
public sealed class BoardNumberRepeated : ICollectionCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } =
        new(
            "board-number-repeated",
            Severity.Error,
            "two boards have the same number, or numbers that differ only by capitals",
            CheckEffect.HoldsBack,
            "which of the two boards a record is about is not known"
        );

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(CollectionUnderCheck collection)
    {
        var taken = collection.Boards.Select(board => board.Id.Value).ToHashSet(StringComparer.OrdinalIgnoreCase);
        foreach (
            var group in collection
                .Boards.GroupBy(board => board.Id.Value.ToUpperInvariant().Normalize(), StringComparer.Ordinal)
                .Where(group => group.Count() > 1)
        )
        {
            // A file is named after its board, so the number that is not the name of its file is the one to mend; else the later one.
            var owner = group.FirstOrDefault(board => NameOf(board.Path) == board.Id.Value) ?? group.First();
            var others = group.Where(board => !ReferenceEquals(board, owner)).ToArray();
            foreach (var board in others)
            {
                var name = NameOf(board.Path);
                var isFree = NameRules.Fault(name) is null && !taken.Contains(name);
                yield return Found(board, owner, isFree ? $"write board: {name}" : "give this board a number of its own");
            }

            // Told there too: whoever opens that file alone, or adds it to a collection, must hear of the other.
            yield return Found(owner, others[0], $"mend the number in {others[0].Path}, or give this board a number of its own");
        }
    }

    private Finding Found(BoardNumber board, BoardNumber other, string next) =>
        new(
            Description.Name,
            Description.Severity,
            board.Id.Spot.In(board.Path),
            $"{board.Id.Value} is also the number of {other.Path}",
            next
        )
        {
            Related = [new RelatedPlace(other.Id.Spot.In(other.Path), "the other one")],
        };

    private static string NameOf(string path) => Path.GetFileNameWithoutExtension(path);
}
