using Ohmstead.Assessment.Boards;
using Ohmstead.Report.Html;

namespace Ohmstead.Report.Pages;

/// <summary>The proof of a board, the latest first.</summary>
public static class ProofTable
{
    /// <summary>Writes the table.</summary>
    public static void Write(HtmlWriter html, BoardAssessment board)
    {
        if (board.Proofs.Count == 0)
        {
            return;
        }

        PageFrame.Heading(html, "proof", "Proof");
        using var scroll = html.Open(Tag.Div, ClassName.Scroll).With(FixedAttribute.RoleRegion).With(FixedAttribute.TabStop).With(TextAttribute.AriaLabel, "Proof");
        using var table = html.Open(Tag.Table, ClassName.Ledger);
        PageFrame.Head(html, "Point", "Day", "Result", "Values");
        using var body = html.Open(Tag.TBody);
        foreach (var proof in board.Proofs.Reverse())
        {
            using var row = html.Open(Tag.Tr);
            html.Open(Tag.Th).With(FixedAttribute.ScopeRow).Text(proof.Proof.Point.Value);
            html.Open(Tag.Td).Text(proof.Visit.Date.Text);
            using (html.Open(Tag.Td))
            {
                Marks.Verdict(html, proof.Outcome);
                if (proof.Proof.Result is { } result)
                {
                    html.Text($" ({result.Value})");
                }
            }

            using var values = html.Open(Tag.Td);
            foreach (var verdict in proof.Verdicts)
            {
                VerdictCell.Write(html, verdict);
            }

            if (proof.Proof.Note is { } note)
            {
                html.Open(Tag.P).Text(note.Value);
            }
        }
    }
}
