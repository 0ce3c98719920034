using Ohmstead.Electronics;
using Ohmstead.Records.Binding;
using Ohmstead.Records.Findings;

namespace Ohmstead.Records.Tests.Binding;

public sealed class DateTextTests
{
    [Theory]
    [InlineData("2024-02-29", 2024, 2, 29)]
    [InlineData("1900-01-01", 1900, 1, 1)]
    [InlineData("2199-12-31", 2199, 12, 31)]
    public void A_day_is_read(string text, int year, int month, int day) =>
        Assert.Equal(new DateOnly(year, month, day), DateText.ParseDay(text).Value);

    [Theory]
    [InlineData("1978", "1978-01-01", "1978-12-31")]
    [InlineData("1978-02", "1978-02-01", "1978-02-28")]
    [InlineData("1976-02", "1976-02-01", "1976-02-29")]
    [InlineData("1978-02-03", "1978-02-03", "1978-02-03")]
    public void A_rough_date_covers_all_days_it_can_mean(string text, string first, string last)
    {
        var date = DateText.ParseRough(text).Value;

        Assert.Equal((first, last), ($"{date.Earliest:yyyy-MM-dd}", $"{date.Latest:yyyy-MM-dd}"));
        Assert.Equal(text, date.ToString());
    }

    [Theory]
    [InlineData("2024-02-30")]
    [InlineData("2023-02-29")]
    [InlineData("1900-02-29")]
    [InlineData("2024-13-01")]
    [InlineData("2024-00-10")]
    [InlineData("2024-04-31")]
    [InlineData("2024-04-00")]
    public void A_day_that_never_was_is_called_so(string text)
    {
        var fault = DateText.ParseDay(text).Fault;

        Assert.StartsWith($"there is no such day as '{text}'", fault?.Message, StringComparison.Ordinal);
        Assert.Equal(ParseFaultKind.OutOfRange, fault?.Kind);
    }

    [Theory]
    [InlineData("12/05/2024", "write 2024-05-12 or 2024-12-05")]
    [InlineData("05.12.2024", "write 2024-12-05 or 2024-05-12")]
    [InlineData("5-12-2024", "write 2024-12-05 or 2024-05-12")]
    [InlineData("31/12/2024", "write 2024-12-31")]
    [InlineData("5/5/2024", "write 2024-05-05")]
    public void A_date_in_another_order_is_shown_in_every_reading_it_allows(string text, string next) =>
        Assert.Equal(next, DateText.ParseDay(text).Fault?.NextStep);

    [Theory]
    [InlineData("10:00")]
    [InlineData("31/31/2024")]
    [InlineData("2026-09-0007")]
    [InlineData("9-2026-0007")]
    [InlineData("2026/09/2024")]
    [InlineData("2024-06-30+01:00")]
    [InlineData("10000-01-01")]
    [InlineData("२०२४-०६-३०")]
    [InlineData("-2024-06-30")]
    [InlineData("yesterday")]
    public void What_is_no_iso_date_is_never_completed(string text)
    {
        var fault = DateText.ParseDay(text).Fault;

        Assert.Equal($"'{text}' is no ISO date", fault?.Message);
        Assert.Equal("write the day itself in the form YYYY-MM-DD, in digits and without a time", fault?.NextStep);
    }

    [Theory]
    [InlineData("2024-1-2", "write 2024-01-02")]
    [InlineData("2024-06-30T10:00", "write 2024-06-30, and 10:00 in note")]
    [InlineData("2024-06-30T10:00:00Z", "write 2024-06-30, and 10:00:00Z in note")]
    [InlineData("2024-06-30 10:00", "write 2024-06-30, and 10:00 in note")]
    [InlineData("2016-12-31T23:59:60Z", "write 2016-12-31, and 23:59:60Z in note")]
    [InlineData("2026-W18", "write the day that it was")]
    [InlineData("1970s", "write \"1970s\" in note and leave the key out, or write a year for which there is evidence")]
    [InlineData("24-06-30", "write 2030-06-24 or 2024-06-30, whichever it was")]
    [InlineData("21 March 2026", "write 2026-03-21")]
    [InlineData("March 21, 2026", "write 2026-03-21")]
    [InlineData("c. 1978", "write 1978, and how sure it is in note")]
    [InlineData("1978-79", "write 1978, and the rest in note")]
    [InlineData("2026-21-03", "write 2026-03-21")]
    public void What_was_meant_by_what_is_no_iso_date_is_told_and_never_taken(string text, string next)
    {
        Assert.Equal(next, DateText.ParseRough(text).Fault?.NextStep);
        Assert.NotNull(DateText.ParseDay(text).Fault);
    }

    [Theory]
    [InlineData("0000-01-01", "the year 0000 is outside 1900 to 2199")]
    [InlineData("1899-12-31", "the year 1899 is outside 1900 to 2199")]
    [InlineData("2200-01-01", "the year 2200 is outside 1900 to 2199")]
    [InlineData("9999-12-31", "the year 9999 is outside 1900 to 2199")]
    public void A_year_that_cannot_be_meant_is_refused(string text, string message) =>
        Assert.Equal(message, DateText.ParseDay(text).Fault?.Message);

    [Theory]
    [InlineData("2024-02-30", "February 2024 has 29 days")]
    [InlineData("2023-02-29", "February 2023 has 28 days")]
    [InlineData("2024-04-00", "April 2024 has 30 days")]
    public void A_day_beyond_the_month_is_told_with_the_length_of_the_month_and_no_other_day(string text, string length)
    {
        var fault = DateText.ParseDay(text).Fault;

        Assert.EndsWith(length, fault?.Message, StringComparison.Ordinal);
        Assert.Equal("write the day that it was", fault?.NextStep);
    }

    // A day that stands in the message would be copied.
    [Theory]
    [InlineData("2026", "write month and day too: 2026- and two digits, a hyphen and two digits")]
    [InlineData("2026-03", "write the day too: 2026-03- and two digits")]
    public void A_visit_needs_its_day_not_only_its_month(string text, string next)
    {
        var fault = DateText.ParseDay(text).Fault;

        Assert.Equal($"'{text}' names no day, a whole date is expected", fault?.Message);
        Assert.Equal(next, fault?.NextStep);
    }

    [Theory]
    [InlineData("2024-02-30", 10)]
    [InlineData("12/05/2024", 10)]
    [InlineData("10:00", 5)]
    public void A_date_is_reported_where_it_stands_in_the_record(string text, int length)
    {
        var finding = Assert.Single(Reads.Findings("board", $"---\nboard: SP-0007\ntitle: x\nbench:\n  - by: RK\n    date: {text}\n---\n"));

        Assert.Equal(
            (RecordChecks.DateUnreadable, 6, 11, length),
            (finding.Check, finding.Place.Line, finding.Place.Column, finding.Place.Length)
        );
    }
}
