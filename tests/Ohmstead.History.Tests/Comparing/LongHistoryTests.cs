using Ohmstead.Assessment.Changes;
using Ohmstead.Collections;
using Ohmstead.Comparing;
using Ohmstead.Records.Nodes;

namespace Ohmstead.History.Tests.Comparing;

/// <summary>Over a long history of a repository, what is told of any two commits is what judging each by itself differs in.</summary>
public sealed class LongHistoryTests
{
    private static readonly int Commits = TestExtent.Times(usual: 60, all: 500, whole: 2_000);
    private static readonly int Places = TestExtent.Times(usual: 3, all: 10, whole: 400);
    private static readonly int OfEach = TestExtent.Times(usual: 1, all: 5, whole: 100);

    [Fact]
    public void What_is_told_of_two_commits_is_what_two_whole_judgements_differ_in()
    {
        using var history = WrittenHistory.Make(seed: 20_261_130, Commits);
        Assert.Equal(Commits, history.Commits.Count);
        var options = new RunOptions(history.LastDay, IsThorough: false, Workers: 1, ReadingLimits.Usual);
        var judged = new Dictionary<int, Judgement>();
        var differing = 0;
        foreach (var (one, other) in Chosen(history))
        {
            var told = Compare(history, one, other, options);
            if (history.Commits[one] == history.Commits[other])
            {
                Assert.False(told.IsAny);
                continue;
            }

            differing += told.IsAny ? 1 : 0;
            var (before, after) = (Judged(one), Judged(other));
            var pair = $"{one} -> {other}\n";
            Equal(pair, before.DifferingStates(after).Select(state => $"{state.Key}: {state.Value}"), States(told));
            Equal(pair, before.DifferingLooks(after), ToldChanges.Boards(told, ChangeKind.LookAgain, history.FirstNumber));
            Equal(pair, before.DifferingToBuy(after), ToldChanges.ToBuy(told));
            Equal(pair, before.DifferingFindings(after), Settled(ToldChanges.Findings(told)));
            var twins = before.WithTwins.Union(after.WithTwins);
            Equal(
                pair,
                before.DifferingVerdicts(after).Where(line => !twins.Contains(line.Split(' ')[0])),
                ToldChanges.Boards(told, ChangeKind.Verdict, history.FirstNumber).Where(line => !twins.Contains(line.Split(' ')[0]))
            );
            Equal(
                pair,
                ToldChanges.Mirrored(told, history.FirstNumber),
                ToldChanges.Turned(Compare(history, other, one, options), history.FirstNumber)
            );
        }

        TestContext.Current.TestOutputHelper?.WriteLine(
            $"{differing} pairs differ; {string.Join(", ", history.Deeds.CountBy(deed => deed).Select(deed => $"{deed.Key} {deed.Value}"))}"
        );
        Assert.True(differing >= Places, $"{differing} pairs differ");

        Judgement Judged(int at) =>
            judged.TryGetValue(at, out var known)
                ? known
                : judged[at] = Judgement.Of(TextFiles.Open(history.States[at]), options, history.FirstNumber);

        IEnumerable<string> States(CollectionChanges told) =>
            ToldChanges.States(told, history.FirstNumber).Select(state => $"{state.Key}: {state.Value}");
    }

    // Before and after some commits of each kind, where little differs and the rest must be known to be the same. Then some commits spread
    // over all, each with the next of them and any other; and now and then itself. Each is judged once and kept for all its pairs.
    private static IEnumerable<(int One, int Other)> Chosen(WrittenHistory history)
    {
#pragma warning disable CA5394 // Reproducible pairs need no secrecy.
        var random = new Random(1);
        foreach (var deed in history.Deeds.Select((deed, at) => (Deed: deed, At: at)).GroupBy(one => one.Deed, StringComparer.Ordinal))
        {
            int[] all = [.. deed.Select(one => one.At)];
            foreach (var number in TestExtent.Spread(all.Length, OfEach))
            {
                yield return (all[number - 1], all[number - 1] + 1);
            }
        }

        int[] spread = [.. TestExtent.Spread(Commits, Places).Select(number => number - 1)];
        for (var at = 0; at < Places; at++)
        {
            yield return (spread[at], spread[Math.Min(at + 1, Places - 1)]);
            yield return (spread[random.Next(Places)], spread[at]);
        }
#pragma warning restore CA5394
    }

    private static CollectionChanges Compare(WrittenHistory history, int one, int other, RunOptions options)
    {
        Assert.True(new SideOpener(history.Root).Open(history.Commits[one], history.Commits[other]).Is(out var sides, out var why), why);
        using (sides.Was)
        using (sides.Now)
        {
            return new ChangesRun(sides.Was, sides.Now, options, options.Today).Run();
        }
    }

    // Two judgements are held against each other by what is found, and not by where: what one board lost and another has is no difference.
    private static IEnumerable<string> Settled(string[] findings)
    {
        var left = findings.ToList();
        foreach (var gone in findings.Where(finding => finding.StartsWith("gone ", StringComparison.Ordinal)))
        {
            if (left.Remove("new " + gone["gone ".Length..]))
            {
                left.Remove(gone);
            }
        }

        return left;
    }

    private static void Equal(string pair, IEnumerable<string> expected, IEnumerable<string> told) =>
        Assert.Equal(pair + string.Join('\n', expected), pair + string.Join('\n', told));
}
