using System.Security.Cryptography;
using System.Text;

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
        Policy = Encoding.ASCII.GetBytes($"default-src 'none'; style-src 'sha256-{Convert.ToBase64String(SHA256.HashData(bytes))}'");
    }

    internal byte[] Bytes { get; }

    /// <summary>What the page says of itself: nothing is loaded, nothing runs, and no style but this one counts, wherever it comes
    /// from.</summary>
    internal byte[] Policy { get; }
}
