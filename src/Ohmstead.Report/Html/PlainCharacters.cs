using System.Numerics;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Ohmstead.Report.Html;

/// <summary>Characters that are written as they are, none of them half of a pair. Most of what is written is only these, a word or two at a time.</summary>
public sealed class PlainCharacters
{
    // How many are looked at and copied at once.
    private const int AtOnce = 8;
    private const int Half = AtOnce / 2;

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

    /// <summary>Copies those characters from the start of a text that are between the space and the tilde and all among them, and says how many they are.</summary>
    /// <remarks>Words and figures are short: what is left of a text after the last eight is looked at together with what came before it, and four to seven characters as two times four.</remarks>
    /// <param name="text">The text.</param>
    /// <param name="target">Room for as many bytes as the text has characters; what lies behind those that are counted may be overwritten.</param>
    public int CopyAscii(ReadOnlySpan<char> text, Span<byte> target)
    {
        var units = MemoryMarshal.Cast<char, ushort>(text);
        target = target[..units.Length];
        var at = 0;
        for (; units.Length - at >= AtOnce; at += AtOnce)
        {
            if (Copy(units.Slice(at, AtOnce), target.Slice(at, AtOnce)) is var first and < AtOnce)
            {
                return at + first;
            }
        }

        if (at == units.Length)
        {
            return at;
        }

        if (units.Length >= AtOnce)
        {
            return units.Length - AtOnce + Copy(units[^AtOnce..], target[^AtOnce..]);
        }

        if (units.Length >= Half)
        {
            return CopyTwice(units, target);
        }

        while (at < units.Length && units[at] is >= ' ' and <= '~' and var c && plain[c])
        {
            target[at++] = (byte)c;
        }

        return at;
    }

    // How many of eight, from the first on, are among them. All eight are copied.
    private int Copy(ReadOnlySpan<ushort> units, Span<byte> target)
    {
        var eight = Vector128.Create(units);
        Vector128.Narrow(eight, eight).GetLower().CopyTo(target);
        return BitOperations.TrailingZeroCount(Others(eight) | (1u << AtOnce));
    }

    // The first four and the last four, of which some may be the same.
    private int CopyTwice(ReadOnlySpan<ushort> units, Span<byte> target)
    {
        var eight = Vector128.Create(Vector64.Create(units[..Half]), Vector64.Create(units[^Half..]));
        var bytes = Vector128.Narrow(eight, eight).AsUInt32();
        MemoryMarshal.Write(target, bytes[0]);
        MemoryMarshal.Write(target[^Half..], bytes[1]);
        var first = BitOperations.TrailingZeroCount(Others(eight) | (1u << AtOnce));
        return first < Half ? first : units.Length - AtOnce + first;
    }

    // A bit for each of eight that is not among them.
    private uint Others(Vector128<ushort> eight)
    {
        var other = Vector128.GreaterThan(eight - Vector128.Create((ushort)' '), Vector128.Create((ushort)('~' - ' ')));
        foreach (var exception in exceptions)
        {
            other |= Vector128.Equals(eight, exception);
        }

        return other.ExtractMostSignificantBits();
    }
}
