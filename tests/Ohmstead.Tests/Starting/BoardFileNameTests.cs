using Ohmstead.Starting;

namespace Ohmstead.Tests.Starting;

public sealed class BoardFileNameTests
{
    [Theory]
    [InlineData("", "boards/SP-0021.md")]
    [InlineData("SP-0001=boards/SP-0001.md", "boards/SP-0021.md")]
    [InlineData("SP-0001=SP-0001.md", "SP-0021.md")]
    [InlineData("SP-0001=boards/sp-0001.md SP-0002=boards/sp-0002.md", "boards/sp-0021.md")]
    [InlineData("SP-0001=boards/hut/SP-0001.md SP-0002=boards/hut/SP-0002.md SP-0003=boards/SP-0003.md", "boards/hut/SP-0021.md")]
    [InlineData("SP-0001=boards/SP-0001-tide-gauge.md SP-0002=boards/SP-0002-rain.md", "boards/SP-0021-rain-gauge-2-clock.md")]
    public void A_new_board_is_named_as_most_of_the_collection_is(string there, string path) =>
        Assert.Equal(path, BoardFileName.For("SP-0021", "Rain gauge №2: clock", Boards(there)));

    [Theory]
    [InlineData("SP-0007", "SP-0007 is taken: boards/SP-0007.md")]
    [InlineData("sp-0007", "sp-0007 is taken but for its capitals: boards/SP-0007.md")]
    [InlineData("SP-OOO7", "SP-OOO7 looks like SP-0007, boards/SP-0007.md: it has U+004F where the other has U+0030")]
    [InlineData("SP-00O7", "SP-00O7 looks like SP-0007, boards/SP-0007.md: it has U+004F where the other has U+0030")]
    [InlineData("second", "second is taken: boards/second.md")]
    [InlineData("SP-0008", null)]
    public void A_number_that_is_taken_or_can_be_taken_for_one_is_told_with_its_file(string number, string? fault) =>
        Assert.Equal(fault, KnownBoards.Taken(number, Boards("SP-0007=boards/SP-0007.md SP-0009=boards/second.md")));

    private static KnownBoard[] Boards(string text) =>
        [.. text.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(pair => new KnownBoard(pair.Split('=')[0], pair.Split('=')[1]))];
}
