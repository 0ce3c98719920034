using System.Collections.Immutable;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Records.Model;
using Ohmstead.Records.Text;

namespace Ohmstead.Assessment.Checks.Basis;

/// <summary>The verdict on a reading or a proof as it is computed, beside the one that is written.</summary>
/// <param name="Entry">Where the reading or the proof stands.</param>
/// <param name="Of">The part, the lot or the point it speaks of.</param>
/// <param name="Written">The verdict written beside it, or null.</param>
/// <param name="Outcome">The verdict as computed.</param>
/// <param name="Verdicts">The verdicts on its values.</param>
public sealed record ComputedVerdict(
    Spot Entry,
    string Of,
    Written<WrittenVerdict>? Written,
    VerdictOutcome Outcome,
    ImmutableArray<Verdict> Verdicts
)
{
    /// <summary>The word that belongs beside it in the record, or null where none does.</summary>
    public string? Word => VerdictWords.InRecord(Outcome) is { } verdict ? Vocabulary.Verdicts.WordFor(verdict) : null;

    /// <summary>Whether what is written is what is computed; nothing is written where nothing can be.</summary>
    public bool IsAsWritten => VerdictWords.InRecord(Outcome) == Written?.Value;

    /// <summary>
    /// All verdicts of a board that can be computed from what was read; none where what it is judged by could not be read in full.
    /// </summary>
    public static IEnumerable<ComputedVerdict> All(BoardUnderCheck board) => Compute(board, areWritten: false);

    /// <summary>Those of them beside which a verdict is written.</summary>
    public static IEnumerable<ComputedVerdict> AllWritten(BoardUnderCheck board) => Compute(board, areWritten: true);

    private static IEnumerable<ComputedVerdict> Compute(BoardUnderCheck board, bool areWritten)
    {
        // A limit or an accuracy that could not be read was told in its own file; what is computed without it is no reproach to a verdict.
        if (!board.HasAllThatItIsJudgedBy)
        {
            yield break;
        }

        // A part, lot or point that is not known is told by its own check; nothing can be computed for it.
        foreach (var reading in board.Assessment.Readings)
        {
            var verdict = reading.Reading.Verdict;
            if ((verdict is not null || !areWritten) && reading.EmptiedOn is null && !IsToldAsUnknown(board, reading))
            {
                yield return new(reading.Reading.Spot, NameOf(reading.Reading), verdict, reading.Overall, reading.Verdicts);
            }
        }

        foreach (var proof in board.Assessment.Proofs)
        {
            var verdict = proof.Proof.Verdict;
            if ((verdict is not null || !areWritten) && (proof.Point is not null || board.Assessment.Points.Length == 0))
            {
                yield return new(proof.Proof.Spot, proof.Proof.Point.Value, verdict, proof.Outcome, proof.Verdicts);
            }
        }
    }

    private static string NameOf(Reading reading) => (reading.Part ?? reading.Lot ?? reading.Point)?.Value ?? "a reading";

    // That nothing can be judged has a cause of its own when the lot or the part is not known, or could not be read.
    private static bool IsToldAsUnknown(BoardUnderCheck board, AssessedReading reading) =>
        (reading.Reading.Lot is { } lot && !board.Workshop.Lots.ContainsKey(lot.Value))
        || (
            reading is { Reading.Part: { } part, Place: null, Lot: null }
            && (board.Assessment.Places.Length > 0 || board.MayBeUnreadPart(part.Value))
        );
}
