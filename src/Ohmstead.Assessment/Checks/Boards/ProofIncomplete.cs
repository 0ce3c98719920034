using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Records.Findings;

namespace Ohmstead.Assessment.Checks.Boards;

/// <summary>A board was proved, but not at every point that its design asks for.</summary>
public sealed class ProofIncomplete : IBoardCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } =
        new(
            "proof-incomplete",
            Severity.Warning,
            "a board was proved, but not at every point that its design asks for",
            CheckEffect.SaidElsewhere,
            "the obligation to prove each point"
        );

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(BoardUnderCheck board)
    {
        if (board.Assessment.Proofs.Length == 0)
        {
            yield break;
        }

        var proved = board.Assessment.Proofs.Select(proof => proof.Proof.Point.Value).ToHashSet(StringComparer.Ordinal);
        // A point that is written wrong is told once, by name, and not again as left out.
        var points = new KnownNames(board.Assessment.Points.Select(point => point.Name.Value));
        proved.UnionWith(
            board
                .Assessment.Proofs.Where(proof => proof.Point is null)
                .Select(proof => points.NearestTo(proof.Proof.Point.Value))
                .OfType<string>()
        );
        var missing = board
            .Assessment.Points.Where(point => point.IsRequired && !proved.Contains(point.Name.Value))
            .Select(point => point.Name.Value)
            .ToArray();
        if (missing.Length > 0)
        {
            yield return board.Finding(
                Description,
                board.Assessment.Proofs[^1].Visit.Spot,
                $"the proof leaves out {string.Join(", ", missing)}",
                $"measure {missing[0]} and add it under proof"
            );
        }
    }
}
