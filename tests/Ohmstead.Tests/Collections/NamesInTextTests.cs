using System.Text;
using Ohmstead.Collections;

namespace Ohmstead.Tests.Collections;

/// <summary>A record that names one of some names is always found; one that does not is passed over where its bytes show it.</summary>
public sealed class NamesInTextTests
{
    [Theory]
    [InlineData("work:\n  - { part: C1, did: replaced, lot: L-031 }\n", true)]
    [InlineData("L-031", true)]
    [InlineData("work:\n  - { part: C1, did: replaced, lot: L-03 }\n", false)]
    [InlineData("lot: l-031", false)]
    [InlineData("", false)]
    [InlineData("lot: \"L\\x2d031\"", true)]
    [InlineData("lot: \"\\u004c-031\"", true)]
    [InlineData("lot: \"\\U0000004c-031\"", true)]
    [InlineData("lot: \"L-\\\n    031\"", true)]
    [InlineData("lot: \"L-\\\r\n    031\"", true)]
    // No name can be made of these.
    [InlineData("note: \"a tab\\t, a path C:\\\\bench\\\\rest\"", false)]
    [InlineData("a lone \\", false)]
    public void A_lot_is_looked_for_letter_by_letter_and_where_there_are_escapes_it_may_stand(string text, bool mayStand) =>
        Assert.Equal(mayStand, new NamesInText(["L-031"], []).MayStandIn(Encoding.UTF8.GetBytes(text)));

    [Theory]
    [InlineData("SP-0001", "board: SP-0001\n", true)]
    [InlineData("SP-0001", "board: sp-0001\n", true)]
    [InlineData("SP-0001", "board: Sp-0001", true)]
    [InlineData("SP-0001", "board: SQ-0001, sp-0001", true)]
    [InlineData("SP-0001", "board: SP-0002\ntitle: beside SQ-0001\n", false)]
    [InlineData("SP-0001", "-0001", false)]
    [InlineData("SP-0001", "sp-000", false)]
    [InlineData("0001", "board: 0001", true)]
    [InlineData("logger", "board: LOGGER", true)]
    [InlineData("logger", "lo logger", true)]
    [InlineData("logger", "board: loggia", false)]
    [InlineData("KX", "board: \u212AX", true)]
    // How others write such a number is not for a search of bytes to say.
    [InlineData("K\u00fcste-1", "board: SP-0002", true)]
    public void A_number_is_looked_for_without_regard_to_capitals(string number, string text, bool mayStand) =>
        Assert.Equal(mayStand, new NamesInText([], [number]).MayStandIn(Encoding.UTF8.GetBytes(text)));

    [Fact]
    public void Of_several_names_any_counts() =>
        Assert.True(new NamesInText(["L-031", "L-032"], ["SP-0001", "SP-0002"]).MayStandIn("board: sp-0002"u8));
}
