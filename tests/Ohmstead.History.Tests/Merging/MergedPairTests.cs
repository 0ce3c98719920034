using System.Text;
using System.Text.RegularExpressions;
using Ohmstead.Merging;
using Ohmstead.Records.Merging;

namespace Ohmstead.History.Tests.Merging;

/// <summary>What two people, or three, entered on copies of the demo by the program's own commands, merged: over many seeds.</summary>
public sealed partial class MergedPairTests
{
    private static readonly int Pairs = TestExtent.Times(usual: 24, all: 200, whole: 400);
    private static readonly int Triples = TestExtent.Times(usual: 6, all: 60);

    [Fact]
    public void Of_what_two_people_entered_nothing_is_lost_whoever_is_merged_first()
    {
        using var people = new DemoPeople();
        var demo = people.Now();
        var (pairs, conflicts, byText, files) = (0, 0, 0, 0);
        var why = new List<string>();
        for (var seed = 1; seed <= Pairs; seed++)
        {
            var (_, before, one, other) = people.Pair(demo, seed);
            var (isLeft, isLeftByText) = (false, false);
            foreach (var path in Changed(before, one).Intersect(Changed(before, other), StringComparer.Ordinal))
            {
                files++;
                var merged = Holds(path, before[path], one[path], other[path], $"pair {seed}, {path}");
                isLeft |= merged.Conflicts > 0;
                why.AddRange(merged.Reasons.Select(reason => $"{seed}: {reason}"));
                isLeftByText |= TextMerge.Conflicts(before[path], one[path], other[path]);
            }

            pairs++;
            conflicts += isLeft ? 1 : 0;
            byText += isLeftByText ? 1 : 0;
        }

        TestContext.Current.TestOutputHelper?.WriteLine(
            $"{pairs} pairs, {files} files that both changed: {conflicts} pairs with a conflict; by lines {byText}\n"
                + $"{string.Join(", ", people.Done.Select(done => $"{done.Key} {done.Value}"))}\n{string.Join('\n', why)}"
        );
        Assert.True(people.Done.Count >= TestExtent.Times(usual: 7, all: 12), string.Join(", ", people.Done.Keys));
        Assert.True(
            conflicts * 10 <= pairs,
            $"{conflicts} of {pairs} pairs end in a conflict (by lines {byText}):\n{string.Join('\n', why)}"
        );
    }

    [Fact]
    public void What_three_people_entered_is_the_same_in_whatever_order_they_are_merged()
    {
        using var people = new DemoPeople();
        var demo = people.Now();
        var tried = 0;
        for (var seed = 1; seed <= Triples; seed++)
        {
            var random = new Random(70_000 + seed);
            var board = DemoPeople.Boards[random.Next(DemoPeople.Boards.Count)];
            var texts = new List<Dictionary<string, string>>();
            foreach (var by in new[] { "RK", "MT", "TS" })
            {
                people.Restore(demo);
                people.Work(random, by, board, DemoPeople.AllDays[texts.Count * 2], count: 2);
                texts.Add(people.Now());
            }

            people.Restore(demo);
            foreach (var path in texts.SelectMany(text => Changed(demo, text)).Distinct(StringComparer.Ordinal))
            {
                int[][] orders =
                [
                    [0, 1, 2],
                    [0, 2, 1],
                    [1, 0, 2],
                    [1, 2, 0],
                    [2, 0, 1],
                    [2, 1, 0],
                ];
                var ends = orders.Select(order => InTurn(path, demo[path], [.. order.Select(at => texts[at][path])])).ToArray();
                if (ends.All(end => end is not null))
                {
                    tried++;
                    Assert.All(ends, end => Assert.Equal(ends[0], end));
                }
            }
        }

        Assert.True(tried * 2 > Triples, $"only {tried} of {Triples} triples had no conflict in any order");
    }

    private static IReadOnlyList<string>? InTurn(string path, string before, string[] texts)
    {
        var text = texts[0];
        foreach (var next in texts.Skip(1))
        {
            var merged = Merge(path, before, text, next);
            if (merged.Conflicts > 0)
            {
                return null;
            }

            text = TextOf(merged);
        }

        return SaidEntries.Of(path, text);
    }

    // What holds for every merge: nothing lost, nothing made up, the same from both sides, nothing more to do.
    private static MergeOutcome Holds(string path, string before, string one, string other, string what)
    {
        var (merged, mirrored) = (Merge(path, before, one, other), Merge(path, before, other, one));
        Assert.True(merged.Conflicts == mirrored.Conflicts, what);
        Assert.False(merged.IsByLines, $"{what}: {string.Join("; ", merged.Reasons)}");
        Assert.Equal(merged.Conflicts > 0, !merged.Reasons.IsEmpty);
        Assert.Equal(one, TextOf(Merge(path, before, one, one)));
        Assert.Equal(one, TextOf(Merge(path, before, one, before)));
        Assert.Equal(other, TextOf(Merge(path, before, before, other)));

        var (old, first, second) = (SaidEntries.Of(path, before), SaidEntries.Of(path, one), SaidEntries.Of(path, other));
        var wanted = Plus(first, second, old);
        if (merged.Conflicts == 0)
        {
            var said = SaidEntries.Of(path, TextOf(merged));
            Assert.Equal(said, SaidEntries.Of(path, TextOf(mirrored)));
            Assert.Equal(said, SaidEntries.Of(path, TextOf(Merge(path, before, TextOf(merged), one))));
            Assert.Equal((what, string.Join('\n', wanted)), (what, string.Join('\n', said)));
            return merged;
        }

        // Both texts that a person may take can be read, and together they hold all.
        var (above, below) = (
            SaidEntries.Of(path, Taken(TextOf(merged), isFirst: true)),
            SaidEntries.Of(path, Taken(TextOf(merged), isFirst: false))
        );
        Assert.Empty(wanted.Except(above).Except(below));
        Assert.Empty(above.Concat(below).Except(first).Except(second));
        return merged;
    }

    // What was there before and is there on both sides, and what either side has beyond it.
    private static List<string> Plus(IReadOnlyList<string> first, IReadOnlyList<string> second, IReadOnlyList<string> old)
    {
        var (gone, came) = (old.Except(first).Union(old.Except(second)), first.Except(old).Union(second.Except(old)));
        var wanted = old.Except(gone).Union(came).ToList();
        wanted.Sort(StringComparer.Ordinal);
        return wanted;
    }

    private static IEnumerable<string> Changed(Dictionary<string, string> before, Dictionary<string, string> now) =>
        before.Keys.Where(path => before[path] != now[path]).Order(StringComparer.Ordinal);

    private static MergeOutcome Merge(string path, string before, string one, string other) =>
        RecordMerge.Merge(
            SettledFile.Of(path, SettledFile.UsualSize)!,
            Encoding.UTF8.GetBytes(before),
            Encoding.UTF8.GetBytes(one),
            Encoding.UTF8.GetBytes(other)
        )!;

    private static string TextOf(MergeOutcome outcome) => Encoding.UTF8.GetString(outcome.Content.Span);

    private static string Taken(string text, bool isFirst) => Conflict().Replace(text, isFirst ? "${first}" : "${second}");

    [GeneratedRegex(
        "^<<<<<<< [^\n]*\n(?<first>.*?)^=======\n(?<second>.*?)^>>>>>>> [^\n]*\n",
        RegexOptions.Multiline | RegexOptions.Singleline
    )]
    private static partial Regex Conflict();
}
