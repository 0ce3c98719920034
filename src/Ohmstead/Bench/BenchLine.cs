using System.Text;

namespace Ohmstead.Bench;

/// <summary>A line typed at the bench, taken apart into words.</summary>
internal static class BenchLine
{
    private const string Opening = "\"“„”";
    private const string Closing = "\"”“";

    /// <summary>The words; or what was never closed. What stands in quotes is one word, whichever quotes they are; an apostrophe is a
    /// quote only where a word begins with it and one ends with it.</summary>
    public static (string[] Words, string? Fault) Split(string line)
    {
        var words = new List<string>();
        var word = new StringBuilder();
        var isWord = false;
        for (var at = 0; at < line.Length; at++)
        {
            var letter = line[at];
            if (char.IsWhiteSpace(letter))
            {
                Take();
                continue;
            }

            isWord = true;
            var end =
                Opening.Contains(letter, StringComparison.Ordinal) ? line.AsSpan(at + 1).IndexOfAny(Closing) + at + 1
                : letter is '\'' or '‘' && word.Length == 0 ? EndOfSingle(line, at)
                : 0;
            if (Opening.Contains(letter, StringComparison.Ordinal) && end == at)
            {
                return ([], $"the quote before '{line[(at + 1)..]}' is never closed; write {line[..at]}\"{line[(at + 1)..].TrimEnd()}\"");
            }

            if (end > at)
            {
                word.Append(line, at + 1, end - at - 1);
                at = end;
            }
            else
            {
                word.Append(letter);
            }
        }

        Take();
        return ([.. words], null);

        void Take()
        {
            if (isWord)
            {
                words.Add(word.ToString());
            }

            word.Clear();
            isWord = false;
        }
    }

    // Where the quote ends that a word begins with; 0 where none ends a word.
    private static int EndOfSingle(string line, int start)
    {
        for (var at = start + 1; at < line.Length; at++)
        {
            if (line[at] is '\'' or '’' && (at + 1 == line.Length || char.IsWhiteSpace(line[at + 1])))
            {
                return at;
            }
        }

        return 0;
    }
}
