using System.Globalization;
using System.Text;

namespace Ohmstead.Report.Html;

/// <summary>Percent-encoding of RFC 3986 over the UTF-8 form of a text.</summary>
internal static class PercentEncoding
{
    private const string Reserved = ":/?#[]@!$&'()*+,;=%";

    /// <summary>Encodes one name of a path, or a fragment: everything but the unreserved characters (RFC 3986, 2.3).</summary>
    public static StringBuilder Encode(StringBuilder target, string name) => Encode(target, name, "");

    /// <summary>Encodes what may not stand in an address at all and keeps its structure and what is encoded already.</summary>
    public static StringBuilder EncodeAddress(StringBuilder target, string address) => Encode(target, address, Reserved);

    private static StringBuilder Encode(StringBuilder target, string text, string kept)
    {
        Span<byte> utf8 = stackalloc byte[4];
        foreach (var rune in text.EnumerateRunes())
        {
            if (rune.IsAscii && IsKept((char)rune.Value, kept))
            {
                target.Append((char)rune.Value);
                continue;
            }

            foreach (var b in utf8[..rune.EncodeToUtf8(utf8)])
            {
                target.Append('%').Append(b.ToString("X2", CultureInfo.InvariantCulture));
            }
        }

        return target;
    }

    private static bool IsKept(char c, ReadOnlySpan<char> kept) =>
        char.IsAsciiLetterOrDigit(c) || c is '-' or '.' or '_' or '~' || kept.Contains(c);
}
