using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Ohmstead.Report.Html;

/// <summary>Characters that are written as they are, none of them half of a pair. Most of what is written is only these, a word or two at a
/// time.</summary>
public sealed class PlainCharacters
{
    // How many are looked at and copied at once.
    private const int AtOnce = 8;

    private readonly bool[] plain = new bool[char.MaxValue + 1];
    private readonly Vector128<ushort>[] exceptions;

    /// <summary>The characters that a rule lets through.</summary>
    /// <param name="isPlain">The rule; asked once for each character that is no half of a pair.</param>
    public PlainCharacters(Func<char, bool> isPlain)
    {
        for (var c = 0; c < plain.Length; c++)
        {
            plain[c] = !char.IsSurrogate((char)c) && isPlain((char)c);
        }

        exceptions = [.. Enumerable.Range(' ', '~' - ' ' + 1).Where(c => !plain[c]).Select(c => Vector128.Create((ushort)c))];
    }

    /// <summary>Whether it is among them.</summary>
    public bool Has(char c) => plain[c];

    /// <summary>Copies such characters from the start of a text as long as eight in a row are between the space and the tilde and all among
    /// them, and says how many it copied.</summary>
    /// <param name="text">The text.</param>
    /// <param name="target">Room for as many bytes as the text has characters.</param>
    public int CopyAscii(ReadOnlySpan<char> text, Span<byte> target)
    {
        var units = MemoryMarshal.Cast<char, ushort>(text);
        var at = 0;
        for (; units.Length - at >= AtOnce; at += AtOnce)
        {
            var eight = Vector128.Create(units.Slice(at, AtOnce));
            var other = Vector128.GreaterThan(eight - Vector128.Create((ushort)' '), Vector128.Create((ushort)('~' - ' ')));
            foreach (var exception in exceptions)
            {
                other |= Vector128.Equals(eight, exception);
            }

            if (other != Vector128<ushort>.Zero)
            {
                break;
            }

            Vector128.Narrow(eight, eight).GetLower().CopyTo(target.Slice(at, AtOnce));
        }

        return at;
    }
}
