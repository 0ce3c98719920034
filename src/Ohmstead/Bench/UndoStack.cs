using Ohmstead.Writing;

namespace Ohmstead.Bench;

/// <summary>What a session wrote, step by step, so that the last step can be taken back.</summary>
/// <param name="root">The collection's folder.</param>
/// <param name="record">The file of the board, from there.</param>
internal sealed class UndoStack(string root, string record)
{
    private readonly Stack<(string Before, string After, int Stop)> steps = new();

    /// <summary>Does something that may write, and remembers what it changed and at which stop.</summary>
    public int Around(int stop, Func<int> step)
    {
        var before = RecordFile.Read(root, record);
        var exit = step();
        var after = RecordFile.Read(root, record);
        if (after != before)
        {
            steps.Push((before, after, stop));
        }

        return exit;
    }

    /// <summary>Takes the last step back. What somebody else wrote since is never taken with it.</summary>
    /// <returns>One line that says what was done, and the stop it leads back to; null when nothing was.</returns>
    public (string Said, int? Stop) Undo()
    {
        if (!steps.TryPeek(out var last))
        {
            return ("nothing of this session is left to take back", null);
        }

        var isDone = RecordFile.Change(root, record, null, text => text == last.After ? (last.Before, true) : ((string?)null, false));
        if (isDone)
        {
            steps.Pop();
        }

        return isDone
            ? ("taken back: the record is as it was before the last entry", last.Stop)
            : ("the record was changed by somebody else since; nothing was taken back", null);
    }
}
