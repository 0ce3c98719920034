using System.Collections.Immutable;
using Ohmstead.Assessment.Workshops;
using Ohmstead.Collections;
using Ohmstead.PartsLists;
using Ohmstead.Records.Binding;
using Ohmstead.Records.Model;
using Ohmstead.Records.Nodes;
using Ohmstead.Starting;
using Ohmstead.Writing;
using Ohmstead.Yaml;

namespace Ohmstead.MovingIn;

/// <summary>One thing for the bench of a board: a reading, a proof or work.</summary>
/// <param name="Cells">The row that tells it.</param>
/// <param name="Date">The day.</param>
/// <param name="By">Who, or null.</param>
/// <param name="List">The list of the visit.</param>
/// <param name="Place">The part, the place or the point; empty for the whole board.</param>
/// <param name="Instrument">The instrument, or null.</param>
/// <param name="Item">The entry as one line of YAML, with the instrument given or left to the visit.</param>
internal sealed record DraftEntry(
    RowCells Cells,
    string Date,
    string? By,
    string List,
    string Place,
    string? Instrument,
    Func<string?, string> Item
)
{
    /// <summary>What the row says of when a reading was taken, or null.</summary>
    public string? State { get; init; }
}

/// <summary>A record as it will be: one that is there, or a new one, with what comes to it.</summary>
internal sealed class RecordDraft
{
    private readonly Dictionary<string, PartKind> parts = new(StringComparer.Ordinal);
    private readonly Dictionary<string, PointMeasure?> points = new(StringComparer.Ordinal);

    private RecordDraft(string number, string path, string before)
    {
        Number = number;
        Path = path;
        Before = before;
    }

    /// <summary>The number of the board.</summary>
    public string Number { get; }

    /// <summary>Its record.</summary>
    public string Path { get; }

    /// <summary>The text that is there; of a new board the text it begins with.</summary>
    public string Before { get; }

    /// <summary>The row that brings a new board; null where it is there.</summary>
    public RowCells? New { get; private init; }

    /// <summary>Its parts as they are known so far, the design's included, as a parts list is compared with.</summary>
    public IReadOnlyDictionary<string, KnownPart> Known { get; private init; } = ImmutableDictionary<string, KnownPart>.Empty;

    /// <summary>Parts that come, with their rows.</summary>
    public List<(ListedPart Part, OldTable Table)> Parts { get; } = [];

    /// <summary>What comes to its bench.</summary>
    public List<DraftEntry> Entries { get; } = [];

    /// <summary>The text as it will be; null before it is made.</summary>
    public string? After { get; set; }

    /// <summary>The rows of what stands in the text that will be, by line.</summary>
    public Dictionary<int, RefusedRow> RowsByLine { get; } = [];

    /// <summary>The record as it was read; null for a new board.</summary>
    public BoardFile? File { get; private init; }

    /// <summary>The first of some values that the record does not say so, with what it says; null where it says them all.</summary>
    public (string Key, string? There)? Differs(IReadOnlyList<(string Key, string? Value)> values)
    {
        foreach (var (key, value) in values.Where(one => one.Value is not null))
        {
            var there = key switch
            {
                "title" => File?.Title.Value,
                "design" => File?.Design?.Value,
                "serial" => File?.Serial?.Value,
                "revision" => File?.Revision?.Value,
                "maker" => File?.Maker?.Value,
                "made" => File?.Made?.Text,
                TableSort.Note => File?.Note?.Value,
                "arrived" => File?.Arrived?.Date?.Text,
                "from" => File?.Arrived?.From?.Value,
                _ => File?.Arrived?.Complaint?.Value,
            };
            if (there != value)
            {
                return (key, there);
            }
        }

        return null;
    }

    /// <summary>The references of its parts, then the names of its points.</summary>
    public IEnumerable<string> Places => parts.Keys.Concat(points.Keys);

    /// <summary>References whose rows are refused: what else is said of them waits.</summary>
    public HashSet<string> Waiting { get; } = new(StringComparer.Ordinal);

    /// <summary>Whether there is such a part.</summary>
    public bool HasPart(string reference) => parts.ContainsKey(reference);

    /// <summary>Whether there is such a point.</summary>
    public bool HasPoint(string name) => points.ContainsKey(name);

    /// <summary>Takes a part.</summary>
    public void Add(ListedPart part, OldTable table)
    {
        Parts.Add((part, table));
        parts[part.Reference] = part.Kind;
    }

    /// <summary>A board that begins.</summary>
    public static RecordDraft Begin(string number, string path, string text, RowCells row, DesignFile? design)
    {
        var draft = new RecordDraft(number, path, text)
        {
            New = row,
            Known = (design?.Parts ?? [])
                .DistinctBy(part => part.Ref.Value, StringComparer.Ordinal)
                .ToDictionary(part => part.Ref.Value, part => new KnownPart(part, design!.Path), StringComparer.Ordinal),
        };
        draft.Take([], [], design);
        return draft;
    }

    /// <summary>A board that is there, or why it cannot be added to.</summary>
    public static (RecordDraft? Draft, string? Fault) Open(CollectionFolder files, KnownBoard known, Workshop workshop)
    {
        var text = RecordFile.Read(files.Root, known.Path);
        var reading = NodeReaders
            .ForWorker(0)
            .Read(known.Path, System.Text.Encoding.UTF8.GetBytes(text), FileForm.Markdown, ReadingLimits.Usual);
        if (
            FileBinding.Board(known.Path, reading) is not { File: { } board, Findings: var findings }
            || findings.Any(one => one.Severity == Records.Findings.Severity.Error)
        )
        {
            return (null, $"{known.Path} holds what cannot be read");
        }

        var design = board.Design is { } name ? workshop.Designs.GetValueOrDefault(name.Value) : null;
        var merged = Assessment.History.BoardWithDesign.Merge(board.Parts, design?.Parts ?? []);
        var draft = new RecordDraft(known.Number, known.Path, text)
        {
            File = board,
            Known = merged.ToDictionary(
                pair => pair.Key,
                pair => new KnownPart(pair.Value, pair.Value.FromDesign ?? known.Path),
                StringComparer.Ordinal
            ),
        };
        draft.Take(board.Parts, board.Points, design);
        return (draft, null);
    }

    private void Take(ImmutableArray<Part> own, ImmutableArray<TestPoint> ownPoints, DesignFile? design)
    {
        foreach (var (reference, part) in Assessment.History.BoardWithDesign.Merge(own, design?.Parts ?? []))
        {
            parts[reference] = part.Values.Kind.Value;
        }

        foreach (var (name, point) in Assessment.History.BoardWithDesign.Merge(ownPoints, design?.Points ?? []))
        {
            points[name] = point.Measures;
        }
    }
}
