using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Ohmstead.Devices;
using Ohmstead.Running;

namespace Ohmstead.Prompt;

/// <summary>Lines that a person types and edits at a terminal.</summary>
/// <param name="terminal">Where they are drawn.</param>
/// <param name="device">Where the keys come from.</param>
/// <param name="history">The lines of before.</param>
/// <param name="complete">What fits at the cursor.</param>
internal sealed class TerminalLines(Terminal terminal, TerminalDevice device, HistoryFile history, Func<EditLine, Completion> complete)
    : ILines
{
    private readonly KeyDecoder decoder = new();
    private readonly Queue<Key> keys = new();
    private readonly byte[] bytes = new byte[4096];
    private ImmutableArray<string> waiting = [];
    private string cut = string.Empty;
    private Drawn drawn = Drawn.Nothing;

    /// <inheritdoc/>
    public string? Read(PromptText prompt)
    {
        var line = TakeWaiting();
        var read = Edit(prompt, new(line, history.Lines) { Cut = cut, Waiting = waiting }, new(complete));
        if (read is not null)
        {
            history.Add(read);
        }

        return read;
    }

    /// <inheritdoc/>
    public string? Ask(PromptText prompt)
    {
        keys.Clear();
        _ = TerminalDevice.IsStopped();
        var held = waiting;
        waiting = [];
        var read = Edit(prompt, new(EditLine.Empty, []), new(_ => Completion.None), isQuestion: true);
        waiting = held;
        return read;
    }

    /// <inheritdoc/>
    public bool IsStopped()
    {
        // Ctrl-C is a key here, and stops the waiting alone.
        device.Type();
        var isStopped = keys.Any(key => key.Name == KeyName.Interrupt);
        keys.Clear();
        return TerminalDevice.IsStopped() || isStopped;
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        device.Dispose();
        history.Save();
    }

    private string? Edit(PromptText prompt, EditState first, LineEditor editor, bool isQuestion = false)
    {
        device.Type();
        var state = first;
        drawn = Drawn.Nothing;
        Draw(prompt, state);
        history.Save();
        while (true)
        {
            if (keys.Count == 0 && !Fill())
            {
                terminal.Out.Write(LineDrawing.Leave(drawn));
                return null;
            }

            while (keys.TryDequeue(out var key))
            {
                var (next, result) = editor.Press(state, key);
                state = next;
                switch (result)
                {
                    case EditResult.Done:
                        return Leave(prompt, state, state.Line.Text);
                    case EditResult.Ended:
                        Leave(prompt, state, string.Empty);
                        return null;
                    case EditResult.GivenUp when isQuestion:
                        return Leave(prompt, state, string.Empty, "^C");
                    case EditResult.GivenUp:
                        Leave(prompt, state, string.Empty, "^C");
                        TellDropped(state.Waiting.Length);
                        waiting = [];
                        state = first with { Line = EditLine.Empty, Own = EditLine.Empty, Cut = state.Cut, Waiting = [] };
                        device.Type();
                        break;
                    case EditResult.Suspended:
                        Draw(prompt, state);
                        terminal.Out.Write(LineDrawing.Leave(drawn));
                        terminal.Out.Flush();
                        device.Suspend();
                        drawn = Drawn.Nothing;
                        break;
                    case EditResult.Cleared:
                        terminal.Out.Write("\e[H\e[2J");
                        drawn = Drawn.Nothing;
                        break;
                    case EditResult.Choice:
                        Draw(prompt, state);
                        terminal.Out.Write(LineDrawing.Leave(drawn) + ChoiceTable.For(state.Choice, TerminalDevice.Size.Columns));
                        drawn = Drawn.Nothing;
                        break;
                    case EditResult.Refused:
                        terminal.Out.Write('\a');
                        break;
                    case EditResult.GoesOn:
                        break;
                }
            }

            Draw(prompt, state);
        }
    }

    // False when the terminal is gone.
    private bool Fill()
    {
        var count = device.Read(bytes);
        foreach (var key in decoder.Decode(bytes.AsSpan(0, Math.Max(count, 0))))
        {
            keys.Enqueue(key);
        }

        return count >= 0;
    }

    private EditLine TakeWaiting()
    {
        if (waiting.Length == 0)
        {
            return EditLine.Empty;
        }

        var line = waiting[0];
        waiting = waiting[1..];
        return EditLine.Empty.Put(line);
    }

    private string Leave(PromptText prompt, EditState state, string line, string mark = "")
    {
        Draw(prompt, state with { Line = EditLine.For(state.Line.Text), Search = null });
        terminal.Out.Write(mark + LineDrawing.Leave(drawn));
        terminal.Out.Flush();
        drawn = Drawn.Nothing;
        waiting = state.Waiting;
        cut = state.Cut;
        device.Work();
        return line;
    }

    private void TellDropped(int count)
    {
        if (count > 0)
        {
            terminal.Out.Write(string.Create(CultureInfo.InvariantCulture, $"{count} pasted lines dropped\n"));
        }
    }

    private void Draw(PromptText prompt, EditState state)
    {
        var shown = prompt;
        if (state.Search is { } search)
        {
            shown = new(HistorySearch.Prompt(search));
        }
        else if (state.Waiting.Length > 0)
        {
            shown = prompt with { Text = string.Create(CultureInfo.InvariantCulture, $"(+{state.Waiting.Length} pasted) {prompt.Text}") };
        }

        var (sent, now) = LineDrawing.Draw(shown, state.Line, TerminalDevice.Size, drawn);
        drawn = now;
        terminal.Out.Write(sent);
        terminal.Out.Flush();
    }
}

/// <summary>The words of a choice in columns.</summary>
internal static class ChoiceTable
{
    private const int MostRows = 8;

    /// <summary>As many as have room, in rows that end with a line end.</summary>
    public static string For(ImmutableArray<string> words, int columns)
    {
        var wide = words.Max(CellWidth.Measure) + 2;
        var across = Math.Max((columns - 1) / wide, 1);
        var shown = Math.Min(words.Length, across * MostRows);
        var table = new StringBuilder();
        for (var at = 0; at < shown; at++)
        {
            var word = Printable.Escape(words[at]);
            var ends = (at + 1) % across == 0 || at + 1 == shown;
            table.Append(word).Append(ends ? "\r\n" : new string(' ', Math.Max(wide - CellWidth.Measure(word), 1)));
        }

        return shown == words.Length
            ? table.ToString()
            : table.Append(CultureInfo.InvariantCulture, $"and {words.Length - shown} more\r\n").ToString();
    }
}
