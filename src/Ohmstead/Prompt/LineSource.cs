using Ohmstead.Running;

namespace Ohmstead.Prompt;

/// <summary>Chooses where the lines of a session come from.</summary>
internal static class LineSource
{
    /// <summary>The lines of a terminal, edited here, where there is one and nobody wants it plain; else as they come.</summary>
    /// <param name="terminal">Where a session is typed and told.</param>
    /// <param name="isPlain">True for no cursor to be moved, as screen readers like it.</param>
    /// <param name="collection">The collection's folder.</param>
    /// <param name="complete">What fits at the cursor.</param>
    public static ILines Open(Terminal terminal, bool isPlain, string collection, Func<EditLine, Completion> complete)
    {
        if (isPlain || terminal.OpenDevice() is not { } device)
        {
            return new PlainLines(terminal);
        }

        var history = new HistoryFile(HistoryFile.PlaceIn(Environment.GetEnvironmentVariable), collection);
        history.Load();
        return new TerminalLines(terminal, device, history, complete);
    }
}
