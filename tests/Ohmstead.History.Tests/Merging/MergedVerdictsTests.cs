using System.Text;
using System.Text.Json;
using Ohmstead.Merging;
using Ohmstead.Records.Merging;
using Ohmstead.Tests.Support;

namespace Ohmstead.History.Tests.Merging;

/// <summary>What a merge alters beyond what either side said is told: a verdict is after it what it was on its side, or 'changes' tells
/// it with its cause; and who took more of a lot than came is named.</summary>
public sealed class MergedVerdictsTests
{
    private const string Today = "2026-11-30";

    // What the first of two people also changed, beside the bench: a design, an instrument, the rule; and the boards that hang on it.
    private static readonly (string Path, string Was, string Now, string[] Boards)[] Shared =
    [
        (
            "designs/teleprinter-line.md",
            "capacitance: 47 µF, tolerance: ±20 %",
            "capacitance: 47 µF, tolerance: ±2 %",
            ["SP-0007", "SP-0008"]
        ),
        ("instruments.yaml", "{ measures: esr, error: 1 %, digits: 3", "{ measures: esr, error: 60 %, digits: 3", ["SP-0001", "SP-0008"]),
        ("collection.yaml", "decision: guarded", "decision: simple", ["SP-0005", "SP-0009"]),
    ];

    [Fact]
    public void A_verdict_is_after_the_merge_what_it_was_on_its_side_or_it_is_told_with_its_cause()
    {
        using var people = new DemoPeople();
        using var one = CollectionCopy.Make();
        using var other = CollectionCopy.Make();
        using var merged = CollectionCopy.Make();
        var demo = people.Now();
        var shared = Shared.ToDictionary(edit => edit.Path, edit => one.Read(edit.Path), StringComparer.Ordinal);
        var (judged, differing, pairs) = (0, 0, 0);
        for (var seed = 1; seed <= TestExtent.Times(usual: 3, all: 40); seed++)
        {
            var pair = people.Pair(demo, 5_000 + seed);
            if (Merge(pair.Before, pair.One, pair.Other) is not { } files)
            {
                continue;
            }

            pairs++;
            var edit = Shared[seed % Shared.Length];
            foreach (var (copy, texts, isEdited) in new[] { (one, pair.One, true), (other, pair.Other, false), (merged, files, true) })
            {
                Put(copy, texts);
                Put(copy, shared);
                if (isEdited)
                {
                    Assert.Contains(edit.Was, shared[edit.Path], StringComparison.Ordinal);
                    copy.Write(edit.Path, shared[edit.Path].Replace(edit.Was, edit.Now, StringComparison.Ordinal));
                }
            }

            string[] boards = [.. edit.Boards.Append(pair.Board).Distinct(StringComparer.Ordinal)];
            var after = Verdicts(merged, boards);
            foreach (var side in new[] { one, other })
            {
                var told = Told(side, merged);
                var entered = Run.Of("changes", side.Root, merged.Root, "--as-of", Today).Out.Split('\n');
                foreach (var (reading, outcome) in Verdicts(side, boards))
                {
                    judged++;
                    if (!after.TryGetValue(reading, out var now))
                    {
                        // What the other corrected counts no more, and that is told as well.
                        Assert.Contains(entered, line => line.Contains(reading.Corrected, StringComparison.Ordinal) && reading.IsIn(line));
                        continue;
                    }

                    if (now != outcome)
                    {
                        differing++;
                        Assert.True(
                            told.Any(change =>
                                change.Board == reading.Board
                                && change.Of.Contains(reading.Figure, StringComparison.Ordinal)
                                && change.Of.Contains(reading.Day, StringComparison.Ordinal)
                                && change is { Kind: "verdict", Because: not "" }
                                && (change.Was, change.Now) == (outcome, now)
                            ),
                            $"pair {seed}: {reading} was {outcome}, is {now}, and is not told:\n{string.Join('\n', told)}"
                        );
                    }
                }
            }
        }

        TestContext.Current.TestOutputHelper?.WriteLine($"{pairs} pairs, {judged} verdicts, {differing} of them others after the merge");
        Assert.True(differing > 0, "no verdict differed, so nothing was asked");
    }

    [Fact]
    public void After_a_merge_in_Git_the_first_parent_tells_what_the_branch_brought_to_readings_that_it_never_saw()
    {
        using var git = ScratchRepository.OfDemo();
        git.Git("checkout", "--quiet", "-b", "narrower");
        git.Write(Shared[0].Path, git.Read(Shared[0].Path).Replace(Shared[0].Was, Shared[0].Now, StringComparison.Ordinal));
        git.Commit("the sheet says 2 %");
        git.Git("checkout", "--quiet", "main");
        var read = Do(git, "2026-11-26", "enter", "SP-0008", "C3", "43.9uF", "120Hz", "--lifted", "--instrument", "bridge-1", "--by", "MT");
        Assert.Contains("capacitance 43.9 µF against 37.6 µF … 56.4 µF", read, StringComparison.Ordinal);
        git.Commit("C3 read again");
        git.Git("merge", "--quiet", "--no-ff", "--no-edit", "narrower");

        var told = Run.Of("changes", "HEAD^1", "HEAD", "--in", git.Root, "--as-of", Today).Out;
        Assert.Contains("verdict  C3 capacitance 43.9 µF of 2026-11-26: was inside, now outside", told, StringComparison.Ordinal);
        Assert.Contains("because of the design: designs/teleprinter-line.md:", told, StringComparison.Ordinal);
        Assert.Contains("tolerance now says ±2 %, and said ±20 %", told, StringComparison.Ordinal);

        // From the other parent the same reading is new, and not one that turned.
        var fromBranch = Run.Of("changes", "HEAD^2", "HEAD", "--in", git.Root, "--as-of", Today).Out;
        Assert.Contains("new reading of C3, 2026-11-26 MT", fromBranch, StringComparison.Ordinal);
        Assert.DoesNotContain("was inside, now outside", fromBranch, StringComparison.Ordinal);
    }

    [Fact]
    public void Who_took_the_last_pieces_of_a_lot_on_two_boards_is_named_after_the_merge()
    {
        // Of L-018 four came, and two sit on SP-0007.
        using var git = ScratchRepository.OfDemo();
        git.Git("checkout", "--quiet", "-b", "rk");
        string[] how = ["--lot", "L-018", "--polarity", "schematic"];
        Do(git, "2026-11-26", ["work", "SP-0008", "replaced", "C3", .. how, "--kept", "bag SP-0008/1", "--by", "RK"]);
        Do(git, "2026-11-26", ["work", "SP-0008", "replaced", "C4", .. how, "--kept", "bag SP-0008/1", "--by", "RK"]);
        Assert.DoesNotContain("lot-overdrawn", Check(git).Out, StringComparison.Ordinal);
        git.Commit("both reservoirs of SP-0008");
        git.Git("checkout", "--quiet", "main");
        Do(git, "2026-11-27", ["work", "SP-0007", "replaced", "C4", .. how, "--kept", "bag SP-0007/9", "--by", "MT"]);
        Assert.DoesNotContain("lot-overdrawn", Check(git).Out, StringComparison.Ordinal);
        git.Commit("C4 of SP-0007 once more");
        git.Git("merge", "--quiet", "--no-ff", "--no-edit", "rk");

        const string Words =
            "of lot L-018 4 came, and 5 were fitted; the last went to SP-0008 C4 (RK, 2026-11-26) and SP-0007 C4 (MT, 2026-11-27)";
        var check = Check(git);
        Assert.Equal(1, check.Exit);
        Assert.Contains(Words, check.Out, StringComparison.Ordinal);

        // The merge itself tells it, from either parent.
        foreach (var parent in new[] { "HEAD^1", "HEAD^2" })
        {
            Assert.Contains(Words, Run.Of("changes", parent, "HEAD", "--in", git.Root, "--as-of", Today).Out, StringComparison.Ordinal);
        }
    }

    private static Dictionary<string, string>? Merge(
        Dictionary<string, string> before,
        Dictionary<string, string> one,
        Dictionary<string, string> other
    )
    {
        var files = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var path in before.Keys)
        {
            var (old, first, second) = (before[path], one[path], other[path]);
            var outcome =
                first == old || second == old
                    ? null
                    : RecordMerge.Merge(SettledFile.Of(path, SettledFile.UsualSize)!, Bytes(old), Bytes(first), Bytes(second));
            if (outcome is { Conflicts: > 0 })
            {
                return null;
            }

            files[path] =
                outcome is not null ? Encoding.UTF8.GetString(outcome.Content.Span)
                : first == old ? second
                : first;
        }

        return files;
    }

    private static byte[] Bytes(string text) => Encoding.UTF8.GetBytes(text);

    private static void Put(CollectionCopy copy, IReadOnlyDictionary<string, string> files)
    {
        foreach (var (path, text) in files)
        {
            copy.Write(path, text);
        }
    }

    // Each figure that was read, by what it is about; of twins by their order.
    private static Dictionary<Figured, string> Verdicts(CollectionCopy copy, IEnumerable<string> boards)
    {
        var verdicts = new Dictionary<Figured, string>();
        foreach (var board in boards)
        {
            var json = JsonDocument.Parse(Run.Of("why", board, "--in", copy.Root, "--as-of", Today, "--form", "json").Out).RootElement;
            foreach (var one in json.GetProperty("verdicts").EnumerateArray())
            {
                string Text(string key) => one.GetProperty(key).GetString()!;
                var figure = $"{Text("at")} {Text("measured")} {Text("reading")}";
                var twin = 1;
                while (!verdicts.TryAdd(new(board, Text("date"), Text("state"), figure, twin), Text("outcome")))
                {
                    twin++;
                }
            }
        }

        return verdicts;
    }

    private static List<Change> Told(CollectionCopy was, CollectionCopy now)
    {
        var text = Run.Of("changes", was.Root, now.Root, "--as-of", Today, "--form", "json").Out;
        return
        [
            .. JsonDocument
                .Parse(text)
                .RootElement.GetProperty("boards")
                .EnumerateArray()
                .SelectMany(board =>
                    board
                        .GetProperty("changes")
                        .EnumerateArray()
                        .Select(change => new Change(
                            board.GetProperty("board").GetString()!,
                            change.GetProperty("kind").GetString()!,
                            change.GetProperty("of").GetString() ?? string.Empty,
                            change.GetProperty("was").GetString(),
                            change.GetProperty("now").GetString(),
                            string.Join(" and ", change.GetProperty("because").EnumerateArray().Select(cause => cause.GetString()))
                        ))
                ),
        ];
    }

    private static string Do(ScratchRepository git, string day, params string[] words)
    {
        var run = Run.Of([.. words, "--in", git.Root, "--as-of", day]);
        Assert.True(run.Exit == 0, $"{string.Join(' ', words)}: {run.Out}{run.Error}");
        return run.Out;
    }

    private static Run Check(ScratchRepository git) => Run.Of("check", git.Root, "--as-of", Today);

    private sealed record Figured(string Board, string Day, string State, string Figure, int Twin)
    {
        /// <summary>What the entry says that corrects it.</summary>
        public string Corrected => $"corrects {Day}";

        /// <summary>Whether a line tells of a new entry about the same place.</summary>
        public bool IsIn(string line) => line.Contains($" {Figure.Split(' ')[0]}, ", StringComparison.Ordinal);
    }

    private sealed record Change(string Board, string Kind, string Of, string? Was, string? Now, string Because);
}
