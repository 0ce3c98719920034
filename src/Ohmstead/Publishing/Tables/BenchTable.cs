using Ohmstead.Assessment.Boards;
using Ohmstead.Records.Model;
using Ohmstead.Records.Shapes;
using static Ohmstead.Publishing.Tables.SharedKeys;

namespace Ohmstead.Publishing.Tables;

/// <summary>What was found, done and decided.</summary>
internal static class BenchTable
{
    /// <summary>Its columns.</summary>
    public static DataColumns<BenchRow> Columns { get; } =
        new(
            "bench row",
            "Something found, done or decided at the bench.",
            "{ board: SP-0007, date: 2026-03-14, entry: work, what: cleaned, line: 40 }",
            new(Board, row => row.Board),
            new(Date, row => row.Date),
            new(By, row => row.By),
            new(Word("entry", ["found", "work", "decided", "note"], "What kind of entry it is.").Needed(), row => row.Entry),
            new(Key.Text("at", "The part or place.", "J3"), row => row.At),
            new(Key.Text("what", "What was seen, done, decided or noted.", "flux left from earlier work").Needed(), row => row.What),
            new(Word("severity", Vocabulary.Severities, "How much a finding matters."), row => row.Severity),
            new(Key.Id("lot", "The lot that was fitted.", "L-031"), row => row.Lot),
            new(Key.Text("note", "The reason of a decision, or a remark.", "this family fails shorted"), row => row.Note),
            new(Key.Count("line", "The line of the record.", "40").Needed(), row => Number(row.Line))
        );

    /// <summary>What was found, done, decided and noted at the bench with a board.</summary>
    public static IEnumerable<BenchRow> Rows(BoardAssessment board)
    {
        foreach (var visit in board.Visits)
        {
            var of = new BenchRow(board.Board.Id.Value, Day(visit.Date.Value), visit.By?.Value);
            foreach (var found in visit.Found)
            {
                yield return of with
                {
                    Entry = "found",
                    At = found.At.Value,
                    What = found.What.Value,
                    Severity = found.Severity.Text,
                    Line = found.Spot.Line,
                };
            }

            foreach (var work in visit.Work)
            {
                yield return of with
                {
                    Entry = "work",
                    At = (work.Part ?? work.At)?.Value,
                    What = work.Did.Text,
                    Lot = work.Lot?.Value,
                    Note = work.Note?.Value,
                    Line = work.Spot.Line,
                };
            }

            foreach (var decision in visit.Decided)
            {
                yield return of with
                {
                    Entry = "decided",
                    At = decision.Place?.Value,
                    What = decision.What.Text,
                    Note = decision.Because.Value,
                    Line = decision.Spot.Line,
                };
            }

            if (visit.Note is { } note)
            {
                yield return of with
                {
                    Entry = "note",
                    What = note.Value,
                    Line = note.Spot.Line,
                };
            }
        }
    }
}
