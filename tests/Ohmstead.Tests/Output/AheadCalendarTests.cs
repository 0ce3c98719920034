using System.Text;
using Ohmstead.Assessment.Ahead;
using Ohmstead.Output;
using Ohmstead.Report.Html;
using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Output;

/// <summary>The calendar, read back by the letter of RFC 5545.</summary>
public sealed class AheadCalendarTests
{
    private static readonly DateOnly Today = new(2026, 11, 25);
    private static readonly DueItem Calibration = new(
        new(2027, 2, 9),
        new(2027, 2, 9),
        DueKind.Calibration,
        "bridge-1",
        null,
        "have it calibrated",
        "calibrated 2026-02-09, valid 12 months"
    );

    [Fact]
    public void An_event_takes_the_whole_day_and_blocks_nothing()
    {
        var read = Assert.Single(CalendarText.Events(Write(Calibration)));
        Assert.Equal("20270209", read["DTSTART;VALUE=DATE"]);
        Assert.Equal("20270210", read["DTEND;VALUE=DATE"]);
        Assert.Equal("TRANSPARENT", read["TRANSP"]);
        Assert.Equal("bridge-1: have it calibrated", read["SUMMARY"]);
        Assert.Equal("calibrated 2026-02-09, valid 12 months", read["DESCRIPTION"]);
        Assert.Equal("calibration", read["CATEGORIES"]);
    }

    [Fact]
    public void The_time_stamp_is_the_day_of_the_run_and_not_the_clock() =>
        Assert.Equal("20261125T000000Z", Assert.Single(CalendarText.Events(Write(Calibration)))["DTSTAMP"]);

    [Fact]
    public void The_same_items_give_the_same_bytes() => Assert.Equal(Write(Calibration), Write(Calibration));

    [Fact]
    public void An_event_keeps_its_name_when_its_day_moves()
    {
        var later = Calibration with { First = new(2028, 2, 9), Last = new(2028, 2, 9) };
        Assert.Equal("calibration.bridge-1@Saltmarsh-Point", Assert.Single(CalendarText.Events(Write(Calibration)))["UID"]);
        Assert.Equal("calibration.bridge-1@Saltmarsh-Point", Assert.Single(CalendarText.Events(Write(later)))["UID"]);
    }

    [Fact]
    public void No_two_events_have_one_name()
    {
        var wait = new DueItem(Today, Today, DueKind.Wait, "SP-0001", null, "ask after a belt", "waits") { Mark = "2026-10-26" };
        var life = new DueItem(Today, Today, DueKind.Life, "SP-0001", "C1", "measure it", "estimated");
        var names = CalendarText
            .Events(Write(wait, wait, life, life with { Place = "C2" }, life with { Place = null }))
            .Select(read => read["UID"])
            .ToArray();
        Assert.Equal(5, names.Distinct(StringComparer.Ordinal).Count());
    }

    // RFC 5545, 3.1: lines end with CR LF and should not be longer than 75 octets; a fold stands between characters, never inside one.
    [Theory]
    [InlineData("µ")]
    [InlineData("…")]
    [InlineData("𝄞")]
    [InlineData("a")]
    [InlineData("aµ…𝄞,;\\")]
    public void Long_text_is_folded_at_75_octets_and_read_back_whole(string unit)
    {
        var what = string.Concat(Enumerable.Repeat(unit, 200));
        var file = Write(Calibration with { What = what });
        foreach (var line in CalendarText.Lines(file))
        {
            Assert.InRange(line.Length, 0, 75);
            Assert.DoesNotContain('\uFFFD', Encoding.UTF8.GetString(line));
        }

        Assert.Equal("bridge-1: " + what, Assert.Single(CalendarText.Events(file))["SUMMARY"]);
    }

    [Fact]
    public void Text_of_a_record_cannot_end_a_line_and_begin_an_event_of_its_own()
    {
        const string hostile = "belt\r\nEND:VEVENT\r\nBEGIN:VEVENT\r\nSUMMARY:pay here\u202E";
        var read = Assert.Single(CalendarText.Events(Write(Calibration with { What = hostile, Whom = "bridge\n-1", Place = "C:1" })));
        Assert.DoesNotContain('\n', read["SUMMARY"]);
        Assert.DoesNotContain('\u202E', read["SUMMARY"]);
        Assert.Equal("calibration.bridge_0A_-1.C_3A_1@Saltmarsh-Point", read["UID"]);
    }

    [Fact]
    public void A_span_of_days_stands_on_its_first_and_tells_the_rest()
    {
        var read = Assert.Single(
            CalendarText.Events(
                Write(new DueItem(new(2027, 8, 30), new(2035, 11, 17), DueKind.Life, "SP-0011", "C1", "measure it", "estimated"))
            )
        );
        Assert.Equal("20270830", read["DTSTART;VALUE=DATE"]);
        Assert.Equal("20270831", read["DTEND;VALUE=DATE"]);
        Assert.Equal("2027-08-30 … 2035-11-17: estimated", read["DESCRIPTION"]);
    }

    [Fact]
    public void A_year_without_dates_is_still_a_calendar()
    {
        var file = Encoding.UTF8.GetString(Write());
        Assert.StartsWith("BEGIN:VCALENDAR\r\n", file, StringComparison.Ordinal);
        Assert.Contains("\r\nVERSION:2.0\r\n", file, StringComparison.Ordinal);
        Assert.Contains("PRODID:-//Ohmstead//The year ahead//EN\r\n", file, StringComparison.Ordinal);
        Assert.EndsWith("END:VCALENDAR\r\n", file, StringComparison.Ordinal);
    }

    // A library that others read calendars with gets back what was written.
    [Theory]
    [InlineData("measure it", "estimated")]
    [InlineData("ask after a belt, a pen; a \\ and a \"thing\"", "waits: 3 \\, 4 \\; 5\\n")]
    [InlineData("", "once")]
    [InlineData("µ…𝄞:;,", "DTSTART:20270209")]
    public void A_library_reads_back_what_was_written(string what, string why)
    {
        var file = Encoding.UTF8.GetString(Write(Calibration with { What = what, Why = why }));
        var read = Assert.Single(Ical.Net.Calendar.Load(file)!.Events);
        Assert.Equal($"bridge-1: {what}", read.Summary);
        Assert.Equal(why, read.Description);
        Assert.Equal(["calibration"], read.Categories);
        Assert.Equal("calibration.bridge-1@Saltmarsh-Point", read.Uid);
        Assert.Equal((Calibration.First, false), (read.Start!.Date, read.Start.HasTime));
        Assert.Equal(Calibration.First.AddDays(1), read.End!.Date);
        Assert.Equal("TRANSPARENT", read.Transparency);
    }

    private static byte[] Write(params DueItem[] items)
    {
        using var buffer = new PageBuffer();
        AheadCalendar.Write(buffer, "Saltmarsh Point", items, Today);
        return buffer.Written.ToArray();
    }
}
