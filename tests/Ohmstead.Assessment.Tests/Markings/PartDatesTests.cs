using Ohmstead.Assessment.Markings;

namespace Ohmstead.Assessment.Tests.Markings;

/// <summary>Date codes against the dates of a board: made in 1979, came in 1991.</summary>
public sealed class PartDatesTests
{
    private static readonly DateWindow Window = new(1959, new DateOnly(1991, 12, 31), "the board came in 1991")
    {
        MadeBy = new DateOnly(1979, 12, 31),
    };

    [Theory]
    [InlineData("7834", "1978-W34")]
    [InlineData("834", "1968-W34 or 1978-W34 or 1988-W34")]
    [InlineData("F5", "1975-05")]
    [InlineData("1377432", "1974-W32")]
    public void Only_dates_that_can_be_are_told(string code, string dates) =>
        Assert.Equal(dates, PartDates.Dates(PartDates.Plausible(code, Window)));

    [Theory]
    [InlineData("9834", "date code '9834' can mean 1998-W34, which cannot be, since the board came in 1991")]
    [InlineData("7861", "date code '7861' has no week of 1 to 53 in it")]
    [InlineData("7834", null)]
    [InlineData("A77-B", null)]
    [InlineData("", null)]
    public void A_code_without_a_date_that_can_be_is_a_fault_and_an_unknown_one_is_not(string code, string? fault) =>
        Assert.Equal(fault, PartDates.Fault(code, Window));

    [Fact]
    public void A_part_younger_than_its_board_is_an_earlier_repair() =>
        Assert.EndsWith(
            ", later than the board: an earlier repair, or the board is younger than written",
            DateWords.Describe("8834", Window),
            StringComparison.Ordinal
        );

    [Fact]
    public void A_code_is_told_with_its_rule_and_source() =>
        Assert.Equal(
            "date code '7834' is 1978-W34 (week 34 of a year ending in 78; year and week, as on integrated circuits (common practice))",
            DateWords.Describe("7834", Window)
        );
}
