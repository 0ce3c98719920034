using System.Text;
using System.Text.RegularExpressions;
using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Commands;

/// <summary>Three hundred boards move in with their old history: what is urgent is what is told to be urgent, and the rest is
/// quiet.</summary>
public sealed partial class ToldBeforeTests
{
    private const int Count = 300;

    // What can hurt, by the design; what goes on eating copper, by what somebody noted; what somebody has had at the bench since.
    private static readonly string[] Leaking = ["QX-0007", "QX-0120", "QX-0299"];
    private static readonly string[] Spilt = ["QX-0031", "QX-0200"];
    private static readonly string[] Since = ["QX-0050", "QX-0051"];

    private static string[] Urgent => [.. Leaking.Concat(Spilt).Concat(Since).Order(StringComparer.Ordinal)];

    [Fact]
    public void Of_three_hundred_boards_that_moved_in_exactly_the_urgent_ones_are_told_as_urgent()
    {
        using var copy = Moved("told_before: 2026-06-01\n");
        var check = Run.Of("check", copy.Root, "--as-of", "2026-11-25").Out;
        Assert.Contains(
            "300 boards: 293 taken as told, 4 a fault stands, 3 make safe first; 0 errors, 0 warnings",
            check,
            StringComparison.Ordinal
        );
        string[] pressing =
        [
            .. Run.Of("boards", "--in", copy.Root, "--brief", "--as-of", "2026-11-25")
                .Out.Split('\n')
                .TakeWhile(line => !line.Contains("taken as told", StringComparison.Ordinal))
                .Select(line => line[..7]),
        ];
        Assert.Equal(Urgent, pressing.Order(StringComparer.Ordinal));

        // Nothing falls due on the others before a look from that day on, and nothing is bought for them.
        var ahead = Run.Of("ahead", copy.Root, "--as-of", "2026-11-25").Out;
        Assert.Subset(Urgent.ToHashSet(StringComparer.Ordinal), Numbers(ahead));
        Assert.Equal(Since.ToHashSet(StringComparer.Ordinal), Numbers(Run.Of("buy", copy.Root, "--as-of", "2026-11-25").Out));
    }

    [Fact]
    public void The_first_page_lists_what_is_urgent_and_counts_the_rest()
    {
        using var copy = Moved("told_before: 2026-06-01\n");
        Assert.Equal(0, Run.Of("report", copy.Root, "--to", copy.At("pages"), "--as-of", "2026-11-25").Exit);
        var page = copy.Read("pages/index.html");
        var next = page[page.IndexOf("id=s-next", StringComparison.Ordinal)..];
        Assert.Equal(Urgent.ToHashSet(StringComparer.Ordinal), Numbers(next[..next.IndexOf("</section>", StringComparison.Ordinal)]));
        Assert.Contains(
            "0 of 7 boards are fit to run; 3 must be made safe first, a fault stands on 4. Besides, 293 taken as told, which asks for "
                + "nothing and proves nothing.",
            page,
            StringComparison.Ordinal
        );
        Assert.Contains("taken as told", copy.Read("pages/boards/QX-0001.html"), StringComparison.Ordinal);
    }

    [Fact]
    public void Without_the_day_all_of_it_presses_and_taking_in_says_what_would_help()
    {
        using var copy = CollectionCopy.Empty();
        copy.Write("collection.yaml", "collection: Lantern Yard\nlook_every: 24 months\n");
        var run = TakeIn(copy);
        Assert.Contains("'ohmstead told DATE' takes what was done before a day as it was told", run.Out, StringComparison.Ordinal);
        Assert.DoesNotContain("taken as told;", Run.Of("check", copy.Root, "--as-of", "2026-11-25").Out, StringComparison.Ordinal);
        copy.Write("collection.yaml", "collection: Lantern Yard\ntold_before: 2026-06-01\n");
        Assert.DoesNotContain("told_before", TakeIn(copy).Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Its_next_look_is_counted_from_that_day()
    {
        using var copy = Moved("told_before: 2026-06-01\n");
        var due = Run.Of("ahead", copy.Root, "--as-of", "2028-01-25").Out;
        Assert.Contains("2028-06-01", due, StringComparison.Ordinal);
        Assert.Contains("taken as told before 2026-06-01", due, StringComparison.Ordinal);
        Assert.Contains(
            "SP-0007 was: taken as told\n".Replace("SP-0007", "QX-0001", StringComparison.Ordinal),
            Run.Of("work", "QX-0001", "washed", "--on", "2026-06-01", "--in", copy.Root, "--as-of", "2026-11-25").Out,
            StringComparison.Ordinal
        );
    }

    private static CollectionCopy Moved(string day)
    {
        var copy = CollectionCopy.Empty();
        copy.Write("collection.yaml", $"collection: Lantern Yard\nlook_every: 24 months\n{day}");
        var run = TakeIn(copy);
        Assert.Equal((0, string.Empty), (run.Exit, run.Error));
        return copy;
    }

    private static Run TakeIn(CollectionCopy copy)
    {
        copy.Write(
            "designs/old-supply.md",
            "---\ndesign: old-supply\ntitle: Old supply\nhazards:\n  - { hazard: leaking cell, at: G1 }\n---\n"
        );
        var (boards, parts, readings) = (
            new StringBuilder("Board,Title,Design,Came\n"),
            new StringBuilder("Board,Ref,Kind,Value\n"),
            new StringBuilder("Board,Day,By,Ref,Circuit,Frequency,Capacitance,Note\n")
        );
        for (var at = 1; at <= Count; at++)
        {
            var number = $"QX-{at:0000}";
            boards.Append(number).Append(",Unit,").Append(Leaking.Contains(number) ? "old-supply" : string.Empty).Append(",2015-02-03\n");
            for (var part = 1; part <= 4; part++)
            {
                parts.Append(number).Append(",C").Append(part).Append(",aluminium electrolytic,470uF 20% 25V\n");
            }

            // Half of them read far below their mark, long ago: no reason to run today.
            var note = Spilt.Contains(number) ? "leaked onto the board" : string.Empty;
            readings.Append(number).Append(",2016-05-12,RK,C1,out,120 Hz,").Append(at % 2 == 0 ? "210" : "465").Append(" uF,").Append(note);
            readings.Append('\n').Append(number).Append(",2019-05-12,RK,C2,out,120 Hz,460 uF,\n");
            if (Since.Contains(number))
            {
                readings.Append(number).Append(",2026-06-01,RK,C3,out,120 Hz,200 uF,\n");
            }
        }

        copy.Write("boards.csv", boards.ToString());
        copy.Write("parts.csv", parts.ToString());
        copy.Write("readings.csv", readings.ToString());
        return Run.Of(
            "take-in",
            "--in",
            copy.Root,
            "--as-of",
            "2026-11-25",
            "--boards",
            copy.At("boards.csv"),
            "--parts",
            copy.At("parts.csv"),
            "--readings",
            copy.At("readings.csv"),
            "--write"
        );
    }

    private static HashSet<string> Numbers(string text) => [.. Number().Matches(text).Select(match => match.Value)];

    [GeneratedRegex("QX-[0-9]{4}")]
    private static partial Regex Number();
}
