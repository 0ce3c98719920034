using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Checks.Boards;

/// <summary>A proof gives a quantity that its test point sets no limit for.</summary>
public sealed class ProofWithoutLimit : IBoardCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } =
        new(
            "proof-without-limit",
            Severity.Warning,
            "a proof gives a quantity that its test point sets no limit for",
            CheckEffect.Told,
            "the figure proves nothing, and what the point asks for is an obligation of its own"
        );

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(BoardUnderCheck board)
    {
        foreach (var proof in board.Assessment.Proofs)
        {
            if (proof.Point is not { } point)
            {
                continue;
            }

            foreach (var verdict in proof.Verdicts.Where(verdict => verdict.Limit is null && !IsLoad(point, verdict)))
            {
                var quantity = VerdictWords.Describe(verdict.Measured);
                yield return board.Finding(
                    Description,
                    verdict.Reading.Spot,
                    $"{quantity} was read at {point.Name.Value}, which sets no limit for it: it proves nothing",
                    $"write the limit to the point, or move the {quantity} to readings"
                );
            }
        }
    }

    // The current that was drawn says what a voltage and its ripple mean.
    private static bool IsLoad(TestPoint point, Verdict verdict) =>
        verdict.Measured == Measured.Current && point.Measures == PointMeasure.Voltage;
}
