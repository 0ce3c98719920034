using System.Collections.Frozen;
using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.History;
using Ohmstead.Collections;
using Ohmstead.Records.Editing;
using Ohmstead.Records.Editing.Edits;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Nodes;
using Ohmstead.Records.Shapes;
using Ohmstead.Records.Text;
using Ohmstead.Running;

namespace Ohmstead.Writing;

/// <summary>Puts one entry of the bench into the record of its board, after it was judged and before anything is written if it cannot be
/// right.</summary>
/// <param name="terminal">Where it is told.</param>
/// <param name="run">How records are read and judged.</param>
internal sealed class BenchEntry(Terminal terminal, RunOptions run)
{
    // A slip that a person makes with the unit; written only when they say they are sure.
    private static readonly FrozenSet<string> Slips = FrozenSet.Create(StringComparer.Ordinal, "reading-far-from-marking");

    // What is written all the same, and told: the verdict does not say it.
    private const string Calibration = "calibration-expired";

    // What is entered late says something of then; what it does to the board of today is told beside it.
    private bool isLate;

    /// <summary>What is asked of a person before the last entry, which was held back, is written all the same; null when nothing
    /// is.</summary>
    public string? Question { get; private set; }

    /// <summary>The board as it is after the last entry that was written; null before.</summary>
    public FoundBoard? After { get; private set; }

    /// <summary>True to tell verdicts alone, as in a row of readings.</summary>
    public bool IsBrief { get; init; }

    /// <summary>False where it was told already, before it was written.</summary>
    public bool IsTold { get; init; } = true;

    /// <summary>What is done to the entry, in a word, and what would be.</summary>
    public (string Is, string WouldBe) Done { get; init; } = ("added", "would add");

    /// <summary>Enters.</summary>
    /// <param name="board">The board.</param>
    /// <param name="who">The day and who works, for a visit that is new.</param>
    /// <param name="key">The list of the visit.</param>
    /// <param name="item">The entry as one line of YAML, given the keys of the visit it joins.</param>
    /// <param name="isSure">True to write what looks like a slip.</param>
    /// <param name="isTrial">True to show what would be written, and write nothing.</param>
    /// <returns>The exit code.</returns>
    public int Add(
        FoundBoard board,
        VisitHead who,
        string key,
        Func<IReadOnlyDictionary<string, string>, string> item,
        bool isSure,
        bool isTrial
    ) => Change(board, isSure, isTrial, editor =>
        {
            isLate = who.IsLate;
            if (isLate)
            {
                return LateEntry.Into(editor, who, key, [item], isSure ? null : Twice);
            }

            // The entry leaves out what its visit says already. What comes after something of its place that stands further down begins a
            // second visit of the day.
            var last = editor.LastVisit is { } visit && who.IsOf(visit) ? visit : null;
            if (last is not null && item(last) is var joined && editor.MayJoinLastVisit(key, joined))
            {
                return (
                    isSure || !editor.LastVisitHolds(key, joined)
                        ? editor.AppendToVisit(FileShapes.Board, who.IsOf, who.Keys, key, joined)
                        : Twice($"the visit of {who.Date}", joined),
                    joined
                );
            }

            var head = who with { Instrument = who.Instrument ?? last?.GetValueOrDefault("instrument") };
            var line = item(head.Keys.ToDictionary(entry => entry.Key, entry => entry.Value, StringComparer.Ordinal));
            return (editor.AppendToVisit(FileShapes.Board, _ => false, head.Keys, key, line), line);
        });

    /// <summary>Enters several entries of one list, all or none, each a line of its own.</summary>
    /// <param name="board">The board.</param>
    /// <param name="who">The day and who works, for a visit that is new.</param>
    /// <param name="key">The list of the visit.</param>
    /// <param name="items">The entries, each as one line of YAML.</param>
    /// <param name="isSure">True to write what stands there already.</param>
    /// <param name="isTrial">True to show what would be written, and write nothing.</param>
    /// <returns>The exit code.</returns>
    public int AddAll(FoundBoard board, VisitHead who, string key, IReadOnlyList<string> items, bool isSure, bool isTrial) =>
        Change(board, isSure, isTrial, editor =>
        {
            isLate = who.IsLate;
            if (isLate)
            {
                return LateEntry.Into(
                    editor,
                    who,
                    key,
                    [.. items.Select(item => new Func<IReadOnlyDictionary<string, string>, string>(_ => item))],
                    isSure ? null : Twice
                );
            }

            var bench = new BenchSplicer(editor);
            var last = bench.Visits.Count > 0 && who.IsOf(bench.Visits[^1].Values) ? bench.Visits[^1] : null;
            if (last is not null && !isSure && items.FirstOrDefault(item => bench.Holds(last.Index, key, item)) is { } held)
            {
                return (Twice($"the visit of {who.Date}", held), held);
            }

            // They happened together: where one may not join the visit that is there, all begin the next one of the day.
            var joined = last is not null && items.All(item => bench.MayJoin(last.Index, key, item)) ? last : null;
            var head = who with { Instrument = who.Instrument ?? last?.Values.GetValueOrDefault("instrument") };
            var put = bench.Put([new(who.Date, joined?.Index, joined is null ? head.Keys : [], [.. items.Select(item => (key, item))])]);
            return (new(put.Text, put.Refusal), string.Join('\n', items));
        });

    /// <summary>Holds back what stands already, word for word: it may have been entered by a try whose answer never came.</summary>
    /// <param name="where">Where it stands.</param>
    /// <param name="line">The entry.</param>
    public EditOutcome Twice(string where, string line)
    {
        Question = "entered already; is it a second one?";
        return new(
            null,
            new(
                $"{where} has this entry already, word for word: {line}",
                IsBrief ? "nothing was written" : "nothing was written; --sure enters it a second time"
            )
        );
    }

    /// <summary>Changes the record by any one splice, judged as an entry is.</summary>
    public int Change(FoundBoard board, bool isSure, bool isTrial, Func<RecordEditor, (EditOutcome Outcome, string Line)> change)
    {
        var path = board.Board.Board.Path;
        Question = null;
        var done = RecordFile.Change(board.Files.Root, path, terminal.Error, text =>
            Judged(board, text, isSure, change) is { } entry ? (isTrial ? null : entry.After, entry) : ((string?)null, (Judgement?)null)
        );
        if (done is null)
        {
            return ExitCode.Findings;
        }

        // What is said is what stands on the disk.
        EntryTold.Tell(terminal, board.Files.Root, path, isTrial ? null : (done.Before, done.After), () =>
            Tell(path, board, done, isTrial)
        );
        After = isTrial || done.Board is null ? After : board with { Board = done.Board, Findings = done.Result.Findings };
        return ExitCode.Clean;
    }

    private Judgement? Judged(FoundBoard board, string text, bool isSure, Func<RecordEditor, (EditOutcome Outcome, string Line)> change)
    {
        var path = board.Board.Board.Path;
        if (Splice.Try(terminal, path, text, FileForm.Markdown, change) is not var (changed, line, entry))
        {
            return null;
        }

        JudgedBoard? after = null;
        var result = new CollectionRun(
            board.Files,
            run with
            {
                Instead = new Dictionary<string, string>(StringComparer.Ordinal) { [path] = changed },
            }
        ).Run(seen: assessment => after = assessment);
        var against = result
            .Findings.Where(finding =>
                finding.Place.Path == path
                && (finding.Severity == Severity.Error || Slips.Contains(finding.Check))
                && !WasThere(board, finding)
            )
            .ToArray();
        var added = AddedLines.Between(text, changed);
        foreach (var finding in against)
        {
            JudgedFiles.Tell(terminal, finding, run.Typed, added);
        }

        var isSlip = against.Length > 0 && against.All(finding => Slips.Contains(finding.Check));
        if (against.Any(finding => !(isSure && Slips.Contains(finding.Check))))
        {
            Question = isSlip ? "a slip of the unit?" : null;
            terminal.Error.WriteLine("nothing was written" + (isSlip && !IsBrief ? "; --sure writes it all the same" : string.Empty));
            return null;
        }

        return new(text, changed, line, entry, after, result);
    }

    private void Tell(string path, FoundBoard before, Judgement done, bool isTrial)
    {
        if (!IsBrief)
        {
            var did = $"{path}:{AddedLines.Between(done.Before, done.After).First}: {(isTrial ? Done.WouldBe : Done.Is)} ";
            foreach (var line in done.Line.Split('\n'))
            {
                terminal.Out.WriteLine(Printable.Escape(did + line));
                did = "  and ";
            }
        }

        if (IsTold)
        {
            Verdicts(before, done);
        }
    }

    // Findings of other lines move with the lines; the check and the words stay.
    private static bool WasThere(FoundBoard board, Finding finding) =>
        board.Findings.Any(known => known.Check == finding.Check && known.Message == finding.Message);

    private void Verdicts(FoundBoard before, Judgement done)
    {
        var (board, entry) = (done.Board, done.Entry);
        var verdicts = board?.Readings.FirstOrDefault(reading => reading.Reading.Spot == entry)?.Verdicts
            ?? board?.Proofs.FirstOrDefault(proof => proof.Proof.Spot == entry)?.Verdicts;
        foreach (var verdict in verdicts ?? [])
        {
            terminal.Out.WriteLine(VerdictColour.For(terminal.Colours, verdict.Outcome)(Printable.Escape("  " + verdict.Why)));
        }

        foreach (var finding in done.Result.Findings.Where(one => one.Check == Calibration && !WasThere(before, one)))
        {
            terminal.Out.WriteLine(Printable.Escape($"  {finding.Message}"));
        }

        if (board is not null && (!IsBrief || isLate))
        {
            var (was, now) = (Told(before.Board), Told(board));
            if (isLate && was != now)
            {
                terminal.Out.WriteLine(Printable.Escape($"  {board.Board.Id.Value} was: {was}"));
            }

            var still = isLate && was == now ? "still" : "now";
            terminal.Out.WriteLine(Printable.Escape($"  {board.Board.Id.Value} is {still}: {now}"));
        }
    }

    private static string Told(JudgedBoard board) => BoardStates.Told(board.State, board.OverdueSince);

    // An entry that may be written: the text before and after it, the entry and where it stands, the board with it, and the run that
    // judged it.
    private sealed record Judgement(string Before, string After, string Line, Spot Entry, JudgedBoard? Board, RunResult Result);
}

/// <summary>The day of a visit and who works.</summary>
/// <param name="Date">The day, as it is written.</param>
/// <param name="By">Who works, or null.</param>
/// <param name="Instrument">The instrument used, or null.</param>
internal sealed record VisitHead(string Date, string? By, string? Instrument)
{
    /// <summary>True for an entry that is of an earlier day than that on which it is entered.</summary>
    public bool IsLate { get; init; }

    /// <summary>Where in its day a late entry came, where that was said.</summary>
    public CameWhen? Came { get; init; }

    /// <summary>Whether a visit, by its keys and texts, is the one meant: of the same day, and not of somebody else.</summary>
    public bool IsOf(IReadOnlyDictionary<string, string> visit) =>
        visit.GetValueOrDefault("date") == Date && (By is null || !visit.TryGetValue("by", out var by) || by == By);

    /// <summary>The first keys of a new visit.</summary>
    public IReadOnlyList<(string Key, string Value)> Keys =>
        [
            .. new (string Key, string? Value)[] { ("date", Date), ("by", By), ("instrument", Instrument) }
                .Where(entry => entry.Value is not null)
                .Select(entry => (entry.Key, entry.Value!)),
        ];
}
