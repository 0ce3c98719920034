using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Assessment.History;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Checks.Boards;

/// <summary>A step of where the board went cannot follow the one before it, or something was done to it while it was gone.</summary>
public sealed class WhereaboutsContradict : IBoardCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } =
        new(
            "whereabouts-contradict",
            Severity.Error,
            "a step of where the board went cannot follow the one before it, or something was done to it while it was gone",
            CheckEffect.HoldsBack,
            "whether the board is here, and whether what was proved was proved on it, is not known"
        );

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(BoardUnderCheck board)
    {
        var steps = board.Board.Whereabouts;
        if (steps.Length == 0)
        {
            yield break;
        }

        var before = DateOnly.MinValue;
        foreach (var step in steps)
        {
            if (step.Date.Value < before)
            {
                yield return board.Finding(
                    Description,
                    step.Date.Spot,
                    $"{step.Date.Text} stands after a later step",
                    "mend the date, or move the older step up"
                );
            }

            before = step.Date.Value > before ? step.Date.Value : before;
        }

        var away = new List<(DateOnly From, DateOnly Until, WhereaboutsEntry By)>();
        var now = Whereabouts.AsItCame;
        foreach (var step in Whereabouts.InOrder(steps))
        {
            if (now.WhyNot(step) is { } why)
            {
                yield return board.Finding(Description, step.Did.Spot, $"{step.Did.Text} on {step.Date.Text}, but {why}", NextStep(step));
                continue;
            }

            var after = now.After(step);
            if (now.Away is { } left && after.Away is null)
            {
                away.Add((left.Date.Value, step.Date.Value, left));
            }

            now = after;
        }

        if (now.Away is { } gone)
        {
            away.Add((gone.Date.Value, DateOnly.MaxValue, gone));
        }

        foreach (var visit in board.Board.Bench)
        {
            if (away.Find(one => visit.Date.Value > one.From && visit.Date.Value < one.Until && !MayBe(visit, one.By)).By is { } by)
            {
                yield return board.Finding(
                    Description,
                    visit.Date.Spot,
                    $"a visit of {visit.Date.Text}, but it was {WhereaboutsWords.Describe(by)}",
                    "mend the date, or the number of the board that was meant; should it have come back, enter that first"
                );
            }
        }
    }

    // Of a board that was broken up parts are read and taken off for as long as there are any.
    private static bool MayBe(BenchVisit visit, WhereaboutsEntry by) =>
        by.Did.Value == WhereaboutsKind.BrokenUp
        && visit.Proofs.Length == 0
        && visit.Work.All(work => work.Did.Value is WorkKind.Removed or WorkKind.MadeSafe);

    private static string NextStep(WhereaboutsEntry step) =>
        step.Did.Value == WhereaboutsKind.CameBack
            ? "enter first that it was lent, or take this step out"
            : "mend one of the two steps; a board that is here again came back first";
}
