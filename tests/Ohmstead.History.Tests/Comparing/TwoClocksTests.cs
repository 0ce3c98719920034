using System.Text.Json;
using Ohmstead.Collections;
using Ohmstead.Records.Days;
using Ohmstead.Records.Nodes;
using Ohmstead.Tests.Support;

namespace Ohmstead.History.Tests.Comparing;

/// <summary>Two clocks: what had happened at the bench by a day, and what the repository knew of it at the end of a day.</summary>
public sealed class TwoClocksTests
{
    private const string Board = "boards/SP-0007.md";
    private static readonly string Root = CollectionCopy.Untouched;

    [Fact]
    public void On_a_day_nothing_later_has_happened()
    {
        // SP-0007 was proved on 2026-05-09. On 2026-03-01 nothing of that is known, and nothing is in the future.
        var run = Run.Of("why", "SP-0007", "--form", "json", "--in", Root, "--on", "2026-03-01");
        Assert.Equal("a fault stands", JsonDocument.Parse(run.Out).RootElement.GetProperty("state").GetString());
        Assert.DoesNotContain("date-in-future", Run.Of("check", Root, "--on", "2026-03-01").Out, StringComparison.Ordinal);
        Assert.DoesNotContain(
            "2026-05-09",
            Run.Of("why", "SP-0007", "--all", "--in", Root, "--on", "2026-03-01").Out,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_board_that_had_not_come_is_not_there()
    {
        // SP-0007 came on 2026-02-20.
        Assert.Contains(
            "there is no board or lot 'SP-0007'",
            Run.Of("why", "SP-0007", "--in", Root, "--on", "2026-02-19").Error,
            StringComparison.Ordinal
        );
        Assert.Equal(0, Run.Of("why", "SP-0007", "--in", Root, "--on", "2026-02-20").Exit);
    }

    [Fact]
    public void The_last_day_of_the_records_is_the_clock_alone()
    {
        foreach (var command in new[] { "check @", "boards --in @", "why SP-0004 C12 --in @" })
        {
            string[] words = command.Replace("@", Root, StringComparison.Ordinal).Split(' ');
            Assert.Equal(Run.Of([.. words, "--as-of", "2026-11-25"]).Out, Run.Of([.. words, "--on", "2026-11-25"]).Out);
        }
    }

    [Fact]
    public void What_was_read_by_one_day_is_part_of_what_was_read_by_the_next()
    {
        var before = new HashSet<string>(StringComparer.Ordinal);
        foreach (var day in Days())
        {
            var now = Readings(day);
            Assert.Superset(before, now);
            before = now;
        }

        // All of them in the end.
        Assert.Equal(Readings(new(2026, 11, 25)), before);
        Assert.InRange(before.Count, 200, 500);
    }

    [Fact]
    public void An_order_that_came_later_is_still_on_its_way()
    {
        // PO-06 was placed on 2026-05-18 and came on 2026-05-29.
        var day = new RecordsUpTo(new(2026, 5, 28));
        var stock = Load(day).StockFile!;
        Assert.Null(stock.Orders.Single(order => order.Id.Value == "PO-06").Received);
        Assert.DoesNotContain(stock.Orders, order => order.Placed.Value > new DateOnly(2026, 5, 28));
        Assert.NotNull(Load(new(new(2026, 5, 29))).StockFile!.Orders.Single(order => order.Id.Value == "PO-06").Received);
    }

    [Fact]
    public void A_calibration_of_later_is_not_known()
    {
        // bridge-2 missed its round: calibrated 2024-11-04 and not again before 2026-06-22.
        var bridge = Load(new(new(2026, 6, 21))).Instruments["bridge-2"];
        Assert.Equal(new DateOnly(2024, 11, 4), bridge.Calibrations.Max(one => one.Date.Value));
        Assert.Equal(
            new DateOnly(2026, 6, 22),
            Load(new(new(2026, 6, 22))).Instruments["bridge-2"].Calibrations.Max(one => one.Date.Value)
        );
    }

    [Fact]
    public void One_day_is_said_by_one_option()
    {
        var run = Run.Of("check", Root, "--on", "2026-03-01", "--as-of", "2026-03-01");
        Assert.Equal((2, "--on says which day it is; leave --as-of out\n"), (run.Exit, run.Error));
    }

    [Fact]
    public void The_repository_is_asked_what_it_knew()
    {
        using var copy = Twice();
        // The figure was entered wrongly and put right a day later.
        Assert.Contains("31.8 µF", Why(copy, "--known", "2026-11-21"), StringComparison.Ordinal);
        Assert.Contains("41.8 µF", Why(copy, "--known", "2026-11-22"), StringComparison.Ordinal);
        Assert.Contains("41.8 µF", Why(copy), StringComparison.Ordinal);
    }

    [Fact]
    public void Both_clocks_tell_what_was_known_then_of_what_was_done_by_then()
    {
        using var copy = Twice();
        var json = Run.Of("why", "SP-0007", "--form", "json", "--in", copy.Root, "--known", "2026-11-21", "--on", "2026-03-01").Out;
        var verdicts = JsonDocument.Parse(json).RootElement.GetProperty("verdicts").EnumerateArray().ToArray();
        Assert.Contains(verdicts, verdict => verdict.GetProperty("reading").GetString() == "31.8 µF");
        Assert.All(verdicts, verdict => Assert.True(string.CompareOrdinal(verdict.GetProperty("date").GetString(), "2026-03-01") <= 0));
    }

    [Fact]
    public void Before_its_history_begins_nothing_is_known()
    {
        using var copy = Twice();
        var run = Run.Of("check", copy.Root, "--known", "2020-01-01");
        Assert.Equal((3, "the history of this repository begins after 2020-01-01\n"), (run.Exit, run.Error));
    }

    [Fact]
    public void Pages_of_what_was_known_have_its_pictures_and_its_commit()
    {
        using var copy = Twice();
        using var pages = CollectionCopy.Empty();
        Assert.Equal(0, Run.Of("report", copy.Root, "--to", pages.At("then"), "--known", "2026-11-21", "--as-of", "2026-11-25").Exit);
        Assert.Equal(0, Run.Of("report", Root, "--to", pages.At("lying"), "--as-of", "2026-11-25").Exit);
        var then = FilesBelow.Of(pages.At("then")).Keys;
        Assert.Equal(FilesBelow.Of(pages.At("lying")).Keys, then);
        using var asked = ScratchRepository.In(copy.Root);
        var commit = asked.Git("rev-parse", "HEAD~1").Trim();
        Assert.Contains(Directory.GetFiles(pages.At("then"), "*.html"), file =>
            File.ReadAllText(file).Contains(commit, StringComparison.Ordinal)
        );
    }

    // A figure as it was entered on the 20th, and as it was put right on the 22nd.
    private static CollectionCopy Twice()
    {
        var copy = CollectionCopy.Make();
        using var git = ScratchRepository.In(copy.Root);
        git.Git("init", "--quiet");
        git.Commit("as it was entered", "2026-11-20");
        copy.Write(Board, copy.Read(Board).Replace("31.8 µF", "41.8 µF", StringComparison.Ordinal));
        git.Commit("as it was put right", "2026-11-22");
        return copy;
    }

    private static string Why(CollectionCopy copy, params string[] clock) =>
        Run.Of(["why", "SP-0007", "C3", "--in", copy.Root, .. clock]).Out;

    private static Assessment.Workshops.Workshop Load(RecordsUpTo day) =>
        new CollectionRun(CollectionFolder.Open(Root).Only([]), Options(day)).Run().Workshop;

    private static RunOptions Options(RecordsUpTo? day) =>
        new(new(2026, 11, 25), IsThorough: false, Workers: 1, ReadingLimits.Usual) { UpTo = day };

    private static HashSet<string> Readings(DateOnly day)
    {
        var readings = new HashSet<string>(StringComparer.Ordinal);
        new CollectionRun(CollectionFolder.Open(Root), Options(new(day))).Run(seen: board =>
        {
            readings.UnionWith(board.Readings.Select(one => $"{board.Board.Path}:{one.Reading.Spot.Line}"));
            readings.UnionWith(board.Proofs.Select(one => $"{board.Board.Path}:{one.Proof.Spot.Line}"));
        });
        return readings;
    }

    // Every day on which anything was entered, and the days beside it.
    private static IEnumerable<DateOnly> Days()
    {
        var days = new SortedSet<DateOnly>();
        new CollectionRun(CollectionFolder.Open(Root), Options(null)).Run(seen: board =>
            days.UnionWith(board.Visits.SelectMany(visit => new[] { visit.Date.Value.AddDays(-1), visit.Date.Value }))
        );
        return TestExtent.IsAll ? days : days.Where((_, at) => at % 8 == 0).Append(days.Max);
    }
}
