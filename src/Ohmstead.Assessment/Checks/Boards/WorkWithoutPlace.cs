using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Checks.Boards;

/// <summary>Work on a part does not say on which, or a lot is named and no part that was put in from it.</summary>
public sealed class WorkWithoutPlace : IBoardCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } =
        new(
            "work-without-place",
            Severity.Error,
            "work on a part does not say on which, or a lot is named and no part that was put in from it",
            CheckEffect.HoldsBack,
            "what was done to which part is not known"
        );

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(BoardUnderCheck board)
    {
        foreach (
            var work in board.Board.Bench.SelectMany(visit => visit.Work).Where(work => work.Part is null && work.At is null && Asks(work))
        )
        {
            yield return board.Finding(
                Description,
                work.Spot,
                $"this work does not say what was {work.Did.Text}",
                "add part: C12, or at: J3 for what is no part"
            );
        }
    }

    // Work that names the hazard that it took away says what it was done to.
    private static bool Asks(WorkEntry work) => work.Lot is not null || (work.Hazard is null && IsOnAPart(work.Did.Value));

    // The whole board may be cleaned, washed, set or made safe; these are done to one part at a time.
    private static bool IsOnAPart(WorkKind did) =>
        did is WorkKind.Replaced or WorkKind.Removed or WorkKind.Fitted or WorkKind.PutBack or WorkKind.Reformed;
}
