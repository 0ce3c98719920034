using System.Buffers;
using System.Globalization;
using System.Text;

namespace Ohmstead.Report.Html;

/// <summary>Writes text so that it can be nothing but text, in an element or inside a quoted attribute, and so that nothing in it is
/// hidden.</summary>
/// <remarks>
/// The five characters of markup become character references. A control character becomes its picture (Unicode block
/// U+2400). What steers the direction of text, ends a line unseen or is no character at all becomes a marker such as
/// <c>[U+202E]</c>. CRLF becomes LF; tab and LF stay.
/// </remarks>
internal static class VisibleText
{
    private static readonly PlainCharacters Plain = new(c => !IsSpecial(c));

    /// <summary>The text with nothing hidden in it and no markup escaped, for a file whose own escapes follow.</summary>
    public static string Escape(string text)
    {
        if (IsPlain(text))
        {
            return text;
        }

        using var buffer = new PageBuffer(text.Length * 4);
        Write(buffer, text, isMarkup: false);
        return Encoding.UTF8.GetString(buffer.Written);
    }

    /// <summary>Appends the text.</summary>
    /// <param name="buffer">Where to.</param>
    /// <param name="text">The text.</param>
    /// <param name="isMarkup">False where the characters of markup stay as they are.</param>
    public static void Write(PageBuffer buffer, ReadOnlySpan<char> text, bool isMarkup = true)
    {
        while (true)
        {
            text = text[buffer.AppendPlain(text, Plain)..];
            if (text.IsEmpty)
            {
                return;
            }

            text = text[WriteSpecial(buffer, text, isMarkup)..];
        }
    }

    private static bool IsPlain(string text)
    {
        foreach (var c in text)
        {
            if (!Plain.Has(c))
            {
                return false;
            }
        }

        return true;
    }

    private static bool IsSpecial(char c) => c is '&' or '<' or '>' or '"' or '\'' || char.IsSurrogate(c) || IsControl(c) || IsMarked(c);

    private static bool IsControl(int c) => c is (< 0x20 and not '\t' and not '\n') or 0x7F;

    private static bool IsMarked(int c) =>
        c
            is (>= 0x80 and <= 0x9F) // C1 controls
                or 0x061C
                or 0x200E
                or 0x200F
                or (>= 0x202A and <= 0x202E)
                or (>= 0x2066 and <= 0x206F) // direction
                or 0x2028
                or 0x2029
                or 0x2060
                or 0xFEFF
                or (>= 0xFFF9 and <= 0xFFFB) // unseen line ends, joiners and annotations
                or (>= 0xFDD0 and <= 0xFDEF)
                or (>= 0xE0000 and <= 0xE0FFF) // noncharacters; tags that copy ASCII unseen
        || (c & 0xFFFE) == 0xFFFE;

    /// <summary>Writes the special character at the start of the text and says how many UTF-16 units it took.</summary>
    private static int WriteSpecial(PageBuffer buffer, ReadOnlySpan<char> text, bool isMarkup)
    {
        switch (text[0])
        {
            case '&' when isMarkup:
                buffer.Append("&amp;"u8);
                return 1;
            case '<' when isMarkup:
                buffer.Append("&lt;"u8);
                return 1;
            case '>' when isMarkup:
                buffer.Append("&gt;"u8);
                return 1;
            case '"' when isMarkup:
                buffer.Append("&quot;"u8);
                return 1;
            case '\'' when isMarkup:
                buffer.Append("&#39;"u8);
                return 1;
            case '\r' when text is ['\r', '\n', ..]:
                buffer.Append("\n"u8);
                return 2;
        }

        if (Rune.DecodeFromUtf16(text, out var rune, out var length) != OperationStatus.Done)
        {
            WriteMarker(buffer, text[0]);
            return 1;
        }

        if (IsControl(rune.Value))
        {
            WriteRune(buffer, new Rune(rune.Value == 0x7F ? 0x2421 : 0x2400 + rune.Value));
        }
        else if (IsMarked(rune.Value))
        {
            WriteMarker(buffer, rune.Value);
        }
        else
        {
            WriteRune(buffer, rune);
        }

        return length;
    }

    private static void WriteRune(PageBuffer buffer, Rune rune) => buffer.Advance(rune.EncodeToUtf8(buffer.GetSpan(4)));

    private static void WriteMarker(PageBuffer buffer, int codePoint)
    {
        buffer.Append("[U+"u8);
        codePoint.TryFormat(buffer.GetSpan(8), out var written, "X4", CultureInfo.InvariantCulture);
        buffer.Advance(written);
        buffer.Append("]"u8);
    }
}
