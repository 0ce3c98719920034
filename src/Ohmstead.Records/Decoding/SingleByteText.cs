namespace Ohmstead.Records.Decoding;

/// <summary>Tells whether bytes that are not UTF-8 make sense in the single-byte encodings that old editors wrote.</summary>
internal static class SingleByteText
{
    // Windows-1252 for 80 to 9F, a space where it has no character; A0 to FF are the same codes in Unicode.
    private const string Western80To9F = "€ ‚ƒ„…†‡ˆ‰Š‹Œ Ž  ‘’“”•–—˜™š›œ žŸ";

    /// <summary>True when every byte above 7F stands alone or in no valid UTF-8 sequence, and has a character in Windows-1252.</summary>
    internal static bool FitsWestern(ReadOnlySpan<byte> content)
    {
        var at = 0;
        while (at < content.Length)
        {
            if (content[at] < 0x80)
            {
                at++;
                continue;
            }

            var isValid = System.Text.Rune.DecodeFromUtf8(content[at..], out _, out var width) == System.Buffers.OperationStatus.Done;
            if (isValid || width > 1 || Western(content[at]) == ' ')
            {
                return false;
            }

            at += width;
        }

        return true;
    }

    /// <summary>The character of a byte in Windows-1252, or a space where it has none.</summary>
    internal static char Western(byte value) => value is >= 0x80 and <= 0x9F ? Western80To9F[value - 0x80] : (char)value;
}
