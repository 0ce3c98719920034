using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Starting;

/// <summary>Holds two assessments of one board side by side: a change that only moves lines must not move a verdict.</summary>
internal static class SameVerdicts
{
    /// <summary>The first thing that is judged otherwise, as words for a person; null when all is the same.</summary>
    public static string? Difference(JudgedBoard before, JudgedBoard after) =>
        before.State != after.State
            ? $"{before.Board.Id.Value} would be '{BoardStates.Words(after.State)}' instead of '{BoardStates.Words(before.State)}'"
        : !Reasons(before).SequenceEqual(Reasons(after)) ? $"the reasons for the state of {before.Board.Id.Value} would change"
        : List(before).SequenceEqual(List(after)) ? null
        : List(before).Zip(List(after)).FirstOrDefault(pair => pair.First != pair.Second) is ({ } first, _)
            ? $"{first.What} of {first.Where} on {first.Date} would be judged otherwise"
        : "a verdict would come or go";

    // Without their words, which name the file that a limit comes from.
    private static IEnumerable<(BoardState State, string? At)> Reasons(JudgedBoard board) =>
        board.Reasons.Select(reason => (reason.State, reason.At));

    private static IEnumerable<Judged> List(JudgedBoard board) =>
        board
            .Readings.SelectMany(reading =>
                reading.Verdicts.Select(verdict =>
                    Judge(
                        reading.Visit.Date.Text,
                        reading.Reading.Part?.Value ?? reading.Reading.Lot?.Value ?? reading.Reading.Point?.Value,
                        verdict
                    )
                )
            )
            .Concat(
                board.Proofs.SelectMany(proof =>
                    proof.Verdicts.Select(verdict => Judge(proof.Visit.Date.Text, proof.Proof.Point.Value, verdict))
                )
            );

    private static Judged Judge(string date, string? where, Verdict verdict) =>
        new(
            date,
            where ?? "the board",
            verdict.Measured.ToString(),
            verdict.Outcome,
            verdict.Limit?.Interval,
            verdict.Limit?.Kind.ToString(),
            verdict.Margin
        );

    private sealed record Judged(
        string Date,
        string Where,
        string What,
        VerdictOutcome Outcome,
        Interval? Limit,
        string? Kind,
        decimal? Margin
    );
}
