using System.Text;

namespace Ohmstead.Records.Merging;

/// <summary>How a text is laid down: the mark at its beginning, its line ends, the end of its last line. Merged by themselves, so that a
/// change of them is no change of each line.</summary>
/// <param name="Text">The text without a byte order mark, each line ended.</param>
/// <param name="HasMark">Whether a byte order mark stands before it.</param>
/// <param name="LineEnd">How its lines end; null where they do not all end alike, or where it has one line.</param>
/// <param name="IsEnded">Whether its last line has an end of its own.</param>
internal sealed record TextForm(string Text, bool HasMark, string? LineEnd, bool IsEnded)
{
    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>Takes bytes apart; null where they are no text.</summary>
    internal static TextForm? Of(ReadOnlySpan<byte> bytes)
    {
        var hasMark = bytes.StartsWith(Encoding.UTF8.Preamble);
        try
        {
            var text = Strict.GetString(hasMark ? bytes[Encoding.UTF8.Preamble.Length..] : bytes);
            if (text.Contains('\0', StringComparison.Ordinal))
            {
                return null;
            }

            var (all, two, lone) = (text.Count(letter => letter == '\n'), Count(text, "\r\n"), text.Count(letter => letter == '\r'));
            var end =
                all == 0 || lone != two ? null
                : two == all ? "\r\n"
                : two == 0 ? "\n"
                : null;
            var isEnded = text.Length == 0 || text[^1] is '\n' or '\r';
            return new(isEnded ? text : text + (end ?? "\n"), hasMark, end, isEnded);
        }
        catch (DecoderFallbackException)
        {
            return null;
        }
    }

    /// <summary>The same text with other line ends.</summary>
    internal TextForm Ended(string? with) =>
        with is null || LineEnd is null || LineEnd == with
            ? this
            : this with
            {
                Text = Text.Replace(LineEnd, with, StringComparison.Ordinal),
                LineEnd = with,
            };

    /// <summary>The bytes of a merged text.</summary>
    /// <param name="text">The text.</param>
    /// <param name="hasMark">Whether a byte order mark stands before it.</param>
    /// <param name="isEnded">Whether its last line keeps its end.</param>
    internal static byte[] Bytes(string text, bool hasMark, bool isEnded)
    {
        var end =
            isEnded ? 0
            : text.EndsWith("\r\n", StringComparison.Ordinal) ? 2
            : text.EndsWith('\n') ? 1
            : 0;
        var content = Strict.GetBytes(text[..^end]);
        return hasMark ? [.. Encoding.UTF8.Preamble, .. content] : content;
    }

    private static int Count(string text, string what)
    {
        var (count, at) = (0, 0);
        while ((at = text.IndexOf(what, at, StringComparison.Ordinal)) >= 0)
        {
            (count, at) = (count + 1, at + what.Length);
        }

        return count;
    }
}
