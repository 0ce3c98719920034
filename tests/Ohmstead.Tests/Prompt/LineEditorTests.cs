using System.Text;
using Ohmstead.Prompt;

namespace Ohmstead.Tests.Prompt;

/// <summary>What keys do to a line. <c>|</c> is the cursor.</summary>
public sealed class LineEditorTests
{
    private static readonly string[] Words = ["C1", "C12", "C13", "quit"];

    [Theory]
    [InlineData("391", "391|")]
    [InlineData("391\e[D\e[D.", "3.|91")]
    [InlineData("391\e[H-", "-|391")]
    [InlineData("391\u0001\e[F0", "3910|")]
    [InlineData("C3 46.1 0.9\eb", "C3 46.1 0.|9")]
    [InlineData("C3 46\eb\eb", "|C3 46")]
    [InlineData("C3 46\u0001\ef", "C3| 46")]
    [InlineData("391\u007F\u007F", "3|")]
    [InlineData("391\u0001\e[3~", "|91")]
    [InlineData("391\u0001\u0004", "|91")]
    [InlineData("391 1.4\eb\eb\u000B", "391 |")]
    [InlineData("391 1.4\u0015", "|")]
    [InlineData("391 1.4\u0017", "391 |")]
    [InlineData("C3 46.1\u0017\u0017\u0019", "C3 46.1|")]
    [InlineData("C3 46.1\u0015X \u0019", "X C3 46.1|")]
    [InlineData("46.1uF\e\u007F", "46.|")]
    [InlineData("C3 46\u0001\ed", "| 46")]
    [InlineData("641\u0014", "614|")]
    [InlineData("46\e[D\u0014", "64|")]
    [InlineData("391\u0015\u001F", "391|")]
    [InlineData("391\u007F\u007F\u001F\u001F", "391|")]
    [InlineData("391\u001F", "|")]
    [InlineData("e\u0301測👍🏽x\u007F\u007F\u007F", "e\u0301|")]
    [InlineData("👨‍👩‍👧\e[D", "|👨‍👩‍👧")]
    public void Keys_change_the_line_as_everywhere(string keys, string line) => Assert.Equal(line, Shown(Press(keys).State.Line));

    [Theory]
    [InlineData("\e[A", "three|")]
    [InlineData("\e[A\e[A", "two|")]
    [InlineData("\e[A\e[A\e[B", "three|")]
    [InlineData("own\e[A\e[B", "own|")]
    [InlineData("\e[A\e[A\e[A\e[A\e[A", "one|")]
    [InlineData("\u0012o", "tw|o")]
    [InlineData("\u0012o\u0012", "|one")]
    [InlineData("\u0012o\u0012\u0013", "tw|o")]
    [InlineData("\u0012on\u0007", "|")]
    [InlineData("own\u0012on\u0003", "own|")]
    [InlineData("\u0012one\e[F!", "one!|")]
    [InlineData("\u0012twx\u007F", "|two")]
    public void Older_lines_come_back(string keys, string line) => Assert.Equal(line, Shown(Press(keys).State.Line));

    [Theory]
    [InlineData("q\t", "quit |", nameof(EditResult.GoesOn))]
    [InlineData("c\t", "C1|", nameof(EditResult.GoesOn))]
    [InlineData("C1\t", "C1|", nameof(EditResult.Choice))]
    [InlineData("C12\t", "C12 |", nameof(EditResult.GoesOn))]
    [InlineData("Z\t", "Z|", nameof(EditResult.Refused))]
    public void Tab_completes_as_far_as_it_is_sure(string keys, string line, string result)
    {
        var (state, said) = Press(keys);
        Assert.Equal((line, result), (Shown(state.Line), said.ToString()));
    }

    [Fact]
    public void Lines_of_a_paste_wait_for_their_turn_each()
    {
        var (state, result) = Press("\e[200~C1 391\rC2 47\r\rC3 1\r\e[201~");
        Assert.Equal(("C1 391|", EditResult.GoesOn), (Shown(state.Line), result));
        Assert.Equal(["C2 47", "C3 1"], state.Waiting);
    }

    [Theory]
    [InlineData("", "\u0004", nameof(EditResult.Ended))]
    [InlineData("39", "\u0003", nameof(EditResult.GivenUp))]
    [InlineData("39", "\r", nameof(EditResult.Done))]
    [InlineData("39", "\u001A", nameof(EditResult.Suspended))]
    [InlineData("", "\u007F", nameof(EditResult.Refused))]
    public void What_ends_a_line_is_told(string typed, string key, string result) =>
        Assert.Equal(result, Press(typed + key).Result.ToString());

    [Fact]
    public void A_line_does_not_grow_beyond_what_anybody_types() =>
        Assert.Equal(EditLine.Longest, Press(new string('1', EditLine.Longest) + "\e[200~2\e[201~").State.Line.Text.Length);

    private static string Shown(EditLine line) => line.Before + "|" + line.After;

    private static (EditState State, EditResult Result) Press(string keys)
    {
        var editor = new LineEditor(line =>
            new(0, [.. Words.Where(word => word.StartsWith(line.Before, StringComparison.OrdinalIgnoreCase))])
        );
        var state = new EditState(EditLine.Empty, ["one", "two", "three"]);
        var result = EditResult.GoesOn;
        foreach (var key in new KeyDecoder().Decode(Encoding.UTF8.GetBytes(keys)))
        {
            (state, result) = editor.Press(state, key);
        }

        return (state, result);
    }
}
