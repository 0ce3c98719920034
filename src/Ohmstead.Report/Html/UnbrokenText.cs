using System.Buffers;

namespace Ohmstead.Report.Html;

/// <summary>Writes text so that no line ends between a figure and its unit, inside a day or inside a number, and with the sign that is a
/// minus.</summary>
/// <remarks>
/// Between figure and unit stands a no-break space (U+00A0), and a hyphen that is a sign becomes U+2212. What has a hyphen inside, a day or
/// a name, is put into an element of its own: the characters stay as they are in the record, so that they can be looked for on the page and
/// copied from it. They are letters, digits and hyphens of ASCII, so that no direction of text has to be kept out, and a page has a hundred
/// of them: the element is the shortest there is.
/// </remarks>
internal static class UnbrokenText
{
    // Longer ones, such as paths, may be broken: a narrow screen has room for no more.
    private const int Longest = 16;

    private static readonly SearchValues<char> Digits = SearchValues.Create("0123456789");

    private static readonly SearchValues<char> OfFigures = SearchValues.Create("0123456789.+-/");

    /// <summary>Appends the text.</summary>
    /// <param name="buffer">Where to.</param>
    /// <param name="text">The text.</param>
    /// <param name="before">The character that it follows in the same element; or none, as 0.</param>
    public static void Write(PageBuffer buffer, ReadOnlySpan<char> text, char before)
    {
        if (char.IsAsciiDigit(before) && UnitBehind(text))
        {
            buffer.Append("\u00A0"u8);
            text = text[1..];
        }

        var done = 0;
        var at = 0;
        while (text[at..].IndexOfAny(Digits) is >= 0 and var next)
        {
            at += next;
            var start = at;
            while (start > done && IsInWord(text[start - 1]))
            {
                start--;
            }

            var end = at + 1;
            while (end < text.Length && IsInWord(text[end]))
            {
                end++;
            }

            while (!char.IsAsciiLetterOrDigit(text[end - 1]))
            {
                end--;
            }

            if (start > 0 || !IsInWord(before))
            {
                VisibleText.Write(buffer, text[done..start]);
                if (IsSigned(text[start..end]) && (text.Length == end - start || UnitBehind(text[end..])))
                {
                    Signed(buffer, text[start..end]);
                }
                else
                {
                    Word(buffer, text[start..end]);
                }

                done = end;
            }

            at = end;
            if (IsFigure(text[start..end]) && UnitBehind(text[end..]))
            {
                VisibleText.Write(buffer, text[done..end]);
                buffer.Append("\u00A0"u8);
                done = ++at;
            }
        }

        VisibleText.Write(buffer, text[done..]);
    }

    private static bool IsInWord(char c) => char.IsAsciiLetterOrDigit(c) || c is '-' or '/' or '.' or ':' or '_' or '+';

    private static bool IsFigure(ReadOnlySpan<char> word) => char.IsAsciiDigit(word[^1]) && !word.ContainsAnyExcept(OfFigures);

    internal static bool UnitBehind(ReadOnlySpan<char> text) => text is [' ', ..] && UnitWords.IsAtStartOf(text[1..]);

    // The part of a standard may be written as -24: a sign is only what stands before a quantity, or before a number all alone.
    private static bool IsSigned(ReadOnlySpan<char> word) => word[0] is '-' or '+' && IsFigure(word) && word.Contains('-');

    private static void Word(PageBuffer buffer, ReadOnlySpan<char> word)
    {
        if (word.Length <= Longest && HasHyphenInside(word))
        {
            buffer.Append("<i>"u8);
            VisibleText.Write(buffer, word);
            buffer.Append("</i>"u8);
        }
        else
        {
            VisibleText.Write(buffer, word);
        }
    }

    private static bool HasHyphenInside(ReadOnlySpan<char> word)
    {
        var hyphen = word.IndexOf('-');
        return hyphen > 0 && char.IsAsciiLetterOrDigit(word[hyphen - 1]);
    }

    // -7.2, and both ends of -20/+80.
    private static void Signed(PageBuffer buffer, ReadOnlySpan<char> word)
    {
        for (var at = 0; at < word.Length; at++)
        {
            if (word[at] == '-' && (at == 0 || word[at - 1] == '/'))
            {
                buffer.Append("\u2212"u8);
            }
            else
            {
                VisibleText.Write(buffer, word.Slice(at, 1));
            }
        }
    }
}
