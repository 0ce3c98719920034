using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Assessment.Drifts;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Electronics;
using Ohmstead.Records.Findings;

namespace Ohmstead.Assessment.Checks.Boards;

/// <summary>A part drifts and may be at its limit before the board is looked at again.</summary>
public sealed class DriftNearsLimit : IBoardCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } =
        new(
            "drift-nears-limit",
            Severity.Warning,
            "a part drifts and may be at its limit before the board is looked at again",
            CheckEffect.Told,
            "an estimate of what will be, beside the readings that say what is"
        );

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(BoardUnderCheck board)
    {
        if (board.Assessment.LookAgain is not { } look || !board.IsInOrder || !board.HasAllThatItIsJudgedBy)
        {
            yield break;
        }

        foreach (var drift in board.Assessment.Drifts.Where(drift => !drift.IsOutside))
        {
            if (drift.MeetsLimit.Is(out var day, out _) && day < look && !IsAnswered(board.Assessment, drift))
            {
                yield return board.Finding(
                    Description,
                    drift.LastSpot,
                    $"{drift.Reference}: {VerdictWords.Describe(drift.Measured)} {DriftWords.Pace(drift)} and {DriftWords.Meeting(drift)}, "
                        + $"before the next inspection on {IsoDate.Text(look)}; {DriftWords.Estimate}",
                    day <= drift.Last
                        ? $"measure {drift.Reference} again soon, or decide about it with a reason"
                        : $"measure {drift.Reference} again by {IsoDate.Text(day)}, or decide about it with a reason"
                );
            }
        }
    }

    // Who decided with the last of these readings at hand knew of the drift.
    private static bool IsAnswered(BoardAssessment board, Drift drift) =>
        board.Place(drift.Reference) is { Decision: not null } place && board.Visits[place.DecidedAt.Visit].Date.Value >= drift.Last;
}
