using Ohmstead.Records.Editing.Edits;

namespace Ohmstead.Records.Editing.Layout;

/// <summary>A piece of the front matter that is never changed in itself: a key, a value, a dash or a bracket.</summary>
/// <param name="Start">Where it begins.</param>
/// <param name="End">The offset behind it.</param>
/// <param name="Kind">What it is.</param>
/// <param name="Join">How it follows the token before it.</param>
/// <param name="Level">The block it stands in.</param>
internal sealed record Token(int Start, int End, TokenKind Kind, Join Join, Level Level)
{
    /// <summary>How far in it stands where it begins a line.</summary>
    internal int Indent { get; init; }

    /// <summary>How many brackets are open around it; 0 outside of all.</summary>
    internal int Depth { get; init; }

    /// <summary>Changes inside a value that runs over several lines; null where it stands on one.</summary>
    internal IReadOnlyList<TextEdit>? Inside { get; init; }
}

/// <summary>What a token is.</summary>
internal enum TokenKind
{
    /// <summary>The key of an entry.</summary>
    Key,

    /// <summary>A value.</summary>
    Value,

    /// <summary>A value as a block of text.</summary>
    Block,

    /// <summary>The dash of a list item.</summary>
    Dash,

    /// <summary>An opening bracket or brace.</summary>
    Open,

    /// <summary>A closing bracket or brace.</summary>
    Close,

    /// <summary>The end of the front matter.</summary>
    End,
}

/// <summary>How a token follows the one before it.</summary>
internal enum Join
{
    /// <summary>On a line of its own.</summary>
    Line,

    /// <summary>Behind one space.</summary>
    Space,

    /// <summary>Without a space.</summary>
    Tight,

    /// <summary>As a further entry between brackets: behind a comma and a space, or on a new line.</summary>
    Entry,
}

/// <summary>A block of lines that stand equally far in.</summary>
/// <param name="Column">How far in they stand in the text as it is.</param>
/// <param name="Indent">How far in they shall stand.</param>
/// <param name="Above">The block around it, or null.</param>
internal sealed record Level(int Column, int Indent, Level? Above)
{
    /// <summary>Whether this block is another or stands in it.</summary>
    internal bool IsWithin(Level other) => ReferenceEquals(this, other) || (Above?.IsWithin(other) ?? false);
}
