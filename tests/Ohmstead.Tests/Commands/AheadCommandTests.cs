using System.Globalization;
using System.Text.Json;
using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Commands;

/// <summary>The year ahead of the demo collection, seen on 2026-11-25.</summary>
public sealed class AheadCommandTests
{
    // bridge-1 was calibrated on 2026-02-09 for 12 months; the wait of 2026-11-09 is asked after 30 days later.
    [Fact]
    public void What_falls_due_is_told_in_order_of_date_with_the_reason()
    {
        var run = Ahead();
        Assert.Equal(0, run.Exit);
        Assert.Matches("2027-02-09 +calibration +bridge-1 +have it calibrated\n    calibrated 2026-02-09, valid 12 months\n", run.Out);
        Assert.Matches("2026-12-09 +wait +SP-0008 +ask after X2 capacitor", run.Out);
        Assert.Matches("form again +L-022 +form it again: .*\\(overdue\\)\n", run.Out);
        Assert.Matches("[0-9]+ things fall due by 2027-11-25, [0-9]+ of them overdue\n$", run.Out);
    }

    [Fact]
    public void Every_reason_to_be_due_occurs_in_the_demo_collection() =>
        Assert.Equal(
            ["calibration", "form again", "life", "loan", "look again", "shelf life", "wait"],
            Due(Ahead("--json")).Select(item => item.GetProperty("kind").GetString()!).Distinct().Order(StringComparer.Ordinal)
        );

    [Fact]
    public void The_last_day_can_be_given()
    {
        var items = Due(Ahead("--json", "--until", "2026-12-31"));
        Assert.NotEmpty(items);
        Assert.All(items, item => Assert.True(Day(item, "first") <= new DateOnly(2026, 12, 31)));
    }

    [Fact]
    public void A_day_that_is_none_is_a_wrong_command_line() => Assert.Equal(2, Ahead("--until", "2026-02-30").Exit);

    [Fact]
    public void The_calendar_holds_the_same_as_the_list()
    {
        using var folder = CollectionCopy.Empty();
        var items = Due(Ahead("--json", "--calendar", folder.At("ahead.ics")));
        var events = CalendarText.Events(File.ReadAllBytes(folder.At("ahead.ics")));
        Assert.Equal(
            items.Select(item => Day(item, "first").ToString("yyyyMMdd", CultureInfo.InvariantCulture)).Order(StringComparer.Ordinal),
            events.Select(read => read["DTSTART;VALUE=DATE"]).Order(StringComparer.Ordinal)
        );
        Assert.All(CalendarText.Lines(File.ReadAllBytes(folder.At("ahead.ics"))), line => Assert.InRange(line.Length, 0, 75));
    }

    [Fact]
    public void The_report_has_the_same_calendar_beside_its_page()
    {
        using var folder = CollectionCopy.Empty();
        Run.Of("report", CollectionCopy.Untouched, "--to", folder.At("pages"), "--as-of", "2026-11-25");
        Ahead("--calendar", folder.At("ahead.ics"));
        Assert.Equal(File.ReadAllBytes(folder.At("ahead.ics")), File.ReadAllBytes(folder.At("pages/ahead.ics")));
        Assert.Contains("href=ahead.ics", folder.Read("pages/ahead.html"), StringComparison.Ordinal);
        Assert.Contains("href=ahead.html", folder.Read("pages/index.html"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_record_with_an_error_is_told_since_something_may_be_missing()
    {
        using var copy = CollectionCopy.Make();
        copy.Write("boards/SP-0004.md", copy.Read("boards/SP-0004.md").Replace("441.8 µF", "441.8 mF", StringComparison.Ordinal));
        var run = Run.Of("ahead", copy.Root, "--as-of", "2026-11-25");
        Assert.Equal(1, run.Exit);
        Assert.Contains("ohmstead check", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_folder_that_is_not_there_is_a_wrong_command_line() => Assert.Equal(2, Run.Of("ahead", "nowhere").Exit);

    private static Run Ahead(params string[] words) => Run.Of(["ahead", CollectionCopy.Untouched, "--as-of", "2026-11-25", .. words]);

    private static JsonElement[] Due(Run run)
    {
        using var document = JsonDocument.Parse(run.Out);
        return [.. document.RootElement.GetProperty("due").EnumerateArray().Select(item => item.Clone())];
    }

    private static DateOnly Day(JsonElement item, string name) =>
        DateOnly.ParseExact(item.GetProperty(name).GetString()!, "yyyy-MM-dd", CultureInfo.InvariantCulture);
}
