using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Obligations.Basis;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Electronics;

namespace Ohmstead.Assessment.Obligations.Rules;

/// <summary>
/// Every point that is required was proved after the last work, by each quantity that its limits ask: voltage and ripple where both are
/// given. A word 'pass' proves a test of function and nothing else.
/// </summary>
public sealed class PointProved : IObligationRule
{
    /// <inheritdoc/>
    public string Kind => "point-proved";

    /// <inheritdoc/>
    public string Asks => "each required point was proved after the last work, by each quantity that its limits ask";

    /// <inheritdoc/>
    public IEnumerable<Obligation> Ask(BoardUnderObligation board)
    {
        // What nobody has looked at is told as that.
        if (board.Board.Visits.Length == 0)
        {
            yield break;
        }

        foreach (var failed in FailedBesides(board.Board))
        {
            yield return failed;
        }

        ProofOfPoint[] points =
        [
            .. board.Board.Points.Where(point => point.IsRequired).Select(point => ProofOfPoint.For(board.Board, point)),
        ];
        if (Never(points) is { } never)
        {
            yield return never;
        }

        if (Older(board.Board, points) is { } older)
        {
            yield return older;
        }

        foreach (var point in points)
        {
            if (point.Since.Length > 0)
            {
                yield return Proved(board, point);
            }
        }
    }

    // Points that are due for one reason are told in one line.
    private Obligation? Never(ProofOfPoint[] points)
    {
        string[] never = [.. points.Where(point => point.Last is null).Select(point => point.Name)];
        return never.Length == 0
            ? null
            : Obligation.Open(
                Kind,
                BoardState.ProofDue,
                Only(never),
                $"{(never.Length == 1 ? "point " : "points ")}{string.Join(", ", never)} {(never.Length == 1 ? "was" : "were")} never "
                    + "proved",
                $"measure {never[0]} and record it under proof",
                $"prove {string.Join(", ", never)}"
            );
    }

    private Obligation? Older(BoardAssessment board, ProofOfPoint[] points)
    {
        ProofOfPoint[] older = [.. points.Where(point => point.Last is not null && point.Since.Length == 0)];
        if (older.Length == 0)
        {
            return null;
        }

        string[] names = [.. older.Select(point => point.Name)];
        var day = older.Max(point => point.Last!.Visit.Date.Value);
        return Obligation.Open(
            Kind,
            BoardState.ProofDue,
            Only(names),
            $"the proof of {string.Join(", ", names)} of {IsoDate.Text(day)} is older than the last work of {Iso(board.LastWork)}",
            $"prove {names[0]} again",
            $"prove {string.Join(", ", names)} again"
        );
    }

    private Obligation Proved(BoardUnderObligation board, ProofOfPoint point)
    {
        if (point.Failed is { } failed)
        {
            return Failed(failed);
        }

        if (point.Undecided is { } undecided)
        {
            return Obligation.Open(
                Kind,
                BoardState.ProofDue,
                point.Name,
                undecided.Why,
                "measure it so that it decides",
                $"measure {point.Name} so that it decides"
            );
        }

        return point.Missing is { } missing
            ? Obligation.Open(
                Kind,
                BoardState.ProofDue,
                point.Name,
                missing,
                $"measure {point.Name} and record it under proof",
                $"prove {point.Name}"
            )
            : Obligation.Met(Kind, point.Name, $"{point.Name} proved after the last work", board.By(point.Last!));
    }

    private static string? Only(string[] names) => names.Length == 1 ? names[0] : null;

    // A failed test is a fault, whether the design asks for the test or not; work alone does not answer it, since nobody looked whether it
    // helped.
    private IEnumerable<Obligation> FailedBesides(BoardAssessment board)
    {
        // Most boards have nothing that fails.
        if (!board.Proofs.Any(static proof => proof.Outcome == VerdictOutcome.Outside))
        {
            yield break;
        }

        var points = board.Points.ToLookup(static point => point.Name.Value, StringComparer.Ordinal);
        foreach (var name in board.Proofs.Select(proof => proof.Proof.Point.Value).Distinct(StringComparer.Ordinal))
        {
            var point = points[name].FirstOrDefault();
            if (point is not { IsRequired: true } && ProofOfPoint.FailedAt(board, name, point) is { } failed)
            {
                yield return Failed(failed);
            }
        }
    }

    private Obligation Failed(AssessedProof last) =>
        Obligation.Open(
            Kind,
            BoardState.FaultStands,
            last.Proof.Point.Value,
            last.Verdicts.FirstOrDefault(verdict => verdict.Outcome == VerdictOutcome.Outside)?.Why
                ?? $"{last.Proof.Point.Value} failed its test",
            "find the fault, mend it, prove it again",
            $"find the fault behind {last.Proof.Point.Value}, mend it, prove it again"
        );

    private static string Iso(DateOnly? date) => date is { } day ? IsoDate.Text(day) : "unknown";
}
