using System.Text;

namespace Ohmstead.Commands;

/// <summary>A line that somebody is typing, taken apart at the cursor.</summary>
/// <param name="Before">The whole words before the cursor, without the name of the program.</param>
/// <param name="Current">As much of the word at the cursor as stands before it; empty behind a blank.</param>
/// <param name="Behind">The words behind the cursor, without the rest of the one that it stands in.</param>
internal sealed record HalfTyped(IReadOnlyList<string> Before, string Current, IReadOnlyList<string> Behind)
{
    /// <summary>Takes a line apart.</summary>
    /// <param name="line">The line, the name of the program first.</param>
    /// <param name="cursor">How many characters stand before the cursor.</param>
    public static HalfTyped Parse(string line, int cursor)
    {
        var at = Math.Clamp(cursor, 0, line.Length);
        var (before, isOpen) = Apart(line[..at]);
        var (behind, _) = Apart(line[at..]);
        var stands = isOpen && at < line.Length && !char.IsWhiteSpace(line[at]) ? 1 : 0;
        return new([.. before.SkipLast(isOpen ? 1 : 0).Skip(1)], isOpen ? before[^1] : string.Empty, [.. behind.Skip(stands)]);
    }

    // Quotes of either kind, and a backslash before a sign that it takes the meaning from. Before a letter or a digit it stands for itself:
    // there it is part of a path.
    private static (List<string> Words, bool IsOpen) Apart(string text)
    {
        var words = new List<string>();
        var word = new StringBuilder();
        var (quote, isWord) = ('\0', false);
        for (var at = 0; at < text.Length; at++)
        {
            var c = text[at];
            if (quote == '\0' && char.IsWhiteSpace(c))
            {
                if (isWord)
                {
                    words.Add(word.ToString());
                    word.Clear();
                }

                isWord = false;
                continue;
            }

            isWord = true;
            if (quote != '\0' ? c == quote : c is '"' or '\'')
            {
                quote = quote == '\0' ? c : '\0';
            }
            else if (c == '\\' && quote != '\'' && at + 1 < text.Length && !char.IsLetterOrDigit(text[at + 1]))
            {
                word.Append(text[++at]);
            }
            else
            {
                word.Append(c);
            }
        }

        if (isWord)
        {
            words.Add(word.ToString());
        }

        return (words, isWord);
    }
}
