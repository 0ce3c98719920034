using System.Buffers;
using System.Text;

namespace Ohmstead.Prompt;

/// <summary>Makes keys of the bytes that a terminal sends. No clock is asked: a sequence that has begun is waited for, however long it
/// takes.</summary>
/// <remarks>A lone Escape therefore shows only with the key that follows: with one that Alt gives a meaning it is that, with any other
/// it is
/// as if it had not been touched, so that no figure is lost.</remarks>
internal sealed class KeyDecoder
{
    private const byte Escape = 0x1B;
    private const int LongestSequence = 32;
    private const int LongestPaste = 64 << 10;

    private readonly List<byte> held = [];
    private StringBuilder? paste;
    private bool isControl;

    /// <summary>The keys that are whole by now. What is not waits for the rest.</summary>
    /// <param name="bytes">What came.</param>
    public IReadOnlyList<Key> Decode(ReadOnlySpan<byte> bytes)
    {
        var keys = new List<Key>();
        held.AddRange(bytes);
        while (held.Count > 0)
        {
            var (taken, key) = paste is null ? One() : OneOfPaste();
            if (taken == 0)
            {
                break;
            }

            held.RemoveRange(0, taken);
            if (key is { Name: KeyName.Text } more && keys is [.., { Name: KeyName.Text } before])
            {
                keys[^1] = new(KeyName.Text, before.Text + more.Text);
            }
            else if (key is { } other)
            {
                keys.Add(other);
            }
        }

        return keys;
    }

    // How many bytes the next key takes, 0 where it is not whole, and what it is; null where it means nothing.
    private (int Taken, Key? Key) One()
    {
        if (held[0] != Escape)
        {
            return held[0] is < 0x20 or 0x7F ? (1, Named(KeyTables.OfControl(held[0]))) : Character();
        }

        if (held.Count == 1)
        {
            return default;
        }

        switch (held[1])
        {
            case (byte)'[':
                return Sequence(2);
            case (byte)'O':
                return Keypad();
            case Escape:
                return (1, null);
            case var with when KeyTables.OfAlt(with) is { } name:
                return (2, new(name));
            default:
                return (1, null);
        }
    }

    private (int, Key?) Keypad()
    {
        var at = 2;
        while (at < held.Count && (held[at] is (byte)';' || char.IsAsciiDigit((char)held[at])) && at < LongestSequence)
        {
            at++;
        }

        return at == held.Count ? default : (at + 1, KeyTables.OfKeypad((char)held[at], at > 2));
    }

    private (int, Key?) Sequence(int start)
    {
        // The Linux console: ESC [ [ A is F1.
        if (held.Count > start && held[start] == (byte)'[')
        {
            return held.Count > start + 1 ? (start + 2, null) : default;
        }

        var at = start;
        while (at < held.Count && held[at] is >= 0x20 and < 0x40 && held[at] != (byte)'$')
        {
            at++;
        }

        if (at - start > LongestSequence)
        {
            return (at, null);
        }

        if (at == held.Count)
        {
            return default;
        }

        if (held[at] is < 0x24 or > 0x7E)
        {
            // Broken off: what breaks it is a key of its own.
            return (at, null);
        }

        var figures = Encoding.ASCII.GetString([.. held[start..at]]);
        if (figures == "200" && held[at] == (byte)'~')
        {
            paste = new();
            isControl = false;
            return (at + 1, null);
        }

        return (at + 1, Named(KeyTables.OfSequence(figures, (char)held[at])));
    }

    private (int, Key?) OneOfPaste()
    {
        ReadOnlySpan<byte> end = "\e[201~"u8;
        ReadOnlySpan<byte> text = [.. held[..Math.Min(held.Count, end.Length)]];
        if (text.StartsWith(end))
        {
            var pasted = paste!.ToString();
            paste = null;
            return (end.Length, pasted.Length > 0 ? new Key(KeyName.Paste, pasted) : null);
        }

        // A terminal whose paste never ends is left by Ctrl-C.
        if (text[0] == 3)
        {
            paste = null;
            return (1, new(KeyName.Interrupt));
        }

        if (text[0] == Escape)
        {
            return end.StartsWith(text) ? default : (1, null);
        }

        if (text[0] is < 0x20 or 0x7F)
        {
            // A line end comes as one, as the other, or as both.
            var isSecond = isControl && text[0] == (byte)'\n';
            isControl = text[0] == (byte)'\r';
            Put(
                text[0] is (byte)'\r' or (byte)'\n' && !isSecond ? "\n"
                : text[0] == (byte)'\t' ? " "
                : string.Empty
            );
            return (1, null);
        }

        isControl = false;
        var (taken, key) = Character();
        Put(key?.Text ?? string.Empty);
        return (taken, null);
    }

    private void Put(string text)
    {
        if (paste!.Length < LongestPaste)
        {
            paste.Append(text);
        }
    }

    private (int, Key?) Character()
    {
        Span<byte> next = [.. held[..Math.Min(held.Count, 4)]];
        return Rune.DecodeFromUtf8(next, out var rune, out var taken) switch
        {
            OperationStatus.Done => (taken, Rune.IsControl(rune) ? null : new Key(KeyName.Text, rune.ToString())),
            OperationStatus.NeedMoreData when held.Count < 4 => default,
            _ => (Math.Max(taken, 1), null),
        };
    }

    private static Key? Named(KeyName? name) => name is { } known ? new Key(known) : null;
}
