using System.Buffers;

namespace Ohmstead.Report.Html;

/// <summary>Characters that are written as they are, none of them half of a pair. Most of what is written is only these, a word or two at a time.</summary>
public sealed class PlainCharacters
{
    private readonly bool[] plain = new bool[char.MaxValue + 1];
    private readonly SearchValues<char> ofAscii;

    /// <summary>The characters that a rule lets through.</summary>
    /// <param name="isPlain">The rule; asked once for each character.</param>
    public PlainCharacters(Func<char, bool> isPlain)
    {
        for (var c = 0; c < plain.Length; c++)
        {
            plain[c] = isPlain((char)c) && !char.IsSurrogate((char)c);
        }

        ofAscii = SearchValues.Create([.. Enumerable.Range(0, 0x80).Select(c => (char)c).Where(Has)]);
    }

    /// <summary>Whether it is among them.</summary>
    public bool Has(char c) => plain[c];

    /// <summary>How many characters at the start of a text are of ASCII and among them.</summary>
    public int Run(ReadOnlySpan<char> text) => text.IndexOfAnyExcept(ofAscii) is var run and >= 0 ? run : text.Length;
}
