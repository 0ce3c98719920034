using System.Text;

namespace Ohmstead.Collections;

/// <summary>Whether the text of a record can hold one of some names: looked for in its bytes, before anything of it is read.</summary>
internal sealed class NamesInText
{
    // The Kelvin sign is a K to whoever compares numbers.
    private static readonly byte[] KelvinSign = [0xE2, 0x84, 0xAA];

    private readonly byte[][] exact;
    private readonly (byte[] Name, int From, byte[] Core)[] inAnyCase;
    private readonly bool mayBeAnywhere;

    /// <summary>Prepares the search.</summary>
    /// <param name="exact">Names that are compared letter by letter.</param>
    /// <param name="inAnyCase">Names that are compared without regard to capitals.</param>
    public NamesInText(IEnumerable<string> exact, IEnumerable<string> inAnyCase)
    {
        this.exact = [.. exact.Select(Encoding.UTF8.GetBytes)];
        string[] folded = [.. inAnyCase];
        // How others write a letter outside ASCII is not for a search of bytes to say.
        mayBeAnywhere = folded.Any(name => !Ascii.IsValid(name));
        this.inAnyCase = [.. folded.Where(name => Ascii.IsValid(name)).Select(Prepared)];
    }

    /// <summary>Whether the text may hold one of them. A name can be written in escapes, too: where there are any, it may.</summary>
    public bool MayStandIn(ReadOnlySpan<byte> text)
    {
        if (mayBeAnywhere || MayBeEscaped(text) || text.IndexOf(KelvinSign) >= 0)
        {
            return true;
        }

        foreach (var name in exact)
        {
            if (text.IndexOf(name) >= 0)
            {
                return true;
            }
        }

        foreach (var name in inAnyCase)
        {
            if (IsIn(text, name))
            {
                return true;
            }
        }

        return false;
    }

    // What has no capitals is looked for, for it is found in one sweep; a name of letters alone by itself.
    private static (byte[] Name, int From, byte[] Core) Prepared(string name)
    {
        var (from, length) = (0, 0);
        for (var start = 0; start < name.Length; start++)
        {
            var end = start;
            while (end < name.Length && !char.IsAsciiLetter(name[end]))
            {
                end++;
            }

            (from, length) = end - start > length ? (start, end - start) : (from, length);
        }

        return (Encoding.ASCII.GetBytes(name), from, Encoding.ASCII.GetBytes(name.Substring(from, length)));
    }

    private static bool IsIn(ReadOnlySpan<byte> text, (byte[] Name, int From, byte[] Core) wanted)
    {
        for (var at = 0; at + wanted.Name.Length <= text.Length; at++)
        {
            var next = wanted.Core.Length > 0 ? text[(at + wanted.From)..].IndexOf(wanted.Core) : 0;
            if (next < 0)
            {
                return false;
            }

            at += next;
            if (at + wanted.Name.Length <= text.Length && Ascii.EqualsIgnoreCase(text.Slice(at, wanted.Name.Length), wanted.Name))
            {
                return true;
            }
        }

        return false;
    }

    private static bool MayBeEscaped(ReadOnlySpan<byte> text)
    {
        var at = text.IndexOf((byte)'\\');
        while (at >= 0 && at + 1 < text.Length)
        {
            if (text[at + 1] is (byte)'x' or (byte)'u' or (byte)'U' or (byte)'\r' or (byte)'\n')
            {
                return true;
            }

            var next = text[(at + 1)..].IndexOf((byte)'\\');
            at = next < 0 ? -1 : at + 1 + next;
        }

        return false;
    }
}
