using System.Collections.Concurrent;
using System.Collections.Immutable;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.History;
using Ohmstead.Collections;
using Ohmstead.Records.Editing.Edits;
using Ohmstead.Running;

namespace Ohmstead.Writing;

/// <summary>What a day before which all is taken as told would ask for no more: faults that stand on boards today. Nobody waves them
/// through unread.</summary>
/// <param name="terminal">Where they are named.</param>
/// <param name="run">How records are read and judged.</param>
/// <param name="files">The collection, or the one board of it.</param>
internal sealed class QuietedFaults(Terminal terminal, RunOptions run, CollectionFolder files)
{
    // Of a collection that moves in, so many lines are read; each board's page has its own.
    private const int MostNamed = 20;

    /// <summary>Holds a change back that would ask for a fault no more, with each of them named.</summary>
    /// <param name="path">The file that is changed.</param>
    /// <param name="change">The change.</param>
    /// <param name="isSure">True where somebody has read them.</param>
    /// <returns>The change, or why it is not made.</returns>
    public EditOutcome Ask(string path, EditOutcome change, bool isSure)
    {
        if (isSure || change.Text is not { } text)
        {
            return change;
        }

        var faults = Find(path, text);
        if (faults.Count == 0)
        {
            return change;
        }

        foreach (var (board, fault) in faults.Take(MostNamed))
        {
            terminal.Error.WriteLine(Printable.Escape($"{board}: {BoardStates.Words(fault.State)}: {fault.Told}"));
        }

        if (faults.Count > MostNamed)
        {
            terminal.Error.WriteLine($"and {faults.Count - MostNamed} more");
        }

        var (count, asked) = faults.Count == 1 ? ("a fault", "it is") : ($"{faults.Count} faults", "they are");
        return new(
            null,
            new(
                $"{count} would be asked for no more; nothing was written",
                $"answer what stands above, or write it with --sure: {asked} asked for again at the next visit"
            )
        );
    }

    private List<(string Board, StateReason Fault)> Find(string path, string text)
    {
        var before = Reasons(run, static board => board.ToldBefore is null);
        var after = Reasons(run with { Instead = new Dictionary<string, string>(StringComparer.Ordinal) { [path] = text } }, static board =>
            board.ToldBefore is not null
        );
        return
        [
            .. before
                .Where(board => after.ContainsKey(board.Key))
                .OrderBy(board => board.Key, StringComparer.Ordinal)
                .SelectMany(board =>
                    board
                        .Value.Where(fault => !after[board.Key].Any(still => still.Kind == fault.Kind && still.Told == fault.Told))
                        .Select(fault => (board.Key, fault))
                ),
        ];
    }

    // The faults of each board that is judged in full, or of each that is told.
    private ConcurrentDictionary<string, ImmutableArray<StateReason>> Reasons(RunOptions options, Func<JudgedBoard, bool> isMeant)
    {
        var reasons = new ConcurrentDictionary<string, ImmutableArray<StateReason>>(StringComparer.Ordinal);
        new CollectionRun(files, options).Run(seen: board =>
        {
            if (isMeant(board))
            {
                reasons[board.Board.Id.Value] =
                [
                    .. board.Reasons.Where(reason => reason.State is BoardState.FaultStands or BoardState.MakeSafe),
                ];
            }
        });
        return reasons;
    }
}
