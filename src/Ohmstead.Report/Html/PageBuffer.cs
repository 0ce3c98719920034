using System.Buffers;
using System.Text.Unicode;

namespace Ohmstead.Report.Html;

/// <summary>The bytes of one page while it is written: a pooled array that grows and is used again for the next page.</summary>
/// <remarks>
/// One thread at a time; each worker has its own. After <see cref="Dispose"/> it holds nothing. A record within the limits may make a page
/// of a hundred megabytes: with somewhere to put its start, the buffer holds no more than a piece of it.
/// </remarks>
public sealed class PageBuffer : IBufferWriter<byte>, IDisposable
{
    // Far more than a page has, so that hardly one is ever taken apart.
    private const int Piece = 1 << 20;

    private readonly IPieces? start;
    private byte[] bytes;
    private int used;
    private long before;

    /// <summary>An empty buffer.</summary>
    /// <param name="capacity">How many bytes to make room for at first; more is made when it is needed.</param>
    /// <param name="start">Takes the start of what is too long to be held; null where all of it is.</param>
    public PageBuffer(int capacity = 64 << 10, IPieces? start = null) =>
        (bytes, this.start) = (ArrayPool<byte>.Shared.Rent(capacity), start);

    /// <summary>What was written so far, but for the pieces that were handed on. Valid until the next write.</summary>
    public ReadOnlySpan<byte> Written => bytes.AsSpan(0, used);

    /// <summary>What was written so far, for writing to a file, but for the pieces that were handed on. Valid until the next
    /// write.</summary>
    public ReadOnlyMemory<byte> WrittenMemory => bytes.AsMemory(0, used);

    /// <summary>How many bytes were written so far, with the pieces that were handed on.</summary>
    public long Length => before + used;

    /// <summary>Forgets what was written and keeps the room.</summary>
    public void Clear()
    {
        (before, used) = (0, 0);
        start?.Clear();
    }

    /// <summary>Copies bytes to the end.</summary>
    public void Append(ReadOnlySpan<byte> source)
    {
        MakeRoom(source.Length);
        source.CopyTo(bytes.AsSpan(used));
        used += source.Length;
    }

    /// <summary>Appends text as UTF-8, unescaped. Only for text that is known to be harmless.</summary>
    internal void AppendUtf16(ReadOnlySpan<char> text)
    {
        // No character takes more than three bytes.
        MakeRoom(text.Length * 3);
        Utf8.FromUtf16(text, bytes.AsSpan(used), out _, out var written);
        used += written;
    }

    /// <summary>Appends the plain characters at the start of a text as UTF-8, and says how many they are.</summary>
    public int AppendPlain(ReadOnlySpan<char> text, PlainCharacters plain)
    {
        // No character takes more than three bytes.
        MakeRoom(text.Length * 3);
        var target = bytes.AsSpan(used);
        var end = plain.CopyAscii(text, target);
        var at = end;
        while (at < text.Length && text[at] is var c && plain.Has(c))
        {
            if (c < 0x80)
            {
                target[end++] = (byte)c;
                at++;
                continue;
            }

            if (c < 0x800)
            {
                target[end++] = (byte)(0xC0 | (c >> 6));
            }
            else
            {
                target[end++] = (byte)(0xE0 | (c >> 12));
                target[end++] = (byte)(0x80 | ((c >> 6) & 0x3F));
            }

            target[end++] = (byte)(0x80 | (c & 0x3F));
            at++;

            // Behind a sign of a unit there is often a longer stretch again.
            var run = plain.CopyAscii(text[at..], target[end..]);
            at += run;
            end += run;
        }

        used += end;
        return at;
    }

    /// <summary>Appends a text as UTF-8 where all its characters are plain; else nothing.</summary>
    public bool TryAppendPlain(ReadOnlySpan<char> text, PlainCharacters plain)
    {
        // Before the place is noted to which it may have to go back: making room may hand all that stands there on.
        MakeRoom(text.Length * 3);
        var end = used;
        if (AppendPlain(text, plain) == text.Length)
        {
            return true;
        }

        used = end;
        return false;
    }

    /// <inheritdoc/>
    public void Advance(int count)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(count);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(count, bytes.Length - used);
        used += count;
    }

    /// <inheritdoc/>
    public Span<byte> GetSpan(int sizeHint = 0)
    {
        MakeRoom(sizeHint);
        return bytes.AsSpan(used);
    }

    /// <inheritdoc/>
    public Memory<byte> GetMemory(int sizeHint = 0)
    {
        MakeRoom(sizeHint);
        return bytes.AsMemory(used);
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        if (bytes.Length > 0)
        {
            ArrayPool<byte>.Shared.Return(bytes);
        }

        bytes = [];
        used = 0;
    }

    private void MakeRoom(int sizeHint)
    {
        if (Math.Max(sizeHint, 1) <= bytes.Length - used)
        {
            return;
        }

        if (start is not null && used >= Piece)
        {
            start.Add(Written);
            (before, used) = (before + used, 0);
        }

        if (Math.Max(sizeHint, 1) > bytes.Length - used)
        {
            Grow(used + Math.Max(sizeHint, 1));
        }
    }

    private void Grow(int wanted)
    {
        var larger = ArrayPool<byte>.Shared.Rent(Math.Max(wanted, bytes.Length * 2));
        Written.CopyTo(larger);
        if (bytes.Length > 0)
        {
            ArrayPool<byte>.Shared.Return(bytes);
        }

        bytes = larger;
    }
}
