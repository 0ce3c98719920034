namespace Ohmstead.Prompt;

/// <summary>Looks for a line of the history while the words are typed.</summary>
internal static class HistorySearch
{
    /// <summary>Begins one.</summary>
    public static EditState Begin(EditState state) => state with { Search = new(string.Empty, state.History.Length, true, state.Line) };

    /// <summary>What stands in front of the line meanwhile.</summary>
    public static string Prompt(Search search) => $"({(search.IsFound ? "look for" : "not there")} '{search.Words}') ";

    /// <summary>Does what a key asks for while something is looked for; null where the key is one for the line that was found.</summary>
    public static (EditState State, EditResult Result)? Press(EditState state, Search search, Key key)
    {
        switch (key.Name)
        {
            case KeyName.Text:
                return Look(state, search with { Words = search.Words + key.Text }, search.At, -1);
            case KeyName.Backspace when search.Words.Length > 0:
                var fewer = EditLine.For(search.Words);
                return Look(state, search with { Words = search.Words[..fewer.Left] }, state.History.Length - 1, -1);
            case KeyName.Search:
                return Look(state, search, search.At - 1, -1);
            case KeyName.SearchOn:
                return Look(state, search, search.At + 1, 1);
            case KeyName.Cancel or KeyName.Interrupt or KeyName.Backspace:
                return (state with { Line = search.Before, Search = null }, EditResult.GoesOn);
            case KeyName.DeleteOrEnd:
                return (state with { Search = null }, EditResult.GoesOn);
            default:
                return null;
        }
    }

    private static (EditState, EditResult) Look(EditState state, Search search, int from, int step)
    {
        if (search.Words.Length > 0)
        {
            for (var at = Math.Min(from, state.History.Length - 1); at >= 0 && at < state.History.Length; at += step)
            {
                if (state.History[at].IndexOf(search.Words, StringComparison.Ordinal) is >= 0 and var place)
                {
                    return (
                        state with
                        {
                            Line = new(state.History[at], place),
                            At = at,
                            Undo = [],
                            Search = search with { At = at, IsFound = true },
                        },
                        EditResult.GoesOn
                    );
                }
            }
        }

        return (
            state with
            {
                Search = search with { IsFound = search.Words.Length == 0 },
            },
            search.Words.Length == 0 ? EditResult.GoesOn : EditResult.Refused
        );
    }
}
