using System.Text;

namespace Ohmstead.Git;

/// <summary>What git answered.</summary>
/// <param name="Exit">How it ended; 0 for well.</param>
/// <param name="Bytes">What it printed.</param>
/// <param name="Error">What it said of the run.</param>
internal sealed record GitAnswer(int Exit, byte[] Bytes, string Error)
{
    /// <summary>What it printed, as text.</summary>
    public string Text => Encoding.UTF8.GetString(Bytes);

    /// <summary>The first line of what it said, which is its reason where it did not end well; null where it said nothing.</summary>
    public string? FirstLine => Error.Split('\n', 2)[0].Trim() is { Length: > 0 } line ? line : null;
}
