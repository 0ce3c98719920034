using System.Security.Cryptography;

namespace Ohmstead.Report.Html;

/// <summary>A style of the program, for a page that must stand alone in one file. No text of a record gets into one.</summary>
public sealed class InlineStyle
{
    internal InlineStyle(byte[] bytes)
    {
        if (bytes.AsSpan().Contains((byte)'<'))
        {
            throw new InvalidOperationException("A style holds no markup.");
        }

        Bytes = bytes;
        Policy =
        [
            .. AttributeText.Whole("http-equiv", "Content-Security-Policy"),
            .. AttributeText.Whole("content", $"default-src 'none'; style-src 'sha256-{Convert.ToBase64String(SHA256.HashData(bytes))}'"),
        ];
    }

    internal byte[] Bytes { get; }

    /// <summary>The attributes by which the page says of itself: nothing is loaded, nothing runs, and no style but this one counts,
    /// wherever it comes from.</summary>
    internal byte[] Policy { get; }
}
