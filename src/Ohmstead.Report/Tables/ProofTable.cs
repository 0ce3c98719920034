using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Notes;
using Ohmstead.Records.Model;
using Ohmstead.Report.Drawings;
using Ohmstead.Report.Frame;
using Ohmstead.Report.Html;

namespace Ohmstead.Report.Tables;

/// <summary>The proof of a board, the latest first.</summary>
internal static class ProofTable
{
    private static readonly Column[] Columns = [new("Point", IsShort: true), new("Day", IsShort: true), new("Result", IsPlain: true)];

    /// <summary>Writes the table, and what to know for proving where the design says it.</summary>
    public static void Write(HtmlWriter html, BoardAssessment board, SharedWorking working)
    {
        var advice = board
            .Points.Select(point => (Name: point.Name.Value, Notes: PointNotes.OfDesign(board, point)))
            .Where(pair => pair.Notes.Count > 0)
            .ToArray();
        if (board.Proofs.Length == 0 && advice.Length == 0)
        {
            return;
        }

        using var entry = Entry.Open(html, "proof", "Proof", board.Proofs.Length == 0 ? null : "the latest first");
        foreach (var (name, notes) in advice)
        {
            NoteLines.Write(html, working, [.. notes.Select(note => note with { Says = $"{name}: {note.Says}" })]);
        }

        if (board.Proofs.Length > 0)
        {
            Proofs(html, board, working);
        }
    }

    private static void Proofs(HtmlWriter html, BoardAssessment board, SharedWorking working)
    {
        RailsDrawing.Write(html, RailsDrawing.Rails(board));
        using var table = Ledger.Open(html, "Proof", Columns);
        using var body = html.Open(Tag.TBody);
        foreach (var proof in board.Proofs.Reverse())
        {
            using var row = html.Open(Tag.Tr);
            table.Head().Text(proof.Proof.Point.Value);
            table.Cell(1).Text(proof.Visit.Date.Text);
            using var result = table.Cell(2);
            foreach (var verdict in proof.Verdicts)
            {
                VerdictCell.Write(html, working, verdict);
            }

            NoteLines.Write(html, working, PointNotes.Compute(board, proof));

            // A pass or a fail is said once more only where no value says it.
            if (proof.Verdicts.Length == 0 || proof.Proof.Result is not null)
            {
                using var line = html.Open(Tag.P);
                if (proof.Proof.Result is { } said)
                {
                    VerdictMark.Test(html, said.Value == TestResult.Pass);
                }
                else
                {
                    VerdictMark.Write(html, proof.Outcome);
                }
            }

            if (proof.Proof.Note is { } note)
            {
                html.Open(Tag.P).Text(note.Value);
            }
        }
    }
}
