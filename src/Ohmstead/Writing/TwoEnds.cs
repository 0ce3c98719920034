using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.History;
using Ohmstead.Collections;
using Ohmstead.Records.Editing;
using Ohmstead.Records.Editing.Edits;
using Ohmstead.Records.Nodes;
using Ohmstead.Records.Shapes;
using Ohmstead.Running;

namespace Ohmstead.Writing;

/// <summary>One end of a fact: an entry of the work of a board.</summary>
/// <param name="Board">The board.</param>
/// <param name="Who">The day and who works.</param>
/// <param name="Item">The entry as one line of YAML.</param>
internal sealed record End(FoundBoard Board, VisitHead Who, string Item);

/// <summary>Enters one fact with two ends, such as a part that goes from one board to another: both records are judged together, and both
/// are written or none.</summary>
/// <param name="terminal">Where it is told.</param>
/// <param name="run">How records are read and judged.</param>
internal sealed class TwoEnds(Terminal terminal, RunOptions run)
{
    private const string List = "work";

    /// <summary>Enters.</summary>
    /// <param name="files">The collection.</param>
    /// <param name="ends">The ends, each on a board of its own.</param>
    /// <param name="isTrial">True to show what would be written, and write nothing.</param>
    /// <returns>The exit code.</returns>
    public int Enter(CollectionFolder files, IReadOnlyList<End> ends, bool isTrial)
    {
        var own = files.Only([.. ends.Select(end => end.Board.Board.Board.Path)]);
        var changes = new List<RecordChange>();
        foreach (var end in ends)
        {
            var path = end.Board.Board.Board.Path;
            var text = RecordFile.Read(files.Root, path);
            if (Splice.Try(terminal, path, text, FileForm.Markdown, editor => (Into(editor, end), end.Item)) is not var (changed, _, _))
            {
                return ExitCode.Findings;
            }

            changes.Add(new(path, text, changed));
        }

        var after = new Dictionary<string, JudgedBoard>(StringComparer.Ordinal);
        var before = new CollectionRun(own, run).Run();
        var result = new CollectionRun(
            own,
            run with
            {
                Instead = changes.ToDictionary(change => change.Path, change => change.After, StringComparer.Ordinal),
            }
        ).Run(seen: board =>
        {
            lock (after)
            {
                after[board.Board.Path] = board;
            }
        });
        if (!JudgedFiles.AreSound(terminal, before, result, [.. changes.Select(change => change.Path)]))
        {
            return ExitCode.Findings;
        }

        if (isTrial)
        {
            Tell(ends, after, "would add");
        }
        else
        {
            WholeMovement.Write([(files.Root, changes)], terminal.Error, () =>
            {
                Tell(ends, after, "added");
                terminal.Out.Flush();
            });
        }

        return ExitCode.Clean;
    }

    // What comes after something of its place that stands further down begins a second visit of the day.
    private static EditOutcome Into(RecordEditor editor, End end) =>
        end.Who.IsLate ? LateEntry.Into(editor, end.Who, List, [_ => end.Item], null).Outcome
        : editor.LastVisit is { } last && end.Who.IsOf(last) && editor.MayJoinLastVisit(List, end.Item)
            ? editor.AppendToVisit(FileShapes.Board, end.Who.IsOf, end.Who.Keys, List, end.Item)
        : editor.AppendToVisit(FileShapes.Board, _ => false, end.Who.Keys, List, end.Item);

    private void Tell(IReadOnlyList<End> ends, Dictionary<string, JudgedBoard> after, string did)
    {
        foreach (var end in ends)
        {
            terminal.Out.WriteLine(Printable.Escape($"{end.Board.Board.Board.Path}: {did} {end.Item}"));
        }

        foreach (var board in ends.Select(end => after.GetValueOrDefault(end.Board.Board.Board.Path)).OfType<JudgedBoard>())
        {
            terminal.Out.WriteLine(
                Printable.Escape($"  {board.Board.Id.Value} is now: {BoardStates.Told(board.State, board.OverdueSince)}")
            );
        }
    }
}
