using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Notes;
using Ohmstead.Records.Model;
using Ohmstead.Report.Drawings;
using Ohmstead.Report.Frame;
using Ohmstead.Report.Html;

namespace Ohmstead.Report.Tables;

/// <summary>The proof of a board, the latest first.</summary>
/// <param name="page">The board on its page.</param>
internal sealed class ProofTable(BoardOnPage page)
{
    private readonly HtmlWriter html = page.Html;
    private readonly BoardAssessment board = page.Board;

    /// <summary>Writes the table, and what to know for proving where the design says it.</summary>
    public void Write()
    {
        var advice = board
            .Points.Select(point => (Name: point.Name.Value, Notes: PointNotes.OfDesign(board, point)))
            .Where(pair => pair.Notes.Count > 0)
            .ToArray();
        if (board.Proofs.Length == 0 && advice.Length == 0)
        {
            return;
        }

        using var section = Section.Open(html, "proof", "Proof", board.Proofs.Length == 0 ? null : "the latest first");
        foreach (var (name, notes) in advice)
        {
            NoteLines.Write(html, page.Working, [.. notes.Select(note => note with { Says = $"{name}: {note.Says}" })]);
        }

        if (board.Proofs.Length > 0)
        {
            RailsDrawing.Write(html, RailsDrawing.Rails(board));
            new Ledger<AssessedProof>(
                new("Point", proof => proof.Proof.Point.Value) { IsShort = true },
                new("Day", proof => proof.Visit.Date.Text),
                new("Result", (_, proof) => Result(proof)) { IsPlain = true }
            ).Write(html, "Proof", board.Proofs.Reverse());
        }
    }

    private void Result(AssessedProof proof)
    {
        foreach (var verdict in proof.Verdicts)
        {
            VerdictCell.Write(html, page.Working, verdict);
        }

        NoteLines.Write(html, page.Working, PointNotes.Compute(board, proof));

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
