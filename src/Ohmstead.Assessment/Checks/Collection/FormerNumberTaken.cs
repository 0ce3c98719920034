using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Checks.Collection;

/// <summary>A number that a board had before is, or was, that of another board, or is its own.</summary>
public sealed class FormerNumberTaken : ICollectionCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } =
        new(
            "former-number-taken",
            Severity.Error,
            "a number that a board had before is, or was, that of another board, or is its own",
            CheckEffect.HoldsBack,
            "which of the two boards an old label or link means is not known"
        );

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(CollectionUnderCheck collection)
    {
        if (!collection.Boards.Any(board => board.Formerly.Count > 0))
        {
            yield break;
        }

        var owners = collection.Boards.ToLookup(board => Folded(board.Id.Value), StringComparer.Ordinal);
        var claims = collection
            .Boards.SelectMany(board => board.Formerly.Select(former => (Board: board, Former: former)))
            .ToLookup(claim => Folded(claim.Former.Value), StringComparer.Ordinal);
        foreach (var ofNumber in claims)
        {
            var first = ofNumber.First();
            foreach (var (board, former) in ofNumber)
            {
                if (owners[ofNumber.Key].FirstOrDefault() is { } owner)
                {
                    yield return owner.Path == board.Path
                        ? At(board, former, $"{former.Value} is the number that it has", "take this line out")
                        : At(board, former, $"{former.Value} is the number of {owner.Path}", Next(owner.Path)) with
                        {
                            Related = [new RelatedPlace(owner.Id.Spot.In(owner.Path), "the board that has it")],
                        };
                }
                else if (former != first.Former || board.Path != first.Board.Path)
                {
                    yield return board.Path == first.Board.Path
                        ? At(board, former, $"{former.Value} stands here twice", "take one of the two lines out")
                        : At(board, former, $"{former.Value} was also the number of {first.Board.Path}", Next(first.Board.Path)) with
                        {
                            Related = [new RelatedPlace(first.Former.Spot.In(first.Board.Path), "the other one")],
                        };
                }
            }

            // Told there too: whoever opens that file alone must hear of the other.
            foreach (var owner in owners[ofNumber.Key].Where(owner => owner.Path != first.Board.Path))
            {
                yield return At(
                    owner,
                    owner.Id,
                    $"{owner.Id.Value} was the number of {first.Board.Path} before",
                    "give this board a number that no board had"
                );
            }
        }
    }

    private Finding At(BoardNumber board, Written<string> at, string message, string next) =>
        new(Description.Name, Description.Severity, at.Spot.In(board.Path), message, next);

    private static string Next(string other) => $"take this line out, or mend {other}: a number is never given twice";

    private static string Folded(string number) => number.ToUpperInvariant().Normalize();
}
