using System.Text;
using Ohmstead.Running;

namespace Ohmstead.Tests.Documents;

/// <summary>A command as a help page or a document shows it, taken apart as a shell would.</summary>
/// <param name="Words">The words behind the name of the program.</param>
/// <param name="Remark">What stands behind the command: after two spaces, or after a hash.</param>
internal sealed record TypedLine(IReadOnlyList<string> Words, string Remark)
{
    private static readonly string[] Programs = ["ohmstead ", "dotnet run --project src/Ohmstead -- "];

    /// <summary>The exit code that the line is meant to show: 0, or the one that its remark names as "ends with N".</summary>
    public int Exit => Remark.Split("ends with ") is [_, [var digit, ..]] ? digit - '0' : ExitCode.Clean;

    /// <summary>Reads a line, or gives null when it starts another program.</summary>
    public static TypedLine? Of(string line)
    {
        var text = line.Trim();
        return Programs.FirstOrDefault(one => text.StartsWith(one, StringComparison.Ordinal)) is { } program
            ? Apart(text[program.Length..])
            : null;
    }

    // Quotes as a shell reads them; what is redirected is of no interest here.
    private static TypedLine Apart(string text)
    {
        var words = new List<string>();
        var word = new StringBuilder();
        var (quote, isWord, at) = ('\0', false, 0);
        for (; at < text.Length; at++)
        {
            var c = text[at];
            if (quote != '\0' ? c == quote : c is '"' or '\'')
            {
                (quote, isWord) = (quote == '\0' ? c : '\0', true);
            }
            else if (quote != '\0' || c != ' ')
            {
                if (quote == '\0' && !isWord && c is '#' or '>')
                {
                    break;
                }

                word.Append(c);
                isWord = true;
            }
            else
            {
                Take();
                if (at + 1 < text.Length && text[at + 1] == ' ')
                {
                    break;
                }
            }
        }

        Take();
        return new(words, text[Math.Min(at, text.Length)..]);

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
}
