using System.Collections.Immutable;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Records.Model;
using Ohmstead.Report.Addresses;
using Ohmstead.Report.Html;

namespace Ohmstead.Publishing;

/// <summary>A visit to the bench, as a reader of the feed is told of it.</summary>
/// <param name="Board">The number of the board.</param>
/// <param name="Date">The day.</param>
/// <param name="Anchor">The place of the visit on the page of the board; with the board it names the visit for ever.</param>
/// <param name="By">Initials, or null.</param>
/// <param name="Title">One line.</param>
/// <param name="Lines">What was found, read, decided, done and proved, a line each.</param>
internal sealed record Change(string Board, DateOnly Date, ElementId Anchor, string? By, string Title, IReadOnlyList<string> Lines)
    : IComparable<Change>
{
    /// <summary>The last visits of a board, in order of time. A board may have a hundred thousand, of which nobody is told.</summary>
    /// <param name="board">The board.</param>
    /// <param name="most">How many.</param>
    public static IEnumerable<Change> LastOf(BoardAssessment board, int most)
    {
        var anchors = VisitAnchors.For(board.Visits);
        var (readingsAt, proofsAt) = (board.Readings.ToLookup(Order), board.Proofs.ToLookup(Order));
        for (var order = Math.Max(0, board.Visits.Length - most); order < board.Visits.Length; order++)
        {
            var visit = board.Visits[order];
            ImmutableArray<AssessedReading> readings = [.. readingsAt[order]];
            string[] done = [.. visit.Work.Select(Words)];
            string[] proofs = [.. proofsAt[order].Select(proof => $"{proof.Proof.Point.Value} {VerdictWords.Describe(proof.Outcome)}")];
            var headline =
                done.Length > 0 ? done[0] + More(done.Length)
                : proofs.Length > 0 ? $"proof: {proofs[0]}{More(proofs.Length)}"
                : Counted(readings);
            yield return new(
                board.Board.Id.Value,
                visit.Date.Value,
                anchors[order],
                visit.By?.Value,
                $"{board.Board.Id.Value} {board.Board.Title.Value}: {headline}",
                [
                    .. visit.Found.Select(found => $"found at {found.At.Value}: {found.What.Value} ({found.Severity.Text})"),
                    .. readings.Length > 0 ? [Counted(readings)] : Array.Empty<string>(),
                    .. visit.Decided.Select(decision => $"decided {decision.Place?.Value}: {decision.What.Text}, {decision.Because.Value}"),
                    .. done,
                    .. proofs.Select(proof => $"proof: {proof}"),
                    .. visit.Note is { } note ? [note.Value] : Array.Empty<string>(),
                ]
            );
        }
    }

    /// <summary>The latest first; on one day by board, and on one board the last visit first.</summary>
    public int CompareTo(Change? other)
    {
        if (other is null)
        {
            return -1;
        }

        var byDate = other.Date.CompareTo(Date);
        var byBoard = byDate != 0 ? byDate : string.CompareOrdinal(Board, other.Board);
        var byLength = byBoard != 0 ? byBoard : other.Anchor.Value.Length.CompareTo(Anchor.Value.Length);
        return byLength != 0 ? byLength : string.CompareOrdinal(other.Anchor.Value, Anchor.Value);
    }

    private static int Order(AssessedReading reading) => reading.VisitOrder;

    private static int Order(AssessedProof proof) => proof.VisitOrder;

    private static string Words(WorkEntry work) =>
        work.Did.Text
        + ((work.Part ?? work.At) is { } place ? " " + place.Value : string.Empty)
        + (work.Lot is { } lot ? " with " + lot.Value : string.Empty);

    private static string More(int count) => count == 1 ? string.Empty : $" and {count - 1} more";

    private static string Counted(ImmutableArray<AssessedReading> readings)
    {
        var counts = OutcomeCounts.Count(readings);
        return readings.Length == 0 ? "looked at"
            : readings.Length == 1 ? $"one reading, {VerdictWords.Describe(readings[0].Overall)}"
            : $"{counts.Total} readings, {counts.Outside} outside, {counts.Undecided} undecided";
    }
}
