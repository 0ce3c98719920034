using System.Collections.Immutable;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Buying;
using Ohmstead.Assessment.Checks;
using Ohmstead.Assessment.History;
using Ohmstead.Assessment.Verdicts;
using Ohmstead.Collections;
using Ohmstead.Electronics;
using Ohmstead.Records.Findings;

namespace Ohmstead.History.Tests.Comparing;

/// <summary>One state of a collection, judged by itself as a check or a report judges it; and what two such judgements differ in.</summary>
/// <remarks>Nothing of what compares states is asked, so that it can be held against this.</remarks>
internal sealed record Judgement(ImmutableSortedDictionary<string, JudgedBoard> Boards, ImmutableArray<Finding> Findings)
{
    /// <summary>How many must be bought, by the words of the part.</summary>
    public required ImmutableSortedDictionary<string, int> ToBuy { get; init; }

    /// <summary>Judges all of it.</summary>
    /// <param name="folder">The collection.</param>
    /// <param name="options">How, and on which day.</param>
    /// <param name="nameOf">What a number of a board stands for; a board that was renumbered is the same.</param>
    public static Judgement Of(CollectionFolder folder, RunOptions options, Func<string, string>? nameOf = null)
    {
        var boards = new Dictionary<string, JudgedBoard>(StringComparer.Ordinal);
        var result = new CollectionRun(folder, options).Run(seen: board =>
            boards[nameOf?.Invoke(board.Board.Id.Value) ?? board.Board.Id.Value] = board
        );
        return new(boards.ToImmutableSortedDictionary(StringComparer.Ordinal), result.Findings)
        {
            ToBuy = BuyingList
                .Compute(result.Workshop, result.Boards, options.Today)
                .ToImmutableSortedDictionary(line => line.What, line => line.ToBuy, StringComparer.Ordinal),
        };
    }

    /// <summary>The boards of which two readings are told apart by their order alone.</summary>
    public IEnumerable<string> WithTwins =>
        Boards.Where(board => Verdicts(board.Value).Keys.Any(name => char.IsAsciiDigit(name[^1]))).Select(board => board.Key);

    public ImmutableSortedDictionary<string, string> DifferingStates(Judgement now) =>
        Boards
            .Keys.Union(now.Boards.Keys, StringComparer.Ordinal)
            .Select(number => (Number: number, Was: State(number), Now: now.State(number)))
            .Where(one => one.Was != one.Now)
            .ToImmutableSortedDictionary(one => one.Number, one => $"{one.Was} -> {one.Now}", StringComparer.Ordinal);

    public string[] DifferingToBuy(Judgement now) =>
        [
            .. ToBuy
                .Keys.Union(now.ToBuy.Keys, StringComparer.Ordinal)
                .Select(what => (What: what, Was: ToBuy.GetValueOrDefault(what), Now: now.ToBuy.GetValueOrDefault(what)))
                .Where(line => line.Was != line.Now)
                .Select(line => $"{line.What}: {line.Was} -> {line.Now}")
                .Order(StringComparer.Ordinal),
        ];

    public string[] DifferingLooks(Judgement now) =>
        [
            .. Both(now)
                .Where(pair => pair.Was.LookAgain != pair.Now.LookAgain)
                .Select(pair => $"{pair.Name} : {Day(pair.Was.LookAgain)} -> {Day(pair.Now.LookAgain)}")
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
                        .Select(one => $"{pair.Name} {after[one.Key].Told}: {one.Value.Outcome} -> {after[one.Key].Outcome}");
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

    private static bool IsOfAll(Finding finding) => CheckCatalogue.Together.Any(check => check.Description.Name == finding.Check);

    private IEnumerable<(string Name, JudgedBoard Was, JudgedBoard Now)> Both(Judgement now) =>
        Boards.Where(pair => now.Boards.ContainsKey(pair.Key)).Select(pair => (pair.Key, pair.Value, now.Boards[pair.Key]));

    private string State(string number) =>
        Boards.TryGetValue(number, out var board) ? BoardStates.Told(board.State, board.OverdueSince) : string.Empty;

    private static string Day(DateOnly? day) => day is { } known ? IsoDate.Text(known) : string.Empty;

    private static Dictionary<string, (string Outcome, string Told)> Verdicts(JudgedBoard board)
    {
        var verdicts = new Dictionary<string, (string, string)>(StringComparer.Ordinal);
        // What was corrected is told by its entry, and not by a verdict.
        foreach (var reading in board.Readings.Where(reading => reading.Corrects is null))
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

        void Add(string of, string day, string state, Verdict verdict)
        {
            var measured = VerdictWords.Describe(verdict.Measured);
            var name = $"{of} {day} {state} {measured}";
            for (var twin = 2; verdicts.ContainsKey(name); twin++)
            {
                name = $"{of} {day} {state} {measured} {twin}";
            }

            verdicts.Add(name, (VerdictWords.Describe(verdict.Outcome), $"{of} {measured} {verdict.Reading.Text} of {day}"));
        }
    }
}
