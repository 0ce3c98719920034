using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Checks.Basis;
using Ohmstead.Assessment.Workshops;
using Ohmstead.Records.Binding;
using Ohmstead.Records.Editing;
using Ohmstead.Records.Editing.Edits;
using Ohmstead.Records.Nodes;
using Ohmstead.Records.Shapes;
using Ohmstead.Records.Text;

namespace Ohmstead.Writing;

/// <summary>Writes the computed verdicts beside the readings and proofs of a board, and mends those that disagree.</summary>
/// <param name="workshop">What boards refer to.</param>
/// <param name="today">The day of the run.</param>
/// <param name="pictures">The pictures of the collection.</param>
/// <param name="reader">Reads the text.</param>
internal sealed class VerdictWriter(Workshop workshop, DateOnly today, IPictures pictures, INodeReader reader)
{
    private readonly Assessor assessor = new(workshop);

    /// <summary>The text with its verdicts, what was changed, and why nothing was where it cannot be.</summary>
    public (string Text, IReadOnlyList<string> Changes, EditRefusal? Refusal) Set(string path, string text, NodeReading reading)
    {
        if (FileBinding.Board(path, reading).File is not { } board)
        {
            return (text, [], null);
        }

        var under = new BoardUnderCheck(assessor.Assess(board), workshop, today, pictures);
        if (!under.HasAllThatItIsJudgedBy)
        {
            return (
                text,
                [],
                new(
                    "verdicts cannot be computed: the collection, the stock, the instruments or the design holds what cannot be read",
                    "mend that file first; check says where"
                )
            );
        }

        var wanted = ComputedVerdict.All(under).Where(verdict => !verdict.IsAsWritten).ToArray();
        if (wanted.Length == 0)
        {
            return (text, [], null);
        }

        var proofs = board.Bench.SelectMany(visit => visit.Proofs).Select(proof => proof.Spot).ToHashSet();
        var outcome = EntryWords.Set(
            path,
            text,
            FileForm.Markdown,
            reader,
            [
                .. wanted.Select(verdict => new EntryWord(
                    verdict.Entry,
                    ShapeOf(proofs, verdict.Entry),
                    BenchShape.Verdict.Name,
                    verdict.Word
                )),
            ]
        );
        return outcome.Text is { } changed
            ? (changed, [.. wanted.Select(verdict => Told(path, verdict))], null)
            : (text, [], outcome.Refusal);
    }

    private static Shape ShapeOf(HashSet<Spot> proofs, Spot entry) => proofs.Contains(entry) ? BenchShape.Proof : BenchShape.Reading;

    private static string Told(string path, ComputedVerdict verdict) =>
        $"{path}:{verdict.Entry.Line}: {verdict.Of}: "
        + (verdict.Word, verdict.Written) switch
        {
            (null, { } written) => $"verdict {written.Text} taken out, nothing can be judged here",
            ({ } word, { } written) => $"verdict {word} instead of {written.Text}",
            _ => $"verdict {verdict.Word} added",
        };
}
