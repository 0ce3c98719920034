using System.Runtime.InteropServices;

namespace Ohmstead.Yaml.Plain;

/// <summary>Gives one string for texts that come again and again: kinds, units, initials, dates.</summary>
/// <remarks>Each text has one place by its hash; a newer one drives the older out, so that a stranger's file cannot make it grow.</remarks>
internal sealed class RecentTexts
{
    private const int Places = 2048;
    private const int Longest = 32;
    private const int AtOnce = sizeof(ulong) / sizeof(char);

    private readonly string?[] recent = new string?[Places];

    internal string Intern(ReadOnlySpan<char> text)
    {
        if (text.Length > Longest)
        {
            return text.ToString();
        }

        ref var place = ref recent[Hash(text) % Places];
        if (place is null || !text.SequenceEqual(place))
        {
            place = text.ToString();
        }

        return place;
    }

    // Whatever it gives only decides what is shared, never what is read.
    private static uint Hash(ReadOnlySpan<char> text)
    {
        const ulong odd = 0x9E3779B97F4A7C15;
        var hash = (ulong)text.Length;
        foreach (var four in MemoryMarshal.Cast<char, ulong>(text))
        {
            hash = unchecked((hash ^ four) * odd);
            hash ^= hash >> 32;
        }

        if (text.Length >= AtOnce)
        {
            // What is left over, with some of what was there before.
            return (uint)(unchecked((hash ^ MemoryMarshal.Cast<char, ulong>(text[^AtOnce..])[0]) * odd) >> 32);
        }

        foreach (var unit in text)
        {
            hash = unchecked((hash ^ unit) * odd);
            hash ^= hash >> 32;
        }

        return (uint)(hash & uint.MaxValue);
    }
}
