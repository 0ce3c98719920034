using Ohmstead.Electronics.Quantities;

namespace Ohmstead.Report.Html;

/// <summary>What may stand behind a figure as its unit.</summary>
internal static class UnitWords
{
    // Far more often the word than an inch.
    private const string Preposition = "in";

    private static readonly string[] Spellings =
    [
        .. UnitSpellings
            .Units.Select(unit => unit.Spelling)
            .Where(spelling => spelling != Preposition)
            .Append("mg")
            .Distinct(StringComparer.Ordinal),
    ];

    // By their number of characters: a few to compare with, and no memory taken for it.
    private static readonly string[][] ByLength =
    [
        .. Enumerable
            .Range(0, Spellings.Max(spelling => spelling.Length) + 1)
            .Select(length => Spellings.Where(spelling => spelling.Length == length).ToArray()),
    ];

    /// <summary>Whether the text begins with a unit, a currency by its three letters, the rest of a size such as <c>x 20 mm</c>, or three
    /// more digits of the same figure.</summary>
    public static bool IsAtStartOf(ReadOnlySpan<char> text)
    {
        if (IsThreeDigits(text))
        {
            return true;
        }

        var length = 0;
        while (length < text.Length && length < ByLength.Length && IsOfUnit(text[length]))
        {
            length++;
        }

        // A letter with a digit behind it is a name, such as C12.
        return length > 0
            && !(length < text.Length && char.IsAsciiDigit(text[length]))
            && (IsUnit(text[..length]) || IsCurrency(text[..length]) || IsTimes(text, length));
    }

    // Ohms per volt and the like count as what stands before the stroke.
    private static bool IsUnit(ReadOnlySpan<char> word) =>
        IsSpelling(word) || (word.IndexOf('/') is > 0 and var stroke && IsSpelling(word[..stroke]));

    private static bool IsSpelling(ReadOnlySpan<char> word)
    {
        foreach (var spelling in word.Length < ByLength.Length ? ByLength[word.Length] : [])
        {
            if (word.SequenceEqual(spelling))
            {
                return true;
            }
        }

        return false;
    }

    private static bool IsOfUnit(char c) => char.IsLetter(c) || c is '%' or '°' or '/' or '³' or '‰' or '℃';

    private static bool IsCurrency(ReadOnlySpan<char> word) =>
        word.Length == 3 && char.IsAsciiLetterUpper(word[0]) && char.IsAsciiLetterUpper(word[1]) && char.IsAsciiLetterUpper(word[2]);

    private static bool IsThreeDigits(ReadOnlySpan<char> text) =>
        text.Length >= 3
        && char.IsAsciiDigit(text[0])
        && char.IsAsciiDigit(text[1])
        && char.IsAsciiDigit(text[2])
        && (text.Length == 3 || !(char.IsAsciiLetterOrDigit(text[3]) || text[3] is '.' or '-'));

    private static bool IsTimes(ReadOnlySpan<char> text, int length) =>
        text[..length] is "x" && text[length..] is [' ', >= '0' and <= '9', ..];
}
