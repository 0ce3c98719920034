using System.Globalization;
using Ohmstead.Report.Html;

namespace Ohmstead.Report.Markdown;

/// <summary>Writes words and makes links of the names in them, such as <c>C12</c>, <c>SP-0007</c> or both ends of <c>C12-C15</c>.</summary>
/// <remarks>A name begins with a capital letter, has a digit, and stands alone: no letter, digit, hyphen or underscore touches
/// it.</remarks>
internal static class LinkedNames
{
    private const int LongestName = 24;

    /// <summary>Writes the words.</summary>
    public static void Write(HtmlWriter html, ReadOnlySpan<char> text, IStoryTargets targets)
    {
        var done = 0;
        var start = 0;
        while (start < text.Length)
        {
            var length = WordLength(text[start..]);
            if (length > 0 && IsName(text.Slice(start, length)))
            {
                done = WriteName(html, text, done, start, text.Slice(start, length).ToString(), targets);
            }

            start += Math.Max(length, 1);
        }

        html.Text(text[done..]);
    }

    private static int WordLength(ReadOnlySpan<char> text)
    {
        var length = 0;
        while (length < text.Length && IsWord(text[length]))
        {
            length++;
        }

        // A hyphen at the end belongs to the sentence.
        return length > 0 ? Math.Max(text[..length].TrimEnd('-').Length, 1) : 0;
    }

    private static bool IsWord(char c) =>
        char.IsLetterOrDigit(c) || c is '-' or '_' || char.GetUnicodeCategory(c) == UnicodeCategory.NonSpacingMark;

    private static bool IsName(ReadOnlySpan<char> word) =>
        word.Length is > 1 and <= LongestName
        && char.IsAsciiLetterUpper(word[0])
        && word.ContainsAnyInRange('0', '9')
        && !word.ContainsAnyExcept(NameCharacters.All);

    private static int WriteName(HtmlWriter html, ReadOnlySpan<char> text, int done, int start, string name, IStoryTargets targets)
    {
        if (targets.Reference(name) is { } whole)
        {
            WriteLink(html, text[done..start], name, whole);
            return start + name.Length;
        }

        foreach (var piece in name.Contains('-', StringComparison.Ordinal) ? name.Split('-') : [])
        {
            if (IsDesignator(piece) && targets.Reference(piece) is { } link)
            {
                WriteLink(html, text[done..start], piece, link);
                done = start + piece.Length;
            }

            start += piece.Length + 1;
        }

        return done;
    }

    private static bool IsDesignator(ReadOnlySpan<char> piece)
    {
        var letters = piece.IndexOfAnyExceptInRange('A', 'Z');
        return letters is >= 1 and <= 3 && piece.Length - letters is >= 1 and <= 4 && !piece[letters..].ContainsAnyExceptInRange('0', '9');
    }

    private static void WriteLink(HtmlWriter html, ReadOnlySpan<char> before, string name, Link link)
    {
        html.Text(before);
        // A part of the same page is a reference by where it leads.
        (link.Encoded[0] == '#' ? html.Open(Tag.A) : html.Open(Tag.A, ClassName.Reference)).To(link).Text(name);
    }
}
