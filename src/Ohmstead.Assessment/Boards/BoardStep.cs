using System.Collections.Immutable;
using System.Globalization;
using Ohmstead.Electronics;
using Ohmstead.Records.Model;

namespace Ohmstead.Assessment.Boards;

/// <summary>What a step in the life of a board was.</summary>
public enum BoardStepKind
{
    /// <summary>It came.</summary>
    Came,

    /// <summary>It was at the bench, and nothing was replaced or proved.</summary>
    Seen,

    /// <summary>Parts were put in or taken out.</summary>
    Replaced,

    /// <summary>Something was proved, and nothing replaced.</summary>
    Proved,

    /// <summary>The day of the report.</summary>
    Today,

    /// <summary>The day of the next look.</summary>
    LookAgain,
}

/// <summary>A step in the life of a board.</summary>
/// <param name="Day">Its day.</param>
/// <param name="Kind">What it was.</param>
/// <param name="Words">What happened, in a few words.</param>
/// <param name="Visit">The place of its visit among all in order of time; null where it is none.</param>
public sealed record BoardStep(DateOnly Day, BoardStepKind Kind, string Words, int? Visit)
{
    /// <summary>The day as written: of an arrival perhaps a month or a year alone.</summary>
    public string When { get; init; } = IsoDate.Text(Day);

    /// <summary>The steps of a board in order of time: it came, its visits, the next look.</summary>
    public static ImmutableArray<BoardStep> Of(BoardAssessment board)
    {
        var steps = ImmutableArray.CreateBuilder<BoardStep>(board.Visits.Length + 2);
        if (board.Board.Arrived is { Date: { } came } arrived)
        {
            steps.Add(
                new(came.Value.Earliest, BoardStepKind.Came, arrived.From is { } from ? $"came from {from.Value}" : "came", null)
                {
                    When = came.Text,
                }
            );
        }

        steps.AddRange(board.Visits.Select((visit, order) => OfVisit(visit, order)));
        if (board.LookAgain is { } look)
        {
            steps.Add(new(look, BoardStepKind.LookAgain, "look again", null));
        }

        steps.Sort(static (a, b) => (a.Day, a.Visit ?? -1).CompareTo((b.Day, b.Visit ?? -1)));
        return steps.DrainToImmutable();
    }

    private static BoardStep OfVisit(BenchVisit visit, int order)
    {
        var changed = visit.Work.Count(work => work.ChangesAPlace);
        string[] words =
        [
            .. Counted(visit.Found.Length, "found", "found"),
            .. Counted(visit.Readings.Length, "reading", "readings"),
            .. Counted(changed, "part changed", "parts changed"),
            .. Counted(visit.Proofs.Length, "proof tried", "proofs tried"),
        ];
        return new(
            visit.Date.Value,
            changed > 0 ? BoardStepKind.Replaced
                : visit.Proofs.Length > 0 ? BoardStepKind.Proved
                : BoardStepKind.Seen,
            words.Length == 0 ? "at the bench" : string.Join(", ", words),
            order
        );
    }

    private static IEnumerable<string> Counted(int count, string one, string more) =>
        count == 0 ? [] : [string.Create(CultureInfo.InvariantCulture, $"{count} {(count == 1 ? one : more)}")];
}
