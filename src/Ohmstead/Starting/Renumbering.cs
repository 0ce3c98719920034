using Ohmstead.Assessment.Boards;
using Ohmstead.Collections;
using Ohmstead.Records.Findings;
using Ohmstead.Running;
using Ohmstead.Writing;
using Ohmstead.Yaml;

namespace Ohmstead.Starting;

/// <summary>Gives a board another number: in its record, in every record that names it, and in the names of files. All of it is judged
/// before anything is written, and all of it is written or nothing.</summary>
/// <param name="terminal">Where it is told.</param>
/// <param name="files">The collection.</param>
/// <param name="run">How records are read and judged.</param>
internal sealed class Renumbering(Terminal terminal, CollectionFolder files, RunOptions run)
{
    private readonly HashSet<string> pictures = new(StringComparer.Ordinal);
    private readonly Dictionary<string, JudgedBoard> before = new(StringComparer.Ordinal);

    /// <summary>Works out what changes; what keeps it from being done is told.</summary>
    /// <param name="number">The number as it is.</param>
    /// <param name="becomes">The number as it shall be.</param>
    /// <returns>The plan, or null with the exit code.</returns>
    public (RenumberingPlan? Plan, int Exit) Prepare(string number, string becomes)
    {
        string[] all = [.. CollectionRun.SharedFiles.Where(name => files.Named(name) is not null), .. files.Designs, .. files.Boards];
        var told = Search(number, all, run, out var touched);
        var known = told.Boards.Where(board => board.Id.Value == number).ToArray();
        if (Refusal(number, becomes, known, told) is { } refusal)
        {
            return (null, Refuse(refusal, null, ExitCode.Usage));
        }

        var own = known[0].Path;
        var record = new PathMove(own, NameFor(own, number, becomes));
        var others = told.Boards.Select(board => board.Id.Value).Where(other => other != number).ToArray();
        var moves = PhotographMoves.Find(files.Root, number, becomes, pictures, others);
        if (
            moves.Append(record).Where(move => move.From != move.To).Select(Fault).FirstOrDefault(fault => fault is not null) is
            { } inTheWay
        )
        {
            return (null, Refuse(inTheWay, "move it away, then give the command again", ExitCode.Findings));
        }

        if (moves.Any(move => PhotographMoves.IsMade(files.Root, move)))
        {
            var aliases = PhotographMoves.Aliases(files.Root, moves, pictures, isBefore: true);
            told = Search(number, all, run with { Moved = aliases }, out touched);
        }

        (string From, string To)[] paths =
        [
            .. moves.Select(move => (move.From, move.To)),
            .. record.From == record.To ? [] : new[] { (Path.GetFileName(record.From), Path.GetFileName(record.To)) },
        ];
        var plan = new RenumberedTexts(terminal, files.Root, run.Today).Splice(new(number, becomes, paths), record, moves, touched);
        return plan is not null && IsSound(plan, told) ? (plan, ExitCode.Clean) : (null, ExitCode.Findings);
    }

    /// <summary>Does it: files move, then the other records are written, then that of the board. A run that is stopped on the way is gone
    /// on with when the same is asked for again.</summary>
    /// <param name="plan">What changes.</param>
    /// <param name="tell">Tells that it is done.</param>
    /// <exception cref="IOException">It could not be; what was done is taken back.</exception>
    public void Do(RenumberingPlan plan, Action tell)
    {
        var done = new Stack<PathMove>();
        try
        {
            foreach (var move in plan.Moves.Append(plan.Record).Where(move => move.From != move.To))
            {
                if (PhotographMoves.Move(files.Root, move))
                {
                    done.Push(move);
                }
            }

            var changes = plan.Changes.Select(change => change with { Path = plan.Then(change.Path) }).ToArray();
            WholeMovement.Write([(files.Root, changes)], terminal.Error, tell);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            if (TakeBack(done) is { } stuck)
            {
                throw new IOException($"{problem.Message}; '{stuck.To}' could not be moved back to '{stuck.From}'", problem);
            }

            throw;
        }
    }

    private PathMove? TakeBack(Stack<PathMove> done)
    {
        PathMove? stuck = null;
        foreach (var move in done)
        {
            try
            {
                PhotographMoves.Move(files.Root, new(move.To, move.From));
            }
            catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
            {
                stuck ??= move;
            }
        }

        return stuck;
    }

    // One reading of the whole collection says who has which number, what is wrong already, and which pictures there are.
    private RunResult Search(string number, string[] all, RunOptions with, out string[] touched)
    {
        var names = new NamesInText([number], [number]);
        var reader = new FileReader(files, NodeReaders.ForWorker(0), run);
        var likely = all.Where(path => reader.Holds(path, names.MayStandIn)).ToHashSet(StringComparer.Ordinal);
        touched = [.. all.Where(likely.Contains)];
        return new CollectionRun(files, with).Run(seen: board =>
        {
            lock (before)
            {
                if (likely.Contains(board.Board.Path))
                {
                    before[board.Board.Path] = board;
                    pictures.UnionWith(board.Board.Bench.SelectMany(visit => visit.Photos).Select(photo => photo.File.Value));
                }
            }
        });
    }

    private string? Refusal(string number, string becomes, BoardSummary[] known, RunResult told)
    {
        if (told.Findings.FirstOrDefault(FileReader.IsPassedOver) is { } closed)
        {
            return $"{closed.Place.Path} cannot be read, so nobody knows whether it names {number}; mend it first";
        }

        if (known.Length > 1)
        {
            return $"{number} is the number of {known[0].Path} and of {known[1].Path}; mend that first";
        }

        if (known.Length == 0)
        {
            return BoardFinder.TellUnread(files, number, told, terminal.Error)
                ? "nothing was written"
                : BoardFinder.Missing(number, told.Boards);
        }

        if (Records.Binding.NameRules.Fault(becomes) is { } fault)
        {
            return $"'{becomes}' cannot be the number of a board: {fault}";
        }

        if (BoardFinder.Formerly(becomes, told.Boards) is { } former)
        {
            return $"{becomes} was the number of {former.Path} before, and a number is never given twice";
        }

        // A run that was stopped has moved the record already.
        IReadOnlyList<KnownBoard> taken =
        [
            .. KnownBoards.In(files).Select(board => board.Path == known[0].Path ? new KnownBoard(number, $"{number}.md") : board),
        ];
        return number == becomes
            ? $"{number} is its number already"
            : KnownBoards.TakenAndFree(becomes, taken, [.. told.Boards.SelectMany(board => board.Formerly).Select(one => one.Value)]);
    }

    private string? Fault(PathMove move) => NameFault(move.To) ?? PhotographMoves.Fault(files.Root, move);

    private static string? NameFault(string path) =>
        path.TrimEnd('/').Split('/').Select(name => Records.Binding.NameRules.FileFault(name)).FirstOrDefault(fault => fault is not null)
            is { } fault
            ? $"'{path}' would be no name on some systems: {fault}"
            : null;

    // A file is named after its board in one of three ways; one that is not keeps its name.
    private static string NameFor(string path, string number, string becomes)
    {
        var name = Path.GetFileNameWithoutExtension(path);
        var small = number.ToLowerInvariant();
        var after =
            name == number ? becomes
            : name == small ? becomes.ToLowerInvariant()
            : name.StartsWith(number + "-", StringComparison.Ordinal) ? becomes + name[number.Length..]
            : name;
        return path[..^(name.Length + ".md".Length)] + after + ".md";
    }

    // The same findings, the same states and the same verdicts, under the new number.
    private bool IsSound(RenumberingPlan plan, RunResult told)
    {
        var after = new Dictionary<string, JudgedBoard>(StringComparer.Ordinal);
        var renamed = new CollectionFolder(files.Root, [.. files.Boards.Select(plan.Then).Order(StringComparer.Ordinal)], files.Designs);
        var result = new CollectionRun(
            renamed,
            run with
            {
                Moved = PhotographMoves.Aliases(files.Root, plan.Moves, pictures, isBefore: false),
                Instead = plan.Changes.ToDictionary(change => plan.Then(change.Path), change => change.After, StringComparer.Ordinal),
            }
        ).Run(seen: board =>
        {
            lock (after)
            {
                after[board.Board.Path] = board;
            }
        });
        var known = told.Findings.Select(finding => Mark(plan, finding)).ToHashSet();
        Finding[] anew = [.. result.Findings.Where(finding => !known.Contains((finding.Place.Path, finding.Check, finding.Message)))];
        foreach (var finding in anew)
        {
            JudgedFiles.Tell(terminal, finding);
        }

        var states = result.Boards.ToDictionary(board => board.Path, board => board.State, StringComparer.Ordinal);
        var difference =
            anew.Length > 0
                ? "the collection would not be as sound as it is"
                : before
                    .Select(pair =>
                        after.GetValueOrDefault(plan.Then(pair.Key)) is { } now ? SameVerdicts.Difference(pair.Value, now) : null
                    )
                    .FirstOrDefault(found => found is not null)
                    ?? told.Boards.Where(board => !states.TryGetValue(plan.Then(board.Path), out var state) || state != board.State)
                        .Select(board => $"the state of {board.Id.Value} would change")
                        .FirstOrDefault();
        return difference is null || Refuse($"{difference}; nothing was written", null, ExitCode.Findings) == ExitCode.Clean;
    }

    private static (string Path, string Check, string Message) Mark(RenumberingPlan plan, Finding finding) =>
        (plan.Then(finding.Place.Path), finding.Check, plan.Names.In(finding.Message));

    private int Refuse(string problem, string? next, int exit)
    {
        terminal.Error.WriteLine(Printable.Escape(problem));
        if (next is not null)
        {
            terminal.Error.WriteLine(Printable.Escape($"  = {next}"));
        }

        return exit;
    }
}
