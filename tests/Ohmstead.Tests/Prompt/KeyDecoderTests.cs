using System.Text;
using Ohmstead.Prompt;

namespace Ohmstead.Tests.Prompt;

/// <summary>Keys by what terminals send: ECMA-48 and the lists of keys of xterm, rxvt, the Linux console and the VT100.</summary>
public sealed class KeyDecoderTests
{
    [Theory]
    [InlineData("\e[D", nameof(KeyName.Left))]
    [InlineData("\eOD", nameof(KeyName.Left))]
    [InlineData("\e[C", nameof(KeyName.Right))]
    [InlineData("\e[A", nameof(KeyName.Up))]
    [InlineData("\eOB", nameof(KeyName.Down))]
    [InlineData("\e[H", nameof(KeyName.Home))]
    [InlineData("\eOH", nameof(KeyName.Home))]
    [InlineData("\e[1~", nameof(KeyName.Home))]
    [InlineData("\e[7~", nameof(KeyName.Home))]
    [InlineData("\e[F", nameof(KeyName.End))]
    [InlineData("\e[4~", nameof(KeyName.End))]
    [InlineData("\e[8~", nameof(KeyName.End))]
    [InlineData("\e[3~", nameof(KeyName.Delete))]
    [InlineData("\e[1;5C", nameof(KeyName.WordRight))]
    [InlineData("\e[1;3D", nameof(KeyName.WordLeft))]
    [InlineData("\eOc", nameof(KeyName.WordRight))]
    [InlineData("\e[1;2C", nameof(KeyName.Right))]
    [InlineData("\e[3;5~", nameof(KeyName.KillWordRight))]
    [InlineData("\eb", nameof(KeyName.WordLeft))]
    [InlineData("\ef", nameof(KeyName.WordRight))]
    [InlineData("\ed", nameof(KeyName.KillWordRight))]
    [InlineData("\e\u007F", nameof(KeyName.KillWordLeft))]
    [InlineData("\u007F", nameof(KeyName.Backspace))]
    [InlineData("\b", nameof(KeyName.Backspace))]
    [InlineData("\u0001", nameof(KeyName.Home))]
    [InlineData("\u0005", nameof(KeyName.End))]
    [InlineData("\u000B", nameof(KeyName.KillToEnd))]
    [InlineData("\u0015", nameof(KeyName.KillToStart))]
    [InlineData("\u0017", nameof(KeyName.KillToSpace))]
    [InlineData("\u0019", nameof(KeyName.Yank))]
    [InlineData("\u001F", nameof(KeyName.Undo))]
    [InlineData("\u0012", nameof(KeyName.Search))]
    [InlineData("\t", nameof(KeyName.Complete))]
    [InlineData("\r", nameof(KeyName.Enter))]
    [InlineData("\n", nameof(KeyName.Enter))]
    [InlineData("\eOM", nameof(KeyName.Enter))]
    [InlineData("\u0003", nameof(KeyName.Interrupt))]
    [InlineData("\u0004", nameof(KeyName.DeleteOrEnd))]
    [InlineData("\u001A", nameof(KeyName.Suspend))]
    public void Each_key_is_known_however_its_bytes_arrive(string sent, string name)
    {
        Assert.Equal([new Key(Enum.Parse<KeyName>(name))], Decode(sent));
        // Over a slow line they come one by one.
        var decoder = new KeyDecoder();
        Assert.Equal(Decode(sent), Encoding.UTF8.GetBytes(sent).SelectMany(one => decoder.Decode([one])));
    }

    [Theory]
    [InlineData("\eOp\eOq\eOr\eOs\eOt\eOu\eOv\eOw\eOx\eOy", "0123456789")]
    [InlineData("\eOt\eOw\eOn\eOv", "47.6")]
    [InlineData("\eOk\eOm\eOl\eOj\eOo", "+-,*/")]
    public void The_figures_of_the_keypad_are_figures_in_its_own_mode_too(string sent, string text) =>
        Assert.Equal([new Key(KeyName.Text, text)], Decode(sent));

    [Theory]
    [InlineData("391 µF")]
    [InlineData("測定 👍🏽 e\u0301")]
    public void Text_is_text_even_where_its_bytes_come_apart(string text)
    {
        Assert.Equal([new Key(KeyName.Text, text)], Decode(text));
        var decoder = new KeyDecoder();
        Assert.Equal(text, string.Concat(Encoding.UTF8.GetBytes(text).SelectMany(one => decoder.Decode([one])).Select(key => key.Text)));
    }

    [Theory]
    [InlineData("\e391", "391")]
    [InlineData("\e\e391", "391")]
    [InlineData("\e[[A391", "391")]
    [InlineData("\e[15~391", "391")]
    [InlineData("\e[5~391", "391")]
    [InlineData("\e[>0;276;0c391", "391")]
    [InlineData("\e[I391\e[O", "391")]
    [InlineData("\0391\u001C", "391")]
    public void No_figure_is_lost_behind_a_key_that_means_nothing(string sent, string text) =>
        Assert.Equal(text, string.Concat(Decode(sent).Select(key => key.Text)));

    [Fact]
    public void A_paste_is_one_thing_and_nothing_in_it_is_a_key()
    {
        Assert.Equal(
            [new Key(KeyName.Paste, "C1 391\nC2 47 uF\n"), new Key(KeyName.Enter)],
            Decode("\e[200~C1 391\r\nC2\t47 uF\r\u0004\e[A\e[201~\r".Replace("\e[A", "", StringComparison.Ordinal))
        );
        Assert.Equal([new Key(KeyName.Paste, "a[Ab")], Decode("\e[200~a\e[Ab\e[201~"));
    }

    [Fact]
    public void A_paste_that_never_ends_is_left_by_Ctrl_C() =>
        Assert.Equal([new Key(KeyName.Interrupt), new Key(KeyName.Text, "1")], Decode("\e[200~abc\u00031"));

    [Fact]
    public void Bytes_that_are_no_text_are_passed_over()
    {
        var decoder = new KeyDecoder();
        Assert.Equal([new Key(KeyName.Text, "12")], decoder.Decode([0xFF, (byte)'1', 0xC3, (byte)'2']));
    }

    private static IReadOnlyList<Key> Decode(string sent) => new KeyDecoder().Decode(Encoding.UTF8.GetBytes(sent));
}
