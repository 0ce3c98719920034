using System.Globalization;
using System.Text;

namespace Ohmstead.Electronics.Quantities;

/// <summary>Characters that look like a digit, sign or Latin letter but are another one (Unicode Technical Standard 39, from
/// memory).</summary>
public static class LookAlikes
{
    /// <summary>What a character seems to be and what it is called; false when it looks like nothing but itself.</summary>
    public static bool TryFind(Rune character, out string meant, out string name)
    {
        (meant, name) = Known(character.Value);
        if (name.Length == 0 && Rune.GetUnicodeCategory(character) is UnicodeCategory.DecimalDigitNumber && !character.IsAscii)
        {
            meant = ((int)Rune.GetNumericValue(character)).ToString(CultureInfo.InvariantCulture);
            name =
                character.Value is >= 0xFF10 and <= 0xFF19 ? "full-width digit"
                : character.Value is (>= 0x0660 and <= 0x0669) or (>= 0x06F0 and <= 0x06F9) ? "Arabic-Indic digit"
                : "digit of another script";
        }
        else if (name.Length == 0 && character.Value is >= 0xFF01 and <= 0xFF5E)
        {
            meant = ((char)(character.Value - 0xFEE0)).ToString();
            name = "full-width character";
        }

        return name.Length > 0;
    }

    /// <summary>The first look-alike of a text: where it is, how long, what it seems to be and its name.</summary>
    internal static bool TryFindFirst(ReadOnlySpan<char> text, out (int Offset, int Length, string Meant, string Name) found)
    {
        found = default;
        var place = 0;
        foreach (var rune in text.EnumerateRunes())
        {
            if (TryFind(rune, out var meant, out var name))
            {
                found = (place, rune.Utf16SequenceLength, meant, $"{name} {Excerpt.CodePoint(rune)}");
                return true;
            }

            place += rune.Utf16SequenceLength;
        }

        return false;
    }

    /// <summary>The text with every look-alike replaced by what it looks like.</summary>
    public static string Plain(ReadOnlySpan<char> text)
    {
        var plain = new StringBuilder();
        foreach (var rune in text.EnumerateRunes())
            plain.Append(TryFind(rune, out var meant, out _) ? meant : rune.ToString());
        return plain.ToString();
    }

    private static (string Meant, string Name) Known(int code) =>
        code switch
        {
            0x2212 => ("-", "minus sign"),
            0x2010 => ("-", "hyphen"),
            0x2011 => ("-", "non-breaking hyphen"),
            0x2012 => ("-", "figure dash"),
            0x2013 => ("-", "en dash"),
            0x2014 => ("-", "em dash"),
            0xFF0D => ("-", "full-width hyphen-minus"),
            0x00B7 => (".", "middle dot"),
            0x066B => (".", "Arabic decimal separator"),
            0x2219 => (".", "bullet operator"),
            0x00BA => ("°", "ordinal indicator"),
            0x02DA => ("°", "ring above"),
            0x039C => ("M", "Greek capital letter mu"),
            0x039F => ("O", "Greek capital letter omicron"),
            0x0391 => ("A", "Greek capital letter alpha"),
            0x0392 => ("B", "Greek capital letter beta"),
            0x0395 => ("E", "Greek capital letter epsilon"),
            0x039D => ("N", "Greek capital letter nu"),
            0x03A1 => ("P", "Greek capital letter rho"),
            0x03A4 => ("T", "Greek capital letter tau"),
            0x212A => ("K", "Kelvin sign"),
            0x0397 => ("H", "Greek capital letter eta"),
            0x039A => ("K", "Greek capital letter kappa"),
            0x03BF => ("o", "Greek small letter omicron"),
            0x0410 => ("A", "Cyrillic capital letter a"),
            0x0412 => ("B", "Cyrillic capital letter ve"),
            0x0415 => ("E", "Cyrillic capital letter ie"),
            0x0420 => ("P", "Cyrillic capital letter er"),
            0x0430 => ("a", "Cyrillic small letter a"),
            0x0435 => ("e", "Cyrillic small letter ie"),
            0x041A => ("K", "Cyrillic capital letter ka"),
            0x041C => ("M", "Cyrillic capital letter em"),
            0x041D => ("H", "Cyrillic capital letter en"),
            0x041E => ("O", "Cyrillic capital letter o"),
            0x0421 => ("C", "Cyrillic capital letter es"),
            0x0422 => ("T", "Cyrillic capital letter te"),
            0x0405 => ("S", "Cyrillic capital letter dze"),
            0x0406 => ("I", "Cyrillic capital letter Ukrainian i"),
            0x0408 => ("J", "Cyrillic capital letter je"),
            0x0423 => ("Y", "Cyrillic capital letter u"),
            0x0425 => ("X", "Cyrillic capital letter ha"),
            0x0443 => ("y", "Cyrillic small letter u"),
            0x0445 => ("x", "Cyrillic small letter ha"),
            0x0455 => ("s", "Cyrillic small letter dze"),
            0x0456 => ("i", "Cyrillic small letter Ukrainian i"),
            0x0458 => ("j", "Cyrillic small letter je"),
            0x0396 => ("Z", "Greek capital letter zeta"),
            0x0399 => ("I", "Greek capital letter iota"),
            0x03A5 => ("Y", "Greek capital letter upsilon"),
            0x03A7 => ("X", "Greek capital letter chi"),
            0x043A => ("k", "Cyrillic small letter ka"),
            0x043C => ("m", "Cyrillic small letter em"),
            0x043E => ("o", "Cyrillic small letter o"),
            0x043F => ("n", "Cyrillic small letter pe"),
            0x0440 => ("p", "Cyrillic small letter er"),
            0x0441 => ("c", "Cyrillic small letter es"),
            0x200B => ("", "zero-width space"),
            0x200C => ("", "zero-width non-joiner"),
            0x200D => ("", "zero-width joiner"),
            0x2060 => ("", "word joiner"),
            0xFEFF => ("", "zero-width no-break space"),
            0x00AD => ("", "soft hyphen"),
            _ => ("", ""),
        };
}
