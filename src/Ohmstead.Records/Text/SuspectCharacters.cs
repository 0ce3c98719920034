using System.Globalization;

namespace Ohmstead.Records.Text;

/// <summary>Knows the characters that a reader cannot see or that are no characters at all (Unicode Standard, chapters 23.1 to
/// 23.8).</summary>
public static class SuspectCharacters
{
    // The first unit of the tag characters U+E0000 to U+E007F; pictograms of flags use it too, so the code decides.
    private const char FirstUnitOfTags = '\uDB40';

    /// <summary>The offset of the first UTF-16 unit that may begin such a character, or -1.</summary>
    public static int IndexIn(ReadOnlySpan<char> text)
    {
        // Nearly all of a record lies between the space and the tilde, and long runs of that are passed over at once.
        var at = 0;
        while (text[at..].IndexOfAnyExceptInRange(' ', '~') is >= 0 and var run)
        {
            for (at += run; at < text.Length && text[at] is < ' ' or > '~'; at++)
            {
                if (MayBegin(text[at]))
                {
                    return at;
                }
            }
        }

        return -1;
    }

    /// <summary>What a code point is.</summary>
    /// <param name="code">The code point; a value outside Unicode is no character.</param>
    public static CharacterKind KindOf(int code) =>
        code switch
        {
            '\t' or '\n' or '\r' => CharacterKind.Ordinary,
            < 0x20 or (>= 0x7F and <= 0x9F) => CharacterKind.Control,
            0x200C or 0x200D => CharacterKind.Joiner,
            0xAD or 0x180E or 0x200B or (>= 0x2060 and <= 0x2064) or 0xFEFF or (>= 0xE0000 and <= 0xE007F) => CharacterKind.Invisible,
            0x61C or 0x200E or 0x200F or (>= 0x202A and <= 0x202E) or (>= 0x2066 and <= 0x206F) => CharacterKind.Direction,
            0x2028 or 0x2029 => CharacterKind.LineSeparator,
            (>= 0xD800 and <= 0xDFFF) or (>= 0xFDD0 and <= 0xFDEF) or > 0x10FFFF => CharacterKind.NoCharacter,
            _ => (code & 0xFFFE) == 0xFFFE ? CharacterKind.NoCharacter : CharacterKind.Ordinary,
        };

    /// <summary>The code point and, where it has one that people know, its name: <c>U+202E right-to-left override</c>.</summary>
    public static string NameOf(int code)
    {
        var name = Name(code);
        return $"U+{code.ToString("X4", CultureInfo.InvariantCulture)}{(name.Length == 0 ? string.Empty : " ")}{name}";
    }

    private static string Name(int code) =>
        code switch
        {
            0x00 => "null",
            0x07 => "bell",
            0x08 => "backspace",
            0x0B => "line tabulation",
            0x0C => "form feed",
            0x1B => "escape",
            0x7F => "delete",
            0x85 => "next line",
            0xAD => "soft hyphen",
            0x61C => "Arabic letter mark",
            0x200B => "zero width space",
            0x200C => "zero width non-joiner",
            0x200D => "zero width joiner",
            0x200E => "left-to-right mark",
            0x200F => "right-to-left mark",
            0x2028 => "line separator",
            0x2029 => "paragraph separator",
            0x202A => "left-to-right embedding",
            0x202B => "right-to-left embedding",
            0x202C => "pop directional formatting",
            0x202D => "left-to-right override",
            0x202E => "right-to-left override",
            0x2060 => "word joiner",
            0x2066 => "left-to-right isolate",
            0x2067 => "right-to-left isolate",
            0x2068 => "first strong isolate",
            0x2069 => "pop directional isolate",
            0xFEFF => "zero width no-break space",
            _ => string.Empty,
        };

    private static bool MayBegin(char unit) => char.IsSurrogate(unit) ? unit == FirstUnitOfTags : KindOf(unit) != CharacterKind.Ordinary;
}
