using Ohmstead.Assessment.History;
using Ohmstead.Records.Text;

namespace Ohmstead.Assessment.Tests.History;

/// <summary>What stands later in a visit happened later; a later visit is later wherever it stands in the file.</summary>
public sealed class MomentTests
{
    [Theory]
    [InlineData(0, 12, 7, 0, 13, 7)]
    [InlineData(0, 12, 7, 0, 12, 40)]
    [InlineData(0, 90, 7, 1, 12, 7)]
    [InlineData(-1, 0, 0, 0, 1, 1)]
    public void One_is_before_the_other(int visit, int line, int column, int laterVisit, int laterLine, int laterColumn)
    {
        var (earlier, later) = (new Moment(visit, line, column), new Moment(laterVisit, laterLine, laterColumn));
        Assert.True(earlier < later && earlier <= later && later > earlier && later >= earlier);
        Assert.False(later < earlier || later <= earlier || earlier > later || earlier >= later);
        Assert.True(earlier.CompareTo(later) < 0 && later.CompareTo(earlier) > 0);
    }

    [Fact]
    public void One_and_the_same_is_neither_before_nor_after_itself()
    {
        var (one, same) = (new Moment(2, 12, 7), Moment.At(2, new Spot(12, 7, 5)));
        Assert.Equal(one, same);
        Assert.True(one <= same && one >= same);
        Assert.False(one < same || one > same);
    }

    [Fact]
    public void The_board_as_it_came_was_before_everything() => Assert.True(Moment.AsItCame < Moment.At(0, new Spot(1, 1)));
}
