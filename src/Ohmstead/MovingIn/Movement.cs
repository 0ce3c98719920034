using System.Collections.Frozen;
using System.Globalization;
using Ohmstead.Assessment.Checks;
using Ohmstead.Collections;
using Ohmstead.PartsLists;
using Ohmstead.Records.Editing;
using Ohmstead.Records.Editing.Edits;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Nodes;
using Ohmstead.Records.Shapes;
using Ohmstead.Writing;
using Ohmstead.Yaml;

namespace Ohmstead.MovingIn;

/// <summary>The texts that a collection will have, made out of what was taken of tables: spliced, read again, and judged as a whole before
/// anything is written.</summary>
internal sealed class Movement(CollectionFolder files, RunOptions run, Taker taker, bool proofsLast)
{
    private const string Far = "reading-far-from-marking";
    private const string NoStock = "# The drawer, the orders, and incoming inspection.\nlots: []\n";

    // What check says of words that can be read: history is as it is, and a person may let it stand.
    private static readonly FrozenSet<string> Judged = CheckCatalogue
        .Descriptions.Select(check => check.Name)
        .ToFrozenSet(StringComparer.Ordinal);

    private readonly Dictionary<int, RefusedRow> lotLines = [];

    /// <summary>The records that change, in order of path.</summary>
    public IReadOnlyList<MovedFile> Files { get; private set; } = [];

    /// <summary>Makes all texts; rows that keep one from being made are refused.</summary>
    /// <param name="isSure">Whether what looks like a slip of the unit is taken in.</param>
    public void Make(bool isSure)
    {
        var drafts = taker.Drafts.Where(draft => draft.New is not null || draft.Parts.Count > 0 || draft.Entries.Count > 0).ToArray();
        var plans = new (RefusedRow[] Refused, int There, IReadOnlyList<string> Told)[drafts.Length];
        var next = -1;
        // Each worker has a reader of its own.
        Parallel.For(0, Math.Max(run.Workers, 1), new ParallelOptions { MaxDegreeOfParallelism = Math.Max(run.Workers, 1) }, worker =>
        {
            var reader = NodeReaders.ForWorker(worker);
            for (var at = Interlocked.Increment(ref next); at < drafts.Length; at = Interlocked.Increment(ref next))
            {
                plans[at] = One(drafts[at], reader);
            }
        });
        taker.Refused.AddRange(plans.SelectMany(plan => plan.Refused));
        taker.There += plans.Sum(plan => plan.There);
        taker.Told.AddRange(plans.SelectMany(plan => plan.Told));
        var moved = drafts
            .Where(draft => draft.After is not null && (draft.New is not null || draft.After != draft.Before))
            .Select(draft => new MovedFile(draft.Path, draft.New is null ? draft.Before : null, draft.After!, Told(draft)))
            .ToList();
        if (Stock() is { } stock)
        {
            moved.Add(stock);
        }

        Files = [.. moved.OrderBy(file => file.Path, StringComparer.Ordinal)];
        if (taker.Refused.Count == 0 && Files.Count > 0)
        {
            Judge(drafts, isSure);
        }
    }

    private (RefusedRow[] Refused, int There, IReadOnlyList<string> Told) One(RecordDraft draft, INodeReader reader)
    {
        var text = draft.Before;
        if (draft.Parts.Count > 0)
        {
            var editor = RecordEditor.Open(draft.Path, text, FileForm.Markdown, reader, out _);
            var outcome = editor?.AppendAll(FileShapes.Board, "parts", [.. draft.Parts.Select(part => PartLine.Write(part.Part))]);
            if (outcome?.Text is not { } with)
            {
                var first = draft.Parts[0];
                return ([new(first.Table, first.Part.Line, null, Why(draft, outcome?.Refusal), outcome?.Refusal?.NextStep)], 0, []);
            }

            text = with;
        }

        if (RecordEditor.Open(draft.Path, text, FileForm.Markdown, reader, out _) is not { } opened)
        {
            return (
                [
                    new(
                        (draft.New ?? draft.Entries[0].Cells).Table,
                        (draft.New ?? draft.Entries[0].Cells).Row.Line,
                        null,
                        Why(draft, null),
                        null
                    ),
                ],
                0,
                []
            );
        }

        var plan = new VisitPlan(draft, new BenchSplicer(opened), proofsLast);
        plan.Make();
        if (plan.Refused.Count > 0)
        {
            return ([.. plan.Refused], plan.There, []);
        }

        var put = new BenchSplicer(opened).Put(plan.Visits);
        if (put.Text is not { } after)
        {
            return ([plan.Entries.First().Cells.Refused(null, Why(draft, put.Refusal), put.Refusal!.NextStep)], plan.There, []);
        }

        draft.After = after;
        foreach (var (entry, spot) in plan.Entries.Zip(put.Spots))
        {
            draft.RowsByLine[spot.Line] = entry.Cells.Refused(null, string.Empty, null);
        }

        Locate(draft, reader);
        return ([], plan.There, plan.Told);
    }

    // Where each part stands in the text, so that what is found there is told of its row.
    private static void Locate(RecordDraft draft, INodeReader reader)
    {
        if (draft.Parts.Count == 0)
        {
            return;
        }

        var rows = draft.Parts.ToDictionary(
            part => part.Part.Reference,
            part => new RefusedRow(part.Table, part.Part.Line, null, string.Empty, null),
            StringComparer.Ordinal
        );
        var reading = reader.Read(draft.Path, System.Text.Encoding.UTF8.GetBytes(draft.After!), FileForm.Markdown, ReadingLimits.Usual);
        if (reading.Root?.ValueOf("parts") is SequenceNode list)
        {
            foreach (var item in list.Items.OfType<MappingNode>())
            {
                if (item.ValueOf("ref") is ScalarNode reference && rows.TryGetValue(reference.Text, out var row))
                {
                    draft.RowsByLine[item.Spot.Line] = row;
                }
            }
        }
    }

    private static string Why(RecordDraft draft, EditRefusal? refusal) =>
        $"{draft.Path}: {refusal?.Message ?? "it holds what cannot be read"}";

    private static string Told(RecordDraft draft)
    {
        string Count(int count, string one, string many) =>
            count == 0 ? string.Empty : string.Create(CultureInfo.InvariantCulture, $"{count} {(count == 1 ? one : many)}");
        var entries = draft.RowsByLine.Count - draft.Parts.Count;
        return string.Join(
            ", ",
            new[]
            {
                Count(draft.Parts.Count, "part", "parts"),
                Count(Math.Max(entries, 0), "entry of the bench", "entries of the bench"),
            }.Where(word => word.Length > 0)
        );
    }

    private MovedFile? Stock()
    {
        if (taker.Lots.Count == 0)
        {
            return null;
        }

        var isThere = files.Named(StockEntry.Path) is not null;
        var before = isThere ? RecordFile.Read(files.Root, StockEntry.Path) : NoStock;
        if (RecordEditor.Open(StockEntry.Path, before, FileForm.Yaml, NodeReaders.ForWorker(0), out _) is not { } editor)
        {
            taker.Refused.Add(
                taker.Lots[0].Cells.Refused(null, "stock.yaml holds what cannot be read", "mend it first; 'check' says where")
            );
            return null;
        }

        var known = StockNames(before);
        var come = new List<(string Name, string Item, RowCells Cells)>();
        foreach (var lot in taker.Lots)
        {
            if (!known.Contains(lot.Name))
            {
                come.Add(lot);
            }
            else if (editor.Holds("lots", lot.Item))
            {
                taker.There++;
            }
            else
            {
                taker.Refused.Add(
                    lot.Cells.Refused(
                        "lot",
                        $"there is a lot '{lot.Name}' already, and it says otherwise",
                        "mend the one that is wrong, or write another name"
                    )
                );
            }
        }

        if (come.Count == 0)
        {
            return null;
        }

        var outcome = editor.AppendAll(FileShapes.Stock, "lots", [.. come.Select(lot => lot.Item)]);
        if (outcome.Text is not { } after)
        {
            taker.Refused.Add(come[0].Cells.Refused(null, $"stock.yaml: {outcome.Refusal!.Message}", outcome.Refusal.NextStep));
            return null;
        }

        var rows = come.ToDictionary(lot => lot.Name, lot => lot.Cells.Refused(null, string.Empty, null), StringComparer.Ordinal);
        foreach (var (name, line) in LotLines(after))
        {
            if (rows.TryGetValue(name, out var row))
            {
                lotLines[line] = row;
            }
        }

        return new(
            StockEntry.Path,
            isThere ? before : null,
            after,
            string.Create(CultureInfo.InvariantCulture, $"{come.Count} {(come.Count == 1 ? "lot" : "lots")}")
        );
    }

    private static HashSet<string> StockNames(string text) => [.. LotLines(text).Select(lot => lot.Name)];

    private static IEnumerable<(string Name, int Line)> LotLines(string text) =>
        NodeReaders
            .ForWorker(0)
            .Read(StockEntry.Path, System.Text.Encoding.UTF8.GetBytes(text), FileForm.Yaml, ReadingLimits.Usual)
            .Root?.ValueOf("lots")
            is SequenceNode list
            ? list
                .Items.OfType<MappingNode>()
                .Where(item => item.ValueOf("lot") is ScalarNode)
                .Select(item => (((ScalarNode)item.ValueOf("lot")!).Text, item.Spot.Line))
            : [];

    // The whole collection as it would be is judged: an error that was not there before is refused, with the row that brings it.
    private void Judge(RecordDraft[] drafts, bool isSure)
    {
        var before = files.Boards.Count > 0 || files.Named(StockEntry.Path) is not null ? new CollectionRun(files, run).Run().Findings : [];
        var known = before.Select(Key).ToHashSet();
        var all = new CollectionFolder(
            files.Root,
            [
                .. files
                    .Boards.Union(Files.Where(file => file.Path != StockEntry.Path).Select(file => file.Path), StringComparer.Ordinal)
                    .Order(StringComparer.Ordinal),
            ],
            files.Designs
        );
        var after = new CollectionRun(
            Files.Any(file => file.Path == StockEntry.Path) ? all.With(StockEntry.Path) : all,
            run with
            {
                Instead = Files.ToDictionary(file => file.Path, file => file.After, StringComparer.Ordinal),
            }
        ).Run();
        var byPath = drafts.ToDictionary(draft => draft.Path, StringComparer.Ordinal);
        foreach (
            var finding in after.Findings.Where(finding =>
                (finding.Severity == Severity.Error || finding.Check == Far)
                && !(isSure && Judged.Contains(finding.Check))
                && !known.Contains(Key(finding))
            )
        )
        {
            var draft = byPath.GetValueOrDefault(finding.Place.Path);
            var line = finding.Place.Line;
            var rows = draft?.RowsByLine ?? (finding.Place.Path == StockEntry.Path ? lotLines : []);
            // A long entry is folded, and what is found may stand on its second line.
            var row = rows.Where(one => one.Key <= line).OrderByDescending(one => one.Key).Select(one => one.Value).FirstOrDefault();
            var told = row ?? draft?.New?.Refused(null, string.Empty, null) ?? AnyTable();
            taker.Refused.Add(
                told with
                {
                    Message = $"{finding.Place}: {finding.Message} [{finding.Check}]",
                    NextStep = Judged.Contains(finding.Check)
                        ? $"{finding.NextStep ?? "mend the row"}; --sure takes it in as it is, and check goes on telling it"
                        : finding.NextStep,
                }
            );
        }
    }

    // What is found elsewhere is told of a whole table.
    private RefusedRow AnyTable() =>
        (
            taker
                .Drafts.Select(draft => draft.New?.Refused(null, string.Empty, null) ?? draft.RowsByLine.Values.FirstOrDefault())
                .OfType<RefusedRow>()
                .FirstOrDefault()
            ?? lotLines.Values.First()
        ) with
        {
            Row = 0,
        };

    private static (string, string, string) Key(Finding finding) => (finding.Place.Path, finding.Check, finding.Message);
}

/// <summary>A record that changes.</summary>
/// <param name="Path">Its path from the root of the collection.</param>
/// <param name="Before">Its text, or null where it is not there yet.</param>
/// <param name="After">Its text as it will be.</param>
/// <param name="What">What comes to it, in words; empty for a board that begins with nothing more.</param>
internal sealed record MovedFile(string Path, string? Before, string After, string What);
