using System.Globalization;
using Ohmstead.PartsLists;
using Ohmstead.Records.Binding;
using Ohmstead.Records.Editing;
using Ohmstead.Records.Findings;
using Ohmstead.Records.Model;
using Ohmstead.Records.Shapes;
using Ohmstead.Starting;

namespace Ohmstead.MovingIn;

// Rows that are boards: new records, or the same as one that is there.
internal sealed partial class Taker
{
    private static readonly string[] OfBoard = ["title", "design", "serial", "revision", "maker", "made"];

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
        foreach (var key in FileShapes.Board.Keys.Where(key => key.Name is "serial" or "revision" or "maker" or "made" or TableSort.Note))
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
            if (cells.Against(earlier) is not { } both)
            {
                There++;
                return (true, null);
            }

            return (
                true,
                cells.Refused(
                    TableSort.Board,
                    $"{number} stands on row {earlier.Row.Line.ToString(CultureInfo.InvariantCulture)} of {earlier.Table.Name} already",
                    both
                )
            );
        }

        if (!byNumber.TryGetValue(number, out var there))
        {
            return (false, null);
        }

        var (draft, fault) = RecordDraft.Open(files, there, workshop);
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
                    $"{number} is there, and {there.Path} says "
                        + (differs.Value.There is { } known ? $"{differs.Value.Key} '{known}'" : $"no {differs.Value.Key}"),
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
        if (taken is not null || !looks.TryAdd(Records.Text.Appearance.Skeleton(number).ToUpperInvariant(), number))
        {
            return cells.Refused(
                TableSort.Board,
                taken ?? $"{number} looks like {looks[Records.Text.Appearance.Skeleton(number).ToUpperInvariant()]} of another row",
                "write another number, or the same where the same board is meant"
            );
        }

        var path = BoardFileName.For(number, values["title"]!, boards);
        var text = BoardText.Write(
            path,
            File.Exists(files.Full("schema/board.schema.json")),
            [("board", number), .. OfBoard.Select(key => (key, values[key]))],
            [("date", arrived), ("from", cells["from"]), ("complaint", cells["complaint"])]
        );
        if (values[TableSort.Note] is { } note)
        {
            text = text.Replace("format: 1\n", $"format: 1\nnote: {FlowText.TextScalar(note)}\n", StringComparison.Ordinal);
        }

        drafts[number] = (RecordDraft.Begin(number, path, text, cells, design), null);
        return null;
    }
}
