using System.Globalization;
using Ohmstead.Collections;
using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Collections;

/// <summary>Today is the bench's own day, whatever the machine's clock is set to.</summary>
public sealed class BenchDayTests
{
    // Offsets as the IANA time zone database has them: Lisbon UTC+0 in winter, New York UTC-5, Auckland UTC+13 in its summer, Kathmandu
    // UTC+5:45; Paris goes from UTC+1 to UTC+2 on 2026-03-29 at 01:00 UTC.
    [Theory]
    [InlineData("2026-11-29T23:59:59Z", "Europe/Lisbon", "2026-11-29", false)]
    [InlineData("2026-11-30T00:00:00Z", "Europe/Lisbon", "2026-11-30", false)]
    [InlineData("2026-11-30T04:59:59Z", "America/New_York", "2026-11-29", true)]
    [InlineData("2026-11-30T05:00:00Z", "America/New_York", "2026-11-30", false)]
    [InlineData("2026-11-29T10:59:59Z", "Pacific/Auckland", "2026-11-29", false)]
    [InlineData("2026-11-29T11:00:00Z", "Pacific/Auckland", "2026-11-30", true)]
    [InlineData("2026-11-29T18:15:00Z", "Asia/Kathmandu", "2026-11-30", true)]
    [InlineData("2026-11-29T18:14:59Z", "Asia/Kathmandu", "2026-11-29", false)]
    [InlineData("2026-03-28T22:59:59Z", "Europe/Paris", "2026-03-28", false)]
    [InlineData("2026-03-29T22:00:00Z", "Europe/Paris", "2026-03-30", true)]
    [InlineData("2026-11-30T00:00:00Z", "UTC", "2026-11-30", false)]
    public void The_zone_of_the_collection_says_which_day_it_is(string moment, string zone, string day, bool isTold)
    {
        var at = DateTimeOffset.Parse(moment, CultureInfo.InvariantCulture);
        var today = BenchDay.At(at, zone, TimeZones.Named("Pacific/Honolulu")!);
        Assert.Equal(DateOnly.Parse(day, CultureInfo.InvariantCulture), today.Day);
        Assert.True(today.IsKnown);
        Assert.Equal(isTold ? $"today is {day} ({zone}); in UTC it is {at.UtcDateTime:yyyy-MM-dd}" : null, today.Told);
    }

    [Fact]
    public void Without_one_it_is_the_machine_that_says_it()
    {
        var moment = new DateTimeOffset(2026, 11, 30, 3, 0, 0, TimeSpan.Zero);
        var today = BenchDay.At(moment, null, TimeZones.Named("Pacific/Honolulu")!);
        Assert.Equal(new(2026, 11, 29), today.Day);
        Assert.Equal("today is 2026-11-29 (on this machine's clock); in UTC it is 2026-11-30", today.Told);
    }

    // A name comes from a record, and a machine's zones are files.
    [Theory]
    [InlineData("Europe/Lissabon", "'Europe/Lissabon' is no time zone, 'Europe/Lisbon' is the nearest")]
    [InlineData("Lisbon", "'Lisbon' is no time zone, 'Europe/Lisbon' is the nearest")]
    [InlineData("new york", "'new york' is no time zone, 'America/New_York' is the nearest")]
    [InlineData("../../../etc/passwd", "'../../../etc/passwd' is no time zone; zones are named by region and place, such as Europe/Lisbon")]
    [InlineData("/dev/zero", "'/dev/zero' is no time zone; zones are named by region and place, such as Europe/Lisbon")]
    [InlineData("localtime", "'localtime' is no time zone; zones are named by region and place, such as Europe/Lisbon")]
    [InlineData("right/Europe/Paris", "'right/Europe/Paris' is no time zone, 'Europe/Paris' is the nearest")]
    public void What_is_no_zone_is_told_with_the_nearest(string name, string why)
    {
        Assert.Null(TimeZones.Named(name));
        Assert.Equal(why, TimeZones.WhyNot(name));
        Assert.False(BenchDay.At(DateTimeOffset.UnixEpoch, name, TimeZoneInfo.Utc).IsKnown);
    }

    [Fact]
    public async Task What_check_says_does_not_depend_on_the_machine()
    {
        using var copy = CollectionCopy.Make();
        Say(copy, "America/New_York");
        var told = new List<Run>();
        foreach (var zone in new[] { "Pacific/Auckland", "America/Los_Angeles", "UTC" })
        {
            told.Add(await Child.ShellAsync("$ohmstead check .", copy.Root, ("TZ", zone), Evening));
        }

        Assert.Equal(told[0], told[1]);
        Assert.Equal(told[0], told[2]);
        Assert.Equal("today is 2026-11-24 (America/New_York); in UTC it is 2026-11-25\n", told[0].Error);
    }

    [Fact]
    public async Task One_evening_is_one_visit_though_midnight_passes_in_utc()
    {
        using var copy = CollectionCopy.Make();
        Say(copy, "America/New_York");
        const string enter = "$ohmstead enter SP-0007 {0} --lifted --in . --by RK";
        await Child.ShellAsync(enter.Replace("{0}", "C3 46uF", StringComparison.Ordinal), copy.Root, ("SOURCE_DATE_EPOCH", "1795561200"));
        var late = await Child.ShellAsync(enter.Replace("{0}", "C4 46uF", StringComparison.Ordinal), copy.Root, Evening);
        Assert.Equal((0, "today is 2026-11-24 (America/New_York); in UTC it is 2026-11-25\n"), (late.Exit, late.Error));
        const string visit = """
              - date: 2026-11-24
                by: RK
                readings:
                  - { part: C3, circuit: out, capacitance: 46 µF }
                  - { part: C4, circuit: out, capacitance: 46 µF }
            waiting:

            """;
        Assert.Contains(visit, copy.Read("boards/SP-0007.md"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Under_a_day_that_nobody_knows_nothing_is_written()
    {
        using var copy = CollectionCopy.Make();
        Say(copy, "Europe/Lissabon");
        var was = copy.Read("boards/SP-0007.md");
        var run = await Child.ShellAsync("$ohmstead enter SP-0007 C3 46uF --in .", copy.Root);
        Assert.Equal((2, was), (run.Exit, copy.Read("boards/SP-0007.md")));
        Assert.Equal(
            "'Europe/Lissabon' is no time zone, 'Europe/Lisbon' is the nearest; in UTC it is 2026-11-25\n"
                + "nothing was written, since its day is not known: mend time_zone in collection.yaml, or give --as-of\n",
            run.Error
        );
        var check = Run.Of("check", copy.Root, "--as-of", "2026-11-25");
        Assert.Equal(1, check.Exit);
        Assert.Contains(
            "error: 'Europe/Lissabon' is no time zone, 'Europe/Lisbon' is the nearest [time-zone-unknown]\n",
            check.Out,
            StringComparison.Ordinal
        );
    }

    // 2026-11-25 at 01:30 in UTC, which is 20:30 of the evening before in New York; 1795561200 is half past seven there.
    private static (string Name, string Value) Evening => ("SOURCE_DATE_EPOCH", "1795570200");

    private static void Say(CollectionCopy copy, string zone)
    {
        var text = copy.Read("collection.yaml").Split('\n').Where(line => !line.StartsWith("time_zone:", StringComparison.Ordinal));
        copy.Write("collection.yaml", string.Join('\n', text) + $"time_zone: {zone}\n");
    }
}
