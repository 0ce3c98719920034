using System.Globalization;
using Ohmstead.Assessment.Workshops;
using Ohmstead.Collections;
using Ohmstead.PartsLists;
using Ohmstead.Records.Binding;
using Ohmstead.Records.Editing;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;
using Ohmstead.Records.Shapes;
using Ohmstead.Starting;

namespace Ohmstead.MovingIn;

/// <summary>What a person says about the tables beside their columns.</summary>
/// <param name="Foreign">How days and figures are written.</param>
/// <param name="ProofsLast">Whether on a day with work and proofs the proofs came last.</param>
/// <param name="Board">The board of tables that have no column for it, or null.</param>
/// <param name="Date">The day of tables that have no column for it, or null.</param>
/// <param name="By">Who, where a table does not say it, or null.</param>
/// <param name="Kinds">Kinds by reference or class letters.</param>
/// <param name="Units">Units of bare figures by class letters.</param>
internal sealed record Saying(
    ForeignText Foreign,
    bool ProofsLast,
    string? Board,
    string? Date,
    string? By,
    IReadOnlyDictionary<string, PartKind> Kinds,
    IReadOnlyDictionary<string, string> Units
)
{
    /// <summary>Class letters whose kinds are kept from an earlier run, which need not be met again.</summary>
    public IReadOnlySet<string> KeptLetters { get; init; } = System.Collections.Frozen.FrozenSet<string>.Empty;
}

/// <summary>Turns rows into what comes to each record. A row in which anything is not understood is refused, with the reason.</summary>
internal sealed class Taker(CollectionFolder files, Workshop workshop, Saying said)
{
    private readonly IReadOnlyList<KnownBoard> boards = KnownBoards.In(files);
    private readonly Dictionary<string, (Draft? Draft, string? Fault)> drafts = new(StringComparer.Ordinal);
    private readonly Dictionary<string, string> looks = new(StringComparer.Ordinal);
    private Dictionary<string, KnownBoard>? byNumber;
    private readonly OrderedDictionary<(OldTable Table, string For), int> waits = [];
    private readonly HashSet<string> refusedBoards = new(StringComparer.Ordinal);
    private PartsOfBoards? parts;

    /// <summary>The records to which something comes, in the order in which they were met.</summary>
    public IEnumerable<Draft> Drafts => drafts.Values.Select(one => one.Draft).OfType<Draft>();

    /// <summary>The lots that come: each as one line of YAML, with its row.</summary>
    public List<(string Name, string Item, RowCells Cells)> Lots { get; } = [];

    /// <summary>Rows that are refused.</summary>
    public List<RefusedRow> Refused { get; } = [];

    /// <summary>What is told beside it, such as places that are not fitted.</summary>
    public List<string> Told { get; } = [];

    /// <summary>How many rows say what stands already.</summary>
    public int There { get; set; }

    /// <summary>Tells what only shows when all tables were taken.</summary>
    public void Finish()
    {
        parts?.Finish();
        Told.AddRange(
            waits.Select(one =>
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{one.Key.Table.File}: {one.Value} rows wait for {one.Key.For}, which is refused"
                )
            )
        );
    }

    /// <summary>Takes all rows of a table.</summary>
    public void Take(OldTable table)
    {
        var rows = new List<RowCells>();
        foreach (var row in table.Rows)
        {
            var (cells, refused) = RowCells.Of(table, row);
            if (refused is not null)
            {
                Refused.Add(refused);
            }
            else if (!cells!.AreEmpty)
            {
                rows.Add(cells);
            }
        }

        if (table.Sort == TableSort.Parts)
        {
            (parts ??= new PartsOfBoards(this, said)).Take(table, rows);
            return;
        }

        foreach (var cells in rows)
        {
            var refused =
                table.Sort == TableSort.Boards ? Board(cells)
                : table.Sort == TableSort.Readings ? Reading(cells)
                : table.Sort == TableSort.Work ? Work(cells)
                : Lot(cells);
            if (refused is not null)
            {
                Refuse(refused);
            }

            if (refused is not null && table.Sort == TableSort.Boards && cells[TableSort.Board] is { } number)
            {
                refusedBoards.Add(number);
            }
        }
    }

    /// <summary>Refuses a row; one that only waits for another row to be mended is counted instead.</summary>
    public void Refuse(RefusedRow row)
    {
        if (row.WaitsFor is not { } other)
        {
            Refused.Add(row);
            return;
        }

        waits[(row.Table, other)] = waits.GetValueOrDefault((row.Table, other)) + 1;
    }

    /// <summary>Whether the kind of a class letter is kept from an earlier run.</summary>
    public bool IsKept(string letters) => said.KeptLetters.Contains(letters);

    /// <summary>The record of a row's board, or why there is none.</summary>
    public (Draft? Draft, RefusedRow? Refused) For(RowCells cells)
    {
        if ((cells[TableSort.Board] ?? (cells.Table.Plan.For(TableSort.Board) is null ? said.Board : null)) is not { } number)
        {
            return (null, cells.Refused(TableSort.Board, "the row names no board", "write its number"));
        }

        if (refusedBoards.Contains(number))
        {
            return (null, cells.Refused(TableSort.Board, string.Empty, null) with { WaitsFor = $"the row of board {number}" });
        }

        if (!drafts.TryGetValue(number, out var known))
        {
            byNumber ??= boards
                .DistinctBy(board => board.Number, StringComparer.Ordinal)
                .ToDictionary(board => board.Number, StringComparer.Ordinal);
            known = byNumber.TryGetValue(number, out var there)
                ? Draft.Of(files, there, workshop)
                : (
                    null,
                    Nearest.Told(
                        $"there is no board '{CsvTableReader.Excerpt(number)}'",
                        Nearest.To(number, byNumber.Keys.Concat(drafts.Keys))
                    )
                );
            drafts[number] = known;
        }

        return known.Draft is { } draft
            ? (draft, null)
            : (
                null,
                cells.Refused(
                    TableSort.Board,
                    known.Fault!,
                    byNumber!.ContainsKey(number)
                        ? "mend it first; 'check' says where"
                        : "write the number of a board, or give its row in a table of --boards"
                )
            );
    }

    private RefusedRow? Board(RowCells cells)
    {
        var number = cells[TableSort.Board];
        if (number is null || NameRules.Fault(number) is not null)
        {
            return cells.Refused(
                TableSort.Board,
                number is null
                    ? "the row names no board"
                    : $"'{CsvTableReader.Excerpt(number)}' cannot be the number of a board: {NameRules.Fault(number)}",
                "write a number such as SP-0101"
            );
        }

        var designName = cells["design"];
        var design = designName is null ? null : workshop.Designs.GetValueOrDefault(designName);
        if (designName is not null && design is null)
        {
            return cells.Refused(
                "design",
                Nearest.Told($"there is no design '{CsvTableReader.Excerpt(designName)}'", Nearest.To(designName, workshop.Designs.Keys)),
                "leave the cell empty, or write the design's record first"
            );
        }

        if ((cells["title"] ?? design?.Title.Value) is not { } title)
        {
            return cells.Refused("title", "nothing says what the board is", "write a title, or a design of the collection");
        }

        var values = new Dictionary<string, string?>(StringComparer.Ordinal) { ["title"] = title, ["design"] = designName };
        foreach (var key in FileShapes.Board.Keys.Where(key => key.Name is "serial" or "revision" or "maker" or "made" or "note"))
        {
            var (value, refused) = CellValue.Read(key, cells, key.Name, said.Foreign);
            if (refused is not null)
            {
                return refused;
            }

            values[key.Name] = value;
        }

        var (arrived, wrong) = CellValue.Read(BenchShape.Date, cells, "arrived", said.Foreign);
        if (wrong is not null)
        {
            return wrong;
        }

        return Known(cells, number, values, arrived) is var (isKnown, against) && isKnown
            ? against
            : Begin(cells, number, values, arrived, design);
    }

    // A board that is there: the row says the same, or is refused.
    private (bool IsKnown, RefusedRow? Refused) Known(RowCells cells, string number, Dictionary<string, string?> values, string? arrived)
    {
        byNumber ??= boards
            .DistinctBy(board => board.Number, StringComparer.Ordinal)
            .ToDictionary(board => board.Number, StringComparer.Ordinal);
        if (drafts.TryGetValue(number, out var drafted) && drafted.Draft?.New is { } earlier)
        {
            return (
                true,
                cells.Refused(
                    TableSort.Board,
                    $"{number} stands on row {earlier.Row.Line.ToString(CultureInfo.InvariantCulture)} of {earlier.Table.Name} already",
                    "keep one of the two rows"
                )
            );
        }

        if (!byNumber.TryGetValue(number, out var there))
        {
            return (false, null);
        }

        var (draft, fault) = Draft.Of(files, there, workshop);
        drafts[number] = (draft, fault);
        if (draft is null)
        {
            return (true, cells.Refused(TableSort.Board, fault!, "mend it first; 'check' says where"));
        }

        var differs = draft.Differs([
            .. values.Select(pair => (pair.Key, pair.Value)),
            ("arrived", arrived),
            ("from", cells["from"]),
            ("complaint", cells["complaint"]),
        ]);
        if (differs is not null)
        {
            return (
                true,
                cells.Refused(
                    differs.Value.Key,
                    $"{number} is there, and {there.Path} says {(differs.Value.There is { } known ? $"{differs.Value.Key} '{known}'" : $"no {differs.Value.Key}")}",
                    "a record that is there is not written over: mend it by hand, or empty the cell"
                )
            );
        }

        There++;
        return (true, null);
    }

    private RefusedRow? Begin(RowCells cells, string number, Dictionary<string, string?> values, string? arrived, DesignFile? design)
    {
        var taken = KnownBoards.Taken(number, boards);
        if (taken is not null || !looks.TryAdd(Records.Text.Appearance.Of(number).ToUpperInvariant(), number))
        {
            return cells.Refused(
                TableSort.Board,
                taken ?? $"{number} looks like {looks[Records.Text.Appearance.Of(number).ToUpperInvariant()]} of another row",
                "write another number, or the same where the same board is meant"
            );
        }

        var path = BoardFileName.For(number, values["title"]!, boards);
        var text = BoardText.Of(
            path,
            File.Exists(files.Full("schema/board.schema.json")),
            [("board", number), .. new[] { "title", "design", "serial", "revision", "maker", "made" }.Select(key => (key, values[key]))],
            [("date", arrived), ("from", cells["from"]), ("complaint", cells["complaint"])]
        );
        if (values["note"] is { } note)
        {
            text = text.Replace("format: 1\n", $"format: 1\nnote: {FlowText.TextScalar(note)}\n", StringComparison.Ordinal);
        }

        drafts[number] = (Draft.Begin(number, path, text, cells, design), null);
        return null;
    }

    private (string? Date, string? By, RefusedRow? Refused) Head(RowCells cells)
    {
        var (date, refused) = CellValue.Read(BenchShape.Date, cells, TableSort.Date, said.Foreign);
        date ??= refused is null && cells.Table.Plan.For(TableSort.Date) is null ? said.Date : null;
        return date is null
            ? (null, null, refused ?? cells.Refused(TableSort.Date, "the row has no day", "write it as 2026-03-14"))
            : (date, cells[TableSort.By] ?? said.By, null);
    }

    private RefusedRow? Reading(RowCells cells)
    {
        var (draft, wrong) = For(cells);
        if (draft is null)
        {
            return wrong;
        }

        var (date, by, head) = Head(cells);
        if (head is not null)
        {
            return head;
        }

        var place = cells[TableSort.Part];
        if (place is null || (!draft.HasPart(place) && !draft.HasPoint(place)))
        {
            if (place is not null && draft.Waiting.Contains(place))
            {
                return cells.Refused(TableSort.Part, string.Empty, null) with { WaitsFor = $"the row of {draft.Number} {place}" };
            }

            var references = place is null ? [] : ReferenceText.Read(place).References;
            return references.Count > 1
                ? cells.Refused(
                    TableSort.Part,
                    $"'{CsvTableReader.Excerpt(place!)}' are {references.Count.ToString(CultureInfo.InvariantCulture)} places, and a reading is of one",
                    "give each place a row of its own"
                )
                : cells.Refused(
                    TableSort.Part,
                    place is null
                        ? "the row names no part and no point"
                        : Nearest.Told(
                            $"{draft.Number} has no part and no point '{CsvTableReader.Excerpt(place)}'",
                            Nearest.To(place, draft.Places)
                        ),
                    $"write one that is there, or give the part in a table of --parts; a point: ohmstead add point {draft.Number}"
                );
        }

        var isPoint = !draft.HasPart(place);
        var shape = isPoint ? BenchShape.Proof : BenchShape.Reading;
        var values = new Dictionary<string, string?>(StringComparer.Ordinal) { [isPoint ? "point" : "part"] = place };
        foreach (
            var column in cells.Table.Plan.Columns.Where(column =>
                column.Target is not (null or TableSort.Board or TableSort.Date or TableSort.By or TableSort.Part)
            )
        )
        {
            var target = column.Target!;
            if (cells[target] is null)
            {
                continue;
            }

            if (shape.PlaceOf(target) < 0)
            {
                return cells.Refused(
                    target,
                    $"{place} is a {(isPoint ? "test point" : "part")}, and a {shape.Name} has no {target}",
                    "empty the cell, or give the row the place that it belongs to"
                );
            }

            var (value, refused) = CellValue.Read(shape.Keys[shape.PlaceOf(target)], cells, target, said.Foreign);
            if (refused is not null)
            {
                return refused;
            }

            values[target] = value;
        }

        if (!values.Keys.Any(IsRead))
        {
            return cells.Refused(null, $"the row reads nothing of {place}", "fill in what was read, or take the row out");
        }

        var instrument = values.GetValueOrDefault("instrument");
        draft.Entries.Add(
            new(cells, date!, by, isPoint ? "proof" : "readings", place, instrument, used =>
                FlowText.MappingOf(
                    shape.Keys.Select(key => (key.Name, Yaml(key, key.Name == "instrument" ? used : values.GetValueOrDefault(key.Name))))
                )
            )
            {
                State = values.GetValueOrDefault("state"),
            }
        );
        return null;
    }

    private static bool IsRead(string key) =>
        key == BenchShape.Result.Name
        || key == BenchShape.Hours.Name
        || BenchShape.Reading.Keys.Concat(BenchShape.Proof.Keys).Any(known => known.Name == key && known.Kind == ValueKind.Indication);

    private RefusedRow? Work(RowCells cells)
    {
        var (draft, wrong) = For(cells);
        if (draft is null)
        {
            return wrong;
        }

        var (date, by, head) = Head(cells);
        if (head is not null)
        {
            return head;
        }

        var values = new Dictionary<string, string?>(StringComparer.Ordinal);
        foreach (var key in BenchShape.Work.Keys.Where(key => key.Name is not TableSort.Part))
        {
            if (key == BenchShape.NewPart)
            {
                var (made, fault) = NewPartText.Read(cells[key.Name]);
                if (fault is not null)
                {
                    return cells.Refused(key.Name, fault, "write the kind, then what is printed on it: aluminium electrolytic 470uF 25V");
                }

                values[key.Name] = made;
                continue;
            }

            var (value, refused) = CellValue.Read(key, cells, key.Name, said.Foreign);
            if (refused is not null)
            {
                return refused;
            }

            values[key.Name] = Yaml(key, value);
        }

        if (values["did"] is null)
        {
            return cells.Refused("did", "nothing says what was done", $"write one of: {string.Join(", ", Vocabulary.Works)}");
        }

        string?[] places = [null];
        if (cells[TableSort.Part] is { } named)
        {
            var (references, fault, next) = draft.HasPart(named) ? ([named], null, null) : ReferenceText.Read(named);
            if (fault is not null)
            {
                return cells.Refused(TableSort.Part, fault, next);
            }

            if (references.FirstOrDefault(draft.Waiting.Contains) is { } waiting)
            {
                return cells.Refused(TableSort.Part, string.Empty, null) with { WaitsFor = $"the row of {draft.Number} {waiting}" };
            }

            if (references.FirstOrDefault(reference => !draft.HasPart(reference)) is { } missing)
            {
                return cells.Refused(
                    TableSort.Part,
                    Nearest.Told($"{draft.Number} has no part '{CsvTableReader.Excerpt(missing)}'", Nearest.To(missing, draft.Places)),
                    "write a part that is there, or the place into a column 'at'"
                );
            }

            places = [.. references];
        }

        if (values["irreversible"] == "yes")
        {
            Told.Add($"{cells.Refused("irreversible", string.Empty, null).Place}: this is told as something that cannot be undone");
        }

        foreach (var place in places)
        {
            var entry = new Dictionary<string, string?>(values, StringComparer.Ordinal)
            {
                [TableSort.Part] = place is null ? null : FlowText.TextScalar(place),
            };
            var item = FlowText.MappingOf(BenchShape.Work.Keys.Select(key => (key.Name, entry.GetValueOrDefault(key.Name))));
            draft.Entries.Add(new(cells, date!, by, "work", place ?? cells["at"] ?? string.Empty, null, _ => item));
        }

        return null;
    }

    private RefusedRow? Lot(RowCells cells)
    {
        var name = cells["lot"];
        if (name is null || NameRules.Fault(name) is not null)
        {
            return cells.Refused(
                "lot",
                name is null ? "the row names no lot" : $"'{CsvTableReader.Excerpt(name)}' cannot be a lot: {NameRules.Fault(name)}",
                "write a name such as L-031"
            );
        }

        if (
            cells["kind"] is not { } word
            || PartKinds.All.Values.FirstOrDefault(one => one.Name.Equals(word, StringComparison.OrdinalIgnoreCase)) is not { } kind
        )
        {
            return cells.Refused(
                "kind",
                cells["kind"] is { } other
                    ? $"'{CsvTableReader.Excerpt(other)}' is {PartShape.Kind.OtherWord}"
                    : "nothing says what kind of part it is",
                Nearest.To(cells["kind"] ?? string.Empty, PartKinds.All) is { } near
                    ? $"write {near}"
                    : $"write one of: {string.Join(", ", PartKinds.All)}"
            );
        }

        var (read, refused) = PartCells.Read(cells, kind, null, said.Foreign);
        if (refused is not null)
        {
            return refused;
        }

        var values = new Dictionary<string, string?>(StringComparer.Ordinal) { ["lot"] = name, ["kind"] = kind.Name };
        foreach (var (key, value) in read!)
        {
            values[key] = value;
        }

        foreach (
            var key in FileShapes.LotShape.Keys.Where(key =>
                key.Name is not ("lot" or "kind") && PartShape.Values.All(part => part.Name != key.Name)
            )
        )
        {
            var (value, wrong) = CellValue.Read(key, cells, key.Name, said.Foreign);
            if (wrong is not null)
            {
                return wrong;
            }

            values[key.Name] = value;
        }

        var item = FlowText.MappingOf(FileShapes.LotShape.Keys.Select(key => (key.Name, Yaml(key, values.GetValueOrDefault(key.Name)))));
        if (Lots.FirstOrDefault(known => known.Name == name) is { Cells: { } earlier } && earlier is not null)
        {
            return cells.Refused(
                "lot",
                $"{name} stands on row {earlier.Row.Line.ToString(CultureInfo.InvariantCulture)} of {earlier.Table.Name} already",
                "keep one of the two rows"
            );
        }

        Lots.Add((name, item, cells));
        return null;
    }

    private static string? Yaml(Key key, string? value) =>
        value is null ? null
        : key.Kind is ValueKind.Text or ValueKind.Id ? FlowText.TextScalar(value)
        : FlowText.Scalar(value);
}
