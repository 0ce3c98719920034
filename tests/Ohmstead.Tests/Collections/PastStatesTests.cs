using System.Collections.Immutable;
using System.Text.Json;
using Ohmstead.Assessment.Years;
using Ohmstead.Collections;
using Ohmstead.Records.Nodes;
using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Collections;

/// <summary>A collection counted on past days is what <c>boards --on</c> tells of each of them.</summary>
public sealed class PastStatesTests
{
    private static readonly DateOnly Today = new(2026, 11, 25);

    [Fact]
    public void Each_day_counts_what_the_boards_of_that_day_are()
    {
        var points = Count(CollectionCopy.Untouched);
        Assert.True(points.Length >= 7, "the demo has a past");
        Assert.NotEqual(0, points[0].Boards);
        AssertCounts(CollectionCopy.Untouched, points);
    }

    [Fact]
    public void What_all_boards_together_show_counts_on_the_day_on_which_it_showed()
    {
        // Of L-018 more pieces were fitted than came, from the spring on; each board that took some is not fit to run.
        using var copy = CollectionCopy.Make();
        var lines = copy.Read("stock.yaml").Split('\n');
        var at = Array.FindIndex(lines, line => line.Contains("lot: L-018", StringComparison.Ordinal));
        var quantity = Array.FindIndex(lines, at, line => line.Contains("quantity: ", StringComparison.Ordinal));
        lines[quantity] = System.Text.RegularExpressions.Regex.Replace(lines[quantity], "quantity: [0-9]+", "quantity: 1");
        copy.Write("stock.yaml", string.Join('\n', lines));
        var points = Count(copy.Root);
        AssertCounts(copy.Root, points);
        Assert.NotEqual(Count(CollectionCopy.Untouched).Select(point => point.Fit), points.Select(point => point.Fit));
    }

    [Fact]
    public void What_a_board_takes_counts_also_where_its_own_state_stays_what_it_was()
    {
        // A fault stands on SP-0010 before and after it took more than were left, and SP-0007 is held back from then on.
        using var copy = CollectionCopy.Make();
        var work = string.Concat(Enumerable.Repeat("      - { part: C9, did: replaced, lot: L-018, polarity: schematic }\n", 3));
        var board = copy.Read("boards/SP-0010.md");
        copy.Write(
            "boards/SP-0010.md",
            board.Replace("bench:\n", "bench:\n  - date: 2026-11-24\n    by: RK\n    work:\n" + work, StringComparison.Ordinal)
        );
        var (was, points) = (Count(CollectionCopy.Untouched), Count(copy.Root));
        AssertCounts(copy.Root, points);
        Assert.Equal((was[^2].Fit, was[^1].Fit - 1), (points[^2].Fit, points[^1].Fit));
    }

    [Fact]
    public void A_visit_on_the_last_day_of_a_quarter_belongs_to_that_quarter_alone()
    {
        using var copy = CollectionCopy.Empty();
        copy.Write(
            "boards/SP-0001.md",
            "---\nboard: SP-0001\ntitle: a lamp\nbench:\n  - { date: 2026-06-30, by: RK }\n  - { date: 2026-07-01, by: RK }\n---\n"
        );
        Assert.Equal(
            [("2026-06-30", 1), ("2026-09-30", 1), ("2026-11-25", 0)],
            Count(copy.Root).Select(point => (point.Day.ToString("yyyy-MM-dd", null), point.Work.Visits)).TakeLast(3)
        );
    }

    [Fact]
    public void Work_is_counted_once_and_all_of_it()
    {
        var points = Count(CollectionCopy.Untouched);
        var files = Directory.EnumerateFiles(Path.Combine(CollectionCopy.Untouched, "boards"), "*.md").Select(File.ReadAllText).ToArray();
        var visits = files.Sum(text => text.Split("\n  - date: ").Length - 1);
        Assert.Equal(visits, points.Sum(point => point.Work.Visits));
        Assert.All(points, point => Assert.InRange(point.Fit, 0, point.Boards));
    }

    [Fact]
    public void The_first_page_draws_it_and_tells_the_same_in_a_table()
    {
        using var folder = CollectionCopy.Empty();
        var pages = Path.Combine(folder.Root, "pages");
        Assert.Equal(0, Run.Of("report", CollectionCopy.Untouched, "--to", pages, "--as-of", "2026-11-25").Exit);
        var page = File.ReadAllText(Path.Combine(pages, "index.html"));
        var section = page[page.IndexOf("Through the years", StringComparison.Ordinal)..];
        Assert.Contains("13 of 20 boards fit to run", section, StringComparison.Ordinal);
        foreach (var point in Count(CollectionCopy.Untouched))
        {
            Assert.Contains(point.Day.ToString("yyyy-MM-dd", null), section, StringComparison.Ordinal);
        }
    }

    private static void AssertCounts(string root, ImmutableArray<PastPoint> points)
    {
        foreach (var point in points)
        {
            var day = point.Day.ToString("yyyy-MM-dd", null);
            var boards = JsonDocument
                .Parse(Run.Of("boards", "--in", root, "--on", day, "--form", "json").Out)
                .RootElement.GetProperty("boards");
            var fit = boards.EnumerateArray().Count(board => board.GetProperty("state").GetString() == "fit to run");
            Assert.Equal((day, boards.GetArrayLength(), fit), (day, point.Boards, point.Fit));
        }
    }

    private static ImmutableArray<PastPoint> Count(string root)
    {
        var files = CollectionFolder.Open(root);
        var options = new RunOptions(Today, IsThorough: false, Workers: 2, ReadingLimits.Usual);
        var past = new PastStates(files, options, PastDays.Until(Today));
        _ = new CollectionRun(files, options).Run(recordFor: past.ForWorker);
        return past.Count();
    }
}
