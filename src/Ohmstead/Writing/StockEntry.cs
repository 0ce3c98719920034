using Ohmstead.Assessment.Boards;
using Ohmstead.Assessment.Workshops;
using Ohmstead.Collections;
using Ohmstead.Records.Editing;
using Ohmstead.Records.Editing.Edits;
using Ohmstead.Records.Model;
using Ohmstead.Records.Nodes;
using Ohmstead.Records.Shapes;
using Ohmstead.Records.Text;
using Ohmstead.Running;

namespace Ohmstead.Writing;

/// <summary>Puts one entry into the stock file: judged before it is written, whole or not at all.</summary>
/// <param name="terminal">Where it is told.</param>
/// <param name="run">How records are read and judged.</param>
/// <param name="files">The collection.</param>
internal sealed class StockEntry(Terminal terminal, RunOptions run, CollectionFolder files)
{
    /// <summary>The name of the stock file.</summary>
    public const string Path = "stock.yaml";

    private const string Empty = "# The drawer, the orders, and incoming inspection.\nlots: []\n";

    private const string Slip = "incoming-far-from-marking";

    private readonly RunResult before = new CollectionRun(files.Only([]), run).Run();

    /// <summary>The drawer and the orders as they are.</summary>
    public Workshop Workshop => before.Workshop;

    /// <summary>How many pieces of a lot are left in the drawer, with how many came and how many boards took; null where nobody wrote how
    /// many came.</summary>
    public (int Came, int Fitted, int Left)? Left(Lot lot)
    {
        if (lot.Quantity is not { Value: var came })
        {
            return null;
        }

        var all = new CollectionRun(files, run with { ForPages = false }).Run();
        var fitted = BoardSummary.UseOfLots(all.Boards).Fitted(lot.Id.Value);
        return (came, fitted, came - fitted - Workshop.ScrappedOf(lot.Id.Value));
    }

    /// <summary>Puts an entry into the visit of its day and person: the last one for what is of today, else that day's, or one in
    /// order.</summary>
    /// <param name="editor">The stock file.</param>
    /// <param name="who">The day and who works.</param>
    /// <param name="list">The list of the visit.</param>
    /// <param name="item">The entry as one line of YAML, given the keys of the visit it joins; null where it joins none.</param>
    public static (EditOutcome Outcome, string Line) Into(
        RecordEditor editor,
        VisitHead who,
        string list,
        Func<IReadOnlyDictionary<string, string>?, string> item
    )
    {
        if (!who.IsLate)
        {
            var line = item(editor.LastVisit is { } last && who.IsOf(last) ? last : null);
            return (editor.AppendToVisit(FileShapes.Stock, who.IsOf, who.Keys, list, line), line);
        }

        var bench = new BenchSplicer(editor, ofStock: true);
        var there = new OldDay(bench, who.Date, who.By).There;
        var late = item(there?.Values);
        var put = bench.Put([new(who.Date, there?.Index, there is null ? who.Keys : [], [(list, late)])]);
        return (new(put.Text, put.Refusal) { Entry = put.Spots is [var spot, ..] ? spot : default }, late);
    }

    /// <summary>Changes the file by one splice.</summary>
    /// <param name="isSure">True to write what looks like a slip of the unit.</param>
    /// <param name="isTrial">True to show what would be written, and write nothing.</param>
    /// <param name="change">The splice, and the entry as one line.</param>
    /// <param name="tell">Told what the file says afterwards, and where the entry stands in it.</param>
    /// <returns>The exit code.</returns>
    public int Change(
        bool isSure,
        bool isTrial,
        Func<RecordEditor, (EditOutcome Outcome, string Line)> change,
        Action<Workshop, Spot>? tell = null
    )
    {
        (string Before, string After, string Line, Spot Entry, Workshop Workshop)? done = null;
        (string? Text, int Exit) Judged(string text)
        {
            if (Splice.Try(terminal, Path, text, FileForm.Yaml, change) is not var (changed, line, entry))
            {
                return (null, ExitCode.Findings);
            }

            var after = new CollectionRun(
                files.With(Path).Only([]),
                run with
                {
                    Instead = new Dictionary<string, string>(StringComparer.Ordinal) { [Path] = changed },
                }
            ).Run();
            if (!JudgedFiles.AreSound(terminal, before, after, [Path]))
            {
                return (null, ExitCode.Findings);
            }

            var slip = after.Findings.FirstOrDefault(finding =>
                finding.Check == Slip && before.Findings.All(known => known.Check != Slip || known.Message != finding.Message)
            );
            if (slip is not null && !isSure)
            {
                terminal.Error.WriteLine(Printable.Escape($"{slip.Place}: {slip.Message} [{slip.Check}]"));
                terminal.Error.WriteLine("nothing was written; --sure writes it all the same");
                return (null, ExitCode.Findings);
            }

            done = (text, changed, line, entry, after.Workshop);
            return (isTrial ? null : changed, ExitCode.Clean);
        }

        // The first entry makes the file, whole; one that is not written makes none.
        var isThere = files.Named(Path) is not null;
        var (first, exit) = isThere ? (null, RecordFile.Change(files.Root, Path, terminal.Error, Judged)) : Judged(Empty);
        if (first is not null)
        {
            RecordFile.Create(files.Root, Path, first);
        }

        if (done is var (old, now, line, place, workshop))
        {
            EntryTold.Tell(terminal, files.Root, Path, isTrial ? null : (old, now), () =>
            {
                terminal.Out.WriteLine(Printable.Escape($"{Path}: {(isTrial ? "would add" : "added")} {line}"));
                tell?.Invoke(workshop, place);
            });
        }

        return exit;
    }
}
