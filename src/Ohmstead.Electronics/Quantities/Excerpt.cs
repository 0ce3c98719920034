using System.Globalization;
using System.Text;

namespace Ohmstead.Electronics.Quantities;

/// <summary>A short, printable piece of a text for a message.</summary>
internal static class Excerpt
{
    private const int Most = 32;

    /// <summary>The text, cut to 32 characters, with control and format characters and lone surrogates written as their code
    /// point.</summary>
    internal static string From(ReadOnlySpan<char> text)
    {
        var cut = text.Length > Most;
        var result = new StringBuilder();
        foreach (var rune in (cut ? text[..Most] : text).EnumerateRunes())
        {
            if (
                Rune.GetUnicodeCategory(rune)
                is UnicodeCategory.Control
                    or UnicodeCategory.Format
                    or UnicodeCategory.LineSeparator
                    or UnicodeCategory.ParagraphSeparator
            )
                result.Append(CodePoint(rune));
            else
                result.Append(rune.ToString());
        }

        return cut ? result.Append('…').ToString() : result.ToString();
    }

    /// <summary>The code point as U+ and four to six hexadecimal digits.</summary>
    internal static string CodePoint(Rune rune) => string.Create(CultureInfo.InvariantCulture, $"U+{rune.Value:X4}");
}
