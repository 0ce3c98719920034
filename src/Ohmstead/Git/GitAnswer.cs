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

    /// <summary>Its reason with the command that it advises, where it does: whom a folder belongs to is for a person to look at.</summary>
    public string? Reason =>
        FirstLine is { } line && Array.Find(Error.Split('\n', StringSplitOptions.TrimEntries), IsAdvice) is { } advice
            ? $"{line}; where you trust whoever owns it: {advice}"
            : FirstLine;

    private static bool IsAdvice(string line) => line.StartsWith("git config ", StringComparison.Ordinal);
}
