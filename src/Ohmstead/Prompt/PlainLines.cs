using Ohmstead.Running;

namespace Ohmstead.Prompt;

/// <summary>Lines as they come: from a file, from another program, or from a terminal that edits them itself. No cursor is moved.</summary>
/// <param name="terminal">Where they come from, and where prompts are told.</param>
internal sealed class PlainLines(Terminal terminal) : ILines
{
    /// <inheritdoc/>
    public string? Read(PromptText prompt)
    {
        terminal.Out.Write(prompt.Text);
        terminal.Out.Flush();
        return terminal.In.ReadLine();
    }

    /// <inheritdoc/>
    public string? Ask(PromptText prompt) => Read(prompt);

    /// <inheritdoc/>
    public bool IsStopped() => false;

    /// <inheritdoc/>
    public void Dispose() { }
}
