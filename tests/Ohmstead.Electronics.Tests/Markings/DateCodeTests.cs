using Ohmstead.Electronics.Markings;

namespace Ohmstead.Electronics.Tests.Markings;

public class DateCodeTests
{
    private static readonly YearRange Years = new(1950, 2026);

    [Theory] // IEC 60062, 20-year cycle
    [Trait("CheckValue", "CV11")]
    [InlineData("T5", "1985-05 2005-05 2025-05")]
    [InlineData("P7", "1982-07 2002-07 2022-07")]
    [InlineData("UD", "1986-12 2006-12 2026-12")]
    public void A_letter_comes_round_every_twenty_years(string code, string dates) =>
        Assert.Equal(dates, string.Join(' ', DateCode.Parse(code, Years).Value.Readings.Select(reading => reading.Value.ToString())));

    [Theory] // IEC 60062 as printed for 1994 to 2000, and R = 2003
    [InlineData("E1", 1994)]
    [InlineData("F1", 1995)]
    [InlineData("H1", 1996)]
    [InlineData("J1", 1997)]
    [InlineData("K1", 1998)]
    [InlineData("L1", 1999)]
    [InlineData("M1", 2000)]
    [InlineData("R1", 2003)]
    [InlineData("X1", 2009)]
    public void The_year_letters_follow_the_published_table(string code, int year) =>
        Assert.Equal(year, Assert.Single(DateCode.Parse(code, new YearRange(1990, 2009)).Value.Readings).Value.Year);

    [Theory]
    [InlineData("T5", "1985-05 2005-05 2025-05")]
    [InlineData("85", "1958-05 1968-05 1978-05 1988-05 1998-05 2008-05 2018-05 1985")]
    [InlineData("928", "1959-W28 1969-W28 1979-W28 1989-W28 1999-W28 2009-W28 2019-W28")]
    [InlineData("7928", "1979-W28")]
    [InlineData("7954", "")]
    [InlineData("79-28", "")]
    public void The_dates_alone_are_the_same(string code, string dates)
    {
        Assert.Equal(dates, string.Join(' ', DateCode.Dates(code, Years)));
        Assert.Equal(
            dates,
            DateCode.Parse(code, Years).Is(out var read, out _)
                ? string.Join(' ', read.Readings.Select(reading => reading.Value))
                : string.Empty
        );
    }

    [Theory]
    [InlineData("G5")]
    [InlineData("I5")]
    [InlineData("Q5")]
    [InlineData("Z5")]
    [InlineData("T0")]
    [InlineData("TX")]
    [InlineData("7954")]
    [InlineData("7900")]
    [InlineData("3001")]
    [InlineData("")]
    [InlineData("79-28")]
    public void What_is_no_date_is_a_fault(string code) => Assert.NotNull(DateCode.Parse(code, Years).Fault);

    [Fact]
    public void Four_digits_are_year_and_week()
    {
        var date = Assert.Single(DateCode.Parse("7928", Years).Value.Readings).Value;
        Assert.Equal((1979, 28), (date.Year, date.Week));
        Assert.Equal((new DateOnly(1979, 7, 9), new DateOnly(1979, 7, 15)), (date.First, date.Last)); // ISO 8601 week 28 of 1979
    }

    [Fact]
    public void A_week_53_of_a_year_without_one_is_its_last_week() =>
        Assert.Equal(new DateOnly(1979, 12, 24), DateCode.Parse("7953", Years).Value.Readings[0].Value.First);

    [Fact]
    public void Three_digits_leave_the_decade_open() =>
        Assert.Equal(
            ["1959-W28", "1969-W28", "1979-W28"],
            DateCode.Parse("928", new YearRange(1950, 1980)).Value.Readings.Select(reading => reading.Value.ToString())
        );

    [Fact]
    public void Two_digits_can_be_a_month_of_a_decade_or_a_year() =>
        Assert.Equal(
            ["1978-05", "1985"],
            DateCode.Parse("85", new YearRange(1970, 1986)).Value.Readings.Select(reading => reading.Value.ToString())
        );

    [Fact]
    public void The_group_that_is_the_type_number_is_no_date() => Assert.Equal(["1979-W28"], Package("7404", "7404", "7928"));

    [Fact]
    public void Two_groups_that_both_fit_are_both_given_when_the_type_is_not_known() =>
        Assert.Equal(["1974-W04", "1982-W12"], Package(null, "7404", "8212"));

    [Fact]
    public void A_package_without_a_date_is_a_fault() => Assert.NotNull(DateCode.OnPackage(["7404", "PC"], "7404", Years).Fault);

    [Fact]
    public void A_source_date_code_is_the_maker_and_the_week()
    {
        // EIA source code, from memory
        var coded = Assert.Single(SourceDateCode.Parse("1377432", Years).Value.Readings).Value;
        Assert.Equal(("137", "1974-W32"), (coded.MakerNumber, coded.Date.ToString()));
    }

    [Fact]
    public void A_short_source_date_code_leaves_the_decade_open() =>
        Assert.Equal(
            ["1956-W12", "1966-W12"],
            SourceDateCode.Parse("304 6 12", new YearRange(1950, 1970)).Value.Readings.Select(reading => reading.Value.Date.ToString())
        );

    [Theory]
    [InlineData("13774")]
    [InlineData("1377499")]
    [InlineData("13774AB")]
    public void What_is_no_source_date_code_is_a_fault(string code) => Assert.NotNull(SourceDateCode.Parse(code, Years).Fault);

    private static IEnumerable<string> Package(string? type, params string[] groups) =>
        DateCode.OnPackage(groups, type, Years).Value.Readings.Select(reading => reading.Value.ToString());
}
