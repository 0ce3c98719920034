using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.History;

/// <summary>Steps of where a board went, as they are told.</summary>
public static class WhereaboutsWords
{
    /// <summary>A step in one line: on loan to Two Weirs museum since 2026-05-02, until 2026-11-30.</summary>
    public static string Describe(WhereaboutsEntry step)
    {
        var to = step.To is { } whom ? $" to {whom.Value}" : string.Empty;
        return step.Did.Value switch
        {
            WhereaboutsKind.Lent => $"on loan{to} since {step.Date.Text}"
                + (step.Until is { } until ? $", until {until.Text}" : string.Empty),
            WhereaboutsKind.BrokenUp => $"broken up for parts on {step.Date.Text}",
            _ => $"{step.Did.Text}{to} on {step.Date.Text}",
        };
    }
}
