using System.Buffers;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Text;

namespace Ohmstead.Records.Decoding;

/// <summary>Something that a file is instead of UTF-8 text, told by its first bytes.</summary>
/// <param name="Check">The check that names it.</param>
/// <param name="Message">What it looks like.</param>
/// <param name="NextStep">What to do.</param>
internal sealed record FileKind(string Check, string Message, string NextStep)
{
    private const int Sample = 1024;

    // Tab, LF, FF and CR stand in ordinary text, ESC in some old text; the rest never does.
    private static readonly SearchValues<byte> NeverInText = SearchValues.Create([
        0,
        1,
        2,
        3,
        4,
        5,
        6,
        7,
        8,
        11,
        14,
        15,
        16,
        17,
        18,
        19,
        20,
        21,
        22,
        23,
        24,
        25,
        26,
        28,
        29,
        30,
        31,
    ]);

    internal static FileKind? Recognise(ReadOnlySpan<byte> bytes)
    {
        if (Encoding(bytes) is { } encoding)
        {
            return new FileKind(
                TextChecks.NotUtf8,
                $"the file looks like {encoding}; expected UTF-8",
                "save it again as UTF-8 in the editor, or convert it with iconv -f UTF-16 -t UTF-8"
            );
        }

        if (Signature(bytes) is { } thing)
        {
            return Binary($"the file is {thing}; expected text");
        }

        var sample = bytes[..Math.Min(bytes.Length, Sample)];
        var count = CountControls(sample);
        var isBinary = (count > 0 && sample[..Math.Min(4, sample.Length)].Contains((byte)0)) || count * 10 > sample.Length;
        return isBinary ? Binary("the file holds binary data; expected text") : null;
    }

    internal Finding Describe(string path) => new(Check, Severity.Error, new Place(path, 1, 1), Message, NextStep);

    private static FileKind Binary(string message) =>
        new(TextChecks.BinaryFile, message, "give the file the name that fits it, or restore the record from an earlier state");

    private static string? Encoding(ReadOnlySpan<byte> bytes) =>
        bytes switch
        {
            [0xFF, 0xFE, 0, 0, ..] or [0, 0, 0xFE, 0xFF, ..] => "UTF-32",
            [0xFF, 0xFE, ..] or [0xFE, 0xFF, ..] => "UTF-16",
            [> 0, 0, > 0, 0, ..] or [0, > 0, 0, > 0, ..] => "UTF-16 without a byte order mark",
            _ => null,
        };

    private static string? Signature(ReadOnlySpan<byte> bytes) =>
        bytes switch
        {
            [0x89, (byte)'P', (byte)'N', (byte)'G', ..] => "a PNG picture",
            [0xFF, 0xD8, 0xFF, ..] => "a JPEG picture",
            [(byte)'G', (byte)'I', (byte)'F', (byte)'8', ..] => "a GIF picture",
            [(byte)'P', (byte)'K', 3, 4, ..] => "a ZIP archive",
            [0x1F, 0x8B, ..] => "a gzip archive",
            [(byte)'%', (byte)'P', (byte)'D', (byte)'F', (byte)'-', ..] => "a PDF document",
            _ => null,
        };

    private static int CountControls(ReadOnlySpan<byte> sample)
    {
        var count = 0;
        while (sample.IndexOfAny(NeverInText) is >= 0 and var at)
        {
            count++;
            sample = sample[(at + 1)..];
        }

        return count;
    }
}
