using System.Text;
using Ohmstead.Report.Html;

namespace Ohmstead.Report.Tests.Html;

/// <summary>A page of a hundred megabytes passes through; a usual one stays where it is.</summary>
public sealed class PageBufferTests
{
    private const int Large = 5_000_000;

    [Fact]
    public void Of_a_page_too_long_to_be_held_no_more_stays_than_a_piece()
    {
        var (whole, largest) = (new StringBuilder(), 0);
        var pieces = new Pieces();
        using var buffer = new PageBuffer(start: pieces);
        for (var line = 0; whole.Length < Large; line++)
        {
            var text = $"a line of a page, the {line}th\n";
            whole.Append(text);
            buffer.Append(Encoding.UTF8.GetBytes(text));
            largest = Math.Max(largest, buffer.Written.Length);
        }

        Assert.True(largest < Large / 2, $"{largest} bytes were held");
        Assert.Equal(whole.Length, buffer.Length);
        Assert.Equal(whole.ToString(), pieces.Text + Encoding.UTF8.GetString(buffer.Written));
    }

    // The end that is taken back must not be of a piece that was handed on meanwhile.
    [Fact]
    public void A_text_that_is_not_plain_leaves_nothing_behind_wherever_a_piece_ends()
    {
        var pieces = new Pieces();
        using var buffer = new PageBuffer(start: pieces);
        var plain = new PlainCharacters(char.IsAsciiLetter);
        var written = 0;
        while (written < Large)
        {
            Assert.True(buffer.TryAppendPlain("plain", plain));
            written += "plain".Length;
            Assert.False(buffer.TryAppendPlain("plainuptohere!", plain));
        }

        Assert.Equal(written, buffer.Length);
        Assert.Equal(string.Concat(Enumerable.Repeat("plain", written / 5)), pieces.Text + Encoding.UTF8.GetString(buffer.Written));
    }

    [Fact]
    public void Another_page_begins_with_no_piece_of_the_one_before()
    {
        var pieces = new Pieces();
        using var buffer = new PageBuffer(start: pieces);
        buffer.Append(new byte[Large]);
        buffer.Append(new byte[Large]);
        Assert.NotEmpty(pieces.Text);
        buffer.Clear();
        Assert.Empty(pieces.Text);
        Assert.Equal(0, buffer.Length);
    }

    private sealed class Pieces : IPieces
    {
        private readonly StringBuilder text = new();

        public string Text => text.ToString();

        public void Add(ReadOnlySpan<byte> piece) => text.Append(Encoding.UTF8.GetString(piece));

        public void Clear() => text.Clear();
    }
}
