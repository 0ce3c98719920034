using System.Collections.Immutable;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Changes;
using Ohmstead.Assessment.History;
using Ohmstead.Collections;
using Ohmstead.Comparing;
using Ohmstead.Electronics;
using Ohmstead.Records.Nodes;
using Ohmstead.Tests.Support;

namespace Ohmstead.Tests.Comparing;

/// <summary>Whatever is edited, what is told is the difference between two whole judgements: looking only at what can differ loses
/// nothing.</summary>
public sealed class RandomEditTests
{
    private static readonly DateOnly Today = new(2026, 11, 25);
    private static readonly RunOptions Options = new(Today, IsThorough: false, Workers: 1, ReadingLimits.Usual);

    public static TheoryData<int> Seeds { get; } = [.. Enumerable.Range(1, 200)];

    [Theory]
    [MemberData(nameof(Seeds))]
    public void What_is_told_is_what_two_whole_judgements_differ_in(int seed)
    {
        Assert.SkipUnless(TestExtent.IsAll || seed % 10 == 1, TestExtent.LeftOut);
        using var was = CollectionCopy.Make();
        using var now = CollectionCopy.Make();
        var edits = new Edits(seed);
        edits.Make(now);
        var told = Compare(was, now, isWhole: false);

        Assert.Equal(Lines(Compare(was, now, isWhole: true)), Lines(told));
        var (before, after) = (Judgement.Of(was, Options), Judgement.Of(now, Options));
        Assert.Equal(before.DifferingStates(after), States(told));
        Assert.Equal(before.DifferingLooks(after), Boards(told, ChangeKind.LookAgain));
        Assert.Equal(before.DifferingFindings(after), Findings(told));
        if (!edits.HasMoved)
        {
            Assert.Equal(before.DifferingVerdicts(after), Boards(told, ChangeKind.Verdict));
        }

        // The way back says the same, with was and now in each other's place.
        Assert.Equal(Mirrored(told), Mirrored(Turned(Compare(now, was, isWhole: false))));
    }

    [Fact]
    public void A_state_and_itself_differ_in_nothing()
    {
        using var copy = CollectionCopy.Make();
        Assert.False(Compare(copy, copy, isWhole: false).IsAny);
        Assert.False(Compare(copy, copy, isWhole: true).IsAny);
    }

    private static CollectionChanges Compare(CollectionCopy was, CollectionCopy now, bool isWhole)
    {
        using var before = new ComparedSide("was", CollectionFolder.Open(was.Root), null);
        using var after = new ComparedSide("now", CollectionFolder.Open(now.Root), null);
        return new ChangesRun(before, after, Options, Today) { IsWhole = isWhole }.Run();
    }

    private static string Lines(CollectionChanges changes)
    {
        using var text = new StringWriter { NewLine = "\n" };
        Ohmstead.Output.Changes.ChangesText.Write(text, changes);
        return text.ToString();
    }

    private static ImmutableSortedDictionary<string, string> States(CollectionChanges changes) =>
        changes
            .Boards.Select(board => (board.Number, State: board.Changes.FirstOrDefault(change => change.Kind == ChangeKind.State)))
            .Where(pair => pair.State is not null)
            .ToImmutableSortedDictionary(pair => pair.Number, pair => $"{pair.State!.Was} -> {pair.State.Now}", StringComparer.Ordinal);

    private static string[] Boards(CollectionChanges changes, ChangeKind kind) =>
        [
            .. changes
                .Boards.SelectMany(board =>
                    board
                        .Changes.Where(change => change.Kind == kind)
                        .Select(change => $"{board.Number} {change.Of}: {change.Was} -> {change.Now}")
                )
                .Order(StringComparer.Ordinal),
        ];

    private static string[] Findings(CollectionChanges changes) =>
        [
            .. changes
                .Boards.SelectMany(board => board.Changes.Select(change => (board.Now, Change: change)))
                .Concat(changes.Shared.Select(change => ((string?)null, Change: change)))
                .Where(pair => pair.Change.Kind == ChangeKind.Finding)
                .Select(pair => $"{(pair.Change.Now is null ? "gone" : "new")} {pair.Change.Now ?? pair.Change.Was}")
                .Order(StringComparer.Ordinal),
        ];

    private static IEnumerable<(string? Board, ChangeKind Kind, string? Was, string? Now)> Turned(CollectionChanges changes) =>
        All(changes).Select(one => (one.Board, one.Kind, one.Now, one.Was));

    private static string[] Mirrored(CollectionChanges changes) => Mirrored(All(changes));

    private static string[] Mirrored(IEnumerable<(string? Board, ChangeKind Kind, string? Was, string? Now)> changes) =>
        [.. changes.Select(one => $"{one}").Order(StringComparer.Ordinal)];

    private static IEnumerable<(string? Board, ChangeKind Kind, string? Was, string? Now)> All(CollectionChanges changes) =>
        changes
            .Boards.SelectMany(board => board.Changes.Select(change => ((string?)board.Number, change.Kind, change.Was, change.Now)))
            .Concat(changes.Shared.Select(change => ((string?)null, change.Kind, change.Was, change.Now)));

    private sealed record Judgement(
        ImmutableSortedDictionary<string, JudgedBoard> Boards,
        ImmutableArray<Ohmstead.Records.Findings.Finding> Findings
    )
    {
        public static Judgement Of(CollectionCopy copy, RunOptions options)
        {
            var boards = new Dictionary<string, JudgedBoard>(StringComparer.Ordinal);
            var result = new CollectionRun(CollectionFolder.Open(copy.Root), options).Run(seen: board =>
                boards[board.Board.Id.Value] = board
            );
            return new(boards.ToImmutableSortedDictionary(StringComparer.Ordinal), result.Findings);
        }

        public ImmutableSortedDictionary<string, string> DifferingStates(Judgement now) =>
            Boards
                .Keys.Union(now.Boards.Keys, StringComparer.Ordinal)
                .Select(number => (Number: number, Was: State(number), Now: now.State(number)))
                .Where(one => one.Was != one.Now)
                .ToImmutableSortedDictionary(one => one.Number, one => $"{one.Was} -> {one.Now}", StringComparer.Ordinal);

        public string[] DifferingLooks(Judgement now) =>
            [
                .. Both(now)
                    .Where(pair => pair.Was.LookAgain != pair.Now.LookAgain)
                    .Select(pair => $"{pair.Now.Board.Id.Value} : {Day(pair.Was.LookAgain)} -> {Day(pair.Now.LookAgain)}")
                    .Order(StringComparer.Ordinal),
            ];

        // Readings are told apart by place, day, what was measured, and which of their like they are.
        public string[] DifferingVerdicts(Judgement now) =>
            [
                .. Both(now)
                    .SelectMany(pair =>
                    {
                        var after = Verdicts(pair.Now);
                        return Verdicts(pair.Was)
                            .Where(one => after.TryGetValue(one.Key, out var verdict) && verdict.Outcome != one.Value.Outcome)
                            .Select(one =>
                                $"{pair.Now.Board.Id.Value} {after[one.Key].Told}: {one.Value.Outcome} -> {after[one.Key].Outcome}"
                            );
                    })
                    .Order(StringComparer.Ordinal),
            ];

        public string[] DifferingFindings(Judgement now)
        {
            var (before, after) = (Told(), now.Told());
            return
            [
                .. before
                    .Keys.Union(after.Keys, StringComparer.Ordinal)
                    .SelectMany(told =>
                    {
                        var more = after.GetValueOrDefault(told) - before.GetValueOrDefault(told);
                        return Enumerable.Repeat($"{(more > 0 ? "new" : "gone")} {told}", Math.Abs(more));
                    })
                    .Order(StringComparer.Ordinal),
            ];
        }

        // Those of shared files are told with their path, those of boards with their board.
        private Dictionary<string, int> Told()
        {
            return Findings
                .Select(finding =>
                    (
                        finding.Place.Path.StartsWith("boards/", StringComparison.Ordinal) && !IsOfAll(finding)
                            ? string.Empty
                            : finding.Place.Path + ": "
                    ) + $"{finding.Message} [{finding.Check}]"
                )
                .CountBy(told => told)
                .ToDictionary();
        }

        private static bool IsOfAll(Ohmstead.Records.Findings.Finding finding) =>
            Assessment.Checks.CheckCatalogue.Together.Any(check => check.Description.Name == finding.Check);

        private IEnumerable<(JudgedBoard Was, JudgedBoard Now)> Both(Judgement now) =>
            Boards.Where(pair => now.Boards.ContainsKey(pair.Key)).Select(pair => (pair.Value, now.Boards[pair.Key]));

        private string State(string number) =>
            Boards.TryGetValue(number, out var board) ? BoardStates.Told(board.State, board.OverdueSince) : string.Empty;

        private static string Day(DateOnly? day) => day is { } known ? IsoDate.Text(known) : string.Empty;

        private static Dictionary<string, (string Outcome, string Told)> Verdicts(JudgedBoard board)
        {
            var verdicts = new Dictionary<string, (string, string)>(StringComparer.Ordinal);
            foreach (var reading in board.Readings)
            {
                var of = (reading.Reading.Part ?? reading.Reading.Point ?? reading.Reading.Lot)!.Value;
                foreach (var verdict in reading.Verdicts)
                {
                    Add(of, reading.Visit.Date.Text, reading.Reading.StateWord, verdict);
                }
            }

            foreach (var proof in board.Proofs)
            {
                foreach (var verdict in proof.Verdicts)
                {
                    Add(proof.Proof.Point.Value, proof.Visit.Date.Text, "proof", verdict);
                }
            }

            return verdicts;

            void Add(string of, string day, string state, Assessment.Verdicts.Verdict verdict)
            {
                var measured = Assessment.Verdicts.VerdictWords.Describe(verdict.Measured);
                var name = $"{of} {day} {state} {measured}";
                for (var twin = 2; verdicts.ContainsKey(name); twin++)
                {
                    name = $"{of} {day} {state} {measured} {twin}";
                }

                verdicts.Add(
                    name,
                    (Assessment.Verdicts.VerdictWords.Describe(verdict.Outcome), $"{of} {measured} {verdict.Reading.Text} of {day}")
                );
            }
        }
    }
}
