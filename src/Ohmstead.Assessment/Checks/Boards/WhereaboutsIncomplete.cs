using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Checks.Boards;

/// <summary>A step of where the board went leaves out what it is about, or says what does not belong to it.</summary>
public sealed class WhereaboutsIncomplete : IBoardCheck
{
    /// <inheritdoc/>
    public CheckDescription Description { get; } =
        new(
            "whereabouts-incomplete",
            Severity.Error,
            "a step of where the board went leaves out what it is about, or says what does not belong to it",
            CheckEffect.HoldsBack,
            "who has the board, and until when, is not known"
        );

    /// <inheritdoc/>
    public IEnumerable<Finding> Look(BoardUnderCheck board)
    {
        foreach (var step in board.Board.Whereabouts)
        {
            if (Missing(step) is var (what, add))
            {
                yield return board.Finding(Description, step.Did.Spot, $"{step.Did.Text}, but not {what}", $"add {add}");
            }

            if (step.Until is { } until && step.Did.Value != WhereaboutsKind.Lent)
            {
                yield return board.Finding(
                    Description,
                    until.Spot,
                    $"what was {step.Did.Text} does not come back on a day",
                    "take until out, or write did: lent"
                );
            }
            else if (step.Until is { } end && end.Value < step.Date.Value)
            {
                yield return board.Finding(
                    Description,
                    end.Spot,
                    $"lent until {end.Text}, before it was lent on {step.Date.Text}",
                    $"write until: with a day from {step.Date.Text} on, or mend the date it was lent on"
                );
            }
        }
    }

    private static (string What, string Add)? Missing(WhereaboutsEntry step) =>
        step.Did.Value switch
        {
            WhereaboutsKind.Moved when step.At is null => ("where it stands now", "at: and the place where it stands"),
            WhereaboutsKind.ChangedHands when step.Owner is null => ("who owns it now", "owner: and the name of who owns it"),
            WhereaboutsKind.Lent when step.To is null => ("who has it", "to: and the name of who has it"),
            _ => null,
        };
}
