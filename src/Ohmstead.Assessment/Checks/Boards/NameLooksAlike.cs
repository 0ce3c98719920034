using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Checks.Boards;

/// <summary>Two parts or points of a board have names that look the same or differ by capitals alone.</summary>
public sealed class NameLooksAlike : IBoardCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } =
        new(
            "name-looks-alike",
            Severity.Warning,
            "two parts or points of a board have names that look the same or differ by capitals alone"
        );

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(BoardUnderCheck board)
    {
        var (file, design) = (board.Board, board.Assessment.Design);
        var alike = NameLooks
            .FindPairs((design?.Parts ?? []).Concat(file.Parts).Select(part => part.Ref))
            .Concat(NameLooks.FindPairs((design?.Points ?? []).Concat(file.Points).Select(point => point.Name)));

        HashSet<object?>? own = null;
        foreach (var (name, other) in alike)
        {
            // Two names of the design are told there, once for all its boards.
            own ??= OwnNames(file);
            if (!own.Contains(name))
            {
                continue;
            }

            var (message, next) = NameLooks.Say(name.Value, other.Value);
            yield return board.Finding(Description, name.Spot, message, next) with
            {
                Related = [new RelatedPlace(other.Spot.In(own.Contains(other) ? file.Path : design!.Path), "the other one")],
            };
        }
    }

    private static HashSet<object?> OwnNames(BoardFile file) =>
        file
            .Parts.Select(part => part.Ref)
            .Concat(file.Points.Select(point => point.Name))
            .ToHashSet<object?>(ReferenceEqualityComparer.Instance);
}
