using System.Globalization;
using System.Text;
using System.Text.Unicode;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Text;

namespace Ohmstead.Records.Decoding;

/// <summary>Turns the bytes of a file into text: strict UTF-8, with or without a byte order mark.</summary>
/// <remarks>A byte that is not UTF-8 is never replaced: a file read with replacements and written back would have lost it.</remarks>
public static class SourceDecoder
{
    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>Decodes a whole file.</summary>
    /// <param name="path">The path from the root of the collection.</param>
    /// <param name="bytes">The whole file.</param>
    public static SourceDecoding Decode(string path, ReadOnlySpan<byte> bytes)
    {
        if (FileKind.Recognise(bytes) is { } kind)
        {
            return new SourceDecoding(null, kind.Describe(path));
        }

        var hasMark = bytes.StartsWith((ReadOnlySpan<byte>)[0xEF, 0xBB, 0xBF]);
        var content = hasMark ? bytes[3..] : bytes;
        if (!Utf8.IsValid(content))
        {
            return new SourceDecoding(null, InvalidByte(path, content, hasMark ? 3 : 0));
        }

        return new SourceDecoding(new SourceText(path, Strict.GetString(content), hasMark), null);
    }

    private static Finding InvalidByte(string path, ReadOnlySpan<byte> content, int skipped)
    {
        var first = NextInvalid(content, 0, out var width);
        var prefix = new SourceText(path, Strict.GetString(content[..first]));
        var value = content[first];
        var count = 1;
        for (var at = first + width; (at = NextInvalid(content, at, out width)) >= 0; at += width)
        {
            count++;
        }

        var more = count > 1 ? $"; {Text(count - 1)} more in this file" : string.Empty;
        return new Finding(
            TextChecks.NotUtf8,
            Severity.Error,
            prefix.PlaceAt(prefix.Text.Length),
            $"byte {value.ToString("X2", CultureInfo.InvariantCulture)} at offset {Text(skipped + first)} is not UTF-8: "
                + $"{Reason(content, first)}{more}",
            SingleByteText.FitsWestern(content)
                ? $"the file looks like Latin-1 or Windows-1252, where this byte is '{SingleByteText.Western(value)}': save it again as "
                    + "UTF-8"
                : "restore the file from an earlier state, or write the damaged characters again and save as UTF-8"
        );
    }

    /// <summary>The offset of the next invalid sequence, or -1; <paramref name="width"/> is how many bytes belong to it.</summary>
    private static int NextInvalid(ReadOnlySpan<byte> content, int from, out int width)
    {
        var at = from;
        while (at < content.Length)
        {
            if (Rune.DecodeFromUtf8(content[at..], out _, out width) != System.Buffers.OperationStatus.Done)
            {
                return at;
            }

            at += width;
        }

        width = 0;
        return -1;
    }

    private static string Reason(ReadOnlySpan<byte> content, int at) =>
        (content[at], at + 1 < content.Length ? content[at + 1] : (byte)0) switch
        {
            var (lead, _) when lead < 0xC0 => "it can only continue a character, and none was begun",
            (0xC0 or 0xC1, _) or (0xE0, >= 0x80 and < 0xA0) or (0xF0, >= 0x80 and < 0x90) => "it begins an overlong form",
            (0xED, >= 0xA0 and <= 0xBF) => "it begins half of a surrogate pair",
            var (lead, _) when lead > 0xF4 => "no character begins with it",
            (0xF4, > 0x8F and <= 0xBF) => "no character begins with it",
            _ when content.Length - at < 4 && content[(at + 1)..].IndexOfAnyExceptInRange((byte)0x80, (byte)0xBF) < 0 =>
                "the file ends inside a character",
            _ => "the character it begins is not finished",
        };

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);
}

/// <summary>What decoding gave: the text, or the reason why there is none.</summary>
/// <param name="Source">The text, or null.</param>
/// <param name="Finding">Why there is no text, or null.</param>
public readonly record struct SourceDecoding(SourceText? Source, Finding? Finding);
