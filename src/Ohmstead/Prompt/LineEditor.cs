namespace Ohmstead.Prompt;

/// <summary>What each key does to a line. It knows no terminal, no file and no clock.</summary>
/// <param name="complete">What fits at the cursor of a line.</param>
internal sealed class LineEditor(Func<EditLine, Completion> complete)
{
    /// <summary>Does what a key asks for.</summary>
    public (EditState State, EditResult Result) Press(EditState state, Key key)
    {
        if (state.Search is { } search)
        {
            return HistorySearch.Press(state, search, key) ?? Press(state with { Search = null, Own = state.Line }, key);
        }

        var (next, result) = Do(state, key);
        return (next with { Last = key.Name }, result);
    }

    private (EditState, EditResult) Do(EditState state, Key key)
    {
        var line = state.Line;
        return key.Name switch
        {
            KeyName.Text => Put(state, key.Text),
            KeyName.Paste => Paste(state, key.Text),
            KeyName.Enter => (state, EditResult.Done),
            KeyName.Interrupt => (state, EditResult.GivenUp),
            KeyName.Suspend => (state, EditResult.Suspended),
            KeyName.Clear => (state, EditResult.Cleared),
            KeyName.Left => Go(state, line.Left),
            KeyName.Right => Go(state, line.Right),
            KeyName.Home => Go(state, 0),
            KeyName.End => Go(state, line.Text.Length),
            KeyName.WordLeft => Go(state, line.WordLeft),
            KeyName.WordRight => Go(state, line.WordRight),
            KeyName.Up => Turn(state, state.At - 1),
            KeyName.Down => Turn(state, state.At + 1),
            KeyName.Backspace => Change(state, line.Without(line.Left, line.Cursor)),
            KeyName.Delete => Change(state, line.Without(line.Cursor, line.Right)),
            KeyName.DeleteOrEnd when line.Text.Length == 0 => (state, EditResult.Ended),
            KeyName.DeleteOrEnd => Change(state, line.Without(line.Cursor, line.Right)),
            KeyName.KillToEnd => Kill(state, line.Cursor, line.Text.Length),
            KeyName.KillWordRight => Kill(state, line.Cursor, line.WordRight),
            KeyName.KillToStart => Kill(state, 0, line.Cursor),
            KeyName.KillWordLeft => Kill(state, line.WordLeft, line.Cursor),
            KeyName.KillToSpace => Kill(state, line.SpaceLeft, line.Cursor),
            KeyName.Yank => Change(state, line.Put(state.Cut)),
            KeyName.Swap => Change(state, line.Swapped()),
            KeyName.Undo => Undo(state),
            KeyName.Complete => Complete(state),
            KeyName.Search or KeyName.SearchOn => (HistorySearch.Begin(state), EditResult.GoesOn),
            KeyName.Cancel => (state, EditResult.Refused),
        };
    }

    private static (EditState, EditResult) Go(EditState state, int place) =>
        (state with { Line = state.Line.At(place) }, place == state.Line.Cursor ? EditResult.Refused : EditResult.GoesOn);

    private static (EditState, EditResult) Change(EditState state, EditLine line, bool isOfBefore = false) =>
        line.Text == state.Line.Text
            ? (state, EditResult.Refused)
            : (state with { Line = line, Undo = isOfBefore ? state.Undo : state.Undo.Push(state.Line) }, EditResult.GoesOn);

    // A run of typing is one change.
    private static (EditState, EditResult) Put(EditState state, string text) =>
        Change(state, state.Line.Put(text), state.Last == KeyName.Text && !state.Undo.IsEmpty);

    // Only the first line of a paste is put in; the others wait until it was taken, so that each is seen before it does anything.
    private static (EditState, EditResult) Paste(EditState state, string text)
    {
        var lines = text.Split('\n');
        var (next, result) = Change(state, state.Line.Put(lines[0]));
        string[] rest = [.. lines[1..].Where(line => line.Trim().Length > 0)];
        return (next with { Waiting = [.. state.Waiting, .. rest] }, rest.Length > 0 ? EditResult.GoesOn : result);
    }

    // What is cut in one go is put in again as one.
    private static (EditState, EditResult) Kill(EditState state, int start, int end)
    {
        if (start == end)
        {
            return (state, EditResult.Refused);
        }

        var cut = state.Line.Text[start..end];
        var isMore =
            state.Last is KeyName.KillToEnd or KeyName.KillToStart or KeyName.KillToSpace or KeyName.KillWordLeft or KeyName.KillWordRight;
        var (next, result) = Change(state, state.Line.Without(start, end));
        return (
            next with
            {
                Cut =
                    !isMore ? cut
                    : start < state.Line.Cursor ? cut + state.Cut
                    : state.Cut + cut,
            },
            result
        );
    }

    private static (EditState, EditResult) Undo(EditState state) =>
        state.Undo.IsEmpty
            ? (state, EditResult.Refused)
            : (state with { Line = state.Undo.Peek(), Undo = state.Undo.Pop() }, EditResult.GoesOn);

    private static (EditState, EditResult) Turn(EditState state, int to)
    {
        if (to < 0 || to > state.History.Length)
        {
            return (state, EditResult.Refused);
        }

        var own = state.At == state.History.Length ? state.Line : state.Own;
        var line = to == state.History.Length ? own : EditLine.For(state.History[to]);
        return (state with { Line = line, Own = own, At = to, Undo = [] }, EditResult.GoesOn);
    }

    private (EditState, EditResult) Complete(EditState state)
    {
        var line = state.Line;
        var found = complete(line);
        if (found.Words.Length == 0)
        {
            return (state, EditResult.Refused);
        }

        var typed = line.Text[found.Start..line.Cursor];
        string shared = found.Words.Aggregate((one, other) => one[..one.AsSpan().CommonPrefixLength(other)])!;
        var put =
            found.Words.Length == 1 ? found.Words[0] + (line.After.StartsWith(' ') || found.Words[0].EndsWith('=') ? string.Empty : " ")
            : shared.Length > typed.Length ? shared
            : typed;
        return put == typed
            ? (state with { Choice = found.Words }, EditResult.Choice)
            : Change(state, line.Without(found.Start, line.Cursor).Put(put));
    }
}
