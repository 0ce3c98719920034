using System.Collections.Immutable;
using Ohmstead.Collections;
using Ohmstead.Records.Entries;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Nodes;
using Ohmstead.Records.Shapes;
using Ohmstead.Records.Text;
using Ohmstead.Yaml;

namespace Ohmstead.Comparing;

/// <summary>
/// Holds a collection against an earlier state: a reading, a piece of work, a proof, a decision that was committed is still there and says
/// what it said, beside the entry that corrects it where one does; a calibration or a lot that was used is what it was.
/// </summary>
/// <param name="was">The earlier state.</param>
/// <param name="now">The later state.</param>
/// <param name="options">How records are read.</param>
internal sealed class CommittedEntries(ComparedSide was, ComparedSide now, RunOptions options)
{
    /// <summary>The check under which it is told.</summary>
    public const string Check = "entry-rewritten";

    // What may be mended of a lot after a piece of it was fitted: it says nothing about the part.
    private static readonly string[] Living = ["quantity", "price", "formed", "shelf_life", "order"];

    private readonly FileReader before = new(was.Folder, NodeReaders.ForWorker(0), options);
    private readonly FileReader after = new(now.Folder, NodeReaders.ForWorker(0), options);

    /// <summary>What breaks it, in order of path.</summary>
    public IReadOnlyList<Finding> Find()
    {
        var (names, later) = ContentNames.Of(was, now, options.Workers);
        var found = new List<Finding>();
        foreach (
            var pair in BoardPairs.Find((was.Folder.Boards, names), (now.Folder.Boards, later), (path, isEarlier) =>
                BoardPairs.NumbersIn(isEarlier ? before : after, path)
            )
        )
        {
            if (!pair.IsSame && pair.Was is { } path)
            {
                found.AddRange(Bench(Compare(path, pair.Now, FileShapes.Board), path, pair.Now));
            }
        }

        found.AddRange(Bench(Compare("stock.yaml", "stock.yaml", FileShapes.Stock), "stock.yaml", "stock.yaml"));
        found.AddRange(Used());
        return found;
    }

    private IEnumerable<Finding> Bench(Compared compared, string path, string? now)
    {
        if (now is null || compared.Now is null)
        {
            if (compared.Was.Any(entry => IsKept(entry.Kind)))
            {
                yield return new(
                    Check,
                    Severity.Error,
                    new Spot(1, 1).In(now ?? path),
                    now is null
                        ? $"this record was committed and is gone, with {compared.Was.Count(entry => IsKept(entry.Kind))} entries"
                        : "this record was committed and cannot be read now",
                    now is null ? "put it back; what left the house is told by 'whereabouts'" : "mend what cannot be read"
                );
            }

            yield break;
        }

        foreach (var one in compared.Differences.Where(one => one.Was is { } entry && IsKept(entry.Kind)))
        {
            if (Told(one, path) is var (message, isAdded))
            {
                yield return new(
                    Check,
                    isAdded ? Severity.Warning : Severity.Error,
                    (one.Now?.Spot ?? new Spot(1, 1)).In(now),
                    message,
                    isAdded
                        ? "a later entry says it without touching this one"
                        : "put it back as it was; 'ohmstead correct' enters what is right, with the reason"
                );
            }
        }
    }

    // A visit is kept by its entries.
    private static bool IsKept(EntryKind kind) =>
        kind is EntryKind.Reading or EntryKind.Proof or EntryKind.Work or EntryKind.Decision or EntryKind.Finding or EntryKind.Scrapped;

    private (string Message, bool IsAdded)? Told(EntryDifference one, string path)
    {
        var told = $"{one.Was!.Told}, committed in {was.Label} ({path}:{Number(one.Was.Spot.Line)})";
        if (one.Now is null)
        {
            return ($"{told}, is gone; it said {Said(one.Was)}", false);
        }

        var facts = one.Facts.Where(fact => fact.Was is not null).ToArray();
        return facts.Length == 0
            ? ($"{told}, says more now: {string.Join(", ", one.Facts.Select(fact => $"{fact.Key} {fact.Now!.Text}"))}", true)
            : ($"{told}, was rewritten: {string.Join(", ", facts.Select(Rewritten))}", false);
    }

    private static string Rewritten(FactDifference fact) =>
        $"{fact.Key} said {fact.Was!.Text}{(fact.Now is { } now ? $" and says {now.Text}" : " and says nothing")}";

    private static string Said(RecordEntry entry) => string.Join(", ", entry.Facts.Select(fact => $"{fact.Key} {fact.Text}"));

    // Calibrations, accuracies and lots on which something rests.
    private IEnumerable<Finding> Used()
    {
        var touched = new[] { ("instruments.yaml", FileShapes.Instruments), ("stock.yaml", FileShapes.Stock) }
            .SelectMany(file => Compare(file.Item1, file.Item1, file.Item2).Differences.Select(one => (Path: file.Item1, One: one)))
            .Where(pair => pair.One.Was is not null && IsRewritten(pair.One))
            .ToArray();
        if (touched.Length == 0)
        {
            yield break;
        }

        var calibrated = (Read(before, "instruments.yaml", FileShapes.Instruments) ?? [])
            .Where(entry => entry.Kind == EntryKind.Calibration)
            .ToLookup(entry => entry.Of.Split(' ')[0], entry => entry.Of.Split(' ')[^1], StringComparer.Ordinal);
        var uses = Uses([.. touched.Select(pair => pair.One.Was!.Of.Split(' ')[0])]);
        foreach (var (path, one) in touched)
        {
            var name = one.Was!.Of.Split(' ')[0];
            if (
                uses.FirstOrDefault(use => use.Name == name && IsOfIt(use, one.Was, calibrated[name])) is { } used
                && Told(one, path) is var (message, _)
            )
            {
                yield return new(
                    Check,
                    Severity.Error,
                    (one.Now?.Spot ?? new Spot(1, 1)).In(path),
                    $"{message}; {used.Told} rests on it",
                    "put it back as it was, and add what is new beside it"
                );
            }
        }
    }

    private static bool IsRewritten(EntryDifference one) =>
        one.Was!.Kind switch
        {
            EntryKind.Calibration or EntryKind.Accuracy => one.Now is null || one.Facts.Any(fact => fact.Was is not null),
            EntryKind.Lot => one.Now is null || one.Facts.Any(fact => fact.Was is not null && !Living.Contains(fact.Key)),
            _ => false,
        };

    // A reading rests on the last calibration before it, and on none that came later.
    private static bool IsOfIt(Use use, RecordEntry entry, IEnumerable<string> calibrated) =>
        entry.Kind != EntryKind.Calibration
        || calibrated.Where(day => string.CompareOrdinal(day, use.Day) <= 0).Max(StringComparer.Ordinal) == entry.Of.Split(' ')[^1];

    private List<Use> Uses(HashSet<string> names)
    {
        var uses = new List<Use>();
        var search = new NamesInText(names, []);
        foreach (var path in was.Folder.Boards.Where(path => before.Holds(path, search.MayStandIn)))
        {
            foreach (var entry in Read(before, path, FileShapes.Board) ?? [])
            {
                uses.AddRange(
                    entry
                        .Facts.Where(fact => fact.Key is "lot" or "instrument" && names.Contains(fact.Text))
                        .Select(fact => new Use(fact.Text, entry.Day ?? string.Empty, $"{entry.Told} ({path}:{Number(entry.Spot.Line)})"))
                );
            }
        }

        return uses;
    }

    private Compared Compare(string path, string? later, Shape shape)
    {
        var (old, current) = (Read(before, path, shape), later is null ? null : Read(after, later, shape));
        return new(old ?? [], current, current is { } there ? EntryComparer.Compare(old ?? [], there).Differences : []);
    }

    private static ImmutableArray<RecordEntry>? Read(FileReader reader, string path, Shape shape)
    {
        var form = path.EndsWith(".md", StringComparison.Ordinal) ? FileForm.Markdown : FileForm.Yaml;
        return reader.Read(path, form).Root is { } root ? RecordEntries.List(root, shape) : null;
    }

    private static string Number(int line) => line.ToString(System.Globalization.CultureInfo.InvariantCulture);

    private sealed record Compared(
        ImmutableArray<RecordEntry> Was,
        ImmutableArray<RecordEntry>? Now,
        ImmutableArray<EntryDifference> Differences
    );

    private sealed record Use(string Name, string Day, string Told);
}
