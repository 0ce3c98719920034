using System.Collections.Immutable;

namespace Ohmstead.Prompt;

/// <summary>What a key did beside changing the line.</summary>
internal enum EditResult
{
    /// <summary>The line goes on.</summary>
    GoesOn,

    /// <summary>The line is done.</summary>
    Done,

    /// <summary>The line was given up.</summary>
    GivenUp,

    /// <summary>There will be no more lines.</summary>
    Ended,

    /// <summary>Nothing could be done.</summary>
    Refused,

    /// <summary>The words that would fit are to be shown.</summary>
    Choice,

    /// <summary>The screen is to be cleared.</summary>
    Cleared,

    /// <summary>The program is to stop.</summary>
    Suspended,
}

/// <summary>Everything about a line that is being typed.</summary>
/// <param name="Line">The line.</param>
/// <param name="History">The lines before it, the oldest first.</param>
internal sealed record EditState(EditLine Line, ImmutableArray<string> History)
{
    /// <summary>The line as it was before each change, the last change on top.</summary>
    public ImmutableStack<EditLine> Undo { get; init; } = [];

    /// <summary>What was cut last.</summary>
    public string Cut { get; init; } = string.Empty;

    /// <summary>The key before this one.</summary>
    public KeyName? Last { get; init; }

    /// <summary>Which line of the history is shown; the count of all where it is the own one.</summary>
    public int At { get; init; } = History.Length;

    /// <summary>The own line while one of the history is shown.</summary>
    public EditLine Own { get; init; } = Line;

    /// <summary>What is looked for in the history; null where nothing is.</summary>
    public Search? Search { get; init; }

    /// <summary>What fits at the cursor, to be shown.</summary>
    public ImmutableArray<string> Choice { get; init; } = [];

    /// <summary>Lines of a paste that wait for their turn.</summary>
    public ImmutableArray<string> Waiting { get; init; } = [];
}

/// <summary>A search in the history.</summary>
/// <param name="Words">What is looked for.</param>
/// <param name="At">Where the line was found that is shown.</param>
/// <param name="IsFound">Whether it holds the words.</param>
/// <param name="Before">The line as it was before the search.</param>
internal sealed record Search(string Words, int At, bool IsFound, EditLine Before);

/// <summary>What may stand at a place of a line.</summary>
/// <param name="Start">Where the word begins that is completed.</param>
/// <param name="Words">The words that fit, in order.</param>
internal sealed record Completion(int Start, ImmutableArray<string> Words)
{
    /// <summary>Nothing is known.</summary>
    public static Completion None { get; } = new(0, []);
}
